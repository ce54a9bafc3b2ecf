// SPDX-License-Identifier: GPL-3.0-or-later
// How far figures may be off, to the last digit: one cabinet whose places are in doubt, by hand. Each bound
// is met exactly, so that none is too kind and none wider than it says.
#include <boost/test/unit_test.hpp>

#include <cmath>
#include <numbers>
#include <vector>

#include "hang/build_loads.h"
#include "hang/doubt.h"
#include "hang/settle.h"
#include "hang/solve.h"
#include "quantity/quantity.h"
#include "support/example_hang.h"

using namespace hangbook;
using namespace hangbook::hang;
using hangbook::testing::oneCabinet;

namespace {

constexpr double g = standardGravity;
constexpr double root2 = std::numbers::sqrt2;
const auto near = [](double tolerance) { return boost::test_tools::tolerance(tolerance); };

Unfavourable worstOf(const Hang& hang, const Doubts& doubts) {
  const Statics statics = solve(hang);
  const BuildWorst stated = BuildUp(hang.bar, hang.stack, hang.chain).worst(hang.set, statics);
  const Unfavourable worst = unfavourable(hang, statics, stated, doubts);
  BOOST_REQUIRE(worst.bounded);
  return worst;
}

/// Places of the frame, the cabinet's centre and its other places, each coordinate.
Doubts doubtsOf(double frame, double centre, double place) {
  Doubts doubts;
  doubts.stack.resize(1);
  doubts.frame.place = frame;
  doubts.stack[0].centre = centre;
  doubts.stack[0].place = place;
  return doubts;
}

/// Two pins 0.5 m apart, level, the centre 0.1 m ahead of midway and 0.4 m below.
Hang pinned() {
  return oneCabinet({0.1, -0.4}, Pinned{0.0, {Vec2{0.25, 0.0}, Vec2{-0.25, 0.0}}});
}

} // namespace

BOOST_AUTO_TEST_SUITE(doubt_by_hand)

/// Picks 1 m apart, off by 2 mm: 1 m less 2 √2 · 2 mm at the least. The centre, 0.9 m below them, is off by
/// 2 + 3 mm each way, √2 times that along the diagonal.
BOOST_AUTO_TEST_CASE(lever_and_centre) {
  const Unfavourable worst = worstOf(pinned(), doubtsOf(0.002, 0.003, 0.0));
  BOOST_TEST(worst.lever == (1.0 + root2 * 0.005 / 0.9) / (1.0 - 2.0 * root2 * 0.002), near(1e-12));
  BOOST_TEST(worst.centreOff == root2 * (0.005 + 0.002), near(1e-12));
}

/// Of a side-pair its head's places and centre count too, and the actuator that a tilt may need turns the
/// centre about its axis.
BOOST_AUTO_TEST_CASE(lever_and_centre_under_a_head) {
  Hang hang = pinned();
  hang.bar.picks = SidePair{1.0, 50.0, {0.0, -0.1}, {0.0, -0.3}, {-20.0, 20.0}, {-20.0, 20.0}};
  hang.set.tiltDeg = -3.0;
  Doubts doubts = doubtsOf(0.0, 0.003, 0.0);
  doubts.head.place = 0.001;
  doubts.head.centre = 0.004;
  const Unfavourable worst = worstOf(hang, doubts);
  const double off = root2 * (0.003 + 0.001 + 0.004);
  const double depth = -solve(hang).cg.z;
  BOOST_TEST(worst.lever == 1.0 + off / depth, near(1e-12));
  const double farthest = std::hypot(0.1 + 0.003, 0.4 + 0.003);
  BOOST_TEST(worst.actuatorDeg.width() > 0.1);
  BOOST_TEST(worst.centreOff == off + toRadians(worst.actuatorDeg.width()) * farthest, near(1e-12));
}

/// From the pick by 2 · 2 mm, from the stack's pin by 2 mm, of the corner by its own 5 mm.
BOOST_AUTO_TEST_CASE(heights) {
  BOOST_TEST(worstOf(pinned(), doubtsOf(0.002, 0.0, 0.005)).height == 3.0 * 0.002 + 0.005, near(1e-12));
}

/// Pins off by 1 mm: apart by 2 √2 mm less, their line askew by as much on 0.5 m, the centre's arm 1 mm more.
BOOST_AUTO_TEST_CASE(pins) {
  const Unfavourable worst = worstOf(pinned(), doubtsOf(0.0, 0.0, 0.001));
  const double couple = 100.0 * g * (0.1 + 0.001) / (0.5 - 2.0 * root2 * 0.001);
  const double sine = 2.0 * root2 * 0.001 / 0.5;
  const JointStatics& joint = worst.statics.joints[0];
  BOOST_TEST(length(joint.pinLoads[0]) == std::hypot(couple * sine, 50.0 * g + couple), near(1e-9));
  BOOST_TEST(joint.pinForces[0] == 0.5 * length(joint.pinLoads[0]), near(1e-12));
}

