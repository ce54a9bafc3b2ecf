// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/sample_records.h"

#include <QCryptographicHash>

namespace hangbook::testing {

namespace {

using namespace catalogue;

template <class Type>
Type record(const QString& name) {
  Type type;
  type.name = name;
  type.source = {QStringLiteral("Saltmarsh leaflet 4, page 2"), QDate(2026, 2, 28)};
  type.typed = {{QStringLiteral("mass_kg"), QStringLiteral("203 lb 7 oz")}};
  return type;
}

Position at(double x, double z) {
  return {metres(x), metres(z)};
}

venue::HouseFigure houseFigure(const char* figure) {
  return {QString::fromLatin1(figure), 0.1 + 0.2,        QStringLiteral("m"), QStringLiteral("rigger's wish"),
          QStringLiteral("Ada Fenn"),  QDate(2027, 1, 2)};
}

} // namespace

CabinetType sampleCabinet(const QString& name) {
  auto type = record<CabinetType>(name);
  type.maker = QStringLiteral("Saltmarsh");
  type.family = QStringLiteral("Marram");
  type.mass = kilograms(92.1);
  type.centreOfGravity = at(-0.36, -1.0 / 3);
  type.nextPin = at(0, -0.62);
  type.outline = {at(0.03, 0.01), at(0.03, -0.61), at(-0.77, -0.61), at(-0.77, 0.1 + 0.2)};
  type.width = metres(1.1);
  type.chainEye = at(-0.74, -0.56);
  type.rearContact = at(-0.7, 0);
  type.pins = {at(0, -0.03), at(-0.08, -0.03)};
  type.coversAudience = true;
  type.downfill = true;
  type.coverLowest = degrees(-12.5);
  type.coverHighest = degrees(7.3);
  type.throwDistance = metres(104.7);
  type.coverAcross = degrees(77.7);
  type.levelAtOneMetre = 136.4;
  type.faceArea = 0.71;
  type.forceCoefficient = 1.3;
  return type;
}

BarType sampleBar(const QString& name) {
  auto type = record<BarType>(name);
  type.maker = QStringLiteral("Saltmarsh");
  type.headMass = kilograms(36);
  type.headCentreOfGravity = at(0, -0.1);
  type.tiltAxis = at(0, -0.3);
  type.tiltTravel = {degrees(-20.1), degrees(20.2)};
  type.panTravel = {degrees(-15), degrees(15)};
  type.swingLimit = degrees(4.4);
  type.tiltStep = degrees(0.5);
  type.frameMass = kilograms(58);
  type.frameCentreOfGravity = at(-0.08, -0.12);
  type.stackPin = at(0.32, -0.22);
  type.chainAnchor = at(-0.55, -0.1);
  type.datum = at(0.1, 0.05);
  type.outline = {at(0.4, 0), at(-0.6, 0), at(-0.6, -0.2)};
  type.width = metres(1.2);
  type.hoistOffsetLimit = metres(0.05);
  PickArrangement pair;
  pair.spacing = metres(1.0);
  pair.limit = newtons(12345.6);
  pair.limitIncludesFactors = true;
  pair.mostCabinets = 7;
  PickArrangement foreAft;
  foreAft.picks = Picks::foreAftPair;
  foreAft.front = at(0.3, 0.1);
  foreAft.rear = at(-0.5, 0.1);
  PickArrangement single;
  single.picks = Picks::single;
  single.only = at(0.05, 0.1);
  type.arrangements = {pair, foreAft, single};
  return type;
}

HoistType sampleHoist() {
  auto type = record<HoistType>(QStringLiteral("Curlew one"));
  type.maker = QStringLiteral("Saltmarsh");
  type.limit = newtons(9806.65);
  type.bodyMass = kilograms(51.3);
  type.bodyClimbs = false;
  type.chainMass = kilogramsPerMetre(1.1);
  type.chainBagMass = kilograms(0);
  type.chainLength = metres(24);
  type.closedLength = metres(0.47);
  type.speed = metresPerSecond(4.0 / 60);
  type.hoistingClass = HoistingClass::hc3;
  type.holdsWithoutSecondary = true;
  return type;
}

ChainType sampleChain() {
  auto type = record<ChainType>(QStringLiteral("Sedge chain"));
  type.maker = QStringLiteral("Saltmarsh");
  type.pitch = metres(0.0225);
  type.fixedLength = metres(0.08);
  type.links = 60;
  type.limit = newtons(15000);
  type.limitIncludesFactors = true;
  type.mass = kilogramsPerMetre(0.9);
  type.discardStretchPercent = 5.1;
  return type;
}

HardwareType sampleHardware(const QString& name, HardwareKind kind) {
  auto type = record<HardwareType>(name);
  type.kind = kind;
  type.limit = newtons(20000);
  type.mass = kilograms(0.7);
  type.length = metres(0.09);
  type.stiffness = newtons(6.4e6);
  type.designFactor = 5.3;
  return type;
}

CartType sampleCart(const QString& carries) {
  auto type = record<CartType>(QStringLiteral("Marram cart"));
  type.carries = carries;
  type.most = 2;
  type.mass = kilograms(38.5);
  type.length = metres(1.3);
  type.width = metres(0.9);
  type.height = metres(1.7);
  return type;
}

StackingTable sampleTable() {
  auto table = record<StackingTable>(QStringLiteral("Marram long"));
  table.maker = QStringLiteral("Saltmarsh");
  table.bars = {QStringLiteral("Heron bar")};
  table.chain = QStringLiteral("Sedge chain");
  Join first;
  first.below = QStringLiteral("Marram bass");
  first.angles = {degrees(-2.5), degrees(0), degrees(1.0 / 3)};
  first.pinLimit = newtons(8000);
  first.sideShare = 0.6;
  first.limitIncludesFactors = true;
  Join second;
  second.above = QStringLiteral("Marram bass");
  second.below = QStringLiteral("Marram downfill");
  second.kind = JointKind::pivot;
  second.travel = {degrees(-30), degrees(0)};
  Join third;
  third.above = QStringLiteral("Marram bass");
  third.below = QStringLiteral("Marram bass");
  third.kind = JointKind::seated;
  third.contactLimit = newtons(4000);
  third.opensTo = degrees(3);
  third.stopLimit = newtons(2500);
  table.joins = {first, second, third};
  table.counts = {{QStringLiteral("Marram bass"), 2, 5}, {QStringLiteral("Marram downfill"), 0, 1}};
  table.lowest = {QStringLiteral("Marram downfill"), QStringLiteral("Marram bass")};
  table.held = {QStringLiteral("Marram downfill")};
  return table;
}

venue::Venue sampleVenue(const QString& name) {
  auto hall = record<venue::Venue>(name);
  hall.town = QStringLiteral("Skerrymouth");
  hall.timeZone = QStringLiteral("Europe/Oslo");
  hall.latitude = 59.1;
  hall.longitude = -10.7;
  hall.datum = QStringLiteral("stage edge, ‘floor’");
  hall.outdoors = true;
  hall.lowSteel = metres(11.4);
  hall.leastTrim = metres(3.2);
  hall.mostTrim = metres(9.9);
  hall.access = QStringLiteral("dock 2");
  venue::Point free;
  free.name = QStringLiteral("B1");
  free.x = metres(-0.3);
  free.y = metres(6.1);
  free.z = metres(11.9);
  venue::Point held = free;
  held.name = QStringLiteral("A1");
  held.y = metres(7.1);
  held.capacity = newtons(10000);
  held.basis = Basis::dynamic;
  held.zone = QStringLiteral("truss 1");
  held.source = {QStringLiteral("venue's sheet, revision C"), QDate(2026, 11, 5)};
  hall.points = {free, held};
  venue::Bridle bridle;
  bridle.name = QStringLiteral("A+B");
  bridle.points = {QStringLiteral("A1"), QStringLiteral("B1")};
  bridle.x = metres(-0.3);
  bridle.y = metres(6.7);
  bridle.z = metres(10.1);
  bridle.steels = {QStringLiteral("steel 1 m"), QStringLiteral("steel 2 m")};
  bridle.shackle = QStringLiteral("shackle 16");
  bridle.tolerance = metres(0.07);
  bridle.source = {QStringLiteral("house rigger"), QDate(2026, 11, 6)};
  hall.bridles = {bridle};
  venue::Zone zone;
  zone.name = QStringLiteral("truss 1");
  zone.capacity = newtons(30000);
  zone.basis = Basis::atRest;
  zone.othersLoad = newtons(0);
  zone.othersBy = QStringLiteral("Ada Fenn");
  zone.othersOn = QDate(2027, 1, 3);
  hall.zones = {zone};
  hall.obstructions = {{QStringLiteral("screen"), metres(1), metres(2), metres(-3), metres(3), metres(6.6)}};
  venue::Section section;
  section.name = QStringLiteral("stalls");
  section.profile = {{metres(4), metres(0)}, {metres(30.3), metres(1.0 / 3)}};
  section.earHeight = metres(1.2);
  section.yFrom = metres(-9);
  section.yTo = metres(9);
  venue::Section balcony;
  balcony.name = QStringLiteral("balcony");
  balcony.profile = {{metres(0), metres(4.4)}, {metres(7.7), metres(6.1)}};
  balcony.frontX = metres(21.3);
  balcony.frontY = metres(-0.7);
  balcony.bearing = degrees(1.0 / 3);
  balcony.width = metres(18.8);
  balcony.radius = metres(23.1);
  hall.sections = {section, balcony};
  hall.house = {houseFigure("least-share")};
  return hall;
}

calendar::Tour sampleTour() {
  auto tour = record<calendar::Tour>(QStringLiteral("Parade"));
  tour.act = QStringLiteral("the Lanternfish Parade");
  tour.house = {houseFigure("dynamic-factor"), houseFigure("least-share")};
  return tour;
}

calendar::Show sampleShow(const QString& name, const QString& venue) {
  auto show = record<calendar::Show>(name);
  show.tour = QStringLiteral("Parade");
  show.venue = venue;
  show.from = QDate(2027, 4, 2);
  show.to = QDate(2027, 4, 3);
  show.loadIn = QDateTime(QDate(2027, 4, 2), QTime(6, 30), Qt::UTC);
  show.loadOut = QDateTime(QDate(2027, 4, 3), QTime(22, 15), Qt::UTC);
  show.awayFrom = QDate(2027, 4, 1);
  show.awayTo = QDate(2027, 4, 5);
  show.peopleBeneath = false;
  show.temperature = 21.7;
  show.humidity = 44.4;
  show.pressure = 98.7;
  show.wind = metresPerSecond(7.7);
  show.windBasis = calendar::WindBasis::gust;
  show.windAveraging = 3.0;
  show.windHeight = metres(11.5);
  calendar::Hang left;
  left.name = QStringLiteral("left");
  left.points = {QStringLiteral("B1"), QStringLiteral("A1"), QStringLiteral("A+B")};
  left.secondarySlack = metres(0.03);
  left.pan = degrees(-5.5);
  left.sections = {QStringLiteral("stalls")};
  left.tables = {QStringLiteral("Marram long")};
  left.leastTrim = metres(3.7);
  left.cableMass = kilograms(12.2);
  left.wetMass = kilograms(21.3);
  left.rigging = {QStringLiteral("shackle 12"), QStringLiteral("shackle 12"), QStringLiteral("sling 2")};
  left.secondary = {QStringLiteral("sling 2")};
  calendar::Hang right;
  right.name = QStringLiteral("right");
  right.mirrors = QStringLiteral("left");
  show.hangs = {left, right};
  show.house = {houseFigure("pick-share")};
  return show;
}

fleet::Unit sampleUnit(const QString& serial) {
  fleet::Unit unit;
  unit.serial = serial;
  unit.source = {QStringLiteral("delivery note"), QDate(2025, 5, 5)};
  unit.typed = {{QStringLiteral("weighed_kg"), QStringLiteral("204 lb")}};
  unit.type = QStringLiteral("Marram bass");
  unit.owner = QStringLiteral("a friend");
  unit.hiredUntil = QDate(2027, 5, 1);
  unit.place = QStringLiteral("warehouse bay 3");
  unit.weighed = kilograms(92.6);
  return unit;
}

fleet::ExaminationRule sampleRule() {
  auto rule = record<fleet::ExaminationRule>(QStringLiteral("yearly look"));
  rule.kind = fleet::UnitKind::cabinet;
  rule.type = QStringLiteral("Marram bass");
  rule.months = 12;
  return rule;
}

marks::MarkUsed sampleMark() {
  marks::MarkUsed mark;
  mark.stack = {QStringLiteral("Marram bass"), QStringLiteral("Marram downfill")};
  mark.bar = QStringLiteral("Heron bar");
  mark.chain = QStringLiteral("Sedge chain");
  mark.chainSerial = QStringLiteral("SC-1");
  mark.tilt = degrees(-3.1);
  mark.holes = {degrees(-3.0)};
  mark.mark = 37;
  mark.measured = degrees(-12.3);
  mark.tour = QStringLiteral("Parade");
  mark.show = QStringLiteral("Skerrymouth");
  mark.hang = QStringLiteral("left");
  mark.place = QStringLiteral("Gannet Hall, Skerrymouth");
  mark.weather = QStringLiteral("dry");
  mark.date = QDate(2027, 4, 2);
  mark.by = QStringLiteral("Ada Fenn");
  return mark;
}

marks::GateSigned sampleGate(const QString& gate) {
  marks::GateSigned made;
  made.tour = QStringLiteral("Parade");
  made.show = QStringLiteral("Skerrymouth");
  made.hang = QStringLiteral("left");
  made.option = QStringLiteral("0123456789abcdef");
  made.gate = gate;
  made.by = QStringLiteral("Ada Fenn");
  return made;
}

options::Choice sampleChoice(const QString& show) {
  options::Choice choice;
  choice.tour = QStringLiteral("Parade");
  choice.show = show;
  choice.hang = QStringLiteral("left");
  choice.option = QStringLiteral("0123456789abcdef");
  choice.key.hang = choice.hang;
  choice.key.stack = {QStringLiteral("Marram bass"), QStringLiteral("Marram downfill")};
  choice.key.table = QStringLiteral("Marram long");
  choice.key.bar = QStringLiteral("Heron bar");
  choice.key.hoist = QStringLiteral("Curlew one");
  choice.key.points = {QStringLiteral("B1"), QStringLiteral("A1")};
  choice.verdict = options::Verdict::tight;
  choice.by = QStringLiteral("Ada Fenn");
  options::PointResult load;
  load.point = QStringLiteral("B1");
  load.staticKn = 3.1;
  load.dynamicKn = 3.9;
  load.parts = {{QStringLiteral("pick"), 3.0}, {QStringLiteral("chain"), 0.1}};
  choice.points = {load, load};
  choice.points[1].point = QStringLiteral("A1");
  choice.points[1].capacityKn = 10.1;
  choice.setting = {-3.5, 2.5, 4.0 + 1.0 / 3, 37, {0.5, -1.5}};
  choice.frozen = "{\"format\":\"hangbook.frozen/1\",\"words\":\"Käfig\"}";
  choice.sha256 =
      QString::fromLatin1(QCryptographicHash::hash(choice.frozen, QCryptographicHash::Sha256).toHex());
  choice.program = QStringLiteral("0.1.0");
  return choice;
}

} // namespace hangbook::testing
