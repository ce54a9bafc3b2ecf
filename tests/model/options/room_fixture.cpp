// SPDX-License-Identifier: GPL-3.0-or-later
#include "room_fixture.h"

#include "hang/solve.h"

namespace hangbook::testing {
namespace {

using fleet::UnitKind;

catalogue::CabinetType cabinet(const char* name, double height, double mass) {
  catalogue::CabinetType type;
  type.name = QString::fromUtf8(name);
  type.mass = kilograms(mass);
  type.centreOfGravity = at(-0.35, -0.5 * height);
  type.nextPin = at(0.0, -height);
  type.outline = {at(0.03, 0.0), at(0.03, -height), at(-0.77, -height), at(-0.77, 0.0)};
  type.width = metres(1.0);
  type.pins = {at(0.0, -0.03), at(-0.08, -0.03)};
  return type;
}

catalogue::BarType barType() {
  catalogue::BarType bar;
  bar.name = QStringLiteral("Marram bar");
  bar.headMass = kilograms(36);
  bar.headCentreOfGravity = at(0.0, -0.1);
  bar.tiltAxis = at(0.0, -0.3);
  bar.tiltTravel = std::array{degrees(-20), degrees(20)};
  bar.panTravel = std::array{degrees(-20), degrees(20)};
  bar.swingLimit = degrees(30);
  bar.frameMass = kilograms(58);
  bar.frameCentreOfGravity = at(-0.08, -0.12);
  bar.stackPin = at(0.32, -0.22);
  bar.chainAnchor = at(-0.55, -0.10);
  bar.outline = {at(0.4, 0.0), at(0.4, -0.2), at(-0.6, -0.2), at(-0.6, 0.0)};
  bar.width = metres(0.8);
  return bar;
}

venue::Point point(const char* name, double y) {
  venue::Point each;
  each.name = QString::fromUtf8(name);
  each.x = metres(0.0);
  each.y = metres(y);
  each.z = metres(14.0);
  return each;
}

hang::Vec2 plain(const catalogue::Position& position) {
  return {inMetres(position.x), inMetres(position.z)};
}

hang::Hang hangOf(const Room& room) {
  const catalogue::BarType& bar = room.snapshot.catalogue.bars[0];
  hang::SidePair pair;
  pair.pickSpacing = 1.0;
  pair.headMass = inKilograms(*bar.headMass);
  pair.headCg = plain(*bar.headCentreOfGravity);
  pair.tiltAxis = plain(*bar.tiltAxis);
  pair.tiltTravelDeg = {-20, 20};
  pair.panTravelDeg = {-20, 20};
  hang::Hang hang;
  hang.bar.picks = pair;
  hang.bar.frameMass = inKilograms(*bar.frameMass);
  hang.bar.frameCg = plain(*bar.frameCentreOfGravity);
  hang.bar.stackPin = plain(*bar.stackPin);
  for (const catalogue::CabinetType& type : room.snapshot.catalogue.cabinets) {
    hang::Element element;
    element.name = type.name.toStdString();
    element.mass = inKilograms(*type.mass);
    element.cg = plain(*type.centreOfGravity);
    element.nextPin = plain(*type.nextPin);
    for (const catalogue::Position& corner : type.outline) {
      element.outline.push_back(plain(corner));
    }
    element.joint = hang::Pinned{0.0, {plain((*type.pins)[0]), plain((*type.pins)[1])}};
    hang.stack.push_back(element);
  }
  hang.set.tiltDeg = room.tiltDeg;
  hang.set.panDeg = room.panDeg;
  return hang;
}

} // namespace

catalogue::Position at(double x, double z) {
  return {metres(x), metres(z)};
}

fleet::Unit unitOf(const QString& serial, UnitKind kind, const QString& type) {
  fleet::Unit unit;
  unit.serial = serial;
  unit.kind = kind;
  unit.type = type;
  return unit;
}

Room::Room() {
  auto& catalogue = snapshot.catalogue;
  catalogue.cabinets = {cabinet("Marram bass", 0.6, 92), cabinet("Marram upper", 0.5, 64)};
  full().coversAudience = true;
  full().coverLowest = degrees(-30);
  full().coverHighest = degrees(5);
  full().throwDistance = metres(60);
  catalogue.bars = {barType()};
  catalogue::HoistType hoistType;
  hoistType.name = QStringLiteral("Saltmarsh hoist");
  hoistType.closedLength = metres(0.7);
  hoistType.chainLength = metres(18);
  catalogue.hoists = {hoistType};
  catalogue::HardwareType shackle;
  shackle.name = QStringLiteral("shackle");
  shackle.length = metres(0.1);
  catalogue.hardware = {shackle};
  catalogue::CartType bassCart;
  bassCart.name = QStringLiteral("bass cart");
  bassCart.carries = QStringLiteral("Marram bass");
  bassCart.most = 2;
  catalogue::CartType upperCart = bassCart;
  upperCart.name = QStringLiteral("upper cart");
  upperCart.carries = QStringLiteral("Marram upper");
  catalogue.carts = {bassCart, upperCart};

  venue().name = QStringLiteral("Tide Hall");
  venue().points = {point("L1", 0.5), point("L2", -0.5)};
  venue().outdoors = false;
  venue().lowSteel = metres(13.5);
  venue::Section floor;
  floor.name = QStringLiteral("floor");
  floor.profile = {{metres(8), metres(0)}, {metres(30), metres(0)}, {metres(40), metres(3)}};
  floor.earHeight = metres(1.2);
  venue().sections = {floor};

  snapshot.show.tour = QStringLiteral("Lanternfish Parade");
  snapshot.show.name = QStringLiteral("Harbour night");
  snapshot.show.awayFrom = QDate(2027, 4, 1);
  snapshot.show.awayTo = QDate(2027, 4, 9);
  snapshot.show.temperature = 20.0;
  snapshot.show.humidity = 70.0;
  calendar::Hang left;
  left.name = QStringLiteral("left");
  left.rigging = {QStringLiteral("shackle"), QStringLiteral("shackle")};
  calendar::Hang right = left;
  right.name = QStringLiteral("right");
  right.mirrors = QStringLiteral("left");
  snapshot.show.hangs = {left, right};

  int serial = 0;
  const auto own = [&](UnitKind kind, const QString& type, int number) {
    for (int i = 0; i < number; ++i) {
      snapshot.units.push_back(
          unitOf(QStringLiteral("S%1").arg(++serial, 3, 10, QLatin1Char('0')), kind, type));
    }
  };
  own(UnitKind::cabinet, bass().name, 4);
  own(UnitKind::cabinet, full().name, 4);
  own(UnitKind::bar, bar().name, 3);
  own(UnitKind::hoist, hoist().name, 6);
  own(UnitKind::cart, QStringLiteral("bass cart"), 2);
  own(UnitKind::cart, QStringLiteral("upper cart"), 2);
  for (const UnitKind kind : {UnitKind::cabinet, UnitKind::bar, UnitKind::hoist}) {
    fleet::ExaminationRule rule;
    rule.name = QStringLiteral("yearly ") + options::wordFor(kind);
    rule.kind = kind;
    rule.months = 12;
    snapshot.examinationRules.push_back(rule);
    for (const fleet::Unit& unit : snapshot.units) {
      if (unit.kind == kind) {
        fleet::Examination done;
        done.id = QUuid::createUuid();
        done.serial = unit.serial;
        done.rule = rule.name;
        done.date = QDate(2026, 10, 1);
        snapshot.examinations.push_back(done);
      }
    }
  }
  refresh();
}

void Room::houseSays(const char* figure, double value) {
  snapshot.show.house.push_back({QString::fromUtf8(figure),
                                 value,
                                 {},
                                 QStringLiteral("test"),
                                 QStringLiteral("Edda"),
                                 QDate(2027, 3, 1)});
}

void Room::refresh() {
  house = std::make_unique<options::House>(snapshot.tour.house, venue().house, snapshot.show.house);
  option = {};
  option.snapshot = &snapshot;
  option.house = house.get();
  option.hang = &hang();
  option.bar = &bar();
  option.hoist = &hoist();
  option.cabinets = {&bass(), &full()};
  option.points = {&venue().points[0], &venue().points[1]};
  option.key.hang = hang().name;
  option.key.stack = {bass().name, full().name};
  option.key.bar = bar().name;
  option.key.hoist = hoist().name;
  option.key.points = {venue().points[0].name, venue().points[1].name};
  option.room = options::roomLimits(option);
  option.gear = options::gearNeeds(option);
  settled = {};
  settled.setting.tiltDeg = tiltDeg;
  settled.setting.panDeg = panDeg;
  input = hangOf(*this);
  settled.statics = hang::solve(input);
  settled.layout = hang::layOut(input, settled.statics);
}

options::Use Room::use(const options::Rule& rule, double trimM) const {
  return rule.evaluate(option, &settled, trimM);
}

options::Finding Room::finding(const options::Rule& rule, double trimM) const {
  return rule.explain(option, &settled, trimM, use(rule, trimM));
}

} // namespace hangbook::testing
