// SPDX-License-Identifier: GPL-3.0-or-later
// Figures within their doubts at the edges of what a hang can do: pivots of any angle, actuators that a tilt
// needs, joints that pan opens. By hand.
#include <boost/test/unit_test.hpp>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>
#include <vector>

#include "hang/balance.h"
#include "hang/build_loads.h"
#include "hang/chain.h"
#include "hang/doubt.h"
#include "hang/doubt_joints.h"
#include "hang/solve.h"
#include "quantity/quantity.h"
#include "support/example_hang.h"

using namespace hangbook;
using namespace hangbook::hang;
using hangbook::testing::exampleHang;
using hangbook::testing::oneCabinet;

namespace {

const auto near = [](double tolerance) { return boost::test_tools::tolerance(tolerance); };

} // namespace

BOOST_AUTO_TEST_SUITE(doubt_alone)

/// A chain that may be too short to be any angle's leaves the pivot anywhere.
BOOST_AUTO_TEST_CASE(aPivotOfNoAngleMayStandAtAny) {
  Hang hang = exampleHang();
  Doubts doubts;
  doubts.stack.resize(2);
  doubts.linkShorter = hang.chain->pitch;
  HangShapes shapes(hang, doubts);
  BOOST_TEST(!std::isfinite(pivotSpan(hang, doubts, false).width()));
  BOOST_TEST(shapes.shutPivot().low == -180.0);
  BOOST_TEST(shapes.shutPivot().high == 180.0);
}

/// Panned square, too, the actuators of all corners lie within what is told, which is not twice what they
/// need.
BOOST_AUTO_TEST_CASE(whatActuatorATiltNeedsWhenPannedSquare) {
  Hang hang = oneCabinet({}, Pinned{0.0, {Vec2{0.25, 0.0}, Vec2{-0.25, 0.0}}});
  const SidePair pair{1.0, 10.0, {0.1, -0.1}, {0.0, -0.3}, {-40.0, 40.0}, {-90.0, 90.0}};
  hang.bar.picks = pair;
  const HangingSpan hanging{Span(100.0, 102.0), {Span(0.09, 0.11), Span(-0.52, -0.5)}};
  for (const double panDeg : {0.0, 60.0, 90.0}) {
    for (const double tiltDeg : {-5.0, 5.0}) {
      const auto needed = [&](double mass, double x, double z) {
        Assembly assembly;
        assembly.mass = mass;
        assembly.cg = {x, z};
        return actuatorFor(pair, assembly, tiltDeg, panDeg);
      };
      const double about = needed(101.0, 0.1, -0.51);
      const Span told = actuatorWithin(hang, {}, hanging, tiltDeg, panDeg, about);
      double low = about;
      double high = about;
      for (const double mass : {100.0, 102.0}) {
        for (const double x : {0.09, 0.11}) {
          for (const double z : {-0.52, -0.5}) {
            low = std::min(low, needed(mass, x, z));
            high = std::max(high, needed(mass, x, z));
          }
        }
      }
      BOOST_TEST(told.low <= low + 1e-9);
      BOOST_TEST(told.high >= high - 1e-9);
      BOOST_TEST(told.width() <
                 (panDeg == 90.0 ? 0.3 : 2.0 * (high - low))); // square, x and z blur each other
    }
  }
}

/// Straight up is the farthest that a head can aim: either way from there it aims lower, so that no figure in
/// doubt has just one actuator for it.
BOOST_AUTO_TEST_CASE(straightUpHasNoActuatorOfItsOwn) {
  Hang hang = oneCabinet({}, Pinned{0.0, {Vec2{0.25, 0.0}, Vec2{-0.25, 0.0}}});
  const SidePair pair{1.0, 10.0, {0.1, -0.1}, {0.0, -0.3}, {-150.0, 150.0}, {0.0, 0.0}};
  hang.bar.picks = pair;
  Assembly assembly;
  assembly.mass = 100.0;
  assembly.cg = {-1.5, -0.1};
  double about = 0.0;
  for (double deg = -150.0; deg <= 150.0; deg += 0.01) {
    if (swingOut(pair, assembly, deg, 0.0).tiltDeg > swingOut(pair, assembly, about, 0.0).tiltDeg) {
      about = deg;
    }
  }
  BOOST_TEST(swingOut(pair, assembly, about, 0.0).tiltDeg == 90.0, near(1e-3));
  const HangingSpan hanging{Span(100.0), {Span(-1.5), Span(-0.1)}};
  BOOST_TEST(!std::isfinite(actuatorWithin(hang, {}, hanging, 90.0, 0.0, about).width()));
  BOOST_TEST(actuatorWithin(hang, {}, hanging, 80.0, 0.0, actuatorFor(pair, assembly, 80.0, 0.0)).width() <
             1e-6);
}

