// SPDX-License-Identifier: GPL-3.0-or-later
// What is only just possible, and what is only just not: legs nearly flat, bars nearly upright, tilts at the
// end of a travel. Each bound is met from both sides, so that it stands where it is written.
#include <boost/test/unit_test.hpp>

#include <cmath>

#include "hang/bridle.h"
#include "hang/solve.h"
#include "hang/tilt.h"
#include "hang/uneven.h"
#include "quantity/error.h"
#include "quantity/quantity.h"
#include "support/example_hang.h"

using namespace hangbook;
using hang::BridleLeg;
using hang::Vec3;
using hangbook::testing::exampleHang;

namespace {

const Vec3 weight{0.0, 0.0, -1000.0};

template <class Figures>
std::string refusal(Figures figures) {
  try {
    figures();
  } catch (const Error& error) {
    return error.what();
  }
  return {};
}

double pulled(const hang::Bridle& bridle) {
  double sum = 0.0;
  for (const hang::LegForce& leg : bridle.legs) {
    sum += leg.vertical();
  }
  return sum;
}

std::vector<BridleLeg> legs(const std::vector<Vec3>& points, Vec3 apex) {
  std::vector<BridleLeg> all;
  const std::vector<double> lengths = hang::legLengths(points, apex);
  for (std::size_t i = 0; i < points.size(); ++i) {
    all.push_back({points[i], lengths[i]});
  }
  return all;
}

hang::Setting driven(double deg) {
  hang::Setting set;
  set.actuatorDeg = deg;
  return set;
}
hang::Setting tilted(double deg) {
  hang::Setting set;
  set.tiltDeg = deg;
  return set;
}

} // namespace

BOOST_AUTO_TEST_SUITE(edges)

/// Points 4 m apart, legs of 2 m and a little: the apex is √(4·little) lower.
BOOST_AUTO_TEST_CASE(two_legs_nearly_in_one_line) {
  const auto legsOf = [](double length) {
    return std::vector<BridleLeg>{{{-2.0, 0.0, 0.0}, length}, {{2.0, 0.0, 0.0}, length}};
  };
  // A hundredth of a millimetre on 2 m: 6.3 mm lower, a pull of 158 times the weight on each.
  const hang::Bridle flat = hang::settleBridle(legsOf(2.00001), weight);
  BOOST_TEST(flat.legs[0].tension == 1000.0 * 2.00001 / (2.0 * std::sqrt(2.00001 * 2.00001 - 4.0)),
             boost::test_tools::tolerance(1e-6));
  BOOST_TEST(pulled(flat) == 1000.0, boost::test_tools::tolerance(1e-6));
  BOOST_TEST(!refusal([&] { hang::settleBridle(legsOf(2.0 + 1e-13), weight); }).empty());
  BOOST_TEST(!refusal([&] { hang::settleBridle(legsOf(2.0), weight); }).empty());
  BOOST_TEST(!refusal([&] { hang::settleBridle(legsOf(1.99), weight); }).empty());
}

/// The third point half a millimetre beside the line of the others: it still decides.
BOOST_AUTO_TEST_CASE(three_points_nearly_in_one_line) {
  const std::vector<Vec3> points{{-2.0, 0.0, 0.0}, {2.0, 0.0, 0.0}, {0.0, 0.001, 0.0}};
  const hang::Bridle bridle = hang::settleBridle(legs(points, {0.0, 0.0005, -3.0}), weight);
  for (const hang::LegForce& leg : bridle.legs) {
    BOOST_TEST(leg.tension > 1.0);
  }
  BOOST_TEST(pulled(bridle) == 1000.0, boost::test_tools::tolerance(1e-6));
  BOOST_TEST(bridle.apex.y == 0.0005, boost::test_tools::tolerance(1e-3));
}

