// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "options/rule.h"

/// The load path as data: every link from the points down to the last cabinet, what it takes with factors and
/// what it may take here.
namespace hangbook::options {

/// In order from the point down: for each pick the legs of its bridle, rigging, hoist, then its secondary
/// suspension; for the whole hang bar, joints and chain. Loads as the rules judge them: the worst link of a
/// kind is what that rule's finding tells.
std::vector<PathLink> loadPath(const Case&, const Settled&, double trimM);

} // namespace hangbook::options
