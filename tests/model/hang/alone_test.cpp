// SPDX-License-Identifier: GPL-3.0-or-later
// Each part of a condition by itself, figures so small that a bound in newtons would show, and what decides
// nothing: one case for each, by hand.
#include <boost/test/unit_test.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <string>
#include <vector>

#include "hang/assembly.h"
#include "hang/balance.h"
#include "hang/bridle_pushed.h"
#include "hang/carried.h"
#include "hang/chain.h"
#include "hang/doubt_picks.h"
#include "hang/gust.h"
#include "hang/layout.h"
#include "hang/make_up.h"
#include "hang/settle.h"
#include "hang/solve.h"
#include "hang/tilt.h"
#include "hang/uneven.h"
#include "quantity/error.h"
#include "quantity/quantity.h"
#include "support/bridle_legs.h"
#include "support/example_hang.h"

using namespace hangbook;
using namespace hangbook::hang;
using hangbook::testing::exampleHang;
using hangbook::testing::legsTo;
using hangbook::testing::oneCabinet;

namespace {

const auto near = [](double tolerance) { return boost::test_tools::tolerance(tolerance); };

bool settlesNowhere(const Hang& hang) {
  try {
    settle(hang);
  } catch (const Error& error) {
    return error.trouble() == Trouble::notPossible &&
           std::string(error.what()).find("knife's edge") != std::string::npos;
  }
  return false;
}

} // namespace

BOOST_AUTO_TEST_SUITE(alone)

/// Points 120° apart, 3 m from the plumb line and 4 m above the apex: legs of 5 m. The other two, taut alone,
/// hang 1.5 m beyond the middle, where a leg of 6.5 m is slack, whichever it is.
BOOST_AUTO_TEST_CASE(anyOneLegOfThreeMayBeTheSlackOne) {
  std::vector<Vec3> points;
  for (const double deg : {0.0, 120.0, 240.0}) {
    points.push_back({3.0 * std::cos(toRadians(deg)), 3.0 * std::sin(toRadians(deg)), 4.0});
  }
  for (std::size_t which = 0; which < 3; ++which) {
    std::vector<BridleLeg> legs = legsTo(points, {});
    BOOST_TEST(std::isfinite(PushedBridle(legs).leg(which, {10.0, 1.0}).most));
    legs[which].length = 6.5;
    const PushedBridle bridle(legs);
    for (std::size_t i = 0; i < 3; ++i) {
      const PushedLeg leg = bridle.leg(i, {10.0, 1.0});
      BOOST_TEST(std::isnan(leg.most));
      BOOST_TEST(std::isnan(leg.down));
      BOOST_TEST(std::isnan(leg.fromHorizontalDeg));
      BOOST_TEST(std::isnan(leg.least) == (i != which));
    }
    BOOST_TEST(bridle.leg(which, {10.0, 1.0}).least == 0.0);
  }
}

/// A thousandth of the load pulls a thousandth, down to loads of a millinewton.
BOOST_AUTO_TEST_CASE(aBridleKnowsNoUnit) {
  const std::vector<std::vector<Vec3>> rigs{{{3.0, 0.0, 4.0}, {-3.0, 0.0, 4.0}},
                                            {{3.0, 0.0, 4.0}, {-3.0, 0.0, 5.0}},
                                            {{3.0, 0.0, 4.0}, {-3.0, 1.0, 4.0}, {0.0, -4.0, 5.0}}};
  for (const std::vector<Vec3>& points : rigs) {
    const PushedBridle bridle(legsTo(points, {}));
    for (std::size_t i = 0; i < points.size(); ++i) {
      const PushedLeg great = bridle.leg(i, {1000.0, 90.0});
      const double two = bridle.worstOfTwo(i, {1000.0, 90.0});
      for (const double part : {1e-3, 1e-6}) {
        const PushedLeg small = bridle.leg(i, {1000.0 * part, 90.0 * part});
        BOOST_TEST(small.most == part * great.most, near(1e-9));
        BOOST_TEST(small.least == part * great.least, near(1e-9));
        BOOST_TEST(small.down == part * great.down, near(1e-9));
        BOOST_TEST(small.fromHorizontalDeg == great.fromHorizontalDeg, near(1e-9));
        BOOST_TEST(bridle.worstOfTwo(i, {1000.0 * part, 90.0 * part}) == part * two, near(1e-9));
      }
    }
  }
}

