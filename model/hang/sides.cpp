// SPDX-License-Identifier: GPL-3.0-or-later
#include "hang/sides.h"

#include <cmath>

namespace hangbook::hang {

SidePin onSide(const JointStatics& joint, Vec2 pinLoad, double share, double apart) {
  if (joint.sideways == 0.0 && joint.sidewaysMoment == Vec2{}) {
    return {share * length(pinLoad), Side::either};
  }
  const double pins = joint.pinCount;
  const Vec2 couple = (-1.0 / (apart * pins)) * joint.sidewaysMoment;
  const double across = joint.sideways / pins;
  const double left = std::hypot(length(share * pinLoad + couple), across);
  const double right = std::hypot(length(share * pinLoad - couple), across);
  // What is not known is neither, and stays not known.
  return left < right   ? SidePin{right, Side::right}
         : left > right ? SidePin{left, Side::left}
                        : SidePin{left, Side::either};
}

} // namespace hangbook::hang
