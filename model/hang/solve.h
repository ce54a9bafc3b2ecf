// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "hang/assembly.h"
#include "hang/balance.h"
#include "hang/hang.h"
#include "hang/statics.h"

namespace hangbook::hang {
struct Back;
}

namespace hangbook::hang {

/// The statics of one hang as assembled (seated joints count as shut even where the chain has slack).
/// Pure: same in, same out, on any thread. Throws Error(badInput) for what is no hang (place: the key), and
/// Error(notPossible) for a hang that cannot be: a tilt out of the actuator's reach, an actuator or pan
/// beyond its travel, a mark at which the pivot has no single angle, a chain too short, a seated joint that
/// gravity and chain both open. Never answers with a figure that is not finite.
Statics solve(const Hang& hang);

/// The same in steps, for many settings of one stack: what does not depend on the aim is put together once.
/// A Solver belongs to one thread at a time; copies are independent.
class Solver {
public:
  /// Checks and assembles. Bar and stack are referred to and must outlive the solver.
  Solver(const Bar& bar, const std::vector<Element>& stack, const std::optional<Chain>& chain);
  Solver(Bar&&, const std::vector<Element>&, const std::optional<Chain>&) = delete;
  Solver(const Bar&, std::vector<Element>&&, const std::optional<Chain>&) = delete;

  /// Puts the stack together at another mark of the same chain. After an Error(notPossible) the solver is
  /// good for nothing but another call of this.
  void useMark(int mark);

  Statics at(const Setting& set) const;
  /// The same, into a result whose storage is reused.
  void at(const Setting& set, Statics& into) const;
  /// With a line that pulls at an element.
  Statics at(const Setting& set, const PullBack& pull) const;

  /// The stack as assembled at the mark, in frame coordinates.
  const Assembly& assembly() const { return assembly_; }

private:
  void putTogether();
  void fill(const Balance& settled, const Back* back, Statics& into) const;

  const Bar* bar_;
  const std::vector<Element>* stack_;
  std::optional<Chain> chain_;
  std::vector<double> jointDeg_;
  Assembly assembly_;
};

} // namespace hangbook::hang
