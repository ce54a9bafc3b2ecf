// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/unit_test.hpp>

#include <algorithm>
#include <cmath>
#include <vector>

#include "hang/solve.h"
#include "hang/tilt.h"
#include "quantity/error.h"
#include "quantity/quantity.h"
#include "support/example_hang.h"
#include "support/random_hang.h"

using namespace hangbook;
using hangbook::testing::exampleHang;

namespace {

bool notPossible(const Error& error) {
  return error.trouble() == Trouble::notPossible;
}

hang::Solver solverOf(const hang::Hang& hang) {
  return {hang.bar, hang.stack, hang.chain};
}

hang::Setting tilted(double deg, double panDeg = 0.0) {
  hang::Setting set;
  set.tiltDeg = deg;
  set.panDeg = panDeg;
  return set;
}
hang::Setting driven(double deg, double panDeg = 0.0) {
  hang::Setting set;
  set.actuatorDeg = deg;
  set.panDeg = panDeg;
  return set;
}

} // namespace

BOOST_AUTO_TEST_SUITE(balance)

BOOST_AUTO_TEST_CASE(a_side_pair_without_pan_shares_evenly_and_does_not_roll) {
  const hang::Hang hang = exampleHang();
  const hang::Statics statics = solverOf(hang).at(tilted(-3.0));
  BOOST_TEST(statics.pickLoads[0].load == statics.pickLoads[1].load, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(statics.pickLoads[0].load == 125.0 * standardGravity, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(std::abs(statics.side->rollDeg) < 1e-12);
  BOOST_TEST(std::abs(statics.side->azimuthDeg) < 1e-12);
  BOOST_TEST(std::abs(statics.side->actuatorDeg + statics.side->headSwingDeg - statics.tiltDeg) < 1e-9);
}

BOOST_AUTO_TEST_CASE(pan_to_the_left_turns_the_aim_left_and_rolls_as_design_states) {
  const hang::Hang hang = exampleHang();
  const hang::Statics statics = solverOf(hang).at(tilted(-3.0, 5.0));
  BOOST_TEST(statics.side->azimuthDeg > 4.0);
  BOOST_TEST(std::abs(std::abs(statics.side->rollDeg) - 1.3) < 0.05); // design/statics: "rolls 1.3°", V
}

BOOST_AUTO_TEST_CASE(a_wanted_tilt_is_met_and_the_same_actuator_gives_it_back) {
  const hang::Hang hang = exampleHang();
  const hang::Solver solver = solverOf(hang);
  for (const double tilt : {-3.0, -1.0, 2.5, 8.0}) {
    for (const double pan : {-20.0, 0.0, 12.5}) {
      const hang::Statics statics = solver.at(tilted(tilt, pan));
      BOOST_TEST(std::abs(statics.tiltDeg - tilt) < 1e-10);
      BOOST_TEST(std::abs(solver.at(driven(statics.side->actuatorDeg, pan)).tiltDeg - tilt) < 1e-10);
    }
  }
}

BOOST_AUTO_TEST_CASE(the_ends_of_the_travel_can_be_asked_for_by_their_tilt) {
  const hang::Hang hang = exampleHang();
  const hang::Solver solver = solverOf(hang);
  for (const double end : {-20.0, 20.0}) {
    const double tilt = solver.at(driven(end, 7.0)).tiltDeg;
    BOOST_TEST(std::abs(solver.at(tilted(tilt, 7.0)).side->actuatorDeg - end) < 1e-6);
    const double beyond = tilt + (end > 0.0 ? 1e-6 : -1e-6);
    BOOST_CHECK_EXCEPTION(solver.at(tilted(beyond, 7.0)), Error, notPossible);
  }
}

BOOST_AUTO_TEST_CASE(what_lies_beyond_its_travel_is_not_possible) {
  const hang::Hang hang = exampleHang();
  const hang::Solver solver = solverOf(hang);
  BOOST_CHECK_EXCEPTION(solver.at(driven(20.001)), Error, notPossible);
  BOOST_CHECK_EXCEPTION(solver.at(driven(0.0, -20.001)), Error, notPossible);
  BOOST_CHECK_EXCEPTION(solver.at(tilted(95.0)), Error, notPossible);
  BOOST_TEST(solver.at(driven(20.0, -20.0)).mass == 250.0);
}

BOOST_AUTO_TEST_CASE(where_two_actuator_angles_give_a_tilt_the_one_nearest_to_0_is_taken) {
  hang::Hang hang = exampleHang();
  auto& pair = std::get<hang::SidePair>(hang.bar.picks);
  // Picks close above a heavy tilt axis and a long travel: the aim turns back on its way.
  pair.tiltAxis = {0.0, -0.05};
  pair.headMass = 1.0;
  pair.tiltTravelDeg = {-170.0, 170.0};
  const hang::Solver solver = solverOf(hang);
  const hang::TiltCurve curve(pair, solver.assembly(), 0.0);
  const double tilt = solver.at(driven(30.0)).tiltDeg;
  const auto all = hang::actuatorsAt(curve, pair.tiltTravelDeg, std::sin(hang::toRadians(tilt)));
  BOOST_REQUIRE(all.size() > 1);
  const double taken = solver.at(tilted(tilt)).side->actuatorDeg;
  for (const double deg : all) {
    BOOST_TEST(std::abs(solver.at(driven(deg)).tiltDeg - tilt) < 1e-7);
    BOOST_TEST(std::abs(taken) <= std::abs(deg));
  }
}

/// Near the highest and lowest tilt two angles give it, close together: a walk in small steps sees the aim
/// pass the tilt as often as angles are found.
BOOST_AUTO_TEST_CASE(every_actuator_that_gives_a_tilt_is_found_near_its_highest_and_lowest_too) {
  hangbook::testing::RandomHangs random(31);
  int pairs = 0;
  for (int i = 0; i < 120; ++i) {
    hang::Hang hang = random.next(0, hangbook::testing::Held::nothing);
    auto& pair = std::get<hang::SidePair>(hang.bar.picks);
    pair.tiltTravelDeg = {-random.between(20.0, 170.0), random.between(20.0, 170.0)};
    pair.headMass *= random.between(1.0, 12.0);
    const double panDeg = random.between(-25.0, 25.0);
    const hang::TiltCurve curve(pair, solverOf(hang).assembly(), panDeg);
    std::vector<double> aims;
    constexpr int steps = 4000;
    for (int step = 0; step <= steps; ++step) {
      const double deg =
          pair.tiltTravelDeg.low + (pair.tiltTravelDeg.high - pair.tiltTravelDeg.low) * step / steps;
      aims.push_back(curve.elevationDeg(hang::turnBy(hang::toRadians(deg))));
    }
    const auto [lowest, highest] = std::ranges::minmax(aims);
    // The reach is no less than any step's aim, and no more than the aim can turn back between two steps.
    const hang::Range reach = hang::tiltReach(pair, solverOf(hang).assembly(), panDeg);
    BOOST_TEST((reach.low <= lowest + 1e-9 && reach.low > lowest - 1e-3));
    BOOST_TEST((reach.high >= highest - 1e-9 && reach.high < highest + 1e-3));
    for (const double below : {1e-4, 1e-3, 1e-2, 0.3}) {
      for (const double tilt : {highest - below, lowest + below}) {
        std::size_t passed = 0;
        for (int step = 0; step < steps; ++step) {
          const auto at = static_cast<std::size_t>(step);
          passed += (aims[at] > tilt) != (aims[at + 1] > tilt) ? 1 : 0;
        }
        const auto found = hang::actuatorsAt(curve, pair.tiltTravelDeg, std::sin(hang::toRadians(tilt)));
        BOOST_TEST(found.size() == passed);
        pairs += passed > 1 ? 1 : 0;
      }
    }
  }
  BOOST_TEST(pairs > 100);
}

BOOST_AUTO_TEST_CASE(no_reachable_tilt_is_called_out_of_reach) {
  hangbook::testing::RandomHangs random(5);
  int asked = 0;
  for (int i = 0; i < 400; ++i) {
    const hang::Hang hang = random.next(0, hangbook::testing::Held::nothing);
    const hang::Solver solver = solverOf(hang);
    for (int k = 0; k < 5; ++k) {
      const double actuator = random.between(-25.0, 25.0);
      const double pan = random.between(-30.0, 30.0);
      const double tilt = solver.at(driven(actuator, pan)).tiltDeg;
      BOOST_TEST(std::abs(solver.at(tilted(tilt, pan)).tiltDeg - tilt) < 1e-9);
      const auto& pair = std::get<hang::SidePair>(hang.bar.picks);
      const hang::Range reach = hang::tiltReach(pair, solver.assembly(), pan);
      BOOST_TEST((tilt > reach.low - 1e-9 && tilt < reach.high + 1e-9));
      ++asked;
    }
  }
  BOOST_TEST(asked == 2000);
}

/// Where the centre lies on the line of the picks the frame has no elevation of its own: it counts as level.
BOOST_AUTO_TEST_CASE(a_centre_on_the_pick_line_has_no_elevation) {
  hang::SidePair pair;
  pair.headMass = 1.0;
  hang::Assembly assembly;
  assembly.mass = 1.0;
  const hang::TiltCurve curve(pair, assembly, 10.0);
  BOOST_TEST(curve.elevationDeg(hang::turnBy(0.3)) == 0.0);
  BOOST_TEST(curve.miss(hang::turnBy(0.3), 0.2) == 0.0);
}

BOOST_AUTO_TEST_CASE(a_centre_of_gravity_on_the_pick_line_settles_nowhere) {
  hang::Hang hang = exampleHang();
  hang.bar.picks = hang::SinglePick{hang::Solver(hang.bar, hang.stack, hang.chain).assembly().cg};
  hang.set = {};
  BOOST_CHECK_EXCEPTION(hang::solve(hang), Error, notPossible);
}

BOOST_AUTO_TEST_CASE(fore_and_aft_loads_follow_the_lever) {
  hang::Hang hang = exampleHang();
  hang.bar.picks = hang::ForeAftPair{{0.5, 0.0}, {-0.5, 0.0}};
  const hang::Solver solver = solverOf(hang);
  const hang::Statics statics = solver.at(tilted(0.0));
  const double weight = statics.mass * standardGravity;
  BOOST_TEST(statics.pickLoads[0].load == weight * (solver.assembly().cg.x + 0.5),
             boost::test_tools::tolerance(1e-12));
  BOOST_TEST(statics.cg.x == solver.assembly().cg.x - 0.5, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(!statics.side.has_value());
  BOOST_CHECK_EXCEPTION(solver.at(tilted(90.0)), Error, notPossible);
}

BOOST_AUTO_TEST_CASE(a_hoist_that_would_have_to_push_is_reported_below_0) {
  hang::Hang hang = exampleHang();
  hang.bar.picks = hang::ForeAftPair{{0.6, 0.0}, {0.4, 0.0}};
  const hang::Statics statics = solverOf(hang).at(tilted(0.0));
  BOOST_TEST(statics.pickLoads[0].load < 0.0);
  BOOST_TEST(statics.pickLoads[0].load + statics.pickLoads[1].load == statics.mass * standardGravity,
             boost::test_tools::tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(a_single_pick_has_its_centre_straight_below) {
  hang::Hang hang = exampleHang();
  hang.bar.picks = hang::SinglePick{{-0.1, 0.05}};
  const hang::Statics statics = solverOf(hang).at({});
  BOOST_TEST(statics.pickCount == 1);
  BOOST_TEST(statics.pickLoads[0].load == 214.0 * standardGravity, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(statics.cg.x == 0.0);
  BOOST_TEST(statics.cg.z < 0.0);
}

BOOST_AUTO_TEST_SUITE_END()
