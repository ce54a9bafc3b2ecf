// SPDX-License-Identifier: GPL-3.0-or-later
// What of the room and the day can give way, step by step, by figures put in by hand.
#include <boost/test/unit_test.hpp>

#include <cmath>
#include <optional>
#include <utility>
#include <vector>

#include "few_settings.h"
#include "options/easing_lever.h"
#include "options/house_figures.h"
#include "print.h"

using namespace hangbook;
using namespace hangbook::options;
using hangbook::testing::houseSays;

namespace {

/// A pair on the points P1 and P2 at 12 m, 1 m apart as its picks are.
Trial plain() {
  Trial trial;
  trial.key.hang = QStringLiteral("left");
  trial.key.bar = QStringLiteral("bar");
  trial.key.picks = catalogue::Picks::sidePair;
  trial.key.points = {QStringLiteral("P1"), QStringLiteral("P2")};
  Snapshot& snapshot = trial.snapshot;
  snapshot.today = QDate(2027, 3, 20);
  snapshot.show.hangs.emplace_back().name = trial.key.hang;
  catalogue::BarType& bar = snapshot.catalogue.bars.emplace_back();
  bar.name = trial.key.bar;
  bar.arrangements.resize(1);
  bar.arrangements[0].picks = catalogue::Picks::sidePair;
  bar.arrangements[0].spacing = metres(1.0);
  for (const auto& [name, y] : {std::pair("P1", 0.5), std::pair("P2", -0.5)}) {
    venue::Point& point = snapshot.venue.points.emplace_back();
    point.name = QString::fromLatin1(name);
    point.x = metres(0.0);
    point.y = metres(y);
    point.z = metres(12.0);
  }
  return trial;
}

std::optional<Lever> leverOf(const Trial& trial, const char* kind) {
  std::vector<Lever> levers;
  addRoomLevers(trial, levers);
  for (Lever& each : levers) {
    if (each.kind == QLatin1String(kind)) {
      return each;
    }
  }
  return std::nullopt;
}

} // namespace

BOOST_AUTO_TEST_SUITE(easing_room)

/// A bound of half a metre over a house that asks for 20 cm.
BOOST_AUTO_TEST_CASE(a_bound_below_a_metre_is_the_bound) {
  for (const bool own : {true, false}) {
    Trial trial = plain();
    houseSays(trial.snapshot, "least-trim", 0.2);
    hangOf(trial).leastTrim = own ? std::optional(metres(0.5)) : std::nullopt;
    trial.snapshot.venue.leastTrim = own ? std::nullopt : std::optional(metres(0.5));
    const auto lever = leverOf(trial, "least-trim");
    BOOST_REQUIRE(lever);
    BOOST_TEST(lever->most.front() == 30);
    const Change change = lever->change({10});
    BOOST_REQUIRE(change.figures.size() == 1U);
    BOOST_TEST(change.figures[0].from.value() == 0.5);
    BOOST_TEST(change.figures[0].to.value() == 0.4);
    BOOST_TEST(change.figures[0].steps == 10);
    BOOST_TEST(change.unit.toStdString() == "m");
    BOOST_TEST(change.step == 0.01);
    BOOST_TEST(change.words.startsWith(QStringLiteral(
        "The lowest edge allowed 0.10 m lower: at 0.40 m instead of 0.50 m, which is set by ")));
  }
}

