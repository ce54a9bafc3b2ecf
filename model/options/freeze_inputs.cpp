// SPDX-License-Identifier: GPL-3.0-or-later
// Every figure by name. What is left out on purpose: identifiers, revisions and how a figure was typed, since
// none of them changes a result.
#include <algorithm>

#include <QJsonArray>
#include <QSet>

#include "options/doubts.h"
#include "options/freeze.h"
#include "options/freeze_others.h"

namespace hangbook::options {
namespace {

using catalogue::Position;

QJsonValue json(const QString& value) {
  return value;
}
QJsonValue json(bool value) {
  return value;
}
QJsonValue json(int value) {
  return value;
}
QJsonValue json(double value) {
  return value;
}
QJsonValue json(const QDate& value) {
  return value.toString(Qt::ISODate);
}
QJsonValue json(const QStringList& value) {
  return QJsonArray::fromStringList(value);
}
template <class Unit>
QJsonValue json(const boost::units::quantity<Unit>& value) {
  return value.value();
}
QJsonValue json(const Position& value) {
  return QJsonArray{inMetres(value.x), inMetres(value.z)};
}
QJsonValue json(const venue::ProfilePoint& value) {
  return QJsonArray{inMetres(value.x), inMetres(value.z)};
}
// Declared first: the templates below find only what stands before them.
QJsonValue json(const catalogue::PickArrangement& value);
QJsonValue json(const catalogue::CabinetType& value);
QJsonValue json(const catalogue::BarType& value);
QJsonValue json(const catalogue::HoistType& value);
QJsonValue json(const catalogue::ChainType& value);
QJsonValue json(const catalogue::HardwareType& value);
QJsonValue json(const catalogue::Join& value);
QJsonValue json(const catalogue::Count& value);
QJsonValue json(const catalogue::StackingTable& value);
QJsonValue json(const catalogue::CartType& value);
QJsonValue json(const venue::HouseFigure& value);
QJsonValue json(const venue::Point& value);
QJsonValue json(const venue::Bridle& value);
QJsonValue json(const venue::Zone& value);
QJsonValue json(const venue::Obstruction& value);
QJsonValue json(const venue::Section& value);
QJsonValue json(const venue::Venue& value);
QJsonValue json(const calendar::Hang& value);
QJsonValue json(const calendar::Show& value);
template <class Type>
QJsonValue json(const std::vector<Type>& value);
template <class Type, std::size_t size>
QJsonValue json(const std::array<Type, size>& value);

template <class Type>
QJsonValue json(const std::optional<Type>& value) {
  return value ? json(*value) : QJsonValue(QJsonValue::Null);
}
template <class List>
QJsonArray each(const List& list) {
  QJsonArray array;
  for (const auto& one : list) {
    array.append(json(one));
  }
  return array;
}
template <class Type>
QJsonValue json(const std::vector<Type>& value) {
  return each(value);
}
template <class Type, std::size_t size>
QJsonValue json(const std::array<Type, size>& value) {
  return each(value);
}

/// An enumerator by its number: enumerators are only ever added at the end.
template <class Enumeration>
int number(Enumeration value) {
  return static_cast<int>(value);
}

class Writer {
public:
  template <class Type>
  Writer& operator()(const char* key, const Type& value) {
    object_[QLatin1String(key)] = json(value);
    return *this;
  }
  /// A figure that came to be after records were frozen: left out where it is not known, so that those still
  /// stand for what they were computed from.
  template <class Type>
  Writer& ifKnown(const char* key, const std::optional<Type>& value) {
    return value ? (*this)(key, *value) : *this;
  }
  Writer& source(const catalogue::Source& value) {
    return (*this)("source", value.text)("source_date", value.date);
  }
  QJsonObject done() { return std::move(object_); }

private:
  QJsonObject object_;
};

QJsonValue json(const catalogue::PickArrangement& value) {
  return Writer()("picks", number(value.picks))("spacing_m", value.spacing)("front_m", value.front)(
             "rear_m", value.rear)("only_m", value.only)("limit_n", value.limit)(
             "limit_includes_factors", value.limitIncludesFactors)("most_cabinets", value.mostCabinets)
      .done();
}

QJsonValue json(const catalogue::CabinetType& value) {
  return Writer()("name", value.name)("mass_kg", value.mass)("cg_m", value.centreOfGravity)(
             "next_pin_m", value.nextPin)("outline_m", value.outline)("width_m", value.width)(
             "chain_eye_m", value.chainEye)("rear_contact_m", value.rearContact)("pins_m", value.pins)(
             "covers", value.coversAudience)("downfill", value.downfill)(
             "cover_lowest_deg", value.coverLowest)("cover_highest_deg", value.coverHighest)(
             "throw_m", value.throwDistance)("level_db", value.levelAtOneMetre)("face_m2", value.faceArea)(
             "force_coefficient", value.forceCoefficient)
      .ifKnown("cover_across_deg", value.coverAcross)
      .ifKnown("mass_tolerance_kg", value.tolerances.mass)
      .ifKnown("centre_tolerance_m", value.tolerances.centre)
      .ifKnown("place_tolerance_m", value.tolerances.place)
      .source(value.source)
      .done();
}

QJsonValue json(const catalogue::BarType& value) {
  return Writer()("name", value.name)("head_mass_kg", value.headMass)("head_cg_m", value.headCentreOfGravity)(
             "tilt_axis_m", value.tiltAxis)("tilt_travel_deg", value.tiltTravel)(
             "pan_travel_deg", value.panTravel)("swing_limit_deg", value.swingLimit)(
             "tilt_step_deg", value.tiltStep)("frame_mass_kg", value.frameMass)(
             "frame_cg_m", value.frameCentreOfGravity)("stack_pin_m", value.stackPin)(
             "chain_anchor_m", value.chainAnchor)("datum_m", value.datum)("outline_m", value.outline)(
             "width_m", value.width)("hoist_offset_m", value.hoistOffsetLimit)("arrangements",
                                                                               value.arrangements)
      .ifKnown("mass_tolerance_kg", value.tolerances.mass)
      .ifKnown("centre_tolerance_m", value.tolerances.centre)
      .ifKnown("place_tolerance_m", value.tolerances.place)
      .source(value.source)
      .done();
}

std::optional<int> classOf(const catalogue::HoistType& value) {
  return value.hoistingClass ? std::optional(number(*value.hoistingClass)) : std::nullopt;
}

QJsonValue json(const catalogue::HoistType& value) {
  return Writer()("name", value.name)("limit_n", value.limit)("body_kg", value.bodyMass)(
             "body_climbs", value.bodyClimbs)("chain_kg_per_m", value.chainMass)(
             "bag_kg", value.chainBagMass)("chain_m", value.chainLength)("closed_m", value.closedLength)(
             "speed_m_per_s", value.speed)("class", classOf(value))("holds_without_secondary",
                                                                    value.holdsWithoutSecondary)
      .source(value.source)
      .done();
}

QJsonValue json(const catalogue::ChainType& value) {
  return Writer()("name", value.name)("pitch_m", value.pitch)("fixed_m", value.fixedLength)(
             "links", value.links)("limit_n", value.limit)("limit_includes_factors",
                                                           value.limitIncludesFactors)("kg_per_m", value.mass)
      .ifKnown("pitch_tolerance_m", value.pitchTolerance)
      .source(value.source)
      .done();
}

QJsonValue json(const catalogue::HardwareType& value) {
  return Writer()("name", value.name)("kind", number(value.kind))("limit_n", value.limit)("mass_kg",
                                                                                          value.mass)(
             "length_m", value.length)("stiffness_n", value.stiffness)("design_factor", value.designFactor)
      .source(value.source)
      .done();
}

QJsonValue json(const catalogue::Join& value) {
  return Writer()("above", value.above)("below", value.below)("kind", number(value.kind))(
             "angles_deg", value.angles)("travel_deg", value.travel)("pin_limit_n", value.pinLimit)(
             "contact_limit_n", value.contactLimit)("side_share", value.sideShare)(
             "limit_includes_factors",
             value.limitIncludesFactors)("opens_to_deg", value.opensTo)("stop_limit_n", value.stopLimit)
      .done();
}

QJsonValue json(const catalogue::Count& value) {
  return Writer()("type", value.type)("least", value.least)("most", value.most).done();
}

QJsonValue json(const catalogue::StackingTable& value) {
  return Writer()("name", value.name)("bars", value.bars)("chain", value.chain)("joins", value.joins)(
             "counts", value.counts)("lowest", value.lowest)("held", value.held)
      .source(value.source)
      .done();
}

QJsonValue json(const venue::HouseFigure& value) {
  return Writer()("figure", value.figure)("value", value.value)("unit", value.unit)("source", value.source)(
             "by", value.signedBy)("on", value.signedOn)
      .done();
}

QJsonValue json(const venue::Point& value) {
  return Writer()("name", value.name)("x_m", value.x)("y_m", value.y)("z_m", value.z)(
             "capacity_n", value.capacity)("basis", number(value.basis))("zone", value.zone)
      .source(value.source)
      .done();
}

QJsonValue json(const venue::Bridle& value) {
  return Writer()("name", value.name)("points", value.points)("x_m", value.x)("y_m", value.y)("z_m", value.z)(
             "steels", value.steels)("shackle", value.shackle)("tolerance_m", value.tolerance)
      .source(value.source)
      .done();
}

QJsonValue json(const venue::Zone& value) {
  return Writer()("name", value.name)("capacity_n", value.capacity)("basis", number(value.basis))(
             "others_n", value.othersLoad)("others_by", value.othersBy)("others_on", value.othersOn)
      .done();
}

QJsonValue json(const venue::Obstruction& value) {
  return Writer()("name", value.name)("x_from_m", value.xFrom)("x_to_m", value.xTo)("y_from_m", value.yFrom)(
             "y_to_m", value.yTo)("underside_m", value.underside)
      .done();
}

QJsonValue json(const venue::Section& value) {
  return Writer()("name", value.name)("profile_m", value.profile)("ear_m", value.earHeight)(
             "y_from_m", value.yFrom)("y_to_m", value.yTo)
      .ifKnown("front_x_m", value.frontX)
      .ifKnown("front_y_m", value.frontY)
      .ifKnown("bearing_deg", value.bearing)
      .ifKnown("width_m", value.width)
      .ifKnown("radius_m", value.radius)
      .done();
}

QJsonValue json(const venue::Venue& value) {
  return Writer()("name", value.name)("outdoors", value.outdoors)("low_steel_m", value.lowSteel)(
             "least_trim_m", value.leastTrim)("most_trim_m", value.mostTrim)("points", value.points)(
             "bridles", value.bridles)("zones", value.zones)("obstructions", value.obstructions)(
             "sections", value.sections)("house", value.house)
      .source(value.source)
      .done();
}

QJsonValue json(const calendar::Hang& value) {
  return Writer()("name", value.name)("mirrors", value.mirrors)("points", value.points)("pan_deg", value.pan)(
             "sections", value.sections)("least_trim_m", value.leastTrim)("cable_kg", value.cableMass)(
             "wet_kg", value.wetMass)("rigging", value.rigging)("secondary", value.secondary)(
             "secondary_slack_m", value.secondarySlack)
      .done();
}

QJsonValue json(const calendar::Show& value) {
  return Writer()("tour", value.tour)("name", value.name)("from", value.from)("to", value.to)(
             "people_beneath", value.peopleBeneath)("temperature_c", value.temperature)(
             "humidity", value.humidity)("wind_m_per_s", value.wind)("wind_basis", number(value.windBasis))(
             "wind_averaging_s", value.windAveraging)("wind_height_m", value.windHeight)(
             "hangs", value.hangs)("house", value.house)
      .ifKnown("pressure_kpa", value.pressure)
      .done();
}

QJsonArray used(const Snapshot& snapshot, const OptionKey& key) {
  QStringList names;
  for (const calendar::Hang& hang : snapshot.show.hangs) {
    if (hang.name == key.hang) {
      names = hang.rigging + hang.secondary;
    }
  }
  for (const QString& point : key.points) {
    if (const auto* bridle = catalogue::find(snapshot.venue.bridles, point)) {
      names += bridle->steels;
      names += bridle->shackle;
    }
  }
  names.removeDuplicates();
  QJsonArray all;
  for (const QString& name : names) {
    const catalogue::HardwareType* type = catalogue::find(snapshot.catalogue.hardware, name);
    all.append(type == nullptr ? QJsonValue(name) : json(*type));
  }
  return all;
}

/// What the crew's scale says of the cabinets and the bar used; empty where nobody weighed one.
QJsonArray weighedOf(const Snapshot& snapshot, const QStringList& types, const QString& bar) {
  const House house(snapshot.tour.house, snapshot.venue.house, snapshot.show.house);
  QJsonArray all;
  const auto add = [&all](const QString& name, const KnownMass& known) {
    if (!known.weighed.isEmpty()) {
      all.append(QJsonObject{{QStringLiteral("type"), name},
                             {QStringLiteral("stated_kg"), known.stated},
                             {QStringLiteral("lighter_kg"), known.lighter},
                             {QStringLiteral("heavier_kg"), known.heavier},
                             {QStringLiteral("words"), known.weighed}});
    }
  };
  for (const QString& name : types) {
    const catalogue::CabinetType* type = catalogue::find(snapshot.catalogue.cabinets, name);
    add(name, type == nullptr ? KnownMass{} : massOfType(snapshot, house, *type));
  }
  if (const auto* type = catalogue::find(snapshot.catalogue.bars, bar)) {
    add(bar, massesOfBar(snapshot, house, *type).whole);
  }
  return all;
}

/// All that any hang of the show may take, in place of one option's parts.
struct Considered {
  QJsonArray tables;
  QStringList cabinets;
  QStringList bars;
  QStringList chains;
};

Considered consideredBy(const Snapshot& snapshot) {
  Considered all;
  for (const catalogue::StackingTable& table : snapshot.catalogue.tables) {
    const bool wanted =
        std::any_of(snapshot.show.hangs.begin(), snapshot.show.hangs.end(), [&](const calendar::Hang& hang) {
          return hang.tables.isEmpty() || hang.tables.contains(table.name);
        });
    if (!wanted) {
      continue;
    }
    all.tables.append(json(table));
    for (const catalogue::Count& count : table.counts) {
      all.cabinets.append(count.type);
    }
    for (const QString& bar : table.bars) {
      all.bars.append(bar);
    }
    all.chains.append(table.chain);
  }
  return all;
}

/// Those of a list that are named, in the list's own order.
template <class Type>
QJsonArray amongst(const std::vector<Type>& list, const QStringList& names) {
  QJsonArray all;
  for (const Type& each : list) {
    if (names.contains(each.name)) {
      all.append(json(each));
    }
  }
  return all;
}

QJsonValue json(const catalogue::CartType& value) {
  return Writer()("name", value.name)("carries", value.carries)("most", value.most).done();
}

/// What the gear rules read of the fleet: units of the types that may hang, whatever their place.
QJsonObject fleetFor(const Snapshot& snapshot, const Considered& considered) {
  QStringList carts;
  for (const catalogue::CartType& each : snapshot.catalogue.carts) {
    carts.append(considered.cabinets.contains(each.carries) ? each.name : QString());
  }
  const auto wanted = [&](const fleet::Unit& unit) {
    switch (unit.kind) {
    case fleet::UnitKind::cabinet:
      return considered.cabinets.contains(unit.type);
    case fleet::UnitKind::bar:
      return considered.bars.contains(unit.type);
    case fleet::UnitKind::chain:
      return considered.chains.contains(unit.type);
    case fleet::UnitKind::cart:
      return carts.contains(unit.type);
    default:
      return true;
    }
  };
  QJsonArray units;
  QStringList serials;
  for (const fleet::Unit& unit : snapshot.units) {
    if (wanted(unit)) {
      serials.append(unit.serial);
      units.append(Writer()("serial", unit.serial)("kind", number(unit.kind))("type", unit.type)(
                       "until", unit.hiredUntil)("state", number(unit.state))("pieces", unit.pieces)(
                       "weighed_kg", unit.weighed)("weighed_on", unit.weighedOn)
                       .done());
    }
  }
  const QSet<QString> ours(serials.begin(), serials.end());
  QJsonArray examinations;
  for (const fleet::Examination& each : snapshot.examinations) {
    if (ours.contains(each.serial)) {
      examinations.append(
          Writer()("serial", each.serial)("rule", each.rule)("on", each.date)("result", number(each.result))
              .done());
    }
  }
  QJsonArray occurrences;
  for (const fleet::Occurrence& each : snapshot.occurrences) {
    if (ours.contains(each.serial)) {
      occurrences.append(
          Writer()("serial", each.serial)("kind", number(each.kind))("on", each.date)("uses", each.uses)(
              "hours", each.hours)("id", each.id.toString())("corrects", each.corrects.toString())
              .done());
    }
  }
  QJsonArray rules;
  for (const fleet::ExaminationRule& each : snapshot.examinationRules) {
    rules.append(Writer()("name", each.name)("kind", number(each.kind))("type", each.type)(
                     "months", each.months)("uses", each.uses)("hours", each.hours)("idle", each.idleMonths)(
                     "exceptional", each.afterExceptional)("site", each.atNewSite)
                     .done());
  }
  return {{QStringLiteral("units"), units},
          {QStringLiteral("examinations"), examinations},
          {QStringLiteral("occurrences"), occurrences},
          {QStringLiteral("rules"), rules}};
}

QJsonArray choicesIn(const std::vector<Choice>& choices) {
  QJsonArray all;
  for (const Choice& each : choices) {
    all.append(QJsonArray{each.tour, each.show, each.hang, each.option, each.sha256,
                          each.awayFrom.toString(Qt::ISODate), each.awayTo.toString(Qt::ISODate)});
  }
  return all;
}

template <class Type>
QJsonValue named(const std::vector<Type>& list, const QString& name) {
  const Type* found = catalogue::find(list, name);
  return found == nullptr ? QJsonValue(QJsonValue::Null) : json(*found);
}

} // namespace

QJsonObject inputsOf(const Snapshot& snapshot) {
  const Considered considered = consideredBy(snapshot);
  QJsonArray tablesOfHangs;
  for (const calendar::Hang& hang : snapshot.show.hangs) {
    tablesOfHangs.append(json(hang.tables));
  }
  return {{QStringLiteral("tables"), considered.tables},
          {QStringLiteral("cabinets"), amongst(snapshot.catalogue.cabinets, considered.cabinets)},
          {QStringLiteral("bars"), amongst(snapshot.catalogue.bars, considered.bars)},
          {QStringLiteral("chains"), amongst(snapshot.catalogue.chains, considered.chains)},
          {QStringLiteral("hoists"), each(snapshot.catalogue.hoists)},
          {QStringLiteral("hardware"), each(snapshot.catalogue.hardware)},
          {QStringLiteral("carts"), each(snapshot.catalogue.carts)},
          {QStringLiteral("venue"), json(snapshot.venue)},
          {QStringLiteral("show"), json(snapshot.show)},
          {QStringLiteral("away"), QJsonArray{json(snapshot.show.awayFrom), json(snapshot.show.awayTo)}},
          {QStringLiteral("hang_tables"), tablesOfHangs},
          {QStringLiteral("tour_house"), json(snapshot.tour.house)},
          {QStringLiteral("fleet"), fleetFor(snapshot, considered)},
          {QStringLiteral("choices"), choicesIn(snapshot.choices)},
          {QStringLiteral("other_choices"), choicesIn(snapshot.otherChoices)}};
}

QJsonObject inputsOf(const Snapshot& snapshot, const OptionKey& key) {
  const catalogue::Catalogue& catalogue = snapshot.catalogue;
  QStringList types = key.stack;
  types.removeDuplicates();
  types.sort();
  QJsonArray cabinets;
  for (const QString& type : types) {
    cabinets.append(named(catalogue.cabinets, type));
  }
  const catalogue::StackingTable* table = catalogue::find(catalogue.tables, key.table);
  QJsonObject inputs{
      {QStringLiteral("cabinets"), cabinets},
      {QStringLiteral("bar"), named(catalogue.bars, key.bar)},
      {QStringLiteral("hoist"), named(catalogue.hoists, key.hoist)},
      {QStringLiteral("table"), named(catalogue.tables, key.table)},
      {QStringLiteral("chain"), named(catalogue.chains, table == nullptr ? QString() : table->chain)},
      {QStringLiteral("hardware"), used(snapshot, key)},
      {QStringLiteral("venue"), json(snapshot.venue)},
      {QStringLiteral("show"), json(snapshot.show)},
      {QStringLiteral("tour_house"), json(snapshot.tour.house)},
      {QStringLiteral("other_hangs"), otherHangs(snapshot, key.hang)}};
  const QJsonArray weighed = weighedOf(snapshot, types, key.bar);
  if (!weighed.isEmpty()) {
    inputs[QStringLiteral("weighed")] = weighed;
  }
  return inputs;
}

} // namespace hangbook::options
