// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QJsonObject>

#include "options/option.h"

namespace hangbook::options {

/// One option as `hangbook.options/1` writes it, but for `hang_input`. A figure that is not known or not
/// finite is null, never 0.
QJsonObject toJson(const Option& option);

/// The same read back, without `hangInput`. Throws Error(badInput) naming the key that is missing or wrong.
Option optionFromJson(const QJsonObject& object);

} // namespace hangbook::options
