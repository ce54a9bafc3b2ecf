// SPDX-License-Identifier: GPL-3.0-or-later
// What units and structure give an option, by figures put in by hand: hired, examined, over by how much.
#include <boost/test/unit_test.hpp>

#include <string>
#include <vector>

#include "options/easing_lever.h"
#include "print.h"
#include "room_fixture.h"

using namespace hangbook;
using namespace hangbook::options;
using fleet::UnitKind;
using hangbook::testing::unitOf;

namespace {

constexpr auto each = boost::test_tools::per_element();

/// Two bass and an upper on a chain; the bass rides on a cart that the house knows, the small one's does not
/// count. Cabinets and hoists are examined yearly, bars by nobody. Away from 1 to 3 April 2027.
Trial threeOnAChain() {
  Trial trial;
  trial.key.stack = {QStringLiteral("bass"), QStringLiteral("bass"), QStringLiteral("upper")};
  trial.key.bar = QStringLiteral("bar");
  trial.key.hoist = QStringLiteral("hoist");
  trial.key.table = QStringLiteral("Marram");
  Snapshot& snapshot = trial.snapshot;
  catalogue::StackingTable table;
  table.name = trial.key.table;
  table.chain = QStringLiteral("chain");
  snapshot.catalogue.tables = {table};
  catalogue::CartType cart;
  cart.name = QStringLiteral("bass cart");
  cart.carries = QStringLiteral("bass");
  catalogue::CartType other;
  other.name = QStringLiteral("small cart");
  other.carries = QStringLiteral("small");
  snapshot.catalogue.carts = {other, cart};
  for (const UnitKind kind : {UnitKind::cabinet, UnitKind::hoist}) {
    fleet::ExaminationRule rule;
    rule.name = kind == UnitKind::hoist ? QStringLiteral("yearly hoist") : QStringLiteral("yearly cabinet");
    rule.kind = kind;
    rule.months = 12;
    snapshot.examinationRules.push_back(rule);
  }
  snapshot.today = QDate(2027, 3, 20);
  snapshot.show.awayFrom = QDate(2027, 4, 1);
  snapshot.show.awayTo = QDate(2027, 4, 3);
  return trial;
}

/// A unit whose one examination was a year before this day; none: it never had one.
void addUnit(Trial& trial, const char* serial, UnitKind kind, const char* type, QDate until) {
  trial.snapshot.units.push_back(unitOf(QString::fromLatin1(serial), kind, QString::fromLatin1(type)));
  if (until.isValid()) {
    fleet::Examination done;
    done.serial = QString::fromLatin1(serial);
    done.rule = kind == UnitKind::hoist ? QStringLiteral("yearly hoist") : QStringLiteral("yearly cabinet");
    done.date = until.addYears(-1);
    trial.snapshot.examinations.push_back(done);
  }
}

std::vector<Lever> gearOf(const Trial& trial) {
  std::vector<Lever> levers;
  addGearLevers(trial, levers);
  return levers;
}

std::vector<std::string> figuresOf(const Change& change) {
  std::vector<std::string> words;
  for (const ChangedFigure& figure : change.figures) {
    words.push_back(QStringLiteral("%1: %2 to %3 in %4")
                        .arg(figure.what)
                        .arg(figure.from.value())
                        .arg(figure.to.value())
                        .arg(figure.steps)
                        .toStdString());
  }
  return words;
}

} // namespace

BOOST_AUTO_TEST_SUITE(easing_gear)

