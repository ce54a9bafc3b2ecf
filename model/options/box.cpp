// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/box.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "options/loads.h"
#include "options/room_limits.h"

namespace hangbook::options {
namespace {

constexpr double leastLean = -std::numeric_limits<double>::infinity(); // the trim that gives none

bool among(std::span<const Rule* const> rules, const Rule& rule) {
  return std::any_of(rules.begin(), rules.end(),
                     [&](const Rule* each) { return each->evaluate == rule.evaluate; });
}

bool risesWithLoads(const Rule& rule) {
  const std::array rules{&pointLoadRule, &zoneLoadRule, &hoistRule, &hardwareRule, &barRule};
  return among(rules, rule);
}

bool bounded(const Settled& settled) {
  return settled.doubt == nullptr || settled.doubt->worst.bounded;
}

/// The least and the most of every load.
struct Corners {
  Settled least;
  Settled most;
  bool loaded = true; ///< every pick, at every setting
  bool alike =
      true; ///< in all that is no load: how far the figures' doubts are known, what gear they make heavier

  explicit Corners(std::span<const Settled> settings) : least(settings.front()), most(settings.front()) {
    for (const Settled& each : settings) {
      alike = alike && bounded(each) == bounded(least) && each.gearHeavier == least.gearHeavier;
      least.statics.mass = std::min(least.statics.mass, each.statics.mass);
      most.statics.mass = std::max(most.statics.mass, each.statics.mass);
      for (std::size_t pick = 0; pick < each.statics.pickCount; ++pick) {
        take(pick, each);
      }
      if (!each.build.unknown) {
        least.build.unknown.reset();
      } else if (!most.build.unknown) {
        most.build.unknown = each.build.unknown;
      }
    }
  }

private:
  void take(std::size_t pick, const Settled& each) {
    const double load = pickLoad(each, pick);
    const double building = each.build.most[pick];
    loaded = loaded && load > 0.0 && std::isfinite(load) && std::isfinite(building);
    least.statics.pickLoads[pick].load = std::min(pickLoad(least, pick), load);
    most.statics.pickLoads[pick].load = std::max(pickLoad(most, pick), load);
    least.build.most[pick] = std::min(least.build.most[pick], building);
    most.build.most[pick] = std::max(most.build.most[pick], building);
  }
};

} // namespace

std::vector<OverAll> overAll(const Case& option, std::span<const Settled> settings) {
  std::vector<OverAll> all(weightRules().size());
  const bool bridled = std::any_of(option.bridles.begin(), option.bridles.end(),
                                   [](const auto& each) { return each != nullptr; });
  if (settings.empty() || bridled) {
    return all;
  }
  const Corners corners(settings);
  if (!corners.loaded || !corners.alike) {
    return all;
  }
  for (std::size_t i = 0; i < all.size(); ++i) {
    const Rule& rule = weightRules()[i];
    if (risesWithLoads(rule)) {
      all[i] = {rule.evaluate(option, &corners.least, leastLean).verdict,
                rule.evaluate(option, &corners.most, leastLean).verdict};
    }
  }
  return all;
}

bool isOfRigAndHoist(const Rule& rule) {
  const std::array rules{&barRule, &jointRule, &contactRule, &chainRule, &pickShareRule, &travelRule};
  return among(rules, rule);
}

} // namespace hangbook::options
