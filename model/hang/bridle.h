// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <limits>
#include <optional>
#include <span>
#include <vector>

#include "hang/vec2.h"

/// A bridle: one load held by two or three legs from points that do not stand over it. Metres, N, degrees;
/// z up; the load's force as it acts on the apex (weight: z below 0). A leg is straight, without weight here,
/// and can only pull. Mechanics: force balance at the apex.
namespace hangbook::hang {

/// From a point to the apex, shackles and all.
struct BridleLeg {
  Vec3 point;
  double length{}; ///< without load
  /// N per metre of stretch; infinite: it does not stretch.
  double stiffness = std::numeric_limits<double>::infinity();
};

struct LegForce {
  double tension{}; ///< N; 0 where it is slack
  bool slack{};
  double length{};            ///< from point to apex as it hangs; of a slack leg: the straight line
  double fromHorizontalDeg{}; ///< 90 is plumb; below 0 where the point is below the apex
  Vec3 onPoint;               ///< force on the point
  double vertical() const { return -onPoint.z; } ///< what the point carries downwards
  double horizontal() const { return std::hypot(onPoint.x, onPoint.y); }
};

struct Bridle {
  Vec3 apex;
  std::vector<LegForce> legs; ///< in the order of the points
};

/// Lengths of straight legs from the points to a wanted apex.
std::vector<double> legLengths(std::span<const Vec3> points, Vec3 apex);

/// Forces where the apex is held at this very place by legs that are exactly as long as that asks. Two legs:
/// the load must lie in their plane. Throws Error(badInput) unless there are two or three points, apart from
/// each other and from the apex, and a load; Error(notPossible) where no pull of the legs balances the load
/// (two legs, and the apex stands beside the vertical plane through the points; a leg would have to push; all
/// legs in one plane with the apex and the load out of it, or three, which leaves their shares open).
Bridle bridleAt(std::span<const Vec3> points, Vec3 apex, Vec3 load);

/// The shape that legs of these lengths take under the load: least potential energy. The energy is convex (a
/// leg's stretch is a convex function of the apex's place), so that there is one equilibrium and no other.
/// One, two or three legs, either all stiff or all elastic; slack legs are found. Throws Error(badInput) as
/// above, and Error(notPossible) where stiff legs are too short to meet, or only just meet (then no finite
/// tension follows), or three stiff legs in one plane are taut together.
Bridle settleBridle(std::span<const BridleLeg> legs, Vec3 load);

/// The highest tension that each leg sees when it and one other carry everything between them, the third
/// slack (a leg of three that was cut a little long): 29 CFR 1910.184 has two legs of a sling able to carry
/// the whole load. With two legs: their tensions. Stiff legs. Throws as settleBridle.
std::vector<double> worstOfTwo(std::span<const BridleLeg> legs, Vec3 load);

/// How far the apex comes to stand from where it was wanted.
inline Vec3 apexShift(const Bridle& bridle, Vec3 wanted) {
  return bridle.apex + -1.0 * wanted;
}

} // namespace hangbook::hang