/// A line that rises as far as it goes: a push as great as the load may lie exactly along it.
BOOST_AUTO_TEST_CASE(aLoadAlongTheLineOfThePointsIsBeyondIt) {
  const PushedBridle sloping(legsTo({{0.0, 0.0, 4.0}, {3.0, 0.0, 7.0}}, {1.5, 0.0, 2.0}));
  const double just = std::nextafter(1.0, 0.0);
  BOOST_TEST(std::isfinite(sloping.leg(0, {1.0, just}).most));
  BOOST_TEST(std::isinf(sloping.leg(0, {1.0, 1.0}).most));
  BOOST_TEST(std::isinf(sloping.leg(0, {1.0, 1.0}).least));
}

/// An eye, or an anchor, no further from the pin than rounding sets no angle, though the chain is just as
/// long as the other arm.
BOOST_AUTO_TEST_CASE(eitherArmOfTheTriangleMayBeTheOneThatIsNone) {
  const auto count = [](double anchor, double eye) {
    return anglesAt({{0.0, anchor}, {eye, 0.0}, 0.0, {-180.0, 180.0}}, std::max(anchor, eye)).count;
  };
  BOOST_TEST(count(1.0, 1e-10) == 0);
  BOOST_TEST(count(1e-10, 1.0) == 0);
  BOOST_TEST(count(1.0, 1e-8) == 2);
  BOOST_TEST(count(1e-8, 1.0) == 2);
}

/// Either way round the chain is as long: which way the pivot stands does not follow.
BOOST_AUTO_TEST_CASE(aChainThatGivesTwoAnglesGivesNone) {
  Hang hang = exampleHang();
  hang.stack[1].joint = Pivot{{-180.0, 180.0}};
  BOOST_TEST_REQUIRE(anglesAt(pivotTriangle(hang.bar, hang.stack, 2), chainLength(*hang.chain)).count == 2);
  BOOST_CHECK_EXCEPTION(solve(hang), Error, [](const Error& error) {
    return error.trouble() == Trouble::notPossible &&
           std::string(error.what()).find("either of two angles") != std::string::npos;
  });
}

/// A centre near the pick line, a pan and a head beside it: three actuator angles give one aim, as many as
/// the function changes its sign on a walk in steps of a hundredth of a degree, and each where it does.
BOOST_AUTO_TEST_CASE(threeAnglesThatGiveOneAimAreFound) {
  const SidePair pair{1.0, 33.0, {0.13, 0.17}, {-0.05, 0.27}, {}, {}};
  Assembly assembly;
  assembly.mass = 629.0;
  assembly.cg = {0.22, -0.21};
  const TiltCurve curve(pair, assembly, -17.0);
  const double sine = std::sin(toRadians(-64.7));
  const auto miss = [&](int hundredths) { return curve.miss(turnBy(toRadians(0.01 * hundredths)), sine); };
  std::vector<double> walked;
  for (int at = -4499; at <= 4500; ++at) {
    if (passesZero(miss(at - 1), miss(at))) {
      walked.push_back(0.01 * at - 0.005);
    }
  }
  const std::vector<double> found = actuatorsAt(curve, {-45.0, 45.0}, sine);
  BOOST_TEST(walked.size() == 3U);
  BOOST_REQUIRE(found.size() == walked.size());
  for (std::size_t i = 0; i < found.size(); ++i) {
    BOOST_TEST(std::abs(found[i] - walked[i]) < 0.0051);
  }
}

