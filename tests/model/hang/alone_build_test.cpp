// SPDX-License-Identifier: GPL-3.0-or-later
// The build of a hang, its doubts and what may have been mistaken: each part of a condition by itself, by
// hand.
#include <boost/test/unit_test.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <vector>

#include "hang/build_loads.h"
#include "hang/chain.h"
#include "hang/changes.h"
#include "hang/doubt.h"
#include "hang/doubt_joints.h"
#include "hang/settle.h"
#include "hang/solve.h"
#include "quantity/error.h"
#include "quantity/quantity.h"
#include "support/example_hang.h"

using namespace hangbook;
using namespace hangbook::hang;
using hangbook::testing::exampleHang;
using hangbook::testing::oneCabinet;
using hangbook::testing::seatedHang;

namespace {

const auto near = [](double tolerance) { return boost::test_tools::tolerance(tolerance); };

/// On two picks side by side, not panned: each carries half whatever the shape. Its centre behind the pin
/// opens a joint of which nobody has stated how far it opens.
Hang freelyOpening() {
  Hang made = oneCabinet({-0.4, -0.3}, Seated{0.0, {-0.8, 0.0}, 90.0});
  made.bar.picks = SidePair{1.0, 10.0, {}, {0.0, -0.3}, {-20.0, 20.0}, {-20.0, 20.0}};
  made.bar.frameMass = 50.0;
  made.set = {};
  made.set.actuatorDeg = 0.0;
  return made;
}

} // namespace

BOOST_AUTO_TEST_SUITE(alone_build)

/// Not panned, each pick has half of what hangs at every step, in whatever shape: it need not follow.
BOOST_AUTO_TEST_CASE(picksSideBySideAreKnownInAShapeThatIsNot) {
  const Hang hang = freelyOpening();
  const Statics statics = solve(hang);
  for (const BuildStep& step : buildSteps(hang, statics)) {
    const double half = 0.5 * step.mass * standardGravity;
    for (std::size_t pick = 0; pick < 2; ++pick) {
      BOOST_TEST(step.most[pick] == half, near(1e-12));
      BOOST_TEST(step.least[pick] == half, near(1e-12));
    }
  }
  const BuildWorst stated = BuildUp(hang.bar, hang.stack, hang.chain).worst(hang.set, statics);
  BOOST_TEST(!stated.unknown.has_value());
  // Within doubts too: 1 kg heavier are half a kilogram more at each.
  Doubts doubts;
  doubts.stack.resize(1);
  doubts.stack[0].heavier = 1.0;
  HangShapes shapes(hang, doubts);
  Shape& shut = shapes.shut();
  const PickSpans asSet = picksWithin(hang, doubts, shut.hanging, 0.0, 0.0, 0.0);
  const BuildWorst worst =
      buildWithin(hang, doubts, statics, stated, asSet, shut.forBuild(hang, doubts, stated), 0.0);
  BOOST_TEST(!worst.unknown.has_value());
  BOOST_TEST(worst.most[0] == 80.5 * standardGravity, near(1e-12));
  BOOST_TEST(worst.most[1] == 80.5 * standardGravity, near(1e-12));
}

/// From level to 5° nose down, picks level with each other: the centre is 0.8 m below them and 0.1 m or 0.9 m
/// behind the front one, whose rear share is that and 0.8 tan 5° more. A joint that might open, and stays
/// shut, changes nothing.
BOOST_AUTO_TEST_CASE(theWayFromLevelEndsAtLevel) {
  const double tangent = std::tan(toRadians(5.0));
  const auto looks = [&](const Hang& hang, double behind) {
    const std::vector<BuildStep> steps = buildSteps(hang, solve(hang));
    const auto aiming = std::ranges::find(steps, BuildStage::aiming, &BuildStep::stage);
    BOOST_TEST_REQUIRE((aiming != steps.end()));
    BOOST_TEST(aiming->least[1] == behind * 100.0 * standardGravity, near(1e-9));
    BOOST_TEST(aiming->most[1] == (behind + 0.8 * tangent) * 100.0 * standardGravity, near(1e-9));
    BOOST_TEST(aiming->most[0] == (1.0 - behind) * 100.0 * standardGravity, near(1e-9));
  };
  Hang pinned = oneCabinet({-0.4, -0.3}, Pinned{0.0, {Vec2{0.25, 0.0}, Vec2{-0.25, 0.0}}});
  pinned.set.tiltDeg = -5.0;
  looks(pinned, 0.9);
  Hang seated = oneCabinet({0.4, -0.3}, Seated{0.0, {-0.8, 0.0}, 5.0});
  seated.set.tiltDeg = -5.0;
  looks(seated, 0.1);
}

