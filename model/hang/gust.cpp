// SPDX-License-Identifier: GPL-3.0-or-later
#include "hang/gust.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <limits>
#include <numbers>

#include "hang/vec2.h"

namespace hangbook::hang {
namespace {

/// Two places, each off by up to 1 in each coordinate, are apart by at most so much more or less.
constexpr double apart = 2.0 * std::numbers::sqrt2;

constexpr double unknown = std::numeric_limits<double>::quiet_NaN();

/// `by` ÷ `arm`; an arm that may be none holds nothing.
double over(double by, double arm) {
  return by == 0.0 ? 0.0 : arm > 0.0 ? by / arm : by * std::numeric_limits<double>::infinity();
}

/// What is not known stays so.
double orNothing(double value) {
  return value < 0.0 ? 0.0 : value;
}
double greaterOf(double one, double other) {
  return std::isnan(one) || one > other ? one : other;
}

bool mayOpen(const Element& element) {
  const auto* seated = std::get_if<Seated>(&element.joint);
  return seated != nullptr && seated->openToDeg > 0.0;
}

double greater(const std::optional<double>& one, const std::optional<double>& other) {
  return std::max(one.value_or(0.0), other.value_or(0.0));
}

class InGust {
public:
  InGust(const std::vector<Element>& stack, int held, const Statics& statics,
         const std::vector<JointArms>& arms, const std::vector<SidePush>& pushes, double heavier)
      : stack_(stack), held_(static_cast<std::size_t>(std::max(0, held))), statics_(statics), arms_(arms),
        pushes_(pushes), heavier_(heavier),
        pivotHeld_(held_ > 0 && std::holds_alternative<Pivot>(stack[held_ - 1].joint)) {}

  Pushed find() {
    Pushed pushed;
    if (held_ > 0) {
      findTension(pushed);
    }
    for (std::size_t i = 0; i < stack_.size(); ++i) {
      pushed.joints.push_back(joint(i));
    }
    return pushed;
  }

private:
  void findTension(Pushed& pushed) {
    const ChainStatics& chain = *statics_.chain;
    const double calm = heavier_ * chain.most;
    pushed.tensionMost = calm;
    if (pivotHeld_) {
      more_ = over(pushes_[held_ - 1].turning, std::abs(arms_[held_ - 1].closing));
      pushed.tensionMost = calm + more_;
      pushed.tensionLeast = chain.tension - more_;
      return;
    }
    for (std::size_t i = 0; i < held_; ++i) {
      const bool stays = std::holds_alternative<Seated>(stack_[i].joint) && !mayOpen(stack_[i]) && slack();
      const double calmly = statics_.joints[i].gravityMoment;
      const double opening = std::max(calmly, heavier_ * calmly) + pushes_[i].turning;
      if (!stays && isLength(arms_[i].closing)) {
        pushed.tensionMost = greaterOf(orNothing(opening / arms_[i].closing), pushed.tensionMost);
      }
    }
    more_ = pushed.tensionMost - calm;
  }

  /// Of the chain, where there is one.
  bool slack() const { return isLength(statics_.chain->slack); }

  /// Whether the chain, taut, takes what would open this joint.
  bool keptShut(std::size_t i) const {
    return i < held_ && !pivotHeld_ && !slack() && isLength(arms_[i].closing);
  }

  PushedJoint joint(std::size_t i) const {
    const JointStatics& calm = statics_.joints[i];
    const SidePush& push = pushes_[i];
    PushedJoint pushed;
    pushed.most = calm;
    pushed.most.end.reset();
    const double chain = i < held_ ? more_ : 0.0;
    double force = push.inPlane + chain;
    const double turning = push.turning + (chain == 0.0 ? 0.0 : arms_[i].lever * chain);
    if (std::holds_alternative<Seated>(stack_[i].joint)) {
      force += rear(i, turning, pushed);
    }
    for (std::size_t pin = 0; pin < static_cast<std::size_t>(calm.pinCount); ++pin) {
      const double both =
          heavier_ * std::max(length(calm.pinLoads[pin]), calm.end ? length(calm.end->pinLoads[pin]) : 0.0);
      const double more = calm.pinCount == 2 ? 0.5 * force + over(turning, arms_[i].pinsApart) : force;
      pushed.most.pinLoads[pin] = {0.0, -(both + more)};
      pushed.most.pinForces[pin] = 0.5 * (both + more);
    }
    pushed.most.sideways = heavier_ * std::abs(calm.sideways) + push.across;
    pushed.most.sidewaysMoment = {0.0, heavier_ * length(calm.sidewaysMoment) + push.acrossTurning};
    if (calm.openDeg > 0.0) {
      lose(pushed);
    }
    return pushed;
  }

