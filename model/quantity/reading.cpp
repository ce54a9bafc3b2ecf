// SPDX-License-Identifier: GPL-3.0-or-later
#include "quantity/reading.h"

#include <algorithm>
#include <array>
#include <optional>
#include <string>
#include <utility>

namespace hangbook::reading {
namespace {

using decimal::Decimal;
using units::quoted;
using units::Unit;

/// Nothing that a person types is longer; keeps hostile text from costing time.
constexpr std::size_t mostText = 200;

/// What is typed by other keyboards and put in by word processors -> its plain form.
constexpr std::array<std::pair<std::string_view, std::string_view>, 20> plainForms = {{
    {"\t", " "},      {"\u00A0", " "}, // no-break space
    {"\u2007", " "},                   // figure space
    {"\u2009", " "},                   // thin space
    {"\u202F", " "},                   // narrow no-break space
    {"\u2212", "-"},                   // minus
    {"\u2032", "'"},                   // prime
    {"\u2019", "'"},                   // closing quotation mark
    {"\u2033", "\""},                  // double prime
    {"\u201D", "\""},                  // closing double quotation mark
    {"''", "\""},     {"\u00BA", "°"}, // the ordinal mark, a common mistake for the degree
    {"\u2044", "/"},                   // fraction slash
    {"½", " 1/2"},    {"¼", " 1/4"},   {"¾", " 3/4"}, {"⅛", " 1/8"},
    {"⅜", " 3/8"},    {"⅝", " 5/8"},   {"⅞", " 7/8"},
}};

std::string plain(std::string_view text) {
  std::string result;
  while (!text.empty()) {
    const char first = text.front();
    if (static_cast<unsigned char>(first) < 0x80 && first != '\t' && first != '\'') { // plain already
      result += first;
      text.remove_prefix(1);
      continue;
    }
    bool found = false;
    for (const auto& [typed, form] : plainForms) {
      if (text.starts_with(typed)) {
        result += form;
        text.remove_prefix(typed.size());
        found = true;
        break;
      }
    }
    if (!found) {
      result += text.front();
      text.remove_prefix(1);
    }
  }
  return result;
}

bool startsWithDigit(std::string_view text) {
  return !text.empty() && text.front() >= '0' && text.front() <= '9';
}

void skipSpaces(std::string_view& text) {
  text.remove_prefix(std::min(text.find_first_not_of(' '), text.size()));
}

std::string_view trimmedText(std::string_view text) {
  skipSpaces(text);
  const std::size_t last = text.find_last_not_of(' ');
  return text.substr(0, last == std::string_view::npos ? 0 : last + 1);
}

/// Takes "+" or "-" from the front.
bool takeMinus(std::string_view& text) {
  const bool minus = text.starts_with('-');
  if (minus || text.starts_with('+')) {
    text.remove_prefix(1);
    skipSpaces(text);
  }
  return minus;
}

class Reader {
public:
  Reader(std::string_view read, std::string_view wanted, NumberForm form)
      : read_(read), wanted_(wanted), form_(form) {}

  [[noreturn]] void refuse(const std::string& why) const {
    throw QuantityError(quoted(read_) + why + "; expected " + std::string(wanted_));
  }

  /// A number that nothing number-like follows.
  Decimal takeNumber(std::string_view& rest) const {
    std::optional<Decimal> value = decimal::takeNumber(rest, form_.decimalMark);
    if (!value) {
      refuse(" does not begin with a number");
    }
    const char otherMark = form_.decimalMark == ',' ? '.' : ',';
    if (rest.starts_with(otherMark) || rest.starts_with(form_.decimalMark)) {
      refuse(std::string(": \"") + rest.front() + "\" does not belong here: the decimal mark is \"" +
             form_.decimalMark + "\" and digits are not grouped");
    }
    return *value;
  }

