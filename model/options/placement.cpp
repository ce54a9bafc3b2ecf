// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/placement.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "options/rig_fold.h"
#include "options/room_limits.h"
#include "options/seating.h"

namespace hangbook::options {
namespace {

using catalogue::Picks;
using hang::Vec3;

double dot(Vec3 a, Vec3 b) {
  return a.x * b.x + a.y * b.y + a.z * b.z;
}

Plan planOf(const venue::Point& point) {
  return {inMetres(point.x), inMetres(point.y)};
}

double halfWidth(const std::optional<Length>& width) {
  return width ? 0.5 * inMetres(*width) : 0.0;
}

/// What a width adds below (or above) a corner of the middle plane.
double drop(const hang::Layout& layout, const std::optional<Length>& width) {
  return halfWidth(width) * std::abs(layout.left.z);
}

Vec3 frameCorner(const hang::Layout& layout, const catalogue::Position& corner) {
  return layout.frameOrigin + inMetres(corner.x) * layout.forward + inMetres(corner.z) * layout.up;
}

std::vector<Vec3> bothSides(const std::vector<Vec3>& middle, Vec3 left, double half) {
  std::vector<Vec3> corners;
  corners.reserve(2 * middle.size());
  for (const Vec3& each : middle) {
    corners.push_back(each + half * left);
    corners.push_back(each + -half * left);
  }
  return corners;
}

} // namespace

Placement placementOf(const Case& option, const hang::Layout& layout) {
  Placement placement;
  if (option.points.empty()) {
    return placement;
  }
  const Plan first = planOf(*option.points.front());
  const Plan last = planOf(*option.points.back());
  const Plan middle{0.5 * (first.x + last.x), 0.5 * (first.y + last.y)};
  const double apart = std::hypot(first.x - last.x, first.y - last.y);
  if (apart > 1e-6) {
    const Plan line{(first.x - last.x) / apart, (first.y - last.y) / apart};
    if (option.key.picks ==
        Picks::sidePair) { // from right to left: a quarter turn to the right faces forward
      placement.forward = {line.y, -line.x};
    } else if (option.key.picks == Picks::foreAftPair) {
      placement.forward = line;
    }
  }
  Vec3 sum;
  for (const Vec3& each : layout.picks) {
    sum = sum + each;
  }
  const double share = layout.picks.empty() ? 0.0 : 1.0 / static_cast<double>(layout.picks.size());
  const Plan offset = placement.directionOf(share * sum);
  placement.origin = {middle.x - offset.x, middle.y - offset.y};
  return placement;
}

namespace {

LowestEdge lowestOf(const Case& option, const Settled& settled) {
  const hang::Layout& layout = settled.layout;
  const bool rolls = std::abs(layout.left.z) > hang::lengthSlack;
  LowestEdge lowest;
  lowest.z = std::numeric_limits<double>::infinity();

  for (std::size_t i = 0; i < layout.elements.size(); ++i) {
    const auto& width = option.cabinets[i]->width;
    lowest.outlineMissing |= layout.elements[i].outline.empty();
    lowest.widthMissing |= rolls && !width;
    for (const Vec3& corner : layout.elements[i].outline) {
      lowest.z = std::min(lowest.z, corner.z - drop(layout, width));
    }
  }
  if (option.bar != nullptr) {
    for (const catalogue::Position& corner : option.bar->outline) {
      lowest.widthMissing |= rolls && !option.bar->width;
      lowest.z = std::min(lowest.z, frameCorner(layout, corner).z - drop(layout, option.bar->width));
    }
  }
  const double tail = unusedChain(option, settled);
  const double hangsFree = option.room != nullptr ? option.room->chainTail : 0.0;
  if (tail != 0.0 && hangsFree != 0.0) {
    lowest.tailMissing = std::isnan(tail) || std::isnan(hangsFree);
    if (!lowest.tailMissing) {
      lowest.z =
          std::min(lowest.z, layout.elements[static_cast<std::size_t>(option.held) - 1].chainEye->z - tail);
    }
  }
  if (!std::isfinite(lowest.z)) { // no outline at all, which is told above: what the statics found
    lowest.z = settled.statics.bottom;
  }
  return lowest;
}

} // namespace

LowestEdge lowestEdge(const Case& option, const Settled& settled) {
  return keptOr(option.fold == nullptr ? nullptr : option.fold->lowest(settled),
                [&] { return lowestOf(option, settled); });
}

double unusedChain(const Case& option, const Settled& settled) {
  if (!settled.setting.mark) { // no chain
    return 0.0;
  }
  if (!option.chain->links || !option.chain->pitch) {
    return notKnown;
  }
  return std::max(0, *option.chain->links - *settled.setting.mark) * inMetres(*option.chain->pitch);
}

double originHeight(const Case& option, const Settled& settled, double trimM) {
  return trimM - lowestEdge(option, settled).z;
}

double highestPick(const Case& option, const Settled& settled, double trimM) {
  return originHeight(option, settled, trimM) + std::ranges::max(settled.layout.picks, {}, &Vec3::z).z;
}

std::vector<Vec3> barCorners(const Case& option, const hang::Layout& layout) {
  if (option.bar == nullptr) {
    return {};
  }
  std::vector<Vec3> middle;
  for (const catalogue::Position& corner : option.bar->outline) {
    middle.push_back(frameCorner(layout, corner));
  }
  return bothSides(middle, layout.left, halfWidth(option.bar->width));
}

std::vector<Vec3> cabinetCorners(const Case& option, const hang::Layout& layout, std::size_t element) {
  return bothSides(layout.elements.at(element).outline, layout.left,
                   halfWidth(option.cabinets.at(element)->width));
}

double floorBeneath(const venue::Venue& venue, Plan place, UnclearSections unclear) {
  std::optional<double> highest;
  for (const venue::Section& section : venue.sections) {
    double along = place.x; // on the profile
    if (section.swept()) {
      const auto swept = sweptSection(section);
      if (!swept && unclear == UnclearSections::everywhere) {
        for (const venue::ProfilePoint& each : section.profile) {
          highest = std::max(highest.value_or(inMetres(each.z)), inMetres(each.z));
        }
      }
      const auto seat = swept ? swept->seatAt(place) : std::nullopt;
      if (!seat) {
        continue;
      }
      along = seat->behind;
    } else if ((section.yFrom && place.y < inMetres(*section.yFrom)) ||
               (section.yTo && place.y > inMetres(*section.yTo))) {
      continue;
    }
    for (std::size_t i = 1; i < section.profile.size(); ++i) {
      const double from = inMetres(section.profile[i - 1].x);
      const double to = inMetres(section.profile[i].x);
      if (along < from || along > to || to <= from) {
        continue;
      }
      const double low = inMetres(section.profile[i - 1].z);
      const double z = low + (inMetres(section.profile[i].z) - low) * (along - from) / (to - from);
      highest = std::max(highest.value_or(z), z);
    }
  }
  return highest.value_or(0.0);
}

Vec3 sourceOf(const hang::PlacedElement& element) {
  if (element.outline.empty()) {
    return element.pin;
  }
  std::array<Vec3, 2> foremost;
  const auto ahead = [&](const Vec3& corner) { return dot(corner, element.forward); };
  std::ranges::partial_sort_copy(element.outline, foremost, std::ranges::greater{}, ahead, ahead);
  return 0.5 * (foremost[0] + foremost[1]);
}

} // namespace hangbook::options
