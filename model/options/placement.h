// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "options/rule.h"

/// Where a hang stands in its venue. The statics know only the hang's own world: origin midway between the
/// picks (side pair), at the front pick or at the single pick, x the way it faces with neither pan nor swing.
namespace hangbook::options {

/// A place or direction seen from above, venue coordinates, metres.
struct Plan {
  double x{};
  double y{};
  bool operator==(const Plan&) const = default;
};

/// How the hang's world lies in the venue.
struct Placement {
  Plan origin;
  Plan forward{1.0, 0.0}; ///< unit vector: the world's x

  Plan placeOf(hang::Vec3 world) const {
    return {origin.x + world.x * forward.x - world.y * forward.y,
            origin.y + world.x * forward.y + world.y * forward.x};
  }
  Plan directionOf(hang::Vec3 world) const {
    return {world.x * forward.x - world.y * forward.y, world.x * forward.y + world.y * forward.x};
  }
};

/// The picks stand with their middle under the middle of their points. The hang faces square to the line from
/// the right point to the left one (side pair), along the line from the rear point to the front one
/// (fore-aft pair), or along the venue's x (single, or two points in one place).
Placement placementOf(const Case&, const hang::Layout&);

/// Lowest point of the whole hang: every outline corner with width and roll, the bar's outline, and, where
/// the house says that they hang free, the unused links of the chain below the eye that it holds.
struct LowestEdge {
  double z{}; ///< above the hang's origin, so as a rule negative
  bool outlineMissing{};
  bool widthMissing{}; ///< only where roll makes the width matter
  bool tailMissing{};  ///< the chain's number of links or its pitch
  bool known() const { return !outlineMissing && !widthMissing && !tailMissing; }
};
LowestEdge lowestEdge(const Case&, const Settled&);

/// Length of the chain beyond its mark; 0 where there is no chain, NaN where links or pitch are not known.
double unusedChain(const Case&, const Settled&);

/// Height of the hang's origin above the datum when the lowest edge hangs at `trimM`.
double originHeight(const Case&, const Settled&, double trimM);
/// The same of its highest pick.
double highestPick(const Case&, const Settled&, double trimM);

/// Corners of the bar's outline on both sides, in the hang's world; empty where the outline is not known. A
/// width that is not known counts as none.
std::vector<hang::Vec3> barCorners(const Case&, const hang::Layout&);
/// The same of one element, counted from 0.
std::vector<hang::Vec3> cabinetCorners(const Case&, const hang::Layout&, std::size_t element);

/// What counts for a section whose front line is not wholly known: it may lie anywhere, or it is not counted.
enum class UnclearSections { everywhere, nowhere };

/// Height of the audience floor under a place: the highest of the sections that lie there; the datum's own
/// height (0) where none does.
double floorBeneath(const venue::Venue&, Plan place, UnclearSections = UnclearSections::everywhere);

/// Where the sound of an element is taken to leave from: between the two foremost corners of its outline;
/// from its pin where the outline is not known.
hang::Vec3 sourceOf(const hang::PlacedElement&);

} // namespace hangbook::options
