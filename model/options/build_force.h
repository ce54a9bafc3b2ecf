// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "hang/build_loads.h"
#include "options/loads.h"

/// Loads along one pick's path at the worst step of the build and of aiming, N. They are never below those
/// of the hang as set. The chains' lean is that of the final height, where they are shortest and lean most.
namespace hangbook::options {

/// Force along the hoist's chain: the most that the pick carries ÷ cos(lean). The lean is that of the hang
/// as set, or of a fore-aft pair's level bar where that is more.
double highestPickForce(const Case&, const Settled&, double trimM, std::size_t pick);

/// What a point then carries at rest.
double highestAtRest(const Case&, const Settled&, double trimM, std::size_t pick);

/// What a hoist then lifts, before factors: the force on its chain, and where it climbs its own body and its
/// whole chain with the bag, which then hang below the place where the chain carries them.
double highestLifted(const Case&, const Settled&, double trimM, std::size_t pick);

/// `use`, but unproven where the loads of some step are not known and nothing fails.
Use provenOver(const Settled&, Use use);

/// The same for what chain and joints carry.
Use carriedOver(const Settled&, Use use);

/// "with 2 cabinets under the bar and the chain on"; empty for the hang as set.
QString momentWords(const hang::BuildMoment&, const Case&);

/// "; what is carried … does not follow from the figures" where a step's loads are not known, else empty.
QString unknownMomentWords(const Case&, const Settled&);
/// The same for what chain and joints carry.
QString carriedUnknownWords(const Case&, const Settled&);

} // namespace hangbook::options
