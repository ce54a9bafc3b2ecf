// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/pieces.h"

#include <algorithm>
#include <cmath>

#include "reports/paint_drawing.h"

namespace hangbook::reports {
namespace {

constexpr double gap = 60;
constexpr double cellPad = 70;

double heightOf(const Ink& ink, const QString& text, double width) {
  return ink.lineHeight() * static_cast<double>(ink.broken(text, width).size());
}

class Cutter {
public:
  Cutter(Ink ink, double width) : ink_(ink), width_(width) {}

  std::vector<Piece> take() { return std::move(pieces_); }

  /// In a heavy frame, so that it is the first thing seen.
  void notCleared(const QStringList& why) {
    if (why.isEmpty()) {
      return;
    }
    const double inner = width_ - 4 * cellPad;
    ink_.use(300, true);
    double height = ink_.lineHeight() + 2 * cellPad;
    ink_.use(125, false);
    for (const QString& line : why) {
      height += heightOf(ink_, line, inner);
    }
    add(height + gap, [why, inner](Ink& ink, const QRectF& room) {
      ink.box(room.adjusted(10, 10, -10, -gap), 30);
      ink.use(300, true);
      double y = ink.lines(QStringLiteral("NOT CLEARED TO LIFT"),
                           {room.left() + 2 * cellPad, room.top() + cellPad, inner, 400});
      ink.use(125, false);
      for (const QString& line : why) {
        y = ink.lines(line, {room.left() + 2 * cellPad, y, inner, 400});
      }
    });
  }

  void operator()(const Text& text) {
    const bool heading = text.size == Text::Size::heading;
    const int size = heading ? 155 : 120;
    const bool bold = text.size != Text::Size::body;
    ink_.use(size, bold);
    const double above = heading ? 110 : 20;
    add(heightOf(ink_, text.text, width_) + above + 20, [=](Ink& ink, const QRectF& room) {
      ink.use(size, bold);
      ink.lines(text.text, room.adjusted(0, above, 0, 0));
    });
    pieces_.back().keepWithNext = heading;
  }

  void operator()(const Table& table) {
    const int size = table.large ? 120 : 102;
    std::vector<double> widths;
    double sum = 0;
    for (const Table::Column& column : table.columns) {
      sum += column.share;
    }
    const double tick = table.large ? 200 : 0;
    for (const Table::Column& column : table.columns) {
      widths.push_back((width_ - tick) * column.share / sum);
    }
    Table::Row head;
    for (const Table::Column& column : table.columns) {
      head.cells << column.heading;
    }
    head.strong = true;
    Piece heading = row(table, head, widths, 94, 0, true);
    heading.keepWithNext = true;
    const auto again = std::make_shared<Piece>(heading);
    pieces_.push_back(heading);
    for (const Table::Row& each : table.rows) {
      pieces_.push_back(row(table, each, widths, size, tick, false));
      pieces_.back().again = again;
    }
    add(gap, [](Ink&, const QRectF&) {});
  }

  void operator()(const Big& big) {
    ink_.use(720, true);
    const double height = ink_.lineHeight();
    add(height + gap, [big](Ink& ink, const QRectF& room) {
      ink.box(room.adjusted(10, 10, -10, -gap), 20);
      ink.use(140, true);
      ink.lines(big.caption, {room.left() + 100, room.top() + 60, 1100, 400});
      ink.use(720, true);
      ink.lines(big.text, {room.left() + 1150, room.top() - 10, 2000, 900});
      const double after = std::max(1150 + ink.widthOf(big.text) + 150, 2200.0);
      ink.use(125, false);
      double y = room.top() + 80;
      for (const QString& line : big.beside) {
        y = ink.lines(line, {room.left() + after, y, room.width() - after - 60, 400});
      }
    });
  }

  void operator()(const Drawing& drawing) {
    add(drawing.height * 10 + 260, [drawing](Ink& ink, const QRectF& room) {
      ink.use(110, true);
      const double y = ink.lines(drawing.caption, room);
      paint(drawing, ink, {room.left(), y + 20, room.width(), room.bottom() - y - gap});
    });
  }

