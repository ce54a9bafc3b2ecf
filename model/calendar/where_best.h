// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "calendar/show.h"
#include "fleet/due.h"

/// Where and when on the route an examination is best made.
namespace hangbook::calendar {

/// Days at one place.
struct Slot {
  QString place;          ///< "warehouse", a venue, or where the unit is
  QDate from;             ///< first day on which it can be made there
  QDate to;               ///< last one that is still in time
  bool warehouse = false; ///< the gear is at home
  bool operator==(const Slot&) const = default;
};

/// One thing to examine and where. `ahead`: it still stands when it leaves, but falls due while it is away,
/// so that it has to be examined ahead of its day.
struct Planned {
  fleet::Due due;
  Slot slot;
  bool ahead = false;
};

/// The best slot for each: in the last gap at the warehouse that begins before it falls due, since no unit is
/// away then and the interval is used up as far as can be; where no gap is left, at the last stop that begins
/// before; where there is none either, where it is. What is overdue: today, where it is. Shows without days
/// away make no gaps.
std::vector<Planned> planned(const std::vector<fleet::Due>& due, const std::vector<Show>& route, QDate today);

/// The same by slot, in order of its last day; what is overdue first.
struct Visit {
  Slot slot;
  std::vector<Planned> units;
};
std::vector<Visit> visits(const std::vector<Planned>& all);

} // namespace hangbook::calendar
