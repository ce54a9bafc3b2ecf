// SPDX-License-Identifier: GPL-3.0-or-later
// Export, then import into nothing: the same data to the bit.
#include <boost/test/unit_test.hpp>

#include <random>

#include "demo_data.h"

using namespace hangbook;
using namespace hangbook::exchange;

namespace {

Data throughFiles(const Data& data) {
  Data sofar;
  for (const Kind kind : allKinds()) {
    const QByteArray file = writeFile(kind, data);
    Import import = readFile(kind, file, sofar, {QStringLiteral("somebody else"), somebody().now.addDays(9)});
    BOOST_TEST_REQUIRE(import.faults.empty(), wordFor(kind).toStdString() << "\n"
                                                                          << faultsOf(import).toStdString());
    sofar = std::move(import.after);
  }
  return sofar;
}

/// Draws figures with every digit that a double has, now and then none.
class Draw {
public:
  explicit Draw(unsigned seed) : source_(seed) {}
  double figure(double low, double high) {
    return std::uniform_real_distribution<double>(low, high)(source_);
  }
  int whole(int low, int high) { return std::uniform_int_distribution<int>(low, high)(source_); }
  bool chance(double odds = 0.8) { return std::bernoulli_distribution(odds)(source_); }
  QString words() {
    static const QStringList parts = {"Grüße", "a,b", "say \"so\"", "two\nlines",
                                      "plain", "x'y", "ô 5 t",      "-"};
    return parts[whole(0, static_cast<int>(parts.size()) - 1)];
  }
  QDate day() { return QDate(2020, 1, 1).addDays(whole(0, 2500)); }
  template <class Quantity>
  std::optional<Quantity> maybe(double low, double high) {
    return chance() ? std::optional(Quantity::from_value(figure(low, high))) : std::nullopt;
  }
  std::optional<catalogue::Position> place() {
    return chance() ? std::optional(catalogue::Position{metres(figure(-2, 2)), metres(figure(-2, 2))})
                    : std::nullopt;
  }

private:
  std::mt19937 source_;
};

catalogue::CabinetType cabinet(Draw& draw, const QString& name) {
  catalogue::CabinetType type;
  type.name = name;
  type.maker = draw.words();
  type.family = draw.words();
  type.mass = draw.maybe<Mass>(1, 200);
  type.centreOfGravity = draw.place();
  type.nextPin = draw.place();
  for (int corner = draw.whole(0, 6); corner > 0; --corner) {
    type.outline.push_back({metres(draw.figure(-1, 1)), metres(draw.figure(-1, 1))});
  }
  type.width = draw.maybe<Length>(0.1, 2);
  type.chainEye = draw.place();
  type.rearContact = draw.place();
  if (type.chainEye && type.rearContact) {
    type.pins = {*type.chainEye, *type.rearContact};
  }
  type.coversAudience = draw.chance();
  type.downfill = draw.chance();
  type.coverLowest = draw.maybe<Angle>(-90, 0);
  type.coverHighest = draw.maybe<Angle>(0, 90);
  type.coverAcross = draw.maybe<Angle>(1, 180);
  type.levelAtOneMetre = draw.figure(100, 150);
  type.source = {draw.words(), draw.day()};
  return type;
}

/// A stacking table with joins of each kind, over the types and the bar that are there.
void addTable(Draw& draw, catalogue::Catalogue& into) {
  catalogue::BarType bar;
  bar.name = QStringLiteral("bar, ") + draw.words();
  bar.tiltTravel = {degrees(draw.figure(-30, 0)), degrees(draw.figure(0, 30))};
  bar.frameMass = draw.maybe<Mass>(5, 90);
  bar.stackPin = draw.place();
  bar.hoistOffsetLimit = draw.maybe<Length>(0, 1);
  for (int hole = 0; hole < 3; ++hole) { // the same way of picking up, at other holes
    catalogue::PickArrangement way;
    way.picks = catalogue::Picks::single;
    way.only = catalogue::Position{metres(draw.figure(-1, 1)), metres(0)};
    way.limit = draw.maybe<Force>(1e3, 1e5);
    way.mostCabinets = draw.whole(1, 20);
    bar.arrangements.push_back(way);
  }
  into.bars.push_back(bar);
  catalogue::StackingTable table;
  table.name = QStringLiteral("table ") + draw.words();
  table.bars = {bar.name};
  const QString type = into.cabinets.front().name;
  for (const auto kind :
       {catalogue::JointKind::seated, catalogue::JointKind::pinned, catalogue::JointKind::pivot}) {
    catalogue::Join join;
    join.above = draw.chance(0.5) ? type : QString();
    join.below = type;
    join.kind = kind;
    join.angles = {degrees(draw.figure(-9, 9)), degrees(draw.figure(-9, 9))};
    join.pinLimit = draw.maybe<Force>(1e3, 1e5);
    join.sideShare = draw.figure(0.5, 1);
    join.limitIncludesFactors = draw.chance(0.5);
    join.opensTo = draw.maybe<Angle>(0, 9);
    join.stopLimit = draw.maybe<Force>(1e3, 1e5);
    table.joins.push_back(join);
  }
  table.counts = {{type, draw.whole(0, 2), draw.whole(3, 9)}};
  table.lowest = {type};
  into.tables.push_back(table);
}

void addFleet(Draw& draw, Data& into) {
  fleet::ExaminationRule rule;
  rule.name = QStringLiteral("yearly");
  rule.kind = fleet::UnitKind::cabinet;
  rule.jurisdiction = draw.words();
  rule.months = draw.whole(1, 24);
  rule.uses = draw.chance(0.5) ? std::optional(draw.whole(1, 99)) : std::nullopt;
  rule.hours = draw.chance(0.5) ? std::optional(draw.figure(1, 99)) : std::nullopt;
  rule.idleMonths = draw.chance(0.5) ? std::optional(draw.whole(1, 24)) : std::nullopt;
  rule.afterExceptional = draw.chance(0.5);
  rule.atNewSite = draw.chance(0.5);
  into.examinationRules.push_back(rule);
  fleet::NamedPlace truck;
  truck.name = QStringLiteral("truck");
  truck.kind = static_cast<fleet::PlaceKind>(draw.whole(0, 3));
  truck.floorLength = draw.maybe<Length>(1, 14);
  truck.floorWidth = draw.maybe<Length>(1, 3);
  truck.payload = draw.maybe<Mass>(100, 20'000);
  into.places.push_back(truck);
  for (int number = 1; number <= 12; ++number) {
    fleet::Unit unit;
    unit.serial = QStringLiteral("S-%1").arg(number);
    unit.type = into.catalogue.cabinets.front().name;
    unit.owner = draw.words();
    unit.place = draw.words();
    unit.state = static_cast<fleet::UnitState>(draw.whole(0, 4));
    unit.hiredUntil = draw.chance(0.5) ? draw.day() : QDate();
    unit.cartPosition = draw.chance(0.5) ? std::optional(draw.whole(1, 4)) : std::nullopt;
    unit.weighed = draw.maybe<Mass>(1, 200);
    unit.weighedOn = draw.chance(0.5) ? draw.day() : QDate();
    unit.weighedBy = draw.words();
    unit.pieces = draw.chance(0.5) ? std::optional(draw.whole(1, 99)) : std::nullopt;
    into.units.push_back(unit);
    fleet::Examination fact;
    fact.id = QUuid::createUuid();
    fact.serial = unit.serial;
    fact.rule = QStringLiteral("yearly");
    fact.date = draw.day();
    fact.result = static_cast<fleet::ExaminationResult>(draw.whole(0, 2));
    fact.certificate = draw.words();
    fact.remark = draw.words();
    fact.by = draw.words();
    fact.recordedAt = QDateTime(draw.day(), QTime(draw.whole(0, 23), 5, 7, draw.whole(0, 999)), Qt::UTC);
    into.examinations.push_back(fact);
  }
}

venue::HouseFigure statement(Draw& draw) {
  return {QStringLiteral("least-trim"),
          draw.figure(2, 9),
          QStringLiteral("m"),
          draw.words(),
          draw.words(),
          draw.day()};
}

void addShows(Draw& draw, Data& into) {
  calendar::Tour tour;
  tour.name = QStringLiteral("tour ") + draw.words();
  tour.act = draw.words();
  tour.house = {{QStringLiteral("dynamic-factor"), draw.figure(1, 2), {}, draw.words(), {}, {}}};
  into.tours.push_back(tour);
  calendar::Show show;
  show.tour = tour.name;
  show.name = draw.words();
  show.venue = into.venues.front().name;
  show.from = draw.day();
  show.to = show.from.addDays(draw.whole(0, 3));
  show.awayFrom = show.from.addDays(-2);
  show.awayTo = show.to.addDays(2);
  show.loadIn = QDateTime(show.from, QTime(draw.whole(0, 23), draw.whole(0, 59)), Qt::UTC);
  show.peopleBeneath = draw.chance() ? std::optional(draw.chance(0.5)) : std::nullopt;
  show.temperature = draw.figure(-20, 40);
  show.pressure = draw.figure(60, 108);
  show.wind = draw.maybe<Speed>(0, 30);
  show.windAveraging = draw.figure(1, 600);
  show.windHeight = draw.maybe<Length>(0, 30);
  show.windBasis = static_cast<calendar::WindBasis>(draw.whole(0, 2));
  for (const char* name : {"left", "right"}) {
    calendar::Hang hang;
    hang.name = QString::fromLatin1(name);
    hang.mirrors = hang.name == QStringLiteral("right") ? QStringLiteral("left") : QString();
    hang.points = {QStringLiteral("P1"), QStringLiteral("P4")};
    hang.pan = degrees(draw.figure(-9, 9));
    hang.tables = {into.catalogue.tables.front().name};
    hang.leastTrim = draw.maybe<Length>(2, 9);
    hang.cableMass = draw.maybe<Mass>(0, 60);
    hang.wetMass = draw.maybe<Mass>(0, 60);
    show.hangs.push_back(hang);
  }
  show.house = {statement(draw)};
  into.shows.push_back(show);
  into.chosen.push_back({show.tour, show.name, QStringLiteral("left"), QStringLiteral("0123456789abcdef"),
                         draw.words(), draw.words(), show.loadIn});
}

} // namespace

BOOST_AUTO_TEST_SUITE(exchange_round_trip)

BOOST_AUTO_TEST_CASE(the_demo) {
  const Data& data = demoData();
  const Data again = throughFiles(data);
  BOOST_TEST((again.catalogue == data.catalogue));
  BOOST_TEST((again.people == data.people));
  BOOST_TEST((again.examinationRules == data.examinationRules));
  BOOST_TEST((again.units == data.units));
  BOOST_TEST((again.examinations == data.examinations));
  BOOST_TEST((again.venues == data.venues));
  BOOST_TEST((again.tours == data.tours));
  BOOST_TEST((again.shows == data.shows));
  BOOST_TEST((again.chosen == data.chosen));
  BOOST_TEST((again.marks == data.marks));
}

BOOST_AUTO_TEST_CASE(facts_keep_their_entries_and_corrections) {
  Data data = demoData();
  for (auto& fact : data.examinations) {
    fact.id = QUuid::createUuid();
  }
  fleet::Examination correction = data.examinations.front();
  correction.id = QUuid::createUuid();
  correction.corrects = data.examinations.front().id;
  correction.result = fleet::ExaminationResult::fail;
  data.examinations.push_back(correction);
  data.examinations.push_back(correction); // told on two machines: two entries that say the same
  data.examinations.back().id = QUuid::createUuid();
  BOOST_TEST((throughFiles(data).examinations == data.examinations));
}

BOOST_AUTO_TEST_CASE(random_figures_to_the_bit) {
  for (unsigned seed = 1; seed <= 60; ++seed) {
    Draw draw(seed);
    Data data;
    for (int number = 1; number <= 8; ++number) {
      data.catalogue.cabinets.push_back(
          cabinet(draw, QStringLiteral("type %1, of %2").arg(number).arg(seed)));
    }
    catalogue::HoistType hoist;
    hoist.name = draw.words() + QStringLiteral(" hoist");
    hoist.limit = draw.maybe<Force>(1e3, 1e5);
    hoist.chainMass = draw.maybe<LinearDensity>(0.1, 9);
    hoist.speed = draw.maybe<Speed>(0.01, 1);
    hoist.bodyClimbs = draw.chance() ? std::optional(draw.chance(0.5)) : std::nullopt;
    data.catalogue.hoists.push_back(hoist);
    addTable(draw, data.catalogue);
    venue::Venue venue;
    venue.name = draw.words() + QStringLiteral(" hall");
    venue.timeZone = QStringLiteral("Europe/Oslo");
    venue.latitude = draw.figure(-90, 90);
    venue.lowSteel = draw.maybe<Length>(3, 30);
    venue.zones.push_back({QStringLiteral("truss"), draw.maybe<Force>(0, 1e5), venue::Basis::dynamic,
                           draw.maybe<Force>(0, 1e4), draw.words(), draw.day()});
    for (int number = 1; number <= 6; ++number) {
      venue::Point point;
      point.name = QStringLiteral("P%1").arg(number);
      point.x = metres(draw.figure(-50, 50));
      point.y = metres(draw.figure(-50, 50));
      point.z = metres(draw.figure(3, 30));
      point.capacity = draw.maybe<Force>(1e3, 1e5);
      point.zone = draw.chance() ? QStringLiteral("truss") : QString();
      point.source = {draw.words(), draw.day()};
      venue.points.push_back(point);
    }
    venue::Bridle bridle;
    bridle.name = QStringLiteral("bridle");
    bridle.points = {QStringLiteral("P2"), QStringLiteral("P1")};
    bridle.z = metres(draw.figure(3, 30));
    if (draw.chance()) {
      bridle.x = metres(draw.figure(-50, 50));
      bridle.y = metres(draw.figure(-50, 50));
    }
    bridle.steels = {QStringLiteral("steel 1"), QStringLiteral("steel 2")};
    bridle.shackle = draw.words();
    bridle.tolerance = draw.maybe<Length>(0, 1);
    bridle.source = {draw.words(), draw.day()};
    venue.bridles = {bridle};
    venue.house = {statement(draw), statement(draw)};
    data.venues.push_back(venue);
    addFleet(draw, data);
    addShows(draw, data);
    const Data again = throughFiles(data);
    BOOST_TEST((again == data), "seed " << seed);
  }
}

BOOST_AUTO_TEST_SUITE_END()
