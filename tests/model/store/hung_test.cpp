// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/data/monomorphic.hpp>
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include "store/fleet_store.h"
#include "store/hung_store.h"
#include "support/sample_house.h"

using namespace hangbook;
using namespace hangbook::store;
using namespace hangbook::testing;

BOOST_AUTO_TEST_SUITE(hung)

BOOST_DATA_TEST_CASE(a_place_comes_back_follows_its_unit_and_can_be_emptied, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  fill(*store);
  const calendar::Show show = sampleShow(QStringLiteral("Skerrymouth"), QStringLiteral("Gannet Hall"));
  fleet::Unit unit = loadUnits(*store).at(0);
  calendar::Hung place;
  place.tour = show.tour;
  place.show = show.name;
  place.hang = show.hangs.front().name;
  place.element = 2;
  place.serial = unit.serial;
  save(*store, place);
  BOOST_REQUIRE(loadHung(*store, show.tour, show.name).size() == 1U);
  BOOST_CHECK(unstored(loadHung(*store)[0]) == place);
  BOOST_TEST(loadHung(*store, show.tour, QStringLiteral("elsewhere")).empty());

  calendar::Hung emptied = loadHung(*store)[0];
  emptied.serial.clear();
  save(*store, emptied);
  BOOST_TEST(loadHung(*store->another())[0].serial.isEmpty());

  calendar::Hung nobody = loadHung(*store)[0];
  nobody.serial = QStringLiteral("no such unit");
  BOOST_CHECK_THROW(save(*store, nobody), Error);
  place.element = -1;
  BOOST_CHECK_THROW(save(*store, place), Error);
}

BOOST_AUTO_TEST_SUITE_END()