/// A chain straight up from an eye 0.8 m behind the pin and 0.3 m below it, 0.8 m long; anchor and
/// pin off by 2, eye by 3 mm: their line turns by √2 · 7 mm on 0.8 m. It holds shut what the centre, 0.4 +
/// 0.001 m behind, opens with its weight. In front of two pins it takes what else they would hold of a centre
/// ahead.
BOOST_AUTO_TEST_CASE(tension_at_its_most) {
  const double sine = root2 * 0.007 / 0.8;
  const double arm = (0.8 - 0.003) * std::sqrt(1.0 - sine * sine);
  for (const double ahead : {-1.0, 1.0}) {
    Hang hang = oneCabinet({0.4 * ahead, -0.3}, Seated{0.0, {-0.7, 0.0}, 0.0});
    if (ahead > 0.0) {
      hang.stack[0].joint = Pinned{0.0, {Vec2{0.1, 0.0}, Vec2{-0.1, 0.0}}};
    }
    hang.bar.chainAnchor = Vec2{0.8 * ahead, 0.5};
    hang.stack[0].chainEye = Vec2{0.8 * ahead, -0.3};
    hang.chain = Chain{0.01, 0.0, 80, 1};
    Doubts doubts = doubtsOf(0.002, 0.001, 0.003);
    const double tension = worstOf(hang, doubts).statics.chain->most;
    BOOST_TEST(tension == 100.0 * g * 0.401 / (arm - (0.3 + 0.003) * sine), near(1e-9));
  }
}

/// The centre 1 mm behind the pin, or half a millimetre ahead of it: the joint hangs on its stop, or presses
/// its contact, 0.7 m behind, with 0.7 N. Both are told.
BOOST_AUTO_TEST_CASE(a_contact_that_may_carry_next_to_nothing) {
  const Hang hang = oneCabinet({-0.001, -0.3}, Seated{0.0, {-0.7, 0.0}, 0.0});
  const Statics statics = standing(hang);
  BOOST_REQUIRE(!statics.joints[0].contact.has_value());
  const BuildWorst stated = BuildUp(hang.bar, hang.stack, hang.chain).worst(hang.set, statics);
  const JointStatics worst =
      unfavourable(hang, statics, stated, doubtsOf(0.0, 0.0015, 0.0)).statics.joints[0];
  BOOST_TEST_REQUIRE(worst.contact.has_value());
  BOOST_TEST(*worst.contact == 0.0);
  BOOST_TEST_REQUIRE(worst.end.has_value());
  BOOST_TEST(worst.end->contact.value() == 100.0 * g * 0.0005 / 0.7, near(1e-9));
  BOOST_TEST(worst.stop.value() == 100.0 * g * 0.0025 / 0.7, near(1e-9));
}

/// A joint that can open and is pressed shut at every step, nothing in doubt: the picks carry what they do as
/// stated, to the last digit.
BOOST_AUTO_TEST_CASE(what_is_surely_shut_is_built_shut) {
  const Hang hang = oneCabinet({0.1, -0.4}, Seated{0.0, {-0.8, 0.0}, 5.0});
  const Unfavourable worst = worstOf(hang, doubtsOf(0.0, 0.0, 0.0));
  for (const std::size_t pick : {0U, 1U}) {
    BOOST_TEST(worst.build.most[pick] == solve(hang).pickLoads[pick].load, near(1e-9));
  }
}

/// Each doubt alone is one.
BOOST_AUTO_TEST_CASE(none_is_none_of_all) {
  Doubts doubts;
  doubts.stack.resize(2);
  BOOST_TEST(doubts.none());
  std::vector<double*> all{&doubts.linkShorter, &doubts.linkLonger};
  for (PieceDoubt* piece : {&doubts.head, &doubts.frame, &doubts.stack[0], &doubts.stack[1]}) {
    all.insert(all.end(), {&piece->lighter, &piece->heavier, &piece->centre, &piece->place});
  }
  for (double* each : all) {
    *each = 1e-6;
    BOOST_TEST(!doubts.none());
    *each = 0.0;
  }
  BOOST_TEST(doubts.none());
}

BOOST_AUTO_TEST_SUITE_END()
