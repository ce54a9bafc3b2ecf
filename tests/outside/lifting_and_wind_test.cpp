// SPDX-License-Identifier: GPL-3.0-or-later
// What a hang carries while it is built, and in the wind, against published figures.
#include <algorithm>
#include <array>
#include <cmath>

#include <boost/test/unit_test.hpp>

#include "hang/build_loads.h"
#include "hang/solve.h"
#include "options/house_figures.h"
#include "options/wind_force.h"

using namespace hangbook;

namespace {

constexpr double inch = 0.0254;        // exactly (V)
constexpr double poundForce = 4.44822; // N (V)

/// A load of so many pounds at a place behind the front support, as an element.
hang::Element load(double pounds, double inches) {
  hang::Element made;
  made.name = "load";
  made.mass = pounds * poundForce / standardGravity;
  made.cg = {-inches * inch, -0.3};
  made.nextPin = hang::Vec2{0.0, -0.3};
  made.outline = {{0.0, 0.0}, {0.0, -0.3}, {-0.5, -0.3}, {-0.5, 0.0}};
  made.joint = hang::Pinned{0.0, {hang::Vec2{0.0, -0.03}, hang::Vec2{-0.1, -0.03}}};
  return made;
}

} // namespace

BOOST_AUTO_TEST_SUITE(lifting_and_wind)

/// Engineering Statics (open textbook), ch. 7 "Beam Reactions" (V): supports at 0 and 18 in; 100 lb at 6, 150
/// at 12, 100 at 18; 12 lb/in over 10 in centred at −5 and 29 in: A 196.7 lb, B 393.3 lb. Hung one after the
/// other from two picks, the last step is the book's answer; the ones before follow by the same moments.
BOOST_AUTO_TEST_CASE(beamReactionsStepByStep) {
  hang::Hang hang;
  hang.bar.picks = hang::ForeAftPair{{0.0, 0.0}, {-18.0 * inch, 0.0}};
  hang.bar.frameMass = 0.0;
  hang.bar.stackPin = {0.0, -0.1};
  hang.set.tiltDeg = 0.0;
  const std::array<std::array<double, 2>, 5> loads{
      {{100.0, 6.0}, {150.0, 12.0}, {100.0, 18.0}, {120.0, -5.0}, {120.0, 29.0}}};
  for (const auto& [pounds, inches] : loads) {
    hang.stack.push_back(load(pounds, inches));
  }
  const auto steps = hang::buildSteps(hang, hang::solve(hang));
  double front = 0.0;
  double rear = 0.0;
  for (std::size_t count = 1; count <= loads.size(); ++count) {
    const auto& [pounds, inches] = loads[count - 1];
    rear += pounds * inches / 18.0;
    front += pounds * (18.0 - inches) / 18.0;
    const auto step = std::find_if(steps.begin(), steps.end(), [count](const hang::BuildStep& each) {
      return each.stage == hang::BuildStage::stacked && each.cabinets == static_cast<int>(count);
    });
    BOOST_REQUIRE((step != steps.end()));
    BOOST_TEST(step->most[0] / poundForce == front, boost::test_tools::tolerance(1e-9));
    BOOST_TEST(step->most[1] / poundForce == rear, boost::test_tools::tolerance(1e-9));
  }
  BOOST_TEST(std::abs(front - 196.7) < 0.05);
  BOOST_TEST(std::abs(rear - 393.3) < 0.05);
  // Before the last load comes the front support carries more than in the book: 196.67 + 120 · 11/18.
  const hang::BuildWorst worst =
      hang::BuildUp(hang.bar, hang.stack, hang.chain).worst(hang.set, hang::solve(hang));
  BOOST_TEST(worst.most[0] / poundForce == front + 120.0 * 11.0 / 18.0, boost::test_tools::tolerance(1e-9));
  BOOST_TEST(worst.mostAt[0].cabinets == 4);
}

/// EN 1991-1-4 § 4.5, q = ρ v²/2 with ρ = 1.25 kg/m³: 26 m/s gives 422.5 N/m² (V), 40.9 m/s 1.046 kPa (I).
BOOST_AUTO_TEST_CASE(pressureOfTheWind) {
  BOOST_TEST(options::gustPressure(26.0) == 422.5, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(options::gustPressure(40.9) / 1000.0 == 1.046, boost::test_tools::tolerance(1e-3));
}

/// A city's event guide (V): every structure's plan acts at 60 % and 80 % of its limit. A house may only act
/// sooner.
BOOST_AUTO_TEST_CASE(actionFigures) {
  const options::House house({}, {}, {});
  BOOST_TEST(house.figure(QStringLiteral("wind-first-action")).value.value() == 60.0);
  BOOST_TEST(house.figure(QStringLiteral("wind-second-action")).value.value() == 80.0);
  const options::House loose({{QStringLiteral("wind-second-action"), 95.0, {}, {}, {}, {}}}, {}, {});
  BOOST_TEST(loose.figure(QStringLiteral("wind-second-action")).value.value() == 80.0);
}

BOOST_AUTO_TEST_SUITE_END()
