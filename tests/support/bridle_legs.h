// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <vector>

#include "hang/bridle.h"

namespace hangbook::testing {

/// From each point a leg as long as the way to the apex.
inline std::vector<hang::BridleLeg> legsTo(const std::vector<hang::Vec3>& points, hang::Vec3 apex) {
  const std::vector<double> lengths = hang::legLengths(points, apex);
  std::vector<hang::BridleLeg> legs;
  for (std::size_t i = 0; i < points.size(); ++i) {
    legs.push_back({points[i], lengths[i]});
  }
  return legs;
}

} // namespace hangbook::testing
