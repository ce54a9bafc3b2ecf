// SPDX-License-Identifier: GPL-3.0-or-later
#include "hang/doubt_picks.h"

#include "hang/joints.h"
#include "quantity/quantity.h"

namespace hangbook::hang {
namespace {

/// A side-pair's total centre before the swing, head x and z, at one actuator angle.
struct Head {
  Span share; ///< of the total mass that hangs from the tilt axis
  Span2 centre;
};

struct SideWithin {
  const SidePair& pair;
  const Doubts& doubts;
  const HangingSpan& hanging;
  Turn pan;

  SideWithin(const SidePair& of, const Doubts& within, const HangingSpan& below, double panDeg)
      : pair(of), doubts(within), hanging(below), pan(turnBy(toRadians(panDeg))) {}

  Span head() const { return massOf(pair.headMass, doubts.head); }

  /// Part of the total that hangs from the tilt axis: least where the head is heaviest.
  Span share() const {
    const Span mass = head();
    return {hanging.mass.low / (hanging.mass.low + mass.high),
            hanging.mass.high / (hanging.mass.high + mass.low)};
  }

  Span2 total(Span actuator) const {
    const Span2 turnedCentre = turned(hanging.centre, actuator);
    const Span2 axis = Span2::around(pair.tiltAxis, doubts.head.place);
    const Span2 below{axis.x + Span(pan.cosine) * turnedCentre.x, axis.z + turnedCentre.z};
    const Span2 own = Span2::around(pair.headCg, doubts.head.centre);
    const Span part = share();
    return own + part * (below - own);
  }

  /// What `TiltCurve::miss` is, with its sign turned. What is linear in the centre below enters once.
  Span miss(double actuator, double sineWanted) const {
    const Span2 at = total(actuator);
    const Turn turn = turnBy(actuator);
    const double ahead = turn.cosine * pan.cosine;
    const Span2 axis = Span2::around(pair.tiltAxis, doubts.head.place);
    const Span2 own = Span2::around(pair.headCg, doubts.head.centre);
    const Span part = share();
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
    const Span2 axis = Span2::around(pair.tiltAxis, doubts.head.place);
    const Span2 own = Span2::around(pair.headCg, doubts.head.centre);
    const Span part = share();
    const Span2 still = own + part * (axis - own);
    const Span2 way = turned(hanging.centre, actuator);
    const SpanTurn turn = turnBy(actuator);
    const double panned = 1.0 - pan.cosine * pan.cosine;
    const Span linear =
        turn.cosine * still.z - Span(pan.cosine) * turn.sine * still.x +
        part * Span(panned) *
            (hanging.centre.x * sine(Span(2.0) * actuator) + hanging.centre.z * cosine(Span(2.0) * actuator));
    const Span2 at = total(actuator);
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
  return std::asin(std::clamp(sineTilt / std::hypot(ahead, above), -1.0, 1.0)) - std::atan2(above, ahead);
}

bool swingFallsSteadily(double tiltDeg, double panDeg, Span actuatorDeg) {
  return panDeg == 0.0 ||
         (std::abs(panDeg) <= 30.0 && std::abs(tiltDeg) <= 30.0 && actuatorDeg.magnitude() <= 45.0);
}

/// One step of the build within its doubts, into the worst.
struct Worsen {
  BuildWorst& worst;
  std::size_t picks;
  bool side;

