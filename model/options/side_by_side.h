// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QStringList>

#include "options/option.h"

namespace hangbook::options {

/// One thing that options are compared by.
struct CompareRow {
  QString what;      ///< "verdict", "trim m", "point-load"
  QStringList cells; ///< of each option
  bool differs = false;
};

/// Two to four options (any number, really) row by row: the rows in which they differ first, each part in the
/// order of the sheet: what hangs, how it is set, loads, rules.
std::vector<CompareRow> sideBySide(const std::vector<const Option*>& options);

} // namespace hangbook::options
