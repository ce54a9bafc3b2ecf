// SPDX-License-Identifier: GPL-3.0-or-later
#include "hang/joints.h"

#include <algorithm>
#include <cmath>
#include <string>

#include "hang/chain.h"
#include "quantity/error.h"
#include "quantity/quantity.h"

namespace hangbook::hang {
namespace {

Vec2 weightBelow(const Piece& piece, Vec2 upInPlane) {
  return -standardGravity * piece.massBelow * upInPlane;
}

/// A contact push N acts along the element's −z at (x, z) from the pin: its moment is −x·N.
double contactPush(const Seated& seated, double momentOfTheRest) {
  return momentOfTheRest / seated.contact.x;
}

/// Two sides share evenly.
double perSide(Vec2 force) {
  return 0.5 * length(force);
}

struct Carried {
  const Piece& piece;
  const Load& load;
  JointStatics& out;

  void operator()(const Seated& joint) const {
    const double push = contactPush(joint, loadMoment(piece, load, piece.pin));
    out.contact = push;
    onePin(weightBelow(piece, load.upInPlane) + load.back + load.pull - push * piece.turn({0.0, 1.0}));
  }

  void operator()(const Pivot&) const { onePin(weightBelow(piece, load.upInPlane) + load.back + load.pull); }

  void operator()(const Pinned& joint) const {
    const Vec2 first = piece.pin + piece.turn(joint.pins[0]);
    const Vec2 second = piece.pin + piece.turn(joint.pins[1]);
    const double apart = length(second - first);
    const Vec2 square = (1.0 / apart) * quarterTurn(second - first);
    const Vec2 middle = 0.5 * (first + second);
    Load counted = load;
    if (!load.helped) {
      counted.pull = {};
    }
    const Vec2 half = 0.5 * (weightBelow(piece, load.upInPlane) + load.back + counted.pull);
    // The load's own moment is a couple of the pins: +c on the second and −c on the first make c × apart.
    const double couple = loadMoment(piece, counted, middle) / apart;
    out.pinCount = 2;
    out.pinLoads = {half - couple * square, half + couple * square};
    out.pinForces = {perSide(out.pinLoads[0]), perSide(out.pinLoads[1])};
    across(middle);
  }

private:
  void onePin(Vec2 force) const {
    out.pinLoads[0] = force;
    out.pinForces[0] = perSide(force);
    across(piece.pin);
  }

