// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>

#include "hang/balance.h"
#include "hang/doubt_place.h"

/// How a hang within its doubts turns, and what its picks carry.
namespace hangbook::hang {

/// Direction of a place as an angle, radians; unbounded where it may be the origin.
Span directionOf(const Span2& place);

struct PickSpans {
  std::array<Span, 2> load;  ///< N
  std::array<Span, 2> share; ///< of what hangs then
};

/// At these angles (a side-pair's pan and actuator, or a fore-aft-pair's tilt), degrees.
PickSpans picksWithin(const Hang& hang, const Doubts& doubts, const HangingSpan& hanging, Span panDeg,
                      Span actuatorDeg, Span tiltDeg);

/// Every angle of the actuator that may be needed for a tilt of the frame, degrees, near `about`, which gives
/// it with the figures as stated. Interval Newton: where the step from the middle lies inside the span that
/// it started from, each corner has exactly one there. Unbounded where it does not.
Span actuatorWithin(const Hang& hang, const Doubts& doubts, const HangingSpan& hanging, double tiltDeg,
                    double panDeg, double about);

/// World up in frame axes, how far the frame's left points up, and the head's swing in degrees.
struct UpSpan {
  Span2 up;
  Span left;
  Span swingDeg;
  Span tiltDeg;
};
/// `closed`: no joint opens, so that a side-pair's frame has the tilt that it was set to.
UpSpan upWithin(const Hang& hang, const Doubts& doubts, const HangingSpan& hanging, const Statics& nominal,
                Span actuatorDeg, bool closed);

/// What the picks may carry at one step before aiming.
struct StepWithin {
  BuildMoment moment;
  bool freely{}; ///< a joint may open whose stop nobody stated: the rest is not known
  PickSpans picks;
  double weight{}; ///< N, that hangs then, halfway between its lightest and heaviest
};

/// The steps before aiming, a held pivot at `pivotDeg`. Of `stated` the pan and actuator at rest count.
std::vector<StepWithin> stepsWithin(const Hang& hang, const Doubts& doubts, const BuildWorst& stated,
                                    Span pivotDeg);

/// What an assembled hang's shape has within its doubts, whatever tilt it is set to.
struct HangingShape {
  const std::vector<PlacedSpan>& placed;
  const HangingSpan& hanging;
  const HangingSpan& opened; ///< with every joint that may open anywhere up to its stop
  const std::vector<StepWithin>& steps;
};

/// The worst of the build, of aiming and of the hang as set. `told`: the steps as stated, whose loads become
/// the worst of each.
BuildWorst buildWithin(const Hang& hang, const Doubts& doubts, const Statics& nominal,
                       const BuildWorst& stated, const PickSpans& asSet, const HangingShape& shape,
                       Span actuatorDeg, std::vector<BuildStep>* told = nullptr);

} // namespace hangbook::hang
