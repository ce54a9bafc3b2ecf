// SPDX-License-Identifier: GPL-3.0-or-later
#include "hang/check.h"

#include <array>
#include <charconv>
#include <cstddef>
#include <limits>
#include <string>
#include <string_view>

#include "quantity/error.h"
#include "quantity/quantity.h"

namespace hangbook::hang {
namespace {

/// A key, put together only where it is needed: the search checks far more often than it refuses.
struct Place {
  const char* group = "";
  std::size_t index = none;
  std::string_view key;
  const char* part = "";

  std::string text() const {
    std::string whole = group;
    if (index != none) {
      whole += "[" + std::to_string(index) + "]";
    }
    if (!key.empty()) {
      whole.append(".").append(key);
    }
    return whole + part;
  }
  Place at(const char* which) const { return {group, index, key, which}; }

  static constexpr std::size_t none = std::numeric_limits<std::size_t>::max();
};

[[noreturn]] void refuse(const Place& place, const std::string& text) {
  throw Error(Trouble::badInput, text, place.text());
}

std::string plain(double value) {
  std::array<char, std::numeric_limits<double>::max_exponent10 + std::numeric_limits<double>::max_digits10>
      text{};
  return {text.data(),
          std::to_chars(text.data(), text.data() + text.size(), value, std::chars_format::fixed).ptr};
}

/// Written so that NaN is refused too.
void within(double value, double low, double high, const Place& place) {
  if (!(value >= low && value <= high)) {
    refuse(place, "must be from " + plain(low) + " to " + plain(high));
  }
}
void above(double value, double high, const Place& place) {
  if (!(value > 0.0)) {
    refuse(place, "must be above 0");
  }
  if (!(value <= high)) {
    refuse(place, "must be at most " + plain(high));
  }
}
void notBelow(double value, double high, const Place& place) {
  if (!(value >= 0.0)) {
    refuse(place, "must be 0 or above");
  }
  if (!(value <= high)) {
    refuse(place, "must be at most " + plain(high));
  }
}
void point(Vec2 where, const Place& place) {
  within(where.x, -mostLength, mostLength, place.at(".x"));
  within(where.z, -mostLength, mostLength, place.at(".z"));
}
void travel(Range range, const Place& place) {
  within(range.low, -mostAngleDeg, mostAngleDeg, place.at("[0]"));
  within(range.high, -mostAngleDeg, mostAngleDeg, place.at("[1]"));
  if (range.low > range.high) {
    refuse(place, "the first figure must not be above the second");
  }
}

Place inBar(const char* key) {
  return {"bar", Place::none, key};
}

struct PicksCheck {
  void operator()(const SidePair& pair) const {
    above(pair.pickSpacing, mostLength, inBar("pick_spacing_m"));
    notBelow(pair.headMass, mostMass, inBar("head_mass_kg"));
    point(pair.headCg, inBar("head_cg_m"));
    point(pair.tiltAxis, inBar("tilt_axis_m"));
    travel(pair.tiltTravelDeg, inBar("tilt_travel_deg"));
    travel(pair.panTravelDeg, inBar("pan_travel_deg"));
  }
  void operator()(const ForeAftPair& pair) const {
    point(pair.frontPick, inBar("front_pick_m"));
    point(pair.rearPick, inBar("rear_pick_m"));
    if (!isLength(length(pair.frontPick - pair.rearPick))) {
      refuse(inBar("rear_pick_m"), "must not be the same point as front_pick_m");
    }
  }
  void operator()(const SinglePick& single) const { point(single.pick, inBar("pick_m")); }
};

struct JointCheck {
  std::size_t index = 0;
  bool held = false;

  Place in(const char* key) const { return {"stack", index, key}; }

