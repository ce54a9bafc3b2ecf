// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <optional>

#include "hang/gust.h"
#include "hang/solve.h"
#include "outside/body_balance.h"
#include "support/random_hang.h"

/// What is told of a hang that is pushed, against every body's force and moment equations.
namespace hangbook::testing {

/// Not panned, its seats free to open; of every other one each centre ahead of its pin, so that its weight
/// shuts the joint.
inline void readyToBePushed(hang::Hang& hang, int number, RandomHangs& random) {
  hang.set.panDeg = 0.0;
  for (hang::Element& element : hang.stack) {
    if (number % 2 == 1) {
      element.cg.x = random.between(0.0, 0.3);
    }
    if (auto* seated = std::get_if<hang::Seated>(&element.joint)) {
      seated->openToDeg = 10.0;
    }
  }
}

/// Its statics where it stands as it is put together.
inline std::optional<hang::Statics> asPutTogether(const hang::Hang& hang) {
  try {
    hang::Statics statics = hang::solve(hang);
    const bool shut = std::all_of(statics.joints.begin(), statics.joints.end(),
                                  [](const auto& joint) { return joint.contact.value_or(0.0) > -1e-6; });
    if (shut && (!statics.chain || statics.chain->tension >= 0.0)) {
      return statics;
    }
  } catch (const Error& error) {
    BOOST_TEST_REQUIRE((error.trouble() == Trouble::notPossible));
  }
  return std::nullopt;
}

struct Nearest {
  double contact = 1e300; ///< how far the least contact stays above what is told, N
  double tension = 1e300; ///< and the greatest tension below it
};

inline constexpr double slackN = 1e-6;

/// Chain, pins and contacts of `told` against the balance of every body with `extras` on it.
inline Nearest within(const hang::Hang& hang, const hang::Pushed& told, const RigidHang& shape,
                      const std::vector<Extra>& extras) {
  Nearest nearest;
  const bool pivot = told.tensionLeast.has_value();
  Solution whole = solveBodies(shape, 0.0, extras);
  if (pivot) {
    const double tension = whole.forces(static_cast<Eigen::Index>(whole.tension));
    BOOST_TEST(tension <= told.tensionMost + slackN);
    BOOST_TEST(tension >= *told.tensionLeast - slackN);
    nearest.tension = std::min(told.tensionMost - tension, tension - *told.tensionLeast);
  } else if (hang.chain) {
    const double least = leastTension(hang, whole, solveBodies(shape, 1.0, extras));
    BOOST_TEST(least <= told.tensionMost + slackN);
    whole = solveBodies(shape, least, extras);
  }
  for (std::size_t i = 0; i < hang.stack.size(); ++i) {
    const hang::PushedJoint& joint = told.joints[i];
    for (std::size_t pin = 0; pin < static_cast<std::size_t>(joint.most.pinCount); ++pin) {
      BOOST_TEST(pinIn(whole, i, pin) <= joint.most.pinForces[pin] + slackN);
    }
    if (std::holds_alternative<hang::Seated>(hang.stack[i].joint)) {
      BOOST_TEST(contactIn(whole, i) <= *joint.most.contact + slackN);
      if (joint.contactLeast) {
        BOOST_TEST(contactIn(whole, i) >= *joint.contactLeast - slackN);
        nearest.contact = std::min(nearest.contact, contactIn(whole, i) - *joint.contactLeast);
      }
    }
  }
  return nearest;
}

} // namespace hangbook::testing