  /// A number, a fraction or both.
  Decimal takeAmount(std::string_view& rest) const {
    const std::string_view start = rest;
    if (const std::optional<Decimal> fraction = takeFraction(rest)) {
      return *fraction;
    }
    Decimal value = takeNumber(rest);
    const std::string_view written = start.substr(0, start.size() - rest.size());
    const bool whole = written.find_first_not_of("0123456789") == std::string_view::npos;
    std::string_view after = rest;
    if (after.starts_with('-')) {
      after.remove_prefix(1);
    }
    skipSpaces(after);
    if (const std::optional<Decimal> fraction = whole ? takeFraction(after) : std::nullopt) {
      rest = after;
      return decimal::sum(value, *fraction);
    }
    std::string_view next = rest;
    skipSpaces(next);
    if (next.size() < rest.size() && startsWithDigit(next)) {
      refuse(": digits are not grouped by spaces");
    }
    return value;
  }

private:
  /// "3/8", a proper fraction by a power of two.
  std::optional<Decimal> takeFraction(std::string_view& rest) const {
    std::string_view next = rest;
    const auto take = [&next]() {
      int value = 0;
      for (int count = 0; startsWithDigit(next) && count < 3; ++count) {
        value = value * 10 + (next.front() - '0');
        next.remove_prefix(1);
      }
      return value;
    };
    const int above = take();
    if (next.size() == rest.size() || !next.starts_with('/')) {
      return std::nullopt;
    }
    next.remove_prefix(1);
    const int below = take();
    const bool binary = below >= 2 && below <= 64 && (below & (below - 1)) == 0;
    if (!binary || above < 1 || above >= below || startsWithDigit(next)) {
      refuse(": only fractions such as 1/2, 3/4, 5/8 or 3/16 are read");
    }
    rest = next;
    // 1/64 = 0.015625: with six places each of them ends
    return decimal::trimmed({false, std::to_string(above * (1'000'000 / below)), -6});
  }

  std::string_view read_;
  std::string_view wanted_;
  NumberForm form_;
};

/// What stands before the next digit.
std::string_view takeUnit(std::string_view& rest) {
  const std::size_t end = std::min(rest.find_first_of("0123456789+-"), rest.size());
  const std::string_view unit = trimmedText(rest.substr(0, end));
  rest.remove_prefix(end);
  return unit;
}

} // namespace

Decimal quantity(units::Kind kind, std::string_view text, std::string_view defaultUnit, NumberForm form) {
  const Reader reader(text, units::expected(kind), form);
  if (text.size() > mostText) {
    reader.refuse(" is too long");
  }
  const std::string kept = plain(text);
  std::string_view rest = trimmedText(kept);
  if (rest.empty()) {
    reader.refuse(" is empty");
  }
  const bool negative = takeMinus(rest);
  const std::string_view amountText = rest;
  Decimal value = reader.takeAmount(rest);
  const bool whole = amountText.substr(0, amountText.size() - rest.size()).find_first_not_of("0123456789") ==
                     std::string_view::npos;
  skipSpaces(rest);
  std::string_view name = takeUnit(rest);
  if (name.empty()) {
    if (defaultUnit.empty()) {
      reader.refuse(" has no unit");
    }
    name = defaultUnit;
  }
  const Unit& unit = units::named(kind, name, text);
  value = decimal::product(value, unit.factor);

  if (!rest.empty()) { // inches after feet
    const Unit& foot = units::named(units::Kind::length, "ft", text);
    const Unit& inch = units::named(units::Kind::length, "in", text);
    if (kind != units::Kind::length || unit.factor.numerator != foot.factor.numerator ||
        !startsWithDigit(rest)) {
      reader.refuse(": nothing may follow the unit");
    }
    Decimal inches = reader.takeAmount(rest);
    const std::string_view second = takeUnit(rest);
    if (second.empty()) {
      reader.refuse(": the second figure has no unit");
    }
    if (units::named(kind, second, text).factor.numerator != inch.factor.numerator || !rest.empty()) {
      reader.refuse(": only inches may follow feet");
    }
    const std::optional<double> below = decimal::nearest(inches);
    if (!whole || !below || *below >= 12) {
      reader.refuse(": whole feet and fewer than 12 inches belong together");
    }
    value = decimal::sum(value, decimal::product(inches, inch.factor));
  }
  value.negative = negative;
  return value;
}

Decimal number(std::string_view text, NumberForm form) {
  const Reader reader(text, form.decimalMark == ',' ? "a number such as 12,5" : "a number such as 12.5",
                      form);
  if (text.size() > mostText) {
    reader.refuse(" is too long");
  }
  const std::string kept = plain(text);
  std::string_view rest = trimmedText(kept);
  const bool negative = takeMinus(rest);
  Decimal value = reader.takeNumber(rest);
  if (!rest.empty()) {
    reader.refuse(" is not a number alone");
  }
  value.negative = negative;
  return value;
}

} // namespace hangbook::reading
