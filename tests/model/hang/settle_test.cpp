// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/unit_test.hpp>

#include <cmath>
#include <ctime>
#include <string>

#include "hang/settle.h"
#include "hang/solve.h"
#include "quantity/error.h"
#include "quantity/quantity.h"
#include "support/example_hang.h"
#include "support/random_hang.h"

using namespace hangbook;
using hangbook::testing::exampleHang;
using hangbook::testing::seatedHang;

namespace {

constexpr double g = standardGravity;

/// One seated cabinet of 100 kg on a frame that its two hoists keep level; its centre is 0.5 m from the pin,
/// on a 3-4-5 triangle.
hang::Hang oneSeated(double openToDeg) {
  hang::Hang hang;
  hang.bar.picks = hang::ForeAftPair{{0.5, 0.5}, {-0.5, 0.5}};
  hang.bar.chainAnchor = hang::Vec2{-0.8, 0.5};
  hang::Element element;
  element.mass = 100.0;
  element.cg = {-0.4, -0.3};
  element.outline = {{0.0, 0.0}, {0.0, -0.6}, {-0.8, -0.6}, {-0.8, 0.0}};
  element.chainEye = hang::Vec2{-0.8, 0.0};
  element.joint = hang::Seated{0.0, {-0.8, 0.0}, openToDeg};
  hang.stack = {element};
  hang.set.tiltDeg = 0.0;
  return hang;
}

hang::Hang opened(hang::Hang hang, double openToDeg) {
  for (hang::Element& element : hang.stack) {
    if (auto* seated = std::get_if<hang::Seated>(&element.joint)) {
      seated->openToDeg = openToDeg;
    }
  }
  return hang;
}

} // namespace

BOOST_AUTO_TEST_SUITE(settle)

BOOST_AUTO_TEST_CASE(a_joint_that_may_open_freely_lets_the_centre_under_its_pin) {
  const hang::Settled settled = hang::settle(oneSeated(80.0));
  BOOST_TEST(settled.joints[0].openDeg == hang::toDegrees(std::atan2(0.4, 0.3)),
             boost::test_tools::tolerance(1e-10));
  BOOST_TEST(settled.joints[0].aimDeg == settled.joints[0].openDeg, boost::test_tools::tolerance(1e-10));
  BOOST_TEST(settled.joints[0].contact.value() == 0.0);
  BOOST_TEST(!settled.joints[0].stop.has_value());
  BOOST_TEST(settled.joints[0].pinForces[0] == 50.0 * g, boost::test_tools::tolerance(1e-9));
}

BOOST_AUTO_TEST_CASE(a_stop_carries_what_is_left) {
  const hang::Settled settled = hang::settle(oneSeated(10.0));
  BOOST_TEST(settled.joints[0].openDeg == 10.0);
  BOOST_TEST(settled.joints[0].angleDeg == 10.0);
  BOOST_TEST(!settled.joints[0].contact.has_value());
  const hang::Vec2 cg = hang::turnBy(hang::toRadians(10.0))({-0.4, -0.3});
  BOOST_TEST(settled.joints[0].stop.value() == 100.0 * g * -cg.x / 0.8, boost::test_tools::tolerance(1e-10));
}

BOOST_AUTO_TEST_CASE(a_joint_that_cannot_open_hangs_on_its_stop) {
  const hang::Settled settled = hang::settle(oneSeated(0.0));
  BOOST_TEST(settled.joints[0].openDeg == 0.0);
  BOOST_TEST(settled.joints[0].stop.value() == 50.0 * g, boost::test_tools::tolerance(1e-12));
}

/// Its centre straight under its pin: the joint that cannot open touches its contact, and no stop carries.
BOOST_AUTO_TEST_CASE(a_joint_that_nothing_turns_touches_its_contact) {
  hang::Hang hang = oneSeated(0.0);
  hang.stack[0].cg.x = 0.0;
  const hang::Settled settled = hang::settle(hang);
  BOOST_TEST(settled.joints[0].contact.value() == 0.0);
  BOOST_TEST(!settled.joints[0].stop.has_value());
}