/// The centre goes round the tilt axis, 0.4 m above the picks, 0.5 m from it: the frame's aim has the sine
/// 0.4 sin a ÷ √(0.41 − 0.4 cos a), at its greatest 0.8, at cos a = 0.8. Just short of that two actuator
/// angles give it, wherever an end of the travel lies beyond them, in whichever cell that leaves them.
BOOST_AUTO_TEST_CASE(twoAnglesCloseToAnEndOfTheTravelAreFound) {
  const SidePair pair{1.0, 0.0, {}, {0.0, 0.4}, {}, {}};
  Assembly assembly;
  assembly.mass = 100.0;
  assembly.cg = {0.0, -0.5};
  const TiltCurve curve(pair, assembly, 0.0);
  const double turn = toDegrees(std::acos(0.8));
  for (int tenths = 1; tenths <= 20; ++tenths) {
    const double end = turn + 0.1 * tenths;
    BOOST_TEST(actuatorsAt(curve, {0.0, end}, -0.8 + 1e-7).size() == 2U, "high end " << end);
    BOOST_TEST(actuatorsAt(curve, {-end, 0.0}, 0.8 - 1e-7).size() == 2U, "low end " << -end);
    const double start = turn - 0.1 * tenths;
    BOOST_TEST(actuatorsAt(curve, {start, 70.0}, -0.8 + 1e-7).size() == 2U, "low end " << start);
    BOOST_TEST(actuatorsAt(curve, {-70.0, -start}, 0.8 - 1e-7).size() == 2U, "high end " << -start);
    BOOST_TEST(actuatorsAt(curve, {0.0, end}, -0.8 - 1e-7).empty());
  }
}

/// Straight below its tilt axis, 0.5 m, and the axis 0.3 m below the picks: the aim rises with the actuator
/// all the way, and reaches furthest at the very ends of its travel.
BOOST_AUTO_TEST_CASE(theReachIsThatOfTheEndsOfTheTravel) {
  const SidePair pair{1.0, 20.0, {}, {0.0, -0.3}, {-17.0, 23.0}, {}};
  Assembly assembly;
  assembly.mass = 100.0;
  assembly.cg = {0.0, -0.5};
  const TiltCurve curve(pair, assembly, 0.0);
  const Range reach = tiltReach(pair, assembly, 0.0);
  BOOST_TEST(reach.low == curve.elevationDeg(turnBy(toRadians(-17.0))), near(1e-14));
  BOOST_TEST(reach.high == curve.elevationDeg(turnBy(toRadians(23.0))), near(1e-14));
}

/// Shackles of a metre count as those of any length: 1 m of steel and three of them are 4 m.
BOOST_AUTO_TEST_CASE(aShackleOfAMetreIsAddedAsAnyOther) {
  const std::vector<SteelLength> steels{{1.0, 1}};
  MakeUpWish wish{4.0, 0.0, 1.0};
  wish.moreShackles = 3;
  const auto made = shortestMakeUp(steels, wish);
  BOOST_TEST_REQUIRE(made.has_value());
  BOOST_TEST(made->shackles == 3);
  BOOST_TEST(made->length == 4.0);
}

/// A box about (−1, 0), 0.1 m each way: the corners nearest to the origin stand atan(0.1/0.9) off straight
/// back, on either side of half a turn.
BOOST_AUTO_TEST_CASE(aDirectionMayLieAcrossHalfATurn) {
  const Span back = directionOf({{-1.1, -0.9}, {-0.1, 0.1}});
  BOOST_TEST(back.width() == 2.0 * std::atan2(0.1, 0.9), near(1e-12));
  BOOST_TEST(0.5 * (back.low + back.high) == std::numbers::pi, near(1e-12));
}

/// By hand: what carries nothing leaves no step behind that it was worst at.
BOOST_AUTO_TEST_CASE(nothingIsWorstNowhere) {
  CarriedMost none;
  none.joints.emplace_back();
  CarriedWorst worst = CarriedWorst::begun(1);
  worst.take(none, {BuildStage::aiming, 3});
  BOOST_TEST((worst.chainAt.stage == BuildStage::set));
  BOOST_TEST(worst.chainAt.cabinets == 0);
  BOOST_TEST(worst.joints[0].pinAt[0].cabinets == 0);
  BOOST_TEST(worst.joints[0].contactAt.cabinets == 0);
  BOOST_TEST(worst.joints[0].stopAt.cabinets == 0);
  none.chain = 1e-3;
  worst.take(none, {BuildStage::aiming, 3});
  BOOST_TEST(worst.chainAt.cabinets == 3);
}

