// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/load_limit.h"

#include <algorithm>
#include <cmath>

#include "options/loads.h"
#include "options/tight_share.h"

namespace hangbook::options {
namespace {

constexpr double infinite = std::numeric_limits<double>::infinity();

/// The least load that is at least as bad as `verdict`: division and comparison round alike for all loads, so
/// that the verdict never gets better upwards. Begins at `near`, which is a few last digits away. `limitN` is
/// finite, so that less than nothing holds and more than anything fails: both loops end.
double leastThatIs(Verdict verdict, double limitN, double near) {
  const auto is = [&](double load) { return loadUse(load, limitN).verdict >= verdict; };
  double load = near;
  while (is(std::nextafter(load, -infinite))) {
    load = std::nextafter(load, -infinite);
  }
  while (!is(load)) {
    load = std::nextafter(load, infinite);
  }
  return load;
}

} // namespace

LoadLimit::LoadLimit(double limitN) : known(!std::isnan(limitN)) {
  if (!known) {
    return;
  }
  if (std::isinf(limitN)) {
    tightFrom = failsAbove = limitN;
    return;
  }
  tightFrom = leastThatIs(Verdict::tight, limitN, std::min(limitN, tightShare * limitN));
  failsAbove = std::nextafter(leastThatIs(Verdict::fails, limitN, limitN), -infinite);
}

} // namespace hangbook::options
