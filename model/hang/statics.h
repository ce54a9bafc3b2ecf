// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string_view>
#include <vector>

#include "hang/vec2.h"

/// What comes out of the statics of one hang: metres, kg, N, N·m; angles in degrees. Every figure is finite.
namespace hangbook::hang {

enum class PickName { left, right, front, rear, single };

/// As the contract writes it.
std::string_view nameOf(PickName name);

struct PickLoad {
  PickName name = PickName::single;
  double load{}; ///< N; below 0 where that hoist would have to push
};

/// How a side-pair has turned.
struct SideAttitude {
  double actuatorDeg{};  ///< frame against head, nose up positive
  double headSwingDeg{}; ///< head about the pick line, nose up positive
  double azimuthDeg{};   ///< bearing of the frame's forward direction, to the left positive
  double rollDeg{};      ///< rise of the frame's left side
};

struct ChainStatics {
  double length{};   ///< fixed + mark × pitch
  double straight{}; ///< anchor to eye
  double slack{};
  double tension{};      ///< N
  bool tensionIsLeast{}; ///< a lower bound only: joints share the load in a way not known
  double most{};         ///< N, the upper end of that (see `JointEnd`); `tension` where it is known
};

/// A joint beside the chain, at the upper end of what balance lets the chain carry: where more than one path
/// carries a moment, the truth lies between `JointStatics` and this. Forces are convex in the tension, so
/// the worst of the two ends is the worst of all between.
struct JointEnd {
  std::optional<double> contact;
  std::optional<double> stop;
  std::array<Vec2, 2> pinLoads{};
  std::array<double, 2> pinForces{};
};

struct JointStatics {
  double angleDeg{};             ///< the opening included
  double openDeg{};              ///< of a seated joint in the real shape; 0 as assembled
  double aimDeg{};               ///< elevation of the element's forward direction in the world
  double gravityMoment{};        ///< N·m of all below about the pin's axis, nose up positive, chain left out
  std::optional<double> contact; ///< N, push positive; seated joints only; empty where it rests on its stop
  std::optional<double> stop;    ///< N, what the stop carries at the contact's place; real shapes only
  std::array<double, 2> pinForces{}; ///< N, each pin of one side; the second only where `pinCount` is 2
  int pinCount = 1;
  std::array<Vec2, 2> pinLoads{}; ///< N on each pin, both sides together, in the frame's x and z
  double sideways{};   ///< N, weight below across the hang's plane, to its left positive: a roll makes it
  Vec2 sidewaysMoment; ///< N·m: that force × its arm from the pin (two: midway between them), frame x and z
  std::optional<JointEnd> end; ///< only where balance leaves the chain's share open
};

/// A line that pulls at an element from a hoist of its own.
struct PullBackStatics {
  double force{};        ///< N; below 0: it would have to push
  double hoistLeanDeg{}; ///< of the picks' chains from the vertical, towards the front positive
};

struct Statics {
  double mass{}; ///< all of it, head included
  /// In the world, measured from midway between the picks (side-pair), the front pick, or the pick.
  Vec3 cg;
  double tiltDeg{}; ///< elevation of the frame's forward direction
  std::optional<SideAttitude> side;
  double bottom{}; ///< z of the lowest outline corner, same origin
  std::array<PickLoad, 2> pickLoads{};
  std::size_t pickCount{};
  std::optional<ChainStatics> chain;
  std::vector<JointStatics> joints; ///< in stack order
  std::optional<PullBackStatics> pullBack;
};

} // namespace hangbook::hang
