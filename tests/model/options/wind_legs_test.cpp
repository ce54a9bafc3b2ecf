// SPDX-License-Identifier: GPL-3.0-or-later
// The gust on a bridle's legs with figures put in by hand, against the balance of every direction and every
// corner of their lengths.
#include <boost/test/unit_test.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include "hang/bridle.h"
#include "options/wind_legs.h"

using namespace hangbook;
using namespace hangbook::options;

namespace {

constexpr auto near = [](double tolerance) { return boost::test_tools::tolerance(tolerance); };

hang::Vec3 placeOf(const venue::Point& point) {
  return {inMetres(point.x), inMetres(point.y), inMetres(point.z)};
}

/// Points 6 m apart, apex 4 m under their middle: 3-4-5. A hoist of 1 kN; legs weigh nothing.
struct ByHand {
  venue::Point one;
  venue::Point other;
  std::shared_ptr<WeightLimits> limits = std::make_shared<WeightLimits>();
  std::shared_ptr<BridledPick> bridle = std::make_shared<BridledPick>();
  Case option;
  Settled settled;

  ByHand() {
    one.x = metres(3.0);
    other.x = metres(-3.0);
    one.z = other.z = metres(4.0);
    for (const venue::Point* point : {&one, &other}) {
      BridleLeg leg;
      leg.point = point;
      leg.length = 5.0;
      leg.weight = 0.0;
      bridle->legs.push_back(leg);
    }
    bridle->asMade.emplace_back(legs(0.0, 0.0));
    limits->hoistBody = 1000.0;
    limits->hoistChain = limits->rigging = 0.0;
    option.weight = limits;
    option.bridles = {bridle};
  }
  std::vector<hang::BridleLeg> legs(double longer, double otherLonger) const {
    return {{placeOf(one), 5.0 + longer}, {placeOf(other), 5.0 + otherLonger}};
  }
};

} // namespace

BOOST_AUTO_TEST_SUITE(wind_legs)

/// 7 kN on a chain that leans by a tangent of 0.2 under a hoist of 1 kN: 8 kN down, 1.4 kN to the side. Along
/// the points: ⅗ (T₁ − T₂) = 1.4, ⅘ (T₁ + T₂) = 8: T₁ = 37/6, T₂ = 23/6 kN; T₁ puts 4/5 of 37/6 down. With no
/// more than 3 kN on the chain: 4 kN and 0.6 kN, T₂ = 2 kN. Across: tan of the plane's turn 1.4/8.
BOOST_AUTO_TEST_CASE(by_hand) {
  ByHand hand;
  const auto legs = legsInGust(hand.option, hand.settled, 0, {7000.0, 3000.0, 0.2});
  BOOST_REQUIRE(legs.size() == 2U);
  for (const LegInGust& leg : legs) {
    BOOST_TEST(leg.most == 37000.0 / 6.0, near(1e-12));
    BOOST_TEST(leg.down == 37000.0 / 6.0 * 0.8, near(1e-12));
    BOOST_TEST(leg.least == 2000.0, near(1e-12));
    BOOST_TEST(std::sin(leg.fromHorizontalDeg * M_PI / 180.0) == 0.8 * 8.0 / std::hypot(8.0, 1.4),
               near(1e-12));
  }
  BOOST_TEST(wholeBridle(hand.option, hand.settled, 0, 7000.0) == 8000.0, near(1e-12));
  // Unloaded, the hoist hangs straight down: 1 kN = 8/5 T. With 1 N on the chain it leans by 0.2 N.
  const auto leastWith = [&hand](double least) {
    return legsInGust(hand.option, hand.settled, 0, {7000.0, least, 0.2})[0].least;
  };
  BOOST_TEST(leastWith(0.0) == 625.0, near(1e-12));
  BOOST_TEST(leastWith(-3000.0) == 625.0, near(1e-12));
  BOOST_TEST(leastWith(1.0) == 1001.0 / 1.6 - 0.2 / 1.2, near(1e-12));
  // Less than a newton is on the legs, and they share it as they share more.
  hand.limits->hoistBody = 0.0;
  BOOST_TEST(leastWith(0.8) == 0.8 / 1.6 - 0.16 / 1.2, near(1e-12));
  hand.limits->hoistBody = 1000.0;
  // Legs of 100 and 60 N: 40 N more on each point, half of that in the pull at the top, and 80 N at the apex.
  hand.bridle->legs[0].weight = 100.0;
  hand.bridle->legs[1].weight = 60.0;
  hand.bridle->legWeight = 160.0;
  const auto heavy = legsInGust(hand.option, hand.settled, 0, {7000.0, 3000.0, 0.2});
  BOOST_TEST(heavy[0].most == 5050.0 + 7000.0 / 6.0 + 50.0, near(1e-12));
  BOOST_TEST(heavy[1].down == 4040.0 + 7000.0 / 6.0 * 0.8 + 30.0, near(1e-12));
  BOOST_TEST(wholeBridle(hand.option, hand.settled, 0, 7000.0) == 8160.0, near(1e-12));
}

