// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/rig.h"

#include <algorithm>
#include <cmath>

namespace hangbook::options {
namespace {

using catalogue::JointKind;
using catalogue::Picks;
using catalogue::Position;

/// Degrees: farther than any joint opens before its chain or the weight itself stops it.
constexpr double freelyDeg = 90.0;

/// Takes figures one by one and notes those that are not stated.
class Taker {
public:
  explicit Taker(QStringList& missing) : missing_(missing) {}

  double mass(const std::optional<Mass>& value, const QString& what) {
    return value ? inKilograms(*value) : note(what);
  }
  double length(const std::optional<Length>& value, const QString& what) {
    return value ? inMetres(*value) : note(what);
  }
  hang::Vec2 place(const std::optional<Position>& value, const QString& what) {
    if (!value) {
      note(what);
      return {};
    }
    return place(*value);
  }
  static hang::Vec2 place(const Position& value) { return {inMetres(value.x), inMetres(value.z)}; }
  hang::Range range(const std::optional<std::array<Angle, 2>>& value, const QString& what) {
    if (!value) {
      note(what);
      return {};
    }
    return {inDegrees((*value)[0]), inDegrees((*value)[1])};
  }
  double note(const QString& what) {
    if (!missing_.contains(what)) {
      missing_.append(what);
    }
    return 0.0;
  }

private:
  QStringList& missing_;
};

void takePicks(const catalogue::BarType& bar, const catalogue::PickArrangement& arrangement, hang::Bar& into,
               Taker& take) {
  const QString of = QStringLiteral(" of bar ") + bar.name;
  switch (arrangement.picks) {
  case Picks::sidePair: {
    hang::SidePair pair;
    pair.pickSpacing = take.length(arrangement.spacing, QStringLiteral("pick spacing") + of);
    pair.headMass = take.mass(bar.headMass, QStringLiteral("head mass") + of);
    pair.headCg = take.place(bar.headCentreOfGravity, QStringLiteral("head centre of gravity") + of);
    pair.tiltAxis = take.place(bar.tiltAxis, QStringLiteral("tilt axis") + of);
    pair.tiltTravelDeg = take.range(bar.tiltTravel, QStringLiteral("tilt travel") + of);
    pair.panTravelDeg = take.range(bar.panTravel, QStringLiteral("pan travel") + of);
    into.picks = pair;
    break;
  }
  case Picks::foreAftPair:
    into.picks = hang::ForeAftPair{take.place(arrangement.front, QStringLiteral("front pick") + of),
                                   take.place(arrangement.rear, QStringLiteral("rear pick") + of)};
    break;
  case Picks::single:
    into.picks = hang::SinglePick{take.place(arrangement.only, QStringLiteral("single pick") + of)};
    break;
  }
}

/// Of a joint that has one, degrees: the first hole, and where there are others all of them go into the rig.
double takeAngle(const catalogue::Join& join, std::size_t element, const QString& where, Rig& rig,
                 Taker& take) {
  if (join.angles.empty()) {
    return take.note(QStringLiteral("joint angle") + where);
  }
  if (join.angles.size() > 1) {
    Rig::Holes holes{element, {}};
    for (const Angle& each : join.angles) {
      holes.anglesDeg.push_back(inDegrees(each));
    }
    rig.holes.push_back(std::move(holes));
  }
  return inDegrees(join.angles.front());
}

hang::Joint takeJoint(const catalogue::CabinetType& cabinet, const catalogue::Join& join, std::size_t element,
                      Rig& rig, Taker& take) {
  const QString where = join.above.isEmpty() ? QStringLiteral(" of %1 under the bar").arg(join.below)
                                             : QStringLiteral(" of %1 under %2").arg(join.below, join.above);
  if (join.kind == JointKind::pivot) {
    return hang::Pivot{take.range(join.travel, QStringLiteral("travel of the pivot") + where)};
  }
  const double angle = takeAngle(join, element, where, rig, take);
  if (join.kind == JointKind::pinned) {
    if (!cabinet.pins) {
      take.note(QStringLiteral("pins of ") + cabinet.name);
      return hang::Pinned{angle, {}};
    }
    return hang::Pinned{angle, {Taker::place((*cabinet.pins)[0]), Taker::place((*cabinet.pins)[1])}};
  }
  if (!join.opensTo) {
    rig.openingUnknown.push_back(
        {element, QStringLiteral("how far the rear of the joint%1 can open").arg(where)});
  }
  return hang::Seated{angle,
                      take.place(cabinet.rearContact, QStringLiteral("rear contact of ") + cabinet.name),
                      join.opensTo ? inDegrees(*join.opensTo) : freelyDeg};
}

hang::Element takeElement(const Stack& stack, std::size_t index, double mass, Rig& rig, Taker& take) {
  const catalogue::CabinetType& cabinet = *stack.cabinets[index];
  hang::Element element;
  element.name = cabinet.name.toStdString();
  element.mass = std::isnan(mass) ? take.note(QStringLiteral("mass of ") + cabinet.name) : mass;
  element.cg = take.place(cabinet.centreOfGravity, QStringLiteral("centre of gravity of ") + cabinet.name);
  if (cabinet.nextPin) {
    element.nextPin = Taker::place(*cabinet.nextPin);
  } else if (index + 1 < stack.cabinets.size()) {
    take.note(QStringLiteral("lower pin of ") + cabinet.name);
  }
  if (cabinet.outline.size() < 3) {
    take.note(QStringLiteral("outline of ") + cabinet.name);
  }
  std::transform(cabinet.outline.begin(), cabinet.outline.end(), std::back_inserter(element.outline),
                 [](const Position& corner) { return Taker::place(corner); });
  if (cabinet.chainEye) {
    element.chainEye = Taker::place(*cabinet.chainEye);
  } else if (static_cast<int>(index) + 1 == stack.held) {
    take.note(QStringLiteral("chain eye of ") + cabinet.name);
  }
  element.joint = takeJoint(cabinet, *stack.joins[index], index, rig, take);
  return element;
}

/// The chain's own weight, all of its links, at the anchor on the bar: what hangs between anchor and eye
/// pulls partly at the eye, what is left over is tied up, and the two hooks carry all of it either way. It
/// enters the frame's mass and centre of gravity, so that the statics know it.
void addChainMass(const catalogue::ChainType& chain, Rig& rig, Taker& take) {
  const QString of = QStringLiteral(" of chain ") + chain.name;
  if (!chain.mass) {
    take.note(QStringLiteral("mass per metre") + of);
  }
  if (!chain.mass || !chain.pitch || !chain.links || !rig.hang.bar.chainAnchor) {
    return;
  }
  const double mass = inKilogramsPerMetre(*chain.mass) * inMetres(*chain.pitch) * *chain.links;
  hang::Bar& bar = rig.hang.bar;
  const double all = bar.frameMass + mass;
  if (all > 0.0) {
    bar.frameCg = (bar.frameMass / all) * bar.frameCg + (mass / all) * *bar.chainAnchor;
    bar.frameMass = all;
  }
}

/// The maker's record with the masses that count.
catalogue::BarType asWeighed(catalogue::BarType bar, const KnownBar& masses) {
  if (!masses.whole.weighed.isEmpty()) {
    bar.frameMass = kilograms(masses.frame.stated);
    if (bar.headMass) {
      bar.headMass = kilograms(masses.head.stated);
    }
  }
  return bar;
}

} // namespace

Rig rigFor(const Stack& stack, const catalogue::BarType& bar, const catalogue::PickArrangement& arrangement,
           const catalogue::ChainType* chain, const calendar::Hang& hang, const Snapshot& snapshot,
           const House& house) {
  Rig rig;
  Taker take(rig.missing);
  for (const QString& each : stack.missing) {
    take.note(each);
  }
  const QString of = QStringLiteral(" of bar ") + bar.name;
  const KnownBar barMasses = massesOfBar(snapshot, house, bar);
  const catalogue::BarType onTheScale = asWeighed(bar, barMasses);
  takePicks(onTheScale, arrangement, rig.hang.bar, take);
  rig.hang.bar.frameMass =
      take.mass(onTheScale.frameMass, QStringLiteral("frame mass") + of) +
      take.mass(hang.cableMass, QStringLiteral("mass of cable on the bar of hang %1 (0 kg "
                                               "where there is none)")
                                    .arg(hang.name));
  rig.hang.bar.frameCg = take.place(bar.frameCentreOfGravity, QStringLiteral("frame centre of gravity") + of);
  rig.hang.bar.stackPin = take.place(bar.stackPin, QStringLiteral("stack pin") + of);
  if (bar.chainAnchor) {
    rig.hang.bar.chainAnchor = Taker::place(*bar.chainAnchor);
  }
  std::vector<KnownMass> masses;
  for (std::size_t i = 0; i < stack.cabinets.size(); ++i) {
    masses.push_back(massOfType(snapshot, house, *stack.cabinets[i]));
    rig.hang.stack.push_back(takeElement(stack, i, masses.back().stated, rig, take));
  }
  rig.doubts = doubtsOf(house, stack, bar, barMasses, chain, hang, masses);
  if (stack.held != 0) {
    if (!bar.chainAnchor) {
      take.note(QStringLiteral("chain anchor") + of);
    }
    if (chain == nullptr) {
      take.note(QStringLiteral("the chain's type in the catalogue"));
    } else {
      const QString ofChain = QStringLiteral(" of chain ") + chain->name;
      rig.hang.chain = hang::Chain{take.length(chain->pitch, QStringLiteral("pitch") + ofChain),
                                   take.length(chain->fixedLength, QStringLiteral("fixed length") + ofChain),
                                   1, stack.held};
      if (chain->links) {
        rig.mostMark = *chain->links;
      } else {
        take.note(QStringLiteral("number of links") + ofChain);
      }
      addChainMass(*chain, rig, take);
    }
  }
  // A fore-aft pair cannot tilt beyond the most difference of its hoists' heights: sin(tilt) = difference ÷
  // distance of the picks.
  if (const auto* pair = std::get_if<hang::ForeAftPair>(&rig.hang.bar.picks); pair && bar.hoistOffsetLimit) {
    const double distance = hang::length(pair->frontPick - pair->rearPick);
    const double reach = hang::toDegrees(hang::arcsine(inMetres(*bar.hoistOffsetLimit) / distance));
    rig.foreAftReachDeg = std::min(rig.foreAftReachDeg, reach); // picks at one place set none
  }
  if (bar.tiltStep && inDegrees(*bar.tiltStep) > 0.0) {
    rig.tiltStepDeg = inDegrees(*bar.tiltStep);
  }
  return rig;
}

hang::Hang asInput(const Rig& rig) {
  hang::Hang input = rig.hang;
  for (const Rig::Opening& opening : rig.openingUnknown) {
    if (auto* seated = std::get_if<hang::Seated>(&input.stack[opening.element].joint)) {
      seated->openToDeg = 0.0;
    }
  }
  return input;
}

void useHoles(Rig& rig, const std::vector<double>& anglesDeg) {
  for (std::size_t i = 0; i < rig.holes.size(); ++i) {
    hang::Joint& joint = rig.hang.stack[rig.holes[i].element].joint;
    if (auto* seated = std::get_if<hang::Seated>(&joint)) {
      seated->angleDeg = anglesDeg.at(i);
    } else if (auto* pinned = std::get_if<hang::Pinned>(&joint)) {
      pinned->angleDeg = anglesDeg.at(i);
    }
  }
}

} // namespace hangbook::options
