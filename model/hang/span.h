// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

#include "hang/vec2.h"

/// Interval arithmetic: whatever the operands are within their spans, the result lies in the result's span
/// (R. E. Moore, Interval Analysis, 1966). Rounding is not directed outwards: the last digits are no part of
/// the promise. A span that is not bounded has infinite ends, and NaN goes through.
namespace hangbook::hang {

struct Span {
  double low{};
  double high{};

  constexpr Span() = default;
  constexpr Span(double exact)
      : low(exact), high(exact) {} // NOLINT(google-explicit-constructor): a figure is one
  constexpr Span(double from, double to) : low(from), high(to) {}

  static constexpr Span around(double middle, double eachWay) { return {middle - eachWay, middle + eachWay}; }
  static constexpr Span unbounded() {
    return {-std::numeric_limits<double>::infinity(), std::numeric_limits<double>::infinity()};
  }
  /// The greatest that it can be, whatever its sign.
  double magnitude() const { return std::max(std::abs(low), std::abs(high)); }
  constexpr double width() const { return high - low; }
  constexpr bool holds(double value) const { return low <= value && value <= high; }
  /// Whatever it is within this.
  constexpr bool above0() const { return low > 0.0; }
};

constexpr Span operator+(Span a, Span b) {
  return {a.low + b.low, a.high + b.high};
}
constexpr Span operator-(Span a, Span b) {
  return {a.low - b.high, a.high - b.low};
}
constexpr Span operator-(Span a) {
  return {-a.high, -a.low};
}
inline Span operator*(Span a, Span b) {
  const double one = a.low * b.low;
  const double two = a.low * b.high;
  const double three = a.high * b.low;
  const double four = a.high * b.high;
  return {std::min(std::min(one, two), std::min(three, four)),
          std::max(std::max(one, two), std::max(three, four))};
}
/// A divisor that may be 0 leaves the quotient unbounded.
inline Span operator/(Span a, Span b) {
  return b.above0() || b.high < 0.0 ? a * Span{1.0 / b.high, 1.0 / b.low} : Span::unbounded();
}
inline Span& operator+=(Span& a, Span b) {
  return a = a + b;
}
inline Span hull(Span a, Span b) {
  return {std::min(a.low, b.low), std::max(a.high, b.high)};
}
inline Span square(Span a) {
  const double least = a.holds(0.0) ? 0.0 : std::min(std::abs(a.low), std::abs(a.high));
  return {least * least, a.magnitude() * a.magnitude()};
}
/// Of what cannot be below 0: a lower end below it is what the arithmetic, not the figure, has given.
inline Span root(Span a) {
  return {std::sqrt(std::max(0.0, a.low)), std::sqrt(std::max(0.0, a.high))};
}
inline Span cosine(Span radians) {
  Span result = hull(std::cos(radians.low), std::cos(radians.high));
  const double turns = std::numbers::pi;
  const double first = std::ceil(radians.low / turns);
  if (first * turns <= radians.high) { // a crest or trough inside; more than one: both
    const bool even = std::fmod(first, 2.0) == 0.0;
    result = hull(result, even ? 1.0 : -1.0);
    result = (first + 1.0) * turns <= radians.high ? Span{-1.0, 1.0} : result;
  }
  return result;
}
inline Span sine(Span radians) {
  return cosine(radians - Span(0.5 * std::numbers::pi));
}
inline Span arcsine(Span sine) {
  return {arcsine(sine.low), arcsine(sine.high)};
}
inline Span inRadians(Span degrees) {
  return {toRadians(degrees.low), toRadians(degrees.high)};
}
inline Span inDegrees(Span radians) {
  return {toDegrees(radians.low), toDegrees(radians.high)};
}

/// A place or force of the hang's plane within its spans.
struct Span2 {
  Span x;
  Span z;

  Span2() = default;
  Span2(Span alongX, Span alongZ) : x(alongX), z(alongZ) {}
  /// Each coordinate `eachWay` off at most.
  static Span2 around(Vec2 middle, double eachWay) {
    return {Span::around(middle.x, eachWay), Span::around(middle.z, eachWay)};
  }
};

inline Span2 operator+(const Span2& a, const Span2& b) {
  return {a.x + b.x, a.z + b.z};
}
inline Span2 operator-(const Span2& a, const Span2& b) {
  return {a.x - b.x, a.z - b.z};
}
inline Span2 operator*(Span factor, const Span2& a) {
  return {factor * a.x, factor * a.z};
}
inline Span dot(const Span2& a, const Span2& b) {
  return a.x * b.x + a.z * b.z;
}
inline Span moment(const Span2& arm, const Span2& force) {
  return arm.x * force.z - arm.z * force.x;
}
/// The greatest length.
inline double longest(const Span2& a) {
  return std::hypot(a.x.magnitude(), a.z.magnitude());
}

/// A turn in the plane by an angle within its span, kept as the turns at both ends: one call of the library
/// for each, whatever is then turned.
struct SpanTurn {
  Span cosine{1.0};
  Span sine{0.0};
  Turn from;
  Turn to;
  bool half{}; ///< half a turn or more: anything of that length may come out

  bool exact() const { return from.cosine == to.cosine && from.sine == to.sine; }

  /// An exact place. Below half a turn each coordinate is at its ends, or at its crest or trough where the
  /// other one passes 0 on the way: z upwards where x is greatest, x upwards where z is least.
  Span2 operator()(Vec2 place) const {
    if (half) {
      const Span any = Span::around(0.0, length(place));
      return {any, any};
    }
    const Vec2 first = from(place);
    if (exact()) {
      return {first.x, first.z};
    }
    const Vec2 last = to(place);
    Span2 turned{hull(first.x, last.x), hull(first.z, last.z)};
    if (Span(first.z, last.z).holds(0.0)) {
      turned.x.high = std::max(turned.x.high, length(place));
    } else if (Span(last.z, first.z).holds(0.0)) {
      turned.x.low = std::min(turned.x.low, -length(place));
    }
    if (Span(first.x, last.x).holds(0.0)) {
      turned.z.low = std::min(turned.z.low, -length(place));
    } else if (Span(last.x, first.x).holds(0.0)) {
      turned.z.high = std::max(turned.z.high, length(place));
    }
    return turned;
  }
  Span2 operator()(const Span2& a) const { return {a.x * cosine - a.z * sine, a.x * sine + a.z * cosine}; }
};
inline SpanTurn turnBy(Span radians) {
  SpanTurn turn;
  turn.from = turnBy(radians.low);
  if (radians.low == radians.high) {
    turn.to = turn.from;
    turn.cosine = turn.from.cosine;
    turn.sine = turn.from.sine;
    return turn;
  }
  turn.to = turnBy(radians.high);
  turn.half = radians.width() >= std::numbers::pi;
  const Span2 ahead = turn(Vec2{1.0, 0.0});
  turn.cosine = ahead.x;
  turn.sine = ahead.z;
  return turn;
}

} // namespace hangbook::hang
