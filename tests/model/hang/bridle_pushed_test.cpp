// SPDX-License-Identifier: GPL-3.0-or-later
// What a push from the side does to a bridle's legs: by hand, and against the balance of each direction of a
// dense ring.
#include <boost/test/unit_test.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <vector>

#include "hang/bridle.h"
#include "hang/bridle_pushed.h"
#include "quantity/error.h"
#include "support/bridle_legs.h"
#include "support/random_hang.h"

using namespace hangbook;
using hang::BridleLeg;
using hang::PushedBridle;
using hang::PushedLeg;
using hang::SidewaysLoad;
using hang::Vec3;
using hangbook::testing::legsTo;
using hangbook::testing::RandomHangs;

namespace {

constexpr auto near = [](double tolerance) { return boost::test_tools::tolerance(tolerance); };

/// Points 6 m apart along x, apex 4 m under their middle: legs of 5 m.
const std::vector<BridleLeg> threeFourFive{{{3.0, 0.0, 4.0}, 5.0}, {{-3.0, 0.0, 4.0}, 5.0}};

/// The worst of all directions of a ring, from the balance of each.
struct Seen {
  PushedLeg leg{0.0, 1e300, -1e300, 90.0};
  double two = 0.0;
  bool anySlack = false;
};
std::vector<Seen> around(const std::vector<BridleLeg>& legs, SidewaysLoad load, int steps) {
  std::vector<Seen> seen(legs.size());
  for (int i = 0; i < steps; ++i) {
    const double way = 2.0 * M_PI * i / steps;
    const Vec3 force{load.side * std::cos(way), load.side * std::sin(way), -load.down};
    const hang::Bridle there = hang::settleBridle(legs, force);
    const std::vector<double> two = hang::worstOfTwo(legs, force);
    for (std::size_t leg = 0; leg < legs.size(); ++leg) {
      const hang::LegForce& pull = there.legs[leg];
      seen[leg].leg.most = std::max(seen[leg].leg.most, pull.tension);
      seen[leg].leg.least = std::min(seen[leg].leg.least, pull.tension);
      seen[leg].leg.down = std::max(seen[leg].leg.down, pull.vertical());
      seen[leg].leg.fromHorizontalDeg = std::min(seen[leg].leg.fromHorizontalDeg, pull.fromHorizontalDeg);
      seen[leg].two = std::max(seen[leg].two, two[leg]);
      seen[leg].anySlack = seen[leg].anySlack || pull.slack;
    }
  }
  return seen;
}

bool anySlack(const std::vector<Seen>& seen) {
  return std::ranges::any_of(seen, [](const Seen& each) { return each.anySlack; });
}

/// Two points on a sloping line, an apex under it and between them, so that both legs pull.
std::vector<BridleLeg> twoLegs(RandomHangs& random, double unlike) {
  const double apart = random.between(1.0, 8.0);
  const double bearing = random.between(-3.1, 3.1);
  const Vec3 far{apart * std::cos(bearing), apart * std::sin(bearing), random.between(-unlike, unlike)};
  const double part = random.between(0.15, 0.85);
  Vec3 apex = part * far;
  apex.z -= random.between(0.3, 1.5) * apart;
  return legsTo({Vec3{}, far}, apex);
}

std::vector<BridleLeg> threeLegs(RandomHangs& random) {
  std::vector<Vec3> points;
  for (int i = 0; i < 3; ++i) {
    const double bearing = 6.2831853 * (i + random.between(0.0, 0.4)) / 3.0;
    const double out = random.between(1.0, 4.0);
    points.push_back({out * std::cos(bearing), out * std::sin(bearing), random.between(0.0, 1.0)});
  }
  const double a = random.between(0.2, 0.45);
  const double b = random.between(0.2, 0.35);
  Vec3 apex = a * points[0] + b * points[1] + (1.0 - a - b) * points[2];
  apex.z -= random.between(1.5, 5.0);
  return legsTo(points, apex);
}

} // namespace

