// SPDX-License-Identifier: GPL-3.0-or-later
// Where a figure begins to count, on either side of each limit: what stands at it, the next figure that a
// double can be, and one that is not known.
#include <boost/test/unit_test.hpp>

#include <cmath>
#include <limits>
#include <numbers>

#include "hang/bridle_parts.h"
#include "hang/build_moment.h"
#include "hang/carried.h"
#include "hang/doubt_picks.h"
#include "hang/doubt_place.h"
#include "hang/hang.h"
#include "hang/joints.h"
#include "hang/span.h"
#include "hang/tilt.h"
#include "hang/uneven.h"

using namespace hangbook::hang;

namespace {

constexpr double unknown = std::numeric_limits<double>::quiet_NaN();

double moreThan(double value) {
  return std::nextafter(value, std::numeric_limits<double>::infinity());
}
double lessThan(double value) {
  return std::nextafter(value, -std::numeric_limits<double>::infinity());
}

} // namespace

BOOST_AUTO_TEST_SUITE(limits)

BOOST_AUTO_TEST_CASE(a_nanometre_is_no_length) {
  BOOST_TEST(!isLength(1e-9));
  BOOST_TEST(isLength(moreThan(1e-9)));
  BOOST_TEST(!isLength(-1.0));
  BOOST_TEST(!isLength(unknown));
}

BOOST_AUTO_TEST_CASE(angles_a_billionth_of_a_degree_apart_are_the_same) {
  for (const double apart : {1e-9, -1e-9}) {
    BOOST_TEST(sameAngle(apart, 0.0));
    BOOST_TEST(sameAngle(0.0, apart));
    BOOST_TEST(!sameAngle(apart * (1.0 + 1e-15), 0.0));
  }
  BOOST_TEST(!sameAngle(5.0, -5.0));
  BOOST_TEST(!sameAngle(unknown, 0.0));
}

BOOST_AUTO_TEST_CASE(a_travel_holds_both_its_ends_and_what_rounding_puts_beyond) {
  constexpr Range point{0.0, 0.0};
  BOOST_TEST(point.holds(1e-9));
  BOOST_TEST(point.holds(-1e-9));
  BOOST_TEST(!point.holds(moreThan(1e-9)));
  BOOST_TEST(!point.holds(lessThan(-1e-9)));
  BOOST_TEST(!point.holds(unknown));
}

BOOST_AUTO_TEST_CASE(nothing_rises_more_than_straight_up) {
  for (const double end : {90.0, -90.0}) {
    BOOST_TEST(isElevation(end));
    BOOST_TEST(!isElevation(end * (1.0 + 1e-15)));
  }
  BOOST_TEST(!isElevation(unknown));
}

BOOST_AUTO_TEST_CASE(a_sine_that_rounding_puts_beyond_1_is_that_of_straight_up) {
  constexpr double straight = 0.5 * std::numbers::pi;
  BOOST_TEST(arcsine(1.0) == straight);
  BOOST_TEST(arcsine(1.0 + 1e-12) == straight);
  BOOST_TEST(arcsine(-1.0 - 1e-12) == -straight);
  BOOST_TEST(arcsine(lessThan(1.0)) < straight);
  BOOST_TEST(arcsine(-lessThan(1.0)) > -straight);
  BOOST_TEST(std::isnan(arcsine(unknown)));
  const Span within = arcsine(Span(-2.0, 0.5));
  BOOST_TEST(within.low == -straight);
  BOOST_TEST(within.high == std::asin(0.5));
}

BOOST_AUTO_TEST_CASE(a_turn_of_which_nothing_is_said_turns_nothing) {
  BOOST_TEST((Turn{}(Vec2{0.3, -0.7}) == Vec2{0.3, -0.7}));
}

BOOST_AUTO_TEST_CASE(half_a_turn_leaves_nothing_known_but_the_length) {
  const Span2 half = turnBy(Span(0.0, std::numbers::pi))(Vec2{2.0, 0.0});
  BOOST_TEST(half.z.low == -2.0);
  BOOST_TEST(half.z.high == 2.0);
  const Span2 less = turnBy(Span(0.0, lessThan(std::numbers::pi)))(Vec2{2.0, 0.0});
  BOOST_TEST(std::abs(less.z.low) < 1e-15);
  BOOST_TEST(less.z.high == 2.0);
}

