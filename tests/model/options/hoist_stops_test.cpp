// SPDX-License-Identifier: GPL-3.0-or-later
// One hoist of two stops while the other runs on: loads and the difference at which each limit is passed, by
// hand. A pair of 3500 N each, 1 m apart, its centre 0.4 m below: with the one 0.6 m higher (sin 0.6, tan
// 0.75) it has ½ + 0.4 × 0.75 = 0.8 of it, 5600 N, and the other 1400 N.
#include <boost/test/unit_test.hpp>

#include <cmath>

#include "load_fixture.h"
#include "options/bridle_pick.h"
#include "options/hoist_stops.h"

using namespace hangbook;
using namespace hangbook::options;
using hangbook::testing::LoadCase;
using hangbook::testing::PairLoads;
using hangbook::testing::settledWith;

namespace {

struct Stopping {
  LoadCase of;
  Settled settled = settledWith({3500.0, 3500.0, 3500.0, 3500.0}, true);
  Option option;

  Stopping() {
    of.points[0].name = QStringLiteral("L1");
    of.points[1].name = QStringLiteral("L2");
    of.bar.name = QStringLiteral("bar");
    of.bar.hoistOffsetLimit = metres(0.8);
    of.limits.pickShare.value = 1.0;
    of.limits.sideUnlike.value = 1000.0;
    hang::Hang input;
    hang::SidePair pair;
    pair.pickSpacing = 1.0;
    input.bar.picks = pair;
    option.hangInput = input;
  }

  /// With the left one running on (0), with the right one (1).
  std::vector<OneStops> both(const Settled& worst) const {
    return hoistStops(of.option(), worst, settled, 8.0, option);
  }
  std::vector<OneStops> both() const { return both(settled); }
};

/// Both ways round a limit is passed at 0.6 m.
void passedAt(const Stopping& stopping, const char* left, const char* right) {
  const std::vector<OneStops> both = stopping.both();
  BOOST_REQUIRE(both.size() == 2U);
  BOOST_TEST(both[0].holdBy.toStdString() == left);
  BOOST_TEST(both[1].holdBy.toStdString() == right);
  BOOST_TEST(both[0].holdAtM == 0.6, boost::test_tools::tolerance(1e-9));
  BOOST_TEST(both[1].holdAtM == 0.6, boost::test_tools::tolerance(1e-9));
  BOOST_TEST(both[0].missing.toStdString() == "");
}

} // namespace

BOOST_AUTO_TEST_SUITE(hoist_stops)

BOOST_AUTO_TEST_CASE(what_the_running_one_takes_over) {
  const std::vector<OneStops> both = Stopping().both();
  BOOST_REQUIRE(both.size() == 2U);
  BOOST_TEST(both[0].runs.toStdString() == "left");
  BOOST_TEST(both[0].stopped.toStdString() == "right");
  BOOST_TEST(both[1].runs.toStdString() == "right");
  BOOST_TEST(both[1].stopped.toStdString() == "left");
  const std::vector<double> shown{0.0, 0.05, 0.1, 0.2, 0.3, 0.5, 0.75};
  const auto close = boost::test_tools::tolerance(1e-9);
  for (const OneStops& one : both) {
    BOOST_TEST(one.up);
    BOOST_REQUIRE(one.steps.size() == shown.size());
    for (std::size_t i = 0; i < shown.size(); ++i) {
      const double moved = 7.0 * 0.4 * shown[i] / std::sqrt(1.0 - shown[i] * shown[i]);
      BOOST_TEST(one.steps[i].differenceM == shown[i]);
      BOOST_TEST(one.steps[i].runsKn == 3.5 + moved, close);
      BOOST_TEST(one.steps[i].stoppedKn == 3.5 - moved, close);
      BOOST_TEST(one.steps[i].worstRunsKn == 3.5 + moved, close); // nothing is in doubt
      BOOST_TEST(one.steps[i].worstStoppedKn == 3.5 - moved, close);
    }
  }
  BOOST_TEST(both[0].steps[5].turnDeg == 30.0, close); // sin 0.5
  BOOST_TEST(both[1].steps[5].turnDeg == -30.0, close);
}

