// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <boost/test/unit_test.hpp>

#include <algorithm>
#include <cmath>
#include <vector>

#include <nlopt.hpp>

#include "hang/chain.h"
#include "hang/settle.h"
#include "hang/solve.h"
#include "outside/rigid_hang.h"
#include "quantity/error.h"
#include "quantity/quantity.h"
#include "support/random_hang.h"

/// The shape that a hang really takes against least potential energy over all its free coordinates at once,
/// found by NLopt from the closed shape on an energy written apart from the program's.
namespace hangbook::testing {

/// Swing first where there is one, then every joint that can move.
struct Coordinates {
  bool swing = false;
  std::vector<std::size_t> joints;
  std::vector<double> low;
  std::vector<double> high;
};

inline Coordinates coordinatesOf(const hang::Hang& hang, const RigidHang& closed) {
  Coordinates all;
  all.swing = !std::holds_alternative<hang::ForeAftPair>(hang.bar.picks);
  if (all.swing) {
    all.low.push_back(closed.swing - 1.5);
    all.high.push_back(closed.swing + 1.5);
  }
  for (std::size_t i = 0; i < hang.stack.size(); ++i) {
    if (const auto* seated = std::get_if<hang::Seated>(&hang.stack[i].joint)) {
      if (seated->openToDeg > 0.0) {
        all.joints.push_back(i);
        all.low.push_back(seated->angleDeg * RigidHang::degree);
        all.high.push_back((seated->angleDeg + seated->openToDeg) * RigidHang::degree);
      }
    } else if (const auto* pivot = std::get_if<hang::Pivot>(&hang.stack[i].joint)) {
      all.joints.push_back(i);
      all.low.push_back(pivot->travelDeg.low * RigidHang::degree);
      all.high.push_back(pivot->travelDeg.high * RigidHang::degree);
    }
  }
  return all;
}

struct Search {
  RigidHang& shape;
  const Coordinates& all;
  double mass;
  double limit;

