// SPDX-License-Identifier: GPL-3.0-or-later
#include "build/inputs.h"

#include <algorithm>
#include <cmath>

#include "build/cabling.h"
#include "options/placement.h"
#include "options/scene.h"

namespace hangbook::build {
namespace {

double metresOr(const std::optional<Length>& length) {
  return length ? inMetres(*length) : notStated;
}

const catalogue::Join* joinOf(const catalogue::StackingTable* table, const QString& above,
                              const QString& below) {
  if (table == nullptr) {
    return nullptr;
  }
  const auto found = std::ranges::find_if(
      table->joins, [&](const catalogue::Join& each) { return each.above == above && each.below == below; });
  return found == table->joins.end() ? nullptr : &*found;
}

/// "front pin, and rear pin in hole 2 of 2 (-3.0°)", as the maker counts its holes.
QString holeOf(const catalogue::Join* join, const hang::Joint& joint) {
  if (std::holds_alternative<hang::Pivot>(joint)) {
    return QStringLiteral("one pin a side; it pivots");
  }
  const auto* pinned = std::get_if<hang::Pinned>(&joint);
  const double angle = pinned != nullptr ? pinned->angleDeg : std::get<hang::Seated>(joint).angleDeg;
  const QString degrees = QStringLiteral("%1°").arg(angle, 0, 'f', 1);
  QString hole = degrees;
  if (join != nullptr && join->angles.size() > 1) {
    for (std::size_t i = 0; i < join->angles.size(); ++i) {
      if (std::abs(inDegrees(join->angles[i]) - angle) < 1e-6) {
        hole = QStringLiteral("hole %1 of %2, %3").arg(i + 1).arg(join->angles.size()).arg(degrees);
      }
    }
  }
  return pinned != nullptr ? QStringLiteral("front pin, and rear pin at %1").arg(hole)
                           : QStringLiteral("front pin at %1; the rear rests on its feet").arg(hole);
}

/// Floor under the hang: the highest under any of its points.
double floorUnder(const options::Snapshot& snapshot, const QStringList& names) {
  double floor = -std::numeric_limits<double>::infinity();
  const auto under = [&](const QString& name) {
    const auto point = std::ranges::find(snapshot.venue.points, name, &venue::Point::name);
    if (point != snapshot.venue.points.end()) {
      floor = std::max(floor, options::floorBeneath(snapshot.venue, {inMetres(point->x), inMetres(point->y)},
                                                    options::UnclearSections::nowhere));
    }
  };
  for (const QString& name : names) {
    under(name);
    const auto bridle = std::ranges::find(snapshot.venue.bridles, name, &venue::Bridle::name);
    if (bridle != snapshot.venue.bridles.end()) {
      std::ranges::for_each(bridle->points, under);
    }
  }
  return std::isinf(floor) ? notStated : floor;
}

void fillBar(const options::Snapshot& snapshot, const options::Option& option, Hanging& into) {
  const auto* bar = catalogue::find(snapshot.catalogue.bars, option.key.bar);
  if (bar == nullptr) {
    return;
  }
  for (const catalogue::Position& corner : bar->outline) {
    into.barOutline.push_back({inMetres(corner.x), inMetres(corner.z)});
  }
  into.hoistDifference = metresOr(bar->hoistOffsetLimit);
}

void fillRoom(const options::Snapshot& snapshot, const options::Option& option, const calendar::Hang& hang,
              Hanging& into) {
  const options::House house(snapshot.tour.house, snapshot.venue.house, snapshot.show.house);
  const double floor = floorUnder(snapshot, option.key.points);
  const options::Scene scene = options::sceneOf(snapshot, option);
  const auto* hoist = catalogue::find(snapshot.catalogue.hoists, option.key.hoist);
  double rigging = 0.0;
  for (const QString& piece : hang.rigging) {
    const auto* type = catalogue::find(snapshot.catalogue.hardware, piece);
    rigging += type != nullptr ? metresOr(type->length) : notStated;
  }
  const double closed = hoist != nullptr ? metresOr(hoist->closedLength) : notStated;
  into.hookMet = house.figure(QStringLiteral("bar-met-height")).value.value_or(notStated);
  const double clearance = house.figure(QStringLiteral("headroom-clearance")).value.value_or(notStated);
  if (!scene.hoists.empty()) {
    double point = std::numeric_limits<double>::infinity();
    double hooks = 0.0;
    for (const options::SceneHoist& each : scene.hoists) {
      point = std::min(point, each.pointAt.height);
      hooks += each.hook.height / static_cast<double>(scene.hoists.size());
    }
    into.highestHook = point - rigging - closed - floor;
    into.hooksAtTrim =
        (option.key.picks == catalogue::Picks::foreAftPair ? scene.hoists.front().hook.height : hooks) -
        floor;
  }
  if (scene.lowSteel) {
    double above = *scene.lowSteel;
    for (const options::SceneObstruction& each : scene.obstructions) {
      above = each.overHang ? std::min(above, each.underside) : above;
    }
    into.ceiling = above - clearance - floor;
  }
  if (option.setting) {
    into.lowestAtTrim = option.setting->trimM - floor;
  }
  into.datumAtTrim = option.datumHeightM ? *option.datumHeightM - floor : notStated;
}

} // namespace

Job jobOf(const options::Snapshot& snapshot, const std::vector<options::Option>& options,
          const calendar::Cabling& cabling) {
  Job job;
  job.show = snapshot.show.name;
  const options::House house(snapshot.tour.house, snapshot.venue.house, snapshot.show.house);
  job.cartClearance = house.figure(QStringLiteral("cart-clearance")).value.value_or(notStated);
  job.swingClearance = house.figure(QStringLiteral("swing-clearance")).value.value_or(notStated);
  for (const catalogue::CartType& cart : snapshot.catalogue.carts) {
    job.carts.push_back({cart.name, cart.carries, cart.most.value_or(0), cart.high.value_or(0),
                         metresOr(cart.deck), metresOr(cart.height)});
  }
  for (const options::Option& option : options) {
    Hanging made;
    made.hang = option.key.hang;
    made.types = option.key.stack;
    made.points = option.key.points;
    made.bar = option.key.bar;
    made.hoist = option.key.hoist;
    if (!option.hangInput) {
      made.missing << QStringLiteral("the figures of the statics, without which nothing stands anywhere");
      job.hangs.push_back(made);
      continue;
    }
    made.rig = *option.hangInput;
    const auto* table = catalogue::find(snapshot.catalogue.tables, option.key.table);
    made.chain = made.rig.chain && table != nullptr ? table->chain : QString();
    for (qsizetype i = 0; i < option.key.stack.size(); ++i) {
      const auto* cabinet = catalogue::find(snapshot.catalogue.cabinets, option.key.stack[i]);
      made.engagement.push_back(cabinet != nullptr ? metresOr(cabinet->engagement) : notStated);
      made.holes << holeOf(joinOf(table, i == 0 ? QString() : option.key.stack[i - 1], option.key.stack[i]),
                           made.rig.stack[static_cast<std::size_t>(i)].joint);
    }
    fillBar(snapshot, option, made);
    for (const calendar::Hang& hang : snapshot.show.hangs) {
      if (hang.name == option.key.hang) {
        made.secondary = hang.secondary;
        made.secondarySlack = metresOr(hang.secondarySlack);
        made.plugs = plugsOf(cabling, snapshot.show, hang.name, option.key.stack);
        fillRoom(snapshot, option, hang, made);
      }
    }
    job.hangs.push_back(std::move(made));
  }
  return job;
}

} // namespace hangbook::build
