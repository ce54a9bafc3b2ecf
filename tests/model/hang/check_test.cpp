// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/unit_test.hpp>

#include <functional>
#include <string>

#include "hang/check.h"
#include "hang/solve.h"
#include "quantity/error.h"
#include "support/example_hang.h"

using namespace hangbook;
using hangbook::testing::exampleHang;
using hangbook::testing::seatedHang;

namespace {

void refusedAt(const std::string& place, hang::Hang hang, const std::function<void(hang::Hang&)>& breakIt) {
  breakIt(hang);
  BOOST_TEST_CONTEXT(place) {
    BOOST_CHECK_EXCEPTION(hang::solve(hang), Error, [&](const Error& error) {
      BOOST_TEST(error.place() == place);
      return error.trouble() == Trouble::badInput;
    });
  }
}

} // namespace

BOOST_AUTO_TEST_SUITE(check)

BOOST_AUTO_TEST_CASE(each_refusal_names_its_key) {
  const hang::Hang whole = exampleHang();
  refusedAt("bar.pick_spacing_m", whole,
            [](hang::Hang& hang) { std::get<hang::SidePair>(hang.bar.picks).pickSpacing = 0.0; });
  refusedAt("bar.tilt_travel_deg", whole, [](hang::Hang& hang) {
    std::get<hang::SidePair>(hang.bar.picks).tiltTravelDeg = {5.0, -5.0};
  });
  refusedAt("bar.head_cg_m.z", whole,
            [](hang::Hang& hang) { std::get<hang::SidePair>(hang.bar.picks).headCg.z = 101.0; });
  refusedAt("bar.frame_mass_kg", whole, [](hang::Hang& hang) { hang.bar.frameMass = -1.0; });
  refusedAt("bar.chain_anchor_m", whole, [](hang::Hang& hang) { hang.bar.chainAnchor.reset(); });
  refusedAt("stack", whole, [](hang::Hang& hang) { hang.stack.clear(); });
  refusedAt("stack", whole, [](hang::Hang& hang) { hang.stack.resize(201, hang.stack[0]); });
  refusedAt("stack[1].mass_kg", whole, [](hang::Hang& hang) { hang.stack[1].mass = 0.0; });
  refusedAt("stack[0].next_pin_m", whole, [](hang::Hang& hang) { hang.stack[0].nextPin.reset(); });
  refusedAt("stack[1].chain_eye_m", whole, [](hang::Hang& hang) { hang.stack[1].chainEye.reset(); });
  refusedAt("stack[0].outline_m", whole, [](hang::Hang& hang) { hang.stack[0].outline.resize(2); });
  refusedAt("stack[0].joint.pins_m[1]", whole, [](hang::Hang& hang) {
    auto& pins = std::get<hang::Pinned>(hang.stack[0].joint).pins;
    pins[1] = pins[0];
  });
  refusedAt("stack[0].joint.contact_m.x", seatedHang(),
            [](hang::Hang& hang) { std::get<hang::Seated>(hang.stack[0].joint).contact.x = 0.0; });
  refusedAt("stack[0].joint.open_to_deg", seatedHang(),
            [](hang::Hang& hang) { std::get<hang::Seated>(hang.stack[0].joint).openToDeg = -1.0; });
  refusedAt("chain.mark", whole, [](hang::Hang& hang) { hang.chain->mark = 0; });
  refusedAt("chain.held", whole, [](hang::Hang& hang) { hang.chain->held = 3; });
  refusedAt("chain.fixed_m", whole, [](hang::Hang& hang) { hang.chain->fixed = -0.1; });
}

BOOST_AUTO_TEST_CASE(a_pivot_stands_only_where_the_chain_holds) {
  const hang::Hang whole = exampleHang();
  refusedAt("stack[1].joint.kind", whole, [](hang::Hang& hang) { hang.chain.reset(); });
  refusedAt("stack[1].joint.kind", whole, [](hang::Hang& hang) { hang.chain->held = 1; });
  refusedAt("stack[0].joint.kind", whole,
            [](hang::Hang& hang) { hang.stack[0].joint = hang.stack[1].joint; });
}

BOOST_AUTO_TEST_CASE(a_setting_fits_its_picks) {
  const hang::Hang whole = exampleHang();
  const auto foreAft = [](hang::Hang& hang) { hang.bar.picks = hang::ForeAftPair{{0.4, 0.0}, {-0.4, 0.0}}; };
  const auto single = [](hang::Hang& hang) { hang.bar.picks = hang::SinglePick{{0.0, 0.0}}; };
  refusedAt("set.actuator_deg", whole, [](hang::Hang& hang) { hang.set.actuatorDeg = 1.0; });
  refusedAt("set.tilt_deg", whole, [](hang::Hang& hang) { hang.set.tiltDeg.reset(); });
  refusedAt("set.pan_deg", whole, foreAft);
  refusedAt("set.tilt_deg", whole, [&](hang::Hang& hang) {
    foreAft(hang);
    hang.set = {};
  });
  refusedAt("set.tilt_deg", whole, [&](hang::Hang& hang) {
    single(hang);
    hang.set.panDeg = 0.0;
  });
  refusedAt("set.actuator_deg", whole, [&](hang::Hang& hang) {
    single(hang);
    hang.set = {std::nullopt, 1.0, 0.0};
  });
  refusedAt("bar.rear_pick_m", whole, [](hang::Hang& hang) {
    hang.bar.picks = hang::ForeAftPair{{0.4, 0.0}, {0.4, 0.0}};
    hang.set.panDeg = 0.0;
  });
}

BOOST_AUTO_TEST_SUITE_END()
