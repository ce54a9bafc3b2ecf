// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QStringList>

#include "catalogue/bar.h"
#include "options/bridle_pick.h"

namespace hangbook::options {

/// The points that a hang may use, looked up: in the planner's order of preference.
struct CandidatePoints {
  std::vector<const venue::Point*> points; ///< of a bridle: its apex
  Bridles bridles;                         ///< whose apexes stand among `points`: keep them as long
  QStringList unknown;                     ///< named by the hang, but not in the venue's sheet
};
CandidatePoints candidatePoints(const Snapshot& snapshot, const House& house, const calendar::Hang& hang);

/// The real points that a hang may load, by itself or through a bridle.
std::vector<const venue::Point*> pointsWithin(const venue::Venue& venue, const calendar::Hang& hang);

/// Every way of reaching the points with these picks, points in the order of the picks: side pair: each two
/// points, left the one with the greater y; fore-aft pair: each two, front the one with the greater x;
/// single: each point. Where the two stand alike in that direction, the planner's order decides. Whether two
/// points stand as far apart as the picks is for a rule to judge (`lean`), not for this list.
std::vector<std::vector<const venue::Point*>> waysToReach(const std::vector<const venue::Point*>& candidates,
                                                          catalogue::Picks picks);

} // namespace hangbook::options
