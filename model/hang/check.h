// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "hang/hang.h"

namespace hangbook::hang {

/// The most that is taken for a real figure; beyond is a slip of the unit or the mark.
inline constexpr double mostLength = 100.0;   ///< m, either way from its origin
inline constexpr double mostMass = 100000.0;  ///< kg
inline constexpr double mostAngleDeg = 180.0; ///< either way
inline constexpr double mostPitch = 1.0;      ///< m
inline constexpr int mostMark = 100000;
inline constexpr std::size_t mostElements = 200;

/// Refuses a bar, stack or chain that is no hang: figures that are missing, not finite or absurd, a pivot
/// anywhere but at the element that the chain holds. Throws Error(badInput), whose place is the key as the
/// exchange form writes it (`stack[2].mass_kg`, counted from 0).
void check(const Bar& bar, const std::vector<Element>& stack, const std::optional<Chain>& chain);

/// Refuses a pull-back that pulls at no element, or that is not told either its force or the tilt to hold.
void check(const Bar& bar, const std::vector<Element>& stack, const PullBack& pull);

/// Refuses a setting that this arrangement of picks does not take.
void check(const Bar& bar, const Setting& set);

} // namespace hangbook::hang
