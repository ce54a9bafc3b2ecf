// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/csv_write.h"
#include "exchange/kind_sorts.h"

namespace hangbook::exchange {

QByteArray writeFile(Kind kind, const Data& data) {
  const Sorts& sorts = sortsOf(kind);
  const std::vector<Heading> together = headingsTogether(sorts);
  std::vector<QStringList> records = {headingsOf(kind)};
  for (const auto& sort : sorts) {
    std::vector<std::size_t> where; // of each of the sort's columns in the file
    for (const Heading& heading : sort->headings()) {
      const auto found = std::ranges::find(together, heading.name, &Heading::name);
      where.push_back(static_cast<std::size_t>(found - together.begin()) + 1);
    }
    for (const std::vector<QString>& line : sort->write(data)) {
      QStringList record(static_cast<qsizetype>(together.size()) + 1);
      record[0] = sort->word();
      for (std::size_t column = 0; column < line.size(); ++column) {
        record[static_cast<qsizetype>(where[column])] = line[column];
      }
      records.push_back(std::move(record));
    }
  }
  return writeCsv(records);
}

} // namespace hangbook::exchange
