// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "build/plan.h"

namespace hangbook::testing {

/// Carries out a plan, step by step, on carts and cabinets that it moves itself, and says what goes wrong: a
/// collision, a cabinet that nothing holds, a pin that is missing, a reach beyond hoist or room. It reads the
/// job and the steps and knows nothing of how they were computed: attitudes at rest come from the statics,
/// all else is worked out here.
std::vector<std::string> carryOut(const build::Job& job, const build::Plan& plan);

} // namespace hangbook::testing
