// SPDX-License-Identifier: GPL-3.0-or-later
// The closed form and the settled shape, where both speak of the same hang; the sides of a joint.
#include <boost/test/unit_test.hpp>

#include <cmath>
#include <cstdlib>

#include "hang/settle.h"
#include "hang/sides.h"
#include "hang/solve.h"
#include "quantity/error.h"
#include "quantity/quantity.h"
#include "support/random_hang.h"

using namespace hangbook;
using hangbook::testing::RandomHangs;

namespace {

constexpr double g = standardGravity;

void near(double one, double other, double scale, const char* what) {
  BOOST_TEST(std::abs(one - other) <= 1e-7 * std::max(scale, std::abs(one)),
             what << ": " << one << " against " << other);
}

void compare(const hang::Statics& one, const hang::Statics& other) {
  near(one.mass, other.mass, 1.0, "mass");
  near(one.tiltDeg, other.tiltDeg, 1.0, "tilt");
  near(one.bottom, other.bottom, 1.0, "bottom");
  BOOST_REQUIRE(one.pickCount == other.pickCount);
  for (std::size_t i = 0; i < one.pickCount; ++i) {
    near(one.pickLoads[i].load, other.pickLoads[i].load, 1000.0, "pick");
  }
  BOOST_REQUIRE(one.chain.has_value() == other.chain.has_value());
  if (one.chain) {
    near(one.chain->straight, other.chain->straight, 1.0, "straight");
    near(one.chain->slack, other.chain->slack, 1.0, "slack");
    near(one.chain->tension, other.chain->tension, 1000.0, "tension");
    near(one.chain->most, other.chain->most, 1000.0, "most tension");
  }
  for (std::size_t i = 0; i < one.joints.size(); ++i) {
    const hang::JointStatics& a = one.joints[i];
    const hang::JointStatics& b = other.joints[i];
    near(a.angleDeg, b.angleDeg, 1.0, "angle");
    near(a.aimDeg, b.aimDeg, 1.0, "aim");
    near(a.gravityMoment, b.gravityMoment, 1000.0, "gravity moment");
    BOOST_TEST(b.openDeg == 0.0);
    BOOST_TEST(!b.stop.has_value());
    near(a.contact.value_or(0.0), b.contact.value_or(0.0), 1000.0, "contact");
    near(a.sideways, b.sideways, 1000.0, "sideways");
    BOOST_TEST(a.end.has_value() == b.end.has_value());
    for (std::size_t pin = 0; pin < static_cast<std::size_t>(a.pinCount); ++pin) {
      near(a.pinForces[pin], b.pinForces[pin], 1000.0, "pin");
      if (a.end && b.end) {
        near(a.end->pinForces[pin], b.end->pinForces[pin], 1000.0, "pin at the other end");
      }
    }
  }
}

/// Links more than reach, and joints that can open: about half of these stand shut all the same.
hang::Hang loose(RandomHangs& hangs, int number) {
  hang::Hang hang = hangs.next(number % 3, static_cast<hangbook::testing::Held>((number / 3) % 3));
  const bool forward = hangs.oneOf(3) > 0;
  bool pivot = false;
  for (hang::Element& element : hang.stack) {
    pivot = pivot || std::holds_alternative<hang::Pivot>(element.joint);
    if (auto* seated = std::get_if<hang::Seated>(&element.joint)) {
      seated->openToDeg = hangs.oneOf(3) == 0 ? 0.0 : hangs.between(0.5, 5.0);
    }
    if (forward && !std::holds_alternative<hang::Pivot>(element.joint)) {
      element.cg.x = hangs.between(0.0, 0.1);
    }
  }
  if (hang.chain && !pivot) {
    hang.chain->mark += hangs.oneOf(2);
  }
  return hang;
}

/// 100 kg level under two pins on one line, 0.5 m apart, midway 0.4 m ahead of the centre; a chain straight
/// up 0.8 m behind the middle.
hang::Hang pinnedBesideChain() {
  hang::Hang hang;
  hang.bar.picks = hang::ForeAftPair{{0.5, 0.5}, {-0.5, 0.5}};
  hang.bar.chainAnchor = hang::Vec2{-0.8, 0.5};
  hang::Element element;
  element.mass = 100.0;
  element.cg = {-0.4, -0.3};
  element.outline = {{0.0, 0.0}, {0.0, -0.6}, {-0.8, -0.6}, {-0.8, 0.0}};
  element.chainEye = hang::Vec2{-0.8, 0.0};
  element.joint = hang::Pinned{0.0, {hang::Vec2{0.25, 0.0}, hang::Vec2{-0.25, 0.0}}};
  hang.stack = {element};
  hang.chain = hang::Chain{0.05, 0.0, 10, 1};
  hang.set.tiltDeg = 0.0;
  return hang;
}

} // namespace

BOOST_AUTO_TEST_SUITE(standing)

BOOST_AUTO_TEST_CASE(the_closed_form_and_the_settled_shape_agree_wherever_nothing_opens) {
  RandomHangs hangs(2026);
  int alike = 0;
  int settled = 0;
  for (int i = 0; i < 6000; ++i) {
    const hang::Hang hang = loose(hangs, i);
    hang::Statics closed;
    hang::Settled shape;
    try {
      closed = hang::solve(hang);
      shape = hang::settle(hang);
    } catch (const Error& error) {
      BOOST_REQUIRE(error.trouble() == Trouble::notPossible);
      continue;
    }
    BOOST_TEST_CONTEXT("hang " << i) {
      if (hang::standsAsAssembled(hang.stack, closed, hang.chain ? hang.chain->held : 0)) {
        ++alike;
        compare(closed, hang::asStatics(shape));
      } else {
        ++settled;
        const hang::Statics standing = hang::standing(hang);
        BOOST_TEST(standing.pickLoads[0].load == shape.pickLoads[0].load);
        BOOST_TEST(standing.joints.back().aimDeg == shape.joints.back().aimDeg);
      }
    }
  }
  BOOST_TEST(alike > 500);
  BOOST_TEST(settled > 500);
}

