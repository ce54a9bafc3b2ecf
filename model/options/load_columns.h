// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <span>
#include <vector>

#include "options/rule.h"

namespace hangbook::options {

/// The loads of all settings of a rig, figure by figure side by side in memory, for rules that are asked of
/// all of them at once (`load_span.h`). N; verdicts as numbers (`Verdict`), so that the worse one is the
/// greater.
struct LoadColumns {
  /// Of one pick. `most`: the worst of the build and of aiming, never below `load`.
  struct Pick {
    std::vector<double> load;
    std::vector<double> most;
  };
  /// As set, with the left hoist higher, with the right one higher.
  std::array<std::array<Pick, 2>, 3> stands;
  std::size_t picks{};
  std::vector<double> weight; ///< everything below the hooks
  double gearHeavier{};
  std::vector<double> build;   ///< unproven where the loads of a step are not known, else holds
  std::vector<double> bounded; ///< unproven where what the doubts may come to is not bounded, else holds
  bool sidePair{};             ///< else the picks stand as set alone
  /// Else a load of them, or what an uneven pair takes, does not follow, and this is of no use: figures that
  /// do not follow are left to the rules themselves.
  bool alike = true;
  bool loaded = true; ///< every pick, however it stands, at every setting

  /// `option`: for what it says of the rig and the house; its hoist and points play no part. The settings are
  /// all of this rig, so that they differ in their loads alone.
  LoadColumns(const Case& option, std::span<const Settled> settings);
  std::size_t size() const { return weight.size(); }

  /// Two columns: the least of every figure, and the most, each a little beyond what rounding can do. A use
  /// that rises with each of them lies between its uses there. Only where `alike` and `loaded`.
  LoadColumns corners() const;
  /// The same with every chain leaning: each pick's loads times `factor`, from 1 up. Only where `loaded`.
  LoadColumns leaning(double factor) const;

private:
  LoadColumns() = default;
  void follows(double load);
  void followsAndLifts(double load);
};

/// Loads of a side pair's picks with one hoist higher by the house's difference: with the left one, with the
/// right one, each left and right, N; nothing where that does not follow. `isPair` false: not asked.
std::optional<std::array<std::array<double, 2>, 2>> unevenLoads(const Case& option, const Settled& level);
bool isSidePair(const Settled& settled);
/// Whether the house lets the hoists stand more unlike than the bar allows.
bool beyondBar(const Case& option);

} // namespace hangbook::options
