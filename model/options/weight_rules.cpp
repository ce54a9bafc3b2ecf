// SPDX-License-Identifier: GPL-3.0-or-later
#include <array>

#include "options/weight_limits.h"

namespace hangbook::options {

std::span<const Rule> weightRules() {
  static const std::array<Rule, 14> rules{pointLoadRule, zoneLoadRule, bridleRule,  hoistRule, barRule,
                                          countRule,     jointRule,    contactRule, chainRule, pickShareRule,
                                          hardwareRule,  windRule,     leanRule,    unevenRule};
  return rules;
}

} // namespace hangbook::options
