// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/unit_test.hpp>

#include <cmath>
#include <string>

#include "hang/joints.h"
#include "hang/solve.h"
#include "quantity/error.h"
#include "quantity/quantity.h"
#include "support/example_hang.h"

using namespace hangbook;
using hangbook::testing::exampleHang;
using hangbook::testing::seatedHang;

namespace {

constexpr double g = standardGravity;

bool notPossible(const Error& error) {
  return error.trouble() == Trouble::notPossible;
}

/// One seated cabinet of 100 kg, level, its centre 0.4 m behind the pin, its contact 0.8 m behind.
hang::Hang oneSeated(double cgX) {
  hang::Hang hang;
  hang.bar.picks = hang::ForeAftPair{{0.5, 0.5}, {-0.5, 0.5}};
  hang.bar.chainAnchor = hang::Vec2{-0.8, 0.0};
  hang::Element element;
  element.mass = 100.0;
  element.cg = {cgX, -0.25};
  element.outline = {{0.0, 0.0}, {0.0, -0.5}, {-0.8, -0.5}, {-0.8, 0.0}};
  element.chainEye = hang::Vec2{-0.8, -0.5};
  element.joint = hang::Seated{0.0, {-0.8, 0.0}};
  hang.stack = {element};
  hang.set.tiltDeg = 0.0;
  return hang;
}

} // namespace

BOOST_AUTO_TEST_SUITE(joints)

