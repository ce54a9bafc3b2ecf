// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>

#include "options/snapshot.h"

namespace hangbook::bench {

/// One show of a made-up tour: the same system in a venue of its own (points, heights, capacities, low steel,
/// audience), from a seed. No two venues are alike. With two points a side each hang has one pair; with nine
/// 36 of them, and the show some five million settings.
options::Snapshot showOfTour(std::uint64_t seed, int show, int pointsASide = 2);

/// The verdicts of a random 1 % of all options of a tour's first hangs, found by asking every rule of every
/// setting, against those of the search. How many were compared; throws where one is unlike.
long checkOnePercent(std::uint64_t seed, int shows);

} // namespace hangbook::bench
