// SPDX-License-Identifier: GPL-3.0-or-later
// What must hold for any hang: mirror it, scale it, take it apart, break it.
#include <boost/test/unit_test.hpp>

#include <cmath>
#include <limits>
#include <thread>
#include <vector>

#include "hang/check.h"
#include "hang/layout.h"
#include "hang/solve.h"
#include "quantity/error.h"
#include "support/example_hang.h"
#include "support/random_hang.h"

using namespace hangbook;
using hangbook::testing::exampleHang;
using hangbook::testing::Held;
using hangbook::testing::RandomHangs;

namespace {

std::optional<hang::Statics> solved(const hang::Hang& hang) {
  try {
    return hang::solve(hang);
  } catch (const Error& error) {
    BOOST_REQUIRE(error.trouble() == Trouble::notPossible);
    return std::nullopt;
  }
}

void near(double a, double b) {
  BOOST_TEST(std::abs(a - b) <= 1e-8 * std::max(1.0, std::abs(b)), a << " is not " << b);
}

/// Same seed, so that all properties see the same sort of hangs.
template <class Check>
void forManyHangs(Check check) {
  RandomHangs hangs(99);
  int seen = 0;
  for (int i = 0; i < 3000; ++i) {
    const hang::Hang hang = hangs.next();
    if (const auto statics = solved(hang)) {
      ++seen;
      BOOST_TEST_CONTEXT("hang " << i) {
        check(hang, *statics);
      }
    }
  }
  BOOST_TEST(seen > 1500);
}

void scaleMasses(hang::Hang& hang, double factor) {
  hang.bar.frameMass *= factor;
  if (auto* pair = std::get_if<hang::SidePair>(&hang.bar.picks)) {
    pair->headMass *= factor;
  }
  for (hang::Element& element : hang.stack) {
    element.mass *= factor;
  }
}

} // namespace

BOOST_AUTO_TEST_SUITE(solve)

BOOST_AUTO_TEST_CASE(mirroring_the_pan_changes_sides_and_nothing_else) {
  forManyHangs([](hang::Hang hang, const hang::Statics& statics) {
    hang.set.panDeg = -hang.set.panDeg;
    const hang::Statics mirrored = hang::solve(hang);
    if (statics.side) {
      near(mirrored.pickLoads[0].load, statics.pickLoads[1].load);
      near(mirrored.pickLoads[1].load, statics.pickLoads[0].load);
      near(mirrored.side->rollDeg, -statics.side->rollDeg);
      near(mirrored.side->azimuthDeg, -statics.side->azimuthDeg);
      near(mirrored.side->actuatorDeg, statics.side->actuatorDeg);
      near(mirrored.side->headSwingDeg, statics.side->headSwingDeg);
      near(mirrored.cg.y, -statics.cg.y);
    }
    near(mirrored.tiltDeg, statics.tiltDeg);
    near(mirrored.bottom, statics.bottom);
    for (std::size_t i = 0; i < statics.joints.size(); ++i) {
      near(mirrored.joints[i].gravityMoment, statics.joints[i].gravityMoment);
      near(mirrored.joints[i].pinForces[0], statics.joints[i].pinForces[0]);
    }
  });
}

BOOST_AUTO_TEST_CASE(heavier_in_the_same_places_scales_the_loads_and_turns_nothing) {
  forManyHangs([](hang::Hang hang, const hang::Statics& statics) {
    constexpr double factor = 1.75;
    scaleMasses(hang, factor);
    const hang::Statics heavier = hang::solve(hang);
    near(heavier.tiltDeg, statics.tiltDeg);
    near(heavier.bottom, statics.bottom);
    near(heavier.mass, factor * statics.mass);
    for (std::size_t i = 0; i < statics.pickCount; ++i) {
      near(heavier.pickLoads[i].load, factor * statics.pickLoads[i].load);
    }
    if (statics.chain) {
      near(heavier.chain->tension, factor * statics.chain->tension);
    }
    for (std::size_t i = 0; i < statics.joints.size(); ++i) {
      near(heavier.joints[i].pinForces[0], factor * statics.joints[i].pinForces[0]);
      near(heavier.joints[i].pinForces[1], factor * statics.joints[i].pinForces[1]);
      near(heavier.joints[i].contact.value_or(0.0), factor * statics.joints[i].contact.value_or(0.0));
    }
  });
}

BOOST_AUTO_TEST_CASE(picks_carry_the_whole_and_no_figure_is_unbounded) {
  forManyHangs([](const hang::Hang&, const hang::Statics& statics) {
    double sum = 0.0;
    for (std::size_t i = 0; i < statics.pickCount; ++i) {
      BOOST_TEST(std::isfinite(statics.pickLoads[i].load));
      sum += statics.pickLoads[i].load;
    }
    near(sum, statics.mass * 9.80665);
    BOOST_TEST(std::isfinite(statics.bottom));
  });
}