/// Up to a thousand tonnes: the rise that gives a share gives it back, whatever rounding leaves of the
/// weight.
BOOST_AUTO_TEST_CASE(howHeavyItIsDoesNotDecideWhetherARiseIsFound) {
  Bar bar;
  bar.picks = ForeAftPair{{0.5, 0.0}, {-0.5, 0.1}};
  Statics statics;
  statics.tiltDeg = 7.3;
  statics.cg = {-0.4, 0.0, -0.8};
  for (const double mass : {1e-3, 1.0, 1e3, 1e6}) {
    statics.mass = mass;
    for (int hundredths = 40; hundredths <= 60; ++hundredths) {
      const double share = 0.01 * hundredths;
      const auto rise = riseForShare(bar, statics, share);
      BOOST_TEST_REQUIRE(rise.has_value());
      const auto there = unevenBy(bar, statics, *rise);
      BOOST_TEST_REQUIRE(there.has_value());
      BOOST_TEST(there->loads[0] == share * mass * standardGravity, near(1e-9));
    }
  }
}

/// 10 g at one pin, centre half as far ahead as the contact is behind: half as much again on the pin.
BOOST_AUTO_TEST_CASE(aGustOverNextToNothing) {
  Hang hang = oneCabinet({0.4, -0.5}, Seated{0.0, {-0.8, 0.0}, 5.0});
  hang.stack[0].mass = 0.01;
  const Statics statics = solve(hang);
  const Pushed told =
      inGust(hang.stack, 0, statics, armsOf(hang.stack, 0, layOut(hang, statics), {0.0, {0.0}}), {{}}, 1.0);
  BOOST_TEST(told.joints[0].most.pinForces[0] == 0.5 * 1.5 * 0.01 * standardGravity, near(1e-9));
}

/// What hangs below the chain's eye takes nothing off the chain's arms, however far off its places may be.
BOOST_AUTO_TEST_CASE(whatHangsBelowTheEyeIsNoneOfTheChains) {
  Hang hang = oneCabinet({-0.4, -0.3}, Seated{0.0, {-0.8, 0.0}, 5.0});
  hang.stack[0].nextPin = Vec2{0.0, -0.6};
  hang.stack.push_back(hang.stack[0]);
  hang.stack[0].chainEye = Vec2{-0.8, 0.0};
  hang.bar.chainAnchor = Vec2{-0.8, 0.5};
  hang.chain = Chain{0.05, 0.0, 10, 1};
  const Layout layout = layOut(hang, solve(hang));
  BOOST_TEST(armsOf(hang.stack, 1, layout, {0.0, {0.0, 0.1}})[0].closing == 0.8, near(1e-12));
  BOOST_TEST(armsOf(hang.stack, 1, layout, {0.0, {0.1, 0.0}})[0].closing == 0.8 - 0.2 * std::numbers::sqrt2,
             near(1e-12));
}

/// 100 g, centre 0.4 m and chain 0.8 m behind the middle of two pins: alone the chain would carry half of it,
/// 0.49 N, and without it the pins hold all. Both ends are told.
BOOST_AUTO_TEST_CASE(aTautChainThatNeedsNextToNothingHasItsOtherEndTold) {
  Hang hang = oneCabinet({-0.4, -0.3}, Pinned{0.0, {Vec2{0.25, 0.0}, Vec2{-0.25, 0.0}}});
  hang.stack[0].mass = 0.1;
  hang.stack[0].chainEye = Vec2{-0.8, 0.0};
  hang.bar.chainAnchor = Vec2{-0.8, 0.5};
  hang.chain = Chain{0.05, 0.0, 10, 1};
  const Settled settled = settle(hang);
  BOOST_TEST(settled.chain->most == 0.05 * standardGravity, near(1e-9));
  BOOST_TEST_REQUIRE(settled.joints[0].end.has_value());
  BOOST_TEST(settled.joints[0].end->pinForces[0] == 0.25 * 0.05 * standardGravity, near(1e-9));
}

/// A joint that weight and chain both open has no shape as assembled, and stands at its stop all the same.
BOOST_AUTO_TEST_CASE(whatIsNotPossibleAsAssembledStillStands) {
  Hang hang = oneCabinet({-0.4, -0.3}, Seated{0.0, {-0.8, 0.0}, 4.0});
  hang.bar.chainAnchor = Vec2{0.8, 0.0};
  hang.stack[0].chainEye = Vec2{-0.8, -0.5};
  hang.chain = Chain{0.1, 0.0, 17, 1};
  BOOST_CHECK_THROW(solve(hang), Error);
  BOOST_TEST(standing(hang).joints[0].openDeg == 4.0);
  hang.stack[0].mass = -1.0;
  BOOST_CHECK_EXCEPTION(standing(hang), Error,
                        [](const Error& error) { return error.trouble() == Trouble::badInput; });
}

