// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cmath>
#include <limits>
#include <numbers>
#include <vector>

#include "hang/doubt.h"

/// A hang put together within its doubts, in frame coordinates.
namespace hangbook::hang {

/// One element. Masses in kg, places in m from its own pin along the frame's axes.
struct PlacedSpan {
  Span mass;
  Span jointDeg; ///< its joint's angle
  Span turnRad;  ///< its turn against the frame
  SpanTurn turn; ///< the same
  Span2 pin;     ///< from the frame's origin
  Span2 centre;
  Span2 next; ///< to the pin of the element below
};

/// A place given in a piece's own axes, each coordinate `eachWay` off at most, in axes turned by `turn`.
/// The turn enters once for each coordinate.
Span2 turned(Vec2 place, double eachWay, const SpanTurn& turn);
Span2 turned(const Span2& place, const SpanTurn& turn);

/// How far a direction may be turned, radians, that leads over `away` to a place which is up to `off` off
/// any way: from nothing to a right angle, or half a turn where it may come to lead any way at all.
inline double offTurn(double off, double away) {
  return off < away ? std::asin(off / away) : std::numbers::pi;
}

Span massOf(double stated, const PieceDoubt& doubt);

/// The angles of the joints, degrees: fixed ones as stated; seated ones, where `open`, anywhere up to their
/// stop; that of a pivot as `pivotDeg`.
std::vector<Span> jointSpans(const std::vector<Element>& stack, bool open, Span pivotDeg);

std::vector<PlacedSpan> placeWithin(const Hang& hang, const Doubts& doubts,
                                    const std::vector<Span>& jointDeg);

/// Where a held pivot may stand: the chain from its shortest to its longest, and anchor, pins and eye off
/// their places, which the chain's length makes up for; `open`: joints above it anywhere between shut and
/// their stop. Unbounded where it does not follow.
Span pivotSpan(const Hang& hang, const Doubts& doubts, bool open);

/// The chain's length, m.
Span chainSpan(const Hang& hang, const Doubts& doubts);

/// How far anchor and eye may be off against each other, besides the chain's own length, m.
double anchorToEyeDoubt(const Hang& hang, const Doubts& doubts);

/// The frame with its first `cabinets`: mass, and centre of gravity in frame coordinates.
struct HangingSpan {
  Span mass;
  Span2 centre;
};
HangingSpan hangingSpan(const Hang& hang, const Doubts& doubts, const std::vector<PlacedSpan>& placed,
                        std::size_t cabinets);

/// A chain that holds a pivot: its tension is what all below the pivot ask for, so that what it does at a
/// joint above is `part` of their moment about the pivot's pin.
struct ByChain {
  std::size_t pivot = std::numeric_limits<std::size_t>::max(); ///< its element; none: no chain counts
  Span part;
};

/// Moment of the weight of elements `joint` … `cabinets` − 1, and of a chain, about a point `from` that
/// joint's pin, N·m, nose up positive. `up`: world up in frame axes. Each mass enters once.
Span momentSpan(const std::vector<PlacedSpan>& placed, std::size_t joint, std::size_t cabinets,
                const Span2& up, const Span2& from = {}, const ByChain& chain = {});

/// Weight of all from `joint` down, and the pull of a chain that holds `pivot`: `pullPerMoment` × the gravity
/// moment about that pivot's pin. N, frame axes. Each mass enters once.
Span2 forceSpan(const std::vector<PlacedSpan>& placed, std::size_t joint, const Span2& up, std::size_t pivot,
                const Span2& pullPerMoment);

/// N, of elements `joint` and below.
Span weightSpan(const std::vector<PlacedSpan>& placed, std::size_t joint);

} // namespace hangbook::hang