  /// Weight and steady force across the hang's plane, at their arms.
  void across(Vec2 from) const {
    const double weight = -standardGravity * piece.massBelow * load.upLeft;
    const Vec2 centre = (1.0 / piece.massBelow) * piece.massMoment;
    out.sideways = weight + load.backLeft;
    out.sidewaysMoment = weight * (centre - from) + load.backLeft * (load.backAt - from);
  }
};

/// What of the chain and of a steady force acts on joint `index`.
Load loadAt(std::size_t index, const Piece& piece, const Attitude& attitude, const ChainLine* line,
            const Back* back) {
  Load load;
  load.upInPlane = attitude.upInPlane();
  load.upLeft = attitude.left.z;
  load.pullAt = line != nullptr ? line->eye : piece.pin;
  if (back != nullptr && index <= back->element) {
    load.back = {back->pull.x, back->pull.z};
    load.backLeft = back->pull.y;
    load.backAt = back->at;
  }
  return load;
}

double openingAt(std::size_t joint, const Piece& piece, Vec2 upInPlane, const Back* back) {
  return gravityMoment(piece, upInPlane) + (back != nullptr ? back->momentAt(joint, piece) : 0.0);
}

/// The upper end of what the chain may carry beside pinned joints: as if it alone carried one's moment.
double mostTension(const Assembly& assembly, const std::vector<Element>& stack, std::size_t held,
                   Vec2 upInPlane, const Back* back, double least) {
  double most = least;
  for (std::size_t i = 0; i < held; ++i) {
    if (std::holds_alternative<Pinned>(stack[i].joint)) {
      const Piece& piece = assembly.pieces[i];
      most = std::max(most,
                      aloneTension(openingAt(i, piece, upInPlane, back), closingArm(piece, *assembly.line)));
    }
  }
  return most;
}

} // namespace

double Back::momentAt(std::size_t joint, const Piece& piece) const {
  return joint <= element ? moment(at - piece.pin, {pull.x, pull.z}) : 0.0;
}

double gravityMoment(const Piece& piece, Vec2 upInPlane) {
  return -standardGravity * moment(piece.massMoment - piece.massBelow * piece.pin, upInPlane);
}

double loadMoment(const Piece& piece, const Load& load, Vec2 about) {
  const Vec2 centre = (1.0 / piece.massBelow) * piece.massMoment;
  return moment(centre - about, weightBelow(piece, load.upInPlane)) + moment(load.pullAt - about, load.pull) +
         moment(load.backAt - about, load.back);
}

JointStatics jointUnder(const Joint& joint, const Piece& piece, const Load& load) {
  JointStatics out;
  out.angleDeg = piece.jointDeg;
  out.gravityMoment = gravityMoment(piece, load.upInPlane);
  std::visit(Carried{piece, load, out}, joint);
  return out;
}

JointEnd endUnder(const Joint& joint, const Piece& piece, Load load, Vec2 pull) {
  load.pull = pull;
  load.helped = true;
  const JointStatics there = jointUnder(joint, piece, load);
  return {there.contact, std::nullopt, there.pinLoads, there.pinForces};
}

double aimOf(const Piece& piece, const Attitude& attitude) {
  const double rise = attitude.forward.z * piece.turn.cosine + attitude.up.z * piece.turn.sine;
  return toDegrees(arcsine(rise));
}

double pivotTension(const Piece& piece, const ChainLine& line, Vec2 upInPlane, double others) {
  const double arm = moment(line.eye - piece.pin, line.towardsAnchor);
  if (!isLength(std::abs(arm))) {
    throw Error(Trouble::notPossible, "the chain's line passes through the pivot: it cannot hold it");
  }
  return -(gravityMoment(piece, upInPlane) + others) / arm;
}

double closingArm(const Piece& piece, const ChainLine& line) {
  return -moment(line.eye - piece.pin, line.towardsAnchor);
}

double aloneTension(double opening, double closing) {
  return isLength(std::abs(closing)) ? std::max(0.0, opening / closing) : 0.0;
}

double leastTension(const Assembly& assembly, const std::vector<Element>& stack, int held, Vec2 upInPlane,
                    const Back* back) {
  double tension = 0.0;
  for (std::size_t i = static_cast<std::size_t>(held); i-- > 0;) {
    if (!std::holds_alternative<Seated>(stack[i].joint)) {
      continue;
    }
    const Piece& piece = assembly.pieces[i];
    const double opening = openingAt(i, piece, upInPlane, back);
    if (!turnsJoint(opening)) {
      continue;
    }
    const double closing = closingArm(piece, *assembly.line);
    if (!isLength(closing)) {
      throw Error(Trouble::notPossible, "gravity opens the seated joint of element " + std::to_string(i + 1) +
                                            ", and the chain does not close it");
    }
    tension = std::max(tension, opening / closing);
  }
  return tension;
}

void carry(const Assembly& assembly, const std::vector<Element>& stack, const std::optional<Chain>& chain,
           const Attitude& attitude, Statics& into, const Back* back) {
  const Vec2 up = attitude.upInPlane();
  const std::size_t held = static_cast<std::size_t>(heldBy(chain));
  const bool pivotHeld = held > 0 && std::holds_alternative<Pivot>(stack[held - 1].joint);
  const ChainLine* line = chain ? &*assembly.line : nullptr;
  Vec2 pull;
  Vec2 pullAtMost;
  double most{}; // both read with a chain alone
  double tension{};
  into.chain.reset();
  if (chain) {
    const double others =
        back != nullptr && pivotHeld ? back->momentAt(held - 1, assembly.pieces[held - 1]) : 0.0;
    tension = pivotHeld ? pivotTension(assembly.pieces[held - 1], *line, up, others)
                        : leastTension(assembly, stack, chain->held, up, back);
    most = pivotHeld ? tension : mostTension(assembly, stack, held, up, back, tension);
    pull = tension * line->towardsAnchor;
    pullAtMost = most * line->towardsAnchor;
    const double reach = chainLength(*chain);
    // The pivot has been set so that the chain is straight; what is left is rounding.
    const double slack = pivotHeld ? 0.0 : std::max(0.0, reach - line->straight);
    into.chain = ChainStatics{reach, pivotHeld ? reach : line->straight, slack, tension, !pivotHeld, most};
  }
  into.joints.resize(stack.size());
  for (std::size_t i = 0; i < stack.size(); ++i) {
    const Piece& piece = assembly.pieces[i];
    const bool pulled = i < held;
    Load load = loadAt(i, piece, attitude, pulled ? line : nullptr, back);
    load.pull = pulled ? pull : Vec2{};
    load.helped = pulled && pivotHeld;
    into.joints[i] = jointUnder(stack[i].joint, piece, load);
    into.joints[i].aimDeg = aimOf(piece, attitude);
    const bool pinned = std::holds_alternative<Pinned>(stack[i].joint);
    if (pulled && !pivotHeld && most > (pinned ? 0.0 : tension)) {
      into.joints[i].end = endUnder(stack[i].joint, piece, load, pullAtMost);
    }
  }
}

} // namespace hangbook::hang
