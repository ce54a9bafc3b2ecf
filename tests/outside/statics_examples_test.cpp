// SPDX-License-Identifier: GPL-3.0-or-later
// Worked examples of textbooks and handbooks, each put to the program as a hang. V: read in the source named;
// I: read in another text that quotes it; C: recomputed, agrees.
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include <cmath>
#include <vector>

#include "hang/solve.h"
#include "quantity/quantity.h"

using namespace hangbook;

namespace bdata = boost::unit_test::data;

namespace {

constexpr double pi = 3.14159265358979323846;
constexpr double pound = 0.45359237;
constexpr double inch = 0.0254;

/// The textbooks round g; loads go with it.
double withTheirGravity(double load, double theirs) {
  return load * theirs / standardGravity;
}

/// A body pinned at its front, its mass at (x, z) from the frame's origin; the next one's pin at the same
/// place, so that any number of masses stand where the example has them.
hang::Element massAt(double mass, double x, double z) {
  hang::Element element;
  element.mass = mass;
  element.cg = {x, z};
  element.nextPin = hang::Vec2{};
  element.outline = {{0.0, 0.0}, {0.0, -0.1}, {-0.1, -0.1}};
  element.joint = hang::Pinned{0.0, {hang::Vec2{0.0, 0.0}, hang::Vec2{-0.1, 0.0}}};
  return element;
}

hang::Hang beam(double front, double rear, const std::vector<std::pair<double, double>>& massesAt) {
  hang::Hang hang;
  hang.bar.picks = hang::ForeAftPair{{front, 0.0}, {rear, 0.0}};
  for (const auto& [mass, x] : massesAt) {
    hang.stack.push_back(massAt(mass, x, -0.2));
  }
  hang.set.tiltDeg = 0.0;
  return hang;
}

/// A weight on two wires: one is a rigid link without weight of its own from the pin (it can only be
/// pulled along its length, as a wire is), the other is the chain. Angles from horizontal.
hang::Statics twoWires(double mass, double linkDeg, double chainDeg) {
  hang::Hang hang;
  hang.bar.picks = hang::ForeAftPair{{0.5, 1.0}, {-2.5, 1.0}};
  const double link = linkDeg * pi / 180.0;
  const double chain = chainDeg * pi / 180.0;
  const hang::Vec2 knot{-std::cos(link), -std::sin(link)};
  const double length = 1.5;
  hang.bar.chainAnchor = hang::Vec2{knot.x - length * std::cos(chain), knot.z + length * std::sin(chain)};
  hang::Element element = massAt(mass, -1.0, 0.0);
  element.chainEye = hang::Vec2{-1.0, 0.0};
  element.joint = hang::Pivot{{0.0, 89.0}};
  hang.stack = {element};
  hang.chain = hang::Chain{0.5, 0.5, 2, 1};
  hang.set.tiltDeg = 0.0;
  return hang::solve(hang);
}

} // namespace

BOOST_AUTO_TEST_SUITE(worked_examples)

// OpenStax University Physics vol. 1, ch. 5 "Tension in a tightrope", V: 3930 N (exact 3935), g = 9.80.
BOOST_AUTO_TEST_CASE(a_walker_of_70_kg_in_the_middle_of_a_rope_that_sags_5_degrees) {
  const hang::Statics statics = twoWires(70.0, 5.0, 5.0);
  BOOST_TEST(std::abs(withTheirGravity(statics.chain->tension, 9.80) - 3935.0) < 1.0);
  BOOST_TEST(std::abs(2.0 * withTheirGravity(statics.joints[0].pinForces[0], 9.80) - 3935.0) < 1.0);
  BOOST_TEST(statics.joints[0].angleDeg == 5.0, boost::test_tools::tolerance(1e-9));
}

// The same, example 6.1, V: 15 kg on wires at 30° and 45°: 108 N and 132 N.
BOOST_AUTO_TEST_CASE(fifteen_kg_on_wires_at_30_and_45_degrees) {
  const hang::Statics statics = twoWires(15.0, 30.0, 45.0);
  BOOST_TEST(std::abs(2.0 * withTheirGravity(statics.joints[0].pinForces[0], 9.80) - 108.0) < 0.5);
  BOOST_TEST(std::abs(withTheirGravity(statics.chain->tension, 9.80) - 132.0) < 0.5);
}

