// SPDX-License-Identifier: GPL-3.0-or-later
#include "hang/uneven.h"

#include <cmath>

#include "quantity/quantity.h"

namespace hangbook::hang {
namespace {

/// Fore-aft-pair, world coordinates from the front pick at the set tilt.
struct Pair {
  Vec2 rear;
  Vec2 centre;
  double length{};
  double below{}; ///< radians: how far the line from rear to front rises as set
};

Pair pairOf(const ForeAftPair& picks, const Statics& statics) {
  const Turn tilt = turnBy(toRadians(statics.tiltDeg));
  Pair pair;
  pair.rear = tilt(picks.rearPick - picks.frontPick);
  pair.centre = {statics.cg.x, statics.cg.z};
  pair.length = length(pair.rear);
  pair.below = std::atan2(-pair.rear.z, -pair.rear.x);
  return pair;
}

Uneven turned(const Pair& pair, const Statics& statics, double radians) {
  const Turn turn = turnBy(radians);
  const double rear = turn(pair.centre).x / turn(pair.rear).x;
  const double weight = statics.mass * standardGravity;
  return {statics.tiltDeg + toDegrees(radians), {weight * (1.0 - rear), weight * rear}};
}

} // namespace

std::optional<Uneven> unevenBy(const Bar& bar, const Statics& statics, double rise) {
  const double weight = statics.mass * standardGravity;
  if (const auto* side = std::get_if<SidePair>(&bar.picks)) {
    const double sine = rise / side->pickSpacing;
    if (!standsUneven(sine)) {
      return std::nullopt;
    }
    const double tangent = sine / std::sqrt(1.0 - sine * sine);
    const double left = 0.5 + (statics.cg.y - statics.cg.z * tangent) / side->pickSpacing;
    return Uneven{toDegrees(std::asin(sine)), {weight * left, weight * (1.0 - left)}};
  }
  if (const auto* two = std::get_if<ForeAftPair>(&bar.picks)) {
    const Pair pair = pairOf(*two, statics);
    const double sine = std::sin(pair.below) + rise / pair.length;
    // A front pick behind the rear one would rise the other way round: no such bar is turned further.
    if (!isLength(-pair.rear.x) || !standsUneven(sine)) {
      return std::nullopt;
    }
    return turned(pair, statics, std::asin(sine) - pair.below);
  }
  return std::nullopt;
}

std::optional<double> riseForShare(const Bar& bar, const Statics& statics, double firstShare) {
  double rise = std::nan("");
  if (const auto* side = std::get_if<SidePair>(&bar.picks)) {
    const double tangent = ((firstShare - 0.5) * side->pickSpacing - statics.cg.y) / -statics.cg.z;
    rise = side->pickSpacing * tangent / std::sqrt(1.0 + tangent * tangent);
  } else if (const auto* two = std::get_if<ForeAftPair>(&bar.picks)) {
    // turn(centre).x = rearShare · turn(rear).x: the difference of the two, turned, stands upright.
    const Pair pair = pairOf(*two, statics);
    const Vec2 upright = pair.centre - (1.0 - firstShare) * pair.rear;
    const double radians = -std::atan2(upright.x, -upright.z);
    rise = pair.length * (std::sin(pair.below + radians) - std::sin(pair.below));
  }
  if (!std::isfinite(rise)) {
    return std::nullopt;
  }
  const auto there = unevenBy(bar, statics, rise);
  const double weight = statics.mass * standardGravity;
  return there && std::abs(there->loads[0] - firstShare * weight) <= 1e-6 * weight ? std::optional(rise)
                                                                                   : std::nullopt;
}

} // namespace hangbook::hang
