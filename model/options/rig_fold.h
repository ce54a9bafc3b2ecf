// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <deque>
#include <functional>
#include <memory>
#include <optional>
#include <span>
#include <vector>

#include "options/ear_columns.h"
#include "options/load_columns.h"
#include "options/placement.h"
#include "options/wind_force.h"

namespace hangbook::options {

/// What rules need of a rig's settings again and again, kept as soon as one of them has worked it out: some
/// of it is the same for every hoist and every way of reaching the points, some for every hoist on one way. A
/// case that has one finds its figures here; it asks by the very setting (its place in memory), so that a
/// copy with other figures is worked out by itself. For one thread.
class RigFold {
public:
  /// The settings stay where they are as long as this is used.
  explicit RigFold(std::span<const Settled> settings)
      : settings_(settings), lowest_(settings.size()), wind_(settings.size()), uneven_(settings.size()),
        highest_(settings.size()), floor_(settings.size()) {}

  /// The next way of reaching the points: what depends on it is forgotten.
  void startWay() { floor_.assign(settings_.size(), std::nullopt); }

  // Each: where the figure is kept, nullptr for a setting that is none of the rig's.
  std::optional<LowestEdge>* lowest(const Settled& settled) { return in(lowest_, settled); }
  std::optional<WindForce>* wind(const Settled& settled) { return in(wind_, settled); }
  /// With the left hoist higher, with the right one higher.
  std::optional<std::array<Settled, 2>>* uneven(const Settled& settled) { return in(uneven_, settled); }
  /// Of the bar, then of each cabinet: the highest corner, m over the hang's origin.
  std::optional<std::vector<double>>* highest(const Settled& settled) { return in(highest_, settled); }
  /// Height of the highest floor beneath, for this way.
  std::optional<double>* floor(const Settled& settled) { return in(floor_, settled); }
  /// The audience of the hang whose options these are.
  const std::shared_ptr<EarColumns>& ears(const Audience& audience) {
    if (ears_ == nullptr) {
      ears_ = std::make_shared<EarColumns>(audience);
    }
    return ears_;
  }
  /// The loads of all settings side by side, and their corners (empty where they are of no use).
  struct Loads {
    LoadColumns all;
    std::optional<LoadColumns> corners;
    double leanFactor = notKnown;         ///< of `leaning`
    std::optional<LoadColumns> leaning{}; ///< with every chain leaning by the most that the house allows
    std::optional<LoadColumns> leaningCorners{};
  };
  /// `option`: any of this rig.
  const Loads& loads(const Case& option) {
    if (!loads_) {
      loads_.emplace(Loads{LoadColumns(option, settings_), std::nullopt});
      if (loads_->all.alike && loads_->all.loaded) {
        loads_->corners = loads_->all.corners();
      }
    }
    return *loads_;
  }
  /// The same with the loads of chains that lean by a factor, where that has corners.
  const Loads& leaningLoads(const Case& option, double factor) {
    loads(option);
    if (loads_->corners && loads_->leanFactor != factor) {
      loads_->leanFactor = factor;
      loads_->leaning = loads_->all.leaning(factor);
      loads_->leaningCorners = loads_->leaning->corners();
    }
    return *loads_;
  }
  /// What a rule of the rig and the hoist alone said of each setting.
  std::vector<std::optional<Use>>& uses(const Rule& rule, const catalogue::HoistType* hoist) {
    for (KeptUses& each : uses_) {
      if (each.rule == &rule && each.hoist == hoist) {
        return each.uses;
      }
    }
    return uses_.emplace_back(&rule, hoist, std::vector<std::optional<Use>>(settings_.size())).uses;
  }

private:
  template <class Kept>
  Kept* in(std::vector<Kept>& all, const Settled& settled) const {
    const auto place = &settled - settings_.data();
    const bool ours = std::less_equal<>()(settings_.data(), &settled) &&
                      std::less<>()(&settled, settings_.data() + settings_.size());
    return ours ? &all[static_cast<std::size_t>(place)] : nullptr;
  }

  struct KeptUses {
    const Rule* rule;
    const catalogue::HoistType* hoist;
    std::vector<std::optional<Use>> uses;
    KeptUses(const Rule* of, const catalogue::HoistType* with, std::vector<std::optional<Use>> all)
        : rule(of), hoist(with), uses(std::move(all)) {}
  };

  std::span<const Settled> settings_;
  std::deque<KeptUses> uses_; ///< never moved: each is referred to
  std::optional<Loads> loads_;
  std::shared_ptr<EarColumns> ears_;
  std::vector<std::optional<LowestEdge>> lowest_;
  std::vector<std::optional<WindForce>> wind_;
  std::vector<std::optional<std::array<Settled, 2>>> uneven_;
  std::vector<std::optional<std::vector<double>>> highest_;
  std::vector<std::optional<double>> floor_;
};

/// What `where` keeps, worked out by `make` if it is not kept yet; without a place it is put `here`.
template <class Kept, class Make>
const Kept& keptIn(std::optional<Kept>* where, std::optional<Kept>& here, Make make) {
  std::optional<Kept>& kept = where == nullptr ? here : *where;
  if (!kept) {
    kept = make();
  }
  return *kept;
}

/// The same by value.
template <class Kept, class Make>
Kept keptOr(std::optional<Kept>* where, Make make) {
  std::optional<Kept> here;
  return keptIn(where, here, make);
}

} // namespace hangbook::options
