// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/wind_force.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "hang/build_moment.h"
#include "hang/vec2.h"
#include "options/placement.h"
#include "options/rig_fold.h"
#include "options/wind_joints.h"

namespace hangbook::options {
namespace {

/// Normals that differ by less than this (the sine of the angle) are taken as one.
constexpr double sameNormal = 1e-12;

/// Area of a polygon, m².
double areaOf(const std::vector<catalogue::Position>& outline) {
  double twice = 0.0;
  for (std::size_t i = 0; i < outline.size(); ++i) {
    const catalogue::Position& a = outline[i];
    const catalogue::Position& b = outline[(i + 1) % outline.size()];
    twice += inMetres(a.x) * inMetres(b.z) - inMetres(b.x) * inMetres(a.z);
  }
  return 0.5 * std::abs(twice);
}

double heightOf(const std::vector<catalogue::Position>& outline) {
  const auto [low, high] = std::ranges::minmax_element(outline, {}, &catalogue::Position::z);
  return inMetres(high->z) - inMetres(low->z);
}

double depthOf(const std::vector<catalogue::Position>& outline) {
  const auto [back, front] = std::ranges::minmax_element(outline, {}, &catalogue::Position::x);
  return inMetres(front->x) - inMetres(back->x);
}

/// The most that an area inside an outline comes to where each coordinate of its corners may be `off`: the
/// outline moved out by a square of that half side; a rectangle likewise.
double areaWithin(const std::vector<catalogue::Position>& outline, double off) {
  double around = 0.0;
  for (std::size_t i = 0; i < outline.size(); ++i) {
    const catalogue::Position& a = outline[i];
    const catalogue::Position& b = outline[(i + 1) % outline.size()];
    around += std::abs(inMetres(a.x) - inMetres(b.x)) + std::abs(inMetres(a.z) - inMetres(b.z));
  }
  return areaOf(outline) + off * around + 4.0 * off * off;
}
double areaWithin(double one, double other, double off) {
  return (one + 2.0 * off) * (other + 2.0 * off);
}

Plan levelOf(const hang::Vec3& way) {
  return {way.x, way.y};
}

/// A pair of faces whose normal is `normal`, as far as that is level.
WindFace faceOf(Plan normal, double area, double coefficient, double below) {
  return {hang::toDegrees(std::atan2(normal.y, normal.x)),
          area * coefficient * std::hypot(normal.x, normal.y), below};
}

/// A box with these ways, as far as they are level, and areas.
struct Body {
  Plan forward;
  Plan left;
  Plan up;
  double front = 0.0;
  double side = 0.0;
  double top = 0.0;
  double coefficient = 0.0;
  double below = 0.0;
};

BodyFaces addBody(WindForce& wind, const Body& body) {
  const BodyFaces faces{faceOf(body.forward, body.front, body.coefficient, body.below),
                        faceOf(body.left, body.side, body.coefficient, body.below),
                        faceOf(body.up, body.top, body.coefficient, body.below)};
  std::for_each(faces.begin(), faces.end(), [&wind](const WindFace& face) { wind.add(face); });
  return faces;
}

/// Of the way square to both, as far as it is level.
Plan levelCross(const hang::Vec3& a, const hang::Vec3& b) {
  return {a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z};
}

double cosine(double deg) {
  return std::cos(hang::toRadians(deg));
}

} // namespace

double gustPressure(double metresPerSecond) {
  return 0.5 * airDensity * metresPerSecond * metresPerSecond;
}

void WindForce::add(const WindFace& face) {
  if (!(face.push > 0.0)) {
    return;
  }
  greatest_.reset();
  along_.reset();
  const Pair pair{cosine(face.towardsDeg), cosine(face.towardsDeg - 90.0), face.push, face.push * face.below};
  for (Pair& each : pairs_) {
    if (std::abs(each.x * pair.y - each.y * pair.x) < sameNormal) {
      each.push += pair.push;
      each.moment += pair.moment;
      return;
    }
  }
  pairs_.push_back(pair);
}

double WindForce::forceFrom(double deg) const {
  const hang::Turn way = hang::turnBy(hang::toRadians(deg));
  double sum = 0.0;
  for (const Pair& pair : pairs_) {
    sum += pair.push * std::abs(pair.x * way.cosine + pair.y * way.sine);
  }
  return sum;
}

double WindForce::momentFrom(double deg) const {
  const hang::Turn way = hang::turnBy(hang::toRadians(deg));
  double sum = 0.0;
  for (const Pair& pair : pairs_) {
    sum += pair.moment * std::abs(pair.x * way.cosine + pair.y * way.sine);
  }
  return sum;
}

std::vector<WindForce::Stretch> WindForce::stretches() const {
  std::vector<Stretch> all;
  for (const Pair& pair : pairs_) {
    const double edge = hang::toDegrees(std::atan2(pair.x, -pair.y));
    all.push_back({.fromDeg = edge < 0.0 ? edge + 180.0 : edge});
  }
  std::ranges::sort(all, {}, &Stretch::fromDeg);
  for (std::size_t i = 0; i < all.size(); ++i) {
    const double to = i + 1 < all.size() ? all[i + 1].fromDeg : all.front().fromDeg + 180.0;
    const hang::Turn middle = hang::turnBy(hang::toRadians(0.5 * (all[i].fromDeg + to)));
    for (const Pair& pair : pairs_) {
      const double sign = std::copysign(1.0, pair.x * middle.cosine + pair.y * middle.sine);
      all[i].forceX += sign * pair.push * pair.x;
      all[i].forceY += sign * pair.push * pair.y;
      all[i].momentX += sign * pair.moment * pair.x;
      all[i].momentY += sign * pair.moment * pair.y;
    }
  }
  return all;
}

// In each stretch the sum is |V| cos(θ − angle of V). No |V| is beyond the sum's own value in V's direction,
// so the greatest |V| of all stretches is the greatest force.
FromDirection WindForce::greatest() const {
  FromDirection most;
  for (const Stretch& each : stretches()) {
    const double size = std::hypot(each.forceX, each.forceY);
    if (hang::isMore(size, most.value)) { // of two alike the first, whatever rounding makes of them
      most = {size, hang::toDegrees(std::atan2(each.forceY, each.forceX))};
    }
  }
  return most;
}

// In each stretch it is |V| cos(θ − v) cos(θ − a) = |V| ½ (cos(2θ − v − a) + cos(v − a)), greatest or least
// at θ = (v + a)/2 and a quarter turn on, else at an end. All of these are tried for every stretch: none
// gives more than there is.
FromDirection WindForce::momentAlong(double alongDeg) const {
  const auto at = [&](double deg) { return std::abs(momentFrom(deg) * cosine(deg - alongDeg)); };
  FromDirection most{at(alongDeg), alongDeg};
  for (const Stretch& each : stretches()) {
    const double half = 0.5 * (hang::toDegrees(std::atan2(each.momentY, each.momentX)) + alongDeg);
    for (const double deg : {each.fromDeg, half, half + 90.0}) {
      const double there = at(deg);
      if (there > most.value) {
        most = {there, deg};
      }
    }
  }
  return most;
}

// Σ mₖ |nₖ · d| (d · a) over all directions d, with no mₖ below 0. For every choice of signs V = Σ ± mₖ nₖ
// has |V · d| ≤ Σ mₖ |nₖ · d|, with equality for the signs that d itself gives; and |V · d| |d · a| is at
// most ½ (|V| + |V · a|), midway between V and a. So the greatest of these over the signs that a turning d
// gives is the greatest there is. Signs change one at a time as d goes past the normals in their order.
hang::SidePush WindForce::greatestBelow(double above, hang::Vec2 forward) const {
  std::vector<Pair> sorted = pairs_;
  for (Pair& pair : sorted) {
    pair.moment -= above * pair.push;
    if (pair.y < 0.0) {
      pair.x = -pair.x;
      pair.y = -pair.y;
    }
  }
  std::sort(sorted.begin(), sorted.end(),
            [](const Pair& one, const Pair& other) { return one.x * other.y - one.y * other.x > 0.0; });
  // Of the force, and of what turns one way and the other: never more together than the greater of the two.
  std::array<hang::Vec2, 3> sums{};
  const auto add = [&sums](const Pair& pair, double times) {
    const hang::Vec2 normal{times * pair.x, times * pair.y};
    sums[0] = sums[0] + pair.push * normal;
    sums[1] = sums[1] + std::max(0.0, pair.moment) * normal;
    sums[2] = sums[2] + std::max(0.0, -pair.moment) * normal;
  };
  std::for_each(sorted.begin(), sorted.end(), [&add](const Pair& pair) { add(pair, -1.0); });
  hang::SidePush most;
  const hang::Vec2 left = hang::quarterTurn(forward);
  for (const Pair& pair : sorted) {
    add(pair, 2.0);
    const auto along = [&sums](std::size_t which, hang::Vec2 way) {
      return 0.5 * (hang::length(sums.at(which)) + std::abs(hang::dot(sums.at(which), way)));
    };
    most = hang::worseOf(most, {along(0, forward), std::max(along(1, forward), along(2, forward)),
                                along(0, left), std::max(along(1, left), along(2, left))});
  }
  return most;
}

FromDirection WindForce::greatestForce() const {
  if (!greatest_) {
    greatest_ = greatest();
  }
  return *greatest_;
}

FromDirection WindForce::greatestMomentAlong(double alongDeg) const {
  if (!along_ || along_->first != alongDeg) {
    along_ = {alongDeg, momentAlong(alongDeg)};
  }
  return along_->second;
}

namespace {

WindForce forceOn(const Case& option, const Settled& settled) {
  WindForce wind;
  const hang::Layout& layout = settled.layout;
  double picks = 0.0;
  for (const hang::Vec3& pick : layout.picks) {
    picks += pick.z / static_cast<double>(layout.picks.size());
  }
  std::vector<BodyFaces> bodies(option.cabinets.size());
  for (std::size_t i = 0; i < option.cabinets.size(); ++i) {
    const catalogue::CabinetType& cabinet = *option.cabinets[i];
    if (!cabinet.faceArea || !cabinet.forceCoefficient || cabinet.outline.size() < 3 || !cabinet.width) {
      wind.missing.append(
          QStringLiteral("face area, outline, width or force coefficient of %1").arg(cabinet.name));
      continue;
    }
    const hang::PlacedElement& placed = layout.elements[i];
    const double off = settled.doubt == nullptr ? 0.0 : settled.doubt->figures.stack[i].place;
    const double width = inMetres(*cabinet.width);
    const double height = heightOf(cabinet.outline);
    // The maker's own face area grows as that of the box around it does.
    const double front = *cabinet.faceArea + areaWithin(height, width, off) - height * width;
    double middle = 0.0;
    for (const hang::Vec3& corner : placed.outline) {
      middle += corner.z / static_cast<double>(placed.outline.size());
    }
    bodies[i] = addBody(
        wind, {levelOf(placed.forward), levelOf(layout.left), levelCross(placed.forward, layout.left), front,
               areaWithin(cabinet.outline, off), areaWithin(depthOf(cabinet.outline), width, off),
               *cabinet.forceCoefficient, picks - middle});
  }
  wind.below = pushesBelow(option, settled, bodies, picks);
  const catalogue::BarType& bar = *option.bar;
  const double coefficient = option.weight->windFace.value;
  if (bar.outline.size() < 3 || !bar.width || std::isnan(coefficient)) {
    wind.missing.append(
        QStringLiteral("outline or width of %1, or the house's force coefficient for it").arg(bar.name));
  } else {
    const double width = inMetres(*bar.width);
    const double off = settled.doubt == nullptr ? 0.0 : settled.doubt->figures.frame.place;
    addBody(wind, {levelOf(layout.forward), levelOf(layout.left), levelOf(layout.up),
                   areaWithin(heightOf(bar.outline), width, off), areaWithin(bar.outline, off),
                   areaWithin(depthOf(bar.outline), width, off), coefficient, picks - layout.frameCg.z});
  }
  wind.missing.removeDuplicates();
  return wind;
}

} // namespace

const WindForce& windForce(const Case& option, const Settled& settled, std::optional<WindForce>& here) {
  auto* kept = option.fold == nullptr ? nullptr : option.fold->wind(settled);
  kept = kept == nullptr ? &here : kept;
  if (!*kept) {
    *kept = forceOn(option, settled);
  }
  return **kept;
}

WindForce windForce(const Case& option, const Settled& settled) {
  return forceOn(option, settled);
}

} // namespace hangbook::options