BOOST_AUTO_TEST_CASE(an_apex_that_no_pull_holds_says_why) {
  const std::vector<Vec3> two{{-2.0, 0.0, 0.0}, {2.0, 0.0, 0.0}};
  BOOST_TEST(refusal([&] {
               hang::bridleAt(two, {0.5, 0.0, 0.0}, weight);
             }) == "the apex stands on the line through its points: no pull holds it there");
  const std::vector<Vec3> three{{-2.0, 0.0, 0.0}, {2.0, 0.0, 0.0}, {0.5, 0.0, 1.0}};
  BOOST_TEST(refusal([&] {
               hang::bridleAt(three, {0.0, 0.0, -3.0}, weight);
             }) == "three legs in one plane: what each carries does not follow from balance");
}

/// Three legs nearly in the plane of their points: 2 mm below a triangle of 2 m.
BOOST_AUTO_TEST_CASE(three_legs_nearly_in_one_plane) {
  std::vector<Vec3> points;
  for (const double bearing : {0.1, 2.2, 4.3}) {
    points.push_back({2.0 * std::cos(bearing), 2.0 * std::sin(bearing), 0.0});
  }
  const hang::Bridle bridle = hang::settleBridle(legs(points, {0.0, 0.0, -0.002}), weight);
  BOOST_TEST(pulled(bridle) == 1000.0, boost::test_tools::tolerance(1e-5));
  BOOST_TEST(bridle.legs[0].tension > 1e5);
  BOOST_TEST(pulled(hang::bridleAt(points, {0.0, 0.0, -0.002}, weight)) == 1000.0,
             boost::test_tools::tolerance(1e-5));
  BOOST_TEST(!refusal([&] { hang::bridleAt(points, {0.0, 0.0, 0.0}, weight); }).empty());
}

BOOST_AUTO_TEST_CASE(points_and_loads_within_reason) {
  const auto with = [](Vec3 second, Vec3 load) {
    return refusal([&] {
      hang::bridleAt(std::vector<Vec3>{{0.0, 0.0, 0.0}, second}, {0.5 * second.x, 0.0, -3.0}, load);
    });
  };
  BOOST_TEST(with({2.0, 0.0, 0.0}, weight).empty());
  BOOST_TEST(with({1e-5, 0.0, 0.0}, weight).empty());
  BOOST_TEST(with({1e-7, 0.0, 0.0}, weight).ends_with("stands where another one does"));
  BOOST_TEST(with({1000.0, 0.0, 0.0}, weight).empty());
  BOOST_TEST(with({1000.5, 0.0, 0.0}, weight).ends_with("must lie within 1000 m"));
  BOOST_TEST(with({2.0, 0.0, 0.0}, {0.0, 0.0, -1e9}).empty());
  BOOST_TEST(with({2.0, 0.0, 0.0}, {0.0, 0.0, -1.1e9}).ends_with("expected a force other than 0"));
  BOOST_TEST(with({2.0, 0.0, 0.0}, {0.0, 0.0, 0.0}).ends_with("expected a force other than 0"));
  BOOST_TEST(with({2.0, 0.0, 0.0}, {0.0, 0.0, -1e-6}).empty());
  BOOST_TEST(
      with({2.0, 0.0, 0.0}, {0.0, 3.0, -1000.0})
          .ends_with(
              "two legs cannot hold an apex beside the plane of their points and the load: it would swing"));
  // What a load leaves over of 10⁻⁷ is more than rounding.
  BOOST_TEST(!with({2.0, 0.0, 0.0}, {0.0, 1e-4, -1000.0}).empty());
  BOOST_TEST(with({2.0, 0.0, 0.0}, {0.0, 1e-8, -1000.0}).empty());
}

BOOST_AUTO_TEST_CASE(legs_within_reason) {
  const auto with = [](double length, double stiffness) {
    return refusal([&] {
      hang::settleBridle(
          std::vector<BridleLeg>{{{-1.0, 0.0, 0.0}, length, stiffness}, {{1.0, 0.0, 0.0}, length, stiffness}},
          weight);
    });
  };
  const double stiff = std::numeric_limits<double>::infinity();
  BOOST_TEST(with(1000.0, stiff).empty());
  BOOST_TEST(with(1000.5, stiff).ends_with("must be above 0 and at most 1000 m"));
  BOOST_TEST(with(0.0, stiff).ends_with("must be above 0 and at most 1000 m"));
  BOOST_TEST(with(3.0, 0.0).ends_with("must be above 0"));
  BOOST_TEST(with(3.0, -1.0).ends_with("must be above 0"));
  BOOST_TEST(with(3.0, 1e5).empty());
}

