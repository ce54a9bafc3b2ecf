// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>

#include <boost/test/unit_test.hpp>

#include "hang/solve.h"
#include "hang/uneven.h"
#include "quantity/error.h"
#include "quantity/quantity.h"
#include "support/random_hang.h"

using namespace hangbook;

namespace {

std::optional<hang::Statics> solved(const hang::Hang& hang) {
  try {
    return hang::solve(hang);
  } catch (const Error&) {
    return std::nullopt;
  }
}

hang::Bar sideBar(double spacing) {
  hang::Bar bar;
  hang::SidePair pair;
  pair.pickSpacing = spacing;
  bar.picks = pair;
  return bar;
}

} // namespace

BOOST_AUTO_TEST_SUITE(uneven)

/// Picks 1 m apart, 100 kg centred 2 m below: rolled until the left one stands 0.6 m higher (sine 0.6, cosine
/// 0.8, tangent 0.75), the centre stands 2 · 0.6 = 1.2 m to the left of the middle and the picks 0.8 m apart
/// in plan: the left hoist carries ½ + 1.2/0.8 = 2 times the weight, the right one would have to push with
/// all.
BOOST_AUTO_TEST_CASE(aSidePairRolledByHand) {
  hang::Statics statics;
  statics.mass = 100.0;
  statics.cg = {0.0, 0.0, -2.0};
  const auto there = hang::unevenBy(sideBar(1.0), statics, 0.6);
  BOOST_REQUIRE(there.has_value());
  BOOST_TEST(there->loads[0] == 200.0 * standardGravity, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(there->loads[1] == -100.0 * standardGravity, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(there->turnDeg == std::asin(0.6) * 180.0 / M_PI, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(!hang::unevenBy(sideBar(1.0), statics, 0.9).has_value());
}

/// With its centre above the picks a hang would have to turn over to shift load the usual way: no rise is
/// told that gives another share than the one asked for.
BOOST_AUTO_TEST_CASE(aCentreAboveThePicksGivesNoRise) {
  hang::Bar bar;
  bar.picks = hang::ForeAftPair{{0.0, 0.0}, {-1.0, 0.0}};
  hang::Statics statics;
  statics.mass = 100.0;
  statics.cg = {-0.5, 0.0, 1.0};
  BOOST_TEST(!hang::riseForShare(bar, statics, 0.6).has_value());
  BOOST_TEST(!hang::riseForShare(bar, statics, 0.4).has_value());
  statics.cg.z = -1.0; // below them: turned until the front one has 0.6, the sine is 0.1/√1.01
  BOOST_TEST(hang::riseForShare(bar, statics, 0.6).value() == 0.1 / std::sqrt(1.01),
             boost::test_tools::tolerance(1e-12));
}

/// A fore-aft-pair whose front pick runs up hangs at another tilt: the statics at that tilt say the same.
BOOST_AUTO_TEST_CASE(aForeAftPairAtTheTiltThatFollows) {
  testing::RandomHangs random(404);
  int looked = 0;
  for (int i = 0; i < 300; ++i) {
    hang::Hang hang = random.next(1, testing::Held::nothing);
    const auto statics = solved(hang);
    if (!statics) {
      continue;
    }
    const double rise = random.between(-0.2, 0.2);
    const auto there = hang::unevenBy(hang.bar, *statics, rise);
    BOOST_REQUIRE(there.has_value());
    hang::Hang turned = hang;
    turned.set.tiltDeg = there->turnDeg;
    const hang::Statics again = hang::solve(turned);
    const double weight = again.mass * standardGravity;
    for (std::size_t pick = 0; pick < 2; ++pick) {
      BOOST_TEST(std::abs(again.pickLoads[pick].load - there->loads[pick]) < 1e-9 * weight);
    }
    const auto& picks = std::get<hang::ForeAftPair>(hang.bar.picks);
    const auto height = [&](double deg) {
      return hang::turnBy(hang::toRadians(deg))(picks.frontPick - picks.rearPick).z;
    };
    BOOST_TEST(std::abs(height(there->turnDeg) - height(*hang.set.tiltDeg) - rise) < 1e-9);
    ++looked;
  }
  BOOST_TEST(looked > 200);
}

/// The pick that stands higher carries more, the more the higher; and a share leads back to its rise.
BOOST_AUTO_TEST_CASE(theHigherOneCarriesMoreAndLeadsBack) {
  testing::RandomHangs random(91);
  int looked = 0;
  for (int i = 0; i < 400; ++i) {
    hang::Hang hang = random.next(random.oneOf(2), testing::Held::nothing);
    const auto statics = solved(hang);
    if (!statics) {
      continue;
    }
    const double weight = statics->mass * standardGravity;
    double before = -1e300;
    for (double rise = -0.2; rise <= 0.2001; rise += 0.05) {
      const auto there = hang::unevenBy(hang.bar, *statics, rise);
      BOOST_REQUIRE(there.has_value());
      BOOST_TEST(std::abs(there->loads[0] + there->loads[1] - weight) < 1e-9 * weight);
      if (statics->side) {
        BOOST_TEST(there->loads[0] > before);
      }
      before = there->loads[0];
      const auto back = hang::riseForShare(hang.bar, *statics, there->loads[0] / weight);
      BOOST_REQUIRE(back.has_value());
      BOOST_TEST(std::abs(*back - rise) < 1e-6);
      ++looked;
    }
    const auto level = hang::unevenBy(hang.bar, *statics, 0.0);
    BOOST_TEST(std::abs(level->loads[0] - statics->pickLoads[0].load) < 1e-9 * weight);
  }
  BOOST_TEST(looked > 1000);
}

BOOST_AUTO_TEST_CASE(aSinglePickHasNoOther) {
  hang::Bar bar;
  bar.picks = hang::SinglePick{};
  BOOST_TEST(!hang::unevenBy(bar, hang::Statics{}, 0.1).has_value());
}

BOOST_AUTO_TEST_SUITE_END()