/// A centimetre a step: the steel alone, steel and points and bridles, the venue's upper bound.
BOOST_AUTO_TEST_CASE(what_is_above_goes_up_by_centimetres) {
  Trial trial = plain();
  venue::Venue& venue = trial.snapshot.venue;
  venue.lowSteel = metres(11.0);
  venue.mostTrim = metres(7.0);
  venue::Bridle& bridle = venue.bridles.emplace_back();
  bridle.z = metres(9.5);
  const auto close = boost::test_tools::tolerance(1e-12);
  const double point = inMetres(venue.points[0].z);
  const auto check = [&](const char* kind, double from, const char* words) {
    const auto lever = leverOf(trial, kind);
    BOOST_REQUIRE(lever);
    BOOST_TEST(lever->most == Steps{300}, boost::test_tools::per_element());
    const Change change = lever->change({25});
    BOOST_TEST(change.figures[0].from.value() == from);
    BOOST_TEST(change.figures[0].to.value() == from + 0.25, close);
    BOOST_TEST(change.step == 0.01);
    BOOST_TEST(change.unit.toStdString() == "m");
    BOOST_TEST(change.words.startsWith(QString::fromUtf8(words)), change.words.toStdString());
    Trial then = trial;
    lever->apply(then, {25});
    return then.snapshot.venue;
  };
  const auto steel = check("low-steel", 11.0, "Low steel 0.25 m higher: at 11.25 m instead of 11.00 m");
  BOOST_TEST(inMetres(*steel.lowSteel) == 11.25, close);
  BOOST_TEST(inMetres(steel.points[0].z) == point);
  BOOST_TEST(inMetres(steel.bridles[0].z) == 9.5);
  const auto roof = check("roof", 11.0, "");
  BOOST_TEST(inMetres(*roof.lowSteel) == 11.25, close);
  for (std::size_t i = 0; i < roof.points.size(); ++i) {
    BOOST_TEST(inMetres(roof.points[i].z) == inMetres(venue.points[i].z) + 0.25, close);
  }
  BOOST_TEST(inMetres(roof.bridles[0].z) == 9.75, close);
  const auto most = check("most-trim", 7.0,
                          "The lowest edge allowed 0.25 m higher: at 7.25 m instead of the venue's 7.00 m");
  BOOST_TEST(inMetres(*most.mostTrim) == 7.25, close);
  venue.lowSteel.reset();
  venue.mostTrim.reset();
  BOOST_TEST(!leverOf(trial, "low-steel").has_value());
  BOOST_TEST(!leverOf(trial, "roof").has_value());
  BOOST_TEST(!leverOf(trial, "most-trim").has_value());
}

