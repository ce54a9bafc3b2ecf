// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "hang/hang.h"

namespace hangbook::hang {

/// One element put together with all above it, in frame coordinates.
struct Piece {
  double jointDeg{}; ///< its joint's angle
  double angleDeg{}; ///< its turn against the frame: the sum of the joint angles down to it
  Turn turn;
  Vec2 pin;
  double massBelow{}; ///< its own and that of all below it
  Vec2 massMoment;    ///< Σ mass × position of the same, about the frame's origin
};

/// The straight line of the chain, in frame coordinates.
struct ChainLine {
  Vec2 eye;
  Vec2 towardsAnchor; ///< unit vector from the eye
  double straight{};
};

/// The frame and everything that hangs from it, put together at given joint angles. It does not depend on
/// tilt or pan, so one assembly serves every aim at that chain mark.
struct Assembly {
  std::vector<Piece> pieces;
  std::vector<Vec2> corners; ///< every outline corner, element after element
  double mass{};             ///< frame and stack, without a side-pair's head
  Vec2 cg;
  std::optional<ChainLine> line;
};

/// Puts the stack together with its joints at `jointDeg` (one per element). `held`: the element that the
/// chain holds, counted from 1, or 0; it needs an eye, and the bar an anchor. Reuses what `into` has
/// allocated.
void assemble(const Bar& bar, const std::vector<Element>& stack, std::span<const double> jointDeg, int held,
              Assembly& into);

/// The angle that a seated or pinned joint is fixed at; 0 for a pivot, whose angle the chain sets.
double fixedAngleDeg(const Joint& joint);

/// A joint that is held at an angle by whatever, where only what is above it or hangs from it as a whole is
/// asked for. Two pins stand for its one, with that midway between them: what a roll turns over to one side
/// is counted from there.
Joint heldAt(double deg);

} // namespace hangbook::hang
