// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <memory>
#include <optional>
#include <vector>

#include "hang/build_loads.h"
#include "hang/hang.h"
#include "hang/span.h"
#include "hang/statics.h"

/// What the figures of a hang may be off by, and what that does to its loads.
namespace hangbook::hang {

/// Of one element, of the bar's frame, or of its head.
struct PieceDoubt {
  double lighter{}; ///< kg, at most so much less than stated
  double heavier{}; ///< kg, at most so much more
  double centre{};  ///< m, each coordinate of the centre of gravity, either way
  double place{};   ///< m, each coordinate of every other place (pins, contact, eye, outline), either way
};

struct Doubts {
  PieceDoubt head;  ///< side-pair only; `place` also of the pick spacing
  PieceDoubt frame; ///< `place` also of picks and anchor
  std::vector<PieceDoubt> stack;
  double linkShorter{}; ///< m, of one link of the chain: made to a tolerance
  double linkLonger{};  ///< m, tolerance and wear: a worn chain only gets longer

  /// Every figure is as stated.
  bool none() const;
  /// No figure is NaN, which stands for one that is not known.
  bool known() const;
};

/// A hang that no real one within the doubts is worse than. Loads are upper bounds, but for contacts, the
/// least pick share and the pivot's tension, which are lower ones: each figure on the side that hurts,
/// whether or not all of them can be so at once.
///
/// By interval arithmetic over the closed forms of the statics: each mass enters once, with its whole arm, so
/// that bounds are met wherever the corner that gives them is one corner; how far they can be beyond is held
/// down by tests over all corners. The tilt of a pair is what the crew sets by an inclinometer, so it is not
/// in doubt: the actuator (by interval Newton) and the hoists' heights are. Where a doubtful joint may stand
/// open, it is taken anywhere between shut and its stop. A pivot stands anywhere between the angles that the
/// shortest and the longest chain give.
struct Unfavourable {
  Statics statics;  ///< `mass`, pick loads, chain and joints at their unfavourable end; the rest nominal
  BuildWorst build; ///< the same
  Span actuatorDeg; ///< side-pair
  Span swingDeg;    ///< of a side-pair's head
  Span tiltDeg;     ///< of the frame: one figure, but for a single pick
  std::vector<Span> jointDeg; ///< its angle, the opening included
  std::vector<Span> aimDeg;
  /// How far the height of any outline corner below the picks is off, either way, m.
  double height{};
  double leastMass{};                ///< kg, all of it at its lightest
  std::array<double, 2> leastPick{}; ///< N, as set
  double centreOff{}; ///< m, by which the centre of all that hangs may be off in the plane of the hang
  double lever = 1.0; ///< factor on what a height below the picks ÷ their spacing may at most come to
  /// The chain may be too short to reach its eye at this mark.
  bool chainMayNotReach{};
  /// Nothing is bounded: a pivot may leave its travel or its chain go slack, no shape follows for some
  /// corner, or it hinges on an opening that nobody stated. Angles are then empty, or tell that pivot's.
  bool bounded = true;
};

/// One hang at one mark of its chain within its doubts: what no setting changes is worked out once, when it
/// is first asked for.
class Doubting {
public:
  /// Both must outlive it. Of `hang` the setting alone may change from one call to the next.
  Doubting(const Hang& hang, const Doubts& doubts);
  ~Doubting();
  Doubting(const Doubting&) = delete;
  Doubting& operator=(const Doubting&) = delete;

  /// `nominal` and `build` must be what was found for the hang as it settles in its setting. An opening of
  /// 90° or more counts as not stated. Never throws for a hang that has been solved.
  Unfavourable at(const Statics& nominal, const BuildWorst& build);

  /// Each step of the build at its unfavourable end: the most and the least that a pick may carry, and the
  /// mass as stated; NaN where it is not known. Empty where nothing is bounded. `stated`: of `buildSteps`.
  std::vector<BuildStep> steps(const Statics& nominal, const BuildWorst& build,
                               const std::vector<BuildStep>& stated);

private:
  Unfavourable found(const Statics& nominal, const BuildWorst& build, std::vector<BuildStep>* told);
  class Shapes;
  const Hang& hang_;
  const Doubts& doubts_;
  std::unique_ptr<Shapes> shapes_;
};

/// The same for one setting alone.
Unfavourable unfavourable(const Hang& hang, const Statics& nominal, const BuildWorst& build,
                          const Doubts& doubts);

} // namespace hangbook::hang
