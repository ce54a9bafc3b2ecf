// SPDX-License-Identifier: GPL-3.0-or-later
#include "hang/bridle_pushed.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>
#include <string>

#include "hang/bridle_parts.h"
#include "hang/vec2.h"
#include "quantity/error.h"

namespace hangbook::hang {
namespace {

constexpr double infinite = std::numeric_limits<double>::infinity();
constexpr double notANumber = std::numeric_limits<double>::quiet_NaN();

} // namespace

PushedBridle::OfTwo::OfTwo(const BridleLeg& one, const BridleLeg& two) : own(one.length), other(two.length) {
  const Eigen::Vector3d between = parts::vector(two.point) - parts::vector(one.point);
  apart = between.norm();
  foot = (apart * apart + own * own - other * other) / (2.0 * apart);
  depth = std::sqrt(std::max(0.0, (own - foot) * (own + foot)));
  level = std::hypot(between.x(), between.y()) / apart;
  rise = between.z() / apart;
  if (parts::isFlat(depth, apart) || parts::isFlat(level)) {
    throw Error(Trouble::notPossible, "two legs that come to lie in one line hold no load");
  }
}

bool PushedBridle::OfTwo::beyond(SidewaysLoad load) const {
  return !(load.side * std::abs(rise) < level * load.down);
}

// Where the other leg is slack (x beyond R · foot ÷ own) it carries R alone; where it is slack itself,
// nothing: the formula gives just these at the two ends of the stretch in which both pull. More to the side
// makes R and the range of x greater, so the greatest is had at the whole of it. The formula is greatest
// where the load stands square to the other leg (k not below 0), else at an end.
double PushedBridle::OfTwo::most(SidewaysLoad load) const {
  if (beyond(load)) {
    return infinite;
  }
  const double all = std::hypot(load.side, load.down);
  const double otherSlack = all * foot / own;
  const double ownSlack = -all * (apart - foot) / other;
  const double k = (apart - foot) / depth;
  const double low = std::clamp(-load.side * level - load.down * rise, ownSlack, otherSlack);
  const double high = std::clamp(load.side * level - load.down * rise, ownSlack, otherSlack);
  const auto pull = [&](double x) {
    return own / apart * (k * std::sqrt(std::max(0.0, (all - x) * (all + x))) + x);
  };
  const double square = std::clamp(all / std::sqrt(1.0 + k * k), low, high);
  return std::max({0.0, pull(low), pull(high), k >= 0.0 ? pull(square) : 0.0});
}

// What lies across only tightens it while k is not below 0: so the least is had in the upright plane of the
// points, one way or the other. With k below 0 (the apex stands beyond the other point) it pulls as long as x
// is far enough from the lower end, where it is then slack first.
double PushedBridle::OfTwo::least(SidewaysLoad load) const {
  if (beyond(load)) {
    return -infinite;
  }
  const double k = (apart - foot) / depth;
  const auto pull = [&](double side) {
    return own / apart * (k * (side * rise + load.down * level) + side * level - load.down * rise);
  };
  return std::min(pull(load.side), pull(-load.side));
}

// The plane is turned off the upright by tan = H across ÷ what pulls square to the line; over all directions
// that is at most H ÷ √(c² V² − s² H²).
double PushedBridle::OfTwo::leastUpright(SidewaysLoad load) const {
  const double upright =
      std::sqrt((level * load.down - rise * load.side) * (level * load.down + rise * load.side));
  return upright / std::hypot(upright, load.side);
}

double PushedBridle::OfTwo::flattestDeg(SidewaysLoad load) const {
  if (beyond(load)) {
    return -90.0;
  }
  const double fall = (depth * level * leastUpright(load) - foot * rise) / own;
  return toDegrees(arcsine(fall));
}

// Pull × fall ÷ length, written out: (k F + x)(d c cos − f s) ÷ apart, with F = √(R² − x²) across the line
// and F cos = (x s + V) ÷ c, what of it is upright. For each x: where F raises it, it is taken at its
// greatest, else at its least, which is what is upright; x cos at x or, below 0, at x times the least cosine.
// With the points at one height (s = 0) one direction has all of these. What is left is greatest at an end,
// at 0 or where its slope is 0.
double PushedBridle::OfTwo::down(SidewaysLoad load) const {
  if (beyond(load)) {
    return infinite;
  }
  const double all = std::hypot(load.side, load.down);
  const double low = -load.side * level - load.down * rise;
  const double high = load.side * level - load.down * rise;
  const double byAcross = -(apart - foot) / depth * foot * rise;
  const double upright = leastUpright(load);
  double most = -infinite;
  const auto piece = [&](double from, double to, double cosine) {
    if (from > to) {
      return;
    }
    const double slope = -foot * rise + (apart - foot) * rise + depth * level * cosine;
    const auto at = [&](double x) {
      const double across =
          byAcross > 0.0 ? std::sqrt(std::max(0.0, (all - x) * (all + x))) : (x * rise + load.down) / level;
      return byAcross * across + slope * x + (apart - foot) * load.down;
    };
    const double flat =
        byAcross > 0.0 ? std::clamp(all * slope / std::hypot(byAcross, slope), from, to) : from;
    most = std::max({most, at(from), at(to), at(flat)});
  };
  piece(low, std::min(high, 0.0), upright);
  piece(std::max(low, 0.0), high, 1.0);
  return most / apart;
}

PushedBridle::PushedBridle(std::span<const BridleLeg> legs) {
  if (legs.size() < 2) {
    throw Error(Trouble::badInput, "expected 2 to 3 points", "legs");
  }
  const Bridle plumb = settleBridle(legs, {0.0, 0.0, -1.0});
  for (std::size_t i = 0; i < legs.size(); ++i) {
    slack_.at(i) = plumb.legs[i].slack;
    twos_.emplace_back();
    for (std::size_t j = 0; j < legs.size(); ++j) {
      if (j != i) {
        twos_.back().emplace_back(legs[i], legs[j]);
      }
    }
  }
  if (legs.size() < 3 || std::ranges::any_of(slack_, std::identity{})) {
    return;
  }
  Eigen::Matrix3d ways;
  for (Eigen::Index i = 0; i < 3; ++i) {
    ways.col(i) =
        (parts::vector(legs[static_cast<std::size_t>(i)].point) - parts::vector(plumb.apex)).normalized();
  }
  const Eigen::Matrix3d pulls = ways.inverse(); // all pull, so they do not lie in one plane
  for (Eigen::Index i = 0; i < 3; ++i) {
    three_.at(static_cast<std::size_t>(i)) = {pulls(i, 2), std::hypot(pulls(i, 0), pulls(i, 1)),
                                              plumb.legs[static_cast<std::size_t>(i)].fromHorizontalDeg};
  }
}

PushedLeg PushedBridle::leg(std::size_t which, SidewaysLoad load) const {
  if (std::isnan(load.down + load.side)) {
    return {notANumber, notANumber, notANumber, notANumber};
  }
  if (std::isinf(load.side)) {
    return {infinite, -infinite, infinite, -90.0};
  }
  if (twos_.size() == 2) {
    const OfTwo& two = twos_[which].front();
    return {two.most(load), two.least(load), two.down(load), two.flattestDeg(load)};
  }
  if (std::ranges::any_of(slack_, std::identity{})) {
    return {notANumber, slack_.at(which) ? 0.0 : notANumber, notANumber, notANumber};
  }
  const OfThree& three = three_.at(which);
  const double most = load.down * three.down + load.side * three.side;
  return {most, load.down * three.down - load.side * three.side,
          most * std::sin(toRadians(three.fromHorizontalDeg)), three.fromHorizontalDeg};
}

double PushedBridle::worstOfTwo(std::size_t which, SidewaysLoad load) const {
  if (std::isnan(load.down + load.side) || std::isinf(load.side)) {
    return std::isinf(load.side) ? infinite : notANumber;
  }
  double worst = 0.0;
  for (const OfTwo& two : twos_[which]) {
    worst = std::max(worst, two.most(load));
  }
  return worst;
}

} // namespace hangbook::hang
