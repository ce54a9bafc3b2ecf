// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <optional>
#include <vector>

#include <QStringList>

#include "options/option.h"

namespace hangbook::options {

/// One thing that options are compared by.
struct CompareRow {
  QString what;      ///< "verdict", "trim m", "point-load"
  QString rule;      ///< of a rule's row: its id
  QStringList cells; ///< of each option
  bool differs{};
};

/// How names and figures are written. As it stands: metric, the unit in the name, as the terminal prints it.
struct CompareWords {
  bool unitInName = true; ///< "trim m" and "7.25", else "trim" and a figure that says its unit
  std::function<QString(double value, const QString& unit, int places)> figure = {};
  /// Where a trim may lie, in metres: never wider than it is.
  std::function<QString(double low, double high)> span = {};
  std::function<QString(const QString& rule)> rule = {};
};
CompareWords plainCompareWords();

/// Two to four options (any number, really) row by row: the rows in which they differ first, each part in the
/// order of the sheet: what hangs, how it is set, loads, rules.
std::vector<CompareRow> sideBySide(const std::vector<const Option*>& options,
                                   const CompareWords& words = plainCompareWords());

} // namespace hangbook::options
