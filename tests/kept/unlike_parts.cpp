// SPDX-License-Identifier: GPL-3.0-or-later
#include "kept/unlike_parts.h"

namespace hangbook::testing {
namespace {

using catalogue::CabinetType;
using catalogue::Join;
using catalogue::JointKind;
using catalogue::Picks;
using catalogue::Position;

Position at(double x, double z) {
  return {metres(x), metres(z)};
}

Position nearTo(const Position& place, Chance& by, double eachWay) {
  const double x = by.between(-eachWay, eachWay);
  return at(inMetres(place.x) + x, inMetres(place.z) + by.between(-eachWay, eachWay));
}

void tolerances(catalogue::Tolerances& tolerances, Chance& by) {
  if (by.oneIn(2)) {
    tolerances.mass = kilograms(by.between(0.2, 3));
  }
  if (by.oneIn(2)) {
    tolerances.centre = metres(by.between(0.001, 0.02));
  }
  if (by.oneIn(2)) {
    tolerances.place = metres(by.between(0.0002, 0.003));
  }
}

void cabinets(std::vector<CabinetType>& types, Chance& by) {
  for (CabinetType& type : types) {
    type.mass = kilograms(by.between(0.7, 1.3) * inKilograms(*type.mass));
    type.centreOfGravity = nearTo(*type.centreOfGravity, by, 0.06);
    if (type.nextPin) {
      type.nextPin = nearTo(*type.nextPin, by, 0.01);
    }
    for (Position& corner : type.outline) {
      corner = nearTo(corner, by, 0.01);
    }
    type.width = metres(by.between(0.8, 1.3));
    type.rearContact = nearTo(*type.rearContact, by, 0.03);
    type.pins = {nearTo((*type.pins)[0], by, 0.01), nearTo((*type.pins)[1], by, 0.01)};
    type.chainEye = at(by.between(-0.8, -0.7), by.between(-0.4, -0.2));
    type.faceArea = by.between(0.3, 0.8);
    type.forceCoefficient = by.between(1.1, 1.6);
    if (type.coversAudience) {
      type.coverLowest = degrees(by.between(-50, -12));
      type.coverHighest = degrees(by.between(3, 20));
      type.throwDistance = metres(by.between(18, 60));
      type.levelAtOneMetre = by.between(128, 141);
      type.coverAcross = degrees(by.between(60, 110));
      dropOneIn(by, 4, type.coverAcross);
      dropOneIn(by, 20, type.coverLowest);
      dropOneIn(by, 20, type.throwDistance);
      dropOneIn(by, 8, type.levelAtOneMetre);
    }
    dropOneIn(by, 120, type.mass);
    dropOneIn(by, 15, type.width);
    dropOneIn(by, 15, type.faceArea);
    dropOneIn(by, 15, type.forceCoefficient);
    dropOneIn(by, 120, type.chainEye);
    tolerances(type.tolerances, by);
  }
}

void bars(catalogue::Catalogue& all, Chance& by) {
  catalogue::BarType& bar = all.bars.front();
  bar.headMass = kilograms(by.between(20, 50));
  bar.headCentreOfGravity = nearTo(*bar.headCentreOfGravity, by, 0.05);
  bar.tiltAxis = nearTo(*bar.tiltAxis, by, 0.04);
  bar.tiltTravel = std::array{degrees(-by.between(8, 16)), degrees(by.between(8, 16))};
  bar.panTravel = std::array{degrees(-by.between(10, 20)), degrees(by.between(10, 20))};
  bar.swingLimit = degrees(by.between(4, 20));
  bar.tiltStep = degrees(by.between(4, 6));
  bar.frameMass = kilograms(by.between(40, 80));
  bar.frameCentreOfGravity = nearTo(*bar.frameCentreOfGravity, by, 0.05);
  bar.stackPin = nearTo(*bar.stackPin, by, 0.03);
  bar.chainAnchor = nearTo(*bar.chainAnchor, by, 0.03);
  for (Position& corner : bar.outline) {
    corner = nearTo(corner, by, 0.02);
  }
  bar.hoistOffsetLimit = metres(by.between(0.02, 0.2));
  bar.width = metres(by.between(0.9, 1.4));
  dropOneIn(by, 15, bar.hoistOffsetLimit);
  dropOneIn(by, 15, bar.swingLimit);
  dropOneIn(by, 15, bar.width);
  dropOneIn(by, 15, bar.datum);
  if (by.lacks(10)) {
    bar.outline.clear();
  }
  tolerances(bar.tolerances, by);
  std::vector<catalogue::PickArrangement> list(3);
  list[0].spacing = metres(by.between(0.9, 1.1));
  list[1].picks = Picks::foreAftPair;
  list[1].front = at(by.between(0.3, 0.5), by.between(-0.05, 0.05));
  list[1].rear = at(by.between(-0.7, -0.5), by.between(-0.05, 0.05));
  list[2].picks = Picks::single;
  list[2].only = at(by.between(-0.2, 0.1), by.between(0, 0.1));
  bar.arrangements.swap(list);
  for (catalogue::PickArrangement& each : bar.arrangements) {
    each.limit = kilonewtons(by.between(4, 16));
    each.mostCabinets = 2 + by.oneOf(4);
    each.limitIncludesFactors = by.oneIn(4);
    dropOneIn(by, 15, each.limit);
    dropOneIn(by, 15, each.mostCabinets);
  }
}

void hoists(catalogue::Catalogue& all, Chance& by) {
  while (all.hoists.size() > 1) {
    all.hoists.erase(all.hoists.begin() + by.oneOf(static_cast<int>(all.hoists.size())));
  }
  for (catalogue::HoistType& type : all.hoists) {
    type.limit = weightOf(kilograms(by.between(450, 1900)));
    type.bodyMass = kilograms(by.between(20, 70));
    type.bodyClimbs = by.oneIn(2);
    type.chainMass = kilogramsPerMetre(by.between(0.8, 2));
    type.chainBagMass = kilograms(by.between(1, 5));
    type.chainLength = metres(by.between(9, 20));
    type.closedLength = metres(by.between(0.4, 0.7));
    type.speed = metresPerSecond(by.between(0.02, 0.15));
    type.hoistingClass = static_cast<catalogue::HoistingClass>(by.oneOf(4));
    type.holdsWithoutSecondary = by.oneIn(3);
    dropOneIn(by, 20, type.limit);
    dropOneIn(by, 20, type.bodyMass);
    dropOneIn(by, 20, type.bodyClimbs);
    dropOneIn(by, 20, type.chainMass);
    dropOneIn(by, 20, type.chainBagMass);
    dropOneIn(by, 20, type.chainLength);
    dropOneIn(by, 20, type.closedLength);
    dropOneIn(by, 12, type.speed);
    dropOneIn(by, 12, type.hoistingClass);
    dropOneIn(by, 12, type.holdsWithoutSecondary);
  }
}

void chainAndHardware(catalogue::Catalogue& all, Chance& by) {
  catalogue::ChainType& chain = all.chains.front();
  chain.pitch = metres(by.between(0.07, 0.12));
  chain.fixedLength = metres(by.between(0.04, 0.12));
  chain.links = 16 + by.oneOf(14);
  chain.limit = kilonewtons(by.between(0.8, 12));
  chain.mass = kilogramsPerMetre(by.between(0.7, 2));
  chain.limitIncludesFactors = by.oneIn(4);
  chain.discardStretchPercent = by.between(1, 3);
  chain.pitchTolerance = metres(by.between(0.00005, 0.0006));
  dropOneIn(by, 2, chain.pitchTolerance);
  dropOneIn(by, 2, chain.discardStretchPercent);
  dropOneIn(by, 15, chain.limit);
  dropOneIn(by, 15, chain.mass);
  dropOneIn(by, 40, chain.links);
  catalogue::HardwareType leg = all.hardware[2];
  leg.name = QStringLiteral("leg");
  all.hardware.push_back(leg);
  leg.name = QStringLiteral("long leg");
  all.hardware.push_back(leg);
  double length = 0.05;
  for (catalogue::HardwareType& type : all.hardware) {
    type.limit = kilonewtons(by.between(6, 40));
    type.mass = kilograms(by.between(0.4, 3));
    type.length = metres(length + by.between(0.01, 0.05));
    length += type.name.contains(QStringLiteral("leg")) ? 0.5 : 0.1;
    type.designFactor = by.between(4, 8);
    type.stiffness = kilonewtons(by.between(1000, 8000));
    dropOneIn(by, 20, type.limit);
    dropOneIn(by, 20, type.mass);
    dropOneIn(by, 60, type.length);
    dropOneIn(by, 3, type.designFactor);
    dropOneIn(by, 4, type.stiffness);
  }
  for (catalogue::CartType& cart : all.carts) {
    cart.most = 1 + by.oneOf(3);
    cart.mass = kilograms(by.between(20, 45));
    cart.length = metres(by.between(0.9, 1.4));
    cart.width = metres(by.between(0.7, 1.1));
    cart.height = metres(by.between(1, 1.7));
    cart.deck = metres(by.between(0.1, 0.3));
    cart.high = 1 + by.oneOf(2);
    dropOneIn(by, 8, cart.length);
    dropOneIn(by, 8, cart.deck);
    dropOneIn(by, 12, cart.most);
    dropOneIn(by, 8, cart.mass);
  }
}

Join joinOf(const QString& above, const QString& below, Chance& by) {
  Join made;
  made.above = above;
  made.below = below;
  made.pinLimit = kilonewtons(by.between(1, 25));
  made.contactLimit = kilonewtons(by.between(1, 20));
  made.sideShare = by.between(0.5, 0.7);
  made.limitIncludesFactors = by.oneIn(4);
  dropOneIn(by, 20, made.pinLimit);
  dropOneIn(by, 20, made.contactLimit);
  dropOneIn(by, 5, made.sideShare);
  if (below == QStringLiteral("down") && !above.isEmpty()) {
    made.kind = JointKind::pivot;
    made.travel = std::array{degrees(-by.between(15, 28)), degrees(0)};
    return made;
  }
  made.kind = by.oneIn(2) ? JointKind::seated : JointKind::pinned;
  made.angles.push_back(degrees(-by.between(0, 4)));
  if (by.oneIn(4)) {
    made.angles.push_back(degrees(-4 - by.between(0, 3)));
  }
  if (made.kind == JointKind::seated) {
    made.opensTo = degrees(by.oneIn(2) ? 0.0 : by.between(0.1, 1.5));
    made.stopLimit = kilonewtons(by.between(1, 15));
    dropOneIn(by, 20, made.opensTo);
    dropOneIn(by, 8, made.stopLimit);
  }
  return made;
}

void table(catalogue::Catalogue& all, Chance& by) {
  catalogue::StackingTable& made = all.tables.front();
  all.tables.resize(1);
  made.counts.clear();
  made.lowest.clear();
  made.held.clear();
  made.joins.clear();
  int left = 4;
  for (const CabinetType& type : all.cabinets) {
    const int most = std::min(type.name == QStringLiteral("down") ? 1 : 1 + by.oneOf(3), left);
    if (most > 0 && !by.oneIn(5)) {
      made.counts.push_back({type.name, by.oneIn(3) ? 1 : 0, most});
      left -= most;
    }
    made.lowest.push_back(type.name);
    if (type.name == QStringLiteral("down") || by.oneIn(2)) {
      made.held.push_back(type.name);
    }
  }
  if (by.oneIn(8)) {
    made.chain.clear();
  }
  for (const CabinetType& above : all.cabinets) {
    if (!by.oneIn(4)) {
      made.joins.push_back(joinOf({}, above.name, by));
    }
    for (const CabinetType& below : all.cabinets) {
      if (above.name != QStringLiteral("down") && !by.oneIn(4)) {
        made.joins.push_back(joinOf(above.name, below.name, by));
      }
    }
  }
}

} // namespace

void unlikeParts(catalogue::Catalogue& all, Chance& by) {
  cabinets(all.cabinets, by);
  bars(all, by);
  hoists(all, by);
  chainAndHardware(all, by);
  table(all, by);
}

} // namespace hangbook::testing
