// SPDX-License-Identifier: GPL-3.0-or-later
// Every figure of a hang has its bounds: at them it is taken, just beyond it is refused by its key. The
// bounds are those that README.md states: 100 m, 100 t, ±180°, 1 m of pitch, 200 elements.
#include <boost/test/unit_test.hpp>

#include <cmath>
#include <functional>
#include <limits>
#include <string>
#include <vector>

#include "hang/check.h"
#include "quantity/error.h"
#include "quantity/quantity.h"
#include "support/example_hang.h"

using namespace hangbook;
using hangbook::testing::exampleHang;
using hangbook::testing::seatedHang;

namespace {

constexpr double infinite = std::numeric_limits<double>::infinity();

struct Figure {
  std::string place;
  double low;
  double high;
  std::function<double&(hang::Hang&)> of;
  hang::Hang hang = exampleHang();
};

void check(const hang::Hang& hang) {
  hang::check(hang.bar, hang.stack, hang.chain);
  hang::check(hang.bar, hang.set);
  if (hang.pullBack) {
    hang::check(hang.bar, hang.stack, *hang.pullBack);
  }
}

/// The place where it is refused and why, or nothing.
std::pair<std::string, std::string> refusal(const hang::Hang& hang) {
  try {
    check(hang);
  } catch (const Error& error) {
    BOOST_TEST((error.trouble() == Trouble::badInput));
    return {error.place(), error.what()};
  }
  return {};
}

hang::SidePair& sides(hang::Hang& hang) {
  return std::get<hang::SidePair>(hang.bar.picks);
}

/// Both coordinates of a place; either may be 100 m from its origin.
void addPlace(std::vector<Figure>& all, const std::string& place, std::function<hang::Vec2&(hang::Hang&)> of,
              const hang::Hang& in = exampleHang()) {
  all.push_back({place + ".x", -100.0, 100.0, [of](hang::Hang& h) -> double& { return of(h).x; }, in});
  all.push_back({place + ".z", -100.0, 100.0, [of](hang::Hang& h) -> double& { return of(h).z; }, in});
}

hang::Hang foreAft() {
  hang::Hang hang = exampleHang();
  hang.bar.picks = hang::ForeAftPair{{0.4, 0.0}, {-0.4, 0.0}};
  hang.set = {-3.0, std::nullopt, 0.0};
  return hang;
}

hang::Hang single() {
  hang::Hang hang = exampleHang();
  hang.bar.picks = hang::SinglePick{{0.0, 0.0}};
  hang.set = {};
  return hang;
}

/// Held back by a force that is stated, or by what it takes to keep a tilt.
hang::Hang pulled(bool byForce) {
  hang::Hang hang = exampleHang();
  hang.pullBack = hang::PullBack{2, {-0.66, -0.24}, 120.0, {}, {}};
  (byForce ? hang.pullBack->force : hang.pullBack->tiltDeg) = 5.0;
  return hang;
}

hang::Hang byActuator() {
  hang::Hang hang = exampleHang();
  hang.set = {std::nullopt, 2.0, 0.0};
  return hang;
}

std::vector<Figure> figures() {
  using H = hang::Hang;
  constexpr double turn = 180.0;
  std::vector<Figure> all{
      {"bar.pick_spacing_m", 1e-300, 100.0, [](H& h) -> double& { return sides(h).pickSpacing; }},
      {"bar.head_mass_kg", 0.0, 1e5, [](H& h) -> double& { return sides(h).headMass; }},
      {"bar.tilt_travel_deg[0]", -turn, 20.0, [](H& h) -> double& { return sides(h).tiltTravelDeg.low; }},
      {"bar.tilt_travel_deg[1]", -20.0, turn, [](H& h) -> double& { return sides(h).tiltTravelDeg.high; }},
      {"bar.pan_travel_deg[0]", -turn, 20.0, [](H& h) -> double& { return sides(h).panTravelDeg.low; }},
      {"bar.pan_travel_deg[1]", -20.0, turn, [](H& h) -> double& { return sides(h).panTravelDeg.high; }},
      {"bar.frame_mass_kg", 0.0, 1e5, [](H& h) -> double& { return h.bar.frameMass; }},
      {"stack[0].mass_kg", 1e-300, 1e5, [](H& h) -> double& { return h.stack[0].mass; }},
      {"stack[0].joint.angle_deg", -turn, turn,
       [](H& h) -> double& { return std::get<hang::Pinned>(h.stack[0].joint).angleDeg; }},
      {"stack[0].joint.angle_deg", -turn, turn,
       [](H& h) -> double& { return std::get<hang::Seated>(h.stack[0].joint).angleDeg; }, seatedHang()},
      {"stack[0].joint.open_to_deg", 0.0, turn,
       [](H& h) -> double& { return std::get<hang::Seated>(h.stack[0].joint).openToDeg; }, seatedHang()},
      {"stack[1].joint.travel_deg[0]", -turn, 0.0,
       [](H& h) -> double& { return std::get<hang::Pivot>(h.stack[1].joint).travelDeg.low; }},
      {"stack[1].joint.travel_deg[1]", -30.0, turn,
       [](H& h) -> double& { return std::get<hang::Pivot>(h.stack[1].joint).travelDeg.high; }},
      {"chain.pitch_m", 1e-300, 1.0, [](H& h) -> double& { return h.chain->pitch; }},
      {"chain.fixed_m", 0.0, 100.0, [](H& h) -> double& { return h.chain->fixed; }},
      {"set.tilt_deg", -turn, turn, [](H& h) -> double& { return *h.set.tiltDeg; }},
      {"set.tilt_deg", -turn, turn, [](H& h) -> double& { return *h.set.tiltDeg; }, foreAft()},
      {"set.actuator_deg", -turn, turn, [](H& h) -> double& { return *h.set.actuatorDeg; }, byActuator()},
      {"set.pan_deg", -turn, turn, [](H& h) -> double& { return h.set.panDeg; }},
      {"stack[0].outline_m", -100.0, 100.0, [](H& h) -> double& { return h.stack[0].outline[2].x; }},
      {"stack[0].outline_m", -100.0, 100.0, [](H& h) -> double& { return h.stack[0].outline[3].z; }},
      {"stack[0].joint.contact_m.x", -100.0, -1.1e-9,
       [](H& h) -> double& { return std::get<hang::Seated>(h.stack[0].joint).contact.x; }, seatedHang()},
      {"stack[0].joint.contact_m.z", -100.0, 100.0,
       [](H& h) -> double& { return std::get<hang::Seated>(h.stack[0].joint).contact.z; }, seatedHang()},
  };
  all.push_back(
      {"pull_back.line_deg", 0.0, turn, [](H& h) -> double& { return h.pullBack->lineDeg; }, pulled(true)});
  all.push_back({"pull_back.force_kn", 0.0, 1e5 * standardGravity,
                 [](H& h) -> double& { return *h.pullBack->force; }, pulled(true)});
  all.push_back({"pull_back.tilt_deg", -90.0, 90.0, [](H& h) -> double& { return *h.pullBack->tiltDeg; },
                 pulled(false)});
  addPlace(
      all, "pull_back.at_m", [](H& h) -> hang::Vec2& { return h.pullBack->at; }, pulled(false));
  addPlace(all, "bar.head_cg_m", [](H& h) -> hang::Vec2& { return sides(h).headCg; });
  addPlace(all, "bar.tilt_axis_m", [](H& h) -> hang::Vec2& { return sides(h).tiltAxis; });
  addPlace(all, "bar.frame_cg_m", [](H& h) -> hang::Vec2& { return h.bar.frameCg; });
  addPlace(all, "bar.stack_pin_m", [](H& h) -> hang::Vec2& { return h.bar.stackPin; });
  addPlace(all, "bar.chain_anchor_m", [](H& h) -> hang::Vec2& { return *h.bar.chainAnchor; });
  addPlace(
      all, "bar.front_pick_m",
      [](H& h) -> hang::Vec2& { return std::get<hang::ForeAftPair>(h.bar.picks).frontPick; }, foreAft());
  addPlace(
      all, "bar.rear_pick_m",
      [](H& h) -> hang::Vec2& { return std::get<hang::ForeAftPair>(h.bar.picks).rearPick; }, foreAft());
  addPlace(
      all, "bar.pick_m", [](H& h) -> hang::Vec2& { return std::get<hang::SinglePick>(h.bar.picks).pick; },
      single());
  addPlace(all, "stack[1].cg_m", [](H& h) -> hang::Vec2& { return h.stack[1].cg; });
  addPlace(all, "stack[0].next_pin_m", [](H& h) -> hang::Vec2& { return *h.stack[0].nextPin; });
  addPlace(all, "stack[1].chain_eye_m", [](H& h) -> hang::Vec2& { return *h.stack[1].chainEye; });
  addPlace(all, "stack[0].joint.pins_m[0]",
           [](H& h) -> hang::Vec2& { return std::get<hang::Pinned>(h.stack[0].joint).pins[0]; });
  addPlace(all, "stack[0].joint.pins_m[1]",
           [](H& h) -> hang::Vec2& { return std::get<hang::Pinned>(h.stack[0].joint).pins[1]; });
  return all;
}

/// "stack[1].joint.travel_deg" of "stack[1].joint.travel_deg[0]", where two ends cross.
bool isAt(const std::string& place, const std::string& expected) {
  return place == expected || (expected.ends_with(']') && place == expected.substr(0, expected.size() - 3));
}

} // namespace

