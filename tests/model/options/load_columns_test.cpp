// SPDX-License-Identifier: GPL-3.0-or-later
// Loads side by side: which stand where, what lies at their corners, and what is said of all of them
// together.
#include <boost/test/unit_test.hpp>

#include <cmath>
#include <limits>
#include <numbers>

#include "load_fixture.h"
#include "options/box.h"
#include "options/load_bounds.h"
#include "options/loads.h"
#include "print.h"

using namespace hangbook;
using namespace hangbook::options;
using hangbook::testing::LoadCase;
using hangbook::testing::settledWith;

namespace {

std::size_t placeOf(const Rule& rule) {
  const auto all = weightRules();
  const auto found = std::ranges::find(all, rule.evaluate, &Rule::evaluate);
  BOOST_REQUIRE(found != all.end());
  return static_cast<std::size_t>(found - all.begin());
}

/// The left pick's build never below its load; left and right apart, and two settings apart.
std::vector<Settled> two(bool sidePair) {
  return {settledWith({4000.0, 3000.0, 5000.0, 2500.0}, sidePair),
          settledWith({2000.0, 6000.0, 1000.0, 6500.0}, sidePair)};
}

/// Just outside of a figure, by less than a part in 10¹².
bool justBelow(double figure, double of) {
  return figure < of && figure > of * (1.0 - 1e-12);
}
bool justAbove(double figure, double of) {
  return figure > of && figure < of * (1.0 + 1e-12);
}

} // namespace

BOOST_AUTO_TEST_SUITE(load_columns)

