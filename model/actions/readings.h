// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "actions/run.h"
#include "marks/load_reading.h"

namespace hangbook::actions {

/// What the load cells of one lift read, all of it or nothing. They get one number in common.
std::vector<marks::LoadReading>
recordReadings(store::Store& store, const std::vector<marks::LoadReading>& readings, const QString& by = {});

} // namespace hangbook::actions
