// SPDX-License-Identifier: GPL-3.0-or-later
#include "hang/doubt_joints.h"

#include <cmath>

#include "hang/joints.h"
#include "quantity/quantity.h"

namespace hangbook::hang {
namespace {

LineSpan lineWithin(const Hang& hang, const Doubts& doubts, const std::vector<PlacedSpan>& placed) {
  const auto held = static_cast<std::size_t>(hang.chain->held) - 1;
  LineSpan line;
  line.eye = turned(hang.stack[held].chainEye.value_or(Vec2{}), doubts.stack[held].place, placed[held].turn);
  const Span2 way = Span2::around(hang.bar.chainAnchor.value_or(Vec2{}), doubts.frame.place) -
                    (placed[held].pin + line.eye);
  // A unit vector by its angle: x and z of a quotient would be in doubt more than the direction is.
  const Vec2 middle{0.5 * (way.x.low + way.x.high), 0.5 * (way.z.low + way.z.high)};
  const double off = 0.5 * std::hypot(way.x.width(), way.z.width());
  const Span angle = Span::around(std::atan2(middle.z, middle.x), offTurn(off, length(middle)));
  const SpanTurn turn = turnBy(angle);
  line.towardsAnchor = {turn.cosine, turn.sine};
  return line;
}

/// From a joint's pin to the chain's eye.
Span2 toEye(const std::vector<PlacedSpan>& placed, std::size_t joint, std::size_t held,
            const LineSpan& line) {
  Span2 way = line.eye;
  for (std::size_t i = joint; i + 1 < held; ++i) {
    way = way + placed[i].next;
  }
  return way;
}

/// The worst of one joint: forces at their greatest, the contact at its least, its greatest at the other end.
class WorstJoint {
public:
  WorstJoint(const Within& within, std::size_t joint, const JointStatics& nominal)
      : within_(within), joint_(joint), worst_(nominal), piece_(within.placed()[joint]) {}

  JointStatics find() {
    if (const auto* pinned = std::get_if<Pinned>(&within_.hang.stack[joint_].joint)) {
      twoPins(*pinned);
    } else {
      onePin();
    }
    return worst_;
  }

private:
  /// Weight and chain.
  Span2 load() const {
    const bool pulled = within_.pulled(joint_) && within_.line();
    if (pulled && within_.pivotHeld) {
      const std::size_t pivot = within_.held - 1;
      return forceSpan(within_.placed(), joint_, within_.up.up, pivot,
                       (Span(1.0) / within_.closing(pivot)) * within_.line()->towardsAnchor);
    }
    const Span2 weight = (-weightSpan(within_.placed(), joint_)) * within_.up.up;
    return pulled ? weight + within_.tension * within_.line()->towardsAnchor : weight;
  }

  void onePin() {
    Span2 force = load();
    if (const auto* seated = std::get_if<Seated>(&within_.hang.stack[joint_].joint)) {
      const Span push = rear(*seated);
      force = force - push * turned(Vec2{0.0, 1.0}, 0.0, piece_.turn);
    }
    across({});
    set(0, longest(force));
  }

  Span rear(const Seated& seated) {
    const Span alone = within_.push(joint_);
    const bool byItself = within_.pulled(joint_) && within_.line() && !within_.pivotHeld;
    const Span chain = byItself ? within_.tension * within_.closing(joint_) : Span(0.0);
    const Span all = alone - chain / Span::around(seated.contact.x, within_.doubts.stack[joint_].place);
    const bool mayOpen = !alone.above0();
    JointEnd end;
    if (worst_.contact || all.high > 0.0) {
      worst_.contact = std::max(0.0, all.low);
      end.contact = std::max(0.0, all.high);
    }
    if (mayOpen) {
      worst_.openDeg = std::max(worst_.openDeg, seated.openToDeg);
      end.stop = std::max(0.0, -all.low);
      worst_.stop = end.stop;
    }
    worst_.end = end;
    return all;
  }

