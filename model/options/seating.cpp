// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/seating.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numbers>
#include <utility>

namespace hangbook::options {
namespace {

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

double SweptSection::partNearest(double behind, Plan origin, Plan bearing) const {
  std::array<double, 5> parts{0.0, -0.5, 0.5, notKnown, notKnown};
  const Plan l = left();
  if (radius == 0.0) {
    const double turn = leftOf(bearing, l); // how fast the row leaves the line
    const Plan middle = minus(placeOf(behind, 0.0), origin);
    parts[3] = turn != 0.0 ? -leftOf(bearing, middle) / (turn * width) : notKnown;
  } else {
    // centre + (radius + behind)(cos φ · rear + sin φ · left) lies on the line
    const Plan centre = minus({front.x - radius * rear.x, front.y - radius * rear.y}, origin);
    const double a = (radius + behind) * leftOf(bearing, rear);
    const double b = (radius + behind) * leftOf(bearing, l);
    const double c = -leftOf(bearing, centre) / std::hypot(a, b);
    // Where the arc crosses the line; where it passes it by, its nearest and farthest places.
    const double around = std::acos(std::clamp(c, -1.0, 1.0));
    const double middle = std::atan2(b, a);
    const auto partOf = [&](double angle) {
      return std::remainder(angle, 2.0 * std::numbers::pi) * radius / width;
    };
    parts[3] = partOf(middle + around);
    parts[4] = partOf(middle - around);
  }
  double best{};
  std::pair least(true, std::numeric_limits<double>::infinity());
  for (const double part : parts) {
    if (!(std::abs(part) <= 0.5)) {
      continue;
    }
    const Plan from = minus(placeOf(behind, part), origin);
    // What lies behind the hang comes after all that lies before it.
    const std::pair off(!(along(from, bearing) > 0.0), std::abs(leftOf(bearing, from)));
    if (off < least) {
      least = off;
      best = part;
    }
  }
  return best;
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
