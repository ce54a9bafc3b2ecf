// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/file_columns.h"

#include <algorithm>

namespace hangbook::exchange {
namespace {

QString comparable(const QString& name) {
  return foldedName(QString(name).replace(QChar(0x2019), QLatin1Char('\''))); // a typographer's apostrophe
}

/// For each column of the sort its cell: by the heading's full name, else without the unit at its end.
SortColumns match(const CsvTable& table, const Sort& sort, std::optional<int> recordColumn) {
  SortColumns columns;
  for (const CsvHeading& heading : table.headings) {
    columns.headings.push_back({heading.written, heading.unit});
  }
  std::vector<bool> known(table.headings.size(), false);
  if (recordColumn) {
    known[static_cast<std::size_t>(*recordColumn)] = true;
  }
  for (const Heading& wanted : sort.headings()) {
    const QString name = comparable(wanted.name);
    int found = -1;
    for (std::size_t cell = 0; cell < table.headings.size() && found < 0; ++cell) {
      if (comparable(table.headings[cell].name) == name) {
        found = static_cast<int>(cell);
      }
    }
    for (std::size_t cell = 0; cell < table.headings.size() && found < 0; ++cell) {
      if (!known[cell] && comparable(table.headings[cell].shortName) == name) {
        found = static_cast<int>(cell);
        columns.headings[cell].unit = table.headings[cell].shortUnit;
      }
    }
    columns.where.push_back(found);
    if (found >= 0) {
      known[static_cast<std::size_t>(found)] = true;
    }
  }
  for (std::size_t cell = 0; cell < known.size(); ++cell) {
    if (!known[cell]) {
      columns.strange.push_back(static_cast<int>(cell));
    }
  }
  return columns;
}

bool finds(const SortColumns& columns, const Sort& sort) {
  const std::vector<Heading> headings = sort.headings();
  for (std::size_t column = 0; column < headings.size(); ++column) {
    if (columns.where[column] < 0 && headings[column].need == Need::key) {
      return false;
    }
  }
  return true;
}

QString namesOf(const Sort& sort) {
  QStringList names;
  for (const Heading& heading : sort.headings()) {
    names << heading.name;
  }
  return names.join(QStringLiteral(", "));
}

} // namespace

FileColumns::FileColumns(const CsvTable& table, const Sorts& sorts, std::optional<int> recordColumn)
    : table_(&table), sorts_(&sorts) {
  for (const auto& sort : sorts) {
    bySort_[sort.get()] = match(table, *sort, recordColumn);
  }
}

const Sort* FileColumns::plainSort(std::vector<Fault>& faults) const {
  for (const auto& sort : *sorts_) {
    const SortColumns& columns = of(*sort);
    if (columns.strange.empty() && finds(columns, *sort)) {
      return sort.get();
    }
  }
  const Sort& first = *sorts_->front();
  const SortColumns& columns = of(first);
  const std::vector<Heading> headings = first.headings();
  for (std::size_t column = 0; column < headings.size(); ++column) {
    if (columns.where[column] < 0 && headings[column].need == Need::key) {
      faults.push_back({table_->headingLine,
                        {},
                        {},
                        QStringLiteral("a column \"%1\": each %2 needs it; or a column \"record\" that says "
                                       "what each line is")
                            .arg(headings[column].name, first.word())});
    }
  }
  return &first;
}

void FileColumns::checkHeadings(const Sort* plain, std::vector<Fault>& faults) const {
  for (std::size_t cell = 0; cell < table_->headings.size(); ++cell) {
    const bool strange = std::ranges::all_of(*sorts_, [&](const auto& sort) {
      return (plain && plain != sort.get()) ||
             std::ranges::count(of(*sort).strange, static_cast<int>(cell)) > 0;
    });
    if (strange) {
      faults.push_back({table_->headingLine, table_->headings[cell].written, table_->headings[cell].written,
                        plain ? QStringLiteral("a heading of a %1: ").arg(plain->word()) + namesOf(*plain)
                              : QStringLiteral("a heading that the dictionary of this kind of file has")});
    }
  }
  for (const auto& sort : *sorts_) {
    if (plain && plain != sort.get()) {
      continue;
    }
    const SortColumns& columns = of(*sort);
    for (std::size_t column = 0; column < columns.where.size(); ++column) {
      if (columns.where[column] < 0) {
        continue;
      }
      const FileHeading& heading = columns.headings[static_cast<std::size_t>(columns.where[column])];
      try {
        sort->checkHeading(column, {heading.written, heading.unit, {}});
      } catch (const Unreadable& trouble) {
        const Fault fault{table_->headingLine, heading.written, heading.unit, trouble.expected};
        if (!std::ranges::count(faults, fault)) {
          faults.push_back(fault);
        }
      }
    }
  }
}

} // namespace hangbook::exchange
