// SPDX-License-Identifier: GPL-3.0-or-later
#include "hang/carried.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

#include "hang/finite.h"

namespace hangbook::hang {
namespace {

/// A way along which the weight's direction turns.
struct Arc {
  bool half; ///< half a turn or more
  double cosine;
  double sine;
  explicit Arc(double radians)
      : half(radians >= std::numbers::pi), cosine(std::cos(radians)), sine(std::sin(radians)) {}
};

/// The greatest of the sinusoid that is `one` and, at the arc's other end, `other`, between the two.
double crest(double one, double other, const Arc& arc) {
  if (arc.half) {
    return one == 0.0 && other == 0.0 ? 0.0 : std::numeric_limits<double>::infinity();
  }
  if (!(std::min(other - one * arc.cosine, one - other * arc.cosine) > 0.0)) {
    return std::max(one, other);
  }
  const double rise = (other - one * arc.cosine) / arc.sine;
  return std::max({one, other, std::hypot(one, rise)});
}

void raise(double& worst, BuildMoment& where, double value, BuildMoment at) {
  if (value > worst * (1.0 + sameLoad)) {
    worst = value;
    where = at;
  }
}

void takeJoint(JointWorst& worst, const JointMost& most, const JointWorst& from) {
  for (std::size_t pin = 0; pin < most.pins.size(); ++pin) {
    raise(worst.most.pins[pin], worst.pinAt[pin], most.pins[pin], from.pinAt[pin]);
  }
  worst.most.roll = std::max(worst.most.roll, most.roll);
  worst.most.sideways = std::max(worst.most.sideways, most.sideways);
  raise(worst.most.contact, worst.contactAt, most.contact, from.contactAt);
  raise(worst.most.stop, worst.stopAt, most.stop, from.stopAt);
}

bool allFinite(const CarriedMost& most) {
  AllFinite all;
  all.see(most.chain);
  for (const JointMost& joint : most.joints) {
    all.see(joint.pins[0], joint.pins[1], joint.roll, joint.sideways, joint.contact, joint.stop);
  }
  return all.yes();
}

} // namespace

CarriedMost carriedBy(const Statics& statics) {
  CarriedMost most;
  most.chain = statics.chain ? std::max(0.0, statics.chain->most) : 0.0;
  most.joints.reserve(statics.joints.size());
  for (const JointStatics& joint : statics.joints) {
    JointMost& each = most.joints.emplace_back();
    for (std::size_t pin = 0; pin < each.pins.size(); ++pin) {
      const double end = joint.end ? length(joint.end->pinLoads[pin]) : 0.0;
      each.pins[pin] = std::max(length(joint.pinLoads[pin]), end);
    }
    const auto greatest = [](const std::optional<double>& one, const std::optional<double>& other) {
      return std::max({0.0, one.value_or(0.0), other.value_or(0.0)});
    };
    each.roll = length(joint.sidewaysMoment);
    each.sideways = std::abs(joint.sideways);
    each.contact = greatest(joint.contact, joint.end ? joint.end->contact : std::nullopt);
    each.stop = greatest(joint.stop, joint.end ? joint.end->stop : std::nullopt);
  }
  return most;
}

CarriedMost alongArc(const CarriedMost& one, const CarriedMost& other, double radians) {
  const Arc arc(radians);
  CarriedMost most;
  most.chain = crest(one.chain, other.chain, arc);
  most.joints.reserve(one.joints.size());
  for (std::size_t i = 0; i < one.joints.size(); ++i) {
    const JointMost& a = one.joints[i];
    const JointMost& b = other.joints[i];
    most.joints.push_back({{crest(a.pins[0], b.pins[0], arc), crest(a.pins[1], b.pins[1], arc)},
                           std::max(a.roll, b.roll),
                           std::max(a.sideways, b.sideways),
                           crest(a.contact, b.contact, arc),
                           crest(a.stop, b.stop, arc)});
  }
  return most;
}

CarriedWorst CarriedWorst::begun(std::size_t joints) {
  CarriedWorst worst;
  worst.unknown.reset();
  worst.joints.resize(joints);
  return worst;
}

void CarriedWorst::take(const CarriedMost& most, BuildMoment at) {
  if (!allFinite(most)) {
    unknown = at;
    return;
  }
  raise(chain, chainAt, most.chain, at);
  JointWorst here;
  here.pinAt = {at, at};
  here.contactAt = here.stopAt = at;
  for (std::size_t i = 0; i < most.joints.size(); ++i) {
    takeJoint(joints[i], most.joints[i], here);
  }
}

void CarriedWorst::take(const CarriedWorst& other) {
  raise(chain, chainAt, other.chain, other.chainAt);
  for (std::size_t i = 0; i < other.joints.size(); ++i) {
    takeJoint(joints[i], other.joints[i].most, other.joints[i]);
  }
  if (other.unknown) {
    unknown = other.unknown;
  }
}

} // namespace hangbook::hang
