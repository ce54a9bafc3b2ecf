// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "support/fresh_store.h"

namespace hangbook::testing {

/// A house of 100,000 units, 2,000,000 movements and an examination of every hoist and chain, written by the
/// engine itself. One unit in ten is a hoist or a chain, which are examined half-yearly; the rest are
/// cabinets without a rule.
void fillLarge(store::Store& store, int units = 100'000, int movementsEach = 20);

/// So many shows more, each in a venue of its own, three days apart.
void addShows(store::Store& store, int shows = 499);

} // namespace hangbook::testing
