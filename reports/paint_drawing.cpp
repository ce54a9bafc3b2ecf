// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/paint_drawing.h"

#include <algorithm>
#include <utility>
#include <vector>

#include <QPolygonF>

namespace hangbook::reports {
namespace {

/// Over their places, the lowest first; one that would run into another goes up until it has room, and a line
/// then leads to its place.
void notesAbove(const std::vector<std::pair<QPointF, QString>>& notes, Ink& ink) {
  constexpr double clear = 110; // over the middle of a cross
  std::vector<QRectF> taken;
  for (const auto& [at, text] : notes) {
    const double width = ink.widthOf(text);
    QRectF room(at.x() - width / 2, at.y() - clear - ink.lineHeight(), width, ink.lineHeight());
    const auto meets = [&room](const QRectF& other) {
      return other.adjusted(-40, 0, 40, 0).intersects(room);
    };
    while (std::ranges::any_of(taken, meets)) {
      room.translate(0, -ink.lineHeight());
    }
    if (room.bottom() < at.y() - clear - 1) {
      ink.painter().setPen(QPen(Qt::black, 6));
      ink.painter().drawLine(QPointF(at.x(), at.y() - 60), QPointF(at.x(), room.bottom()));
      taken.emplace_back(at.x() - 3, room.bottom(), 6, at.y() - 60 - room.bottom());
    }
    ink.right(text, room.right(), room.top());
    taken.push_back(room);
  }
}

} // namespace

void paint(const Drawing& drawing, Ink& ink, const QRectF& room) {
  QRectF world;
  bool first = true;
  const auto grow = [&](QPointF at) {
    const QRectF dot(at, QSizeF(1e-9, 1e-9));
    world = first ? dot : world.united(dot);
    first = false;
  };
  for (const Drawing::Stroke& stroke : drawing.strokes) {
    std::ranges::for_each(stroke.points, grow);
  }
  for (const Drawing::Note& note : drawing.notes) {
    grow(note.at);
  }
  if (first) {
    return;
  }
  // Notes hang over the edges: a quarter of the width on each side is theirs.
  const double scale = std::min(room.width() * 0.5 / std::max(world.width(), 0.01),
                                (room.height() - 260) / std::max(world.height(), 0.01));
  const auto onPage = [&](QPointF at) {
    return QPointF(room.center().x() + (at.x() - world.center().x()) * scale,
                   room.center().y() - (at.y() - world.center().y()) * scale);
  };
  for (const Drawing::Stroke& stroke : drawing.strokes) {
    QPolygonF line;
    for (const QPointF& point : stroke.points) {
      line << onPage(point);
    }
    QPen pen(Qt::black, stroke.heavy ? 22 : 9);
    if (stroke.dashed) {
      pen.setStyle(Qt::DashLine);
    }
    pen.setJoinStyle(Qt::MiterJoin);
    ink.painter().setPen(pen);
    ink.painter().setBrush(Qt::NoBrush);
    if (stroke.closed) {
      ink.painter().drawPolygon(line);
    } else {
      ink.painter().drawPolyline(line);
    }
  }
  std::vector<std::pair<QPointF, QString>> above;
  for (const Drawing::Note& note : drawing.notes) {
    ink.use(100, note.strong);
    if (note.above) {
      above.emplace_back(onPage(note.at), note.text);
      continue;
    }
    const QPointF at = onPage(note.at);
    const double top = at.y() - ink.lineHeight() / 2;
    if (note.left) {
      ink.right(note.text, at.x() - 50, top);
    } else {
      ink.lines(note.text, {at.x() + 50, top, room.right() - at.x() - 50, 400});
    }
  }
  std::ranges::stable_sort(above, std::ranges::greater{}, [](const auto& note) { return note.first.y(); });
  ink.use(100, true);
  notesAbove(above, ink);
}

void paint(const Chart& chart, Ink& ink, const QRectF& room, double line) {
  ink.use(110, true);
  ink.lines(chart.caption, room);
  double most = 0;
  for (const Chart::Bar& bar : chart.bars) {
    most = std::max(most, bar.value);
  }
  const double from = room.left() + room.width() * 0.24;
  const double width = room.width() * 0.5;
  double y = room.top() + line * 1.2;
  for (const Chart::Bar& bar : chart.bars) {
    ink.use(110, false);
    const double text = y + (line - ink.lineHeight()) / 2;
    ink.lines(bar.label, {room.left(), text, room.width() * 0.23, line});
    const double length = most > 0 ? width * bar.value / most : 0;
    ink.painter().setPen(QPen(Qt::black, 10));
    ink.painter().setBrush(QColor(205, 205, 205));
    ink.painter().drawRect(QRectF(from, y + line * 0.2, length, line * 0.6));
    ink.painter().setBrush(Qt::NoBrush);
    ink.use(110, true);
    ink.lines(bar.text, {from + length + 60, text, room.right() - from - length - 60, line});
    y += line;
  }
  ink.rule(from, from, y + line * 0.1, 0);
  ink.painter().setPen(QPen(Qt::black, 10));
  ink.painter().drawLine(QPointF(from, room.top() + line * 1.1), QPointF(from, y + line * 0.1));
}

} // namespace hangbook::reports
