// SPDX-License-Identifier: GPL-3.0-or-later
// What chain and joints carry on the way to a hang as set.
#include <algorithm>
#include <cmath>

#include "hang/build_loads.h"
#include "hang/settle.h"
#include "quantity/error.h"

namespace hangbook::hang {
namespace {

/// No rear stop lets a cabinet turn this far: such an opening stands for one that nobody stated, degrees.
constexpr double freelyDeg = 90.0;

void scale(CarriedMost& most, double by) {
  most.chain *= by;
  for (JointMost& joint : most.joints) {
    joint.pins = {by * joint.pins[0], by * joint.pins[1]};
    joint.contact *= by;
    joint.stop *= by;
  }
}

/// A pivot that somebody holds was taken as pinned: on its one pin hangs what is below it.
void hangFromOnePin(JointStatics& joint) {
  joint.pinLoads = {joint.pinLoads[0] + joint.pinLoads[1], Vec2{}};
  joint.end.reset();
}

} // namespace

bool BuildUp::opensFreely(const Statics& statics) const {
  for (std::size_t i = 0; i < statics.joints.size(); ++i) {
    const auto* seated = std::get_if<Seated>(&(*stack_)[i].joint);
    if (seated != nullptr && seated->openToDeg >= freelyDeg && statics.joints[i].openDeg > 0.0) {
      return true;
    }
  }
  return false;
}

BuildUp::Pose BuildUp::poseOf(const Statics& statics) const {
  if (opensFreely(statics)) {
    throw Error(Trouble::notPossible, "how far a seated joint opens is not known");
  }
  const double ahead = std::sin(toRadians(statics.tiltDeg));
  const double left = statics.side ? std::sin(toRadians(statics.side->rollDeg)) : 0.0;
  const double above = std::sqrt(std::max(0.0, 1.0 - ahead * ahead - left * left));
  Pose pose{std::atan2(ahead, above), carriedBy(statics)};
  scale(pose.most, 1.0 / std::hypot(ahead, above)); // flat on its side: without end, which is not known
  const bool pivotHeld =
      chain_ && std::holds_alternative<Pivot>((*stack_)[static_cast<std::size_t>(chain_->held) - 1].joint);
  pose.rigid = (!pivotHeld || statics.chain->tension > 0.0) &&
               std::all_of(statics.joints.begin(), statics.joints.end(),
                           [](const JointStatics& joint) { return joint.openDeg == 0.0; });
  return pose;
}

BuildUp::Pose BuildUp::poseOf(const Setting& set) const {
  try {
    const Statics statics = solver_->at(set);
    if (standsAsAssembled(*stack_, statics, heldBy(chain_))) {
      return poseOf(statics);
    }
  } catch (const Error& error) {
    if (error.trouble() != Trouble::notPossible) {
      throw;
    }
  }
  return poseOf(standing(Hang{*bar_, *stack_, chain_, set, {}}));
}

const std::vector<BuildUp::Pose>& BuildUp::atRest(double panDeg) const {
  if (!panned_ || panned_->panDeg != panDeg) {
    panned_.reset(); // should the first throw
    panned_ =
        Panned{panDeg, {poseOf({std::nullopt, restDeg_, panDeg}), poseOf({std::nullopt, levelDeg_, panDeg})}};
  }
  return panned_->poses;
}

void BuildUp::carrySteps() {
  carried_ = CarriedWorst::begun(stack_->size());
  for (const BuildStep& step : steps_) {
    const BuildMoment moment{step.stage, step.cabinets};
    const auto cabinets = static_cast<std::size_t>(step.cabinets);
    if (cabinets == 0) {
      continue;
    }
    try {
      for (const Hang& pose : posesOf(step.stage, cabinets)) {
        Statics statics = standing(pose);
        if (opensFreely(statics)) {
          throw Error(Trouble::notPossible, "how far a seated joint opens is not known");
        }
        if (swingsAt(step.stage, cabinets)) {
          hangFromOnePin(statics.joints[static_cast<std::size_t>(chain_->held) - 1]);
        }
        carried_.take(carriedBy(statics), moment);
      }
    } catch (const Error&) { // no shape follows
      carried_.unknown = moment;
    }
  }
  if (std::holds_alternative<SinglePick>(bar_->picks)) {
    return;
  }
  try {
    if (std::holds_alternative<ForeAftPair>(bar_->picks)) {
      home_.push_back(poseOf({0.0, std::nullopt, 0.0}));
      return;
    }
    home_.push_back(poseOf({std::nullopt, restDeg_, panDeg_}));
    if (levelDeg_ != restDeg_) {
      home_.push_back(poseOf({std::nullopt, levelDeg_, panDeg_}));
    }
  } catch (const Error&) {
    carried_.unknown = BuildMoment{BuildStage::aiming, static_cast<int>(stack_->size())};
  }
}

CarriedWorst BuildUp::carried(const Setting& set, const Statics& atSet) const {
  CarriedWorst worst = carried_;
  if (home_.empty()) {
    return worst;
  }
  const BuildMoment moment{BuildStage::aiming, static_cast<int>(stack_->size())};
  try {
    std::vector<Pose> poses = home_;
    if (atSet.side && set.panDeg != panDeg_) {
      const std::vector<Pose>& panned = atRest(set.panDeg);
      poses.insert(poses.end(), panned.begin(), panned.end());
      poses.push_back(poseOf({std::nullopt, atSet.side->actuatorDeg, panDeg_}));
    }
    poses.push_back(poseOf(atSet));
    if (!std::all_of(poses.begin(), poses.end(), [](const Pose& pose) { return pose.rigid; })) {
      for (const Hang& pose : onTheWay(set, atSet)) {
        poses.push_back(poseOf(pose.set));
      }
    }
    std::sort(poses.begin(), poses.end(), [](const Pose& a, const Pose& b) { return a.lean < b.lean; });
    for (std::size_t i = 0; i + 1 < poses.size(); ++i) {
      worst.take(alongArc(poses[i].most, poses[i + 1].most, poses[i + 1].lean - poses[i].lean), moment);
    }
  } catch (const Error&) {
    worst.unknown = moment;
  }
  return worst;
}

} // namespace hangbook::hang
