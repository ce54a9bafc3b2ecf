// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "options/judge_case.h"

/// What there is to be judged, by loops alone.
namespace hangbook::testing {

/// Every sequence of joins that the table permits.
std::vector<options::Stack> bruteStacks(const options::Snapshot& snapshot,
                                        const catalogue::StackingTable& table);

/// Every point, or every two, in the order of the picks.
std::vector<std::vector<const venue::Point*>> bruteWays(const std::vector<const venue::Point*>& candidates,
                                                        catalogue::Picks picks);

/// Every setting of a rig that is possible at all. `unknownShape`: the shape of another hinges on a figure
/// that nobody stated.
struct BruteSettings {
  std::vector<options::Settled> settled;
  bool unknownShape = false;
};
BruteSettings bruteSettings(options::Rig& rig, const options::Case& parts, double panDeg);

} // namespace hangbook::testing
