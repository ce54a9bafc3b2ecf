// SPDX-License-Identifier: GPL-3.0-or-later
#include "hang/doubt_picks.h"

#include <algorithm>

#include "hang/joints.h"
#include "quantity/quantity.h"

namespace hangbook::hang {
namespace {

/// A side-pair of which head and what hangs from it are within their doubts.
struct SideWithin {
  const HangingSpan& hanging;
  Turn pan;
  Span head; ///< kg
  Span part; ///< of the total mass that hangs from the tilt axis
  Span2 axis;
  Span2 own; ///< the head's centre

  SideWithin(const SidePair& pair, const Doubts& doubts, const HangingSpan& below, double panDeg)
      : hanging(below), pan(turnBy(toRadians(panDeg))), head(massOf(pair.headMass, doubts.head)),
        // Least where the head is heaviest.
        part(below.mass.low / (below.mass.low + head.high), below.mass.high / (below.mass.high + head.low)),
        axis(Span2::around(pair.tiltAxis, doubts.head.place)),
        own(Span2::around(pair.headCg, doubts.head.centre)) {}

  /// Total centre before the swing, head x and z, where what hangs has its centre at `way` from the axis.
  Span2 totalAt(const Span2& way) const {
    return own + part * (Span2{axis.x + Span(pan.cosine) * way.x, axis.z + way.z} - own);
  }
  Span2 total(const SpanTurn& actuator) const { return totalAt(turned(hanging.centre, actuator)); }

  /// What `TiltCurve::miss` is, with its sign turned. What is linear in the centre below enters once.
  Span miss(double actuator, double sineWanted) const {
    const SpanTurn exact = turnBy(Span(actuator));
    const Turn& turn = exact.from;
    const Span2 at = total(exact);
    const double ahead = turn.cosine * pan.cosine;
    const Span still =
        Span(ahead) * (own.x + part * (axis.x - own.x)) + Span(turn.sine) * (own.z + part * (axis.z - own.z));
    const double panned = pan.cosine * pan.cosine;
    const double alongX = panned * turn.cosine * turn.cosine + turn.sine * turn.sine;
    const double alongZ = turn.sine * turn.cosine * (1.0 - panned);
    return still + part * (Span(alongX) * hanging.centre.x + Span(alongZ) * hanging.centre.z) +
           Span(sineWanted) * root(square(at.x) + square(at.z));
  }

  /// Its derivative by the angle in radians. What the two parts of the total centre have in common is taken
  /// out by hand: it is far greater than what is left.
  Span slope(Span actuator, double sineWanted) const {
    const Span2 still = own + part * (axis - own);
    const SpanTurn turn = turnBy(actuator);
    const Span2 way = turned(hanging.centre, turn);
    const double panned = 1.0 - pan.cosine * pan.cosine;
    Span linear = turn.cosine * still.z - Span(pan.cosine) * turn.sine * still.x;
    if (panned != 0.0) {
      const SpanTurn twice = turnBy(Span(2.0) * actuator);
      linear += part * Span(panned) * (hanging.centre.x * twice.sine + hanging.centre.z * twice.cosine);
    }
    if (sineWanted == 0.0) {
      return linear;
    }
    const Span2 at = totalAt(way);
    const Span away = root(square(at.x) + square(at.z));
    const Span awaySlope =
        part * (part * Span(panned) * way.x * way.z + still.z * way.x - Span(pan.cosine) * still.x * way.z) /
        away;
    return linear + Span(sineWanted) * awaySlope;
  }
};

/// Head's swing for a tilt of the frame: sin tilt = cos a cos pan sin s + sin a cos s. It falls steadily with
/// a for pans and tilts up to 30° and actuators up to 45°.
double swingFor(double actuator, Turn pan, double sineTilt) {
  const double ahead = std::cos(actuator) * pan.cosine;
  const double above = std::sin(actuator);
  return arcsine(sineTilt / std::hypot(ahead, above)) - std::atan2(above, ahead);
}

bool swingFallsSteadily(double tiltDeg, double panDeg, Span actuatorDeg) {
  return panDeg == 0.0 ||
         (std::abs(panDeg) <= 30.0 && std::abs(tiltDeg) <= 30.0 && actuatorDeg.magnitude() <= 45.0);
}

/// One step of the build within its doubts, into the worst.
struct Worsen {
  BuildWorst& worst;
  std::size_t picks{};
  bool side{};
  std::vector<BuildStep>* told = nullptr;

