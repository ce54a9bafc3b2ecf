// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "venue/venue.h"

namespace hangbook::venue {

/// Length of the shortest way over the ground from one venue to another, m: the geodesic of the WGS 84
/// ellipsoid (C. F. F. Karney, Algorithms for geodesics, Journal of Geodesy 87, 2013, pages 43–55;
/// GeographicLib's own implementation). No road is shorter. Not known where either place lacks a latitude or
/// longitude.
std::optional<double> shortestWay(const Venue& from, const Venue& to);

} // namespace hangbook::venue