/// Gear that may be 10 % lighter or heavier, legs 2 cm longer or shorter: at each corner, light and heavy,
/// the balance of a ring of directions stays within what is told, and comes near to it.
BOOST_AUTO_TEST_CASE(every_corner_that_may_be) {
  ByHand hand;
  hand.settled.gearHeavier = 1.1;
  hand.settled.doubt = std::make_shared<SettledDoubt>();
  BOOST_TEST(std::isnan(legsInGust(hand.option, hand.settled, 0, {7000.0, 3000.0, 0.2})[0].most));
  double most = 0.0;
  double least = 1e9;
  double down = 0.0;
  double flattest = 90.0;
  for (const double first : {-0.02, 0.02}) {
    for (const double second : {-0.02, 0.02}) {
      const std::vector<hang::BridleLeg> legs = hand.legs(first, second);
      hand.bridle->atEnds.emplace_back(legs);
      for (const double onChain : {3000.0, 5000.0, 7000.0}) {
        for (const double gear : {900.0, 1000.0, 1100.0}) {
          for (int i = 0; i < 360; ++i) {
            const double way = i * M_PI / 180.0;
            const hang::Bridle there = hang::settleBridle(
                legs, {0.2 * onChain * std::cos(way), 0.2 * onChain * std::sin(way), -onChain - gear});
            most = std::max(most, there.legs[0].tension);
            least = std::min(least, there.legs[0].tension);
            down = std::max(down, there.legs[0].vertical());
            flattest = std::min(flattest, there.legs[0].fromHorizontalDeg);
          }
        }
      }
    }
  }
  const LegInGust told = legsInGust(hand.option, hand.settled, 0, {7000.0, 3000.0, 0.2})[0];
  BOOST_TEST(told.most >= most * (1.0 - 1e-12));
  BOOST_TEST(told.most < most * 1.0005);
  BOOST_TEST(told.least <= least * (1.0 + 1e-12));
  BOOST_TEST(told.least > least * 0.9995);
  BOOST_TEST(told.down >= down * (1.0 - 1e-12));
  BOOST_TEST(told.down < down * 1.0005);
  BOOST_TEST(told.fromHorizontalDeg <= flattest + 1e-9);
  BOOST_TEST(told.fromHorizontalDeg > flattest - 0.01);
}

/// A third point: in the gust, too, any two of the legs carry all between them.
BOOST_AUTO_TEST_CASE(of_three_legs_two_carry_all) {
  ByHand hand;
  venue::Point third;
  third.y = metres(3.0);
  third.z = metres(4.0);
  std::vector<hang::BridleLeg> legs;
  const hang::Vec3 apex{0.0, 1.0, 0.0};
  hand.bridle->legs.push_back(hand.bridle->legs[0]);
  for (const hang::Vec3 point : {placeOf(hand.one), placeOf(hand.other), placeOf(third)}) {
    legs.push_back({point, hang::legLengths(std::array{point}, apex)[0]});
  }
  hand.bridle->asMade.clear();
  hand.bridle->asMade.emplace_back(legs);
  std::array<double, 3> most{};
  for (int i = 0; i < 720; ++i) {
    const double way = i * M_PI / 360.0;
    const auto two = hang::worstOfTwo(legs, {1400.0 * std::cos(way), 1400.0 * std::sin(way), -8000.0});
    for (std::size_t leg = 0; leg < 3; ++leg) {
      most.at(leg) = std::max(most.at(leg), two[leg]);
    }
  }
  const auto told = legsInGust(hand.option, hand.settled, 0, {7000.0, 3000.0, 0.2});
  for (std::size_t leg = 0; leg < 3; ++leg) {
    BOOST_TEST(told[leg].most >= most.at(leg) * (1.0 - 1e-12));
    BOOST_TEST(told[leg].most == most.at(leg), near(1e-4));
    BOOST_TEST(told[leg].least > 0.0);
    BOOST_TEST(told[leg].most > hand.bridle->asMade[0].leg(leg, {8000.0, 1400.0}).most);
  }
}

