// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "options/placement.h"

/// An audience section with a front line of its own, as plain geometry in plan: a profile swept along a
/// straight line or an arc. Metres, venue coordinates; plane geometry, nothing of it is approximated.
namespace hangbook::options {

struct SweptSection {
  Plan front;      ///< middle of the front line
  Plan rear;       ///< unit vector from there to the rear
  double width{};  ///< along the front line
  double radius{}; ///< 0: straight; above 0 its centre lies before the line, below 0 behind it

  /// A quarter turn to the left of `rear`.
  Plan left() const { return {-rear.y, rear.x}; }
  /// The place `behind` the front line, on the row there, `part` of that row to the left of its middle (-½
  /// its right end, ½ its left end). A row has the arc's angle, so it is `rowLength(behind)` long.
  Plan placeOf(double behind, double part) const;
  double rowLength(double behind) const;

  struct Seat {
    double behind{};
    double part{};
  };
  /// The row and part of it at a place; none beside the section's ends. The profile's own ends are not asked.
  std::optional<Seat> seatAt(Plan place) const;

  /// On the row `behind` the front line, the part that is nearest to the line from `origin` along the unit
  /// vector `bearing`; what lies behind the origin is taken only where the whole row does.
  double partNearest(double behind, Plan origin, Plan bearing) const;

  /// Whether every row of a profile from `first` to `last` lies on one side of the arc's centre, and the
  /// front line goes round it no more than once.
  bool possible(double first, double last) const;

private:
  /// The parts of a row at which it crosses a line; where it passes it by, its nearest and farthest. Some of
  /// them may lie beyond its ends or be NaN.
  std::vector<double> partsOnLine(double behind, Plan origin, Plan bearing) const;
};

/// The plain figures of a section that is `swept()`; none where one of them is missing or no such rows can
/// be.
std::optional<SweptSection> sweptSection(const venue::Section&);

} // namespace hangbook::options