/// A bar is followed up to 60° of slope, and no further.
BOOST_AUTO_TEST_CASE(how_far_a_pair_may_stand_apart) {
  const hang::Hang hang = exampleHang(); // picks 1 m apart
  const hang::Statics level = hang::Solver(hang.bar, hang.stack, hang.chain).at(tilted(-3.0));
  const double steepest = std::sin(hang::toRadians(60.0));
  for (const double sign : {1.0, -1.0}) {
    BOOST_TEST(hang::unevenBy(hang.bar, level, sign * (steepest - 1e-9)).has_value());
    BOOST_TEST(!hang::unevenBy(hang.bar, level, sign * (steepest + 1e-9)).has_value());
  }
  BOOST_TEST(!hang::unevenBy(hang.bar, level, std::nan("")).has_value());
  hang::Hang pair = hang;
  pair.bar.picks = hang::ForeAftPair{{0.5, 0.0}, {-0.5, 0.0}};
  const hang::Statics flat = hang::Solver(pair.bar, pair.stack, pair.chain).at(tilted(0.0));
  for (const double sign : {1.0, -1.0}) {
    BOOST_TEST(hang::unevenBy(pair.bar, flat, sign * (steepest - 1e-9)).has_value());
    BOOST_TEST(!hang::unevenBy(pair.bar, flat, sign * (steepest + 1e-9)).has_value());
  }
  hang::Hang turned = pair; // the front pick behind the rear one
  turned.bar.picks = hang::ForeAftPair{{-0.5, 0.0}, {0.5, 0.0}};
  const hang::Statics back = hang::Solver(turned.bar, turned.stack, turned.chain).at(tilted(0.0));
  BOOST_TEST(!hang::unevenBy(turned.bar, back, 0.1).has_value());
}

BOOST_AUTO_TEST_CASE(a_tilt_at_the_end_of_the_travel_and_beyond_it) {
  const hang::Hang hang = exampleHang();
  const hang::Solver solver(hang.bar, hang.stack, hang.chain);
  for (const double end : {-20.0, 20.0}) {
    const double tilt = solver.at(driven(end)).tiltDeg;
    const double inwards = end < 0.0 ? 1.0 : -1.0;
    BOOST_TEST(solver.at(tilted(tilt)).side->actuatorDeg == end, boost::test_tools::tolerance(1e-9));
    BOOST_TEST(solver.at(tilted(tilt - 5e-10 * inwards)).side->actuatorDeg == end); // by rounding alone
    BOOST_TEST(!refusal([&] { solver.at(tilted(tilt - 1e-7 * inwards)); }).empty());
    BOOST_TEST(refusal([&] { solver.at(tilted(tilt + 1e-7 * inwards)); }).empty());
    BOOST_TEST(refusal([&] { solver.at(driven(end - 5e-10 * inwards)); }).empty());
    BOOST_TEST(!refusal([&] { solver.at(driven(end - 1e-7 * inwards)); }).empty());
  }
  BOOST_TEST(!refusal([&] { solver.at(tilted(100.0)); }).empty());
  BOOST_TEST(!refusal([&] { solver.at(tilted(-100.0)); }).empty());
}

BOOST_AUTO_TEST_CASE(an_elevation_ends_straight_up) {
  hang::Hang hang = exampleHang();
  hang.bar.picks = hang::ForeAftPair{{0.5, 0.3}, {-0.5, -0.1}}; // not one above the other when upright
  const hang::Solver solver(hang.bar, hang.stack, hang.chain);
  BOOST_TEST(refusal([&] { solver.at(tilted(90.0)); }).empty());
  BOOST_TEST(refusal([&] { solver.at(tilted(-90.0)); }).empty());
  const std::string beyond = refusal([&] { solver.at(tilted(90.5)); });
  BOOST_TEST(beyond.find("an elevation lies between -90° and 90°") != std::string::npos, beyond);
  BOOST_TEST(!refusal([&] { solver.at(tilted(-90.5)); }).empty());
  hang.bar.picks = hang::ForeAftPair{{0.5, 0.0}, {-0.5, 0.0}};
  const std::string above = refusal([&] { hang::Solver(hang.bar, hang.stack, hang.chain).at(tilted(90.0)); });
  BOOST_TEST(above.find("one pick stands straight above the other") != std::string::npos, above);
}

