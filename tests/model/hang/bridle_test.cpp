// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/unit_test.hpp>

#include <array>
#include <cmath>
#include <limits>
#include <vector>

#include "hang/bridle.h"
#include "quantity/error.h"
#include "support/bridle_legs.h"
#include "support/random_hang.h"

using namespace hangbook;
using hang::BridleLeg;
using hang::Vec3;
using hangbook::testing::legsTo;
using hangbook::testing::RandomHangs;

namespace {

const Vec3 weight{0.0, 0.0, -10000.0};

bool notPossible(const Error& error) {
  return error.trouble() == Trouble::notPossible;
}
bool badInput(const Error& error) {
  return error.trouble() == Trouble::badInput;
}

/// Points around the origin at unlike heights, an apex below and inside, so that every leg pulls.
std::vector<Vec3> threePoints(RandomHangs& random) {
  std::vector<Vec3> points;
  for (int i = 0; i < 3; ++i) {
    const double bearing = 6.2831853 * (i + random.between(0.0, 0.4)) / 3.0;
    const double out = random.between(1.0, 4.0);
    points.push_back({out * std::cos(bearing), out * std::sin(bearing), random.between(0.0, 1.0)});
  }
  return points;
}

/// Inside the triangle seen from above, well below: with a weight on it every leg pulls.
Vec3 underThem(const std::vector<Vec3>& points, RandomHangs& random) {
  const double a = random.between(0.15, 0.5);
  const double b = random.between(0.15, 0.35);
  Vec3 apex = a * points[0] + b * points[1] + (1.0 - a - b) * points[2];
  apex.z -= random.between(0.5, 5.0);
  return apex;
}

constexpr auto near = [](double tolerance) { return boost::test_tools::tolerance(tolerance); };

} // namespace

BOOST_AUTO_TEST_SUITE(bridle)

BOOST_AUTO_TEST_CASE(two_like_legs_by_hand) {
  // Points 4 m apart, apex 2 m under their middle: 45°. Each leg 2.828 m, tension 10 kN/(2 sin 45°) = 7.071
  // kN, 5 kN down and 5 kN sideways at each point, inwards.
  const std::array<Vec3, 2> points{Vec3{0.0, 2.0, 8.0}, Vec3{0.0, -2.0, 8.0}};
  const Vec3 apex{0.0, 0.0, 6.0};
  BOOST_TEST(hang::legLengths(points, apex)[0] == std::sqrt(8.0), near(1e-12));
  const hang::Bridle bridle = hang::bridleAt(points, apex, weight);
  for (const hang::LegForce& leg : bridle.legs) {
    BOOST_TEST(leg.tension == 7071.0678, near(1e-8));
    BOOST_TEST(leg.vertical() == 5000.0, near(1e-12));
    BOOST_TEST(leg.horizontal() == 5000.0, near(1e-12));
    BOOST_TEST(leg.fromHorizontalDeg == 45.0, near(1e-12));
  }
  BOOST_TEST(bridle.legs[0].onPoint.y == -5000.0, near(1e-12));
  BOOST_TEST(bridle.legs[1].onPoint.y == 5000.0, near(1e-12));
}

BOOST_AUTO_TEST_CASE(shape_of_cut_lengths_is_the_wanted_one) {
  RandomHangs random(7);
  for (int i = 0; i < 500; ++i) {
    const std::vector<Vec3> points = threePoints(random);
    const Vec3 apex = underThem(points, random);
    const hang::Bridle wanted = hang::bridleAt(points, apex, weight);
    const hang::Bridle settled = hang::settleBridle(legsTo(points, apex), weight);
    const Vec3 shift = hang::apexShift(settled, apex);
    BOOST_TEST(std::abs(shift.x) + std::abs(shift.y) + std::abs(shift.z) < 1e-9);
    for (std::size_t leg = 0; leg < 3; ++leg) {
      BOOST_TEST(settled.legs[leg].tension == wanted.legs[leg].tension, near(1e-8));
    }
  }
}