BOOST_AUTO_TEST_CASE(each_limit_ends_it_where_it_is_passed) {
  {
    Stopping bar;
    bar.of.bar.hoistOffsetLimit = metres(0.6);
    passedAt(bar, "most difference of the hoists on bar", "most difference of the hoists on bar");
  }
  {
    Stopping share;
    share.of.limits.pickShare.value = 20.0;
    passedAt(share, "pick-share", "pick-share");
  }
  {
    Stopping sides; // 4200 N of difference over a mean of 3500
    sides.of.limits.sideUnlike.value = 120.0;
    passedAt(sides, "pick-share (difference of the sides)", "pick-share (difference of the sides)");
  }
  {
    Stopping hoist; // (5600 + 600 + 400) × 3
    hoist.of.hoist.limit = kilonewtons(19.8);
    passedAt(hoist, "hoist at left", "hoist at right");
  }
  {
    Stopping half;
    half.of.hoist.limit = kilonewtons(39.6);
    half.of.limits.hoistPart.value = 0.5;
    passedAt(half, "hoist at left", "hoist at right");
  }
  {
    Stopping points; // 5600 + 600 + 400 + 200
    points.of.limits.capacity = {6800.0, 6800.0};
    passedAt(points, "point-load of L1", "point-load of L2");
    points.of.points[0].basis = points.of.points[1].basis = catalogue::Basis::dynamic;
    points.of.limits.capacity = {10200.0, 10200.0};
    passedAt(points, "point-load of L1", "point-load of L2");
  }
  {
    Stopping pieces; // 6800 × 3
    pieces.of.shackle.limit = kilonewtons(20.4);
    passedAt(pieces, "hardware: shackle under L1", "hardware: shackle under L2");
  }
}

BOOST_AUTO_TEST_CASE(where_one_point_is_weaker_it_depends_on_which_runs) {
  Stopping points;
  points.of.limits.capacity = {1e6, 6800.0};
  points.of.bar.hoistOffsetLimit = metres(0.7);
  const std::vector<OneStops> both = points.both();
  BOOST_TEST(both[0].holdBy.toStdString() == "most difference of the hoists on bar"); // L1 carries anything
  BOOST_TEST(both[0].holdAtM == 0.7, boost::test_tools::tolerance(1e-9));
  BOOST_TEST(both[1].holdBy.toStdString() == "point-load of L2");
  BOOST_TEST(both[1].holdAtM == 0.6, boost::test_tools::tolerance(1e-9));
}

/// At 60° the bar stands too steep: sin 60° of a spacing of 1 m. Nothing else ends it.
BOOST_AUTO_TEST_CASE(where_no_limit_is_passed_the_bar_stands_too_steep) {
  Stopping steep;
  steep.settled.statics.cg.z = -0.1;
  steep.of.bar.hoistOffsetLimit = metres(5.0);
  for (const OneStops& one : steep.both()) {
    BOOST_TEST(one.holdBy.toStdString() == "the bar stands too steep");
    BOOST_TEST(one.holdAtM == std::sqrt(0.75), boost::test_tools::tolerance(1e-9));
  }
}

/// With 2.5 m between the picks that would be at 2.17 m: nothing is looked for beyond 2 m.
BOOST_AUTO_TEST_CASE(nothing_is_looked_for_beyond_two_metres) {
  Stopping wide;
  wide.settled.statics.cg.z = -0.1;
  wide.settled.layout.picks = {{0.0, 1.25, 0.0}, {0.0, -1.25, 0.0}};
  std::get<hang::SidePair>(wide.option.hangInput->bar.picks).pickSpacing = 2.5;
  wide.of.limits.spacing = 2.5;
  wide.of.bar.hoistOffsetLimit = metres(5.0);
  for (const OneStops& one : wide.both()) {
    BOOST_TEST(one.holdAtM == 2.0, boost::test_tools::tolerance(1e-9));
  }
}

/// What fails level already is passed at once.
BOOST_AUTO_TEST_CASE(a_limit_that_is_passed_level_ends_it_at_nothing) {
  Stopping points;
  points.of.limits.capacity = {4600.0, 1e6}; // carries 4700
  for (const OneStops& one : points.both()) {
    BOOST_TEST(one.holdBy.toStdString() == "point-load of L1");
    BOOST_TEST(one.holdAtM == 0.0);
  }
}

/// A pick that is slack is out, however little the house asks for.
BOOST_AUTO_TEST_CASE(a_slack_pick_is_no_step_and_fails) {
  Stopping slack;
  slack.settled = settledWith({7000.0, 0.0, 7000.0, 0.0}, true);
  slack.settled.statics.cg.y = 0.5; // straight under the left pick
  slack.of.limits.pickShare.value = 0.0;
  const std::vector<OneStops> both = slack.both();
  BOOST_TEST(both[0].steps.empty()); // the right one has nothing to begin with
  BOOST_TEST(both[1].steps.size() == 7U);
  for (const OneStops& one : both) {
    BOOST_TEST(one.holdBy.toStdString() == "pick-share");
    BOOST_TEST(one.holdAtM == 0.0);
  }
}

