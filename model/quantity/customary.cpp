// SPDX-License-Identifier: GPL-3.0-or-later
#include "quantity/customary.h"

#include <array>
#include <vector>

#include "quantity/units.h"

namespace hangbook::customary {
namespace {

using decimal::Factor;
using units::Kind;

struct Known {
  Kind kind;
  std::string_view from;
  std::string_view to;
};

constexpr std::array knownUnits = {
    Known{Kind::mass, "kg", "lb"},         Known{Kind::mass, "kilogram", "lb"},
    Known{Kind::mass, "kilograms", "lb"},  Known{Kind::mass, "t", "lb"},
    Known{Kind::mass, "tonne", "lb"},      Known{Kind::mass, "tonnes", "lb"},
    Known{Kind::length, "m", "ft"},        Known{Kind::length, "metre", "ft"},
    Known{Kind::length, "metres", "ft"},   Known{Kind::length, "cm", "in"},
    Known{Kind::length, "mm", "in"},       Known{Kind::length, "km", "mi"},
    Known{Kind::force, "N", "lbf"},        Known{Kind::force, "daN", "lbf"},
    Known{Kind::force, "kN", "lbf"},       Known{Kind::speed, "m/s", "ft/s"},
    Known{Kind::speed, "m/min", "ft/min"}, Known{Kind::speed, "mm/s", "ft/min"},
    Known{Kind::speed, "km/h", "mph"},     Known{Kind::linearDensity, "kg/m", "lb/ft"},
};

constexpr Factor one{1, 1, 0};

// From the exact foot, pound and pound-force of units.cpp: 1 ft² = 0.09290304 m², 1 ft³ = 0.028316846592 m³,
// 1 lbf·ft = 4.4482216152605 N × 0.3048 m = 1.3558179483314004 N·m.
constexpr std::array made = {
    Conversion{"m²", "ft²", one, {1, 9290304, 8}},
    Conversion{"m³", "ft³", one, {1, 28316846592, 12}},
    Conversion{"N/m²", "lbf/ft²", one, {9290304, 44482216152605, 5}},
    Conversion{"kN/m²", "lbf/ft²", {1, 1, 3}, {9290304, 44482216152605, 5}},
    Conversion{"kg/m²", "lb/ft²", one, {9290304, 45359237, 0}},
    Conversion{"kg/m³", "lb/ft³", one, {28316846592, 45359237, -4}},
    Conversion{"N·m", "lbf·ft", one, {1, 135581794833140040, 17}},
    Conversion{"kN·m", "lbf·ft", {1, 1, 3}, {1, 135581794833140040, 17}},
};

std::vector<Conversion> allConversions() {
  std::vector<Conversion> all(made.begin(), made.end());
  for (const Known& each : knownUnits) {
    const Factor to = units::named(each.kind, each.to, each.to).factor;
    all.push_back({each.from,
                   each.to,
                   units::named(each.kind, each.from, each.from).factor,
                   {to.denominator, to.numerator, -to.tens}});
  }
  return all;
}

} // namespace

const Conversion* beginning(std::string_view text) {
  static const std::vector<Conversion> all = allConversions();
  const Conversion* longest = nullptr;
  for (const Conversion& each : all) {
    if (text.starts_with(each.from) && (longest == nullptr || each.from.size() > longest->from.size())) {
      longest = &each;
    }
  }
  return longest;
}

decimal::Decimal converted(const decimal::Decimal& value, const Conversion& by) {
  return decimal::product(decimal::product(value, by.toInside), by.fromInside);
}

} // namespace hangbook::customary
