// SPDX-License-Identifier: GPL-3.0-or-later
#include "hang/doubt.h"

#include "hang/doubt_picks.h"
#include "hang/joints.h"
#include "quantity/quantity.h"

namespace hangbook::hang {
namespace {

constexpr double freelyDeg = 90.0;

bool isNone(const PieceDoubt& doubt) {
  return doubt.lighter == 0.0 && doubt.heavier == 0.0 && doubt.centre == 0.0 && doubt.place == 0.0;
}

/// The chain's straight line within its doubts.
struct LineSpan {
  Span2 eye; ///< from the held element's pin, frame axes
  Span2 towardsAnchor;
};

LineSpan lineWithin(const Hang& hang, const Doubts& doubts, const std::vector<PlacedSpan>& placed) {
  const auto held = static_cast<std::size_t>(hang.chain->held) - 1;
  LineSpan line;
  line.eye = turned(hang.stack[held].chainEye.value_or(Vec2{}), doubts.stack[held].place, placed[held].turn);
  const Span2 way = Span2::around(hang.bar.chainAnchor.value_or(Vec2{}), doubts.frame.place) -
                    (placed[held].pin + line.eye);
  // A unit vector by its angle: x and z of a quotient would be in doubt more than the direction is.
  const Vec2 middle{0.5 * (way.x.low + way.x.high), 0.5 * (way.z.low + way.z.high)};
  const double off = 0.5 * std::hypot(way.x.width(), way.z.width());
  const double away = length(middle);
  const double radians = off < away ? std::asin(off / away) : std::numbers::pi; // any way at all
  const Span angle = Span::around(std::atan2(middle.z, middle.x), radians);
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

/// A hang put together within its doubts, whatever its setting.
struct Shape {
  Span pivot; ///< degrees
  std::vector<PlacedSpan> placed;
  HangingSpan hanging;
  std::optional<LineSpan> line;
  std::vector<Span>
      closing; ///< of each joint above the chain's eye: moment of a chain's pull of 1 N, nose down
  std::optional<HangingSpan> opened;
  std::vector<StepWithin> steps;
  double restPanDeg = 0.0; ///< that the steps were worked out for
  double restActuatorDeg = 0.0;

  Shape(const Hang& hang, const Doubts& doubts, bool open, Span pivotDeg)
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

  /// A pivot's angle as the steps of the build take it.
  Span heldPivotDeg(const Hang& hang) const {
    Span held;
    for (std::size_t i = 0; i < placed.size(); ++i) {
      held = std::holds_alternative<Pivot>(hang.stack[i].joint) ? placed[i].jointDeg : held;
    }
    return held;
  }

  HangingShape forBuild(const Hang& hang, const Doubts& doubts, const BuildWorst& stated) {
    if (!opened) {
      opened = hangingSpan(hang, doubts,
                           placeWithin(hang, doubts, jointSpans(hang.stack, true, heldPivotDeg(hang))),
                           hang.stack.size());
    }
    if (steps.empty() || restPanDeg != stated.restPanDeg || restActuatorDeg != stated.restActuatorDeg) {
      steps = stepsWithin(hang, doubts, stated, heldPivotDeg(hang));
      restPanDeg = stated.restPanDeg;
      restActuatorDeg = stated.restActuatorDeg;
    }
    return {placed, hanging, *opened, steps};
  }
};

struct Within {
  const Hang& hang;
  const Doubts& doubts;
  const Statics& nominal;
  std::size_t held = 0;
  bool pivotHeld = false;
  const Shape* shape = nullptr;
  UpSpan up;
  Span tension; ///< that the chain may have

  const std::vector<PlacedSpan>& placed() const { return shape->placed; }
  const std::optional<LineSpan>& line() const { return shape->line; }
  Span gravity(std::size_t joint) const { return momentSpan(placed(), joint, placed().size(), up.up); }
  Span closing(std::size_t joint) const { return shape->closing[joint]; }
  bool pulled(std::size_t joint) const { return joint < held; }

  /// With a pivot: what its balance asks. Else nothing up to the most that any joint could ask of it alone.
  Span findTension() const {
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
      if (arm.low > lengthSlack) {
        most = std::max(most, opening.high / arm.low);
      } else if (arm.high < -lengthSlack) {
        most = std::max(most,
                        std::holds_alternative<Pinned>(hang.stack[i].joint) ? opening.low / arm.high : 0.0);
      } else if (arm.width() > 0.0) {
        most = std::numeric_limits<double>::infinity();
      }
    }
    return {0.0, most};
  }

  /// What a chain that holds a pivot does about a point, `lever` from there to the eye.
  ByChain byPivot(std::size_t joint, const Span2& lever) const {
    return pulled(joint) && pivotHeld
               ? ByChain{held - 1, moment(lever, line()->towardsAnchor) / closing(held - 1)}
               : ByChain{};
  }

  /// Push at a seated joint's rear; below 0 it would have to pull. A chain counts where it holds a pivot.
  Span push(std::size_t joint) const {
    const auto& seated = std::get<Seated>(hang.stack[joint].joint);
    const ByChain chain = line() ? byPivot(joint, toEye(placed(), joint, held, *line())) : ByChain{};
    return momentSpan(placed(), joint, placed().size(), up.up, {}, chain) /
           Span::around(seated.contact.x, doubts.stack[joint].place);
  }

  /// The chain may pull without a pivot: where nothing is sure to leave it slack.
  bool mayBeTaut() const {
    return chainSpan(hang, doubts).low - anchorToEyeDoubt(hang, doubts) <=
           (nominal.chain ? nominal.chain->straight : 0.0);
  }

  bool surelyShut(std::size_t joint) const {
    const auto* seated = std::get_if<Seated>(&hang.stack[joint].joint);
    return seated == nullptr || push(joint).low > 0.0;
  }
};

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
    const bool mayOpen = !(alone.low > 0.0);
    JointEnd end;
    if (worst_.contact || all.high > 0.0) {
      worst_.contact = std::max(0.0, all.low);
      end.contact = std::max(0.0, all.high);
    }
    if (mayOpen && seated.openToDeg > 0.0) {
      worst_.openDeg = std::max(worst_.openDeg, seated.openToDeg);
    }
    if (mayOpen) {
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
    const double askew = apart > 2.0 * std::numbers::sqrt2 * place
                             ? std::asin(2.0 * std::numbers::sqrt2 * place / apart)
                             : std::numbers::pi;
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

void bound(const Within& within, Unfavourable& into) {
  Statics& worst = into.statics;
  if (worst.chain) {
    ChainStatics& chain = *worst.chain;
    chain.most = std::max(chain.most, within.tension.high);
    if (within.pivotHeld) {
      chain.tension = std::min(chain.tension, within.tension.low);
      chain.tensionIsLeast = false;
    }
  }
  for (std::size_t i = 0; i < worst.joints.size(); ++i) {
    const JointStatics nominal = worst.joints[i];
    worst.joints[i] = WorstJoint(within, i, nominal).find();
    JointStatics& joint = worst.joints[i];
    joint.gravityMoment = within.gravity(i).high;
    if (nominal.end && !joint.end) {
      joint.end = JointEnd{std::nullopt, std::nullopt, joint.pinLoads, joint.pinForces};
    }
  }
}

/// Elevation of an element's forward direction. A roll takes some of a turn's rise: rise = |up in the plane|
/// × sin of the turn against what is level there.
Span aimWithin(const UpSpan& up, Span tiltDeg, const PlacedSpan& piece) {
  if (up.left.magnitude() == 0.0) {
    return tiltDeg + inDegrees(piece.turnRad);
  }
  const Span level = directionOf({up.up.z, up.up.x});
  const Span rise = root(square(up.up.x) + square(up.up.z)) * sine(piece.turnRad + level);
  return inDegrees({std::asin(std::clamp(rise.low, -1.0, 1.0)), std::asin(std::clamp(rise.high, -1.0, 1.0))});
}

/// How far the height of anything below the picks is off.
double heightWithin(const Within& within, const Doubts& doubts) {
  const auto rise = [&within](const Span2& way) { return way.x * within.up.up.x + way.z * within.up.up.z; };
  double most = doubts.frame.place;
  if (const auto* pair = std::get_if<SidePair>(&within.hang.bar.picks)) {
    most += turned(pair->tiltAxis, doubts.head.place, turnBy(inRadians(within.up.swingDeg))).z.width() * 0.5;
  } else if (const auto* two = std::get_if<ForeAftPair>(&within.hang.bar.picks)) {
    most += 0.5 * rise(Span2::around(two->frontPick, doubts.frame.place)).width();
  }
  double below = most;
  for (std::size_t i = 0; i < within.placed().size(); ++i) {
    const PlacedSpan& piece = within.placed()[i];
    for (const Vec2 corner : within.hang.stack[i].outline) {
      const Span2 place = piece.pin + turned(corner, doubts.stack[i].place, piece.turn);
      below = std::max(below, most + 0.5 * rise(place).width());
    }
  }
  return below;
}

/// Stands for an angle of which nothing is known.
const Span anyAngle{-180.0, 180.0};

/// kg, of all that hangs.
double heaviest(const Hang& hang, const Doubts& doubts) {
  const auto* pair = std::get_if<SidePair>(&hang.bar.picks);
  double mass = massOf(hang.bar.frameMass, doubts.frame).high +
                (pair != nullptr ? massOf(pair->headMass, doubts.head).high : 0.0);
  for (std::size_t i = 0; i < hang.stack.size(); ++i) {
    mass += massOf(hang.stack[i].mass, doubts.stack[i]).high;
  }
  return mass;
}

/// Angles as they are stated, for a hang of which no more is bounded.
void stayAsStated(const Statics& nominal, Unfavourable& into) {
  into.tiltDeg = nominal.tiltDeg;
  if (nominal.side) {
    into.actuatorDeg = nominal.side->actuatorDeg;
    into.swingDeg = nominal.side->headSwingDeg;
  }
  for (const JointStatics& joint : nominal.joints) {
    into.jointDeg.emplace_back(joint.angleDeg);
    into.aimDeg.emplace_back(joint.aimDeg);
  }
}

/// How much greater the centre's depth below the picks ÷ their spacing may be than stated.
double leverWithin(const Hang& hang, const Doubts& doubts, const HangingSpan& hanging,
                   const Statics& nominal) {
  double spacing = 0.0;
  if (const auto* pair = std::get_if<SidePair>(&hang.bar.picks)) {
    spacing = pair->pickSpacing;
  } else if (const auto* two = std::get_if<ForeAftPair>(&hang.bar.picks)) {
    spacing = length(two->rearPick - two->frontPick);
  }
  const double off = 0.5 * std::hypot(hanging.centre.x.width(), hanging.centre.z.width()) +
                     std::numbers::sqrt2 * (doubts.head.place + doubts.head.centre);
  const double least = spacing - 2.0 * std::numbers::sqrt2 * doubts.frame.place;
  const double depth = std::abs(nominal.cg.z);
  return depth > 0.0 && least > 0.0 ? (1.0 + off / depth) * (spacing / least) : 1.0;
}

/// How far the centre of all that hangs may be from where it is stated, in the plane of the hang: by its own
/// doubt, by that of the pick that it is measured from, and as far as another actuator swings it.
double centreWithin(const Hang& hang, const Doubts& doubts, const HangingSpan& hanging, Span actuatorDeg) {
  double off = 0.5 * std::hypot(hanging.centre.x.width(), hanging.centre.z.width()) +
               std::numbers::sqrt2 * (doubts.head.place + doubts.head.centre + doubts.frame.place);
  if (std::holds_alternative<SidePair>(hang.bar.picks)) {
    off += inRadians(actuatorDeg).width() * longest(hanging.centre);
  }
  return off;
}

} // namespace

bool Doubts::none() const {
  return isNone(head) && isNone(frame) && std::all_of(stack.begin(), stack.end(), isNone) &&
         linkShorter == 0.0 && linkLonger == 0.0;
}

bool Doubts::known() const {
  const auto sum = [](const PieceDoubt& doubt) {
    return doubt.lighter + doubt.heavier + doubt.centre + doubt.place;
  };
  double all = sum(head) + sum(frame) + linkShorter + linkLonger;
  for (const PieceDoubt& each : stack) {
    all += sum(each);
  }
  return std::isfinite(all);
}

/// Worked out when first asked for.
class Doubting::Shapes {
public:
  Shapes(const Hang& hang, const Doubts& doubts)
      : hang_(hang), doubts_(doubts), held_(hang.chain ? static_cast<std::size_t>(hang.chain->held) : 0),
        pivotHeld_(held_ > 0 && std::holds_alternative<Pivot>(hang.stack[held_ - 1].joint)),
        known_(doubts.known()), heaviest_(known_ ? heaviest(hang, doubts) : 0.0) {}