BOOST_AUTO_TEST_CASE(mirror_turn_and_scale) {
  RandomHangs random(8);
  for (int i = 0; i < 300; ++i) {
    const std::vector<Vec3> points = threePoints(random);
    const Vec3 apex = underThem(points, random);
    const hang::Bridle bridle = hang::bridleAt(points, apex, weight);
    const double by = random.between(-3.0, 3.0);
    const double scale = random.between(0.5, 3.0);
    const auto turned = [&](Vec3 a) {
      return Vec3{std::cos(by) * a.x - std::sin(by) * a.y, std::sin(by) * a.x + std::cos(by) * a.y, a.z};
    };
    std::vector<Vec3> mirrored;
    std::vector<Vec3> round;
    std::vector<Vec3> larger;
    for (const Vec3 point : points) {
      mirrored.push_back({point.x, -point.y, point.z});
      round.push_back(turned(point));
      larger.push_back(scale * point);
    }
    const hang::Bridle mirror = hang::bridleAt(mirrored, {apex.x, -apex.y, apex.z}, weight);
    const hang::Bridle turn = hang::bridleAt(round, turned(apex), weight);
    const hang::Bridle large = hang::bridleAt(larger, scale * apex, weight);
    const hang::Bridle heavy = hang::bridleAt(points, apex, scale * weight);
    for (std::size_t leg = 0; leg < 3; ++leg) {
      const hang::LegForce& one = bridle.legs[leg];
      BOOST_TEST(mirror.legs[leg].tension == one.tension, near(1e-9));
      BOOST_TEST(mirror.legs[leg].onPoint.y == -one.onPoint.y, near(1e-7));
      BOOST_TEST(turn.legs[leg].tension == one.tension, near(1e-9));
      BOOST_TEST(turn.legs[leg].horizontal() == one.horizontal(), near(1e-9));
      BOOST_TEST(large.legs[leg].tension == one.tension, near(1e-9));
      BOOST_TEST(large.legs[leg].length == scale * one.length, near(1e-9));
      BOOST_TEST(heavy.legs[leg].tension == scale * one.tension, near(1e-9));
      BOOST_TEST(one.tension >= one.vertical());
    }
  }
}

BOOST_AUTO_TEST_CASE(a_leg_too_long_is_slack) {
  // Two legs; the second is so long that the load hangs plumb under the first point.
  const std::array<BridleLeg, 2> legs{BridleLeg{{0.0, 2.0, 8.0}, 2.0}, BridleLeg{{0.0, -2.0, 8.0}, 6.0}};
  const hang::Bridle bridle = hang::settleBridle(legs, weight);
  BOOST_TEST(!bridle.legs[0].slack);
  BOOST_TEST(bridle.legs[1].slack);
  BOOST_TEST(bridle.legs[0].tension == 10000.0, near(1e-12));
  BOOST_TEST(bridle.legs[1].tension == 0.0);
  BOOST_TEST(bridle.apex.y == 2.0, near(1e-12));
  BOOST_TEST(bridle.apex.z == 6.0, near(1e-12));
}

BOOST_AUTO_TEST_CASE(the_third_leg_a_little_long_leaves_all_to_two) {
  const std::vector<Vec3> points{{2.0, 0.0, 8.0}, {-1.0, 1.5, 8.0}, {-1.0, -1.5, 8.0}};
  std::vector<BridleLeg> legs = legsTo(points, {-0.9, 0.0, 6.0});
  legs[0].length += 0.5;
  const hang::Bridle bridle = hang::settleBridle(legs, weight);
  BOOST_TEST(bridle.legs[0].slack);
  const std::vector<double> worst = hang::worstOfTwo(legs, weight);
  BOOST_TEST(worst[1] >= bridle.legs[1].tension * (1.0 - 1e-12));
  BOOST_TEST(worst[2] >= bridle.legs[2].tension * (1.0 - 1e-12));
}

