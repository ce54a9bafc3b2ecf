// SPDX-License-Identifier: GPL-3.0-or-later
#include "hang/bridle.h"

#include <algorithm>
#include <cmath>
#include <string>

#include "hang/bridle_parts.h"
#include "quantity/error.h"

namespace hangbook::hang {
namespace {

using Eigen::MatrixXd;
using Eigen::Vector3d;
using Eigen::VectorXd;

/// As coordinates may be: beyond is a slip of the unit.
constexpr double farthest = 1000.0;

bool sane(Vec3 place, double most) {
  return std::abs(place.x) <= most && std::abs(place.y) <= most && std::abs(place.z) <= most;
}

} // namespace

namespace parts {

void checkBridle(std::span<const Vec3> points, Vec3 load, std::size_t least) {
  if (points.size() < least || points.size() > 3) {
    throw Error(Trouble::badInput, "expected " + std::to_string(least) + " to 3 points", "points");
  }
  for (std::size_t i = 0; i < points.size(); ++i) {
    const std::string key = "points[" + std::to_string(i) + "]";
    if (!sane(points[i], farthest)) {
      throw Error(Trouble::badInput, "must lie within 1000 m", key);
    }
    for (std::size_t j = 0; j < i; ++j) {
      if (isFlat((vector(points[i]) - vector(points[j])).norm())) {
        throw Error(Trouble::badInput, "stands where another one does", key);
      }
    }
  }
  if (!sane(load, 1e9) || !(vector(load).norm() > 0.0)) {
    throw Error(Trouble::badInput, "expected a force other than 0", "load");
  }
}

LegForce legForce(const Vector3d& point, const Vector3d& apex, double tension) {
  const Vector3d down = apex - point;
  LegForce leg;
  leg.tension = tension;
  leg.slack = tension <= 0.0;
  leg.length = down.norm();
  leg.fromHorizontalDeg = toDegrees(std::atan2(-down.z(), std::hypot(down.x(), down.y())));
  leg.onPoint = place((tension / leg.length) * down);
  return leg;
}

} // namespace parts

std::vector<double> legLengths(std::span<const Vec3> points, Vec3 apex) {
  std::vector<double> lengths;
  for (const Vec3 point : points) {
    lengths.push_back((parts::vector(point) - parts::vector(apex)).norm());
  }
  return lengths;
}

Bridle bridleAt(std::span<const Vec3> points, Vec3 apex, Vec3 load) {
  parts::checkBridle(points, load, 2);
  if (!sane(apex, farthest)) {
    throw Error(Trouble::badInput, "must lie within 1000 m", "apex");
  }
  const Vector3d at = parts::vector(apex);
  const Vector3d force = parts::vector(load);
  const auto count = static_cast<Eigen::Index>(points.size());
  MatrixXd ways(3, count);
  for (Eigen::Index i = 0; i < count; ++i) {
    const Vector3d up = parts::vector(points[static_cast<std::size_t>(i)]) - at;
    if (parts::isFlat(up.norm())) {
      throw Error(Trouble::badInput, "stands at a point: that is no bridle", "apex");
    }
    ways.col(i) = up.normalized();
  }
  Eigen::ColPivHouseholderQR<MatrixXd> solver(ways);
  solver.setThreshold(parts::flattest);
  if (solver.rank() < count) {
    throw Error(Trouble::notPossible,
                count == 2 ? "the apex stands on the line through its points: no pull holds it there"
                           : "three legs in one plane: what each carries does not follow from balance");
  }
  const VectorXd tension = solver.solve(-force);
  if (parts::counts((ways * tension + force).norm(), force.norm())) {
    throw Error(Trouble::notPossible,
                "two legs cannot hold an apex beside the plane of their points and the load: it would swing");
  }
  if (const auto least = std::ranges::min_element(tension); parts::counts(-*least, force.norm())) {
    throw Error(Trouble::notPossible,
                "leg " + std::to_string(least - tension.begin() + 1) +
                    " would have to push to hold the apex there: it is slack, and the apex swings away");
  }
  Bridle bridle{apex, {}};
  for (Eigen::Index i = 0; i < count; ++i) {
    bridle.legs.push_back(
        parts::legForce(parts::vector(points[static_cast<std::size_t>(i)]), at, std::max(tension[i], 0.0)));
  }
  return bridle;
}

} // namespace hangbook::hang
