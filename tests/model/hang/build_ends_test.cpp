// SPDX-License-Identifier: GPL-3.0-or-later
// Bars that are panned or tilted far, or that cannot stand at 0: what the picks carry on the way there.
#include <algorithm>
#include <cmath>

#include <boost/test/unit_test.hpp>

#include "hang/build_loads.h"
#include "hang/changes.h"
#include "hang/solve.h"
#include "quantity/quantity.h"
#include "support/example_hang.h"

using namespace hangbook;
using hang::BuildStage;
using hang::BuildStep;
using hang::Hang;
using hangbook::testing::exampleHang;

namespace {

constexpr double weight = 100.0 * standardGravity;
const auto near = boost::test_tools::tolerance(1e-9);

/// Nothing but 100 kg, its centre 0.2 m ahead of the picks and 0.25 m below them, the picks 1 m apart.
Hang aheadOfItsPicks(double actuatorDeg, double panDeg) {
  Hang made;
  made.bar.picks = hang::SidePair{1.0, 0.0, {}, {}, {-20.0, 60.0}, {-150.0, 150.0}};
  made.set.actuatorDeg = actuatorDeg;
  made.set.panDeg = panDeg;
  hang::Element block;
  block.mass = 100.0;
  block.cg = {0.2, -0.25};
  block.outline = {{0.0, 0.0}, {0.0, -0.5}, {-0.8, -0.5}};
  block.joint = hang::Pinned{0.0, {hang::Vec2{0.1, 0.0}, hang::Vec2{-0.1, 0.0}}};
  made.stack = {block};
  return made;
}

BuildStep stepOf(const std::vector<BuildStep>& steps, BuildStage stage, int cabinets) {
  const auto found = std::ranges::find_if(
      steps, [&](const BuildStep& each) { return each.stage == stage && each.cabinets == cabinets; });
  BOOST_REQUIRE(found != steps.end());
  return *found;
}
BuildStep aiming(const Hang& hang) {
  return stepOf(hang::buildSteps(hang, hang::solve(hang)), BuildStage::aiming, 1);
}

} // namespace

BOOST_AUTO_TEST_SUITE(build_ends)

/// Square to the picks the centre stands furthest to a side, 0.2 m: 0.3 and 0.7 of the weight. Panned by 120°
/// the hang has been there on the way.
BOOST_AUTO_TEST_CASE(apanBeyondSquareIsWorstWhereItIsSquare) {
  for (const double sign : {1.0, -1.0}) {
    const BuildStep step = aiming(aheadOfItsPicks(0.0, sign * 120.0));
    const std::size_t less = sign < 0.0 ? 0 : 1;
    BOOST_TEST(step.least.at(less) == 0.3 * weight, near);
    BOOST_TEST(step.most.at(less) == 0.5 * weight, near);
    BOOST_TEST(step.least.at(1 - less) == 0.5 * weight, near);
    BOOST_TEST(step.most.at(1 - less) == 0.7 * weight, near);
  }
}

/// Tilted by atan(0.25/0.2) = 51.3° the centre stands level with the picks, √(0.2² + 0.25²) m ahead of them:
/// an actuator that goes on to 60° has been there.
BOOST_AUTO_TEST_CASE(anActuatorBeyondTheCrestIsWorstAtIt) {
  const BuildStep step = aiming(aheadOfItsPicks(60.0, -120.0));
  BOOST_TEST(step.least[0] == (0.5 - std::hypot(0.2, 0.25)) * weight, near);
  BOOST_TEST(step.most[1] == (0.5 + std::hypot(0.2, 0.25)) * weight, near);
}

/// A bar that cannot come to 0 is assembled at the ends of its travels, panned 5° and nose up 3°. The pivot
/// without its chain is swung by hand over all of its travel: tried every hundredth of a degree, no angle
/// loads a pick more than the step says, and one loads it as much.
BOOST_AUTO_TEST_CASE(apivotIsWorstWithItsCentreStraightBehindIt) {
  Hang hang = exampleHang();
  auto& pair = std::get<hang::SidePair>(hang.bar.picks);
  pair.tiltTravelDeg = {3.0, 20.0};
  pair.panTravelDeg = {5.0, 20.0};
  hang.stack[1].joint = hang::Pivot{{-80.0, 0.0}};
  const BuildStep step =
      stepOf(hang::BuildUp(hang.bar, hang.stack, hang.chain).steps(), BuildStage::stacked, 2);
  Hang swung = hang;
  swung.chain.reset();
  swung.set = {{}, 3.0, 5.0};
  std::array<double, 2> most{};
  std::array<double, 2> least{1e9, 1e9};
  for (int i = 0; i <= 8000; ++i) {
    swung.stack[1].joint = hang::Pinned{-0.01 * i, {hang::Vec2{0.1, 0.0}, hang::Vec2{-0.1, 0.0}}};
    const hang::Statics statics = hang::solve(swung);
    for (const std::size_t pick : {0U, 1U}) {
      most.at(pick) = std::max(most.at(pick), statics.pickLoads.at(pick).load);
      least.at(pick) = std::min(least.at(pick), statics.pickLoads.at(pick).load);
    }
  }
  for (const std::size_t pick : {0U, 1U}) {
    BOOST_TEST(step.most.at(pick) == most.at(pick), near);
    BOOST_TEST(step.least.at(pick) == least.at(pick), near);
  }
}

/// Readings that are those of the hang as planned: no other pan than its own gives them, and the nearest that
/// counts as another is a quarter of a degree off.
BOOST_AUTO_TEST_CASE(thePanThatItHasIsNoChange) {
  Hang hang = exampleHang();
  hang.set.panDeg = 2.0;
  const hang::Statics statics = hang::solve(hang);
  int told = 0;
  for (const hang::Change& change :
       hang::singleChanges(hang, {statics.pickLoads[0].load, statics.pickLoads[1].load})) {
    if (change.kind == hang::ChangeKind::panned) {
      ++told;
      BOOST_TEST(std::abs(change.amount - 2.0) == 0.25, near);
    }
  }
  BOOST_TEST(told == 1);
}

BOOST_AUTO_TEST_SUITE_END()
