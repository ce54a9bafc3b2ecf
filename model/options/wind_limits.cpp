// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/wind_limits.h"

#include <algorithm>
#include <cmath>
#include <functional>

#include "hang/sides.h"
#include "hang/vec2.h"
#include "options/bridle_limits.h"
#include "options/joint_sides.h"
#include "options/loads.h"
#include "options/placement.h"
#include "options/wind_joints.h"
#include "options/working_limit.h"

namespace hangbook::options {
namespace {

/// A gust is the mean over no longer than this, s (weather services; ASCE 7 for its basic wind speed).
constexpr double gustSeconds = 3.0;

double wetMass(const Case& option) {
  return option.hang->wetMass ? inKilograms(*option.hang->wetMass) : 0.0;
}

double overCosine(double load, double leanDeg) {
  if (std::isnan(leanDeg)) {
    return notKnown;
  }
  return leanDeg < 90.0 ? load / std::cos(hang::toRadians(leanDeg)) : std::numeric_limits<double>::infinity();
}

double climbing(const Case& option, const Settled& settled) {
  if (!option.hoist->bodyClimbs) {
    return notKnown;
  }
  return *option.hoist->bodyClimbs
             ? settled.gearHeavier * (option.weight->hoistBody + option.weight->hoistChain)
             : 0.0;
}

/// A lighter hang leans more: N, at its lightest.
double leastWeight(const Settled& settled) {
  return settled.doubt == nullptr ? weightBelow(settled) : settled.doubt->worst.leastMass * standardGravity;
}

/// A force, N, of which something must be left.
Use staysAbove(double newtons) {
  Use left;
  left.value = newtons / 1000.0;
  left.limit = 0.0;
  left.verdict = std::isnan(left.value) ? Verdict::unproven
                 : left.value > 0.0     ? Verdict::holds
                                        : Verdict::fails;
  return left;
}

QString jointWords(const Case& option, std::size_t element) {
  return QStringLiteral("the joint of element %1 (%2)").arg(element + 1).arg(option.cabinets[element]->name);
}

QString legName(const Case& option, const WindUse& use) {
  const BridledPick& bridle = *option.bridles[use.number];
  return QStringLiteral("the leg to point %1 of bridle %2")
      .arg(bridle.legs[use.piece].point->name, bridle.apex.name);
}

bool countedAlike(const ZoneLoad& zone) {
  return std::all_of(zone.times.begin(), zone.times.end(),
                     [&zone](int times) { return times == zone.times.front(); });
}

} // namespace

InGust::InGust(const Case& option, const Settled& settled, double trimM, const WindForce& wind,
               double pressure)
    : option_(option), settled_(settled), trimM_(trimM), wind_(wind), pressure_(pressure),
      force_(pressure * wind.greatestForce().value) {
  leanDeg_ = hang::toDegrees(std::atan2(force_, leastWeight(settled)));
  if (settled.statics.pickCount == 2) {
    const double lever = settled.doubt == nullptr ? 1.0 : settled.doubt->worst.lever;
    // Each face may act lower or higher than stated, all of them with the whole force.
    const double offHeight = heightDoubt(settled) * wind.greatestForce().value;
    moved_ = lever * pressure * (wind.greatestMomentAlong(pickLineDeg(settled)).value + offHeight) /
             pickSpacing(settled);
  }
  legs_.resize(option.bridles.size());
  for (std::size_t pick = 0; pick < legs_.size(); ++pick) {
    if (option.bridles[pick] != nullptr) {
      const double lean = leanDeg_ + options::leanDeg(option, settled, trimM, pick);
      const double slope =
          lean >= 90.0 ? std::numeric_limits<double>::infinity() : std::tan(hang::toRadians(lean));
      legs_[pick] = legsInGust(option, settled, pick, {mostHung(pick), pickLeft(pick), slope});
    }
  }
}

double InGust::mostHung(std::size_t pick) const {
  return pickLoad(settled_, pick) + wet(pick) + moved_;
}

double InGust::wet(std::size_t pick) const {
  const double weight = leastWeight(settled_);
  return weight > 0.0 ? wetMass(option_) * standardGravity * std::max(0.0, pickLoad(settled_, pick) / weight)
                      : 0.0;
}

double InGust::pickForce(std::size_t pick) const {
  return overCosine(mostHung(pick), leanDeg_ + options::leanDeg(option_, settled_, trimM_, pick));
}

double InGust::pickLeft(std::size_t pick) const {
  const double least =
      settled_.doubt == nullptr ? pickLoad(settled_, pick) : settled_.doubt->worst.leastPick[pick];
  return least - moved_;
}

double InGust::pointAtRest(std::size_t pick) const {
  return options::pointAtRest(option_, settled_, trimM_, pick) +
         (pickForce(pick) - options::pickForce(option_, settled_, trimM_, pick));
}

double InGust::carriedBy(const Carrier::From& from) const {
  return from.leg < 0 ? pointAtRest(from.pick) : legs_[from.pick][static_cast<std::size_t>(from.leg)].down;
}

double InGust::carried(std::size_t carrier) const {
  double sum = 0.0;
  for (const Carrier::From& from : option_.carriers[carrier].from) {
    sum += carriedBy(from);
  }
  return sum;
}

/// What this hang puts on a zone. What one leg of a bridle gains by leaning the others lose, and what one
/// pick gains by the move the other: where they count alike, neither adds to the sum.
double InGust::ownOn(const ZoneLoad& zone) const {
  const double gained = countedAlike(zone) ? moved_ : 0.0;
  double own = 0.0;
  for (std::size_t pick = 0; pick < option_.points.size(); ++pick) {
    std::vector<int> times;
    double parts = 0.0;
    for (std::size_t carrier = 0; carrier < zone.times.size(); ++carrier) {
      for (const Carrier::From& from : option_.carriers[carrier].from) {
        if (from.pick == pick) {
          times.push_back(zone.times[carrier]);
          parts += zone.times[carrier] == 0 ? 0.0 : zone.times[carrier] * carriedBy(from);
        }
      }
    }
    if (times.empty()) {
      continue;
    }
    const bool alike = std::adjacent_find(times.begin(), times.end(), std::not_equal_to<>()) == times.end();
    if (option_.bridles[pick] == nullptr) {
      const double load = pointAtRest(pick) - gained / std::cos(hang::toRadians(leanDeg_));
      parts = times.front() == 0 ? 0.0 : times.front() * load;
    } else if (alike && times.front() != 0) {
      parts = times.front() * wholeBridle(option_, settled_, pick, mostHung(pick) - gained);
    }
    own += parts;
  }
  return own;
}

Use InGust::zoneUse(std::size_t number) const {
  const ZoneLoad& zone = option_.weight->zones[number];
  const double own = ownOn(zone);
  const bool dynamic = zone.basis == catalogue::Basis::dynamic;
  const double load = dynamic ? own * option_.weight->dynamic.value + zone.otherHangsDynamic + zone.others
                              : own + zone.otherHangsAtRest + zone.others;
  Use use = loadUse(load, zone.capacity, static_cast<int>(number));
  // The other hangs stand in the same wind, and what it does to them is not in their loads.
  if (zone.basis == catalogue::Basis::unknown || zone.otherHangsAtRest != 0.0) {
    use.verdict = std::max(use.verdict, Verdict::unproven);
  }
  return use;
}

std::vector<WindUse> InGust::uses() const {
  const WeightLimits& limits = *option_.weight;
  std::vector<WindUse> all;
  WorstUse leans;
  for (std::size_t pick = 0; pick < option_.points.size(); ++pick) {
    Use lean;
    lean.value = leanDeg_ + options::leanDeg(option_, settled_, trimM_, pick);
    lean.limit = limits.leanMost.value;
    lean.verdict = againstUpperLimit(lean.value, lean.limit, 0.0);
    leans.add(lean);
  }
  all.push_back({WindLimit::lean, 0, 0, leans.get().value()});
  const double factors = factorsFor(limits, false);
  for (std::size_t pick = 0; pick < option_.points.size(); ++pick) {
    all.push_back({WindLimit::unloads, pick, 0, staysAbove(pickLeft(pick))});
    for (std::size_t carrier = 0; carrier < option_.carriers.size(); ++carrier) {
      if (option_.carriers[carrier].from.front().pick == pick) {
        addPoint(carrier, all);
      }
    }
    all.push_back({WindLimit::hoist, pick, 0,
                   loadUse((pickForce(pick) + climbing(option_, settled_)) * factors,
                           option_.hoist->limit ? inNewtons(*option_.hoist->limit) * limits.hoistPart.value
                                                : notKnown)});
    for (std::size_t piece = 0; piece < limits.hardware.size(); ++piece) {
      all.push_back({WindLimit::hardware, pick, piece,
                     loadUse(pointAtRest(pick) * factors, usableLimit(limits, limits.hardware[piece]))});
    }
    addLegs(pick, all);
  }
  const catalogue::PickArrangement& picks = *option_.arrangement;
  const double below = overCosine(weightBelow(settled_) + wetMass(option_) * standardGravity, leanDeg_);
  all.push_back({WindLimit::bar, 0, 0,
                 loadUse(below * factorsFor(limits, picks.limitIncludesFactors),
                         picks.limit ? inNewtons(*picks.limit) * limits.accessory.value : notKnown)});
  for (std::size_t zone = 0; zone < limits.zones.size(); ++zone) {
    all.push_back({WindLimit::zone, zone, 0, zoneUse(zone)});
  }
  addJoints(all);
  return all;
}

void InGust::addPoint(std::size_t carrier, std::vector<WindUse>& all) const {
  const WeightLimits& limits = *option_.weight;
  const catalogue::Basis basis = option_.carriers[carrier].point->basis;
  const double atRest = carried(carrier);
  Use point = loadUse(basis == catalogue::Basis::dynamic ? atRest * limits.dynamic.value : atRest,
                      limits.capacity[carrier], static_cast<int>(carrier));
  if (basis == catalogue::Basis::unknown) {
    point.verdict = std::max(point.verdict, Verdict::unproven);
  }
  all.push_back({WindLimit::point, carrier, 0, point});
}

void InGust::addLegs(std::size_t pick, std::vector<WindUse>& all) const {
  const WeightLimits& limits = *option_.weight;
  const double factors = factorsFor(limits, false);
  for (std::size_t leg = 0; leg < legs_[pick].size(); ++leg) {
    const LegInGust& there = legs_[pick][leg];
    const double limit = weakestOf(option_, option_.bridles[pick]->legs[leg]).limit;
    all.push_back({WindLimit::leg, pick, leg, loadUse(there.most * factors, limit)});
    all.push_back({WindLimit::legSlack, pick, leg, staysAbove(there.least)});
    all.push_back({WindLimit::legAngle, pick, leg, legAngleUse(limits, there.fromHorizontalDeg)});
  }
}

void InGust::addJoints(std::vector<WindUse>& all) const {
  const WeightLimits& limits = *option_.weight;
  const double heavier = 1.0 + wetMass(option_) * standardGravity / leastWeight(settled_);
  const hang::Pushed pushed = pushedBy(option_, settled_, wind_, pressure_, heavier);
  if (option_.chain != nullptr) {
    all.push_back({WindLimit::chain, 0, 0,
                   loadUse(pushed.tensionMost * factorsFor(limits, option_.chain->limitIncludesFactors),
                           usableOf(option_, option_.chain->limit))});
    if (pushed.tensionLeast) {
      all.push_back({WindLimit::slack, 0, 0, staysAbove(*pushed.tensionLeast)});
    }
  }
  for (std::size_t i = 0; i < pushed.joints.size(); ++i) {
    const catalogue::Join& join = *option_.joins[i];
    const hang::PushedJoint& joint = pushed.joints[i];
    const double factors = factorsFor(limits, join.limitIncludesFactors);
    for (std::size_t pin = 0; pin < static_cast<std::size_t>(joint.most.pinCount); ++pin) {
      const hang::SidePin side = hang::onSide(joint.most, joint.most.pinLoads[pin], sideShare(option_, join),
                                              sidesApart(option_, i));
      all.push_back(
          {WindLimit::pin, i, pin, loadUse(side.force * factors, usableOf(option_, join.pinLimit))});
    }
    if (join.kind != catalogue::JointKind::seated) {
      continue;
    }
    all.push_back({WindLimit::contact, i, 0,
                   loadUse(*joint.most.contact * factors, usableOf(option_, join.contactLimit))});
    if (joint.most.stop && *joint.most.stop > 0.0) {
      all.push_back(
          {WindLimit::stop, i, 0, loadUse(*joint.most.stop * factors, usableOf(option_, join.stopLimit))});
    }
    if (joint.contactLeast) {
      all.push_back({WindLimit::opens, i, 0, staysAbove(*joint.contactLeast)});
    }
  }
}

QString wordsFor(const WindUse& use, const Case& option, const Settled& settled) {
  switch (use.limit) {
  case WindLimit::lean:
    return QStringLiteral("lean of the chains");
  case WindLimit::unloads:
    return QStringLiteral("pick %1 unloads").arg(pickName(settled, use.number));
  case WindLimit::point:
    return QStringLiteral("point-load of %1").arg(option.carriers[use.number].point->name);
  case WindLimit::hoist:
    return QStringLiteral("hoist at %1").arg(pickName(settled, use.number));
  case WindLimit::hardware:
    return QStringLiteral("hardware: %1 under %2")
        .arg(option.weight->hardware[use.piece].name, option.points[use.number]->name);
  case WindLimit::bar:
    return QStringLiteral("bar");
  case WindLimit::chain:
    return QStringLiteral("chain");
  case WindLimit::slack:
    return QStringLiteral("pull of the chain that holds the pivot");
  case WindLimit::pin:
    return (use.piece == 0 ? QStringLiteral("first pin of %1") : QStringLiteral("second pin of %1"))
        .arg(jointWords(option, use.number));
  case WindLimit::contact:
    return QStringLiteral("rear contact of %1").arg(jointWords(option, use.number));
  case WindLimit::stop:
    return QStringLiteral("rear stop of %1").arg(jointWords(option, use.number));
  case WindLimit::opens:
    return QStringLiteral("what keeps %1 shut").arg(jointWords(option, use.number));
  case WindLimit::leg:
    return QStringLiteral("pull of ") + legName(option, use);
  case WindLimit::legSlack:
    return QStringLiteral("what keeps taut ") + legName(option, use);
  case WindLimit::legAngle:
    return QStringLiteral("angle of ") + legName(option, use);
  case WindLimit::zone:
    break;
  }
  return QStringLiteral("zone-load of %1").arg(option.weight->zones[use.number].name);
}

QStringList windStatementLacks(const Case& option, const Settled& settled, double trimM) {
  const calendar::Show& show = option.snapshot->show;
  QStringList lacks;
  if (!option.hang->wetMass) {
    lacks.append(QStringLiteral("mass of wet cloth and ice on hang %1 (0 kg where there is none)")
                     .arg(option.hang->name));
  }
  if (!show.wind) {
    lacks.append(QStringLiteral("the gust that the hang is to stand in"));
    return lacks;
  }
  if (show.windBasis != calendar::WindBasis::gust) {
    lacks.append(QStringLiteral("whether the wind stated is a gust (a mean does not serve)"));
  }
  if (!show.windAveraging) {
    lacks.append(QStringLiteral("over which time the gust is averaged"));
  } else if (*show.windAveraging > gustSeconds) {
    lacks.append(
        QStringLiteral("the gust averaged over at most 3 s (stated over %1 s)").arg(*show.windAveraging));
  }
  const double highest = highestPick(option, settled, trimM);
  if (!show.windHeight) {
    lacks.append(QStringLiteral("for which height the gust is stated"));
  } else if (!(inMetres(*show.windHeight) >= highest)) {
    lacks.append(std::isnan(highest)
                     ? QStringLiteral("the height at which the hang stands")
                     : QStringLiteral("the gust at the picks' height of %1 m (stated for %2 m)")
                           .arg(QString::number(highest, 'f', 2))
                           .arg(inMetres(*show.windHeight)));
  }
  return lacks;
}

} // namespace hangbook::options
