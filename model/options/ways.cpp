// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/ways.h"

#include <algorithm>

namespace hangbook::options {

CandidatePoints candidatePoints(const Snapshot& snapshot, const House& house, const calendar::Hang& hang) {
  CandidatePoints found;
  QStringList names = hang.points;
  names.removeDuplicates();
  for (const QString& name : names) {
    if (const auto* point = catalogue::find(snapshot.venue.points, name)) {
      found.points.push_back(point);
    } else if (const auto* bridle = catalogue::find(snapshot.venue.bridles, name)) {
      found.bridles.push_back(bridledPick(snapshot, house, *bridle));
      found.points.push_back(&found.bridles.back()->apex);
    } else {
      found.unknown.append(name);
    }
  }
  return found;
}

std::vector<const venue::Point*> pointsWithin(const venue::Venue& venue, const calendar::Hang& hang) {
  std::vector<const venue::Point*> found;
  const auto add = [&](const QString& name) {
    const auto* point = catalogue::find(venue.points, name);
    if (point != nullptr && std::find(found.begin(), found.end(), point) == found.end()) {
      found.push_back(point);
    }
  };
  for (const QString& name : hang.points) {
    add(name);
    if (const auto* bridle = catalogue::find(venue.bridles, name)) {
      std::for_each(bridle->points.begin(), bridle->points.end(), add);
    }
  }
  return found;
}

std::vector<std::vector<const venue::Point*>> waysToReach(const std::vector<const venue::Point*>& candidates,
                                                          catalogue::Picks picks) {
  std::vector<std::vector<const venue::Point*>> ways;
  if (picks == catalogue::Picks::single) {
    for (const venue::Point* point : candidates) {
      ways.push_back({point});
    }
    return ways;
  }
  const bool side = picks == catalogue::Picks::sidePair;
  for (std::size_t i = 0; i < candidates.size(); ++i) {
    for (std::size_t j = i + 1; j < candidates.size(); ++j) {
      const venue::Point* first = candidates[i];
      const venue::Point* second = candidates[j];
      if (side ? second->y > first->y : second->x > first->x) {
        std::swap(first, second);
      }
      ways.push_back({first, second});
    }
  }
  return ways;
}

} // namespace hangbook::options