/// One pick carries all: it has no share that could be the least of two.
BOOST_AUTO_TEST_CASE(aSinglePickHasNoLeastShare) {
  Hang hang = oneCabinet({-0.4, -0.3}, Pinned{0.0, {Vec2{0.25, 0.0}, Vec2{-0.25, 0.0}}});
  hang.bar.picks = SinglePick{{0.0, 0.5}};
  hang.set = {};
  const BuildWorst worst = BuildUp(hang.bar, hang.stack, hang.chain).worst(hang.set, solve(hang));
  BOOST_TEST(worst.most[0] == 100.0 * standardGravity, near(1e-12));
  BOOST_TEST(worst.leastShare == 1.0);
  BOOST_TEST(worst.leastAt.cabinets == 0);
  BOOST_TEST(worst.leastOther == 0.0);
}

/// What was worked out for one pan is not taken for another.
BOOST_AUTO_TEST_CASE(aBuildAskedForTwoPansTellsEachItsOwn) {
  Hang hang = exampleHang();
  const BuildUp both(hang.bar, hang.stack, hang.chain);
  for (const double pan : {20.0, 1.0, 1.0, -8.0, 20.0}) {
    hang.set.panDeg = pan;
    const Statics statics = solve(hang);
    const CarriedWorst told = both.worst(hang.set, statics).carried;
    const CarriedWorst fresh = BuildUp(hang.bar, hang.stack, hang.chain).worst(hang.set, statics).carried;
    BOOST_TEST(told.chain == fresh.chain, near(1e-12));
    for (std::size_t i = 0; i < 2; ++i) {
      BOOST_TEST(told.joints[i].most.roll == fresh.joints[i].most.roll, near(1e-12));
      BOOST_TEST(told.joints[i].most.sideways == fresh.joints[i].most.sideways, near(1e-12));
      BOOST_TEST(told.joints[i].most.pins[0] == fresh.joints[i].most.pins[0], near(1e-12));
    }
  }
}

/// A bar of 50 kg that the cells say weighs just nothing still may be the mistake; one that would weigh less
/// is none.
BOOST_AUTO_TEST_CASE(aBarMayWeighNothingAndNotLess) {
  Hang hang = oneCabinet({-0.4, -0.3}, Pinned{0.0, {Vec2{0.25, 0.0}, Vec2{-0.25, 0.0}}});
  hang.bar.frameMass = 50.0;
  const auto told = [&](double mass) {
    const double half = 0.5 * mass * standardGravity;
    return std::ranges::count(singleChanges(hang, {half, half}), ChangeKind::barMass, &Change::kind);
  };
  BOOST_TEST_REQUIRE(100.0 * standardGravity / standardGravity == 100.0);
  BOOST_TEST(told(100.0) == 1);
  BOOST_TEST(told(99.9) == 0);
  BOOST_TEST(told(150.0) == 1);
}

/// Three alike but for their centres: whichever is missing, or it and the one above it, is told by its place,
/// the uppermost too.
BOOST_AUTO_TEST_CASE(eachCabinetAndEachPairMayBeMissing) {
  Hang taken = oneCabinet({-0.1, -0.3}, Pinned{0.0, {Vec2{0.25, 0.0}, Vec2{-0.25, 0.0}}});
  taken.stack[0].nextPin = Vec2{0.0, -0.5};
  taken.stack.resize(3, taken.stack[0]);
  taken.stack[1].cg.x = -0.3;
  taken.stack[2].cg.x = -0.5;
  for (int element = 1; element <= 3; ++element) {
    for (int count = 1; count <= std::min(element, 2); ++count) {
      Hang really = taken;
      really.stack.erase(really.stack.begin() + (element - count), really.stack.begin() + element);
      const Statics statics = solve(really);
      const std::array<double, 2> readings{statics.pickLoads[0].load, statics.pickLoads[1].load};
      const std::vector<Change> changes = singleChanges(taken, readings);
      const auto found = std::ranges::find_if(changes, [&](const Change& each) {
        return each.kind == ChangeKind::missing && each.count == count;
      });
      BOOST_TEST_REQUIRE((found != changes.end()));
      BOOST_TEST(found->element == element);
      BOOST_TEST(missOf(*found, readings, 2) < 1e-6);
    }
  }
}

