// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/style/outlined_style.h"

#include <QStyleFactory>
#include <QStyleOptionComboBox>
#include <QStyleOptionSpinBox>

#include "desk/style/colours.h"

namespace hangbook::desk {
namespace {

/// What Fusion darkens the window's colour by, in percent, to get an outline.
constexpr int fusionDarkens = 140;

template <class Option>
Option outlined(const Option& option) {
  Option changed(option);
  changed.palette.setColor(QPalette::Window, coloursOf(option.palette).frame.lighter(fusionDarkens));
  return changed;
}

} // namespace

OutlinedStyle::OutlinedStyle() : QProxyStyle(QStyleFactory::create(QStringLiteral("Fusion"))) {}

void OutlinedStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                                  const QWidget* widget) const {
  if (element == PE_FrameLineEdit) {
    const QStyleOption changed = outlined(*option);
    QProxyStyle::drawPrimitive(element, &changed, painter, widget);
    return;
  }
  if (const auto* button = qstyleoption_cast<const QStyleOptionButton*>(option);
      button != nullptr && (element == PE_PanelButtonCommand || element == PE_IndicatorCheckBox ||
                            element == PE_IndicatorRadioButton)) {
    const QStyleOptionButton changed = outlined(*button);
    QProxyStyle::drawPrimitive(element, &changed, painter, widget);
    return;
  }
  QProxyStyle::drawPrimitive(element, option, painter, widget);
}

void OutlinedStyle::drawComplexControl(ComplexControl control, const QStyleOptionComplex* option,
                                       QPainter* painter, const QWidget* widget) const {
  if (const auto* box = qstyleoption_cast<const QStyleOptionComboBox*>(option);
      box != nullptr && control == CC_ComboBox) {
    const QStyleOptionComboBox changed = outlined(*box);
    QProxyStyle::drawComplexControl(control, &changed, painter, widget);
  } else if (const auto* spin = qstyleoption_cast<const QStyleOptionSpinBox*>(option);
             spin != nullptr && control == CC_SpinBox) {
    const QStyleOptionSpinBox changed = outlined(*spin);
    QProxyStyle::drawComplexControl(control, &changed, painter, widget);
  } else {
    QProxyStyle::drawComplexControl(control, option, painter, widget);
  }
}

} // namespace hangbook::desk
