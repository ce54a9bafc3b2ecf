// SPDX-License-Identifier: GPL-3.0-or-later
#include "hang/doubt_place.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "hang/assembly.h"
#include "hang/chain.h"
#include "quantity/quantity.h"

namespace hangbook::hang {
namespace {

Vec2 middleOf(const Span2& place) {
  return {0.5 * (place.x.low + place.x.high), 0.5 * (place.z.low + place.z.high)};
}

/// Σ mass × (place − about): each mass counts where it hurts, with its whole arm.
Span firstMoment(Span mass, Span place, double about) {
  return mass * (place - Span(about));
}

/// Mean of the places by masses. The mean of the middles is the reference, so that what is alike drops out.
Span meanPlace(const std::vector<std::pair<Span, Span>>& parts, Span mass) {
  double sum = 0.0;
  double all = 0.0;
  for (const auto& [each, place] : parts) {
    const double middle = each.low + each.high; // twice the mass, in both sums
    all += middle;
    sum += middle * 0.5 * (place.low + place.high);
  }
  if (!(all > 0.0)) {
    return parts.front().second;
  }
  const double about = sum / all;
  Span moments;
  for (const auto& [each, place] : parts) {
    moments += firstMoment(each, place, about);
  }
  return Span(about) + moments / mass;
}

} // namespace

Span2 turned(Vec2 place, double eachWay, const SpanTurn& turn) {
  if (turn.exact()) {
    const double most = eachWay * (std::abs(turn.from.cosine) + std::abs(turn.from.sine));
    return Span2::around(turn.from(place), most);
  }
  return turn(place) + Span2::around({}, eachWay * std::numbers::sqrt2); // |cos| + |sin| is never more
}

Span2 turned(const Span2& place, const SpanTurn& turn) {
  const Span2 box{Span::around(0.0, 0.5 * place.x.width()), Span::around(0.0, 0.5 * place.z.width())};
  return turned(middleOf(place), 0.0, turn) + turn(box);
}

Span massOf(double stated, const PieceDoubt& doubt) {
  return {std::max(0.0, stated - doubt.lighter), stated + doubt.heavier};
}

std::vector<Span> jointSpans(const std::vector<Element>& stack, bool open, Span pivotDeg) {
  std::vector<Span> spans;
  spans.reserve(stack.size());
  for (const Element& element : stack) {
    const double fixed = fixedAngleDeg(element.joint);
    const auto* seated = std::get_if<Seated>(&element.joint);
    if (std::holds_alternative<Pivot>(element.joint)) {
      spans.push_back(pivotDeg);
    } else {
      spans.emplace_back(fixed, seated != nullptr && open ? fixed + seated->openToDeg : fixed);
    }
  }
  return spans;
}

std::vector<PlacedSpan> placeWithin(const Hang& hang, const Doubts& doubts,
                                    const std::vector<Span>& jointDeg) {
  std::vector<PlacedSpan> placed(hang.stack.size());
  Span2 pin = Span2::around(hang.bar.stackPin, doubts.frame.place);
  Span turn;
  for (std::size_t i = 0; i < placed.size(); ++i) {
    const Element& element = hang.stack[i];
    const PieceDoubt& doubt = doubts.stack[i];
    turn += inRadians(jointDeg[i]);
    PlacedSpan& each = placed[i];
    each.mass = massOf(element.mass, doubt);
    each.jointDeg = jointDeg[i];
    each.turnRad = turn;
    each.turn = turnBy(turn);
    each.pin = pin;
    each.centre = turned(element.cg, doubt.centre, each.turn);
    if (element.nextPin) {
      each.next = turned(*element.nextPin, doubt.place, each.turn);
      pin = pin + each.next;
    }
  }
  return placed;
}

Span chainSpan(const Hang& hang, const Doubts& doubts) {
  const Chain& chain = *hang.chain;
  return {chain.fixed + chain.mark * (chain.pitch - doubts.linkShorter),
          chain.fixed + chain.mark * (chain.pitch + doubts.linkLonger)};
}

double anchorToEyeDoubt(const Hang& hang, const Doubts& doubts) {
  // Anchor and stack pin are places of the frame; then a lower pin of each element above, and the eye.
  double each = 2.0 * doubts.frame.place;
  for (int i = 0; i < hang.chain->held; ++i) {
    each += doubts.stack[static_cast<std::size_t>(i)].place;
  }
  return std::numbers::sqrt2 * each;
}

namespace {

/// What openings above a pivot do to it: how far they move its pin against the anchor, m, and turn what it
/// hangs from, degrees.
struct OpeningsAbove {
  double moves = 0.0;
  double turnsDeg = 0.0;
};
OpeningsAbove openingsAbove(const Hang& hang) {
  OpeningsAbove above;
  double below = 0.0; // along the pins, down to the pivot's
  for (auto i = static_cast<std::size_t>(hang.chain->held) - 1; i-- > 0;) {
    below += length(hang.stack[i].nextPin.value_or(Vec2{}));
    if (const auto* seated = std::get_if<Seated>(&hang.stack[i].joint)) {
      above.moves += toRadians(seated->openToDeg) * below;
      above.turnsDeg += seated->openToDeg;
    }
  }
  return above;
}

} // namespace

Span pivotSpan(const Hang& hang, const Doubts& doubts, bool open) {
  constexpr double beyond = 15.0; // degrees: it may come out beyond its travel; the rules say so
  PivotTriangle triangle = pivotTriangle(hang.bar, hang.stack, hang.chain->held);
  const PivotAngles stated = anglesAt(triangle, chainLength(*hang.chain));
  const OpeningsAbove above = open ? openingsAbove(hang) : OpeningsAbove{};
  const double off = anchorToEyeDoubt(hang, doubts) + above.moves;
  const Span reach = chainSpan(hang, doubts) + Span::around(0.0, off);
  triangle.travelDeg = {triangle.travelDeg.low - beyond, triangle.travelDeg.high + beyond};
  const PivotAngles shortest = anglesAt(triangle, reach.low);
  const PivotAngles longest = anglesAt(triangle, reach.high);
  if (stated.count != 1 || shortest.count == 0 || longest.count == 0) {
    return Span::unbounded();
  }
  // Of two branches the one that the stated length is on: on a branch the angle only grows, or only shrinks.
  // They mirror each other at the straight line, and the stated length's place on the other one is beyond the
  // travel: what is reached there lies further from it than on its own, so the nearest is on its own.
  const auto awayTo = [&](double deg) { return std::remainder(deg - stated.deg[0], 360.0); };
  const auto nearest = [&](const PivotAngles& angles) {
    return stated.deg[0] +
           std::ranges::min(std::array{awayTo(angles.deg[0]), awayTo(angles.deg[angles.count - 1])}, {},
                            [](double away) { return std::abs(away); });
  };
  const double one = nearest(shortest);
  const double other = nearest(longest);
  return {std::min(one, other) - above.turnsDeg, std::max(one, other)};
}

HangingSpan hangingSpan(const Hang& hang, const Doubts& doubts, const std::vector<PlacedSpan>& placed,
                        std::size_t cabinets) {
  const Span frame = massOf(hang.bar.frameMass, doubts.frame);
  const Span2 centre = Span2::around(hang.bar.frameCg, doubts.frame.centre);
  std::vector<std::pair<Span, Span>> ahead{{frame, centre.x}};
  std::vector<std::pair<Span, Span>> above{{frame, centre.z}};
  HangingSpan hanging{frame, {}};
  for (std::size_t i = 0; i < cabinets; ++i) {
    const Span2 place = placed[i].pin + placed[i].centre;
    ahead.emplace_back(placed[i].mass, place.x);
    above.emplace_back(placed[i].mass, place.z);
    hanging.mass += placed[i].mass;
  }
  hanging.centre = {meanPlace(ahead, hanging.mass), meanPlace(above, hanging.mass)};
  return hanging;
}

Span momentSpan(const std::vector<PlacedSpan>& placed, std::size_t joint, std::size_t cabinets,
                const Span2& up, const Span2& from, const ByChain& chain) {
  const auto lever = [&up](const Span2& way) { return way.x * up.z - way.z * up.x; };
  Span pin = -lever(from);
  Span pivot;
  Span sum;
  for (std::size_t i = joint; i < cabinets; ++i) {
    const Span own = lever(placed[i].centre);
    const Span next = lever(placed[i].next);
    Span arm = pin + own;
    if (i >= chain.pivot) {
      arm += chain.part * (pivot + own);
      pivot += next;
    }
    sum += placed[i].mass * arm;
    pin += next;
  }
  return Span(-standardGravity) * sum;
}

Span2 forceSpan(const std::vector<PlacedSpan>& placed, std::size_t joint, const Span2& up, std::size_t pivot,
                const Span2& pullPerMoment) {
  const auto lever = [&up](const Span2& way) { return way.x * up.z - way.z * up.x; };
  Span below;
  Span2 sum;
  for (std::size_t i = joint; i < placed.size(); ++i) {
    Span2 each = -Span(1.0) * up;
    if (i >= pivot) {
      each = each - (below + lever(placed[i].centre)) * pullPerMoment;
      below += lever(placed[i].next);
    }
    sum = sum + placed[i].mass * each;
  }
  return Span(standardGravity) * sum;
}

Span weightSpan(const std::vector<PlacedSpan>& placed, std::size_t joint) {
  Span mass;
  for (std::size_t i = joint; i < placed.size(); ++i) {
    mass += placed[i].mass;
  }
  return Span(standardGravity) * mass;
}

} // namespace hangbook::hang
