// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "options/rule.h"
#include "options/stop_table.h"

namespace hangbook::options {

/// Each hoist of two stopping while the other runs on up, with the loads as the picks' difference in height
/// grows, and the difference at which the first limit is passed: the bar's most difference, pick-share,
/// hoist, point and hardware. Where one stops while the other runs down, the stopped one is the higher and
/// takes what the running one takes here. Empty for a single pick.
/// Limits are judged with `worst`, which is `settled` at the unfavourable end of all doubts; the loads of
/// both are told.
std::vector<OneStops> hoistStops(const Case&, const Settled& worst, const Settled& settled, double trimM,
                                 const Option&);

} // namespace hangbook::options