  void take(BuildMoment moment, const PickSpans& at, double weight) const {
    constexpr double same = 1e-9; // the plainer step is named where only rounding differs
    for (std::size_t pick = 0; pick < picks; ++pick) {
      if (!std::isfinite(at.load[pick].high) || !std::isfinite(at.share[pick].low)) {
        worst.unknown = moment;
        continue;
      }
      if (at.load[pick].high > worst.most[pick] * (1.0 + same)) {
        worst.most[pick] = at.load[pick].high;
        worst.mostAt[pick] = moment;
      }
      if (picks < 2 || moment.cabinets == 0) {
        continue;
      }
      if (at.share[pick].low < worst.leastShare - same) {
        worst.leastShare = at.share[pick].low;
        worst.leastPick = pick;
        worst.leastOther = at.share[pick].low * weight;
        worst.leastAt = moment;
      }
      const double unlike = 4.0 * at.share[pick].high - 2.0;
      if (side && unlike > worst.unlike + same) {
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
        !(momentSpan(shut, i, cabinets, up).high < -restingMoment)) {
      opening.surelyShut = false;
      opening.freely = opening.freely || seated->openToDeg >= freelyDeg;
    }
  }
  return opening;
}

/// The steps before aiming.
class Steps {
public:
  Steps(const Hang& hang, const Doubts& doubts, const BuildWorst& stated, const Worsen& worsen)
      : hang_(hang), doubts_(doubts), stated_(stated), worsen_(worsen),
        fore_(std::holds_alternative<ForeAftPair>(hang.bar.picks)) {}

