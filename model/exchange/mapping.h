// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QByteArray>
#include <QString>
#include <QStringList>

/// How the headings of somebody's own list go with ours, so that a list comes in as it is.
namespace hangbook::exchange {

struct CsvTable;

struct Mapping {
  /// One column of the file. `from` is its heading, or "#3" for the third column, whatever stands over it.
  struct Column {
    QString from;
    QString to; ///< our heading, with a unit in brackets where the file's has none; empty = left out
    bool operator==(const Column&) const = default;
  };
  /// A column that the file does not have, the same on every line: kind = hoist.
  struct Everywhere {
    QString heading;
    QString value;
    bool operator==(const Everywhere&) const = default;
  };

  int headingLine = 0; ///< line of the file on which the headings stand; 0 = the first that is not empty
  std::vector<Column> columns;
  std::vector<Everywhere> everywhere;

  bool empty() const { return headingLine == 0 && columns.empty() && everywhere.empty(); }
  bool operator==(const Mapping&) const = default;
};

/// Puts `mapping` to a table whose headings and rows are as the file has them; faults where it names a
/// heading that the file lacks or has twice, one column twice, or gives a column everywhere that the file
/// has. Columns that it does not name stay as they are.
void applyMapping(const Mapping& mapping, CsvTable& table);

/// Both ways, for keeping it. Throws Error where the text is none of ours.
QByteArray mappingText(const Mapping& mapping);
Mapping mappingFrom(const QByteArray& text);

/// What names a form of file: its headings as they stand, in order.
QString headingsKey(const QStringList& headings);

} // namespace hangbook::exchange
