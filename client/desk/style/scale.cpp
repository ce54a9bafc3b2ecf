// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/style/scale.h"

namespace hangbook::desk {

QFont fontFor(TextSize size, const QFont& base) {
  QFont font(base);
  double share = 1.0;
  switch (size) {
  case TextSize::note:
    share = 0.89;
    break;
  case TextSize::body:
    break;
  case TextSize::heading:
    share = 1.08;
    font.setWeight(QFont::Bold);
    break;
  case TextSize::reading:
    share = 1.3;
    break;
  case TextSize::title:
    share = 1.5;
    break;
  case TextSize::figure:
    share = 9.0;
    font.setWeight(QFont::Bold);
    break;
  }
  if (base.pixelSize() > 0) {
    font.setPixelSize(qMax(1, qRound(base.pixelSize() * share)));
  } else {
    font.setPointSizeF(base.pointSizeF() * share);
  }
  return font;
}

} // namespace hangbook::desk
