// SPDX-License-Identifier: GPL-3.0-or-later
// The shape that a hang really takes: see settled_shape.h. Certainty: C. `tests/long` does the same for many
// more hangs.
#include "outside/settled_shape.h"

using namespace hangbook;
using hangbook::testing::compareWithLeastEnergy;
using hangbook::testing::loosened;
using hangbook::testing::RandomHangs;
using hangbook::testing::RigidHang;
using hangbook::testing::settledRigid;
using hangbook::testing::slopeBy;
using hangbook::testing::totalMass;

BOOST_AUTO_TEST_SUITE(settled_shape)

BOOST_AUTO_TEST_CASE(thousands_of_loosened_hangs_rest_where_their_energy_is_least) {
  const hangbook::testing::Tally tally = compareWithLeastEnergy(4711, 4000);
  BOOST_TEST_MESSAGE(tally.compared << " hangs compared, " << tally.taut << " taut, " << tally.searchStuck
                                    << " where the search stuck");
  BOOST_TEST(tally.compared > 2000);
  BOOST_TEST(tally.taut > 500);
  BOOST_TEST(tally.searchStuck < tally.compared / 50);
}

/// Convergence alone is cheap to try: no hang fails to come to rest, and each rests where its forces allow.
BOOST_AUTO_TEST_CASE(tens_of_thousands_of_hangs_all_come_to_rest) {
  RandomHangs hangs(99);
  int rested = 0;
  for (int i = 0; i < 30000; ++i) {
    const hang::Hang hang = loosened(hangs);
    try {
      const hang::Settled settled = hang::settle(hang);
      ++rested;
      BOOST_TEST_REQUIRE((!settled.chain || settled.chain->most >= settled.chain->least));
    } catch (const Error& error) {
      BOOST_TEST_REQUIRE(std::string(error.what()).find("rest") == std::string::npos, error.what());
    }
  }
  BOOST_TEST(rested > 20000);
}

/// Turned over to the other side, left is right and nothing else changes; all masses doubled, every load
/// doubles and no angle moves.
BOOST_AUTO_TEST_CASE(mirrored_and_heavier_hangs_take_the_same_shape) {
  RandomHangs hangs(501);
  int compared = 0;
  for (int i = 0; i < 1500; ++i) {
    hang::Hang hang = loosened(hangs);
    hang::Hang mirrored = hang;
    mirrored.set.panDeg = -hang.set.panDeg;
    hang::Hang heavier = hang;
    heavier.bar.frameMass *= 2.0;
    if (auto* pair = std::get_if<hang::SidePair>(&heavier.bar.picks)) {
      pair->headMass *= 2.0;
    }
    for (hang::Element& element : heavier.stack) {
      element.mass *= 2.0;
    }
    hang::Settled one;
    hang::Settled other;
    hang::Settled twice;
    try {
      one = hang::settle(hang);
      other = hang::settle(mirrored);
      twice = hang::settle(heavier);
    } catch (const Error&) {
      continue;
    }
    ++compared;
    BOOST_TEST_CONTEXT("hang " << i) {
      const bool pair = one.side.has_value();
      for (std::size_t pick = 0; pick < one.pickCount; ++pick) {
        const double load = one.pickLoads[pick].load;
        BOOST_TEST(std::abs(other.pickLoads[pair ? 1 - pick : pick].load - load) < 1e-3);
        BOOST_TEST(std::abs(twice.pickLoads[pick].load - 2.0 * load) < 1e-3);
      }
      for (std::size_t joint = 0; joint < one.joints.size(); ++joint) {
        BOOST_TEST(std::abs(other.joints[joint].angleDeg - one.joints[joint].angleDeg) < 1e-6);
        BOOST_TEST(std::abs(twice.joints[joint].angleDeg - one.joints[joint].angleDeg) < 1e-6);
        BOOST_TEST(std::abs(other.joints[joint].sideways + one.joints[joint].sideways) < 1e-3);
      }
    }
  }
  BOOST_TEST(compared > 700);
}

BOOST_AUTO_TEST_CASE(no_joint_that_is_free_wants_to_move_and_none_that_is_held_is_held_the_wrong_way) {
  RandomHangs hangs(815);
  int compared = 0;
  for (int i = 0; i < 4000; ++i) {
    const hang::Hang hang = loosened(hangs);
    hang::Settled settled;
    try {
      settled = hang::settle(hang);
    } catch (const Error&) {
      continue;
    }
    ++compared;
    const RigidHang shape = settledRigid(hang, settled);
    const double weight = totalMass(shape) * standardGravity;
    const double tension = settled.chain ? settled.chain->tension.value_or(settled.chain->least) : 0.0;
    BOOST_TEST(tension >= 0.0);
    BOOST_TEST((!settled.chain || settled.chain->taut || tension == 0.0));
    for (std::size_t joint = 0; joint < settled.joints.size(); ++joint) {
      const hang::SettledJoint& found = settled.joints[joint];
      const auto* seated = std::get_if<hang::Seated>(&hang.stack[joint].joint);
      if (seated == nullptr) {
        continue;
      }
      BOOST_TEST_CONTEXT("hang " << i << ", joint " << joint) {
        // Moment that would open it: −dE/dα − T dℓ/dα. A contact or stop at its arm holds against it.
        const double opening =
            -standardGravity * slopeBy(shape, joint, [](const RigidHang& at) { return at.massHeight(); }) -
            (hang.chain && tension > 0.0
                 ? tension * slopeBy(shape, joint, [](const RigidHang& at) { return at.anchorToEye(); })
                 : 0.0);
        const double arm = -seated->contact.x;
        const double held = found.stop.value_or(0.0) - found.contact.value_or(0.0);
        BOOST_TEST(std::abs(opening - held * arm) < 1e-6 * weight);
        BOOST_TEST(found.openDeg >= 0.0);
        BOOST_TEST(found.openDeg <= seated->openToDeg);
        BOOST_TEST(found.contact.has_value() != found.stop.has_value());
        BOOST_TEST(found.contact.value_or(0.0) >= 0.0);
        BOOST_TEST(found.stop.value_or(0.0) >= 0.0);
      }
    }
  }
  BOOST_TEST(compared > 2000);
}

BOOST_AUTO_TEST_SUITE_END()
