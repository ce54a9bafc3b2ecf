// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/wind_legs.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace hangbook::options {
namespace {

constexpr LegInGust unknownLeg{notKnown, notKnown, notKnown, notKnown};

/// What is not known once stays so, but a leg that goes slack is that whatever else is not known.
void takeLeast(LegInGust& worst, double there) {
  const bool slack = worst.least <= 0.0 || there <= 0.0;
  const bool known = !std::isnan(worst.least) && !std::isnan(there);
  worst.least = slack || known ? std::fmin(worst.least, there) : notKnown;
}

/// Takes the worse of both.
void take(LegInGust& worst, const LegInGust& there) {
  const auto most = [](double& known, double now) {
    known = std::isnan(known) ? known : std::max(now, known);
  };
  most(worst.most, there.most);
  most(worst.down, there.down);
  takeLeast(worst, there.least);
  worst.fromHorizontalDeg = std::isnan(worst.fromHorizontalDeg)
                                ? worst.fromHorizontalDeg
                                : std::min(there.fromHorizontalDeg, worst.fromHorizontalDeg);
}

LegInGust legUnder(const hang::PushedBridle& bridle, std::size_t leg, hang::SidewaysLoad load) {
  const hang::PushedLeg pushed = bridle.leg(leg, load);
  // A pair's own pull is within: of two legs it is the same figure.
  return {std::max(bridle.worstOfTwo(leg, load), pushed.most), pushed.least, pushed.down,
          pushed.fromHorizontalDeg};
}

/// Between the hook and the apex, with half of the legs, N.
double gearBelow(const Case& option, std::size_t pick, double heavier) {
  const WeightLimits& limits = *option.weight;
  return heavier *
         (limits.hoistBody + limits.hoistChain + limits.rigging + 0.5 * option.bridles[pick]->legWeight);
}

} // namespace

std::vector<LegInGust> legsInGust(const Case& option, const Settled& settled, std::size_t pick,
                                  const HungInGust& hung) {
  const BridledPick& bridle = *option.bridles[pick];
  const bool inDoubt = settled.doubt != nullptr;
  if (bridle.asMade.empty() || (inDoubt && bridle.atEnds.empty())) {
    return std::vector<LegInGust>(bridle.legs.size(), unknownLeg);
  }
  const double most = gearBelow(option, pick, settled.gearHeavier);
  const double least = gearBelow(option, pick, std::max(0.0, 2.0 - settled.gearHeavier));
  // With the most on its chain, each figure but one is worst; the least that a leg pulls may be with the
  // least.
  const std::array loads{hang::SidewaysLoad{hung.most + most, hung.most * hung.slope},
                         hang::SidewaysLoad{hung.most + least, hung.most * hung.slope}};
  const double lightest = std::max(hung.least, 0.0); // not known stays so
  const hang::SidewaysLoad light{lightest + least, lightest == 0.0 ? 0.0 : lightest * hung.slope};
  std::vector<LegInGust> legs;
  for (std::size_t i = 0; i < bridle.legs.size(); ++i) {
    LegInGust worst = legUnder(bridle.asMade.front(), i, loads.front());
    const auto takeShape = [&](const hang::PushedBridle& shape) {
      for (const hang::SidewaysLoad& load : loads) {
        take(worst, legUnder(shape, i, load));
      }
      takeLeast(worst, light.down > 0.0 ? shape.leg(i, light).least : light.down);
    };
    takeShape(bridle.asMade.front());
    if (inDoubt) {
      std::for_each(bridle.atEnds.begin(), bridle.atEnds.end(), takeShape);
    }
    const double own = 0.5 * settled.gearHeavier * bridle.legs[i].weight;
    worst.most += own;
    worst.down += own;
    legs.push_back(worst);
  }
  return legs;
}

double wholeBridle(const Case& option, const Settled& settled, std::size_t pick, double hung) {
  return hung + gearBelow(option, pick, settled.gearHeavier) +
         0.5 * settled.gearHeavier * option.bridles[pick]->legWeight;
}

QStringList bridleLacks(const Case& option, const Settled& settled, std::size_t pick) {
  QStringList lacks;
  if (option.bridles[pick] == nullptr) {
    return lacks;
  }
  const BridledPick& bridle = *option.bridles[pick];
  if (!bridle.fault.isEmpty()) {
    lacks.append(QStringLiteral("how bridle %1 is rigged (%2)").arg(bridle.apex.name, bridle.fault));
    return lacks;
  }
  for (const QString& what : bridle.missing) {
    lacks.append(QStringLiteral("of bridle %1 %2").arg(bridle.apex.name, what));
  }
  if (bridle.asMade.empty() || (settled.doubt != nullptr && bridle.atEnds.empty())) {
    lacks.append(QStringLiteral("what a push from the side does to legs of bridle %1 as long as these")
                     .arg(bridle.apex.name));
  }
  return lacks;
}

} // namespace hangbook::options