/// Each type once: two cabinets, bar, hoist, chain and the bass's cart.
BOOST_AUTO_TEST_CASE(what_can_be_hired_in) {
  const Trial trial = threeOnAChain();
  const auto levers = gearOf(trial);
  BOOST_REQUIRE(levers.size() == 1U); // there is no unit that could be examined
  const Lever& hire = levers.front();
  BOOST_TEST(hire.kind.toStdString() == "hire");
  BOOST_TEST(hire.unit.toStdString() == "units");
  BOOST_TEST(hire.step == 1.0);
  BOOST_TEST(hire.most == Steps(6, 100), each);
  const Steps steps{0, 1, 0, 2, 1, 0};
  const Change change = hire.change(steps);
  BOOST_TEST(change.words.toStdString() ==
             "Hire in 1 of upper, 2 of hoist, 1 of chain, with examinations that stand until 2027-04-03");
  BOOST_TEST(figuresOf(change) ==
                 (std::vector<std::string>{"upper: 0 to 1 in 1", "hoist: 0 to 2 in 2", "chain: 0 to 1 in 1"}),
             each);
  BOOST_TEST(change.step == 1.0);
  Trial then = trial;
  hire.apply(then, steps);
  std::vector<std::string> serials;
  for (const fleet::Unit& unit : then.snapshot.units) {
    serials.push_back(unit.serial.toStdString());
    BOOST_TEST(unit.owner.toStdString() == "hired in");
  }
  BOOST_TEST(serials == (std::vector<std::string>{"hired upper 1", "hired hoist 1", "hired hoist 2",
                                                  "hired chain 1"}),
             each);
  BOOST_TEST((then.snapshot.units[0].kind == UnitKind::cabinet));
  BOOST_TEST((then.snapshot.units[2].kind == UnitKind::hoist));
  BOOST_TEST(then.snapshot.units[3].type.toStdString() == "chain");
  std::vector<std::string> passes; // no rule is for the chain
  for (const fleet::Examination& pass : then.snapshot.examinations) {
    passes.push_back((pass.serial + QStringLiteral(", ") + pass.rule).toStdString());
    BOOST_TEST((pass.date == QDate(2027, 4, 1)));
  }
  BOOST_TEST(passes ==
                 (std::vector<std::string>{"hired upper 1, yearly cabinet", "hired hoist 1, yearly hoist",
                                           "hired hoist 2, yearly hoist"}),
             each);
}

/// Without a chain and carts there are four types; without days away the examination is of today.
BOOST_AUTO_TEST_CASE(what_is_not_there_is_not_hired) {
  Trial trial = threeOnAChain();
  trial.snapshot.catalogue.tables[0].chain.clear();
  trial.snapshot.catalogue.carts.clear();
  trial.snapshot.show.awayFrom = trial.snapshot.show.awayTo = QDate();
  const auto levers = gearOf(trial);
  BOOST_REQUIRE(levers.size() == 1U);
  BOOST_TEST(levers[0].most.size() == 4U);
  BOOST_TEST(levers[0].change({1, 0, 0, 0}).words.toStdString() ==
             "Hire in 1 of bass, with examinations that stand until the last day away");
  levers[0].apply(trial, {1, 0, 0, 0});
  BOOST_REQUIRE(trial.snapshot.examinations.size() == 1U);
  BOOST_TEST((trial.snapshot.examinations[0].date == trial.snapshot.today));
  trial.snapshot.catalogue.tables.clear();
  BOOST_TEST(gearOf(trial)[0].most.size() == 4U);
}

/// Of each type those that do not stand on the last day away, by serial; what no rule is for stays out.
BOOST_AUTO_TEST_CASE(what_can_be_examined) {
  Trial trial = threeOnAChain();
  const QDate last = trial.snapshot.show.awayTo;
  addUnit(trial, "B3", UnitKind::cabinet, "bass", last.addDays(-1));
  addUnit(trial, "B2", UnitKind::cabinet, "bass", last);
  addUnit(trial, "B1", UnitKind::cabinet, "bass", QDate());
  addUnit(trial, "S1", UnitKind::cabinet, "small", QDate());
  addUnit(trial, "X1", UnitKind::bar, "bass", QDate()); // of another kind
  addUnit(trial, "R1", UnitKind::bar, "bar", QDate());
  addUnit(trial, "H1", UnitKind::hoist, "hoist", last.addDays(-40));
  const auto levers = gearOf(trial);
  BOOST_REQUIRE(levers.size() == 2U);
  const Lever& examined = levers[1];
  BOOST_TEST(examined.kind.toStdString() == "examination");
  BOOST_TEST(examined.unit.toStdString() == "units");
  BOOST_TEST(examined.most == (Steps{2, 1}), each); // B1 and B3, H1
  BOOST_TEST(examined.change({2, 1}).words.toStdString() ==
             "Examination of 2 of bass, 1 of hoist brought forward to no later than 2027-04-01 (such as B1, "
             "B3, H1)");
  BOOST_TEST(figuresOf(examined.change({1, 0})) == std::vector<std::string>{"bass: 0 to 1 in 1"}, each);
  BOOST_TEST(examined.change({1, 0}).words.endsWith(QStringLiteral("(such as B1)")));
  Trial then = trial;
  examined.apply(then, {1, 1});
  const auto before = trial.snapshot.examinations.size();
  BOOST_REQUIRE(then.snapshot.examinations.size() == before + 2U);
  BOOST_TEST(then.snapshot.examinations[before].serial.toStdString() == "B1");
  BOOST_TEST((then.snapshot.examinations[before].date == QDate(2027, 4, 1)));
  BOOST_TEST(then.snapshot.examinations[before + 1].serial.toStdString() == "H1");
  trial.snapshot.show.awayFrom = QDate();
  BOOST_TEST(gearOf(trial)[1].change({1, 0}).words.toStdString() ==
             "Examination of 1 of bass brought forward (such as B1)");
  trial.snapshot.show.awayTo = QDate(); // nothing says until when
  BOOST_TEST(gearOf(trial).size() == 1U);
}

