// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

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

/// Throws Error(badInput), naming what is wrong with points or load.
void checkBridle(std::span<const Vec3> points, Vec3 load, std::size_t least);

/// A leg that pulls with `tension` (0: slack) between point and apex.
LegForce legForce(const Eigen::Vector3d& point, const Eigen::Vector3d& apex, double tension);

} // namespace hangbook::hang::parts