  bool known() const { return known_; }
  std::size_t held() const { return held_; }
  bool pivotHeld() const { return pivotHeld_; }
  double heaviestKg() const { return heaviest_; }

  /// Every joint shut.
  Span shutPivot() {
    if (!shutPivot_) {
      const Span pivot = pivotHeld_ ? pivotSpan(hang_, doubts_, false) : Span(0.0);
      shutPivot_ = std::isfinite(pivot.width()) ? pivot : anyAngle;
    }
    return *shutPivot_;
  }
  Shape& shut() {
    if (!shut_) {
      shut_.emplace(hang_, doubts_, false, shutPivot());
    }
    return *shut_;
  }

  /// Those that may open anywhere up to their stop.
  Span openPivot() {
    if (!openPivot_) {
      openPivot_ = pivotHeld_ ? pivotSpan(hang_, doubts_, true) : shutPivot();
    }
    return *openPivot_;
  }
  Shape& open() {
    if (!open_) {
      open_.emplace(hang_, doubts_, true, openPivot());
    }
    return *open_;
  }

private:
  const Hang& hang_;
  const Doubts& doubts_;
  std::size_t held_;
  bool pivotHeld_;
  bool known_;
  double heaviest_;
  std::optional<Span> shutPivot_;
  std::optional<Shape> shut_;
  std::optional<Span> openPivot_;
  std::optional<Shape> open_;
};

Doubting::Doubting(const Hang& hang, const Doubts& doubts) : hang_(hang), doubts_(doubts) {}
Doubting::~Doubting() = default;

Unfavourable Doubting::at(const Statics& nominal, const BuildWorst& build) {
  return found(nominal, build, nullptr);
}

std::vector<BuildStep> Doubting::steps(const Statics& nominal, const BuildWorst& build,
                                       const std::vector<BuildStep>& stated) {
  std::vector<BuildStep> worst = stated;
  return found(nominal, build, &worst).bounded ? worst : std::vector<BuildStep>{};
}

Unfavourable Doubting::found(const Statics& nominal, const BuildWorst& build, std::vector<BuildStep>* told) {
  Unfavourable worst;
  worst.statics = nominal;
  worst.build = build;
  if (!shapes_) {
    shapes_ = std::make_unique<Shapes>(hang_, doubts_);
  }
  if (!shapes_->known()) {
    worst.bounded = false;
    return worst;
  }
  const Hang& hang = hang_;
  const Doubts& doubts = doubts_;
  Within within{hang, doubts, nominal, shapes_->held(), shapes_->pivotHeld(), nullptr, {}, {}};
  const auto notBounded = [&worst] {
    worst.bounded = false;
    return worst;
  };
  // All that hangs, whatever shape it takes.
  worst.statics.mass = std::max(nominal.mass, shapes_->heaviestKg());
  // At the end of its travel it rests there, and the chain hangs slack.
  const auto staysInTravel = [&](Span angle) {
    const auto* joint = within.pivotHeld ? std::get_if<Pivot>(&hang.stack[within.held - 1].joint) : nullptr;
    return joint == nullptr || (joint->travelDeg.holds(angle.low) && joint->travelDeg.holds(angle.high));
  };
  if (!staysInTravel(shapes_->shutPivot())) {
    stayAsStated(nominal, worst);
    worst.jointDeg[within.held - 1] = shapes_->shutPivot();
    return notBounded();
  }
  Shape* shape = &shapes_->shut();
  if (nominal.side) {
    // The actuator is set for the tilt of the closed shape, and stays there whatever opens.
    const double wanted = hang.set.tiltDeg.value_or(nominal.tiltDeg);
    worst.actuatorDeg =
        actuatorWithin(hang, doubts, shape->hanging, wanted, hang.set.panDeg, nominal.side->actuatorDeg);
    if (!std::isfinite(worst.actuatorDeg.width())) {
      stayAsStated(nominal, worst);
      worst.actuatorDeg = anyAngle; // the tilt may be out of its reach
      return notBounded();
    }
  }
  const auto settleUp = [&](bool closed) {
    within.shape = shape;
    within.up = upWithin(hang, doubts, shape->hanging, nominal, worst.actuatorDeg, closed);
    within.tension = within.findTension();
  };
  settleUp(true);
  if (within.pivotHeld && !(within.tension.low > 0.0)) {
    worst.statics.chain->tension = std::min(nominal.chain->tension, within.tension.low);
    return notBounded(); // slack, it does not hold the pivot's angle
  }
  bool mayOpen = false;
  for (std::size_t i = 0; i < hang.stack.size(); ++i) {
    const auto* seated = std::get_if<Seated>(&hang.stack[i].joint);
    if (seated != nullptr && seated->openToDeg > 0.0 && !within.surelyShut(i)) {
      mayOpen = true;
      if (seated->openToDeg >= freelyDeg) {
        worst.statics.joints[i].openDeg = seated->openToDeg;
        return notBounded(); // how far, nobody stated
      }
    }
  }
  if (mayOpen) {
    if (!std::isfinite(shapes_->openPivot().width()) || !staysInTravel(shapes_->openPivot())) {
      return notBounded();
    }
    shape = &shapes_->open();
    settleUp(false);
    if (within.pivotHeld && !(within.tension.low > 0.0)) {
      return notBounded();
    }
  }
  if (!std::isfinite(within.up.up.x.width()) || !std::isfinite(within.tension.width())) {
    return notBounded();
  }
  worst.swingDeg = within.up.swingDeg;
  worst.tiltDeg = within.up.tiltDeg;
  for (const PlacedSpan& each : within.placed()) {
    worst.jointDeg.push_back(each.jointDeg);
    worst.aimDeg.push_back(aimWithin(within.up, worst.tiltDeg, each));
  }
  const PickSpans picks =
      picksWithin(hang, doubts, shape->hanging, hang.set.panDeg, worst.actuatorDeg, nominal.tiltDeg);
  const double head =
      nominal.side ? massOf(std::get<SidePair>(hang.bar.picks).headMass, doubts.head).high : 0.0;
  worst.statics.mass = std::max(nominal.mass, shape->hanging.mass.high + head);
  const double lightestHead =
      nominal.side ? massOf(std::get<SidePair>(hang.bar.picks).headMass, doubts.head).low : 0.0;
  worst.leastMass = std::min(nominal.mass, shape->hanging.mass.low + lightestHead);
  worst.lever = leverWithin(hang, doubts, shape->hanging, nominal);
  worst.centreOff = centreWithin(hang, doubts, shape->hanging, worst.actuatorDeg);
  for (std::size_t pick = 0; pick < nominal.pickCount; ++pick) {
    worst.leastPick[pick] = std::min(nominal.pickLoads[pick].load, picks.load[pick].low);
    worst.statics.pickLoads[pick].load = std::max(nominal.pickLoads[pick].load, picks.load[pick].high);
  }
  worst.build = buildWithin(hang, doubts, nominal, build, picks, shape->forBuild(hang, doubts, build),
                            worst.actuatorDeg, told);
  bound(within, worst);
  worst.height = heightWithin(within, doubts);
  worst.chainMayNotReach =
      hang.chain && !within.pivotHeld && nominal.chain &&
      chainSpan(hang, doubts).low - anchorToEyeDoubt(hang, doubts) < nominal.chain->straight - lengthSlack;
  return worst;
}

Unfavourable unfavourable(const Hang& hang, const Statics& nominal, const BuildWorst& build,
                          const Doubts& doubts) {
  return Doubting(hang, doubts).at(nominal, build);
}

} // namespace hangbook::hang
