// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/data/monomorphic.hpp>
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include "store/people_store.h"
#include "store/records.h"
#include "store/snapshot_store.h"
#include "support/sample_house.h"

using namespace hangbook;
using namespace hangbook::store;
using namespace hangbook::testing;

namespace {

bool says(const std::exception& error, const char* words) {
  const bool found = std::string(error.what()).find(words) != std::string::npos;
  if (!found) {
    BOOST_TEST_MESSAGE(error.what());
  }
  return found;
}

auto saying(const char* words) {
  return [words](const Error& error) { return says(error, words); };
}

} // namespace

BOOST_AUTO_TEST_SUITE(plans)

BOOST_DATA_TEST_CASE(makers_data_comes_back_whole, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  fill(*store);
  const catalogue::Catalogue all = loadCatalogue(*store->another());
  BOOST_REQUIRE(all.cabinets.size() == 2U);
  BOOST_CHECK(unstored(all.cabinets[0]) == sampleCabinet(QStringLiteral("Marram bass")));
  BOOST_REQUIRE(all.bars.size() == 1U);
  BOOST_CHECK(unstored(all.bars[0]) == sampleBar(QStringLiteral("Heron bar")));
  BOOST_CHECK(unstored(all.hoists.at(0)) == sampleHoist());
  BOOST_CHECK(unstored(all.chains.at(0)) == sampleChain());
  BOOST_CHECK(unstored(all.hardware.at(1)) ==
              sampleHardware(QStringLiteral("sling 2"), catalogue::HardwareKind::secondarySteel));
  BOOST_CHECK(unstored(all.carts.at(0)) == sampleCart(QStringLiteral("Marram bass")));
  BOOST_CHECK(unstored(all.tables.at(0)) == sampleTable());
}

BOOST_DATA_TEST_CASE(what_is_not_known_comes_back_not_known, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  catalogue::CabinetType cabinet;
  cabinet.name = QStringLiteral("bare");
  catalogue::BarType bar;
  bar.name = QStringLiteral("bare");
  bar.arrangements = {{}};
  catalogue::HoistType hoist;
  hoist.name = QStringLiteral("bare");
  venue::Venue hall;
  hall.name = QStringLiteral("bare");
  hall.points = {{}};
  hall.points[0].name = QStringLiteral("1");
  BOOST_CHECK(unstored(save(*store, cabinet)) == cabinet);
  save(*store, bar);
  save(*store, hoist);
  save(*store, hall);
  const catalogue::Catalogue all = loadCatalogue(*store);
  BOOST_CHECK(unstored(all.cabinets.at(0)) == cabinet);
  BOOST_CHECK(unstored(all.bars.at(0)) == bar);
  BOOST_CHECK(unstored(all.hoists.at(0)) == hoist);
  BOOST_CHECK(unstored(loadVenue(*store, hall.name).value()) == hall);
}

BOOST_DATA_TEST_CASE(venues_tours_and_shows_come_back_whole, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  fill(*store);
  save(*store, sampleVenue(QStringLiteral("Another Hall")));
  const std::vector<venue::Venue> venues = loadVenues(*store);
  BOOST_REQUIRE(venues.size() == 2U);
  BOOST_CHECK(unstored(venues[0]) == sampleVenue(QStringLiteral("Another Hall")));
  BOOST_CHECK(unstored(venues[1]) == sampleVenue(QStringLiteral("Gannet Hall")));
  BOOST_CHECK(unstored(loadTours(*store).at(0)) == sampleTour());
  const calendar::Show show = sampleShow(QStringLiteral("Skerrymouth"), QStringLiteral("Gannet Hall"));
  BOOST_CHECK(unstored(loadShows(*store).at(0)) == show);
  BOOST_CHECK(unstored(loadShow(*store, show.tour, show.name).value()) == show);
  BOOST_CHECK(!loadShow(*store, show.tour, QStringLiteral("nowhere")));
}

