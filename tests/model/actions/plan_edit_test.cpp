// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/data/monomorphic.hpp>
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include "actions/facts.h"
#include "actions/house_rules.h"
#include "actions/plan_edit.h"
#include "actions/plans.h"
#include "store/choice_store.h"
#include "support/sample_house.h"

using namespace hangbook;
using namespace hangbook::testing;

namespace {

const QString ada = QStringLiteral("Ada Fenn");
const QString hall = QStringLiteral("Gannet Hall");
const QDate today(2026, 11, 20);

venue::Venue now(store::Store& store) {
  return *store::loadVenue(store, hall);
}

/// Another height of the venue's low steel, noted.
actions::PlanEdit lowered(store::Store& store, double metre) {
  const auto edit = actions::noted(store, actions::VenueAs{hall, {}}, ada, [&] {
    venue::Venue venue = now(store);
    venue.lowSteel = metres(metre);
    venue.typed.erase(QStringLiteral("low steel"));
    actions::saveVenue(store, venue, ada);
  });
  BOOST_TEST_REQUIRE(edit.has_value());
  return *edit;
}

} // namespace

BOOST_AUTO_TEST_SUITE(plan_edits)

BOOST_DATA_TEST_CASE(what_changes_nothing_is_no_edit, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  fill(*store);
  BOOST_TEST(!actions::noted(*store, actions::VenueAs{hall, {}}, ada, [&] {
                actions::saveVenue(*store, now(*store), ada);
              }).has_value());
}

BOOST_DATA_TEST_CASE(house_rules_go_back_statement_by_statement_as_they_were_signed, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  fill(*store);
  const options::HouseSite site{options::HousePlace::venue, {}, hall};
  const QString figure = QStringLiteral("lean-most");
  actions::PlanEdits edits;
  const auto state = [&](double value) {
    auto edit = actions::noted(*store, actions::StatedFor{site, figure, {}}, ada, [&] {
      actions::stateHouseRule(*store, site, {figure, value, {}, QStringLiteral("asked"), {}, {}}, ada, today);
    });
    BOOST_TEST_REQUIRE(edit.has_value());
    edits.add(std::move(*edit));
  };
  const auto first = now(*store).house;
  state(3.0);
  const auto second = now(*store).house;
  state(2.5);
  const auto third = now(*store).house;
  edits.undo(*store, today);
  BOOST_TEST((now(*store).house == second)); // looser than what stood a moment ago, but what stood before
  edits.undo(*store, today);
  BOOST_TEST((now(*store).house == first));
  BOOST_TEST(edits.toUndo() == nullptr);
  edits.redo(*store, today);
  edits.redo(*store, today);
  BOOST_TEST((now(*store).house == third));
  edits.undo(*store, today);
  state(2.0);
  BOOST_TEST(edits.toRedo() == nullptr); // a new edit leaves nothing to do again
}

BOOST_DATA_TEST_CASE(a_choice_that_was_taken_back_is_judged_again_and_refused_where_it_fails, bothEngines,
                     engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  fill(*store);
  const options::Choice made =
      actions::chooseOption(*store, sampleChoice(QStringLiteral("Skerrymouth")), ada);
  actions::PlanEdits edits;
  auto edit = actions::noted(*store, actions::ChosenFor{made.tour, made.show, made.hang, {}}, ada,
                             [&] { actions::withdrawChoice(*store, made, QStringLiteral("rain"), ada); });
  BOOST_TEST_REQUIRE(edit.has_value());
  edits.add(*edit);
  BOOST_CHECK_THROW(edits.undo(*store, today), Error); // the sample's figures are made up: no such option
  BOOST_TEST(store::loadChoices(*store, made.tour, made.show).empty());
  BOOST_TEST(edits.toUndo() == nullptr);
}

BOOST_DATA_TEST_CASE(what_is_not_as_the_edit_left_it_is_not_touched, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  fill(*store);
  const actions::PlanEdit edit = lowered(*store, 11.0);
  lowered(*store, 10.5);
  BOOST_CHECK_THROW(actions::undo(*store, edit, today), Error);
  BOOST_TEST(inMetres(*now(*store).lowSteel) == 10.5);
}

BOOST_AUTO_TEST_SUITE_END()
