// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>

#include <QStringList>

#include "options/placement.h"

/// Which of the audience lies in the cover of a stack. A section without a front line of its own is judged in
/// the vertical plane through each row and the hang: the hang's bearing decides which cabinet aims how high,
/// the distance is taken in plan, so such a section beside the hang's line stands at its own distance; roll
/// and what a cabinet covers across are left out. A section with a front line is judged seat by seat in
/// space: the seat lies between four planes through the source (upper, lower, left and right edge of cover),
/// turned with the cabinet's aim, pan and roll.
namespace hangbook::options {

/// A sampled ear in the audience.
struct AudiencePosition {
  double x{};
  double yFrom{}; ///< what its row spans across; infinite where it is the whole width; both the same: a seat
  double yTo{};
  double ear{}; ///< height above the datum
  int section{};
  double behind{}; ///< a seat's row: this far behind the front line, along the floor's plan
  double side{};   ///< and this far along the row to the left of its middle, seen from the front line
  /// Its share of the audience: floor area in cm², in whole ones so that sums are exact; 1 for each where no
  /// section has a front line.
  double weight{};
};

/// What a cabinet covers, in degrees against its forward direction, and how far.
struct CoverEdges {
  std::size_t element{}; ///< counted from 0 at the bar
  double lowestDeg = notKnown;
  double highestDeg = notKnown;
  double throwM = notKnown;
  double acrossDeg = notKnown; ///< from its left to its right edge
};

/// The positions of one section: `seats` a row, the rows from the first to the last, each from right to left.
struct AudienceBlock {
  std::size_t first{};
  std::size_t count{};
  std::size_t seats{};
  bool swept{};
};

struct Audience {
  std::vector<AudiencePosition> positions; ///< in the order of the sections, each from its first row on
  QStringList sections;
  std::vector<AudienceBlock> blocks; ///< one for each section
  double weight{};                   ///< of all positions
  std::vector<CoverEdges> cabinets;  ///< those that are there to cover, from the bar down
  QStringList missing;               ///< what cover needs and nobody stated, in words

