// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/lists/flat_header.h"

#include <algorithm>

#include <QPainter>

#include "desk/style/colours.h"
#include "desk/style/scale.h"

namespace hangbook::desk {
namespace {

constexpr int arrowRoom = 9;

void drawArrow(QPainter& painter, const QRect& box, bool descending, const QColor& colour) {
  const double middle = box.left() + arrowRoom / 2.0;
  const double top = box.center().y() - 1.5;
  const double tip = descending ? top + 4 : top;
  const double flat = descending ? top : top + 4;
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(Qt::NoPen);
  painter.setBrush(colour);
  painter.drawPolygon(QPolygonF({{middle - 3.5, flat}, {middle + 3.5, flat}, {middle, tip}}));
}

} // namespace

FlatHeader::FlatHeader(QWidget* parent, int lines, int margin)
    : QHeaderView(Qt::Horizontal, parent), lines_(lines), margin_(margin) {
  setSectionsClickable(true);
  setHighlightSections(false);
  if (lines_ > 1) {
    setFixedHeight(lines_ * QFontMetrics(font()).height() + space::step);
  }
}

QStringList FlatHeader::linesOf(int section) const {
  const QString text = model()->headerData(section, orientation()).toString();
  QStringList best{text};
  const QFontMetrics metrics(font());
  const auto widest = [&](const QStringList& lines) {
    int width = 0;
    for (const QString& each : lines) {
      width = std::max(width, metrics.horizontalAdvance(each));
    }
    return width;
  };
  for (qsizetype at = text.indexOf(u' '); lines_ > 1 && at >= 0; at = text.indexOf(u' ', at + 1)) {
    const QStringList broken{text.left(at), text.mid(at + 1)};
    if (widest(broken) < widest(best)) {
      best = broken;
    }
  }
  return best;
}

int FlatHeader::leastWidth(int section) const {
  int width = 0;
  for (const QString& each : linesOf(section)) {
    width = std::max(width, QFontMetrics(font()).horizontalAdvance(each));
  }
  return width + 2 * margin_ + 1;
}

void FlatHeader::paintSection(QPainter* painter, const QRect& box, int section) const {
  const Colours& colours = coloursOf(palette());
  painter->save();
  painter->fillRect(box, colours.raised);
  painter->setPen(colours.line);
  painter->drawLine(box.topRight(), box.bottomRight());
  painter->setPen(colours.frame);
  painter->drawLine(box.bottomLeft(), box.bottomRight());
  QRect inside = box.adjusted(margin_, 0, -margin_, 0);
  const bool sorted = isSortIndicatorShown() && sortIndicatorSection() == section;
  const auto alignment =
      model()->headerData(section, orientation(), Qt::TextAlignmentRole).value<Qt::Alignment>();
  if (sorted) {
    // The arrow stands on the side that the text does not lean to.
    const bool right = alignment.testFlag(Qt::AlignRight);
    const QRect arrow(right ? inside.left() : inside.right() - arrowRoom, inside.top(), arrowRoom,
                      inside.height());
    drawArrow(*painter, arrow, sortIndicatorOrder() == Qt::DescendingOrder, colours.accent);
    inside.adjust(right ? arrowRoom + 2 : 0, 0, right ? 0 : -arrowRoom - 2, 0);
  }
  painter->setFont(font());
  painter->setPen(colours.text);
  QStringList shown = linesOf(section);
  for (QString& each : shown) {
    each = QFontMetrics(font()).elidedText(each, Qt::ElideRight, inside.width());
  }
  painter->drawText(inside, static_cast<int>(alignment), shown.join(u'\n'));
  painter->restore();
}

} // namespace hangbook::desk
