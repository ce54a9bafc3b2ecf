// SPDX-License-Identifier: GPL-3.0-or-later
#include "hang/build_loads.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "hang/balance.h"
#include "hang/chain.h"
#include "hang/settle.h"
#include "hang/solve.h"
#include "hang/span.h"
#include "quantity/error.h"
#include "quantity/quantity.h"

namespace hangbook::hang {
namespace {

constexpr double unknownLoad = std::numeric_limits<double>::quiet_NaN();

Range hull(double a, double b) {
  return {std::min(a, b), std::max(a, b)};
}
Range with(Range range, double value) {
  return {std::min(range.low, value), std::max(range.high, value)};
}

/// The tilts on the way from level; a bar that no hoist tilts has none.
Range fromLevel(const Setting& set) {
  return set.tiltDeg ? hull(0.0, *set.tiltDeg) : Range{};
}

/// The values that x cos t − z sin t takes over a range of t: the ends, and the crests between them.
Range turnedX(Vec2 point, Range deg) {
  const auto at = [&](double radians) { return turnBy(radians)(point).x; };
  const double low = toRadians(deg.low);
  const double high = toRadians(deg.high);
  Range range = hull(at(low), at(high));
  const double crest = std::atan2(-point.z, point.x);
  const auto first = std::lround(std::ceil((low - crest) / std::numbers::pi));
  const auto last = std::lround(std::floor((high - crest) / std::numbers::pi));
  for (auto half = first; half <= last; ++half) {
    range = with(range, std::cos(static_cast<double>(half) * std::numbers::pi) * length(point));
  }
  return range;
}

Range product(Range a, Range b) {
  return with(with(hull(a.low * b.low, a.low * b.high), a.high * b.low), a.high * b.high);
}

double nearestToZero(Range travel) {
  return std::clamp(0.0, std::min(travel.low, travel.high), std::max(travel.low, travel.high));
}

double headMass(const Bar& bar) {
  const auto* pair = std::get_if<SidePair>(&bar.picks);
  return pair == nullptr ? 0.0 : pair->headMass;
}

bool isPivot(const Element& element) {
  return std::holds_alternative<Pivot>(element.joint);
}

/// The joints of the first `cabinets` elements, a pivot at the angle that its chain gives, else at 0.
std::vector<double> anglesOf(const Bar& bar, const std::vector<Element>& stack, std::size_t cabinets,
                             const std::optional<Chain>& chain) {
  std::vector<double> deg;
  for (std::size_t i = 0; i < cabinets; ++i) {
    deg.push_back(fixedAngleDeg(stack[i].joint));
  }
  if (chain && static_cast<std::size_t>(chain->held) <= cabinets) {
    const auto held = static_cast<std::size_t>(chain->held) - 1;
    if (isPivot(stack[held])) {
      deg[held] = anglesAt(pivotTriangle(bar, stack, chain->held), chainLength(*chain)).deg[0];
    }
  }
  return deg;
}

Assembly assembled(const Bar& bar, const std::vector<Element>& stack, std::size_t cabinets,
                   const std::optional<Chain>& chain) {
  Assembly assembly;
  if (cabinets == 0) {
    assembly.mass = bar.frameMass;
    assembly.cg = bar.frameCg;
    return assembly;
  }
  const std::vector<Element> first(stack.begin(), stack.begin() + static_cast<std::ptrdiff_t>(cabinets));
  assemble(bar, first, anglesOf(bar, stack, cabinets, chain), 0, assembly);
  return assembly;
}

void spread(BuildStep& step, std::size_t pick, double load) {
  step.most[pick] = std::max(step.most[pick], load);
  step.least[pick] = std::min(step.least[pick], load);
}

/// Loads not yet looked at.
BuildStep begun(BuildStage stage, std::size_t cabinets, double mass) {
  BuildStep step{stage, static_cast<int>(cabinets), mass, {}, {}};
  step.most.fill(-std::numeric_limits<double>::infinity());
  step.least.fill(std::numeric_limits<double>::infinity());
  return step;
}

BuildMoment momentOf(const BuildStep& step) {
  return {step.stage, step.cabinets};
}

void worsen(BuildWorst& worst, const BuildStep& step, std::size_t picks, bool side) {
  const double weight = step.mass * standardGravity;
  for (std::size_t pick = 0; pick < picks; ++pick) {
    const double most = step.most[pick];
    if (std::isnan(most)) { // then the least is not known either
      worst.unknown = momentOf(step);
      continue;
    }
    if (most > worst.most[pick] * (1.0 + sameLoad)) {
      worst.most[pick] = most;
      worst.mostAt[pick] = momentOf(step);
    }
    if (step.cabinets == 0) {
      continue;
    }
    const double share = step.least[pick] / weight;
    if (isMore(worst.leastShare, share)) {
      worst.leastShare = share;
      worst.leastPick = pick;
      worst.leastOther = step.least[pick];
      worst.leastAt = momentOf(step);
    }
    const double unlike = (2.0 * most - weight) / (0.5 * weight);
    if (side && isMore(unlike, worst.unlike)) {
      worst.unlike = unlike;
      worst.unlikeAt = momentOf(step);
    }
  }
}

BuildStep asSet(const Statics& statics, std::size_t cabinets) {
  BuildStep step{BuildStage::set, static_cast<int>(cabinets), statics.mass, {}, {}};
  for (std::size_t pick = 0; pick < statics.pickCount; ++pick) {
    step.most[pick] = step.least[pick] = statics.pickLoads[pick].load;
  }
  return step;
}

} // namespace

BuildUp::BuildUp(const Bar& bar, const std::vector<Element>& stack, const std::optional<Chain>& chain)
    : bar_(&bar), stack_(&stack), chain_(chain), whole_(assembled(bar, stack, stack.size(), chain)) {
  opens_ = std::any_of(stack.begin(), stack.end(), [](const Element& element) {
    const auto* seated = std::get_if<Seated>(&element.joint);
    return seated != nullptr && seated->openToDeg > 0.0;
  });
  if (const auto* pair = std::get_if<SidePair>(&bar.picks)) {
    panDeg_ = nearestToZero(pair->panTravelDeg);
    restDeg_ = nearestToZero(pair->tiltTravelDeg);
    levelDeg_ = restDeg_;
    const Range reach = tiltReach(*pair, whole_, panDeg_);
    if (Span(reach.low, reach.high).holds(0.0)) {
      levelDeg_ = actuatorFor(*pair, whole_, 0.0, panDeg_);
    }
  }
  for (std::size_t cabinets = 0; cabinets <= stack.size(); ++cabinets) {
    steps_.push_back(stepOf(BuildStage::stacked, cabinets));
    if (chain && cabinets >= static_cast<std::size_t>(chain->held)) {
      steps_.push_back(stepOf(BuildStage::chained, cabinets));
    }
  }
  solver_.emplace(bar, stack, chain);
  carrySteps();
}

void BuildUp::closed(BuildStep& step, const Assembly& assembly, Range panDeg, Range actuatorDeg,
                     Range tiltDeg) const {
  const double weight = step.mass * standardGravity;
  if (const auto* pair = std::get_if<SidePair>(&bar_->picks)) {
    // What hangs stands sideways at sin(pan) · (turned centre).x; its greatest is at a greatest of both.
    const Range turned = turnedX(assembly.cg, actuatorDeg);
    const Range sine = turnedX({0.0, -1.0}, panDeg);
    const Range sideways = product(sine, turned);
    for (const double each : {sideways.low, sideways.high}) {
      const double across = assembly.mass * standardGravity * each / pair->pickSpacing;
      spread(step, 0, 0.5 * weight + across);
      spread(step, 1, 0.5 * weight - across);
    }
  } else if (const auto* two = std::get_if<ForeAftPair>(&bar_->picks)) {
    // The rear share is a ratio of two lines in tan(tilt), hence greatest and least at the ends.
    for (const double deg : {tiltDeg.low, tiltDeg.high}) {
      const Turn tilt = turnBy(toRadians(deg));
      const double apart = tilt(two->rearPick - two->frontPick).x;
      const double rear =
          isLength(std::abs(apart)) ? tilt(assembly.cg - two->frontPick).x / apart : unknownLoad;
      if (std::isnan(rear)) {
        step.most.fill(unknownLoad);
        step.least.fill(unknownLoad);
        return;
      }
      spread(step, 0, weight * (1.0 - rear));
      spread(step, 1, weight * rear);
    }
  } else {
    spread(step, 0, weight);
  }
}

void BuildUp::poses(BuildStep& step, const std::vector<Hang>& hangs) const {
  for (const Hang& hang : hangs) {
    try {
      const Settled settled = settle(hang);
      if (opensFreely(asStatics(settled))) {
        throw Error(Trouble::notPossible, "how far a seated joint opens is not known");
      }
      for (std::size_t pick = 0; pick < settled.pickCount; ++pick) {
        spread(step, pick, settled.pickLoads[pick].load);
      }
    } catch (const Error&) { // no shape follows: this step is not known
      step.most.fill(unknownLoad);
      step.least.fill(unknownLoad);
      return;
    }
  }
}

std::vector<double> BuildUp::swungTo(const Assembly& assembly, std::size_t pivot) const {
  const Range travel = std::get<Pivot>((*stack_)[pivot].joint).travelDeg;
  const Piece& piece = assembly.pieces[pivot];
  const Vec2 arm = (1.0 / piece.massBelow) * piece.massMoment - piece.pin;
  std::vector<double> angles{travel.low, travel.high};
  for (const double forward : {0.0, 180.0}) { // its centre straight ahead of the pin, and straight behind
    const double deg = std::remainder(forward - toDegrees(std::atan2(arm.z, arm.x)) - restDeg_, 360.0);
    if (travel.holds(deg)) {
      angles.push_back(deg);
    }
  }
  return angles;
}

bool BuildUp::swingsAt(BuildStage stage, std::size_t cabinets) const {
  return chain_ && stage != BuildStage::chained && static_cast<std::size_t>(chain_->held) <= cabinets &&
         isPivot((*stack_)[static_cast<std::size_t>(chain_->held) - 1]);
}

/// The hang as it stands at a step before aiming; a pivot without its chain in each of the ways that can be
/// its worst.
std::vector<Hang> BuildUp::posesOf(BuildStage stage, std::size_t cabinets) const {
  const std::optional<Chain> chain = stage == BuildStage::chained ? chain_ : std::nullopt;
  Hang hang{*bar_, {stack_->begin(), stack_->begin() + static_cast<std::ptrdiff_t>(cabinets)}, chain, {}, {}};
  if (std::holds_alternative<ForeAftPair>(bar_->picks)) {
    hang.set.tiltDeg = 0.0;
  } else if (std::holds_alternative<SidePair>(bar_->picks)) {
    hang.set.actuatorDeg = restDeg_;
    hang.set.panDeg = panDeg_;
  }
  if (!swingsAt(stage, cabinets)) {
    return {hang};
  }
  std::vector<Hang> hangs;
  const auto pivot = static_cast<std::size_t>(chain_->held) - 1;
  for (const double deg : swungTo(assembled(*bar_, *stack_, cabinets, chain), pivot)) {
    hangs.push_back(hang);
    hangs.back().stack[pivot].joint = heldAt(deg);
  }
  return hangs;
}

BuildStep BuildUp::stepOf(BuildStage stage, std::size_t cabinets) const {
  const std::optional<Chain> chain = stage == BuildStage::chained ? chain_ : std::nullopt;
  const Assembly assembly = assembled(*bar_, *stack_, cabinets, chain);
  BuildStep step = begun(stage, cabinets, headMass(*bar_) + assembly.mass);
  const Range pan{panDeg_, panDeg_};
  const Range actuator{restDeg_, restDeg_};
  const Range level{0.0, 0.0};
  const bool fore = std::holds_alternative<ForeAftPair>(bar_->picks);
  const bool alike = !fore && panDeg_ == 0.0; // whatever the shape
  const bool swings = swingsAt(stage, cabinets);
  if (cabinets == 0 || alike || (!opens_ && !swings)) {
    closed(step, assembly, pan, actuator, level);
    return step;
  }
  const std::vector<Hang> hangs = posesOf(stage, cabinets);
  if (opens_) {
    poses(step, hangs);
    return step;
  }
  for (const Hang& each : hangs) {
    closed(step, assembled(*bar_, each.stack, cabinets, chain), pan, actuator, level);
  }
  return step;
}

/// All of it at the ends of its way to `set`, and at `between` poses.
std::vector<Hang> BuildUp::onTheWay(const Setting& set, const Statics& atSet) const {
  const Range pan = hull(panDeg_, set.panDeg);
  const Range tilt = fromLevel(set);
  const Range actuator = atSet.side ? with(hull(restDeg_, levelDeg_), atSet.side->actuatorDeg) : Range{};
  const bool fore = std::holds_alternative<ForeAftPair>(bar_->picks);
  std::vector<Hang> hangs;
  for (int i = 0; i <= between + 1; ++i) {
    const double part = static_cast<double>(i) / (between + 1);
    Hang hang{*bar_, *stack_, chain_, {}, {}};
    if (fore) {
      hang.set.tiltDeg = tilt.low + part * (tilt.high - tilt.low);
      hangs.push_back(std::move(hang));
      continue;
    }
    hang.set.actuatorDeg = actuator.low + part * (actuator.high - actuator.low);
    for (const double deg : {pan.low, pan.high}) {
      hang.set.panDeg = deg;
      hangs.push_back(hang);
    }
  }
  return hangs;
}

BuildStep BuildUp::aiming(const Setting& set, const Statics& atSet) const {
  BuildStep step = begun(BuildStage::aiming, stack_->size(), headMass(*bar_) + whole_.mass);
  const Range pan = hull(panDeg_, set.panDeg);
  const Range tilt = fromLevel(set);
  const Range actuator = atSet.side ? with(hull(restDeg_, levelDeg_), atSet.side->actuatorDeg) : Range{};
  const bool fore = std::holds_alternative<ForeAftPair>(bar_->picks);
  const bool moves = fore || (atSet.side && (pan.low != 0.0 || pan.high != 0.0));
  if (!opens_ || !moves) {
    closed(step, whole_, pan, actuator, tilt);
    return step;
  }
  poses(step, onTheWay(set, atSet));
  return step;
}

BuildWorst BuildUp::worst(const Setting& set, const Statics& atSet) const {
  const bool side = atSet.side.has_value();
  BuildWorst worst;
  worst.unknown.reset();
  worst.restPanDeg = panDeg_;
  worst.restActuatorDeg = restDeg_;
  worst.levelActuatorDeg = levelDeg_;
  worsen(worst, asSet(atSet, stack_->size()), atSet.pickCount, side);
  for (const BuildStep& step : steps_) {
    worsen(worst, step, atSet.pickCount, side);
  }
  worsen(worst, aiming(set, atSet), atSet.pickCount, side);
  worst.carried = carried(set, atSet);
  return worst;
}

std::vector<BuildStep> buildSteps(const Hang& hang, const Statics& statics) {
  const Solver accepted(hang.bar, hang.stack, hang.chain); // refuses what is no hang
  const BuildUp build(hang.bar, hang.stack, hang.chain);
  std::vector<BuildStep> steps = build.steps();
  steps.push_back(build.aiming(hang.set, statics));
  steps.push_back(asSet(statics, hang.stack.size()));
  return steps;
}

} // namespace hangbook::hang
