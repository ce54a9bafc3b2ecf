// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <random>

#include <boost/test/unit_test.hpp>

#include "hang/vec2.h"
#include "options/wind_force.h"
#include "options/wind_joints.h"
#include "room_fixture.h"

using namespace hangbook;
using options::FromDirection;
using options::WindForce;

namespace {

WindForce randomFaces(std::mt19937& random, int count) {
  const auto between = [&random](double low, double high) {
    return std::uniform_real_distribution<>(low, high)(random);
  };
  WindForce wind;
  for (int i = 0; i < count; ++i) {
    wind.add({between(-180.0, 180.0), between(0.0, 2.0), between(-0.3, 4.0)});
  }
  return wind;
}

} // namespace

BOOST_AUTO_TEST_SUITE(wind_force)

/// q = ρ v²/2 with ρ = 1.25 kg/m³: EN 1991-1-4 § 4.5 as quoted, 26 m/s gives 422.5 N/m² (V), 40.9 m/s gives
/// 1.046 kPa (I).
BOOST_AUTO_TEST_CASE(pressureOfTheWind) {
  BOOST_TEST(options::gustPressure(26.0) == 422.5, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(options::gustPressure(40.9) / 1000.0 == 1.046, boost::test_tools::tolerance(1e-3));
}

/// A box, 3 in front and 4 at the side: from in front 3, from the side 4, and at most 5, from where the
/// tangent is 4/3 (by hand: a cos θ + b sin θ is at most √(a² + b²)).
BOOST_AUTO_TEST_CASE(aBoxFromAslant) {
  WindForce wind;
  wind.add({0.0, 3.0, 1.0});
  wind.add({90.0, 4.0, 1.0});
  BOOST_TEST(wind.forceFrom(0.0) == 3.0, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(wind.forceFrom(90.0) == 4.0, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(wind.forceFrom(180.0) == 3.0, boost::test_tools::tolerance(1e-12));
  const FromDirection most = wind.greatestForce();
  BOOST_TEST(most.value == 5.0, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(std::abs(std::tan(hang::toRadians(most.fromDeg))) == 4.0 / 3.0,
             boost::test_tools::tolerance(1e-9));
  // Along the side: (3 |cos θ| + 4 |sin θ|) |sin θ| = ½ (4 + 5 cos(2θ − …)), so at most ½ (4 + 5).
  BOOST_TEST(wind.greatestMomentAlong(90.0).value == 4.5, boost::test_tools::tolerance(1e-12));
}

/// From the side a hang shows the outlines of its cabinets. Each corner 0.01 m off either way moves a side of
/// (a, b) out by 0.01 (|a| + |b|), and there are four corners' worth of 0.01² more. By hand for a wedge of
/// five corners: area 0.5 × 0.4 + ½ × 0.2 × 0.4 = 0.24, around 0.5 + 0.5 + 0.4 + 2 × (0.2 + 0.2) = 2.2.
BOOST_AUTO_TEST_CASE(aSideInDoubt) {
  testing::Room room;
  const std::vector<catalogue::Position> wedge{testing::at(0.1, 0.1), testing::at(0.6, 0.1),
                                               testing::at(0.8, 0.3), testing::at(0.6, 0.5),
                                               testing::at(0.1, 0.5)};
  for (catalogue::CabinetType* each : {&room.bass(), &room.full()}) {
    each->outline = wedge;
    each->faceArea = 0.3;
    each->forceCoefficient = 1.2;
    each->width = metres(1.0);
  }
  room.refresh();
  auto limits = std::make_shared<options::WeightLimits>();
  limits->windFace.value = options::notKnown; // the bar's faces are left out
  room.option.weight = limits;
  catalogue::Join pinned;
  pinned.kind = catalogue::JointKind::pinned;
  room.option.joins.assign(room.option.cabinets.size(), &pinned);
  const hang::Vec3 left = room.settled.layout.left;
  const double fromLeft = hang::toDegrees(std::atan2(left.y, left.x));
  const auto near = boost::test_tools::tolerance(1e-9);
  BOOST_TEST(options::windForce(room.option, room.settled).forceFrom(fromLeft) == 2.0 * 1.2 * 0.24, near);
  const auto doubt = std::make_shared<options::SettledDoubt>();
  doubt->figures.stack.resize(2);
  doubt->figures.stack[0].place = doubt->figures.stack[1].place = 0.01;
  room.settled.doubt = doubt;
  BOOST_TEST(options::windForce(room.option, room.settled).forceFrom(fromLeft) ==
                 2.0 * 1.2 * (0.24 + 0.01 * 2.2 + 4.0 * 1e-4),
             near);
  room.settled.doubt = nullptr;
  const auto missing = [&room] { return options::windForce(room.option, room.settled).missing.size(); };
  const auto told = missing();
  room.bass().outline.resize(2); // no face
  BOOST_TEST(missing() == told + 1);
}

/// No direction of a fine sweep is worse than the closed form, and the one that it names reaches it.
BOOST_AUTO_TEST_CASE(noDirectionIsWorse) {
  std::mt19937 random(20270);
  for (int round = 0; round < 200; ++round) {
    const WindForce wind = randomFaces(random, 1 + round % 12);
    const double along = round % 2 == 0 ? 90.0 : std::uniform_real_distribution<>(-90.0, 90.0)(random);
    const FromDirection force = wind.greatestForce();
    const FromDirection moment = wind.greatestMomentAlong(along);
    double mostForce = 0.0;
    double mostMoment = 0.0;
    for (int step = 0; step < 7200; ++step) {
      const double deg = step * 0.05;
      mostForce = std::max(mostForce, wind.forceFrom(deg));
      mostMoment =
          std::max(mostMoment, std::abs(wind.momentFrom(deg) * std::cos(hang::toRadians(deg - along))));
    }
    BOOST_TEST(force.value >= mostForce * (1.0 - 1e-12));
    BOOST_TEST(force.value <= mostForce * (1.0 + 1e-5));
    BOOST_TEST(wind.forceFrom(force.fromDeg) == force.value, boost::test_tools::tolerance(1e-9));
    BOOST_TEST(moment.value >= mostMoment * (1.0 - 1e-12));
    BOOST_TEST(moment.value <= mostMoment * (1.0 + 1e-5) + 1e-12);
  }
}

/// No direction of a fine sweep pushes or turns more in either plane than what is told of all below a joint,
/// and where all of it is below the joint one direction comes as near as the sweep is fine.
BOOST_AUTO_TEST_CASE(noDirectionIsWorseForAJoint) {
  std::mt19937 random(20271);
  const auto between = [&random](double low, double high) {
    return std::uniform_real_distribution<>(low, high)(random);
  };
  for (int round = 0; round < 100; ++round) {
    WindForce wind;
    const int count = 1 + round % 9;
    const bool above = round % 2 == 1; // some of it stands higher than the joint
    std::vector<options::WindFace> faces;
    for (int i = 0; i < count; ++i) {
      faces.push_back({between(-180.0, 180.0), between(0.0, 2.0), between(above ? 0.0 : 1.0, 4.0)});
      wind.add(faces.back());
    }
    const double jointBelow = 1.0;
    const double planeDeg = between(-180.0, 180.0);
    const hang::Turn plane = hang::turnBy(hang::toRadians(planeDeg));
    const hang::SidePush told = wind.greatestBelow(jointBelow, {plane.cosine, plane.sine});
    hang::SidePush most;
    for (int step = 0; step < 3600; ++step) {
      const double from = 0.05 * step;
      double force = 0.0;
      double moment = 0.0;
      for (const options::WindFace& face : faces) {
        const double push = face.push * std::abs(std::cos(hang::toRadians(face.towardsDeg - from)));
        force += push;
        moment += push * (face.below - jointBelow);
      }
      const double ahead = std::abs(std::cos(hang::toRadians(from - planeDeg)));
      const double aside = std::abs(std::sin(hang::toRadians(from - planeDeg)));
      most = hang::worseOf(
          most, {force * ahead, std::abs(moment) * ahead, force * aside, std::abs(moment) * aside});
    }
    const double slack = 1e-9;
    BOOST_TEST(most.inPlane <= told.inPlane + slack);
    BOOST_TEST(most.turning <= told.turning + slack);
    BOOST_TEST(most.across <= told.across + slack);
    BOOST_TEST(most.acrossTurning <= told.acrossTurning + slack);
    BOOST_TEST(most.inPlane > told.inPlane * (1.0 - 1e-5));
    BOOST_TEST(most.across > told.across * (1.0 - 1e-5));
    if (!above) {
      BOOST_TEST(most.turning > told.turning * (1.0 - 1e-5));
      BOOST_TEST(most.acrossTurning > told.acrossTurning * (1.0 - 1e-5));
    }
  }
}

/// 3 m² at 100 N/m², 1.5 m below the picks, against 100 kg centred 2 m below them: tan = 450 ÷ (980.665 · 2).
/// Across the line of two picks only; a centre that is not below them holds nothing.
BOOST_AUTO_TEST_CASE(howFarAHangSwings) {
  options::Settled settled;
  settled.layout.picks = {{0.0, 0.5, 0.0}, {0.0, -0.5, 0.0}};
  settled.statics.mass = 100.0;
  settled.statics.cg = {0.0, 0.0, -2.0};
  WindForce wind;
  wind.add({0.0, 3.0, 1.5});
  BOOST_TEST(std::tan(options::swingRadians(settled, wind, 100.0)) == 450.0 / 1961.33,
             boost::test_tools::tolerance(1e-12));
  WindForce sideways;
  sideways.add({90.0, 3.0, 1.5});
  // From aslant half of it still pushes ahead: max of |sin| |cos|.
  BOOST_TEST(std::tan(options::swingRadians(settled, sideways, 100.0)) == 225.0 / 1961.33,
             boost::test_tools::tolerance(1e-12));
  // The line through the picks may lie aslant: only what pushes square to it swings the hang.
  const double half = std::sqrt(0.125);
  settled.layout.picks = {{-half, half, 0.0}, {half, -half, 0.0}};
  WindForce square;
  square.add({45.0, 3.0, 1.5});
  BOOST_TEST(std::tan(options::swingRadians(settled, square, 100.0)) == 450.0 / 1961.33,
             boost::test_tools::tolerance(1e-9));
  WindForce along;
  along.add({-45.0, 3.0, 1.5});
  BOOST_TEST(std::tan(options::swingRadians(settled, along, 100.0)) == 225.0 / 1961.33,
             boost::test_tools::tolerance(1e-9));
  settled.layout.picks.pop_back();
  BOOST_TEST(std::tan(options::swingRadians(settled, sideways, 100.0)) >= 450.0 / 1961.33);
  settled.statics.cg.z = 0.0;
  BOOST_TEST(std::isnan(options::swingRadians(settled, wind, 100.0)));
}

BOOST_AUTO_TEST_SUITE_END()
