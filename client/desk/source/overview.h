// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <vector>

#include <QDate>
#include <QHash>
#include <QStringList>

#include "calendar/cabling.h"
#include "calendar/show.h"
#include "calendar/where_best.h"
#include "catalogue/catalogue.h"
#include "fleet/occurrence.h"
#include "fleet/place.h"
#include "fleet/unit.h"
#include "marks/mark.h"
#include "options/frozen.h"
#include "people/person.h"
#include "venue/venue.h"

namespace hangbook::actions {
struct PlanEdit; // actions/plan_edit.h
}

namespace hangbook::desk {

/// What several places ask of all units, worked out where the facts are read: walking 100,000 units takes
/// longer than a window may stand still.
struct UnitSums {
  QStringList places{}; ///< every place recorded of a unit, in natural order
  QStringList held{};   ///< the first of those that hold a unit which is not away
  QStringList carts{};  ///< serials of carts that were not written off, in natural order
  int away = 0;
  int notToBeUsed = 0;                                 ///< quarantined or in repair
  QHash<QString, std::vector<std::size_t>> at{};       ///< by place: where its units stand among all
  QHash<QString, std::vector<std::size_t>> cabinets{}; ///< by type: the same of cabinets
};

UnitSums sumsOf(const std::vector<fleet::Unit>& units);

/// All that the lists show, as one value taken from the store at one moment.
struct Overview {
  std::vector<calendar::Tour> tours{};
  std::vector<calendar::Show> shows{}; ///< in order of date
  std::vector<venue::Venue> venues{};
  catalogue::Catalogue catalogue{};
  calendar::Cabling connections{}; ///< connectors, sockets and looms' ends; no plugs
  std::vector<fleet::Unit> units{};
  UnitSums sums{}; ///< of the units, from `sumsOf`
  std::vector<fleet::ExaminationRule> rules{};
  std::vector<fleet::Examination> examinations{}; ///< the newest valid one of each unit and rule
  std::vector<fleet::Occurrence> occurrences{};   ///< that decide when something is due
  std::vector<fleet::NamedPlace> places{};        ///< bays, trucks, workshops
  /// What every unit owes under every rule that speaks of it, the most pressing first, each with where on the
  /// route it is best examined.
  std::vector<calendar::Planned> due{};
  std::vector<int> soonest{};            ///< of each unit the first line of `due` that is its own; −1: none
  std::vector<calendar::Visit> visits{}; ///< the lines of `due` by where they are best made
  std::vector<options::Choice> choices{}; ///< the latest of each hang
  std::vector<calendar::Plug> plugs{};    ///< of all shows
  std::vector<marks::MarkUsed> marks{};   ///< newest first, without the corrected ones
  std::vector<people::Person> people{};
  QString atDesk{}; ///< who is at the desk; empty = nobody said so
  QDate today{};
  std::shared_ptr<const actions::PlanEdit>
      toUndo{}; ///< the last edit of plans from here; none: nothing to undo
  std::shared_ptr<const actions::PlanEdit> toRedo{};

  /// Nothing has been entered yet: the window then offers how to begin.
  bool empty() const {
    return shows.empty() && units.empty() && venues.empty() && catalogue.cabinets.empty();
  }
};

/// Names a show: show names repeat from tour to tour.
struct ShowKey {
  QString tour{};
  QString show{};
  bool operator==(const ShowKey&) const = default;
};

const calendar::Show* findShow(const Overview& overview, const ShowKey& key);
const venue::Venue* findVenue(const Overview& overview, const QString& name);
const options::Choice* findChoice(const Overview& overview, const ShowKey& key, const QString& hang);

} // namespace hangbook::desk
