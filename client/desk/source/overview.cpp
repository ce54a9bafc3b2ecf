// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/source/overview.h"

#include <algorithm>

#include <QSet>

#include "desk/lists/natural.h"

namespace hangbook::desk {
namespace {

template <class Range, class Test>
auto* firstOf(const Range& range, Test test) {
  const auto found = std::find_if(range.begin(), range.end(), test);
  return found == range.end() ? nullptr : &*found;
}

/// Names to choose from: more nobody reads through.
constexpr qsizetype mostHeld = 500;

void sortNaturally(QStringList& names) {
  std::sort(names.begin(), names.end(),
            [](const QString& a, const QString& b) { return compareNatural(a, b) < 0; });
}

} // namespace

UnitSums sumsOf(const std::vector<fleet::Unit>& units) {
  UnitSums sums;
  QSet<QString> places;
  QSet<QString> held;
  for (std::size_t i = 0; i < units.size(); ++i) {
    const fleet::Unit& unit = units[i];
    if (!unit.place.isEmpty()) {
      sums.at[unit.place].push_back(i);
    }
    if (unit.kind == fleet::UnitKind::cabinet) {
      sums.cabinets[unit.type].push_back(i);
    }
    const bool away = unit.state == fleet::UnitState::away;
    if (!unit.place.isEmpty()) {
      places.insert(unit.place);
      if (!away && held.size() < mostHeld) {
        held.insert(unit.place);
      }
    }
    if (unit.kind == fleet::UnitKind::cart && unit.state != fleet::UnitState::writtenOff) {
      sums.carts << unit.serial;
    }
    sums.away += away ? 1 : 0;
    sums.notToBeUsed +=
        unit.state == fleet::UnitState::quarantined || unit.state == fleet::UnitState::inRepair ? 1 : 0;
  }
  sums.places = QStringList(places.begin(), places.end());
  sums.held = QStringList(held.begin(), held.end());
  for (QStringList* each : {&sums.places, &sums.held, &sums.carts}) {
    sortNaturally(*each);
  }
  return sums;
}

const calendar::Show* findShow(const Overview& overview, const ShowKey& key) {
  return firstOf(overview.shows,
                 [&](const calendar::Show& each) { return each.tour == key.tour && each.name == key.show; });
}

const venue::Venue* findVenue(const Overview& overview, const QString& name) {
  return firstOf(overview.venues, [&](const venue::Venue& each) { return each.name == name; });
}

const options::Choice* findChoice(const Overview& overview, const ShowKey& key, const QString& hang) {
  return firstOf(overview.choices, [&](const options::Choice& each) {
    return each.tour == key.tour && each.show == key.show && each.hang == hang;
  });
}

} // namespace hangbook::desk
