// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "marks/load_reading.h"
#include "store/store.h"

namespace hangbook::store {

/// Load readings of one show that no later one corrects, newest first.
std::vector<marks::LoadReading> loadReadingsOf(Store& store, const QString& tour, const QString& show);

/// Those of all shows, corrected ones too, oldest first; those of one lift stay together.
std::vector<marks::LoadReading> loadReadings(Store& store);

/// Appends a fact (see fleet_store.h).
marks::LoadReading append(Store& store, const marks::LoadReading& reading);

} // namespace hangbook::store
