// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/carriers.h"

#include <algorithm>
#include <cmath>

#include "hang/vec2.h"
#include "options/build_force.h"
#include "options/loads.h"

namespace hangbook::options {
namespace {

void add(Case& option, const venue::Point* point, Carrier::From from) {
  const auto known = std::find_if(option.carriers.begin(), option.carriers.end(),
                                  [point](const Carrier& each) { return each.point == point; });
  if (known == option.carriers.end()) {
    option.carriers.push_back({point, {from}});
  } else {
    known->from.push_back(from);
  }
}

/// From one point's plan towards the other's, where the chains of a pair lean together or apart.
hang::Vec3 towardsTheOther(const Case& option, const Settled& settled, std::size_t pick) {
  const venue::Point& own = *option.points[pick];
  const venue::Point& other = *option.points[1 - pick];
  const double x = inMetres(other.x) - inMetres(own.x);
  const double y = inMetres(other.y) - inMetres(own.y);
  const double apart = std::hypot(x, y);
  if (apart == 0.0) {
    return {notKnown, notKnown, notKnown};
  }
  const double sign = std::copysign(1.0, option.weight->spacing - pickSpacing(settled));
  return {sign * x / apart, sign * y / apart, 0.0};
}

/// What one pick's path puts on its point or apex, straight down.
struct Parts {
  double pick = 0.0;
  double hoist = 0.0;
  double chain = 0.0;
  double rigging = 0.0;
  double sum() const { return pick + hoist + chain + rigging; }
};

double loadOf(const Settled& settled, std::size_t pick, bool atMost) {
  return atMost ? std::max(settled.build.most[pick], pickLoad(settled, pick)) : pickLoad(settled, pick);
}

/// Horizontal pull at the top of a pick's chain where it leans.
double sidewaysAtTop(const Case& option, const Settled& settled, double trimM, std::size_t pick,
                     bool atMost) {
  const double lean = leanDeg(option, settled, trimM, pick);
  if (lean == 0.0) {
    return 0.0;
  }
  return lean < 90.0 ? loadOf(settled, pick, atMost) * std::tan(hang::toRadians(lean)) : notKnown;
}

Parts partsOf(const Case& option, const Settled& settled, double trimM, const Carrier::From& from,
              bool atMost) {
  const WeightLimits& limits = *option.weight;
  if (from.leg < 0) {
    const double force = atMost ? highestPickForce(option, settled, trimM, from.pick)
                                : pickForce(option, settled, trimM, from.pick);
    const double gear = settled.gearHeavier;
    return {force, gear * limits.hoistBody, gear * limits.hoistChain, gear * limits.rigging};
  }
  const BridledPick& bridle = *option.bridles[from.pick];
  const auto number = static_cast<std::size_t>(from.leg);
  const std::vector<hang::LegForce> forces = legForces(option, settled, trimM, from.pick, atMost);
  if (forces.empty()) {
    return {notKnown, notKnown, notKnown, notKnown};
  }
  const double gear = settled.gearHeavier;
  Parts at{loadOf(settled, from.pick, atMost), gear * limits.hoistBody, gear * limits.hoistChain,
           gear * (limits.rigging + 0.5 * bridle.legWeight)};
  const double more = atMost && settled.doubt != nullptr ? bridle.legs[number].downMore : 1.0;
  const double share = more * forces[number].vertical() / at.sum();
  return {share * at.pick, share * at.hoist, share * at.chain,
          share * at.rigging + 0.5 * gear * bridle.legs[number].weight};
}

hang::Vec3 sidewaysOf(const Case& option, const Settled& settled, double trimM, const Carrier::From& from,
                      bool atMost) {
  if (from.leg >= 0) {
    const std::vector<hang::LegForce> forces = legForces(option, settled, trimM, from.pick, atMost);
    return forces.empty() ? hang::Vec3{notKnown, notKnown, notKnown}
                          : forces[static_cast<std::size_t>(from.leg)].onPoint;
  }
  const double sideways = sidewaysAtTop(option, settled, trimM, from.pick, atMost);
  return sideways == 0.0 ? hang::Vec3{} : sideways * towardsTheOther(option, settled, from.pick);
}

} // namespace

void findCarriers(const Bridles& bridles, Case& option) {
  option.bridles.clear();
  option.carriers.clear();
  for (std::size_t pick = 0; pick < option.points.size(); ++pick) {
    const auto bridle = std::find_if(bridles.begin(), bridles.end(),
                                     [&](const auto& each) { return &each->apex == option.points[pick]; });
    option.bridles.push_back(bridle == bridles.end() ? nullptr : *bridle);
    if (option.bridles.back() == nullptr) {
      add(option, option.points[pick], {pick, -1});
      continue;
    }
    int number = 0;
    for (const BridleLeg& leg : option.bridles.back()->legs) {
      add(option, leg.point, {pick, number++});
    }
  }
}

std::vector<hang::LegForce> legForces(const Case& option, const Settled& settled, double trimM,
                                      std::size_t pick, bool atMost) {
  const WeightLimits& limits = *option.weight;
  const BridledPick& bridle = *option.bridles[pick];
  const double down =
      loadOf(settled, pick, atMost) +
      settled.gearHeavier * (limits.hoistBody + limits.hoistChain + limits.rigging + 0.5 * bridle.legWeight);
  const double sideways = sidewaysAtTop(option, settled, trimM, pick, atMost);
  if (!(down > 0.0) || std::isnan(sideways)) {
    return {};
  }
  hang::Vec3 load{0.0, 0.0, -down};
  if (sideways != 0.0) {
    load = load + sideways * towardsTheOther(option, settled, pick);
  }
  return std::isfinite(load.x + load.y + load.z) ? bridle.forces(load) : std::vector<hang::LegForce>{};
}

double tensionAtTop(const BridleLeg& leg, const hang::LegForce& force) {
  return force.tension + 0.5 * leg.weight;
}

double worstTension(const Case& option, const Settled& settled, double trimM, std::size_t pick,
                    std::size_t leg) {
  const BridledPick& bridle = *option.bridles[pick];
  const std::vector<hang::LegForce> forces = legForces(option, settled, trimM, pick, true);
  if (forces.empty()) {
    return notKnown;
  }
  const bool inDoubt = settled.doubt != nullptr;
  double tension = forces[leg].tension * (inDoubt ? bridle.legs[leg].pullMore : 1.0);
  if (forces.size() > 2) {
    double down = 0.0;
    for (const hang::LegForce& each : forces) {
      down += each.vertical();
    }
    const double two = bridle.legs[leg].worstOfTwo * (inDoubt ? bridle.legs[leg].twoMore : 1.0);
    tension = std::max(tension, down * two);
  }
  return tension + 0.5 * settled.gearHeavier * bridle.legs[leg].weight;
}

namespace {

double carried(const Case& option, const Settled& settled, double trimM, std::size_t carrier, bool atMost) {
  double sum = 0.0;
  for (const Carrier::From& from : option.carriers[carrier].from) {
    sum += partsOf(option, settled, trimM, from, atMost).sum();
  }
  return sum;
}

} // namespace

double carriedAtRest(const Case& option, const Settled& settled, double trimM, std::size_t carrier) {
  return carried(option, settled, trimM, carrier, false);
}

double carriedAtMost(const Case& option, const Settled& settled, double trimM, std::size_t carrier) {
  return carried(option, settled, trimM, carrier, true);
}

PointResult pointResult(const Case& option, const Settled& settled, double trimM, std::size_t carrier,
                        bool atMost) {
  Parts all;
  hang::Vec3 sideways;
  for (const Carrier::From& from : option.carriers[carrier].from) {
    const Parts each = partsOf(option, settled, trimM, from, atMost);
    all = {all.pick + each.pick, all.hoist + each.hoist, all.chain + each.chain, all.rigging + each.rigging};
    sideways = sideways + sidewaysOf(option, settled, trimM, from, atMost);
  }
  PointResult result;
  result.point = option.carriers[carrier].point->name;
  result.parts = {{QStringLiteral("pick"), all.pick / 1000.0},
                  {QStringLiteral("hoist"), all.hoist / 1000.0},
                  {QStringLiteral("chain"), all.chain / 1000.0},
                  {QStringLiteral("rigging"), all.rigging / 1000.0}};
  for (const LoadPart& part : result.parts) {
    result.staticKn += part.kn;
  }
  result.dynamicKn = result.staticKn * option.weight->dynamic.value;
  result.horizontalKn = std::hypot(sideways.x, sideways.y) / 1000.0;
  if (option.carriers[carrier].point->capacity) {
    result.capacityKn = inKilonewtons(*option.carriers[carrier].point->capacity);
  }
  return result;
}

std::vector<PointResult> pointResults(const Case& option, const Settled& settled, double trimM) {
  std::vector<PointResult> points;
  for (std::size_t carrier = 0; carrier < option.carriers.size(); ++carrier) {
    points.push_back(pointResult(option, settled, trimM, carrier, false));
  }
  return points;
}

std::vector<BridleResult> bridleResults(const Case& option, const Settled& settled, double trimM) {
  std::vector<BridleResult> results;
  for (std::size_t pick = 0; pick < option.bridles.size(); ++pick) {
    if (option.bridles[pick] == nullptr) {
      continue;
    }
    const BridledPick& bridle = *option.bridles[pick];
    const std::vector<hang::LegForce> forces = legForces(option, settled, trimM, pick, false);
    BridleResult result;
    result.pick = pickName(settled, pick);
    result.bridle = bridle.apex.name;
    result.wantedM = {bridle.wanted.x, bridle.wanted.y, bridle.wanted.z};
    result.apexM = {inMetres(bridle.apex.x), inMetres(bridle.apex.y), inMetres(bridle.apex.z)};
    double down = 0.0;
    for (std::size_t i = 0; i < bridle.legs.size(); ++i) {
      const BridleLeg& leg = bridle.legs[i];
      BridleLegResult shown;
      shown.point = leg.point->name;
      shown.wantedM = leg.wanted;
      shown.lengthM = leg.length;
      for (const LegPiece& piece : leg.pieces) {
        shown.pieces.push_back({piece.type->name, piece.count});
      }
      const bool known = i < forces.size();
      down += known ? forces[i].vertical() : notKnown;
      shown.tensionKn = known ? tensionAtTop(leg, forces[i]) / 1000.0 : notKnown;
      shown.horizontalKn = known ? forces[i].horizontal() / 1000.0 : notKnown;
      shown.fromHorizontalDeg = known ? forces[i].fromHorizontalDeg : notKnown;
      result.legs.push_back(std::move(shown));
    }
    if (const double shift = bridle.shiftUnder(down); std::isfinite(shift)) {
      result.shiftM = shift;
    }
    results.push_back(std::move(result));
  }
  return results;
}

} // namespace hangbook::options