BOOST_AUTO_TEST_CASE(a_weight_behind_the_pin_lifts_the_nose_and_opens_the_contact) {
  const hang::Statics statics = hang::solve(oneSeated(-0.4));
  BOOST_TEST(statics.joints[0].gravityMoment == 40.0 * g, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(statics.joints[0].contact.value() == -50.0 * g, boost::test_tools::tolerance(1e-12));
  // Pin: the weight and the pull that the contact cannot give, over two sides.
  BOOST_TEST(statics.joints[0].pinForces[0] == 25.0 * g, boost::test_tools::tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(a_weight_in_front_of_the_pin_shuts_the_contact) {
  const hang::Statics statics = hang::solve(oneSeated(0.2));
  BOOST_TEST(statics.joints[0].gravityMoment == -20.0 * g, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(statics.joints[0].contact.value() == 25.0 * g, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(statics.joints[0].pinForces[0] == 62.5 * g, boost::test_tools::tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(the_least_tension_just_shuts_the_joint) {
  hang::Hang hang = oneSeated(-0.4);
  hang.chain = hang::Chain{0.1, 0.0, 5, 1};
  const hang::Statics statics = hang::solve(hang);
  BOOST_TEST(statics.chain->tension == 50.0 * g, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(statics.chain->tensionIsLeast);
  BOOST_TEST(std::abs(statics.joints[0].contact.value()) < 1e-9);
  BOOST_TEST(std::abs(statics.chain->slack) < 1e-12);
}

BOOST_AUTO_TEST_CASE(a_chain_asks_for_no_tension_where_gravity_opens_nothing) {
  hang::Hang hang = oneSeated(0.2);
  hang.chain = hang::Chain{0.1, 0.02, 5, 1};
  const hang::Statics statics = hang::solve(hang);
  BOOST_TEST(statics.chain->tension == 0.0);
  BOOST_TEST(statics.chain->slack == 0.02, boost::test_tools::tolerance(1e-9));
}

BOOST_AUTO_TEST_CASE(a_chain_shorter_than_straight_is_not_possible) {
  hang::Hang hang = oneSeated(-0.4);
  hang.chain = hang::Chain{0.0999, 0.0, 5, 1};
  BOOST_CHECK_EXCEPTION(hang::solve(hang), Error, notPossible);
}

BOOST_AUTO_TEST_CASE(a_joint_that_gravity_and_chain_both_open_is_not_possible) {
  hang::Hang hang = oneSeated(-0.4);
  hang.bar.chainAnchor = hang::Vec2{0.8, -0.5}; // pulls the foot forward under the pin: nose up
  hang.chain = hang::Chain{0.1, 0.0, 16, 1};
  BOOST_CHECK_EXCEPTION(hang::solve(hang), Error, notPossible);
}

/// The refusal names the joint as the crew counts, from 1.
BOOST_AUTO_TEST_CASE(what_no_chain_closes_is_named) {
  hang::Hang hang = oneSeated(-0.4);
  hang.bar.chainAnchor = hang::Vec2{0.8, 0.0};
  hang.stack[0].chainEye = hang::Vec2{-0.2, 0.0}; // its line runs through the pin
  hang.chain = hang::Chain{0.02, 1.0, 10, 1};
  BOOST_CHECK_EXCEPTION(hang::solve(hang), Error, [](const Error& error) {
    return std::string(error.what()) ==
           "gravity opens the seated joint of element 1, and the chain does not close it";
  });
}

BOOST_AUTO_TEST_CASE(joints_below_the_chain_get_no_help_from_it) {
  hang::Hang hang = seatedHang();
  hang.chain->held = 1;
  hang.chain->mark = 30;
  const hang::Statics statics = hang::solve(hang);
  BOOST_TEST(statics.joints[0].contact.value() > -1e-9);
  BOOST_TEST(statics.joints[1].contact.value() < 0.0);
}

BOOST_AUTO_TEST_CASE(the_worst_seated_joint_decides_the_tension) {
  const hang::Hang hang = seatedHang();
  const hang::Statics statics = hang::solve(hang);
  double least = 1e9;
  for (const hang::JointStatics& joint : statics.joints) {
    BOOST_TEST(joint.gravityMoment > 0.0);
    BOOST_TEST(joint.contact.value() > -1e-9);
    least = std::min(least, joint.contact.value());
  }
  BOOST_TEST(std::abs(least) < 1e-9);
}

BOOST_AUTO_TEST_CASE(a_pinned_joint_takes_the_moment_in_its_pins_without_the_chain) {
  hang::Hang hang = oneSeated(-0.4);
  hang.stack[0].joint = hang::Pinned{0.0, {hang::Vec2{0.0, 0.0}, hang::Vec2{-0.1, 0.0}}};
  hang.chain = hang::Chain{0.1, 0.0, 5, 1};
  const hang::Statics statics = hang::solve(hang);
  // Moment about the midpoint: 100 kg × 0.35 m; couple over 0.1 m: 350 kg; each pin 50 kg direct.
  BOOST_TEST(statics.joints[0].pinCount == 2);
  BOOST_TEST(statics.joints[0].pinForces[0] == 150.0 * g, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(statics.joints[0].pinForces[1] == 200.0 * g, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(!statics.joints[0].contact.has_value());
  BOOST_TEST(statics.chain->tension == 0.0);
}

BOOST_AUTO_TEST_CASE(a_chain_through_the_pivot_holds_nothing) {
  const hang::Piece piece{0.0, 0.0, {}, {0.0, 0.0}, 10.0, {-5.0, -5.0}};
  const hang::ChainLine line{{-1.0, 0.0}, {1.0, 0.0}, 2.0};
  BOOST_CHECK_EXCEPTION(hang::pivotTension(piece, line, {0.0, 1.0}, 0.0), Error, notPossible);
}

BOOST_AUTO_TEST_CASE(a_pivot_that_would_push_its_chain_reports_a_tension_below_0) {
  hang::Hang hang = exampleHang();
  hang.stack[1].cg = {0.4, -0.26};
  hang.set.tiltDeg.reset();
  hang.set.actuatorDeg = 0.0;
  const hang::Statics statics = hang::solve(hang);
  BOOST_TEST(statics.chain->tension < 0.0);
}

BOOST_AUTO_TEST_CASE(roll_leaves_less_of_the_weight_in_the_plane) {
  hang::Hang hang = exampleHang();
  hang.chain.reset();
  hang.stack.pop_back();
  hang.stack[0].joint = hang::Pinned{0.0, {hang::Vec2{-0.36, 0.0}, hang::Vec2{-0.36, -0.62}}};
  const hang::Statics statics = hang::solve(hang);
  // Pins straight above and below the centre share evenly, but for the couple of the tilt; their sum in the
  // plane is the weight × the cosine of the roll.
  const double inPlane = 92.0 * g * std::cos(hang::toRadians(statics.side->rollDeg));
  BOOST_TEST(statics.side->rollDeg != 0.0);
  BOOST_TEST(2.0 * (statics.joints[0].pinForces[0] + statics.joints[0].pinForces[1]) == inPlane,
             boost::test_tools::tolerance(1e-9));
}

BOOST_AUTO_TEST_SUITE_END()