  void all(const Span& pivotDeg) const {
    const std::size_t held =
        hang_.chain ? static_cast<std::size_t>(hang_.chain->held) : hang_.stack.size() + 1;
    const bool pivot =
        held <= hang_.stack.size() && std::holds_alternative<Pivot>(hang_.stack[held - 1].joint);
    const Span swung = pivot ? swingOf(std::get<Pivot>(hang_.stack[held - 1].joint).travelDeg) : Span{};
    const Placed before(*this, swung);
    const Placed chained(*this, pivotDeg);
    for (std::size_t cabinets = 0; cabinets <= hang_.stack.size(); ++cabinets) {
      take(BuildStage::stacked, cabinets, before);
      if (cabinets >= held) {
        take(BuildStage::chained, cabinets, chained);
      }
    }
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

  void take(BuildStage stage, std::size_t cabinets, const Placed& placed) const {
    // Level, a fore-aft-pair's frame has the world's axes; an assembled side-pair swings with what hangs, and
    // its two picks carry alike where it is not panned.
    Opening opening;
    if (fore_) {
      opening = openingOf(hang_, placed.shut, cabinets, {Span(0.0), Span(1.0)});
    } else if (stated_.restPanDeg != 0.0) {
      opening = openingOf(hang_, placed.shut, cabinets, {Span(-1.0, 1.0), Span(0.0, 1.0)});
    }
    const BuildMoment moment{stage, static_cast<int>(cabinets)};
    if (opening.freely) {
      worsen_.worst.unknown = moment;
      return;
    }
    const HangingSpan hanging =
        hangingSpan(hang_, doubts_, opening.surelyShut ? placed.shut : placed.open, cabinets);
    const auto* pair = std::get_if<SidePair>(&hang_.bar.picks);
    const double head = pair != nullptr ? pair->headMass : 0.0;
    const double weight = standardGravity * (head + 0.5 * (hanging.mass.low + hanging.mass.high));
    worsen_.take(moment,
                 picksWithin(hang_, doubts_, hanging, stated_.restPanDeg, stated_.restActuatorDeg, 0.0),
                 weight);
  }

  const Hang& hang_;
  const Doubts& doubts_;
  const BuildWorst& stated_;
  const Worsen& worsen_;
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
    const Span ahead =
        panDeg.magnitude() == 0.0 ? Span(0.0) : turned(hanging.centre, inRadians(actuatorDeg)).x;
    const Span aside = sine(inRadians(panDeg)) * ahead / spacing;
    const Span exact = panDeg.magnitude() == 0.0 ? Span(0.0) : aside;
    for (std::size_t pick = 0; pick < 2; ++pick) {
      const Span own = pick == 0 ? exact : -exact;
      picks.load[pick] = g * (Span(0.5) * within.head() + hanging.mass * (Span(0.5) + own));
      picks.share[pick] = Span(0.5) + within.share() * own;
    }
  } else if (const auto* two = std::get_if<ForeAftPair>(&hang.bar.picks)) {
    const double place = doubts.frame.place;
    const Span2 front = Span2::around(two->frontPick, place);
    const Span2 rear = Span2::around(two->rearPick, place);
    const Span tilt = inRadians(tiltDeg);
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
      const Span2 total = within.total(actuator);
      swing = directionOf({-total.z, -total.x}); // sin s = −X/r, cos s = −Z/r
      const SpanTurn turn = turnBy(actuator);
      const SpanTurn swung = turnBy(swing);
      up.up.x = turn.cosine * Span(within.pan.cosine) * swung.sine + turn.sine * swung.cosine;
      up.tiltDeg = inDegrees(
          {std::asin(std::clamp(up.up.x.low, -1.0, 1.0)), std::asin(std::clamp(up.up.x.high, -1.0, 1.0))});
    }
    up.swingDeg = inDegrees(swing);
    up.left = panDeg == 0.0 ? Span(0.0) : Span(-within.pan.sine) * sine(swing);
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

BuildWorst buildWithin(const Hang& hang, const Doubts& doubts, const Statics& nominal,
                       const BuildWorst& stated, const PickSpans& asSet,
                       const std::vector<PlacedSpan>& placed, Span actuatorDeg) {
  BuildWorst worst;
  worst.unknown = stated.unknown;
  worst.restPanDeg = stated.restPanDeg;
  worst.restActuatorDeg = stated.restActuatorDeg;
  worst.levelActuatorDeg = stated.levelActuatorDeg;
  const Worsen worsen{worst, nominal.pickCount, nominal.side.has_value()};
  const auto all = static_cast<int>(hang.stack.size());
  worsen.take({BuildStage::set, all}, asSet, nominal.mass * standardGravity);

  Span pivot;
  for (std::size_t i = 0; i < placed.size(); ++i) {
    pivot = std::holds_alternative<Pivot>(hang.stack[i].joint) ? placed[i].jointDeg : pivot;
  }
  Steps(hang, doubts, stated, worsen).all(pivot);

  const HangingSpan hanging = hangingSpan(hang, doubts, placed, hang.stack.size());
  const Span pan = hull(stated.restPanDeg, hang.set.panDeg);
  const double tilt = hang.set.tiltDeg.value_or(0.0);
  Span actuator;
  if (nominal.side) {
    actuator = hull(stated.restActuatorDeg, actuatorDeg);
    if (pan.magnitude() > 0.0 && stated.levelActuatorDeg == stated.restActuatorDeg) {
      // As stated it cannot be level, but a corner may be, or the other way about.
      const Range travel = std::get<SidePair>(hang.bar.picks).tiltTravelDeg;
      actuator = hull(actuator, {travel.low, travel.high});
    } else if (pan.magnitude() > 0.0) {
      actuator = hull(actuator,
                      actuatorWithin(hang, doubts, hanging, 0.0, stated.restPanDeg, stated.levelActuatorDeg));
    }
  }
  Span tilts = hull(0.0, tilt);
  const auto* pair = std::get_if<SidePair>(&hang.bar.picks);
  const bool moves = pair == nullptr || pan.magnitude() > 0.0;
  if (pair != nullptr && moves) {
    tilts = hull(tilts, upWithin(hang, doubts, hanging, nominal, stated.restActuatorDeg, false).tiltDeg);
  }
  bool shut = true;
  bool freely = false;
  for (const double end : {tilts.low, tilts.high}) {
    const double rise = std::sin(toRadians(end));
    const double roll = std::sin(toRadians(pan.magnitude()));
    const Span above{std::sqrt(std::max(0.0, 1.0 - rise * rise - roll * roll)), std::cos(toRadians(end))};
    const Opening opening = openingOf(hang, placed, hang.stack.size(), {Span(rise), above});
    shut = shut && opening.surelyShut;
    freely = freely || opening.freely;
  }
  if (moves && freely) {
    worst.unknown = BuildMoment{BuildStage::aiming, all};
    return worst;
  }
  const HangingSpan aimed =
      shut || !moves
          ? hanging
          : hangingSpan(hang, doubts, placeWithin(hang, doubts, jointSpans(hang.stack, true, pivot)),
                        hang.stack.size());
  for (const double end : {std::min(0.0, tilt), std::max(0.0, tilt)}) {
    worsen.take({BuildStage::aiming, all}, picksWithin(hang, doubts, aimed, pan, actuator, end),
                nominal.mass * standardGravity);
  }
  return worst;
}

} // namespace hangbook::hang
