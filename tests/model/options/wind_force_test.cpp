// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <random>

#include <boost/test/unit_test.hpp>

#include "hang/vec2.h"
#include "options/wind_force.h"

using namespace hangbook;
using options::FromDirection;
using options::WindForce;

namespace {

WindForce randomFaces(std::mt19937& random, int count) {
  const auto between = [&random](double low, double high) {
    return std::uniform_real_distribution<>(low, high)(random);
  };
  WindForce wind;
  for (int i = 0; i < count; ++i) {
    wind.add({between(-180.0, 180.0), between(0.0, 2.0), between(-0.3, 4.0)});
  }
  return wind;
}

} // namespace

BOOST_AUTO_TEST_SUITE(wind_force)

/// q = ρ v²/2 with ρ = 1.25 kg/m³: EN 1991-1-4 § 4.5 as quoted, 26 m/s gives 422.5 N/m² (V), 40.9 m/s gives
/// 1.046 kPa (I).
BOOST_AUTO_TEST_CASE(pressureOfTheWind) {
  BOOST_TEST(options::gustPressure(26.0) == 422.5, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(options::gustPressure(40.9) / 1000.0 == 1.046, boost::test_tools::tolerance(1e-3));
}

/// A box, 3 in front and 4 at the side: from in front 3, from the side 4, and at most 5, from where the
/// tangent is 4/3 (by hand: a cos θ + b sin θ is at most √(a² + b²)).
BOOST_AUTO_TEST_CASE(aBoxFromAslant) {
  WindForce wind;
  wind.add({0.0, 3.0, 1.0});
  wind.add({90.0, 4.0, 1.0});
  BOOST_TEST(wind.forceFrom(0.0) == 3.0, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(wind.forceFrom(90.0) == 4.0, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(wind.forceFrom(180.0) == 3.0, boost::test_tools::tolerance(1e-12));
  const FromDirection most = wind.greatestForce();
  BOOST_TEST(most.value == 5.0, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(std::abs(std::tan(hang::toRadians(most.fromDeg))) == 4.0 / 3.0,
             boost::test_tools::tolerance(1e-9));
  // Along the side: (3 |cos θ| + 4 |sin θ|) |sin θ| = ½ (4 + 5 cos(2θ − …)), so at most ½ (4 + 5).
  BOOST_TEST(wind.greatestMomentAlong(90.0).value == 4.5, boost::test_tools::tolerance(1e-12));
}

/// No direction of a fine sweep is worse than the closed form, and the one that it names reaches it.
BOOST_AUTO_TEST_CASE(noDirectionIsWorse) {
  std::mt19937 random(20270);
  for (int round = 0; round < 200; ++round) {
    const WindForce wind = randomFaces(random, 1 + round % 12);
    const double along = round % 2 == 0 ? 90.0 : std::uniform_real_distribution<>(-90.0, 90.0)(random);
    const FromDirection force = wind.greatestForce();
    const FromDirection moment = wind.greatestMomentAlong(along);
    double mostForce = 0.0;
    double mostMoment = 0.0;
    for (int step = 0; step < 7200; ++step) {
      const double deg = step * 0.05;
      mostForce = std::max(mostForce, wind.forceFrom(deg));
      mostMoment =
          std::max(mostMoment, std::abs(wind.momentFrom(deg) * std::cos(hang::toRadians(deg - along))));
    }
    BOOST_TEST(force.value >= mostForce * (1.0 - 1e-12));
    BOOST_TEST(force.value <= mostForce * (1.0 + 1e-5));
    BOOST_TEST(wind.forceFrom(force.fromDeg) == force.value, boost::test_tools::tolerance(1e-9));
    BOOST_TEST(moment.value >= mostMoment * (1.0 - 1e-12));
    BOOST_TEST(moment.value <= mostMoment * (1.0 + 1e-5) + 1e-12);
  }
}

BOOST_AUTO_TEST_SUITE_END()
