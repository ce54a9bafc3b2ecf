// SPDX-License-Identifier: GPL-3.0-or-later
// How the two sides of each joint share the load of a hang that pan has rolled, against the force and moment
// equations in space of all that hangs below the joint, solved by Eigen: exactly where they are as many as
// the unknowns, else with the least sum of squares, which is what pins of like stiffness do. Certainty: C.
#include <boost/test/unit_test.hpp>

#include <algorithm>
#include <cmath>
#include <vector>

#include <Eigen/Dense>

#include "hang/sides.h"
#include "hang/solve.h"
#include "outside/rigid_hang.h"
#include "quantity/error.h"
#include "quantity/quantity.h"
#include "support/random_hang.h"

using namespace hangbook;
using hangbook::testing::RandomHangs;
using hangbook::testing::RigidHang;
using hangbook::testing::rigidHang;

namespace {

/// Two sides `apart`, each pin with a force in the frame's plane; besides these one more unknown force.
struct Sides {
  std::vector<Eigen::Vector3d> pins; ///< of the middle plane, frame coordinates
  double apart;
  Eigen::Vector3d extraAt;
  Eigen::Vector3d extraWay = Eigen::Vector3d::Zero(); ///< zero: none
};

struct Found {
  std::vector<Eigen::Vector2d> left;
  std::vector<Eigen::Vector2d> right;
  double across = 0.0;
};

/// `force` and `moment` (about the frame's origin) of all that acts below the joint.
Found solveSides(const Sides& sides, const Eigen::Vector3d& force, const Eigen::Vector3d& moment) {
  const auto pins = static_cast<Eigen::Index>(sides.pins.size());
  const bool extra = sides.extraWay.norm() > 0.0;
  Eigen::MatrixXd matrix = Eigen::MatrixXd::Zero(5, 4 * pins + (extra ? 1 : 0));
  const auto put = [&](Eigen::Index column, const Eigen::Vector3d& at, const Eigen::Vector3d& way) {
    const Eigen::Vector3d turn = at.cross(way);
    matrix.col(column) << way.x(), way.z(), turn.x(), turn.y(), turn.z();
  };
  for (Eigen::Index pin = 0; pin < pins; ++pin) {
    for (const int side : {0, 1}) {
      const Eigen::Vector3d at = sides.pins[static_cast<std::size_t>(pin)] +
                                 Eigen::Vector3d(0.0, (side == 0 ? 0.5 : -0.5) * sides.apart, 0.0);
      put(4 * pin + 2 * side, at, Eigen::Vector3d::UnitX());
      put(4 * pin + 2 * side + 1, at, Eigen::Vector3d::UnitZ());
    }
  }
  if (extra) {
    put(4 * pins, sides.extraAt, sides.extraWay);
  }
  // What is across the plane acts along the pins' own line: at the height of their middle.
  Eigen::Vector3d middle = Eigen::Vector3d::Zero();
  for (const Eigen::Vector3d& pin : sides.pins) {
    middle += pin / static_cast<double>(pins);
  }
  const Eigen::Vector3d held(0.0, -force.y(), 0.0);
  const Eigen::Vector3d left = moment + middle.cross(held);
  Eigen::VectorXd known(5);
  known << -force.x(), -force.z(), -left.x(), -left.y(), -left.z();
  const Eigen::VectorXd forces = matrix.completeOrthogonalDecomposition().solve(known);
  BOOST_REQUIRE((matrix * forces - known).norm() < 1e-7 * std::max(1.0, known.norm()));
  Found found;
  for (Eigen::Index pin = 0; pin < pins; ++pin) {
    found.left.emplace_back(forces.segment<2>(4 * pin));
    found.right.emplace_back(forces.segment<2>(4 * pin + 2));
  }
  found.across = force.y();
  return found;
}

Sides sidesOf(const RigidHang& shape, const hang::Hang& hang, std::size_t joint, double apart) {
  const Eigen::Isometry3d element = shape.element(joint);
  Sides sides{{element * Eigen::Vector3d::Zero()}, apart, Eigen::Vector3d::Zero()};
  if (const auto* pinned = std::get_if<hang::Pinned>(&hang.stack[joint].joint)) {
    sides.pins = {element * RigidHang::in3d(pinned->pins[0]), element * RigidHang::in3d(pinned->pins[1])};
  } else if (const auto* seated = std::get_if<hang::Seated>(&hang.stack[joint].joint)) {
    sides.extraAt = element * RigidHang::in3d(seated->contact);
    sides.extraWay = element.linear() * Eigen::Vector3d::UnitZ();
  } else {
    const Eigen::Vector3d eye = element * RigidHang::in3d(*hang.stack[joint].chainEye);
    sides.extraAt = eye;
    sides.extraWay = (RigidHang::in3d(*hang.bar.chainAnchor) - eye).normalized();
  }
  return sides;
}

void compareJoint(const RigidHang& shape, const hang::Hang& hang, const hang::Statics& statics,
                  std::size_t joint, double apart) {
  const bool pivotHeld = hang.chain && std::holds_alternative<hang::Pivot>(
                                           hang.stack[static_cast<std::size_t>(hang.chain->held) - 1].joint);
  const Eigen::Vector3d gravity =
      shape.frame().linear().transpose() * Eigen::Vector3d(0.0, 0.0, -standardGravity);
  Eigen::Vector3d force = Eigen::Vector3d::Zero();
  Eigen::Vector3d moment = Eigen::Vector3d::Zero();
  for (std::size_t i = joint; i < hang.stack.size(); ++i) {
    const Eigen::Vector3d weight = hang.stack[i].mass * gravity;
    force += weight;
    moment += (shape.element(i) * RigidHang::in3d(hang.stack[i].cg)).cross(weight);
  }
  const bool pinned = std::holds_alternative<hang::Pinned>(hang.stack[joint].joint);
  const bool isPivot = std::holds_alternative<hang::Pivot>(hang.stack[joint].joint);
  const std::size_t held = hang.chain ? static_cast<std::size_t>(hang.chain->held) : 0;
  if (joint < held && !isPivot && (pivotHeld || !pinned)) {
    const Eigen::Vector3d eye = shape.element(held - 1) * RigidHang::in3d(*hang.stack[held - 1].chainEye);
    const Eigen::Vector3d pull =
        statics.chain->tension * (RigidHang::in3d(*hang.bar.chainAnchor) - eye).normalized();
    force += pull;
    moment += eye.cross(pull);
  }
  if (hang.pullBack && joint < static_cast<std::size_t>(hang.pullBack->element)) {
    const double angle = hang.pullBack->lineDeg * RigidHang::degree;
    const Eigen::Vector3d pull =
        statics.pullBack->force *
        (shape.frame().linear().transpose() * Eigen::Vector3d(std::cos(angle), 0.0, std::sin(angle)));
    const auto at = static_cast<std::size_t>(hang.pullBack->element) - 1;
    force += pull;
    moment += (shape.element(at) * RigidHang::in3d(hang.pullBack->at)).cross(pull);
  }
  const Found found = solveSides(sidesOf(shape, hang, joint, apart), force, moment);
  const hang::JointStatics& given = statics.joints[joint];
  for (std::size_t pin = 0; pin < found.left.size(); ++pin) {
    const double across = found.across / static_cast<double>(found.left.size());
    const double left = std::hypot(found.left[pin].norm(), across);
    const double right = std::hypot(found.right[pin].norm(), across);
    const hang::SidePin worst = hang::onSide(given, given.pinLoads[pin], 0.5, apart);
    BOOST_TEST(std::abs(worst.force - std::max(left, right)) < 1e-6 * std::max(100.0, worst.force));
    if (std::abs(left - right) > 1e-3) {
      BOOST_TEST((worst.side == (left > right ? hang::Side::left : hang::Side::right)));
    }
  }
}

} // namespace

