// SPDX-License-Identifier: GPL-3.0-or-later
#include "quantity/decimal.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

#include <boost/multiprecision/cpp_int.hpp>

namespace hangbook::decimal {
namespace {

using Integer = boost::multiprecision::cpp_int;

/// Beyond it everything overflows or vanishes: keeps the sums of exponents far from the end of int.
constexpr int mostExponent = 100000;
/// Digits of a quotient that does not end: a double's midpoints are told apart long before.
constexpr int quotientDigits = 60;
/// Significant digits of a double in another unit, before the fewest are sought.
constexpr int workingDigits = 25;
/// 17 digits always suffice, as for any double; the rest is room.
constexpr int mostDigits = 21;

bool isDigit(char c) {
  return c >= '0' && c <= '9';
}

std::size_t digitsFrom(std::string_view text, std::size_t at) {
  std::size_t end = at;
  while (end < text.size() && isDigit(text[end])) {
    ++end;
  }
  return end - at;
}

int boundedExponent(std::string_view text) {
  int value = 0;
  for (const char c : text) {
    value = std::min(value * 10 + (c - '0'), mostExponent);
  }
  return value;
}

Integer integer(const std::string& digits) {
  return digits.empty() ? Integer(0) : Integer(digits);
}

Decimal fromInteger(bool negative, const Integer& value, int exponent) {
  return trimmed({negative, value.str(), exponent});
}

Integer powerOfTen(int exponent) {
  return boost::multiprecision::pow(Integer(10), static_cast<unsigned>(exponent));
}

/// From "d.ddde±xx".
Decimal fromScientific(std::string_view written) {
  Decimal value;
  if (written.front() == '-') {
    value.negative = true;
    written.remove_prefix(1);
  }
  const std::size_t mark = written.find('e');
  std::from_chars(written.data() + mark + (written[mark + 1] == '+' ? 2 : 1), written.data() + written.size(),
                  value.exponent);
  for (const char c : written.substr(0, mark)) {
    if (isDigit(c)) {
      value.digits += c;
    }
  }
  value.exponent -= static_cast<int>(value.digits.size()) - 1;
  return trimmed(value);
}

} // namespace

std::optional<Decimal> takeNumber(std::string_view& text, char decimalMark) {
  std::size_t end = digitsFrom(text, 0);
  Decimal value{false, std::string(text.substr(0, end)), 0};
  if (end < text.size() && text[end] == decimalMark) {
    const std::size_t places = digitsFrom(text, end + 1);
    if (places > 0) {
      value.digits += text.substr(end + 1, places);
      value.exponent = -static_cast<int>(places);
      end += 1 + places;
    }
  }
  if (end == 0) {
    return std::nullopt;
  }
  if (end < text.size() && (text[end] == 'e' || text[end] == 'E')) {
    const bool hasSign = end + 1 < text.size() && (text[end + 1] == '-' || text[end + 1] == '+');
    const std::size_t from = end + (hasSign ? 2 : 1);
    const std::size_t count = digitsFrom(text, from);
    if (count > 0) {
      const int exponent = boundedExponent(text.substr(from, count));
      value.exponent += text[end + 1] == '-' ? -exponent : exponent;
      end = from + count;
    }
  }
  text.remove_prefix(end);
  return trimmed(value);
}

Decimal trimmed(Decimal value) {
  value.digits.erase(0, std::min(value.digits.find_first_not_of('0'), value.digits.size()));
  const std::size_t last = value.digits.find_last_not_of('0');
  const std::size_t keep = last == std::string::npos ? 0 : last + 1;
  value.exponent += static_cast<int>(value.digits.size() - keep);
  value.digits.resize(keep);
  if (value.digits.empty()) {
    value.exponent = 0;
  }
  return value;
}

Decimal sum(const Decimal& left, const Decimal& right) {
  if (left.digits.empty() || right.digits.empty()) {
    return left.digits.empty() ? right : left;
  }
  const int exponent = std::min(left.exponent, right.exponent);
  return fromInteger(false,
                     integer(left.digits) * powerOfTen(left.exponent - exponent) +
                         integer(right.digits) * powerOfTen(right.exponent - exponent),
                     exponent);
}

Decimal product(const Decimal& value, const Factor& factor) {
  if (value.digits.empty()) {
    return value;
  }
  if (factor.numerator == 1 && factor.denominator == 1) {
    return {value.negative, value.digits, value.exponent + factor.tens};
  }
  Integer number = integer(value.digits) * factor.numerator;
  int exponent = value.exponent + factor.tens;
  if (factor.denominator != 1) {
    number *= powerOfTen(quotientDigits);
    exponent -= quotientDigits;
    const bool ends = number % factor.denominator == 0;
    number /= factor.denominator;
    if (!ends) { // what is cut off lies above: a last 1 keeps it from looking like a midpoint
      number = number * 10 + 1;
      --exponent;
    }
  }
  return fromInteger(value.negative, number, exponent);
}

std::optional<double> nearest(const Decimal& value) {
  const std::string written =
      value.digits.empty() ? "0" : value.digits + "e" + std::to_string(value.exponent);
  double result = 0;
  const auto [end, trouble] = std::from_chars(written.data(), written.data() + written.size(), result);
  if (trouble != std::errc() || !std::isfinite(result) || (result == 0 && !value.digits.empty())) {
    return std::nullopt;
  }
  return value.negative ? -result : result;
}

Decimal shortest(double value) {
  std::array<char, 64> buffer{};
  const auto done =
      std::to_chars(buffer.data(), buffer.data() + buffer.size(), value, std::chars_format::scientific);
  return fromScientific({buffer.data(), done.ptr});
}

std::optional<Decimal> shortestIn(double value, const Factor& factor) {
  if (factor.numerator == 1 && factor.denominator == 1) {
    Decimal result = shortest(value);
    result.exponent -= result.digits.empty() ? 0 : factor.tens;
    return result;
  }
  if (value == 0) {
    return shortest(value);
  }
  std::array<char, 64> buffer{};
  const auto done = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value,
                                  std::chars_format::scientific, workingDigits - 1);
  const Decimal exact = fromScientific({buffer.data(), done.ptr});
  // Truncated, and long enough that what was cut off cannot matter to the digits tried below.
  const Integer quotient =
      integer(exact.digits) * factor.denominator * powerOfTen(quotientDigits) / factor.numerator;
  const std::string digits = quotient.str();
  const int exponent = exact.exponent - factor.tens - quotientDigits;
  for (int count = 1; count <= mostDigits; ++count) {
    const int cut = static_cast<int>(digits.size()) - count;
    const std::string kept = digits.substr(0, static_cast<std::size_t>(count));
    const bool up = digits[static_cast<std::size_t>(count)] >= '5';
    // Nearest first. The other neighbour can be the one that reads back where the gap between doubles
    // changes.
    for (const bool upwards : {up, !up}) {
      const Decimal tried = fromInteger(exact.negative, integer(kept) + (upwards ? 1 : 0), exponent + cut);
      if (nearest(product(tried, factor)) == value) {
        return tried;
      }
    }
  }
  return std::nullopt;
}