/// Two pieces without a mass between them still hang somewhere: at the first one's place. What may have none,
/// or some, hangs anywhere.
BOOST_AUTO_TEST_CASE(what_has_no_mass_hangs_where_it_stands) {
  Hang hang;
  hang.bar.frameMass = 0.0;
  hang.bar.frameCg = {0.25, -0.5};
  Doubts doubts;
  doubts.frame.centre = 0.125;
  const HangingSpan none = hangingSpan(hang, doubts, {}, 0);
  BOOST_TEST(none.centre.x.low == 0.125);
  BOOST_TEST(none.centre.x.high == 0.375);
  hang.bar.frameMass = 10.0;
  doubts.frame.lighter = 10.0;
  const HangingSpan perhaps = hangingSpan(hang, doubts, {}, 0);
  BOOST_TEST(std::isinf(perhaps.centre.x.high));
  BOOST_TEST(std::isinf(perhaps.centre.z.low));
}

/// Two parts, of which there may be hardly any: where their mean lies then does not follow.
BOOST_AUTO_TEST_CASE(where_there_may_be_no_mass_there_is_no_centre) {
  Hang hang;
  hang.bar.frameMass = 10.0;
  Element block;
  block.mass = 30.0;
  block.cg = {0.0, -0.5};
  hang.stack = {block};
  Doubts doubts;
  doubts.stack.resize(1);
  const auto centreOf = [&] {
    return hangingSpan(hang, doubts, placeWithin(hang, doubts, {Span(0.0)}), 1).centre.z;
  };
  BOOST_TEST(centreOf().low == -0.375, boost::test_tools::tolerance(1e-12)); // 30 of 40 kg half a metre down
  BOOST_TEST(centreOf().high == -0.375, boost::test_tools::tolerance(1e-12));
  doubts.frame.lighter = 10.0;
  BOOST_TEST(std::isfinite(centreOf().low));
  doubts.stack[0].lighter = 30.0;
  BOOST_TEST(std::isinf(centreOf().low));
  BOOST_TEST(std::isinf(centreOf().high));
}

/// Straight behind, where the angle turns over, a direction is as narrow as anywhere.
BOOST_AUTO_TEST_CASE(a_direction_that_leads_backwards) {
  const auto near = boost::test_tools::tolerance(1e-12);
  const Span back = directionOf({{-2.0, -1.0}, {-0.1, 0.1}});
  BOOST_TEST(back.width() == 2.0 * std::atan(0.1), near);
  BOOST_TEST(0.5 * (back.low + back.high) == std::numbers::pi, near);
  const Span low = directionOf({{-2.0, -1.0}, {-0.3, 0.1}});
  BOOST_TEST(low.width() == std::atan(0.1) + std::atan(0.3), near);
}

BOOST_AUTO_TEST_CASE(a_micrometre_aside_of_a_metre_is_not_flat) {
  BOOST_TEST(!parts::isFlat(1e-6));
  BOOST_TEST(parts::isFlat(lessThan(1e-6)));
  BOOST_TEST(!parts::isFlat(1e-6, 1.0));
  BOOST_TEST(parts::isFlat(lessThan(1e-6), 1.0));
  BOOST_TEST(!parts::isFlat(4e-6, 4.0));
  BOOST_TEST(parts::isFlat(3.9e-6, 4.0));
  BOOST_TEST(parts::isFlat(unknown, 1.0));
}

BOOST_AUTO_TEST_CASE(a_billionth_of_the_load_is_what_rounding_leaves) {
  BOOST_TEST(!parts::counts(1e-9, 1.0));
  BOOST_TEST(parts::counts(moreThan(1e-9), 1.0));
  BOOST_TEST(!parts::counts(4e-9, 4.0));
  BOOST_TEST(parts::counts(4.1e-9, 4.0));
}

BOOST_AUTO_TEST_CASE(a_leg_may_hang_slack_and_not_push) {
  BOOST_TEST(parts::noneBelow0({0.0, 0.0, 0.0}));
  for (const std::size_t leg : {0U, 1U, 2U}) {
    std::array<double, 3> tensions{5.0, 5.0, 5.0};
    tensions.at(leg) = lessThan(0.0);
    BOOST_TEST(!parts::noneBelow0(tensions));
    tensions.at(leg) = unknown;
    BOOST_TEST(!parts::noneBelow0(tensions));
  }
}

BOOST_AUTO_TEST_CASE(parts_of_a_load_a_billionth_apart_are_alike) {
  BOOST_TEST(!isMore(1e-9, 0.0));
  BOOST_TEST(isMore(moreThan(1e-9), 0.0));
  BOOST_TEST(!isMore(0.5, 0.5));
  BOOST_TEST(!isMore(unknown, 0.0));
}

