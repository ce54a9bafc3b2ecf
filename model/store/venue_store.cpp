// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/venue_store.h"

#include <algorithm>

#include "quantity/error.h"
#include "store/records.h"
#include "store/words.h"

namespace hangbook::store {

namespace {

using namespace venue;

constexpr auto venueColumns = [](auto& io, auto& venue) {
  recordColumns(io, venue);
  io("name", venue.name);
  io("town", venue.town);
  io("time_zone", venue.timeZone);
  io("latitude", venue.latitude);
  io("longitude", venue.longitude);
  io("datum", venue.datum);
  io("outdoors", venue.outdoors);
  io("low_steel_m", venue.lowSteel);
  io("least_trim_m", venue.leastTrim);
  io("most_trim_m", venue.mostTrim);
  io("access", venue.access);
};

constexpr auto zoneColumns = [](auto& io, auto& zone) {
  io("name", zone.name);
  io("capacity_n", zone.capacity);
  io.word("basis", zone.basis, basisWords);
  io("others_load_n", zone.othersLoad);
  io("others_by", zone.othersBy);
  io("others_on", zone.othersOn);
};

constexpr auto pointColumns = [](auto& io, auto& point) {
  io("name", point.name);
  io("x_m", point.x);
  io("y_m", point.y);
  io("z_m", point.z);
  io("capacity_n", point.capacity);
  io.word("basis", point.basis, basisWords);
  io.reference("zone", point.zone);
  io("source_text", point.source.text);
  io("source_date", point.source.date);
};

constexpr auto bridleColumns = [](auto& io, auto& bridle) {
  io("name", bridle.name);
  io.list("points", bridle.points);
  io("x_m", bridle.x);
  io("y_m", bridle.y);
  io("z_m", bridle.z);
  io.list("steels", bridle.steels);
  io("shackle", bridle.shackle);
  io("tolerance_m", bridle.tolerance);
  io("source_text", bridle.source.text);
  io("source_date", bridle.source.date);
};

constexpr auto obstructionColumns = [](auto& io, auto& obstruction) {
  io("name", obstruction.name);
  io("x_from_m", obstruction.xFrom);
  io("x_to_m", obstruction.xTo);
  io("y_from_m", obstruction.yFrom);
  io("y_to_m", obstruction.yTo);
  io("underside_m", obstruction.underside);
};

constexpr auto sectionColumns = [](auto& io, auto& section) {
  io("name", section.name);
  io.list("profile_m", section.profile);
  io("ear_height_m", section.earHeight);
  io("y_from_m", section.yFrom);
  io("y_to_m", section.yTo);
  io("front_x_m", section.frontX);
  io("front_y_m", section.frontY);
  io("bearing_deg", section.bearing);
  io("width_m", section.width);
  io("radius_m", section.radius);
};

/// A bridle's points are looked up here, since lists of names stand as JSON.
void checkBridles(const Venue& venue) {
  const auto isPoint = [&](const QString& name) {
    return std::any_of(venue.points.begin(), venue.points.end(),
                       [&](const Point& each) { return each.name == name; });
  };
  for (const Bridle& bridle : venue.bridles) {
    for (const QString& name : bridle.points) {
      if (!isPoint(name)) {
        throw Error(Trouble::badInput,
                    QStringLiteral("bridle \"%1\" of venue \"%2\" names the point \"%3\", which the venue "
                                   "does not have")
                        .arg(bridle.name, venue.name, name)
                        .toStdString());
      }
    }
    if (isPoint(bridle.name)) {
      throw Error(Trouble::badInput, QStringLiteral("bridle \"%1\" of venue \"%2\" has the name of a point")
                                         .arg(bridle.name, venue.name)
                                         .toStdString());
    }
  }
}

RecordName nameOf(const Venue& venue) {
  return {"venue", QStringLiteral("venue \"%1\"").arg(venue.name)};
}

std::vector<Venue> load(Store& store, const QString& rest, const Bindings& bindings, bool oneOnly) {
  return store.reading([&] {
    auto venues = readRecords<Venue>(store, "venue", venueColumns, rest, bindings);
    const QUuid owner = oneOnly && !venues.empty() ? venues.front().id : QUuid();
    if (venues.empty()) {
      return venues;
    }
    auto points = readChildren<Point>(store, "venue_point", owner, pointColumns);
    auto bridles = readChildren<Bridle>(store, "venue_bridle", owner, bridleColumns);
    auto zones = readChildren<Zone>(store, "venue_zone", owner, zoneColumns);
    auto obstructions = readChildren<Obstruction>(store, "venue_obstruction", owner, obstructionColumns);
    auto sections = readChildren<Section>(store, "venue_section", owner, sectionColumns);
    auto house = readChildren<HouseFigure>(store, "venue_house", owner, houseFields);
    for (Venue& each : venues) {
      each.points = std::move(points[each.id]);
      each.bridles = std::move(bridles[each.id]);
      each.zones = std::move(zones[each.id]);
      each.obstructions = std::move(obstructions[each.id]);
      each.sections = std::move(sections[each.id]);
      each.house = std::move(house[each.id]);
    }
    return venues;
  });
}

} // namespace

std::vector<Venue> loadVenues(Store& store) {
  return load(store, QStringLiteral("ORDER BY name"), {}, false);
}

std::optional<Venue> loadVenue(Store& store, const QString& name) {
  std::vector<Venue> found = load(store, QStringLiteral("WHERE name = :name"), {{"name", name}}, true);
  return found.empty() ? std::nullopt : std::optional(std::move(found.front()));
}

Venue save(Store& store, const Venue& venue) {
  return store.transact([&] {
    Venue saved = venue;
    checkBridles(venue);
    inTermsOf(nameOf(venue), [&] {
      writeByColumns(store, nameOf(venue), saved, venueColumns);
      // Points name zones, so they go first and come last.
      store.run(QStringLiteral("DELETE FROM venue_point WHERE owner_id = :owner"), {{"owner", saved.id}});
      writeChildren(store, "venue_zone", saved.id, saved.zones, zoneColumns);
      writeChildren(store, "venue_point", saved.id, saved.points, pointColumns);
      writeChildren(store, "venue_bridle", saved.id, saved.bridles, bridleColumns);
      writeChildren(store, "venue_obstruction", saved.id, saved.obstructions, obstructionColumns);
      writeChildren(store, "venue_section", saved.id, saved.sections, sectionColumns);
      writeChildren(store, "venue_house", saved.id, saved.house, houseFields);
    });
    return saved;
  });
}

void remove(Store& store, const Venue& venue) {
  store.transact([&] {
    // Points name zones, so they go first.
    store.run(QStringLiteral("DELETE FROM venue_point WHERE owner_id = :owner"), {{"owner", venue.id}});
    removeRecord(store, nameOf(venue), venue.id, venue.revision);
  });
}

} // namespace hangbook::store
