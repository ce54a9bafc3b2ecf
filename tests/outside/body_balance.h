// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <boost/test/unit_test.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

#include <Eigen/Dense>

#include "outside/rigid_hang.h"
#include "quantity/quantity.h"

/// The force and moment equations of every body of a hang, solved as one linear system: written apart from
/// the program's own statics.
namespace hangbook::testing {

/// An unknown force: where it acts, which way a unit of it points, on which body; it acts on the body above
/// the other way round.
struct Unknown {
  Eigen::Vector3d at;
  Eigen::Vector3d way;
  std::size_t body;
  bool onAbove = true;
};

/// A force on one body besides its weight, in frame coordinates.
struct Extra {
  std::size_t body;
  Eigen::Vector3d at;
  Eigen::Vector3d force;
};

struct Solution {
  Eigen::VectorXd forces;
  std::vector<std::size_t> first; ///< of each joint's unknowns
  std::size_t tension = 0;        ///< its place among them, where a pivot makes it one
};

/// Every body's two force equations and one moment equation (about the frame's origin) in the hang's plane.
/// `tension` acts where there is a chain without a pivot; with one the tension is an unknown.
inline Solution solveBodies(const RigidHang& shape, double tension, const std::vector<Extra>& extras = {}) {
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
  for (const Extra& extra : extras) {
    add(known, extra.body, extra.at, -extra.force);
  }
  solution.forces = matrix.fullPivLu().solve(known);
  BOOST_REQUIRE((matrix * solution.forces - known).norm() < 1e-6 * std::max(1.0, known.norm()));
  return solution;
}

inline double contactIn(const Solution& solution, std::size_t joint) {
  return solution.forces(static_cast<Eigen::Index>(solution.first[joint] + 2));
}

inline double pinIn(const Solution& solution, std::size_t joint, std::size_t pin) {
  const auto at = static_cast<Eigen::Index>(solution.first[joint] + 2 * pin);
  return 0.5 * std::hypot(solution.forces(at), solution.forces(at + 1)); // two sides
}

/// Each contact is linear in the tension, so two solutions give the least tension that leaves none open.
inline double leastTension(const hang::Hang& hang, const Solution& none, const Solution& one) {
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

} // namespace hangbook::testing
