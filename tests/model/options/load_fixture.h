// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cmath>
#include <memory>
#include <vector>

#include "options/load_columns.h"
#include "options/weight_limits.h"
#include "options/working_limit.h"

namespace hangbook::testing {

/// Loads of one setting of a pair, N.
struct PairLoads {
  double left{};
  double right{};
  double mostLeft{}; ///< at the worst step of the build
  double mostRight{};
};

/// A pair of picks on two points that stand as far apart as they do (1 m), in round figures: the gear is
/// taken twice as heavy as stated, so that body, chain and rigging are 600, 400 and 200 N; dynamic
/// factor 1.5, share 2, so that factors are 3. No limit is near until a test sets one.
struct LoadCase {
  options::Snapshot snapshot;
  catalogue::HoistType hoist;
  catalogue::BarType bar;
  catalogue::PickArrangement picks;
  catalogue::HardwareType shackle;
  catalogue::HardwareType steel; ///< 2 m, 1000 kN of stiffness: 2 µm a newton
  std::vector<venue::Point> points = std::vector<venue::Point>(2);
  options::WeightLimits limits;

  LoadCase() {
    hoist.bodyClimbs = true;
    hoist.limit = kilonewtons(1000);
    picks.picks = catalogue::Picks::sidePair;
    picks.spacing = metres(1.0);
    picks.limit = kilonewtons(1000);
    steel.kind = catalogue::HardwareKind::secondarySteel;
    steel.limit = kilonewtons(1000);
    steel.length = metres(2.0);
    steel.stiffness = kilonewtons(1000);
    shackle.kind = catalogue::HardwareKind::shackle;
    shackle.limit = kilonewtons(1000);
    points[0].basis = points[1].basis = catalogue::Basis::atRest;
    points[0].z = points[1].z = metres(14.0);
    snapshot.show.peopleBeneath = false;
    limits.nobodyBeneath = true;
    limits.coefficients = options::coefficientTable(1.0);
    limits.dynamic.value = 1.5;
    limits.liftShare.value = 2.0;
    limits.accessory.value = limits.hoistPart.value = 1.0;
    limits.secondary.value = 1.0;
    limits.drop.value = 0.0;
    limits.hoistDifference.value = 0.6;
    limits.leanMost.value = 60.0;
    limits.hoistBody = 300.0;
    limits.hoistChain = 200.0;
    limits.rigging = 100.0;
    limits.capacity = {1e6, 1e6};
    limits.pointsHaveSource = true;
    limits.spacing = 1.0;
    limits.hardware = {{QStringLiteral("shackle"), 1e6, {}, &shackle}};
    limits.secondarySteel = {{QStringLiteral("steel"), 1e6, {}, &steel}};
  }
  LoadCase(const LoadCase&) = delete;
  LoadCase& operator=(const LoadCase&) = delete;

  options::Case option() const {
    options::Case made;
    made.snapshot = &snapshot;
    made.hoist = &hoist;
    made.bar = &bar;
    made.arrangement = &picks;
    for (const venue::Point& point : points) {
      made.points.push_back(&point);
      made.carriers.push_back({&point, {{made.carriers.size(), -1}}});
    }
    made.bridles = {nullptr, nullptr};
    made.weight = std::make_shared<options::WeightLimits>(limits);
    return made;
  }
};

/// The centre 0.4 m below the middle of the picks, nothing aside, so that with the left hoist 0.6 m higher
/// (sin 0.6, tan 0.75) the left pick has ½ + 0.4 × 0.75 = 0.8 of the weight.
inline options::Settled settledWith(const PairLoads& loads, bool sidePair = false) {
  options::Settled settled;
  settled.statics.mass = (loads.left + loads.right) / standardGravity;
  settled.statics.cg = {0.0, 0.0, -0.4};
  settled.statics.pickCount = 2;
  settled.statics.pickLoads = {hang::PickLoad{hang::PickName::left, loads.left},
                               hang::PickLoad{hang::PickName::right, loads.right}};
  if (sidePair) {
    settled.statics.side = hang::SideAttitude{};
  }
  settled.layout.picks = {{0.0, 0.5, 0.0}, {0.0, -0.5, 0.0}};
  settled.build.most = {loads.mostLeft, loads.mostRight};
  settled.build.unknown.reset();
  settled.gearHeavier = 2.0;
  return settled;
}

} // namespace hangbook::testing
