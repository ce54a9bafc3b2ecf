// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/data/monomorphic.hpp>
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include "store/choice_store.h"
#include "store/gate_store.h"
#include "store/history_store.h"
#include "store/mark_store.h"
#include "store/reading_store.h"
#include "store/records.h"
#include "store/snapshot_store.h"
#include "support/sample_house.h"

using namespace hangbook;
using namespace hangbook::store;
using namespace hangbook::testing;

namespace {

const QString unitName = QStringLiteral("MB-1");

fleet::Movement movement(const char* place, int hour) {
  fleet::Movement fact;
  fact.serial = unitName;
  fact.toPlace = QString::fromLatin1(place);
  fact.toState = fleet::UnitState::away;
  fact.reason = QStringLiteral("tour");
  fact.by = QStringLiteral("Ada Fenn");
  fact.happenedAt = QDateTime(QDate(2099, 4, 1), QTime(hour, 0), Qt::UTC);
  return fact;
}

fleet::Examination examination(const QDate& date) {
  fleet::Examination fact;
  fact.serial = unitName;
  fact.rule = QStringLiteral("yearly look");
  fact.date = date;
  fact.examiner = QStringLiteral("Ida Marsh");
  fact.certificate = QStringLiteral("C-7");
  fact.remark = QStringLiteral("paint");
  fact.by = QStringLiteral("Ada Fenn");
  return fact;
}

marks::LoadReading sampleReading(const QString& pick) {
  marks::LoadReading fact;
  fact.tour = QStringLiteral("Lanternfish Parade");
  fact.show = QStringLiteral("Skerrymouth");
  fact.hang = QStringLiteral("left");
  fact.option = QStringLiteral("0123456789abcdef");
  fact.pick = pick;
  fact.cellAt = QStringLiteral("hook");
  fact.reading = newtons(4120.25);
  fact.computed = newtons(4100.125);
  fact.instrument = QStringLiteral("cells 3 and 4");
  fact.remark = QStringLiteral("after the last raise");
  fact.by = QStringLiteral("Ada Fenn");
  return fact;
}

std::string placeNow(Store& store) {
  return loadUnit(store, unitName)->place.toStdString();
}

} // namespace

BOOST_AUTO_TEST_SUITE(facts)

BOOST_DATA_TEST_CASE(no_fact_is_ever_changed_or_deleted, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  fill(*store);
  append(*store, examination(QDate(2026, 5, 5)));
  append(*store, sampleMark());
  append(*store, sampleReading(QStringLiteral("left")));
  append(*store, sampleGate(QStringLiteral("chain")));
  append(*store, sampleChoice(QStringLiteral("Skerrymouth")));
  append(*store, Deed{{}, QStringLiteral("Ada"), {}, {}, QStringLiteral("try"), {}, {}});
  for (const char* table : {"examination", "movement", "mark_used", "load_reading", "gate_signed", "choice",
                            "frozen", "history"}) {
    const QString name = QString::fromLatin1(table);
    BOOST_TEST(store->one(QStringLiteral("SELECT count(*) AS n FROM ") + name)->integer("n") > 0);
    const QString column = name == u"frozen"    ? QStringLiteral("program")
                           : name == u"history" ? QStringLiteral("by_name")
                                                : QStringLiteral("device");
    for (const QString& sql : {QStringLiteral("UPDATE %1 SET %2 = 'x'").arg(name, column),
                               QStringLiteral("DELETE FROM %1").arg(name)}) {
      BOOST_CHECK_EXCEPTION(store->run(sql), StoreError, [](const StoreError& e) {
        return e.cause() == Cause::refused &&
               std::string(e.what()).find("a fact is never changed") != std::string::npos;
      });
    }
  }
}

BOOST_DATA_TEST_CASE(a_unit_is_where_its_last_movement_put_it, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  fill(*store);
  BOOST_TEST(loadMovements(*store, unitName).size() == 1U);
  append(*store, movement("truck 1", 8));
  append(*store, movement("Gannet Hall", 10));
  BOOST_TEST(placeNow(*store) == "Gannet Hall");
  // Recorded later, but it happened before.
  append(*store, movement("dock", 9));
  BOOST_TEST(placeNow(*store) == "Gannet Hall");
  BOOST_CHECK(loadUnit(*store, unitName)->state == fleet::UnitState::away);
  BOOST_TEST(checkStore(*store).isEmpty());
}