  BuildStep* toldAt(BuildMoment moment) const {
    if (told == nullptr) {
      return nullptr;
    }
    const auto found = std::ranges::find_if(*told, [&moment](const BuildStep& step) {
      return step.stage == moment.stage && step.cabinets == moment.cabinets;
    });
    return found == told->end() ? nullptr : &*found;
  }

  void tell(BuildMoment moment, const PickSpans& at) const {
    BuildStep* step = toldAt(moment);
    for (std::size_t pick = 0; step != nullptr && pick < picks; ++pick) {
      const Span load = at.load[pick];
      const bool known = std::isfinite(load.low) && std::isfinite(load.high);
      step->most[pick] = known ? std::max(step->most[pick], load.high) : std::nan("");
      step->least[pick] = known ? std::min(step->least[pick], load.low) : std::nan("");
    }
  }

  void tellUnknown(BuildMoment moment) const {
    if (BuildStep* step = toldAt(moment)) {
      step->most.fill(std::nan(""));
      step->least.fill(std::nan(""));
    }
  }

  void take(BuildMoment moment, const PickSpans& at, double weight) const {
    tell(moment, at);
    for (std::size_t pick = 0; pick < picks; ++pick) {
      if (!std::isfinite(at.load[pick].high) || !std::isfinite(at.share[pick].low)) {
        worst.unknown = moment;
        continue;
      }
      if (at.load[pick].high > worst.most[pick] * (1.0 + sameLoad)) {
        worst.most[pick] = at.load[pick].high;
        worst.mostAt[pick] = moment;
      }
      if (moment.cabinets == 0) {
        continue;
      }
      if (isMore(worst.leastShare, at.share[pick].low)) {
        worst.leastShare = at.share[pick].low;
        worst.leastPick = pick;
        worst.leastOther = at.share[pick].low * weight;
        worst.leastAt = moment;
      }
      const double unlike = 4.0 * at.share[pick].high - 2.0;
      if (side && isMore(unlike, worst.unlike)) {
        worst.unlike = unlike;
        worst.unlikeAt = moment;
      }
    }
  }
};

/// An opening so far stands for one that nobody stated, degrees.
constexpr double freelyDeg = 90.0;

/// What weight may do to the joints that can open, the chain not pulling.
struct Opening {
  bool surelyShut = true;
  bool freely = false; ///< one whose stop nobody stated may open
};
Opening openingOf(const Hang& hang, const std::vector<PlacedSpan>& shut, std::size_t cabinets,
                  const Span2& up) {
  Opening opening;
  for (std::size_t i = 0; i < cabinets; ++i) {
    const auto* seated = std::get_if<Seated>(&hang.stack[i].joint);
    if (seated != nullptr && seated->openToDeg > 0.0 &&
        !turnsJoint(-momentSpan(shut, i, cabinets, up).high)) {
      opening.surelyShut = false;
      opening.freely = opening.freely || seated->openToDeg >= freelyDeg;
    }
  }
  return opening;
}

/// The steps before aiming.
class Steps {
public:
  Steps(const Hang& hang, const Doubts& doubts, const BuildWorst& stated)
      : hang_(hang), doubts_(doubts), stated_(stated),
        fore_(std::holds_alternative<ForeAftPair>(hang.bar.picks)) {}

