// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "options/weight_limits.h"

/// Loads along one pick's path, from the bar up to the point. N; `notKnown` travels through.
namespace hangbook::options {

/// Distance of two picks in plan as they hang, m; 0 for a single pick.
double pickSpacing(const Settled& settled);

/// How far each hoist's chain stands from the vertical where two points do not stand as far apart as the
/// picks do, in degrees. 0 for a single pick. A trim of −∞ gives the least there can be, 0; a trim that is
/// not known gives a lean that is not known, unless points and picks stand alike.
double leanDeg(const Case&, const Settled&, double trimM, std::size_t pick);

/// Force along the hoist's chain that holds the pick's load: load ÷ cos(lean).
double pickForce(const Case&, const Settled&, double trimM, std::size_t pick);

/// What a point carries at rest: the pick's force, the hoist's body, its chain and bag, and the rigging
/// above.
double pointAtRest(const Case&, const Settled&, double trimM, std::size_t pick);

/// Load of the statics at a pick, N.
inline double pickLoad(const Settled& settled, std::size_t pick) {
  return settled.statics.pickLoads[pick].load;
}

/// Everything below the hooks, N.
inline double weightBelow(const Settled& settled) {
  return settled.statics.mass * standardGravity;
}

/// Dynamic factor × lift-group share, or 1 where the maker states that his figure includes them.
double factorsFor(const WeightLimits& limits, bool limitIncludesFactors);

/// `use`, but unproven where what the doubts of figures may come to is not bounded and nothing fails.
Use boundedOver(const Settled&, Use use);

/// `one` or `other`, whichever is worse; of like verdict the one nearer to its limit or further beyond it.
Use worseOf(const Use& one, const Use& other);

/// Value and limit of an upper limit on loads, kN, about `which`.
Use loadUse(double valueN, double limitN, int which = -1);

// Words
QString inKn(double newtonsOrNan);                          ///< "4.82 kN", "not known"
QString inTimes(double factor);                             ///< "1.2", "not known"
QString pickName(const Settled& settled, std::size_t pick); ///< "left"

/// Puts use, limit and use of the limit of a load into a finding.
Finding loadFinding(const char* rule, const Use& use);

/// "× 1.2 (house rule …) × 1.0 (…)" with the names of what is not known collected in `missing`.
QString factorWords(const WeightLimits& limits, bool limitIncludesFactors);
QString peopleWords(const Case& option, const Factor& part);

} // namespace hangbook::options