BOOST_AUTO_TEST_SUITE(bridle_pushed)

/// 8 kN down, 1.2 kN to the side. Along the line, balance at the apex: ⅗ (T₁ − T₂) = 1.2, ⅘ (T₁ + T₂) = 8, so
/// T₁ = 6 and T₂ = 4 kN; 4.8 and 3.2 kN down. Across it the plane turns by tan = 1.2/8 and both pull ⅝ √(8² +
/// 1.2²) = 5.056 kN; the legs then fall by 4 cos of that angle on 5 m.
BOOST_AUTO_TEST_CASE(two_legs_by_hand) {
  const PushedBridle bridle(threeFourFive);
  for (const double part : {1.0, 1e-4}) { // of a newton too
    for (const std::size_t which : {0U, 1U}) {
      const PushedLeg leg = bridle.leg(which, {part * 8000.0, part * 1200.0});
      BOOST_TEST(leg.most == part * 6000.0, near(1e-12));
      BOOST_TEST(leg.least == part * 4000.0, near(1e-12));
      BOOST_TEST(leg.down == part * 4800.0, near(1e-12));
      BOOST_TEST(std::sin(leg.fromHorizontalDeg * M_PI / 180.0) == 0.8 * 8.0 / std::hypot(8.0, 1.2),
                 near(1e-12));
      BOOST_TEST(bridle.worstOfTwo(which, {part * 8000.0, part * 1200.0}) == part * 6000.0, near(1e-12));
    }
  }
  // The load along one leg (3 to 4): the other is just slack.
  BOOST_TEST(std::abs(bridle.leg(0, {8000.0, 6000.0}).least) < 1e-9);
  BOOST_TEST(bridle.leg(0, {8000.0, 6000.0}).most == 10000.0, near(1e-12));
  BOOST_TEST(bridle.leg(0, {8000.0, 6400.0}).least < 0.0);
  // Beyond that one leg carries all: never more than the load's own size.
  BOOST_TEST(bridle.leg(0, {8000.0, 15000.0}).most == 17000.0, near(1e-12));
}

/// Points 8 m apart, the other one 160/29 m lower, both legs 5 m: the apex is 3 m square below the middle of
/// their line. It falls by 20 and runs by 21 on 29, so that 29 kN down and 2.9 kN uphill pull 17.9 kN along
/// it and 23 kN square to it: ⅝ (4/3 · 23 + 17.9) kN in the upper leg. More square to the line of the points
/// would be needed for the load to stand square to the lower leg, where the upper one would pull most. The
/// upper leg rises by (4 · 20 + 3 · 21) on 5 · 29, so that its point carries 143/145 of its pull.
BOOST_AUTO_TEST_CASE(the_upper_of_two_unlike_points_pulls_most_when_pushed_uphill) {
  const PushedBridle bridle(
      std::vector<BridleLeg>{{{0.0, 0.0, 0.0}, 5.0}, {{168.0 / 29.0, 0.0, -160.0 / 29.0}, 5.0}});
  const double pull = 625.0 * (4.0 / 3.0 * 23.0 + 17.9);
  BOOST_TEST(bridle.leg(0, {29000.0, 2900.0}).most == pull, near(1e-12));
  BOOST_TEST(bridle.leg(0, {29000.0, 2900.0}).down == pull * 143.0 / 145.0, near(1e-12));
}

/// Points 10.5 m apart, the apex 4 m under a place 7.5 m from one and 3 m from the other: legs of 8.5 and 5
/// m, more than square to each other. 5 kN down and 12 to the side are 13 kN. Square to the other leg they
/// pull 8.5 · 5 ÷ (10.5 · 4) of that in each leg: more than all of it, which it carries with the other slack.
BOOST_AUTO_TEST_CASE(a_leg_pulls_most_where_the_load_is_square_to_the_other) {
  const PushedBridle bridle(std::vector<BridleLeg>{{{0.0, 0.0, 4.0}, 8.5}, {{10.5, 0.0, 4.0}, 5.0}});
  for (const std::size_t which : {0U, 1U}) {
    BOOST_TEST(bridle.leg(which, {5000.0, 12000.0}).most == 13000.0 * 85.0 / 84.0, near(1e-12));
  }
}

