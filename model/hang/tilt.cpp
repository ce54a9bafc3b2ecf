// SPDX-License-Identifier: GPL-3.0-or-later
#include "hang/tilt.h"

#include <algorithm>
#include <cmath>

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

double TiltCurve::missSlope(Turn actuator, double sineWanted) const {
  const Vec2 total = headCentre(actuator);
  const Vec2 turning = quarterTurn(actuator(centre));
  const Vec2 slope{share * panCosine * turning.x, share * turning.z};
  const double distance = std::sqrt(dot(total, total));
  const double distanceSlope = distance > 0.0 ? dot(total, slope) / distance : 0.0;
  return -(panCosine * (actuator.cosine * slope.x - actuator.sine * total.x) + actuator.sine * slope.z +
           actuator.cosine * total.z) -
         sineWanted * distanceSlope;
}

double TiltCurve::elevationDeg(Turn actuator) const {
  const Vec2 total = headCentre(actuator);
  const double distance = length(total);
  if (!(distance > 0.0)) {
    return 0.0;
  }
  const double rise = miss(actuator, 0.0) / distance;
  return toDegrees(std::asin(std::clamp(rise, -1.0, 1.0)));
}

namespace {

/// A zero between two angles (radians) at which the function has unlike signs: Newton kept inside the
/// bracket, which halves wherever Newton would leave it or is slow.
template <class Function, class Slope>
double zeroBetween(double low, double high, double atLow, Function value, Slope slope) {
  double angle = 0.5 * (low + high);
  for (int step = 0; step < 100; ++step) {
    const double here = value(angle);
    if (here == 0.0) {
      return angle;
    }
    (passesZero(here, atLow) ? high : low) = angle;
    const double next = angle - here / slope(angle);
    const double last = angle;
    angle = next > low && next < high ? next : 0.5 * (low + high);
    if (std::abs(angle - last) < 1e-15) {
      break;
    }
  }
  return angle;
}

/// Where a function of one sign at both ends and in the middle comes nearest to zero (golden section).
template <class Function>
double nearestToZero(double low, double high, Function value) {
  constexpr double golden = 0.6180339887498949;
  for (int step = 0; step < 60; ++step) {
    const double lower = high - golden * (high - low);
    const double upper = low + golden * (high - low);
    (std::abs(value(lower)) < std::abs(value(upper)) ? high : low) =
        std::abs(value(lower)) < std::abs(value(upper)) ? upper : lower;
  }
  return 0.5 * (low + high);
}

constexpr double cellDeg = 1.5;

} // namespace

std::vector<double> actuatorsAt(const TiltCurve& curve, Range travelDeg, double sineWanted) {
  const double low = toRadians(travelDeg.low);
  const double span = toRadians(travelDeg.high - travelDeg.low);
  const int cells = std::max(4, static_cast<int>(std::ceil((travelDeg.high - travelDeg.low) / cellDeg)));
  const double width = span / cells;
  const auto value = [&](double angle) { return curve.miss(turnBy(angle), sineWanted); };
  const auto slope = [&](double angle) { return curve.missSlope(turnBy(angle), sineWanted); };
  std::vector<double> found;
  const auto add = [&](double angle) {
    const double deg = std::clamp(toDegrees(angle), travelDeg.low, travelDeg.high);
    if (found.empty() || !sameAngle(std::max(deg, found.back()), found.back())) {
      found.push_back(deg);
    }
  };

  const Turn step = turnBy(width);
  Turn turn = turnBy(low);
  double before = curve.miss(turn, sineWanted); // value two ends back, then one end back
  double last = before;
  if (last == 0.0) {
    add(low);
  }
  for (int cell = 0; cell < cells; ++cell) {
    turn = {turn.cosine * step.cosine - turn.sine * step.sine,
            turn.sine * step.cosine + turn.cosine * step.sine};
    const double here = curve.miss(turn, sineWanted);
    const double left = low + cell * width;
    if (here == 0.0) {
      add(left + width);
    } else if (passesZero(here, last)) { // a zero at `last` itself is found again, and counts once
      add(zeroBetween(left, left + width, last, value, slope));
    } else if (cell > 0 && std::abs(last) <= std::min(std::abs(before), std::abs(here)) &&
               !passesZero(before, last)) {
      const double turning = nearestToZero(left - width, left + width, value);
      const double least = value(turning);
      if (passesZero(least, last)) {
        add(zeroBetween(left - width, turning, before, value, slope));
        add(zeroBetween(turning, left + width, least, value, slope));
      }
    }
    before = last;
    last = here;
  }
  return found;
}

} // namespace hangbook::hang