  std::vector<StepWithin> all(const Span& pivotDeg) const {
    const auto held = static_cast<std::size_t>(heldBy(hang_.chain));
    const auto* pivot = hang_.chain ? std::get_if<Pivot>(&hang_.stack[held - 1].joint) : nullptr;
    const Span swung = pivot != nullptr ? swingOf(pivot->travelDeg) : Span{};
    const Placed before(*this, swung);
    const Placed chained(*this, pivotDeg);
    std::vector<StepWithin> steps;
    for (std::size_t cabinets = 0; cabinets <= hang_.stack.size(); ++cabinets) {
      steps.push_back(step(BuildStage::stacked, cabinets, before));
      if (hang_.chain && cabinets >= held) {
        steps.push_back(step(BuildStage::chained, cabinets, chained));
      }
    }
    return steps;
  }

private:
  static Span swingOf(Range travel) { return {travel.low, travel.high}; }

  /// With every joint shut, and with those that may open anywhere up to their stop.
  struct Placed {
    std::vector<PlacedSpan> shut;
    std::vector<PlacedSpan> open;
    Placed(const Steps& of, Span pivotDeg)
        : shut(placeWithin(of.hang_, of.doubts_, jointSpans(of.hang_.stack, false, pivotDeg))),
          open(placeWithin(of.hang_, of.doubts_, jointSpans(of.hang_.stack, true, pivotDeg))) {}
  };

  StepWithin step(BuildStage stage, std::size_t cabinets, const Placed& placed) const {
    // Level, a fore-aft-pair's frame has the world's axes; an assembled side-pair swings with what hangs, and
    // its two picks carry alike where it is not panned.
    Opening opening;
    if (fore_) {
      opening = openingOf(hang_, placed.shut, cabinets, {Span(0.0), Span(1.0)});
    } else if (stated_.restPanDeg != 0.0) {
      opening = openingOf(hang_, placed.shut, cabinets, {Span(-1.0, 1.0), Span(0.0, 1.0)});
    }
    StepWithin within{{stage, static_cast<int>(cabinets)}, opening.freely, {}, 0.0};
    if (opening.freely) {
      return within;
    }
    const HangingSpan hanging =
        hangingSpan(hang_, doubts_, opening.surelyShut ? placed.shut : placed.open, cabinets);
    const auto* pair = std::get_if<SidePair>(&hang_.bar.picks);
    const double head = pair != nullptr ? pair->headMass : 0.0;
    within.weight = standardGravity * (head + 0.5 * (hanging.mass.low + hanging.mass.high));
    within.picks = picksWithin(hang_, doubts_, hanging, stated_.restPanDeg, stated_.restActuatorDeg, 0.0);
    return within;
  }

