// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <vector>

#include "hang/bridle.h"
#include "options/option.h"
#include "options/pick_path.h"
#include "options/weigh.h"

/// The load cells of a hang, and what they read where a pick carries other than was computed. kN.
///
/// A cell in a bridle's leg sits at its top and reads the pull along the leg: its tension there, with half of
/// the leg's own weight, as `BridleLegResult` tells it. Where the pick's load changes, the pull of its chain
/// changes with it, along the chain as it leans; hoist, chain, rigging and half of the legs hang straight
/// down beside it, and the legs are settled anew.
namespace hangbook::options {

struct Cell {
  std::size_t pick{};
  int leg = -1;  ///< of the pick's bridle, counted from 0; −1: at its hook or point
  QString name;  ///< of the pick
  QString point; ///< that the leg goes to; empty for others
};
QString wordsFor(const Cell& cell); ///< "left", "left, leg to L1"

/// One piece more or fewer than counted in a leg.
struct LegPieces {
  std::size_t pick{};
  std::size_t leg{};
  QString type;
  int more{}; ///< 1 or −1
};

class Cells {
public:
  /// Throws Error(notPossible) where what they carry is not known.
  Cells(const Snapshot& snapshot, const Option& option, CellAt at);

  const std::vector<Cell>& all() const { return cells_; }
  double computed(std::size_t cell) const { return computed_[cell]; }
  /// Of that, half of its leg's own weight: what the balance at the apex leaves of the pull at the top.
  double ownWeight(std::size_t cell) const {
    const Cell& at = cells_[cell];
    return at.leg < 0 ? 0.0 : halfKn_.at(at.pick)[static_cast<std::size_t>(at.leg)];
  }

  /// What all would read, did each pick carry so much more than computed (kN).
  std::vector<double> with(const std::array<double, 2>& moreKn) const;
  /// How much more each pick would carry, were the readings right; of a bridle's legs what fits them best
  /// (least squares).
  std::array<double, 2> moreBy(const std::vector<double>& readings) const;

  /// Every such change, and what all would read.
  std::vector<LegPieces> legChanges() const;
  std::vector<double> with(const LegPieces& change) const;

  bool inLegs() const; ///< any of them
  /// Parts that hang between hook and point or apex, kN, of one pick.
  double hoistAndChain(std::size_t pick) const;
  double rigging(std::size_t pick) const;

private:
  const BridleResult* bridleOf(std::size_t pick) const;
  void place(std::size_t pick, CellAt at);
  /// Pulls of the pick's legs at the apex, kN; NaN where they do not hold it.
  std::vector<double> legs(std::size_t pick, double moreKn, const LegPieces* change) const;

  const Snapshot& snapshot_;
  const Option& option_;
  std::vector<PickPath> paths_;
  std::vector<Cell> cells_;
  std::vector<double> computed_;
  std::array<std::vector<double>, 2> halfKn_; ///< half of each leg's own weight
};

} // namespace hangbook::options
