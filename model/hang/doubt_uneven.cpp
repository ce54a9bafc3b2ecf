// SPDX-License-Identifier: GPL-3.0-or-later
#include "hang/doubt_uneven.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "hang/uneven.h"
#include "quantity/quantity.h"

namespace hangbook::hang {
namespace {

/// The line between the picks, and how far the centre stands square below it.
struct Line {
  double least{}; ///< m, of its length
  double angle{}; ///< radians, by which it rises towards the raised pick as set
  double off{};   ///< radians, either way
  double below{}; ///< m, at most
};

std::optional<Line> lineOf(const Bar& bar, const Doubts& doubts, const Statics& stated,
                           const Unfavourable& worst, std::size_t raised) {
  const double place = doubts.frame.place;
  if (const auto* pair = std::get_if<SidePair>(&bar.picks)) {
    return Line{pair->pickSpacing - place, 0.0, 0.0, -stated.cg.z + worst.centreOff};
  }
  const auto* two = std::get_if<ForeAftPair>(&bar.picks);
  if (two == nullptr) {
    return std::nullopt;
  }
  const Vec2 forward = turnBy(toRadians(stated.tiltDeg))(two->frontPick - two->rearPick);
  const double apart = length(forward);
  const double off = 2.0 * std::numbers::sqrt2 * place; // both ends, each coordinate
  if (!isLength(forward.x)) {
    return std::nullopt;
  }
  const double rises = std::atan2(forward.z, forward.x);
  return Line{apart - off, raised == 0 ? rises : -rises, std::asin(off / apart),
              (forward.z * stated.cg.x - forward.x * stated.cg.z) / apart + worst.centreOff};
}

/// tan β′ − tan β; infinite where the line would stand too steep.
double climb(double angle, double slope) {
  const double sine = std::sin(angle) + slope;
  return standsUneven(sine) ? std::tan(std::asin(sine)) - std::tan(angle)
                            : std::numeric_limits<double>::infinity();
}

} // namespace

std::optional<UnevenWorst> unevenWithin(const Bar& bar, const Doubts& doubts, const Statics& stated,
                                        const Unfavourable& worst, std::size_t raised, double rise) {
  const std::optional<Line> line = lineOf(bar, doubts, stated, worst, raised);
  if (!line || !worst.bounded || !(line->least > 0.0)) {
    return std::nullopt;
  }
  double part = 0.0;
  if (rise > 0.0) {
    const double slope = rise / line->least;
    const double most =
        std::max(climb(line->angle - line->off, slope), climb(line->angle + line->off, slope));
    part = std::max(0.0, line->below) / line->least * most;
  }
  if (!std::isfinite(part)) {
    return std::nullopt;
  }
  const double moved = worst.statics.mass * standardGravity * part;
  const std::size_t other = 1 - raised;
  return UnevenWorst{worst.statics.pickLoads.at(raised).load + moved, worst.leastPick.at(other) - moved,
                     part};
}

} // namespace hangbook::hang
