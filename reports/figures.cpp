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

QString Figures::slope(std::optional<double> degrees, int digits) const {
  return shown<Angle>(degrees, &hangbook::degrees, digits, system_);
}

QString Figures::angle(std::optional<double> degrees, int digits) const {
  const QString text = slope(degrees, digits);
  return degrees && *degrees > 0.0 && text != notKnown() ? QLatin1Char('+') + text : text;
}

QString Figures::speed(std::optional<double> metresPerSecond, int digits) const {
  return shown<Speed>(metresPerSecond, &hangbook::metresPerSecond, digits, system_);
}

QString Figures::tape(std::optional<double> metres) const {
  const QString text = length(metres);
  if (system_ == UnitSystem::metric || !metres || !std::isfinite(*metres)) {
    return text;
  }
  constexpr double eighth = 0.0254 / 8; // in metres: the international inch is 25.4 mm exactly
  const auto eighths = static_cast<qint64>(std::llround(std::abs(*metres) / eighth));
  QString inches = QString::number(eighths / 8 % 12);
  if (const qint64 rest = eighths % 8; rest != 0) {
    const qint64 halves = rest % 4 == 0 ? 4 : rest % 2 == 0 ? 2 : 1;
    inches += QStringLiteral(" %1/%2").arg(rest / halves).arg(8 / halves);
  }
  return QStringLiteral("%1 (%2%3 ft %4 in)")
      .arg(text, *metres < 0 ? QStringLiteral("-") : QString())
      .arg(eighths / 96)
      .arg(inches);
}

QString Figures::move(std::optional<double> metres) const {
  const QString text = length(metres);
  return metres && *metres > 0.0 ? QLatin1Char('+') + text : text;
}

} // namespace hangbook::reports
