// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/load_bounds.h"

#include <algorithm>
#include <cmath>

#include "hang/vec2.h"
#include "options/loads.h"

namespace hangbook::options {
namespace {

/// More than the rounding of what a load goes through can take off it, as a part of it.
constexpr double roundingAtMost = 1e-12;

/// 1 ÷ cos of the most that a chain leans where the lean rule holds; NaN where nothing bounds it: the chains
/// of a level fore-aft pair lean by another angle than the one that the rule judges.
double mostLeanFactor(const Case& option) {
  const double most = option.weight->leanMost.value + hang::angleSlackDeg;
  if (!(most < 90.0) || levelOff(option) != 0.0) {
    return notKnown;
  }
  return (1.0 + roundingAtMost) / std::cos(hang::toRadians(most));
}

} // namespace

LoadBounds::LoadBounds(const Case& option, RigFold& fold, std::size_t settings)
    : option_(option), settings_(settings) {
  const RigFold::Loads& loads = fold.loads(option);
  take(plumb_, loads.all, loads.corners);
  const double factor = option.points.size() > 1 ? mostLeanFactor(option) : notKnown;
  if (loads.corners && !std::isnan(factor)) {
    const RigFold::Loads& leaning = fold.leaningLoads(option, factor);
    take(leaning_, *leaning.leaning, leaning.leaningCorners);
  }
}

void LoadBounds::take(Asked& asked, const LoadColumns& columns,
                      const std::optional<LoadColumns>& corners) const {
  asked.columns = &columns;
  asked.verdicts.resize(weightRules().size());
  asked.overAll =
      corners ? options::overAll(option_, columns, *corners) : std::vector<OverAll>(weightRules().size());
}

std::optional<Verdict> LoadBounds::of(Asked& asked, std::size_t which, std::size_t setting) const {
  const Rule& rule = weightRules()[which];
  if (asked.columns == nullptr || !LoadSpan::speaksOf(rule)) {
    return std::nullopt;
  }
  if (asked.overAll[which].same()) {
    return asked.overAll[which].most;
  }
  if (!asked.span) {
    asked.span.emplace(option_, *asked.columns);
  }
  if (!asked.span->usable()) {
    return std::nullopt;
  }
  std::vector<double>& verdicts = asked.verdicts[which];
  if (verdicts.empty()) {
    verdicts.assign(settings_, static_cast<double>(Verdict::holds));
    asked.span->raise(rule, verdicts);
  }
  return static_cast<Verdict>(verdicts[setting]);
}

std::optional<Verdict> LoadBounds::atAnyLean(std::size_t which, std::size_t setting) {
  if (leaning_.columns == nullptr) {
    return std::nullopt;
  }
  if (leaning_.overAll[which].most == plumb_.overAll[which].least) {
    return plumb_.overAll[which].least;
  }
  const std::optional<Verdict> best = least(which, setting);
  const std::optional<Verdict> worst = best ? most(which, setting) : std::nullopt;
  return worst && *best == *worst ? best : std::nullopt;
}

} // namespace hangbook::options