BOOST_AUTO_TEST_SUITE(check_bounds)

BOOST_AUTO_TEST_CASE(what_the_tests_start_from_is_taken) {
  for (const hang::Hang& each :
       {exampleHang(), seatedHang(), foreAft(), single(), byActuator(), pulled(true), pulled(false)}) {
    BOOST_TEST(refusal(each).first.empty(), refusal(each).first);
  }
}

BOOST_AUTO_TEST_CASE(each_figure_at_its_bounds_and_just_beyond) {
  for (const Figure& each : figures()) {
    BOOST_TEST_CONTEXT(each.place) {
      const auto at = [&](double value) {
        hang::Hang hang = each.hang;
        each.of(hang) = value;
        return refusal(hang);
      };
      for (const double taken : {each.low, each.high}) {
        BOOST_TEST(at(taken).first.empty(), taken << " is refused: " << at(taken).second);
      }
      const double below = each.low == 1e-300 ? 0.0 : std::nextafter(each.low, -infinite);
      const double above = each.high == -1.1e-9 ? -0.9e-9 : std::nextafter(each.high, infinite);
      for (const double refused : {below, above, std::nan(""), infinite, -infinite}) {
        BOOST_TEST(isAt(at(refused).first, each.place),
                   refused << " is refused at '" << at(refused).first << "'");
        BOOST_TEST(!at(refused).second.empty());
      }
    }
  }
}

