// SPDX-License-Identifier: GPL-3.0-or-later
#include "hang/doubt_carried.h"

#include <algorithm>
#include <cmath>
#include <functional>

namespace hangbook::hang {
namespace {

/// Each way up that a shape is to be looked at in; told whether every joint is shut.
using WaysUp = std::function<std::vector<UpSpan>(const Shape&, bool closed)>;

/// Nothing of the setting is read but through the ways up.
class Bounded {
public:
  Bounded(HangShapes& shapes, const Hang& hang, const Doubts& doubts, const Statics& nominal)
      : shapes_(shapes), hang_(hang), doubts_(doubts), nominal_(nominal) {}

  /// The most in each of the ways; empty where it does not follow.
  std::vector<CarriedMost> in(const WaysUp& ways) {
    std::vector<CarriedMost> found = all(shapes_.shut(), ways(shapes_.shut(), true));
    if (!mayOpen_) {
      return found;
    }
    if (freely_ || !std::isfinite(shapes_.openPivot().width())) {
      return {};
    }
    return all(shapes_.open(), ways(shapes_.open(), false));
  }

private:
  std::vector<CarriedMost> all(const Shape& shape, const std::vector<UpSpan>& ways) {
    std::vector<CarriedMost> found;
    for (const UpSpan& up : ways) {
      Within within{hang_, doubts_, nominal_, shapes_.held(), shapes_.pivotHeld(), &shape, up, {}};
      within.tension = within.findTension();
      look(within);
      if (!std::isfinite(up.up.x.width()) || !std::isfinite(within.tension.width())) {
        return {};
      }
      Statics worst;
      worst.chain = ChainStatics{};
      worst.chain->most = within.tension.high;
      for (std::size_t i = 0; i < hang_.stack.size(); ++i) {
        worst.joints.push_back(worstJoint(within, i, {}));
      }
      found.push_back(carriedBy(worst));
    }
    return found;
  }

  void look(const Within& within) {
    for (std::size_t i = 0; i < hang_.stack.size(); ++i) {
      const auto* seated = std::get_if<Seated>(&hang_.stack[i].joint);
      if (seated != nullptr && seated->openToDeg > 0.0 && !within.surelyShut(i)) {
        mayOpen_ = true;
        freely_ = freely_ || seated->openToDeg >= freelyDeg;
      }
    }
  }

