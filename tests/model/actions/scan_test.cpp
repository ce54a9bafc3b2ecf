// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/data/monomorphic.hpp>
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include "store/snapshot_store.h"
#include "store/warehouse_store.h"
#include "warehouse_house.h"

using namespace hangbook;
using namespace hangbook::actions;
using namespace hangbook::testing;
using Word = ScanAnswer::Word;

namespace hangbook::actions {
static std::ostream& operator<<(std::ostream& out, ScanAnswer::Word word) {
  return out << wordFor(word).toStdString();
}
} // namespace hangbook::actions

namespace {

ScanAnswer scanned(store::Store& store, const ScanTask& task, const char* code, int minute = 0) {
  return scan(store, task, QString::fromLatin1(code), monday.addSecs(60 * minute), technician);
}

fleet::Unit unit(store::Store& store, const char* serial) {
  return store::loadUnit(store, QString::fromLatin1(serial)).value();
}

void mustBeSound(store::Store& store) {
  const QStringList faults = store::checkStore(store);
  BOOST_TEST(faults.isEmpty(), faults.join('\n').toStdString());
}

} // namespace

BOOST_AUTO_TEST_SUITE(scanning)

BOOST_DATA_TEST_CASE(out_and_in_and_again, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  fillWarehouse(*store);
  const ScanTask out = taskOut(*store);
  BOOST_TEST(scanned(*store, out, " B1 ").word == Word::done);
  BOOST_TEST((unit(*store, "B1").state == fleet::UnitState::away));
  BOOST_TEST((unit(*store, "B1").place == "truck 1"));
  const auto last = store::loadLastMovement(*store, QStringLiteral("B1"));
  BOOST_TEST((last->show == out.show->name));
  const std::size_t facts = store::loadMovements(*store).size();
  BOOST_TEST(scanned(*store, out, "B1", 1).word == Word::again);
  BOOST_TEST(scanned(*store, out, "B99", 1).word == Word::unknown);
  BOOST_TEST(store::loadMovements(*store).size() == facts, "what was not done leaves no fact");
  BOOST_TEST(scanned(*store, taskIn(), "B1", 2).word == Word::done);
  BOOST_TEST((unit(*store, "B1").state == fleet::UnitState::ready));
  BOOST_TEST(scanned(*store, taskIn(), "B1", 3).word == Word::again);
  mustBeSound(*store);
}

BOOST_DATA_TEST_CASE(a_cart_goes_whole_and_comes_back_by_undo, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  fillWarehouse(*store);
  const auto most = sampleCart(QStringLiteral("Marram bass")).most.value();
  for (int number = 1; number <= std::min(most, 5); ++number) {
    const std::string code = "B" + std::to_string(number);
    BOOST_TEST(scanned(*store, taskOnto("C1"), code.c_str()).word == Word::done);
    BOOST_TEST(unit(*store, code.c_str()).cartPosition.value() == number);
  }
  if (most < 6) {
    BOOST_TEST(scanned(*store, taskOnto("C1"), "B6").word == Word::refused, "the cart is full");
  }
  BOOST_TEST(scanned(*store, taskOnto("C1"), "SH-1").word == Word::refused, "another type");
  BOOST_TEST(scanned(*store, taskOnto("C1"), "C2").word == Word::refused, "a cart on a cart");
  const ScanAnswer out = scanned(*store, taskOut(*store), "C1", 5);
  BOOST_TEST(out.word == Word::done);
  BOOST_TEST(out.serials.size() == std::min(most, 5) + 1);
  BOOST_TEST((unit(*store, "B1").state == fleet::UnitState::away));
  BOOST_TEST((unit(*store, "B1").cart == "C1"));

  BOOST_TEST(undoScan(*store, out.scan, monday.addSecs(600), technician).word == Word::undone);
  BOOST_TEST((unit(*store, "B1").state == fleet::UnitState::ready));
  BOOST_TEST((unit(*store, "C1").place == bay));
  BOOST_TEST(undoScan(*store, out.scan, monday.addSecs(601), technician).word == Word::refused);
  mustBeSound(*store);
}

BOOST_DATA_TEST_CASE(what_may_not_go_stays_and_says_why, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  fillWarehouse(*store);
  const ScanTask out = taskOut(*store);
  BOOST_TEST(scanned(*store, out, "MB-1").word == Word::refused, "never examined");

  fleet::Movement kept;
  kept.serial = QStringLiteral("B2");
  kept.toPlace = bay;
  kept.toState = fleet::UnitState::quarantined;
  kept.by = technician;
  kept.happenedAt = monday;
  store::append(*store, kept);
  const ScanAnswer refused = scanned(*store, out, "B2", 1);
  BOOST_TEST(refused.word == Word::refused);
  BOOST_TEST(refused.text.contains("quarantined"));

  BOOST_TEST(scanned(*store, taskOnto("C1"), "B1", 1).word == Word::done);
  BOOST_TEST(scanned(*store, taskOnto("C1"), "B2", 1).word == Word::done);
  const ScanAnswer cart = scanned(*store, out, "C1", 2);
  BOOST_TEST(cart.word == Word::refused, "one of its load may not go");
  BOOST_TEST(cart.text.contains("B2"));
  BOOST_TEST((unit(*store, "B1").state == fleet::UnitState::ready));
  BOOST_TEST(scanned(*store, taskIn(), "B2", 3).word == Word::again,
             "it is in the bay, and stays quarantined");
  BOOST_TEST((unit(*store, "B2").state == fleet::UnitState::quarantined));
  mustBeSound(*store);
}

BOOST_DATA_TEST_CASE(a_wrong_place_is_said_and_nothing_moves, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  fillWarehouse(*store);
  ScanTask out = taskOut(*store);
  out.from = QStringLiteral("bay 2");
  BOOST_TEST(scanned(*store, out, "B1").word == Word::wrongPlace);
  out.from = bay;
  BOOST_TEST(scanned(*store, out, "B1").word == Word::done);
  ScanTask other = taskOut(*store);
  other.show->name = QStringLiteral("another show");
  const ScanAnswer taken = scanned(*store, other, "B1", 1);
  BOOST_TEST(taken.word == Word::wrongPlace, "it was never booked in");
  BOOST_TEST(taken.text.contains(out.show->name));
  mustBeSound(*store);
}

BOOST_DATA_TEST_CASE(a_machine_whose_clock_is_behind_still_moves_things, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  fillWarehouse(*store);
  BOOST_TEST(scanned(*store, taskOut(*store), "B1", 90).word == Word::done);
  BOOST_TEST(scanned(*store, taskIn(), "B1", 10).word == Word::done);
  BOOST_TEST((unit(*store, "B1").place == bay));
  mustBeSound(*store);
}

BOOST_DATA_TEST_CASE(an_undone_scan_that_was_built_upon_stays, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  fillWarehouse(*store);
  const ScanAnswer out = scanned(*store, taskOut(*store), "B1");
  BOOST_TEST(scanned(*store, taskIn(), "B1", 1).word == Word::done);
  const ScanAnswer undo = undoScan(*store, out.scan, monday.addSecs(300), technician);
  BOOST_TEST(undo.word == Word::refused);
  BOOST_TEST(undo.text.contains("moved since"));
  mustBeSound(*store);
}

BOOST_AUTO_TEST_SUITE_END()
