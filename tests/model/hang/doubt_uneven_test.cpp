// SPDX-License-Identifier: GPL-3.0-or-later
// Two picks of unlike height at the unfavourable end, by hand; random corners stand in doubt_test.
#include <boost/test/unit_test.hpp>

#include <cmath>

#include "hang/doubt_uneven.h"
#include "hang/uneven.h"
#include "quantity/quantity.h"

using namespace hangbook;
using namespace hangbook::hang;

namespace {

constexpr double g = standardGravity;
constexpr auto near = [] { return boost::test_tools::tolerance(1e-12); };

/// 110 kg at most, 48 to 60 kg on either pick.
Unfavourable atMost() {
  Unfavourable worst;
  worst.statics.mass = 110.0;
  worst.statics.pickLoads[0].load = worst.statics.pickLoads[1].load = 60.0 * g;
  worst.leastPick = {48.0 * g, 48.0 * g};
  return worst;
}

} // namespace

BOOST_AUTO_TEST_SUITE(doubt_uneven)

BOOST_AUTO_TEST_CASE(a_side_pair_by_hand) {
  // 1 m apart or 0.9 m; the centre 2 m below or 2.7 m. Raised by 0.54 m: sin 0.6, cos 0.8, tan 0.75 at 0.9 m,
  // so that 2.7 ÷ 0.9 · 0.75 = 2.25 times the weight moves: 247.5 kg.
  Bar bar;
  SidePair pair;
  pair.pickSpacing = 1.0;
  bar.picks = pair;
  Statics stated;
  stated.cg.z = -2.0;
  Doubts doubts;
  doubts.frame.place = 0.1;
  Unfavourable worst = atMost();
  worst.centreOff = 0.7;
  for (const std::size_t raised : {0U, 1U}) {
    const auto within = unevenWithin(bar, doubts, stated, worst, raised, 0.54);
    BOOST_TEST_REQUIRE(within.has_value());
    BOOST_TEST(within->part == 2.25, near());
    BOOST_TEST(within->raised == (60.0 + 247.5) * g, near());
    BOOST_TEST(within->other == (48.0 - 247.5) * g, near());
  }
  // sin 60° · 0.9 m = 0.7794 m: beyond, some corner stands too steep.
  BOOST_TEST(unevenWithin(bar, doubts, stated, worst, 0, 0.779).has_value());
  BOOST_TEST(!unevenWithin(bar, doubts, stated, worst, 0, 0.780).has_value());
  worst.bounded = false;
  BOOST_TEST(!unevenWithin(bar, doubts, stated, worst, 0, 0.1).has_value());
}

BOOST_AUTO_TEST_CASE(a_fore_aft_pair_by_hand) {
  // 1 m apart, front up by sin 0.6; the centre 1.5 m plumb below the front pick, 1.2 m square below the line.
  // Front 0.2 m higher: sin 0.8, tan 4/3 instead of 3/4, so that 1.2 · 7/12 = 0.7 of the weight moves to it.
  // Rear 0.2 m higher: sin 0.4 instead of 0.6.
  Bar bar;
  bar.picks = ForeAftPair{{0.5, 0.5}, {-0.5, 0.5}};
  Statics stated;
  stated.tiltDeg = toDegrees(std::asin(0.6));
  stated.cg.z = -1.5;
  const auto front = unevenWithin(bar, {}, stated, atMost(), 0, 0.2);
  BOOST_TEST_REQUIRE(front.has_value());
  BOOST_TEST(front->part == 0.7, near());
  BOOST_TEST(front->raised == (60.0 + 77.0) * g, near());
  BOOST_TEST(front->other == (48.0 - 77.0) * g, near());
  const auto rear = unevenWithin(bar, {}, stated, atMost(), 1, 0.2);
  BOOST_TEST_REQUIRE(rear.has_value());
  BOOST_TEST(rear->part == 1.2 * (0.75 - 0.4 / std::sqrt(0.84)), near());
  // With no rise nothing moves, and one pick has no line.
  BOOST_TEST(unevenWithin(bar, {}, stated, atMost(), 0, 0.0)->part == 0.0);
  bar.picks = SinglePick{{0.0, 0.5}};
  BOOST_TEST(!unevenWithin(bar, {}, stated, atMost(), 0, 0.1).has_value());
  // A centre above the line moves nothing to the raised one at worst.
  bar.picks = ForeAftPair{{0.5, 0.5}, {-0.5, 0.5}};
  stated.cg.z = 1.5;
  BOOST_TEST(unevenWithin(bar, {}, stated, atMost(), 0, 0.2)->part == 0.0);
}

BOOST_AUTO_TEST_SUITE_END()
