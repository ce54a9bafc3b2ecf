// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/figures.h"

#include <cmath>

namespace hangbook::reports {
namespace {

template <class Quantity>
QString shown(std::optional<double> value, Quantity (*make)(double), int digits, UnitSystem system) {
  return value && std::isfinite(*value) ? QString::fromStdString(show(make(*value), digits, system))
                                        : notKnown();
}

} // namespace

QString notKnown() {
  return QStringLiteral("not known");
}

QString Figures::length(std::optional<double> metres, int digits) const {
  return shown<Length>(metres, &hangbook::metres, digits, system_);
}

QString Figures::force(std::optional<double> kilonewtons, int digits) const {
  return shown<Force>(kilonewtons, &hangbook::kilonewtons, system_ == UnitSystem::metric ? digits : 0,
                      system_);
}

QString Figures::mass(std::optional<double> kilograms, int digits) const {
  return shown<Mass>(kilograms, &hangbook::kilograms, digits, system_);
}

QString Figures::angle(std::optional<double> degrees, int digits) const {
  const QString text = shown<Angle>(degrees, &hangbook::degrees, digits, system_);
  return degrees && *degrees > 0.0 && text != notKnown() ? QLatin1Char('+') + text : text;
}

QString Figures::move(std::optional<double> metres) const {
  const QString text = length(metres);
  return metres && *metres > 0.0 ? QLatin1Char('+') + text : text;
}

} // namespace hangbook::reports
