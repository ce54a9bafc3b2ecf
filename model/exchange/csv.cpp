// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/csv.h"

#include <algorithm>

#include "exchange/csv_bytes.h"
#include "exchange/csv_form.h"

namespace hangbook::exchange {
namespace {

void mustBeKnown(const CsvForm& form) {
  if (form.separator && *form.separator != ',' && *form.separator != ';' && *form.separator != '\t') {
    throw Error(Trouble::badInput, "cells are separated by a comma, a semicolon or a tab");
  }
  if (form.decimalMark && *form.decimalMark != '.' && *form.decimalMark != ',') {
    throw Error(Trouble::badInput, "the decimal mark is a point or a comma");
  }
  if (!form.dateFormat.isEmpty() && !tellsEveryDay(form.dateFormat)) {
    throw Error(Trouble::badInput, "\"" + form.dateFormat.toStdString() +
                                       "\" does not tell every day: a date format with day, month and a year "
                                       "of four digits is expected, such as dd.MM.yyyy");
  }
}

/// Some programs say the separator on a line of its own: sep=;
std::optional<char> saidSeparator(const QString& text) {
  if (!text.startsWith(QLatin1String("sep="), Qt::CaseInsensitive) || text.size() < 6 ||
      (text[5] != u'\n' && text[5] != u'\r')) {
    return std::nullopt;
  }
  const char said = text[4].toLatin1();
  return said == ',' || said == ';' || said == '\t' ? std::optional(said) : std::nullopt;
}

bool isBlank(const CsvRecord& record) {
  return std::ranges::all_of(record.cells, [](const QString& cell) { return cell.isEmpty(); });
}

void readHeadings(const CsvRecord& record, CsvTable& table) {
  table.headingLine = record.line;
  QStringList cells = record.cells;
  while (!cells.isEmpty() && cells.back().isEmpty()) {
    cells.removeLast(); // columns that were cleared in the spreadsheet
  }
  for (const QString& cell : cells) {
    const CsvHeading heading = readHeading(cell);
    const auto same = std::ranges::find(table.headings, heading.shortName, &CsvHeading::shortName);
    if (heading.name.isEmpty()) {
      table.faults.push_back(
          {record.line, {}, {}, QStringLiteral("a heading over column %1").arg(table.headings.size() + 1)});
    } else if (same != table.headings.end()) {
      table.faults.push_back({record.line, heading.written, heading.written,
                              QStringLiteral("each heading once; column %1 is “%2”")
                                  .arg(same - table.headings.begin() + 1)
                                  .arg(same->written)});
    }
    table.headings.push_back(heading);
  }
}

void fitToHeadings(CsvRecord& row, CsvTable& table) {
  const auto count = static_cast<qsizetype>(table.headings.size());
  for (qsizetype at = count; at < row.cells.size(); ++at) {
    if (!row.cells[at].isEmpty()) {
      table.faults.push_back({row.line,
                              {},
                              row.cells[at],
                              QStringLiteral("at most %1 cells, one for each heading, not %2")
                                  .arg(count)
                                  .arg(row.cells.size())});
      break;
    }
  }
  row.cells.resize(count);
}

} // namespace

std::optional<int> CsvTable::column(const QString& name) const {
  const QString folded = foldedName(name);
  for (const auto member : {&CsvHeading::name, &CsvHeading::shortName}) {
    const auto found = std::ranges::find(headings, folded, member);
    if (found != headings.end()) {
      return static_cast<int>(found - headings.begin());
    }
  }
  return std::nullopt;
}

QString CsvTable::unit(const QString& name) const {
  const std::optional<int> at = column(name);
  if (!at) {
    return {};
  }
  const CsvHeading& heading = headings[static_cast<std::size_t>(*at)];
  return heading.name == foldedName(name) ? heading.unit : heading.shortUnit;
}

CsvTable readCsv(const QByteArray& bytes, const CsvForm& form) {
  mustBeKnown(form);
  CsvTable table;
  table.dateFormat = form.dateFormat;
  QString text = decodeCsv(bytes, table.faults);
  if (!table.faults.empty()) {
    return table;
  }
  std::optional<char> separator = form.separator;
  int linesBefore = 0;
  if (const std::optional<char> said = saidSeparator(text)) {
    text.remove(0, text.sliced(5).startsWith(QLatin1String("\r\n")) ? 7 : 6);
    linesBefore = 1;
    if (!separator) {
      separator = said;
    }
  }
  if (!separator) {
    separator = findSeparator(text, table.faults);
  }
  if (!separator) {
    return table;
  }
  table.separator = *separator;
  std::vector<CsvRecord> records = splitCsv(text, QLatin1Char(*separator), table.faults);
  for (CsvRecord& record : records) {
    for (QString& cell : record.cells) {
      cell = cell.trimmed();
    }
  }
  std::erase_if(records, isBlank);
  for (CsvRecord& record : records) {
    record.line += linesBefore;
  }
  for (Fault& fault : table.faults) {
    fault.line += linesBefore;
  }
  if (records.empty()) {
    table.faults.push_back({0, {}, {}, QStringLiteral("a line of headings, but the file is empty")});
    return table;
  }
  readHeadings(records.front(), table);
  table.rows.assign(std::make_move_iterator(records.begin() + 1), std::make_move_iterator(records.end()));
  for (CsvRecord& row : table.rows) {
    fitToHeadings(row, table);
  }
  if (form.decimalMark) {
    table.numbers.decimalMark = *form.decimalMark;
  } else if (table.separator != ',') {
    table.numbers.decimalMark = findDecimalMark(table.rows, table.faults).value_or('.');
  }
  return table;
}

QString formText(const CsvTable& table) {
  const QString separator = table.separator == '\t'
                                ? QStringLiteral("tabs")
                                : QStringLiteral("“%1”").arg(QLatin1Char(table.separator));
  return QStringLiteral("separated by %1, decimal mark “%2”")
      .arg(separator)
      .arg(QLatin1Char(table.numbers.decimalMark));
}

} // namespace hangbook::exchange
