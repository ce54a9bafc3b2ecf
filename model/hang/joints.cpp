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

/// N·m: what rounding alone leaves of a balanced joint. Below it gravity opens nothing.
constexpr double restingMoment = 1e-9;

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
    out.pinForces[0] =
        perSide(weightBelow(piece, load.upInPlane) + load.pull - push * piece.turn({0.0, 1.0}));
  }

  void operator()(const Pivot&) const {
    out.pinForces[0] = perSide(weightBelow(piece, load.upInPlane) + load.pull);
  }

  void operator()(const Pinned& joint) const {
    const Vec2 first = piece.pin + piece.turn(joint.pins[0]);
    const Vec2 second = piece.pin + piece.turn(joint.pins[1]);
    const double apart = length(second - first);
    const Vec2 square = (1.0 / apart) * quarterTurn(second - first);
    Load counted = load;
    if (!load.helped) {
      counted.pull = {};
    }
    const Vec2 half = -0.5 * (weightBelow(piece, load.upInPlane) + counted.pull);
    // The pins' couple undoes the moment: +c on the second and −c on the first make a moment of c × apart.
    const double couple = -loadMoment(piece, counted, 0.5 * (first + second)) / apart;
    out.pinCount = 2;
    out.pinForces = {perSide(half - couple * square), perSide(half + couple * square)};
  }
};

} // namespace

double gravityMoment(const Piece& piece, Vec2 upInPlane) {
  return -standardGravity * moment(piece.massMoment - piece.massBelow * piece.pin, upInPlane);
}

double loadMoment(const Piece& piece, const Load& load, Vec2 about) {
  const Vec2 centre = (1.0 / piece.massBelow) * piece.massMoment;
  return moment(centre - about, weightBelow(piece, load.upInPlane)) + moment(load.pullAt - about, load.pull);
}

JointStatics jointUnder(const Joint& joint, const Piece& piece, const Load& load) {
  JointStatics out;
  out.angleDeg = piece.jointDeg;
  out.gravityMoment = gravityMoment(piece, load.upInPlane);
  std::visit(Carried{piece, load, out}, joint);
  return out;
}

double aimOf(const Piece& piece, const Attitude& attitude) {
  const double rise = attitude.forward.z * piece.turn.cosine + attitude.up.z * piece.turn.sine;
  return toDegrees(std::asin(std::clamp(rise, -1.0, 1.0)));
}

double pivotTension(const Piece& piece, const ChainLine& line, Vec2 upInPlane) {
  const double arm = moment(line.eye - piece.pin, line.towardsAnchor);
  if (!(std::abs(arm) > lengthSlack)) {
    throw Error(Trouble::notPossible, "the chain's line passes through the pivot: it cannot hold it");
  }
  return -gravityMoment(piece, upInPlane) / arm;
}

double leastTension(const Assembly& assembly, const std::vector<Element>& stack, int held, Vec2 upInPlane) {
  double tension = 0.0;
  for (std::size_t i = static_cast<std::size_t>(held); i-- > 0;) {
    if (!std::holds_alternative<Seated>(stack[i].joint)) {
      continue;
    }
    const Piece& piece = assembly.pieces[i];
    const double opening = gravityMoment(piece, upInPlane);
    if (opening <= restingMoment) {
      continue;
    }
    const double closing = -moment(assembly.line->eye - piece.pin, assembly.line->towardsAnchor);
    if (!(closing > lengthSlack)) {
      throw Error(Trouble::notPossible, "gravity opens the seated joint of element " + std::to_string(i + 1) +
                                            ", and the chain does not close it");
    }
    tension = std::max(tension, opening / closing);
  }
  return tension;
}

void carry(const Assembly& assembly, const std::vector<Element>& stack, const std::optional<Chain>& chain,
           const Attitude& attitude, Statics& into) {
  const Vec2 up = attitude.upInPlane();
  const std::size_t held = chain ? static_cast<std::size_t>(chain->held) : 0;
  const bool pivotHeld = held > 0 && std::holds_alternative<Pivot>(stack[held - 1].joint);
  Vec2 pull;
  into.chain.reset();
  if (chain) {
    const ChainLine& line = *assembly.line;
    const double tension = pivotHeld ? pivotTension(assembly.pieces[held - 1], line, up)
                                     : leastTension(assembly, stack, chain->held, up);
    pull = tension * line.towardsAnchor;
    const double reach = chainLength(*chain);
    // The pivot has been set so that the chain is straight; what is left is rounding.
    const double slack = pivotHeld ? 0.0 : std::max(0.0, reach - line.straight);
    into.chain = ChainStatics{reach, pivotHeld ? reach : line.straight, slack, tension, !pivotHeld};
  }
  into.joints.resize(stack.size());
  for (std::size_t i = 0; i < stack.size(); ++i) {
    const Piece& piece = assembly.pieces[i];
    const bool pulled = i < held;
    const Load load{up, pulled ? pull : Vec2{}, pulled ? assembly.line->eye : piece.pin, pulled && pivotHeld};
    into.joints[i] = jointUnder(stack[i].joint, piece, load);
    into.joints[i].aimDeg = aimOf(piece, attitude);
  }
}

} // namespace hangbook::hang
