// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "hang/assembly.h"
#include "hang/balance.h"
#include "hang/hang.h"
#include "hang/statics.h"

/// What the joints and the chain carry, in the hang's plane.
namespace hangbook::hang {

/// Moment of the weight of all from `piece` down about its pin, N·m, nose up positive. `upInPlane`: world up
/// in frame coordinates, as far as it lies in the plane (shorter than 1 where the hang rolls).
double gravityMoment(const Piece& piece, Vec2 upInPlane);

/// Tension that holds a pivot, from moment balance about its pin. May come out at or below 0: the chain is
/// slack. Throws Error(notPossible) where the chain's line passes through the pin.
double pivotTension(const Piece& piece, const ChainLine& line, Vec2 upInPlane);

/// The least tension that shuts every seated joint, from the held element up, that gravity opens; 0 where
/// none does. Throws Error(notPossible) where the chain cannot close one of those.
double leastTension(const Assembly& assembly, const std::vector<Element>& stack, int held, Vec2 upInPlane);

/// What acts in the plane on one joint besides its own forces.
struct Load {
  Vec2 upInPlane;
  Vec2 pull;           ///< the chain's, on this element or one below; zero where it holds neither
  Vec2 pullAt;         ///< the eye
  bool helped = false; ///< whether a pinned joint may count on the pull: only where it is determinate
};

/// Moment of everything but the joint's own forces about a point of the frame, nose up positive.
double loadMoment(const Piece& piece, const Load& load, Vec2 about);

/// Angle, gravity moment, contact and pin forces of one joint (not its aim). A contact below 0 is a pull that
/// the contact itself cannot give.
JointStatics jointUnder(const Joint& joint, const Piece& piece, const Load& load);

/// Elevation of a piece's forward direction, degrees.
double aimOf(const Piece& piece, const Attitude& attitude);

/// Fills `chain` and `joints` of a hang that has settled as `attitude` says.
void carry(const Assembly& assembly, const std::vector<Element>& stack, const std::optional<Chain>& chain,
           const Attitude& attitude, Statics& into);

} // namespace hangbook::hang
