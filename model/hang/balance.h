// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>

#include "hang/assembly.h"
#include "hang/hang.h"
#include "hang/statics.h"

/// Which way a hang settles, and what its picks then carry.
namespace hangbook::hang {

/// Where the frame is in the world, origin as in `Statics::cg`. A frame point (x, z) stands at
/// origin + x forward + z up; `left` is square to both. World up in frame coordinates is therefore
/// (forward.z, left.z, up.z).
struct Attitude {
  Vec3 origin;
  Vec3 forward;
  Vec3 left;
  Vec3 up;

  Vec3 place(Vec2 framePoint) const { return origin + framePoint.x * forward + framePoint.z * up; }
  double height(Vec2 framePoint) const { return origin.z + framePoint.x * forward.z + framePoint.z * up.z; }
  /// World up, as far as it lies in the hang's plane.
  Vec2 upInPlane() const { return {forward.z, up.z}; }
};

struct Balance {
  Attitude attitude;
  Vec3 cg;
  double mass{};
  double tiltDeg{};
  std::optional<SideAttitude> side;
  std::array<PickLoad, 2> pickLoads{};
  std::size_t pickCount{};
};

/// Side-pair, at this actuator angle: the head swings until the centre of gravity is under the pick line.
/// Throws Error(notPossible) where that centre lies on the line itself.
Balance swingOut(const SidePair& pair, const Assembly& assembly, double actuatorDeg, double panDeg);

/// The same at a given swing, whether it rests there or not; pick loads as the weight alone would share.
Balance swungBy(const SidePair& pair, const Assembly& assembly, double actuatorDeg, double panDeg,
                Turn swing);

/// The actuator angle that gives the frame this elevation, to the last digits. Where more than one within the
/// travel does, the one nearest to 0 (the lower one of two as near). Throws Error(notPossible) where none
/// does.
double actuatorFor(const SidePair& pair, const Assembly& assembly, double tiltDeg, double panDeg);

/// The lowest and highest frame elevation that the actuator's travel gives at this pan.
Range tiltReach(const SidePair& pair, const Assembly& assembly, double panDeg);

/// Two hoists hold the frame at this tilt; force and moment balance. Throws Error(notPossible) where one pick
/// stands above the other.
Balance holdAt(const ForeAftPair& pair, const Assembly& assembly, double tiltDeg);

/// The centre of gravity settles under the pick. Throws Error(notPossible) where it lies at the pick.
Balance hangFrom(const SinglePick& single, const Assembly& assembly);

/// The frame turned about its single pick, whether it rests there or not.
Balance turnedTo(const SinglePick& single, const Assembly& assembly, Turn turn);

/// One of the three, as the setting says; refuses an actuator or pan beyond its travel.
Balance balance(const Bar& bar, const Assembly& assembly, const Setting& set);

} // namespace hangbook::hang
