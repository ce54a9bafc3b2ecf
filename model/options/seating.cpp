// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/seating.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <utility>

namespace hangbook::options {
namespace {

/// m; a place beside the origin may be computed to lie so far behind it.
constexpr double roundOff = 1e-9;

double along(Plan a, Plan b) {
  return a.x * b.x + a.y * b.y;
}
Plan minus(Plan a, Plan b) {
  return {a.x - b.x, a.y - b.y};
}
/// How far `place` lies to the left of the line along `bearing`.
double leftOf(Plan bearing, Plan place) {
  return bearing.x * place.y - bearing.y * place.x;
}

} // namespace

Plan SweptSection::placeOf(double behind, double part) const {
  const Plan l = left();
  if (radius == 0.0) {
    const double side = part * width;
    return {front.x + behind * rear.x + side * l.x, front.y + behind * rear.y + side * l.y};
  }
  // From the centre of the arc, radius + behind away (below 0 where the centre lies behind the line).
  const double angle = part * width / radius;
  const double out = (radius + behind) * std::cos(angle) - radius;
  const double side = (radius + behind) * std::sin(angle);
  return {front.x + out * rear.x + side * l.x, front.y + out * rear.y + side * l.y};
}

double SweptSection::rowLength(double behind) const {
  return radius == 0.0 ? width : width * (radius + behind) / radius;
}

std::optional<SweptSection::Seat> SweptSection::seatAt(Plan place) const {
  const Plan from = minus(place, front);
  const double out = along(from, rear);
  const double side = along(from, left());
  Seat seat{out, side / width};
  if (radius != 0.0) {
    const double sign = std::copysign(1.0, radius);
    const double angle = std::atan2(sign * side, sign * (out + radius));
    seat = {sign * std::hypot(out + radius, side) - radius, angle * radius / width};
  }
  return std::abs(seat.part) <= 0.5 ? std::optional(seat) : std::nullopt;
}

std::vector<double> SweptSection::partsOnLine(double behind, Plan origin, Plan bearing) const {
  const Plan l = left();
  if (radius == 0.0) {
    // NaN where the row runs along with the line, and so is as far from it everywhere.
    const Plan middle = minus(placeOf(behind, 0.0), origin);
    return {-leftOf(bearing, middle) / (leftOf(bearing, l) * width)};
  }
  // centre + (radius + behind)(cos φ · rear + sin φ · left) lies on the line
  const Plan centre = minus({front.x - radius * rear.x, front.y - radius * rear.y}, origin);
  const double a = (radius + behind) * leftOf(bearing, rear);
  const double b = (radius + behind) * leftOf(bearing, l);
  const double c = -leftOf(bearing, centre) / std::hypot(a, b);
  // Where the arc passes the line by, its nearest and farthest places.
  const double around = std::acos(std::clamp(c, -1.0, 1.0));
  const double middle = std::atan2(b, a);
  const auto partOf = [&](double angle) {
    return std::remainder(angle, 2.0 * std::numbers::pi) * radius / width;
  };
  return {partOf(middle + around), partOf(middle - around)};
}

double SweptSection::partNearest(double behind, Plan origin, Plan bearing) const {
  // Nearest is an end of the row, where it crosses the line or turns back from it, or where it goes by the
  // origin.
  std::vector<double> parts{0.0, -0.5, 0.5};
  for (const Plan way : {bearing, Plan{-bearing.y, bearing.x}}) {
    const std::vector<double> there = partsOnLine(behind, origin, way);
    parts.insert(parts.end(), there.begin(), there.end());
  }
  std::erase_if(parts, [](double part) { return !(std::abs(part) <= 0.5); });
  return std::ranges::min(parts, {}, [&](double part) {
    const Plan from = minus(placeOf(behind, part), origin);
    // What lies behind the hang comes after all that lies before it.
    return std::pair(along(from, bearing) < -roundOff, std::abs(leftOf(bearing, from)));
  });
}

bool SweptSection::possible(double first, double last) const {
  if (!(width > 0.0)) {
    return false;
  }
  if (radius == 0.0) {
    return true;
  }
  const bool oneSide = radius > 0.0 ? radius + first > 0.0 : radius + last < 0.0;
  return oneSide && width <= 2.0 * std::numbers::pi * std::abs(radius);
}

std::optional<SweptSection> sweptSection(const venue::Section& section) {
  if (!section.frontX || !section.frontY || !section.bearing || !section.width || !section.radius ||
      section.profile.empty()) {
    return std::nullopt;
  }
  const double bearing = hang::toRadians(inDegrees(*section.bearing));
  SweptSection made{{inMetres(*section.frontX), inMetres(*section.frontY)},
                    {std::cos(bearing), std::sin(bearing)},
                    inMetres(*section.width),
                    inMetres(*section.radius)};
  if (!made.possible(inMetres(section.profile.front().x), inMetres(section.profile.back().x))) {
    return std::nullopt;
  }
  return made;
}

} // namespace hangbook::options
