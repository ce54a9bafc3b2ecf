// SPDX-License-Identifier: GPL-3.0-or-later
#include "hang/settle.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <tuple>
#include <utility>

#include "hang/chain.h"
#include "hang/check.h"
#include "hang/descent.h"
#include "hang/finite.h"
#include "hang/joints.h"
#include "hang/solve.h"
#include "quantity/error.h"
#include "quantity/quantity.h"

namespace hangbook::hang {
namespace {

/// Radians: nearer to an end than this is at the end.
constexpr double endSlack = 1e-10;

/// Which joints can move, from where, and how far.
struct Freedom {
  std::vector<std::size_t> joints;
  Eigen::VectorXd start;
  Eigen::VectorXd low;
  Eigen::VectorXd high;
};

Freedom freedomOf(const std::vector<Element>& stack, const Assembly& closed) {
  Freedom freedom;
  std::vector<std::array<double, 3>> ways;
  for (std::size_t i = 0; i < stack.size(); ++i) {
    const double closedDeg = closed.pieces[i].jointDeg;
    if (const auto* seated = std::get_if<Seated>(&stack[i].joint);
        seated != nullptr && seated->openToDeg > 0.0) {
      ways.push_back({closedDeg, closedDeg, closedDeg + seated->openToDeg});
    } else if (const auto* pivot = std::get_if<Pivot>(&stack[i].joint)) {
      const Range travel = pivot->travelDeg;
      ways.push_back({std::clamp(closedDeg, travel.low, travel.high), travel.low, travel.high});
    } else {
      continue;
    }
    freedom.joints.push_back(i);
  }
  const auto count = static_cast<Eigen::Index>(ways.size());
  freedom.start.resize(count);
  freedom.low.resize(count);
  freedom.high.resize(count);
  for (Eigen::Index i = 0; i < count; ++i) {
    const auto& way = ways[static_cast<std::size_t>(i)];
    freedom.start(i) = toRadians(way[0]);
    freedom.low(i) = toRadians(way[1]);
    freedom.high(i) = toRadians(way[2]);
  }
  return freedom;
}

enum class Place { fixed, closed, open, stop };

/// Where each joint has come to rest.
std::vector<Place> placesOf(const std::vector<Element>& stack, const Freedom& freedom, const Rest& rest) {
  std::vector<Place> places(stack.size(), Place::fixed);
  for (std::size_t k = 0; k < freedom.joints.size(); ++k) {
    const auto i = static_cast<Eigen::Index>(k);
    Place& place = places[freedom.joints[k]];
    place = Place::open;
    if (rest.angles(i) <= freedom.low(i) + endSlack) {
      place = Place::closed;
    } else if (rest.angles(i) >= freedom.high(i) - endSlack) {
      place = Place::stop;
    }
  }
  return places;
}

/// What balance lets a taut chain carry where no joint is free: a closed joint must not be pulled open, one
/// at its stop must not be lifted off it. Where neither sets an upper end, the chain carries no more than as
/// if it alone carried the moment of a joint that can hold itself (pinned, or unable to open): nobody pulls
/// it tighter than gravity does.
std::pair<double, double> allowedTension(const Assembly& assembly, const std::vector<Element>& stack,
                                         const std::vector<Place>& places, int held, Vec2 up) {
  double least = 0.0;
  double most = std::numeric_limits<double>::infinity();
  double alone = 0.0;
  for (std::size_t i = 0; i < static_cast<std::size_t>(held); ++i) {
    const Piece& piece = assembly.pieces[i];
    const double opening = gravityMoment(piece, up);
    const double closing = closingArm(piece, *assembly.line);
    const bool seated = std::holds_alternative<Seated>(stack[i].joint);
    if (!isLength(std::abs(closing))) {
      continue;
    }
    if (places[i] == Place::fixed) {
      alone = std::max(alone, aloneTension(opening, closing));
    } else if (seated && (places[i] == Place::closed) == isLength(closing)) {
      least = std::max(least, opening / closing);
    } else if (seated) {
      most = std::min(most, opening / closing);
    }
  }
  return {least, std::max(least, std::isfinite(most) ? most : alone)};
}

SettledChain chainAtRest(const Hang& hang, const ShapeEnergy& energy, const std::vector<Place>& places,
                         double pull) {
  const Assembly& assembly = energy.assembly();
  const Vec2 up = energy.balance().attitude.upInPlane();
  SettledChain chain;
  chain.length = chainLength(*hang.chain);
  chain.straight = assembly.line->straight;
  chain.taut = !isLength(chain.length - chain.straight);
  chain.tension = 0.0;
  const auto held = static_cast<std::size_t>(hang.chain->held);
  if (!chain.taut) {
    // It carries nothing while the pinned joints beside it hold; if they give way, at most their moment.
    for (std::size_t i = 0; i < held; ++i) {
      if (std::holds_alternative<Pinned>(hang.stack[i].joint)) {
        const Piece& piece = assembly.pieces[i];
        chain.most =
            std::max(chain.most, aloneTension(gravityMoment(piece, up), closingArm(piece, *assembly.line)));
      }
    }
    return chain;
  }
  for (std::size_t i = 0; i < held; ++i) {
    if (places[i] == Place::open) {
      chain.tension = std::max(0.0, pull * energy.balance().mass * standardGravity);
      chain.least = *chain.tension;
      chain.most = chain.least;
      return chain;
    }
  }
  chain.tension.reset();
  std::tie(chain.least, chain.most) = allowedTension(assembly, hang.stack, places, hang.chain->held, up);
  return chain;
}

/// A push or pull at the rear of a seated joint, as contact or stop: above 0 the contact carries it.
void restOn(Place place, double push, std::optional<double>& contact, std::optional<double>& stop) {
  contact.reset();
  stop.reset();
  if (place == Place::stop || (place == Place::fixed && push < 0.0)) {
    stop = std::max(0.0, -push);
  } else if (place == Place::open) {
    contact = 0.0;
  } else {
    contact = std::max(0.0, push); // below 0 by rounding alone: the descent has freed every other
  }
}

SettledJoint jointAtRest(const Element& element, const Piece& piece, const Load& load, Place place) {
  SettledJoint joint;
  static_cast<JointStatics&>(joint) = jointUnder(element.joint, piece, load);
  const auto* seated = std::get_if<Seated>(&element.joint);
  if (seated == nullptr) {
    return joint;
  }
  joint.seated = true;
  // At an end the given figures, not what they are after radians and back.
  joint.openDeg = place == Place::stop   ? seated->openToDeg
                  : place == Place::open ? std::max(0.0, piece.jointDeg - seated->angleDeg)
                                         : 0.0;
  joint.angleDeg = seated->angleDeg + joint.openDeg;
  restOn(place, joint.contact.value(), joint.contact, joint.stop);
  return joint;
}

/// The setting that stays while the hang settles: on a side-pair, the actuator's angle.
Setting heldSetting(const Hang& hang, const Assembly& closed) {
  Setting held = hang.set;
  if (const auto* pair = std::get_if<SidePair>(&hang.bar.picks); pair != nullptr && held.tiltDeg) {
    held.actuatorDeg = actuatorFor(*pair, closed, *held.tiltDeg, held.panDeg);
    held.tiltDeg.reset();
  }
  return held;
}

bool finite(const Settled& settled) {
  AllFinite all;
  all.see(settled.cg.x, settled.cg.y, settled.cg.z, settled.tiltDeg, settled.bottom);
  for (const PickLoad& pick : settled.pickLoads) {
    all.see(pick.load);
  }
  if (settled.chain) {
    all.see(settled.chain->straight, settled.chain->least);
  }
  for (const SettledJoint& joint : settled.joints) {
    all.see(joint.angleDeg, joint.aimDeg, joint.contact, joint.stop);
    for (const double force : joint.pinForces) {
      all.see(force);
    }
  }
  return all.yes();
}

} // namespace

Settled settle(const Hang& hang) {
  if (hang.pullBack) {
    throw Error(Trouble::badInput, "must be left out: the settled shape knows no pull-back", "pull_back");
  }
  check(hang.bar, hang.set);
  const Solver assembled(hang.bar, hang.stack, hang.chain);
  const Assembly& closed = assembled.assembly();
  const Setting held = heldSetting(hang, closed);
  balance(hang.bar, closed, held); // refuses what no shape can mend

  const Freedom freedom = freedomOf(hang.stack, closed);
  std::vector<double> closedDeg;
  for (const Piece& piece : closed.pieces) {
    closedDeg.push_back(piece.jointDeg);
  }
  ShapeEnergy energy(hang, held, closedDeg, freedom.joints);
  const double limit = hang.chain ? chainLength(*hang.chain) : std::numeric_limits<double>::infinity();
  const Rest rest = runDown(energy, freedom.start, freedom.low, freedom.high, limit);
  const std::vector<Place> places = placesOf(hang.stack, freedom, rest);

  const Balance& settledBalance = energy.balance();
  const Attitude& attitude = settledBalance.attitude;
  const Assembly& assembly = energy.assembly();
  Settled settled;
  settled.mass = settledBalance.mass;
  settled.cg = settledBalance.cg;
  settled.tiltDeg = settledBalance.tiltDeg;
  settled.side = settledBalance.side;
  settled.pickLoads = settledBalance.pickLoads;
  settled.pickCount = settledBalance.pickCount;
  settled.bottom = attitude.height(assembly.corners.front());
  for (const Vec2 corner : assembly.corners) {
    settled.bottom = std::min(settled.bottom, attitude.height(corner));
  }
  Vec2 pull;
  Vec2 pullAtMost;
  if (hang.chain) {
    settled.chain = chainAtRest(hang, energy, places, rest.pull);
    pull = settled.chain->least * assembly.line->towardsAnchor;
    pullAtMost = settled.chain->most * assembly.line->towardsAnchor;
  }
  for (std::size_t i = 0; i < hang.stack.size(); ++i) {
    const Piece& piece = assembly.pieces[i];
    const bool pulled = static_cast<int>(i) < heldBy(hang.chain);
    Load load;
    load.upInPlane = attitude.upInPlane();
    load.upLeft = attitude.left.z;
    load.pull = pulled ? pull : Vec2{};
    load.pullAt = pulled ? assembly.line->eye : piece.pin;
    load.helped = pulled && settled.chain->tension.has_value();
    SettledJoint joint = jointAtRest(hang.stack[i], piece, load, places[i]);
    joint.aimDeg = aimOf(piece, attitude);
    const double counted = pulled && (load.helped || joint.seated) ? settled.chain->least : 0.0;
    if (pulled && settled.chain->most > counted) {
      joint.end = endUnder(hang.stack[i].joint, piece, load, pullAtMost);
      if (joint.seated) {
        restOn(places[i], joint.end->contact.value(), joint.end->contact, joint.end->stop);
      }
    }
    settled.joints.push_back(joint);
  }
  if (!finite(settled)) {
    throw Error(Trouble::notPossible, "the figures of this hang run beyond what can be computed");
  }
  return settled;
}

bool standsAsAssembled(const std::vector<Element>& stack, const Statics& statics, int held) {
  const auto below = static_cast<std::size_t>(held);
  const bool pivotHeld = held > 0 && std::holds_alternative<Pivot>(stack[below - 1].joint);
  if (statics.chain && (pivotHeld ? !(statics.chain->tension > 0.0) : !isLength(statics.chain->slack))) {
    return false;
  }
  for (std::size_t i = 0; i < stack.size(); ++i) {
    const auto* seated = std::get_if<Seated>(&stack[i].joint);
    if (seated == nullptr) {
      continue;
    }
    const JointStatics& joint = statics.joints[i];
    // A pivot's chain pulls as it must; one with slack does not pull.
    const double shutting =
        pivotHeld && i < below ? joint.contact.value() * -seated->contact.x : -joint.gravityMoment;
    if (!turnsJoint(shutting)) {
      return false;
    }
  }
  return true;
}

Statics asStatics(const Settled& settled) {
  Statics statics;
  statics.mass = settled.mass;
  statics.cg = settled.cg;
  statics.tiltDeg = settled.tiltDeg;
  statics.side = settled.side;
  statics.bottom = settled.bottom;
  statics.pickLoads = settled.pickLoads;
  statics.pickCount = settled.pickCount;
  if (settled.chain) {
    const SettledChain& chain = *settled.chain;
    const double slack = chain.taut ? 0.0 : chain.length - chain.straight;
    statics.chain =
        ChainStatics{chain.length, chain.straight, slack, chain.least, !chain.tension, chain.most};
  }
  statics.joints.assign(settled.joints.begin(), settled.joints.end());
  return statics;
}

Statics standing(const Hang& hang) {
  try {
    Statics statics = solve(hang);
    if (standsAsAssembled(hang.stack, statics, heldBy(hang.chain))) {
      return statics;
    }
  } catch (const Error& error) {
    if (error.trouble() != Trouble::notPossible) {
      throw;
    }
    // A joint that weight and chain both open stands in some shape all the same.
  }
  return asStatics(settle(hang));
}

} // namespace hangbook::hang