/// A quarter of a kilogram at the pin and as much 1 m below: centred 0.5 m below.
BOOST_AUTO_TEST_CASE(whatWeighsLessThanAKilogramHasItsCentreToo) {
  Hang hang = oneCabinet({0.0, -1.0}, Pinned{0.0, {Vec2{0.25, 0.0}, Vec2{-0.25, 0.0}}});
  hang.stack[0].mass = 0.25;
  hang.bar.frameMass = 0.25;
  Doubts doubts;
  doubts.stack.resize(1);
  HangShapes shapes(hang, doubts);
  BOOST_TEST(shapes.shut().hanging.mass.high == 0.5);
  BOOST_TEST(shapes.shut().hanging.centre.z.low == -0.5, near(1e-12));
  BOOST_TEST(shapes.shut().hanging.centre.z.high == -0.5, near(1e-12));
}

/// On one pick the one cell tells all: what stands for the other is not read.
BOOST_AUTO_TEST_CASE(onOnePickOneCellIsRead) {
  Hang hang = oneCabinet({-0.4, -0.3}, Pinned{0.0, {Vec2{0.25, 0.0}, Vec2{-0.25, 0.0}}});
  hang.bar.picks = SinglePick{{0.0, 0.5}};
  hang.set = {};
  for (const Change& each : singleChanges(hang, {110.0 * standardGravity, 777.0})) {
    if (each.kind == ChangeKind::barMass) {
      BOOST_TEST(each.amount == 10.0, near(1e-9));
    } else if (each.kind == ChangeKind::heavier) {
      BOOST_TEST(each.amount == 1.1, near(1e-9));
    }
    BOOST_TEST((each.kind != ChangeKind::uneven));
    BOOST_TEST((each.kind != ChangeKind::exchanged));
  }
}

/// A load without end, or a share that is: either alone leaves the step not known.
BOOST_AUTO_TEST_CASE(aLoadOrAShareWithoutEndIsNotKnown) {
  const Hang hang = freelyOpening();
  const Statics statics = solve(hang);
  const BuildWorst stated = BuildUp(hang.bar, hang.stack, hang.chain).worst(hang.set, statics);
  Doubts doubts;
  doubts.stack.resize(1);
  HangShapes shapes(hang, doubts);
  Shape& shut = shapes.shut();
  const HangingShape shape = shut.forBuild(hang, doubts, stated);
  const auto known = [&](const PickSpans& asSet) {
    return !buildWithin(hang, doubts, statics, stated, asSet, shape, 0.0).unknown.has_value();
  };
  const PickSpans finite = picksWithin(hang, doubts, shut.hanging, 0.0, 0.0, 0.0);
  BOOST_TEST(known(finite));
  for (std::size_t pick = 0; pick < 2; ++pick) {
    PickSpans load = finite;
    load.load[pick].high = std::numeric_limits<double>::infinity();
    BOOST_TEST(!known(load));
    PickSpans share = finite;
    share.share[pick].low = -std::numeric_limits<double>::infinity();
    BOOST_TEST(!known(share));
  }
}

/// A hang of which no joint can open is solved in closed form, joints and chain with it.
BOOST_AUTO_TEST_CASE(whereNothingOpensTheStaticsTellAll) {
  const Statics statics = carried(seatedHang());
  BOOST_TEST(statics.joints.size() == 2U);
  BOOST_TEST(statics.chain.has_value());
}

