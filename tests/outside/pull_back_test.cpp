// SPDX-License-Identifier: GPL-3.0-or-later
// A hang whose foot a second hoist pulls back, against least potential energy (NLopt: weight, and a steady
// force along a line that does not turn), and against the force and moment equations of the whole. Certainty:
// C.
#include <boost/test/unit_test.hpp>

#include <cmath>
#include <vector>

#include <nlopt.hpp>

#include "hang/solve.h"
#include "outside/rigid_hang.h"
#include "quantity/error.h"
#include "quantity/quantity.h"
#include "support/random_hang.h"

using namespace hangbook;
using hangbook::testing::RandomHangs;
using hangbook::testing::RigidHang;
using hangbook::testing::rigidHang;

namespace {

hang::Hang pulledHang(RandomHangs& hangs, int number) {
  hang::Hang hang = hangs.next(number % 3, static_cast<hangbook::testing::Held>((number / 3) % 3));
  hang::PullBack pull;
  pull.element = 1 + hangs.oneOf(static_cast<int>(hang.stack.size()));
  pull.at = {hangs.between(-0.8, -0.4), hangs.between(-0.6, 0.0)};
  pull.lineDeg = hangs.between(60.0, 170.0);
  pull.force = hangs.between(50.0, 1500.0);
  hang.pullBack = pull;
  return hang;
}

Eigen::Vector3d wayOf(const hang::Hang& hang) {
  const double angle = hang.pullBack->lineDeg * RigidHang::degree;
  return {std::cos(angle), 0.0, std::sin(angle)};
}

Eigen::Vector3d placeOf(const RigidHang& shape) {
  const hang::PullBack& pull = *shape.hang.pullBack;
  return shape.frame() *
         (shape.element(static_cast<std::size_t>(pull.element) - 1) * RigidHang::in3d(pull.at));
}

double energy(const RigidHang& shape, double force) {
  return standardGravity * shape.massHeight() - force * wayOf(shape.hang).dot(placeOf(shape));
}

struct Search {
  RigidHang& shape;
  double force;
  static double measure(const std::vector<double>& at, std::vector<double>&, void* data) {
    Search& self = *static_cast<Search*>(data);
    self.shape.swing = at[0];
    return energy(self.shape, self.force) / 1000.0;
  }
};

/// The swing of least energy, looked for from elsewhere.
double leastSwing(RigidHang shape, double force, double from) {
  Search search{shape, force};
  nlopt::opt optimiser(nlopt::LN_SBPLX, 1);
  optimiser.set_min_objective(Search::measure, &search);
  optimiser.set_xtol_abs(1e-10);
  optimiser.set_maxeval(2000);
  std::vector<double> at{from};
  double least = 0.0;
  try {
    optimiser.optimize(at, least);
  } catch (const nlopt::roundoff_limited&) {
    // As near as doubles allow.
  }
  return at[0];
}

/// The picks' chains lean alike, and pull along themselves.
void compareWhole(const hang::Hang& hang, const hang::Statics& statics) {
  const RigidHang shape = rigidHang(hang, statics);
  std::vector<Eigen::Vector3d> places{Eigen::Vector3d::Zero()};
  if (const auto* pair = std::get_if<hang::SidePair>(&hang.bar.picks)) {
    places = {{0.0, pair->pickSpacing / 2.0, 0.0}, {0.0, -pair->pickSpacing / 2.0, 0.0}};
  } else if (const auto* foreAft = std::get_if<hang::ForeAftPair>(&hang.bar.picks)) {
    places = {shape.frame() * RigidHang::in3d(foreAft->frontPick),
              shape.frame() * RigidHang::in3d(foreAft->rearPick)};
  }
  Eigen::Vector3d force = statics.pullBack->force * wayOf(hang);
  Eigen::Vector3d moment = placeOf(shape).cross(force);
  for (const RigidHang::Weight& weight : shape.weights()) {
    const Eigen::Vector3d down(0.0, 0.0, -standardGravity * weight.mass);
    force += down;
    moment += weight.at.cross(down);
  }
  const double lean = std::tan(statics.pullBack->hoistLeanDeg * RigidHang::degree);
  for (std::size_t i = 0; i < places.size(); ++i) {
    const double upright = statics.pickLoads[i].load;
    const Eigen::Vector3d chain(upright * lean, 0.0, upright);
    force += chain;
    moment += places[i].cross(chain);
  }
  const double scale = statics.mass * standardGravity;
  BOOST_TEST(force.norm() < 1e-9 * scale);
  BOOST_TEST(std::abs(moment.x()) < 1e-9 * scale);
  BOOST_TEST(std::abs(moment.y()) < 1e-9 * scale); // about the upright axis the chains hold by their own lean
}

} // namespace

BOOST_AUTO_TEST_SUITE(pull_back)

BOOST_AUTO_TEST_CASE(thousands_of_pulled_hangs_rest_where_their_energy_is_least) {
  RandomHangs hangs(1234);
  int compared = 0;
  for (int i = 0; i < 3000; ++i) {
    const hang::Hang hang = pulledHang(hangs, i);
    hang::Statics statics;
    try {
      statics = hang::solve(hang);
    } catch (const Error& error) {
      BOOST_REQUIRE(error.trouble() == Trouble::notPossible);
      continue;
    }
    const RigidHang shape = rigidHang(hang, statics);
    if (!statics.side && std::abs(shape.massHeight() / statics.mass - statics.cg.z) > 1e-6) {
      continue; // pulled right over its pick, where an elevation does not tell the turn
    }
    BOOST_TEST_CONTEXT("hang " << i) {
      if (std::abs(statics.pullBack->hoistLeanDeg) < 80.0) {
        compareWhole(hang, statics);
      }
      if (std::holds_alternative<hang::ForeAftPair>(hang.bar.picks)) {
        continue; // its hoists hold the tilt
      }
      ++compared;
      const double swing = leastSwing(shape, *hang.pullBack->force, shape.swing + hangs.between(-0.5, 0.5));
      BOOST_TEST(std::abs(std::remainder(swing - shape.swing, 2.0 * M_PI)) < 1e-5);
    }
  }
  BOOST_TEST(compared > 800);
}