BOOST_AUTO_TEST_CASE(figures_stand_by_pick_and_setting) {
  const LoadCase of;
  const std::vector<Settled> settings = two(false);
  const LoadColumns columns(of.option(), settings);
  BOOST_TEST(columns.alike);
  BOOST_TEST(columns.loaded);
  BOOST_TEST(!columns.sidePair);
  BOOST_TEST(columns.picks == 2U);
  BOOST_TEST(columns.size() == 2U);
  BOOST_TEST(columns.gearHeavier == 2.0);
  const auto each = boost::test_tools::per_element();
  BOOST_TEST(columns.stands[0][0].load == (std::vector<double>{4000.0, 2000.0}), each);
  BOOST_TEST(columns.stands[0][1].load == (std::vector<double>{3000.0, 6000.0}), each);
  BOOST_TEST(columns.stands[0][0].most == (std::vector<double>{5000.0, 2000.0}), each);
  BOOST_TEST(columns.stands[0][1].most == (std::vector<double>{3000.0, 6500.0}), each);
  for (const std::size_t uneven : {1U, 2U}) {
    BOOST_TEST(columns.stands.at(uneven)[0].load.empty());
    BOOST_TEST(columns.stands.at(uneven)[1].most.empty());
  }
  BOOST_TEST(columns.weight[0] == 7000.0, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(columns.weight[1] == 8000.0, boost::test_tools::tolerance(1e-12));
}

/// The higher pick has 0.8 of it: 5600 and 1400 of 7000 N, 6400 and 1600 of 8000 N.
BOOST_AUTO_TEST_CASE(a_side_pair_stands_uneven_either_way) {
  const LoadCase of;
  const LoadColumns columns(of.option(), two(true));
  BOOST_TEST(columns.alike);
  BOOST_TEST(columns.sidePair);
  const auto close = boost::test_tools::tolerance(1e-9);
  const auto compare = [&](const std::vector<double>& column, double first, double second) {
    BOOST_TEST_REQUIRE(column.size() == 2U);
    BOOST_TEST(column[0] == first, close);
    BOOST_TEST(column[1] == second, close);
  };
  compare(columns.stands[1][0].load, 5600.0, 6400.0);
  compare(columns.stands[1][1].load, 1400.0, 1600.0);
  compare(columns.stands[2][0].load, 1400.0, 1600.0);
  compare(columns.stands[2][1].load, 5600.0, 6400.0);
  compare(columns.stands[1][0].most, 5600.0, 6400.0);
  compare(columns.stands[1][1].most, 2500.0, 6500.0);
  compare(columns.stands[2][0].most, 5000.0, 1600.0);
  compare(columns.stands[2][1].most, 5600.0, 6500.0);
}

BOOST_AUTO_TEST_CASE(what_does_not_follow_is_of_no_use) {
  LoadCase of;
  const auto columnsOf = [&](const Settled& other, bool sidePair = false) {
    return LoadColumns(of.option(),
                       std::vector<Settled>{settledWith({4000.0, 3000.0, 5000.0, 2500.0}, sidePair), other});
  };
  BOOST_TEST(columnsOf(settledWith({1.0, 1.0, 1.0, 1.0})).loaded);
  BOOST_TEST(!LoadColumns(of.option(), std::vector<Settled>{}).alike);
  for (const int pick : {0, 1}) {
    const auto with = [pick](double load, double most) {
      return pick == 0 ? settledWith({load, 1.0, most, 1.0}) : settledWith({1.0, load, 1.0, most});
    };
    BOOST_TEST(columnsOf(with(std::numeric_limits<double>::min(), 1.0)).loaded);
    BOOST_TEST(!columnsOf(with(0.0, 1.0)).loaded);
    BOOST_TEST(columnsOf(with(0.0, 1.0)).alike);
    BOOST_TEST(!columnsOf(with(-1.0, 1.0)).loaded);
    BOOST_TEST(columnsOf(with(1.0, 0.0)).loaded); // no load of the build
    BOOST_TEST(!columnsOf(with(notKnown, 1.0)).alike);
    BOOST_TEST(!columnsOf(with(1.0, notKnown)).alike);
    BOOST_TEST(!columnsOf(with(1.0, std::numeric_limits<double>::infinity())).alike);
  }
  // Uneven the lower pick keeps a fifth; with its centre twice as far below it would keep less than nothing.
  BOOST_TEST(columnsOf(settledWith({4000.0, 3000.0, 0.0, 0.0}, true), true).loaded);
  Settled deep = settledWith({4000.0, 3000.0, 0.0, 0.0}, true);
  deep.statics.cg.z = -0.8;
  BOOST_TEST(!columnsOf(deep, true).loaded);
  BOOST_TEST(columnsOf(deep, true).alike);
  of.picks.spacing.reset();
  BOOST_TEST(!columnsOf(settledWith({4000.0, 3000.0, 0.0, 0.0}, true), true).alike);
}

BOOST_AUTO_TEST_CASE(corners_lie_a_little_outside_of_every_figure) {
  const LoadCase of;
  std::vector<Settled> settings = two(true);
  settings.push_back(settledWith({3000.0, 4000.0, 3000.0, 4000.0}, true)); // between
  settings[1].build.unknown = hang::BuildMoment{};
  const LoadColumns all(of.option(), settings);
  const LoadColumns corners = all.corners();
  BOOST_TEST(corners.size() == 2U);
  BOOST_TEST(corners.picks == 2U);
  BOOST_TEST(corners.sidePair);
  BOOST_TEST(corners.gearHeavier == 2.0);
  const auto compare = [](const std::vector<double>& ends, const std::vector<double>& column) {
    BOOST_TEST_REQUIRE(ends.size() == 2U);
    BOOST_TEST(justBelow(ends[0], std::ranges::min(column)));
    BOOST_TEST(justAbove(ends[1], std::ranges::max(column)));
  };
  for (std::size_t stand = 0; stand < 3U; ++stand) {
    for (std::size_t pick = 0; pick < 2U; ++pick) {
      compare(corners.stands.at(stand).at(pick).load, all.stands.at(stand).at(pick).load);
      compare(corners.stands.at(stand).at(pick).most, all.stands.at(stand).at(pick).most);
    }
  }
  compare(corners.weight, all.weight);
  const double open = static_cast<double>(Verdict::unproven);
  BOOST_TEST(corners.build == (std::vector<double>{0.0, open}), boost::test_tools::per_element());
  BOOST_TEST(corners.bounded == (std::vector<double>{0.0, 0.0}), boost::test_tools::per_element());
  const LoadColumns level = LoadColumns(of.option(), two(false)).corners();
  BOOST_TEST(!level.sidePair);
  BOOST_TEST(level.stands[1][0].load.empty());
}

BOOST_AUTO_TEST_CASE(chains_that_lean_carry_more_and_the_bar_as_much) {
  const LoadCase of;
  const LoadColumns all(of.option(), two(true));
  const LoadColumns more = all.leaning(2.0);
  for (std::size_t stand = 0; stand < 3U; ++stand) {
    for (std::size_t pick = 0; pick < 2U; ++pick) {
      for (std::size_t i = 0; i < 2U; ++i) {
        BOOST_TEST(more.stands.at(stand).at(pick).load[i] == 2.0 * all.stands.at(stand).at(pick).load[i]);
        BOOST_TEST(more.stands.at(stand).at(pick).most[i] == 2.0 * all.stands.at(stand).at(pick).most[i]);
      }
    }
  }
  BOOST_TEST(more.weight == all.weight, boost::test_tools::per_element());
}

/// The left point carries 6200 N of the one setting and 3200 of the other.
BOOST_AUTO_TEST_CASE(what_is_said_of_all_settings_together) {
  LoadCase of;
  of.limits.capacity = {6000.0, 1e6};
  const std::size_t points = placeOf(pointLoadRule);
  const auto saidOf = [&](const LoadColumns& all, const LoadColumns& corners) {
    return overAll(of.option(), all, corners);
  };
  const LoadColumns all(of.option(), two(false));
  const LoadColumns corners = all.corners();
  const auto said = saidOf(all, corners);
  BOOST_TEST(said.size() == weightRules().size());
  BOOST_TEST(said[points].least == Verdict::holds);
  BOOST_TEST(said[points].most == Verdict::fails);
  BOOST_TEST(!said[points].same());
  BOOST_TEST(said[placeOf(hoistRule)].most == Verdict::holds);
  BOOST_TEST(said[placeOf(hoistRule)].same());
  BOOST_TEST(said[placeOf(unevenRule)].same());                 // the last one of which it speaks
  BOOST_TEST(said[placeOf(chainRule)].least == Verdict::holds); // of which it says nothing
  BOOST_TEST(said[placeOf(chainRule)].most == Verdict::fails);
  of.limits.capacity = {3000.0, 1e6};
  BOOST_TEST(saidOf(all, corners)[points].least == Verdict::fails);
  BOOST_TEST(saidOf(all, corners)[points].same());
  // Nothing where loads do not follow, a pick is slack, or a bridle stands between.
  LoadColumns unlike = all;
  unlike.alike = false;
  BOOST_TEST(!saidOf(unlike, corners)[points].same());
  LoadColumns slack = all;
  slack.loaded = false;
  BOOST_TEST(!saidOf(slack, corners)[points].same());
  Case bridled = of.option();
  bridled.carriers.pop_back();
  BOOST_TEST(!overAll(bridled, all, corners)[points].same());
}

BOOST_AUTO_TEST_CASE(rules_that_neither_trim_nor_points_change) {
  for (const Rule* rule : {&barRule, &jointRule, &contactRule, &chainRule, &pickShareRule}) {
    BOOST_TEST(isOfRigAndHoist(*rule), rule->id);
  }
  for (const Rule* rule : {&pointLoadRule, &zoneLoadRule, &hoistRule, &hardwareRule, &unevenRule, &leanRule,
                           &windRule, &bridleRule}) {
    BOOST_TEST(!isOfRigAndHoist(*rule), rule->id);
  }
}

/// At 60° a chain pulls 1 ÷ cos 60° = 2 times its load: the left point carries 2 × 5000 + 1200 N at most.
BOOST_AUTO_TEST_CASE(a_load_lies_between_plumb_and_the_most_lean) {
  LoadCase of;
  const std::vector<Settled> settings = two(false);
  const std::size_t points = placeOf(pointLoadRule);
  const auto ask = [&](auto look) {
    const Case option = of.option();
    RigFold fold(settings);
    LoadBounds bounds(option, fold, settings.size());
    look(bounds);
  };
  const auto comesTo = [&](std::size_t pick, std::size_t setting, double plumb, double leaning) {
    of.limits.capacity = {1e6, 1e6};
    for (const double factor : {1.000001, 0.999999}) {
      of.limits.capacity[pick] = plumb * factor;
      ask([&](LoadBounds& bounds) {
        BOOST_TEST((bounds.least(points, setting) == Verdict::fails) == (factor < 1.0));
        BOOST_TEST((bounds.most(points, setting) == Verdict::fails));
        BOOST_TEST((bounds.atAnyLean(points, setting) ==
                    (factor < 1.0 ? std::optional(Verdict::fails) : std::nullopt)));
      });
      of.limits.capacity[pick] = leaning * factor;
      ask([&](LoadBounds& bounds) {
        BOOST_TEST((bounds.least(points, setting) == Verdict::holds));
        BOOST_TEST((bounds.most(points, setting) == (factor < 1.0 ? Verdict::fails : Verdict::tight)));
        BOOST_TEST(!bounds.atAnyLean(points, setting).has_value());
      });
    }
  };
  comesTo(0, 0, 6200.0, 11200.0);
  comesTo(1, 1, 7700.0, 14200.0);
  of.limits.capacity = {1e6, 1e6};
  ask([&](LoadBounds& bounds) {
    BOOST_TEST((bounds.atAnyLean(points, 0) == Verdict::holds));
    BOOST_TEST(bounds.overAll(points).same());
    const std::size_t chain = placeOf(chainRule); // of which nothing is said
    BOOST_TEST(!bounds.least(chain, 0).has_value());
    BOOST_TEST(!bounds.most(chain, 0).has_value());
    BOOST_TEST(!bounds.atAnyLean(chain, 0).has_value());
  });
}

/// The chain may lean by the slack of an angle more than the limit, and rounding may take off a last digit:
/// the bound is not below that, and hardly above.
BOOST_AUTO_TEST_CASE(the_most_lean_is_that_of_the_rule_and_a_last_digit_more) {
  LoadCase of;
  of.limits.hoistBody = of.limits.hoistChain = of.limits.rigging = 0.0;
  const std::vector<Settled> settings(1, settledWith({5000.0, 1.0, 5000.0, 1.0}));
  const std::size_t points = placeOf(pointLoadRule);
  const double most = 5000.0 / std::cos((60.0 + hang::angleSlackDeg) * std::numbers::pi / 180.0);
  const auto failsAt = [&](double capacity) {
    of.limits.capacity = {capacity, 1e6};
    const Case option = of.option();
    RigFold fold(settings);
    return LoadBounds(option, fold, 1).most(points, 0) == Verdict::fails;
  };
  BOOST_TEST(failsAt(most));
  BOOST_TEST(!failsAt(most * (1.0 + 1.25e-12)));
}

/// Half of what points and picks are apart more or less than each other: up to a micrometre is plumb.
BOOST_AUTO_TEST_CASE(a_micrometre_off_is_no_longer_plumb) {
  LoadCase of;
  Settled settled = settledWith({1.0, 1.0, 1.0, 1.0});
  settled.layout.picks = {{}, {}};
  of.limits.spacing = 2e-6;
  BOOST_TEST(chainOff(of.option(), settled) == 1e-6);
  of.limits.spacing = std::nextafter(2e-6, 0.0);
  BOOST_TEST(chainOff(of.option(), settled) == 0.0);
  settled.layout.picks = {{0.3, 0.0, 0.0}, {0.0, 0.4, 5.0}}; // 0.5 m in plan
  of.limits.spacing = 0.7;
  BOOST_TEST(chainOff(of.option(), settled) == 0.1, boost::test_tools::tolerance(1e-12));
  of.limits.spacing = 0.3;
  BOOST_TEST(chainOff(of.option(), settled) == 0.1, boost::test_tools::tolerance(1e-12));
}

/// A fore-aft pair of which both picks are stated, 1.2 m apart on a level bar under points 1 m apart.
BOOST_AUTO_TEST_CASE(only_a_fore_aft_pair_stands_otherwise_while_level) {
  using catalogue::Picks;
  const auto offOf = [](Picks picks, bool front, bool rear) {
    LoadCase of;
    of.picks.picks = picks;
    of.picks.front = front ? std::optional(catalogue::Position{metres(0.5), metres(0.0)}) : std::nullopt;
    of.picks.rear = rear ? std::optional(catalogue::Position{metres(-0.7), metres(0.0)}) : std::nullopt;
    return levelOff(of.option());
  };
  BOOST_TEST(offOf(Picks::foreAftPair, true, true) == 0.1, boost::test_tools::tolerance(1e-9));
  BOOST_TEST(offOf(Picks::foreAftPair, true, false) == 0.0);
  BOOST_TEST(offOf(Picks::foreAftPair, false, true) == 0.0);
  BOOST_TEST(offOf(Picks::sidePair, true, true) == 0.0);
  BOOST_TEST(offOf(Picks::single, true, true) == 0.0);
}

BOOST_AUTO_TEST_CASE(where_nothing_bounds_the_lean_nothing_is_said_of_it) {
  const std::vector<Settled> settings = two(false);
  const std::size_t points = placeOf(pointLoadRule);
  const auto bounded = [&](const Case& option) {
    RigFold fold(settings);
    LoadBounds bounds(option, fold, settings.size());
    BOOST_TEST((bounds.least(points, 0) == Verdict::holds));
    return bounds.most(points, 0).has_value();
  };
  LoadCase of;
  BOOST_TEST(bounded(of.option()));
  of.limits.leanMost.value = 89.0;
  of.limits.capacity = {1e9, 1e9};
  BOOST_TEST(bounded(of.option()));
  of.limits.leanMost.value = 90.0;
  BOOST_TEST(!bounded(of.option()));
  of.limits.leanMost.value = 90.0 - hang::angleSlackDeg;
  BOOST_TEST(!bounded(of.option()));
  of.limits.leanMost.value = notKnown;
  BOOST_TEST(!bounded(of.option()));
  of.limits.leanMost.value = 60.0;
  Case single = of.option(); // one pick hangs under its point
  single.points.pop_back();
  BOOST_TEST(!bounded(single));
  of.picks.picks = catalogue::Picks::foreAftPair; // level on the way up its picks stand 1.2 m apart, not 1 m
  of.picks.front = catalogue::Position{metres(0.6), metres(0.0)};
  of.picks.rear = catalogue::Position{metres(-0.6), metres(0.0)};
  BOOST_TEST(!bounded(of.option()));
  of.limits.spacing = 1.2;
  BOOST_TEST(bounded(of.option()));
}

BOOST_AUTO_TEST_SUITE_END()
