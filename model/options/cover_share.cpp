// SPDX-License-Identifier: GPL-3.0-or-later
// How much of the audience is covered, at one trim and over all trims.
#include <algorithm>
#include <cmath>

#include "options/cover.h"
#include "options/ear_columns.h"

namespace hangbook::options {
namespace {

constexpr double infinite = std::numeric_limits<double>::infinity();

/// Where a stretch of trim that covers a position starts or ends.
struct Event {
  double trim{};
  double weight{};
};

bool earlier(const Event& a, const Event& b) {
  return a.trim < b.trim;
}

/// The earliest trim by which events of at least `wanted` have come; their sum is that or more. Found by
/// halving, so that not all need be sorted.
template <class Before>
double trimByWhich(std::vector<Event>& events, double wanted, Before before) {
  auto from = events.begin();
  auto to = events.end();
  while (to - from > 1) {
    const auto middle = from + (to - from) / 2;
    std::nth_element(from, middle, to, before);
    double sum{}; // of what comes before the middle one
    for (auto each = from; each != middle; ++each) {
      sum += each->weight;
    }
    if (sum >= wanted) {
      to = middle;
    } else {
      wanted -= sum;
      from = middle;
    }
  }
  return from->trim;
}

/// Each position is covered over a few stretches of trim; what is covered rises where one starts and falls
/// behind where one ends.
class Sweep {
public:
  Sweep(const Audience& audience, const CoverColumns& columns) : audience_(audience), columns_(columns) {}

  void add(std::size_t position) {
    ranges_.clear();
    for (std::size_t source = 0; source < columns_.sources(); ++source) {
      const TrimRange range = columns_.at(source, position);
      if (holdsAny(range)) {
        ranges_.push_back(range);
      }
    }
    joinOverlapping(ranges_);
    const double weight = audience_.positions[position].weight;
    reachable_ += ranges_.empty() ? 0.0 : weight;
    for (const TrimRange& range : ranges_) {
      starts_.push_back({range.low, weight});
      ends_.push_back({range.high, weight});
    }
  }

  std::vector<TrimRange> stretches(double wanted) {
    if (reachable_ < wanted) {
      return {};
    }
    // No stretch can start before enough has started, nor end after too little is left to end: what lies
    // outside is only summed.
    const double first = trimByWhich(starts_, wanted, earlier);
    const double last =
        trimByWhich(ends_, wanted, [](const Event& a, const Event& b) { return a.trim > b.trim; });
    if (first > last) {
      return {};
    }
    const double startedBefore = keepWithin(starts_, first, last);
    const double covered = startedBefore - keepWithin(ends_, first, last);
    return walk(covered, wanted);
  }

private:
  /// Takes out what lies outside and answers what came before.
  static double keepWithin(std::vector<Event>& events, double first, double last) {
    double before{};
    for (const Event& each : events) {
      before += each.trim < first ? each.weight : 0.0;
    }
    std::erase_if(events, [&](const Event& each) { return each.trim < first || each.trim > last; });
    std::sort(events.begin(), events.end(), earlier);
    return before;
  }

  std::vector<TrimRange> walk(double covered, double wanted) const {
    std::vector<TrimRange> stretches;
    std::size_t start = 0;
    double since = infinite;
    for (const Event& end : ends_) {
      for (; start < starts_.size() && starts_[start].trim <= end.trim; ++start) {
        const bool had = covered >= wanted;
        covered += starts_[start].weight;
        if (!had && covered >= wanted) {
          since = starts_[start].trim;
        }
      }
      const bool had = covered >= wanted;
      covered -= end.weight;
      if (had && covered < wanted) {
        stretches.push_back({since, end.trim});
      }
    }
    return stretches;
  }

