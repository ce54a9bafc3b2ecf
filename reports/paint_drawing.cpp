// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/paint_drawing.h"

#include <algorithm>
#include <utility>
#include <vector>

#include <QPolygonF>

namespace hangbook::reports {
namespace {

constexpr double barLabel = 0.26; ///< of the width
constexpr double barRoom = 0.5;   ///< of the width, for the longest bar

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
  // Notes hang over the edges: what is not drawn on is theirs; above, up to three lines where some stand over
  // their places.
  const double top = std::ranges::any_of(drawing.notes, &Drawing::Note::above) ? 480 : 130;
  const double bottom = std::ranges::any_of(drawing.notes, &Drawing::Note::below) ? 260 : 130;
  const double scale = std::min(room.width() * drawing.share / std::max(world.width(), 0.01),
                                (room.height() - top - bottom) / std::max(world.height(), 0.01));
  const double middle = (room.top() + top + room.bottom() - bottom) / 2;
  const auto onPage = [&](QPointF at) {
    return QPointF(room.center().x() + (at.x() - world.center().x()) * scale,
                   middle - (at.y() - world.center().y()) * scale);
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
  std::vector<Drawing::Note> notes = drawing.notes;
  std::ranges::stable_sort(notes, std::ranges::greater{},
                           [](const Drawing::Note& note) { return note.at.y(); });
  double belowLeft = room.top();
  double belowRight = room.top();
  for (const Drawing::Note& note : notes) {
    ink.use(100, note.strong);
    if (note.above) {
      above.emplace_back(onPage(note.at), note.text);
      continue;
    }
    const QPointF at = onPage(note.at);
    if (note.below) {
      const double half = ink.widthOf(note.text) / 2;
      ink.right(note.text, std::clamp(at.x() + half, room.left() + 2 * half, room.right()), at.y() + 90);
      continue;
    }
    const double width = note.left ? at.x() - 50 - room.left() : room.right() - at.x() - 50;
    const QStringList lines = ink.broken(note.text, width);
    // Thin cabinets stand closer than lines of text: a note then gives way downwards.
    double& below = note.left ? belowLeft : belowRight;
    double y = std::max(at.y() - ink.lineHeight() * static_cast<double>(lines.size()) / 2, below);
    for (const QString& line : lines) {
      ink.right(line, note.left ? at.x() - 50 : at.x() + 50 + ink.widthOf(line), y);
      y += ink.lineHeight();
    }
    below = y;
  }
  std::ranges::stable_sort(above, std::ranges::greater{}, [](const auto& note) { return note.first.y(); });
  ink.use(100, true);
  notesAbove(above, ink);
}

double heightOf(const Chart::Bar& bar, Ink& ink, double width) {
  ink.use(110, false);
  return ink.heightOf(bar.label, width * barLabel) + ink.lineHeight() * 0.5;
}

void paint(const Chart::Bar& bar, double most, Ink& ink, const QRectF& room) {
  const double from = room.left() + room.width() * (barLabel + 0.01);
  ink.use(110, false);
  const double text = room.top() + ink.lineHeight() * 0.25;
  ink.lines(bar.label, {room.left(), text, room.width() * barLabel, room.height()});
  const double length = most > 0 ? room.width() * barRoom * bar.value / most : 0;
  ink.painter().setPen(QPen(Qt::black, 10));
  ink.painter().setBrush(QColor(205, 205, 205));
  ink.painter().drawRect(QRectF(from, text, length, ink.lineHeight()));
  ink.painter().setBrush(Qt::NoBrush);
  ink.use(110, true);
  ink.lines(bar.text, {from + length + 60, text, room.right() - from - length - 60, room.height()});
  ink.painter().setPen(QPen(Qt::black, 10));
  ink.painter().drawLine(QPointF(from, room.top()), QPointF(from, room.bottom()));
}

} // namespace hangbook::reports
