// SPDX-License-Identifier: GPL-3.0-or-later
#include "hang/layout.h"

#include <algorithm>
#include <cmath>

#include "hang/assembly.h"
#include "hang/balance.h"

namespace hangbook::hang {
namespace {

/// The settled position once more, from the angles that the statics give.
Balance settledAgain(const Hang& hang, const Assembly& assembly, const Statics& statics) {
  if (const auto* pair = std::get_if<SidePair>(&hang.bar.picks)) {
    return swingOut(*pair, assembly, statics.side.value().actuatorDeg, hang.set.panDeg);
  }
  if (const auto* pair = std::get_if<ForeAftPair>(&hang.bar.picks)) {
    return holdAt(*pair, assembly, statics.tiltDeg);
  }
  return hangFrom(std::get<SinglePick>(hang.bar.picks), assembly);
}

std::vector<Vec3> pickPlaces(const Bar& bar, const Attitude& attitude) {
  if (const auto* pair = std::get_if<SidePair>(&bar.picks)) {
    return {{0.0, 0.5 * pair->pickSpacing, 0.0}, {0.0, -0.5 * pair->pickSpacing, 0.0}};
  }
  if (const auto* pair = std::get_if<ForeAftPair>(&bar.picks)) {
    return {attitude.place(pair->frontPick), attitude.place(pair->rearPick)};
  }
  return {{0.0, 0.0, 0.0}};
}

} // namespace

Layout layOut(const Hang& hang, const Statics& statics) {
  std::vector<double> jointDeg(hang.stack.size());
  std::transform(statics.joints.begin(), statics.joints.end(), jointDeg.begin(),
                 [](const JointStatics& joint) { return joint.angleDeg; });
  Assembly assembly;
  assemble(hang.bar, hang.stack, jointDeg, heldBy(hang.chain), assembly);
  const Balance settled = settledAgain(hang, assembly, statics);
  const Attitude& attitude = settled.attitude;

  Layout layout;
  layout.picks = pickPlaces(hang.bar, attitude);
  layout.frameOrigin = attitude.origin;
  layout.forward = attitude.forward;
  layout.left = attitude.left;
  layout.up = attitude.up;
  layout.frameCg = attitude.place(hang.bar.frameCg);
  layout.stackPin = attitude.place(hang.bar.stackPin);
  if (hang.bar.chainAnchor) {
    layout.chainAnchor = attitude.place(*hang.bar.chainAnchor);
  }
  if (const auto* pair = std::get_if<SidePair>(&hang.bar.picks)) {
    const Turn swing = turnBy(toRadians(settled.side.value().headSwingDeg));
    const Vec2 headCg = swing(pair->headCg);
    layout.headCg = Vec3{headCg.x, 0.0, headCg.z};
  }
  for (std::size_t i = 0; i < hang.stack.size(); ++i) {
    const Element& element = hang.stack[i];
    const Piece& piece = assembly.pieces[i];
    const auto place = [&](Vec2 point) { return attitude.place(piece.pin + piece.turn(point)); };
    PlacedElement placed;
    placed.mass = element.mass;
    placed.pin = place({});
    placed.cg = place(element.cg);
    if (element.nextPin) {
      placed.nextPin = place(*element.nextPin);
    }
    if (element.chainEye) {
      placed.chainEye = place(*element.chainEye);
    }
    std::transform(element.outline.begin(), element.outline.end(), std::back_inserter(placed.outline), place);
    placed.forward = piece.turn.cosine * attitude.forward + piece.turn.sine * attitude.up;
    placed.aimDeg = statics.joints[i].aimDeg;
    layout.elements.push_back(std::move(placed));
  }
  return layout;
}

} // namespace hangbook::hang
