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

/// As JointStatics, in the real shape: `contact` is 0 where the joint is open and empty where it rests on its
/// stop, which then carries `stop` at the contact's place.
struct SettledJoint : JointStatics {
  bool seated{};
};

struct SettledChain {
  double length{};
  double straight{};
  bool taut{};
  /// N; 0 where not taut; empty where no coordinate is free to move, so that balance leaves it open.
  std::optional<double> tension;
  double least{}; ///< N, the least that balance allows; the other figures are given with it
  double most{};  ///< N, the most of it; see `JointEnd`
};

struct Settled {
  double mass{};
  Vec3 cg;
  double tiltDeg{};
  std::optional<SideAttitude> side;
  double bottom{};
  std::array<PickLoad, 2> pickLoads{};
  std::size_t pickCount{};
  std::optional<SettledChain> chain;
  std::vector<SettledJoint> joints;
};

/// The shape of least potential energy that is reached from the closed one, over the free swing, the opening
/// of each seated joint between 0 and its `openToDeg`, and the pivot within its travel; the chain no longer
/// than its mark gives, and never pushing. On a side-pair the actuator stays where the hang as assembled
/// needs it for the wanted tilt. Pure. Throws Error(badInput) and Error(notPossible) as `solve` does, but for
/// a joint that gravity and chain both open: that one opens to its stop.
Settled settle(const Hang& hang);

/// Whether the hang as assembled already is the real shape: nothing opens a seated joint (where the chain has
/// slack it does not help), and a pivot's chain is pulled. Then `statics`, which `solve` gave for that stack,
/// are the settled ones, in closed form. In doubt (a joint that gravity leaves alone, a chain that is just
/// taut without a pivot) the answer is no.
bool standsAsAssembled(const std::vector<Element>& stack, const Statics& statics, int held);

/// A settled shape as statics, for those who judge both alike. Where the tension is open, `tension` is the
/// least and `tensionIsLeast`.
Statics asStatics(const Settled& settled);

/// The statics of the real shape: in closed form where nothing opens, else settled. Throws as those two do.
Statics standing(const Hang& hang);

} // namespace hangbook::hang