BOOST_DATA_TEST_CASE(a_change_counts_the_revision_up_and_replaces_lists, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  fill(*store);
  venue::Venue hall = loadVenue(*store, QStringLiteral("Gannet Hall")).value();
  BOOST_TEST(hall.revision == 1);
  hall.lowSteel.reset();
  hall.points.pop_back();
  hall.bridles.clear(); // its legs went up to that point
  hall.zones.clear();
  const venue::Venue saved = save(*store, hall);
  BOOST_TEST(saved.revision == 2);
  BOOST_CHECK(loadVenue(*store, hall.name).value() == saved);
  calendar::Show show = loadShows(*store).at(0);
  BOOST_CHECK_EXCEPTION(save(*store, show), Error,
                        saying("names the point \"A1\", which venue \"Gannet Hall\" does not"));
  show.hangs[0].points = {QStringLiteral("B1")};
  show.hangs[0].rigging.removeFirst();
  const calendar::Show savedShow = save(*store, show);
  BOOST_CHECK(loadShows(*store).at(0) == savedShow);
}

BOOST_DATA_TEST_CASE(a_stale_change_is_refused_with_both_versions, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  fill(*store);
  catalogue::HoistType mine = loadCatalogue(*store).hoists.at(0);
  catalogue::HoistType theirs = mine;
  theirs.bodyMass = kilograms(50);
  save(*store, theirs);
  mine.bodyMass = kilograms(52.5);
  BOOST_CHECK_EXCEPTION(save(*store, mine), StaleError, [](const StaleError& e) {
    return says(e, "this is version 1, the store holds version 2") &&
           says(e, "body_mass_kg is \"52.5\" here and \"50\" in the store") &&
           e.trouble() == Trouble::notPossible;
  });
  BOOST_CHECK_THROW(remove(*store, mine), StaleError);
  BOOST_CHECK(loadCatalogue(*store).hoists.at(0).bodyMass == kilograms(50));
}

BOOST_DATA_TEST_CASE(names_are_unique_and_known, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  fill(*store);
  BOOST_CHECK_EXCEPTION(save(*store, sampleHoist()), Error,
                        saying("hoist \"Curlew one\" cannot be saved: there is one"));
  BOOST_CHECK_EXCEPTION(save(*store, sampleVenue(QStringLiteral("Gannet Hall"))), Error,
                        saying("venue \"Gannet Hall\""));
  catalogue::StackingTable table = sampleTable();
  table.name = QStringLiteral("other");
  table.lowest = {QStringLiteral("nobody")};
  BOOST_CHECK_EXCEPTION(save(*store, table), Error, saying("names something that the store does not hold"));
  venue::Venue hall = sampleVenue(QStringLiteral("Third Hall"));
  hall.points[1].zone = QStringLiteral("truss 9");
  BOOST_CHECK_EXCEPTION(save(*store, hall), Error, saying("names something that the store does not hold"));
  BOOST_CHECK(!loadVenue(*store, hall.name));
  fleet::Unit unit = sampleUnit(QStringLiteral("X-1"));
  unit.type = QStringLiteral("nobody");
  BOOST_CHECK_EXCEPTION(save(*store, unit, QStringLiteral("Ada"), {}), Error,
                        saying("the type \"nobody\" is not known"));
}

BOOST_DATA_TEST_CASE(impossible_figures_are_refused_in_words, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  catalogue::CabinetType cabinet = sampleCabinet(QStringLiteral("odd"));
  cabinet.mass = kilograms(0);
  BOOST_CHECK_EXCEPTION(save(*store, cabinet), Error, [](const Error& e) {
    return e.trouble() == Trouble::badInput && says(e, "cabinet \"odd\" cannot be saved") &&
           says(e, "a mass must be above 0");
  });
  cabinet = sampleCabinet(QString());
  BOOST_CHECK_EXCEPTION(save(*store, cabinet), Error, saying("a type needs a name"));
}

