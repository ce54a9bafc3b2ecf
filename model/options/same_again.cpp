// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/same_again.h"

#include "options/ways.h"
#include "quantity/error.h"

namespace hangbook::options {

std::optional<Option> sameAgain(const Snapshot& snapshot, const OptionKey& before, const Progress& progress) {
  const House house(snapshot.tour.house, snapshot.venue.house, snapshot.show.house);
  const calendar::Hang* hang = catalogue::find(snapshot.show.hangs, before.hang);
  if (hang == nullptr) {
    throw Error(Trouble::badInput,
                "show " + snapshot.show.name.toStdString() + " has no hang " + before.hang.toStdString(),
                "hang");
  }
  const CandidatePoints candidates = candidatePoints(snapshot, house, *hang);
  std::optional<Option> best;
  for (const auto& points : waysToReach(candidates.points, before.picks)) {
    OptionKey key = before;
    key.points.clear();
    for (const venue::Point* point : points) {
      key.points.append(point->name);
    }
    ShowOptions found = decideOnly(snapshot, idOf(key), before.hang, progress);
    for (Option& option : found.hangs.front().options) {
      const bool better = !best || option.verdict < best->verdict ||
                          (option.verdict == best->verdict && option.coveredPercent > best->coveredPercent);
      if (better) {
        best = std::move(option);
      }
    }
  }
  return best;
}

} // namespace hangbook::options
