// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <functional>
#include <vector>

#include "options/rule.h"

/// What hangs along each pick's chain, at rest and with every figure as stated: what load cells are compared
/// with. kN; `notKnown` travels through.
namespace hangbook::options {

struct PickPath {
  double hook = notKnown; ///< along the hoist's chain
  double hoist = notKnown;
  double chain = notKnown;   ///< the hoist's whole chain and the bag
  double rigging = notKnown; ///< between the hoist and the point or apex
  /// Of a bridled pick: what its leaning chain pulls sideways at the apex, venue coordinates, and half of all
  /// legs' own weight.
  std::array<double, 2> sideways{};
  double halfLegs{};
};

/// One for each pick of an option that was judged at its setting; none where that is not possible. Throws as
/// `judge`.
std::vector<PickPath> pickPaths(const Snapshot& snapshot, const Option& option);

/// Sees the case that `judge` makes of a key, and its setting at the unfavourable end (null: not possible).
using Seen = std::function<void(const Case&, const Settled*)>;
/// As `judge`; `seen` last sees what its answer is of.
Option judge(const Snapshot& snapshot, const OptionKey& key, const Setting& setting, const Seen& seen);

} // namespace hangbook::options
