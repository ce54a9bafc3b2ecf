// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <ostream>
#include <vector>

#include <QString>
#include <QStringList>

/// Plain tables for people: aligned columns, a heading each, narrow enough for a small window.
namespace hangbook::terminal {

struct Column {
  QString heading; ///< with its unit: "trim [m]"
  enum class Kind {
    words,  ///< flush left
    figure, ///< flush right
    text,   ///< flush left, broken between words where the table would be too wide
  } kind = Kind::words;
};

class Table {
public:
  explicit Table(std::vector<Column> columns) : columns_(std::move(columns)) {}
  /// One cell for each column; `note` stands under the row, indented, over the whole width.
  void add(const QStringList& cells, const QStringList& note = {}) {
    rows_.push_back(cells);
    notes_.push_back(note);
  }
  bool empty() const { return rows_.empty(); }
  /// Columns of the kind `text` give way until the table is `width` wide. A column without a filled cell is
  /// left out. For readers with US customary units (terminal/both_units.h) figures of a column whose heading
  /// ends in a metric unit, or of a row that names one under "unit", have the other figure in brackets.
  void print(std::ostream& out, const QString& indent = {}, int width = 110) const;

private:
  Table forReadersOf(const std::ostream& out) const;
  void lay(std::ostream& out, const QString& indent, int width) const;

  std::vector<Column> columns_;
  std::vector<QStringList> rows_;
  std::vector<QStringList> notes_; ///< of each row
};

/// How many places a text takes in a terminal: marks that sit on the letter before take none.
int shownWidth(const QString& text);

/// Breaks a text between words into lines of at most `width`; a longer word is cut.
QStringList brokenInto(const QString& text, int width);

} // namespace hangbook::terminal