/// Outdoors where a wind is stated: half a metre a second a step, down to none.
BOOST_AUTO_TEST_CASE(a_wind_is_waited_for) {
  const auto with = [](std::optional<double> wind, std::optional<bool> outdoors) {
    Trial trial = plain();
    trial.snapshot.show.wind = wind ? std::optional(metresPerSecond(*wind)) : std::nullopt;
    trial.snapshot.venue.outdoors = outdoors;
    return trial;
  };
  BOOST_TEST(!leverOf(with(std::nullopt, true), "wind").has_value());
  BOOST_TEST(!leverOf(with(10.2, false), "wind").has_value());
  BOOST_TEST(!leverOf(with(10.2, std::nullopt), "wind").has_value());
  Trial trial = with(10.2, true);
  const auto lever = leverOf(trial, "wind");
  BOOST_REQUIRE(lever);
  BOOST_TEST(lever->most == Steps{20}, boost::test_tools::per_element());
  BOOST_TEST(lever->change({4}).words.toStdString() ==
             "Down before the wind reaches 8.2 m/s instead of 10.2 m/s");
  BOOST_TEST(lever->change({4}).figures[0].to.value() == 8.2, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(lever->change({4}).step == 0.5);
  lever->apply(trial, {4});
  BOOST_TEST(inMetresPerSecond(*trial.snapshot.show.wind) == 8.2, boost::test_tools::tolerance(1e-12));
}

/// One in a hundred less a step, in the show's own list.
BOOST_AUTO_TEST_CASE(a_share_of_the_audience_comes_down_by_one_in_a_hundred) {
  Trial trial = plain();
  houseSays(trial.snapshot, "cover-share", 90.0);
  const auto lever = leverOf(trial, "cover-share");
  BOOST_REQUIRE(lever);
  const Change change = lever->change({15});
  BOOST_REQUIRE(change.figures.size() == 1U);
  BOOST_TEST(change.figures[0].from.value() == 90.0);
  BOOST_TEST(change.figures[0].to.value() == 75.0);
  BOOST_TEST(change.step == 1.0);
  BOOST_TEST(change.unit.toStdString() == "%");
  BOOST_TEST(change.words.startsWith(QStringLiteral("75 % of the audience asked for instead of 90 %")));
  lever->apply(trial, {15});
  const Snapshot& now = trial.snapshot;
  BOOST_TEST(House(now.tour.house, now.venue.house, now.show.house).figure("cover-share").value.value() ==
             75.0);
}

/// Each obstruction has a lever of its own.
BOOST_AUTO_TEST_CASE(each_obstruction_goes_up_by_centimetres) {
  Trial trial = plain();
  for (const auto& [name, underside] : {std::pair("screen", 9.0), std::pair("duct", 10.5)}) {
    venue::Obstruction& made = trial.snapshot.venue.obstructions.emplace_back();
    made.name = QString::fromLatin1(name);
    made.underside = metres(underside);
  }
  std::vector<Lever> all;
  addRoomLevers(trial, all);
  std::erase_if(all, [](const Lever& each) { return each.kind != QStringLiteral("obstruction"); });
  BOOST_REQUIRE(all.size() == 2U);
  BOOST_TEST(all[0].change({30}).words.toStdString() ==
             "screen 0.30 m higher: its underside at 9.30 m instead of 9.00 m");
  BOOST_TEST(all[1].change({30}).words.toStdString() ==
             "duct 0.30 m higher: its underside at 10.80 m instead of 10.50 m");
  all[1].apply(trial, {30});
  const auto close = boost::test_tools::tolerance(1e-12);
  BOOST_TEST(inMetres(trial.snapshot.venue.obstructions[0].underside) == 9.0, close);
  BOOST_TEST(inMetres(trial.snapshot.venue.obstructions[1].underside) == 10.8, close);
}

/// 3-4-5: points 2 m apart come together, and points half a metre apart go apart, each by half along their
/// line.
BOOST_AUTO_TEST_CASE(points_move_along_the_line_between_them) {
  const auto close = boost::test_tools::tolerance(1e-9);
  Trial trial = plain();
  BOOST_TEST(!leverOf(trial, "spacing").has_value()); // as far apart as the picks
  auto& points = trial.snapshot.venue.points;
  points[0].x = metres(1.0);
  points[0].y = metres(1.0);
  points[1].x = metres(1.0 + 1.2);
  points[1].y = metres(1.0 - 1.6);
  const auto nearer = leverOf(trial, "spacing");
  BOOST_REQUIRE(nearer);
  BOOST_TEST(nearer->most == Steps{100}, boost::test_tools::per_element());
  const Change change = nearer->change({25});
  BOOST_TEST(change.words.toStdString() ==
             "Points P1 and P2 at 1.75 m from each other instead of 2.00 m: each moved by 0.125 m");
  BOOST_TEST(change.figures[0].what.toStdString() == "P1 and P2");
  BOOST_TEST(change.figures[0].from.value() == 2.0, close);
  BOOST_TEST(change.figures[0].to.value() == 1.75, close);
  Trial then = trial;
  nearer->apply(then, {25});
  BOOST_TEST(inMetres(then.snapshot.venue.points[0].x) == 1.0 + 0.125 * 0.6, close);
  BOOST_TEST(inMetres(then.snapshot.venue.points[0].y) == 1.0 - 0.125 * 0.8, close);
  BOOST_TEST(inMetres(then.snapshot.venue.points[1].x) == 2.2 - 0.125 * 0.6, close);
  BOOST_TEST(inMetres(then.snapshot.venue.points[1].y) == -0.6 + 0.125 * 0.8, close);
  points[1].x = metres(1.0 + 0.3);
  points[1].y = metres(1.0 - 0.4);
  const auto farther = leverOf(trial, "spacing");
  BOOST_REQUIRE(farther);
  BOOST_TEST(farther->most == Steps{50}, boost::test_tools::per_element());
  BOOST_TEST(farther->change({10}).figures[0].to.value() == 0.6, close);
  then = trial;
  farther->apply(then, {10});
  BOOST_TEST(inMetres(then.snapshot.venue.points[0].x) == 1.0 - 0.05 * 0.6, close);
  BOOST_TEST(inMetres(then.snapshot.venue.points[1].y) == 0.6 - 0.05 * 0.8, close);
  points[1].x = metres(1.0 + 2.0 - 5e-8); // a twentieth of a micrometre short of a whole centimetre
  points[1].y = points[0].y;
  BOOST_TEST(leverOf(trial, "spacing").value().most == Steps{99}, boost::test_tools::per_element());
  points[1] = points[0]; // in one place: no line between them
  points[1].name = QStringLiteral("P2");
  BOOST_TEST(!leverOf(trial, "spacing").has_value());
  trial.key.points.removeLast();
  BOOST_TEST(!leverOf(trial, "spacing").has_value());
}

BOOST_AUTO_TEST_SUITE_END()
