// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <variant>
#include <vector>

#include <QDateTime>
#include <QPointF>
#include <QStringList>

/// A sheet as plain values: what stands on it, in order, before any page is known. The same values become a
/// PDF and a CSV.
namespace hangbook::reports {

struct Text {
  enum class Size { heading, body, strong } size = Size::body;
  QString text;
};

struct Table {
  struct Column {
    QString heading;    ///< with no unit where each cell has its own
    double share = 1.0; ///< of the width
    bool figure = false;
  };
  struct Row {
    QStringList cells;
    bool strong = false;
    bool toSign = false;   ///< room for a name and a time under it
    bool warn = false;     ///< something is not known
    bool withNext = false; ///< never the last on its page: what it belongs to stands in the next
    bool aside = false;    ///< set smaller, with nothing to tick: no row of its own
  };
  QString name; ///< of the table in the CSV
  std::vector<Column> columns;
  std::vector<Row> rows;
  bool large = false;  ///< set larger
  bool ticked = false; ///< a box to tick before each row
  QString title = {};  ///< over it, and again on each further page: a page may be held alone
  QString note = {};   ///< under the title, once
};

/// One figure that is read from afar.
struct Big {
  QString caption;
  QString text;
  QStringList beside;
};

/// Lines in the drawing's own metres, x to the right, y up.
struct Drawing {
  struct Stroke {
    std::vector<QPointF> points;
    bool closed = false;
    bool heavy = false;
    bool dashed = false;
  };
  struct Note {
    QPointF at;
    QString text;
    bool left = false; ///< stands to the left of its place
    bool strong = false;
    bool above = false; ///< stands over its place, with a line to it where it had to give way to another
    bool below = false; ///< stands under its place
  };
  QString caption;
  std::vector<Stroke> strokes;
  std::vector<Note> notes;
  double height = 300; ///< on the page, points
  double share = 0.5;  ///< of the page's width that may be drawn on; the rest is its notes'
};

/// Bars from the left, each with its own words: no shade carries a meaning.
struct Chart {
  struct Bar {
    QString label;
    double value = 0;
    QString text;
  };
  QString caption;
  std::vector<Bar> bars;
};

struct NewPage {};

using Block = std::variant<Text, Table, Big, Drawing, Chart, NewPage>;

struct Sheet {
  QString kind; ///< "load-sheet"
  QString title;
  QString show;      ///< or tour
  QStringList about; ///< venue, dates …
  QString revision;
  QStringList notCleared; ///< not empty: NOT CLEARED TO LIFT, and why
  QString sides;          ///< left and right, and from whose view
  std::vector<Block> blocks;
};

/// What tells one print of a sheet from another.
struct Stamp {
  QString program;
  QDateTime printed; ///< UTC
  QString checksum;  ///< short
  QString code;      ///< what the QR code holds
};

/// All that the sheet says, as records for a CSV: a table's name stands in the first cell of each of its
/// rows.
std::vector<QStringList> recordsOf(const Sheet& sheet, const Stamp& stamp);

} // namespace hangbook::reports
