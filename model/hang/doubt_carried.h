// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "hang/carried.h"
#include "hang/doubt_joints.h"

/// What chain and joints carry on the way to a set hang, at the unfavourable end of every figure in doubt.
namespace hangbook::hang {

/// One hang at one mark. Each step before aiming is bounded as a hang of its own, a pivot without its chain
/// anywhere in its travel. For aiming, the lowest and the highest way up that any corner can have is bounded,
/// and all between as `alongArc` says: both ends hold every corner, and its two factors are those of the way,
/// not of a figure.
class CarriedWithin {
public:
  /// Both must outlive it. Of `hang` the setting alone may change from one call to the next.
  CarriedWithin(const Hang& hang, const Doubts& doubts) : hang_(hang), doubts_(doubts) {}

  /// `whole`: of the same hang. `stated`: as found without doubts, which the worst never falls below.
  CarriedWorst worst(HangShapes& whole, const Statics& nominal, const BuildWorst& stated, Span actuatorDeg);

private:
  void steps(const Statics& nominal, const BuildWorst& stated);
  std::optional<CarriedMost> stepAt(BuildMoment moment, const Statics& nominal, const BuildWorst& stated);
  /// Where the pivot may stand at a step, degrees, in parts; {0} where it does not swing.
  std::vector<Span> swungSpans(BuildMoment moment) const;
  std::vector<UpSpan> waysUp(const Shape& shape, bool closed, const Statics& nominal,
                             const BuildWorst& stated, Span actuatorDeg) const;

  const Hang& hang_;
  const Doubts& doubts_;
  std::optional<CarriedWorst> steps_;
  std::optional<Hang> atRest_; ///< the whole hang, panned as it is assembled
};

} // namespace hangbook::hang