  void operator()(const Seated& joint) const {
    within(joint.angleDeg, -mostAngleDeg, mostAngleDeg, in("joint.angle_deg"));
    point(joint.contact, in("joint.contact_m"));
    if (!isLength(-joint.contact.x)) {
      refuse(in("joint.contact_m.x"), "must be below 0: the contact lies behind the front pin");
    }
    within(joint.openToDeg, 0.0, mostAngleDeg, in("joint.open_to_deg"));
  }
  void operator()(const Pinned& joint) const {
    within(joint.angleDeg, -mostAngleDeg, mostAngleDeg, in("joint.angle_deg"));
    point(joint.pins[0], in("joint.pins_m[0]"));
    point(joint.pins[1], in("joint.pins_m[1]"));
    if (!isLength(length(joint.pins[0] - joint.pins[1]))) {
      refuse(in("joint.pins_m[1]"), "must not be the same point as the first pin");
    }
  }
  void operator()(const Pivot& joint) const {
    travel(joint.travelDeg, in("joint.travel_deg"));
    if (!held) {
      refuse(in("joint.kind"), "a pivot may stand only at the element that the chain holds");
    }
  }
};

void checkElement(const Element& element, std::size_t index, bool lowest, bool held) {
  const auto in = [index](const char* key) { return Place{"stack", index, key}; };
  above(element.mass, mostMass, in("mass_kg"));
  point(element.cg, in("cg_m"));
  if (element.nextPin) {
    point(*element.nextPin, in("next_pin_m"));
  } else if (!lowest) {
    refuse(in("next_pin_m"), "is missing: another element hangs below");
  }
  if (element.outline.size() < 3) {
    refuse(in("outline_m"), "must have at least 3 corners");
  }
  for (const Vec2 corner : element.outline) {
    within(corner.x, -mostLength, mostLength, in("outline_m"));
    within(corner.z, -mostLength, mostLength, in("outline_m"));
  }
  if (element.chainEye) {
    point(*element.chainEye, in("chain_eye_m"));
  } else if (held) {
    refuse(in("chain_eye_m"), "is missing: the chain holds this element");
  }
  std::visit(JointCheck{index, held}, element.joint);
}

} // namespace

void check(const Bar& bar, const std::vector<Element>& stack, const std::optional<Chain>& chain) {
  std::visit(PicksCheck{}, bar.picks);
  notBelow(bar.frameMass, mostMass, inBar("frame_mass_kg"));
  point(bar.frameCg, inBar("frame_cg_m"));
  point(bar.stackPin, inBar("stack_pin_m"));
  if (bar.chainAnchor) {
    point(*bar.chainAnchor, inBar("chain_anchor_m"));
  } else if (chain) {
    refuse(inBar("chain_anchor_m"), "is missing: there is a chain");
  }
  const Place wholeStack{"stack", Place::none, ""};
  if (stack.empty()) {
    refuse(wholeStack, "must have at least one element");
  }
  if (stack.size() > mostElements) {
    refuse(wholeStack, "must have at most " + std::to_string(mostElements) + " elements");
  }
  if (chain) {
    const auto in = [](const char* key) { return Place{"chain", Place::none, key}; };
    above(chain->pitch, mostPitch, in("pitch_m"));
    notBelow(chain->fixed, mostLength, in("fixed_m"));
    if (chain->mark < 1 || chain->mark > mostMark) {
      refuse(in("mark"), "must be a whole number from 1 to " + std::to_string(mostMark));
    }
    if (chain->held < 1 || static_cast<std::size_t>(chain->held) > stack.size()) {
      refuse(in("held"), "must be a whole number from 1 to " + std::to_string(stack.size()) +
                             ", an element of the stack");
    }
  }
  const std::size_t held = static_cast<std::size_t>(heldBy(chain));
  for (std::size_t i = 0; i < stack.size(); ++i) {
    checkElement(stack[i], i, i + 1 == stack.size(), held == i + 1);
  }
}

void check(const Bar& bar, const Setting& set) {
  const auto in = [](const char* key) { return Place{"set", Place::none, key}; };
  if (set.tiltDeg) {
    within(*set.tiltDeg, -mostAngleDeg, mostAngleDeg, in("tilt_deg"));
  }
  if (set.actuatorDeg) {
    within(*set.actuatorDeg, -mostAngleDeg, mostAngleDeg, in("actuator_deg"));
  }
  within(set.panDeg, -mostAngleDeg, mostAngleDeg, in("pan_deg"));
  if (std::holds_alternative<SidePair>(bar.picks)) {
    if (set.tiltDeg && set.actuatorDeg) {
      refuse(in("actuator_deg"), "must not stand beside tilt_deg: one follows from the other");
    }
    if (!set.tiltDeg && !set.actuatorDeg) {
      refuse(in("tilt_deg"), "is missing (or actuator_deg in its place)");
    }
    return;
  }
  if (set.actuatorDeg) {
    refuse(in("actuator_deg"), "belongs to a side-pair only");
  }
  if (set.panDeg != 0.0) {
    refuse(in("pan_deg"), "must be 0 without a side-pair");
  }
  const bool single = std::holds_alternative<SinglePick>(bar.picks);
  if (single && set.tiltDeg) {
    refuse(in("tilt_deg"), "must be left out with a single pick: the centre of gravity decides it");
  }
  if (!single && !set.tiltDeg) {
    refuse(in("tilt_deg"), "is missing");
  }
}

void check(const Bar& bar, const std::vector<Element>& stack, const PullBack& pull) {
  const auto in = [](const char* key) { return Place{"pull_back", Place::none, key}; };
  if (pull.element < 1 || static_cast<std::size_t>(pull.element) > stack.size()) {
    refuse(in("element"),
           "must be a whole number from 1 to " + std::to_string(stack.size()) + ", an element of the stack");
  }
  within(pull.at.x, -mostLength, mostLength, in("at_m.x"));
  within(pull.at.z, -mostLength, mostLength, in("at_m.z"));
  within(pull.lineDeg, 0.0, mostAngleDeg, in("line_deg"));
  if (pull.force && pull.tiltDeg) {
    refuse(in("tilt_deg"), "must not stand beside force_kn: one follows from the other");
  }
  if (std::holds_alternative<ForeAftPair>(bar.picks) && pull.tiltDeg) {
    refuse(in("tilt_deg"), "must be left out with a fore-aft pair, whose hoists set the tilt");
  }
  if (pull.force) {
    notBelow(*pull.force, mostMass * standardGravity, in("force_kn"));
  } else if (pull.tiltDeg) {
    within(*pull.tiltDeg, -90.0, 90.0, in("tilt_deg"));
  } else {
    refuse(in("force_kn"), "is missing (or tilt_deg in its place)");
  }
}

} // namespace hangbook::hang