Decimal rounded(const Decimal& value, int places) {
  const int drop = -places - value.exponent;
  Decimal result = value;
  if (drop > 0) {
    const auto length = static_cast<int>(value.digits.size());
    if (drop > length) {
      return {};
    }
    const auto keep = static_cast<std::size_t>(length - drop);
    const bool up = value.digits[keep] >= '5';
    result = fromInteger(value.negative, integer(value.digits.substr(0, keep)) + (up ? 1 : 0), -places);
  }
  result.negative = result.negative && !result.digits.empty();
  return result;
}

std::string fixedText(const Decimal& value, int places, char decimalMark) {
  std::string digits = value.digits;
  if (!digits.empty()) {
    digits.append(static_cast<std::size_t>(value.exponent + places), '0');
  }
  const auto least = static_cast<std::size_t>(places) + 1;
  if (digits.size() < least) {
    digits.insert(0, least - digits.size(), '0');
  }
  if (places > 0) {
    digits.insert(digits.size() - static_cast<std::size_t>(places), 1, decimalMark);
  }
  return (value.negative ? "-" : "") + digits;
}

std::string text(const Decimal& value, char decimalMark) {
  const int size = static_cast<int>(value.digits.size());
  const int leading = value.exponent + size - 1; // power of ten of the first digit
  if (value.digits.empty() || (leading >= -7 && leading < 21)) {
    return fixedText(value, std::max(0, -value.exponent), decimalMark);
  }
  std::string written = value.digits;
  if (size > 1) {
    written.insert(1, 1, decimalMark);
  }
  return (value.negative ? "-" : "") + written + "e" + std::to_string(leading);
}

} // namespace hangbook::decimal
