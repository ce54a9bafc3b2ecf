// SPDX-License-Identifier: GPL-3.0-or-later
#include "hang/solve.h"

#include <algorithm>
#include <cmath>
#include <string>

#include "hang/chain.h"
#include "hang/check.h"
#include "hang/finite.h"
#include "hang/joints.h"
#include "hang/pull_back.h"
#include "quantity/error.h"

namespace hangbook::hang {
namespace {

[[noreturn]] void refuse(const std::string& text) {
  throw Error(Trouble::notPossible, text);
}

double pivotAngle(const Bar& bar, const std::vector<Element>& stack, const Chain& chain) {
  const PivotAngles angles = anglesAt(pivotTriangle(bar, stack, chain.held), chainLength(chain));
  const std::string mark = "at mark " + std::to_string(chain.mark);
  if (angles.count == 0) {
    refuse(mark + " the chain brings the pivot to no angle within its travel");
  }
  if (angles.count == 2) {
    refuse(mark + " the chain brings the pivot to either of two angles within its travel");
  }
  return angles.deg[0];
}

bool finite(const Statics& statics) {
  AllFinite all;
  all.see(statics.mass, statics.cg.x, statics.cg.y, statics.cg.z, statics.tiltDeg, statics.bottom);
  if (const auto& side = statics.side) {
    all.see(side->actuatorDeg, side->headSwingDeg, side->azimuthDeg, side->rollDeg);
  }
  if (statics.pullBack) {
    all.see(statics.pullBack->force, statics.pullBack->hoistLeanDeg);
  }
  for (const PickLoad& pick : statics.pickLoads) {
    all.see(pick.load);
  }
  if (const auto& chain = statics.chain) {
    all.see(chain->length, chain->straight, chain->slack, chain->tension);
  }
  for (const JointStatics& joint : statics.joints) {
    all.see(joint.angleDeg, joint.aimDeg, joint.gravityMoment, joint.contact.value_or(0.0));
    for (const double force : joint.pinForces) {
      all.see(force);
    }
  }
  return all.yes();
}

} // namespace

Solver::Solver(const Bar& bar, const std::vector<Element>& stack, const std::optional<Chain>& chain)
    : bar_(&bar), stack_(&stack), chain_(chain) {
  check(bar, stack, chain);
  putTogether();
}

void Solver::useMark(int mark) {
  chain_.value().mark = mark;
  if (mark < 1 || mark > mostMark) {
    throw Error(Trouble::badInput, "must be a whole number from 1 to " + std::to_string(mostMark),
                "chain.mark");
  }
  putTogether();
}

void Solver::putTogether() {
  const std::vector<Element>& stack = *stack_;
  jointDeg_.resize(stack.size());
  std::transform(stack.begin(), stack.end(), jointDeg_.begin(),
                 [](const Element& element) { return fixedAngleDeg(element.joint); });
  const int held = chain_ ? chain_->held : 0;
  const auto index = static_cast<std::size_t>(held) - 1;
  const bool pivotHeld = chain_ && std::holds_alternative<Pivot>(stack[index].joint);
  if (pivotHeld) {
    jointDeg_[index] = pivotAngle(*bar_, stack, *chain_);
  }
  assemble(*bar_, stack, jointDeg_, held, assembly_);
  if (chain_ && !pivotHeld && isLength(assembly_.line->straight - chainLength(*chain_))) {
    refuse("the chain at mark " + std::to_string(chain_->mark) + " is shorter than the straight line from " +
           "its anchor to its eye: " + std::to_string(chainLength(*chain_)) + " m against " +
           std::to_string(assembly_.line->straight) + " m");
  }
}

Statics Solver::at(const Setting& set) const {
  Statics statics;
  at(set, statics);
  return statics;
}

void Solver::at(const Setting& set, Statics& into) const {
  check(*bar_, set);
  into.pullBack.reset();
  fill(balance(*bar_, assembly_, set), nullptr, into);
}

Statics Solver::at(const Setting& set, const PullBack& pull) const {
  check(*bar_, set);
  check(*bar_, *stack_, pull);
  const Pulled pulled = hang::pullBack(*bar_, assembly_, set, pull);
  Statics statics;
  statics.pullBack = pulled.line;
  fill(pulled.balance, &pulled.back, statics);
  return statics;
}

void Solver::fill(const Balance& settled, const Back* back, Statics& into) const {
  into.mass = settled.mass;
  into.cg = settled.cg;
  into.tiltDeg = settled.tiltDeg;
  into.side = settled.side;
  into.pickLoads = settled.pickLoads;
  into.pickCount = settled.pickCount;
  into.bottom = settled.attitude.height(assembly_.corners.front());
  for (const Vec2 corner : assembly_.corners) {
    into.bottom = std::min(into.bottom, settled.attitude.height(corner));
  }
  carry(assembly_, *stack_, chain_, settled.attitude, into, back);
  if (!finite(into)) {
    refuse("the figures of this hang run beyond what can be computed");
  }
}

Statics solve(const Hang& hang) {
  check(hang.bar, hang.set);
  const Solver solver(hang.bar, hang.stack, hang.chain);
  return hang.pullBack ? solver.at(hang.set, *hang.pullBack) : solver.at(hang.set);
}

} // namespace hangbook::hang
