// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <vector>

#include "hang/build_moment.h"
#include "hang/statics.h"

/// The most that chain and joints carry while a hang is built and aimed, not only as it hangs set.
namespace hangbook::hang {

/// The most of one joint, N; at either end of what balance lets the chain carry.
struct JointMost {
  std::array<double, 2> pins{}; ///< on each pin, both sides together, in the plane of the hang
  double roll{};                ///< N·m: what a roll turns over to one side, its greatest length
  double sideways{};            ///< N, across the plane
  double contact{};             ///< push at the rear of a seated joint
  double stop{};
};

struct CarriedMost {
  double chain{}; ///< N
  std::vector<JointMost> joints;
};

/// Of one pose that is known.
CarriedMost carriedBy(const Statics& statics);

/// The most on the way from one pose of a rigid hang to another, of which the weight's direction in the
/// frame's axes turns by `radians` (0 or more), each figure by itself; infinite from half a turn on.
///
/// A tension that is linear in that direction u, the greatest of several such, and the length of a force
/// A·u + t·b with t between 0 and such a tension are convex in u and grow with its length. On the way
/// u = (sin(d − t)·u₀ + sin t·u₁)/sin d, both factors 0 or more, so that each stays below
/// (sin(d − t)·f₀ + sin t·f₁)/sin d: a sinusoid through both ends. A linear figure is met exactly; a force's
/// length is overstated by less than 1/cos(d/2), 0.4 % where the way is 10°.
CarriedMost alongArc(const CarriedMost& one, const CarriedMost& other, double radians);

/// The worst of one joint over the steps of a build, and at which step.
struct JointWorst {
  JointMost most;
  std::array<BuildMoment, 2> pinAt;
  BuildMoment contactAt;
  BuildMoment stopAt;
};

/// The worst of all steps before the hang is set, aiming included.
struct CarriedWorst {
  double chain{};
  BuildMoment chainAt;
  std::vector<JointWorst> joints; ///< in stack order
  /// A step of which it does not follow; the figures above are then those of the others. As long as nobody
  /// has worked it out, nothing is known.
  std::optional<BuildMoment> unknown = BuildMoment{};

  /// Nothing carried yet by so many joints.
  static CarriedWorst begun(std::size_t joints);
  /// A figure that is none, or without end, makes this step `unknown`.
  void take(const CarriedMost& most, BuildMoment at);
  void take(const CarriedWorst& other);
};

} // namespace hangbook::hang