BOOST_AUTO_TEST_CASE(a_joint_that_gravity_shuts_stays_shut) {
  hang::Hang hang = oneSeated(20.0);
  hang.stack[0].cg.x = 0.2;
  const hang::Settled settled = hang::settle(hang);
  BOOST_TEST(settled.joints[0].openDeg == 0.0);
  BOOST_TEST(settled.joints[0].contact.value() == 25.0 * g, boost::test_tools::tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(the_joint_opens_until_the_chain_is_taut) {
  hang::Hang hang = oneSeated(60.0);
  hang.chain = hang::Chain{0.04, 0.0, 13, 1}; // 0.52 m: 20 mm of slack
  const hang::Settled settled = hang::settle(hang);
  BOOST_REQUIRE(settled.chain.has_value());
  BOOST_TEST(settled.chain->taut);
  BOOST_TEST(settled.chain->straight == 0.52, boost::test_tools::tolerance(1e-10));
  // Anchor at √(0.8² + 0.5²) from the pin, eye at 0.8: law of cosines, against the shut joint's angle.
  const double anchorArm = std::hypot(0.8, 0.5);
  const auto between = [&](double length) {
    return std::acos((0.64 + anchorArm * anchorArm - length * length) / (2.0 * 0.8 * anchorArm));
  };
  const double openDeg = hang::toDegrees(between(0.52) - between(0.50));
  BOOST_TEST(settled.joints[0].openDeg == openDeg, boost::test_tools::tolerance(1e-9));
  const hang::Turn turn = hang::turnBy(hang::toRadians(openDeg));
  const hang::Vec2 eye = turn({-0.8, 0.0});
  const hang::Vec2 pull = (1.0 / 0.52) * (hang::Vec2{-0.8, 0.5} - eye);
  const double tension = 100.0 * g * -turn({-0.4, -0.3}).x / -hang::moment(eye, pull);
  BOOST_TEST(settled.chain->tension.value() == tension, boost::test_tools::tolerance(1e-9));
  BOOST_TEST(settled.joints[0].contact.value() == 0.0);
}

/// Ten nanometres of slack: the joint is open, if by less than a millionth of a degree, so that the tension
/// follows; a thousandth of that is rounding, and the joint is shut.
BOOST_AUTO_TEST_CASE(a_joint_is_open_by_however_little_the_chain_is_too_long) {
  hang::Hang hang = oneSeated(60.0);
  hang.chain = hang::Chain{0.04, 0.02 + 1e-8, 12, 1};
  const hang::Settled open = hang::settle(hang);
  BOOST_TEST(open.joints[0].openDeg == hang::toDegrees(1e-8 / 0.8), boost::test_tools::tolerance(1e-3));
  BOOST_TEST(open.chain->tension.value() == 100.0 * g * 0.5, boost::test_tools::tolerance(1e-6));
  hang.chain->fixed = 0.02 + 1e-11;
  const hang::Settled shut = hang::settle(hang);
  BOOST_TEST(shut.joints[0].openDeg == 0.0);
  BOOST_TEST(!shut.chain->tension.has_value());
}

/// A chain that just reaches where the cabinet hangs without one has nothing to carry there.
BOOST_AUTO_TEST_CASE(a_chain_that_just_reaches_pulls_nothing) {
  hang::Hang hang = oneSeated(80.0);
  const double freeRad = std::atan2(0.4, 0.3);
  const hang::Vec2 eye = hang::turnBy(freeRad)({-0.8, 0.0});
  const double straight = hang::length(*hang.bar.chainAnchor - eye);
  for (const double longer : {5e-10, 1e-12, -1e-12}) {
    hang.chain = hang::Chain{0.04, straight - 0.4 + longer, 10, 1};
    const hang::Settled settled = hang::settle(hang);
    BOOST_TEST(settled.chain->taut);
    BOOST_TEST(settled.joints[0].openDeg == hang::toDegrees(freeRad), boost::test_tools::tolerance(1e-9));
    BOOST_TEST(std::abs(settled.chain->tension.value()) < 1e-5);
  }
}

BOOST_AUTO_TEST_CASE(with_slack_that_is_never_used_up_the_chain_carries_nothing) {
  hang::Hang hang = oneSeated(1.0);
  hang.chain = hang::Chain{0.06, 0.0, 10, 1};
  const hang::Settled settled = hang::settle(hang);
  BOOST_TEST(!settled.chain->taut);
  BOOST_TEST(settled.chain->tension.value() == 0.0);
  BOOST_TEST(settled.joints[0].stop.has_value());
}

BOOST_AUTO_TEST_CASE(a_taut_chain_on_a_joint_that_cannot_move_leaves_its_tension_open) {
  hang::Hang hang = oneSeated(0.0);
  hang.chain = hang::Chain{0.05, 0.0, 10, 1};
  hang::Settled settled = hang::settle(hang);
  BOOST_TEST(settled.chain->taut);
  BOOST_TEST(!settled.chain->tension.has_value());
  BOOST_TEST(settled.chain->least == 0.0);
  // One that could open, but that the chain allows no way: what shuts it is the least.
  hang = oneSeated(5.0);
  hang.chain = hang::Chain{0.05, 0.0, 10, 1};
  settled = hang::settle(hang);
  BOOST_TEST(!settled.chain->tension.has_value());
  BOOST_TEST(settled.chain->least == 50.0 * g, boost::test_tools::tolerance(1e-9));
  BOOST_TEST(settled.chain->least == hang::solve(hang).chain->tension, boost::test_tools::tolerance(1e-9));
}

BOOST_AUTO_TEST_CASE(the_contracts_example_is_settled_as_it_is_assembled) {
  const hang::Hang hang = exampleHang();
  const hang::Statics statics = hang::solve(hang);
  const hang::Settled settled = hang::settle(hang);
  BOOST_TEST(settled.tiltDeg == statics.tiltDeg, boost::test_tools::tolerance(1e-9));
  BOOST_TEST(settled.side->rollDeg == statics.side->rollDeg, boost::test_tools::tolerance(1e-9));
  BOOST_TEST(settled.bottom == statics.bottom, boost::test_tools::tolerance(1e-9));
  BOOST_TEST(settled.chain->tension.value() == statics.chain->tension, boost::test_tools::tolerance(1e-9));
  BOOST_TEST(settled.joints[0].pinForces[1] == statics.joints[0].pinForces[1],
             boost::test_tools::tolerance(1e-9));
  BOOST_TEST(!settled.joints[1].seated);
}

BOOST_AUTO_TEST_CASE(a_pivot_whose_chain_would_push_swings_to_where_it_hangs) {
  hang::Hang hang = exampleHang();
  hang.stack[1].cg = {0.10, -0.26};
  BOOST_TEST(hang::solve(hang).chain->tension < 0.0);
  const hang::Settled settled = hang::settle(hang);
  BOOST_TEST(!settled.chain->taut);
  BOOST_TEST(settled.chain->tension.value() == 0.0);
  BOOST_TEST(settled.joints[1].angleDeg < hang::solve(hang).joints[1].angleDeg);
}

BOOST_AUTO_TEST_CASE(the_actuator_stays_where_the_assembled_hang_needs_it) {
  const hang::Hang hang = opened(seatedHang(), 3.0);
  const hang::Settled settled = hang::settle(hang);
  BOOST_TEST(settled.side->actuatorDeg == hang::solve(hang).side->actuatorDeg);
  BOOST_TEST(std::abs(settled.tiltDeg - *hang.set.tiltDeg) > 1e-3); // the opening has moved the centre
  BOOST_TEST(std::abs(settled.cg.x) < 1e-12);
}

BOOST_AUTO_TEST_CASE(what_is_no_hang_is_refused_as_in_the_statics) {
  hang::Hang hang = oneSeated(5.0);
  hang.chain = hang::Chain{0.049, 0.0, 10, 1};
  BOOST_CHECK_EXCEPTION(hang::settle(hang), Error,
                        [](const Error& error) { return error.trouble() == Trouble::notPossible; });
  hang.chain->held = 2;
  BOOST_CHECK_EXCEPTION(hang::settle(hang), Error,
                        [](const Error& error) { return error.place() == "chain.held"; });
  hang = exampleHang();
  hang.set.tiltDeg = 60.0;
  BOOST_CHECK_EXCEPTION(hang::settle(hang), Error,
                        [](const Error& error) { return error.trouble() == Trouble::notPossible; });
}

BOOST_AUTO_TEST_CASE(a_joint_that_gravity_and_chain_both_open_goes_to_its_stop) {
  hang::Hang hang = oneSeated(4.0);
  hang.bar.chainAnchor = hang::Vec2{0.8, 0.0};
  hang.stack[0].chainEye = hang::Vec2{-0.8, -0.5};
  hang.chain = hang::Chain{0.1, 0.0, 17, 1};
  BOOST_CHECK_THROW(hang::solve(hang), Error);
  const hang::Settled settled = hang::settle(hang);
  BOOST_TEST(settled.joints[0].openDeg == 4.0);
  BOOST_TEST(settled.chain->tension.value() == 0.0);
}

BOOST_AUTO_TEST_CASE(every_possible_random_hang_comes_to_rest) {
  hangbook::testing::RandomHangs hangs(2027);
  int settledCount = 0;
  const std::clock_t start = std::clock();
  for (int i = 0; i < 20000; ++i) {
    const double openToDeg = hangs.between(0.0, 8.0);
    const hang::Hang hang = opened(hangs.next(), openToDeg);
    try {
      hang::settle(hang);
      ++settledCount;
    } catch (const Error& error) {
      BOOST_TEST((error.trouble() == Trouble::notPossible));
      BOOST_TEST(std::string(error.what()).find("rest") == std::string::npos, error.what());
    }
  }
  BOOST_TEST(settledCount > 10000);
  BOOST_TEST_MESSAGE(1e6 * static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC / settledCount
                     << " µs each");
}

/// A cabinet whose centre stands above its pin and a little ahead: shut, it rests; pushed open beyond
/// atan(0.05 ÷ 0.3) = 9.46° it would fall to its stop at 30°, where its centre lies lower. Both are
/// equilibria; the one that a hang comes to is the one that the shut shape runs down to, not the lowest of
/// all.
BOOST_AUTO_TEST_CASE(of_two_equilibria_the_one_reached_from_the_shut_shape_is_meant) {
  hang::Hang hang = oneSeated(30.0);
  hang.stack[0].cg = {0.05, 0.3};
  const hang::Settled settled = hang::settle(hang);
  BOOST_TEST(settled.joints[0].openDeg == 0.0);
  BOOST_TEST(settled.joints[0].contact.value() == 100.0 * g * 0.05 / 0.8,
             boost::test_tools::tolerance(1e-12));
  const hang::Turn stop = hang::turnBy(hang::toRadians(30.0));
  BOOST_TEST(stop(hang.stack[0].cg).z < hang.stack[0].cg.z); // the other one is lower
  // Built already beyond the dead point, it does fall.
  std::get<hang::Seated>(hang.stack[0].joint).angleDeg = 10.0;
  std::get<hang::Seated>(hang.stack[0].joint).openToDeg = 20.0;
  BOOST_TEST(hang::settle(hang).joints[0].openDeg == 20.0);
}

BOOST_AUTO_TEST_CASE(a_pull_back_is_no_part_of_the_settled_shape) {
  hang::Hang hang = oneSeated(5.0);
  hang.pullBack = hang::PullBack{1, {-0.8, -0.6}, 90.0, 100.0, {}};
  BOOST_CHECK_EXCEPTION(hang::settle(hang), Error,
                        [](const Error& error) { return error.place() == "pull_back"; });
}

/// A cabinet whose centre lies behind its pin opens until it hangs straight under it, to the last digits, be
/// it behind by a ten-thousandth of a millimetre alone.
BOOST_AUTO_TEST_CASE(anOpenJointHangsStraight) {
  for (const double behind : {1e-7, 1e-6, 0.01, 0.1, 0.3}) {
    const hang::Hang made = testing::oneCabinet({-behind, -0.3}, hang::Seated{0.0, {-0.8, 0.0}, 80.0});
    BOOST_TEST(hang::settle(made).joints[0].openDeg == hang::toDegrees(std::atan2(behind, 0.3)),
               boost::test_tools::tolerance(1e-6));
  }
}

/// Its centre 5 nm behind the pin and 5 nm below it: what draws it is next to nothing, and it opens to 45°.
BOOST_AUTO_TEST_CASE(aJointNextToItsCentreHangsStraight) {
  const hang::Hang made = testing::oneCabinet({-5e-9, -5e-9}, hang::Seated{0.0, {-0.8, 0.0}, 80.0});
  BOOST_TEST(hang::settle(made).joints[0].openDeg == 45.0, boost::test_tools::tolerance(1e-4));
}

BOOST_AUTO_TEST_SUITE_END()
