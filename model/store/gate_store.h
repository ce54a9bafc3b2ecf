// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "marks/gate.h"
#include "store/store.h"

namespace hangbook::store {

/// Hold points of one show, signed and skipped, that no later fact corrects, newest first.
std::vector<marks::GateSigned> loadGatesOf(Store& store, const QString& tour, const QString& show);

/// Those of all shows, corrected facts too, oldest first.
std::vector<marks::GateSigned> loadGates(Store& store);

/// Appends a fact (see fleet_store.h).
marks::GateSigned append(Store& store, const marks::GateSigned& gate);

} // namespace hangbook::store
