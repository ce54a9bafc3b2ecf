// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "filled_store.h"

namespace hangbook::testing {

/// The demo tour so often over that there are `shows` of them, each in a hall of its own and with its best
/// option chosen for each hang where one does not fail; each round was played a hundred days before the next.
void fillTour(store::Store& store, int shows = 500);

/// Everything that the store's makers' data name.
std::vector<UnitSort> sortsOf(store::Store& store);

} // namespace hangbook::testing