BOOST_AUTO_TEST_SUITE(sides_of_a_rolled_hang)

BOOST_AUTO_TEST_CASE(thousands_of_panned_hangs_balance_in_space_joint_by_joint) {
  RandomHangs hangs(77);
  int compared = 0;
  for (int i = 0; i < 3000; ++i) {
    const hang::Hang hang = hangs.next(0, static_cast<hangbook::testing::Held>(i % 3));
    hang::Statics statics;
    try {
      statics = hang::solve(hang);
    } catch (const Error&) {
      continue;
    }
    ++compared;
    const RigidHang shape = rigidHang(hang, statics);
    const double apart = hangs.between(0.4, 1.3);
    BOOST_TEST_CONTEXT("hang " << i) {
      for (std::size_t joint = 0; joint < hang.stack.size(); ++joint) {
        compareJoint(shape, hang, statics, joint, apart);
      }
    }
  }
  BOOST_TEST(compared > 1500);
}

BOOST_AUTO_TEST_CASE(so_do_those_whose_foot_a_second_hoist_pulls_back) {
  RandomHangs hangs(79);
  int compared = 0;
  for (int i = 0; i < 2000; ++i) {
    hang::Hang hang = hangs.next(i % 3, static_cast<hangbook::testing::Held>((i / 3) % 3));
    hang::PullBack pull;
    pull.element = 1 + hangs.oneOf(static_cast<int>(hang.stack.size()));
    pull.at = {hangs.between(-0.8, 0.0), hangs.between(-0.6, 0.0)};
    pull.lineDeg = hangs.between(40.0, 170.0);
    pull.force = hangs.between(50.0, 1500.0);
    hang.pullBack = pull;
    hang::Statics statics;
    try {
      statics = hang::solve(hang);
    } catch (const Error&) {
      continue;
    }
    const RigidHang shape = rigidHang(hang, statics);
    if (!statics.side && std::abs(shape.massHeight() / statics.mass - statics.cg.z) > 1e-6) {
      continue; // pulled right over its pick, where an elevation does not tell the turn
    }
    ++compared;
    BOOST_TEST_CONTEXT("hang " << i) {
      for (std::size_t joint = 0; joint < hang.stack.size(); ++joint) {
        compareJoint(shape, hang, statics, joint, 1.0);
      }
    }
  }
  BOOST_TEST(compared > 800);
}

