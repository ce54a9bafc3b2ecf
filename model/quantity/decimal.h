// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

/// Decimal numbers, exact, as they stand in text. Conversions between units are done on these and are
/// rounded once, to the nearest double: "9.906 m" and "32 ft 6 in" are then the same to the bit on every
/// machine.
namespace hangbook::decimal {

/// ± digits × 10^exponent. `digits` has no leading zero; empty is zero.
struct Decimal {
  bool negative = false;
  std::string digits;
  int exponent = 0;
};

/// numerator / denominator × 10^tens, all positive. Every unit in use is such a number exactly.
struct Factor {
  std::int64_t numerator = 1;
  std::int64_t denominator = 1;
  int tens = 0;
};

/// Takes an unsigned number ("12", "12.5", ".5", "1e-3") from the front of `text`, which moves past it.
/// std::nullopt, and `text` untouched, where it does not begin with one. Nothing is grouped.
std::optional<Decimal> takeNumber(std::string_view& text, char decimalMark);

/// Leading and trailing zeros away; the value stays.
Decimal trimmed(Decimal value);
Decimal sum(const Decimal& left, const Decimal& right); ///< of two that are not negative
/// value × factor, exact; where the denominator leaves no end, to 60 digits or more with the rest marked,
/// which is enough to round to a double.
Decimal product(const Decimal& value, const Factor& factor);

/// The nearest double, ties to even; std::nullopt where it would overflow, or vanish though it is not zero.
std::optional<double> nearest(const Decimal& value);

/// The fewest digits which `nearest` gives back to the bit. `value` is finite.
Decimal shortest(double value);
/// The fewest digits d such that nearest(product(d, factor)) is `value` to the bit. `value` is finite;
/// std::nullopt only where d × factor cannot reach it, which no unit in use meets.
std::optional<Decimal> shortestIn(double value, const Factor& factor);

/// Rounded to that many places after the mark, half away from zero; zero has no sign then.
Decimal rounded(const Decimal& value, int places);

/// "-12.5"; with an exponent ("1.5e-9") where the plain form would be long. Minus zero keeps its sign.
std::string text(const Decimal& value, char decimalMark);
/// Plain form with exactly that many places, which are not fewer than the value has.
std::string fixedText(const Decimal& value, int places, char decimalMark);

} // namespace hangbook::decimal
