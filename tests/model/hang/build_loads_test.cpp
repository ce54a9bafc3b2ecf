// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numbers>

#include <boost/test/unit_test.hpp>

#include "hang/build_loads.h"
#include "hang/chain.h"
#include "hang/settle.h"
#include "hang/solve.h"
#include "quantity/error.h"
#include "quantity/quantity.h"
#include "support/example_hang.h"
#include "support/random_hang.h"

using namespace hangbook;
using hang::BuildStage;
using hang::BuildStep;
using hang::Hang;

namespace {

constexpr double g = standardGravity;

hang::Element block(double mass, double cgX) {
  hang::Element made;
  made.name = "block";
  made.mass = mass;
  made.cg = {cgX, -0.25};
  made.nextPin = hang::Vec2{0.0, -0.5};
  made.outline = {{0.0, 0.0}, {0.0, -0.5}, {-0.8, -0.5}, {-0.8, 0.0}};
  made.joint = hang::Pinned{0.0, {hang::Vec2{0.0, -0.05}, hang::Vec2{-0.5, -0.05}}};
  return made;
}

/// Bar of 50 kg with its centre at the origin, picks 1 m apart, front one at x = 0.5.
Hang foreAft() {
  Hang made;
  made.bar.picks = hang::ForeAftPair{{0.5, 0.0}, {-0.5, 0.0}};
  made.bar.frameMass = 50.0;
  made.bar.stackPin = {0.4, -0.1};
  made.set.tiltDeg = 0.0;
  return made;
}

const BuildStep& stepAt(const std::vector<BuildStep>& steps, BuildStage stage, int cabinets) {
  const auto found = std::find_if(steps.begin(), steps.end(), [&](const BuildStep& each) {
    return each.stage == stage && each.cabinets == cabinets;
  });
  BOOST_REQUIRE(found != steps.end());
  return *found;
}

std::optional<hang::Statics> solved(const Hang& hang) {
  try {
    return hang::solve(hang);
  } catch (const Error&) {
    return std::nullopt;
  }
}

} // namespace

BOOST_AUTO_TEST_SUITE(build_loads)

