// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <array>
#include <span>

#include <Eigen/Dense>

#include "hang/bridle.h"

/// What the ways of solving a bridle share.
namespace hangbook::hang::parts {

inline Eigen::Vector3d vector(Vec3 place) {
  return {place.x, place.y, place.z};
}
inline Vec3 place(const Eigen::Vector3d& vector) {
  return {vector.x(), vector.y(), vector.z()};
}

/// Nearer to each other than this, places are one (m); nearer to one line or plane than this, directions are
/// in it (sine of the angle).
inline constexpr double flattest = 1e-6;

/// Whether so much to a side is nothing beside `along`. NaN is nothing.
inline bool isFlat(double across, double along = 1.0) {
  return !(across >= flattest * along);
}
/// Whether a force of so much counts beside the load, or is what the balance leaves by rounding.
inline bool counts(double force, double load) {
  return force > 1e-9 * load;
}
/// A leg may pull or hang slack; none may push.
inline bool noneBelow0(const std::array<double, 3>& tensions) {
  return std::ranges::all_of(tensions, [](double tension) { return tension >= 0.0; });
}

/// Throws Error(badInput), naming what is wrong with points or load.
void checkBridle(std::span<const Vec3> points, Vec3 load, std::size_t least);

/// A leg that pulls with `tension` (0: slack) between point and apex.
LegForce legForce(const Eigen::Vector3d& point, const Eigen::Vector3d& apex, double tension);

} // namespace hangbook::hang::parts