BOOST_DATA_TEST_CASE(a_movement_is_corrected_by_a_later_one, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  fill(*store);
  append(*store, movement("truck 1", 8));
  const fleet::Movement wrong = append(*store, movement("truck 2", 10));
  fleet::Movement right = movement("truck 3", 7);
  right.corrects = wrong.id;
  right = append(*store, right);
  BOOST_TEST(placeNow(*store) == "truck 1");       // the wrong one no longer counts, and 8 is later than 7
  BOOST_CHECK_THROW(append(*store, right), Error); // the same fact twice, and corrected already
  fleet::Movement stray = movement("truck 4", 11);
  stray.corrects = QUuid::createUuid();
  BOOST_CHECK_THROW(append(*store, stray), Error);
  const std::vector<fleet::Movement> all = loadMovements(*store, unitName);
  BOOST_TEST(all.size() == 4U);
  BOOST_CHECK(std::find(all.begin(), all.end(), right) != all.end());
}

BOOST_DATA_TEST_CASE(a_place_that_does_not_follow_from_the_facts_is_found, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  fill(*store);
  BOOST_TEST(checkStore(*store).isEmpty());
  store->run(QStringLiteral("UPDATE unit SET at_place = 'nowhere'"));
  const QStringList found = checkStore(*store);
  BOOST_REQUIRE(found.size() == 1);
  BOOST_TEST(
      found[0].toStdString() ==
      "unit MB-1 is kept at \"nowhere\", its movements say \"warehouse bay 3\", or its state or cart differ");
}

BOOST_DATA_TEST_CASE(editing_a_unit_moves_it_by_a_fact, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  fill(*store);
  fleet::Unit unit = loadUnit(*store, unitName).value();
  unit.weighed = kilograms(93);
  unit = save(*store, unit, QStringLiteral("Ada Fenn"), {});
  BOOST_TEST(loadMovements(*store, unitName).size() == 1U);
  unit.place = QStringLiteral("bay 4");
  const fleet::Unit stale = unit;
  unit = save(*store, unit, QStringLiteral("Ada Fenn"), QStringLiteral("tidied up"));
  BOOST_CHECK(loadUnit(*store, unitName).value() == unit);
  BOOST_TEST(loadMovements(*store, unitName).back().reason.toStdString() == "tidied up");
  BOOST_CHECK_THROW(save(*store, stale, QStringLiteral("Ada Fenn"), {}), StaleError);
  BOOST_TEST(checkStore(*store).isEmpty());
}

BOOST_DATA_TEST_CASE(a_cart_must_be_one_of_the_fleet, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  fill(*store);
  fleet::Movement onCart = movement("truck 1", 8);
  onCart.toCart = QStringLiteral("MC-1");
  BOOST_CHECK_THROW(append(*store, onCart), Error);
  fleet::Unit cart = sampleUnit(QStringLiteral("MC-1"));
  cart.kind = fleet::UnitKind::cart;
  cart.type = QStringLiteral("Marram cart");
  save(*store, cart, QStringLiteral("Ada Fenn"), {});
  onCart.cartPosition = 1;
  append(*store, onCart);
  BOOST_TEST(loadUnit(*store, unitName)->cart.toStdString() == "MC-1");
  BOOST_CHECK(loadUnit(*store, unitName)->cartPosition == 1);
}

BOOST_DATA_TEST_CASE(the_newest_examination_that_stands_counts, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  fill(*store);
  const fleet::Examination first = append(*store, examination(QDate(2026, 5, 5)));
  fleet::Examination wrong = examination(QDate(2026, 9, 9));
  wrong.result = fleet::ExaminationResult::passWithRemark;
  wrong = append(*store, wrong);
  BOOST_CHECK(loadNewestExaminations(*store).at(0) == wrong);
  fleet::Examination right = examination(QDate(2026, 3, 3));
  right.corrects = wrong.id;
  append(*store, right);
  BOOST_REQUIRE(loadNewestExaminations(*store).size() == 1U);
  BOOST_CHECK(loadNewestExaminations(*store).at(0) == first);
  BOOST_TEST(loadExaminations(*store).size() == 3U);
  BOOST_CHECK_THROW(append(*store,
                           [] {
                             fleet::Examination nobody = examination(QDate(2026, 3, 3));
                             nobody.by.clear();
                             return nobody;
                           }()),
                    Error);
}

