// SPDX-License-Identifier: GPL-3.0-or-later
#include "show_fixture.h"

namespace hangbook::testing {
namespace {

using catalogue::CabinetType;
using catalogue::HoistType;
using catalogue::Join;
using catalogue::JointKind;
using catalogue::Position;

Position at(double x, double z) {
  return {metres(x), metres(z)};
}

const catalogue::Source leaflet{QStringLiteral("leaflet 7"), QDate(2026, 2, 11)};

CabinetType box(const char* name, double mass, double height) {
  CabinetType type;
  type.name = QString::fromUtf8(name);
  type.mass = kilograms(mass);
  type.centreOfGravity = at(-0.35, -0.5 * height);
  type.nextPin = at(0.0, -height);
  type.outline = {at(0.03, 0.0), at(0.03, 0.01 - height), at(-0.75, 0.01 - height), at(-0.75, 0.0)};
  type.width = metres(1.1);
  type.rearContact = at(-0.7, 0.0);
  type.pins = {at(0.0, -0.03), at(-0.44, -0.03)};
  type.faceArea = 0.6;
  type.forceCoefficient = 1.3;
  type.source = leaflet;
  return type;
}

std::vector<CabinetType> cabinets() {
  CabinetType bass = box("bass", 92, 0.62);
  CabinetType upper = box("upper", 78, 0.52);
  upper.coversAudience = true;
  upper.coverLowest = degrees(-28);
  upper.coverHighest = degrees(2);
  upper.throwDistance = metres(130);
  upper.levelAtOneMetre = 139;
  CabinetType down = box("down", 64, 0.5);
  down.centreOfGravity = at(-0.29, -0.3);
  down.outline = {at(0.03, 0.0), at(0.03, -0.54), at(-0.6, -0.46), at(-0.6, -0.28)};
  down.nextPin.reset();
  down.chainEye = at(-0.78, -0.38);
  down.coversAudience = true;
  down.downfill = true;
  down.coverLowest = degrees(-35);
  down.coverHighest = degrees(10);
  down.throwDistance = metres(35);
  down.levelAtOneMetre = 133;
  CabinetType small = box("small", 27, 0.3);
  small.coversAudience = true;
  small.coverLowest = degrees(-9);
  small.coverHighest = degrees(4);
  small.throwDistance = metres(60);
  small.levelAtOneMetre = 133;
  small.chainEye = at(-0.78, -0.24);
  return {bass, down, small, upper};
}

std::vector<catalogue::BarType> bars() {
  catalogue::BarType bar;
  bar.name = QStringLiteral("bar");
  bar.source = leaflet;
  bar.headMass = kilograms(36);
  bar.headCentreOfGravity = at(0.0, -0.1);
  bar.tiltAxis = at(0.0, -0.3);
  bar.tiltTravel = std::array{degrees(-20), degrees(20)};
  bar.panTravel = std::array{degrees(-20), degrees(20)};
  bar.swingLimit = degrees(25);
  bar.frameMass = kilograms(58);
  bar.frameCentreOfGravity = at(-0.08, -0.12);
  bar.stackPin = at(0.32, -0.22);
  bar.chainAnchor = at(-0.62, -0.1);
  bar.datum = at(0.32, -0.02);
  bar.outline = {at(0.45, 0.0), at(0.45, -0.22), at(-0.65, -0.22), at(-0.65, 0.0)};
  bar.width = metres(1.2);
  bar.hoistOffsetLimit = metres(0.2);
  catalogue::PickArrangement pair;
  pair.picks = catalogue::Picks::sidePair;
  pair.spacing = metres(1.0);
  pair.limit = kilonewtons(30);
  pair.mostCabinets = 8;
  catalogue::PickArrangement single;
  single.picks = catalogue::Picks::single;
  single.only = at(0.0, 0.0);
  single.limit = kilonewtons(20);
  single.mostCabinets = 5;
  bar.arrangements = {pair, single};
  return {bar};
}

HoistType hoist(const char* name, double tonnes, double body) {
  HoistType type;
  type.name = QString::fromUtf8(name);
  type.source = leaflet;
  type.limit = weightOf(kilograms(1000.0 * tonnes));
  type.bodyMass = kilograms(body);
  type.bodyClimbs = true;
  type.chainMass = kilogramsPerMetre(1.3);
  type.chainBagMass = kilograms(2.5);
  type.chainLength = metres(22);
  type.closedLength = metres(0.52);
  type.speed = metresPerSecond(0.0667);
  type.hoistingClass = catalogue::HoistingClass::hc2;
  type.holdsWithoutSecondary = false;
  return type;
}

catalogue::HardwareType hardware(const char* name, catalogue::HardwareKind kind, double tonnes) {
  catalogue::HardwareType type;
  type.name = QString::fromUtf8(name);
  type.kind = kind;
  type.limit = weightOf(kilograms(1000.0 * tonnes));
  type.mass = kilograms(1.2);
  type.length = metres(0.1);
  type.source = leaflet;
  return type;
}

Join join(const char* above, const char* below, JointKind kind, std::vector<double> anglesDeg) {
  Join made;
  made.above = QString::fromUtf8(above);
  made.below = QString::fromUtf8(below);
  made.kind = kind;
  for (const double angle : anglesDeg) {
    made.angles.push_back(degrees(angle));
  }
  if (kind == JointKind::pivot) {
    made.travel = std::array{degrees(-25), degrees(0)};
  }
  made.pinLimit = kilonewtons(25);
  made.contactLimit = kilonewtons(20);
  made.sideShare = 0.6;
  return made;
}

catalogue::StackingTable largeTable() {
  catalogue::StackingTable table;
  table.name = QStringLiteral("large");
  table.source = leaflet;
  table.bars = {QStringLiteral("bar")};
  table.chain = QStringLiteral("chain");
  table.joins = {
      join("", "bass", JointKind::pinned, {0}),          join("bass", "bass", JointKind::pinned, {0}),
      join("bass", "upper", JointKind::pinned, {0, -3}), join("upper", "bass", JointKind::pinned, {0}),
      join("upper", "upper", JointKind::pinned, {-3}),   join("bass", "down", JointKind::pivot, {}),
      join("upper", "down", JointKind::pivot, {})};
  table.counts = {
      {QStringLiteral("bass"), 2, 5}, {QStringLiteral("upper"), 1, 2}, {QStringLiteral("down"), 0, 1}};
  table.lowest = {QStringLiteral("bass"), QStringLiteral("upper"), QStringLiteral("down")};
  table.held = {QStringLiteral("down")};
  return table;
}

catalogue::StackingTable smallTable() {
  catalogue::StackingTable table;
  table.name = QStringLiteral("on feet");
  table.source = leaflet;
  table.bars = {QStringLiteral("bar")};
  table.chain = QStringLiteral("chain");
  table.joins = {join("", "small", JointKind::seated, {-2}),
                 join("small", "small", JointKind::seated, {0, -4})};
  table.counts = {{QStringLiteral("small"), 2, 4}};
  table.lowest = {QStringLiteral("small")};
  table.held = {QStringLiteral("small")};
  return table;
}

venue::Point point(const char* name, double y, const char* zone) {
  venue::Point each;
  each.name = QString::fromUtf8(name);
  each.x = metres(0.5);
  each.y = metres(y);
  each.z = metres(19.4);
  each.capacity = kilonewtons(11.8);
  each.basis = catalogue::Basis::atRest;
  each.zone = QString::fromUtf8(zone);
  each.source = {QStringLiteral("rigging plot, revision 2"), QDate(2026, 10, 12)};
  return each;
}

venue::Section section(const char* name, std::vector<std::pair<double, double>> profile, double ear) {
  venue::Section made;
  made.name = QString::fromUtf8(name);
  for (const auto& [x, z] : profile) {
    made.profile.push_back({metres(x), metres(z)});
  }
  made.earHeight = metres(ear);
  return made;
}

venue::Venue hall() {
  venue::Venue hall;
  hall.name = QStringLiteral("Harbour Hall");
  hall.source = {QStringLiteral("technical sheet, revision 2"), QDate(2026, 10, 12)};
  hall.outdoors = false;
  hall.lowSteel = metres(19);
  hall.points = {point("L1", 10.5, "left truss"), point("L2", 9.5, "left truss"),
                 point("R1", -9.5, "right truss"), point("R2", -10.5, "right truss")};
  for (const char* name : {"left truss", "right truss"}) {
    venue::Zone zone;
    zone.name = QString::fromUtf8(name);
    zone.capacity = kilonewtons(40);
    zone.basis = catalogue::Basis::atRest;
    zone.othersLoad = kilonewtons(4);
    zone.othersBy = QStringLiteral("Runa Vell");
    zone.othersOn = QDate(2026, 10, 20);
    hall.zones.push_back(zone);
  }
  hall.sections = {section("floor", {{7, 0}, {60, 0}}, 1.7), section("tier", {{62, 2.5}, {78, 9}}, 1.2)};
  return hall;
}

calendar::Hang hangNamed(const char* name, const char* mirrors, QStringList points, double pan) {
  calendar::Hang hang;
  hang.name = QString::fromUtf8(name);
  hang.mirrors = QString::fromUtf8(mirrors);
  hang.points = std::move(points);
  hang.pan = degrees(pan);
  hang.leastTrim = metres(6);
  hang.cableMass = kilograms(12);
  hang.rigging = {QStringLiteral("shackle"), QStringLiteral("sling"), QStringLiteral("shackle")};
  hang.secondary = {QStringLiteral("shackle"), QStringLiteral("steel"), QStringLiteral("shackle")};
  return hang;
}

void own(options::Snapshot& snapshot, fleet::UnitKind kind, const QString& type, int number) {
  for (int i = 0; i < number; ++i) {
    fleet::Unit unit;
    unit.serial = QStringLiteral("%1-%2").arg(type).arg(i + 1);
    unit.kind = kind;
    unit.type = type;
    snapshot.units.push_back(unit);
  }
}

void ownEverything(options::Snapshot& snapshot) {
  for (const CabinetType& type : snapshot.catalogue.cabinets) {
    own(snapshot, fleet::UnitKind::cabinet, type.name, 12);
  }
  own(snapshot, fleet::UnitKind::bar, QStringLiteral("bar"), 3);
  own(snapshot, fleet::UnitKind::chain, QStringLiteral("chain"), 3);
  for (const HoistType& type : snapshot.catalogue.hoists) {
    own(snapshot, fleet::UnitKind::hoist, type.name, 5);
  }
  for (const catalogue::CartType& cart : snapshot.catalogue.carts) {
    own(snapshot, fleet::UnitKind::cart, cart.name, 8);
  }
  for (const auto kind :
       {fleet::UnitKind::cabinet, fleet::UnitKind::bar, fleet::UnitKind::hoist, fleet::UnitKind::chain}) {
    fleet::ExaminationRule rule;
    rule.name = QStringLiteral("yearly %1").arg(static_cast<int>(kind));
    rule.kind = kind;
    rule.months = 12;
    snapshot.examinationRules.push_back(rule);
    for (const fleet::Unit& unit : snapshot.units) {
      if (unit.kind == kind) {
        fleet::Examination done;
        done.serial = unit.serial;
        done.rule = rule.name;
        done.date = QDate(2026, 11, 1);
        snapshot.examinations.push_back(done);
      }
    }
  }
}

} // namespace

options::Snapshot harbourShow() {
  options::Snapshot snapshot;
  for (const char* figure :
       {"centre-doubt", "chain-wear", "length-doubt", "mass-doubt", "pitch-doubt", "scale-doubt"}) {
    // Figures to the point, so that limits can be met exactly; doubts have tests of their own.
    // Signed: without a name a house's figure may only make the doubt larger.
    snapshot.tour.house.push_back(
        {QString::fromLatin1(figure), 0.0, {}, {}, QStringLiteral("Edda"), QDate(2026, 1, 1)});
  }
  catalogue::Catalogue& catalogue = snapshot.catalogue;
  catalogue.cabinets = cabinets();
  catalogue.bars = bars();
  catalogue.hoists = {hoist("half", 0.5, 24), hoist("one", 1.0, 41), hoist("two", 2.0, 58)};
  catalogue::ChainType chain;
  chain.name = QStringLiteral("chain");
  chain.source = leaflet;
  chain.pitch = metres(0.0225);
  chain.fixedLength = metres(0.08);
  chain.links = 260;
  chain.limit = weightOf(kilograms(1250));
  chain.mass = kilogramsPerMetre(1.4);
  catalogue.chains = {chain};
  catalogue.hardware = {hardware("shackle", catalogue::HardwareKind::shackle, 4.75),
                        hardware("sling", catalogue::HardwareKind::sling, 4),
                        hardware("steel", catalogue::HardwareKind::secondarySteel, 4)};
  for (const CabinetType& type : catalogue.cabinets) {
    catalogue::CartType cart;
    cart.name = type.name + QStringLiteral(" cart");
    cart.carries = type.name;
    cart.most = 2;
    catalogue.carts.push_back(cart);
  }
  catalogue.tables = {largeTable(), smallTable()};
  snapshot.venue = hall();
  snapshot.tour.name = QStringLiteral("Lanternfish Parade");
  calendar::Show& show = snapshot.show;
  show.tour = snapshot.tour.name;
  show.name = QStringLiteral("Harbour night");
  show.venue = snapshot.venue.name;
  show.from = QDate(2027, 4, 2);
  show.to = QDate(2027, 4, 3);
  show.awayFrom = QDate(2027, 4, 1);
  show.awayTo = QDate(2027, 4, 4);
  show.peopleBeneath = true;
  show.temperature = 20;
  show.humidity = 50;
  show.hangs = {hangNamed("left", "", {QStringLiteral("L1"), QStringLiteral("L2")}, -2),
                hangNamed("right", "left", {QStringLiteral("R1"), QStringLiteral("R2")}, 2)};
  snapshot.today = QDate(2026, 12, 1);
  ownEverything(snapshot);
  return snapshot;
}

options::Snapshot smallHarbourShow() {
  options::Snapshot snapshot = harbourShow();
  catalogue::StackingTable& table = snapshot.catalogue.tables[0];
  table.counts[0].most = 3;
  table.counts[1].most = 1;
  snapshot.catalogue.tables.pop_back();
  snapshot.catalogue.hoists = {snapshot.catalogue.hoists[2]};
  snapshot.catalogue.bars[0].arrangements.pop_back();
  return snapshot;
}

} // namespace hangbook::testing
