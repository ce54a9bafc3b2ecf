// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "hang/statics.h"

/// How the two sides of a joint share what it carries.
namespace hangbook::hang {

enum class Side { either, left, right };

struct SidePin {
  double force{};           ///< N, on that pin of the more loaded side
  Side side = Side::either; ///< the more loaded one; either where both are alike
};

/// The force on pin `pin` of the more loaded side. `share` (0.5 or more): the part of the force in the hang's
/// plane that either side may come to take, by play and unlike pins. A rolled hang adds to that, with a side
/// to itself: the weight across the plane turns the stack about its joint, and the two sides hold that by a
/// couple `apart` wide (m): −moment ÷ apart on the left, the opposite on the right, over all pins of a side.
/// The force across is taken by one side alone, square to the rest. `apart` counts only where there is a
/// roll.
SidePin onSide(const JointStatics& joint, Vec2 pinLoad, double share, double apart);

} // namespace hangbook::hang
