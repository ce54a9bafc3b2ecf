// SPDX-License-Identifier: GPL-3.0-or-later
#include "hang/pull_back.h"

#include <cmath>
#include <string>

#include "hang/tilt.h"
#include "quantity/error.h"
#include "quantity/quantity.h"

namespace hangbook::hang {
namespace {

[[noreturn]] void refuse(const std::string& text) {
  throw Error(Trouble::notPossible, text);
}

Vec2 wayOf(const PullBack& pull) {
  const Turn turn = turnBy(toRadians(pull.lineDeg));
  return {turn.cosine, turn.sine};
}

/// Where it pulls, in frame coordinates.
Vec2 placeOf(const Assembly& assembly, const PullBack& pull) {
  const Piece& piece = assembly.pieces[static_cast<std::size_t>(pull.element) - 1];
  return piece.pin + piece.turn(pull.at);
}

/// Weight at `centre` and the line at `at`, both from the pick, before the hang turns about it.
struct Turning {
  double weight = 0.0;
  Vec2 centre;
  Vec2 at;
  Vec2 way; ///< in the world: it does not turn with the hang

  /// The turn at which weight and a pull of this force balance and to which the hang comes back: with moment
  /// P cos s + Q sin s about the pick that is (cos s, sin s) = (−Q, P) ÷ R.
  Turn settled(double force) const {
    const double p = moment(centre, {0.0, -weight}) + force * moment(at, way);
    const double q = weight * centre.z - force * dot(at, way);
    const double r = std::hypot(p, q);
    if (!isLength(r / weight)) {
      refuse("weight and pull-back leave the hang free to turn about its pick: there is no way it settles");
    }
    return {-q / r, p / r};
  }

  /// The pull that balances the weight at this turn.
  double forceAt(Turn turn) const {
    const double arm = moment(turn(at), way);
    if (!isLength(std::abs(arm))) {
      refuse("the pull-back's line passes through the pick: it cannot hold the tilt");
    }
    return weight * turn(centre).x / arm;
  }
};

/// The swing that brings the frame to this elevation (`check` lets no more than 90° through): A sin s + B cos
/// s = sin(tilt), the one nearer to 0.
Turn swingFor(double ahead, double upwards, double tiltDeg) {
  const double reach = std::hypot(ahead, upwards);
  const double sine = std::sin(toRadians(tiltDeg));
  if (!(std::abs(sine) <= reach)) {
    refuse("no pull-back brings the frame to that tilt at this pan");
  }
  const double base = std::asin(sine / reach);
  // The arc sine lies in the half turn ahead: the nearer one where the frame looks ahead before it swings.
  return turnBy((ahead >= 0.0 ? base : std::numbers::pi - base) - std::atan2(upwards, ahead));
}

/// The line's force as the frame's axes see it, and the lean that it gives the picks' chains.
void finish(Pulled& pulled, const PullBack& pull, Vec2 at, double force) {
  const Vec2 way = wayOf(pull);
  const Attitude& attitude = pulled.balance.attitude;
  const auto along = [&](const Vec3& axis) { return force * (way.x * axis.x + way.z * axis.z); };
  pulled.back = {static_cast<std::size_t>(pull.element) - 1,
                 {along(attitude.forward), along(attitude.left), along(attitude.up)},
                 at};
  const double upright = pulled.balance.mass * standardGravity - force * way.z;
  pulled.line = {force, toDegrees(std::atan2(-force * way.x, upright))};
}

Pulled onSidePair(const SidePair& pair, const Assembly& assembly, const Setting& set, const PullBack& pull) {
  const double actuatorDeg =
      set.tiltDeg ? actuatorFor(pair, assembly, *set.tiltDeg, set.panDeg) : *set.actuatorDeg;
  const TiltCurve curve(pair, assembly, set.panDeg);
  const Turn actuator = turnBy(toRadians(actuatorDeg));
  const Vec2 at = placeOf(assembly, pull);
  const Vec2 tilted = actuator(at);
  const double mass = pair.headMass + assembly.mass;
  const Turning turning{mass * standardGravity, curve.headCentre(actuator),
                        pair.tiltAxis + Vec2{tilted.x * curve.panCosine, tilted.z}, wayOf(pull)};
  Pulled pulled;
  const Turn swing = pull.force ? turning.settled(*pull.force)
                                : swingFor(actuator.cosine * curve.panCosine, actuator.sine, *pull.tiltDeg);
  const double force = pull.force ? *pull.force : turning.forceAt(swing);
  pulled.balance = swungBy(pair, assembly, actuatorDeg, set.panDeg, swing);
  // Moments about the line through the head's middle, fore and aft: weight and pull at their sides.
  const double upright = turning.weight - force * turning.way.z;
  const double moment =
      turning.weight * pulled.balance.cg.y - force * turning.way.z * tilted.x * curve.panSine;
  const double left = 0.5 * upright + moment / pair.pickSpacing;
  pulled.balance.pickLoads[0].load = left;
  pulled.balance.pickLoads[1].load = upright - left;
  finish(pulled, pull, at, force);
  return pulled;
}

Pulled onPair(const ForeAftPair& pair, const Assembly& assembly, const Setting& set, const PullBack& pull) {
  Pulled pulled;
  pulled.balance = holdAt(pair, assembly, *set.tiltDeg);
  const Attitude& attitude = pulled.balance.attitude;
  const Vec2 at = placeOf(assembly, pull);
  finish(pulled, pull, at, *pull.force);
  const Vec2 way = wayOf(pull);
  const double weight = pulled.balance.mass * standardGravity;
  const double upright = weight - *pull.force * way.z;
  const Vec3 place = attitude.place(at);
  const Vec3 rear = attitude.place(pair.rearPick);
  const double moments = -weight * pulled.balance.cg.x + *pull.force * moment({place.x, place.z}, way);
  // Both chains lean alike, so the rear one pulls forward by as much of its load as the front one.
  const double arm = rear.x - rear.z * (-*pull.force * way.x / upright);
  if (!isLength(std::abs(arm))) {
    refuse("with this pull-back the rear pick has no arm about the front one");
  }
  pulled.balance.pickLoads[1].load = -moments / arm;
  pulled.balance.pickLoads[0].load = upright + moments / arm;
  return pulled;
}

Pulled onSingle(const SinglePick& single, const Assembly& assembly, const PullBack& pull) {
  const Vec2 at = placeOf(assembly, pull);
  const double weight = assembly.mass * standardGravity;
  const Turning turning{weight, assembly.cg - single.pick, at - single.pick, wayOf(pull)};
  const Turn turn = pull.force ? turning.settled(*pull.force) : turnBy(toRadians(*pull.tiltDeg));
  const double force = pull.force ? *pull.force : turning.forceAt(turn);
  Pulled pulled;
  pulled.balance = turnedTo(single, assembly, turn);
  finish(pulled, pull, at, force);
  pulled.balance.pickLoads[0].load = weight - force * turning.way.z;
  return pulled;
}

} // namespace

Pulled pullBack(const Bar& bar, const Assembly& assembly, const Setting& set, const PullBack& pull) {
  if (const auto* pair = std::get_if<SidePair>(&bar.picks)) {
    balance(bar, assembly, set); // refuses pan and actuator beyond their travel
    return onSidePair(*pair, assembly, set, pull);
  }
  if (const auto* pair = std::get_if<ForeAftPair>(&bar.picks)) {
    return onPair(*pair, assembly, set, pull);
  }
  return onSingle(std::get<SinglePick>(bar.picks), assembly, pull);
}

} // namespace hangbook::hang
