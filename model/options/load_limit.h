// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <limits>

/// A limit on loads as two plain comparisons, for loops that the compiler lays side by side.
namespace hangbook::options {

/// The very loads in N at which `loadUse(load, limit)` turns to tight and to fails: the rounding of N to kN
/// is in the two figures, so that nothing is divided for each load and no verdict differs by a last digit.
struct LoadLimit {
  double tightFrom = std::numeric_limits<double>::infinity();
  double failsAbove = std::numeric_limits<double>::infinity();
  bool known{}; ///< else every load is unproven

  LoadLimit() = default;
  /// NaN: not known.
  explicit LoadLimit(double limitN);
};

} // namespace hangbook::options
