// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/import.h"

#include <algorithm>

#include "exchange/changes.h"
#include "exchange/file_columns.h"
#include "exchange/kind_sorts.h"

namespace hangbook::exchange {
namespace {

/// A filled cell under a heading that the line's sort does not know would be dropped: a fault.
void checkStray(const SortColumns& columns, const CsvRecord& row, const CsvTable& table, const Sort& sort,
                std::vector<Fault>& faults) {
  for (const int cell : columns.strange) {
    if (!row.cells[cell].isEmpty()) {
      faults.push_back({row.line, table.headings[static_cast<std::size_t>(cell)].written, row.cells[cell],
                        QStringLiteral("an empty cell: a %1 has nothing of that name").arg(sort.word())});
    }
  }
}

const Sort* sortOf(const CsvRecord& row, std::optional<int> recordColumn, const Sorts& sorts,
                   const Sort* plain, std::vector<Fault>& faults) {
  if (!recordColumn) {
    return plain;
  }
  const QString& word = row.cells[*recordColumn];
  QStringList words;
  for (const auto& sort : sorts) {
    if (word.compare(sort->word(), Qt::CaseInsensitive) == 0) {
      return sort.get();
    }
    words << sort->word();
  }
  faults.push_back(
      {row.line, recordHeading(), word, QStringLiteral("one of: ") + words.join(QStringLiteral(", "))});
  return nullptr;
}

/// The lines in the order of their sorts: what a line is part of goes in before it.
void readLines(const CsvTable& table, const Sorts& sorts, Work& work) {
  const auto recordColumn = table.column(recordHeading());
  const FileColumns columns(table, sorts, recordColumn);
  const Sort* plain = recordColumn ? nullptr : columns.plainSort(work.faults);
  columns.checkHeadings(plain, work.faults);
  if (!work.faults.empty()) {
    return;
  }
  std::vector<std::pair<const Sort*, const CsvRecord*>> lines;
  for (const CsvRecord& row : table.rows) {
    if (const Sort* sort = sortOf(row, recordColumn, sorts, plain, work.faults)) {
      checkStray(columns.of(*sort), row, table, *sort, work.faults);
      lines.emplace_back(sort, &row);
    }
  }
  for (const auto& sort : sorts) {
    const SortColumns& places = columns.of(*sort);
    for (const auto& [of, row] : lines) {
      if (of == sort.get()) {
        sort->read(
            work, {row->line, &row->cells, &places.where, &places.headings, table.numbers, table.dateFormat});
      }
    }
  }
  for (const auto& check : work.later) {
    check();
  }
}

void sortCounts(std::vector<Count>& counts, const Sorts& sorts) {
  std::vector<Count> sorted;
  for (const auto& sort : sorts) {
    const auto found = std::ranges::find(counts, sort->word(), &Count::sort);
    if (found != counts.end()) {
      sorted.push_back(*found);
    }
  }
  counts = std::move(sorted);
}

} // namespace

int Import::lineOfChosen(const Chosen& chosen) const {
  const auto found = linesOfChosen.find(joined({chosen.tour, chosen.show, chosen.hang}));
  return found == linesOfChosen.end() ? 0 : found->second;
}

Import readFile(Kind kind, const QByteArray& bytes, const Data& before, const Importer& importer,
                const CsvForm& form) {
  Import import;
  const CsvTable table = readCsv(bytes, form);
  import.form = formText(table);
  import.headings = table.written;
  Work work(before, importer);
  work.faults = table.faults;
  if (work.faults.empty()) {
    readLines(table, sortsOf(kind), work);
  }
  if (work.faults.empty()) {
    import.after = std::move(work.after);
    import.changes = changesBetween(before, import.after);
    import.counts = std::move(work.counts);
    import.differences = std::move(work.differences);
    std::ranges::stable_sort(import.differences, {}, &Difference::line);
    sortCounts(import.counts, sortsOf(kind));
    import.linesOfChosen = std::move(work.linesOfChosen);
  } else {
    import.after = before;
    import.faults = std::move(work.faults);
    std::ranges::stable_sort(import.faults, {}, &Fault::line);
  }
  return import;
}

} // namespace hangbook::exchange