  void twoPins(const Pinned& pinned) {
    const double place = within_.doubts.stack[joint_].place;
    const Vec2 halfway = 0.5 * (pinned.pins[0] + pinned.pins[1]);
    const Span2 middle = turned(halfway, place, piece_.turn);
    const double apart = length(pinned.pins[1] - pinned.pins[0]);
    const Span distance = Span::around(apart, 2.0 * std::numbers::sqrt2 * place);
    // A pinned joint that the chain may help, or not, is taken with all that it may do, and with nothing.
    const bool helped = within_.pulled(joint_) && within_.line().has_value();
    const Span2 force = Span(0.5) * load();
    const Span2 lever =
        helped ? toEye(within_.placed(), joint_, within_.held, *within_.line()) - middle : Span2{};
    Span moments = momentSpan(within_.placed(), joint_, within_.placed().size(), within_.up.up, middle,
                              helped ? within_.byPivot(joint_, lever) : ByChain{});
    if (helped && !within_.pivotHeld) {
      moments += within_.tension * moment(lever, within_.line()->towardsAnchor);
    }
    const Span couple = moments / distance;
    // Square to the line between the pins.
    const Vec2 line = (1.0 / apart) * (pinned.pins[1] - pinned.pins[0]);
    const double askew = offTurn(2.0 * std::numbers::sqrt2 * place, apart);
    const Span2 square = turned(quarterTurn(line), 0.0, turnBy(piece_.turnRad + Span::around(0.0, askew)));
    across(middle);
    set(0, longest(force - couple * square));
    set(1, longest(force + couple * square));
  }

  /// What the roll turns over to a side, at its greatest.
  void across(const Span2& from) {
    const Span left = within_.up.left;
    if (left.magnitude() == 0.0) {
      return;
    }
    Span2 first;
    Span mass;
    Span2 pin = Span2{} - from;
    for (std::size_t i = joint_; i < within_.placed().size(); ++i) {
      const PlacedSpan& each = within_.placed()[i];
      first = first + each.mass * (pin + each.centre);
      mass += each.mass;
      pin = pin + each.next;
    }
    worst_.sideways = standardGravity * mass.high * left.magnitude();
    roll_ = standardGravity * left.magnitude() * longest(first);
  }

  /// The pin's force on both sides together at its greatest, along what a roll adds to it.
  void set(std::size_t pin, double most) {
    const Vec2 stated = worst_.pinLoads[pin];
    const double was = length(stated);
    const double greatest = std::max(most, was);
    worst_.pinLoads[pin] = was > 0.0 ? (greatest / was) * stated : Vec2{0.0, -greatest};
    worst_.pinForces[pin] = 0.5 * greatest;
    if (roll_ > 0.0) {
      worst_.pinLoads[pin] = {0.0, -greatest};
      worst_.sidewaysMoment = {0.0, roll_};
    }
    if (worst_.end) {
      worst_.end->pinLoads[pin] = worst_.pinLoads[pin];
      worst_.end->pinForces[pin] = worst_.pinForces[pin];
    }
  }