  const Audience& audience_;
  const CoverColumns& columns_;
  std::vector<TrimRange> ranges_;
  std::vector<Event> starts_;
  std::vector<Event> ends_;
  double reachable_{}; ///< what is covered at some trim
};

/// Corners of each block and the middles of its sides: as a rule one of them decides.
std::vector<std::size_t> fewOf(const Audience& audience) {
  std::vector<std::size_t> few;
  for (const AudienceBlock& block : audience.blocks) {
    const std::size_t rows = block.count / block.seats;
    for (const std::size_t row : {std::size_t{0}, rows / 2, rows - 1}) {
      for (const std::size_t seat : {std::size_t{0}, block.seats / 2, block.seats - 1}) {
        few.push_back(block.first + row * block.seats + seat);
      }
    }
  }
  std::sort(few.begin(), few.end());
  few.erase(std::unique(few.begin(), few.end()), few.end());
  return few;
}

/// Whether a few positions already show that no trim reaches the share.
bool showNoTrim(const Audience& audience, const CoverColumns& columns, double wanted) {
  Sweep sweep(audience, columns);
  double weight = 0.0;
  for (const std::size_t position : fewOf(audience)) {
    sweep.add(position);
    weight += audience.positions[position].weight;
  }
  const double wantedOfThem = weight - (audience.weight - wanted);
  return wantedOfThem > 0.0 && sweep.stretches(wantedOfThem).empty();
}

void count(Covered& into, const Audience& audience, const CoverView& view, double trimM,
           std::size_t position) {
  const double weight = audience.positions[position].weight;
  ++into.positions;
  into.weight += weight;
  if (isCovered(audience, view, position, trimM)) {
    ++into.covered;
    into.coveredWeight += weight;
  } else {
    into.firstMissed = into.firstMissed < 0 ? static_cast<int>(position) : into.firstMissed;
    into.lastMissed = static_cast<int>(position);
  }
}

/// Whether an ear lies on the inner side of one edge of a source's cover.
bool within(const CoverView::Source& source, std::size_t edge, const AudiencePosition& at, double trimM) {
  const hang::Vec3& inside = source.inside[edge];
  return inside.x * (at.x - source.place.x) + inside.y * (at.yFrom - source.place.y) +
             inside.z * (at.ear - source.height - trimM) >=
         0.0;
}

/// Below the lower edge of `above` and above the upper edge of `below`.
bool between(const Audience& audience, const CoverView& view, std::size_t above, std::size_t position,
             double trimM) {
  const CoverView::Source& high = view.sources[above];
  const CoverView::Source& low = view.sources[above + 1];
  const AudiencePosition& at = audience.positions[position];
  if (audience.blocks[static_cast<std::size_t>(at.section)].swept) {
    const auto across = [&](const CoverView::Source& source) {
      return within(source, 2, at, trimM) && within(source, 3, at, trimM);
    };
    return !within(high, 0, at, trimM) && !within(low, 1, at, trimM) && across(high) && across(low);
  }
  const double fromHigh = view.distance[position] - high.ahead;
  const double fromLow = view.distance[position] - low.ahead;
  return fromHigh > 0.0 && fromLow > 0.0 && at.ear - high.height - trimM < fromHigh * high.slopeLow &&
         at.ear - low.height - trimM > fromLow * low.slopeHigh;
}

} // namespace

void joinOverlapping(std::vector<TrimRange>& ranges) {
  if (ranges.empty()) {
    return;
  }
  std::ranges::sort(ranges, {}, &TrimRange::low);
  std::size_t kept = 0;
  for (std::size_t i = 1; i < ranges.size(); ++i) {
    if (ranges[i].low <= ranges[kept].high) {
      ranges[kept].high = std::max(ranges[kept].high, ranges[i].high);
    } else {
      ranges[++kept] = ranges[i];
    }
  }
  ranges.resize(kept + 1);
}

double weightFor(double percent, double total) {
  const double wanted = percent / 100.0 * total;
  return std::max(0.0, std::ceil(wanted - std::max(1e-9, 1e-12 * total)));
}

Covered coveredAt(const Audience& audience, const CoverView& view, double trimM) {
  Covered result;
  for (std::size_t i = 0; i < audience.positions.size(); ++i) {
    count(result, audience, view, trimM, i);
  }
  return result;
}

Covered coveredAt(const Audience& audience, const CoverView& view, double trimM, std::size_t section) {
  Covered result;
  const AudienceBlock& block = audience.blocks[section];
  for (std::size_t i = block.first; i < block.first + block.count; ++i) {
    count(result, audience, view, trimM, i);
  }
  return result;
}

std::vector<CoverHole> holesAt(const Audience& audience, const CoverView& view, double trimM) {
  std::vector<CoverHole> holes;
  for (std::size_t above = 0; above + 1 < view.sources.size(); ++above) {
    CoverHole hole;
    hole.above = above;
    for (std::size_t i = 0; i < audience.positions.size(); ++i) {
      if (between(audience, view, above, i, trimM) && !isCovered(audience, view, i, trimM)) {
        hole.first = hole.positions == 0 ? i : hole.first;
        ++hole.positions;
      }
    }
    if (hole.positions > 0) {
      holes.push_back(hole);
    }
  }
  return holes;
}

std::vector<TrimRange> stretchesThatCoverShare(const Audience& audience, const CoverColumns& columns,
                                               double percent) {
  const double wanted = weightFor(percent, audience.weight);
  if (wanted == 0.0) {
    return {TrimRange{}};
  }
  if (showNoTrim(audience, columns, wanted)) {
    return {};
  }
  Sweep sweep(audience, columns);
  for (std::size_t i = 0; i < audience.positions.size(); ++i) {
    sweep.add(i);
  }
  return sweep.stretches(wanted);
}

std::vector<TrimRange> stretchesThatCoverShare(const Audience& audience, const CoverView& view,
                                               double percent) {
  return stretchesThatCoverShare(
      audience, coverColumns(audience, view.sources, view.distance, EarColumns(audience)), percent);
}

TrimRange widestWithin(const std::vector<TrimRange>& stretches, const TrimRange& room) {
  TrimRange best{infinite, -infinite};
  double most = -infinite;
  for (const TrimRange& each : stretches) {
    const double inside = std::min(each.high, room.high) - std::max(each.low, room.low);
    if (inside > most && inside >= 0.0) {
      most = inside;
      best = each;
    }
  }
  if (most >= 0.0) {
    return best;
  }
  for (const TrimRange& each : stretches) {
    if (best.low > best.high || each.high - each.low > best.high - best.low) {
      best = each;
    }
  }
  return best;
}

TrimRange trimsThatCoverShare(const Audience& audience, const CoverView& view, double percent) {
  return widestWithin(stretchesThatCoverShare(audience, view, percent), {});
}

} // namespace hangbook::options
