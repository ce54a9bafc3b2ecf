// SPDX-License-Identifier: GPL-3.0-or-later
// A side-pair out of level against the force and moment equations of the turned body (Eigen), and against its
// least potential energy on two chains (NLopt). Certainty: C (recomputed by other methods).
#include <boost/test/unit_test.hpp>

#include <cmath>
#include <limits>
#include <vector>

#include <Eigen/Dense>
#include <Eigen/Geometry>
#include <nlopt.hpp>

#include "hang/solve.h"
#include "hang/uneven.h"
#include "quantity/error.h"
#include "quantity/quantity.h"
#include "support/example_hang.h"
#include "support/random_hang.h"

using namespace hangbook;
using hangbook::testing::RandomHangs;

namespace {

hang::Uneven unevenPair(const hang::Statics& level, double spacing, double leftAboveRight) {
  hang::Bar bar;
  hang::SidePair pair;
  pair.pickSpacing = spacing;
  bar.picks = pair;
  return hang::unevenBy(bar, level, leftAboveRight).value();
}

/// Pick loads by two equations: forces up, moments about the x axis through the origin.
Eigen::Vector2d byBalance(const hang::Statics& level, double spacing, double roll) {
  const Eigen::AngleAxisd turn(roll, Eigen::Vector3d::UnitX());
  const Eigen::Vector3d left = turn * Eigen::Vector3d(0.0, 0.5 * spacing, 0.0);
  const Eigen::Vector3d cg = turn * Eigen::Vector3d(level.cg.x, level.cg.y, level.cg.z);
  const double weight = level.mass * standardGravity;
  Eigen::Matrix2d rows;
  rows << 1.0, 1.0, left.y(), -left.y();
  return rows.fullPivLu().solve(Eigen::Vector2d(weight, weight * cg.y()));
}

/// The body on two chains of unlike length from far above: sideways place, height and roll are free; how far
/// a chain may be stretched is kept by a stiff spring. Its stretch tells its load.
struct OnChains {
  double spacing;
  double y;
  double z;
  double weight;
  double top;
  double leftLength;
  double rightLength;
  double stiffness;
  double stretch[2] = {0.0, 0.0};

  double energy(const std::vector<double>& at) {
    double total = weight * (at[1] + y * std::sin(at[2]) + z * std::cos(at[2]));
    for (const int side : {0, 1}) {
      const double arm = (side == 0 ? 0.5 : -0.5) * spacing;
      const double pickY = at[0] + arm * std::cos(at[2]);
      const double pickZ = at[1] + arm * std::sin(at[2]);
      const double length = std::hypot(pickY - arm, top - pickZ);
      stretch[side] = length - (side == 0 ? leftLength : rightLength);
      total += stretch[side] > 0.0 ? 0.5 * stiffness * stretch[side] * stretch[side] : 0.0;
    }
    return total / weight;
  }
  static double call(const std::vector<double>& at, std::vector<double>&, void* data) {
    return static_cast<OnChains*>(data)->energy(at);
  }
};

} // namespace

BOOST_AUTO_TEST_SUITE(level)

BOOST_AUTO_TEST_CASE(by_hand) {
  // 1000 kg, picks 1 m apart, centre 2 m below their middle; left 20 mm higher: roll asin 0.02 = 1.146°, the
  // centre goes 2 m · tan 1.146° = 40 mm to the left of 1 m: 54 % to the left, 46 % to the right.
  hang::Statics statics;
  statics.mass = 1000.0;
  statics.cg = {0.0, 0.0, -2.0};
  statics.side = hang::SideAttitude{};
  statics.pickCount = 2;
  const hang::Uneven uneven = unevenPair(statics, 1.0, 0.02);
  BOOST_TEST(uneven.turnDeg == 1.146, boost::test_tools::tolerance(1e-3));
  BOOST_TEST(uneven.loads[0] == 5400.0 * standardGravity / 10.0, boost::test_tools::tolerance(1e-4));
  BOOST_TEST(uneven.loads[0] + uneven.loads[1] == 1000.0 * standardGravity,
             boost::test_tools::tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(agrees_with_balance_and_mirrors) {
  RandomHangs random(31);
  int solved = 0;
  for (int i = 0; i < 600; ++i) {
    const hang::Hang hang = random.next(0, hangbook::testing::Held::nothing);
    hang::Statics level;
    try {
      level = hang::solve(hang);
    } catch (const Error&) {
      continue;
    }
    ++solved;
    const double spacing = std::get<hang::SidePair>(hang.bar.picks).pickSpacing;
    const double difference = random.between(-0.3, 0.3) * spacing;
    const hang::Uneven uneven = unevenPair(level, spacing, difference);
    const Eigen::Vector2d balance = byBalance(level, spacing, std::asin(difference / spacing));
    BOOST_TEST(uneven.loads[0] == balance[0], boost::test_tools::tolerance(1e-9));
    BOOST_TEST(uneven.loads[1] == balance[1], boost::test_tools::tolerance(1e-9));
    const hang::Uneven none = unevenPair(level, spacing, 0.0);
    BOOST_TEST(none.loads[0] == level.pickLoads[0].load, boost::test_tools::tolerance(1e-9));
    hang::Statics mirror = level;
    mirror.cg.y = -mirror.cg.y;
    const hang::Uneven other = unevenPair(mirror, spacing, -difference);
    BOOST_TEST(other.loads[1] == uneven.loads[0], boost::test_tools::tolerance(1e-9));
  }
  BOOST_TEST(solved > 100);
}

BOOST_AUTO_TEST_CASE(hangs_so_on_two_chains) {
  RandomHangs random(32);
  for (int i = 0; i < 12; ++i) {
    hang::Statics statics;
    statics.mass = random.between(200.0, 900.0);
    statics.cg = {0.0, random.between(-0.1, 0.1), random.between(-3.0, -0.5)};
    statics.side = hang::SideAttitude{};
    statics.pickCount = 2;
    const double spacing = random.between(0.8, 1.4);
    const double difference = random.between(-0.05, 0.05);
    const hang::Uneven uneven = unevenPair(statics, spacing, difference);
    OnChains body{spacing, statics.cg.y, statics.cg.z, statics.mass * standardGravity,
                  500.0,   500.0,        500.0,        1e8};
    body.leftLength -= 0.5 * difference;
    body.rightLength += 0.5 * difference;
    nlopt::opt search(nlopt::LN_NELDERMEAD, 3);
    search.set_min_objective(OnChains::call, &body);
    search.set_initial_step(std::vector<double>{0.05, 0.001, 0.02});
    search.set_xtol_rel(1e-15);
    search.set_ftol_abs(1e-18);
    search.set_maxeval(20000);
    std::vector<double> at{0.0, 0.0, difference / spacing};
    double least = 0.0;
    for (int again = 0; again < 4; ++again) {
      search.optimize(at, least);
    }
    body.energy(at);
    // The chains are 500 m long and stretch a little: that is what the tolerance is for.
    BOOST_TEST(body.stretch[0] * body.stiffness == uneven.loads[0], boost::test_tools::tolerance(0.01));
    BOOST_TEST(body.stretch[1] * body.stiffness == uneven.loads[1], boost::test_tools::tolerance(0.01));
  }
}

BOOST_AUTO_TEST_SUITE_END()
