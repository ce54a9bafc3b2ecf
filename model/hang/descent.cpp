// SPDX-License-Identifier: GPL-3.0-or-later
#include "hang/descent.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>
#include <vector>

#include <Eigen/Cholesky>

#include "hang/halving.h"
#include "quantity/error.h"

namespace hangbook::hang {
namespace {

constexpr double longestStep = 0.02; // radians
constexpr double stillStep = 1e-11;  // radians: a Newton step this short has nothing left but rounding
constexpr double stillForce = 1e-10; // metres: moment per total weight
constexpr double tautWithin = 1e-12; // metres
constexpr int mostRounds = 5000;

enum class At { free, low, high };

class Descent {
public:
  Descent(ShapeEnergy& energy, const Eigen::VectorXd& start, const Eigen::VectorXd& low,
          const Eigen::VectorXd& high, double chainLimit)
      : energy_(energy), angles_(start), low_(low), high_(high), limit_(chainLimit) {
    for (Eigen::Index i = 0; i < start.size(); ++i) {
      state_.push_back(start(i) <= low(i) ? At::low : start(i) >= high(i) ? At::high : At::free);
    }
  }

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
    for (std::size_t i = 0; i < state_.size(); ++i) {
      if (state_[i] == At::free) {
        free_.push_back(static_cast<Eigen::Index>(i));
      }
    }
    const Eigen::VectorXd felt = chainSlope_(free_);
    if (taut_ && (free_.empty() || !isLength(felt.cwiseAbs().maxCoeff()))) { // it feels none of them
      taut_ = false;
      pull_ = 0.0;
    }
  }

  /// Newton's step of the free joints; sets the pull of a taut chain.
  Eigen::VectorXd newton() {
    const Eigen::VectorXd slope = slope_(free_);
    const Eigen::VectorXd felt = chainSlope_(free_);
    Eigen::MatrixXd bend = energy_.curvature()(free_, free_);
    if (taut_) {
      bend += pull_ * energy_.chainCurvature()(free_, free_);
    }
    const double scale = std::max(1e-3, bend.diagonal().cwiseAbs().maxCoeff());
    const Eigen::Index size = bend.rows();
    const double softest = 1e-6 * std::sqrt(scale);
    double stiff = 0.0;
    double prop = 0.0;
    Eigen::LLT<Eigen::MatrixXd> factors(bend);
    const auto holds = [&] {
      return factors.info() == Eigen::Success && factors.matrixLLT().diagonal().minCoeff() >= softest;
    };
    // Along the chain's own direction curvature does not count, for there the chain decides: stiffening that
    // direction changes no step, and lets Cholesky tell a true saddle from a chain that holds.
    for (double times = 2.0; taut_ && !holds() && times < 1e6; times *= 10.0) {
      stiff = times * scale / felt.squaredNorm();
      factors.compute(bend + stiff * felt * felt.transpose());
    }
    while (!holds()) {
      prop = std::max(1e-3 * scale, 4.0 * prop);
      factors.compute(bend + stiff * felt * felt.transpose() + prop * Eigen::MatrixXd::Identity(size, size));
    }
    propped_ = prop > 0.0;
    const Eigen::VectorXd down = factors.solve(slope);
    if (!taut_) {
      return -down;
    }
    const double give = limit_ - energy_.chainLength();
    const Eigen::VectorXd along = factors.solve(felt);
    const double pull = -(felt.dot(down) + give) / felt.dot(along);
    pull_ = pull + stiff * give;
    return -down - pull * along;
  }

