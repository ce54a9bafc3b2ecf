// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QProxyStyle>

namespace hangbook::desk {

/// Fields, boxes and buttons with an edge that stands out from the ground in both palettes: Fusion takes it
/// from the colour of the window alone, where it is hardly seen, and on a dark one not at all.
class OutlinedStyle : public QProxyStyle {
  Q_OBJECT
public:
  OutlinedStyle();

  void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                     const QWidget* widget) const override;
  void drawComplexControl(ComplexControl control, const QStyleOptionComplex* option, QPainter* painter,
                          const QWidget* widget) const override;
};

} // namespace hangbook::desk
