// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/style/verdict_sign.h"

#include <QPainter>

#include "desk/style/colours.h"
#include "desk/style/verdict_mark.h"

namespace hangbook::desk {

VerdictSign::VerdictSign(QWidget* parent) : QWidget(parent) {
  setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
}

void VerdictSign::setVerdict(std::optional<options::Verdict> verdict) {
  verdict_ = verdict;
  update();
}

QSize VerdictSign::sizeHint() const {
  const int side = fontMetrics().height();
  return {side, side};
}

void VerdictSign::paintEvent(QPaintEvent*) {
  if (verdict_) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const double side = 0.7 * std::min(width(), height());
    drawVerdict(painter, QRectF((width() - side) / 2, (height() - side) / 2, side, side), *verdict_,
                coloursOf(palette()));
  }
}

} // namespace hangbook::desk
