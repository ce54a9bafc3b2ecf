// SPDX-License-Identifier: GPL-3.0-or-later
// Going back behind an import, and when that is refused.
#include <boost/test/data/monomorphic.hpp>
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include "actions/import_file.h"
#include "actions/plan_edit.h"
#include "actions/plans.h"
#include "quantity/error.h"
#include "store/mark_store.h"
#include "support/sample_house.h"

using namespace hangbook;
using namespace hangbook::testing;
using exchange::Kind;

namespace {

const QString ada = QStringLiteral("Ada Fenn");
const QDate today(2026, 11, 20);
const exchange::Importer importer{ada, QDateTime(QDate(2026, 11, 20), QTime(9, 0), Qt::UTC)};

const QByteArray halls = "record,name,time zone,low steel,venue,x,y,z\n"
                         "venue,Gannet Hall,Europe/London,7.5,,,,\n"
                         "venue,Curlew Hall,Europe/London,8,,,,\n"
                         "point,C1,,,Curlew Hall,1,2,9\n";

const QByteArray winter = "record,tour,name,act,venue,from,to,load-in,load-out,away from,away to,show\n"
                          "tour,,Winter,Sedge,,,,,,,,\n"
                          "show,Winter,Curlew,,Gannet Hall,2027-05-01,2027-05-02,2027-05-01 08:00,2027-05-02 "
                          "23:00,2027-04-30,2027-05-03,\n"
                          "hang,Winter,centre,,,,,,,,,Curlew\n";

} // namespace

/// Not anonymous: cases that run on both engines capture it.
namespace import_house {

struct House {
  explicit House(store::Engine engine) : fresh(engine), store(fresh.open()) { fill(*store); }
  actions::PlanEdit imported(Kind kind, const QByteArray& bytes) {
    actions::NotedImport noted =
        actions::importNoted(*store, kind, QStringLiteral("halls.csv"), bytes, importer);
    BOOST_TEST_REQUIRE(noted.import.faults.empty(),
                       (noted.import.faults.empty() ? QString() : exchange::text(noted.import.faults.front()))
                           .toStdString());
    BOOST_TEST_REQUIRE(noted.before.has_value());
    return {*noted.before, *noted.after, ada};
  }
  QString refusal(const actions::PlanEdit& edit) {
    try {
      actions::undo(*store, edit, today);
    } catch (const Error& error) {
      return QString::fromUtf8(error.what());
    }
    return {};
  }
  std::optional<venue::Venue> hall(const char* name) {
    return store::loadVenue(*store, QString::fromLatin1(name));
  }
  FreshStore fresh;
  std::unique_ptr<store::Store> store;
};

} // namespace import_house

using import_house::House;

BOOST_AUTO_TEST_SUITE(import_undo)

BOOST_DATA_TEST_CASE(what_was_new_goes_and_what_was_other_becomes_what_it_was, bothEngines, engine) {
  House house(engine);
  const venue::Venue before = *house.hall("Gannet Hall");
  const actions::PlanEdit edit = house.imported(Kind::venues, halls);
  BOOST_TEST((house.hall("Gannet Hall")->lowSteel == metres(7.5)));
  BOOST_TEST(house.hall("Curlew Hall").has_value());
  const actions::PlanEdit back = actions::undo(*house.store, edit, today);
  BOOST_TEST((unstored(*house.hall("Gannet Hall")) == unstored(before)));
  BOOST_TEST(!house.hall("Curlew Hall").has_value());
  actions::undo(*house.store, back, today); // done again
  BOOST_TEST((house.hall("Gannet Hall")->lowSteel == metres(7.5)));
  BOOST_TEST_REQUIRE(house.hall("Curlew Hall").has_value());
  BOOST_TEST(house.hall("Curlew Hall")->points.size() == 1u);
}

BOOST_DATA_TEST_CASE(a_record_that_was_changed_since_is_named_and_all_stays, bothEngines, engine) {
  House house(engine);
  const actions::PlanEdit edit = house.imported(Kind::venues, halls);
  venue::Venue other = *house.hall("Curlew Hall");
  other.access = QStringLiteral("by boat");
  actions::saveVenue(*house.store, other, ada);
  const QString says = house.refusal(edit);
  BOOST_TEST(says.startsWith(QStringLiteral("venue “Curlew Hall”: it has been changed again since")),
             says.toStdString());
  BOOST_TEST(house.hall("Curlew Hall").has_value());
  BOOST_TEST((house.hall("Gannet Hall")->lowSteel == metres(7.5)));
}

BOOST_DATA_TEST_CASE(what_something_names_by_now_stays_with_all_of_the_file, bothEngines, engine) {
  House house(engine);
  const actions::PlanEdit edit = house.imported(Kind::venues, halls);
  calendar::Show show = sampleShow(QStringLiteral("Curlew"), QStringLiteral("Curlew Hall"));
  show.hangs.clear();
  store::save(*house.store, show);
  const QString says = house.refusal(edit);
  BOOST_TEST(says.contains(QStringLiteral("venue “Curlew Hall”")), says.toStdString());
  BOOST_TEST(says.contains(QStringLiteral("show “Curlew”")), says.toStdString());
  BOOST_TEST((house.hall("Gannet Hall")->lowSteel == metres(7.5)));
}