/// Of a hang of one newton the stopped one carries less than one, and still something: every step is told.
BOOST_AUTO_TEST_CASE(as_little_as_a_part_of_a_newton_is_a_load) {
  Stopping light;
  light.settled = settledWith({0.5, 0.5, 0.5, 0.5}, true);
  for (const OneStops& one : light.both()) {
    BOOST_TEST(one.steps.size() == 7U);
  }
}

BOOST_AUTO_TEST_CASE(what_nobody_stated_is_named_once) {
  const auto missingOf = [](auto change) {
    Stopping open;
    change(open.of);
    const std::vector<OneStops> both = open.both();
    BOOST_TEST(both[0].missing.toStdString() == both[1].missing.toStdString());
    return both[0].missing.toStdString();
  };
  BOOST_TEST(missingOf([](LoadCase&) {}) == "");
  BOOST_TEST(missingOf([](LoadCase& of) { of.bar.hoistOffsetLimit.reset(); }) ==
             "most difference of the hoists on bar");
  BOOST_TEST(missingOf([](LoadCase& of) { of.limits.pickShare.value = notKnown; }) == "pick-share");
  BOOST_TEST(missingOf([](LoadCase& of) { of.hoist.limit.reset(); }) == "hoist at left; hoist at right");
  BOOST_TEST(missingOf([](LoadCase& of) { of.limits.capacity[1] = notKnown; }) == "point-load of L2");
  BOOST_TEST(missingOf([](LoadCase& of) { of.points[0].basis = catalogue::Basis::unknown; }) ==
             "point-load of L1");
  BOOST_TEST(missingOf([](LoadCase& of) { of.shackle.limit.reset(); }) ==
             "hardware: shackle under L1; hardware: shackle under L2");
}

BOOST_AUTO_TEST_CASE(more_than_an_unknown_basis_allows_fails_whichever_it_is) {
  Stopping points;
  points.of.points[0].basis = catalogue::Basis::unknown;
  points.of.limits.capacity = {6800.0, 1e6};
  BOOST_TEST(points.both()[0].holdBy.toStdString() == "point-load of L1");
  BOOST_TEST(points.both()[0].holdAtM == 0.6, boost::test_tools::tolerance(1e-9));
}

BOOST_AUTO_TEST_CASE(a_bridle_is_not_judged) {
  Stopping bridled;
  Case option = bridled.of.option();
  option.bridles[1] = std::make_shared<const BridledPick>();
  const auto both = hoistStops(option, bridled.settled, bridled.settled, 8.0, bridled.option);
  BOOST_TEST(both[0].missing.toStdString() == "bridle L2");
}

BOOST_AUTO_TEST_CASE(what_is_not_bounded_is_told_as_stated_alone) {
  Stopping open;
  Settled worst = open.settled;
  auto doubt = std::make_shared<SettledDoubt>();
  doubt->worst.bounded = false;
  worst.doubt = doubt;
  const OneStops one = open.both(worst)[0];
  BOOST_TEST(one.missing.toStdString() == "what the hang's figures may be off by");
  BOOST_REQUIRE(one.steps.size() == 7U);
  BOOST_TEST(one.steps[0].runsKn == 3.5, boost::test_tools::tolerance(1e-9));
  BOOST_TEST(std::isnan(one.steps[0].worstRunsKn));
  BOOST_TEST(std::isnan(one.steps[0].worstStoppedKn));
}

/// In doubt each pick has 3700 N at most and 400 N at least, the figures themselves being exact.
Settled inDoubt(const Stopping& stopping) {
  Settled worst = settledWith({3700.0, 3700.0, 3700.0, 3700.0}, true);
  auto doubt = std::make_shared<SettledDoubt>();
  doubt->statics = stopping.settled.statics;
  doubt->worst.bounded = true;
  doubt->worst.statics = worst.statics;
  doubt->worst.leastPick = {400.0, 400.0};
  doubt->worst.leastMass = stopping.settled.statics.mass;
  doubt->worst.tiltDeg = hang::Span(0.0);
  worst.doubt = doubt;
  return worst;
}

