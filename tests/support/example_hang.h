// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "hang/hang.h"

namespace hangbook::testing {

/// The contract's example as a struct: a side-pair, a pinned bass cabinet, a downfill on a chain.
inline hang::Hang exampleHang() {
  hang::Hang hang;
  hang.bar.picks = hang::SidePair{1.0, 36.0, {0.0, -0.10}, {0.0, -0.30}, {-20.0, 20.0}, {-20.0, 20.0}};
  hang.bar.frameMass = 58.0;
  hang.bar.frameCg = {-0.08, -0.12};
  hang.bar.stackPin = {0.32, -0.22};
  hang.bar.chainAnchor = hang::Vec2{-0.55, -0.10};
  hang::Element bass;
  bass.name = "bass";
  bass.mass = 92.0;
  bass.cg = {-0.36, -0.31};
  bass.nextPin = hang::Vec2{0.0, -0.62};
  bass.outline = {{0.03, 0.01}, {0.03, -0.61}, {-0.77, -0.61}, {-0.77, 0.01}};
  bass.chainEye = hang::Vec2{-0.74, -0.56};
  bass.joint = hang::Pinned{0.0, {hang::Vec2{0.0, -0.03}, hang::Vec2{-0.08, -0.03}}};
  hang::Element downfill;
  downfill.name = "downfill";
  downfill.mass = 64.0;
  downfill.cg = {-0.33, -0.26};
  downfill.nextPin = hang::Vec2{0.0, -0.50};
  downfill.outline = {{0.03, 0.0}, {0.03, -0.50}, {-0.70, -0.42}, {-0.70, -0.05}};
  downfill.chainEye = hang::Vec2{-0.66, -0.24};
  downfill.joint = hang::Pivot{{-30.0, 0.0}};
  hang.stack = {bass, downfill};
  hang.chain = hang::Chain{0.0225, 0.08, 37, 2};
  hang.set.tiltDeg = -3.0;
  hang.set.panDeg = 5.0;
  return hang;
}

/// Two seated cabinets on a side-pair, a chain to the lower one: gravity opens both joints.
inline hang::Hang seatedHang() {
  hang::Hang hang = exampleHang();
  hang.stack[0].joint = hang::Seated{-1.0, {-0.70, -0.01}};
  hang.stack[1].joint = hang::Seated{-4.0, {-0.65, -0.02}};
  hang.chain->mark = 41;
  return hang;
}

/// 100 kg on a frame that its two hoists keep level, its pin 0.5 m below and midway between the picks.
inline hang::Hang oneCabinet(hang::Vec2 cg, const hang::Joint& joint) {
  hang::Hang made;
  made.bar.picks = hang::ForeAftPair{{0.5, 0.5}, {-0.5, 0.5}};
  made.set.tiltDeg = 0.0;
  hang::Element element;
  element.mass = 100.0;
  element.cg = cg;
  element.outline = {{0.5, 0.0}, {0.5, -0.6}, {-0.8, -0.6}, {-0.8, 0.0}};
  element.joint = joint;
  made.stack = {element};
  return made;
}

} // namespace hangbook::testing
