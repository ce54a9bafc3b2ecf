// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/style/figures.h"

#include <QCoreApplication>
#include <QLocale>

#include "catalogue/both_units.h"
#include "desk/words/words.h"

namespace hangbook::desk {
namespace {

NumberForm numberForm() {
  return {QLocale().decimalPoint() == QLatin1String(",") ? ',' : '.'};
}

template <class Quantity>
QString shown(std::optional<double> value, Quantity (*make)(double), int digits, UnitSystem system) {
  return value ? QString::fromStdString(show(make(*value), digits, system, numberForm())) : notKnownText();
}

} // namespace

QString notKnownText() {
  return QCoreApplication::translate("Figures", "not known");
}

QString Figures::length(std::optional<double> metres, int digits) const {
  return shown<Length>(metres, &hangbook::metres, digits, system_);
}

QString Figures::way(double metres) const {
  constexpr double mile = 1609.344; // the international mile, exact
  return system_ == UnitSystem::metric ? QStringLiteral("%1 km").arg(std::lround(metres / 1000.0))
                                       : QStringLiteral("%1 mi").arg(std::lround(metres / mile));
}

QString Figures::force(std::optional<double> kilonewtons, int digits) const {
  // A pound-force is less than half a hundredth of a kilonewton: whole ones say more than kN to two places.
  const int places = system_ == UnitSystem::metric ? digits : 0;
  return shown<Force>(kilonewtons, &hangbook::kilonewtons, places, system_);
}

QString Figures::mass(std::optional<double> kilograms, int digits) const {
  return shown<Mass>(kilograms, &hangbook::kilograms, digits, system_);
}

QString Figures::angle(std::optional<double> degrees, int digits) const {
  return shown<Angle>(degrees, &hangbook::degrees, digits, system_);
}

QString Figures::percent(std::optional<double> percent, int digits) const {
  return percent ? plain(percent, digits) + QStringLiteral(" %") : notKnownText();
}

QString Figures::plain(std::optional<double> value, int digits) const {
  return value ? QLocale().toString(*value, 'f', digits) : notKnownText();
}

QString Figures::inUnit(std::optional<double> value, const QString& unit) const {
  if (unit == QLatin1String("kN")) {
    return force(value);
  }
  if (unit == QLatin1String("m")) {
    return length(value);
  }
  if (unit == QLatin1String("kg")) {
    return mass(value);
  }
  if (unit == QStringLiteral("°") || unit == QLatin1String("deg")) {
    return angle(value);
  }
  if (!value) {
    return notKnownText();
  }
  if (unit == QLatin1String("m/s") && system_ == UnitSystem::usCustomary) {
    return shown<Speed>(value, &metresPerSecond, 1, system_);
  }
  const bool whole = *value == static_cast<double>(qRound64(*value));
  const QString number = plain(value, whole ? 0 : 2);
  const QString word = unit == QLatin1String("units")   ? Words::tr("units")
                       : unit == QLatin1String("carts") ? Words::tr("carts")
                                                        : unit;
  return unit.isEmpty() ? number : number + QLatin1Char(' ') + word;
}

QString Figures::sentence(const QString& metric) const {
  static const std::vector<std::string> none;
  return system_ == UnitSystem::metric ? metric : catalogue::inBothUnits(metric, names_ ? *names_ : none);
}

} // namespace hangbook::desk
