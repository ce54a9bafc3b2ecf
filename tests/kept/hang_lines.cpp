// SPDX-License-Identifier: GPL-3.0-or-later
#include "kept/hang_lines.h"

namespace hangbook::testing {

using namespace hang;

void add(Line& line, Vec2 place) {
  line.number(place.x);
  line.number(place.z);
}

void add(Line& line, Vec3 place) {
  line.number(place.x);
  line.number(place.y);
  line.number(place.z);
}

void add(Line& line, Span span) {
  line.number(span.low);
  line.number(span.high);
}

namespace {

void flag(Line& line, bool value) {
  line.word(value ? "yes" : "no");
}

void add(Line& line, const std::optional<Vec3>& place) {
  if (place) {
    testing::add(line, *place);
  } else {
    line.word("none");
  }
}

template <class List>
void each(Line& line, const List& list) {
  for (const double value : list) {
    line.number(value);
  }
}

void add(Line& line, const std::optional<SideAttitude>& side) {
  flag(line, side.has_value());
  if (side) {
    for (const double angle : {side->actuatorDeg, side->headSwingDeg, side->azimuthDeg, side->rollDeg}) {
      line.number(angle);
    }
  }
}

/// What statics and settled shape have in common.
template <class Shape>
void addPicks(Line& line, const Shape& shape) {
  line.number(shape.mass);
  testing::add(line, shape.cg);
  line.number(shape.tiltDeg);
  add(line, shape.side);
  line.number(shape.bottom);
  for (std::size_t i = 0; i < shape.pickCount; ++i) {
    line.word(nameOf(shape.pickLoads[i].name));
    line.number(shape.pickLoads[i].load);
  }
}

void add(Line& line, const JointStatics& joint) {
  for (const double figure :
       {joint.angleDeg, joint.openDeg, joint.aimDeg, joint.gravityMoment, joint.sideways}) {
    line.number(figure);
  }
  line.number(joint.contact);
  line.number(joint.stop);
  each(line, joint.pinForces);
  line.number(joint.pinCount);
  testing::add(line, joint.pinLoads[0]);
  testing::add(line, joint.pinLoads[1]);
  testing::add(line, joint.sidewaysMoment);
  flag(line, joint.end.has_value());
  if (joint.end) {
    line.number(joint.end->contact);
    line.number(joint.end->stop);
    testing::add(line, joint.end->pinLoads[0]);
    testing::add(line, joint.end->pinLoads[1]);
    each(line, joint.end->pinForces);
  }
}

void add(Line& line, const BuildMoment& moment) {
  line.number(static_cast<int>(moment.stage));
  line.number(moment.cabinets);
}

} // namespace

void add(Line& line, const Statics& statics) {
  addPicks(line, statics);
  flag(line, statics.chain.has_value());
  if (statics.chain) {
    const ChainStatics& chain = *statics.chain;
    for (const double figure : {chain.length, chain.straight, chain.slack, chain.tension, chain.most}) {
      line.number(figure);
    }
    flag(line, chain.tensionIsLeast);
  }
  for (const JointStatics& joint : statics.joints) {
    add(line, joint);
  }
  flag(line, statics.pullBack.has_value());
  if (statics.pullBack) {
    line.number(statics.pullBack->force);
    line.number(statics.pullBack->hoistLeanDeg);
  }
}

void add(Line& line, const Settled& settled) {
  addPicks(line, settled);
  flag(line, settled.chain.has_value());
  if (settled.chain) {
    const SettledChain& chain = *settled.chain;
    line.plain(chain.taut ? "taut " : "slack ");
    for (const double figure : {chain.length, chain.straight, chain.least, chain.most}) {
      line.number(figure);
    }
    line.number(chain.tension);
  }
  for (const SettledJoint& joint : settled.joints) {
    add(line, static_cast<const JointStatics&>(joint));
    flag(line, joint.seated);
  }
}

void add(Line& line, const BuildStep& step) {
  line.number(static_cast<int>(step.stage));
  line.number(step.cabinets);
  line.number(step.mass);
  each(line, step.most);
  each(line, step.least);
}

namespace {

void add(Line& line, const CarriedWorst& carried) {
  line.number(carried.chain);
  add(line, carried.chainAt);
  for (const JointWorst& joint : carried.joints) {
    each(line, joint.most.pins);
    for (const double figure : {joint.most.roll, joint.most.sideways, joint.most.contact, joint.most.stop}) {
      line.number(figure);
    }
    add(line, joint.pinAt[0]);
    add(line, joint.pinAt[1]);
    add(line, joint.contactAt);
    add(line, joint.stopAt);
  }
  flag(line, carried.unknown.has_value());
  if (carried.unknown) {
    add(line, *carried.unknown);
  }
}

} // namespace

void add(Line& line, const BuildWorst& worst) {
  each(line, worst.most);
  add(line, worst.mostAt[0]);
  add(line, worst.mostAt[1]);
  line.number(worst.leastShare);
  line.number(static_cast<double>(worst.leastPick));
  line.number(worst.leastOther);
  add(line, worst.leastAt);
  line.number(worst.unlike);
  add(line, worst.unlikeAt);
  flag(line, worst.unknown.has_value());
  if (worst.unknown) {
    add(line, *worst.unknown);
  }
  line.number(worst.restPanDeg);
  line.number(worst.restActuatorDeg);
  line.number(worst.levelActuatorDeg);
  add(line, worst.carried);
}

void add(Line& line, const Unfavourable& worst) {
  line.plain(worst.bounded ? "" : "?");
  add(line, worst.statics);
  add(line, worst.build);
  add(line, worst.actuatorDeg);
  add(line, worst.swingDeg);
  add(line, worst.tiltDeg);
  for (const Span span : worst.jointDeg) {
    add(line, span);
  }
  for (const Span span : worst.aimDeg) {
    add(line, span);
  }
  line.number(worst.height);
  line.number(worst.leastMass);
  each(line, worst.leastPick);
  line.number(worst.lever);
  flag(line, worst.chainMayNotReach);
}

void add(Line& line, const Layout& layout) {
  for (const Vec3 pick : layout.picks) {
    add(line, pick);
  }
  for (const Vec3 place :
       {layout.frameOrigin, layout.forward, layout.left, layout.up, layout.frameCg, layout.stackPin}) {
    add(line, place);
  }
  add(line, layout.headCg);
  add(line, layout.chainAnchor);
  for (const PlacedElement& element : layout.elements) {
    add(line, element.pin);
    add(line, element.cg);
    add(line, element.nextPin);
    add(line, element.chainEye);
    for (const Vec3 corner : element.outline) {
      add(line, corner);
    }
    add(line, element.forward);
    line.number(element.aimDeg);
  }
}

void add(Line& line, const Change& change) {
  line.number(static_cast<int>(change.kind));
  line.number(change.element);
  line.number(change.instead);
  line.number(change.count);
  line.number(change.amount);
  each(line, change.loads);
}

} // namespace hangbook::testing