  HangShapes& shapes_;
  const Hang& hang_;
  const Doubts& doubts_;
  const Statics& nominal_;
  bool mayOpen_ = false;
  bool freely_ = false;
};

/// World up of a frame that leans so, radians, in the plane of the hang.
UpSpan leaning(double lean, Span left) {
  UpSpan up;
  up.up = {Span(std::sin(lean)), Span(std::cos(lean))};
  up.left = left;
  return up;
}

UpSpan leaningWithin(Span lean, Span left) {
  UpSpan up;
  up.up = {sine(lean), cosine(lean)};
  up.left = left;
  return up;
}

/// By how much at most a side-pair's frame leans otherwise for being panned by up to `panDeg`, its actuator
/// where it is, radians. In the plane of the hang it leans by a + ψ, tan ψ = c tan s, with a the actuator, s
/// the head's swing and c = cos pan. At the same s, |dψ/dc| = |sin s cos s|/(cos² s + c² sin² s) ≤ 1/(2c²);
/// dψ/ds ≤ 1/c; and what hangs, x ahead of the tilt axis and `part` of all, swings the head by
/// |ds/dc| ≤ part·|x|/depth.
double panTurns(const SidePair& pair, const Doubts& doubts, const HangingSpan& hanging, Span actuatorDeg,
                double panDeg) {
  const Span head = massOf(pair.headMass, doubts.head);
  const Span part{hanging.mass.low / (hanging.mass.low + head.high),
                  hanging.mass.high / (hanging.mass.high + head.low)};
  const Span2 way = turned(hanging.centre, turnBy(inRadians(actuatorDeg)));
  const Span own = Span::around(pair.headCg.z, doubts.head.centre);
  const Span down = own + part * (Span::around(pair.tiltAxis.z, doubts.head.place) + way.z - own);
  // Panned square or further, or with no depth that is sure: any way at all, as far as half a turn.
  const double c = std::max(0.0, std::cos(toRadians(panDeg)));
  const double depth = std::max(0.0, -down.high);
  return std::min(std::numbers::pi, (1.0 - c) * (0.5 / (c * c) + (part * way.x).magnitude() / (depth * c)));
}

/// All of these ways, and level, between two of them: the way from one to the other.
std::vector<UpSpan> between(const std::vector<UpSpan>& ways) {
  Span lean;
  Span left;
  for (const UpSpan& up : ways) {
    lean = hull(lean, directionOf({up.up.z, up.up.x}));
    left = hull(left, up.left);
  }
  return {leaning(lean.low, left), leaning(lean.high, left)};
}

} // namespace

std::optional<CarriedMost> CarriedWithin::stepAt(BuildMoment moment, const Statics& nominal,
                                                 const BuildWorst& stated) {
  const auto cabinets = static_cast<std::ptrdiff_t>(moment.cabinets);
  Hang part{hang_.bar, {hang_.stack.begin(), hang_.stack.begin() + cabinets}, {}, {}, {}};
  part.set.panDeg = stated.restPanDeg;
  if (moment.stage == BuildStage::chained) {
    part.chain = hang_.chain;
  }
  Doubts doubts = doubts_;
  doubts.stack.resize(part.stack.size());
  const bool fore = std::holds_alternative<ForeAftPair>(hang_.bar.picks);
  const auto ways = [&](const Shape& shape, bool) -> std::vector<UpSpan> {
    return {fore ? leaning(0.0, {})
                 : upWithin(part, doubts, shape.hanging, {}, stated.restActuatorDeg, false)};
  };
  std::optional<CarriedMost> most;
  for (const Span swung : swungSpans(moment)) {
    HangShapes shapes(part, doubts, swung);
    const std::vector<CarriedMost> found = Bounded(shapes, part, doubts, nominal).in(ways);
    if (found.empty()) {
      return std::nullopt;
    }
    most = most ? alongArc(*most, found.front(), 0.0) : found.front(); // the greater of each figure
  }
  return most;
}

std::vector<Span> CarriedWithin::swungSpans(BuildMoment moment) const {
  constexpr double widest = 5.0; // degrees: what a narrow span gives is nearer to the truth
  const bool on = moment.stage == BuildStage::chained;
  const auto held = static_cast<std::size_t>(heldBy(hang_.chain));
  const Pivot* pivot = hang_.chain ? std::get_if<Pivot>(&hang_.stack[held - 1].joint) : nullptr;
  if (pivot == nullptr || on || hang_.chain->held > moment.cabinets) {
    return {Span{}};
  }
  const Range travel = pivot->travelDeg;
  const int parts = std::max(1, static_cast<int>(std::ceil((travel.high - travel.low) / widest)));
  const auto at = [&](int part) {
    return std::lerp(travel.low, travel.high, static_cast<double>(part) / parts);
  };
  std::vector<Span> spans;
  spans.reserve(static_cast<std::size_t>(parts));
  for (int part = 0; part < parts; ++part) {
    spans.emplace_back(at(part), at(part + 1));
  }
  return spans;
}

void CarriedWithin::steps(const Statics& nominal, const BuildWorst& stated) {
  if (steps_) { // how it is assembled is the bar's own, whatever it is set to
    return;
  }
  steps_ = CarriedWorst::begun(hang_.stack.size());
  const auto add = [&](BuildMoment moment) {
    if (const std::optional<CarriedMost> most = stepAt(moment, nominal, stated)) {
      steps_->take(*most, moment);
    } else {
      steps_->unknown = moment;
    }
  };
  for (int cabinets = 1; cabinets <= static_cast<int>(hang_.stack.size()); ++cabinets) {
    add({BuildStage::stacked, cabinets});
    if (hang_.chain && cabinets >= hang_.chain->held) {
      add({BuildStage::chained, cabinets});
    }
  }
  atRest_ = hang_;
  atRest_->set.panDeg = stated.restPanDeg;
}

std::vector<UpSpan> CarriedWithin::waysUp(const Shape& shape, bool closed, const Statics& nominal,
                                          const BuildWorst& stated, Span actuatorDeg) const {
  const auto* pair = std::get_if<SidePair>(&hang_.bar.picks);
  if (pair == nullptr) {
    return {leaning(toRadians(nominal.tiltDeg), {})};
  }
  const bool panned = hang_.set.panDeg != stated.restPanDeg;
  Span level = stated.levelActuatorDeg;
  if (panned) {
    // As stated it may not come level at all, but a corner may, or the other way about.
    const Span travel{pair->tiltTravelDeg.low, pair->tiltTravelDeg.high};
    const Span found =
        actuatorWithin(*atRest_, doubts_, shape.hanging, 0.0, stated.restPanDeg, stated.levelActuatorDeg);
    level =
        stated.levelActuatorDeg == stated.restActuatorDeg || !std::isfinite(found.width()) ? travel : found;
  }
  const auto up = [&](const Hang& hang, Span actuator, bool shut) {
    return upWithin(hang, doubts_, shape.hanging, nominal, actuator, shut);
  };
  if (!closed) { // what opens leans it further: anywhere on the way
    const Span way = hull(hull(stated.restActuatorDeg, level), actuatorDeg);
    std::vector<UpSpan> ways{up(*atRest_, way, false)};
    if (panned) {
      ways.push_back(up(hang_, way, false));
    }
    return ways;
  }
  std::vector<UpSpan> ways{up(*atRest_, stated.restActuatorDeg, false), up(hang_, actuatorDeg, true)};
  if (panned) {
    const double most = std::max(std::abs(hang_.set.panDeg), std::abs(stated.restPanDeg));
    ways.push_back(up(hang_, stated.restActuatorDeg, false));
    // Level it rolls otherwise; it leans, and the set one panned back, by no more than the pan can turn it.
    ways.push_back(leaningWithin(Span::around(0.0, panTurns(*pair, doubts_, shape.hanging, level, most)),
                                 up(hang_, level, false).left));
    const Span set = directionOf({ways[1].up.z, ways[1].up.x});
    ways.push_back(leaningWithin(
        set + Span::around(0.0, panTurns(*pair, doubts_, shape.hanging, actuatorDeg, most)), {}));
  }
  return ways;
}

CarriedWorst CarriedWithin::worst(HangShapes& whole, const Statics& nominal, const BuildWorst& stated,
                                  Span actuatorDeg) {
  steps(nominal, stated);
  CarriedWorst worst = *steps_;
  worst.take(stated.carried);
  if (std::holds_alternative<SinglePick>(hang_.bar.picks)) {
    return worst;
  }
  const BuildMoment aiming{BuildStage::aiming, static_cast<int>(hang_.stack.size())};
  Span lean;
  const std::vector<CarriedMost> ends =
      Bounded(whole, hang_, doubts_, nominal).in([&](const Shape& shape, bool closed) {
        std::vector<UpSpan> both = between(waysUp(shape, closed, nominal, stated, actuatorDeg));
        lean = {std::atan2(both[0].up.x.low, both[0].up.z.low),
                std::atan2(both[1].up.x.low, both[1].up.z.low)};
        return both;
      });
  if (ends.empty()) {
    worst.unknown = aiming;
    return worst;
  }
  worst.take(alongArc(ends[0], ends[1], lean.width()), aiming);
  return worst;
}

} // namespace hangbook::hang