BOOST_AUTO_TEST_CASE(the_layout_stands_where_the_statics_say) {
  forManyHangs([](const hang::Hang& hang, const hang::Statics& statics) {
    const hang::Layout layout = hang::layOut(hang, statics);
    double lowest = std::numeric_limits<double>::max();
    hang::Vec3 moment = hang.bar.frameMass * layout.frameCg;
    double mass = hang.bar.frameMass;
    if (layout.headCg) {
      const double headMass = std::get<hang::SidePair>(hang.bar.picks).headMass;
      moment = moment + headMass * *layout.headCg;
      mass += headMass;
    }
    for (std::size_t i = 0; i < layout.elements.size(); ++i) {
      const hang::PlacedElement& element = layout.elements[i];
      for (const hang::Vec3& corner : element.outline) {
        lowest = std::min(lowest, corner.z);
      }
      moment = moment + hang.stack[i].mass * element.cg;
      mass += hang.stack[i].mass;
      near(hang::toRadians(element.aimDeg), std::asin(element.forward.z));
      const hang::Vec3 above = i == 0 ? layout.stackPin : *layout.elements[i - 1].nextPin;
      near(element.pin.x, above.x);
      near(element.pin.y, above.y);
      near(element.pin.z, above.z);
    }
    near(lowest, statics.bottom);
    near(moment.x / mass, statics.cg.x);
    near(moment.y / mass, statics.cg.y);
    near(moment.z / mass, statics.cg.z);
    if (statics.chain) {
      const hang::Vec3 eye = *layout.elements[static_cast<std::size_t>(hang.chain->held) - 1].chainEye;
      const hang::Vec3 way = *layout.chainAnchor + -1.0 * eye;
      near(std::hypot(way.x, way.y, way.z), statics.chain->straight);
    }
  });
}

BOOST_AUTO_TEST_CASE(a_stepwise_solver_gives_the_same_as_one_call) {
  hang::Hang hang = exampleHang();
  hang::Solver solver(hang.bar, hang.stack, hang.chain);
  hang::Statics reused;
  for (const int mark : {37, 35, 38, 37}) {
    hang.chain->mark = mark;
    solver.useMark(mark);
    solver.at(hang.set, reused);
    const hang::Statics once = hang::solve(hang);
    BOOST_TEST(reused.chain->tension == once.chain->tension);
    BOOST_TEST(reused.joints[1].angleDeg == once.joints[1].angleDeg);
    BOOST_TEST(reused.side->actuatorDeg == once.side->actuatorDeg);
  }
  BOOST_CHECK_THROW(solver.useMark(500), Error);
  const auto trouble = [&solver](int mark) {
    try {
      solver.useMark(mark);
    } catch (const Error& error) {
      return error.trouble();
    }
    BOOST_FAIL("that mark was taken");
    return Trouble::badInput;
  };
  BOOST_TEST((trouble(0) == Trouble::badInput));
  BOOST_TEST((trouble(hang::mostMark + 1) == Trouble::badInput));
  BOOST_TEST((trouble(1) == Trouble::notPossible)); // a chain, but too short
  BOOST_TEST((trouble(hang::mostMark) == Trouble::notPossible));
  solver.useMark(37);
  BOOST_TEST(solver.at(hang.set).mass == 250.0);
}

BOOST_AUTO_TEST_CASE(the_same_on_any_thread) {
  const hang::Hang hang = exampleHang();
  const hang::Statics here = hang::solve(hang);
  std::vector<double> found(4);
  std::vector<std::thread> threads;
  for (double& one : found) {
    threads.emplace_back([&hang, &one] {
      for (int i = 0; i < 500; ++i) {
        one = hang::solve(hang).chain->tension;
      }
    });
  }
  for (std::thread& thread : threads) {
    thread.join();
  }
  for (const double one : found) {
    BOOST_TEST(one == here.chain->tension);
  }
}

BOOST_AUTO_TEST_CASE(any_figure_that_is_missing_or_absurd_is_refused_and_never_answered_with_nan) {
  const double nan = std::numeric_limits<double>::quiet_NaN();
  const double infinite = std::numeric_limits<double>::infinity();
  for (const double bad : {nan, infinite, -infinite, 1e30, -1e30}) {
    std::vector<hang::Hang> broken(12, exampleHang());
    std::get<hang::SidePair>(broken[0].bar.picks).pickSpacing = bad;
    std::get<hang::SidePair>(broken[1].bar.picks).headMass = bad;
    std::get<hang::SidePair>(broken[2].bar.picks).tiltAxis.x = bad;
    broken[3].bar.frameMass = bad;
    broken[4].bar.stackPin.z = bad;
    broken[5].stack[1].mass = bad;
    broken[6].stack[0].cg.x = bad;
    broken[7].stack[1].outline[2].z = bad;
    broken[8].chain->pitch = bad;
    broken[9].set.tiltDeg = bad;
    broken[10].set.panDeg = bad;
    std::get<hang::Pivot>(broken[11].stack[1].joint).travelDeg.low = bad;
    for (std::size_t i = 0; i < broken.size(); ++i) {
      BOOST_TEST_CONTEXT("figure " << i << " is " << bad) {
        BOOST_CHECK_EXCEPTION(hang::solve(broken[i]), Error, [](const Error& error) {
          return error.trouble() == Trouble::badInput && !error.place().empty();
        });
      }
    }
  }
}

BOOST_AUTO_TEST_SUITE_END()
