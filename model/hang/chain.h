// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <vector>

#include "hang/hang.h"

/// The chain between the bar's anchor and an element's eye: lengths, marks, and the angle of a pivot.
namespace hangbook::hang {

/// Usable length at a mark, bearing to bearing.
double chainLength(const Chain& chain);

/// The triangle anchor–pin–eye of a pivot that the chain holds. Two sides and the places are given; the
/// chain is the third side.
struct PivotTriangle {
  Vec2 anchor;       ///< from the pivot's pin, in frame coordinates
  Vec2 eye;          ///< from the pivot's pin, in element coordinates
  double aboveDeg{}; ///< sum of the joint angles above the pivot
  Range travelDeg;   ///< of the pivot
};

/// The triangle of the pivot at element `held` (counted from 1) of a stack that `check` has passed.
PivotTriangle pivotTriangle(const Bar& bar, const std::vector<Element>& stack, int held);

/// Anchor to eye with the pivot at this angle.
double lengthAt(const PivotTriangle& triangle, double jointDeg);

struct PivotAngles {
  int count{}; ///< 0, 1 or 2
  std::array<double, 2> deg{};
};

/// The pivot's angles within its travel at which anchor and eye stand `length` apart (law of cosines).
PivotAngles anglesAt(const PivotTriangle& triangle, double length);

struct MarkAngle {
  int mark{};
  double angleDeg{};
  double length{};
};

/// Every mark that gives exactly one angle within the travel, shortest chain first.
std::vector<MarkAngle> usableMarks(const PivotTriangle& triangle, double pitch, double fixed);

/// The marks on either side of a wanted angle, with the angles that each really gives; the shorter chain in
/// `shorter`. Where the wanted angle falls on a mark both are that mark. Empty where that mark gives no
/// single angle within the travel.
struct NeighbouringMarks {
  std::optional<MarkAngle> shorter;
  std::optional<MarkAngle> longer;
};
NeighbouringMarks neighbouringMarks(const PivotTriangle& triangle, double pitch, double fixed,
                                    double wantedDeg);

/// For an element without a pivot: the first mark whose chain reaches from anchor to eye, or none below
/// `mostMark`.
std::optional<int> firstMarkThatReaches(double straight, double pitch, double fixed);

} // namespace hangbook::hang
