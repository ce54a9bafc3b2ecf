// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

#include "quantity/decimal.h"
#include "quantity/text.h"

/// The units that are read and written. Factors are exact; where they come from stands in the README.
namespace hangbook::units {

enum class Kind { mass, length, force, speed, angle, linearDensity };

struct Unit {
  Kind kind;
  std::string_view name;
  decimal::Factor factor; ///< one of it in kg, m, N, m/s, ° or kg/m
};

/// The unit of that name for that kind. Names of two letters and more are read in any case ("KG", "Lbs").
/// Throws QuantityError where there is none, or where the name means more than one thing ("ton");
/// `read` is the whole text that it stood in.
const Unit& named(Kind kind, std::string_view name, std::string_view read);

/// Whether it names a unit of any kind.
bool known(std::string_view name);

/// The unit that figures are written in.
const Unit& written(Kind kind, UnitSystem system);

/// What may be typed, for the end of an error: "a mass such as 250 kg, 1.2 t or 550 lb".
std::string_view expected(Kind kind);

/// The text in quotation marks, cut where it is long, control characters shown as "?".
std::string quoted(std::string_view text);

} // namespace hangbook::units
