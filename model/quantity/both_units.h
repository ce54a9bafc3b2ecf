// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// Sentences and columns that were made in metric units, for readers who have US customary ones. The metric
/// figures are what was proved and stay; the converted ones stand in brackets behind them.
namespace hangbook {

/// The text, with the same in US customary units in brackets behind each metric quantity:
/// "carries 4.98 kN (1120 lbf) at rest". A quantity is a number, one space and a metric unit that `units.h`
/// knows, or an area, a pressure, a moment or a density made of these. Ranges and sums whose last figure
/// alone has a unit get one bracket: "0.36 + 1.20 kN (80.9 + 269.8 lbf)", "6.20–7.10 m (20.34–23.29 ft)".
/// Degrees stay as they are. Left alone is what may mean two things ("1,234 kg", "12 345 kg", "1/2 m"), what
/// has letters, digits or marks grown onto it ("MB008", "3 m³/h"), and whatever lies in one of `names`.
/// A text that was treated already comes back as it is. UTF-8; a decimal point.
///
/// Rounding: half away from zero, to a step no larger than that of the metric text (so that two figures that
/// differ there differ in the brackets), and to no fewer than three digits ("2 m (6.56 ft)").
std::string inBothUnits(std::string_view text, const std::vector<std::string>& names = {});

/// A figure and its unit as they stand in such brackets.
struct CustomaryFigure {
  std::string figure; ///< "27.1"
  std::string unit;   ///< "lb"
};

/// The same for a column whose unit stands in its heading: ("12.3", "kg") is 27.1 lb. None where the unit is
/// not a metric one that is converted, or the text is neither a number nor a range.
std::optional<CustomaryFigure> customaryOf(std::string_view figure, std::string_view unit);
/// The unit into which a metric one is converted; empty where it is none of these.
std::string customaryUnit(std::string_view unit);

} // namespace hangbook
