// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <vector>

#include "hang/assembly.h"
#include "hang/carried.h"
#include "hang/hang.h"
#include "hang/solve.h"
#include "hang/statics.h"

/// What the picks carry while a hang is built and aimed, not only when it hangs as set.
namespace hangbook::hang {

/// One step of the build. Loads in N, each at its own worst pose of that step, so that those of two picks
/// need not add up to the weight. Not known (NaN): the shape of that step does not follow from the figures.
struct BuildStep {
  BuildStage stage = BuildStage::stacked;
  int cabinets{}; ///< under the bar; 0: the bar alone
  double mass{};  ///< kg below the hooks
  std::array<double, 2> most{};
  std::array<double, 2> least{};
};

/// The worst of a whole build.
struct BuildWorst {
  std::array<double, 2> most{}; ///< N, at each pick
  std::array<BuildMoment, 2> mostAt{};
  double leastShare = 1.0; ///< of what hangs then, at the pick that has least; the bar alone is left out
  std::size_t leastPick{};
  double leastOther{}; ///< N, what that pick then has
  BuildMoment leastAt;
  double unlike{}; ///< greatest difference of two picks ÷ their mean; the bar alone is left out
  BuildMoment unlikeAt;
  /// A step whose loads are not known; the figures above are then those of the others. As long as nobody has
  /// worked it out, nothing is known.
  std::optional<BuildMoment> unknown = BuildMoment{};
  double restPanDeg{}; ///< of a side-pair, as assembled
  double restActuatorDeg{};
  double levelActuatorDeg{}; ///< where the whole hang is level; the same as at rest where it cannot be
  CarriedWorst carried;      ///< what chain and joints carry on the way
};

/// The build of one stack at one mark of its chain. Level is a tilt of 0. The chain goes on when the cabinet
/// that it holds hangs, or at any later step; until then a pivot is taken anywhere in its travel, since it is
/// swung by hand. A side-pair is assembled with actuator and pan at 0 (or at the end of their travel that is
/// nearest), a fore-aft-pair level; a single pick carries whatever hangs. Extremes are exact in closed form;
/// where a seated joint opens in a pose, the shape is settled for that pose, and `aiming` then looks at the
/// ends of the travel and `between` poses; one that opens though its stop is not stated (`openToDeg` 90 or
/// more) leaves the step not known. Bar and stack must outlive it. It keeps what it has worked out: one
/// thread at a time.
///
/// Chain and joints are followed through the same steps in the shape that each takes (`standing`). While a
/// rigid hang is aimed the weight turns in the frame's axes, from the lowest lean of its corner poses to the
/// highest: `alongArc` bounds all between. That no pose leans further than those corners is assumed, as the
/// swing falls steadily with the actuator for pans and tilts up to 30°; a test looks in between.
class BuildUp {
public:
  /// Of figures that `Solver` has accepted at this mark.
  BuildUp(const Bar& bar, const std::vector<Element>& stack, const std::optional<Chain>& chain);

  /// The steps before aiming, from the bar alone on.
  const std::vector<BuildStep>& steps() const { return steps_; }
  /// What the picks carry on the way to `set`, of which the statics are `atSet`.
  BuildStep aiming(const Setting& set, const Statics& atSet) const;
  /// The worst of all steps.
  BuildWorst worst(const Setting& set, const Statics& atSet) const;

  static constexpr int between = 6;

private:
  /// A way that the whole hang stands while it is aimed.
  struct Pose {
    double lean{};    ///< radians, of the weight against the frame's −z in the plane of the hang
    CarriedMost most; ///< as if the whole weight were in that plane
    bool rigid{};     ///< no joint open, a pivot held by its chain
  };
  Pose poseOf(const Setting& set) const;
  Pose poseOf(const Statics& statics) const;
  const std::vector<Pose>& atRest(double panDeg) const;
  void carrySteps();
  CarriedWorst carried(const Setting& set, const Statics& atSet) const;
  bool opensFreely(const Statics& statics) const;
  std::vector<Hang> posesOf(BuildStage stage, std::size_t cabinets) const;
  std::vector<Hang> onTheWay(const Setting& set, const Statics& atSet) const;
  bool swingsAt(BuildStage stage, std::size_t cabinets) const;
  std::vector<double> swungTo(const Assembly& assembly, std::size_t pivot) const;
  BuildStep stepOf(BuildStage stage, std::size_t cabinets) const;
  void closed(BuildStep& step, const Assembly& assembly, Range panDeg, Range actuatorDeg,
              Range tiltDeg) const;
  void poses(BuildStep& step, const std::vector<Hang>& hangs) const;

  const Bar* bar_;
  const std::vector<Element>* stack_;
  std::optional<Chain> chain_;
  Assembly whole_;    ///< all of it with its chain on, seated joints shut
  bool opens_{};      ///< some seated joint may open at all
  double panDeg_{};   ///< as assembled
  double restDeg_{};  ///< the actuator as assembled
  double levelDeg_{}; ///< the actuator where the whole hang is level
  std::vector<BuildStep> steps_;
  CarriedWorst carried_;         ///< by the end of `steps_`
  std::vector<Pose> home_;       ///< all of it as assembled, and level
  std::optional<Solver> solver_; ///< of all of it
  /// As `home_`, panned by as much as was last asked for.
  struct Panned {
    double panDeg{};
    std::vector<Pose> poses;
  };
  mutable std::optional<Panned> panned_;
};

/// All steps of one hang as set, the last of them `set` itself. `statics` must be what was solved for it.
/// Throws as `solve` does.
std::vector<BuildStep> buildSteps(const Hang& hang, const Statics& statics);

} // namespace hangbook::hang
