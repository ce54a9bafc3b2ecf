// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "options/bridle_pick.h"
#include "options/weight_limits.h"

/// From the picks to the venue's own points: straight up, or shared by the legs of a bridle. N; `notKnown`
/// travels through.
namespace hangbook::options {

/// Fills in `bridles` and `carriers` from the option's points; those of them that are an apex belong to one
/// of `bridles`.
void findCarriers(const Bridles& bridles, Case& option);

/// Forces of the legs of a bridled pick under all that hangs from its apex, half of the legs' own weight with
/// it; empty where they are not known. `atMost`: at the worst step of build and aiming, else as set.
std::vector<hang::LegForce> legForces(const Case&, const Settled&, double trimM, std::size_t pick,
                                      bool atMost);

/// Pull at the upper end of a leg: its force at the apex and half of its own weight.
double tensionAtTop(const BridleLeg& leg, const hang::LegForce& force);

/// The highest pull that a leg may see at the worst step of build and aiming; of three legs two alone carry
/// everything.
double worstTension(const Case&, const Settled&, double trimM, std::size_t pick, std::size_t leg);

/// What one of the option's points carries downwards at rest, by all picks that load it, as set.
double carriedAtRest(const Case&, const Settled&, double trimM, std::size_t carrier);
/// The same at the worst step of build and aiming.
double carriedAtMost(const Case&, const Settled&, double trimM, std::size_t carrier);

/// The same with its parts (pick, hoist, chain, rigging), which add up to it, and its sideways pull.
PointResult pointResult(const Case&, const Settled&, double trimM, std::size_t carrier, bool atMost);
std::vector<PointResult> pointResults(const Case&, const Settled&, double trimM);
std::vector<BridleResult> bridleResults(const Case&, const Settled&, double trimM);

} // namespace hangbook::options
