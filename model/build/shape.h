// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "build/job.h"

/// How far a hang that is partly built reaches below and above its hooks. In its own plane: origin where the
/// statics have it (midway between the picks, the front pick, the pick), z up, nose up positive.
namespace hangbook::build {

/// One attitude: elevation of the frame and angle of the pivot, where there is one in what hangs.
struct Pose {
  double tiltDeg = 0.0;
  double pivotDeg = 0.0;
};

struct Extent {
  double lowest = 0.0;      ///< of every outline; NaN where one is not known
  double highest = 0.0;     ///< of every outline and pick
  double highestHook = 0.0; ///< the higher of the picks
  double hooksApart = 0.0;  ///< how unlike the two picks of a fore-aft pair stand
  hang::Vec2 nextPin;       ///< where the pin of the next cabinet goes
};

/// What `cabinets` of the stack take up in a pose. The actuator of a side pair stands as near to 0 as it can.
Extent extentOf(const Hanging& hanging, int cabinets, Pose pose);

/// The tilt at which what hangs comes to rest by itself; 0 for a fore-aft pair, whose hoists hold it.
double restingTilt(const Hanging& hanging, int cabinets, double pivotDeg);

/// The tilt at which cabinet `next` (counted from 0), joined, stands level as it does on its cart.
double joiningTilt(const Hanging& hanging, int next);

/// Every attitude that `cabinets` of the stack may take until the next thing is joined: at rest, and as they
/// are steered when joined or joining; a pivot anywhere in its travel, of which the ends and 0 count.
std::vector<Pose> posesOf(const Hanging& hanging, int cabinets);

/// Worst of all poses in each figure; nextPin is that of the first pose.
Extent worstOf(const Hanging& hanging, int cabinets);

/// Height and lowest z of one cabinet that stands level; NaN where its outline is not known.
struct LevelCabinet {
  double height = 0.0;
  double underside = 0.0; ///< z of its lowest corner, element coordinates
};
LevelCabinet standingOf(const hang::Element& element);

} // namespace hangbook::build
