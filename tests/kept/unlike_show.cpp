// SPDX-License-Identifier: GPL-3.0-or-later
#include "kept/unlike_show.h"

#include "kept/unlike_parts.h"
#include "model/options/show_fixture.h"

namespace hangbook::testing {
namespace {

void points(venue::Venue& hall, Chance& by) {
  for (std::size_t i = 0; i < hall.points.size(); ++i) {
    venue::Point& point = hall.points[i];
    point.x = metres(by.between(-0.1, 0.4));
    point.y = metres(inMetres(point.y) + by.between(-0.06, 0.06));
    point.z = metres(by.between(11.8, 12.4));
    point.capacity = kilonewtons(by.between(4, 14));
    point.basis = by.lacks(5)   ? catalogue::Basis::unknown
                  : by.oneIn(2) ? catalogue::Basis::dynamic
                                : catalogue::Basis::atRest;
    dropOneIn(by, 20, point.capacity);
    if (by.lacks(9)) {
      point.zone = QStringLiteral("nowhere");
    }
  }
  for (venue::Zone& zone : hall.zones) {
    zone.capacity = kilonewtons(by.between(10, 32));
    zone.othersLoad = kilonewtons(by.between(0, 7));
    zone.basis = by.oneIn(3) ? catalogue::Basis::dynamic : catalogue::Basis::atRest;
    dropOneIn(by, 12, zone.capacity);
    dropOneIn(by, 12, zone.othersLoad);
    if (by.lacks(12)) {
      zone.othersBy.clear();
    }
  }
}

void obstructions(venue::Venue& hall, Chance& by) {
  hall.lowSteel = metres(by.between(10.5, 11.7));
  dropOneIn(by, 12, hall.lowSteel);
  for (int i = by.oneOf(3); i > 0; --i) {
    const double x = by.between(-1.5, 0.5);
    const double y = by.between(7.5, 10);
    hall.obstructions.push_back({QStringLiteral("screen %1").arg(i), metres(x),
                                 metres(x + by.between(0.3, 3)), metres(y), metres(y + by.between(0.5, 3)),
                                 metres(by.between(8.2, 11.3))});
  }
  if (by.oneIn(3)) {
    hall.leastTrim = metres(by.between(2, 4.5));
  }
  if (by.oneIn(3)) {
    hall.mostTrim = metres(by.between(5, 9));
  }
}

void sections(venue::Venue& hall, Chance& by) {
  hall.sections.resize(2);
  venue::Section& floor = hall.sections[0];
  floor.profile = {{metres(by.between(4, 8)), metres(0)},
                   {metres(by.between(12, 16)), metres(by.between(0, 0.5))},
                   {metres(by.between(20, 30)), metres(by.between(0.6, 2))}};
  floor.earHeight = metres(by.between(1.1, 1.8));
  if (by.oneIn(2)) {
    floor.yFrom = metres(by.between(-14, -9));
    floor.yTo = metres(by.between(9, 14));
  }
  venue::Section& tier = hall.sections[1];
  tier.profile = {{metres(by.between(0, 1)), metres(by.between(2, 3))},
                  {metres(by.between(8, 14)), metres(by.between(5, 7))}};
  tier.earHeight = metres(by.between(1.1, 1.8));
  tier.frontX = metres(by.between(20, 32));
  tier.frontY = metres(by.between(-6, 12));
  tier.bearing = degrees(by.between(-25, 35));
  tier.width = metres(by.between(8, 24));
  tier.radius = metres(by.oneIn(3) ? 0.0 : by.oneIn(2) ? by.between(18, 40) : -by.between(40, 60));
  if (by.lacks(12)) {
    tier.width.reset();
  }
  for (venue::Section& each : hall.sections) {
    dropOneIn(by, 15, each.earHeight);
  }
  if (by.oneIn(4)) {
    hall.sections.pop_back();
  }
}

void bridles(options::Snapshot& made, Chance& by) {
  venue::Venue& hall = made.venue;
  for (int i = 0; i < 2; ++i) {
    venue::Bridle bridle;
    bridle.name = QStringLiteral("B%1").arg(i + 1);
    bridle.points = i == 0 ? QStringList{hall.points[0].name, hall.points[1].name}
                           : QStringList{hall.points[0].name, hall.points[1].name, hall.points[2].name};
    bridle.z = metres(by.between(9.6, 11.4));
    if (by.oneIn(3) || i == 1) {
      bridle.x = metres(by.between(-0.1, 0.4));
      bridle.y = metres(by.between(9.6, 10.4));
    }
    bridle.steels = {QStringLiteral("leg"), QStringLiteral("long leg")};
    bridle.shackle = QStringLiteral("shackle");
    bridle.tolerance = metres(by.between(0.1, 0.7));
    dropOneIn(by, 6, bridle.tolerance);
    bridle.source = hall.source;
    hall.bridles.push_back(bridle);
  }
}

void houseRules(options::Snapshot& made, Chance& by) {
  for (const options::HouseFigureKind& kind : options::houseFigureKinds()) {
    auto& list = by.oneIn(2) ? made.show.house : by.oneIn(2) ? made.venue.house : made.tour.house;
    if (!by.oneIn(4)) {
      continue;
    }
    const bool isSigned = !by.oneIn(4);
    double value =
        kind.usual.value_or(kind.id.contains(QStringLiteral("share")) ? 0.58 : 1.3) * by.between(0.8, 1.4);
    value = value == 0.0 ? by.between(0, 2) : value;
    if (kind.id == QStringLiteral("working-coefficients")) {
      value = 1 + by.oneOf(2);
    }
    list.push_back({kind.id, value, by.oneIn(2) ? kind.unit : QString(),
                    by.oneIn(2) ? QStringLiteral("crew's sheet") : QString(),
                    isSigned ? QStringLiteral("Edda") : QString(),
                    isSigned ? QDate(2026, 1 + by.oneOf(12), 3) : QDate()});
  }
}

void theShow(options::Snapshot& made, Chance& by) {
  calendar::Show& show = made.show;
  for (calendar::Hang& hang : show.hangs) {
    hang.pan = degrees(by.oneIn(3) ? by.between(-14, 14) : 0.0);
    hang.leastTrim = metres(by.between(3, 5));
    hang.cableMass = kilograms(by.between(5, 20));
    hang.wetMass = kilograms(by.between(0, 15));
    hang.secondarySlack = metres(by.oneIn(2) ? 0.0 : by.between(0.01, 0.15));
    dropOneIn(by, 12, hang.leastTrim);
    dropOneIn(by, 12, hang.cableMass);
    dropOneIn(by, 12, hang.wetMass);
    dropOneIn(by, 4, hang.secondarySlack);
    if (by.lacks(10)) {
      hang.rigging.clear();
    }
    if (by.lacks(10)) {
      hang.secondary.clear();
    }
    if (by.oneIn(6)) {
      hang.sections = {QStringLiteral("floor")};
    }
  }
  show.peopleBeneath = !by.oneIn(3);
  dropOneIn(by, 12, show.peopleBeneath);
  show.temperature = by.between(-5, 35);
  show.humidity = by.between(15, 95);
  show.pressure = by.between(90, 103);
  dropOneIn(by, 8, show.temperature);
  dropOneIn(by, 8, show.humidity);
  dropOneIn(by, 3, show.pressure);
  made.venue.outdoors = by.oneIn(2);
  dropOneIn(by, 15, made.venue.outdoors);
  show.wind = metresPerSecond(by.between(3, 14));
  show.windBasis = by.lacks(8)   ? calendar::WindBasis::unknown
                   : by.lacks(8) ? calendar::WindBasis::mean
                                 : calendar::WindBasis::gust;
  show.windAveraging = by.lacks(8) ? 600.0 : by.between(1, 3);
  show.windHeight = metres(by.lacks(8) ? 3.0 : by.between(11, 20));
  dropOneIn(by, 10, show.wind);
  dropOneIn(by, 10, show.windAveraging);
  dropOneIn(by, 10, show.windHeight);
}

} // namespace

options::Snapshot unlikeShow(std::uint64_t seed) {
  Chance by(seed);
  by.allKnown = seed % 2 == 0;
  options::Snapshot made = harbourShow();
  made.tour.house.clear();
  unlikeParts(made.catalogue, by);
  points(made.venue, by);
  obstructions(made.venue, by);
  sections(made.venue, by);
  if (by.oneIn(2)) {
    bridles(made, by);
  }
  houseRules(made, by);
  theShow(made, by);
  unlikeFleet(made, by);
  calendar::Hang& left = made.show.hangs.front();
  if (!made.venue.bridles.empty()) { // few ways, so that the search is short
    left.points = by.oneIn(2) ? QStringList{QStringLiteral("B1"), QStringLiteral("L2")}
                              : QStringList{QStringLiteral("B2"), QStringLiteral("B1")};
  }
  return made;
}

} // namespace hangbook::testing
