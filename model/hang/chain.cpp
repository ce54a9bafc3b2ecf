// SPDX-License-Identifier: GPL-3.0-or-later
#include "hang/chain.h"

#include <algorithm>
#include <cmath>

#include "hang/assembly.h"
#include "hang/check.h"
#include "hang/span.h"

namespace hangbook::hang {

double chainLength(const Chain& chain) {
  return chain.fixed + chain.mark * chain.pitch;
}

PivotTriangle pivotTriangle(const Bar& bar, const std::vector<Element>& stack, int held) {
  PivotTriangle triangle;
  Vec2 pin = bar.stackPin;
  const auto index = static_cast<std::size_t>(held) - 1;
  for (std::size_t i = 0; i < index; ++i) {
    triangle.aboveDeg += fixedAngleDeg(stack[i].joint);
    pin = pin + turnBy(toRadians(triangle.aboveDeg))(stack[i].nextPin.value_or(Vec2{}));
  }
  triangle.anchor = bar.chainAnchor.value_or(Vec2{}) - pin;
  triangle.eye = stack[index].chainEye.value_or(Vec2{});
  if (const auto* pivot = std::get_if<Pivot>(&stack[index].joint)) {
    triangle.travelDeg = pivot->travelDeg;
  }
  return triangle;
}

double lengthAt(const PivotTriangle& triangle, double jointDeg) {
  return length(triangle.anchor - turnBy(toRadians(triangle.aboveDeg + jointDeg))(triangle.eye));
}

namespace {

/// The same angle, a whole turn away where that brings it into the travel.
std::optional<double> intoTravel(double deg, Range travel) {
  const double base = std::remainder(deg, 360.0);
  for (const double turned : {base, base - 360.0, base + 360.0}) {
    if (travel.holds(turned)) {
      return turned;
    }
  }
  return std::nullopt;
}

/// Nothing where there is no such mark either.
std::optional<MarkAngle> markAngle(const PivotTriangle& triangle, double pitch, double fixed, double links) {
  if (!Span(1.0, mostMark).holds(links)) {
    return std::nullopt;
  }
  const int mark = static_cast<int>(links);
  const double reach = fixed + mark * pitch;
  const PivotAngles angles = anglesAt(triangle, reach);
  if (angles.count != 1) {
    return std::nullopt;
  }
  return MarkAngle{mark, angles.deg[0], reach};
}

int wholeLinks(double links) {
  return static_cast<int>(std::clamp(links, 0.0, static_cast<double>(mostMark)));
}

} // namespace

PivotAngles anglesAt(const PivotTriangle& triangle, double reach) {
  PivotAngles angles;
  const double anchorArm = length(triangle.anchor);
  const double eyeArm = length(triangle.eye);
  if (!isLength(std::min(anchorArm, eyeArm))) {
    return angles; // the chain's length does not depend on the angle
  }
  const double cosine =
      (anchorArm * anchorArm + eyeArm * eyeArm - reach * reach) / (2.0 * anchorArm * eyeArm);
  if (!(std::abs(cosine) <= 1.0)) {
    return angles;
  }
  const double between = std::acos(cosine);
  const double inLine = std::atan2(triangle.anchor.z, triangle.anchor.x) -
                        std::atan2(triangle.eye.z, triangle.eye.x) - toRadians(triangle.aboveDeg);
  for (const double side : {-between, between}) {
    const auto deg = intoTravel(toDegrees(inLine + side), triangle.travelDeg);
    const bool sameAgain = angles.count == 1 && deg && sameAngle(*deg, angles.deg[0]);
    if (deg && !sameAgain) {
      angles.deg[static_cast<std::size_t>(angles.count)] = *deg;
      ++angles.count;
    }
  }
  return angles;
}

std::vector<MarkAngle> usableMarks(const PivotTriangle& triangle, double pitch, double fixed) {
  const double anchorArm = length(triangle.anchor);
  const double eyeArm = length(triangle.eye);
  const int first = wholeLinks(std::floor((std::abs(anchorArm - eyeArm) - fixed) / pitch));
  const int last = wholeLinks(std::ceil((anchorArm + eyeArm - fixed) / pitch));
  std::vector<MarkAngle> marks;
  for (int mark = first; mark <= last; ++mark) {
    if (const auto found = markAngle(triangle, pitch, fixed, mark)) {
      marks.push_back(*found);
    }
  }
  return marks;
}

NeighbouringMarks neighbouringMarks(const PivotTriangle& triangle, double pitch, double fixed,
                                    double wantedDeg) {
  const double links = (lengthAt(triangle, wantedDeg) - fixed) / pitch;
  const double nearest = std::round(links);
  const bool onMark = !isLength(std::abs(links - nearest) * pitch);
  const double below = onMark ? nearest : std::floor(links);
  const double beyond = onMark ? nearest : std::ceil(links);
  return {markAngle(triangle, pitch, fixed, below), markAngle(triangle, pitch, fixed, beyond)};
}

std::optional<int> firstMarkThatReaches(double straight, double pitch, double fixed) {
  const double links = std::ceil((straight - lengthSlack - fixed) / pitch);
  if (!(links <= mostMark)) {
    return std::nullopt;
  }
  return std::max(1, wholeLinks(links));
}

} // namespace hangbook::hang
