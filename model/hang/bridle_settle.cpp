// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <array>
#include <cmath>
#include <string>

#include "hang/bridle.h"
#include "hang/bridle_parts.h"
#include "quantity/error.h"

namespace hangbook::hang {
namespace {

using Eigen::Matrix3d;
using Eigen::Vector3d;

/// A leg may be beyond its length by this where the taut ones were solved in closed form, m.
constexpr double withinLength = 1e-9;

[[noreturn]] void refuse(const std::string& text) {
  throw Error(Trouble::notPossible, text);
}

struct Leg {
  Vector3d point;
  double length;
  double stiffness;
};

/// An apex held by some of the legs, with what each of all legs pulls.
struct Held {
  Vector3d apex;
  std::array<double, 3> tension{};
};

bool reaches(const std::vector<Leg>& legs, const Vector3d& apex) {
  return std::all_of(legs.begin(), legs.end(),
                     [&](const Leg& leg) { return (apex - leg.point).norm() <= leg.length + withinLength; });
}

std::optional<Held> heldBy(const std::vector<Leg>& legs, const Vector3d& load, std::size_t one) {
  Held held{legs[one].point + legs[one].length * load.normalized(), {}};
  held.tension[one] = load.norm();
  return held;
}

/// In the plane of the two points and the load; on the circle on which both are taut, the place farthest
/// along the load.
std::optional<Held> heldBy(const std::vector<Leg>& legs, const Vector3d& load, std::size_t one,
                           std::size_t other) {
  const Vector3d between = legs[other].point - legs[one].point;
  const double apart = between.norm();
  const Vector3d along = between / apart;
  const double a = legs[one].length;
  const double b = legs[other].length;
  const double foot = (apart * apart + a * a - b * b) / (2.0 * apart);
  // Too short to meet, they come out with no depth, too.
  const double depth = std::sqrt(std::max(0.0, (a - foot) * (a + foot)));
  const Vector3d across = load - load.dot(along) * along;
  if (parts::isFlat(across.norm(), load.norm()) || parts::isFlat(depth, apart)) {
    return std::nullopt; // nearer to one line than that no finite tension is worth the name
  }
  Held held{legs[one].point + foot * along + depth * across.normalized(), {}};
  // Two equations in the plane: along the line between the points, and square to it.
  const double fAlong = load.dot(along);
  const double fAcross = across.norm();
  // one pulls (−foot, −depth)/a, other (apart − foot, −depth)/b.
  const double perA = (fAcross * (apart - foot) / depth + fAlong) / apart;
  const double perB = fAcross / depth - perA;
  held.tension[one] = perA * a;
  held.tension[other] = perB * b;
  return parts::noneBelow0(held.tension) ? std::optional<Held>(held) : std::nullopt;
}

/// Where three spheres meet, on the side of the load.
std::optional<Held> heldByAll(const std::vector<Leg>& legs, const Vector3d& load) {
  const Vector3d to1 = legs[1].point - legs[0].point;
  const Vector3d to2 = legs[2].point - legs[0].point;
  const Vector3d normal = to1.cross(to2);
  const double area = normal.norm();
  if (parts::isFlat(area, to1.norm() * to2.norm())) {
    return std::nullopt; // points in one line: any two that are taut with the third decide, see below
  }
  const auto side = [&](const Vector3d& to, double length) {
    return 0.5 * (to.squaredNorm() + legs[0].length * legs[0].length - length * length);
  };
  // The foot of the apex in the plane of the points: foot·to1 and foot·to2 are known, foot·normal is 0.
  Matrix3d rows;
  rows << to1.transpose(), to2.transpose(), normal.transpose();
  const Vector3d foot =
      rows.fullPivLu().solve(Vector3d(side(to1, legs[1].length), side(to2, legs[2].length), 0.0));
  // Too short to meet, they come out in the plane of the points: flat, see below.
  const double square = std::max(0.0, legs[0].length * legs[0].length - foot.squaredNorm());
  const Vector3d square1 = normal / area;
  const double depth = std::copysign(std::sqrt(square), load.dot(square1));
  Held held{legs[0].point + foot + depth * square1, {}};
  Matrix3d ways;
  for (int i = 0; i < 3; ++i) {
    ways.col(i) = (legs[static_cast<std::size_t>(i)].point - held.apex).normalized();
  }
  const Eigen::FullPivLU<Matrix3d> solver(ways);
  if (parts::isFlat(std::abs(ways.determinant()))) {
    return std::nullopt;
  }
  const Vector3d tension = solver.solve(-load);
  for (int i = 0; i < 3; ++i) {
    held.tension.at(static_cast<std::size_t>(i)) = tension[i];
  }
  return parts::noneBelow0(held.tension) ? std::optional<Held>(held) : std::nullopt;
}

/// Balance with pulls only, and no leg beyond its length: as the reach of stiff legs is convex, whatever
/// fulfils this is the least of the energy.
Held settleStiff(const std::vector<Leg>& legs, const Vector3d& load) {
  const auto good = [&](const std::optional<Held>& held) { return held && reaches(legs, held->apex); };
  for (std::size_t i = 0; i < legs.size(); ++i) {
    if (const auto held = heldBy(legs, load, i); good(held)) {
      return *held;
    }
  }
  for (std::size_t i = 0; i < legs.size(); ++i) {
    for (std::size_t j = i + 1; j < legs.size(); ++j) {
      if (const auto held = heldBy(legs, load, i, j); good(held)) {
        return *held;
      }
    }
  }
  if (legs.size() == 3) {
    if (const auto held = heldByAll(legs, load); good(held)) {
      return *held;
    }
  }
  refuse("legs of these lengths do not meet where a finite pull would hold the load");
}

/// What the legs and the load pull at the apex, less the balance; and how it changes with the apex.
struct Pull {
  Vector3d slope;
  Matrix3d curvature;
};

Pull pullAt(const std::vector<Leg>& legs, const Vector3d& load, const Vector3d& apex) {
  Pull pull{-load, Matrix3d::Zero()};
  for (const Leg& leg : legs) {
    const Vector3d down = apex - leg.point;
    const double length = down.norm();
    const double stretch = length - leg.length;
    if (stretch <= 0.0) {
      continue;
    }
    const Vector3d way = down / length;
    const double tension = leg.stiffness * stretch;
    pull.slope += tension * way;
    pull.curvature += leg.stiffness * way * way.transpose() +
                      (tension / length) * (Matrix3d::Identity() - way * way.transpose());
  }
  return pull;
}

/// Newton's method on the convex energy, begun where every leg is stretched. A step is halved while the
/// energy would rise along it, as its slopes at both ends say.
Held settleElastic(const std::vector<Leg>& legs, const Vector3d& load) {
  constexpr double beyondAll = 1e4; // m: points and lengths are within 1000
  Vector3d apex = legs.front().point + beyondAll * load.normalized();
  // A little of the unit matrix keeps a flat direction solvable, and does not move the answer.
  const auto stiffest = std::ranges::max_element(legs, {}, &Leg::stiffness);
  const Matrix3d little = 1e-12 * stiffest->stiffness * Matrix3d::Identity();
  Pull here = pullAt(legs, load, apex);
  Vector3d way;
  do {
    way = (here.curvature + little).ldlt().solve(-here.slope);
    Pull there = pullAt(legs, load, apex + way);
    while ((here.slope + there.slope).dot(way) > 0.0) {
      way *= 0.5;
      there = pullAt(legs, load, apex + way);
    }
    apex += way;
    here = there;
  } while (isLength(way.norm()));
  if (!(here.slope.norm() <= 1e-6 * load.norm())) {
    refuse("the balance of these elastic legs cannot be computed");
  }
  Held held{apex, {}};
  for (std::size_t i = 0; i < legs.size(); ++i) {
    held.tension.at(i) = std::max(0.0, ((apex - legs[i].point).norm() - legs[i].length) * legs[i].stiffness);
  }
  return held;
}

std::vector<Leg> checked(std::span<const BridleLeg> legs, Vec3 load) {
  std::vector<Vec3> points;
  std::vector<Leg> result;
  for (const BridleLeg& leg : legs) {
    const std::string key = "legs[" + std::to_string(points.size()) + "]";
    if (!(leg.length > 0.0 && leg.length <= 1000.0)) {
      throw Error(Trouble::badInput, "must be above 0 and at most 1000 m", key + ".length");
    }
    if (!(leg.stiffness > 0.0)) {
      throw Error(Trouble::badInput, "must be above 0", key + ".stiffness");
    }
    points.push_back(leg.point);
    result.push_back({parts::vector(leg.point), leg.length, leg.stiffness});
  }
  parts::checkBridle(points, load, 1);
  return result;
}

Bridle shown(const std::vector<Leg>& legs, const Held& held) {
  Bridle bridle{parts::place(held.apex), {}};
  for (std::size_t i = 0; i < legs.size(); ++i) {
    bridle.legs.push_back(parts::legForce(legs[i].point, held.apex, held.tension.at(i)));
  }
  return bridle;
}

} // namespace

Bridle settleBridle(std::span<const BridleLeg> legs, Vec3 load) {
  const std::vector<Leg> all = checked(legs, load);
  const auto stiff =
      std::count_if(all.begin(), all.end(), [](const Leg& leg) { return std::isinf(leg.stiffness); });
  if (stiff != 0 && stiff != static_cast<std::ptrdiff_t>(all.size())) {
    throw Error(Trouble::badInput, "expected legs that all stretch, or none", "legs");
  }
  const Vector3d force = parts::vector(load);
  return shown(all, stiff == 0 ? settleElastic(all, force) : settleStiff(all, force));
}

std::vector<double> worstOfTwo(std::span<const BridleLeg> legs, Vec3 load) {
  std::vector<double> worst(legs.size(), 0.0);
  const auto pair = [&](std::size_t i, std::size_t j) {
    const std::array<BridleLeg, 2> two{BridleLeg{legs[i].point, legs[i].length},
                                       BridleLeg{legs[j].point, legs[j].length}};
    const Bridle bridle = settleBridle(two, load);
    worst[i] = std::max(worst[i], bridle.legs[0].tension);
    worst[j] = std::max(worst[j], bridle.legs[1].tension);
  };
  for (std::size_t i = 0; i < legs.size(); ++i) {
    for (std::size_t j = i + 1; j < legs.size(); ++j) {
      pair(i, j);
    }
  }
  return worst;
}

} // namespace hangbook::hang
