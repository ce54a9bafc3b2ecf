// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/box.h"

#include <algorithm>
#include <array>

#include "options/load_span.h"
#include "options/room_limits.h"
#include "options/weight_limits.h"

namespace hangbook::options {

std::vector<OverAll> overAll(const Case& option, const LoadColumns& all, const LoadColumns& corners) {
  std::vector<OverAll> proven(weightRules().size());
  if (!all.alike || !all.loaded) {
    return proven;
  }
  const LoadSpan span(option, corners);
  if (!span.usable()) {
    return proven;
  }
  for (std::size_t i = 0; i < proven.size(); ++i) {
    const Rule& rule = weightRules()[i];
    if (LoadSpan::speaksOf(rule)) {
      std::array<double, 2> ends{};
      span.raise(rule, ends);
      proven[i] = {static_cast<Verdict>(ends[0]), static_cast<Verdict>(ends[1])};
    }
  }
  return proven;
}

bool isOfRigAndHoist(const Rule& rule) {
  const std::array rules{&barRule, &jointRule, &contactRule, &chainRule, &pickShareRule, &travelRule};
  return std::any_of(rules.begin(), rules.end(),
                     [&](const Rule* each) { return each->evaluate == rule.evaluate; });
}

} // namespace hangbook::options