BOOST_AUTO_TEST_CASE(the_force_that_holds_a_tilt_gives_that_tilt) {
  RandomHangs hangs(4321);
  int compared = 0;
  for (int i = 0; i < 2000; ++i) {
    hang::Hang hang = pulledHang(hangs, i % 2 == 0 ? 3 * i : 3 * i + 2);
    const double wanted = hangs.between(-12.0, 2.0);
    hang.pullBack->force.reset();
    hang.pullBack->tiltDeg = wanted;
    hang::Statics statics;
    try {
      statics = hang::solve(hang);
    } catch (const Error& error) {
      BOOST_REQUIRE(error.trouble() == Trouble::notPossible);
      continue;
    }
    BOOST_TEST(std::abs(statics.tiltDeg - wanted) < 1e-9);
    if (!(statics.pullBack->force > 0.0)) {
      continue; // it would have to push: reported, and no rope does that
    }
    hang.pullBack->force = statics.pullBack->force;
    hang.pullBack->tiltDeg.reset();
    hang::Statics again;
    try {
      again = hang::solve(hang);
    } catch (const Error&) {
      continue;
    }
    const RigidHang shape = rigidHang(hang, statics);
    RigidHang nudged = shape;
    nudged.swing += 1e-4;
    const double uphill = energy(nudged, *hang.pullBack->force);
    nudged.swing -= 2e-4;
    const double bend =
        uphill + energy(nudged, *hang.pullBack->force) - 2.0 * energy(shape, *hang.pullBack->force);
    if (bend > 0.0) { // else the line holds it like a ball on a hill
      ++compared;
      BOOST_TEST(std::abs(again.tiltDeg - wanted) < 1e-6);
    }
  }
  BOOST_TEST(compared > 300);
}

/// By hand: 200 kg under one pick, centre 0.3 m behind and 1 m below it; a rope straight up at 0.9 m behind
/// the pick holds it level: 200 g · 0.3 ÷ 0.9, and the pick keeps the rest.
BOOST_AUTO_TEST_CASE(a_rope_straight_up_shares_the_weight_like_a_lever) {
  hang::Hang hang;
  hang.bar.picks = hang::SinglePick{{0.0, 0.0}};
  hang.bar.stackPin = {0.2, -0.2};
  hang::Element element;
  element.mass = 200.0;
  element.cg = {-0.5, -0.8};
  element.outline = {{0.0, 0.0}, {0.0, -1.2}, {-1.1, -1.2}, {-1.1, 0.0}};
  element.joint = hang::Pinned{0.0, {hang::Vec2{0.0, 0.0}, hang::Vec2{-0.5, 0.0}}};
  hang.stack = {element};
  hang::PullBack pull;
  pull.element = 1;
  pull.at = {-1.1, -1.0};
  pull.tiltDeg = 0.0;
  hang.pullBack = pull;
  const hang::Statics statics = hang::solve(hang);
  const auto tight = boost::test_tools::tolerance(1e-12);
  BOOST_TEST(statics.pullBack->force == 200.0 * standardGravity / 3.0, tight);
  BOOST_TEST(statics.pickLoads[0].load == 400.0 * standardGravity / 3.0, tight);
  BOOST_TEST(std::abs(statics.pullBack->hoistLeanDeg) < 1e-12);
  // About the middle of the pins, 0.25 m behind the front one: weight 0.25 m and rope 0.85 m behind.
  const double couple = (200.0 * 0.25 - 200.0 / 3.0 * 0.85) * standardGravity / 0.5;
  const double direct = 0.5 * (200.0 - 200.0 / 3.0) * standardGravity;
  BOOST_TEST(statics.joints[0].pinForces[0] == 0.5 * std::abs(direct - couple),
             boost::test_tools::tolerance(1e-9));
  BOOST_TEST(statics.joints[0].pinForces[1] == 0.5 * std::abs(direct + couple),
             boost::test_tools::tolerance(1e-9));
}

/// An elevation does not tell 100° from 80°: it is refused, and upright is not.
BOOST_AUTO_TEST_CASE(no_tilt_beyond_upright_is_held) {
  RandomHangs hangs(4322);
  int upright = 0;
  for (int i = 0; i < 200; ++i) {
    hang::Hang hang = pulledHang(hangs, i % 2 == 0 ? 3 * i : 3 * i + 2);
    hang.pullBack->force.reset();
    try {
      const hang::Solver solver(hang.bar, hang.stack, hang.chain);
      hang.pullBack->tiltDeg = i % 4 < 2 ? 100.0 : -100.0;
      BOOST_CHECK_EXCEPTION(solver.at(hang.set, *hang.pullBack), Error,
                            [](const Error& error) { return error.place() == "pull_back.tilt_deg"; });
      hang.pullBack->tiltDeg = i % 4 < 2 ? 90.0 : -90.0;
      BOOST_TEST(std::abs(solver.at(hang.set, *hang.pullBack).tiltDeg) == 90.0,
                 boost::test_tools::tolerance(1e-9));
      ++upright;
    } catch (const Error& error) {
      BOOST_REQUIRE(error.trouble() == Trouble::notPossible);
    }
  }
  BOOST_TEST(upright > 50);
}

BOOST_AUTO_TEST_SUITE_END()
