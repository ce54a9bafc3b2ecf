// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "hang/assembly.h"
#include "hang/balance.h"
#include "hang/hang.h"
#include "hang/statics.h"

/// What the joints and the chain carry, in the hang's plane.
namespace hangbook::hang {

/// N·m: what rounding alone leaves of a balanced joint. Below it gravity opens nothing.
inline constexpr double restingMoment = 1e-9;

/// Whether a moment turns a joint that way, or is what rounding leaves. NaN turns nothing.
constexpr bool turnsJoint(double moment) {
  return moment > restingMoment;
}

/// Moment of the weight of all from `piece` down about its pin, N·m, nose up positive. `upInPlane`: world up
/// in frame coordinates, as far as it lies in the plane (shorter than 1 where the hang rolls).
double gravityMoment(const Piece& piece, Vec2 upInPlane);

/// A steady force on one element besides weight and chain, in the frame's axes (forward, left, up).
struct Back {
  std::size_t element{}; ///< counted from 0
  Vec3 pull;
  Vec2 at; ///< in the hang's plane

  /// Its moment about a joint's pin in the plane, nose up positive; 0 where it pulls above that joint.
  double momentAt(std::size_t joint, const Piece& piece) const;
};

/// Tension that holds a pivot, from moment balance about its pin; `others`: the moment of what pulls besides
/// weight and chain. May come out at or below 0: the chain is slack. Throws Error(notPossible) where the
/// chain's line passes through the pin.
double pivotTension(const Piece& piece, const ChainLine& line, Vec2 upInPlane, double others);

/// Arm by which the chain closes a joint, m; negative where it opens it.
double closingArm(const Piece& piece, const ChainLine& line);

/// The tension at which the chain alone would carry a joint's moment; 0 where it has no arm or would have to
/// push.
double aloneTension(double opening, double closing);

/// The least tension that shuts every seated joint, from the held element up, that weight (and `back`) opens;
/// 0 where none does. Throws Error(notPossible) where the chain cannot close one of those.
double leastTension(const Assembly& assembly, const std::vector<Element>& stack, int held, Vec2 upInPlane,
                    const Back* back = nullptr);

/// What acts on one joint besides its own forces.
struct Load {
  Vec2 upInPlane;
  Vec2 pull;         ///< the chain's, on this element or one below; zero where it holds neither
  Vec2 pullAt;       ///< the eye
  bool helped{};     ///< whether a pinned joint may count on the pull: only where it is determinate
  double upLeft{};   ///< how far the frame's left points up: what a roll makes of the weight
  Vec2 back{};       ///< a steady force on this element or one below
  double backLeft{}; ///< the same to the left
  Vec2 backAt{};
};

/// Moment of everything but the joint's own forces about a point of the frame, nose up positive.
double loadMoment(const Piece& piece, const Load& load, Vec2 about);

/// Angle, gravity moment, contact and pin forces of one joint (not its aim). A contact below 0 is a pull that
/// the contact itself cannot give.
JointStatics jointUnder(const Joint& joint, const Piece& piece, const Load& load);

/// The same joint at another pull of the chain, a pinned one helped by it.
JointEnd endUnder(const Joint& joint, const Piece& piece, Load load, Vec2 pull);

/// Elevation of a piece's forward direction, degrees.
double aimOf(const Piece& piece, const Attitude& attitude);

/// Fills `chain` and `joints` of a hang that has settled as `attitude` says.
void carry(const Assembly& assembly, const std::vector<Element>& stack, const std::optional<Chain>& chain,
           const Attitude& attitude, Statics& into, const Back* back = nullptr);

} // namespace hangbook::hang
