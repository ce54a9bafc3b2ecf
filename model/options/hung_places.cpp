// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/hung_places.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "fleet/load_list.h"
#include "options/doubts.h"
#include "options/house_figures.h"

namespace hangbook::options {
namespace {

using fleet::Unit;
using fleet::UnitKind;
using fleet::UnitState;

/// What the loads count for one of the type.
std::optional<double> countedFor(const Snapshot& snapshot, const QString& type, bool bar) {
  const House house(snapshot.tour.house, snapshot.venue.house, snapshot.show.house);
  const auto known = [](double mass) { return std::isfinite(mass) ? std::optional(mass) : std::nullopt; };
  if (bar) {
    const auto* of = catalogue::find(snapshot.catalogue.bars, type);
    return of == nullptr ? std::nullopt : known(massesOfBar(snapshot, house, *of).whole.stated);
  }
  const auto* cabinet = catalogue::find(snapshot.catalogue.cabinets, type);
  if (cabinet == nullptr) {
    return std::nullopt;
  }
  return known(massOfType(snapshot, house, *cabinet).stated);
}

QString basisOf(const Unit& unit, bool known) {
  if (!unit.weighed) {
    return known ? QStringLiteral("maker's figure") : QStringLiteral("stated by nobody");
  }
  return QStringLiteral("weighed %1 by %2")
      .arg(unit.weighedOn.isValid() ? unit.weighedOn.toString(Qt::ISODate)
                                    : QStringLiteral("on a day not written down"),
           unit.weighedBy.isEmpty() ? QStringLiteral("somebody not named") : unit.weighedBy);
}

QString troubleOf(const HungPlace& place, const Unit* unit, std::optional<double> counted) {
  if (unit == nullptr) {
    return QStringLiteral("there is no such unit");
  }
  if (place.type.isEmpty()) {
    return QStringLiteral("the hang as chosen has no such place");
  }
  if (unit->kind != (place.element == 0 ? UnitKind::bar : UnitKind::cabinet) || unit->type != place.type) {
    return QStringLiteral("is a %1, and a %2 was chosen for this place").arg(unit->type, place.type);
  }
  if (unit->state == UnitState::quarantined) {
    return QStringLiteral("is quarantined");
  }
  if (unit->state == UnitState::inRepair) {
    return QStringLiteral("is in repair");
  }
  if (unit->state == UnitState::writtenOff) {
    return QStringLiteral("is written off");
  }
  constexpr double rounding = 1e-6; // kg
  if (place.massKg && counted && *place.massKg > *counted + rounding) {
    return QStringLiteral("is heavier than the %1 kg that the loads count")
        .arg(QString::number(*counted, 'g', 5));
  }
  return {};
}

void fill(HungPlace& place, const Snapshot& snapshot, std::optional<double> counted) {
  const auto unit = std::ranges::find(snapshot.units, place.serial, &Unit::serial);
  if (unit != snapshot.units.end()) {
    const std::optional<Mass> mass = fleet::pieceMass(snapshot.catalogue, *unit);
    place.massKg = mass ? std::optional(inKilograms(*mass)) : std::nullopt;
    place.basis = basisOf(*unit, mass.has_value());
    place.weighed = unit->weighed.has_value();
    place.weighedOn = unit->weighedOn;
    place.weighedBy = unit->weighedBy;
  }
  place.trouble = troubleOf(place, unit == snapshot.units.end() ? nullptr : &*unit, counted);
}

/// None as soon as one is.
void add(std::optional<double>& sum, std::optional<double> figure) {
  sum = sum && figure ? std::optional(*sum + *figure) : std::nullopt;
}

} // namespace

QString placeOf(const HungPlace& place) {
  return place.element == 0 ? QStringLiteral("bar") : QString::number(place.element);
}

HungHang hungOf(const Snapshot& snapshot, const OptionKey& key, const calendar::HungSerials& serials,
                const std::map<QString, QString>& elsewhere) {
  HungHang hang;
  hang.massKg = hang.countedKg = 0.0;
  std::map<QString, std::optional<double>> countedOf; // each type is looked up once
  for (int element = 0; element <= key.stack.size(); ++element) {
    const QString type = element == 0 ? key.bar : key.stack[element - 1];
    const auto serial = serials.find(element);
    HungPlace place{element, type, serial == serials.end() ? QString() : serial->second};
    const auto known = countedOf.find(type);
    const std::optional<double> counted =
        known != countedOf.end() ? known->second : countedFor(snapshot, type, element == 0);
    countedOf[type] = counted;
    if (!place.serial.isEmpty()) {
      ++hang.recorded;
      fill(place, snapshot, counted);
      if (const auto other = elsewhere.find(place.serial);
          place.trouble.isEmpty() && other != elsewhere.end()) {
        place.trouble = other->second;
      }
    }
    add(hang.massKg, place.massKg);
    add(hang.countedKg, counted);
    hang.places.push_back(std::move(place));
  }
  for (const auto& [element, serial] : serials) {
    if (element > key.stack.size()) {
      HungPlace place{element, {}, serial};
      fill(place, snapshot, {});
      hang.places.push_back(std::move(place));
    }
  }
  return hang;
}

} // namespace hangbook::options
