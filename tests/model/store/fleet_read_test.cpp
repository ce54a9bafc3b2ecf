// SPDX-License-Identifier: GPL-3.0-or-later
// The fleet is read once for as long as not one row of the store has changed, whoever changes it.
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include "store/fleet_read.h"
#include "support/sample_house.h"

using namespace hangbook;
using namespace hangbook::testing;

namespace {

void addUnit(store::Store& store, const char* serial) {
  save(store, sampleUnit(QString::fromLatin1(serial)), QStringLiteral("Ada Fenn"), QStringLiteral("entered"));
}

struct Taken {};

} // namespace

BOOST_AUTO_TEST_SUITE(fleet_read)

BOOST_DATA_TEST_CASE(it_is_read_again_when_a_row_has_changed_here_or_elsewhere, bothEngines, engine) {
  const FreshStore place(engine);
  const auto store = place.open();
  fill(*store);
  const auto first = store::loadFleet(*store);
  BOOST_TEST(first->units.size() == 1u);
  BOOST_TEST(first->rules.size() == 1u);
  BOOST_TEST(store::loadFleet(*store) == first);
  addUnit(*store, "MB-2");
  const auto second = store::loadFleet(*store);
  BOOST_TEST(second->units.size() == 2u);
  BOOST_TEST(first->units.size() == 1u); // whoever holds it holds what it was
  const auto other = place.open();
  addUnit(*other, "MB-3");
  const auto third = store::loadFleet(*store);
  BOOST_TEST(third->units.size() == 3u);
  BOOST_TEST(store::loadFleet(*store) == third);
  BOOST_TEST(store::loadFleet(*other)->units.size() == 3u);
}

BOOST_DATA_TEST_CASE(what_is_being_written_is_seen_and_what_was_taken_back_is_not, bothEngines, engine) {
  const FreshStore place(engine);
  const auto store = place.open();
  fill(*store);
  const auto before = store::loadFleet(*store);
  BOOST_CHECK_THROW(store->transact([&] {
    BOOST_TEST(store::loadFleet(*store)->units.size() == 1u);
    addUnit(*store, "MB-2");
    BOOST_TEST(store::loadFleet(*store)->units.size() == 2u);
    throw Taken{};
  }),
                    Taken);
  BOOST_TEST(store::loadFleet(*store)->units.size() == 1u);
  BOOST_TEST(store->moment().isEmpty()); // outside of all transactions nothing is seen yet
}

/// A state that stands is read whole, whoever writes beside it.
BOOST_DATA_TEST_CASE(a_reading_keeps_to_its_own_moment, bothEngines, engine) {
  const FreshStore place(engine);
  const auto store = place.open();
  fill(*store);
  const auto other = place.open();
  store->reading([&] {
    const QString moment = store->moment();
    BOOST_TEST(store::loadFleet(*store)->units.size() == 1u);
    addUnit(*other, "MB-2");
    BOOST_TEST(store->moment().toStdString() == moment.toStdString());
    BOOST_TEST(store::loadFleet(*store)->units.size() == 1u);
  });
  BOOST_TEST(store::loadFleet(*store)->units.size() == 2u);
}

BOOST_AUTO_TEST_SUITE_END()
