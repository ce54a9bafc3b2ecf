// SPDX-License-Identifier: GPL-3.0-or-later
// By how much points, trusses, beams and bays are over. The answer to that is another point, a lighter stack
// or a figure that the engineer writes; a capacity is nobody else's to raise.
#include <algorithm>

#include "options/easing_lever.h"

namespace hangbook::options {
namespace {

constexpr double stepKn = 0.01; // what sheets are written in; as near to 1 kg as that allows
constexpr int mostSteps = 10000;

struct Place {
  QString name;
  bool zone{};
  double newtons{};
};

/// The points that carry the option, also through bridles, then what they share.
std::vector<Place> placesOf(const Trial& trial) {
  const venue::Venue& venue = trial.snapshot.venue;
  QStringList names;
  for (const QString& name : trial.key.points) {
    const auto* bridle = catalogue::find(venue.bridles, name);
    names += bridle != nullptr ? bridle->points : QStringList{name};
  }
  names.removeDuplicates();
  std::vector<Place> places;
  QStringList zones;
  for (const QString& name : names) {
    const auto* point = catalogue::find(venue.points, name);
    if (point != nullptr && point->capacity) {
      places.push_back({name, false, inNewtons(*point->capacity)});
    }
    if (point != nullptr && !point->zone.isEmpty() && !zones.contains(point->zone)) {
      zones.append(point->zone);
    }
  }
  for (const QString& name : zones) {
    const auto* zone = catalogue::find(venue.zones, name);
    if (zone != nullptr && zone->capacity) {
      places.push_back({name, true, inNewtons(*zone->capacity)});
    }
  }
  return places;
}

template <class Type>
void setCapacity(std::vector<Type>& list, const QString& name, double newtonsNow) {
  for (Type& each : list) {
    if (each.name == name) {
      each.capacity = newtons(newtonsNow);
    }
  }
}

double raised(const Place& place, int steps) {
  return movedBy(place.newtons, steps, stepKn * 1000.0);
}

Change changeFor(const std::vector<Place>& places, const Steps& steps) {
  Change change{QStringLiteral("structure"), {}, QStringLiteral("kN"), stepKn, {}};
  QStringList over;
  for (std::size_t i = 0; i < places.size(); ++i) {
    if (steps[i] == 0) {
      continue;
    }
    const Place& place = places[i];
    const QString name = place.zone ? place.name : QStringLiteral("point %1").arg(place.name);
    over.append(QStringLiteral("%1 by %2 kN").arg(name, QString::number(steps[i] * stepKn, 'f', 2)));
    change.figures.push_back({name, place.newtons / 1000.0, raised(place, steps[i]) / 1000.0, steps[i]});
  }
  change.words = QStringLiteral("Over: %1: another point, a lighter stack, or the engineer's written figure")
                     .arg(over.join(QStringLiteral(", ")));
  return change;
}

} // namespace

void addStructureLevers(const Trial& trial, std::vector<Lever>& into) {
  const std::vector<Place> places = placesOf(trial);
  if (places.empty()) {
    return;
  }
  Lever lever;
  lever.kind = QStringLiteral("structure");
  lever.unit = QStringLiteral("kN");
  lever.step = stepKn;
  lever.most = Steps(places.size(), mostSteps);
  lever.apply = [places](Trial& other, const Steps& steps) {
    for (std::size_t i = 0; i < places.size(); ++i) {
      if (steps[i] == 0) {
        continue;
      }
      const double capacity = raised(places[i], steps[i]);
      if (places[i].zone) {
        setCapacity(other.snapshot.venue.zones, places[i].name, capacity);
      } else {
        setCapacity(other.snapshot.venue.points, places[i].name, capacity);
      }
    }
  };
  lever.change = [places](const Steps& steps) { return changeFor(places, steps); };
  into.push_back(std::move(lever));
}

} // namespace hangbook::options