/// Without the chain each side's front pin takes half of half the weight, less the couple 100 g · 0.4 ÷ 0.5 ÷
/// 2; the chain alone would carry 100 g · 0.4 ÷ 0.8, and then half of the weight is left, evenly on four
/// pins.
BOOST_AUTO_TEST_CASE(a_pinned_joint_beside_a_chain_shows_both_ends) {
  const auto tight = boost::test_tools::tolerance(1e-12);
  const hang::Statics statics = hang::solve(pinnedBesideChain());
  BOOST_TEST(statics.chain->tension == 0.0);
  BOOST_TEST(statics.chain->most == 50.0 * g, tight);
  const hang::JointStatics& joint = statics.joints[0];
  BOOST_TEST(joint.pinForces[0] == std::abs(25.0 - 40.0) * g, tight);
  BOOST_TEST(joint.pinForces[1] == (25.0 + 40.0) * g, tight);
  BOOST_REQUIRE(joint.end.has_value());
  BOOST_TEST(joint.end->pinForces[0] == 12.5 * g, tight);
  BOOST_TEST(joint.end->pinForces[1] == 12.5 * g, tight);
  // The settled shape, which cannot move, says the same.
  compare(statics, hang::asStatics(hang::settle(pinnedBesideChain())));
}

/// A stop bounds what the chain may carry: beyond that it would lift the joint off it.
BOOST_AUTO_TEST_CASE(a_stop_bounds_the_tension_from_above) {
  hang::Hang hang = pinnedBesideChain();
  hang.stack[0].joint = hang::Seated{0.0, {-0.8, 0.0}, 3.0};
  const hang::Vec2 eye = hang::turnBy(hang::toRadians(3.0))({-0.8, 0.0});
  hang.chain = hang::Chain{hang::length(hang::Vec2{-0.8, 0.5} - eye), 0.0, 1, 1}; // taut just there
  const hang::Settled settled = hang::settle(hang);
  BOOST_TEST(settled.joints[0].openDeg == 3.0);
  BOOST_REQUIRE(settled.chain->taut);
  BOOST_TEST(!settled.chain->tension.has_value());
  BOOST_TEST(settled.chain->least == 0.0);
  const hang::Vec2 cg = hang::turnBy(hang::toRadians(3.0))({-0.4, -0.3});
  const hang::Vec2 towards = hang::Vec2{-0.8, 0.5} - eye;
  const double arm = -hang::moment(eye, (1.0 / hang::length(towards)) * towards);
  BOOST_TEST(settled.chain->most == 100.0 * g * -cg.x / arm, boost::test_tools::tolerance(1e-9));
  BOOST_REQUIRE(settled.joints[0].end.has_value());
  BOOST_TEST(std::abs(settled.joints[0].end->stop.value()) < 1e-6);
  BOOST_TEST(settled.joints[0].stop.value() > 400.0);
}

/// By hand: 1000 N straight down on a pin, 30 N across, its moment 60 N·m on an upright arm of 2 m below the
/// pin; sides 1 m apart. 0.6 of 1000 N, and 60 N more on the side it leans to; 30 N square to that.
BOOST_AUTO_TEST_CASE(a_roll_loads_the_side_that_it_leans_to) {
  hang::JointStatics joint;
  const hang::Vec2 down{0.0, -1000.0};
  BOOST_TEST(hang::onSide(joint, down, 0.6, 1.0).force == 600.0);
  BOOST_TEST((hang::onSide(joint, down, 0.6, 1.0).side == hang::Side::either));
  joint.sideways = -30.0; // to the right: the left side stands higher, and the centre hangs out to the left
  joint.sidewaysMoment = -30.0 * hang::Vec2{0.0, -2.0};
  const hang::SidePin worst = hang::onSide(joint, down, 0.6, 1.0);
  BOOST_TEST(worst.force == std::hypot(660.0, 30.0), boost::test_tools::tolerance(1e-12));
  BOOST_TEST((worst.side == hang::Side::left));
  joint.pinCount = 2; // halves of it on each pin of the side
  BOOST_TEST(hang::onSide(joint, down, 0.6, 1.0).force == std::hypot(630.0, 15.0),
             boost::test_tools::tolerance(1e-12));
  BOOST_TEST(std::isnan(hang::onSide(joint, down, 0.6, std::nan("")).force));
  // Either alone counts: straight at the pin it is square to the rest, and a couple alone tips it.
  joint.pinCount = 1;
  joint.sidewaysMoment = {};
  BOOST_TEST(hang::onSide(joint, down, 0.6, 1.0).force == std::hypot(600.0, 30.0),
             boost::test_tools::tolerance(1e-12));
  BOOST_TEST((hang::onSide(joint, down, 0.6, 1.0).side == hang::Side::either));
  joint.sideways = 0.0;
  joint.sidewaysMoment = {0.0, -60.0}; // the other way
  BOOST_TEST(hang::onSide(joint, down, 0.6, 1.0).force == 660.0, boost::test_tools::tolerance(1e-12));
  BOOST_TEST((hang::onSide(joint, down, 0.6, 1.0).side == hang::Side::right));
}

BOOST_AUTO_TEST_SUITE_END()
