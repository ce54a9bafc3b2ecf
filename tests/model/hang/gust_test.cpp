// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>
#include <limits>

#include <boost/test/unit_test.hpp>

#include "hang/gust.h"
#include "hang/layout.h"
#include "hang/solve.h"
#include "quantity/quantity.h"

using namespace hangbook;

namespace {

constexpr double weight = 100.0 * standardGravity;

/// One cabinet of 100 kg, level, on fore-aft picks; its centre 0.4 m ahead of the pin and 0.5 m below it.
hang::Hang oneCabinet(const hang::Joint& joint) {
  hang::Hang made;
  made.bar.picks = hang::ForeAftPair{{0.5, 0.0}, {-0.5, 0.0}};
  made.bar.chainAnchor = hang::Vec2{-0.8, 0.0};
  made.set.tiltDeg = 0.0;
  hang::Element element;
  element.mass = 100.0;
  element.cg = {0.4, -0.5};
  element.chainEye = hang::Vec2{-0.8, -0.5};
  element.outline = {{0.5, 0.0}, {0.5, -0.9}, {-0.9, -0.9}, {-0.9, 0.0}};
  element.joint = joint;
  made.stack = {element};
  return made;
}

hang::Pushed pushed(const hang::Hang& hang, const hang::SidePush& push, double heavier = 1.0,
                    const hang::Places& places = {0.0, {0.0}}) {
  const hang::Statics statics = hang::solve(hang);
  const int held = hang.chain ? hang.chain->held : 0;
  return hang::inGust(hang.stack, held, statics,
                      hang::armsOf(hang.stack, held, hang::layOut(hang, statics), places), {push}, heavier);
}

/// 100 N at the centre, 0.5 m below the joint.
constexpr hang::SidePush ahead{100.0, 50.0, 0.0, 0.0};

const auto near = boost::test_tools::tolerance(1e-9);

} // namespace

BOOST_AUTO_TEST_SUITE(gust)

/// By hand: gravity shuts the joint with 392.266 N·m over 0.8 m: 490.3325 N at the contact, and the pin takes
/// weight and that. 50 N·m over 0.8 m are 62.5 N more or less.
BOOST_AUTO_TEST_CASE(aSeatedJointByHand) {
  const hang::Pushed told = pushed(oneCabinet(hang::Seated{0.0, {-0.8, 0.0}, 5.0}), ahead);
  const hang::PushedJoint& joint = told.joints[0];
  BOOST_TEST(*joint.contactLeast == 490.3325 - 62.5, near);
  BOOST_TEST(*joint.most.contact == 490.3325 + 62.5, near);
  BOOST_TEST(joint.most.pinForces[0] == 0.5 * (weight + 490.3325 + 100.0 + 62.5), near);
  BOOST_TEST(!joint.most.stop.has_value());
  BOOST_TEST(told.tensionMost == 0.0);
  BOOST_TEST(!told.tensionLeast.has_value());
}

/// Wet cloth of a tenth of its weight presses and pulls a tenth more, and is no help where it is dry.
BOOST_AUTO_TEST_CASE(whatIsWetCountsWhereItHurts) {
  const hang::PushedJoint joint =
      pushed(oneCabinet(hang::Seated{0.0, {-0.8, 0.0}, 5.0}), ahead, 1.1).joints[0];
  BOOST_TEST(*joint.contactLeast == 490.3325 - 62.5, near);
  BOOST_TEST(*joint.most.contact == 1.1 * 490.3325 + 62.5, near);
  BOOST_TEST(joint.most.pinForces[0] == 0.5 * (1.1 * (weight + 490.3325) + 100.0 + 62.5), near);
}

/// Half a newton on its stop is on its stop: no contact carries, and what the push adds there comes off it.
BOOST_AUTO_TEST_CASE(whatHardlyRestsOnItsStopRestsThere) {
  const hang::Hang hang = oneCabinet(hang::Seated{0.0, {-0.8, 0.0}, 0.0});
  hang::Statics statics = hang::solve(hang);
  statics.joints[0].contact.reset();
  statics.joints[0].stop = 0.5;
  const auto arms = hang::armsOf(hang.stack, 0, hang::layOut(hang, statics), {0.0, {0.0}});
  const hang::PushedJoint joint = hang::inGust(hang.stack, 0, statics, arms, {ahead}, 1.2).joints[0];
  BOOST_TEST(*joint.most.contact == 62.5 - 0.5, near);
  BOOST_TEST(*joint.most.stop == 1.2 * 0.5 + 62.5, near);
}

