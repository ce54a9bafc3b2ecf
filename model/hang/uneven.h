// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cmath>
#include <optional>

#include "hang/hang.h"
#include "hang/statics.h"

/// Two picks that do not stand as they were set: one hoist ran on, or was never level.
namespace hangbook::hang {

/// Whether picks may stand so far off level, by the sine of their line's rise: up to 60°. NaN may not.
inline bool standsUneven(double sine) {
  return std::abs(sine) <= std::sin(toRadians(60.0));
}

struct Uneven {
  double turnDeg{};              ///< side-pair: roll, left side up positive; fore-aft-pair: the tilt
  std::array<double, 2> loads{}; ///< N, in the order of `Statics::pickLoads`
};

/// The hang of `statics` with its first pick (left, front) `rise` metres higher against the second one than
/// it was set; below 0 lower. The body is rigid in the shape that it has, and the chains stay upright.
///
/// Side-pair, rolled by ρ with sin ρ = rise ÷ spacing: the centre of gravity stands in the upright plane of
/// the picks, Y aside of their middle and r square below their line, so that the left share is
/// ½ + (Y + r tan ρ) ÷ spacing. Fore-aft-pair: moments about the front pick at the tilt that follows.
/// Nothing for a single pick, and where the picks would stand more than 60° off level.
std::optional<Uneven> unevenBy(const Bar& bar, const Statics& statics, double rise);

/// The rise at which the first pick has this part of the total, if there is one; the reverse of `unevenBy`.
std::optional<double> riseForShare(const Bar& bar, const Statics& statics, double firstShare);

} // namespace hangbook::hang