BOOST_AUTO_TEST_CASE(two_of_three_carry_more_than_three) {
  RandomHangs random(9);
  for (int i = 0; i < 300; ++i) {
    const std::vector<Vec3> points = threePoints(random);
    const std::vector<BridleLeg> legs = legsTo(points, underThem(points, random));
    const std::vector<double> worst = hang::worstOfTwo(legs, weight);
    double sum = 0.0;
    for (const double tension : worst) {
      BOOST_TEST(tension >= 0.0);
      sum += tension;
    }
    BOOST_TEST(sum > 10000.0);
  }
}

BOOST_AUTO_TEST_CASE(apex_shift_with_load_by_hand) {
  // One elastic leg: 2 m, 1 MN/m, 10 kN: 10 mm lower. Two legs at 60° from horizontal, 2 m long: each takes
  // 5774 N; to first order the apex sinks by T/(k sin 60°) = 6.67 mm.
  const std::array<BridleLeg, 1> one{BridleLeg{{0.0, 0.0, 8.0}, 2.0, 1e6}};
  BOOST_TEST(hang::settleBridle(one, weight).apex.z == 5.99, near(1e-9));
  const double down = std::sqrt(3.0);
  const std::array<BridleLeg, 2> two{BridleLeg{{0.0, 1.0, 8.0}, 2.0, 1e6},
                                     BridleLeg{{0.0, -1.0, 8.0}, 2.0, 1e6}};
  const hang::Bridle bridle = hang::settleBridle(two, weight);
  const Vec3 shift = hang::apexShift(bridle, {0.0, 0.0, 8.0 - down});
  BOOST_TEST(-shift.z * 1000.0 == 6.667, near(0.01));
  BOOST_TEST(std::abs(shift.y) < 1e-9);
}

BOOST_AUTO_TEST_CASE(stiffer_and_stiffer_legs_come_to_the_stiff_shape) {
  RandomHangs random(10);
  for (int i = 0; i < 100; ++i) {
    const std::vector<Vec3> points = threePoints(random);
    std::vector<BridleLeg> legs = legsTo(points, underThem(points, random));
    const hang::Bridle stiff = hang::settleBridle(legs, weight);
    for (BridleLeg& leg : legs) {
      leg.stiffness = 1e11;
    }
    const hang::Bridle elastic = hang::settleBridle(legs, weight);
    for (std::size_t leg = 0; leg < 3; ++leg) {
      BOOST_TEST(elastic.legs[leg].tension == stiff.legs[leg].tension, near(1e-4));
    }
  }
}

BOOST_AUTO_TEST_CASE(three_elastic_legs_in_one_plane_share_by_stiffness) {
  // Points on one truss: the plumb middle leg beside two at 45°. With like stiffness per metre of leg k/L the
  // middle takes W/(1 + 2 sin³ 45°) (compatibility of small stretches, textbook).
  const double s = std::sqrt(0.5);
  const std::array<BridleLeg, 3> legs{BridleLeg{{-2.0, 0.0, 0.0}, 2.0 / s, 1e9 * s},
                                      BridleLeg{{0.0, 0.0, 0.0}, 2.0, 1e9},
                                      BridleLeg{{2.0, 0.0, 0.0}, 2.0 / s, 1e9 * s}};
  const hang::Bridle bridle = hang::settleBridle(legs, weight);
  BOOST_TEST(bridle.legs[1].tension == 10000.0 / (1.0 + 2.0 * s * s * s), near(1e-4));
  const std::array<Vec3, 3> points{legs[0].point, legs[1].point, legs[2].point};
  BOOST_CHECK_EXCEPTION(hang::bridleAt(points, {0.0, 0.0, -2.0}, weight), Error, notPossible);
}

