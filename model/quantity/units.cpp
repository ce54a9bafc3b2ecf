// SPDX-License-Identifier: GPL-3.0-or-later
#include "quantity/units.h"

#include <algorithm>
#include <array>
#include <string>

namespace hangbook::units {
namespace {

using decimal::Factor;

constexpr Factor one{1, 1, 0};
constexpr Factor pound{45359237, 1, -8};             // kg
constexpr Factor poundForce{44482216152605, 1, -13}; // N: the pound under standard gravity
constexpr Factor kilogramForce{980665, 1, -5};       // N: standard gravity

constexpr Factor times(Factor factor, std::int64_t count, int tens = 0) {
  return {factor.numerator * count, factor.denominator, factor.tens + tens};
}

// The first of a factor's names is the one in which it is written.
constexpr std::array all = {
    Unit{Kind::mass, "kg", one},
    Unit{Kind::mass, "kgs", one},
    Unit{Kind::mass, "kilogram", one},
    Unit{Kind::mass, "kilograms", one},
    Unit{Kind::mass, "g", {1, 1, -3}},
    Unit{Kind::mass, "t", {1, 1, 3}},
    Unit{Kind::mass, "tonne", {1, 1, 3}},
    Unit{Kind::mass, "tonnes", {1, 1, 3}},
    Unit{Kind::mass, "metric ton", {1, 1, 3}},
    Unit{Kind::mass, "metric tons", {1, 1, 3}},
    Unit{Kind::mass, "lb", pound},
    Unit{Kind::mass, "lbs", pound},
    Unit{Kind::mass, "pound", pound},
    Unit{Kind::mass, "pounds", pound},
    Unit{Kind::mass, "short ton", times(pound, 2, 3)},
    Unit{Kind::mass, "short tons", times(pound, 2, 3)},
    Unit{Kind::mass, "long ton", times(pound, 224, 1)},
    Unit{Kind::mass, "long tons", times(pound, 224, 1)},

    Unit{Kind::length, "m", one},
    Unit{Kind::length, "metre", one},
    Unit{Kind::length, "metres", one},
    Unit{Kind::length, "meter", one},
    Unit{Kind::length, "meters", one},
    Unit{Kind::length, "cm", {1, 1, -2}},
    Unit{Kind::length, "mm", {1, 1, -3}},
    Unit{Kind::length, "km", {1, 1, 3}},
    Unit{Kind::length, "ft", {3048, 1, -4}},
    Unit{Kind::length, "foot", {3048, 1, -4}},
    Unit{Kind::length, "feet", {3048, 1, -4}},
    Unit{Kind::length, "'", {3048, 1, -4}},
    Unit{Kind::length, "in", {254, 1, -4}},
    Unit{Kind::length, "inch", {254, 1, -4}},
    Unit{Kind::length, "inches", {254, 1, -4}},
    Unit{Kind::length, "\"", {254, 1, -4}},
    Unit{Kind::length, "yd", {9144, 1, -4}},
    Unit{Kind::length, "yard", {9144, 1, -4}},
    Unit{Kind::length, "yards", {9144, 1, -4}},
    Unit{Kind::length, "mi", {1609344, 1, -3}},
    Unit{Kind::length, "mile", {1609344, 1, -3}},
    Unit{Kind::length, "miles", {1609344, 1, -3}},

    Unit{Kind::force, "N", one},
    Unit{Kind::force, "kN", {1, 1, 3}},
    Unit{Kind::force, "daN", {1, 1, 1}},
    Unit{Kind::force, "newton", one},
    Unit{Kind::force, "newtons", one},
    Unit{Kind::force, "lbf", poundForce},
    Unit{Kind::force, "kip", times(poundForce, 1, 3)},
    Unit{Kind::force, "kips", times(poundForce, 1, 3)},
    Unit{Kind::force, "kgf", kilogramForce},
    // A capacity written as a mass: its weight under standard gravity.
    Unit{Kind::force, "kg", kilogramForce},
    Unit{Kind::force, "kgs", kilogramForce},
    Unit{Kind::force, "t", times(kilogramForce, 1, 3)},
    Unit{Kind::force, "tonne", times(kilogramForce, 1, 3)},
    Unit{Kind::force, "tonnes", times(kilogramForce, 1, 3)},
    Unit{Kind::force, "metric ton", times(kilogramForce, 1, 3)},
    Unit{Kind::force, "metric tons", times(kilogramForce, 1, 3)},
    Unit{Kind::force, "lb", poundForce},
    Unit{Kind::force, "lbs", poundForce},
    Unit{Kind::force, "pound", poundForce},
    Unit{Kind::force, "pounds", poundForce},
    Unit{Kind::force, "short ton", times(poundForce, 2, 3)},
    Unit{Kind::force, "short tons", times(poundForce, 2, 3)},
    Unit{Kind::force, "long ton", times(poundForce, 224, 1)},
    Unit{Kind::force, "long tons", times(poundForce, 224, 1)},

    Unit{Kind::speed, "m/s", one},
    Unit{Kind::speed, "m/min", {1, 6, -1}},
    Unit{Kind::speed, "km/h", {1, 36, 1}},
    Unit{Kind::speed, "kph", {1, 36, 1}},
    Unit{Kind::speed, "mm/s", {1, 1, -3}},
    Unit{Kind::speed, "ft/s", {3048, 1, -4}},
    Unit{Kind::speed, "ft/min", {508, 1, -5}},
    Unit{Kind::speed, "fpm", {508, 1, -5}},
    Unit{Kind::speed, "mph", {44704, 1, -5}},
    Unit{Kind::speed, "knot", {463, 900, 0}},
    Unit{Kind::speed, "knots", {463, 900, 0}},
    Unit{Kind::speed, "kt", {463, 900, 0}},
    Unit{Kind::speed, "kts", {463, 900, 0}},

    Unit{Kind::angle, "°", one},
    Unit{Kind::angle, "deg", one},
    Unit{Kind::angle, "degree", one},
    Unit{Kind::angle, "degrees", one},

    Unit{Kind::linearDensity, "kg/m", one},
    Unit{Kind::linearDensity, "g/m", {1, 1, -3}},
    Unit{Kind::linearDensity, "lb/ft", {45359237, 3048, -4}},
    Unit{Kind::linearDensity, "lbs/ft", {45359237, 3048, -4}},
};

char lower(char c) {
  return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

/// Single spaces inside, none beside a slash; small letters where the name has two and more.
std::string folded(std::string_view name, bool small) {
  std::string result;
  for (const char c : name) {
    const bool wanted = c != ' ' || (!result.empty() && result.back() != ' ' && result.back() != '/');
    if (c == '/' && !result.empty() && result.back() == ' ') {
      result.pop_back();
    }
    if (wanted) {
      result += small ? lower(c) : c;
    }
  }
  while (!result.empty() && result.back() == ' ') {
    result.pop_back();
  }
  return result;
}

const Unit* find(Kind kind, std::string_view name) {
  for (const Unit& unit : all) { // as a rule the name is written just so
    if (unit.kind == kind && unit.name == name) {
      return &unit;
    }
  }
  const std::string exact = folded(name, false);
  const std::string small = folded(name, true);
  const auto found = std::ranges::find_if(all, [&](const Unit& unit) {
    return unit.kind == kind &&
           (unit.name == exact || (exact.size() > 1 && folded(unit.name, true) == small));
  });
  return found == all.end() ? nullptr : &*found;
}

bool isTon(std::string_view name) {
  return name == "ton" || name == "tons" || name == "t";
}

} // namespace

const Unit& named(Kind kind, std::string_view name, std::string_view read) {
  if (const Unit* unit = find(kind, name)) {
    return *unit;
  }
  if ((kind == Kind::mass || kind == Kind::force) && isTon(folded(name, true))) {
    throw QuantityError(quoted(read) + " does not say which ton: write t or tonne (1000 kg), short ton "
                                       "(2000 lb) or long ton (2240 lb)");
  }
  throw QuantityError(quoted(read) + ": " + quoted(name) + " is not a unit for " +
                      std::string(expected(kind)));
}

bool known(std::string_view name) {
  constexpr std::array kinds = {Kind::mass,  Kind::length, Kind::force,
                                Kind::speed, Kind::angle,  Kind::linearDensity};
  return std::ranges::any_of(kinds, [&](Kind kind) { return find(kind, name) != nullptr; });
}

const Unit& written(Kind kind, UnitSystem system) {
  const bool metric = system == UnitSystem::metric;
  std::string_view name;
  switch (kind) {
  case Kind::mass:
    name = metric ? "kg" : "lb";
    break;
  case Kind::length:
    name = metric ? "m" : "ft";
    break;
  case Kind::force:
    name = metric ? "kN" : "lbf";
    break;
  case Kind::speed:
    name = metric ? "m/s" : "ft/s";
    break;
  case Kind::angle:
    name = "°";
    break;
  case Kind::linearDensity:
    name = metric ? "kg/m" : "lb/ft";
    break;
  }
  return *find(kind, name);
}

std::string_view expected(Kind kind) {
  switch (kind) {
  case Kind::mass:
    return "a mass such as 250 kg, 1.2 t or 550 lb";
  case Kind::length:
    return "a length such as 9.9 m, 850 mm or 32 ft 6 in";
  case Kind::force:
    return "a force such as 12.5 kN, 1250 N or 2800 lbf, or a capacity such as 1 t";
  case Kind::speed:
    return "a speed such as 15 m/s, 4 m/min or 16 ft/min";
  case Kind::angle:
    return "an angle such as -3.5°";
  case Kind::linearDensity:
    return "a mass per length such as 3.8 kg/m or 2.5 lb/ft";
  }
  return {};
}

std::string quoted(std::string_view text) {
  constexpr std::size_t most = 60;
  std::size_t end = std::min(text.size(), most);
  while (end < text.size() && end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0U) == 0x80U) {
    --end; // never in the middle of a character
  }
  std::string inside(text.substr(0, end));
  std::ranges::replace_if(
      inside, [](char c) { return static_cast<unsigned char>(c) < 0x20 || c == 0x7F; }, '?');
  return "“" + inside + (end < text.size() ? "…" : "") + "”";
}

} // namespace hangbook::units
