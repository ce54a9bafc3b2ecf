// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/cover.h"

#include <algorithm>
#include <cmath>

#include "options/room_limits.h"

namespace hangbook::options {
namespace {

constexpr double infinite = std::numeric_limits<double>::infinity();

void addSection(const venue::Section& section, int number, double ear, std::vector<AudiencePosition>& into) {
  const double yFrom = section.yFrom ? inMetres(*section.yFrom) : -infinite;
  const double yTo = section.yTo ? inMetres(*section.yTo) : infinite;
  double next = 0.0; // along the profile from the last corner to the next position
  for (std::size_t i = 1; i < section.profile.size(); ++i) {
    const double x = inMetres(section.profile[i - 1].x);
    const double z = inMetres(section.profile[i - 1].z);
    const double dx = inMetres(section.profile[i].x) - x;
    const double dz = inMetres(section.profile[i].z) - z;
    const double length = std::hypot(dx, dz);
    while (next < length) {
      into.push_back({x + dx * next / length, yFrom, yTo, z + dz * next / length + ear, number});
      next += audienceStepM;
    }
    next -= length;
  }
  const venue::ProfilePoint& end = section.profile.back();
  into.push_back({inMetres(end.x), yFrom, yTo, inMetres(end.z) + ear, number});
}

/// Slope of an elevation; infinite at and beyond upright.
double slopeOf(double elevationDeg) {
  if (elevationDeg >= 90.0) {
    return infinite;
  }
  return elevationDeg <= -90.0 ? -infinite : std::tan(hang::toRadians(elevationDeg));
}

/// Joins what overlaps or touches; `ranges` holds no empty ones. A handful at most.
void mergeInPlace(std::vector<TrimRange>& ranges) {
  std::sort(ranges.begin(), ranges.end(),
            [](const TrimRange& a, const TrimRange& b) { return a.low < b.low; });
  std::size_t kept = 0;
  for (std::size_t i = 1; i < ranges.size(); ++i) {
    if (ranges[i].low <= ranges[kept].high) {
      ranges[kept].high = std::max(ranges[kept].high, ranges[i].high);
    } else {
      ranges[++kept] = ranges[i];
    }
  }
  ranges.resize(ranges.empty() ? 0 : kept + 1);
}

/// How many positions make up the share; a share that falls between two asks for the higher.
std::size_t positionsFor(double percent, std::size_t positions) {
  const double wanted = percent / 100.0 * static_cast<double>(positions);
  return static_cast<std::size_t>(std::max(0.0, std::ceil(wanted - 1e-9)));
}

const hang::PlacedElement* topmostCovering(const Audience& audience, const Settled& settled) {
  if (audience.cabinets.empty() || audience.cabinets.front().element >= settled.layout.elements.size()) {
    return nullptr;
  }
  return &settled.layout.elements[audience.cabinets.front().element];
}

} // namespace

Audience audienceOf(const Case& option) {
  Audience audience;
  const venue::Venue& venue = option.snapshot->venue;
  for (const QString& wanted : option.hang->sections) {
    if (std::none_of(venue.sections.begin(), venue.sections.end(),
                     [&](const venue::Section& each) { return each.name == wanted; })) {
      audience.missing.append(QStringLiteral("the venue has no audience section “%1”").arg(wanted));
    }
  }
  for (const venue::Section& section : venue.sections) {
    if (!option.hang->sections.isEmpty() && !option.hang->sections.contains(section.name)) {
      continue;
    }
    if (section.profile.size() < 2) {
      audience.missing.append(QStringLiteral("the profile of section %1").arg(section.name));
      continue;
    }
    if (!section.earHeight) {
      audience.missing.append(QStringLiteral("the ear height in section %1").arg(section.name));
      continue;
    }
    audience.sections.append(section.name);
    addSection(section, static_cast<int>(audience.sections.size() - 1), inMetres(*section.earHeight),
               audience.positions);
  }
  if (audience.positions.empty() && audience.missing.isEmpty()) {
    audience.missing.append(QStringLiteral("audience sections of the venue"));
  }

  for (std::size_t i = 0; i < option.cabinets.size(); ++i) {
    const catalogue::CabinetType& type = *option.cabinets[i];
    if (!type.coversAudience) {
      continue;
    }
    if (!type.coverLowest || !type.coverHighest || !type.throwDistance) {
      const QString what = QStringLiteral("edges of cover and throw of %1").arg(type.name);
      if (!audience.missing.contains(what)) {
        audience.missing.append(what);
      }
    }
    if (type.outline.empty()) {
      audience.missing.append(QStringLiteral("the outline of %1").arg(type.name));
    }
    audience.cabinets.push_back({i, type.coverLowest ? inDegrees(*type.coverLowest) : notKnown,
                                 type.coverHighest ? inDegrees(*type.coverHighest) : notKnown,
                                 type.throwDistance ? inMetres(*type.throwDistance) : notKnown});
  }
  return audience;
}

Plan bearingOf(const Placement& placement, const hang::Layout& layout) {
  const Plan aim = placement.directionOf(layout.forward);
  const double length = std::hypot(aim.x, aim.y);
  return length > 1e-9 ? Plan{aim.x / length, aim.y / length} : placement.forward;
}

double distanceInPlan(Plan origin, Plan bearing, double x, double yFrom, double yTo) {
  const double dx = x - origin.x;
  const double across = std::abs(bearing.x) > 1e-6 ? bearing.y / bearing.x : 0.0;
  const double dy = std::clamp(origin.y + dx * across, yFrom, std::max(yFrom, yTo)) - origin.y;
  const double distance = std::sqrt(dx * dx + dy * dy);
  return dx * bearing.x + dy * bearing.y > 0.0 ? distance : -distance;
}

CoverView viewOf(const Case& option, const Audience& audience, const Settled& settled, double insideDeg) {
  CoverView view;
  const Placement placement = placementOf(option, settled.layout);
  const Plan aim = bearingOf(placement, settled.layout);
  view.distance.reserve(audience.positions.size());
  for (const AudiencePosition& each : audience.positions) {
    view.distance.push_back(
        std::max(0.0, distanceInPlan(placement.origin, aim, each.x, each.yFrom, each.yTo)));
  }

  const double lowest = lowestEdge(option, settled).z;
  view.sources.reserve(audience.cabinets.size());
  for (const CoverEdges& edges : audience.cabinets) {
    const hang::PlacedElement& element = settled.layout.elements[edges.element];
    const hang::Vec3 source = sourceOf(element);
    const Plan offset = placement.directionOf(source);
    view.sources.push_back({offset.x * aim.x + offset.y * aim.y, source.z - lowest,
                            slopeOf(element.aimDeg + edges.lowestDeg + insideDeg),
                            slopeOf(element.aimDeg + edges.highestDeg - insideDeg), edges.throwM});
  }
  return view;
}

TrimRange trimsThatCover(const CoverView::Source& source, double distance, double ear) {
  const double away = distance - source.ahead;
  const double left = source.throwM * source.throwM - away * away;
  if (!(away > 0.0) || !(left >= 0.0)) {
    return {infinite, -infinite};
  }
  // The ear lies at elevation atan((ear − height) / away), which must be within the edges, and no farther
  // than the throw along the straight line.
  const double reach = std::sqrt(left);
  const double low = std::max(ear - away * source.slopeHigh, ear - reach);
  const double high = std::min(ear - away * source.slopeLow, ear + reach);
  return {low - source.height, high - source.height};
}

bool isCovered(const Audience& audience, const CoverView& view, std::size_t position, double trimM) {
  return std::any_of(view.sources.begin(), view.sources.end(), [&](const CoverView::Source& source) {
    const TrimRange range = trimsThatCover(source, view.distance[position], audience.positions[position].ear);
    return trimM >= range.low && trimM <= range.high;
  });
}

Covered coveredAt(const Audience& audience, const CoverView& view, double trimM) {
  Covered result;
  result.positions = audience.positions.size();
  for (std::size_t i = 0; i < audience.positions.size(); ++i) {
    if (isCovered(audience, view, i, trimM)) {
      ++result.covered;
    } else {
      result.firstMissed = result.firstMissed < 0 ? static_cast<int>(i) : result.firstMissed;
      result.lastMissed = static_cast<int>(i);
    }
  }
  return result;
}

std::vector<TrimRange> stretchesThatCoverShare(const Audience& audience, const CoverView& view,
                                               double percent) {
  const std::size_t wanted = positionsFor(percent, audience.positions.size());
  if (wanted == 0) {
    return {TrimRange{}};
  }
  // Each position is covered over a few stretches of trim; the number covered rises where one starts and
  // falls behind where one ends.
  std::vector<double> starts;
  std::vector<double> ends;
  starts.reserve(2 * audience.positions.size());
  ends.reserve(2 * audience.positions.size());
  std::vector<TrimRange> ranges;
  for (std::size_t i = 0; i < audience.positions.size(); ++i) {
    ranges.clear();
    for (const CoverView::Source& source : view.sources) {
      const TrimRange range = trimsThatCover(source, view.distance[i], audience.positions[i].ear);
      if (range.low <= range.high) {
        ranges.push_back(range);
      }
    }
    mergeInPlace(ranges);
    for (const TrimRange& range : ranges) {
      starts.push_back(range.low);
      ends.push_back(range.high);
    }
  }
  std::sort(starts.begin(), starts.end());
  std::sort(ends.begin(), ends.end());

  std::vector<TrimRange> stretches;
  std::size_t covered = 0;
  std::size_t start = 0;
  double since = infinite;
  for (const double end : ends) {
    for (; start < starts.size() && starts[start] <= end; ++start) {
      if (++covered == wanted) {
        since = starts[start];
      }
    }
    if (covered-- == wanted) {
      stretches.push_back({since, end});
    }
  }
  return stretches;
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

double aimAboveWantedDeg(const Case& option, const Settled& settled, double trimM) {
  const Audience& audience = option.room->audience;
  const hang::PlacedElement* top = topmostCovering(audience, settled);
  if (top == nullptr || audience.positions.empty() || !audience.missing.isEmpty()) {
    return notKnown;
  }
  const CoverView view = viewOf(option, audience, settled);
  const auto last = std::max_element(view.distance.begin(), view.distance.end());
  const double away = *last - view.sources.front().ahead;
  if (!(away > 0.0)) {
    return notKnown;
  }
  const double ear = audience.positions[static_cast<std::size_t>(last - view.distance.begin())].ear;
  const double elevation = hang::toDegrees(std::atan2(ear - (trimM + view.sources.front().height), away));
  return top->aimDeg + audience.cabinets.front().highestDeg - elevation;
}

} // namespace hangbook::options
