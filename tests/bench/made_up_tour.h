// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>

#include "options/snapshot.h"

namespace hangbook::bench {

/// One show of a made-up tour: the same system in a venue of its own (points, heights, capacities, low steel,
/// audience), from a seed. No two venues are alike.
options::Snapshot showOfTour(std::uint64_t seed, int show);

} // namespace hangbook::bench
