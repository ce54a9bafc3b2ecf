// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/mapping.h"

#include <algorithm>
#include <optional>
#include <set>

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include "exchange/csv.h"
#include "exchange/work.h"
#include "quantity/error.h"

namespace hangbook::exchange {
namespace {

/// Puts down what is wrong with the mapping itself, at the line of the headings.
void fault(CsvTable& table, const QString& read, const QString& expected) {
  table.faults.push_back({table.headingLine, {}, read, expected});
}

/// The cells that `from` names; one, where nothing is wrong.
std::vector<std::size_t> cellsOf(const QString& from, const CsvTable& table) {
  if (from.startsWith(u'#')) {
    bool good = false;
    const int number = from.sliced(1).toInt(&good);
    if (good && number >= 1 && number <= static_cast<int>(table.headings.size())) {
      return {static_cast<std::size_t>(number) - 1};
    }
  }
  std::vector<std::size_t> found;
  for (std::size_t cell = 0; cell < table.headings.size(); ++cell) {
    if (foldedName(table.headings[cell].written) == foldedName(from)) {
      found.push_back(cell);
    }
  }
  return found;
}

/// The heading that a column gets: ours, with the file's own unit where ours says none.
CsvHeading renamed(const CsvHeading& own, const QString& to) {
  CsvHeading heading = readHeading(to);
  if (heading.unit.isEmpty() && !own.unit.isEmpty()) {
    heading.unit = own.unit;
    heading.shortName = heading.name;
    heading.shortUnit = own.unit;
  }
  heading.written = own.written.isEmpty() ? to : own.written; // faults speak of the file as it is
  return heading;
}

void dropCells(CsvTable& table, const std::set<std::size_t>& cells) {
  for (const std::size_t cell : std::vector(cells.rbegin(), cells.rend())) { // from the back: places stand
    table.headings.erase(table.headings.begin() + static_cast<std::ptrdiff_t>(cell));
    for (CsvRecord& row : table.rows) {
      row.cells.removeAt(static_cast<qsizetype>(cell));
    }
  }
}

} // namespace

void applyMapping(const Mapping& mapping, CsvTable& table) {
  std::set<std::size_t> named;
  std::set<std::size_t> leftOut;
  std::vector<CsvHeading> headings = table.headings;
  for (const Mapping::Column& column : mapping.columns) {
    const std::vector<std::size_t> cells = cellsOf(column.from, table);
    if (cells.size() != 1) {
      fault(table, column.from,
            cells.empty()
                ? QStringLiteral("a heading of this file, or #1 to #%1 for a column by its number")
                      .arg(table.headings.size())
                : QStringLiteral("a heading that stands once; name the column by its number, such as #%1")
                      .arg(cells.front() + 1));
      continue;
    }
    if (!named.insert(cells.front()).second) {
      fault(table, column.from, QStringLiteral("each column once"));
      continue;
    }
    if (column.to.trimmed().isEmpty()) {
      leftOut.insert(cells.front());
    } else {
      headings[cells.front()] = renamed(table.headings[cells.front()], column.to);
    }
  }
  table.headings = std::move(headings);
  dropCells(table, leftOut);
  for (const Mapping::Everywhere& each : mapping.everywhere) {
    if (table.column(each.heading)) {
      fault(table, each.heading,
            QStringLiteral("a heading that the file does not have: its cells would be lost"));
      continue;
    }
    table.headings.push_back(readHeading(each.heading));
    for (CsvRecord& row : table.rows) {
      row.cells.append(each.value.trimmed());
    }
  }
}

QByteArray mappingText(const Mapping& mapping) {
  QJsonArray columns;
  for (const Mapping::Column& each : mapping.columns) {
    columns.append(QJsonObject{{QStringLiteral("from"), each.from}, {QStringLiteral("to"), each.to}});
  }
  QJsonArray everywhere;
  for (const Mapping::Everywhere& each : mapping.everywhere) {
    everywhere.append(
        QJsonObject{{QStringLiteral("heading"), each.heading}, {QStringLiteral("value"), each.value}});
  }
  return QJsonDocument(QJsonObject{{QStringLiteral("format"), QStringLiteral("hangbook.mapping/1")},
                                   {QStringLiteral("heading_line"), mapping.headingLine},
                                   {QStringLiteral("columns"), columns},
                                   {QStringLiteral("everywhere"), everywhere}})
      .toJson(QJsonDocument::Compact);
}

Mapping mappingFrom(const QByteArray& text) {
  const QJsonObject object = QJsonDocument::fromJson(text).object();
  if (object[QLatin1String("format")].toString() != QLatin1String("hangbook.mapping/1")) {
    throw Error(Trouble::badInput, "a mapping of columns (hangbook.mapping/1) is expected");
  }
  Mapping mapping;
  mapping.headingLine = object[QLatin1String("heading_line")].toInt();
  for (const QJsonValue& each : object[QLatin1String("columns")].toArray()) {
    mapping.columns.push_back({each[QLatin1String("from")].toString(), each[QLatin1String("to")].toString()});
  }
  for (const QJsonValue& each : object[QLatin1String("everywhere")].toArray()) {
    mapping.everywhere.push_back(
        {each[QLatin1String("heading")].toString(), each[QLatin1String("value")].toString()});
  }
  return mapping;
}

QString headingsKey(const QStringList& headings) {
  QStringList folded;
  for (const QString& each : headings) {
    folded << foldedName(each);
  }
  return joined(folded);
}

} // namespace hangbook::exchange
