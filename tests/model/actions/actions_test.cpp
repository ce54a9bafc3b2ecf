// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/data/monomorphic.hpp>
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include <stdexcept>

#include "actions/facts.h"
#include "actions/plans.h"
#include "store/choice_store.h"
#include "store/mark_store.h"
#include "store/records.h"
#include "store/snapshot_store.h"
#include "support/sample_house.h"

using namespace hangbook;
using namespace hangbook::testing;

namespace {

const QString ada = QStringLiteral("Ada Fenn");

std::string lastDeed(store::Store& store) {
  const store::Deed deed = store::loadHistory(store, 1).at(0);
  return QStringList{deed.by, deed.action, deed.subject, deed.detail}
      .join(QStringLiteral(" | "))
      .toStdString();
}

} // namespace

BOOST_AUTO_TEST_SUITE(use_cases)

BOOST_DATA_TEST_CASE(a_use_case_and_its_history_row_stand_or_fall_together, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  const venue::Venue hall = actions::saveVenue(*store, sampleVenue(QStringLiteral("Gannet Hall")), ada);
  BOOST_TEST(lastDeed(*store) == "Ada Fenn | save venue | Gannet Hall | new");
  actions::saveVenue(*store, hall, ada);
  BOOST_TEST(lastDeed(*store) == "Ada Fenn | save venue | Gannet Hall | follows version 1");
  BOOST_CHECK_THROW(actions::saveVenue(*store, hall, ada), store::StaleError);
  BOOST_TEST(store::loadHistory(*store).size() == 2U);
  BOOST_TEST(store::loadHistory(*store).at(0).program.toStdString() == HANGBOOK_VERSION);
  BOOST_TEST(!store::loadHistory(*store).at(0).device.isEmpty());
}

BOOST_DATA_TEST_CASE(somebody_must_act, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  BOOST_CHECK_THROW(actions::saveType(*store, sampleHoist()), Error);
  BOOST_TEST(store::loadCatalogue(*store).hoists.empty());
  people::Person person;
  person.name = ada;
  actions::savePerson(*store, person); // the first one enters herself
  actions::setPersonAtDesk(*store, ada);
  actions::saveType(*store, sampleHoist());
  BOOST_TEST(lastDeed(*store) == "Ada Fenn | save type | Curlew one | new");
}

BOOST_DATA_TEST_CASE(several_are_one, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  BOOST_CHECK_THROW(actions::run(*store,
                                 [&] {
                                   actions::saveType(*store, sampleHoist(), ada);
                                   throw std::runtime_error("no");
                                 }),
                    std::runtime_error);
  BOOST_TEST(store::loadCatalogue(*store).hoists.empty());
  BOOST_TEST(store::loadHistory(*store).empty());
}

BOOST_DATA_TEST_CASE(a_failed_examination_quarantines, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  fill(*store);
  fleet::Examination fact;
  fact.serial = QStringLiteral("MB-1");
  fact.rule = QStringLiteral("yearly look");
  fact.date = QDate(2026, 5, 5);
  actions::recordExamination(*store, fact, ada);
  BOOST_CHECK(store::loadUnit(*store, fact.serial)->state == fleet::UnitState::ready);
  fact.result = fleet::ExaminationResult::fail;
  actions::recordExamination(*store, fact, ada);
  BOOST_CHECK(store::loadUnit(*store, fact.serial)->state == fleet::UnitState::quarantined);
  BOOST_TEST(store::loadMovements(*store, fact.serial).back().reason.toStdString() ==
             "failed its examination (yearly look)");
  BOOST_TEST(store::checkStore(*store).isEmpty());
}

BOOST_DATA_TEST_CASE(what_is_written_off_stays_so_until_corrected, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  fill(*store);
  fleet::Movement off;
  off.serial = QStringLiteral("MB-1");
  off.toPlace = QStringLiteral("scrap");
  off.toState = fleet::UnitState::writtenOff;
  off = actions::recordMovement(*store, off, ada);
  fleet::Movement back;
  back.serial = off.serial;
  back.toPlace = QStringLiteral("bay 1");
  BOOST_CHECK_THROW(actions::recordMovement(*store, back, ada), Error);
  back.corrects = off.id;
  actions::recordMovement(*store, back, ada);
  BOOST_TEST(store::loadUnit(*store, off.serial)->place.toStdString() == "bay 1");
}

BOOST_DATA_TEST_CASE(marks_and_choices_are_told, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  fill(*store);
  actions::recordMark(*store, sampleMark(), QStringLiteral("Bo Reed"));
  BOOST_TEST(lastDeed(*store) == "Bo Reed | record mark | Skerrymouth | hang \"left\": mark 37");
  BOOST_TEST(store::loadMarks(*store).at(0).by.toStdString() == "Bo Reed");
  const options::Choice made =
      actions::chooseOption(*store, sampleChoice(QStringLiteral("Skerrymouth")), ada);
  BOOST_TEST(lastDeed(*store) ==
             "Ada Fenn | choose option | Skerrymouth | hang \"left\": option 0123456789abcdef");
  actions::withdrawChoice(*store, made, QStringLiteral("rain"), ada);
  BOOST_TEST(store::loadChoices(*store, made.tour, made.show).empty());
}

BOOST_AUTO_TEST_SUITE_END()