  void operator()(const Chart& chart) {
    ink_.use(110, false);
    const double line = ink_.lineHeight() * 1.5;
    add(line * (static_cast<double>(chart.bars.size()) + 1.4) + gap,
        [chart, line](Ink& ink, const QRectF& room) { paint(chart, ink, room, line); });
  }

  void operator()(const NewPage&) {
    add(0, [](Ink&, const QRectF&) {});
    pieces_.back().newPage = true;
  }

private:
  void add(double height, std::function<void(Ink&, const QRectF&)> draw) {
    pieces_.push_back({height, std::move(draw), false, false, {}});
  }

  Piece row(const Table& table, const Table::Row& each, const std::vector<double>& widths, int size,
            double tick, bool head) {
    const bool bold = each.strong;
    const double indent = table.large ? 200 : 0;
    ink_.use(size, bold);
    double height = ink_.lineHeight();
    for (std::size_t i = 0; i < widths.size() && i < static_cast<std::size_t>(each.cells.size()); ++i) {
      height = std::max(height, heightOf(ink_, each.cells[static_cast<qsizetype>(i)], widths[i] - cellPad));
    }
    const double signs = each.toSign ? 190 : 0;
    const double pad = table.large ? 34 : 22;
    Piece piece;
    piece.height = height + 2 * pad + signs;
    piece.draw = [=](Ink& ink, const QRectF& room) {
      double x = room.left() + indent;
      for (std::size_t i = 0; i < widths.size() && i < static_cast<std::size_t>(each.cells.size()); ++i) {
        const QString& cell = each.cells[static_cast<qsizetype>(i)];
        ink.use(size, bold);
        if (table.columns[i].figure) {
          double y = room.top() + pad;
          for (const QString& line : ink.broken(cell, widths[i] - cellPad)) {
            ink.right(line, x + widths[i] - cellPad, y);
            y += ink.lineHeight();
          }
        } else {
          ink.lines(cell, {x, room.top() + pad, widths[i] - cellPad, height});
        }
        x += widths[i];
      }
      if (tick > 0) {
        ink.box({room.left() + 10, room.top() + pad + 5, 110, 110}, 12);
      }
      if (each.toSign) {
        const double y = room.bottom() - 95;
        ink.use(105, true);
        ink.lines(QStringLiteral("Name"), {room.left() + indent, y - 75, 600, 200});
        ink.lines(QStringLiteral("Time"), {room.left() + room.width() * 0.66, y - 75, 600, 200});
        ink.rule(room.left() + indent + 420, room.left() + room.width() * 0.63, y + 55, 8);
        ink.rule(room.left() + room.width() * 0.66 + 380, room.right(), y + 55, 8);
      }
      ink.rule(room.left(), room.right(), room.bottom(), head ? 14 : 4);
      if (each.warn) {
        ink.painter().fillRect(QRectF(room.left() - 110, room.top() + 15, 50, room.height() - 30), Qt::black);
      }
    };
    return piece;
  }

  Ink ink_;
  double width_;
  std::vector<Piece> pieces_;
};

} // namespace

std::vector<Piece> piecesOf(const Sheet& sheet, Ink ink, double width) {
  Cutter cutter(ink, width);
  cutter.notCleared(sheet.notCleared);
  for (const Block& block : sheet.blocks) {
    std::visit(cutter, block);
  }
  return cutter.take();
}

std::vector<std::vector<Piece>> paginated(const std::vector<Piece>& pieces, double height) {
  std::vector<std::vector<Piece>> pages(1);
  double used = 0;
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    // A heading needs room for what follows it too.
    double needed = pieces[i].height;
    for (std::size_t next = i; next + 1 < pieces.size() && pieces[next].keepWithNext; ++next) {
      needed += pieces[next + 1].height;
    }
    if ((used + needed > height || pieces[i].newPage) && used > 0) {
      pages.emplace_back();
      used = 0;
      if (pieces[i].again) {
        pages.back().push_back(*pieces[i].again);
        used = pieces[i].again->height;
      }
    }
    pages.back().push_back(pieces[i]);
    used += pieces[i].height;
  }
  return pages;
}

} // namespace hangbook::reports