BOOST_DATA_TEST_CASE(a_renaming_is_followed, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  fill(*store);
  catalogue::CabinetType bass = loadCatalogue(*store).cabinets.at(0);
  bass.name = QStringLiteral("Marram low");
  save(*store, bass);
  const catalogue::Catalogue all = loadCatalogue(*store);
  BOOST_TEST(all.tables.at(0).joins.at(1).above.toStdString() == "Marram low");
  BOOST_TEST(all.tables.at(0).counts.at(0).type.toStdString() == "Marram low");
  BOOST_TEST(all.carts.at(0).carries.toStdString() == "Marram low");
  BOOST_TEST(loadUnits(*store).at(0).type.toStdString() == "Marram low");
  BOOST_TEST(loadExaminationRules(*store).at(0).type.toStdString() == "Marram low");
  catalogue::StackingTable table = all.tables.at(0);
  table.name = QStringLiteral("Marram longer");
  save(*store, table);
  BOOST_TEST(loadShows(*store).at(0).hangs.at(0).tables.at(0).toStdString() == "Marram longer");
}

BOOST_DATA_TEST_CASE(what_is_used_cannot_go, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  fill(*store);
  const catalogue::Catalogue all = loadCatalogue(*store);
  BOOST_CHECK_THROW(remove(*store, all.cabinets.at(0)), Error);
  BOOST_CHECK_THROW(remove(*store, all.hardware.at(0)), Error);
  BOOST_CHECK_THROW(remove(*store, loadTours(*store).at(0)), Error);
  BOOST_CHECK_THROW(remove(*store, loadVenues(*store).at(0)), Error);
  BOOST_CHECK(unstored(loadVenues(*store).at(0)) == sampleVenue(QStringLiteral("Gannet Hall")));
  remove(*store, loadShows(*store).at(0));
  remove(*store, loadVenues(*store).at(0));
  remove(*store, loadTours(*store).at(0));
  remove(*store, all.hardware.at(0));
  BOOST_TEST(loadShows(*store).empty());
  BOOST_TEST(loadVenues(*store).empty());
  BOOST_TEST(checkStore(*store).isEmpty());
}

BOOST_DATA_TEST_CASE(people_and_who_is_at_the_desk, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  BOOST_CHECK(!personAtDesk(*store));
  BOOST_CHECK_THROW(setPersonAtDesk(*store, QStringLiteral("Ada Fenn")), Error);
  people::Person ada;
  ada.name = QStringLiteral("Ada Fenn");
  ada.role = QStringLiteral("crew chief");
  ada = save(*store, ada);
  people::Person bo;
  bo.name = QStringLiteral("Bo Reed");
  save(*store, bo);
  BOOST_CHECK_THROW(save(*store, bo), Error);
  setPersonAtDesk(*store, ada.name);
  setPersonAtDesk(*store, bo.name);
  BOOST_TEST(personAtDesk(*store)->name.toStdString() == "Bo Reed");
  BOOST_CHECK(loadPeople(*store).at(0) == ada);
}

BOOST_DATA_TEST_CASE(a_snapshot_holds_all_that_decides_one_show, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  fill(*store);
  const options::Snapshot snapshot =
      loadSnapshot(*store, {}, QStringLiteral("Skerrymouth"), QDate(2027, 4, 1));
  BOOST_TEST(snapshot.show.name.toStdString() == "Skerrymouth");
  BOOST_TEST(snapshot.tour.name.toStdString() == "Parade");
  BOOST_TEST(snapshot.venue.name.toStdString() == "Gannet Hall");
  BOOST_CHECK(snapshot.catalogue == loadCatalogue(*store));
  BOOST_TEST(snapshot.units.size() == 1U);
  BOOST_TEST(snapshot.examinationRules.size() == 1U);
  BOOST_CHECK(snapshot.today == QDate(2027, 4, 1));
  BOOST_CHECK_EXCEPTION(loadSnapshot(*store, {}, QStringLiteral("nowhere"), {}), Error,
                        saying("there is no show \"nowhere\""));
}

BOOST_AUTO_TEST_SUITE_END()
