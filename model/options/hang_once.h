// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <mutex>
#include <vector>

#include "fleet/due.h"
#include "options/cover.h"
#include "options/demand.h"
#include "options/gear_needs.h"

/// What is the same for all options of one hang, worked out once for a search.
namespace hangbook::options {

/// What other shows take, each over its own days; a choice without days counts as taking it all the time.
struct Elsewhere {
  QDate from;
  QDate to;
  Numbers numbers;
};

/// The fleet as one show finds it: what is there of a type, what is examined, what others have. For any
/// number of threads.
class GearThere {
public:
  /// Both outlive it.
  GearThere(const Snapshot& snapshot, const House& house);

  /// Puts into a need what the fleet says of its type: owned, free, elsewhere, examined.
  void count(UnitNeed& need) const;
  /// Whole carts, and what is left over of all hangs together on as few more as can be.
  void count(CartNeed& need) const;
  /// Dates alone.
  const GearNeeds& days() const { return days_; }

private:
  UnitNeed counted(fleet::UnitKind kind, const QString& type) const;

  const Snapshot& snapshot_;
  int margin_{};
  GearNeeds days_;
  std::vector<Elsewhere> others_;
  fleet::LastExaminations last_;
  fleet::Happened happened_;
  mutable std::mutex mutex_;
  mutable std::map<std::pair<fleet::UnitKind, QString>, UnitNeed> known_;
};

/// The audience of a hang without anything that covers it.
Audience seatsOf(const Snapshot& snapshot, const calendar::Hang& hang);

struct HangOnce {
  GearThere gear;
  Audience seats;
  HangOnce(const Snapshot& snapshot, const House& house, const calendar::Hang& hang)
      : gear(snapshot, house), seats(seatsOf(snapshot, hang)) {}
};

/// As `gearNeeds`, `roomLimits` and `audienceOf`, with what is known of the hang.
std::shared_ptr<const GearNeeds> gearNeeds(const Case& option, const GearThere& there);
std::shared_ptr<const RoomLimits> roomLimits(const Case& option, const Audience& seats);
Audience audienceOf(const Case& option, const Audience& seats);

} // namespace hangbook::options