/// Points straight and through a bridle, each once, then what they share; of what has no capacity nothing is
/// told.
BOOST_AUTO_TEST_CASE(by_how_much_structure_is_over) {
  Trial trial;
  trial.key.points = {QStringLiteral("P1"), QStringLiteral("V")};
  venue::Venue& venue = trial.snapshot.venue;
  for (const char* name : {"P0", "P1", "P2", "P3"}) {
    venue::Point& point = venue.points.emplace_back();
    point.name = QString::fromLatin1(name);
    point.capacity = kilonewtons(10);
    point.zone = QStringLiteral("T1");
  }
  venue.points[3].capacity.reset();
  venue.points[3].zone = QStringLiteral("T2");
  venue::Bridle& bridle = venue.bridles.emplace_back();
  bridle.name = QStringLiteral("V");
  bridle.points = {QStringLiteral("P1"), QStringLiteral("P2"), QStringLiteral("P3")};
  for (const char* name : {"T0", "T1", "T2"}) {
    venue::Zone& zone = venue.zones.emplace_back();
    zone.name = QString::fromLatin1(name);
    zone.capacity = kilonewtons(25);
  }
  venue.zones[2].capacity.reset();
  std::vector<Lever> levers;
  addStructureLevers(trial, levers);
  BOOST_REQUIRE(levers.size() == 1U);
  const Lever& structure = levers.front();
  BOOST_TEST(structure.kind.toStdString() == "structure");
  BOOST_TEST(structure.unit.toStdString() == "kN");
  BOOST_TEST(structure.step == 0.01);
  BOOST_TEST(structure.most == Steps(3, 10000), each); // P1, P2, T1
  const Steps steps{0, 1, 120};
  const Change change = structure.change(steps);
  BOOST_TEST(change.words.toStdString() ==
             "Over: point P2 by 0.01 kN, T1 by 1.20 kN: another point, a lighter "
             "stack, or the engineer's written figure");
  BOOST_TEST(figuresOf(change) ==
                 (std::vector<std::string>{"point P2: 10 to 10.01 in 1", "T1: 25 to 26.2 in 120"}),
             each);
  BOOST_TEST(change.step == 0.01);
  Trial then = trial;
  structure.apply(then, steps);
  const auto close = boost::test_tools::tolerance(1e-12);
  const venue::Venue& now = then.snapshot.venue;
  BOOST_TEST(inKilonewtons(*now.points[0].capacity) == 10.0, close);
  BOOST_TEST(inKilonewtons(*now.points[1].capacity) == 10.0, close);
  BOOST_TEST(inKilonewtons(*now.points[2].capacity) == 10.01, close);
  BOOST_TEST(inKilonewtons(*now.zones[0].capacity) == 25.0, close);
  BOOST_TEST(inKilonewtons(*now.zones[1].capacity) == 26.2, close);
  trial.key.points.clear();
  levers.clear();
  addStructureLevers(trial, levers);
  BOOST_TEST(levers.empty());
}

BOOST_AUTO_TEST_SUITE_END()