BOOST_AUTO_TEST_CASE(words_name_the_bounds) {
  hang::Hang hang = exampleHang();
  hang.stack[1].cg.z = 250.0;
  BOOST_TEST(refusal(hang).second.find("must be from -100 to 100") != std::string::npos,
             refusal(hang).second);
  hang = exampleHang();
  hang.chain->pitch = 1.5;
  BOOST_TEST(refusal(hang).second.find("must be at most 1") != std::string::npos, refusal(hang).second);
  hang.chain->pitch = 0.0;
  BOOST_TEST(refusal(hang).second.find("must be above 0") != std::string::npos, refusal(hang).second);
  hang.chain->pitch = 0.0225;
  hang.chain->fixed = -1.0;
  BOOST_TEST(refusal(hang).second.find("must be 0 or above") != std::string::npos, refusal(hang).second);
  hang.chain->fixed = 101.0;
  BOOST_TEST(refusal(hang).second.find("must be at most 100") != std::string::npos, refusal(hang).second);
}

BOOST_AUTO_TEST_CASE(two_places_that_must_not_be_one) {
  // Nearer than a nanometre is the same place; farther is not.
  for (const double apart : {0.9e-9, 1.1e-9}) {
    hang::Hang hang = foreAft();
    hang.bar.picks = hang::ForeAftPair{{0.4, 0.0}, {0.4, apart}};
    BOOST_TEST(refusal(hang).first == (apart < 1e-9 ? "bar.rear_pick_m" : ""));
    hang = exampleHang();
    auto& pins = std::get<hang::Pinned>(hang.stack[0].joint).pins;
    pins[1] = {pins[0].x + apart, pins[0].z};
    BOOST_TEST(refusal(hang).first == (apart < 1e-9 ? "stack[0].joint.pins_m[1]" : ""));
  }
}

BOOST_AUTO_TEST_CASE(a_pull_back_states_its_force_or_the_tilt_that_it_keeps) {
  hang::Hang hang = pulled(true);
  hang.pullBack->tiltDeg = 1.0;
  BOOST_TEST(refusal(hang).first == "pull_back.tilt_deg");
  hang = pulled(true);
  hang.pullBack->force.reset();
  BOOST_TEST(refusal(hang).first == "pull_back.force_kn");
  hang = foreAft();
  hang.pullBack = pulled(true).pullBack;
  BOOST_TEST(refusal(hang).first.empty());
  hang.pullBack = pulled(false).pullBack;
  BOOST_TEST(refusal(hang).first == "pull_back.tilt_deg");
}

BOOST_AUTO_TEST_CASE(ends_of_a_travel_may_meet_but_not_cross) {
  hang::Hang hang = exampleHang();
  sides(hang).panTravelDeg = {5.0, 5.0};
  BOOST_TEST(refusal(hang).first.empty());
  sides(hang).panTravelDeg = {5.0, 4.9};
  BOOST_TEST(refusal(hang).first == "bar.pan_travel_deg");
}