/// A chain as long as it is at the joint's stop, but for what rounding leaves: the joint comes to rest there,
/// whichever of the two holds it.
BOOST_AUTO_TEST_CASE(aChainThatIsTautJustAtTheStopComesToRest) {
  Hang hang = oneCabinet({-0.4, -0.3}, Seated{0.0, {-0.8, 0.0}, 4.0});
  hang.bar.chainAnchor = Vec2{-0.8, 0.5};
  hang.stack[0].chainEye = Vec2{-0.8, 0.0};
  const Vec2 eye = turnBy(toRadians(4.0))(*hang.stack[0].chainEye);
  const double there = length(*hang.bar.chainAnchor - eye);
  for (int step = -60; step <= 60; ++step) {
    hang.chain = Chain{0.01, there - 0.01 + 1e-13 * step, 1, 1};
    const Settled settled = settle(hang);
    BOOST_TEST(std::abs(settled.joints[0].openDeg - 4.0) < 1e-8, "step " << step);
    BOOST_TEST(settled.chain->least >= 0.0);
    BOOST_TEST(settled.chain->most <= 100.0 * standardGravity);
  }
}

/// A pivot that nothing but rounding turns away from its chain, its centre at its pin: any touch moves it. A
/// tenth of a millimetre below the pin it hangs, and a nanometre too.
BOOST_AUTO_TEST_CASE(aCentreAtThePivotsPinIsAKnifesEdge) {
  for (const double above : {0.0, -1e-17}) {
    Hang hang = oneCabinet({0.0, above}, Pivot{{-30.0, 30.0}});
    hang.bar.chainAnchor = Vec2{-0.8, 0.5};
    hang.stack[0].chainEye = Vec2{-0.8, 0.0};
    hang.chain = Chain{0.1, 0.001, 5, 1};
    BOOST_TEST(settlesNowhere(hang), "centre " << above << " m above the pin");
    for (const double below : {1e-4, 1e-9}) {
      hang.stack[0].cg.z = -below;
      BOOST_TEST(std::abs(settle(hang).joints[0].angleDeg) < 1e-13 / below);
    }
  }
}

/// 100 kg, its centre with what hangs below on a 3-4-5 triangle from its pin, and 1 g below it, its centre
/// straight behind its pin: both hang with their centres straight below their pins, however little the lower
/// one weighs.
BOOST_AUTO_TEST_CASE(aLightCabinetUnderAHeavyOneComesToRest) {
  Hang hang = oneCabinet({-0.4, -0.3}, Seated{0.0, {-0.8, 0.0}, 80.0});
  Element& upper = hang.stack[0];
  upper.nextPin = upper.cg;
  Element lower = upper;
  lower.mass = 1e-3;
  lower.cg = {-0.5, 0.0};
  lower.nextPin.reset();
  hang.stack.push_back(lower);
  const Settled settled = settle(hang);
  BOOST_TEST(settled.joints[0].openDeg == toDegrees(std::atan2(0.4, 0.3)), near(1e-9));
  BOOST_TEST(settled.joints[1].aimDeg == 90.0, near(1e-9));
}

/// The line of a chain points from the eye to the anchor, whose distance may be just 1 m; where both coincide
/// it points nowhere.
BOOST_AUTO_TEST_CASE(a_chains_line_is_one_long) {
  Hang hang = oneCabinet({-0.4, -0.3}, Seated{0.0, {-0.8, 0.0}, 5.0});
  hang.stack[0].chainEye = Vec2{0.0, 0.0};
  hang.bar.stackPin = {};
  const std::array<double, 1> angles{};
  for (const double straight : {0.5, 1.0, 2.0, 0.0}) {
    hang.bar.chainAnchor = Vec2{0.0, straight};
    Assembly assembly;
    assemble(hang.bar, hang.stack, angles, 1, assembly);
    BOOST_TEST_REQUIRE(assembly.line.has_value());
    BOOST_TEST(assembly.line->straight == straight, near(1e-12));
    BOOST_TEST(assembly.line->towardsAnchor.x == 0.0);
    BOOST_TEST(assembly.line->towardsAnchor.z == (straight > 0.0 ? 1.0 : 0.0), near(1e-12));
  }
}

BOOST_AUTO_TEST_SUITE_END()
