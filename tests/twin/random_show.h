// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>

#include "options/snapshot.h"

namespace hangbook::testing {

/// A small invented system in a small invented venue, with one hang “left”: few enough settings for all of
/// them to be judged one by one. The same seed gives the same show. Every kind of joint and pick, chains,
/// bridles, zones, low steel, obstructions, wind and figures that nobody stated occur; verdicts of all kinds
/// come out.
options::Snapshot randomShow(std::uint64_t seed);

/// The most cabinets in one of its stacks.
inline constexpr int mostInRandomStack = 4;

} // namespace hangbook::testing