BOOST_DATA_TEST_CASE(a_type_that_came_in_with_its_table_goes_with_it, bothEngines, engine) {
  House house(engine);
  const catalogue::Catalogue before = store::loadCatalogue(*house.store);
  const actions::PlanEdit edit = house.imported(Kind::types, "record,name,table,below,joint,type,most\n"
                                                             "cabinet,Sedge,,,,,\n"
                                                             "table,Sedge table,,,,,\n"
                                                             "join,,Sedge table,Sedge,pinned,,\n"
                                                             "count,,Sedge table,,,Sedge,3\n");
  BOOST_TEST(store::loadCatalogue(*house.store).tables.size() == before.tables.size() + 1);
  actions::undo(*house.store, edit, today);
  BOOST_TEST((store::loadCatalogue(*house.store) == before));
}

BOOST_DATA_TEST_CASE(a_show_that_was_moved_moves_back_and_a_new_one_goes_with_its_tour, bothEngines, engine) {
  House house(engine);
  const auto shows = [&] { return store::loadShows(*house.store); };
  const std::vector<calendar::Show> before = shows();
  BOOST_TEST_REQUIRE(before.size() == 1u);
  const actions::PlanEdit edit = house.imported(Kind::shows, winter);
  BOOST_TEST(shows().size() == 2u);
  BOOST_TEST(store::loadTours(*house.store).size() == 2u);
  const actions::PlanEdit back = actions::undo(*house.store, edit, today);
  BOOST_TEST_REQUIRE(shows().size() == 1u);
  BOOST_TEST((unstored(shows().front()) == unstored(before.front())));
  BOOST_TEST(store::loadTours(*house.store).size() == 1u);
  actions::undo(*house.store, back, today); // done again
  BOOST_TEST(shows().size() == 2u);
}

BOOST_DATA_TEST_CASE(a_show_for_which_something_is_planned_stays, bothEngines, engine) {
  House house(engine);
  const actions::PlanEdit edit = house.imported(Kind::shows, winter);
  marks::MarkUsed mark = sampleMark();
  mark.tour = QStringLiteral("Winter");
  mark.show = QStringLiteral("Curlew");
  mark.hang = QStringLiteral("centre");
  store::append(*house.store, mark);
  const QString says = house.refusal(edit);
  BOOST_TEST(says.contains(QStringLiteral("show “Winter, Curlew”")), says.toStdString());
  BOOST_TEST(says.contains(QStringLiteral("marks used there")), says.toStdString());
  BOOST_TEST(store::loadShows(*house.store).size() == 2u);
}

BOOST_DATA_TEST_CASE(a_hang_that_came_in_stays_where_something_is_recorded_for_it, bothEngines, engine) {
  House house(engine);
  house.imported(Kind::shows, winter);
  const actions::PlanEdit edit = house.imported(Kind::shows, winter + "hang,Winter,side,,,,,,,,,Curlew\n");
  const auto hangs = [&] {
    return store::loadShow(*house.store, QStringLiteral("Winter"), QStringLiteral("Curlew"))->hangs.size();
  };
  BOOST_TEST(hangs() == 2u);
  marks::MarkUsed mark = sampleMark();
  mark.tour = QStringLiteral("Winter");
  mark.show = QStringLiteral("Curlew");
  mark.hang = QStringLiteral("side");
  store::append(*house.store, mark);
  const QString says = house.refusal(edit);
  BOOST_TEST(says.contains(QStringLiteral("hang “side” of show “Curlew”")), says.toStdString());
  BOOST_TEST(hangs() == 2u);
}

BOOST_DATA_TEST_CASE(facts_and_units_are_not_gone_back_behind, bothEngines, engine) {
  House house(engine);
  const auto units =
      actions::importNoted(*house.store, Kind::units, QStringLiteral("fleet.csv"),
                           "serial,type,kind,place\nMB-9,Marram bass,cabinet,bay 1\n", importer);
  BOOST_TEST(units.import.faults.empty());
  BOOST_TEST(!units.before.has_value());
  const auto same =
      actions::importNoted(*house.store, Kind::people, QStringLiteral("people.csv"), "name,role\n", importer);
  BOOST_TEST(!same.before.has_value()); // it changed nothing
}

BOOST_DATA_TEST_CASE(a_file_with_a_fault_is_no_edit, bothEngines, engine) {
  House house(engine);
  const auto noted = actions::importNoted(*house.store, Kind::venues, QStringLiteral("halls.csv"),
                                          "record,name,time zone\nvenue,Curlew Hall,Nowhere\n", importer);
  BOOST_TEST(!noted.import.faults.empty());
  BOOST_TEST(!noted.before.has_value());
}

BOOST_AUTO_TEST_SUITE_END()
