// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/pick_path.h"

#include "options/carriers.h"
#include "options/doubts.h"
#include "options/loads.h"

namespace hangbook::options {
namespace {

PickPath pathOf(const Case& option, const Settled& stated, double trimM, std::size_t pick) {
  const WeightLimits& limits = *option.weight;
  PickPath path;
  path.hook = pickForce(option, stated, trimM, pick) / 1000.0;
  path.hoist = limits.hoistBody / 1000.0;
  path.chain = limits.hoistChain / 1000.0;
  path.rigging = limits.rigging / 1000.0;
  if (option.bridles[pick] == nullptr) {
    return path;
  }
  path.halfLegs = 0.5 * option.bridles[pick]->legWeight / 1000.0;
  const std::vector<hang::LegForce> legs = legForces(option, stated, trimM, pick, false);
  path.sideways = legs.empty() ? std::array{notKnown, notKnown} : std::array{0.0, 0.0};
  for (const hang::LegForce& leg : legs) { // balance: together they take what the chain pulls
    path.sideways[0] += leg.onPoint.x / 1000.0;
    path.sideways[1] += leg.onPoint.y / 1000.0;
  }
  return path;
}

} // namespace

std::vector<PickPath> pickPaths(const Snapshot& snapshot, const Option& option) {
  std::vector<PickPath> paths;
  if (!option.setting) {
    return paths;
  }
  const double trimM = option.setting->trimM;
  judge(snapshot, option.key, *option.setting, [&](const Case& of, const Settled* settled) {
    paths.clear();
    if (settled == nullptr) {
      return;
    }
    const Settled stated = settled->doubt == nullptr ? *settled : asStated(*settled);
    for (std::size_t pick = 0; pick < of.points.size(); ++pick) {
      paths.push_back(pathOf(of, stated, trimM, pick));
    }
  });
  return paths;
}

} // namespace hangbook::options
