// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <random>

#include "hang/chain.h"
#include "hang/hang.h"
#include "hang/solve.h"
#include "quantity/error.h"

namespace hangbook::testing {

enum class Held { nothing, seated, pivot };

/// Hangs as crews build them, of every kind of joint and pick, from a seed: the same seed gives the same
/// hangs. Some of them are not possible (a tilt out of reach, a chain that opens a joint): the caller says
/// what that means to it.
class RandomHangs {
public:
  explicit RandomHangs(std::uint64_t seed) : engine_(seed) {}

  double between(double low, double high) {
    return low + (high - low) * (static_cast<double>(engine_() >> 11) * 0x1.0p-53);
  }
  int oneOf(int count) { return static_cast<int>(engine_() % static_cast<std::uint64_t>(count)); }

  hang::Hang next() {
    const int picks = oneOf(3);
    return next(picks, static_cast<Held>(oneOf(3)));
  }

  /// `picks`: 0 side-pair, 1 fore-aft-pair, 2 single.
  hang::Hang next(int picks, Held held) {
    hang::Hang made;
    fillBar(made, picks);
    const int count = 1 + oneOf(8);
    const int heldAt = held == Held::nothing ? 0 : 1 + oneOf(count);
    for (int i = 1; i <= count; ++i) {
      made.stack.push_back(element(held == Held::pivot && i == heldAt));
    }
    if (heldAt > 0) {
      fillChain(made, heldAt);
    }
    return made;
  }

private:
  hang::Vec2 point(double x0, double x1, double z0, double z1) {
    const double x = between(x0, x1);
    return {x, between(z0, z1)};
  }

  void fillBar(hang::Hang& made, int picks) {
    hang::Bar& bar = made.bar;
    bar.frameMass = between(30.0, 90.0);
    bar.frameCg = point(-0.2, 0.1, -0.2, 0.0);
    bar.stackPin = point(0.2, 0.5, -0.3, -0.1);
    bar.chainAnchor = point(-0.8, -0.4, -0.2, 0.0);
    if (picks == 0) {
      bar.picks = hang::SidePair{between(0.5, 1.5),
                                 between(20.0, 60.0),
                                 point(-0.05, 0.05, -0.2, 0.0),
                                 point(-0.05, 0.05, -0.5, -0.2),
                                 {-25.0, 25.0},
                                 {-30.0, 30.0}};
      made.set.panDeg = between(-30.0, 30.0);
      (oneOf(2) == 0 ? made.set.tiltDeg : made.set.actuatorDeg) = between(-9.0, 5.0);
    } else if (picks == 1) {
      bar.picks = hang::ForeAftPair{point(0.2, 0.6, -0.1, 0.1), point(-0.8, -0.3, -0.1, 0.1)};
      made.set.tiltDeg = between(-15.0, 10.0);
    } else {
      bar.picks = hang::SinglePick{point(-0.3, 0.2, 0.0, 0.2)};
    }
  }

  hang::Element element(bool pivot) {
    const double height = between(0.25, 0.65);
    const double depth = between(0.6, 0.9);
    hang::Element made;
    made.name = "cabinet";
    made.mass = between(20.0, 120.0);
    made.cg = {-depth * between(0.3, 0.6), -height * between(0.4, 0.6)};
    made.nextPin = point(-0.02, 0.02, -height - 0.01, -height);
    made.outline = {{0.03, 0.01}, {0.03, -height}, {-depth, -height * between(0.8, 1.0)}, {-depth, 0.0}};
    made.chainEye = hang::Vec2{-depth + 0.05, -height * between(0.4, 0.9)};
    if (pivot) {
      made.joint = hang::Pivot{{-30.0, 0.0}};
    } else if (oneOf(3) == 0) {
      made.joint =
          hang::Pinned{between(-8.0, 1.0), {point(-0.02, 0.02, -0.05, 0.0), point(-0.12, -0.05, -0.05, 0.0)}};
    } else {
      made.joint = hang::Seated{between(-8.0, 1.0), point(-depth + 0.02, -depth + 0.2, -0.03, 0.0)};
    }
    return made;
  }

  void fillChain(hang::Hang& made, int heldAt) {
    hang::Chain chain{0.0225, 0.08, 1, heldAt};
    const hang::PivotTriangle triangle = hang::pivotTriangle(made.bar, made.stack, heldAt);
    const auto index = static_cast<std::size_t>(heldAt) - 1;
    if (std::holds_alternative<hang::Pivot>(made.stack[index].joint)) {
      const auto usable = hang::usableMarks(triangle, chain.pitch, chain.fixed);
      if (!usable.empty()) {
        chain.mark = usable[static_cast<std::size_t>(oneOf(static_cast<int>(usable.size())))].mark;
      }
    } else {
      const double straight = hang::lengthAt(triangle, std::visit(
                                                           [](const auto& joint) {
                                                             if constexpr (requires { joint.angleDeg; }) {
                                                               return joint.angleDeg;
                                                             } else {
                                                               return 0.0;
                                                             }
                                                           },
                                                           made.stack[index].joint));
      chain.mark = hang::firstMarkThatReaches(straight, chain.pitch, chain.fixed).value_or(1);
    }
    made.chain = chain;
  }

  std::mt19937_64 engine_;
};

/// Of `count` hangs from this seed those that have statics: `look(number, hang, statics)` at each. Those that
/// are not possible are passed over; any other error goes on to the caller. How many were looked at.
template <class Look>
int overSolvedHangs(std::uint64_t seed, int count, Look look) {
  RandomHangs hangs(seed);
  int solved = 0;
  for (int i = 0; i < count; ++i) {
    const hang::Hang hang = hangs.next();
    hang::Statics statics;
    try {
      statics = hang::solve(hang);
    } catch (const Error& error) {
      if (error.trouble() != Trouble::notPossible) {
        throw;
      }
      continue;
    }
    ++solved;
    look(i, hang, statics);
  }
  return solved;
}

} // namespace hangbook::testing
