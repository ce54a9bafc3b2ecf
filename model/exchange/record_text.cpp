// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/record_text.h"

#include <algorithm>

#include "exchange/csv_write.h"
#include "exchange/kind_sorts.h"
#include "quantity/error.h"

namespace hangbook::exchange {
namespace {

const Sort& sortNamed(Kind kind, const QString& word) {
  const Sorts& all = sortsOf(kind);
  const auto found = std::ranges::find_if(all, [&](const auto& each) { return each->word() == word; });
  if (found == all.end()) {
    throw Error(Trouble::badInput, "is no sort of line of a file of " + wordFor(kind).toStdString(),
                word.toStdString());
  }
  return **found;
}

} // namespace

std::vector<RecordField> fieldsOf(Kind kind, const QString& sort) {
  std::vector<RecordField> fields;
  for (const Heading& each : sortNamed(kind, sort).headings()) {
    fields.push_back({each.name, QString::fromUtf8(each.unit), isKey(each.need)});
  }
  return fields;
}

QStringList recordText(const RecordName& record, const Data& data) {
  const Sort& sort = sortNamed(record.kind, record.sort);
  const std::vector<Heading> headings = sort.headings();
  const auto name = std::ranges::find_if(headings, [](const Heading& each) { return isKey(each.need); });
  const auto column = static_cast<std::size_t>(name - headings.begin());
  for (const std::vector<QString>& line : sort.write(data)) {
    if (column < line.size() && line[column] == record.name) {
      return {line.begin(), line.end()};
    }
  }
  return {};
}

QByteArray recordFile(Kind kind, const QString& sort, const QStringList& texts) {
  QStringList headings{recordHeading()};
  QStringList line{sort};
  const std::vector<Heading> columns = sortNamed(kind, sort).headings();
  for (std::size_t i = 0; i < columns.size(); ++i) {
    headings << writtenHeading(columns[i]);
    line << texts.value(static_cast<qsizetype>(i)).remove(QChar::Null).simplified();
  }
  return writeCsv({headings, line});
}

RecordRead readRecord(Kind kind, const QString& sort, const QStringList& texts, const Data& before) {
  Import import = readFile(kind, recordFile(kind, sort, texts), before, {{}, {}});
  RecordRead read{std::move(import.after), std::move(import.differences), {}};
  for (const Fault& fault : import.faults) {
    const qsizetype unit = fault.column.indexOf(QStringLiteral(" ["));
    read.faults.push_back({unit < 0 ? fault.column : fault.column.left(unit), fault.read, fault.expected});
  }
  return read;
}

} // namespace hangbook::exchange