BOOST_AUTO_TEST_CASE(what_cannot_be_is_refused) {
  const std::array<Vec3, 2> points{Vec3{0.0, 2.0, 8.0}, Vec3{0.0, -2.0, 8.0}};
  BOOST_CHECK_EXCEPTION(hang::bridleAt(points, {0.3, 0.0, 6.0}, weight), Error, notPossible); // it swings
  BOOST_CHECK_EXCEPTION(hang::bridleAt(points, {0.0, 3.0, 6.0}, weight), Error, notPossible); // a leg pushes
  BOOST_CHECK_EXCEPTION(hang::bridleAt(points, {0.0, 0.0, 8.0}, weight), Error, notPossible); // flat
  const std::array<BridleLeg, 2> tooShort{BridleLeg{points[0], 1.9}, BridleLeg{points[1], 2.0}};
  BOOST_CHECK_EXCEPTION(hang::settleBridle({}, weight), Error,
                        [](const Error& error) { return error.trouble() == Trouble::badInput; });
  BOOST_CHECK_EXCEPTION(hang::settleBridle(tooShort, weight), Error, notPossible);
  const std::array<BridleLeg, 2> flat{BridleLeg{points[0], 2.0}, BridleLeg{points[1], 2.0}};
  BOOST_CHECK_EXCEPTION(hang::settleBridle(flat, weight), Error, notPossible);
}

BOOST_AUTO_TEST_CASE(bad_figures_are_refused) {
  const std::array<Vec3, 2> points{Vec3{0.0, 2.0, 8.0}, Vec3{0.0, -2.0, 8.0}};
  const std::array<Vec3, 2> same{points[0], points[0]};
  const double nan = std::numeric_limits<double>::quiet_NaN();
  BOOST_CHECK_EXCEPTION(hang::bridleAt(same, {0.0, 0.0, 6.0}, weight), Error, badInput);
  BOOST_CHECK_EXCEPTION(hang::bridleAt(points, {0.0, nan, 6.0}, weight), Error, badInput);
  BOOST_CHECK_EXCEPTION(hang::bridleAt(points, points[1], weight), Error, badInput);
  BOOST_CHECK_EXCEPTION(hang::bridleAt(points, {0.0, 0.0, 6.0}, {}), Error, badInput);
  BOOST_CHECK_EXCEPTION(hang::bridleAt(points, {0.0, 0.0, 6.0}, {0.0, nan, 0.0}), Error, badInput);
  BOOST_CHECK_EXCEPTION(hang::bridleAt(std::span(points).first(1), {0.0, 0.0, 6.0}, weight), Error, badInput);
  const std::array<Vec3, 4> four{points[0], points[1], Vec3{2.0, 0.0, 8.0}, Vec3{-2.0, 0.0, 8.0}};
  BOOST_CHECK_EXCEPTION(hang::bridleAt(four, {0.0, 0.0, 6.0}, weight), Error, badInput);
  BOOST_CHECK_NO_THROW(hang::bridleAt(std::span(four).first(3), {0.2, 0.0, 6.0}, weight));
  for (const double bad : {0.0, -1.0, nan, 1e9}) {
    const std::array<BridleLeg, 2> legs{BridleLeg{points[0], bad}, BridleLeg{points[1], 2.5}};
    BOOST_CHECK_EXCEPTION(hang::settleBridle(legs, weight), Error, badInput);
  }
  const std::array<BridleLeg, 2> mixed{BridleLeg{points[0], 3.0, 1e6}, BridleLeg{points[1], 3.0}};
  BOOST_CHECK_EXCEPTION(hang::settleBridle(mixed, weight), Error, badInput);
  const std::array<BridleLeg, 2> limp{BridleLeg{points[0], 3.0, 0.0}, BridleLeg{points[1], 3.0, 1e6}};
  BOOST_CHECK_EXCEPTION(hang::settleBridle(limp, weight), Error, badInput);
}

BOOST_AUTO_TEST_SUITE_END()
