// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <vector>

/// A leg made up from steels of the lengths that there are, joined by shackles.
namespace hangbook::hang {

/// Steels of one length.
struct SteelLength {
  double length{}; ///< m, bearing to bearing
  int available{}; ///< how many may be used in this leg
};

struct MakeUpWish {
  double length{};    ///< m, from point to apex
  double tolerance{}; ///< m, either way
  double shackle{};   ///< m, what one shackle adds, bearing to bearing
  int mostSteels = 6;
  /// Shackles beyond the one above each steel and the one at the apex, to come nearer to the length.
  int moreShackles = 3;
};

struct MakeUp {
  std::vector<int> steels; ///< how many of each length, in the order of the list
  int shackles{};
  double length{};
  int pieces() const;
};

/// Of all make-ups within the tolerance the one of fewest steels; of those the one of fewest shackles, then
/// the nearest to the wanted length, then the one that takes more of the steels that stand first in the list.
/// Exact: every combination is looked at. None where none comes near enough. Throws Error(badInput) for a
/// length that is not above 0 or a wish that is no number (tolerance and shackle: at least 0), and for more
/// than 40 lengths or 12 steels.
std::optional<MakeUp> shortestMakeUp(std::span<const SteelLength> steels, const MakeUpWish& wish);

} // namespace hangbook::hang
