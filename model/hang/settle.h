// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <vector>

#include "hang/hang.h"
#include "hang/statics.h"

/// The shape that a hang really takes: seated joints part open, the chain taut or slack.
namespace hangbook::hang {

struct SettledJoint {
  double angleDeg = 0.0; ///< the opening included
  double openDeg = 0.0;
  double aimDeg = 0.0; ///< elevation of the element's forward direction in the world
  bool seated = false;
  /// N, push at the rear contact; 0 where open. Seated joints only; empty where the joint rests on its stop.
  std::optional<double> contact;
  /// N, what the stop carries, taken at the contact's place; only where the joint rests on it.
  std::optional<double> stop;
  std::array<double, 2> pinForces{}; ///< as in JointStatics
  int pinCount = 1;
};

struct SettledChain {
  double length = 0.0;
  double straight = 0.0;
  bool taut = false;
  /// N; 0 where not taut; empty where no coordinate is free to move, so that balance leaves it open.
  std::optional<double> tension;
  double least = 0.0; ///< N, the least that balance allows; the other figures are given with it
};

struct Settled {
  double mass = 0.0;
  Vec3 cg;
  double tiltDeg = 0.0;
  std::optional<SideAttitude> side;
  double bottom = 0.0;
  std::array<PickLoad, 2> pickLoads{};
  std::size_t pickCount = 0;
  std::optional<SettledChain> chain;
  std::vector<SettledJoint> joints;
};

/// The shape of least potential energy that is reached from the closed one, over the free swing, the opening
/// of each seated joint between 0 and its `openToDeg`, and the pivot within its travel; the chain no longer
/// than its mark gives, and never pushing. On a side-pair the actuator stays where the hang as assembled
/// needs it for the wanted tilt. Pure. Throws Error(badInput) and Error(notPossible) as `solve` does, but for
/// a joint that gravity and chain both open: that one opens to its stop.
Settled settle(const Hang& hang);

} // namespace hangbook::hang
