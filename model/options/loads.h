// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "options/weight_limits.h"

/// Loads along one pick's path, from the bar up to the point. N; `notKnown` travels through.
namespace hangbook::options {

/// Distance of two picks in plan as they hang, m; 0 for a single pick.
double pickSpacing(const Settled& settled);

/// How far each hoist's chain is off its point at its foot, seen in plan, m: half of what the points'
/// distance and the picks' differ by. To within a micrometre the chains are taken to stand plumb: 0.
double chainOff(const Case&, const Settled&);

/// The same while a fore-aft pair's bar is level: its picks then stand farther apart in plan. 0 for others.
double levelOff(const Case&);

/// Whether any chain leans, as set or while a fore-aft pair's bar is level.
bool chainsLean(const Case&, const Settled&);

/// How far each hoist's chain stands from the vertical where two points do not stand as far apart as the
/// picks do, in degrees. 0 for a single pick. A trim of −∞ gives the least there can be, 0; a trim that is
/// not known gives a lean that is not known, unless points and picks stand alike.
double leanDeg(const Case&, const Settled&, double trimM, std::size_t pick);

/// Height of a pick's point over the pick, m, at its least.
double heightOver(const Case&, const Settled&, double trimM, std::size_t pick);

/// 1 ÷ cos(lean) of a chain that stands `off` beside its foot and `above` over it, m: its length over its
/// height (Pythagoras). Infinite at and below its foot, where no chain can hold anything.
double leanFactor(double off, double above);

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

/// The worst of uses as they come; of those that are alike the first.
class WorstUse {
public:
  void add(const Use& use) { worst_ = worst_ ? worseOf(*worst_, use) : use; }
  /// None came: none applies.
  const std::optional<Use>& get() const { return worst_; }

private:
  std::optional<Use> worst_;
};

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
