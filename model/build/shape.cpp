// SPDX-License-Identifier: GPL-3.0-or-later
#include "build/shape.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace hangbook::build {
namespace {

using hang::Vec2;

/// The value of a travel nearest to none at all.
double nearestToLevel(hang::Range travel) {
  return std::clamp(0.0, travel.low, travel.high);
}

double jointDeg(const hang::Joint& joint, double pivotDeg) {
  if (const auto* seated = std::get_if<hang::Seated>(&joint)) {
    return seated->angleDeg;
  }
  if (const auto* pinned = std::get_if<hang::Pinned>(&joint)) {
    return pinned->angleDeg;
  }
  return pivotDeg;
}

const hang::Pivot* pivotAmong(const Hanging& hanging, int cabinets) {
  for (int i = 0; i < cabinets; ++i) {
    if (const auto* pivot = std::get_if<hang::Pivot>(&hanging.rig.stack[static_cast<std::size_t>(i)].joint)) {
      return pivot;
    }
  }
  return nullptr;
}

/// Where the frame stands at a tilt, and what of the bar does not turn with it.
struct Frame {
  Vec2 origin;
  Vec2 headCg; ///< side pair
  double headMass = 0.0;
  Vec2 otherPick; ///< fore-aft pair
};

Frame frameAt(const hang::Bar& bar, double tiltDeg) {
  const hang::Turn turn = hang::turnBy(hang::toRadians(tiltDeg));
  Frame made;
  if (const auto* side = std::get_if<hang::SidePair>(&bar.picks)) {
    const double actuator = nearestToLevel(side->tiltTravelDeg);
    const hang::Turn head = hang::turnBy(hang::toRadians(tiltDeg - actuator));
    made.origin = head(side->tiltAxis);
    made.headCg = head(side->headCg);
    made.headMass = side->headMass;
  } else if (const auto* pair = std::get_if<hang::ForeAftPair>(&bar.picks)) {
    made.origin = -1.0 * turn(pair->frontPick);
    made.otherPick = made.origin + turn(pair->rearPick);
  } else {
    made.origin = -1.0 * turn(std::get<hang::SinglePick>(bar.picks).pick);
  }
  return made;
}

/// Centre of gravity of what hangs.
Vec2 centreOf(const Hanging& hanging, int cabinets, Pose pose) {
  const Frame frame = frameAt(hanging.rig.bar, pose.tiltDeg);
  double angle = pose.tiltDeg;
  hang::Turn turn = hang::turnBy(hang::toRadians(angle));
  double mass = frame.headMass + hanging.rig.bar.frameMass;
  Vec2 sum = frame.headMass * frame.headCg +
             hanging.rig.bar.frameMass * (frame.origin + turn(hanging.rig.bar.frameCg));
  Vec2 pin = frame.origin + turn(hanging.rig.bar.stackPin);
  for (int i = 0; i < cabinets; ++i) {
    const hang::Element& element = hanging.rig.stack[static_cast<std::size_t>(i)];
    angle += jointDeg(element.joint, pose.pivotDeg);
    turn = hang::turnBy(hang::toRadians(angle));
    mass += element.mass;
    sum = sum + element.mass * (pin + turn(element.cg));
    if (element.nextPin) {
      pin = pin + turn(*element.nextPin);
    }
  }
  return (1.0 / mass) * sum;
}

} // namespace

Extent extentOf(const Hanging& hanging, int cabinets, Pose pose) {
  const Frame frame = frameAt(hanging.rig.bar, pose.tiltDeg);
  double angle = pose.tiltDeg;
  hang::Turn turn = hang::turnBy(hang::toRadians(angle));
  Extent made;
  made.lowest = std::numeric_limits<double>::infinity();
  made.highestHook = std::max(0.0, frame.otherPick.z);
  made.hooksApart = std::abs(frame.otherPick.z);
  made.highest = made.highestHook;
  bool known = true;
  const auto take = [&](const std::vector<Vec2>& outline, Vec2 at, hang::Turn turned) {
    known = known && !outline.empty();
    for (const Vec2& corner : outline) {
      const double z = (at + turned(corner)).z;
      made.lowest = std::min(made.lowest, z);
      made.highest = std::max(made.highest, z);
    }
  };
  take(hanging.barOutline, frame.origin, turn);
  made.nextPin = frame.origin + turn(hanging.rig.bar.stackPin);
  for (int i = 0; i < cabinets; ++i) {
    const hang::Element& element = hanging.rig.stack[static_cast<std::size_t>(i)];
    angle += jointDeg(element.joint, pose.pivotDeg);
    turn = hang::turnBy(hang::toRadians(angle));
    take(element.outline, made.nextPin, turn);
    if (element.nextPin) {
      made.nextPin = made.nextPin + turn(*element.nextPin);
    }
  }
  if (!known) {
    made.lowest = notStated;
    made.highest = notStated;
  }
  return made;
}

double restingTilt(const Hanging& hanging, int cabinets, double pivotDeg) {
  if (std::holds_alternative<hang::ForeAftPair>(hanging.rig.bar.picks)) {
    return 0.0;
  }
  // All of it turns about the picks as one body: at rest its centre is straight below them.
  const Vec2 centre = centreOf(hanging, cabinets, {0.0, pivotDeg});
  const double turn = -std::numbers::pi / 2 - std::atan2(centre.z, centre.x);
  return hang::toDegrees(std::remainder(turn, 2 * std::numbers::pi));
}

double joiningTilt(const Hanging& hanging, int next) {
  double sum = 0.0;
  for (int i = 0; i <= next; ++i) {
    const hang::Joint& joint = hanging.rig.stack[static_cast<std::size_t>(i)].joint;
    const auto* pivot = std::get_if<hang::Pivot>(&joint);
    sum += jointDeg(joint, pivot != nullptr ? nearestToLevel(pivot->travelDeg) : 0.0);
  }
  return -sum;
}

std::vector<Pose> posesOf(const Hanging& hanging, int cabinets) {
  std::vector<double> pivots{0.0};
  if (const hang::Pivot* pivot = pivotAmong(hanging, cabinets)) {
    pivots = {nearestToLevel(pivot->travelDeg), pivot->travelDeg.low, pivot->travelDeg.high};
  }
  std::vector<Pose> poses;
  for (const double pivot : pivots) {
    poses.push_back({restingTilt(hanging, cabinets, pivot), pivot});
    if (cabinets > 0) {
      poses.push_back({joiningTilt(hanging, cabinets - 1), pivot});
    }
    if (cabinets < static_cast<int>(hanging.rig.stack.size())) {
      poses.push_back({joiningTilt(hanging, cabinets), pivot});
    }
  }
  return poses;
}

Extent worstOf(const Hanging& hanging, int cabinets) {
  const std::vector<Pose> poses = posesOf(hanging, cabinets);
  Extent worst = extentOf(hanging, cabinets, poses.front());
  for (const Pose& pose : poses) {
    const Extent each = extentOf(hanging, cabinets, pose);
    worst.lowest = std::isnan(each.lowest) ? notStated : std::min(worst.lowest, each.lowest);
    worst.highest = std::isnan(each.highest) ? notStated : std::max(worst.highest, each.highest);
    worst.highestHook = std::max(worst.highestHook, each.highestHook);
    worst.hooksApart = std::max(worst.hooksApart, each.hooksApart);
  }
  return worst;
}

LevelCabinet standingOf(const hang::Element& element) {
  if (element.outline.empty()) {
    return {notStated, notStated};
  }
  const auto [low, high] = std::ranges::minmax(element.outline, {}, &Vec2::z);
  return {high.z - low.z, low.z};
}

} // namespace hangbook::build