  /// Contact and stop; answers what they put onto the pin besides.
  double rear(std::size_t i, double turning, PushedJoint& pushed) const {
    const JointStatics& calm = statics_.joints[i];
    const double more = over(turning, arms_[i].contact);
    const double stop = greater(calm.stop, calm.end ? calm.end->stop : std::nullopt);
    const double contact = greater(calm.contact, calm.end ? calm.end->contact : std::nullopt);
    pushed.most.contact = orNothing(stop > 0.0 ? more - stop : heavier_ * contact + more);
    if (!mayOpen(stack_[i])) {
      const double least =
          calm.contact
              ? std::min(*calm.contact, calm.end && calm.end->contact ? *calm.end->contact : *calm.contact)
              : 0.0;
      pushed.most.stop = orNothing(heavier_ * stop + more - least);
    } else if (calm.contact && !keptShut(i)) {
      pushed.contactLeast = *calm.contact - more;
    }
    return more;
  }

  static void lose(PushedJoint& pushed) {
    pushed.contactLeast = unknown;
    pushed.most.contact = unknown;
    for (std::size_t pin = 0; pin < pushed.most.pinLoads.size(); ++pin) {
      pushed.most.pinLoads[pin] = {unknown, unknown};
      pushed.most.pinForces[pin] = unknown;
    }
  }

  const std::vector<Element>& stack_;
  std::size_t held_;
  const Statics& statics_;
  const std::vector<JointArms>& arms_;
  const std::vector<SidePush>& pushes_;
  double heavier_;
  bool pivotHeld_;
  double more_{}; ///< N, that the chain pulls more than when it is calm
};

} // namespace

Pushed inGust(const std::vector<Element>& stack, int held, const Statics& statics,
              const std::vector<JointArms>& arms, const std::vector<SidePush>& pushes, double heavier) {
  return InGust(stack, held, statics, arms, pushes, heavier).find();
}

std::vector<JointArms> armsOf(const std::vector<Element>& stack, int held, const Layout& layout,
                              const Places& places) {
  const auto along = [](const Vec3& one, const Vec3& other) {
    return one.x * other.x + one.y * other.y + one.z * other.z;
  };
  const auto inPlane = [&](const Vec3& place) {
    return Vec2{along(place, layout.forward), along(place, layout.up)};
  };
  std::vector<JointArms> arms(stack.size());
  double off = apart * places.frame; // of what lies between a joint and the chain's eye and anchor
  for (std::size_t i = stack.size(); i-- > 0;) {
    const Vec2 pin = inPlane(layout.elements[i].pin);
    Vec2 middle = pin;
    if (const auto* seated = std::get_if<Seated>(&stack[i].joint)) {
      arms[i].contact = std::max(0.0, -seated->contact.x - places.elements[i]);
    } else if (const auto* pinned = std::get_if<Pinned>(&stack[i].joint)) {
      arms[i].pinsApart =
          std::max(0.0, length(pinned->pins[1] - pinned->pins[0]) - apart * places.elements[i]);
      const Vec2 forward = inPlane(layout.elements[i].forward);
      const Vec2 halfway = 0.5 * (pinned->pins[0] + pinned->pins[1]);
      middle = pin + halfway.x * forward + halfway.z * quarterTurn(forward);
    }
    if (static_cast<std::ptrdiff_t>(i) < held) {
      const PlacedElement& at = layout.elements[static_cast<std::size_t>(held) - 1];
      const Vec2 eye = inPlane(*at.chainEye);
      const Vec2 line = inPlane(*layout.chainAnchor) - eye;
      const Vec2 way = (1.0 / length(line)) * line;
      off += apart * places.elements[i];
      const double closing = -moment(eye - pin, way);
      arms[i].closing = std::copysign(std::max(0.0, std::abs(closing) - off), closing);
      arms[i].lever = std::abs(moment(eye - middle, way)) + off;
    }
  }
  return arms;
}

SidePush bySwing(double weight, double away, double radians, double ahead, double aside) {
  const double inPlane = weight * (ahead * std::sin(radians) + (1.0 - std::cos(radians)));
  const double across = weight * aside * std::sin(radians);
  return {inPlane, inPlane * away, across, across * away};
}

SidePush worseOf(const SidePush& one, const SidePush& other) {
  return {greaterOf(one.inPlane, other.inPlane), greaterOf(one.turning, other.turning),
          greaterOf(one.across, other.across), greaterOf(one.acrossTurning, other.acrossTurning)};
}

} // namespace hangbook::hang
