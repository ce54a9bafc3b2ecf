// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "options/bridle_pick.h"
#include "options/weight_limits.h"

/// What a gust does to the legs of the bridle that a pick hangs from.
///
/// At the apex pulls what hangs on the hoist's chain, along the chain: it leans by as much as any chain in
/// that gust, to any side. Hoist, chain, rigging and half of the legs hang straight down beside it. A heavy
/// hang on light gear turns that load farthest off plumb, so that it is taken with its most hung on the chain
/// and its least gear as well as with the most of both, and with the least hung. Two legs swing about the
/// line of their points; of three the apex stands still (hang/bridle_pushed). Lengths of legs that are in
/// doubt are taken at every corner.
///
/// Left out: the wind on legs, hoist and chain themselves; a gust that turns about while they are swung; how
/// far the apex moves, and what that does to the lean.
namespace hangbook::options {

/// One pick in the gust, N.
struct HungInGust {
  double most{};  ///< that its chain carries straight down, wet
  double least{}; ///< the same, dry; below 0 it carries nothing
  double slope{}; ///< tangent of the most that its chain leans; infinite where it cannot stand
};

/// One leg in the gust, each figure in the direction that is worst for it; `notKnown` travels through.
struct LegInGust {
  double most{};  ///< N at its upper end; of three legs two alone carry everything
  double least{}; ///< N at the apex; 0 or below: slack
  double
      down{}; ///< N on its point, its own half weight with it; a bound where points stand at unlike heights
  double fromHorizontalDeg{};
};

/// In the order of the legs; all `notKnown` where the bridle has no answer.
std::vector<LegInGust> legsInGust(const Case&, const Settled&, std::size_t pick, const HungInGust& hung);

/// Everything that all legs of a bridled pick carry down, with so much on its chain, N.
double wholeBridle(const Case&, const Settled&, std::size_t pick, double hung);

/// Without which its legs cannot be judged in a gust, in words; empty for a dead hang.
QStringList bridleLacks(const Case&, const Settled&, std::size_t pick);

} // namespace hangbook::options
