// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>

#include "hang/doubt.h"

namespace hangbook::hang {

/// Two picks, one of them raised, at the unfavourable end of every figure, N.
struct UnevenWorst {
  double raised{}; ///< most that the raised one may carry
  double other{};  ///< least that the other one may carry; below 0 its chain is slack
  double part{};   ///< most of the weight that moves from one to the other, as a part of it
};

/// The hang of `stated` with pick `raised` (0, 1) `rise` metres (0 or more) higher against the other one than
/// it was set, within its doubts. `worst` must be what was found for it.
///
/// The body is rigid. With the picks' line at β, u along it and v square below it, a pick's share is
/// u/L + v tan β/L, so that a rise from β to β′, sin β′ = sin β + rise/L, moves v (tan β′ − tan β)/L of the
/// weight to the raised one. That is greatest with the weight and v at their greatest and L at its least;
/// over β it has one stationary point (β′ = −β), a least, so that an end of what β may be is the greatest.
/// Moved on top of the level loads at their worst, whether or not one corner has all of them. By interval
/// arithmetic (R. E. Moore, Interval Analysis, 1966), as in `doubt.h`.
///
/// Nothing for a single pick, where nothing is bounded, and where some corner would stand more than 60° off
/// level.
std::optional<UnevenWorst> unevenWithin(const Bar& bar, const Doubts& doubts, const Statics& stated,
                                        const Unfavourable& worst, std::size_t raised, double rise);

} // namespace hangbook::hang
