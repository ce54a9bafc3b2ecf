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

} // namespace hangbook::hang
