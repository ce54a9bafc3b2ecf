// SPDX-License-Identifier: GPL-3.0-or-later
// A hang that the wind has swung about the line of its picks, against every body's force and moment equations
// with gravity turned by that angle, solved by Eigen: what is told of chain, pins, contacts and sideways
// loads bounds both ways of the swing, whichever way the line of the picks lies, and the force across is met.
// Certainty: C.
#include <boost/test/unit_test.hpp>

#include <cmath>
#include <vector>

#include "hang/layout.h"
#include "hang/solve.h"
#include "options/wind_joints.h"
#include "outside/pushed_balance.h"
#include "support/random_hang.h"

using namespace hangbook;
using namespace hangbook::testing;

namespace {

/// The hang's joints and cabinets as the options have them.
struct Parts {
  std::vector<catalogue::CabinetType> cabinets;
  std::vector<catalogue::Join> joins;
  options::Case option;

  explicit Parts(const hang::Hang& hang) : cabinets(hang.stack.size()), joins(hang.stack.size()) {
    const auto place = [](hang::Vec2 at) { return catalogue::Position{metres(at.x), metres(at.z)}; };
    for (std::size_t i = 0; i < hang.stack.size(); ++i) {
      if (const auto* seated = std::get_if<hang::Seated>(&hang.stack[i].joint)) {
        joins[i].kind = catalogue::JointKind::seated;
        joins[i].opensTo = degrees(seated->openToDeg);
        cabinets[i].rearContact = place(seated->contact);
      } else if (const auto* pinned = std::get_if<hang::Pinned>(&hang.stack[i].joint)) {
        joins[i].kind = catalogue::JointKind::pinned;
        cabinets[i].pins = {place(pinned->pins[0]), place(pinned->pins[1])};
      } else {
        joins[i].kind = catalogue::JointKind::pivot;
      }
      option.cabinets.push_back(&cabinets[i]);
      option.joins.push_back(&joins[i]);
    }
    option.held = hang.chain ? hang.chain->held : 0;
  }
};

/// Gravity as the hang feels it once it is turned by `angle` about a level line.
Eigen::Vector3d turnedGravity(const Eigen::Vector3d& line, double angle) {
  return Eigen::AngleAxisd(-angle, line) * Eigen::Vector3d(0.0, 0.0, -standardGravity);
}

/// What that does to each body in the hang's plane besides its weight.
std::vector<Extra> extrasOf(const RigidHang& shape, const Eigen::Vector3d& gravity) {
  Eigen::Vector3d more = gravity - Eigen::Vector3d(0.0, 0.0, -standardGravity);
  more.y() = 0.0;
  std::vector<Extra> extras;
  for (std::size_t i = 0; i < shape.hang.stack.size(); ++i) {
    extras.push_back({i, shape.element(i) * RigidHang::in3d(shape.hang.stack[i].cg),
                      shape.hang.stack[i].mass * (shape.frame().linear().transpose() * more)});
  }
  return extras;
}

/// Where a joint takes what pushes across: its pin, or midway between two.
Eigen::Vector3d jointAt(const RigidHang& shape, std::size_t i) {
  const auto* pinned = std::get_if<hang::Pinned>(&shape.hang.stack[i].joint);
  const hang::Vec2 at = pinned == nullptr ? hang::Vec2{} : 0.5 * (pinned->pins[0] + pinned->pins[1]);
  return shape.element(i) * RigidHang::in3d(at);
}

/// The weight below each joint across the hang's plane, and its moment.
void acrossWithin(const hang::Pushed& told, const RigidHang& shape, const Eigen::Vector3d& gravity) {
  double force = 0.0;
  Eigen::Vector3d first = Eigen::Vector3d::Zero(); // N·m, about the frame's origin
  for (std::size_t i = shape.hang.stack.size(); i-- > 0;) {
    const double own = shape.hang.stack[i].mass * gravity.y();
    force += own;
    first += own * (shape.element(i) * RigidHang::in3d(shape.hang.stack[i].cg));
    const double moment = (first - force * jointAt(shape, i)).norm();
    const hang::JointStatics& most = told.joints[i].most;
    BOOST_TEST(std::abs(force) <= most.sideways + slackN);
    BOOST_TEST(std::abs(force) >= most.sideways - slackN);
    BOOST_TEST(moment <= hang::length(most.sidewaysMoment) + slackN);
    BOOST_TEST(moment >= 0.7 * hang::length(most.sidewaysMoment) - slackN);
  }
}

} // namespace

BOOST_AUTO_TEST_SUITE(swung_hang)

BOOST_AUTO_TEST_CASE(no_way_of_the_swing_is_worse) {
  RandomHangs hangs(191);
  RandomHangs random(192);
  int looked = 0;
  int pivots = 0;
  for (int i = 0; i < 4000; ++i) {
    hang::Hang hang = hangs.next();
    readyToBePushed(hang, i, random);
    const std::optional<hang::Statics> stands = asPutTogether(hang);
    // A slack chain that would have to pull opens a joint first.
    if (!stands || (stands->chain && stands->chain->tension != 0.0 && !(stands->chain->slack < 1e-9))) {
      continue;
    }
    options::Settled settled;
    settled.statics = *stands;
    const hang::Statics& statics = settled.statics;
    BOOST_TEST_CONTEXT("hang " << i) {
      settled.layout = hang::layOut(hang, statics);
      // The line of the picks any way, be it along the hang: what stands there is the same.
      const double degree = RigidHang::degree * random.between(0.0, 180.0);
      const Eigen::Vector3d line(std::cos(degree), std::sin(degree), 0.0);
      settled.layout.picks = {{0.5 * line.x(), 0.5 * line.y(), 0.0}, {-0.5 * line.x(), -0.5 * line.y(), 0.0}};
      options::WindForce
          wind; // which pushes at the picks' own height: the swing is what it does to the joints
      wind.add({random.between(-90.0, 90.0), random.between(0.2, 3.0), 1.0});
      wind.below.resize(hang.stack.size());
      const double pressure = random.between(10.0, 400.0);
      const double angle = options::swingRadians(settled, wind, pressure);
      if (std::isnan(angle)) {
        continue; // centre above its picks: it stands on nothing
      }
      const Parts parts(hang);
      const hang::Pushed told = options::pushedBy(parts.option, settled, wind, pressure, 1.0);
      const RigidHang shape = rigidHang(hang, statics);
      for (const double turned : {angle, -angle, 0.5 * angle}) {
        within(hang, told, shape, extrasOf(shape, turnedGravity(line, turned)));
      }
      acrossWithin(told, shape, turnedGravity(line, angle));
      acrossWithin(told, shape, turnedGravity(line, -angle));
      ++looked;
      pivots += told.tensionLeast ? 1 : 0;
    }
  }
  BOOST_TEST_MESSAGE(looked << " hangs, " << pivots << " with a pivot");
  BOOST_TEST(looked > 500);
  BOOST_TEST(pivots > 50);
}

BOOST_AUTO_TEST_SUITE_END()