/// Pan the other way: the sides change places, nothing else.
BOOST_AUTO_TEST_CASE(the_mirror_image_loads_the_other_side_alike) {
  RandomHangs hangs(78);
  int compared = 0;
  for (int i = 0; i < 600; ++i) {
    hang::Hang hang = hangs.next(0, hangbook::testing::Held::pivot);
    hang::Hang mirrored = hang;
    mirrored.set.panDeg = -hang.set.panDeg;
    hang::Statics one;
    hang::Statics other;
    try {
      one = hang::solve(hang);
      other = hang::solve(mirrored);
    } catch (const Error&) {
      continue;
    }
    ++compared;
    const auto tight = boost::test_tools::tolerance(1e-9);
    BOOST_TEST(one.pickLoads[0].load == other.pickLoads[1].load, tight);
    for (std::size_t joint = 0; joint < one.joints.size(); ++joint) {
      const hang::SidePin left = hang::onSide(one.joints[joint], one.joints[joint].pinLoads[0], 0.6, 1.0);
      const hang::SidePin right =
          hang::onSide(other.joints[joint], other.joints[joint].pinLoads[0], 0.6, 1.0);
      BOOST_TEST(left.force == right.force, tight);
      BOOST_TEST((left.side != right.side || left.side == hang::Side::either));
    }
  }
  BOOST_TEST(compared > 200);
}

BOOST_AUTO_TEST_SUITE_END()