/// One that cannot open rests on its stop where the push is more than what shuts it.
BOOST_AUTO_TEST_CASE(aJointThatCannotOpenComesToItsStop) {
  const hang::Hang hang = oneCabinet(hang::Seated{0.0, {-0.8, 0.0}, 0.0});
  BOOST_TEST(*pushed(hang, ahead).joints[0].most.stop == 0.0);
  const hang::PushedJoint strong = pushed(hang, {1000.0, 500.0, 0.0, 0.0}).joints[0];
  BOOST_TEST(*strong.most.stop == 625.0 - 490.3325, near);
  BOOST_TEST(!strong.contactLeast.has_value());
}

/// Two pins 0.2 m apart: half of the push on each, and 50 N·m over 0.2 m.
BOOST_AUTO_TEST_CASE(twoPinsByHand) {
  const hang::Hang hang = oneCabinet(hang::Pinned{0.0, {{{0.0, 0.0}, {-0.2, 0.0}}}});
  const hang::Statics calm = hang::solve(hang);
  const hang::PushedJoint joint = pushed(hang, ahead).joints[0];
  for (const std::size_t pin : {0U, 1U}) {
    BOOST_TEST(joint.most.pinForces[pin] == calm.joints[0].pinForces[pin] + 0.5 * (50.0 + 250.0), near);
  }
  // Off by 1 cm each, the pins may stand 2√2 cm nearer.
  const hang::PushedJoint off = pushed(hang, ahead, 1.0, {0.0, {0.01}}).joints[0];
  BOOST_TEST(off.most.pinForces[0] ==
                 calm.joints[0].pinForces[0] + 0.5 * (50.0 + 50.0 / (0.2 - 0.02 * std::sqrt(2.0))),
             near);
}

/// A pivot's chain straight up, 0.8 m behind the pin, centre 0.4 m behind it: it pulls half of the weight,
/// and 50 N·m over 0.8 m more or less.
BOOST_AUTO_TEST_CASE(aPivotsChainByHand) {
  hang::Hang hang = oneCabinet(hang::Pivot{{-30.0, 30.0}});
  hang.stack[0].cg.x = -0.4;
  hang.chain = hang::Chain{0.02, 0.1, 20, 1};
  const hang::Pushed told = pushed(hang, ahead);
  BOOST_TEST(told.tensionMost == 0.5 * weight + 62.5, near);
  BOOST_TEST(*told.tensionLeast == 0.5 * weight - 62.5, near);
  BOOST_TEST(told.joints[0].most.pinForces[0] == 0.5 * (0.5 * weight + 100.0 + 62.5), near);
  // Frame off by 1 cm and cabinet by 2: the arm is 2√2 · 3 cm less.
  const hang::Pushed off = pushed(hang, ahead, 1.0, {0.01, {0.02}});
  BOOST_TEST(off.tensionMost == 0.5 * weight + 50.0 / (0.8 - 0.06 * std::sqrt(2.0)), near);
}

/// Without a pivot the chain takes what would open a joint: 100 kg centred 0.4 m behind are held by half of
/// the weight, 50 N·m more by 62.5 N more, and the contact stays shut by it.
BOOST_AUTO_TEST_CASE(aTautChainKeepsTheJointShut) {
  hang::Hang hang = oneCabinet(hang::Seated{0.0, {-0.8, 0.0}, 5.0});
  hang.stack[0].cg.x = -0.4;
  hang.chain = hang::Chain{0.02, 0.1, 20, 1};
  const hang::Pushed told = pushed(hang, ahead);
  BOOST_TEST(told.tensionMost == 0.5 * weight + 62.5, near);
  BOOST_TEST(!told.joints[0].contactLeast.has_value());
  // One that leaves slack keeps nothing shut.
  hang.stack[0].cg.x = 0.4;
  hang.chain->mark = 25;
  BOOST_TEST(*pushed(hang, ahead).joints[0].contactLeast == 490.3325 - 62.5, near);
}