  bool anySwept() const;
};

/// Distance between two sampled positions along a section's profile, and the most between two in one row.
inline constexpr double audienceStepM = 0.5;
inline constexpr double audienceStepAcrossM = 1.0;

/// All positions of the sections that the hang must cover, and the cabinets' figures.
Audience audienceOf(const Case&);

/// Adds one section's positions, or what is missing of it. `weighed`: by floor area.
void addSection(Audience&, const venue::Section&, bool weighed);

/// Distance in plan from the hang's origin to each position, 0 for what is not in front of it; and where each
/// covering cabinet's sound leaves from. Same order as `Audience`.
struct CoverView {
  struct Source {
    double ahead{};  ///< of the origin, in plan
    double height{}; ///< above the lowest edge
    double slopeLow{};
    double slopeHigh{}; ///< tan of the elevation of the edges; infinite at and beyond upright
    double throwM{};
    Plan place; ///< in the venue
    /// Unit vectors square to the lower, upper, right and left edge of cover, pointing inside, venue frame;
    /// not worked out where no section has a front line.
    std::array<hang::Vec3, 4> inside;
    double off{}; ///< m, by which its height may be off, either way
  };
  std::vector<double> distance;
  std::vector<Source> sources;
};

/// A cabinet in space, unit vectors in the venue's frame.
struct SourceDirections {
  hang::Vec3 forward;
  hang::Vec3 left;
};
/// The four edges of a cabinet's cover, `insideDeg` taken off each.
std::array<hang::Vec3, 4> insideEdges(const SourceDirections&, const CoverEdges&, double insideDeg);

/// Bearing of the hang in the venue: the unit vector in plan of the way its frame faces.
Plan bearingOf(const Placement&, const hang::Layout&);

/// How far a place of a section (`x` along, spanning `yFrom` to `yTo` across) stands from a hang, in plan: to
/// the place in that row that is nearest to the hang's line; negative behind it.
double distanceInPlan(Plan origin, Plan bearing, double x, double yFrom, double yTo);

/// Where a hang stands and which way it faces, as far as cover knows.
struct CoverPlace {
  Plan origin;
  Plan bearing;
  bool operator==(const CoverPlace&) const = default;
};
CoverPlace coverPlaceOf(const Case&, const Settled&);
/// Whether one setting covers the same at both, to the bit: they stand in one place, or side by side so that
/// the hang's line crosses every row within its ends from either.
bool sameCover(const Audience&, const CoverPlace&, const CoverPlace&);

/// Distance in plan from a hang's place to each position, 0 for what is not in front of it.
std::vector<double> distancesFrom(const Audience&, const CoverPlace&);
/// Where each covering cabinet's sound leaves from, and what it covers; `insideDeg` is taken off each edge.
std::vector<CoverView::Source> sourcesOf(const Case&, const Audience&, const Settled&,
                                         double insideDeg = 0.0);
/// How far ahead of the hang's origin a covering cabinet's sound leaves, and how high above the lowest edge.
struct SourcePlace {
  double ahead{};
  double height{};
};
SourcePlace sourcePlace(const Case&, const CoverEdges&, const Settled&);
/// Both; `insideDeg`: how much is taken off each edge.
CoverView viewOf(const Case&, const Audience&, const Settled&, double insideDeg = 0.0);

/// The trims at which this source covers a position: closed form, since raising the hang by a metre raises
/// the source by a metre. Empty (low above high) where none does. First in a vertical plane, then in space.
TrimRange trimsThatCover(const CoverView::Source&, double distance, double ear);
TrimRange trimsThatCover(const CoverView::Source&, hang::Vec3 ear);
/// Whichever of them is meant for the position, counted from 0.
TrimRange trimsThatCover(const Audience&, const CoverView&, const CoverView::Source&, std::size_t position);

/// Whether there is any trim in it; its ends belong to it.
inline bool holdsAny(const TrimRange& range) {
  return range.low <= range.high;
}

/// How much of `total` makes up the share: with whole weights a share that falls between two asks for the
/// higher.
double weightFor(double percent, double total);

/// What is covered at one trim.
struct Covered {
  std::size_t positions{};
  std::size_t covered{};
  double weight{}; ///< of all positions
  double coveredWeight{};
  int firstMissed = -1; ///< number of the position, counted from 0
  int lastMissed = -1;
  double percent() const { return positions == 0 ? notKnown : 100.0 * coveredWeight / weight; }
  bool reaches(double percent) const { return positions != 0 && coveredWeight >= weightFor(percent, weight); }
};
Covered coveredAt(const Audience&, const CoverView&, double trimM);
/// The same of one section, counted from 0.
Covered coveredAt(const Audience&, const CoverView&, double trimM, std::size_t section);
/// The same for one position, counted from 0.
bool isCovered(const Audience&, const CoverView&, std::size_t position, double trimM);

/// What no cabinet covers although it lies between two that do: below the lower edge of one covering cabinet
/// and above the upper edge of the next below it.
struct CoverHole {
  std::size_t above{}; ///< of `Audience::cabinets`
  std::size_t positions{};
  std::size_t first{}; ///< the first position in it
};
std::vector<CoverHole> holesAt(const Audience&, const CoverView&, double trimM);

/// Joins what overlaps or touches; none of them is empty, and there are a handful at most.
void joinOverlapping(std::vector<TrimRange>&);

struct CoverColumns; // ear_columns.h
/// All stretches of trim in which at least `percent` of the audience is covered, from the lowest up: the
/// covered share is a step function of the trim, and it may be reached in several separate stretches.
std::vector<TrimRange> stretchesThatCoverShare(const Audience&, const CoverColumns&, double percent);
std::vector<TrimRange> stretchesThatCoverShare(const Audience&, const CoverView&, double percent);

/// The stretch of which most lies within `room` (the lowest of equally good ones); where none reaches into
/// it, the widest of all. Empty (low above high) where there is none.
TrimRange widestWithin(const std::vector<TrimRange>& stretches, const TrimRange& room);

/// The widest of those stretches. Empty (low above high) where no trim reaches the share.
TrimRange trimsThatCoverShare(const Audience&, const CoverView&, double percent);

/// How far the topmost covering cabinet aims above (positive) the aim that puts its upper edge of cover on
/// the last row; NaN where something for it is not known. The wanted aim is the setting where this is least.
double aimAboveWantedDeg(const Case&, const Settled&, double trimM);

} // namespace hangbook::options
