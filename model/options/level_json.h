// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QJsonObject>

#include "options/level_table.h"

namespace hangbook::options {

/// Keys are documented in model/exchange/README.md.
QJsonObject toJson(const LevelTable&);
/// Throws Error(badInput) where the bands are not those of this program.
LevelTable levelFromJson(const QJsonObject&);

} // namespace hangbook::options