/// Moments about the rear pick, by hand: the first block hangs under the front pick (its centre at x = 0.5 is
/// 1.0 m ahead of the rear one), the second behind it (centre at x = −0.3, 0.2 m ahead).
BOOST_AUTO_TEST_CASE(theShareChangesAsCabinetsAreAdded) {
  Hang hang = foreAft();
  hang.stack = {block(100.0, 0.1), block(300.0, -0.7)};
  const auto steps = hang::buildSteps(hang, hang::solve(hang));
  const BuildStep& bar = stepAt(steps, BuildStage::stacked, 0);
  BOOST_TEST(bar.most[0] == 25.0 * g, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(bar.mass == 50.0);
  const BuildStep& one = stepAt(steps, BuildStage::stacked, 1);
  BOOST_TEST(one.most[0] == (25.0 + 100.0) * g, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(one.least[1] == 25.0 * g, boost::test_tools::tolerance(1e-12));
  const BuildStep& two = stepAt(steps, BuildStage::stacked, 2);
  BOOST_TEST(two.most[0] == (25.0 + 100.0 + 60.0) * g, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(two.most[1] == (25.0 + 240.0) * g, boost::test_tools::tolerance(1e-12));
  const hang::BuildWorst worst =
      hang::BuildUp(hang.bar, hang.stack, hang.chain).worst(hang.set, hang::solve(hang));
  BOOST_TEST(worst.leastShare == 25.0 / 150.0, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(worst.leastPick == 1U);
  BOOST_TEST((worst.leastAt.stage == BuildStage::stacked));
  BOOST_TEST(worst.leastAt.cabinets == 1);
  BOOST_TEST((worst.mostAt[0].stage == BuildStage::set)); // the same load while stacked: the plainer is named
  BOOST_TEST(!worst.unknown.has_value());
}

/// A block on a pair 1 m apart, its centre 0.3 m behind the axis about which it is panned by 30°: 0.15 m to
/// one side, where the hoist carries (½ + 0.15) of it, and the other (½ − 0.15): 0.3 of it between them, 0.6
/// of their mean.
BOOST_AUTO_TEST_CASE(howUnlikeTheTwoOfAPairBecome) {
  Hang hang;
  hang.bar.picks = hang::SidePair{1.0, 0.0, {}, {0.0, -0.3}, {-20.0, 20.0}, {-40.0, 40.0}};
  hang.stack = {block(100.0, -0.3)};
  hang.set.actuatorDeg = 0.0;
  hang.set.panDeg = 30.0;
  const hang::Statics statics = hang::solve(hang);
  BOOST_TEST(std::max(statics.pickLoads[0].load, statics.pickLoads[1].load) == 65.0 * g,
             boost::test_tools::tolerance(1e-12));
  const hang::BuildWorst worst = hang::BuildUp(hang.bar, hang.stack, hang.chain).worst(hang.set, statics);
  BOOST_TEST(worst.unlike == 0.6, boost::test_tools::tolerance(1e-9));
  BOOST_TEST(worst.unlikeAt.cabinets == 1);
}

/// Whichever of the joints it is: one that may open by more than a right angle, and does, is not followed.
BOOST_AUTO_TEST_CASE(aJointThatOpensAsItLikesIsNotKnownOnTheWay) {
  for (const std::size_t which : {0U, 1U}) {
    for (const double to : {80.0, 90.0}) {
      Hang hang = foreAft();
      hang.stack = {block(100.0, 0.0), block(100.0, 0.0)};
      hang.stack[which].cg.x = -0.2; // behind the pin, which hangs its rear open
      hang.stack[which].joint = hang::Seated{0.0, {-0.5, 0.0}, to};
      const hang::Statics statics = hang::standing(hang);
      BOOST_TEST(statics.joints[which].openDeg > 10.0);
      const auto worst = hang::BuildUp(hang.bar, hang.stack, hang.chain).worst(hang.set, statics);
      BOOST_TEST(worst.unknown.has_value() == (to == 90.0));
      BOOST_TEST(worst.carried.unknown.has_value() == (to == 90.0));
    }
  }
}

/// A hang whose lower cabinets pull it back carries most at the front before they come, not as set.
BOOST_AUTO_TEST_CASE(theMostMayComeBeforeTheEnd) {
  Hang hang = foreAft();
  hang.stack = {block(100.0, 0.1), block(100.0, -1.5)}; // centre 0.6 m behind the rear pick
  const hang::Statics statics = hang::solve(hang);
  const hang::BuildWorst worst = hang::BuildUp(hang.bar, hang.stack, hang.chain).worst(hang.set, statics);
  BOOST_TEST(worst.most[0] == 125.0 * g, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(statics.pickLoads[0].load == 65.0 * g, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(worst.mostAt[0].cabinets == 1);
}

/// A pivot without its chain is swung by hand: a block of 100 kg, its centre 0.4 m from the pin, swings from
/// straight down to straight back; the rear pick then has 0.4 m more arm.
BOOST_AUTO_TEST_CASE(aPivotSwingsUntilItsChainIsOn) {
  Hang hang = foreAft();
  hang.bar.chainAnchor = hang::Vec2{-0.5, 0.0};
  hang.stack = {block(100.0, 0.0)};
  hang::Element& down = hang.stack[0];
  down.cg = {0.0, -0.4};
  down.chainEye = hang::Vec2{-0.6, -0.4};
  down.joint = hang::Pivot{{-90.0, 0.0}};
  hang.bar.stackPin = {0.4, 0.0};
  hang.chain = hang::Chain{0.03, 0.0, 20, 1};
  const auto statics = solved(hang);
  BOOST_REQUIRE(statics.has_value());
  const auto steps = hang::buildSteps(hang, *statics);
  const BuildStep& loose = stepAt(steps, BuildStage::stacked, 1);
  // rear = 25 + 100 · (0.5 − x), x from 0.4 (down) to 0.4 − 0.4 (back)
  BOOST_TEST(loose.least[1] == (25.0 + 10.0) * g, boost::test_tools::tolerance(1e-9));
  BOOST_TEST(loose.most[1] == (25.0 + 50.0) * g, boost::test_tools::tolerance(1e-9));
  const BuildStep& chained = stepAt(steps, BuildStage::chained, 1);
  BOOST_TEST(chained.most[1] == statics->pickLoads[1].load, boost::test_tools::tolerance(1e-12));
}

/// Swung past level either way: its centre comes 0.4 m behind the pin and 0.4 m ahead of it, both before an
/// end of its travel.
BOOST_AUTO_TEST_CASE(aPivotSwingsPastStraightAheadAndStraightBack) {
  Hang hang = foreAft();
  hang.bar.chainAnchor = hang::Vec2{-0.2, 0.3};
  hang.bar.stackPin = {0.0, 0.0};
  hang.stack = {block(100.0, 0.0)};
  hang.stack[0].cg = {0.0, -0.4};
  hang.stack[0].chainEye = hang::Vec2{-0.6, -0.4};
  hang.stack[0].joint = hang::Pivot{{-100.0, 100.0}};
  hang.chain = hang::Chain{0.03, 0.0, 20, 1};
  const auto statics = solved(hang);
  BOOST_REQUIRE(statics.has_value());
  const BuildStep loose = stepAt(hang::buildSteps(hang, *statics), BuildStage::stacked, 1);
  // rear = 25 + 100 · (0.5 − x), x from 0.4 to −0.4; the front one the other way round
  for (const std::size_t pick : {0U, 1U}) {
    BOOST_TEST(loose.least.at(pick) == (25.0 + 10.0) * g, boost::test_tools::tolerance(1e-9));
    BOOST_TEST(loose.most.at(pick) == (25.0 + 90.0) * g, boost::test_tools::tolerance(1e-9));
  }
}

/// By hand, level: a chain 0.6 m behind a pivot's pin holds 100 kg, its centre 0.3 m behind it: 50 kg. A
/// second block of 100 kg, its centre 0.2 m ahead of the pin, leaves (30 − 20)/0.6 = 16.67 kg; tilted nose up
/// by t the arms turn with it. So the chain pulls most before the second block comes.
BOOST_AUTO_TEST_CASE(theChainMayPullMostBeforeTheEnd) {
  Hang hang = foreAft();
  hang.bar.stackPin = {0.4, 0.0};
  hang.bar.chainAnchor = hang::Vec2{-0.2, 0.2};
  hang.stack = {block(100.0, -0.3), block(100.0, 0.2)};
  hang.stack[0].chainEye = hang::Vec2{-0.6, -0.4};
  hang.stack[0].joint = hang::Pivot{{-20.0, 10.0}};
  hang.chain = hang::Chain{0.03, 0.0, 20, 1};
  const hang::Statics statics = hang::standing(hang);
  BOOST_TEST(statics.chain->tension == g * 10.0 / 0.6, boost::test_tools::tolerance(1e-9));
  const auto carried = hang::BuildUp(hang.bar, hang.stack, hang.chain).worst(hang.set, statics).carried;
  BOOST_TEST(!carried.unknown.has_value());
  BOOST_TEST(carried.chain == 50.0 * g, boost::test_tools::tolerance(1e-9));
  BOOST_TEST((carried.chainAt.stage == BuildStage::chained));
  BOOST_TEST(carried.chainAt.cabinets == 1);
  // The pivot's pin: with both blocks and the chain not yet on, all of their weight.
  BOOST_TEST(carried.joints[0].most.pins[0] == 200.0 * g, boost::test_tools::tolerance(1e-9));
  BOOST_TEST((carried.joints[0].pinAt[0].stage == BuildStage::stacked));
  BOOST_TEST(carried.joints[0].most.pins[1] == 0.0);
}

/// A joint that stays shut as aimed and opens a little where the bar hangs level, with a slack chain ahead of
/// it that would never shut it: its shape on the way is the one that it takes, and is known.
BOOST_AUTO_TEST_CASE(aJointThatOpensOnTheWayToItsAim) {
  Hang hang;
  hang.bar.picks = hang::SidePair{1.0, 0.0, {}, {0.0, -0.3}, {-20.0, 20.0}, {-40.0, 40.0}};
  hang.bar.frameMass = 50.0;
  hang.stack = {block(100.0, 0.0), block(100.0, -0.02)};
  hang.stack[1].joint = hang::Seated{0.0, {-0.5, 0.0}, 10.0};
  hang.bar.chainAnchor = hang::Vec2{0.3, 0.0};
  hang.stack[1].chainEye = hang::Vec2{0.1, -0.4};
  hang.chain = hang::Chain{0.03, 0.0, 60, 2};
  hang.set.panDeg = 10.0;
  hang.set.actuatorDeg = 0.0;
  BOOST_TEST(!solved(hang).has_value());
  hang.set.actuatorDeg = 20.0;
  const auto statics = solved(hang);
  BOOST_REQUIRE(statics.has_value());
  const auto carried = hang::BuildUp(hang.bar, hang.stack, hang.chain).worst(hang.set, *statics).carried;
  BOOST_TEST(!carried.unknown.has_value());
  BOOST_TEST(carried.joints[1].most.pins[0] > 99.0 * g);
}

/// A sinusoid through both ends: its crest where it lies between them, else the greater end.
BOOST_AUTO_TEST_CASE(betweenTwoWaysUpTheCrestCounts) {
  const auto between = [](double one, double other, double degrees) {
    return hang::alongArc({one, {}}, {other, {}}, degrees * std::numbers::pi / 180.0).chain;
  };
  const auto near = boost::test_tools::tolerance(1e-12);
  BOOST_TEST(between(3.0, 4.0, 90.0) == 5.0, near); // 3 cos t + 4 sin t
  BOOST_TEST(between(1.0, 1.0, 60.0) == 2.0 / std::sqrt(3.0), near);
  BOOST_TEST(between(2.0, 1.0, 60.0) == 2.0, near);
  BOOST_TEST(between(0.5, 2.0, 45.0) == 2.0, near);
  BOOST_TEST(between(7.0, 7.5, 0.0) == 7.5, near);
  BOOST_TEST(between(0.0, 0.0, 200.0) == 0.0);
  BOOST_TEST(std::isinf(between(1.0, 0.0, 180.0)));
}

/// What is no figure, or has no end, is not taken as little: the step is told as not known.
BOOST_AUTO_TEST_CASE(aStepWithoutAFigureIsNotKnown) {
  const hang::BuildMoment moment{BuildStage::chained, 2};
  for (const double none :
       {std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity()}) {
    hang::CarriedMost most{5.0, {hang::JointMost{}}};
    most.joints[0].stop = none;
    hang::CarriedWorst worst = hang::CarriedWorst::begun(1);
    worst.take(hang::CarriedMost{3.0, {hang::JointMost{}}}, {BuildStage::stacked, 1});
    BOOST_TEST(!worst.unknown.has_value());
    worst.take(most, moment);
    BOOST_REQUIRE(worst.unknown.has_value());
    BOOST_TEST(worst.unknown->cabinets == 2);
    BOOST_TEST(worst.chain == 3.0);
  }
}

/// No pose on the way, each solved by itself, has a chain or joint that carries more than is said.
BOOST_AUTO_TEST_CASE(noPoseOnTheWayCarriesMore) {
  testing::RandomHangs random(20273);
  int looked = 0;
  double closest = 0.0;
  for (int i = 0; i < 900; ++i) {
    Hang hang = random.next();
    const auto statics = solved(hang);
    if (!statics || !hang::standsAsAssembled(hang.stack, *statics, hang.chain ? hang.chain->held : 0)) {
      continue;
    }
    const auto carried = hang::BuildUp(hang.bar, hang.stack, hang.chain).worst(hang.set, *statics).carried;
    if (carried.unknown) {
      continue;
    }
    ++looked;
    for (int a = 0; a <= 7; ++a) {
      for (int p = 0; p <= (statics->side ? 3 : 0); ++p) {
        Hang pose = hang;
        pose.set = {};
        if (statics->side) {
          pose.set.actuatorDeg = statics->side->actuatorDeg * a / 7.0;
          pose.set.panDeg = hang.set.panDeg * p / 3.0;
        } else if (hang.set.tiltDeg) {
          pose.set.tiltDeg = *hang.set.tiltDeg * a / 7.0;
        }
        const hang::CarriedMost there = hang::carriedBy(hang::standing(pose));
        const double off = 1e-9 * statics->mass * g;
        BOOST_TEST(there.chain <= carried.chain + off);
        for (std::size_t j = 0; j < there.joints.size(); ++j) {
          const hang::JointMost& most = carried.joints[j].most;
          const hang::JointMost& one = there.joints[j];
          BOOST_TEST(one.pins[0] <= most.pins[0] + off);
          BOOST_TEST(one.pins[1] <= most.pins[1] + off);
          BOOST_TEST(one.contact <= most.contact + off);
          BOOST_TEST(one.roll <= most.roll + off);
          BOOST_TEST(one.sideways <= most.sideways + off);
          closest = std::max(closest, one.pins[0] / most.pins[0]);
        }
      }
    }
  }
  BOOST_TEST(looked > 80);
  BOOST_TEST(closest > 0.999);
}

/// Every pose on the way, each solved by itself, lies within what the step says, and its ends are reached.
BOOST_AUTO_TEST_CASE(noPoseOnTheWayIsBeyond) {
  testing::RandomHangs random(20271);
  int looked = 0;
  for (int i = 0; i < 600; ++i) {
    Hang hang = random.next();
    const auto statics = solved(hang);
    if (!statics) {
      continue;
    }
    const hang::BuildUp build(hang.bar, hang.stack, hang.chain);
    const BuildStep step = build.aiming(hang.set, *statics);
    const double weight = statics->mass * g;
    double most = 0.0;
    for (int a = 0; a <= 12; ++a) {
      for (int p = 0; p <= (statics->side ? 6 : 0); ++p) {
        Hang pose = hang;
        pose.set = {};
        if (statics->side) {
          pose.set.actuatorDeg = statics->side->actuatorDeg * a / 12.0;
          pose.set.panDeg = hang.set.panDeg * p / 6.0;
        } else if (hang.set.tiltDeg) {
          pose.set.tiltDeg = *hang.set.tiltDeg * a / 12.0;
        }
        const auto there = solved(pose);
        if (!there) {
          continue; // a seated joint that its chain opens there
        }
        for (std::size_t pick = 0; pick < there->pickCount; ++pick) {
          BOOST_TEST(there->pickLoads[pick].load <= step.most[pick] + 1e-9 * weight);
          BOOST_TEST(there->pickLoads[pick].load >= step.least[pick] - 1e-9 * weight);
          most = std::max(most, there->pickLoads[pick].load);
        }
      }
    }
    ++looked;
    BOOST_TEST(std::max(step.most[0], step.most[1]) >= most - 1e-9 * weight);
  }
  BOOST_TEST(looked > 300);
}

/// The stack cut short and solved by itself carries what its step says.
BOOST_AUTO_TEST_CASE(eachStepIsAHangOfItsOwn) {
  testing::RandomHangs random(77);
  int looked = 0;
  for (int i = 0; i < 400; ++i) {
    Hang hang = random.next(1 + random.oneOf(2), static_cast<testing::Held>(random.oneOf(3)));
    const auto statics = solved(hang);
    if (!statics) {
      continue;
    }
    for (const BuildStep& step : hang::buildSteps(hang, *statics)) {
      const bool chained = step.stage == BuildStage::chained;
      const bool loose = hang.chain && hang.chain->held <= step.cabinets && !chained;
      if (step.cabinets == 0 || loose || step.stage == BuildStage::aiming || step.stage == BuildStage::set) {
        continue;
      }
      Hang part = hang;
      part.stack.resize(static_cast<std::size_t>(step.cabinets));
      part.chain = chained ? hang.chain : std::nullopt;
      if (part.set.tiltDeg) {
        part.set.tiltDeg = 0.0;
      }
      const auto there = solved(part);
      if (!there) {
        continue;
      }
      ++looked;
      BOOST_TEST(there->mass == step.mass, boost::test_tools::tolerance(1e-12));
      for (std::size_t pick = 0; pick < there->pickCount; ++pick) {
        BOOST_TEST(std::abs(there->pickLoads[pick].load - step.most[pick]) < 1e-9 * there->mass * g);
      }
    }
  }
  BOOST_TEST(looked > 300);
}

/// Where seated joints open, the poses are settled: the shut shape alone would be beside the truth.
BOOST_AUTO_TEST_CASE(openJointsMoveTheLoad) {
  Hang hang = foreAft();
  hang.stack = {block(60.0, -0.3), block(60.0, -0.3)};
  for (hang::Element& each : hang.stack) {
    each.joint = hang::Seated{0.0, {-0.7, 0.0}, 3.0};
  }
  const hang::Statics statics = hang::solve(hang);
  const auto steps = hang::buildSteps(hang, statics);
  const hang::Settled settled = hang::settle(hang);
  const BuildStep& two = stepAt(steps, BuildStage::stacked, 2);
  BOOST_TEST(two.most[0] == settled.pickLoads[0].load, boost::test_tools::tolerance(1e-9));
  BOOST_TEST(settled.pickLoads[0].load > statics.pickLoads[0].load * 1.01);
}

/// Before anything hangs, the bare bar's loads are known, whatever opens later.
BOOST_AUTO_TEST_CASE(theBareBarIsKnown) {
  Hang hang = foreAft();
  hang.stack = {block(60.0, -0.3)};
  hang.stack[0].joint = hang::Seated{0.0, {-0.7, 0.0}, 3.0};
  const auto steps = hang::buildSteps(hang, hang::solve(hang));
  const BuildStep& bare = stepAt(steps, BuildStage::stacked, 0);
  BOOST_TEST(bare.most[0] == 25.0 * g, boost::test_tools::tolerance(1e-9));
  BOOST_TEST(bare.least[1] == 25.0 * g, boost::test_tools::tolerance(1e-9));
}

/// The first joint counts as any other: opens it as far as it likes, nothing is known of what it carries.
BOOST_AUTO_TEST_CASE(theFirstJointMayOpenFreelyToo) {
  Hang hang = foreAft();
  hang.stack = {block(60.0, -0.3)};
  hang.stack[0].joint = hang::Seated{0.0, {-0.7, 0.0}, 90.0};
  const auto worst = hang::BuildUp(hang.bar, hang.stack, hang.chain).worst(hang.set, hang::solve(hang));
  BOOST_TEST(worst.carried.unknown.has_value());
  hang.stack[0].joint = hang::Seated{0.0, {-0.7, 0.0}, 89.0};
  const auto known = hang::BuildUp(hang.bar, hang.stack, hang.chain).worst(hang.set, hang::solve(hang));
  BOOST_TEST(!known.carried.unknown.has_value());
}

/// On its way from level to 30° nose down a joint shuts; what hangs below it turns by more than the bar.
BOOST_AUTO_TEST_CASE(whatShutsOnTheWayIsLookedAtOnTheWay) {
  Hang hang = foreAft();
  hang.stack = {block(60.0, -0.3), block(60.0, -0.3)};
  hang.stack[0].joint = hang::Seated{0.0, {-0.7, 0.0}, 12.0};
  hang.stack[1].cg = {-0.75, -0.1};
  hang.set.tiltDeg = -40.0;
  const auto statics = hang::asStatics(hang::settle(hang));
  const auto carried = hang::BuildUp(hang.bar, hang.stack, hang.chain).worst(hang.set, statics).carried;
  BOOST_REQUIRE(!carried.unknown.has_value());
  std::array<double, 2> most{};
  for (int i = 0; i <= 400; ++i) {
    Hang pose = hang;
    pose.set.tiltDeg = -0.1 * i;
    const auto there = hang::carriedBy(hang::standing(pose));
    for (const std::size_t pin : {0U, 1U}) {
      most[pin] = std::max(most[pin], there.joints[1].pins[pin]);
    }
  }
  for (const std::size_t pin : {0U, 1U}) {
    BOOST_TEST(carried.joints[1].most.pins[pin] == most[pin], boost::test_tools::tolerance(1e-3));
  }
}

/// A joint that opens as far as it likes: how far is not known, and so is what the picks carry then.
BOOST_AUTO_TEST_CASE(anOpeningThatNobodyStatedLeavesTheStepOpen) {
  Hang hang = foreAft();
  hang.stack = {block(60.0, -0.3), block(60.0, -0.3)};
  for (hang::Element& each : hang.stack) {
    each.joint = hang::Seated{0.0, {-0.7, 0.0}, 90.0};
  }
  const hang::BuildWorst worst =
      hang::BuildUp(hang.bar, hang.stack, hang.chain).worst(hang.set, hang::solve(hang));
  BOOST_TEST(worst.unknown.has_value());
}

BOOST_AUTO_TEST_CASE(whatNobodyWorkedOutIsNotKnown) {
  BOOST_TEST(hang::BuildWorst{}.unknown.has_value());
}

/// A bar that cannot be turned straight ahead hangs rolled from the first step on. What that turns over to
/// one side of a pivot, which somebody holds before its chain is on, is counted from the pivot's own pin, as
/// for any joint.
BOOST_AUTO_TEST_CASE(aPivotHeldByHandTurnsAboutItsPin) {
  Hang hang = testing::exampleHang();
  hang.stack.erase(hang.stack.begin()); // the downfill alone, straight under the bar
  auto& pair = std::get<hang::SidePair>(hang.bar.picks);
  pair.panTravelDeg = {14.0, 20.0};
  pair.tiltTravelDeg = {0.0, 0.0};
  hang.stack[0].joint = hang::Pivot{{-30.0, 0.0}};
  const hang::PivotTriangle triangle = hang::pivotTriangle(hang.bar, hang.stack, 1);
  hang.chain = hang::Chain{0.0225, 0.0, 1, 1};
  hang.chain->fixed = hang::lengthAt(triangle, -12.0) - hang::chainLength(*hang.chain);
  hang.set = {std::nullopt, 0.0, 14.0};
  const hang::BuildWorst worst =
      hang::BuildUp(hang.bar, hang.stack, hang.chain).worst(hang.set, hang::solve(hang));
  BOOST_REQUIRE(!worst.carried.unknown.has_value());
  double most = 0.0;
  for (const double deg : {-30.0, -12.0, 0.0}) {
    Hang held = hang;
    held.chain.reset();
    held.stack[0].joint = hang::Seated{deg, {-0.6, 0.0}};
    most = std::max(most, hang::carriedBy(hang::solve(held)).joints[0].roll);
  }
  BOOST_TEST(most > 1.0);
  BOOST_TEST(worst.carried.joints[0].most.roll == most, boost::test_tools::tolerance(0.01));
}

BOOST_AUTO_TEST_SUITE_END()
