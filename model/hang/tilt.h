// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "hang/assembly.h"
#include "hang/hang.h"

namespace hangbook::hang {

/// Whether a function that has these two values passes zero between them; zero itself counts as below it.
constexpr bool passesZero(double one, double other) {
  return (one > 0.0) != (other > 0.0);
}

/// How a side-pair's total centre of gravity and the frame's elevation follow from the actuator angle a.
/// In head coordinates the centre stands at still + share · Rz(pan) · Ry(a) · g, with g the centre of what
/// hangs from the tilt axis, in frame coordinates.
struct TiltCurve {
  Vec2 still;     ///< what the head and the place of the tilt axis add, the same at every angle
  double share{}; ///< of the total mass that hangs from the tilt axis
  Vec2 centre;    ///< g
  double panCosine{};
  double panSine{};

  TiltCurve(const SidePair& pair, const Assembly& assembly, double panDeg);

  /// Total centre before the swing: head x and z.
  Vec2 headCentre(Turn actuator) const;
  /// Its y.
  double sideways(Turn actuator) const;
  /// sin(elevation after the swing) − `sineWanted`, times the distance r of the centre from the pick line:
  /// with the swing sin s = −X/r, cos s = −Z/r this has neither a quotient nor an arc function.
  double miss(Turn actuator, double sineWanted) const;
  double elevationDeg(Turn actuator) const;
};

/// Every zero of `miss` over the travel, ascending, degrees. Cells of at most 1.5°, so two zeros closer
/// together than the miss can bend in one cell are found through the minimum between them.
std::vector<double> actuatorsAt(const TiltCurve& curve, Range travelDeg, double sineWanted);

} // namespace hangbook::hang
