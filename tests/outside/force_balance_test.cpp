// SPDX-License-Identifier: GPL-3.0-or-later
// Loads on picks, pins, contacts and chain against the full set of force and moment equations, body by body,
// solved as one linear system by Eigen. Certainty: C (recomputed by another method).
#include <boost/test/unit_test.hpp>

#include <algorithm>
#include <cmath>
#include <vector>

#include <Eigen/Dense>

#include "hang/solve.h"
#include "outside/body_balance.h"
#include "quantity/quantity.h"
#include "support/random_hang.h"

using namespace hangbook;
using namespace hangbook::testing;

namespace {

void near(double found, double expected, double scale) {
  BOOST_TEST(std::abs(found - expected) <= 1e-7 * std::max(scale, std::abs(expected)),
             "found " << found << ", expected " << expected);
}

void compareBodies(const hang::Hang& hang, const hang::Statics& statics) {
  const RigidHang shape = rigidHang(hang, statics);
  Solution whole = solveBodies(shape, 0.0);
  const Solution unhelped = whole;
  const double scale = 1000.0;
  const bool determinate =
      std::any_of(hang.stack.begin(), hang.stack.end(), [](const hang::Element& element) {
        return std::holds_alternative<hang::Pivot>(element.joint);
      });
  if (determinate) {
    near(statics.chain->tension, whole.forces(static_cast<Eigen::Index>(whole.tension)), scale);
  } else if (hang.chain) {
    const double least = leastTension(hang, unhelped, solveBodies(shape, 1.0));
    near(statics.chain->tension, least, scale);
    whole = solveBodies(shape, least);
  }
  for (std::size_t i = 0; i < statics.joints.size(); ++i) {
    const hang::JointStatics& joint = statics.joints[i];
    if (std::holds_alternative<hang::Pinned>(hang.stack[i].joint)) {
      BOOST_TEST(joint.pinCount == 2);
      near(joint.pinForces[0], pinIn(unhelped, i, 0), scale);
      near(joint.pinForces[1], pinIn(unhelped, i, 1), scale);
      continue;
    }
    near(joint.pinForces[0], pinIn(whole, i, 0), scale);
    if (joint.contact) {
      near(*joint.contact, contactIn(whole, i), scale);
    }
  }
}

/// Picks: three forces and three moments of the whole, in the world.
void comparePicks(const hang::Hang& hang, const hang::Statics& statics) {
  const RigidHang shape = rigidHang(hang, statics);
  std::vector<Eigen::Vector3d> places;
  if (const auto* pair = std::get_if<hang::SidePair>(&hang.bar.picks)) {
    places = {{0.0, pair->pickSpacing / 2.0, 0.0}, {0.0, -pair->pickSpacing / 2.0, 0.0}};
  } else if (const auto* foreAft = std::get_if<hang::ForeAftPair>(&hang.bar.picks)) {
    places = {shape.frame() * RigidHang::in3d(foreAft->frontPick),
              shape.frame() * RigidHang::in3d(foreAft->rearPick)};
  } else {
    places = {Eigen::Vector3d::Zero()};
  }
  BOOST_REQUIRE(places.size() == statics.pickCount);
  double force = 0.0;
  Eigen::Vector3d moment = Eigen::Vector3d::Zero();
  for (std::size_t i = 0; i < places.size(); ++i) {
    const Eigen::Vector3d load(0.0, 0.0, statics.pickLoads[i].load);
    force += load.z();
    moment += places[i].cross(load);
  }
  double weightSum = 0.0;
  for (const RigidHang::Weight& weight : shape.weights()) {
    const Eigen::Vector3d down(0.0, 0.0, -standardGravity * weight.mass);
    weightSum += down.z();
    moment += weight.at.cross(down);
  }
  near(force, -weightSum, 1000.0);
  BOOST_TEST(moment.norm() < 1e-7 * force);
}

} // namespace

BOOST_AUTO_TEST_SUITE(force_balance)

BOOST_AUTO_TEST_CASE(thousands_of_hangs_balance_body_by_body) {
  const int compared =
      testing::overSolvedHangs(31, 6000, [](int i, const hang::Hang& hang, const hang::Statics& statics) {
        BOOST_TEST_CONTEXT("hang " << i) {
          compareBodies(hang, statics);
          comparePicks(hang, statics);
        }
      });
  BOOST_TEST_MESSAGE(compared << " hangs compared");
  BOOST_TEST(compared > 3000);
}

BOOST_AUTO_TEST_SUITE_END()
