// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/csv.h"

#include <algorithm>

#include "exchange/cell.h"
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
  if (form.dateFormat.isEmpty()) {
    return; // days as the standard writes them
  }
  for (const QString& each : dateFormats(form.dateFormat)) {
    if (!tellsEveryDay(each)) {
      throw Error(Trouble::badInput,
                  "\"" + each.toStdString() +
                      "\" does not tell every day: a date format with day, month and a year "
                      "of four digits is expected, such as dd.MM.yyyy");
    }
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

void splitHeadings(const CsvRecord& record, CsvTable& table) {
  table.headingLine = record.line;
  table.written = record.cells;
  while (!table.written.isEmpty() && table.written.back().isEmpty()) {
    table.written.removeLast(); // columns that were cleared in the spreadsheet
  }
  for (const QString& cell : table.written) {
    table.headings.push_back(readHeading(cell));
  }
}

void checkHeadings(CsvTable& table) {
  for (std::size_t at = 0; at < table.headings.size(); ++at) {
    const CsvHeading& heading = table.headings[at];
    const auto same =
        std::find_if(table.headings.begin(), table.headings.begin() + static_cast<std::ptrdiff_t>(at),
                     [&](const CsvHeading& each) { return each.shortName == heading.shortName; });
    if (heading.name.isEmpty()) {
      table.faults.push_back(
          {table.headingLine, {}, {}, QStringLiteral("a heading over column %1").arg(at + 1)});
    } else if (same != table.headings.begin() + static_cast<std::ptrdiff_t>(at)) {
      table.faults.push_back({table.headingLine, heading.written, heading.written,
                              QStringLiteral("each heading once; column %1 is “%2”")
                                  .arg(same - table.headings.begin() + 1)
                                  .arg(same->written)});
    }
  }
}

/// Takes so many lines from the front; answers how many there were to take.
int dropLines(QString& text, int count) {
  qsizetype at = 0;
  int dropped = 0;
  while (dropped < count && at < text.size()) {
    while (at < text.size() && text[at] != u'\n' && text[at] != u'\r') {
      ++at;
    }
    at += QStringView(text).sliced(at).startsWith(QLatin1String("\r\n")) ? 2 : 1;
    ++dropped;
  }
  text.remove(0, at);
  return dropped;
}

/// Lines above the headings are a title. Faults where the headings do not stand where they are said to.
int dropTitle(const CsvForm& form, QString& text, int linesBefore) {
  return form.mapping.headingLine > linesBefore + 1
             ? dropLines(text, form.mapping.headingLine - linesBefore - 1)
             : 0;
}

void checkHeadingLine(const CsvForm& form, CsvTable& table) {
  if (form.mapping.headingLine > 0 && table.headingLine != form.mapping.headingLine) {
    table.faults.push_back({form.mapping.headingLine, {}, {}, QStringLiteral("the line of the headings")});
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
  linesBefore += dropTitle(form, text, linesBefore);
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
  splitHeadings(records.front(), table);
  checkHeadingLine(form, table);
  table.rows.assign(std::make_move_iterator(records.begin() + 1), std::make_move_iterator(records.end()));
  for (CsvRecord& row : table.rows) {
    fitToHeadings(row, table);
  }
  applyMapping(form.mapping, table);
  checkHeadings(table);
  if (form.decimalMark) {
    table.numbers.decimalMark = *form.decimalMark;
  } else if (table.separator != ',') {
    table.numbers.decimalMark = findDecimalMark(table.rows, table.faults).value_or('.');
  }
  return table;
}

std::vector<CsvRecord> firstRecords(const QByteArray& bytes, const CsvForm& form, int most) {
  std::vector<Fault> ignored; // they are told when the file is read
  const QString text = decodeCsv(bytes, ignored);
  std::vector<CsvRecord> best;
  const auto widest = [](const std::vector<CsvRecord>& records) {
    qsizetype cells = 0;
    for (const CsvRecord& each : records) {
      cells = std::max(cells, each.cells.size());
    }
    return cells;
  };
  for (const char separator :
       form.separator ? std::vector<char>{*form.separator} : std::vector<char>{',', ';', '\t'}) {
    std::vector<CsvRecord> records = splitCsv(text, QLatin1Char(separator), ignored, most);
    if (best.empty() || widest(records) > widest(best)) {
      best = std::move(records);
    }
  }
  for (CsvRecord& record : best) {
    for (QString& cell : record.cells) {
      cell = cell.trimmed();
    }
    while (!record.cells.isEmpty() && record.cells.back().isEmpty()) {
      record.cells.removeLast();
    }
  }
  std::erase_if(best, isBlank);
  return best;
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
