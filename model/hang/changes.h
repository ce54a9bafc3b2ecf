// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <vector>

#include "hang/hang.h"
#include "hang/statics.h"

/// What a hang would carry if one single thing about it were other than it was taken to be: for a load cell
/// whose reading is not what was computed.
namespace hangbook::hang {

enum class ChangeKind {
  missing,   ///< `count` cabinets like `element` are not there
  extra,     ///< `count` more like `element`
  other,     ///< in the place of `element` there is one like `instead`
  links,     ///< the chain holds `amount` links farther along (below 0: nearer, as a snagged chain does)
  uneven,    ///< the first pick stands `amount` m higher against the second than it was set
  pull,      ///< something outside pulls down with `amount` N at pick `element` (below 0: holds up)
  barMass,   ///< `amount` kg more on the bar, at its centre of gravity: cable, hardware
  heavier,   ///< every cabinet has `amount` times its mass
  panned,    ///< it is panned to `amount` degrees
  exchanged, ///< the two readings stand for each other's pick
};

struct Change {
  ChangeKind kind = ChangeKind::missing;
  int element{}; ///< counted from 1: of the stack, or the pick
  int instead{}; ///< counted from 1
  int count = 1;
  double amount{};
  std::array<double, 2> loads{}; ///< N, in the order of `Statics::pickLoads`
};

/// Pick loads in the shape that the hang takes: settled where a seated joint may open, else as `solve` gives
/// them. Throws as those do.
Statics carried(const Hang& hang);

/// Every single change of which the statics can be computed, each worked out anew; where a size is free (a
/// rise, a pull, a mass) that which fits `readings` (N, one for each pick) best, where a place in the stack
/// is free that place. Where the mark no longer gives the pivot an angle, it is taken at the ends of its
/// travel. In no order. A change by which nothing would change is left out.
std::vector<Change> singleChanges(const Hang& hang, const std::array<double, 2>& readings);

/// The greatest difference between readings and loads, N.
double missOf(const Change& change, const std::array<double, 2>& readings, std::size_t picks);

} // namespace hangbook::hang
