// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QJsonObject>

#include "options/option.h"

namespace hangbook::exchange {

/// Writes `hangbook.options/1`. Each option's `hang_input` is a whole `hangbook.hang/1`, null where no
/// setting is possible.
QJsonObject toJson(const options::ShowOptions& show);

} // namespace hangbook::exchange
