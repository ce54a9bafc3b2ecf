// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <random>

#include "options/snapshot.h"

namespace hangbook::testing {

/// Numbers by chance that are the same on every machine.
class Chance {
public:
  explicit Chance(std::uint64_t seed) : engine_(seed) {}
  double between(double low, double high) {
    return low + (high - low) * (static_cast<double>(engine_() >> 11) * 0x1.0p-53);
  }
  /// 0 … count − 1.
  int oneOf(int count) { return static_cast<int>(engine_() % static_cast<std::uint64_t>(count)); }
  bool oneIn(int count) { return oneOf(count) == 0; }
  /// As `oneIn`, but never where everything is to be known.
  bool lacks(int count) { return oneIn(count) && !allKnown; }

  bool allKnown = false;

private:
  std::mt19937_64 engine_;
};

/// An invented show no two parts of which are alike: every figure of its own, each optional one absent now
/// and then, every kind of joint, pick, section, bridle, house rule and unit. Few settings, so that all of
/// its options are quickly found.
options::Snapshot unlikeShow(std::uint64_t seed);

} // namespace hangbook::testing
