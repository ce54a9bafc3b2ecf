// SPDX-License-Identifier: GPL-3.0-or-later
// Where a figure begins to count, on either side of each limit: what stands at it, the next figure that a
// double can be, and one that is not known.
#include <boost/test/unit_test.hpp>

#include <cmath>
#include <limits>

#include "hang/carried.h"
#include "hang/doubt_picks.h"
#include "hang/hang.h"

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

BOOST_AUTO_TEST_CASE(a_travel_holds_both_its_ends_and_what_rounding_puts_beyond) {
  constexpr Range point{0.0, 0.0};
  BOOST_TEST(point.holds(1e-9));
  BOOST_TEST(point.holds(-1e-9));
  BOOST_TEST(!point.holds(moreThan(1e-9)));
  BOOST_TEST(!point.holds(lessThan(-1e-9)));
  BOOST_TEST(!point.holds(unknown));
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
