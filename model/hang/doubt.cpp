// SPDX-License-Identifier: GPL-3.0-or-later
#include "hang/doubt.h"

#include "hang/doubt_carried.h"
#include "hang/doubt_joints.h"
#include "hang/finite.h"
#include "quantity/quantity.h"

namespace hangbook::hang {
namespace {

bool isNone(const PieceDoubt& doubt) {
  return doubt.lighter == 0.0 && doubt.heavier == 0.0 && doubt.centre == 0.0 && doubt.place == 0.0;
}

void bound(const Within& within, Unfavourable& into) {
  Statics& worst = into.statics;
  if (worst.chain) {
    ChainStatics& chain = *worst.chain;
    chain.most = std::max(chain.most, within.tension.high);
    if (within.pivotHeld) {
      chain.tension = std::min(chain.tension, within.tension.low);
    }
  }
  for (std::size_t i = 0; i < worst.joints.size(); ++i) {
    const JointStatics nominal = worst.joints[i];
    worst.joints[i] = worstJoint(within, i, nominal);
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
  return inDegrees(arcsine(rise));
}

/// How far the height of anything below the picks is off.
double heightWithin(const Within& within, const Doubts& doubts) {
  const auto rise = [&within](const Span2& way) { return dot(way, within.up.up); };
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
  return least > 0.0 ? (1.0 + off / depth) * (spacing / least) : 1.0;
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
  AllFinite all;
  const auto see = [&](const PieceDoubt& doubt) {
    all.see(doubt.lighter, doubt.heavier, doubt.centre, doubt.place);
  };
  see(head);
  see(frame);
  all.see(linkShorter, linkLonger);
  std::for_each(stack.begin(), stack.end(), see);
  return all.yes();
}

/// With what the steps of the build carry.
class Doubting::Shapes : public HangShapes {
public:
  Shapes(const Hang& hang, const Doubts& doubts)
      : HangShapes(hang, doubts), carried(hang, doubts), heaviest_(known() ? heaviest(hang, doubts) : 0.0) {}
  double heaviestKg() const { return heaviest_; }

  CarriedWithin carried;

private:
  double heaviest_;
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
  if (within.pivotHeld && !within.tension.above0()) {
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
    if (within.pivotHeld && !within.tension.above0()) {
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
  worst.build.carried = shapes_->carried.worst(*shapes_, nominal, build, worst.actuatorDeg);
  bound(within, worst);
  worst.height = heightWithin(within, doubts);
  worst.chainMayNotReach =
      hang.chain && !within.pivotHeld && nominal.chain &&
      isLength(nominal.chain->straight - (chainSpan(hang, doubts).low - anchorToEyeDoubt(hang, doubts)));
  return worst;
}

Unfavourable unfavourable(const Hang& hang, const Statics& nominal, const BuildWorst& build,
                          const Doubts& doubts) {
  return Doubting(hang, doubts).at(nominal, build);
}

} // namespace hangbook::hang