/// A pivot folded back by 175° whose travel is almost all of a turn, its chain longer or shorter by what
/// turns it by 3° either way, and by 5.5°: what is beyond half a turn would be told from the other side, and
/// is the next to it all the same.
BOOST_AUTO_TEST_CASE(aPivotMayTurnPastHalfATurn) {
  Hang hang = oneCabinet({0.0, -0.3}, Pivot{{-170.0, 180.0}});
  hang.bar.stackPin = {};
  hang.bar.chainAnchor = Vec2{-1.0, 0.0};
  hang.stack[0].chainEye = 0.5 * Vec2{std::cos(toRadians(1.0)), -std::sin(toRadians(1.0))}; // in line at 181°
  hang.chain = Chain{0.01, 0.0, 1, 1};
  const PivotTriangle triangle = pivotTriangle(hang.bar, hang.stack, 1);
  const double length = lengthAt(triangle, 175.0);
  hang.chain->fixed = length - 0.01;
  Doubts doubts;
  doubts.stack.resize(1);
  doubts.linkLonger = lengthAt(triangle, 172.0) - length;
  for (const double past : {178.0, 180.5}) {
    doubts.linkShorter = length - lengthAt(triangle, past);
    const Span pivot = pivotSpan(hang, doubts, false);
    BOOST_TEST(pivot.low == 172.0, near(1e-9));
    BOOST_TEST(pivot.high == past, near(1e-9));
  }
}

/// A joint above the pivot opens by 1°: the pivot's pin, 0.62 m below, moves by as many radians; frame, bass
/// and downfill are off by 1, 2 and 3 mm each way. The pivot lies between the angles of a chain that is
/// longer or shorter by all of that, and turns with what opens.
BOOST_AUTO_TEST_CASE(whatOpensAboveAPivotAddsToWhatItsPlacesAreOff) {
  Hang hang = exampleHang();
  hang.stack[0].joint = Seated{0.0, {-0.7, -0.03}, 1.0};
  Doubts doubts;
  doubts.frame.place = 0.001;
  doubts.stack.resize(2);
  doubts.stack[0].place = 0.002;
  doubts.stack[1].place = 0.003;
  const double moves = 0.62 * toRadians(1.0);
  const double places = std::numbers::sqrt2 * (2.0 * 0.001 + 0.002 + 0.003);
  const PivotTriangle triangle = pivotTriangle(hang.bar, hang.stack, 2);
  const double length = chainLength(*hang.chain);
  for (const bool open : {false, true}) {
    const Span pivot = pivotSpan(hang, doubts, open);
    const double off = places + (open ? moves : 0.0);
    const double one = lengthAt(triangle, pivot.low + (open ? 1.0 : 0.0));
    const double other = lengthAt(triangle, pivot.high);
    BOOST_TEST(std::min(one, other) == length - off, near(1e-9));
    BOOST_TEST(std::max(one, other) == length + off, near(1e-9));
  }
}

/// Aimed 20° down and panned by up to 60°, up leans by 20° and 60° out of the joint's plane and is as little
/// as √(1 − sin² 20° − sin² 60°) = 0.365 along the cabinet, whose weight presses the joint while 0.342 · 0.3
/// m are less than 0.365 of what its centre is ahead: 0.281 m. With less it may open, by 5°, and carries its
/// centre forward.
BOOST_AUTO_TEST_CASE(panOpensAJointThatTiltAloneLeavesShut) {
  for (const double ahead : {0.15, 0.2, 0.27, 0.29}) {
    Hang hang = oneCabinet({ahead, -0.3}, Seated{0.0, {-0.8, 0.0}, 5.0});
    hang.bar.picks = SidePair{1.0, 0.0, {}, {}, {0.0, 0.0}, {-70.0, 70.0}};
    hang.set = {};
    hang.set.actuatorDeg = 0.0;
    hang.set.tiltDeg = -20.0;
    hang.set.panDeg = 60.0;
    Statics statics;
    statics.pickCount = 2;
    statics.side.emplace();
    statics.mass = 100.0;
    const BuildWorst stated;
    Doubts doubts;
    doubts.stack.resize(1);
    HangShapes shapes(hang, doubts);
    const Turn opened = turnBy(toRadians(ahead < 0.281 ? 5.0 : 0.0));
    const double farthest = ahead * opened.cosine + 0.3 * opened.sine;
    for (const bool byActuator : {false, true}) { // then the tilt is what came of it
      statics.tiltDeg = byActuator ? -20.0 : 0.0;
      hang.set.tiltDeg = byActuator ? std::nullopt : std::optional(-20.0);
      const BuildWorst worst =
          buildWithin(hang, doubts, statics, stated, {}, shapes.shut().forBuild(hang, doubts, stated), 0.0);
      BOOST_TEST(worst.most[0] == (50.0 + 100.0 * std::sin(toRadians(60.0)) * farthest) * standardGravity,
                 near(1e-9));
    }
  }
}

/// A chain whose line passes through a joint's pin asks nothing for that joint; with an anchor in doubt it
/// may pull without end.
BOOST_AUTO_TEST_CASE(aChainThroughAPinMayAskForNothingOrForAnything) {
  Hang hang = oneCabinet({0.4, -0.3}, Seated{0.0, {-0.8, 0.0}, 5.0});
  hang.bar.chainAnchor = Vec2{0.0, 0.5};
  hang.stack[0].chainEye = Vec2{0.0, -0.5};
  hang.chain = Chain{0.05, 0.0, 20, 1};
  const Statics statics = solve(hang);
  Doubts doubts;
  doubts.stack.resize(1);
  const auto tension = [&] {
    HangShapes shapes(hang, doubts);
    UpSpan up;
    up.up = {0.0, 1.0};
    return Within{hang, doubts, statics, 1, false, &shapes.shut(), up, {}}.findTension();
  };
  BOOST_TEST(tension().high == 0.0);
  doubts.frame.place = 0.001;
  BOOST_TEST(std::isinf(tension().high));
}

BOOST_AUTO_TEST_SUITE_END()