/// On a slope the apex may hang beyond the lower point's square: the upper leg then pulls most in the upright
/// plane of the points, pushed away from its own. Of a load of a newton as of a thousand.
BOOST_AUTO_TEST_CASE(an_apex_beyond_the_square_of_the_lower_point) {
  const double level = 1.0 / std::hypot(1.0, 0.5);
  const double fall = 0.5 * level;
  const std::vector<BridleLeg> legs =
      legsTo({{}, {4.0 * level, 0.0, -4.0 * fall}}, {4.2 * level - fall, 0.0, -4.2 * fall - level});
  const PushedBridle bridle(legs);
  for (const double part : {1.0, 1e-3}) {
    const hang::Bridle away = hang::settleBridle(legs, {part * 20.0, 0.0, part * -1000.0});
    BOOST_TEST(bridle.leg(0, {part * 1000.0, part * 20.0}).most == away.legs[0].tension, near(1e-9));
  }
}

/// Points at the corners of an even triangle, 3 m out, apex 4 m below its middle: legs of 5 m. Down 9 kN: ⅓ ·
/// 9 · 5/4 = 3.75 kN each. 0.9 kN towards one point, by moments about the other two (1.5 m behind the middle)
/// and balance: (2/3 · 0.9) sideways by it alone, · 5/3 = 1 kN more; away from it 1 kN less.
BOOST_AUTO_TEST_CASE(three_legs_by_hand) {
  std::vector<BridleLeg> legs;
  for (const double deg : {0.0, 120.0, 240.0}) {
    legs.push_back({{3.0 * std::cos(deg * M_PI / 180.0), 3.0 * std::sin(deg * M_PI / 180.0), 4.0}, 5.0});
  }
  const PushedBridle bridle(legs);
  for (const std::size_t which : {0U, 1U, 2U}) {
    const PushedLeg leg = bridle.leg(which, {9000.0, 900.0});
    BOOST_TEST(leg.most == 4750.0, near(1e-12));
    BOOST_TEST(leg.least == 2750.0, near(1e-12));
    BOOST_TEST(leg.down == 3800.0, near(1e-12));
    BOOST_TEST(leg.fromHorizontalDeg == std::asin(0.8) * 180.0 / M_PI, near(1e-12));
    BOOST_TEST(bridle.worstOfTwo(which, {9000.0, 900.0}) > leg.most);
  }
}

