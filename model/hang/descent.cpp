// SPDX-License-Identifier: GPL-3.0-or-later
#include "hang/descent.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>
#include <vector>

#include <Eigen/Eigenvalues>
#include <Eigen/QR>

#include "hang/halving.h"
#include "quantity/error.h"

namespace hangbook::hang {
namespace {

using Eigen::Index;
using Eigen::MatrixXd;
using Eigen::VectorXd;

constexpr double longestStep = 0.02; // radians
constexpr double stillStep = 1e-11;  // radians: a Newton step this short has nothing left but rounding
constexpr double stillForce = 1e-10; // metres: moment per total weight
constexpr double softest = 1e-12;    // metres: moment per total weight and radian; what bends less is no bowl
constexpr int mostRounds = 5000;

/// What is flat has no length of step of its own: it moves as far as its slope is steep.
double orFlat(double bend) {
  return bend < softest ? 1.0 : bend;
}

class Descent {
public:
  Descent(ShapeEnergy& energy, const VectorXd& start, const VectorXd& low, const VectorXd& high,
          double chainLimit)
      : energy_(energy), angles_(start), low_(low), high_(high), limit_(chainLimit),
        inwards_((start.array() <= low.array()).cast<double>()) {}

  Rest run() {
    for (int round = 0; round < mostRounds; ++round) {
      look();
      if (step() && !release()) {
        if (propped_) {
          throw Error(Trouble::notPossible, "the hang would rest on a knife's edge: any touch moves it");
        }
        return {angles_, pull_};
      }
    }
    throw Error(Trouble::notPossible, "the hang does not come to rest within its travels");
  }

private:
  void look() {
    energy_.moveTo(angles_);
    slope_ = energy_.slope();
    chainSlope_ = energy_.chainSlope();
    free_.clear();
    for (Index i = 0; i < inwards_.size(); ++i) {
      if (inwards_(i) == 0.0) {
        free_.push_back(i);
      }
    }
    if (taut_ && !isLength(chainSlope_(free_).lpNorm<Eigen::Infinity>())) { // the free ones do not feel it
      slacken();
    }
  }

  void slacken() {
    taut_ = false;
    pull_ = 0.0;
  }

  /// Newton's step of the free joints; sets the pull of a taut chain. Along the chain's own direction a taut
  /// one decides, by its length; across it the energy does. Where that is no bowl the step goes down all the
  /// same: as far as if it were bent the other way.
  VectorXd newton() {
    const VectorXd slope = slope_(free_);
    const VectorXd felt = chainSlope_(free_);
    MatrixXd bend = energy_.curvature()(free_, free_);
    MatrixXd across = MatrixXd::Identity(bend.rows(), bend.cols());
    VectorXd step = VectorXd::Zero(bend.rows());
    if (taut_) {
      bend += pull_ * energy_.chainCurvature()(free_, free_);
      across = (felt.householderQr().householderQ() * across).eval().rightCols(felt.size() - 1);
      step = (limit_ - energy_.chainLength()) / felt.squaredNorm() * felt;
    }
    if (across.cols() > 0) {
      const Eigen::SelfAdjointEigenSolver<MatrixXd> axes(across.transpose() * bend * across);
      propped_ = axes.eigenvalues().minCoeff() < softest;
      const MatrixXd ways = across * axes.eigenvectors();
      const VectorXd bends = axes.eigenvalues().cwiseAbs().unaryExpr(&orFlat);
      step -= ways * (ways.transpose() * (slope + bend * step)).cwiseQuotient(bends);
    }
    if (taut_) {
      pull_ = -felt.dot(slope + bend * step) / felt.squaredNorm();
    }
    return step;
  }

  /// Moves; true where there is nothing left to move.
  bool step() {
    propped_ = false;
    if (free_.empty()) {
      return true;
    }
    VectorXd full = VectorXd::Zero(angles_.size());
    full(free_) = newton();
    const double size = full.lpNorm<Eigen::Infinity>();
    if (size < stillStep) {
      return true;
    }
    double share = std::min(1.0, longestStep / size);
    std::optional<Index> stopped;
    for (const Index i : free_) {
      const double room = (full(i) < 0.0 ? low_(i) : high_(i)) - angles_(i);
      if (const double part = std::abs(room / full(i)); part < share) {
        share = part;
        stopped = i;
      }
    }
    if (!taut_ && energy_.chainLengthAt(angles_ + share * full) > limit_) {
      share = shareToTaut(full, share);
      taut_ = true;
      stopped.reset();
    }
    angles_ += share * full;
    if (stopped) {
      const Index i = *stopped;
      inwards_(i) = -std::copysign(1.0, full(i));
      angles_(i) = full(i) < 0.0 ? low_(i) : high_(i);
    }
    return false;
  }

  double shareToTaut(const VectorXd& full, double share) const {
    const auto slack = [&](double part) { return energy_.chainLengthAt(angles_ + part * full) <= limit_; };
    return turnBetween({0.0, share}, std::numeric_limits<double>::epsilon(), slack).within;
  }

  /// Frees what is held by a force that cannot be: the worst of them. False where there is none.
  bool release() {
    // Steps along a taut chain leave its limit by their curvature; where all joints meet their ends on the
    // way one of them must give that back: the one that gives most.
    Index shortens{};
    if (isLength(energy_.chainLength() - limit_) &&
        isLength((-inwards_.cwiseProduct(chainSlope_)).maxCoeff(&shortens))) {
      inwards_(shortens) = 0.0; // the step finds the chain taut
      return true;
    }
    Index wrong{};
    const double worst = (-inwards_.cwiseProduct(slope_ + pull_ * chainSlope_)).maxCoeff(&wrong);
    if (std::max(worst, -pull_) <= stillForce) {
      return false;
    }
    if (-pull_ > worst) {
      slacken();
    } else {
      inwards_(wrong) = 0.0;
    }
    return true;
  }

  ShapeEnergy& energy_;
  VectorXd angles_;
  const VectorXd& low_;
  const VectorXd& high_;
  double limit_;
  VectorXd inwards_; ///< the way back from the end that a joint is held at: 1 or -1; 0 where it is free
  std::vector<Index> free_;
  VectorXd slope_;
  VectorXd chainSlope_;
  bool taut_{};
  bool propped_{}; ///< where the last step was taken the energy is no bowl
  double pull_{};  ///< of the chain, per total weight; 0 while it is slack
};

} // namespace

Rest runDown(ShapeEnergy& energy, const VectorXd& start, const VectorXd& low, const VectorXd& high,
             double chainLimit) {
  Rest rest = start.size() == 0 ? Rest{start} : Descent(energy, start, low, high, chainLimit).run();
  energy.moveTo(rest.angles);
  return rest;
}

} // namespace hangbook::hang
