// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>

#include "exchange/csv.h"
#include "exchange/sort.h"

namespace hangbook::exchange {

/// How the headings of a file go with one sort of line.
struct SortColumns {
  std::vector<int> where;            ///< for each column of the sort: its cell, or -1
  std::vector<FileHeading> headings; ///< for each cell: as written, and the unit of bare numbers
  std::vector<int> strange;          ///< cells whose heading the sort does not know
};

/// The headings of a file against all sorts of its kind.
class FileColumns {
public:
  FileColumns(const CsvTable& table, const Sorts& sorts, std::optional<int> recordColumn);

  const SortColumns& of(const Sort& sort) const { return bySort_.at(&sort); }
  /// The sort of every line of a plain list: the first that knows all headings and finds all that it needs.
  /// Puts down faults against the kind's first sort where there is none.
  const Sort* plainSort(std::vector<Fault>& faults) const;
  /// Headings that no sort knows, and units that are none of the heading's. `plain`: the only sort, or null.
  void checkHeadings(const Sort* plain, std::vector<Fault>& faults) const;

private:
  const CsvTable* table_;
  const Sorts* sorts_;
  std::map<const Sort*, SortColumns> bySort_;
};

} // namespace hangbook::exchange
