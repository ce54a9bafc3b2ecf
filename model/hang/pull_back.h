// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "hang/assembly.h"
#include "hang/balance.h"
#include "hang/hang.h"
#include "hang/joints.h"

/// A hang whose foot a second hoist pulls back.
namespace hangbook::hang {

struct Pulled {
  Balance balance;
  PullBackStatics line;
  Back back; ///< for the joints
};

/// How the hang stands with its pull-back, and what the picks then carry. On a side-pair the actuator is the
/// one that `set` asks for without the pull-back. What pulls sideways is held by the picks' chains, which
/// lean alike; the loads of the picks are what they carry upright. Throws Error(notPossible) where the line
/// passes through the pick (it holds no tilt), where the frame cannot come to that tilt, and where nothing
/// settles.
Pulled pullBack(const Bar& bar, const Assembly& assembly, const Setting& set, const PullBack& pull);

} // namespace hangbook::hang
