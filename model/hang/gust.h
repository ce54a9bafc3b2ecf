// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "hang/hang.h"
#include "hang/layout.h"
#include "hang/statics.h"

/// What a push from the side does to the joints and the chain of a hang that stands as solved.
namespace hangbook::hang {

/// All that pushes sideways on what hangs below one joint, at most, either way; N and N·m.
struct SidePush {
  double inPlane{};       ///< in the hang's plane
  double turning{};       ///< its moment about the joint
  double across{};        ///< square to the plane
  double acrossTurning{}; ///< its moment about the line through the joint along the hang's forward
};

/// Where forces act at one joint, m; each at its least but for `lever`.
struct JointArms {
  double contact{};   ///< of a seated joint: how far its rear contact is behind the pin
  double pinsApart{}; ///< of a pinned joint
  double closing{}; ///< of the chain's pull about the pin, nose down positive; of joints above its eye alone
  double lever{};   ///< the same either way, at its greatest, about the pin (two: midway between them)
};

/// As the hang stands, in the gust. Each figure is at its unfavourable end; which direction gives it may
/// differ from one to the next.
struct PushedJoint {
  JointStatics most; ///< pins, sideways, contact and stop at their greatest
  std::optional<double>
      contactLeast; ///< N, of a seated joint that is pressed and that nothing else keeps shut
};

struct Pushed {
  double tensionMost{};               ///< N; 0 without a chain
  std::optional<double> tensionLeast; ///< N, where it holds a pivot
  std::vector<PushedJoint> joints;
};

/// `statics`: the hang's own, at its unfavourable end, with every seated joint shut (figures of one that is
/// open are not known: NaN). `pushes`, `arms`: one a joint, from the bar down. `heavier` (1 or more): how
/// much more than that all of it weighs in the gust (wet cloth, ice), which counts where it hurts.
///
/// Rigid bodies, first order: a push H at a joint with the moment M about it is held by the joint's own pair
/// of forces. Seated: M ÷ contact arm more or less at the contact, as much on the pin besides H. Pinned: H/2
/// on each pin and M ÷ distance. A pivot holds no moment: the chain takes it, M ÷ its arm, and turns the
/// joints above by that. Without a pivot the chain takes what would open a seated joint, as at rest. All of
/// it is added whatever its direction (triangle inequality), so that no direction is worse.
Pushed inGust(const std::vector<Element>& stack, int held, const Statics& statics,
              const std::vector<JointArms>& arms, const std::vector<SidePush>& pushes, double heavier);

/// How far off a coordinate may be, either way, m.
struct Places {
  double frame{};
  std::vector<double> elements;
};

/// The arms of a hang's joints as `layout` has them, each shorter (`lever`: longer) by what the places at its
/// ends and of all elements between them may be off.
std::vector<JointArms> armsOf(const std::vector<Element>& stack, int held, const Layout& layout,
                              const Places& places);

/// What a swing by `radians` about a level line turns of a weight (N) whose centre is `away` (m) from the
/// joint: sin(angle) of it square to that line, of which `ahead` lies in the hang's plane and `aside` across
/// (each 0…1), and 1 − cos(angle) of it less along the plane.
SidePush bySwing(double weight, double away, double radians, double ahead, double aside);

/// The greater of two that do not come together.
SidePush worseOf(const SidePush& one, const SidePush& other);

} // namespace hangbook::hang