/// No direction of a ring is worse; where all of it is exact, one comes as near as the ring is dense.
BOOST_AUTO_TEST_CASE(no_direction_is_worse_for_two_legs) {
  RandomHangs random(4711);
  int sloping = 0;
  int beyondPlumb = 0;
  for (int round = 0; round < 150; ++round) {
    const double unlike = round % 3 == 0 ? 0.0 : 1.0;
    const std::vector<BridleLeg> legs = twoLegs(random, unlike);
    // Every other one as chains may lean, to 5°; the rest as far as it goes.
    const double down = random.between(1000.0, 9000.0);
    const bool slight = round % 2 == 0;
    const SidewaysLoad load{down, slight ? random.between(0.0, 0.0875) * down : random.between(0.0, 2500.0)};
    const PushedBridle bridle(legs);
    if (std::isinf(bridle.leg(0, load).most)) {
      continue; // the load may lie along the line through the points
    }
    const std::vector<Seen> seen = around(legs, load, 720);
    for (std::size_t i = 0; i < legs.size(); ++i) {
      const PushedLeg told = bridle.leg(i, load);
      const Seen& at = seen[i];
      BOOST_TEST(at.leg.most <= told.most * (1.0 + 1e-9));
      BOOST_TEST(at.leg.most > told.most * (1.0 - 1e-4));
      BOOST_TEST(at.leg.least >= std::max(0.0, told.least) - 1e-6);
      BOOST_TEST(at.leg.least <= std::max(0.0, told.least) + 1e-4 * load.down);
      // A ring that just misses the worst direction sees no slack where the told one is near 0.
      BOOST_TEST((!at.anySlack || std::min(bridle.leg(0, load).least, bridle.leg(1, load).least) <= 1e-6));
      BOOST_TEST(at.two <= bridle.worstOfTwo(i, load) * (1.0 + 1e-9));
      BOOST_TEST(at.two > bridle.worstOfTwo(i, load) * (1.0 - 1e-4));
      if (!anySlack(seen)) {
        BOOST_TEST(at.leg.down <= told.down * (1.0 + 1e-9));
        BOOST_TEST(at.leg.fromHorizontalDeg >= told.fromHorizontalDeg - 1e-9);
        BOOST_TEST(at.leg.fromHorizontalDeg <= told.fromHorizontalDeg + 0.01);
        sloping += unlike > 0.0 ? 1 : 0;
        if (unlike == 0.0) {
          BOOST_TEST(at.leg.down > told.down * (1.0 - 1e-4));
        } else if (slight) {
          BOOST_TEST(at.leg.down > told.down - 0.005 * load.down);
        }
      } else {
        ++beyondPlumb;
      }
    }
  }
  BOOST_TEST(sloping > 50);
  BOOST_TEST(beyondPlumb > 5);
}

/// Four metres of a line that falls by 0.483, the apex 1 m along it and 1.449 m under it: what the upper
/// point carries does not change with a push along the line (its slope is (4 − 2) 0.483 − 1.449 + 3/1.449 ·
/// 0.483² = 0), and grows with one across it, as the pull does.
BOOST_AUTO_TEST_CASE(a_steep_line) {
  const double level = 1.0 / std::hypot(1.0, 0.483);
  const double fall = 0.483 * level;
  const Vec3 apex{level - 1.449 * fall, 0.0, -fall - 1.449 * level};
  const std::vector<BridleLeg> legs = legsTo({{}, {4.0 * level, 0.0, -4.0 * fall}}, apex);
  const PushedBridle bridle(legs);
  for (const double side : {50.0, 100.0, 130.0}) {
    const std::vector<Seen> seen = around(legs, {1000.0, side}, 720);
    BOOST_TEST(!anySlack(seen));
    for (const std::size_t i : {0U, 1U}) {
      BOOST_TEST(seen[i].leg.down <= bridle.leg(i, {1000.0, side}).down * (1.0 + 1e-12));
      BOOST_TEST(seen[i].leg.down > bridle.leg(i, {1000.0, side}).down - 0.02 * 1000.0);
    }
  }
}

/// Steeper for its depth: a line that falls by ½, the apex 1 m along it and 1.2 m under it. What the upper
/// point carries grows with a push up the line, in the points' own upright plane: its figure is that push's.
BOOST_AUTO_TEST_CASE(a_line_steeper_for_its_depth) {
  const double level = 1.0 / std::hypot(1.0, 0.5);
  const double fall = 0.5 * level;
  const std::vector<BridleLeg> legs =
      legsTo({{}, {4.0 * level, 0.0, -4.0 * fall}}, {level - 1.2 * fall, 0.0, -fall - 1.2 * level});
  const PushedBridle bridle(legs);
  for (const double side : {0.0, 20.0, 50.0, 100.0}) {
    const hang::Bridle upwards = hang::settleBridle(legs, {-side, 0.0, -1000.0});
    BOOST_TEST(upwards.legs[0].vertical() == 1020.0 + 0.085 * side, near(1e-9));
    BOOST_TEST(bridle.leg(0, {1000.0, side}).down == upwards.legs[0].vertical(), near(1e-9));
  }
}