  const Within& within_;
  std::size_t joint_;
  JointStatics worst_;
  const PlacedSpan& piece_;
  double roll_ = 0.0;
};

} // namespace

Shape::Shape(const Hang& hang, const Doubts& doubts, bool open, Span pivotDeg)
    : pivot(pivotDeg), placed(placeWithin(hang, doubts, jointSpans(hang.stack, open, pivotDeg))),
      hanging(hangingSpan(hang, doubts, placed, hang.stack.size())) {
  if (hang.chain) {
    line = lineWithin(hang, doubts, placed);
    const auto held = static_cast<std::size_t>(hang.chain->held);
    for (std::size_t joint = 0; joint < held; ++joint) {
      closing.push_back(-moment(toEye(placed, joint, held, *line), line->towardsAnchor));
    }
  }
}

Span Shape::heldPivotDeg(const Hang& hang) const {
  Span held;
  for (std::size_t i = 0; i < placed.size(); ++i) {
    held = std::holds_alternative<Pivot>(hang.stack[i].joint) ? placed[i].jointDeg : held;
  }
  return held;
}

HangingShape Shape::forBuild(const Hang& hang, const Doubts& doubts, const BuildWorst& stated) {
  if (!opened) {
    opened =
        hangingSpan(hang, doubts, placeWithin(hang, doubts, jointSpans(hang.stack, true, heldPivotDeg(hang))),
                    hang.stack.size());
  }
  if (steps.empty()) { // how it is assembled is the bar's own, whatever it is set to
    steps = stepsWithin(hang, doubts, stated, heldPivotDeg(hang));
  }
  return {placed, hanging, *opened, steps};
}

HangShapes::HangShapes(const Hang& hang, const Doubts& doubts, Span swungDeg)
    : hang_(hang), doubts_(doubts), held_(static_cast<std::size_t>(heldBy(hang.chain))),
      pivotHeld_(held_ > 0 && std::holds_alternative<Pivot>(hang.stack[held_ - 1].joint)),
      known_(doubts.known()), swungDeg_(swungDeg) {}

Span HangShapes::shutPivot() {
  if (!shutPivot_) {
    const Span pivot = pivotHeld_ ? pivotSpan(hang_, doubts_, false) : swungDeg_;
    shutPivot_ = std::isfinite(pivot.width()) ? pivot : anyAngle;
  }
  return *shutPivot_;
}

Shape& HangShapes::shut() {
  if (!shut_) {
    shut_.emplace(hang_, doubts_, false, shutPivot());
  }
  return *shut_;
}

Span HangShapes::openPivot() {
  if (!openPivot_) {
    openPivot_ = pivotHeld_ ? pivotSpan(hang_, doubts_, true) : shutPivot();
  }
  return *openPivot_;
}

Shape& HangShapes::open() {
  if (!open_) {
    open_.emplace(hang_, doubts_, true, openPivot());
  }
  return *open_;
}

Span Within::findTension() const {
  if (!line()) {
    return 0.0;
  }
  if (pivotHeld) {
    return gravity(held - 1) / closing(held - 1);
  }
  double most = 0.0;
  for (std::size_t i = 0; i < held; ++i) {
    const Span arm = closing(i);
    const Span opening = gravity(i);
    const auto* seated = std::get_if<Seated>(&hang.stack[i].joint);
    if (seated != nullptr && seated->openToDeg == 0.0 && !mayBeTaut()) {
      continue; // it stays as it is, and the chain slack
    }
    if (isLength(arm.low)) {
      most = std::max(most, opening.high / arm.low);
    } else if (isLength(-arm.high)) {
      if (std::holds_alternative<Pinned>(hang.stack[i].joint)) {
        most = std::max(most, opening.low / arm.high);
      }
    } else if (arm.width() != 0.0) {
      most = std::numeric_limits<double>::infinity();
    }
  }
  return {0.0, most};
}

ByChain Within::byPivot(std::size_t joint, const Span2& lever) const {
  return pulled(joint) && pivotHeld
             ? ByChain{held - 1, moment(lever, line()->towardsAnchor) / closing(held - 1)}
             : ByChain{};
}

Span Within::push(std::size_t joint) const {
  const auto& seated = std::get<Seated>(hang.stack[joint].joint);
  const ByChain chain = line() ? byPivot(joint, toEye(placed(), joint, held, *line())) : ByChain{};
  return momentSpan(placed(), joint, placed().size(), up.up, {}, chain) /
         Span::around(seated.contact.x, doubts.stack[joint].place);
}

bool Within::mayBeTaut() const {
  return chainSpan(hang, doubts).low - anchorToEyeDoubt(hang, doubts) <=
         (nominal.chain ? nominal.chain->straight : 0.0);
}

bool Within::surelyShut(std::size_t joint) const {
  const auto* seated = std::get_if<Seated>(&hang.stack[joint].joint);
  return seated == nullptr || push(joint).above0();
}

JointStatics worstJoint(const Within& within, std::size_t joint, const JointStatics& nominal) {
  return WorstJoint(within, joint, nominal).find();
}

} // namespace hangbook::hang
