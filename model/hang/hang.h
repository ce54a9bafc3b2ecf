// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "hang/vec2.h"

/// One hang as it goes into the statics: plain structs, lengths in metres, masses in kg, angles in degrees.
/// Frames: see README.md of this folder.
namespace hangbook::hang {

/// From `low` to `high`, both included; degrees.
struct Range {
  double low{};
  double high{};

  constexpr bool holds(double value) const {
    return value >= low - angleSlackDeg && value <= high + angleSlackDeg;
  }
};

/// Two picks side by side on the head's y axis, `pickSpacing` apart; the whole swings about the line through
/// them. `headCg` and `tiltAxis` in head coordinates (origin midway between the picks).
struct SidePair {
  double pickSpacing{};
  double headMass{};
  Vec2 headCg;
  Vec2 tiltAxis;
  Range tiltTravelDeg; ///< of the actuator: frame against head
  Range panTravelDeg;
};

/// Two picks one behind the other, in frame coordinates; their two hoists set the tilt.
struct ForeAftPair {
  Vec2 frontPick;
  Vec2 rearPick;
};

/// One pick, in frame coordinates; the centre of gravity settles under it.
struct SinglePick {
  Vec2 pick;
};

struct Bar {
  std::variant<SidePair, ForeAftPair, SinglePick> picks;
  double frameMass{}; ///< with everything fixed to the frame (cable, hardware)
  Vec2 frameCg;
  Vec2 stackPin;
  std::optional<Vec2> chainAnchor; ///< frame coordinates; needed where there is a chain
};

/// Hinge at the front pin, push only at the rear `contact` (element coordinates, x below 0).
struct Seated {
  double angleDeg{};
  Vec2 contact;
  double openToDeg{}; ///< how far its rear can open, nose up; 0: not at all. Statics take it as shut.
};

/// Force and moment through two pins (element coordinates) on each of two sides.
struct Pinned {
  double angleDeg{};
  std::array<Vec2, 2> pins;
};

/// Hinge at the front pin; the chain sets the angle within the travel.
struct Pivot {
  Range travelDeg;
};

using Joint = std::variant<Seated, Pinned, Pivot>;

/// A cabinet, in its own coordinates: origin at its top front pin, x forward, z up.
struct Element {
  std::string name;
  double mass{};
  Vec2 cg;
  std::optional<Vec2> nextPin; ///< where the next one's pin sits; needed unless it is the lowest
  std::vector<Vec2> outline;   ///< closed polygon, corners in order
  std::optional<Vec2> chainEye;
  Joint joint; ///< to what is above it
};

/// Mark n: the clip bears in the far end of link n, link 1 being the one at the bar's end.
struct Chain {
  double pitch{}; ///< of one link
  double fixed{}; ///< all bearing-to-bearing lengths outside those links
  int mark{};
  int held{}; ///< the element it holds, counted from 1
};

/// The element that the chain holds, counted from 1; 0 without a chain.
constexpr int heldBy(const std::optional<Chain>& chain) {
  return chain ? chain->held : 0;
}

/// Side-pair: either a tilt or an actuator angle, and a pan. Fore-aft-pair: a tilt. Single: nothing.
struct Setting {
  std::optional<double> tiltDeg;
  std::optional<double> actuatorDeg;
  double panDeg{};
};

/// A line from a second hoist (or a strop to the structure) that holds the foot of a hang back or up. Its
/// direction in the world is given: upright and square to the pick line, from straight ahead (0°) over
/// straight up (90°) to straight back (180°).
struct PullBack {
  int element{}; ///< that it pulls at, counted from 1
  Vec2 at;       ///< element coordinates
  double lineDeg = 90.0;
  std::optional<double> force;   ///< N; either this, or
  std::optional<double> tiltDeg; ///< the elevation of the frame that it is to hold (not with a fore-aft pair)
};

struct Hang {
  Bar bar;
  std::vector<Element> stack; ///< from the bar downwards
  std::optional<Chain> chain;
  Setting set;
  std::optional<PullBack> pullBack; ///< statics only: the settled shape knows none
};

} // namespace hangbook::hang
