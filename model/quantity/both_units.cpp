// SPDX-License-Identifier: GPL-3.0-or-later
#include "quantity/both_units.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdlib>
#include <utility>

#include "quantity/customary.h"
#include "quantity/text.h"

namespace hangbook {
namespace {

using customary::Conversion;
using decimal::Decimal;

constexpr int leastDigits = 3; ///< "2 m" is 6.56 ft: a whole foot would be half a foot wrong

constexpr std::array<std::string_view, 4> spaces = {" ", "\u00A0", "\u2009", "\u202F"};
constexpr std::array<std::string_view, 3> signs = {"-", "+", "\u2212"};
/// What may stand right before a number, beside a space and the start.
constexpr std::array<std::string_view, 27> openers = {
    "(", "[", "{", "\"", "=", ":", ";", "<", ">", "~", "|", "\n", "\t",    "\u2013",
    "±", "×", "÷", "≤",  "≥", "≈", "→", "…", "“", "„", "«", "‘",  "\u2014"};

template <std::size_t count>
std::string_view startOf(std::string_view text, const std::array<std::string_view, count>& among) {
  const auto found =
      std::ranges::find_if(among, [&](std::string_view each) { return text.starts_with(each); });
  return found == among.end() ? std::string_view() : *found;
}

template <std::size_t count>
std::string_view endOf(std::string_view text, const std::array<std::string_view, count>& among) {
  const auto found = std::ranges::find_if(among, [&](std::string_view each) { return text.ends_with(each); });
  return found == among.end() ? std::string_view() : *found;
}

bool isDigit(char c) {
  return c >= '0' && c <= '9';
}

bool isWordByte(char c) { // letters of other scripts and marks too: they are not told apart here
  return isDigit(c) || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '_' ||
         static_cast<unsigned char>(c) >= 0x80;
}

struct Number {
  std::string_view sign;
  std::string_view digits; ///< as written, without the sign
  int places = 0;          ///< after the mark, with what an exponent adds
  Decimal value;           ///< not negative
};

/// The number at the front of `text`, which moves past it. Neither "1,234" nor "1.2.3" is one.
std::optional<Number> takeNumber(std::string_view& text) {
  std::string_view rest = text;
  Number number;
  number.sign = startOf(rest, signs);
  rest.remove_prefix(number.sign.size());
  const std::string_view from = rest;
  if (rest.empty() || !isDigit(rest.front())) {
    return std::nullopt;
  }
  const auto value = decimal::takeNumber(rest, '.');
  const bool goesOn =
      rest.size() > 1 && (rest[0] == '.' || rest[0] == ',' || rest[0] == '\'') && isDigit(rest[1]);
  if (!value || goesOn) {
    return std::nullopt;
  }
  number.value = *value;
  number.digits = from.substr(0, from.size() - rest.size());
  const std::size_t exponent = std::min(number.digits.find_first_of("eE"), number.digits.size());
  const std::size_t mark = number.digits.substr(0, exponent).find('.');
  number.places = mark == std::string_view::npos ? 0 : static_cast<int>(exponent - mark - 1);
  if (exponent < number.digits.size()) {
    number.places -= std::atoi(std::string(number.digits.substr(exponent + 1, 6)).c_str());
  }
  text = rest;
  return number;
}

/// Figures with one unit behind the last of them.
struct Run {
  std::vector<Number> numbers;
  std::vector<std::string_view> between; ///< one fewer
  const Conversion* unit = nullptr;
  std::size_t size = 0; ///< bytes of the text, unit and all
};

/// Whether a unit may end here: "5 kN." and "5 m)", but neither "5 mm" nor "3 m³/h" nor "2 m-long".
bool wordEnds(std::string_view rest) {
  if (rest.empty()) {
    return true;
  }
  if (static_cast<unsigned char>(rest.front()) >= 0x80) {
    constexpr std::array<std::string_view, 13> closers = {
        "\u2013", "\u2014", "…", "”", "“", "’", "»", "→", "×", "\u00A0", "\u2009", "\u202F", "±"};
    return !startOf(rest, closers).empty();
  }
  const bool hyphened = rest.front() == '-' && rest.size() > 1 && isWordByte(rest[1]);
  return !isWordByte(rest.front()) && !hyphened && rest.front() != '/' && rest.front() != '^' &&
         rest.front() != '\'';
}

/// What joins two figures of one kind; empty where nothing does. Where words or spaces stand between they may
/// be of two kinds ("mark 5 – 2.50 m"): those want as many places, one or more.
std::string_view joint(std::string_view rest) {
  constexpr std::array<std::string_view, 10> all = {" + ",    " ± ", " \u2013 ", " - ",   " \u2212 ",
                                                    "\u2013", "±",   " to ",     " and ", "-"};
  return startOf(rest, all);
}

bool mayJoin(const Number& left, std::string_view joint, const Number& right, bool announced) {
  if (joint == " + " || joint == " ± " || joint == "±" || joint == "\u2013" || joint == "-") {
    return joint != "-" || right.sign.empty();
  }
  if (joint == " and ") {
    return announced;
  }
  return announced || (left.places == right.places && left.places > 0);
}

/// `before` is all of the text that stands in front of it.
std::optional<Run> runAt(std::string_view before, std::string_view text) {
  const bool announced = before.ends_with("etween ") || before.ends_with("rom "); // "From", "Between"
  std::string_view rest = text;
  Run run;
  while (true) {
    const std::optional<Number> number = takeNumber(rest);
    if (!number ||
        (!run.numbers.empty() && !mayJoin(run.numbers.back(), run.between.back(), *number, announced))) {
      return std::nullopt;
    }
    run.numbers.push_back(*number);
    const std::string_view space = startOf(rest, spaces);
    if (!space.empty()) {
      const Conversion* unit = customary::beginning(rest.substr(space.size()));
      if (unit != nullptr && wordEnds(rest.substr(space.size() + unit->from.size()))) {
        run.unit = unit;
        run.size = text.size() - rest.size() + space.size() + unit->from.size();
        return run;
      }
    }
    const std::string_view by = joint(rest);
    const bool isDate = by == "-" && std::ranges::find(run.between, by) != run.between.end();
    if (by.empty() || isDate) {
      return std::nullopt;
    }
    run.between.push_back(by);
    rest.remove_prefix(by.size());
  }
}

/// Whether a number may begin here, "-" and "+" being its sign only where no word or figure stands before.
bool numberMayBegin(std::string_view before) {
  return before.empty() || !endOf(before, spaces).empty() || !endOf(before, openers).empty();
}

/// "12 345 kg": twelve thousand, or a twelve before 345 kg?
bool maybeGrouped(std::string_view before, const Number& first) {
  const std::string_view space = endOf(before, spaces);
  const std::size_t whole = std::min(first.digits.find('.'), first.digits.size());
  if (space.empty() || whole != 3 || !first.sign.empty()) {
    return false;
  }
  before.remove_suffix(space.size());
  std::size_t count = 0;
  while (count < before.size() && isDigit(before[before.size() - 1 - count])) {
    ++count;
  }
  before.remove_suffix(count);
  return count > 0 && count < 4 && (before.empty() || !isWordByte(before.back()));
}

int placesFor(const Number& number, const Conversion& unit) {
  // A step of the text in the other unit; as a double, since only its size counts.
  const double step =
      decimal::nearest(customary::converted({false, "1", -number.places}, unit)).value_or(1.0);
  int places = static_cast<int>(std::ceil(-std::log10(step) - 1e-9));
  const double size = decimal::nearest(customary::converted(number.value, unit)).value_or(0.0);
  if (size > 0.0) {
    places = std::max(places, leastDigits - 1 - static_cast<int>(std::floor(std::log10(size))));
  }
  return std::clamp(places, 0, mostShownDigits);
}

std::string figureOf(const Number& number, const Conversion& unit, int places) {
  const Decimal value = decimal::rounded(customary::converted(number.value, unit), places);
  return std::string(number.sign) + decimal::fixedText(value, places, '.');
}

/// All of a run in the other unit, without its name.
std::string figuresOf(const Run& run) {
  int places = 0;
  for (const Number& each : run.numbers) {
    places = std::max(places, placesFor(each, *run.unit));
  }
  std::string text;
  for (std::size_t at = 0; at < run.numbers.size(); ++at) {
    text += at == 0 ? std::string_view() : run.between[at - 1];
    text += figureOf(run.numbers[at], *run.unit, places);
  }
  return text;
}

std::string bracketOf(const Run& run, std::string_view before) {
  const std::string_view either = before.ends_with("± ") ? "± " : before.ends_with("±") ? "±" : "";
  return std::string(" (").append(either).append(figuresOf(run)).append(" ").append(run.unit->to).append(")");
}

/// From where to where names lie.
std::vector<std::pair<std::size_t, std::size_t>> spansOf(std::string_view text,
                                                         const std::vector<std::string>& names) {
  std::vector<std::pair<std::size_t, std::size_t>> spans;
  for (const std::string& name : names) {
    for (std::size_t at = text.find(name); !name.empty() && at != std::string_view::npos;
         at = text.find(name, at + name.size())) {
      spans.emplace_back(at, at + name.size());
    }
  }
  return spans;
}

} // namespace

std::string inBothUnits(std::string_view text, const std::vector<std::string>& names) {
  const auto spans = spansOf(text, names);
  std::string made;
  std::size_t at = 0;
  while (at < text.size()) {
    const std::string_view before = text.substr(0, at);
    const std::string_view rest = text.substr(at);
    const bool starts = (isDigit(rest.front()) || !startOf(rest, signs).empty()) && numberMayBegin(before);
    const std::optional<Run> run = starts ? runAt(before, rest) : std::nullopt;
    const bool named = run && std::ranges::any_of(spans, [&](const auto& span) {
                         return span.first < at + run->size && at < span.second;
                       });
    if (run && !named && !maybeGrouped(before, run->numbers.front())) {
      const std::string bracket = bracketOf(*run, before);
      made += rest.substr(0, run->size);
      made += bracket;
      at += run->size + (rest.substr(run->size).starts_with(bracket) ? bracket.size() : 0);
      continue;
    }
    std::size_t step = 1;
    std::string_view number = rest;
    if (starts && takeNumber(number)) {
      step = rest.size() - number.size();
    }
    made += rest.substr(0, step);
    at += step;
  }
  return made;
}

std::optional<CustomaryFigure> customaryOf(std::string_view figure, std::string_view unit) {
  const std::string whole = std::string(figure).append(" ").append(unit);
  const std::optional<Run> run = runAt({}, whole);
  if (!run || run->size != whole.size()) {
    return std::nullopt;
  }
  return CustomaryFigure{figuresOf(*run), std::string(run->unit->to)};
}

std::string customaryUnit(std::string_view unit) {
  const Conversion* conversion = customary::beginning(unit);
  return conversion != nullptr && conversion->from == unit ? std::string(conversion->to) : std::string();
}

} // namespace hangbook
