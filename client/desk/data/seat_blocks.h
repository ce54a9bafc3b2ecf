// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include <QPolygonF>

#include "venue/venue.h"

namespace hangbook::desk {

/// An audience section as lines in plan, venue coordinates in metres (x to the audience, y to stage left).
struct SeatBlock {
  QString name{};
  std::vector<QPolygonF> rows{}; ///< first to last, each from its right end to its left
  /// Lines along the rows at each whole `every` of its depth: they show how deep it is, not where seats
  /// stand.
  std::vector<QPolygonF> depth{};
  bool acrossTheRoom = false; ///< nothing says how wide it is: it is drawn over the whole width
};

/// `halfWidth`, in metres, is how far a block goes either way that is not said to end. None where the section
/// has no floor, or a front line that is not whole.
std::optional<SeatBlock> seatBlock(const venue::Section& section, double halfWidth, double every);

/// One section from the side: height over the distance from the datum, seen from above, to the middle of the
/// row. Metres.
struct SeatProfile {
  QString name{};
  QPolygonF floor{};
  QPolygonF ears{}; ///< empty: their height is not known
};
std::optional<SeatProfile> seatProfile(const venue::Section& section);

} // namespace hangbook::desk
