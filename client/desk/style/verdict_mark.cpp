// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/style/verdict_mark.h"

#include "desk/words/words.h"

namespace hangbook::desk {
namespace {

void drawCrossedSquare(QPainter& painter, const QRectF& box, const QColor& colour, const QColor& ground) {
  const QRectF square =
      box.adjusted(box.width() * 0.06, box.height() * 0.06, -box.width() * 0.06, -box.height() * 0.06);
  painter.fillRect(square, colour);
  painter.setPen(QPen(ground, box.width() * 0.15, Qt::SolidLine, Qt::FlatCap));
  const QRectF cross = square.adjusted(square.width() * 0.22, square.height() * 0.22, -square.width() * 0.22,
                                       -square.height() * 0.22);
  painter.drawLine(cross.topLeft(), cross.bottomRight());
  painter.drawLine(cross.topRight(), cross.bottomLeft());
}

} // namespace

void drawVerdict(QPainter& painter, const QRectF& box, options::Verdict verdict, const Colours& colours) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  const QColor colour = colourOf(verdict, colours);
  const QPointF middle = box.center();
  const double half = box.width() / 2.0;
  switch (verdict) {
  case options::Verdict::holds:
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    painter.drawEllipse(middle, half * 0.9, half * 0.9);
    break;
  case options::Verdict::tight:
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    painter.drawPolygon(QPolygonF({{middle.x(), box.top()},
                                   {middle.x() + half * 0.7, middle.y()},
                                   {middle.x(), box.bottom()},
                                   {middle.x() - half * 0.7, middle.y()}}));
    break;
  case options::Verdict::unproven:
    painter.setPen(QPen(colour, box.width() * 0.17));
    painter.setBrush(Qt::NoBrush);
    painter.drawEllipse(middle, half * 0.76, half * 0.76);
    break;
  case options::Verdict::fails:
    drawCrossedSquare(painter, box, colour, colours.sheet);
    break;
  }
  painter.restore();
}

QString verdictWord(options::Verdict verdict) {
  switch (verdict) {
  case options::Verdict::holds:
    return Words::tr("holds");
  case options::Verdict::tight:
    return Words::tr("tight");
  case options::Verdict::unproven:
    return Words::tr("unproven");
  case options::Verdict::fails:
    return Words::tr("fails");
  }
  return {};
}

QString verdictMeaning(options::Verdict verdict) {
  switch (verdict) {
  case options::Verdict::holds:
    return Words::tr("Within every limit entered here. That is not permission to lift.");
  case options::Verdict::tight:
    return Words::tr("Within every limit entered here, but close to at least one of them.");
  case options::Verdict::unproven:
    return Words::tr("A figure that a rule needs is missing, out of date or of unknown basis.");
  case options::Verdict::fails:
    return Words::tr("Beyond at least one limit. It cannot be chosen.");
  }
  return {};
}

} // namespace hangbook::desk
