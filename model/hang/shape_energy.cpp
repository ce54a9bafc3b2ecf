// SPDX-License-Identifier: GPL-3.0-or-later
#include "hang/shape_energy.h"

#include <algorithm>
#include <utility>

namespace hangbook::hang {

ShapeEnergy::ShapeEnergy(const Hang& hang, Setting held, std::vector<double> closedDeg,
                         std::vector<std::size_t> movable)
    : hang_(hang), held_(held), closedDeg_(std::move(closedDeg)), movable_(std::move(movable)) {}

void ShapeEnergy::assembleAt(const Eigen::VectorXd& angles, Assembly& into) const {
  std::vector<double> jointDeg = closedDeg_;
  for (Eigen::Index i = 0; i < count(); ++i) {
    jointDeg[jointOf(i)] = toDegrees(angles(i));
  }
  assemble(hang_.bar, hang_.stack, jointDeg, heldBy(hang_.chain), into);
}

void ShapeEnergy::moveTo(const Eigen::VectorXd& angles) {
  assembleAt(angles, assembly_);
  balance_ = hang::balance(hang_.bar, assembly_, held_);
}

double ShapeEnergy::chainLengthAt(const Eigen::VectorXd& angles) const {
  Assembly elsewhere;
  assembleAt(angles, elsewhere);
  return elsewhere.line ? elsewhere.line->straight : 0.0;
}

/// Σ mass × position of all below a joint, from its pin, per total mass.
Vec2 ShapeEnergy::leverOf(std::size_t joint) const {
  const Piece& piece = assembly_.pieces[joint];
  return (1.0 / balance_.mass) * (piece.massMoment - piece.massBelow * piece.pin);
}

bool ShapeEnergy::holds(std::size_t joint) const {
  return static_cast<int>(joint) < heldBy(hang_.chain);
}

Eigen::VectorXd ShapeEnergy::slope() const {
  Eigen::VectorXd result(count());
  const Vec2 up = balance_.attitude.upInPlane();
  for (Eigen::Index i = 0; i < count(); ++i) {
    result(i) = moment(leverOf(jointOf(i)), up);
  }
  return result;
}

Eigen::MatrixXd ShapeEnergy::curvature() const {
  // Turning about an upper and a lower pin: the second derivative of a place is minus its arm from the lower
  // one. What the swing gives way is taken off: E_qs E_sq / E_ss, with E_ss the depth of the centre.
  const Attitude& attitude = balance_.attitude;
  const Vec2 up = attitude.upInPlane();
  const Vec2 swinging{attitude.forward.x, attitude.up.x};
  const bool swings = !std::holds_alternative<ForeAftPair>(hang_.bar.picks);
  Eigen::MatrixXd result(count(), count());
  for (Eigen::Index i = 0; i < count(); ++i) {
    for (Eigen::Index j = i; j < count(); ++j) {
      const Vec2 lower = leverOf(jointOf(j));
      double bend = -dot(lower, up);
      if (swings) {
        bend -= moment(leverOf(jointOf(i)), swinging) * moment(lower, swinging) / -balance_.cg.z;
      }
      result(i, j) = bend;
      result(j, i) = bend;
    }
  }
  return result;
}

double ShapeEnergy::chainLength() const {
  return assembly_.line ? assembly_.line->straight : 0.0;
}

Eigen::VectorXd ShapeEnergy::chainSlope() const {
  Eigen::VectorXd result = Eigen::VectorXd::Zero(count());
  for (Eigen::Index i = 0; i < count(); ++i) {
    if (holds(jointOf(i))) {
      result(i) =
          -moment(assembly_.line->eye - assembly_.pieces[jointOf(i)].pin, assembly_.line->towardsAnchor);
    }
  }
  return result;
}

Eigen::MatrixXd ShapeEnergy::chainCurvature() const {
  Eigen::MatrixXd result = Eigen::MatrixXd::Zero(count(), count());
  if (!isLength(assembly_.line->straight)) {
    return result;
  }
  const ChainLine& line = *assembly_.line;
  for (Eigen::Index i = 0; i < count(); ++i) {
    for (Eigen::Index j = i; j < count(); ++j) {
      if (!holds(jointOf(j))) {
        continue;
      }
      const Vec2 upper = quarterTurn(line.eye - assembly_.pieces[jointOf(i)].pin);
      const Vec2 arm = line.eye - assembly_.pieces[jointOf(j)].pin;
      const Vec2 lower = quarterTurn(arm);
      const double across =
          dot(upper, lower) - dot(upper, line.towardsAnchor) * dot(lower, line.towardsAnchor);
      result(i, j) = across / line.straight + dot(line.towardsAnchor, arm);
      result(j, i) = result(i, j);
    }
  }
  return result;
}

} // namespace hangbook::hang
