// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/zones.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "options/ways.h"

namespace hangbook::options {
namespace {

/// How far a mirrored hang's point may stand from the mirror image and still be the one that is meant, m.
constexpr double mirrorReach = 1.0;

ZoneLoad loadOn(const venue::Venue& venue, const venue::Zone& zone) {
  ZoneLoad load;
  load.name = zone.name;
  load.basis = zone.basis;
  load.capacity = zone.capacity ? inNewtons(*zone.capacity) : notKnown;
  load.source = venue.source.text;
  if (!zone.othersLoad || inNewtons(*zone.othersLoad) < 0.0) { // a load below 0 is a slip, not a figure
    load.othersWhy = QStringLiteral("what other departments hang there is not stated");
  } else if (inNewtons(*zone.othersLoad) == 0.0 && (zone.othersBy.isEmpty() || !zone.othersOn.isValid())) {
    load.othersWhy = QStringLiteral("that nothing else hangs there is stated without a name and a date");
  } else {
    load.others = inNewtons(*zone.othersLoad);
    load.othersWhy = zone.othersBy.isEmpty() ? QStringLiteral("other departments")
                                             : QStringLiteral("other departments, by %1").arg(zone.othersBy);
  }
  return load;
}

/// A point that two hangs share. What other departments hang on it is the venue's to take off its capacity,
/// as where one hang uses it alone.
ZoneLoad loadOn(const venue::Point& point) {
  ZoneLoad load;
  load.name = point.name;
  load.onePoint = true;
  load.basis = point.basis;
  load.capacity = point.capacity ? inNewtons(*point.capacity) : notKnown;
  load.source = point.source.text;
  load.others = 0.0;
  return load;
}

bool belongs(const venue::Point& point, const ZoneLoad& zone) {
  return zone.onePoint ? point.name == zone.name : point.zone == zone.name;
}

const Choice* choiceOf(const Snapshot& snapshot, const QString& hang) {
  const auto newest = std::ranges::max_element(snapshot.choices, {}, [&](const Choice& each) {
    return std::pair(each.hang == hang, each.revision); // of others only where it has none
  });
  return newest == snapshot.choices.end() || newest->hang != hang ? nullptr : &*newest;
}

const venue::Point* pointNamed(const venue::Venue& venue, const QString& name) {
  const auto found = std::find_if(venue.points.begin(), venue.points.end(),
                                  [&name](const venue::Point& each) { return each.name == name; });
  return found == venue.points.end() ? nullptr : &*found;
}

/// The other hang's point nearest to the mirror image (y reversed) of `point`, if any is within reach.
const venue::Point* mirrorOf(const venue::Point& point, const std::vector<const venue::Point*>& others) {
  const venue::Point* nearest = nullptr;
  double least = mirrorReach;
  for (const venue::Point* other : others) {
    const double away =
        std::hypot(inMetres(other->x) - inMetres(point.x), inMetres(other->y) + inMetres(point.y));
    if (away <= least) {
      least = away;
      nearest = other;
    }
  }
  return nearest;
}

void addChoice(const Snapshot& snapshot, const Choice& choice, ZoneLoad& zone) {
  bool any = false;
  for (const PointResult& result : choice.points) {
    const venue::Point* point = pointNamed(snapshot.venue, result.point);
    if (point != nullptr && belongs(*point, zone)) {
      // At the unfavourable end of its figures; a choice from before there was one, as it was computed then.
      zone.otherHangsAtRest += result.worstStaticKn.value_or(result.staticKn) * 1000.0;
      zone.otherHangsDynamic += result.worstDynamicKn.value_or(result.dynamicKn) * 1000.0;
      any = true;
    }
  }
  if (any) {
    zone.otherHangs.append(QStringLiteral("%1 by its chosen option").arg(choice.hang));
  }
}

void addOther(const Case& option, const calendar::Hang& other, ZoneLoad& zone) {
  const Snapshot& snapshot = *option.snapshot;
  if (const Choice* choice = choiceOf(snapshot, other.name)) {
    addChoice(snapshot, *choice, zone);
    return;
  }
  const std::vector<const venue::Point*> theirs = pointsWithin(snapshot.venue, other);
  const bool mayUseIt = std::any_of(theirs.begin(), theirs.end(),
                                    [&zone](const venue::Point* point) { return belongs(*point, zone); });
  if (!mayUseIt) {
    return; // none of its points is on this structure, or is this point
  }
  if (other.mirrors != option.hang->name && option.hang->mirrors != other.name) {
    zone.otherHangsAtRest = zone.otherHangsDynamic = notKnown;
    zone.otherHangs.append(QStringLiteral("%1, for which nothing is chosen").arg(other.name));
    return;
  }
  const std::vector<int> own = zone.times;
  for (std::size_t carrier = 0; carrier < option.carriers.size(); ++carrier) {
    const venue::Point* image = mirrorOf(*option.carriers[carrier].point, theirs);
    if (image == nullptr) {
      zone.otherHangsAtRest = zone.otherHangsDynamic = notKnown;
      zone.otherHangs.append(QStringLiteral("%1, which has no point at the mirror image of point %2")
                                 .arg(other.name, option.carriers[carrier].point->name));
      return;
    }
    if (belongs(*image, zone)) {
      ++zone.times[carrier];
    }
  }
  if (zone.times != own) {
    zone.otherHangs.append(QStringLiteral("%1 by the same option mirrored").arg(other.name));
  }
}

} // namespace

void lookUpZones(const Case& option, WeightLimits& limits) {
  const Snapshot& snapshot = *option.snapshot;
  limits.zonesStated = !snapshot.venue.zones.empty();
  for (std::size_t carrier = 0; carrier < option.carriers.size(); ++carrier) {
    const QString& name = option.carriers[carrier].point->zone;
    if (name.isEmpty()) {
      limits.pointsWithoutZone = true;
      continue;
    }
    auto known = std::find_if(limits.zones.begin(), limits.zones.end(),
                              [&name](const ZoneLoad& each) { return each.name == name; });
    if (known != limits.zones.end()) {
      ++known->times[carrier];
      continue;
    }
    const auto zone = std::find_if(snapshot.venue.zones.begin(), snapshot.venue.zones.end(),
                                   [&name](const venue::Zone& each) { return each.name == name; });
    if (zone == snapshot.venue.zones.end()) {
      if (!limits.zonesUnknown.contains(name)) {
        limits.zonesUnknown.append(name);
      }
      continue;
    }
    limits.zones.push_back(loadOn(snapshot.venue, *zone));
    limits.zones.back().times.assign(option.carriers.size(), 0);
    limits.zones.back().times[carrier] = 1;
  }
  for (ZoneLoad& zone : limits.zones) {
    for (const calendar::Hang& other : snapshot.show.hangs) {
      if (other.name != option.hang->name) {
        addOther(option, other, zone);
      }
    }
  }
  for (std::size_t carrier = 0; carrier < option.carriers.size(); ++carrier) {
    ZoneLoad shared = loadOn(*option.carriers[carrier].point);
    shared.times.assign(option.carriers.size(), 0);
    shared.times[carrier] = 1;
    for (const calendar::Hang& other : snapshot.show.hangs) {
      if (other.name != option.hang->name) {
        addOther(option, other, shared);
      }
    }
    if (!shared.otherHangs.isEmpty()) {
      limits.zones.push_back(std::move(shared));
    }
  }
}

} // namespace hangbook::options