  void place(const std::vector<double>& at) const {
    std::size_t next = 0;
    if (all.swing) {
      shape.swing = at[next++];
    }
    for (const std::size_t joint : all.joints) {
      shape.joint[joint] = at[next++];
    }
  }
  template <class Measure>
  double measured(const std::vector<double>& at, std::vector<double>& slope, Measure measure) const {
    for (std::size_t i = 0; i < slope.size(); ++i) {
      constexpr double step = 1e-5;
      std::vector<double> moved = at;
      moved[i] = at[i] + step;
      place(moved);
      const double above = measure();
      moved[i] = at[i] - step;
      place(moved);
      slope[i] = (above - measure()) / (2.0 * step);
    }
    place(at);
    return measure();
  }
  static double energy(const std::vector<double>& at, std::vector<double>& slope, void* data) {
    const Search& self = *static_cast<Search*>(data);
    return self.measured(at, slope, [&] { return self.shape.massHeight() / self.mass; });
  }
  static double stretch(const std::vector<double>& at, std::vector<double>& slope, void* data) {
    const Search& self = *static_cast<Search*>(data);
    return self.measured(at, slope, [&] { return self.shape.anchorToEye() - self.limit; });
  }
};

inline std::vector<double> leastEnergy(const hang::Hang& hang, RigidHang& shape, const Coordinates& all) {
  double mass = 0.0;
  for (const RigidHang::Weight& weight : shape.weights()) {
    mass += weight.mass;
  }
  Search search{shape, all, mass, hang.chain ? hang::chainLength(*hang.chain) : 0.0};
  nlopt::opt optimiser(nlopt::LD_SLSQP, static_cast<unsigned>(all.low.size()));
  optimiser.set_min_objective(Search::energy, &search);
  optimiser.set_lower_bounds(all.low);
  optimiser.set_upper_bounds(all.high);
  if (hang.chain) {
    optimiser.add_inequality_constraint(Search::stretch, &search, 1e-12);
  }
  optimiser.set_xtol_abs(1e-12);
  optimiser.set_maxeval(1000);
  std::vector<double> at;
  if (all.swing) {
    at.push_back(shape.swing);
  }
  for (const std::size_t joint : all.joints) {
    at.push_back(shape.joint[joint]);
  }
  for (std::size_t i = 0; i < at.size(); ++i) {
    at[i] = std::clamp(at[i], all.low[i], all.high[i]);
  }
  double least = 0.0;
  try {
    optimiser.optimize(at, least);
  } catch (const nlopt::roundoff_limited&) {
    // As near as doubles allow.
  }
  return at;
}

/// Joints that can open, and a chain with some slack.
inline hang::Hang loosened(RandomHangs& hangs) {
  hang::Hang hang = hangs.next();
  bool pivot = false;
  for (hang::Element& element : hang.stack) {
    if (auto* seated = std::get_if<hang::Seated>(&element.joint)) {
      seated->openToDeg = hangs.oneOf(4) == 0 ? 0.0 : hangs.between(0.2, 6.0);
    }
    pivot = pivot || std::holds_alternative<hang::Pivot>(element.joint);
  }
  if (hang.chain && !pivot) {
    hang.chain->mark += hangs.oneOf(3);
  }
  return hang;
}

inline RigidHang settledRigid(const hang::Hang& hang, const hang::Settled& settled) {
  RigidHang made{hang, {}};
  for (const hang::SettledJoint& joint : settled.joints) {
    made.joint.push_back(joint.angleDeg * RigidHang::degree);
  }
  made.actuator = settled.side ? settled.side->actuatorDeg * RigidHang::degree : 0.0;
  made.swing = (settled.side ? settled.side->headSwingDeg : settled.tiltDeg) * RigidHang::degree;
  return made;
}

inline double totalMass(const RigidHang& shape) {
  double mass = 0.0;
  for (const RigidHang::Weight& weight : shape.weights()) {
    mass += weight.mass;
  }
  return mass;
}

template <class Measure>
double slopeBy(RigidHang shape, std::size_t joint, Measure measure) {
  constexpr double step = 1e-5;
  const double here = shape.joint[joint];
  shape.joint[joint] = here + step;
  const double above = measure(shape);
  shape.joint[joint] = here - step;
  return (above - measure(shape)) / (2.0 * step);
}

struct Tally {
  int compared = 0;
  int taut = 0;
  int searchStuck = 0; ///< the general search stopped short; ours lies lower
};

/// Settles `count` random hangs and compares each. That one does not come to rest is a failure of the test.
inline Tally compareWithLeastEnergy(std::uint64_t seed, int count) {
  RandomHangs hangs(seed);
  Tally tally;
  for (int i = 0; i < count; ++i) {
    const hang::Hang hang = loosened(hangs);
    hang::Statics closed;
    hang::Settled settled;
    try {
      closed = hang::solve(hang);
      settled = hang::settle(hang);
    } catch (const Error& error) {
      BOOST_REQUIRE(error.trouble() == Trouble::notPossible);
      BOOST_TEST(std::string(error.what()).find("rest") == std::string::npos, error.what());
      continue;
    }
    ++tally.compared;
    tally.taut += settled.chain && settled.chain->taut ? 1 : 0;
    RigidHang shape = rigidHang(hang, closed);
    const Coordinates all = coordinatesOf(hang, shape);
    if (all.low.empty()) {
      continue;
    }
    const std::vector<double> found = leastEnergy(hang, shape, all);
    Search{shape, all, 1.0, 0.0}.place(found);
    const RigidHang ours = settledRigid(hang, settled);
    const double gain = (shape.massHeight() - ours.massHeight()) / totalMass(ours);
    BOOST_TEST_CONTEXT("hang " << i) {
      BOOST_TEST(gain > -1e-9); // ours is nowhere higher
      if (hang.chain) {
        BOOST_TEST(ours.anchorToEye() < hang::chainLength(*hang.chain) + 1e-9);
      }
      if (gain > 1e-9) {
        ++tally.searchStuck;
        continue;
      }
      for (const std::size_t joint : all.joints) {
        BOOST_TEST(std::abs(shape.joint[joint] - ours.joint[joint]) <
                   1e-4); // rad; energy is flat at its least
      }
      BOOST_TEST(std::abs(shape.swing - ours.swing) < 1e-4);
    }
  }
  return tally;
}

} // namespace hangbook::testing