BOOST_DATA_TEST_CASE(marks_are_recalled_for_the_same_stack_bar_and_chain, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  const marks::MarkUsed used = append(*store, sampleMark());
  BOOST_CHECK(recallMarks(*store, used.stack, used.bar, used.chain).at(0) == used);
  BOOST_CHECK(loadMarksOf(*store, used.tour, used.show).at(0) == used);
  BOOST_TEST(recallMarks(*store, {QStringLiteral("Marram bass")}, used.bar, used.chain).empty());
  marks::MarkUsed right = sampleMark();
  right.mark = 38;
  right.measured.reset();
  right.corrects = used.id;
  right = append(*store, right);
  BOOST_REQUIRE(recallMarks(*store, used.stack, used.bar, used.chain).size() == 1U);
  BOOST_CHECK(recallMarks(*store, used.stack, used.bar, used.chain).at(0) == right);
  BOOST_TEST(loadMarks(*store).size() == 2U);
}

BOOST_DATA_TEST_CASE(load_readings_come_back_as_they_were_read, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  const marks::LoadReading left = append(*store, sampleReading(QStringLiteral("left")));
  marks::LoadReading right = sampleReading(QStringLiteral("right"));
  right.lift = left.lift;
  right = append(*store, right);
  std::vector<marks::LoadReading> all = loadReadingsOf(*store, left.tour, left.show);
  BOOST_REQUIRE(all.size() == 2U);
  BOOST_CHECK(all[0] == left || all[1] == left);
  BOOST_CHECK(all[0] == right || all[1] == right);
  marks::LoadReading better = left;
  better.id = {};
  better.reading = newtons(4200.5);
  better.corrects = left.id;
  better = append(*store, better);
  all = loadReadingsOf(*store, left.tour, left.show);
  BOOST_REQUIRE(all.size() == 2U);
  BOOST_CHECK(all[0] == better || all[1] == better);
  BOOST_TEST(loadReadingsOf(*store, left.tour, QStringLiteral("another")).empty());
  marks::LoadReading inLeg = sampleReading(QStringLiteral("left"));
  inLeg.show = QStringLiteral("bridled");
  inLeg.cellAt = QStringLiteral("point");
  inLeg.legTo = QStringLiteral("L1 front");
  inLeg = append(*store, inLeg);
  BOOST_REQUIRE(loadReadingsOf(*store, inLeg.tour, inLeg.show).size() == 1U);
  BOOST_CHECK(loadReadingsOf(*store, inLeg.tour, inLeg.show)[0] == inLeg);
  marks::LoadReading nowhere = inLeg; // a cell at the hook is in no leg
  nowhere.id = {};
  nowhere.cellAt = QStringLiteral("hook");
  BOOST_CHECK_THROW(append(*store, nowhere), Error);
  marks::LoadReading nobody = sampleReading(QStringLiteral("left"));
  nobody.by.clear();
  BOOST_CHECK_THROW(append(*store, nobody), Error);
  marks::LoadReading bare = sampleReading(QStringLiteral("left"));
  bare.instrument.clear();
  BOOST_CHECK_THROW(append(*store, bare), Error);
}

BOOST_DATA_TEST_CASE(hold_points_come_back_as_they_were_signed, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  const marks::GateSigned chain = append(*store, sampleGate(QStringLiteral("chain")));
  BOOST_REQUIRE(loadGatesOf(*store, chain.tour, chain.show).size() == 1U);
  BOOST_CHECK(loadGatesOf(*store, chain.tour, chain.show).at(0) == chain);
  marks::GateSigned better = chain;
  better.id = {};
  better.by = QStringLiteral("Bo Reed");
  better.corrects = chain.id;
  better = append(*store, better);
  BOOST_REQUIRE(loadGatesOf(*store, chain.tour, chain.show).size() == 1U);
  BOOST_CHECK(loadGatesOf(*store, chain.tour, chain.show).at(0) == better);
  BOOST_TEST(loadGatesOf(*store, chain.tour, QStringLiteral("another")).empty());
  marks::GateSigned nobody = sampleGate(QStringLiteral("chain"));
  nobody.by.clear();
  BOOST_CHECK_THROW(append(*store, nobody), Error);
  marks::GateSigned skipped = sampleGate(QStringLiteral("chain"));
  skipped.skipped = true;
  BOOST_CHECK_THROW(append(*store, skipped), Error);
  skipped.reason = QStringLiteral("no chain today");
  BOOST_CHECK_NO_THROW(append(*store, skipped));
}

