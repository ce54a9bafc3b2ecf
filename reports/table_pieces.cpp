// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/table_pieces.h"

#include <algorithm>
#include <numeric>

namespace hangbook::reports {
namespace {

constexpr double cellPad = 70;
constexpr double pastFigure = 60; ///< more room where words follow a figure that ends at its column's edge
constexpr double tickRoom = 200;
constexpr double signRoom = 270;
constexpr int headSize = 98;
constexpr int asideSize = 102;
/// A figure longer than this may be broken between its words.
constexpr double longestFigure = 1000;

int sizeOf(const Table& table) {
  return table.large ? 124 : 106;
}

double indentOf(const Table& table, std::size_t column) {
  return column > 0 && table.columns[column - 1].figure && !table.columns[column].figure ? pastFigure : 0.0;
}

double leastOf(const Table& table, std::size_t column, Ink& ink) {
  const bool figure = table.columns[column].figure;
  ink.use(headSize, true);
  double least = ink.widestPiece(table.columns[column].heading);
  for (const Table::Row& row : table.rows) {
    if (column >= static_cast<std::size_t>(row.cells.size()) || row.aside) {
      continue;
    }
    const QString& cell = row.cells[static_cast<qsizetype>(column)];
    ink.use(sizeOf(table), row.strong);
    const double whole = figure ? ink.widthOf(cell) : 0.0;
    least = std::max({least, ink.widestPiece(cell), whole <= longestFigure ? whole : 0.0});
  }
  return least + cellPad + indentOf(table, column) + 2; // a hair for rounding
}

struct Cut {
  Table table;
  std::vector<double> widths;
  double indent = 0;
};

double leftOf(const Cut& cut, std::size_t column) {
  return cut.indent +
         std::accumulate(cut.widths.begin(), cut.widths.begin() + static_cast<std::ptrdiff_t>(column), 0.0);
}

void signLine(const Cut& cut, Ink& ink, const QRectF& room) {
  const double y = room.bottom() - 110;
  const double middle = room.left() + room.width() * 0.66;
  ink.use(110, true);
  ink.lines(QStringLiteral("Name"), {room.left() + cut.indent, y - 90, 600, 200});
  ink.lines(QStringLiteral("Time"), {middle, y - 90, 600, 200});
  ink.rule(room.left() + cut.indent + 430, middle - 150, y + 45, 8);
  ink.rule(middle + 390, room.right(), y + 45, 8);
}

Piece rowPiece(const std::shared_ptr<const Cut>& cut, const Table::Row& row, int size, bool head, Ink ink) {
  const std::size_t columns = std::min(cut->widths.size(), static_cast<std::size_t>(row.cells.size()));
  const auto spare = [cut](std::size_t column) {
    return cut->widths[column] - cellPad - indentOf(cut->table, column);
  };
  ink.use(size, row.strong);
  double height = ink.lineHeight();
  for (std::size_t i = 0; i < columns; ++i) {
    height = std::max(height, ink.heightOf(row.cells[static_cast<qsizetype>(i)], spare(i)));
  }
  const double pad = cut->table.large && !row.aside ? 34 : 24;
  Piece piece;
  piece.height = height + 2 * pad + (row.toSign ? signRoom : 0);
  piece.keepWithNext = row.withNext;
  piece.draw = [=](Ink& on, const QRectF& room) {
    for (std::size_t i = 0; i < columns; ++i) {
      const QString& cell = row.cells[static_cast<qsizetype>(i)];
      const double left = room.left() + leftOf(*cut, i);
      on.use(size, row.strong);
      if (cut->table.columns[i].figure) {
        double y = room.top() + pad;
        for (const QString& line : on.broken(cell, spare(i))) {
          on.right(line, left + cut->widths[i] - cellPad, y);
          y += on.lineHeight();
        }
      } else {
        on.lines(cell, {left + indentOf(cut->table, i), room.top() + pad, spare(i), height});
      }
    }
    if (cut->table.ticked && !head && !row.aside) {
      on.box({room.left() + 10, room.top() + pad + 5, 110, 110}, 12);
    }
    if (row.toSign) {
      signLine(*cut, on, room);
    }
    on.rule(room.left(), room.right(), room.bottom(), head ? 14 : 4);
    if (row.warn) {
      on.painter().fillRect(QRectF(room.left() - 110, room.top() + 15, 50, room.height() - 30), Qt::black);
    }
  };
  return piece;
}

Piece textPiece(const QString& text, int size, bool bold, double above, double width, Ink ink) {
  ink.use(size, bold);
  Piece piece;
  piece.height = ink.heightOf(text, width) + above + 20;
  piece.keepWithNext = true;
  piece.draw = [=](Ink& on, const QRectF& room) {
    on.use(size, bold);
    on.lines(text, room.adjusted(0, above, 0, 0));
  };
  return piece;
}

/// One over the other, as one.
Piece stacked(const Piece& upper, const Piece& lower) {
  Piece piece;
  piece.height = upper.height + lower.height;
  piece.keepWithNext = true;
  piece.draw = [upper, lower](Ink& on, const QRectF& room) {
    upper.draw(on, {room.left(), room.top(), room.width(), upper.height});
    lower.draw(on, {room.left(), room.top() + upper.height, room.width(), lower.height});
  };
  return piece;
}

} // namespace

std::vector<double> widthsOf(const Table& table, Ink ink, double room) {
  std::vector<double> least;
  double needed = 0;
  for (std::size_t i = 0; i < table.columns.size(); ++i) {
    least.push_back(leastOf(table, i, ink));
    needed += least.back();
  }
  if (needed > room) {
    std::ranges::fill(least, 0.0);
  }
  // Whoever gets less than it needs by its share gets that, and the others share what is left.
  std::vector<bool> settled(least.size(), false);
  std::vector<double> widths(least.size(), 0.0);
  for (bool more = true; more;) {
    more = false;
    double left = room;
    double shares = 0;
    for (std::size_t i = 0; i < widths.size(); ++i) {
      settled[i] ? left -= widths[i] : shares += table.columns[i].share;
    }
    for (std::size_t i = 0; i < widths.size(); ++i) {
      if (!settled[i]) {
        widths[i] = left * table.columns[i].share / shares;
      }
    }
    for (std::size_t i = 0; i < widths.size(); ++i) {
      if (!settled[i] && widths[i] < least[i]) {
        widths[i] = least[i];
        settled[i] = more = true;
      }
    }
  }
  return widths;
}

std::vector<Piece> tablePieces(const Table& table, Ink ink, double width) {
  const double indent = table.ticked ? tickRoom : 0.0;
  const auto cut = std::make_shared<const Cut>(Cut{table, widthsOf(table, ink, width - indent), indent});
  Table::Row titles;
  titles.strong = true;
  for (const Table::Column& column : table.columns) {
    titles.cells << column.heading;
  }
  Piece heading = rowPiece(cut, titles, headSize, true, ink);
  heading.keepWithNext = true;
  std::vector<Piece> made;
  Piece over = heading;
  if (!table.title.isEmpty()) {
    made.push_back(textPiece(table.title, 155, true, 110, width, ink));
    over =
        stacked(textPiece(table.title + QStringLiteral(", continued"), 130, true, 20, width, ink), heading);
  }
  if (!table.note.isEmpty()) {
    made.push_back(textPiece(table.note, 120, false, 20, width, ink));
  }
  made.push_back(heading);
  const auto again = std::make_shared<Piece>(over);
  for (const Table::Row& row : table.rows) {
    made.push_back(rowPiece(cut, row, row.aside ? asideSize : sizeOf(table), false, ink));
    made.back().again = again;
  }
  return made;
}

} // namespace hangbook::reports
