// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "reports/sheet.h"

namespace hangbook::reports {

/// A sheet for readers who have US customary units: what a table holds as a figure is in these already
/// (`Figures`); behind each metric quantity in a sentence the same stands in brackets, as
/// quantity/both_units.h has it. `names` stay whole, and so do the names of show, kind and tables.
Sheet inBothUnits(Sheet sheet, const std::vector<std::string>& names);

} // namespace hangbook::reports
