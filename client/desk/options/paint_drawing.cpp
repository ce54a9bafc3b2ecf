// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/options/paint_drawing.h"

#include <algorithm>
#include <cmath>

#include "desk/style/scale.h"

namespace hangbook::desk {
namespace {

struct Look {
  QPen pen;
  QBrush brush = Qt::NoBrush;
};

QPen line(const QColor& colour, double width, Qt::PenStyle style = Qt::SolidLine) {
  QPen pen(colour, width, style, Qt::FlatCap, Qt::MiterJoin);
  pen.setCosmetic(true);
  return pen;
}

Look lookOf(Ink ink, const Colours& colours) {
  QColor pale = colours.quiet;
  pale.setAlpha(60);
  QColor missed = colours.fails;
  switch (ink) {
  case Ink::floor:
    return {line(colours.steel, 1.5)};
  case Ink::row:
    return {line(colours.quiet, 1.0, Qt::DotLine)};
  case Ink::covered:
    return {line(colours.accent, 3.0)};
  case Ink::notCovered:
    return {line(missed, 1.0), QBrush(missed, Qt::BDiagPattern)};
  case Ink::steel:
    return {line(colours.steel, 1.5), QBrush(pale, Qt::FDiagPattern)};
  case Ink::point:
    return {line(colours.text, 1.5), QBrush(colours.text)};
  case Ink::hoist:
    return {line(colours.text, 1.0), QBrush(colours.raised)};
  case Ink::rigging:
    return {line(colours.text, 1.0)};
  case Ink::bar:
    return {line(colours.text, 1.5), QBrush(colours.raised)};
  case Ink::cabinet:
    return {line(colours.text, 1.2), QBrush(colours.cabinet)};
  case Ink::downfill:
    return {line(colours.text, 1.2), QBrush(colours.cabinet)};
  case Ink::chain:
    return {line(colours.accent, 2.2)};
  case Ink::gravity:
    return {line(colours.text, 1.0, Qt::DashDotLine)};
  case Ink::cover:
    return {line(colours.accent, 1.0, Qt::DashLine), QBrush(colours.cover)};
  case Ink::dimension:
    return {line(colours.quiet, 1.0)};
  }
  return {};
}

void paintShape(QPainter& painter, const Shape& shape, const Scale& scale, const Colours& colours) {
  QPolygonF onScreen;
  onScreen.reserve(shape.points.size());
  for (const QPointF& each : shape.points) {
    onScreen << scale.toScreen(each);
  }
  const Look look = lookOf(shape.ink, colours);
  if (shape.ink == Ink::cover && shape.closed) { // a wash without an outline; its edges come as lines
    painter.setPen(Qt::NoPen);
  } else {
    painter.setPen(look.pen);
  }
  painter.setBrush(look.brush);
  if (shape.ink == Ink::point) {
    for (const QPointF& each : onScreen) {
      painter.drawEllipse(each, 3.0, 3.0);
    }
  } else if (shape.closed) {
    painter.drawPolygon(onScreen, Qt::WindingFill);
  } else {
    painter.drawPolyline(onScreen);
  }
}

QRectF labelBox(const QPointF& at, Side side, const QSizeF& size) {
  constexpr double gap = 5.0;
  switch (side) {
  case Side::right:
    return {QPointF(at.x() + gap, at.y() - size.height() / 2), size};
  case Side::left:
    return {QPointF(at.x() - gap - size.width(), at.y() - size.height() / 2), size};
  case Side::above:
    return {QPointF(at.x() - size.width() / 2, at.y() - gap - size.height()), size};
  case Side::below:
    return {QPointF(at.x() - size.width() / 2, at.y() + gap), size};
  }
  return {};
}

/// Draws a text on a plate of the ground, so that lines behind it do not cross it. Answers whether there was
/// room.
bool paintText(QPainter& painter, QRectF place, const QString& text, const QRectF& box,
               std::vector<QRectF>& taken, const Colours& colours) {
  place.moveLeft(
      std::clamp(place.left(), box.left() + 6, std::max(box.left() + 6, box.right() - place.width() - 6)));
  const QRectF plate = place.adjusted(-2, 0, 2, 0);
  if (!box.contains(place) ||
      std::any_of(taken.begin(), taken.end(), [&](const QRectF& each) { return each.intersects(plate); })) {
    return false;
  }
  taken.push_back(plate);
  QColor ground = colours.sheet;
  ground.setAlpha(215);
  painter.fillRect(plate, ground);
  painter.setPen(colours.text);
  painter.drawText(place, Qt::AlignCenter, text);
  return true;
}

void paintDimension(QPainter& painter, const Dimension& dimension, const Scale& scale,
                    const Colours& colours) {
  const QPointF from = scale.toScreen(dimension.from);
  const QPointF to = scale.toScreen(dimension.to);
  const QPointF along = to - from;
  const double length = std::hypot(along.x(), along.y());
  if (length < 4.0) {
    return;
  }
  const QPointF across(-along.y() / length * 4.0, along.x() / length * 4.0);
  painter.setPen(line(colours.text, 1.0));
  painter.drawLine(from, to);
  painter.drawLine(from - across, from + across);
  painter.drawLine(to - across, to + across);
}

void paintScaleBar(QPainter& painter, const Scale& scale, const QRectF& box, const Colours& colours,
                   std::vector<QRectF>& taken, QString (*barText)(int)) {
  int metres = 1;
  for (const int each : {2, 5, 10, 20, 50}) {
    if (each * scale.pixelsPerMetre < box.width() / 4) {
      metres = each;
    }
  }
  const double width = metres * scale.pixelsPerMetre;
  const QPointF left(box.left() + space::step * 2, box.bottom() - space::step * 1.5);
  painter.setPen(line(colours.text, 1.5));
  painter.drawLine(left, left + QPointF(width, 0));
  painter.drawLine(left - QPointF(0, 4), left);
  painter.drawLine(left + QPointF(width, -4), left + QPointF(width, 0));
  const QString text = barText(metres);
  const QSizeF size(painter.fontMetrics().horizontalAdvance(text) + 2, painter.fontMetrics().height());
  paintText(painter, QRectF(left + QPointF(width + 6, -size.height() + 3), size), text, box, taken, colours);
}

} // namespace

Scale fitted(const QRectF& metres, const QRectF& box) {
  const double across = box.width() / std::max(0.1, metres.width());
  const double up = box.height() / std::max(0.1, metres.height());
  Scale scale;
  scale.pixelsPerMetre = std::min(across, up);
  scale.origin = QPointF(box.center().x() - metres.center().x() * scale.pixelsPerMetre,
                         box.center().y() + metres.center().y() * scale.pixelsPerMetre);
  return scale;
}

void paintDrawing(QPainter& painter, const Drawing& drawing, const Scale& scale, const QRectF& box,
                  const Colours& colours, const QFont& font, QString (*barText)(int metres)) {
  painter.save();
  painter.setClipRect(box);
  painter.setRenderHint(QPainter::Antialiasing);
  for (const Shape& each : drawing.shapes) {
    paintShape(painter, each, scale, colours);
  }
  painter.setFont(fontFor(TextSize::note, font));
  std::vector<QRectF> taken;
  paintScaleBar(painter, scale, box, colours, taken, barText);
  for (const Dimension& each : drawing.dimensions) {
    paintDimension(painter, each, scale, colours);
  }
  std::vector<Label> labels = drawing.labels;
  for (const Dimension& each : drawing.dimensions) {
    labels.push_back({.at = (each.from + each.to) / 2, .text = each.text, .side = Side::right, .rank = 1});
  }
  std::stable_sort(labels.begin(), labels.end(),
                   [](const Label& a, const Label& b) { return a.rank < b.rank; });
  for (const Label& each : labels) {
    QFont own = painter.font();
    own.setBold(each.strong);
    painter.setFont(own);
    const QSizeF size(painter.fontMetrics().horizontalAdvance(each.text) + 2, painter.fontMetrics().height());
    for (const Side side : {each.side, Side::left, Side::right}) {
      const QRectF place = labelBox(scale.toScreen(each.at), side, size);
      if (each.mayMove && side == Side::left && place.left() < box.left() && place.right() > box.left()) {
        continue; // moved into the picture it would lie on what it names
      }
      if (paintText(painter, place, each.text, box, taken, colours)) {
        break;
      }
      if (!each.mayMove) {
        break;
      }
    }
  }
  painter.restore();
}

} // namespace hangbook::desk
