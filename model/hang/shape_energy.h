// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <Eigen/Core>

#include "hang/assembly.h"
#include "hang/balance.h"
#include "hang/hang.h"

namespace hangbook::hang {

/// Potential energy and chain length of a hang over the angles of the joints that can move, with first and
/// second derivatives. The swing is not among the angles: at each shape the hang is taken as swung out, and
/// the derivatives follow that swing. Energy is divided by the total weight (so it is the height of the
/// centre of gravity, in metres); angles in radians.
class ShapeEnergy {
public:
  /// `closed`: setting and joint angles of the closed shape. `movable`: index of each joint that can move.
  ShapeEnergy(const Hang& hang, Setting held, std::vector<double> closedDeg,
              std::vector<std::size_t> movable);

  /// Goes to these angles of the movable joints.
  void moveTo(const Eigen::VectorXd& angles);

  Eigen::VectorXd slope() const;     ///< of the energy
  Eigen::MatrixXd curvature() const; ///< of the energy
  double chainLength() const;        ///< anchor to eye; 0 without a chain
  Eigen::VectorXd chainSlope() const;
  Eigen::MatrixXd chainCurvature() const;

  const Assembly& assembly() const { return assembly_; }
  const Balance& balance() const { return balance_; }
  /// The chain's length at other angles, without going there.
  double chainLengthAt(const Eigen::VectorXd& angles) const;

private:
  Eigen::Index count() const { return static_cast<Eigen::Index>(movable_.size()); }
  std::size_t jointOf(Eigen::Index index) const { return movable_[static_cast<std::size_t>(index)]; }
  Vec2 leverOf(std::size_t joint) const;
  void assembleAt(const Eigen::VectorXd& angles, Assembly& into) const;
  bool holds(std::size_t joint) const;

  const Hang& hang_;
  Setting held_;
  std::vector<double> closedDeg_;
  std::vector<std::size_t> movable_;
  Assembly assembly_;
  Balance balance_;
};

} // namespace hangbook::hang
