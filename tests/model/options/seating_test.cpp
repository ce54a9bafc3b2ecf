// SPDX-License-Identifier: GPL-3.0-or-later
// Where a row of seats comes nearest to the line along which something aims, against a dense walk along the
// row.
#include <boost/test/unit_test.hpp>

#include <cmath>
#include <limits>
#include <numbers>
#include <utility>

#include "options/seating.h"
#include "support/random_hang.h"

using namespace hangbook;
using namespace hangbook::options;
using hangbook::testing::RandomHangs;

namespace {

/// Whether it lies behind, then how far off the line, m.
std::pair<bool, double> off(Plan place, Plan origin, Plan bearing) {
  const double x = place.x - origin.x;
  const double y = place.y - origin.y;
  return {x * bearing.x + y * bearing.y < -1e-9, std::abs(bearing.x * y - bearing.y * x)};
}

Plan turned(double rad) {
  return {std::cos(rad), std::sin(rad)};
}

} // namespace

BOOST_AUTO_TEST_SUITE(seating)

/// Sections that look any way, straight, round a centre before them or behind them, up to almost all the way
/// round; lines from anywhere, any way.
BOOST_AUTO_TEST_CASE(no_other_place_of_a_row_is_nearer_to_the_line) {
  RandomHangs random(20277);
  constexpr double round = 2.0 * std::numbers::pi;
  for (int i = 0; i < 600; ++i) {
    const double radius = i % 3 == 0 ? 0.0 : (i % 3 == 1 ? 1.0 : -1.0) * random.between(4.0, 9.0);
    const double behind = random.between(0.0, 3.0);
    const double width =
        radius == 0.0 ? random.between(2.0, 20.0) : std::abs(radius) * random.between(0.5, 6.2);
    const SweptSection section{{random.between(-9.0, 9.0), random.between(-9.0, 9.0)},
                               turned(random.between(0.0, round)),
                               width,
                               radius};
    const Plan origin{random.between(-9.0, 9.0), random.between(-9.0, 9.0)};
    const Plan bearing = turned(random.between(0.0, round));
    constexpr int steps = 4000;
    std::pair best(true, std::numeric_limits<double>::infinity());
    for (int step = 0; step <= steps; ++step) {
      best = std::min(best,
                      off(section.placeOf(behind, static_cast<double>(step) / steps - 0.5), origin, bearing));
    }
    const double part = section.partNearest(behind, origin, bearing);
    BOOST_TEST(std::abs(part) <= 0.5);
    const auto found = off(section.placeOf(behind, part), origin, bearing);
    BOOST_TEST(found.first <= best.first, i);
    BOOST_TEST((found.first < best.first || found.second <= best.second + 1e-9), i);
  }
}

/// Of a row that runs along with the line every place is as near: its middle is told.
BOOST_AUTO_TEST_CASE(of_a_row_along_the_line_the_middle_counts) {
  const SweptSection section{{6.0, 2.0}, {0.0, 1.0}, 4.0, 0.0};
  BOOST_TEST(section.partNearest(1.0, {0.0, 0.0}, {1.0, 0.0}) == 0.0);
}

BOOST_AUTO_TEST_SUITE_END()