/// Frame and cabinet balance each other at the pick line: nothing says which way up.
BOOST_AUTO_TEST_CASE(a_centre_at_the_pick_line_settles_nowhere) {
  hang::Hang hang;
  hang.bar.picks = hang::SidePair{1.0, 0.0, {0.0, 0.0}, {0.0, 0.0}, {-20.0, 20.0}, {-20.0, 20.0}};
  hang.bar.frameMass = 50.0;
  hang.bar.frameCg = {0.4, 0.3};
  hang.bar.stackPin = {0.0, 0.0};
  hang::Element one;
  one.name = "one";
  one.mass = 50.0;
  one.cg = {-0.4, -0.3};
  one.outline = {{0.0, 0.0}, {0.0, -0.6}, {-0.8, -0.6}};
  one.joint = hang::Pinned{0.0, {hang::Vec2{0.0, -0.03}, hang::Vec2{-0.08, -0.03}}};
  hang.stack = {one};
  const std::string text = refusal([&] { hang::Solver(hang.bar, hang.stack, hang.chain).at(driven(0.0)); });
  BOOST_TEST(text == "the centre of gravity lies on the line through the picks: there is no way it settles");
  hang.bar.frameCg.z = 0.3 - 4e-9; // 2 nm below is enough
  BOOST_TEST(refusal([&] { hang::Solver(hang.bar, hang.stack, hang.chain).at(driven(0.0)); }).empty());
  hang.bar.picks = hang::SinglePick{{0.0, 0.0}};
  BOOST_TEST(refusal([&] { hang::Solver(hang.bar, hang.stack, hang.chain).at({}); }).empty());
  hang.bar.frameCg.z = 0.3;
  BOOST_TEST(refusal([&] { hang::Solver(hang.bar, hang.stack, hang.chain).at({}); }) ==
             "the centre of gravity lies at the pick: there is no way it settles");
}

/// A pull straight up of half the weight, from twice as far below the pick as the centre: nothing says which
/// way up. The bound is a nanometre of the weight, whatever it weighs.
BOOST_AUTO_TEST_CASE(a_pull_that_lifts_the_hang_off_its_balance_settles_nowhere) {
  hang::Hang hang = hangbook::testing::oneCabinet({0.0, -1.0}, {});
  hang.bar.picks = hang::SinglePick{{0.0, 0.0}};
  hang.bar.stackPin = {};
  hang.bar.frameMass = 0.0;
  hang.stack[0].joint = hang::Pinned{0.0, {hang::Vec2{0.0, -0.03}, hang::Vec2{-0.08, -0.03}}};
  hang.set = {};
  hang::PullBack pull{1, {0.0, -2.0}, 90.0, 50.0 * standardGravity, {}};
  const auto settles = [&](double at) {
    pull.at.z = at;
    hang.pullBack = pull;
    return refusal([&] { hang::solve(hang); });
  };
  BOOST_TEST(settles(-2.0 + 4e-9).empty()); // 2 nm of the weight is enough
  for (const double off : {0.0, 1e-9, -1e-9}) {
    BOOST_TEST(settles(-2.0 + off) ==
               "weight and pull-back leave the hang free to turn about its pick: there is no way it settles");
  }
  // Straight below the pick the line has no arm that could hold it nose up.
  hang.pullBack = hang::PullBack{1, {0.0, 0.0}, 90.0, {}, 10.0};
  BOOST_TEST(refusal([&] { hang::solve(hang); }) ==
             "the pull-back's line passes through the pick: it cannot hold the tilt");
}

BOOST_AUTO_TEST_SUITE_END()
