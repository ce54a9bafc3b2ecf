// SPDX-License-Identifier: GPL-3.0-or-later
// The way a hang settles, its tension and its gravity moments, against least potential energy (found by
// NLopt, a general-purpose library) and virtual work. Certainty: C (recomputed by another method).
#include <boost/test/unit_test.hpp>

#include <cmath>
#include <functional>
#include <vector>

#include <nlopt.hpp>

#include "hang/solve.h"
#include "outside/rigid_hang.h"
#include "quantity/quantity.h"
#include "support/random_hang.h"

using namespace hangbook;
using hangbook::testing::RigidHang;
using hangbook::testing::rigidHang;

namespace {

/// What is free to move: the swing, and the pivot on its chain.
struct Free {
  bool swing = false;
  int pivot = -1;

  std::size_t count() const { return (swing ? 1U : 0U) + (pivot >= 0 ? 1U : 0U); }
};

Free freeOf(const hang::Hang& hang) {
  Free free;
  free.swing = !std::holds_alternative<hang::ForeAftPair>(hang.bar.picks);
  for (std::size_t i = 0; i < hang.stack.size(); ++i) {
    if (std::holds_alternative<hang::Pivot>(hang.stack[i].joint)) {
      free.pivot = static_cast<int>(i);
    }
  }
  return free;
}

void place(RigidHang& shape, const Free& free, const std::vector<double>& at) {
  std::size_t next = 0;
  if (free.swing) {
    shape.swing = at[next++];
  }
  if (free.pivot >= 0) {
    shape.joint[static_cast<std::size_t>(free.pivot)] = at[next];
  }
}

/// Value and, by central differences, slope of a function of the free coordinates.
struct Measured {
  RigidHang& shape;
  const Free& free;
  std::function<double(const RigidHang&)> measure;

  double value(const std::vector<double>& at) const {
    place(shape, free, at);
    return measure(shape);
  }
  static double call(const std::vector<double>& at, std::vector<double>& slope, void* data) {
    const Measured& self = *static_cast<Measured*>(data);
    for (std::size_t i = 0; i < slope.size(); ++i) {
      constexpr double step = 1e-5;
      std::vector<double> moved = at;
      moved[i] = at[i] + step;
      const double above = self.value(moved);
      moved[i] = at[i] - step;
      slope[i] = (above - self.value(moved)) / (2.0 * step);
    }
    return self.value(at);
  }
};

/// The least-energy place of the free coordinates, started away from the answer.
std::vector<double> settle(const hang::Hang& hang, RigidHang& shape, const Free& free,
                           const std::vector<double>& start) {
  const double totalMass = [&] {
    double sum = 0.0;
    for (const RigidHang::Weight& weight : shape.weights()) {
      sum += weight.mass;
    }
    return sum;
  }();
  Measured energy{shape, free, [&](const RigidHang& at) { return at.massHeight() / totalMass; }};
  nlopt::opt search(nlopt::LD_SLSQP, static_cast<unsigned>(free.count()));
  search.set_min_objective(Measured::call, &energy);
  Measured taut{shape, free,
                [&](const RigidHang& at) { return at.anchorToEye() - hang::chainLength(*hang.chain); }};
  if (free.pivot >= 0) {
    search.add_inequality_constraint(Measured::call, &taut, 1e-13);
  }
  search.set_xtol_abs(1e-11);
  search.set_maxeval(500);
  std::vector<double> at = start;
  double least = 0.0;
  try {
    search.optimize(at, least);
  } catch (const nlopt::roundoff_limited&) {
    // As near as doubles allow.
  }
  return at;
}

/// −dE/dα: the moment that gravity puts on one coordinate, by central differences.
double virtualMoment(RigidHang shape, std::size_t joint) {
  constexpr double step = 1e-4;
  const double here = shape.joint[joint];
  shape.joint[joint] = here + step;
  const double above = shape.massHeight();
  shape.joint[joint] = here - step;
  return -standardGravity * (above - shape.massHeight()) / (2.0 * step);
}

double lengthSlope(RigidHang shape, std::size_t joint) {
  constexpr double step = 1e-5;
  const double here = shape.joint[joint];
  shape.joint[joint] = here + step;
  const double above = shape.anchorToEye();
  shape.joint[joint] = here - step;
  return (above - shape.anchorToEye()) / (2.0 * step);
}

void compareWithLeastEnergy(const hang::Hang& hang, const hang::Statics& statics) {
  const Free free = freeOf(hang);
  const RigidHang solved = rigidHang(hang, statics);
  std::vector<double> expected;
  if (free.swing) {
    expected.push_back(solved.swing);
  }
  if (free.pivot >= 0) {
    expected.push_back(solved.joint[static_cast<std::size_t>(free.pivot)]);
  }
  std::vector<double> start = expected;
  for (double& coordinate : start) {
    coordinate += 0.05;
  }
  RigidHang shape = solved;
  const std::vector<double> found = settle(hang, shape, free, start);
  for (std::size_t i = 0; i < found.size(); ++i) {
    BOOST_TEST(std::abs(found[i] - expected[i]) < 1e-6); // rad: as far as the search gets
  }
}

} // namespace

BOOST_AUTO_TEST_SUITE(least_energy)

BOOST_AUTO_TEST_CASE(thousands_of_hangs_settle_where_their_energy_is_least) {
  int compared = 0;
  testing::overSolvedHangs(20270402, 6000, [&](int i, const hang::Hang& hang, const hang::Statics& statics) {
    const Free free = freeOf(hang);
    // A chain that would have to push is slack: its shape is not the one that hang/1 asks for.
    const bool pulls = free.pivot < 0 || statics.chain->tension > 1.0;
    if (free.count() == 0 || !pulls) {
      return;
    }
    ++compared;
    BOOST_TEST_CONTEXT("hang " << i) {
      compareWithLeastEnergy(hang, statics);
    }
  });
  BOOST_TEST_MESSAGE(compared << " hangs compared");
  BOOST_TEST(compared > 2000);
}

BOOST_AUTO_TEST_CASE(moments_and_tension_are_what_virtual_work_says) {
  const int compared =
      testing::overSolvedHangs(7, 6000, [](int i, const hang::Hang& hang, const hang::Statics& statics) {
        const RigidHang shape = rigidHang(hang, statics);
        BOOST_TEST_CONTEXT("hang " << i) {
          for (std::size_t joint = 0; joint < statics.joints.size(); ++joint) {
            BOOST_TEST(std::abs(virtualMoment(shape, joint) - statics.joints[joint].gravityMoment) <
                       1e-3); // N m
          }
          const int pivot = freeOf(hang).pivot;
          if (pivot >= 0) {
            const auto at = static_cast<std::size_t>(pivot);
            const double tension = virtualMoment(shape, at) / lengthSlope(shape, at);
            BOOST_TEST(std::abs(tension - statics.chain->tension) <
                       1e-5 * std::max(1000.0, std::abs(tension)));
            BOOST_TEST(std::abs(shape.anchorToEye() - hang::chainLength(*hang.chain)) < 1e-9);
          }
          const Eigen::Isometry3d frame = shape.frame();
          BOOST_TEST(std::abs(std::asin((frame.linear() * Eigen::Vector3d::UnitX()).z()) / RigidHang::degree -
                              statics.tiltDeg) < 1e-7);
        }
      });
  BOOST_TEST(compared > 3000);
}

BOOST_AUTO_TEST_SUITE_END()