BOOST_AUTO_TEST_CASE(numbers_of_things) {
  const auto withMark = [](int mark) {
    hang::Hang hang = exampleHang();
    hang.chain->mark = mark;
    return refusal(hang);
  };
  BOOST_TEST(withMark(1).first.empty());
  BOOST_TEST(withMark(100000).first.empty());
  BOOST_TEST(withMark(0).first == "chain.mark");
  BOOST_TEST(withMark(100001).first == "chain.mark");
  BOOST_TEST(withMark(0).second.find("from 1 to 100000") != std::string::npos);

  const auto withHeld = [](int held) {
    hang::Hang hang = seatedHang();
    hang.chain->held = held;
    return refusal(hang);
  };
  BOOST_TEST(withHeld(1).first.empty());
  BOOST_TEST(withHeld(2).first.empty());
  BOOST_TEST(withHeld(0).first == "chain.held");
  BOOST_TEST(withHeld(3).first == "chain.held");
  BOOST_TEST(withHeld(3).second.find("from 1 to 2") != std::string::npos);

  const auto pulledAt = [](int element) {
    hang::Hang hang = pulled(true);
    hang.pullBack->element = element;
    return refusal(hang);
  };
  BOOST_TEST(pulledAt(1).first.empty());
  BOOST_TEST(pulledAt(2).first.empty());
  BOOST_TEST(pulledAt(0).first == "pull_back.element");
  BOOST_TEST(pulledAt(3).first == "pull_back.element");

  hang::Hang many = seatedHang();
  many.chain.reset();
  many.stack.resize(200, many.stack[0]);
  BOOST_TEST(refusal(many).first.empty());
  many.stack.push_back(many.stack[0]);
  BOOST_TEST(refusal(many).first == "stack");
  BOOST_TEST(refusal(many).second.find("at most 200") != std::string::npos);
  many.stack.clear();
  BOOST_TEST(refusal(many).first == "stack");

  hang::Hang cornered = exampleHang();
  cornered.stack[0].outline.resize(3);
  BOOST_TEST(refusal(cornered).first.empty());
  cornered.stack[0].outline.resize(2);
  BOOST_TEST(refusal(cornered).first == "stack[0].outline_m");
}

/// The lowest element needs no pin for another, and only the held one an eye; without a chain no anchor.
BOOST_AUTO_TEST_CASE(what_may_be_left_out) {
  hang::Hang hang = exampleHang();
  hang.stack[1].nextPin.reset();
  hang.stack[0].chainEye.reset();
  BOOST_TEST(refusal(hang).first.empty());
  hang = seatedHang();
  hang.chain.reset();
  hang.bar.chainAnchor.reset();
  hang.stack[0].chainEye.reset();
  hang.stack[1].chainEye.reset();
  BOOST_TEST(refusal(hang).first.empty());
}

/// Nothing that is left out becomes a figure by itself.
BOOST_AUTO_TEST_CASE(a_hang_of_nothing_is_refused_key_by_key) {
  hang::Hang hang;
  hang.bar.picks = hang::SidePair{};
  BOOST_TEST(refusal(hang).first == "bar.pick_spacing_m");
  sides(hang).pickSpacing = 1.0;
  BOOST_TEST(refusal(hang).first == "stack");
  hang.stack.emplace_back();
  BOOST_TEST(refusal(hang).first == "stack[0].mass_kg");
  hang.stack[0].mass = 1.0;
  BOOST_TEST(refusal(hang).first == "stack[0].outline_m");
  hang.stack[0].outline.resize(3);
  BOOST_TEST(refusal(hang).first == "stack[0].joint.contact_m.x");
  hang.stack[0].joint = hang::Pinned{};
  BOOST_TEST(refusal(hang).first == "stack[0].joint.pins_m[1]");
  hang.stack[0].joint = hang::Seated{0.0, {-0.5, 0.0}};
  BOOST_TEST(refusal(hang).first == "set.tilt_deg");
  hang.chain = hang::Chain{};
  BOOST_TEST(refusal(hang).first == "bar.chain_anchor_m");
  hang.bar.chainAnchor = hang::Vec2{};
  BOOST_TEST(refusal(hang).first == "chain.pitch_m");
  hang.chain->pitch = 0.02;
  BOOST_TEST(refusal(hang).first == "chain.mark");
  hang.chain->mark = 1;
  BOOST_TEST(refusal(hang).first == "chain.held");
}

BOOST_AUTO_TEST_SUITE_END()
