// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "options/weight_limits.h"

/// What the secondary suspension takes when it catches a pick.
namespace hangbook::options {

struct Catching {
  double drop = notKnown;   ///< m, before it is taut: the hang's, else the house's
  double factor = notKnown; ///< on the load at rest
  double load = notKnown;   ///< N
};

/// The load is the most that the pick carries during build and aiming. Energy: a load at rest F that falls h
/// onto an elastic steel, which F alone would stretch by δ, pulls F (1 + √(1 + 2h/δ)) at most (textbook: work
/// of the fall = ½ k x²; everything else taken as stiff, which is the safe side). Without a drop: twice. δ =
/// F Σ length/(E·A) of the steels in the set; where one of them has no E·A and there is a drop, the load is
/// not known. Never less than the house's factor.
Catching catchingAt(const Case&, const Settled&, std::size_t pick);

/// The same from the pick's load, N, and from what one set of steels stretches for each of them (m/N).
Catching catchingOf(const WeightLimits&, double stretchForEach, double load);
/// NaN where one of the steels has no E·A, 0 where there is none; a shackle is taken as stiff beside a steel.
double stretchPerNewton(const WeightLimits&);

/// Where drop and factor come from, or what is missing.
QString catchingWords(const Case&, const Catching&);

/// The factor alone. `drop` and `stretch` in m; stretch not above 0 or not known: `notKnown` where there is a
/// drop.
double catchFactor(double drop, double stretch);

/// Most drop at all, m: DGUV Information 215-313 allows 20 cm at most, for items that are aimed.
inline constexpr double mostDrop = 0.20;

} // namespace hangbook::options
