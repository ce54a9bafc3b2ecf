// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/bridle_limits.h"

#include <cmath>

#include "options/sentence.h"
#include "options/working_limit.h"

namespace hangbook::options {

Weakest weakestOf(const Case& option, const BridleLeg& leg) {
  Weakest weakest;
  for (const LegPiece& piece : leg.pieces) {
    const double limit = usableLimit(*option.weight, *piece.type);
    if (weakest.type == nullptr || std::isnan(limit) || limit < weakest.limit) {
      weakest = {limit, piece.type};
    }
    if (std::isnan(limit)) {
      break;
    }
  }
  return weakest;
}

Use legAngleUse(const WeightLimits& limits, double fromHorizontalDeg) {
  Use use;
  use.value = fromHorizontalDeg;
  use.limit = limits.legAngleLeast.value;
  use.verdict = againstLowerLimit(use.value, use.limit, 0.0);
  const double preferred = limits.legAnglePreferred.value;
  // Exactly at the least angle is tight; so is flatter than the house likes it.
  const Verdict byHouse = std::isnan(preferred)   ? Verdict::unproven
                          : use.value < preferred ? Verdict::tight
                                                  : Verdict::holds;
  use.verdict = worse(use.verdict, byHouse);
  return use;
}

} // namespace hangbook::options
