// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "hang/doubt_picks.h"

/// What the joints and the chain of a hang within its doubts carry.
namespace hangbook::hang {

/// An opening so far stands for one that nobody stated, degrees.
inline constexpr double freelyDeg = 90.0;

/// The chain's straight line within its doubts.
struct LineSpan {
  Span2 eye; ///< from the held element's pin, frame axes
  Span2 towardsAnchor;
};

/// A hang put together within its doubts, whatever its setting.
struct Shape {
  Span pivot; ///< degrees
  std::vector<PlacedSpan> placed;
  HangingSpan hanging;
  std::optional<LineSpan> line;
  std::vector<Span>
      closing; ///< of each joint above the chain's eye: moment of a chain's pull of 1 N, nose down
  std::optional<HangingSpan> opened;
  std::vector<StepWithin> steps;

  Shape(const Hang& hang, const Doubts& doubts, bool open, Span pivotDeg);

  /// A pivot's angle as the steps of the build take it.
  Span heldPivotDeg(const Hang& hang) const;
  HangingShape forBuild(const Hang& hang, const Doubts& doubts, const BuildWorst& stated);
};

/// Stands for an angle of which nothing is known.
inline constexpr Span anyAngle{-180.0, 180.0};

/// One hang at one mark, with its joints shut and open: each worked out when it is first asked for.
class HangShapes {
public:
  /// Both must outlive it. `swungDeg`: where a pivot without its chain may stand.
  HangShapes(const Hang& hang, const Doubts& doubts, Span swungDeg = {});

  bool known() const { return known_; }
  std::size_t held() const { return held_; }
  bool pivotHeld() const { return pivotHeld_; }

  /// Every joint shut.
  Span shutPivot();
  Shape& shut();
  /// Those that may open anywhere up to their stop.
  Span openPivot();
  Shape& open();

private:
  const Hang& hang_;
  const Doubts& doubts_;
  std::size_t held_;
  bool pivotHeld_;
  bool known_;
  Span swungDeg_;
  std::optional<Span> shutPivot_;
  std::optional<Shape> shut_;
  std::optional<Span> openPivot_;
  std::optional<Shape> open_;
};

/// A hang in one shape and one way up.
struct Within {
  const Hang& hang;
  const Doubts& doubts;
  const Statics& nominal;
  std::size_t held{};
  bool pivotHeld{};
  const Shape* shape = nullptr;
  UpSpan up;
  Span tension; ///< that the chain may have

  const std::vector<PlacedSpan>& placed() const { return shape->placed; }
  const std::optional<LineSpan>& line() const { return shape->line; }
  Span gravity(std::size_t joint) const { return momentSpan(placed(), joint, placed().size(), up.up); }
  Span closing(std::size_t joint) const { return shape->closing[joint]; }
  bool pulled(std::size_t joint) const { return joint < held; }

  /// With a pivot: what its balance asks. Else nothing up to the most that any joint could ask of it alone.
  Span findTension() const;
  /// What a chain that holds a pivot does about a point, `lever` from there to the eye.
  ByChain byPivot(std::size_t joint, const Span2& lever) const;
  /// Push at a seated joint's rear; below 0 it would have to pull. A chain counts where it holds a pivot.
  Span push(std::size_t joint) const;
  /// The chain may pull without a pivot: where nothing is sure to leave it slack. Only where there is a
  /// chain.
  bool mayBeTaut() const;
  bool surelyShut(std::size_t joint) const;
};

/// The worst of one joint: forces at their greatest, the contact at its least, its greatest at the other end.
JointStatics worstJoint(const Within& within, std::size_t joint, const JointStatics& nominal);

} // namespace hangbook::hang
