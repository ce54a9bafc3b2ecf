// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "options/room_limits.h"

namespace hangbook::options {

/// One place where there must be room above: what is below it, what is above it, how much it needs.
struct HeadroomCheck {
  enum class What { hookToPoint, hoistTop, bar, cabinet };
  What what = What::hookToPoint;
  int number{};     ///< pick or element, counted from 0
  int ceiling{};    ///< in RoomLimits::ceilings; -1: the pick's own point
  double rise{};    ///< height of the lower side above the lowest edge
  double needed{};  ///< between the lower side and what is above
  double inDoubt{}; ///< of that: hoist and rigging longer than stated, a bridle's apex lower
  double highest{}; ///< height of what is above, above the datum
  double mostTrim() const { return highest - needed - rise; }
};

/// All of them at a setting. Those whose figures are not known are left out; `missing` says which, in words.
struct HeadroomChecks {
  std::vector<HeadroomCheck> checks;
  QStringList missing;
};
HeadroomChecks headroomChecks(const Case&, const Settled&);

} // namespace hangbook::options
