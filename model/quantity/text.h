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

/// Reads text as Quantity (Mass, Length, Force, Speed, Angle, LinearDensity).
/// `defaultUnit` (such as "kg", "ft") is the unit of a bare number; where it is empty a bare number is
/// refused. Lengths may be compound ("32 ft 6 in", 32' 6"); a bare "ton" is refused as ambiguous; a capacity
/// may be written as a mass where a Force is wanted ("1 t" is then its weight under standard gravity). Throws
/// QuantityError. Never answers with a non-finite figure.
template <class Quantity>
Quantity parse(std::string_view text, std::string_view defaultUnit = {}, NumberForm form = {});

/// Writes so that parse(print(x)) gives x to the bit: the fewest digits that do, with the unit
/// (kg, m, kN, m/s, °, kg/m; lb, ft, lbf, ft/s, °, lb/ft).
template <class Quantity>
std::string print(Quantity value, UnitSystem system = UnitSystem::metric, NumberForm form = {});

/// For screens and sheets: `digits` places after the mark, with unit, rounded half away from zero; never
/// "-0".
template <class Quantity>
std::string show(Quantity value, int digits, UnitSystem system = UnitSystem::metric, NumberForm form = {});

/// The unit that `print` and `show` write.
template <class Quantity>
std::string_view unitOf(UnitSystem system);

/// A plain number in the same manner: the fewest digits that read back to the bit, and back.
std::string printNumber(double value, NumberForm form = {});
double parseNumber(std::string_view text, NumberForm form = {});

} // namespace hangbook
