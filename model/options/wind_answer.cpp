// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <limits>

#include "hang/halving.h"
#include "hang/vec2.h"
#include "options/loads.h"
#include "options/placement.h"
#include "options/wind_joints.h"
#include "options/wind_limits.h"

namespace hangbook::options {
namespace {

/// No hang is asked about more than this, m/s; WMO's force 12 begins at 32.7.
constexpr double mostWind = 100.0;

/// The first limit that fails at this wind.
std::optional<WindUse> failing(const Case& option, const Settled& settled, double trimM,
                               const WindForce& wind, double speed) {
  for (const WindUse& each : InGust(option, settled, trimM, wind, gustPressure(speed)).uses()) {
    if (each.use.verdict == Verdict::fails) {
      return each;
    }
  }
  return std::nullopt;
}

/// All of it rises with the wind, so that halving finds where the first one fails.
void findLimit(const Case& option, const Settled& settled, double trimM, const WindForce& wind,
               WindAnswer& answer) {
  auto by = failing(option, settled, trimM, wind, mostWind);
  if (!by) {
    answer.failsAt = std::numeric_limits<double>::infinity();
    return;
  }
  const auto holds = [&](double speed) {
    const auto there = failing(option, settled, trimM, wind, speed);
    by = there ? there : by;
    return !there;
  };
  answer.failsAt =
      holds(0.0) ? hang::turnBetween({0.0, mostWind}, std::numeric_limits<double>::epsilon(), holds).within
                 : 0.0;
  answer.failsBy = wordsFor(*by, option, settled);
}

void addLegs(const Case& option, const InGust& gust, WindAnswer& answer) {
  bool any = false;
  for (std::size_t pick = 0; pick < option.bridles.size(); ++pick) {
    for (std::size_t leg = 0; leg < gust.legs(pick).size(); ++leg) {
      const LegInGust& there = gust.legs(pick)[leg];
      const BridledPick& bridle = *option.bridles[pick];
      answer.legs.push_back({bridle.apex.name, bridle.legs[leg].point->name, there.most / 1000.0,
                             there.least / 1000.0, there.fromHorizontalDeg});
      any = true;
    }
  }
  for (std::size_t carrier = 0; any && carrier < option.carriers.size(); ++carrier) {
    answer.points.push_back({option.carriers[carrier].point->name, gust.carried(carrier) / 1000.0});
  }
}

} // namespace

std::optional<WindAnswer> windAnswer(const Case& option, const Settled& settled, double trimM) {
  if (!option.snapshot->venue.outdoors.value_or(false)) {
    return std::nullopt;
  }
  const WindForce wind = windForce(option, settled);
  WindAnswer answer;
  const std::optional<Speed>& stated = option.snapshot->show.wind;
  answer.gust = stated ? inMetresPerSecond(*stated) : notKnown;
  answer.pressure = gustPressure(answer.gust);
  const FromDirection most = wind.greatestForce();
  answer.mostKn = answer.pressure * most.value / 1000.0;
  answer.mostFromDeg = most.fromDeg;
  answer.frontKn = answer.pressure * wind.forceFrom(0.0) / 1000.0;
  answer.sideKn = answer.pressure * wind.forceFrom(90.0) / 1000.0;
  answer.belowM = most.value > 0.0 ? wind.momentFrom(most.fromDeg) / most.value : notKnown;
  const InGust gust(option, settled, trimM, wind, answer.pressure);
  answer.leanDeg = gust.leanDeg();
  answer.swingDeg = hang::toDegrees(swingRadians(settled, wind, answer.pressure));
  answer.wetKg = option.hang->wetMass ? inKilograms(*option.hang->wetMass) : notKnown;
  for (std::size_t pick = 0; pick < option.points.size(); ++pick) {
    answer.picks.push_back({pickName(settled, pick), gust.pickForce(pick) / 1000.0,
                            gust.pickLeft(pick) / 1000.0, gust.pointAtRest(pick) / 1000.0});
  }
  answer.heightM = highestPick(option, settled, trimM);
  const HouseValue first = option.house->figure(QStringLiteral("wind-first-action"));
  const HouseValue second = option.house->figure(QStringLiteral("wind-second-action"));
  answer.firstShare = first.value.value_or(notKnown);
  answer.secondShare = second.value.value_or(notKnown);
  answer.sharesSource =
      first.source == second.source ? first.source : first.source + QStringLiteral("; ") + second.source;
  addLegs(option, gust, answer);
  answer.missing = windStatementLacks(option, settled, trimM) + wind.missing;
  for (std::size_t pick = 0; pick < option.bridles.size(); ++pick) {
    answer.missing += bridleLacks(option, settled, pick);
  }
  findLimit(option, settled, trimM, wind, answer);
  // What a gust loads at all it loads by then: a stop carries nothing while its joint is pressed shut.
  const double worst = gustPressure(std::min(answer.failsAt, mostWind));
  for (const WindUse& each : InGust(option, settled, trimM, wind, worst).uses()) {
    if (std::isnan(each.use.value) || std::isnan(each.use.limit)) {
      answer.missing.append(QStringLiteral("load or limit of ") + wordsFor(each, option, settled));
    }
  }
  answer.missing.removeDuplicates();
  return answer;
}

} // namespace hangbook::options
