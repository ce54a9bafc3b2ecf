// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/wind_joints.h"

#include <algorithm>
#include <cmath>

#include "hang/vec2.h"
#include "options/loads.h"
#include "options/placement.h"

namespace hangbook::options {
namespace {

hang::Vec2 planOf(const hang::Vec3& way) {
  const double size = std::hypot(way.x, way.y);
  return size > 0.0 ? hang::Vec2{way.x / size, way.y / size} : hang::Vec2{1.0, 0.0};
}

hang::Vec2 placeOf(const catalogue::Position& at) {
  return {inMetres(at.x), inMetres(at.z)};
}

/// The joint's own height below the picks; of two pins the higher one, about which the push turns more.
double jointBelow(const Case& option, const Settled& settled, std::size_t element, double picks) {
  const hang::PlacedElement& placed = settled.layout.elements[element];
  const auto& pins = option.cabinets[element]->pins;
  if (option.joins[element]->kind != catalogue::JointKind::pinned || !pins) {
    return picks - placed.pin.z;
  }
  const double upward = std::hypot(placed.forward.x, placed.forward.y);
  double highest = -std::numeric_limits<double>::infinity();
  for (const catalogue::Position& pin : *pins) {
    const hang::Vec2 at = placeOf(pin);
    highest = std::max(highest, placed.pin.z + at.x * placed.forward.z + at.z * upward);
  }
  return picks - highest;
}

/// Where a joint turns: its pin, or midway between two. The hang's plane stands upright.
hang::Vec3 turningPoint(const Case& option, const Settled& settled, std::size_t element) {
  const hang::PlacedElement& placed = settled.layout.elements[element];
  const auto& pins = option.cabinets[element]->pins;
  if (option.joins[element]->kind != catalogue::JointKind::pinned || !pins) {
    return placed.pin;
  }
  const hang::Vec2 middle = 0.5 * (placeOf((*pins)[0]) + placeOf((*pins)[1]));
  const hang::Vec2 plan = planOf(settled.layout.forward);
  const double level = hang::dot(plan, {placed.forward.x, placed.forward.y});
  const hang::Vec3 upwards{-placed.forward.z * plan.x, -placed.forward.z * plan.z, level};
  return placed.pin + middle.x * placed.forward + middle.z * upwards;
}

/// The joints as the statics know them, from what the options' own parts say.
std::vector<hang::Element> jointsOf(const Case& option) {
  std::vector<hang::Element> stack(option.cabinets.size());
  for (std::size_t i = 0; i < stack.size(); ++i) {
    const catalogue::CabinetType& cabinet = *option.cabinets[i];
    const catalogue::Join& join = *option.joins[i];
    if (join.kind == catalogue::JointKind::seated) {
      // How far it opens where nobody said so does not matter: that it may, does.
      stack[i].joint = hang::Seated{0.0, cabinet.rearContact ? placeOf(*cabinet.rearContact) : hang::Vec2{},
                                    join.opensTo ? inDegrees(*join.opensTo) : 1.0};
    } else if (join.kind == catalogue::JointKind::pinned) {
      stack[i].joint = cabinet.pins
                           ? hang::Pinned{0.0, {placeOf((*cabinet.pins)[0]), placeOf((*cabinet.pins)[1])}}
                           : hang::Pinned{};
    } else {
      stack[i].joint = hang::Pivot{};
    }
  }
  return stack;
}

hang::Places placesOf(const Case& option, const Settled& settled) {
  hang::Places places;
  places.elements.resize(option.cabinets.size());
  if (settled.doubt != nullptr) {
    places.frame = settled.doubt->figures.frame.place;
    std::transform(settled.doubt->figures.stack.begin(), settled.doubt->figures.stack.end(),
                   places.elements.begin(), [](const hang::PieceDoubt& each) { return each.place; });
  }
  return places;
}

/// Heights that lie apart may be so much farther apart.
double apartOff(const Settled& settled) {
  return 2.0 * heightDoubt(settled);
}

} // namespace

std::vector<hang::SidePush> pushesBelow(const Case& option, const Settled& settled,
                                        const std::vector<BodyFaces>& bodies, double picks) {
  const hang::Vec2 forward = planOf(settled.layout.forward);
  std::vector<hang::SidePush> pushes(bodies.size());
  WindForce wind; // on all from the foot up
  for (std::size_t i = bodies.size(); i-- > 0;) {
    std::for_each(bodies[i].begin(), bodies[i].end(), [&wind](const WindFace& face) { wind.add(face); });
    pushes[i] = wind.greatestBelow(jointBelow(option, settled, i, picks), forward);
    pushes[i].turning += apartOff(settled) * pushes[i].inPlane;
    pushes[i].acrossTurning += apartOff(settled) * pushes[i].across;
  }
  return pushes;
}

double pickLineDeg(const Settled& settled) {
  const std::vector<hang::Vec3>& picks = settled.layout.picks;
  return hang::toDegrees(std::atan2(picks[0].y - picks[1].y, picks[0].x - picks[1].x));
}

double swingRadians(const Settled& settled, const WindForce& wind, double pressure) {
  const std::vector<hang::Vec3>& picks = settled.layout.picks;
  double lowest = std::numeric_limits<double>::infinity();
  for (const hang::Vec3& pick : picks) {
    lowest = std::min(lowest, pick.z);
  }
  const double centreOff = settled.doubt == nullptr ? 0.0 : settled.doubt->worst.centreOff;
  const double depth = lowest - settled.statics.cg.z - centreOff;
  const double weight =
      standardGravity * (settled.doubt == nullptr ? settled.statics.mass : settled.doubt->worst.leastMass);
  const double moment = (picks.size() == 2 ? wind.greatestMomentAlong(pickLineDeg(settled) + 90.0).value
                                           : std::hypot(wind.greatestMomentAlong(0.0).value,
                                                        wind.greatestMomentAlong(90.0).value)) +
                        heightDoubt(settled) * wind.greatestForce().value;
  return depth > 0.0 ? std::atan2(pressure * moment, weight * depth) : notKnown;
}

hang::Pushed pushedBy(const Case& option, const Settled& settled, const WindForce& wind, double pressure,
                      double heavier) {
  const hang::Layout& layout = settled.layout;
  const hang::Vec2 forward = planOf(layout.forward);
  // Square to the line of two picks the hang swings: so much of that way lies in its plane, and across.
  double ahead = 1.0;
  double aside = 1.0;
  if (layout.picks.size() == 2) {
    const hang::Vec2 line =
        planOf({layout.picks[0].x - layout.picks[1].x, layout.picks[0].y - layout.picks[1].y, 0.0});
    ahead = std::abs(hang::moment(line, forward));
    aside = std::abs(hang::dot(line, forward));
  }
  const double swing = swingRadians(settled, wind, pressure);
  std::vector<hang::SidePush> pushes(wind.below.size());
  double mass = 0.0;
  hang::Vec3 first; // kg·m, of all below, heaviest
  for (std::size_t i = pushes.size(); i-- > 0;) {
    const hang::PlacedElement& placed = layout.elements[i];
    const double own =
        placed.mass + (settled.doubt == nullptr ? 0.0 : settled.doubt->figures.stack[i].heavier);
    mass += own;
    first = first + own * placed.cg;
    const hang::Vec3 arm = (1.0 / mass) * first + (-1.0) * turningPoint(option, settled, i);
    const double away = std::hypot(arm.x, arm.y, arm.z) + apartOff(settled);
    const hang::SidePush& unit = wind.below[i];
    const hang::SidePush gust{pressure * unit.inPlane, pressure * unit.turning, pressure * unit.across,
                              pressure * unit.acrossTurning};
    pushes[i] =
        hang::worseOf(gust, hang::bySwing(heavier * mass * standardGravity, away, swing, ahead, aside));
  }
  const std::vector<hang::Element> stack = jointsOf(option);
  const std::vector<hang::JointArms> arms =
      hang::armsOf(stack, option.held, layout, placesOf(option, settled));
  return hang::inGust(stack, option.held, settled.statics, arms, pushes, heavier);
}

} // namespace hangbook::options