/// Across: the push and its moment go to the sides.
BOOST_AUTO_TEST_CASE(whatPushesAcrossGoesToTheSides) {
  const hang::PushedJoint joint =
      pushed(oneCabinet(hang::Seated{0.0, {-0.8, 0.0}, 5.0}), {0.0, 0.0, 80.0, 40.0}).joints[0];
  BOOST_TEST(joint.most.sideways == 80.0, near);
  BOOST_TEST(hang::length(joint.most.sidewaysMoment) == 40.0, near);
}

/// Ahead of the joint by a swing of 30°: half of the weight ahead, and 1 − cos 30° less along the plane.
BOOST_AUTO_TEST_CASE(aSwingByHand) {
  const hang::SidePush push = hang::bySwing(1000.0, 2.0, M_PI / 6.0, 1.0, 0.0);
  BOOST_TEST(push.inPlane == 500.0 + 1000.0 * (1.0 - std::sqrt(0.75)), near);
  BOOST_TEST(push.turning == 2.0 * push.inPlane, near);
  BOOST_TEST(push.across == 0.0);
  const hang::SidePush aside = hang::bySwing(1000.0, 2.0, M_PI / 6.0, 0.0, 1.0);
  BOOST_TEST(aside.across == 500.0, near);
  BOOST_TEST(aside.acrossTurning == 1000.0, near);
}

/// Without a push nothing is added, however little is known of the places.
BOOST_AUTO_TEST_CASE(noPushAddsNothingWhereverItWouldAct) {
  hang::Hang hang = oneCabinet(hang::Seated{0.0, {-0.8, 0.0}, 5.0});
  hang.chain = hang::Chain{0.02, 0.1, 25, 1};
  const double anywhere = std::numeric_limits<double>::infinity();
  const hang::PushedJoint joint = pushed(hang, {}, 1.0, {anywhere, {anywhere}}).joints[0];
  BOOST_TEST(*joint.most.contact == 490.3325, near);
  BOOST_TEST(*joint.contactLeast == 490.3325, near);
  BOOST_TEST(joint.most.pinForces[0] == 0.5 * (weight + 490.3325), near);
}

/// What is not known stays so, whichever of two it is and whatever comes of it.
BOOST_AUTO_TEST_CASE(whatIsNotKnownStaysSo) {
  const double unknown = std::numeric_limits<double>::quiet_NaN();
  const hang::SidePush nothing{unknown, unknown, unknown, unknown};
  for (const hang::SidePush& push : {hang::worseOf(ahead, nothing), hang::worseOf(nothing, ahead)}) {
    BOOST_TEST(std::isnan(push.inPlane));
    BOOST_TEST(std::isnan(push.acrossTurning));
    const hang::PushedJoint seated = pushed(oneCabinet(hang::Seated{0.0, {-0.8, 0.0}, 5.0}), push).joints[0];
    BOOST_TEST(std::isnan(*seated.contactLeast));
    BOOST_TEST(std::isnan(*seated.most.contact));
    BOOST_TEST(std::isnan(seated.most.pinForces[0]));
    BOOST_TEST(std::isnan(seated.most.sideways));
    const hang::PushedJoint stopped = pushed(oneCabinet(hang::Seated{0.0, {-0.8, 0.0}, 0.0}), push).joints[0];
    BOOST_TEST(std::isnan(*stopped.most.stop));
    hang::Hang held = oneCabinet(hang::Seated{0.0, {-0.8, 0.0}, 5.0});
    held.stack[0].cg.x = -0.4;
    held.chain = hang::Chain{0.02, 0.1, 20, 1};
    BOOST_TEST(std::isnan(pushed(held, push).tensionMost));
  }
}

/// A joint that stands open holds a push in no way that is looked at here.
BOOST_AUTO_TEST_CASE(anOpenJointIsNotKnown) {
  const hang::Hang hang = oneCabinet(hang::Seated{0.0, {-0.8, 0.0}, 5.0});
  hang::Statics statics = hang::solve(hang);
  const hang::Layout layout = hang::layOut(hang, statics);
  statics.joints[0].openDeg = 1.0;
  const hang::Pushed told =
      hang::inGust(hang.stack, 0, statics, hang::armsOf(hang.stack, 0, layout, {0.0, {0.0}}), {ahead}, 1.0);
  BOOST_TEST(std::isnan(*told.joints[0].contactLeast));
  BOOST_TEST(std::isnan(told.joints[0].most.pinForces[0]));
}

BOOST_AUTO_TEST_SUITE_END()
