// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "options/bridle_pick.h"
#include "options/weight_limits.h"

/// What a leg of a bridle is held against, in calm air and in a gust.
namespace hangbook::options {

/// The piece of a leg that may take least, N; of one whose limit is not known `notKnown`.
struct Weakest {
  double limit = notKnown;
  const catalogue::HardwareType* type = nullptr; ///< nullptr: what it is made of is not known
};
Weakest weakestOf(const Case& option, const BridleLeg& leg);

/// A leg that stands so far from the horizontal, degrees: below the least angle it fails, exactly at it or
/// below the angle that the house prefers it is tight.
Use legAngleUse(const WeightLimits& limits, double fromHorizontalDeg);

} // namespace hangbook::options
