// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/load_span.h"

#include <algorithm>
#include <cmath>

#include "options/catching.h"
#include "options/loads.h"
#include "options/working_limit.h"

namespace hangbook::options {
namespace {

constexpr double infinite = std::numeric_limits<double>::infinity();

constexpr double number(Verdict verdict) {
  return static_cast<double>(verdict);
}

/// The one loop: a load's verdict by its limit, never better than `floor`.
template <class Load>
void raiseBy(const LoadLimit& limit, double floor, std::span<double> worst, Load load) {
  const double tightFrom = limit.tightFrom;
  const double failsAbove = limit.failsAbove;
  const double least = limit.known ? floor : std::max(floor, number(Verdict::unproven));
  double* const into = worst.data();
  const std::size_t size = worst.size();
  for (std::size_t i = 0; i < size; ++i) {
    const double value = load(i);
    double verdict = value >= tightFrom ? number(Verdict::tight) : number(Verdict::holds);
    verdict = value > failsAbove ? number(Verdict::fails) : verdict;
    verdict = std::isnan(value) ? number(Verdict::unproven) : verdict;
    into[i] = std::max(into[i], std::max(verdict, least));
  }
}

void raiseTo(std::span<const double> verdicts, std::span<double> worst) {
  std::ranges::transform(worst, verdicts, worst.begin(),
                         [](double one, double other) { return std::max(one, other); });
}

void raiseTo(double verdict, std::span<double> worst) {
  for (double& each : worst) {
    each = std::max(each, verdict);
  }
}

/// The least of some limits, and whether one of them is not known.
struct Least {
  double limit = infinite;
  bool unknown = false;
  void add(double each) {
    unknown = unknown || std::isnan(each);
    limit = std::isnan(each) ? limit : std::min(limit, each);
  }
  double floor() const { return number(unknown ? Verdict::unproven : Verdict::holds); }
};

bool plumbOnPoints(const Case& option, std::size_t picks) {
  const bool bridled = std::any_of(option.bridles.begin(), option.bridles.end(),
                                   [](const auto& each) { return each != nullptr; });
  return !bridled && option.carriers.size() == picks; // then each carries one pick, in their order
}

std::span<const double> spanOf(const std::vector<double>& column) {
  return column;
}

} // namespace

LoadSpan::LoadSpan(const Case& option, const LoadColumns& columns)
    : option_(option), columns_(columns), usable_(columns.alike && plumbOnPoints(option, columns.picks)) {
  if (!usable_) {
    return;
  }
  const WeightLimits& limits = *option.weight;
  const double gear = columns.gearHeavier;
  body_ = gear * limits.hoistBody;
  chain_ = gear * limits.hoistChain;
  rigging_ = gear * limits.rigging;
  allAtPoint_ = gear * (limits.hoistBody + limits.hoistChain + limits.rigging);
  factors_ = factorsFor(limits, false);
  for (std::size_t pick = 0; pick < columns.picks; ++pick) {
    point_.at(pick) = LoadLimit(limits.capacity[pick]);
  }
  for (const ZoneLoad& zone : limits.zones) {
    zone_.emplace_back(zone.capacity);
  }
  lookUpGear();
  lookUpHardware();
}

void LoadSpan::lookUpGear() {
  const WeightLimits& limits = *option_.weight;
  const catalogue::HoistType& hoist = *option_.hoist;
  if (hoist.bodyClimbs) {
    climbs_ = *hoist.bodyClimbs ? columns_.gearHeavier * (limits.hoistBody + limits.hoistChain) : 0.0;
  }
  hoist_ = LoadLimit(hoist.limit ? inNewtons(*hoist.limit) * limits.hoistPart.value : notKnown);
  if (option_.snapshot->show.peopleBeneath.value_or(false) && limits.secondarySteel.empty()) {
    hoistFloor_ = number(!hoist.holdsWithoutSecondary    ? Verdict::unproven
                         : !*hoist.holdsWithoutSecondary ? Verdict::fails
                                                         : Verdict::holds);
  }
}

void LoadSpan::lookUpHardware() {
  const WeightLimits& limits = *option_.weight;
  Least pieces;
  for (const Piece& piece : limits.hardware) {
    pieces.add(usableLimit(limits, piece));
  }
  hardware_ = LoadLimit(pieces.limit);
  hardwareFloor_ = pieces.floor();
  const bool mayDoWithout = option_.snapshot->show.peopleBeneath == std::optional<bool>(false) ||
                            option_.hoist->holdsWithoutSecondary == std::optional<bool>(true);
  if (limits.hardware.empty() || (limits.secondarySteel.empty() && !mayDoWithout)) {
    hardwareFloor_ = number(Verdict::unproven);
  }
  Least usable;
  Least whole;
  for (const Piece& piece : limits.secondarySteel) {
    usable.add(usableLimit(limits, piece));
    whole.add(piece.limit);
  }
  secondaryUsable_ = LoadLimit(usable.limit);
  secondaryWhole_ = LoadLimit(whole.limit);
  secondaryFloor_ = std::max(usable.floor(), whole.floor());
  if (limits.drop.value > mostDrop) {
    secondaryFloor_ = number(Verdict::fails);
  }
}

bool LoadSpan::speaksOf(const Rule& rule) {
  const std::array rules{&pointLoadRule, &zoneLoadRule, &hoistRule, &barRule, &hardwareRule, &unevenRule};
  return std::any_of(rules.begin(), rules.end(),
                     [&rule](const Rule* each) { return each->evaluate == rule.evaluate; });
}

void LoadSpan::raise(const Rule& rule, std::span<double> worst) const {
  if (rule.evaluate == pointLoadRule.evaluate) {
    raisePoints(0, worst);
  } else if (rule.evaluate == zoneLoadRule.evaluate) {
    raiseZones(0, worst);
  } else if (rule.evaluate == hoistRule.evaluate) {
    raiseHoists(0, worst);
  } else if (rule.evaluate == barRule.evaluate) {
    raiseBar(worst);
  } else if (rule.evaluate == hardwareRule.evaluate) {
    raiseHardware(0, worst);
  } else if (rule.evaluate == unevenRule.evaluate) {
    raiseUneven(worst);
  }
}

void LoadSpan::raisePoints(std::size_t stand, std::span<double> worst) const {
  const double dynamic = option_.weight->dynamic.value;
  for (std::size_t pick = 0; pick < columns_.picks; ++pick) {
    const double* const most = columns_.stands.at(stand).at(pick).most.data();
    const catalogue::Basis basis = option_.carriers[pick].point->basis;
    const double floor = number(basis == catalogue::Basis::unknown ? Verdict::unproven : Verdict::holds);
    const auto atRest = [most, body = body_, chain = chain_, rigging = rigging_](std::size_t i) {
      return most[i] + body + chain + rigging;
    };
    if (basis == catalogue::Basis::dynamic) {
      raiseBy(point_.at(pick), floor, worst, [=](std::size_t i) { return atRest(i) * dynamic; });
    } else {
      raiseBy(point_.at(pick), floor, worst, atRest);
    }
  }
  raiseTo(spanOf(columns_.build), worst);
}

void LoadSpan::raiseZones(std::size_t stand, std::span<double> worst) const {
  const WeightLimits& limits = *option_.weight;
  if (limits.zones.empty() && limits.zonesUnknown.isEmpty() && !limits.zonesStated &&
      limits.pointsHaveSource) {
    return; // does not apply
  }
  const auto& picks = columns_.stands.at(stand);
  for (std::size_t which = 0; which < limits.zones.size(); ++which) {
    const ZoneLoad& zone = limits.zones[which];
    const bool all = std::all_of(zone.times.begin(), zone.times.end(),
                                 [&zone](int times) { return times == zone.times.front(); });
    // A pick that does not count is left out of the sum, not counted 0 times: its load may not be known.
    std::array<const double*, 2> loads{};
    std::array<double, 2> times{};
    std::size_t counted = 0;
    for (std::size_t pick = 0; pick < columns_.picks; ++pick) {
      if (zone.times[pick] != 0) {
        loads.at(counted) = all ? picks.at(pick).load.data() : picks.at(pick).most.data();
        times.at(counted) = zone.times[pick];
        ++counted;
      }
    }
    const bool dynamic = zone.basis == catalogue::Basis::dynamic;
    const double factor = dynamic ? limits.dynamic.value : 1.0; // × 1 changes no bit
    const double hangs = dynamic ? zone.otherHangsDynamic : zone.otherHangsAtRest;
    const double floor = number(zone.basis == catalogue::Basis::unknown ? Verdict::unproven : Verdict::holds);
    const auto one = [=, body = body_, chain = chain_, rigging = rigging_](std::size_t at, std::size_t i) {
      return times[at] * (loads[at][i] + body + chain + rigging);
    };
    const auto sum = [=, others = zone.others](double own) { return own * factor + hangs + others; };
    if (counted == 2) {
      raiseBy(zone_[which], floor, worst, [=](std::size_t i) { return sum(one(0, i) + one(1, i)); });
    } else if (counted == 1) {
      raiseBy(zone_[which], floor, worst, [=](std::size_t i) { return sum(one(0, i)); });
    } else {
      raiseBy(zone_[which], floor, worst, [=](std::size_t) { return sum(0.0); });
    }
  }
  const bool outside = limits.pointsWithoutZone && (limits.zonesStated || !limits.pointsHaveSource);
  if (!limits.zonesUnknown.isEmpty() || outside) {
    raiseTo(number(Verdict::unproven), worst);
  }
  raiseTo(spanOf(columns_.bounded), worst);
}

void LoadSpan::raiseHoists(std::size_t stand, std::span<double> worst) const {
  for (std::size_t pick = 0; pick < columns_.picks; ++pick) {
    const double* const most = columns_.stands.at(stand).at(pick).most.data();
    raiseBy(hoist_, hoistFloor_, worst, [most, climbs = climbs_, factors = factors_](std::size_t i) {
      return (most[i] + climbs) * factors;
    });
  }
  raiseTo(spanOf(columns_.build), worst);
}

void LoadSpan::raiseBar(std::span<double> worst) const {
  const WeightLimits& limits = *option_.weight;
  const catalogue::PickArrangement& picks = *option_.arrangement;
  const double factors = factorsFor(limits, picks.limitIncludesFactors);
  const LoadLimit limit(picks.limit ? inNewtons(*picks.limit) * limits.accessory.value : notKnown);
  raiseBy(limit, 0.0, worst,
          [weight = columns_.weight.data(), factors](std::size_t i) { return weight[i] * factors; });
  raiseTo(spanOf(columns_.bounded), worst);
}

void LoadSpan::raiseHardware(std::size_t stand, std::span<double> worst) const {
  const WeightLimits& limits = *option_.weight;
  for (std::size_t pick = 0; pick < columns_.picks; ++pick) {
    const LoadColumns::Pick& of = columns_.stands.at(stand).at(pick);
    if (!limits.hardware.empty()) {
      raiseBy(hardware_, hardwareFloor_, worst,
              [load = of.load.data(), most = of.most.data(), all = allAtPoint_, factors = factors_](
                  std::size_t i) { return (load[i] + all + (most[i] - load[i])) * factors; });
    }
    if (!limits.secondarySteel.empty()) {
      raiseSecondary(of, worst);
    }
  }
  raiseTo(hardwareFloor_, worst);
  raiseTo(spanOf(columns_.build), worst);
}

void LoadSpan::raiseSecondary(const LoadColumns::Pick& pick, std::span<double> worst) const {
  const WeightLimits& limits = *option_.weight;
  const double* const most = pick.most.data();
  raiseBy(secondaryUsable_, secondaryFloor_, worst,
          [most, factors = factors_](std::size_t i) { return most[i] * factors; });
  const double stretch = stretchPerNewton(limits);
  raiseBy(secondaryWhole_, secondaryFloor_, worst,
          [&limits, most, stretch](std::size_t i) { return catchingOf(limits, stretch, most[i]).load; });
}

void LoadSpan::raiseUneven(std::span<double> worst) const {
  if (!columns_.sidePair) {
    return; // does not apply
  }
  if (beyondBar(option_)) {
    raiseTo(number(Verdict::fails), worst);
    return;
  }
  for (const std::size_t stand : {std::size_t{1}, std::size_t{2}}) {
    raisePoints(stand, worst);
    raiseZones(stand, worst);
    raiseHoists(stand, worst);
    raiseHardware(stand, worst);
  }
}

} // namespace hangbook::options
