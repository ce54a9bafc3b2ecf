// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/room_limits.h"

#include <array>

#include "options/hang_once.h"
#include "options/level.h"
#include "options/sentence.h"

namespace hangbook::options {
namespace {

double metresOf(const std::optional<Length>& length) {
  return length ? inMetres(*length) : notKnown;
}

double figure(const Case& option, const char* id) {
  return option.house->figure(QString::fromLatin1(id)).value.value_or(notKnown);
}

void addTrimBounds(const Case& option, RoomLimits& limits) {
  const venue::Venue& venue = option.snapshot->venue;
  if (option.hang->leastTrim) {
    limits.leastTrim.push_back(
        {inMetres(*option.hang->leastTrim),
         QStringLiteral("sight lines and stage clearance of hang %1").arg(option.hang->name)});
  }
  if (venue.leastTrim) {
    limits.leastTrim.push_back({inMetres(*venue.leastTrim), venueSource(venue)});
  }
  const HouseValue house = option.house->figure(QStringLiteral("least-trim"));
  limits.leastAboveFloor = {house.value.value_or(notKnown), house.source};
  limits.leastTrim.push_back(limits.leastAboveFloor);
  if (venue.mostTrim) {
    limits.mostTrim = Bound{inMetres(*venue.mostTrim), venueSource(venue)};
  }
  limits.trimMargin = figure(option, "trim-margin");
  limits.chainTail = figure(option, "chain-tail");
}

void addCeilings(const Case& option, RoomLimits& limits) {
  const venue::Venue& venue = option.snapshot->venue;
  if (venue.lowSteel) {
    Ceiling steel;
    steel.name = QStringLiteral("low steel");
    steel.underside = inMetres(*venue.lowSteel);
    limits.ceilings.push_back(steel);
    limits.lowSteelKnown = true;
  }
  for (const venue::Obstruction& each : venue.obstructions) {
    limits.ceilings.push_back({each.name, inMetres(each.underside), inMetres(std::min(each.xFrom, each.xTo)),
                               inMetres(std::max(each.xFrom, each.xTo)),
                               inMetres(std::min(each.yFrom, each.yTo)),
                               inMetres(std::max(each.yFrom, each.yTo))});
  }
}

void addRigging(const Case& option, RoomLimits& limits) {
  double length = 0.0;
  if (option.hang->rigging.isEmpty()) { // there always is some: a list left empty is not a length of 0
    limits.riggingMissing.append(QStringLiteral("the rigging between point and hoist"));
  }
  for (const QString& name : option.hang->rigging) {
    const auto* type = catalogue::find(option.snapshot->catalogue.hardware, name);
    if (type == nullptr || !type->length) {
      limits.riggingMissing.append(name);
    } else {
      length += inMetres(*type->length);
      ++limits.riggingPieces;
    }
  }
  limits.riggingLength = limits.riggingMissing.isEmpty() ? length : notKnown;
}

} // namespace

std::shared_ptr<const RoomLimits> roomLimits(const Case& option) {
  return roomLimits(option, seatsOf(*option.snapshot, *option.hang));
}

std::shared_ptr<const RoomLimits> roomLimits(const Case& option, const Audience& seats) {
  auto limits = std::make_shared<RoomLimits>();
  addTrimBounds(option, *limits);
  addCeilings(option, *limits);
  addRigging(option, *limits);
  for (const venue::Point* point : option.points) {
    limits->pointHeight.push_back(inMetres(point->z));
  }
  if (option.hoist != nullptr) {
    limits->closedLength = metresOf(option.hoist->closedLength);
    limits->chainLength = metresOf(option.hoist->chainLength);
  }
  limits->clearance = figure(option, "headroom-clearance");
  limits->headroomMargin = figure(option, "headroom-margin");
  limits->barMetHeight = figure(option, "bar-met-height");
  limits->chainShorter = figure(option, "length-doubt");
  limits->liftMargin = figure(option, "lift-height-margin");
  limits->angleMargin = figure(option, "angle-margin");
  limits->audience = audienceOf(option, seats);
  limits->coverShare = figure(option, "cover-share");
  limits->coverMargin = figure(option, "cover-margin");
  limits->airLoss = airLoss(option.snapshot->show, fourKilohertzBand).value_or(notKnown);
  return limits;
}

std::span<const Rule> roomRules() {
  static const std::array<Rule, 6> rules{lowestEdgeRule, headroomRule, liftHeightRule,
                                         travelRule,     coverRule,    levelDropRule};
  return rules;
}

} // namespace hangbook::options
