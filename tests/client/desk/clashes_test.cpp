// SPDX-License-Identifier: GPL-3.0-or-later
// Clashes of the route in words, each with a way out that was worked out by hand beside it.
#include <boost/test/unit_test.hpp>

#include <QAbstractItemModelTester>
#include <QTimeZone>

#include "desk/route/clashes.h"
#include "desk/source/due_lines.h"
#include "fixture_source.h"

using namespace hangbook;
using namespace hangbook::desk;
using hangbook::testing::smallOverview;

namespace {

std::vector<Clash> of(Clash::Kind kind, const Overview& overview) {
  std::vector<Clash> found = clashesOf(overview, Figures());
  std::erase_if(found, [&](const Clash& each) { return each.kind != kind; });
  return found;
}

QDateTime utc(int day, int hour, int minute) {
  return {QDate(2027, 4, day), QTime(hour, minute), QTimeZone::utc()};
}

/// Ten degrees of the equator: 1113.195 km (WGS 84: 6378.137 km · π / 18), 12 h 22.13 min at 90 km/h.
Overview farApart() {
  Overview overview = smallOverview();
  overview.venues[0].latitude = overview.venues[1].latitude = 0.0;
  overview.venues[0].longitude = 7.0;
  overview.venues[1].longitude = 17.0;
  overview.shows[0].loadOut = utc(3, 22, 0);
  overview.shows[1].loadIn = utc(4, 6, 0);
  return overview;
}

/// Both shows away at once, with three of the fleet's four bass cabinets chosen for each.
Overview atOnce() {
  Overview overview = smallOverview();
  for (calendar::Show& show : overview.shows) {
    show.awayFrom = QDate(2027, 4, 2);
    show.awayTo = QDate(2027, 4, 6);
    options::Choice choice;
    choice.tour = show.tour;
    choice.show = show.name;
    choice.hang = QStringLiteral("left");
    choice.key.stack = {QStringLiteral("Marram bass"), QStringLiteral("Marram bass"),
                        QStringLiteral("Marram bass")};
    overview.choices.push_back(choice);
  }
  return overview;
}

} // namespace

BOOST_AUTO_TEST_SUITE(clashes)

BOOST_AUTO_TEST_CASE(a_stop_that_no_truck_reaches_says_when_one_could_be_there) {
  Overview overview = farApart();
  const auto found = of(Clash::Kind::travel, overview);
  BOOST_TEST_REQUIRE(found.size() == 1u);
  BOOST_TEST(found[0].show.toStdString() == "Dunstow night");
  BOOST_TEST(found[0].what.toStdString() ==
             "From the load-out at Sluice Hall (2027-04-04 00:00 CEST) to the load-in here are 8.0 h for "
             "1113 km over the ground.");
  BOOST_TEST(found[0].wayOut.toStdString() ==
             "No truck is here before 2027-04-04 12:23 CEST: load in later, or take other gear.");
  overview.shows[1].loadIn = utc(4, 10, 22);
  BOOST_TEST(of(Clash::Kind::travel, overview).size() == 1u);
  overview.shows[1].loadIn = utc(4, 10, 23); // what the way out says
  BOOST_TEST(of(Clash::Kind::travel, overview).empty());
}

BOOST_AUTO_TEST_CASE(what_is_not_known_of_a_way_clashes_with_nothing) {
  Overview overview = farApart();
  overview.venues[1].longitude.reset();
  BOOST_TEST(of(Clash::Kind::travel, overview).empty());
  overview = farApart();
  overview.shows[0].loadOut = {};
  BOOST_TEST(of(Clash::Kind::travel, overview).empty()); // the days alone leave 2027-04-03 to 2027-04-05
  overview.shows[1].from = overview.shows[0].to;         // one whole day is enough for 12.4 h
  BOOST_TEST(of(Clash::Kind::travel, overview).empty());
  overview.venues[1].longitude = 37.0; // 30 degrees: 37.1 h
  const auto found = of(Clash::Kind::travel, overview);
  BOOST_TEST_REQUIRE(found.size() == 1u);
  BOOST_TEST(found[0].wayOut.toStdString() ==
             "No truck is here before 2027-04-04: begin later, or take other gear.");
  overview.shows[1].tour = QStringLiteral("Another tour"); // takes its own gear
  BOOST_TEST(of(Clash::Kind::travel, overview).empty());
}

/// Of the four one is quarantined, one overdue and one never examined: one is fit, six are wanted.
BOOST_AUTO_TEST_CASE(gear_of_two_shows_at_once_says_what_would_fill_it) {
  const auto found = of(Clash::Kind::gear, atOnce());
  BOOST_TEST_REQUIRE(!found.empty());
  BOOST_TEST(
      found[0].what.toStdString() ==
      "Marram bass: 5 too few for the shows that are away at once: Oxmere night (3), Dunstow night (3).");
  BOOST_TEST(found[0].wayOut.toStdString() ==
             "Before the gear leaves on 2027-04-02: examine 2, release or repair 1, hire in 2.");
  Overview one = atOnce();
  one.choices.clear();
  BOOST_TEST(of(Clash::Kind::gear, one).empty());
}

BOOST_AUTO_TEST_CASE(an_examination_that_runs_out_away_says_where_it_is_best_made) {
  Overview overview = smallOverview(); // MB-10 was examined on 2026-04-30, for twelve months
  overview.shows[1].awayFrom = QDate(2027, 4, 28);
  overview.shows[1].awayTo = QDate(2027, 5, 2);
  overview.due = dueLines(overview);
  const auto found = of(Clash::Kind::examination, overview);
  BOOST_TEST_REQUIRE(found.size() == 1u);
  BOOST_TEST(found[0].what.toStdString() ==
             "MB-10 falls due for “yearly look” on 2027-04-30, while the gear is away.");
  BOOST_TEST(found[0].wayOut.toStdString() ==
             "Examine ahead of the day: at the warehouse, between 2027-04-01 and 2027-04-27.");
  BOOST_TEST(found[0].show.toStdString() == "Dunstow night");
}

BOOST_AUTO_TEST_CASE(are_listed_by_day) {
  Overview overview = atOnce();
  const Overview far = farApart();
  overview.venues = far.venues;
  overview.shows[0].loadOut = far.shows[0].loadOut;
  overview.shows[1].loadIn = far.shows[1].loadIn;
  ClashModel model;
  const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
  model.setRows(clashesOf(overview, Figures(UnitSystem::usCustomary)));
  BOOST_TEST_REQUIRE(model.rowCount() >= 2);
  for (int row = 1; row < model.rowCount(); ++row) {
    BOOST_TEST(model.at(row - 1).day.toJulianDay() <= model.at(row).day.toJulianDay());
  }
  const auto travel = of(Clash::Kind::travel, overview);
  BOOST_TEST_REQUIRE(travel.size() == 1u);
  BOOST_TEST(!travel[0].wayOut.isEmpty());
}

BOOST_AUTO_TEST_SUITE_END()
