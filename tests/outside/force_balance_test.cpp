// SPDX-License-Identifier: GPL-3.0-or-later
// Loads on picks, pins, contacts and chain against the full set of force and moment equations, body by body,
// solved as one linear system by Eigen. Certainty: C (recomputed by another method).
#include <boost/test/unit_test.hpp>

#include <algorithm>
#include <cmath>
#include <vector>

#include <Eigen/Dense>

#include "hang/solve.h"
#include "outside/rigid_hang.h"
#include "quantity/quantity.h"
#include "support/random_hang.h"

using namespace hangbook;
using hangbook::testing::RigidHang;
using hangbook::testing::rigidHang;

namespace {

/// An unknown force: where it acts, which way a unit of it points, on which body; it acts on the body above
/// the other way round.
struct Unknown {
  Eigen::Vector3d at;
  Eigen::Vector3d way;
  std::size_t body;
  bool onAbove = true;
};

struct Solution {
  Eigen::VectorXd forces;
  std::vector<std::size_t> first; ///< of each joint's unknowns
  std::size_t tension = 0;        ///< its place among them, where a pivot makes it one
};

/// Every body's two force equations and one moment equation (about the frame's origin) in the hang's plane.
/// `tension` acts where there is a chain without a pivot; with one the tension is an unknown.
Solution solveBodies(const RigidHang& shape, double tension) {
  const hang::Hang& hang = shape.hang;
  const std::size_t bodies = hang.stack.size();
  const Eigen::Vector3d gravity =
      shape.frame().linear().transpose() * Eigen::Vector3d(0.0, 0.0, -standardGravity);
  std::vector<Unknown> unknowns;
  std::vector<std::array<std::size_t, 2>> alike; // pairs of unknowns that are equal
  Solution solution;
  bool pivotHeld = false;
  for (std::size_t i = 0; i < bodies; ++i) {
    solution.first.push_back(unknowns.size());
    const Eigen::Isometry3d element = shape.element(i);
    const Eigen::Vector3d ahead = element.linear() * Eigen::Vector3d::UnitX();
    const Eigen::Vector3d upwards = element.linear() * Eigen::Vector3d::UnitZ();
    if (const auto* pinned = std::get_if<hang::Pinned>(&hang.stack[i].joint)) {
      const Eigen::Vector3d a = element * RigidHang::in3d(pinned->pins[0]);
      const Eigen::Vector3d b = element * RigidHang::in3d(pinned->pins[1]);
      const Eigen::Vector3d along = (b - a).normalized();
      const Eigen::Vector3d square(-along.z(), 0.0, along.x());
      alike.push_back({unknowns.size(), unknowns.size() + 2});
      for (const Eigen::Vector3d& at : {a, b}) {
        unknowns.push_back({at, along, i});
        unknowns.push_back({at, square, i});
      }
      continue;
    }
    const Eigen::Vector3d pin = element * Eigen::Vector3d::Zero();
    unknowns.push_back({pin, ahead, i});
    unknowns.push_back({pin, upwards, i});
    if (const auto* seated = std::get_if<hang::Seated>(&hang.stack[i].joint)) {
      unknowns.push_back({element * RigidHang::in3d(seated->contact), -upwards, i});
    } else {
      pivotHeld = true;
    }
  }
  Eigen::Vector3d eye = Eigen::Vector3d::Zero();
  Eigen::Vector3d way = Eigen::Vector3d::Zero();
  std::size_t held = 0;
  if (hang.chain) {
    held = static_cast<std::size_t>(hang.chain->held) - 1;
    eye = shape.element(held) * RigidHang::in3d(*hang.stack[held].chainEye);
    way = (RigidHang::in3d(*hang.bar.chainAnchor) - eye).normalized();
    if (pivotHeld) {
      solution.tension = unknowns.size();
      unknowns.push_back({eye, way, held, false});
    }
  }

  const auto size = static_cast<Eigen::Index>(3 * bodies + alike.size());
  BOOST_REQUIRE(size == static_cast<Eigen::Index>(unknowns.size()));
  Eigen::MatrixXd matrix = Eigen::MatrixXd::Zero(size, size);
  Eigen::VectorXd known = Eigen::VectorXd::Zero(size);
  const auto add = [&](auto&& column, std::size_t body, const Eigen::Vector3d& at,
                       const Eigen::Vector3d& force) {
    const auto row = static_cast<Eigen::Index>(3 * body);
    column(row) += force.x();
    column(row + 1) += force.z();
    column(row + 2) += at.cross(force).y();
  };
  for (std::size_t k = 0; k < unknowns.size(); ++k) {
    const Unknown& unknown = unknowns[k];
    auto column = matrix.col(static_cast<Eigen::Index>(k));
    add(column, unknown.body, unknown.at, unknown.way);
    if (unknown.onAbove && unknown.body > 0) {
      add(column, unknown.body - 1, unknown.at, -unknown.way);
    }
  }
  for (std::size_t k = 0; k < alike.size(); ++k) {
    const auto row = static_cast<Eigen::Index>(3 * bodies + k);
    matrix(row, static_cast<Eigen::Index>(alike[k][0])) = 1.0;
    matrix(row, static_cast<Eigen::Index>(alike[k][1])) = -1.0;
  }
  for (std::size_t i = 0; i < bodies; ++i) {
    add(known, i, shape.element(i) * RigidHang::in3d(hang.stack[i].cg), -hang.stack[i].mass * gravity);
  }
  if (hang.chain && !pivotHeld) {
    add(known, held, eye, -tension * way);
  }
  solution.forces = matrix.fullPivLu().solve(known);
  BOOST_REQUIRE((matrix * solution.forces - known).norm() < 1e-6 * std::max(1.0, known.norm()));
  return solution;
}

double contactIn(const Solution& solution, std::size_t joint) {
  return solution.forces(static_cast<Eigen::Index>(solution.first[joint] + 2));
}

double pinIn(const Solution& solution, std::size_t joint, std::size_t pin) {
  const auto at = static_cast<Eigen::Index>(solution.first[joint] + 2 * pin);
  return 0.5 * std::hypot(solution.forces(at), solution.forces(at + 1)); // two sides
}

/// Each contact is linear in the tension, so two solutions give the least tension that leaves none open.
double leastTension(const hang::Hang& hang, const Solution& none, const Solution& one) {
  double least = 0.0;
  for (std::size_t i = 0; i < static_cast<std::size_t>(hang.chain->held); ++i) {
    if (std::holds_alternative<hang::Seated>(hang.stack[i].joint) && contactIn(none, i) < 0.0) {
      const double gain = contactIn(one, i) - contactIn(none, i);
      BOOST_TEST(gain > 0.0);
      least = std::max(least, -contactIn(none, i) / gain);
    }
  }
  return least;
}

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