BOOST_AUTO_TEST_CASE(a_billionth_of_a_newton_metre_turns_no_joint) {
  BOOST_TEST(!turnsJoint(1e-9));
  BOOST_TEST(turnsJoint(moreThan(1e-9)));
  BOOST_TEST(!turnsJoint(-1.0));
  BOOST_TEST(!turnsJoint(unknown));
}

BOOST_AUTO_TEST_CASE(picks_may_stand_60_degrees_off_level) {
  const double steepest = std::sin(toRadians(60.0));
  for (const double sign : {1.0, -1.0}) {
    BOOST_TEST(standsUneven(sign * steepest));
    BOOST_TEST(!standsUneven(sign * moreThan(steepest)));
  }
  BOOST_TEST(!standsUneven(unknown));
}

BOOST_AUTO_TEST_CASE(zero_counts_as_below_it) {
  BOOST_TEST(passesZero(0.0, 1.0));
  BOOST_TEST(passesZero(1.0, 0.0));
  BOOST_TEST(!passesZero(0.0, -1.0));
  BOOST_TEST(!passesZero(-1.0, 0.0));
  BOOST_TEST(passesZero(-1.0, 1.0));
  BOOST_TEST(!passesZero(2.0, 1.0));
}

BOOST_AUTO_TEST_CASE(a_span_that_touches_0_is_not_above_it) {
  BOOST_TEST(!Span(0.0, 1.0).above0());
  BOOST_TEST(Span(moreThan(0.0), 1.0).above0());
  BOOST_TEST(!Span(unknown, 1.0).above0());
}

/// Half as far aside as it is away: 30°. As far aside as away, it may lead any way at all.
BOOST_AUTO_TEST_CASE(a_way_as_uncertain_as_it_is_long_leads_anywhere) {
  BOOST_TEST(offTurn(0.5, 1.0) == std::numbers::pi / 6.0, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(offTurn(1.0, 1.0) == std::numbers::pi);
  BOOST_TEST(offTurn(lessThan(1.0), 1.0) < 0.5 * std::numbers::pi);
  BOOST_TEST(offTurn(unknown, 1.0) == std::numbers::pi);
  BOOST_TEST(offTurn(0.0, 0.0) == std::numbers::pi);
}

/// Up to pans and tilts of 30° and actuators of 45° the swing falls steadily with the actuator, and the tilt
/// of a closed hang is the stated one whatever its doubts. Beyond, it is looked for over all of them.
BOOST_AUTO_TEST_CASE(the_swing_is_taken_from_the_ends_as_far_as_it_falls_steadily) {
  const auto tiltFor = [](double tiltDeg, double panDeg, double actuatorDeg) {
    Hang hang;
    hang.bar.picks = SidePair{1.0, 20.0, {0.0, -0.1}, {0.0, -0.3}, {-60.0, 60.0}, {-60.0, 60.0}};
    hang.set.panDeg = panDeg;
    Statics nominal;
    nominal.tiltDeg = tiltDeg;
    const HangingSpan hanging{Span(100.0), Span2{Span(0.1), Span(-0.8)}};
    return upWithin(hang, Doubts{}, hanging, nominal, Span::around(0.0, actuatorDeg), true).tiltDeg;
  };
  for (const double sign : {1.0, -1.0}) {
    const Span stated = tiltFor(sign * 30.0, sign * 30.0, 45.0);
    BOOST_TEST(stated.low == sign * 30.0);
    BOOST_TEST(stated.high == sign * 30.0);
    BOOST_TEST(tiltFor(sign * moreThan(30.0), sign * 30.0, 45.0).width() > 10.0);
    BOOST_TEST(tiltFor(sign * 30.0, sign * moreThan(30.0), 45.0).width() > 10.0);
    BOOST_TEST(tiltFor(sign * 30.0, sign * 30.0, moreThan(45.0)).width() > 10.0);
  }
  BOOST_TEST(tiltFor(40.0, 0.0, 50.0).width() == 0.0);
}

BOOST_AUTO_TEST_CASE(one_figure_that_is_not_known_leaves_the_step_unknown) {
  constexpr BuildMoment moment{BuildStage::stacked, 3};
  for (int which = 0; which <= 7; ++which) {
    CarriedMost most;
    most.joints.emplace_back();
    JointMost& joint = most.joints.front();
    double spare = 0.0;
    double* const figures[] = {&spare,      &most.chain,     &joint.pins[0], &joint.pins[1],
                               &joint.roll, &joint.sideways, &joint.contact, &joint.stop};
    *figures[which] = unknown;
    CarriedWorst worst = CarriedWorst::begun(1);
    worst.take(most, moment);
    BOOST_TEST(worst.unknown.has_value() == (which > 0), "figure " << which);
  }
}

BOOST_AUTO_TEST_SUITE_END()
