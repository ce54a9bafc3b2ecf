// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QJsonArray>
#include <QJsonObject>

#include "options/easing.h"
#include "options/reserve.h"

namespace hangbook::options {

/// What would do, as `hangbook.options/1` adds it to an option: see README.
QJsonObject toJson(const Easings& easings);
QJsonArray toJson(const std::vector<Reserve>& reserves);

} // namespace hangbook::options
