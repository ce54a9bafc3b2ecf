// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/rig_shelf.h"

#include <algorithm>

namespace hangbook::options {
namespace {

// Each names all members of its struct: one that is added and not compared does not compile.

bool same(double a, double b) {
  return a == b;
}
bool same(int a, int b) {
  return a == b;
}
bool same(const std::string& a, const std::string& b) {
  return a == b;
}
bool same(const QString& a, const QString& b) {
  return a == b;
}
bool same(hang::Vec2 a, hang::Vec2 b) {
  return a == b;
}
template <class T>
bool same(const std::optional<T>& a, const std::optional<T>& b);
template <class T>
bool same(const std::vector<T>& a, const std::vector<T>& b);

bool same(const hang::Range& a, const hang::Range& b) {
  const auto& [low, high] = a;
  return same(low, b.low) && same(high, b.high);
}
bool same(const hang::SidePair& a, const hang::SidePair& b) {
  const auto& [spacing, mass, cg, axis, tilt, pan] = a;
  return same(spacing, b.pickSpacing) && same(mass, b.headMass) && same(cg, b.headCg) &&
         same(axis, b.tiltAxis) && same(tilt, b.tiltTravelDeg) && same(pan, b.panTravelDeg);
}
bool same(const hang::ForeAftPair& a, const hang::ForeAftPair& b) {
  const auto& [front, rear] = a;
  return same(front, b.frontPick) && same(rear, b.rearPick);
}
bool same(const hang::SinglePick& a, const hang::SinglePick& b) {
  const auto& [pick] = a;
  return same(pick, b.pick);
}
bool same(const hang::Seated& a, const hang::Seated& b) {
  const auto& [angle, contact, open] = a;
  return same(angle, b.angleDeg) && same(contact, b.contact) && same(open, b.openToDeg);
}
bool same(const hang::Pinned& a, const hang::Pinned& b) {
  const auto& [angle, pins] = a;
  return same(angle, b.angleDeg) && same(pins[0], b.pins[0]) && same(pins[1], b.pins[1]);
}
bool same(const hang::Pivot& a, const hang::Pivot& b) {
  const auto& [travel] = a;
  return same(travel, b.travelDeg);
}
template <class... Kinds>
bool same(const std::variant<Kinds...>& a, const std::variant<Kinds...>& b) {
  return a.index() == b.index() &&
         std::visit([&b](const auto& one) { return same(one, std::get<std::decay_t<decltype(one)>>(b)); }, a);
}
bool same(const hang::Bar& a, const hang::Bar& b) {
  const auto& [picks, mass, cg, pin, anchor] = a;
  return same(picks, b.picks) && same(mass, b.frameMass) && same(cg, b.frameCg) && same(pin, b.stackPin) &&
         same(anchor, b.chainAnchor);
}
bool same(const hang::Element& a, const hang::Element& b) {
  const auto& [name, mass, cg, pin, outline, eye, joint] = a;
  return same(name, b.name) && same(mass, b.mass) && same(cg, b.cg) && same(pin, b.nextPin) &&
         same(outline, b.outline) && same(eye, b.chainEye) && same(joint, b.joint);
}
bool same(const hang::Chain& a, const hang::Chain& b) {
  const auto& [pitch, fixed, mark, held] = a;
  return same(pitch, b.pitch) && same(fixed, b.fixed) && same(mark, b.mark) && same(held, b.held);
}
bool same(const hang::Setting& a, const hang::Setting& b) {
  const auto& [tilt, actuator, pan] = a;
  return same(tilt, b.tiltDeg) && same(actuator, b.actuatorDeg) && same(pan, b.panDeg);
}
bool same(const hang::PullBack& a, const hang::PullBack& b) {
  const auto& [element, at, line, force, tilt] = a;
  return same(element, b.element) && same(at, b.at) && same(line, b.lineDeg) && same(force, b.force) &&
         same(tilt, b.tiltDeg);
}
bool same(const hang::Hang& a, const hang::Hang& b) {
  const auto& [bar, stack, chain, set, pullBack] = a;
  return same(bar, b.bar) && same(stack, b.stack) && same(chain, b.chain) && same(set, b.set) &&
         same(pullBack, b.pullBack);
}
bool same(const hang::PieceDoubt& a, const hang::PieceDoubt& b) {
  const auto& [lighter, heavier, centre, place] = a;
  return same(lighter, b.lighter) && same(heavier, b.heavier) && same(centre, b.centre) &&
         same(place, b.place);
}
bool same(const hang::Doubts& a, const hang::Doubts& b) {
  const auto& [head, frame, stack, shorter, longer] = a;
  return same(head, b.head) && same(frame, b.frame) && same(stack, b.stack) && same(shorter, b.linkShorter) &&
         same(longer, b.linkLonger);
}
bool same(const Rig::Holes& a, const Rig::Holes& b) {
  const auto& [element, angles] = a;
  return element == b.element && same(angles, b.anglesDeg);
}
bool same(const Rig::Opening& a, const Rig::Opening& b) {
  const auto& [element, what] = a;
  return element == b.element && same(what, b.what);
}
template <class T>
bool same(const std::optional<T>& a, const std::optional<T>& b) {
  return a.has_value() == b.has_value() && (!a || same(*a, *b));
}
template <class T>
bool same(const std::vector<T>& a, const std::vector<T>& b) {
  return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                    [](const T& one, const T& other) { return same(one, other); });
}

} // namespace

bool sameSettings(const Rig& one, const Rig& other) {
  const auto& [hang, missing, holes, opening, mark, step, reach, doubts] = one;
  const auto& [figures, heavier, longer, sources, weighed] = doubts;
  static_cast<void>(sources); // words
  static_cast<void>(weighed);
  return same(mark, other.mostMark) && same(step, other.tiltStepDeg) && same(reach, other.foreAftReachDeg) &&
         missing == other.missing && same(hang, other.hang) && same(holes, other.holes) &&
         same(opening, other.openingUnknown) && same(figures, other.doubts.figures) &&
         same(heavier, other.doubts.gearHeavier) && same(longer, other.doubts.longer);
}

std::shared_ptr<const Settings> RigShelf::settingsOf(Rig& rig, double panDeg) {
  const auto there = std::ranges::find_if(
      kept_, [&](const Kept& each) { return each.panDeg == panDeg && sameSettings(each.rig, rig); });
  if (there != kept_.end()) {
    return there->settings;
  }
  Rig asAsked = rig; // solving leaves its last setting in it
  kept_.push_back(
      {std::move(asAsked), panDeg, std::make_shared<const Settings>(options::settingsOf(rig, panDeg))});
  return kept_.back().settings;
}

} // namespace hangbook::options
