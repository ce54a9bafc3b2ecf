// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>

#include "options/placement.h"

/// Which of the audience lies in the vertical cover of a stack. Each position is judged in the vertical plane
/// through it and the hang: the hang's bearing decides which cabinet aims how high, the distance is taken in
/// plan, so a section beside the hang's line stands at its own distance. A cabinet's small roll is left out.
namespace hangbook::options {

/// A sampled ear in the audience.
struct AudiencePosition {
  double x = 0.0;
  double yFrom = 0.0; ///< what its section spans across; infinite where it is the whole width
  double yTo = 0.0;
  double ear = 0.0; ///< height above the datum
  int section = 0;
};

/// What a cabinet covers, in degrees against its forward direction, and how far.
struct CoverEdges {
  std::size_t element = 0; ///< counted from 0 at the bar
  double lowestDeg = notKnown;
  double highestDeg = notKnown;
  double throwM = notKnown;
};

struct Audience {
  std::vector<AudiencePosition> positions; ///< in the order of the sections, each from its first row on
  QStringList sections;
  std::vector<CoverEdges> cabinets; ///< those that are there to cover, from the bar down
  QStringList missing;              ///< what cover needs and nobody stated, in words
};

/// Distance between two sampled positions along a section's profile.
inline constexpr double audienceStepM = 0.5;

/// All positions of the sections that the hang must cover, and the cabinets' figures.
Audience audienceOf(const Case&);

/// Distance in plan from the hang's origin to each position, 0 for what is not in front of it; and where each
/// covering cabinet's sound leaves from. Same order as `Audience`.
struct CoverView {
  struct Source {
    double ahead = 0.0;  ///< of the origin, in plan
    double height = 0.0; ///< above the lowest edge
    double slopeLow = 0.0;
    double slopeHigh = 0.0; ///< tan of the elevation of the edges; infinite at and beyond upright
    double throwM = 0.0;
  };
  std::vector<double> distance;
  std::vector<Source> sources;
};
/// Bearing of the hang in the venue: the unit vector in plan of the way its frame faces.
Plan bearingOf(const Placement&, const hang::Layout&);

/// How far a place of a section (`x` along, spanning `yFrom` to `yTo` across) stands from a hang, in plan: to
/// the place in that row that is nearest to the hang's line; negative behind it.
double distanceInPlan(Plan origin, Plan bearing, double x, double yFrom, double yTo);

/// `insideDeg`: how much is taken off each edge.
CoverView viewOf(const Case&, const Audience&, const Settled&, double insideDeg = 0.0);

/// The trims at which this source covers a position: closed form, since raising the hang by a metre raises
/// the source by a metre. Empty (low above high) where none does.
TrimRange trimsThatCover(const CoverView::Source&, double distance, double ear);

/// What is covered at one trim.
struct Covered {
  std::size_t positions = 0;
  std::size_t covered = 0;
  int firstMissed = -1; ///< number of the position, counted from 0
  int lastMissed = -1;
  double percent() const {
    return positions == 0 ? notKnown : 100.0 * static_cast<double>(covered) / static_cast<double>(positions);
  }
};
Covered coveredAt(const Audience&, const CoverView&, double trimM);
/// The same for one position, counted from 0.
bool isCovered(const Audience&, const CoverView&, std::size_t position, double trimM);

/// All stretches of trim in which at least `percent` of the positions are covered, from the lowest up: the
/// covered share is a step function of the trim, and it may be reached in several separate stretches.
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
