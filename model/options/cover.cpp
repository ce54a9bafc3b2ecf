// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/cover.h"

#include <algorithm>
#include <cmath>

#include "options/room_limits.h"

namespace hangbook::options {
namespace {

constexpr double infinite = std::numeric_limits<double>::infinity();
/// An edge whose normal has no more than this of z stands upright: no trim moves it across an ear.
constexpr double upright = 1e-12;

hang::Vec3 cross(hang::Vec3 a, hang::Vec3 b) {
  return {a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x};
}

hang::Vec3 inVenue(const Placement& placement, hang::Vec3 direction) {
  const Plan plan = placement.directionOf(direction);
  return {plan.x, plan.y, direction.z};
}

/// Slope of an elevation; infinite at and beyond upright.
double slopeOf(double elevationDeg) {
  if (elevationDeg >= 90.0) {
    return infinite;
  }
  return elevationDeg <= -90.0 ? -infinite : std::tan(hang::toRadians(elevationDeg));
}

/// The farthest position; of seats in space only what the topmost cabinet covers across, if there is any.
std::vector<double>::const_iterator lastWithin(const Audience& audience, const CoverView& view) {
  const CoverView::Source& top = view.sources.front();
  auto last = view.distance.end();
  for (auto each = view.distance.begin(); each != view.distance.end(); ++each) {
    const auto number = static_cast<std::size_t>(each - view.distance.begin());
    const AudiencePosition& at = audience.positions[number];
    const auto toTheSide = [&](const hang::Vec3& inside) {
      return inside.x * (at.x - top.place.x) + inside.y * (at.yFrom - top.place.y) < 0.0;
    };
    if (audience.blocks[static_cast<std::size_t>(at.section)].swept &&
        (toTheSide(top.inside[2]) || toTheSide(top.inside[3]))) {
      continue;
    }
    last = last == view.distance.end() || *each > *last ? each : last;
  }
  return last != view.distance.end() ? last : std::max_element(view.distance.begin(), view.distance.end());
}

/// Across for each metre along, of the hang's line.
double slopeAcross(Plan bearing) {
  return std::abs(bearing.x) > 1e-6 ? bearing.y / bearing.x : 0.0;
}

/// Whether the hang's line crosses the row, so that the distance to it does not hang on where it ends.
bool crosses(const CoverPlace& at, const AudiencePosition& row) {
  const double dy = (row.x - at.origin.x) * slopeAcross(at.bearing);
  return row.yFrom < row.yTo && dy >= row.yFrom - at.origin.y && dy <= row.yTo - at.origin.y;
}

const hang::PlacedElement* topmostCovering(const Audience& audience, const Settled& settled) {
  if (audience.cabinets.empty()) {
    return nullptr;
  }
  return &settled.layout.elements[audience.cabinets.front().element];
}

} // namespace

Plan bearingOf(const Placement& placement, const hang::Layout& layout) {
  const Plan aim = placement.directionOf(layout.forward);
  const double length = std::hypot(aim.x, aim.y);
  return length > 1e-9 ? Plan{aim.x / length, aim.y / length} : placement.forward;
}

double distanceInPlan(Plan origin, Plan bearing, double x, double yFrom, double yTo) {
  const double dx = x - origin.x;
  const double dy = std::clamp(dx * slopeAcross(bearing), yFrom - origin.y, std::max(yFrom, yTo) - origin.y);
  const double distance = std::sqrt(dx * dx + dy * dy);
  return dx * bearing.x + dy * bearing.y > 0.0 ? distance : -distance;
}

std::array<hang::Vec3, 4> insideEdges(const SourceDirections& source, const CoverEdges& edges,
                                      double insideDeg) {
  const hang::Vec3& forward = source.forward;
  const hang::Vec3& left = source.left;
  const hang::Vec3 up = cross(forward, left);
  // Where the margin is wider than the cover itself, the two edges meet in the middle.
  const double middle = 0.5 * (edges.lowestDeg + edges.highestDeg);
  const double low = hang::toRadians(std::min(edges.lowestDeg + insideDeg, middle));
  const double high = hang::toRadians(std::max(edges.highestDeg - insideDeg, middle));
  const double half = hang::toRadians(std::max(0.0, 0.5 * edges.acrossDeg - insideDeg));
  return {std::cos(low) * up + -std::sin(low) * forward, std::sin(high) * forward + -std::cos(high) * up,
          std::sin(half) * forward + std::cos(half) * left,
          std::sin(half) * forward + -std::cos(half) * left};
}

/// Every way in which an element may aim within the doubts of figures, degrees.
hang::Span aimSpan(const Settled& settled, std::size_t element) {
  const double aim = settled.layout.elements[element].aimDeg;
  const bool doubtful = settled.doubt != nullptr && element < settled.doubt->worst.aimDeg.size();
  return doubtful ? hull(settled.doubt->worst.aimDeg[element], aim) : hang::Span(aim);
}

CoverPlace coverPlaceOf(const Case& option, const Settled& settled) {
  const Placement placement = placementOf(option, settled.layout);
  return {placement.origin, bearingOf(placement, settled.layout)};
}

bool sameCover(const Audience& audience, const CoverPlace& one, const CoverPlace& other) {
  if (one.origin.x != other.origin.x || one.bearing.x != other.bearing.x ||
      one.bearing.y != other.bearing.y) {
    return false;
  }
  return one.origin.y == other.origin.y ||
         (!audience.anySwept() && std::ranges::all_of(audience.positions, [&](const AudiencePosition& row) {
           return crosses(one, row) && crosses(other, row);
         }));
}

std::vector<double> distancesFrom(const Audience& audience, const CoverPlace& place) {
  std::vector<double> distances;
  distances.reserve(audience.positions.size());
  for (const AudiencePosition& each : audience.positions) {
    if (each.yFrom == each.yTo) { // a seat: where it is needs no line
      const double dx = each.x - place.origin.x;
      const double dy = each.yFrom - place.origin.y;
      distances.push_back(dx * place.bearing.x + dy * place.bearing.y > 0.0 ? std::sqrt(dx * dx + dy * dy)
                                                                            : 0.0);
      continue;
    }
    distances.push_back(
        std::max(0.0, distanceInPlan(place.origin, place.bearing, each.x, each.yFrom, each.yTo)));
  }
  return distances;
}

SourcePlace sourcePlace(const Case& option, const CoverEdges& edges, const Settled& settled) {
  const Placement placement = placementOf(option, settled.layout);
  const Plan aim = bearingOf(placement, settled.layout);
  const hang::Vec3 source = sourceOf(settled.layout.elements[edges.element]);
  const Plan offset = placement.directionOf(source);
  return {offset.x * aim.x + offset.y * aim.y, source.z - lowestEdge(option, settled).z};
}

std::vector<CoverView::Source> sourcesOf(const Case& option, const Audience& audience, const Settled& settled,
                                         double insideDeg) {
  const Placement placement = placementOf(option, settled.layout);
  const bool inSpace = audience.anySwept();
  std::vector<CoverView::Source> sources;
  sources.reserve(audience.cabinets.size());
  for (const CoverEdges& edges : audience.cabinets) {
    const hang::PlacedElement& element = settled.layout.elements[edges.element];
    const SourcePlace place = sourcePlace(option, edges, settled);
    // At the unfavourable end of its aim: the lower edge at its highest, the upper edge at its lowest.
    const hang::Span aims = aimSpan(settled, edges.element);
    CoverView::Source source{place.ahead,
                             place.height,
                             slopeOf(aims.high + edges.lowestDeg + insideDeg),
                             slopeOf(aims.low + edges.highestDeg - insideDeg),
                             edges.throwM,
                             placement.placeOf(sourceOf(element)),
                             {},
                             heightDoubt(settled)};
    if (inSpace) {
      const double either = std::max(aims.high - element.aimDeg, element.aimDeg - aims.low);
      source.inside =
          insideEdges({inVenue(placement, element.forward), inVenue(placement, settled.layout.left)}, edges,
                      insideDeg + either);
    }
    sources.push_back(source);
  }
  return sources;
}

CoverView viewOf(const Case& option, const Audience& audience, const Settled& settled, double insideDeg) {
  return {distancesFrom(audience, coverPlaceOf(option, settled)),
          sourcesOf(option, audience, settled, insideDeg)};
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
  return {low - source.height + source.off, high - source.height - source.off};
}

TrimRange trimsThatCover(const CoverView::Source& source, hang::Vec3 ear) {
  const double dx = ear.x - source.place.x;
  const double dy = ear.y - source.place.y;
  const double dz = ear.z - source.height;
  const double left = source.throwM * source.throwM - (dx * dx + dy * dy);
  if (!(left >= 0.0)) {
    return {infinite, -infinite};
  }
  const double reach = std::sqrt(left);
  TrimRange range{dz - reach, dz + reach};
  for (const hang::Vec3& inside : source.inside) {
    // inside · (ear − source) − trim · inside.z ≥ 0
    const double room = inside.x * dx + inside.y * dy + inside.z * dz;
    if (inside.z > upright) {
      range.high = std::min(range.high, room / inside.z);
    } else if (inside.z < -upright) {
      range.low = std::max(range.low, room / inside.z);
    } else if (room < 0.0) {
      return {infinite, -infinite};
    }
  }
  return {range.low + source.off, range.high - source.off};
}

TrimRange trimsThatCover(const Audience& audience, const CoverView& view, const CoverView::Source& source,
                         std::size_t position) {
  const AudiencePosition& at = audience.positions[position];
  return audience.blocks[static_cast<std::size_t>(at.section)].swept
             ? trimsThatCover(source, hang::Vec3{at.x, at.yFrom, at.ear})
             : trimsThatCover(source, view.distance[position], at.ear);
}

namespace {

/// Whether a source covers a seat at one trim: by the planes where none of them is near, else by the stretch
/// of trim, so that both say the same at its very ends.
bool coversAt(const CoverView::Source& source, hang::Vec3 ear, double trimM) {
  constexpr double near = 1e-7; // m; of the throw m²
  if (source.off > 0.0) {
    CoverView::Source exact = source;
    exact.off = 0.0;
    return coversAt(exact, ear, trimM - source.off) && coversAt(exact, ear, trimM + source.off);
  }
  const hang::Vec3 way{ear.x - source.place.x, ear.y - source.place.y, ear.z - source.height - trimM};
  double least = source.throwM * source.throwM - (way.x * way.x + way.y * way.y + way.z * way.z);
  for (const hang::Vec3& inside : source.inside) {
    least = std::min(least, inside.x * way.x + inside.y * way.y + inside.z * way.z);
  }
  if (std::abs(least) > near) {
    return !std::signbit(least);
  }
  return trimsThatCover(source, ear).holds(trimM);
}

} // namespace

bool isCovered(const Audience& audience, const CoverView& view, std::size_t position, double trimM) {
  const AudiencePosition& at = audience.positions[position];
  const bool seat = audience.blocks[static_cast<std::size_t>(at.section)].swept;
  return std::any_of(view.sources.begin(), view.sources.end(), [&](const CoverView::Source& source) {
    if (seat) {
      return coversAt(source, {at.x, at.yFrom, at.ear}, trimM);
    }
    return trimsThatCover(source, view.distance[position], at.ear).holds(trimM);
  });
}

double aimAboveWantedDeg(const Case& option, const Settled& settled, double trimM) {
  const Audience& audience = option.room->audience;
  const hang::PlacedElement* top = topmostCovering(audience, settled);
  if (top == nullptr || audience.positions.empty() || !audience.missing.isEmpty()) {
    return notKnown;
  }
  const CoverView view = viewOf(option, audience, settled);
  const auto last = lastWithin(audience, view);
  const double away = *last - view.sources.front().ahead;
  if (!(away > 0.0)) {
    return notKnown;
  }
  const double ear = audience.positions[static_cast<std::size_t>(last - view.distance.begin())].ear;
  const double elevation = hang::toDegrees(std::atan2(ear - (trimM + view.sources.front().height), away));
  return top->aimDeg + audience.cabinets.front().highestDeg - elevation;
}

} // namespace hangbook::options
