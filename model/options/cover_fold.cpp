// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/cover_fold.h"

#include <algorithm>
#include <cmath>

#include "options/rig_fold.h"

namespace hangbook::options {

std::int64_t mostCovered(const CoverColumns& columns, const std::vector<std::int64_t>& weight) {
  std::vector<std::pair<double, std::int64_t>> starts; // trim, weight
  std::vector<std::pair<double, std::int64_t>> ends;
  std::vector<TrimRange> ranges;
  for (std::size_t ear = 0; ear < columns.ears; ++ear) {
    ranges.clear();
    for (std::size_t source = 0; source < columns.sources(); ++source) {
      const TrimRange range = columns.at(source, ear);
      if (holdsAny(range)) {
        ranges.push_back(range);
      }
    }
    joinOverlapping(ranges); // so that no ear counts twice
    for (const TrimRange& range : ranges) {
      starts.emplace_back(range.low, weight[ear]);
      ends.emplace_back(range.high, weight[ear]);
    }
  }
  std::ranges::sort(starts);
  std::ranges::sort(ends);
  std::int64_t covered = 0;
  std::int64_t most = 0;
  std::size_t ended = 0;
  for (const auto& [trim, each] : starts) {
    for (; ends[ended].first < trim; ++ended) { // one that ends where another starts still counts there
      covered -= ends[ended].second;
    }
    covered += each;
    most = std::max(most, covered);
  }
  return most;
}

namespace {

std::shared_ptr<EarColumns> earsOf(const Case& option) {
  return option.fold == nullptr ? std::make_shared<EarColumns>(option.room->audience)
                                : option.fold->ears(option.room->audience);
}

} // namespace

CoverFold::CoverFold(const Case& option, const Settled& settled)
    : room_(option.room), ears_(earsOf(option)), settled_(&settled), place_(coverPlaceOf(option, settled)) {}

bool CoverFold::serves(const Case& option) const {
  return sameCover(room_->audience, place_, coverPlaceOf(option, *settled_));
}

CoverColumns CoverFold::columns(const Case& option, double insideDeg) {
  const Audience& audience = room_->audience;
  return coverColumns(audience, sourcesOf(option, audience, *settled_, insideDeg),
                      ears_->distanceFrom(audience, place_), *ears_);
}

const CoverColumns& CoverFold::exact(const Case& option) {
  if (!exact_) {
    exact_ = columns(option, 0.0);
  }
  return *exact_;
}

const std::vector<TrimRange>& CoverFold::stretches(const Case& option) {
  if (!stretches_) {
    stretches_ = known() ? stretchesThatCoverShare(room_->audience, exact(option), room_->coverShare)
                         : std::vector<TrimRange>{TrimRange{}};
  }
  return *stretches_;
}

double CoverFold::mostPercent(const Case& option) {
  if (!most_) {
    most_ = known() && room_->audience.weight != 0.0
                ? 100.0 * static_cast<double>(mostCovered(exact(option), ears_->weight())) /
                      room_->audience.weight
                : 0.0;
  }
  return *most_;
}

double CoverFold::percentAt(const Case& option, double trimM) {
  return at(option, trimM).value;
}

Use CoverFold::at(const Case& option, double trimM) {
  const Audience& audience = room_->audience;
  return coverUse(*room_, *settled_, trimM, [&](bool inside) {
    if (inside && !inside_) {
      inside_ = columns(option, room_->coverMargin);
    }
    Covered covered;
    covered.positions = audience.positions.size();
    covered.weight = audience.weight;
    covered.coveredWeight =
        static_cast<double>((inside ? *inside_ : exact(option)).coveredAt(ears_->weight(), trimM));
    return covered;
  });
}

} // namespace hangbook::options
