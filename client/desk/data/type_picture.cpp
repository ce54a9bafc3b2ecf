// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/data/type_picture.h"

#include <algorithm>

#include <QPainter>

#include "desk/style/colours.h"
#include "desk/style/scale.h"
#include "desk/words/words.h"

namespace hangbook::desk {
namespace {

using Shape = TypeMark::Shape;

QPointF at(const catalogue::Position& position) {
  return {inMetres(position.x), inMetres(position.z)};
}

void add(TypeDrawing& drawing, const QString& name, const std::optional<catalogue::Position>& position,
         Shape shape) {
  if (position) {
    drawing.marks.push_back({name, at(*position), shape});
  }
}

void addOutline(TypeDrawing& drawing, const std::vector<catalogue::Position>& outline) {
  for (const catalogue::Position& each : outline) {
    drawing.outline.push_back(at(each));
  }
}

/// Where a name stands beside its mark: towards the middle, where there is more room; where something stands
/// there already on the other side, or a line higher or lower.
QRectF boxBeside(const QPointF& place, double wide, const std::vector<QRectF>& taken, double middle) {
  constexpr double high = 16;
  constexpr double gap = 12;
  const bool toLeft = place.x() > middle;
  const double left = place.x() - gap - wide;
  const double right = place.x() + gap;
  const double inwards = toLeft ? left : right;
  const double outwards = toLeft ? right : left;
  const double level = place.y() - high / 2;
  const QRectF first(inwards, level, wide, high);
  for (const QPointF& corner : {first.topLeft(), QPointF(inwards, level - high),
                                QPointF(inwards, level + high), QPointF(outwards, level)}) {
    const QRectF box(corner, first.size());
    if (std::ranges::none_of(taken, [&box](const QRectF& each) { return each.intersects(box); })) {
      return box;
    }
  }
  return first;
}

} // namespace

TypeDrawing drawingOf(const catalogue::CabinetType& type) {
  TypeDrawing drawing;
  addOutline(drawing, type.outline);
  drawing.marks.push_back({Words::tr("top front pin"), {0.0, 0.0}, Shape::pin}); // the origin
  add(drawing, Words::tr("next pin"), type.nextPin, Shape::pin);
  if (type.pins) {
    for (const catalogue::Position& each : *type.pins) {
      drawing.marks.push_back({Words::tr("pin"), at(each), Shape::pin});
    }
  }
  add(drawing, Words::tr("chain eye"), type.chainEye, Shape::pin);
  add(drawing, Words::tr("rear contact"), type.rearContact, Shape::corner);
  add(drawing, Words::tr("centre of gravity"), type.centreOfGravity, Shape::centre);
  return drawing;
}

TypeDrawing drawingOf(const catalogue::BarType& type) {
  TypeDrawing drawing;
  addOutline(drawing, type.outline);
  // The head has coordinates of its own: what is given in them is not drawn here.
  add(drawing, Words::tr("stack pin"), type.stackPin, Shape::pin);
  add(drawing, Words::tr("chain anchor"), type.chainAnchor, Shape::pin);
  add(drawing, Words::tr("datum"), type.datum, Shape::corner);
  add(drawing, Words::tr("centre of gravity"), type.frameCentreOfGravity, Shape::centre);
  return drawing;
}

TypePicture::TypePicture(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("typePicture"));
  setAccessibleName(tr("Side view"));
  setMinimumSize(260, 260);
}

void TypePicture::setDrawing(TypeDrawing drawing) {
  drawing_ = std::move(drawing);
  QStringList names;
  for (const TypeMark& each : drawing_.marks) {
    names << each.name;
  }
  setAccessibleDescription(tr("Corners of the outline: %1. Drawn: %2.")
                               .arg(drawing_.outline.size())
                               .arg(names.join(QStringLiteral(", "))));
  update();
}

void TypePicture::paintEvent(QPaintEvent* /*event*/) {
  const Colours& colours = coloursOf(palette());
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.fillRect(rect(), colours.sheet);
  const QRect inner = rect().adjusted(space::step, space::small, -space::step, -space::small);
  painter.setPen(colours.quiet);
  painter.setFont(fontFor(TextSize::note, font()));
  if (drawing_.empty()) {
    painter.drawText(inner, Qt::AlignCenter | Qt::TextWordWrap,
                     tr("Nothing to draw yet: type the outline's corners."));
    return;
  }
  painter.drawText(inner, Qt::AlignBottom | Qt::AlignRight, tr("forward →"));
  double left = 0.0, right = 0.0, low = 0.0, high = 0.0;
  const auto take = [&](const QPointF& place) {
    left = std::min(left, place.x());
    right = std::max(right, place.x());
    low = std::min(low, place.y());
    high = std::max(high, place.y());
  };
  std::ranges::for_each(drawing_.outline, take);
  for (const TypeMark& each : drawing_.marks) {
    take(each.place);
  }
  const double room = QFontMetrics(font()).height() * 2.5;
  const double scale = std::max(1.0, std::min((width() - 2 * room) / std::max(0.05, right - left),
                                              (height() - 2 * room) / std::max(0.05, high - low)));
  const auto on = [&](const QPointF& place) {
    return QPointF(width() / 2.0 + (place.x() - (left + right) / 2.0) * scale,
                   height() / 2.0 - (place.y() - (low + high) / 2.0) * scale);
  };
  QPolygonF outline;
  for (const QPointF& each : drawing_.outline) {
    outline << on(each);
  }
  painter.setPen(QPen(colours.text, 2));
  painter.setBrush(colours.raised);
  painter.drawPolygon(outline);
  std::vector<QRectF> named; // and the marks themselves, which no name may cover
  for (const TypeMark& each : drawing_.marks) {
    named.emplace_back(on(each.place) - QPointF(11, 11), QSizeF(22, 22));
  }
  for (const TypeMark& each : drawing_.marks) {
    const QPointF place = on(each.place);
    const bool centre = each.shape == Shape::centre;
    painter.setPen(QPen(centre ? colours.accent : colours.text, 2));
    painter.setBrush(Qt::NoBrush);
    if (each.shape == Shape::corner) {
      painter.drawRect(QRectF(place - QPointF(4, 4), QSizeF(8, 8)));
    } else {
      painter.drawEllipse(place, centre ? 7 : 4, centre ? 7 : 4);
    }
    if (centre) {
      painter.drawLine(place - QPointF(11, 0), place + QPointF(11, 0));
      painter.drawLine(place - QPointF(0, 11), place + QPointF(0, 11));
    }
    const QRectF box =
        boxBeside(place, painter.fontMetrics().horizontalAdvance(each.name) + 2, named, width() / 2.0);
    named.push_back(box);
    painter.fillRect(box, colours.raised); // no line through the name
    painter.drawText(box, Qt::AlignCenter, each.name);
  }
}

} // namespace hangbook::desk
