// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>

#include "options/rule.h"
#include "options/tight_share.h"

namespace hangbook::options {

Verdict bySlack(double slack, double margin) {
  if (slack < 0.0) {
    return Verdict::fails;
  }
  if (std::isnan(slack) || std::isnan(margin)) {
    return Verdict::unproven;
  }
  return slack == 0.0 || slack < margin ? Verdict::tight : Verdict::holds;
}

Verdict againstLoadLimit(double value, double limit) {
  if (std::isnan(value) || std::isnan(limit)) {
    return Verdict::unproven;
  }
  if (value > limit) {
    return Verdict::fails;
  }
  return value >= tightShare * limit ? Verdict::tight : Verdict::holds;
}

Verdict againstUpperLimit(double value, double limit, double margin) {
  return value == limit ? Verdict::tight : bySlack(limit - value, margin);
}

Verdict againstLowerLimit(double value, double limit, double margin) {
  return value == limit ? Verdict::tight : bySlack(value - limit, margin);
}

} // namespace hangbook::options