  /// Moves; true where there is nothing left to move.
  bool step() {
    propped_ = false;
    if (free_.empty()) {
      return true;
    }
    const Eigen::VectorXd way = newton();
    Eigen::VectorXd full = Eigen::VectorXd::Zero(angles_.size());
    full(free_) = way;
    const double size = way.cwiseAbs().maxCoeff();
    if (!taut_ && energy_.chainLength() >= limit_ - tautWithin && chainSlope_.dot(full) > 0.0 &&
        isLength(chainSlope_(free_).cwiseAbs().maxCoeff())) {
      taut_ = true; // it stands at its limit and would have to stretch
      return false;
    }
    if (size < stillStep) {
      return true;
    }
    double share = std::min(1.0, longestStep / size);
    std::optional<Eigen::Index> stopped;
    for (const Eigen::Index i : free_) {
      const double room = full(i) > 0.0 ? high_(i) - angles_(i) : low_(i) - angles_(i);
      if (full(i) != 0.0 && share * std::abs(full(i)) >= std::abs(room)) {
        share = std::abs(room) / std::abs(full(i));
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
      const bool atHigh = !std::signbit(full(*stopped));
      angles_(*stopped) = atHigh ? high_(*stopped) : low_(*stopped);
      state_[static_cast<std::size_t>(*stopped)] = atHigh ? At::high : At::low;
    }
    return false;
  }

  double shareToTaut(const Eigen::VectorXd& full, double share) const {
    const auto slack = [&](double part) { return energy_.chainLengthAt(angles_ + part * full) <= limit_; };
    return turnBetween({0.0, share}, std::numeric_limits<double>::epsilon(), slack).within;
  }

  /// Steps along a taut chain leave its limit by their curvature; where all joints meet their ends on the way
  /// one of them must give that back: the one that lifts the centre least for it.
  bool regain() {
    double cheapest = std::numeric_limits<double>::infinity();
    std::optional<std::size_t> which;
    for (std::size_t k = 0; k < state_.size(); ++k) {
      const auto i = static_cast<Eigen::Index>(k);
      const double inwards = state_[k] == At::low ? 1.0 : -1.0;
      if (state_[k] == At::free || !(low_(i) < high_(i)) || !isLength(-inwards * chainSlope_(i))) {
        continue;
      }
      const double cost = inwards * slope_(i) / std::abs(chainSlope_(i));
      if (cost < cheapest) {
        cheapest = cost;
        which = k;
      }
    }
    if (!which) {
      return false;
    }
    state_[*which] = At::free;
    taut_ = true;
    return true;
  }

  /// Frees what is held by a force that cannot be: the worst of them. False where there is none.
  bool release() {
    if (isLength(energy_.chainLength() - limit_) && regain()) {
      return true;
    }
    double worst = stillForce;
    std::optional<std::size_t> which;
    for (std::size_t k = 0; k < state_.size(); ++k) {
      const auto i = static_cast<Eigen::Index>(k);
      if (state_[k] == At::free || !(low_(i) < high_(i))) {
        continue;
      }
      const double push = slope_(i) + pull_ * chainSlope_(i);
      const double wrong = state_[k] == At::low ? -push : push;
      if (wrong > worst) {
        worst = wrong;
        which = k;
      }
    }
    if (-pull_ > worst) {
      taut_ = false;
      pull_ = 0.0;
      return true;
    }
    if (!which) {
      return false;
    }
    state_[*which] = At::free;
    return true;
  }

  ShapeEnergy& energy_;
  Eigen::VectorXd angles_;
  const Eigen::VectorXd& low_;
  const Eigen::VectorXd& high_;
  double limit_;
  std::vector<At> state_;
  std::vector<Eigen::Index> free_;
  Eigen::VectorXd slope_;
  Eigen::VectorXd chainSlope_;
  bool taut_ = false;
  bool propped_ = false; ///< the last step needed a curvature that is not the shape's own
  double pull_ = 0.0;    ///< of the chain, per total weight; 0 while it is slack
};

} // namespace

Rest runDown(ShapeEnergy& energy, const Eigen::VectorXd& start, const Eigen::VectorXd& low,
             const Eigen::VectorXd& high, double chainLimit) {
  Rest rest = Descent(energy, start, low, high, chainLimit).run();
  energy.moveTo(rest.angles);
  return rest;
}

} // namespace hangbook::hang