/// What is moved over is taken off 400 N: the chain may be slack where as stated it is not.
BOOST_AUTO_TEST_CASE(a_chain_that_may_be_slack_has_nothing_at_least) {
  const Stopping doubtful;
  for (const OneStops& one : doubtful.both(inDoubt(doubtful))) {
    BOOST_REQUIRE(one.steps.size() == 7U);
    BOOST_TEST(one.steps[0].worstStoppedKn == 0.4, boost::test_tools::tolerance(1e-6));
    BOOST_TEST(one.steps[0].worstRunsKn == 3.7, boost::test_tools::tolerance(1e-6));
    BOOST_TEST(one.steps[6].stoppedKn > 0.0);
    BOOST_TEST(one.steps[6].worstStoppedKn == 0.0);
  }
}

/// By the loads alone a pick may have 400 of 4100 N, and the two differ by 161 %. By their shares, which the
/// weight's own doubt leaves alone, it has half of it and no difference while level: with three tenths moved
/// over (0.6 m) a fifth, and 4 × 0.3 of their mean.
BOOST_AUTO_TEST_CASE(the_shares_of_the_level_hang_bound_it_too) {
  Stopping doubtful;
  Settled worst = inDoubt(doubtful);
  worst.build.leastShare = 0.5;
  worst.build.unlike = 0.0;
  doubtful.of.limits.pickShare.value = 20.0;
  for (const OneStops& one : doubtful.both(worst)) {
    BOOST_TEST(one.holdBy.toStdString() == "pick-share");
    BOOST_TEST(one.holdAtM == 0.6, boost::test_tools::tolerance(1e-3));
  }
  doubtful.of.limits.pickShare.value = 1.0;
  doubtful.of.limits.sideUnlike.value = 120.0;
  for (const OneStops& one : doubtful.both(worst)) {
    BOOST_TEST(one.holdBy.toStdString() == "pick-share (difference of the sides)");
    BOOST_TEST(one.holdAtM == 0.6, boost::test_tools::tolerance(1e-3));
  }
  worst.build.unknown = hang::BuildMoment{}; // then the loads alone: too unlike already
  BOOST_TEST(doubtful.both(worst)[0].holdAtM == 0.0);
}

/// 3000 of 7000 N are 42.9 % of it: less than 45, whichever of the two runs on.
BOOST_AUTO_TEST_CASE(the_running_one_may_have_the_smaller_share) {
  Stopping unlike;
  unlike.of.limits.pickShare.value = 45.0;
  for (const std::size_t less : {0U, 1U}) {
    const PairLoads loads =
        less == 0U ? PairLoads{3000.0, 4000.0, 3000.0, 4000.0} : PairLoads{4000.0, 3000.0, 4000.0, 3000.0};
    unlike.settled = settledWith(loads, true);
    unlike.settled.statics.cg.y = loads.left / 7000.0 - 0.5;
    const std::vector<OneStops> both = unlike.both();
    BOOST_TEST(both[less].holdBy.toStdString() == "pick-share");
    BOOST_TEST(both[less].holdAtM == 0.0);
    BOOST_TEST(both[less].steps[0].worstRunsKn == 3.0, boost::test_tools::tolerance(1e-9));
  }
  unlike.of.limits.pickShare.value = 42.0;
  BOOST_TEST(unlike.both()[1].holdAtM > 0.0); // level again before it is too much
}

BOOST_AUTO_TEST_CASE(one_pick_or_no_hang_has_no_such_thing) {
  Stopping single;
  single.settled.statics.pickCount = 1;
  BOOST_TEST(single.both().empty());
  Stopping none;
  none.option.hangInput.reset();
  BOOST_TEST(none.both().empty());
}

/// As files write them and read them back; one that does not say which way is up, as none was written before.
BOOST_AUTO_TEST_CASE(stops_are_read_back_as_written) {
  OneStops down;
  down.stopped = QStringLiteral("left");
  down.runs = QStringLiteral("right");
  down.up = false;
  down.holdAtM = 0.25;
  QJsonArray written = toJson({down});
  BOOST_TEST(!stopsFromJson(written).front().up);
  BOOST_TEST(stopsFromJson(written).front().holdAtM == 0.25);
  QJsonObject older = written[0].toObject();
  older.remove(QLatin1String("up"));
  BOOST_TEST(stopsFromJson({older}).front().up);
}

BOOST_AUTO_TEST_SUITE_END()
