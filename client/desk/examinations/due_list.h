// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "desk/source/overview.h"
#include "fleet/due.h"

namespace hangbook::desk {

/// One examination that a unit owes, and where on the route it can still be done.
struct DueLine {
  fleet::Due due{};
  QString stop{}; ///< the last stop that still comes before the day, empty where none does
};

/// What every unit owes under every rule that speaks of it, the most pressing first.
std::vector<DueLine> dueLines(const Overview& overview);

} // namespace hangbook::desk
