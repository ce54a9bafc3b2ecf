// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

#include "quantity/error.h"
#include "quantity/quantity.h"

/// Quantities as people write them, both ways. Text is UTF-8.
namespace hangbook {

enum class UnitSystem { metric, usCustomary };

/// How figures are written in the text at hand. A decimal comma allows "2,5 m"; grouping marks are never
/// read, since "1,234" would then mean two things.
struct NumberForm {
  char decimalMark = '.';
};

/// What a text could not be read as, in words for people: what was read and what is expected.
class QuantityError : public Error {
public:
  explicit QuantityError(const std::string& text) : Error(Trouble::badInput, text) {}
};

/// Reads text as Quantity (Mass, Length, Force, Speed, Angle, LinearDensity); the grammar and all units stand
/// in reading.h and units.cpp. Converted exactly and rounded once, to the nearest double.
/// `defaultUnit` (such as "kg", "ft") is the unit of a bare number; where it is empty a bare number is
/// refused, 0 too. Lengths may be compound ("32 ft 6 in", 32' 6 1/2"). A bare "ton" is refused as ambiguous,
/// and so is the wrong decimal mark. A capacity may be written as a mass where a Force is wanted: "1 t" is
/// then its weight under standard gravity. Throws QuantityError; a figure that would overflow, or vanish
/// though it is not zero, is refused.
template <class Quantity>
Quantity parse(std::string_view text, std::string_view defaultUnit = {}, NumberForm form = {});

/// Writes so that parse(print(x)) gives x to the bit: the fewest digits that do, with the unit
/// (kg, m, kN, m/s, °, kg/m; lb, ft, lbf, ft/s, °, lb/ft). Holds for every finite value, minus zero included;
/// others throw QuantityError.
template <class Quantity>
std::string print(Quantity value, UnitSystem system = UnitSystem::metric, NumberForm form = {});

/// The most places that `show` gives.
inline constexpr int mostShownDigits = 17;

/// For screens and sheets: `digits` places after the mark (0 to mostShownDigits), with unit; never "-0".
/// What `print` writes is rounded half away from zero: 2.675 m is shown as 2.68 m, though the nearest double
/// lies a little below. Throws QuantityError where the value is not finite or `digits` is out of bounds.
template <class Quantity>
std::string show(Quantity value, int digits, UnitSystem system = UnitSystem::metric, NumberForm form = {});

/// The unit that `print` and `show` write.
template <class Quantity>
std::string_view unitOf(UnitSystem system);

/// The number that `print` writes, for scales and charts. Not finite stays not finite.
template <class Quantity>
double valueIn(Quantity value, UnitSystem system);

/// A plain number in the same manner: the fewest digits that read back to the bit, and back.
std::string printNumber(double value, NumberForm form = {});
double parseNumber(std::string_view text, NumberForm form = {});

} // namespace hangbook
