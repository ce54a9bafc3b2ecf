// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/lists/row_painter.h"

#include <algorithm>

#include <QPainter>

#include "desk/lists/table_model.h"
#include "desk/style/scale.h"
#include "desk/style/verdict_mark.h"

namespace hangbook::desk {
namespace {

options::Verdict verdictAt(const QModelIndex& index) {
  return static_cast<options::Verdict>(index.data(verdictRole).toInt());
}

void drawText(QPainter& painter, const QRect& box, const QModelIndex& index, const QFontMetrics& metrics) {
  const auto alignment = index.data(Qt::TextAlignmentRole).value<Qt::Alignment>();
  const QString text =
      metrics.elidedText(index.data().toString(),
                         index.data(endMattersRole).toBool() ? Qt::ElideMiddle : Qt::ElideRight, box.width());
  painter.drawText(box, static_cast<int>(alignment), text);
}

void drawUse(QPainter& painter, const QRect& box, const QModelIndex& index, const Colours& colours,
             const QFontMetrics& metrics) {
  const double use = index.data(useRole).toDouble();
  const QVariant verdict = index.data(verdictRole);
  const QColor colour = verdict.isValid() ? colourOf(verdictAt(index), colours) : colours.accent;
  const int figure = metrics.horizontalAdvance(QStringLiteral("1000 %"));
  const QRect text(box.right() - figure + 1, box.top(), figure, box.height());
  painter.drawText(text, Qt::AlignVCenter | Qt::AlignRight, index.data().toString());
  // 100 % stands at four fifths of the bar, so that a load beyond its limit is seen to cross it.
  const QRectF track(box.left(), box.center().y() - 2.5, box.width() - figure - space::step, 6.0);
  if (track.width() < 16) {
    return;
  }
  const double whole = track.width() * 0.8;
  painter.fillRect(track, colours.line);
  painter.fillRect(QRectF(track.left(), track.top(),
                          std::min(track.width(), whole * std::max(0.0, use) / 100.0), track.height()),
                   colour);
  painter.setPen(QPen(colours.text, 1));
  painter.drawLine(QPointF(track.left() + whole, track.top() - 2),
                   QPointF(track.left() + whole, track.bottom() + 2));
}

} // namespace

void RowPainter::paint(QPainter* painter, const QStyleOptionViewItem& option,
                       const QModelIndex& index) const {
  const Colours& colours = coloursOf(option.palette);
  QStyleOptionViewItem prepared(option);
  initStyleOption(&prepared, index);
  const bool selected = option.state.testFlag(QStyle::State_Selected);
  painter->save();
  painter->fillRect(option.rect, selected ? colours.chosen : colours.sheet);
  if (selected && index.column() == 0) {
    painter->fillRect(QRect(option.rect.left(), option.rect.top(), 3, option.rect.height()), colours.accent);
  }
  painter->setFont(prepared.font);
  const QFontMetrics metrics(prepared.font);
  QRect box = option.rect.adjusted(space::cell, 0, -space::cell, 0);
  painter->setPen(colours.text);
  if (index.data(useRole).isValid()) {
    drawUse(*painter, box, index, colours, metrics);
  } else if (index.data(verdictRole).isValid()) {
    const auto verdict = verdictAt(index);
    const int side = metrics.ascent() - 1;
    drawVerdict(*painter, QRectF(box.left(), box.center().y() - side / 2.0 + 0.5, side, side), verdict,
                colours);
    painter->setPen(colourOf(verdict, colours));
    drawText(*painter, box.adjusted(side + space::small + 2, 0, 0, 0), index, metrics);
  } else {
    drawText(*painter, box, index, metrics);
  }
  painter->setPen(colours.line);
  painter->drawLine(option.rect.bottomLeft(), option.rect.bottomRight());
  if (option.state.testFlag(QStyle::State_HasFocus) && option.state.testFlag(QStyle::State_Active)) {
    painter->setPen(QPen(colours.accent, 1));
    painter->drawRect(option.rect.adjusted(0, 0, -1, -1));
  }
  painter->restore();
}

} // namespace hangbook::desk