BOOST_AUTO_TEST_CASE(what_is_not_known_stays_so_and_slack_is_slack) {
  ByHand hand;
  const auto leg = [&](HungInGust hung) { return legsInGust(hand.option, hand.settled, 0, hung)[0]; };
  const double unknown = std::nan("");
  for (const HungInGust& hung : {HungInGust{unknown, 3000.0, 0.2}, HungInGust{7000.0, 3000.0, unknown}}) {
    BOOST_TEST(std::isnan(leg(hung).most));
    BOOST_TEST(std::isnan(leg(hung).down));
    BOOST_TEST(std::isnan(leg(hung).least));
    BOOST_TEST(std::isnan(leg(hung).fromHorizontalDeg));
  }
  BOOST_TEST(std::isnan(leg({7000.0, unknown, 0.2}).least));
  // 7 kN at a tangent of 1 beside 1 kN: flatter than the legs' own 4 to 3.
  BOOST_TEST(leg({7000.0, 7000.0, 1.0}).least < 0.0);
  BOOST_TEST(leg({7000.0, unknown, 1.0}).least < 0.0);
  const double endless = std::numeric_limits<double>::infinity();
  BOOST_TEST(leg({7000.0, 3000.0, endless}).least < 0.0);
  BOOST_TEST(std::isinf(leg({7000.0, 3000.0, endless}).most));
  // An unloaded chain leaves the hoist's 1 kN on the legs: ⅝ each.
  BOOST_TEST(leg({7000.0, -50.0, 0.2}).least == 625.0, near(1e-12));
  hand.limits->hoistBody = 0.0;
  BOOST_TEST(leg({7000.0, -50.0, 0.2}).least == 0.0);
  hand.limits->rigging = unknown;
  BOOST_TEST(std::isnan(leg({7000.0, 3000.0, 0.2}).most));
}

/// Three legs at the corners of an even triangle as in `bridle_pushed`: 9 kN down and so much to the side
/// that half a newton is left in each. Longer by what is in doubt one of them is slack, and of the other two
/// nothing is known then: half a newton is not yet slack, whichever of both is looked at first.
BOOST_AUTO_TEST_CASE(what_is_left_of_a_leg_is_known_or_it_is_not) {
  ByHand hand;
  hand.settled.doubt = std::make_shared<SettledDoubt>();
  hand.bridle->legs.resize(3, hand.bridle->legs.front());
  const auto threeLegs = [](double longer, bool first = false) {
    std::vector<hang::BridleLeg> legs;
    for (const double deg : {0.0, 120.0, 240.0}) {
      legs.push_back({{3.0 * std::cos(deg * M_PI / 180.0), 3.0 * std::sin(deg * M_PI / 180.0), 4.0}, 5.0});
    }
    (first ? legs.front() : legs.back()).length += longer;
    return hang::PushedBridle(legs);
  };
  const auto least = [&](double longer, double longerAtEnd) {
    hand.bridle->asMade = {threeLegs(longer)};
    hand.bridle->atEnds = {threeLegs(longerAtEnd)};
    return legsInGust(hand.option, hand.settled, 0, {8000.0, 8000.0, (3749.5 * 0.9) / 8000.0})[0].least;
  };
  BOOST_TEST(least(0.0, 0.0) == 0.5, near(1e-6));
  BOOST_TEST(std::isnan(least(0.0, 1.5)));
  BOOST_TEST(std::isnan(least(1.5, 0.0)));
  // Slack itself in one shape, and not known in the other: slack.
  for (const bool before : {true, false}) {
    hand.bridle->asMade = {threeLegs(1.5, before)};
    hand.bridle->atEnds = {threeLegs(1.5, !before)};
    BOOST_TEST(legsInGust(hand.option, hand.settled, 0, {8000.0, 8000.0, 0.1})[0].least == 0.0);
  }
}

BOOST_AUTO_TEST_SUITE_END()
