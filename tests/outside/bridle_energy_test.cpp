// SPDX-License-Identifier: GPL-3.0-or-later
// The shape of random bridles against least potential energy under constraints, found by NLopt (a
// general-purpose library). Certainty: C (recomputed by another method).
#include <boost/test/unit_test.hpp>

#include <algorithm>
#include <cmath>
#include <limits>
#include <vector>

#include <nlopt.hpp>

#include "hang/bridle.h"
#include "quantity/error.h"
#include "support/random_hang.h"

using namespace hangbook;
using hang::BridleLeg;
using hang::Vec3;
using hangbook::testing::RandomHangs;

namespace {

double away(Vec3 a, Vec3 b) {
  return std::sqrt((a.x - b.x) * (a.x - b.x) + (a.y - b.y) * (a.y - b.y) + (a.z - b.z) * (a.z - b.z));
}

struct Problem {
  const std::vector<BridleLeg>* legs;
  Vec3 load;
  double scale; ///< so that energies come out near 1
};

double energy(const std::vector<double>& at, std::vector<double>& slope, void* data) {
  const Problem& problem = *static_cast<Problem*>(data);
  const Vec3 apex{at[0], at[1], at[2]};
  const Vec3 load = problem.load;
  double value = -(load.x * apex.x + load.y * apex.y + load.z * apex.z);
  std::vector<double> way{-load.x, -load.y, -load.z};
  for (const BridleLeg& leg : *problem.legs) {
    const double length = away(apex, leg.point);
    const double stretch = std::isinf(leg.stiffness) ? 0.0 : std::max(0.0, length - leg.length);
    if (stretch > 0.0) {
      value += 0.5 * leg.stiffness * stretch * stretch;
      const double pull = leg.stiffness * stretch / length;
      way[0] += pull * (apex.x - leg.point.x);
      way[1] += pull * (apex.y - leg.point.y);
      way[2] += pull * (apex.z - leg.point.z);
    }
  }
  for (std::size_t i = 0; i < slope.size(); ++i) {
    slope[i] = way[i] * problem.scale;
  }
  return value * problem.scale;
}

double beyond(const std::vector<double>& at, std::vector<double>& slope, void* data) {
  const BridleLeg& leg = *static_cast<const BridleLeg*>(data);
  const Vec3 apex{at[0], at[1], at[2]};
  if (!slope.empty()) {
    slope = {2.0 * (apex.x - leg.point.x), 2.0 * (apex.y - leg.point.y), 2.0 * (apex.z - leg.point.z)};
  }
  const double length = away(apex, leg.point);
  return length * length - leg.length * leg.length;
}

/// Of several starts the best place that no leg forbids: the search stalls now and then at an edge.
Vec3 leastEnergy(std::vector<BridleLeg>& legs, Vec3 load, Vec3 around, RandomHangs& random) {
  Problem problem{&legs, load, 1.0 / away(load, {})};
  Vec3 best{};
  double bestEnergy = std::numeric_limits<double>::infinity();
  for (int tries = 0; tries < 4; ++tries) {
    std::vector<double> at{around.x + random.between(-0.3, 0.3), around.y + random.between(-0.3, 0.3),
                           around.z + random.between(-0.1, 0.4)};
    nlopt::opt search(nlopt::LD_SLSQP, 3);
    search.set_min_objective(energy, &problem);
    for (BridleLeg& leg : legs) {
      if (std::isinf(leg.stiffness)) {
        search.add_inequality_constraint(beyond, &leg, 1e-13);
      }
    }
    search.set_xtol_rel(1e-14);
    search.set_ftol_rel(1e-15);
    search.set_maxeval(2000);
    double least = 0.0;
    try {
      search.optimize(at, least);
    } catch (const nlopt::roundoff_limited&) { // as near as its digits go: `at` is the place
    }
    std::vector<double> none;
    const bool allowed = std::all_of(legs.begin(), legs.end(), [&](BridleLeg& leg) {
      return !std::isinf(leg.stiffness) || beyond(at, none, &leg) < 1e-7;
    });
    const double reached = energy(at, none, &problem);
    if (allowed && reached < bestEnergy) {
      bestEnergy = reached;
      best = {at[0], at[1], at[2]};
    }
  }
  return best;
}

std::vector<BridleLeg> randomLegs(RandomHangs& random, int count, bool elastic) {
  const Vec3 wanted{random.between(-1, 1), random.between(-1, 1), random.between(-3, -1)};
  std::vector<BridleLeg> legs;
  for (int i = 0; i < count; ++i) {
    BridleLeg leg;
    const double bearing = 6.283 * (i + random.between(0.0, 0.7)) / count;
    const double out = random.between(0.5, 3.0);
    leg.point = {out * std::cos(bearing), out * std::sin(bearing), random.between(0.0, 1.5)};
    leg.length = away(leg.point, wanted) + random.between(0.0, 0.4); // some go slack
    if (elastic) {
      leg.stiffness = random.between(2e4, 2e6);
    }
    legs.push_back(leg);
  }
  return legs;
}

void compare(std::uint64_t seed, bool elastic) {
  RandomHangs random(seed);
  int slack = 0;
  int taut = 0;
  for (int number = 0; number < 1500; ++number) {
    const int count = 2 + random.oneOf(2);
    std::vector<BridleLeg> legs = randomLegs(random, count, elastic);
    const double pull = random.between(1000.0, 20000.0);
    const Vec3 load{pull * random.between(-0.1, 0.1), pull * random.between(-0.1, 0.1), -pull};
    const hang::Bridle bridle = hang::settleBridle(legs, load);
    const Vec3 other = leastEnergy(legs, load, bridle.apex, random);
    BOOST_TEST_CONTEXT("seed " << seed << ", bridle " << number) {
      BOOST_TEST(away(bridle.apex, other) < 2e-4);
      Vec3 sum = load;
      for (std::size_t i = 0; i < legs.size(); ++i) {
        sum = sum + -1.0 * bridle.legs[i].onPoint;
        BOOST_TEST(bridle.legs[i].tension >= 0.0);
        ++(bridle.legs[i].slack ? slack : taut);
        if (!elastic) {
          BOOST_TEST(bridle.legs[i].length <= legs[i].length + 1e-8);
        }
      }
      BOOST_TEST(away(sum, {}) < 1e-6 * pull);
    }
  }
  BOOST_TEST(slack > 100);
  BOOST_TEST(taut > 1000);
}

} // namespace

BOOST_AUTO_TEST_SUITE(bridle_energy)

BOOST_AUTO_TEST_CASE(stiff_legs_hang_where_the_energy_is_least) {
  compare(20270402, false);
}

BOOST_AUTO_TEST_CASE(elastic_legs_hang_where_the_energy_is_least) {
  compare(20270403, true);
}

BOOST_AUTO_TEST_SUITE_END()
