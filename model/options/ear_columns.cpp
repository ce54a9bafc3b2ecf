// SPDX-License-Identifier: GPL-3.0-or-later
// Loops over columns, whose machine code takes several ears at a time (see CMakeLists.txt).
#include "options/ear_columns.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace hangbook::options {
namespace {

constexpr double infinite = std::numeric_limits<double>::infinity();

/// The same figures as `trimsThatCover` along the hang's line, ear by ear.
void alongTheLine(const CoverView::Source& source, std::size_t ears, const double* __restrict distance,
                  const double* __restrict height, double* __restrict low, double* __restrict high) {
  const double most = source.throwM * source.throwM;
  for (std::size_t i = 0; i < ears; ++i) {
    const double away = distance[i] - source.ahead;
    const double left = most - away * away;
    const double reach = std::sqrt(std::max(left, 0.0));
    const double from = std::max(height[i] - away * source.slopeHigh, height[i] - reach);
    const double to = std::min(height[i] - away * source.slopeLow, height[i] + reach);
    const bool covers = (away > 0.0) & (left >= 0.0);
    low[i] = covers ? from - source.height + source.off : infinite;
    high[i] = covers ? to - source.height - source.off : -infinite;
  }
}

} // namespace

EarColumns::EarColumns(const Audience& audience) {
  height_.reserve(audience.positions.size());
  weight_.reserve(audience.positions.size());
  for (const AudiencePosition& each : audience.positions) {
    height_.push_back(each.ear);
    weight_.push_back(static_cast<std::int64_t>(each.weight));
  }
}

const std::vector<double>& EarColumns::distanceFrom(const Audience& audience, const CoverPlace& place) {
  if (!place_ || !(*place_ == place)) {
    distance_ = distancesFrom(audience, place);
    place_ = place;
  }
  return distance_;
}

std::int64_t CoverColumns::coveredAt(const std::vector<std::int64_t>& weight, double trimM) const {
  const auto covers = [&](std::size_t at) {
    return -static_cast<std::int64_t>((trimM >= low[at]) & (trimM <= high[at])); // all bits or none
  };
  std::int64_t sum = 0;
  if (sources() == 1) {
    for (std::size_t i = 0; i < ears; ++i) {
      sum += covers(i) & weight[i];
    }
  } else if (sources() == 2) {
    for (std::size_t i = 0; i < ears; ++i) {
      sum += (covers(i) | covers(ears + i)) & weight[i];
    }
  } else {
    for (std::size_t i = 0; i < ears; ++i) {
      std::int64_t covered = 0;
      for (std::size_t at = i; at < low.size(); at += ears) {
        covered |= covers(at);
      }
      sum += covered & weight[i];
    }
  }
  return sum;
}

CoverColumns coverColumns(const Audience& audience, const std::vector<CoverView::Source>& sources,
                          const std::vector<double>& distance, const EarColumns& columns) {
  CoverColumns found;
  found.ears = audience.positions.size();
  found.low.resize(found.ears * sources.size());
  found.high.resize(found.low.size());
  for (std::size_t source = 0; source < sources.size(); ++source) {
    for (std::size_t number = 0; number < audience.blocks.size(); ++number) {
      const AudienceBlock& block = audience.blocks[number];
      const std::size_t into = source * found.ears + block.first;
      if (!block.swept) {
        alongTheLine(sources[source], block.count, distance.data() + block.first,
                     columns.height().data() + block.first, found.low.data() + into,
                     found.high.data() + into);
        continue;
      }
      for (std::size_t i = 0; i < block.count; ++i) {
        const AudiencePosition& at = audience.positions[block.first + i];
        const TrimRange range = trimsThatCover(sources[source], hang::Vec3{at.x, at.yFrom, at.ear});
        found.low[into + i] = range.low;
        found.high[into + i] = range.high;
      }
    }
  }
  return found;
}

} // namespace hangbook::options
