// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/cover_fold.h"

#include <algorithm>
#include <cmath>

namespace hangbook::options {

CoverFold::CoverFold(const Case& option, const Settled& settled)
    : room_(option.room), settled_(&settled), place_(coverPlaceOf(option, settled)) {}

bool CoverFold::serves(const Case& option) const {
  return sameCover(room_->audience, place_, coverPlaceOf(option, *settled_));
}

const CoverView& CoverFold::view(const Case& option) {
  if (!view_) {
    view_ = viewOf(option, room_->audience, *settled_);
  }
  return *view_;
}

const std::vector<TrimRange>& CoverFold::stretches(const Case& option) {
  if (!stretches_) {
    stretches_ = known() ? stretchesThatCoverShare(room_->audience, view(option), room_->coverShare)
                         : std::vector<TrimRange>{TrimRange{}};
  }
  return *stretches_;
}

CoverFold::Ranges CoverFold::rangesOf(const CoverView& view) const {
  const Audience& audience = room_->audience;
  Ranges ranges;
  ranges.all.reserve(audience.positions.size());
  for (std::size_t position = 0; position < audience.positions.size(); ++position) {
    const std::size_t first = ranges.all.size();
    for (const CoverView::Source& source : view.sources) {
      const TrimRange range = trimsThatCover(audience, view, source, position);
      if (range.low <= range.high) {
        ranges.all.push_back({range.low, range.high, audience.positions[position].weight});
      }
    }
    if (ranges.all.size() > first + 1) { // join what overlaps, so that no position counts twice
      std::sort(ranges.all.begin() + static_cast<std::ptrdiff_t>(first), ranges.all.end(),
                [](const Stretch& a, const Stretch& b) { return a.low < b.low; });
      std::size_t kept = first;
      for (std::size_t i = first + 1; i < ranges.all.size(); ++i) {
        if (ranges.all[i].low <= ranges.all[kept].high) {
          ranges.all[kept].high = std::max(ranges.all[kept].high, ranges.all[i].high);
        } else {
          ranges.all[++kept] = ranges.all[i];
        }
      }
      ranges.all.resize(kept + 1);
    }
  }
  return ranges;
}

double CoverFold::Ranges::coveredAt(double trimM) const {
  double weight = 0.0;
  for (const Stretch& each : all) {
    weight += trimM >= each.low && trimM <= each.high ? each.weight : 0.0;
  }
  return weight;
}

double CoverFold::Ranges::most() const {
  std::vector<std::pair<double, double>> starts; // trim, weight
  std::vector<std::pair<double, double>> ends;
  for (const Stretch& each : all) {
    starts.emplace_back(each.low, each.weight);
    ends.emplace_back(each.high, each.weight);
  }
  std::ranges::sort(starts);
  std::ranges::sort(ends);
  double covered = 0.0;
  double most = 0.0;
  std::size_t ended = 0;
  for (const auto& [trim, weight] : starts) {
    for (; ends[ended].first < trim; ++ended) { // one that ends where another starts still counts there
      covered -= ends[ended].second;
    }
    covered += weight;
    most = std::max(most, covered);
  }
  return most;
}

double CoverFold::mostPercent(const Case& option) {
  if (!most_) {
    if (known() && !ranges_) {
      ranges_ = rangesOf(view(option));
    }
    most_ = known() && room_->audience.weight > 0.0 ? 100.0 * ranges_->most() / room_->audience.weight : 0.0;
  }
  return *most_;
}

double CoverFold::percentAt(const Case& option, double trimM) {
  const double percent = at(option, trimM).value;
  return std::isnan(percent) ? 0.0 : percent;
}

Use CoverFold::at(const Case& option, double trimM) {
  const Audience& audience = room_->audience;
  return coverUse(*room_, *settled_, trimM, [&](bool inside) {
    std::optional<Ranges>& ranges = inside ? inside_ : ranges_;
    if (!ranges) {
      ranges = rangesOf(inside ? viewOf(option, audience, *settled_, room_->coverMargin) : view(option));
    }
    Covered covered;
    covered.positions = audience.positions.size();
    covered.weight = audience.weight;
    covered.coveredWeight = ranges->coveredAt(trimM);
    return covered;
  });
}

} // namespace hangbook::options
