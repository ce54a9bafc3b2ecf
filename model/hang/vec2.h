// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <cmath>
#include <numbers>

/// Points and directions of a hang's own plane and of the world, in metres.
namespace hangbook::hang {

/// In the plane of the hang: x forward (the way it aims), z up.
struct Vec2 {
  double x{};
  double z{};

  friend constexpr bool operator==(const Vec2&, const Vec2&) = default;
};

constexpr Vec2 operator+(Vec2 a, Vec2 b) {
  return {a.x + b.x, a.z + b.z};
}
constexpr Vec2 operator-(Vec2 a, Vec2 b) {
  return {a.x - b.x, a.z - b.z};
}
constexpr Vec2 operator*(double factor, Vec2 a) {
  return {factor * a.x, factor * a.z};
}
constexpr double dot(Vec2 a, Vec2 b) {
  return a.x * b.x + a.z * b.z;
}
/// Moment of a force at an arm, positive where it lifts the nose (turns x towards z).
constexpr double moment(Vec2 arm, Vec2 force) {
  return arm.x * force.z - arm.z * force.x;
}
inline double length(Vec2 a) {
  return std::hypot(a.x, a.z);
}
/// A quarter turn nose up.
constexpr Vec2 quarterTurn(Vec2 a) {
  return {-a.z, a.x};
}

/// A turn in the plane, nose up positive.
struct Turn {
  double cosine = 1.0;
  double sine{};

  constexpr Vec2 operator()(Vec2 a) const { return {a.x * cosine - a.z * sine, a.x * sine + a.z * cosine}; }
};
inline Turn turnBy(double radians) {
  return {std::cos(radians), std::sin(radians)};
}

/// In the world: x horizontal the way the hang faces at zero swing, y to the left of that, z up.
struct Vec3 {
  double x{};
  double y{};
  double z{};
};

constexpr Vec3 operator+(Vec3 a, Vec3 b) {
  return {a.x + b.x, a.y + b.y, a.z + b.z};
}
constexpr Vec3 operator*(double factor, Vec3 a) {
  return {factor * a.x, factor * a.y, factor * a.z};
}

constexpr double toRadians(double degrees) {
  return degrees * (std::numbers::pi / 180.0);
}
constexpr double toDegrees(double radians) {
  return radians * (180.0 / std::numbers::pi);
}

/// Radians of the angle with this sine. Beyond ±1, where rounding alone can bring it, the angle of ±1.
inline double arcsine(double sine) {
  return std::asin(std::clamp(sine, -1.0, 1.0));
}

/// Comparing angles that went through degrees and back: a thousandth of a millionth of a degree.
inline constexpr double angleSlackDeg = 1e-9;
/// Comparing lengths that went through a root: a nanometre.
inline constexpr double lengthSlack = 1e-9;

/// Whether two angles are the same but for rounding. NaN is like nothing.
inline bool sameAngle(double oneDeg, double otherDeg) {
  return std::abs(oneDeg - otherDeg) <= angleSlackDeg;
}
/// Whether this is a length, and not what rounding leaves of none. NaN and what is below 0 are none.
constexpr bool isLength(double metres) {
  return metres > lengthSlack;
}
/// Whether anything can rise by so much: straight down to straight up. NaN is no elevation.
inline bool isElevation(double deg) {
  return std::abs(deg) <= 90.0;
}

} // namespace hangbook::hang
