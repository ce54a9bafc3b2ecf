// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace hangbook::hang {

enum class BuildStage {
  stacked, ///< so many cabinets under the bar, the chain not yet on; bar level, pan and actuator as assembled
  chained, ///< the same with the chain on
  aiming,  ///< all of them, while tilt and pan travel from there to the set ones, in any order
  set,     ///< as set
};

/// Which step, in short.
struct BuildMoment {
  BuildStage stage = BuildStage::set;
  int cabinets{};
};

/// Loads and parts of loads that differ by less than this part are the same but for rounding: the plainer
/// step is then named.
inline constexpr double sameLoad = 1e-9;

/// Whether one part of a load is more than another, and not by rounding alone.
constexpr bool isMore(double one, double than) {
  return one > than + sameLoad;
}

} // namespace hangbook::hang
