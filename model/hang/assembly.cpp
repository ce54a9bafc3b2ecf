// SPDX-License-Identifier: GPL-3.0-or-later
#include "hang/assembly.h"

namespace hangbook::hang {

Joint heldAt(double deg) {
  return Pinned{deg, {Vec2{0.1, 0.0}, Vec2{-0.1, 0.0}}};
}

double fixedAngleDeg(const Joint& joint) {
  if (const auto* seated = std::get_if<Seated>(&joint)) {
    return seated->angleDeg;
  }
  if (const auto* pinned = std::get_if<Pinned>(&joint)) {
    return pinned->angleDeg;
  }
  return 0.0;
}

void assemble(const Bar& bar, const std::vector<Element>& stack, std::span<const double> jointDeg, int held,
              Assembly& into) {
  into.pieces.resize(stack.size());
  into.corners.clear();
  into.line.reset();
  double angleDeg = 0.0;
  Vec2 pin = bar.stackPin;
  for (std::size_t i = 0; i < stack.size(); ++i) {
    const Element& element = stack[i];
    angleDeg += jointDeg[i];
    Piece& piece = into.pieces[i];
    piece.jointDeg = jointDeg[i];
    piece.angleDeg = angleDeg;
    piece.turn = turnBy(toRadians(angleDeg));
    piece.pin = pin;
    piece.massBelow = element.mass;
    piece.massMoment = element.mass * (pin + piece.turn(element.cg));
    for (const Vec2 corner : element.outline) {
      into.corners.push_back(pin + piece.turn(corner));
    }
    if (held == static_cast<int>(i) + 1) {
      const Vec2 eye = pin + piece.turn(element.chainEye.value());
      const Vec2 way = bar.chainAnchor.value() - eye;
      const double straight = length(way);
      into.line = ChainLine{eye, straight != 0.0 ? (1.0 / straight) * way : Vec2{}, straight};
    }
    if (element.nextPin) {
      pin = pin + piece.turn(*element.nextPin);
    }
  }
  for (std::size_t i = stack.size() - 1; i > 0; --i) {
    into.pieces[i - 1].massBelow += into.pieces[i].massBelow;
    into.pieces[i - 1].massMoment = into.pieces[i - 1].massMoment + into.pieces[i].massMoment;
  }
  into.mass = bar.frameMass + into.pieces.front().massBelow;
  into.cg = (1.0 / into.mass) * (bar.frameMass * bar.frameCg + into.pieces.front().massMoment);
}

} // namespace hangbook::hang