// The same, example 12.3, V: arms 70, 40, 20 and 30 cm; 50 g, 75 g, rod 150 g: 317 g balances; 5.8 N.
BOOST_AUTO_TEST_CASE(a_rod_in_balance_hangs_level_from_its_pivot) {
  hang::Hang hang = beam(0.0, 1.0, {{0.050, -0.70}, {0.075, -0.40}, {0.150, -0.20}, {0.317, 0.30}});
  hang.bar.picks = hang::SinglePick{{0.0, 0.0}};
  hang.set = {};
  const hang::Statics statics = hang::solve(hang);
  BOOST_TEST(std::abs(statics.tiltDeg) < 0.1); // 317 g is rounded from 316.67
  BOOST_TEST(std::abs(withTheirGravity(statics.pickLoads[0].load, 9.80) - 5.8) < 0.05);
}

// The same, example 12.6, V: door of 400 N, 1 m wide, hinges 2 m apart: ± 100 N across, 200 N upright each.
BOOST_AUTO_TEST_CASE(a_door_on_two_hinges) {
  hang::Hang hang = beam(0.5, -1.5, {{400.0 / standardGravity, -0.5}});
  hang.stack[0].cg = {-0.5, -1.0};
  hang.stack[0].joint = hang::Pinned{0.0, {hang::Vec2{0.0, 0.0}, hang::Vec2{0.0, -2.0}}};
  const hang::Statics statics = hang::solve(hang);
  const double eachHinge = std::hypot(100.0, 200.0);
  BOOST_TEST(2.0 * statics.joints[0].pinForces[0] == eachHinge, boost::test_tools::tolerance(1e-9));
  BOOST_TEST(2.0 * statics.joints[0].pinForces[1] == eachHinge, boost::test_tools::tolerance(1e-9));
  BOOST_TEST(statics.joints[0].gravityMoment == 200.0, boost::test_tools::tolerance(1e-9));
}

// The same, example 12.1, V: wheelbase 2.5 m, 52 % of the weight in front: centre 1.3 m from the rear axle.
BOOST_AUTO_TEST_CASE(the_share_of_a_wheelbase) {
  const hang::Statics statics = hang::solve(beam(2.5, 0.0, {{1000.0, 1.3}}));
  BOOST_TEST(statics.pickLoads[0].load / (1000.0 * standardGravity) == 0.52,
             boost::test_tools::tolerance(1e-9));
}

// Engineering Statics (open textbook), ch. 7 "Beam Reactions", V: A 196.7 lb, B 393.3 lb.
BOOST_AUTO_TEST_CASE(a_beam_on_two_supports) {
  const hang::Statics statics = hang::solve(beam(18.0 * inch, 0.0,
                                                 {{100.0 * pound, 6.0 * inch},
                                                  {150.0 * pound, 12.0 * inch},
                                                  {100.0 * pound, 18.0 * inch},
                                                  {12.0 * 10.0 * pound, -5.0 * inch},
                                                  {12.0 * 10.0 * pound, 29.0 * inch}}));
  BOOST_TEST(std::abs(statics.pickLoads[1].load / (pound * standardGravity) - 196.7) < 0.05);
  BOOST_TEST(std::abs(statics.pickLoads[0].load / (pound * standardGravity) - 393.3) < 0.05);
}

// The same, ch. 7, V: weights 50 at 0, 10 at 1.2 m, 30 at 2.0 m: centre at 0.8 m.
BOOST_AUTO_TEST_CASE(the_centre_of_three_weights) {
  const hang::Statics statics = hang::solve(beam(0.0, -1.0, {{50.0, 0.0}, {10.0, 1.2}, {30.0, 2.0}}));
  BOOST_TEST(statics.cg.x == 0.8, boost::test_tools::tolerance(1e-9));
}

// Sling tables of handbooks, I, C: leg load = half the weight × 1/sin(angle from horizontal), within 0.001.
BOOST_DATA_TEST_CASE(two_legs_carry_more_the_flatter_they_lie,
                     bdata::make({85.0, 80.0, 75.0, 70.0, 65.0, 60.0, 55.0, 50.0, 45.0, 40.0, 35.0, 30.0}) ^
                         bdata::make({1.004, 1.015, 1.035, 1.064, 1.103, 1.155, 1.221, 1.305, 1.414, 1.556,
                                      1.743, 2.000}),
                     fromHorizontalDeg, factor) {
  const hang::Statics statics = twoWires(100.0, fromHorizontalDeg, fromHorizontalDeg);
  const double half = 50.0 * standardGravity;
  BOOST_TEST(std::abs(statics.chain->tension / half - factor) < 0.001);
  BOOST_TEST(std::abs(2.0 * statics.joints[0].pinForces[0] / half - factor) < 0.001);
}

BOOST_AUTO_TEST_SUITE_END()
