// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "options/cover_fold.h"
#include "options/judge_case.h"

namespace hangbook::options {

/// Cover of each setting of a rig: the same for every hoist and for points side by side, so worked out once.
using CoverRanges = std::vector<std::optional<CoverFold>>;

struct Best {
  std::size_t setting{}; ///< in Settings::settled
  double trimM = notKnown;
  bool allFail{};                 ///< proven; `setting` then only says which one is shown
  std::vector<BoundCount> bounds; ///< settings that a bound decided
};

/// Settings that are tried before it is proven whether any can do better.
inline constexpr std::size_t nearTried = 48;

/// The best of a case's settings, of which there is at least one: least verdict of the rules that depend on
/// the setting (the others, such as stock, are the same at all of them); then most cover; then the
/// topmost covering cabinet's aim nearest to the wanted one (its upper edge of cover on the last row); then
/// the held cabinet's aim nearest to the one that lets its upper edge of cover meet the lower edge of the
/// cabinet above it; then the shorter chain. Trim: the middle of the window; where no trim covers enough,
/// that of nine places in the window without cover that covers most, the nearest to the middle of those.
///
/// Settings are taken in the order of the last three, so the first that reaches both the least verdict that
/// any setting can reach (the worst of each rule's best over all settings) and full cover is the best; the
/// rest is decided by that bound (`best-found`). A setting of which a weight rule without any lean already
/// says worse than the best so far is not tried (`no-better`), nor, once the least verdict is reached, one
/// that covers no more at its trim (`no-better`, by `cover`). Where the least verdict is `fails`, every
/// setting fails (`all-fail`, by the rule that does, `cover`, or the trims that the rules leave); the one
/// shown is then that of the `nearTried` first ones with the fewest failing rules, then the least beyond
/// their limits; with `triedFirst` 0 none is tried for that, and `setting` says nothing. Rules that rise with
/// the picks' loads are asked at the corners of all settings at once
/// (`box.h`).
Best bestOf(const Case& option, const std::vector<Settled>& settings, CoverRanges& ranges,
            std::size_t triedFirst = nearTried);

} // namespace hangbook::options