BOOST_DATA_TEST_CASE(a_choice_comes_back_as_it_was_frozen, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  fill(*store);
  const options::Choice made = append(*store, sampleChoice(QStringLiteral("Skerrymouth")));
  BOOST_TEST(made.revision == 1);
  const std::vector<options::Choice> found = loadChoices(*store, made.tour, made.show);
  BOOST_REQUIRE(found.size() == 1U);
  BOOST_TEST(found[0].frozen == made.frozen);
  BOOST_TEST(found[0].sha256.toStdString() == made.sha256.toStdString());
  BOOST_TEST(found[0].setting.trimM == made.setting.trimM, boost::test_tools::tolerance(0.0));
  BOOST_CHECK(found[0].setting.mark == 37);
  BOOST_CHECK(found[0].setting.holesDeg == made.setting.holesDeg);
  BOOST_CHECK(found[0].key.stack == made.key.stack);
  BOOST_CHECK(found[0].key.points == made.key.points);
  BOOST_REQUIRE(found[0].points.size() == 2U);
  BOOST_CHECK(!found[0].points[0].capacityKn);
  BOOST_CHECK(found[0].points[1].capacityKn == 10.1);
  BOOST_TEST(found[0].points[0].parts.at(1).kn == 0.1, boost::test_tools::tolerance(0.0));
  BOOST_CHECK(found[0].awayFrom == QDate(2027, 4, 1));
  BOOST_CHECK(found[0].verdict == options::Verdict::tight);
}

BOOST_DATA_TEST_CASE(a_choice_follows_the_one_that_stands, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  fill(*store);
  const options::Choice first = append(*store, sampleChoice(QStringLiteral("Skerrymouth")));
  BOOST_CHECK_THROW(append(*store, sampleChoice(QStringLiteral("Skerrymouth"))), StaleError);
  options::Choice second = first;
  second.option = QStringLiteral("fedcba9876543210");
  second = append(*store, second);
  BOOST_TEST(second.revision == 2);
  BOOST_TEST(loadChoices(*store, first.tour, first.show).at(0).option.toStdString() == "fedcba9876543210");
  withdraw(*store, second, QStringLiteral("Bo Reed"), {});
  BOOST_TEST(loadChoices(*store, first.tour, first.show).empty());
  BOOST_TEST(loadChoiceHistory(*store, first.tour, first.show, first.hang).size() == 3U);
  BOOST_CHECK_THROW(withdraw(*store, first, QStringLiteral("Bo Reed"), {}), StaleError);
  BOOST_TEST(append(*store, sampleChoice(QStringLiteral("Skerrymouth"))).revision == 4); // nothing stood
}

BOOST_DATA_TEST_CASE(what_fails_or_has_no_reason_is_not_chosen, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  fill(*store);
  options::Choice choice = sampleChoice(QStringLiteral("Skerrymouth"));
  choice.verdict = options::Verdict::fails;
  BOOST_CHECK_THROW(append(*store, choice), Error);
  choice.verdict = options::Verdict::unproven;
  BOOST_CHECK_THROW(append(*store, choice), Error);
  choice.reason = QStringLiteral("the engineer's word follows");
  choice.frozen += ' ';
  BOOST_CHECK_THROW(append(*store, choice), Error);
  choice.frozen.chop(1);
  choice.hang = QStringLiteral("centre");
  BOOST_CHECK_THROW(append(*store, choice), Error);
  choice.hang = QStringLiteral("left");
  BOOST_CHECK_NO_THROW(append(*store, choice));
}

BOOST_DATA_TEST_CASE(choices_of_shows_at_the_same_time_are_found, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  fill(*store);
  const auto show = [&](const char* name, const QDate& from, const QDate& to) {
    calendar::Show other = sampleShow(QString::fromLatin1(name), QStringLiteral("Gannet Hall"));
    other.awayFrom = from;
    other.awayTo = to;
    save(*store, other);
    append(*store, sampleChoice(other.name));
  };
  show("touching", QDate(2027, 4, 5), QDate(2027, 4, 9));
  show("later", QDate(2027, 4, 6), QDate(2027, 4, 9));
  show("before", QDate(2027, 3, 1), QDate(2027, 3, 31));
  show("unknown", QDate(), QDate());
  append(*store, sampleChoice(QStringLiteral("Skerrymouth")));
  QStringList names;
  for (const options::Choice& each :
       loadOverlappingChoices(*store, QStringLiteral("Parade"), QStringLiteral("Skerrymouth"))) {
    names.append(each.show);
  }
  BOOST_TEST(names.join(u' ').toStdString() == "unknown touching");
}

BOOST_AUTO_TEST_SUITE_END()
