// SPDX-License-Identifier: GPL-3.0-or-later
#include "venue/travel.h"

#include <GeographicLib/Geodesic.hpp>

namespace hangbook::venue {

std::optional<double> shortestWay(const Venue& from, const Venue& to) {
  if (!from.latitude || !from.longitude || !to.latitude || !to.longitude) {
    return std::nullopt;
  }
  double metres = 0.0;
  GeographicLib::Geodesic::WGS84().Inverse(*from.latitude, *from.longitude, *to.latitude, *to.longitude,
                                           metres);
  return metres;
}

} // namespace hangbook::venue
