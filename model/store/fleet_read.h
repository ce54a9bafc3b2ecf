// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <vector>

#include "fleet/occurrence.h"
#include "fleet/unit.h"
#include "store/store.h"

namespace hangbook::store {

/// All units and what decides when they are due: long to read where there are many, and asked for by every
/// show.
struct FleetRead {
  std::vector<fleet::Unit> units;
  std::vector<fleet::ExaminationRule> rules;
  std::vector<fleet::Examination> examinations; ///< the newest valid one of each unit and rule
  std::vector<fleet::Occurrence> occurrences;   ///< as `loadHappened` gives them
};

/// Read whole, or what was read before where not one row of the store has changed since then.
std::shared_ptr<const FleetRead> loadFleet(Store& store);

} // namespace hangbook::store
