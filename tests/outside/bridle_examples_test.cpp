// SPDX-License-Identifier: GPL-3.0-or-later
// Bridles against worked examples and tables of others, each with its source. V: read in the source named;
// I: read in another text that quotes it; C: recomputed, agrees.
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include <array>
#include <cmath>
#include <vector>

#include "hang/bridle.h"

using namespace hangbook;
using hang::Vec3;

namespace bdata = boost::unit_test::data;

namespace {

double cosine(double deg) {
  return std::cos(hang::toRadians(deg));
}
double sine(double deg) {
  return std::sin(hang::toRadians(deg));
}

/// A point two metres up the leg that leaves the apex (the origin) in the x-z plane at this angle.
Vec3 upAt(double fromHorizontalDeg, double side) {
  return {side * 2.0 * cosine(fromHorizontalDeg), 0.0, 2.0 * sine(fromHorizontalDeg)};
}

} // namespace

BOOST_AUTO_TEST_SUITE(bridle_examples)

BOOST_AUTO_TEST_CASE(tightrope_walker) {
  // OpenStax University Physics vol. 1, ch. 5: 70 kg, both sides 5° below the level, g = 9.80: 3930 N (V);
  // unrounded 3935 N (C).
  const std::array<Vec3, 2> points{upAt(5.0, -1.0), upAt(5.0, 1.0)};
  const hang::Bridle bridle = hang::bridleAt(points, {}, {0.0, 0.0, -70.0 * 9.80});
  for (const hang::LegForce& leg : bridle.legs) {
    BOOST_TEST(leg.tension == 3930.0, boost::test_tools::tolerance(0.002));
    BOOST_TEST(leg.fromHorizontalDeg == 5.0, boost::test_tools::tolerance(1e-9));
  }
}

BOOST_AUTO_TEST_CASE(traffic_light_on_two_wires) {
  // Same, example 6.1: 15 kg, wires at 30° and 45°: 108 N and 132 N (V).
  const std::array<Vec3, 2> points{upAt(30.0, -1.0), upAt(45.0, 1.0)};
  const hang::Bridle bridle = hang::bridleAt(points, {}, {0.0, 0.0, -15.0 * 9.80});
  BOOST_TEST(std::round(bridle.legs[0].tension) == 108.0);
  BOOST_TEST(std::round(bridle.legs[1].tension) == 132.0);
}

BOOST_AUTO_TEST_CASE(camera_on_three_cables) {
  // Engineering Statics (open textbook), ch. 3 "Skycam": 20 kg; 196.4, 192.2, 98.5 N (V), from direction
  // cosines rounded to three digits; unrounded 196.37, 192.29, 98.83 (C), hence 0.4 %. Its y is our z.
  const std::array<Vec3, 3> points{
      Vec3{cosine(35), 0.0, cosine(55)},
      Vec3{-cosine(15) * cosine(30), -cosine(15) * cosine(60), cosine(75)},
      Vec3{0.0, cosine(20), cosine(70)},
  };
  const hang::Bridle bridle = hang::bridleAt(points, {}, {0.0, 0.0, -196.2});
  const std::array<double, 3> printed{196.4, 192.2, 98.5};
  const std::array<double, 3> unrounded{196.37, 192.29, 98.83};
  for (std::size_t i = 0; i < 3; ++i) {
    BOOST_TEST(bridle.legs[i].tension == printed[i], boost::test_tools::tolerance(0.004));
    BOOST_TEST(bridle.legs[i].tension == unrounded[i], boost::test_tools::tolerance(1e-4));
  }
}

BOOST_AUTO_TEST_CASE(balloon_on_three_tethers) {
  // Same, example "Hot Air Balloon": 900 lb upwards; 464, 402, 309 lb (V). Points below, load up.
  const std::array<Vec3, 3> points{Vec3{-20.0, 0.0, 0.0}, Vec3{30.0, 20.0, 0.0}, Vec3{0.0, -20.0, 0.0}};
  const hang::Bridle bridle = hang::bridleAt(points, {0.0, 0.0, 30.0}, {0.0, 0.0, 900.0});
  const std::array<double, 3> printed{464.0, 402.0, 309.0};
  for (std::size_t i = 0; i < 3; ++i) {
    BOOST_TEST(bridle.legs[i].tension == printed[i], boost::test_tools::tolerance(0.002));
  }
}

BOOST_AUTO_TEST_CASE(mass_on_three_cords) {
  // SUNY Broome, Physics I module 3, example 1: 80 kg 80 cm below a ceiling, cords with the unit vectors
  // printed there; 273.7968, 267.8866, 281.0092 N for 784 N (V).
  const std::array<Vec3, 3> points{Vec3{0.2, -0.15, 0.8}, Vec3{-0.1, -0.15, 0.8}, Vec3{-0.1, 0.3, 0.8}};
  const hang::Bridle bridle = hang::bridleAt(points, {}, {0.0, 0.0, -784.0});
  const std::array<double, 3> printed{273.7968, 267.8866, 281.0092};
  for (std::size_t i = 0; i < 3; ++i) {
    BOOST_TEST(bridle.legs[i].tension == printed[i], boost::test_tools::tolerance(1e-4));
  }
}

/// Leg load for a load of 1 at this angle from horizontal: handbook tables of sling angles (I, C), to 0.001.
struct SlingAngle {
  double deg;
  double factor;
};
std::ostream& operator<<(std::ostream& out, const SlingAngle& row) {
  return out << row.deg << "°";
}
const std::vector<SlingAngle> slingAngles{{85, 1.004}, {80, 1.015}, {75, 1.035}, {70, 1.064},
                                          {65, 1.103}, {60, 1.155}, {55, 1.221}, {50, 1.305},
                                          {45, 1.414}, {40, 1.556}, {35, 1.743}, {30, 2.000}};

BOOST_DATA_TEST_CASE(sling_angle_table, bdata::make(slingAngles), row) {
  const std::array<Vec3, 2> points{upAt(row.deg, -1.0), upAt(row.deg, 1.0)};
  for (const hang::LegForce& leg : hang::bridleAt(points, {}, {0.0, 0.0, -2.0}).legs) {
    BOOST_TEST(std::abs(leg.tension - row.factor) < 0.001);
    BOOST_TEST(leg.vertical() == 1.0, boost::test_tools::tolerance(1e-9));
  }
}

BOOST_AUTO_TEST_SUITE_END()
