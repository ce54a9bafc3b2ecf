// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>

#include "options/rule.h"
#include "options/tight_share.h"

namespace hangbook::options {
namespace {

/// `slack`: how far the value is inside its limit.
Verdict bySpare(double slack, double margin) {
  if (std::isnan(slack)) {
    return Verdict::unproven;
  }
  if (slack < 0.0) {
    return Verdict::fails;
  }
  if (std::isnan(margin)) {
    return Verdict::unproven;
  }
  return slack == 0.0 || slack < margin ? Verdict::tight : Verdict::holds;
}

} // namespace

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
  return value == limit ? Verdict::tight : bySpare(limit - value, margin);
}

Verdict againstLowerLimit(double value, double limit, double margin) {
  return value == limit ? Verdict::tight : bySpare(value - limit, margin);
}

} // namespace hangbook::options