/// 50 kg straight under two pins 0.5 m apart, and under it a pivot with 100 kg whose centre is 0.5 m from its
/// pin, 10° behind straight up. Swung by hand to the end of its travel, 10° further back, it turns the pins
/// with 100 g · 0.5 sin 20° ÷ 0.5 m. A tenth heavier it does so with a tenth more.
BOOST_AUTO_TEST_CASE(apivotSwungByHandGoesToTheEndOfItsTravel) {
  Hang hang = oneCabinet({0.0, -0.3}, Pinned{0.0, {Vec2{0.25, 0.0}, Vec2{-0.25, 0.0}}});
  hang.stack[0].mass = 50.0;
  hang.stack[0].nextPin = Vec2{0.0, -0.6};
  hang.stack.push_back(hang.stack[0]);
  Element& lower = hang.stack[1];
  lower.mass = 100.0;
  lower.cg = 0.5 * Vec2{-std::sin(toRadians(10.0)), std::cos(toRadians(10.0))};
  lower.chainEye = Vec2{-0.5, -0.2};
  lower.joint = Pivot{{0.0, 10.0}};
  hang.bar.chainAnchor = Vec2{-0.5, 0.3};
  hang.chain = Chain{0.01, lengthAt(pivotTriangle(hang.bar, hang.stack, 2), 5.0) - 0.01, 1, 2};
  const Statics statics = solve(hang);
  const BuildWorst stated = BuildUp(hang.bar, hang.stack, hang.chain).worst(hang.set, statics);
  const double byHand = (75.0 + 100.0 * std::sin(toRadians(20.0))) * standardGravity;
  BOOST_TEST(stated.carried.joints[0].most.pins[1] == byHand, near(1e-9));
  Doubts doubts;
  doubts.stack.resize(2);
  doubts.stack[0].heavier = 5.0;
  doubts.stack[1].heavier = 10.0;
  const Unfavourable worst = unfavourable(hang, statics, stated, doubts);
  BOOST_TEST_REQUIRE(worst.bounded);
  BOOST_TEST(worst.build.carried.joints[0].most.pins[1] >= 1.1 * byHand * (1.0 - 1e-9));
  BOOST_TEST(worst.build.carried.joints[0].most.pins[1] <= 1.2 * byHand);
}

/// A pivot that has no travel is told as one that has some.
BOOST_AUTO_TEST_CASE(aPivotWithoutTravelStandsWhereItStands) {
  Hang hang = oneCabinet({-0.3, -0.3}, Pivot{{5.0, 5.0}});
  hang.bar.chainAnchor = Vec2{-0.5, 0.3};
  hang.stack[0].chainEye = Vec2{-0.5, -0.2};
  hang.chain = Chain{0.01, lengthAt(pivotTriangle(hang.bar, hang.stack, 1), 5.0) - 0.01, 1, 1};
  const Statics statics = solve(hang);
  const BuildWorst stated = BuildUp(hang.bar, hang.stack, hang.chain).worst(hang.set, statics);
  BOOST_TEST(!stated.carried.unknown.has_value());
  Doubts doubts;
  doubts.stack.resize(1);
  doubts.stack[0].heavier = 10.0;
  const Unfavourable worst = unfavourable(hang, statics, stated, doubts);
  BOOST_TEST_REQUIRE(worst.bounded);
  BOOST_TEST(!worst.build.carried.unknown.has_value());
  BOOST_TEST(worst.build.carried.joints[0].most.pins[0] == 110.0 * standardGravity, near(1e-9));
}

/// A joint that its weight opens and its chain does not close: the build is followed in the shape that it
/// takes.
BOOST_AUTO_TEST_CASE(aJointThatItsChainDoesNotCloseIsFollowed) {
  Hang hang = oneCabinet({-0.4, -0.3}, Seated{0.0, {-0.8, 0.0}, 5.0});
  hang.bar.chainAnchor = Vec2{0.5, 0.5};
  hang.stack[0].chainEye = Vec2{0.5, -0.5};
  hang.chain = Chain{0.05, 0.0, 30, 1};
  BOOST_CHECK_EXCEPTION(solve(hang), Error,
                        [](const Error& error) { return error.trouble() == Trouble::notPossible; });
  const Statics statics = standing(hang);
  BOOST_TEST(statics.joints[0].openDeg == 5.0, near(1e-9));
  const BuildWorst worst = BuildUp(hang.bar, hang.stack, hang.chain).worst(hang.set, statics);
  BOOST_TEST(!worst.unknown.has_value());
  BOOST_TEST(!worst.carried.unknown.has_value());
}

BOOST_AUTO_TEST_SUITE_END()
