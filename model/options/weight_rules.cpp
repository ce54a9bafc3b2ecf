// SPDX-License-Identifier: GPL-3.0-or-later
#include <array>

#include "options/weight_limits.h"

namespace hangbook::options {

std::span<const Rule> weightRules() {
  static const std::array<Rule, 12> rules{pointLoadRule, zoneLoadRule, hoistRule,   barRule,
                                          countRule,     jointRule,    contactRule, chainRule,
                                          pickShareRule, hardwareRule, windRule,    leanRule};
  return rules;
}

} // namespace hangbook::options