BOOST_AUTO_TEST_CASE(no_direction_is_worse_for_three_legs) {
  RandomHangs random(4712);
  int taut = 0;
  int slack = 0;
  for (int round = 0; round < 100; ++round) {
    const std::vector<BridleLeg> legs = threeLegs(random);
    const SidewaysLoad load{random.between(1000.0, 9000.0), random.between(0.0, 900.0)};
    const PushedBridle bridle(legs);
    const std::vector<Seen> seen = around(legs, load, 720);
    double least = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < legs.size(); ++i) {
      const PushedLeg told = bridle.leg(i, load);
      const Seen& at = seen[i];
      least = std::min(least, told.least);
      BOOST_TEST(at.two <= bridle.worstOfTwo(i, load) * (1.0 + 1e-9));
      BOOST_TEST(at.two > bridle.worstOfTwo(i, load) * (1.0 - 1e-4));
      // With a leg slack two carry all.
      BOOST_TEST(at.leg.most <= std::max(told.most, bridle.worstOfTwo(i, load)) * (1.0 + 1e-9));
      if (!anySlack(seen)) {
        BOOST_TEST(at.leg.most <= told.most * (1.0 + 1e-9));
        BOOST_TEST(at.leg.most > told.most * (1.0 - 1e-4));
        BOOST_TEST(at.leg.least >= told.least - 1e-6);
        BOOST_TEST(at.leg.least <= told.least + 1e-4 * load.down);
        BOOST_TEST(at.leg.down <= told.down * (1.0 + 1e-9));
        BOOST_TEST(at.leg.down > told.down * (1.0 - 1e-4));
        BOOST_TEST(at.leg.fromHorizontalDeg == told.fromHorizontalDeg, near(1e-6));
      }
    }
    BOOST_TEST((anySlack(seen) ? least < 1e-3 * load.down : least > -1e-3 * load.down));
    (anySlack(seen) ? slack : taut) += 1;
  }
  BOOST_TEST(taut > 20);
  BOOST_TEST(slack > 5);
}

/// A weaker push never does more than a stronger one, from any direction: the ring of a weaker one stays
/// within what is told of the stronger; and a heavier load with the same lean pulls more.
BOOST_AUTO_TEST_CASE(more_push_is_never_better) {
  RandomHangs random(4713);
  for (int round = 0; round < 200; ++round) {
    const std::vector<BridleLeg> legs = round % 2 == 0 ? twoLegs(random, 1.0) : threeLegs(random);
    const PushedBridle bridle(legs);
    const double down = random.between(1000.0, 9000.0);
    for (std::size_t i = 0; i < legs.size(); ++i) {
      PushedLeg before = bridle.leg(i, {down, 0.0});
      const hang::Bridle calm = hang::settleBridle(legs, {0.0, 0.0, -down});
      BOOST_TEST(before.most == calm.legs[i].tension, near(1e-9));
      BOOST_TEST(before.least == calm.legs[i].tension, near(1e-9));
      BOOST_TEST(before.down == calm.legs[i].vertical(), near(1e-9));
      BOOST_TEST(before.fromHorizontalDeg == calm.legs[i].fromHorizontalDeg, near(1e-9));
      double two = bridle.worstOfTwo(i, {down, 0.0});
      BOOST_TEST(two == hang::worstOfTwo(legs, {0.0, 0.0, -down})[i], near(1e-9));
      for (int step = 1; step <= 60; ++step) {
        const SidewaysLoad load{down, 0.05 * step * down};
        const PushedLeg now = bridle.leg(i, load);
        BOOST_TEST(now.most >= before.most * (1.0 - 1e-12));
        BOOST_TEST(now.least <= before.least + 1e-9);
        BOOST_TEST(now.down >= before.down * (1.0 - 1e-12));
        BOOST_TEST(now.fromHorizontalDeg <= before.fromHorizontalDeg + 1e-9);
        BOOST_TEST(bridle.worstOfTwo(i, load) >= two * (1.0 - 1e-12));
        const PushedLeg heavier = bridle.leg(i, {1.25 * load.down, 1.25 * load.side});
        if (std::isfinite(now.most)) {
          BOOST_TEST(heavier.most == 1.25 * now.most, near(1e-9));
        }
        before = now;
        two = bridle.worstOfTwo(i, load);
      }
    }
  }
}

