// SPDX-License-Identifier: GPL-3.0-or-later
#include "quantity/text.h"

#include <cmath>
#include <optional>

#include "quantity/decimal.h"
#include "quantity/reading.h"
#include "quantity/units.h"

namespace hangbook {
namespace {

using decimal::Decimal;
using units::Kind;
using units::Unit;

template <class Quantity>
constexpr Kind kindOf{};
template <>
constexpr Kind kindOf<Mass> = Kind::mass;
template <>
constexpr Kind kindOf<Length> = Kind::length;
template <>
constexpr Kind kindOf<Force> = Kind::force;
template <>
constexpr Kind kindOf<Speed> = Kind::speed;
template <>
constexpr Kind kindOf<Angle> = Kind::angle;
template <>
constexpr Kind kindOf<LinearDensity> = Kind::linearDensity;

double finite(const Decimal& value, std::string_view text) {
  const std::optional<double> result = decimal::nearest(value);
  if (!result) {
    throw QuantityError(units::quoted(text) + " is too large or too small a figure to be kept");
  }
  return *result;
}

void mustBeFinite(double value) {
  if (!std::isfinite(value)) {
    throw QuantityError("a figure that is not finite cannot be written");
  }
}

Decimal digitsIn(double value, const Unit& unit) {
  mustBeFinite(value);
  const std::optional<Decimal> digits = decimal::shortestIn(value, unit.factor);
  if (!digits) {
    throw QuantityError("a figure cannot be written in " + std::string(unit.name));
  }
  return *digits;
}

std::string withUnit(std::string figure, const Unit& unit) {
  if (unit.kind != Kind::angle) {
    figure += ' ';
  }
  return figure += unit.name;
}

} // namespace

template <class Quantity>
Quantity parse(std::string_view text, std::string_view defaultUnit, NumberForm form) {
  return Quantity::from_value(finite(reading::quantity(kindOf<Quantity>, text, defaultUnit, form), text));
}

template <class Quantity>
std::string print(Quantity value, UnitSystem system, NumberForm form) {
  const Unit& unit = units::written(kindOf<Quantity>, system);
  return withUnit(decimal::text(digitsIn(value.value(), unit), form.decimalMark), unit);
}

template <class Quantity>
std::string show(Quantity value, int digits, UnitSystem system, NumberForm form) {
  if (digits < 0 || digits > mostShownDigits) {
    throw QuantityError("figures are shown with 0 to " + std::to_string(mostShownDigits) +
                        " places, not with " + std::to_string(digits));
  }
  const Unit& unit = units::written(kindOf<Quantity>, system);
  const Decimal rounded = decimal::rounded(digitsIn(value.value(), unit), digits);
  return withUnit(decimal::fixedText(rounded, digits, form.decimalMark), unit);
}

template <class Quantity>
std::string_view unitOf(UnitSystem system) {
  return units::written(kindOf<Quantity>, system).name;
}

template <class Quantity>
double valueIn(Quantity value, UnitSystem system) {
  if (!std::isfinite(value.value())) {
    return value.value();
  }
  return finite(digitsIn(value.value(), units::written(kindOf<Quantity>, system)), unitOf<Quantity>(system));
}

std::string printNumber(double value, NumberForm form) {
  mustBeFinite(value);
  return decimal::text(decimal::shortest(value), form.decimalMark);
}

double parseNumber(std::string_view text, NumberForm form) {
  return finite(reading::number(text, form), text);
}

#define HANGBOOK_TEXT_OF(Quantity)                                                                           \
  template Quantity parse<Quantity>(std::string_view, std::string_view, NumberForm);                         \
  template std::string print<Quantity>(Quantity, UnitSystem, NumberForm);                                    \
  template std::string show<Quantity>(Quantity, int, UnitSystem, NumberForm);                                \
  template std::string_view unitOf<Quantity>(UnitSystem);                                                    \
  template double valueIn<Quantity>(Quantity, UnitSystem);

HANGBOOK_TEXT_OF(Mass)
HANGBOOK_TEXT_OF(Length)
HANGBOOK_TEXT_OF(Force)
HANGBOOK_TEXT_OF(Speed)
HANGBOOK_TEXT_OF(Angle)
HANGBOOK_TEXT_OF(LinearDensity)

#undef HANGBOOK_TEXT_OF

} // namespace hangbook
