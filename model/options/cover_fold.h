// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cmath>
#include <memory>
#include <optional>
#include <vector>

#include "options/cover.h"
#include "options/ear_columns.h"
#include "options/room_limits.h"

namespace hangbook::options {

/// Weight of what is covered at the trim that covers most of these ears; an ear's weight is its own whichever
/// sources cover it.
std::int64_t mostCovered(const CoverColumns&, const std::vector<std::int64_t>& weight);

/// Cover of one setting at one way of reaching the points, over all trims: where each position is covered is
/// worked out once, a trim is then only looked up. The same for every hoist, which cover knows nothing of,
/// and for other points that it `serves`.
/// Says what `coverRule` says; `which` (the first position missed) is left out.
class CoverFold {
public:
  /// `option` for what it says of the room and the points: those of its hoist play no part.
  CoverFold(const Case& option, const Settled& settled);

  /// Whether it says of an option of the same rig and hang what one made for it would say.
  bool serves(const Case& option) const;

  /// As `coverStretches`.
  const std::vector<TrimRange>& stretches(const Case& option);
  /// Per cent; NaN where it is not known.
  double percentAt(const Case& option, double trimM);
  /// Per cent at the trim that covers most; 0 where it is not known.
  double mostPercent(const Case& option);
  Use at(const Case& option, double trimM);

private:
  CoverColumns columns(const Case& option, double insideDeg);
  const CoverColumns& exact(const Case& option);
  bool known() const { return room_->audience.missing.isEmpty() && !std::isnan(room_->coverShare); }

  std::shared_ptr<const RoomLimits> room_; ///< whose audience is looked at
  std::shared_ptr<EarColumns> ears_;       ///< of that audience
  const Settled* settled_;
  CoverPlace place_;
  std::optional<std::vector<TrimRange>> stretches_;
  std::optional<CoverColumns> exact_; ///< to the very edges of cover
  std::optional<double> most_;
  std::optional<CoverColumns> inside_; ///< with the house's margin taken off
};

} // namespace hangbook::options
