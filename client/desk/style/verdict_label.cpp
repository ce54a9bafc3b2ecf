// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/style/verdict_label.h"

#include "desk/style/scale.h"
#include "desk/style/verdict_mark.h"

namespace hangbook::desk {

VerdictLabel::VerdictLabel(QWidget* parent) : QWidget(parent) {
  setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
}

void VerdictLabel::setVerdict(std::optional<options::Verdict> verdict) {
  verdict_ = verdict;
  setAccessibleName(verdict ? verdictWord(*verdict) : tr("no verdict"));
  setToolTip(verdict ? verdictMeaning(*verdict) : QString());
  update();
}

QSize VerdictLabel::sizeHint() const {
  const QFontMetrics metrics(fontFor(TextSize::heading, font()));
  return {metrics.ascent() + space::step +
              metrics.horizontalAdvance(verdictWord(options::Verdict::unproven)) + space::small,
          metrics.height() + space::small};
}

void VerdictLabel::paintEvent(QPaintEvent*) {
  if (!verdict_) {
    return;
  }
  const Colours& colours = coloursOf(palette());
  QPainter painter(this);
  const QFont heading = fontFor(TextSize::heading, font());
  const QFontMetrics metrics(heading);
  const int side = metrics.ascent();
  drawVerdict(painter, QRectF(1, (height() - side) / 2.0, side, side), *verdict_, colours);
  painter.setFont(heading);
  painter.setPen(colourOf(*verdict_, colours));
  painter.drawText(rect().adjusted(side + space::step, 0, 0, 0), Qt::AlignVCenter | Qt::AlignLeft,
                   verdictWord(*verdict_));
}

} // namespace hangbook::desk
