// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/data/monomorphic.hpp>
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include <algorithm>

#include "store/cabling_store.h"
#include "store/calendar_store.h"
#include "store/fleet_store.h"
#include "store/hung_store.h"
#include "support/sample_cabling.h"

using namespace hangbook;
using namespace hangbook::store;
using namespace hangbook::testing;

BOOST_AUTO_TEST_SUITE(cabling)

BOOST_DATA_TEST_CASE(comes_back_whole_and_follows_a_renaming, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  fill(*store);
  const SampleCabling sample;
  sample.saveTo(*store);
  catalogue::Socket bare;
  bare.cabinet = QStringLiteral("Marram downfill");
  bare.name = QStringLiteral("in");
  save(*store, bare);

  calendar::Cabling all = loadCabling(*store->another());
  BOOST_REQUIRE(all.sockets.size() == 2U);
  BOOST_CHECK(unstored(all.connectors.at(0)) == sample.connector);
  BOOST_CHECK(unstored(all.sockets[0]) == sample.socket);
  BOOST_CHECK(unstored(all.sockets[1]) == bare);
  BOOST_CHECK(unstored(all.ends.at(0)) == sample.end);
  BOOST_CHECK(unstored(all.plugs.at(0)) == sample.plug);
  BOOST_TEST(loadCabling(*store, sample.plug.tour, QStringLiteral("elsewhere")).plugs.empty());
  BOOST_TEST(loadCabling(*store, sample.plug.tour, sample.plug.show).plugs.size() == 1U);

  catalogue::CabinetType cabinet = *catalogue::find(loadCatalogue(*store).cabinets, sample.socket.cabinet);
  cabinet.name = QStringLiteral("Marram low");
  save(*store, cabinet);
  all = loadCabling(*store);
  BOOST_TEST(all.plugs.at(0).cabinet.toStdString() == "Marram low");
  BOOST_TEST(std::ranges::count(all.sockets, QStringLiteral("Marram low"), &catalogue::Socket::cabinet) == 1);
}

BOOST_DATA_TEST_CASE(refuses_what_does_not_fit, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  fill(*store);
  const SampleCabling sample;
  save(*store, sample.connector);
  save(*store, sample.end);
  save(*store, sample.plug);
  calendar::Plug second = sample.plug; // the same end in another cabinet
  second.element = 4;
  BOOST_CHECK_THROW(save(*store, second), Error);
  second.label = QStringLiteral("left 2");
  BOOST_CHECK_NO_THROW(save(*store, second));
  calendar::Plug elsewhere = sample.plug;
  elsewhere.show = QStringLiteral("nowhere");
  BOOST_CHECK_THROW(save(*store, elsewhere), Error);
  catalogue::LoomEnd odd = sample.end;
  odd.name = QStringLiteral("B");
  odd.connector = QStringLiteral("nobody's");
  BOOST_CHECK_THROW(save(*store, odd), Error);
}

BOOST_DATA_TEST_CASE(plugs_and_units_follow_a_hang_that_is_renamed, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  fill(*store);
  const SampleCabling sample;
  sample.saveTo(*store);
  const calendar::Plug plug = sample.plug;
  calendar::Hung bar;
  bar.tour = plug.tour;
  bar.show = plug.show;
  bar.hang = plug.hang;
  bar.serial = loadUnits(*store).at(0).serial;
  save(*store, bar);
  calendar::Show show = loadShow(*store, plug.tour, plug.show).value();
  const auto hang = std::ranges::find(show.hangs, plug.hang, &calendar::Hang::name);
  BOOST_TEST_REQUIRE((hang != show.hangs.end()));
  const QString next = QStringLiteral("house left");
  for (calendar::Hang& each : show.hangs) {
    each.mirrors = each.mirrors == plug.hang ? next : each.mirrors;
  }
  hang->name = next;
  show = save(*store, show);
  BOOST_TEST(loadCabling(*store).plugs.at(0).hang.toStdString() == "house left");
  BOOST_TEST(loadHung(*store).at(0).hang.toStdString() == "house left");

  // Another hang of that place is not the same one renamed.
  if (show.hangs.size() > 1) {
    std::swap(show.hangs[0], show.hangs[1]);
    save(*store, show);
    BOOST_TEST(loadCabling(*store).plugs.at(0).hang.toStdString() == "house left");
  }
}

BOOST_AUTO_TEST_SUITE_END()
