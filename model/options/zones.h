// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "options/weight_limits.h"

namespace hangbook::options {

/// Fills in what the structure shared by the option's points must carry besides the option itself: other
/// departments, and the show's other hangs by their chosen options. A hang without a choice that mirrors this
/// one (or that this one mirrors) is taken to do the same, mirrored, at its own points nearest to the mirror
/// images of this option's points.
void lookUpZones(const Case& option, WeightLimits& limits);

} // namespace hangbook::options