/// Interiors too: a push of less than the most, from any direction.
BOOST_AUTO_TEST_CASE(no_weaker_push_is_worse) {
  RandomHangs random(4714);
  for (int round = 0; round < 60; ++round) {
    const std::vector<BridleLeg> legs = round % 2 == 0 ? twoLegs(random, 1.0) : threeLegs(random);
    const PushedBridle bridle(legs);
    const SidewaysLoad most{random.between(1000.0, 9000.0), random.between(100.0, 900.0)};
    for (int ring = 0; ring < 4; ++ring) {
      const std::vector<Seen> seen = around(legs, {most.down, most.side * ring / 4.0}, 60);
      if (anySlack(seen)) {
        continue;
      }
      for (std::size_t i = 0; i < legs.size(); ++i) {
        const PushedLeg told = bridle.leg(i, most);
        BOOST_TEST(seen[i].leg.most <= told.most * (1.0 + 1e-9));
        BOOST_TEST(seen[i].leg.least >= told.least - 1e-6);
        BOOST_TEST(seen[i].leg.down <= told.down * (1.0 + 1e-9));
        BOOST_TEST(seen[i].leg.fromHorizontalDeg >= told.fromHorizontalDeg - 1e-9);
      }
    }
  }
}

BOOST_AUTO_TEST_CASE(what_has_no_answer) {
  const double unknown = std::nan("");
  const PushedBridle bridle(threeFourFive);
  BOOST_TEST(std::isnan(bridle.leg(0, {unknown, 10.0}).most));
  BOOST_TEST(std::isnan(bridle.leg(0, {10.0, unknown}).least));
  BOOST_TEST(std::isnan(bridle.worstOfTwo(0, {10.0, unknown})));
  const double endless = std::numeric_limits<double>::infinity();
  BOOST_TEST(std::isinf(bridle.leg(0, {10.0, endless}).most));
  BOOST_TEST(bridle.leg(0, {10.0, endless}).least < 0.0);
  BOOST_TEST(std::isinf(bridle.worstOfTwo(0, {10.0, endless})));
  // A line that slopes by 3 to 4: a load as flat as that may lie along it.
  const PushedBridle sloping(legsTo({{0.0, 0.0, 4.0}, {4.0, 0.0, 7.0}}, {2.0, 0.0, 2.0}));
  BOOST_TEST(std::isfinite(sloping.leg(0, {3.0, 3.99}).most));
  BOOST_TEST(std::isinf(sloping.leg(0, {3.0, 4.01}).most));
  BOOST_TEST(std::isinf(sloping.leg(0, {3.0, 4.01}).down));
  BOOST_TEST(sloping.leg(0, {3.0, 4.01}).least < 0.0);
  BOOST_TEST(sloping.leg(0, {3.0, 4.01}).fromHorizontalDeg == -90.0);
  BOOST_CHECK_THROW(PushedBridle(std::vector<BridleLeg>{{{0.0, 0.0, 4.0}, 1.0}}), Error);
  BOOST_CHECK_THROW(PushedBridle(legsTo({{0.0, 0.0, 4.0}, {0.0, 0.0, 7.0}}, {1.0, 0.0, 2.0})), Error);
  // Three points in one line: the middle leg is slack or the outer ones are, without any push.
  const std::vector<BridleLeg> inLine{
      {{-3.0, 0.0, 4.0}, 5.0}, {{0.0, 0.0, 4.0}, 4.5}, {{3.0, 0.0, 4.0}, 5.0}};
  const PushedBridle slack(inLine);
  BOOST_TEST(slack.leg(1, {10.0, 1.0}).least == 0.0);
  BOOST_TEST(std::isnan(slack.leg(1, {10.0, 1.0}).most));
  BOOST_TEST(std::isnan(slack.leg(0, {10.0, 1.0}).least));
}

BOOST_AUTO_TEST_SUITE_END()
