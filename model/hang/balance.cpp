// SPDX-License-Identifier: GPL-3.0-or-later
#include "hang/balance.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <string>
#include <vector>

#include <boost/math/tools/minima.hpp>

#include "hang/tilt.h"
#include "quantity/error.h"
#include "quantity/quantity.h"

namespace hangbook::hang {
namespace {

[[noreturn]] void refuse(const std::string& text) {
  throw Error(Trouble::notPossible, text);
}

std::string shown(double deg) {
  std::string text = std::to_string(std::round(deg * 1000.0) / 1000.0);
  text.erase(text.find_last_not_of('0') + 1);
  if (text.ends_with('.')) {
    text.pop_back();
  }
  return (text == "-0" ? "0" : text) + "°";
}
std::string shown(Range range) {
  return shown(range.low) + " to " + shown(range.high);
}

/// Elevation of a direction; exact near straight up as well, where an arc sine is not.
double elevation(Vec3 way) {
  return toDegrees(std::atan2(way.z, std::hypot(way.x, way.y)));
}

Vec3 swung(Vec3 head, Turn swing) {
  const Vec2 turned = swing({head.x, head.z});
  return {turned.x, head.y, turned.z};
}

constexpr const char* nothingToSettle = "the centre of gravity lies at the pick: there is no way it settles";

/// Frame turned about its y axis, with the given frame point at the world's origin.
Attitude turned(Turn tilt, Vec2 at) {
  Attitude attitude;
  attitude.forward = {tilt.cosine, 0.0, tilt.sine};
  attitude.left = {0.0, 1.0, 0.0};
  attitude.up = {-tilt.sine, 0.0, tilt.cosine};
  const Vec2 origin = tilt(at);
  attitude.origin = {-origin.x, 0.0, -origin.z};
  return attitude;
}

} // namespace

std::string_view nameOf(PickName name) {
  switch (name) {
  case PickName::left:
    return "left";
  case PickName::right:
    return "right";
  case PickName::front:
    return "front";
  case PickName::rear:
    return "rear";
  case PickName::single:
    break;
  }
  return "single";
}

Balance swingOut(const SidePair& pair, const Assembly& assembly, double actuatorDeg, double panDeg) {
  const TiltCurve curve(pair, assembly, panDeg);
  const Turn actuator = turnBy(toRadians(actuatorDeg));
  const Vec2 total = curve.headCentre(actuator);
  const double distance = length(total);
  if (!isLength(distance)) {
    refuse("the centre of gravity lies on the line through the picks: there is no way it settles");
  }
  Balance result = swungBy(pair, assembly, actuatorDeg, panDeg, {-total.z / distance, -total.x / distance});
  result.cg = {0.0, result.cg.y, -distance};
  return result;
}

Balance swungBy(const SidePair& pair, const Assembly& assembly, double actuatorDeg, double panDeg,
                Turn swing) {
  const TiltCurve curve(pair, assembly, panDeg);
  const Turn actuator = turnBy(toRadians(actuatorDeg));
  const Vec2 total = curve.headCentre(actuator);
  const double across = actuator.cosine * curve.panSine;
  Balance result;
  Attitude& attitude = result.attitude;
  attitude.forward = swung({actuator.cosine * curve.panCosine, across, actuator.sine}, swing);
  attitude.left = swung({-curve.panSine, curve.panCosine, 0.0}, swing);
  attitude.up =
      swung({-actuator.sine * curve.panCosine, -actuator.sine * curve.panSine, actuator.cosine}, swing);
  attitude.origin = swung({pair.tiltAxis.x, 0.0, pair.tiltAxis.z}, swing);

  result.mass = pair.headMass + assembly.mass;
  result.cg = swung({total.x, curve.sideways(actuator), total.z}, swing);
  result.tiltDeg = elevation(attitude.forward);
  result.side =
      SideAttitude{actuatorDeg, toDegrees(std::atan2(swing.sine, swing.cosine)),
                   toDegrees(std::atan2(attitude.forward.y, attitude.forward.x)), elevation(attitude.left)};
  const double weight = result.mass * standardGravity;
  const double leftShare = 0.5 + result.cg.y / pair.pickSpacing;
  result.pickLoads = {PickLoad{PickName::left, weight * leftShare},
                      PickLoad{PickName::right, weight * (1.0 - leftShare)}};
  result.pickCount = 2;
  return result;
}

Range tiltReach(const SidePair& pair, const Assembly& assembly, double panDeg) {
  const TiltCurve curve(pair, assembly, panDeg);
  const Range travel = pair.tiltTravelDeg;
  const auto aimAt = [&](double deg) { return curve.elevationDeg(turnBy(toRadians(deg))); };
  constexpr int parts = 32;
  const auto at = [&](int part) { return travel.low + (travel.high - travel.low) * part / parts; };
  // The highest aim in one direction of counting; the lowest is the highest of what is turned about.
  const auto highest = [&](double sign) {
    std::vector<double> aims;
    for (int part = 0; part <= parts; ++part) {
      aims.push_back(sign * aimAt(at(part)));
    }
    const auto best = static_cast<int>(std::ranges::max_element(aims) - aims.begin());
    const auto below = [&](double deg) { return -sign * aimAt(deg); };
    const double between = -boost::math::tools::brent_find_minima(below, at(std::max(best - 1, 0)),
                                                                  at(std::min(best + 1, parts)),
                                                                  std::numeric_limits<double>::digits)
                                .second;
    return std::max(aims[static_cast<std::size_t>(best)], between);
  };
  return {-highest(-1.0), highest(1.0)};
}

double actuatorFor(const SidePair& pair, const Assembly& assembly, double tiltDeg, double panDeg) {
  const TiltCurve curve(pair, assembly, panDeg);
  const Range travel = pair.tiltTravelDeg;
  if (isElevation(tiltDeg)) {
    const std::vector<double> found = actuatorsAt(curve, travel, std::sin(toRadians(tiltDeg)));
    const auto nearest = std::ranges::min_element(found, {}, [](double deg) { return std::abs(deg); });
    if (nearest != found.end()) {
      return *nearest;
    }
    for (const double end : {travel.low, travel.high}) {
      if (sameAngle(curve.elevationDeg(turnBy(toRadians(end))), tiltDeg)) {
        return end; // wanted at the very end of the travel, and missed by rounding alone
      }
    }
  }
  refuse("a tilt of " + shown(tiltDeg) + " is out of reach: the actuator's travel of " + shown(travel) +
         " gives tilts from " + shown(tiltReach(pair, assembly, panDeg)));
}

Balance holdAt(const ForeAftPair& pair, const Assembly& assembly, double tiltDeg) {
  if (!isElevation(tiltDeg)) {
    refuse("a tilt of " + shown(tiltDeg) + " is not possible: an elevation lies between -90° and 90°");
  }
  const Turn tilt = turnBy(toRadians(tiltDeg));
  const double apart = tilt(pair.rearPick - pair.frontPick).x;
  if (!isLength(std::abs(apart))) {
    refuse("at a tilt of " + shown(tiltDeg) + " one pick stands straight above the other");
  }
  Balance result;
  result.attitude = turned(tilt, pair.frontPick);
  result.mass = assembly.mass;
  result.cg = result.attitude.place(assembly.cg);
  result.tiltDeg = tiltDeg;
  const double weight = assembly.mass * standardGravity;
  const double rearShare = result.cg.x / apart;
  result.pickLoads = {PickLoad{PickName::front, weight * (1.0 - rearShare)},
                      PickLoad{PickName::rear, weight * rearShare}};
  result.pickCount = 2;
  return result;
}

Balance hangFrom(const SinglePick& single, const Assembly& assembly) {
  const Vec2 arm = assembly.cg - single.pick;
  const double distance = length(arm);
  if (!isLength(distance)) {
    refuse(nothingToSettle);
  }
  Balance result = turnedTo(single, assembly, {-arm.z / distance, -arm.x / distance});
  result.cg = {0.0, 0.0, -distance};
  return result;
}

Balance turnedTo(const SinglePick& single, const Assembly& assembly, Turn turn) {
  Balance result;
  result.attitude = turned(turn, single.pick);
  result.mass = assembly.mass;
  result.cg = result.attitude.place(assembly.cg);
  result.tiltDeg = elevation(result.attitude.forward);
  result.pickLoads[0] = {PickName::single, assembly.mass * standardGravity};
  result.pickCount = 1;
  return result;
}

Balance balance(const Bar& bar, const Assembly& assembly, const Setting& set) {
  if (const auto* pair = std::get_if<SidePair>(&bar.picks)) {
    if (!pair->panTravelDeg.holds(set.panDeg)) {
      refuse("a pan of " + shown(set.panDeg) + " is beyond its travel of " + shown(pair->panTravelDeg));
    }
    if (!set.tiltDeg && !pair->tiltTravelDeg.holds(*set.actuatorDeg)) {
      refuse("an actuator angle of " + shown(*set.actuatorDeg) + " is beyond its travel of " +
             shown(pair->tiltTravelDeg));
    }
    const double actuator =
        set.tiltDeg ? actuatorFor(*pair, assembly, *set.tiltDeg, set.panDeg) : *set.actuatorDeg;
    return swingOut(*pair, assembly, actuator, set.panDeg);
  }
  if (const auto* pair = std::get_if<ForeAftPair>(&bar.picks)) {
    return holdAt(*pair, assembly, *set.tiltDeg);
  }
  return hangFrom(std::get<SinglePick>(bar.picks), assembly);
}

} // namespace hangbook::hang
