// SPDX-License-Identifier: GPL-3.0-or-later
#include "hang/tilt.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <limits>

#include <boost/math/tools/minima.hpp>
#include <boost/math/tools/toms748_solve.hpp>

namespace hangbook::hang {

TiltCurve::TiltCurve(const SidePair& pair, const Assembly& assembly, double panDeg) {
  const double mass = pair.headMass + assembly.mass;
  share = assembly.mass / mass;
  still = (1.0 / mass) * (pair.headMass * pair.headCg + assembly.mass * pair.tiltAxis);
  centre = assembly.cg;
  const Turn pan = turnBy(toRadians(panDeg));
  panCosine = pan.cosine;
  panSine = pan.sine;
}

Vec2 TiltCurve::headCentre(Turn actuator) const {
  const Vec2 turned = actuator(centre);
  return {still.x + share * panCosine * turned.x, still.z + share * turned.z};
}

double TiltCurve::sideways(Turn actuator) const {
  return share * panSine * actuator(centre).x;
}

double TiltCurve::miss(Turn actuator, double sineWanted) const {
  const Vec2 total = headCentre(actuator);
  const double distance = std::sqrt(dot(total, total));
  return -(actuator.cosine * panCosine * total.x + actuator.sine * total.z) - sineWanted * distance;
}

double TiltCurve::elevationDeg(Turn actuator) const {
  const Vec2 total = headCentre(actuator);
  const double distance = length(total);
  if (!(distance > 0.0)) {
    return 0.0;
  }
  const double rise = miss(actuator, 0.0) / distance;
  return toDegrees(arcsine(rise));
}

namespace {

/// A zero between two angles (radians) at which the function has unlike signs, or is zero.
template <class Function>
double zeroBetween(double low, double high, double atLow, double atHigh, Function value) {
  std::uintmax_t steps = 100;
  const auto [from, to] = boost::math::tools::toms748_solve(
      value, low, high, atLow, atHigh, boost::math::tools::eps_tolerance<double>(), steps);
  return 0.5 * (from + to);
}

/// Where a function that has the sign of `side` at both ends comes nearest to zero, or farthest beyond it.
template <class Function>
double nearestToZero(double low, double high, double side, Function value) {
  const auto height = [&](double angle) { return std::signbit(side) ? -value(angle) : value(angle); };
  return boost::math::tools::brent_find_minima(height, low, high, std::numeric_limits<double>::digits).first;
}

constexpr double cellDeg = 1.5;

} // namespace

std::vector<double> actuatorsAt(const TiltCurve& curve, Range travelDeg, double sineWanted) {
  const double span = toRadians(travelDeg.high - travelDeg.low);
  const int within = std::max(4, static_cast<int>(std::ceil((travelDeg.high - travelDeg.low) / cellDeg)));
  const double width = span / within;
  // One cell more at either end: the aim may turn back within the first or last one.
  const double low = toRadians(travelDeg.low) - width;
  const int cells = within + 2;
  const auto value = [&](double angle) { return curve.miss(turnBy(angle), sineWanted); };
  std::vector<double> found;
  const auto add = [&](double angle) {
    const double deg = std::clamp(toDegrees(angle), travelDeg.low, travelDeg.high);
    const bool again = !found.empty() && sameAngle(std::max(deg, found.back()), found.back());
    if (travelDeg.holds(toDegrees(angle)) && !again) {
      found.push_back(deg);
    }
  };

  const Turn step = turnBy(width);
  Turn turn = turnBy(low);
  double before = curve.miss(turn, sineWanted); // value two ends back, then one end back
  double last = before;
  for (int cell = 0; cell < cells; ++cell) {
    turn = {turn.cosine * step.cosine - turn.sine * step.sine,
            turn.sine * step.cosine + turn.cosine * step.sine};
    const double here = curve.miss(turn, sineWanted);
    const double left = low + cell * width;
    if (here == 0.0) {
      add(left + width);
    } else if (passesZero(here, last)) { // a zero at `last` itself is found again, and counts once
      add(zeroBetween(left, left + width, last, here, value));
    } else if (std::abs(last) <= std::min(std::abs(before), std::abs(here)) && !passesZero(before, last)) {
      const double turning = nearestToZero(left - width, left + width, last, value);
      const double there = value(turning);
      if (passesZero(there, last)) {
        add(zeroBetween(left - width, turning, before, there, value));
        add(zeroBetween(turning, left + width, there, here, value));
      }
    }
    before = last;
    last = here;
  }
  return found;
}

} // namespace hangbook::hang