  const Hang& hang_;
  const Doubts& doubts_;
  const BuildWorst& stated_;
  bool fore_;
};

} // namespace

Span directionOf(const Span2& place) {
  if (place.x.holds(0.0) && place.z.holds(0.0)) {
    return Span::unbounded();
  }
  const double middle = std::atan2(0.5 * (place.z.low + place.z.high), 0.5 * (place.x.low + place.x.high));
  Span way{middle, middle};
  for (const double x : {place.x.low, place.x.high}) {
    for (const double z : {place.z.low, place.z.high}) {
      const double off = std::remainder(std::atan2(z, x) - middle, 2.0 * std::numbers::pi);
      way = hull(way, middle + off);
    }
  }
  return way;
}

PickSpans picksWithin(const Hang& hang, const Doubts& doubts, const HangingSpan& hanging, Span panDeg,
                      Span actuatorDeg, Span tiltDeg) {
  const Span g(standardGravity);
  PickSpans picks;
  if (const auto* pair = std::get_if<SidePair>(&hang.bar.picks)) {
    const SideWithin within(*pair, doubts, hanging, 0.0);
    const Span spacing = Span::around(pair->pickSpacing, doubts.frame.place);
    Span aside; // without pan it is exactly none
    if (panDeg.magnitude() != 0.0) {
      aside = sine(inRadians(panDeg)) * turned(hanging.centre, turnBy(inRadians(actuatorDeg))).x / spacing;
    }
    for (std::size_t pick = 0; pick < 2; ++pick) {
      const Span own = pick == 0 ? aside : -aside;
      picks.load[pick] = g * (Span(0.5) * within.head + hanging.mass * (Span(0.5) + own));
      picks.share[pick] = Span(0.5) + within.part * own;
    }
  } else if (const auto* two = std::get_if<ForeAftPair>(&hang.bar.picks)) {
    const double place = doubts.frame.place;
    const Span2 front = Span2::around(two->frontPick, place);
    const Span2 rear = Span2::around(two->rearPick, place);
    const SpanTurn tilt = turnBy(inRadians(tiltDeg));
    const Span2 apart = Span2::around(two->rearPick - two->frontPick, 2.0 * place);
    const Span across = turned(apart, tilt).x;
    picks.share = {-(turned(hanging.centre - rear, tilt).x / across),
                   turned(hanging.centre - front, tilt).x / across};
    for (std::size_t pick = 0; pick < 2; ++pick) {
      picks.load[pick] = g * hanging.mass * picks.share[pick];
    }
  } else {
    picks.share[0] = Span(1.0);
    picks.load[0] = g * hanging.mass;
  }
  return picks;
}

Span actuatorWithin(const Hang& hang, const Doubts& doubts, const HangingSpan& hanging, double tiltDeg,
                    double panDeg, double about) {
  const SideWithin within(std::get<SidePair>(hang.bar.picks), doubts, hanging, panDeg);
  const double sineTilt = std::sin(toRadians(tiltDeg));
  const double middle = toRadians(about);
  const Span miss = within.miss(middle, sineTilt);
  for (const double half : {3.0, 12.0}) {
    Span around = Span::around(middle, toRadians(half));
    bool inside = false;
    for (int round = 0; round < 3; ++round) {
      const Span step = Span(middle) - miss / within.slope(around, sineTilt);
      if (!(step.low > around.low && step.high < around.high)) {
        break; // no tighter
      }
      around = step;
      inside = true;
    }
    if (inside) {
      return inDegrees(around);
    }
  }
  return Span::unbounded();
}

UpSpan upWithin(const Hang& hang, const Doubts& doubts, const HangingSpan& hanging, const Statics& nominal,
                Span actuatorDeg, bool closed) {
  UpSpan up;
  if (const auto* pair = std::get_if<SidePair>(&hang.bar.picks)) {
    const double panDeg = hang.set.panDeg;
    const SideWithin within(*pair, doubts, hanging, panDeg);
    const Span actuator = inRadians(actuatorDeg);
    const double sineTilt = std::sin(toRadians(nominal.tiltDeg));
    Span swing;
    if (closed && swingFallsSteadily(nominal.tiltDeg, panDeg, actuatorDeg)) {
      swing = {swingFor(actuator.high, within.pan, sineTilt), swingFor(actuator.low, within.pan, sineTilt)};
      up.up.x = Span(sineTilt);
      up.tiltDeg = Span(nominal.tiltDeg);
    } else {
      const SpanTurn turn = turnBy(actuator);
      const Span2 total = within.total(turn);
      swing = directionOf({-total.z, -total.x}); // sin s = −X/r, cos s = −Z/r
      const SpanTurn swung = turnBy(swing);
      up.up.x = turn.cosine * Span(within.pan.cosine) * swung.sine + turn.sine * swung.cosine;
      up.tiltDeg = inDegrees(arcsine(up.up.x));
    }
    up.swingDeg = inDegrees(swing);
    up.left = Span(-within.pan.sine) * sine(swing);
    up.up.z = root(Span(1.0) - square(up.up.x) - square(up.left));
    return up;
  }
  Span tilt = inRadians(Span(nominal.tiltDeg));
  if (const auto* single = std::get_if<SinglePick>(&hang.bar.picks)) {
    // Its centre settles under the pick: from the centre, the pick is straight up.
    const Span2 way = Span2::around(single->pick, doubts.frame.place) - hanging.centre;
    const Span direction = directionOf(way);
    tilt = Span(0.5 * std::numbers::pi) - direction;
  }
  up.up = {sine(tilt), cosine(tilt)};
  up.tiltDeg = inDegrees(tilt);
  return up;
}

std::vector<StepWithin> stepsWithin(const Hang& hang, const Doubts& doubts, const BuildWorst& stated,
                                    Span pivotDeg) {
  return Steps(hang, doubts, stated).all(pivotDeg);
}

BuildWorst buildWithin(const Hang& hang, const Doubts& doubts, const Statics& nominal,
                       const BuildWorst& stated, const PickSpans& asSet, const HangingShape& shape,
                       Span actuatorDeg, std::vector<BuildStep>* told) {
  BuildWorst worst;
  worst.unknown = stated.unknown;
  worst.restPanDeg = stated.restPanDeg;
  worst.restActuatorDeg = stated.restActuatorDeg;
  worst.levelActuatorDeg = stated.levelActuatorDeg;
  const Worsen worsen{worst, nominal.pickCount, nominal.side.has_value(), told};
  const auto all = static_cast<int>(hang.stack.size());
  worsen.take({BuildStage::set, all}, asSet, nominal.mass * standardGravity);

  for (const StepWithin& step : shape.steps) {
    if (step.freely) {
      worst.unknown = step.moment;
      worsen.tellUnknown(step.moment);
    } else {
      worsen.take(step.moment, step.picks, step.weight);
    }
  }

  const HangingSpan& hanging = shape.hanging;
  const Span pan = hull(stated.restPanDeg, hang.set.panDeg);
  const double tilt = hang.set.tiltDeg.value_or(nominal.tiltDeg);
  const auto* pair = std::get_if<SidePair>(&hang.bar.picks);
  const bool moves = pair == nullptr || pan.magnitude() > 0.0; // else neither angle moves load across
  Span actuator;
  Span tilts = hull(0.0, tilt);
  if (pair != nullptr && moves) {
    // Where as stated it cannot be level, a corner may be, or the other way about.
    const Range travel = pair->tiltTravelDeg;
    const Span level =
        stated.levelActuatorDeg == stated.restActuatorDeg
            ? Span{travel.low, travel.high}
            : actuatorWithin(hang, doubts, hanging, 0.0, stated.restPanDeg, stated.levelActuatorDeg);
    actuator = hull(hull(stated.restActuatorDeg, actuatorDeg), level);
    tilts = hull(tilts, upWithin(hang, doubts, hanging, nominal, stated.restActuatorDeg, false).tiltDeg);
  }
  bool shut = true;
  bool freely = false;
  for (const double end : {tilts.low, tilts.high}) {
    const double rise = std::sin(toRadians(end));
    const double roll = std::sin(toRadians(pan.magnitude()));
    const Span above{root(1.0 - rise * rise - roll * roll).low, std::cos(toRadians(end))};
    const Opening opening = openingOf(hang, shape.placed, hang.stack.size(), {Span(rise), above});
    shut = shut && opening.surelyShut;
    freely = freely || opening.freely;
  }
  if (moves && freely) {
    worst.unknown = BuildMoment{BuildStage::aiming, all};
    worsen.tellUnknown(*worst.unknown);
    return worst;
  }
  const HangingSpan& aimed = shut || !moves ? hanging : shape.opened;
  for (const double end : {std::min(0.0, tilt), std::max(0.0, tilt)}) {
    worsen.take({BuildStage::aiming, all}, picksWithin(hang, doubts, aimed, pan, actuator, end),
                nominal.mass * standardGravity);
  }
  return worst;
}

} // namespace hangbook::hang
