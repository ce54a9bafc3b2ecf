// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/pieces.h"

#include <algorithm>

#include "reports/paint_drawing.h"
#include "reports/table_pieces.h"

namespace hangbook::reports {
namespace {

constexpr double gap = 60;
constexpr double framePad = 140;
/// Of a page: what fills less of it is not torn.
constexpr double undivided = 0.4;

class Cutter {
public:
  Cutter(Ink ink, double width) : ink_(ink), width_(width) {}

  std::vector<Piece> take() { return std::move(pieces_); }

  /// In a heavy frame, so that it is the first thing seen; one piece a reason, since they may fill more than
  /// a page.
  void notCleared(const QStringList& why) {
    if (why.isEmpty()) {
      return;
    }
    ink_.use(300, true);
    const double inner = width_ - 2 * framePad;
    framed(ink_.lineHeight() + framePad / 2, true, false, [inner](Ink& ink, const QRectF& room) {
      ink.use(300, true);
      ink.lines(QStringLiteral("NOT CLEARED TO LIFT"),
                {room.left() + framePad, room.top() + framePad / 2, inner, 400});
    });
    pieces_.back().keepWithNext = true;
    for (const QString& line : why) {
      ink_.use(125, false);
      framed(ink_.heightOf(line, inner - 130) + 45, false, &line == &why.back(),
             [line, inner](Ink& ink, const QRectF& room) {
               ink.use(125, false);
               ink.lines(QStringLiteral("–"), {room.left() + framePad, room.top(), 130, 400});
               ink.lines(line, {room.left() + framePad + 130, room.top(), inner - 130, 400});
             });
    }
    space(gap);
  }

  void operator()(const Text& text) {
    const bool heading = text.size == Text::Size::heading;
    const int size = heading ? 155 : 120;
    const bool bold = text.size != Text::Size::body;
    ink_.use(size, bold);
    const double above = heading ? 110 : 20;
    add(ink_.heightOf(text.text, width_) + above + 20, [=](Ink& ink, const QRectF& room) {
      ink.use(size, bold);
      ink.lines(text.text, room.adjusted(0, above, 0, 0));
    });
    pieces_.back().keepWithNext = heading;
  }

  void operator()(const Table& table) {
    ++group_;
    for (Piece& piece : tablePieces(table, ink_, width_)) {
      pieces_.push_back(std::move(piece));
      pieces_.back().group = group_;
    }
    space(gap);
  }

  void operator()(const Big& big) {
    ink_.use(720, true);
    const double after = std::max(1150 + ink_.widthOf(big.text) + 150, 2200.0);
    double height = ink_.lineHeight();
    ink_.use(125, false);
    double beside = 160;
    for (const QString& line : big.beside) {
      beside += ink_.heightOf(line, width_ - after - 60);
    }
    height = std::max(height, beside);
    add(height + gap, [big, after](Ink& ink, const QRectF& room) {
      ink.box(room.adjusted(10, 10, -10, -gap), 20);
      ink.use(140, true);
      ink.lines(big.caption, {room.left() + 100, room.top() + 60, 1100, 400});
      ink.use(720, true);
      ink.right(big.text, room.left() + 1150 + ink.widthOf(big.text), room.top() - 10); // never broken
      ink.use(125, false);
      double y = room.top() + 80;
      for (const QString& line : big.beside) {
        y = ink.lines(line, {room.left() + after, y, room.width() - after - 60, 400});
      }
    });
  }

  void operator()(const Drawing& drawing) {
    ink_.use(110, true);
    add(drawing.height * 10 + ink_.heightOf(drawing.caption, width_) + 150,
        [drawing](Ink& ink, const QRectF& room) {
          ink.use(110, true);
          const double y = ink.lines(drawing.caption, room);
          paint(drawing, ink, {room.left(), y + 20, room.width(), room.bottom() - y - gap});
        });
    pieces_.back().least = drawing.height * 7;
  }

  void operator()(const Chart& chart) {
    ++group_;
    ink_.use(110, true);
    add(ink_.heightOf(chart.caption, width_) * 1.4, [chart](Ink& ink, const QRectF& room) {
      ink.use(110, true);
      ink.lines(chart.caption, room);
    });
    pieces_.back().keepWithNext = true;
    pieces_.back().group = group_;
    double most = 0;
    for (const Chart::Bar& bar : chart.bars) {
      most = std::max(most, bar.value);
    }
    for (const Chart::Bar& bar : chart.bars) {
      add(heightOf(bar, ink_, width_),
          [bar, most](Ink& ink, const QRectF& room) { paint(bar, most, ink, room); });
      pieces_.back().group = group_;
    }
    space(2 * gap);
  }

  void operator()(const NewPage&) {
    add(0, [](Ink&, const QRectF&) {});
    pieces_.back().newPage = true;
  }

private:
  void add(double height, std::function<void(Ink&, const QRectF&)> draw) {
    Piece piece;
    piece.height = height;
    piece.draw = std::move(draw);
    pieces_.push_back(std::move(piece));
  }

  void space(double height) {
    add(height, [](Ink&, const QRectF&) {});
    pieces_.back().blank = true;
  }

  /// A part of a frame: its sides, its top and its bottom where it begins and ends.
  void framed(double height, bool top, bool bottom, std::function<void(Ink&, const QRectF&)> draw) {
    add(height, [=](Ink& ink, const QRectF& room) {
      const double left = room.left() + 15;
      const double right = room.right() - 15;
      ink.painter().setPen(QPen(Qt::black, 30));
      ink.painter().drawLine(QPointF(left, room.top()), QPointF(left, room.bottom()));
      ink.painter().drawLine(QPointF(right, room.top()), QPointF(right, room.bottom()));
      if (top) {
        ink.rule(left - 15, right + 15, room.top() + 15, 30);
      }
      if (bottom) {
        ink.rule(left - 15, right + 15, room.bottom(), 30);
      }
      draw(ink, room);
    });
  }

  Ink ink_;
  double width_;
  int group_ = 0;
  std::vector<Piece> pieces_;
};

double groupHeight(const std::vector<Piece>& pieces, std::size_t from) {
  double sum = 0;
  for (std::size_t i = from; i < pieces.size() && pieces[i].group == pieces[from].group; ++i) {
    sum += pieces[i].height;
  }
  return sum;
}

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
    if (pieces[i].blank && (used == 0 || used + pieces[i].height > height)) {
      continue;
    }
    // A heading needs room for what follows it too.
    double needed = pieces[i].height;
    if (pieces[i].group != 0 && (i == 0 || pieces[i - 1].group != pieces[i].group)) {
      const double whole = groupHeight(pieces, i);
      needed = whole <= undivided * height ? whole : needed;
    }
    double chained = pieces[i].height;
    for (std::size_t next = i; next + 1 < pieces.size() && pieces[next].keepWithNext; ++next) {
      chained += pieces[next + 1].height;
    }
    needed = std::max(needed, chained);
    double takes = pieces[i].height;
    if (pieces[i].least > 0 && used + takes > height && used + pieces[i].least <= height) {
      needed = takes = height - used;
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
    pages.back().back().height = takes;
    used += takes;
  }
  return pages;
}

} // namespace hangbook::reports
