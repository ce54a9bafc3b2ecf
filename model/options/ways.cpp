// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/ways.h"

#include <algorithm>

namespace hangbook::options {

CandidatePoints candidatePoints(const venue::Venue& venue, const calendar::Hang& hang) {
  CandidatePoints found;
  for (const QString& name : hang.points) {
    const auto point = std::find_if(venue.points.begin(), venue.points.end(),
                                    [&name](const venue::Point& each) { return each.name == name; });
    if (point == venue.points.end()) {
      found.unknown.append(name);
    } else if (std::find(found.points.begin(), found.points.end(), &*point) == found.points.end()) {
      found.points.push_back(&*point);
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
