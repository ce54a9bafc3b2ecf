// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/unit_test.hpp>

#include "options/cart_plan.h"

using namespace hangbook;
using namespace hangbook::options;

namespace {

const QString bass = QStringLiteral("bass");
const QString upper = QStringLiteral("upper");

catalogue::Catalogue pairCarts() {
  catalogue::Catalogue made;
  catalogue::CabinetType cabinet;
  cabinet.name = bass;
  cabinet.mass = kilograms(92);
  made.cabinets = {cabinet};
  catalogue::CartType cart;
  cart.name = QStringLiteral("pair cart");
  cart.carries = bass;
  cart.most = 2;
  cart.mass = kilograms(20);
  made.carts = {cart};
  return made;
}

} // namespace

BOOST_AUTO_TEST_SUITE(cart_plan)

BOOST_AUTO_TEST_CASE(an_odd_number_a_side_shares_one_cart) {
  const std::vector<PlannedCart> carts =
      planCarts(pairCarts(), {{QStringLiteral("left"), {bass, bass, bass}},
                              {QStringLiteral("right"), {bass, bass, bass}}});
  BOOST_REQUIRE(carts.size() == 3U);
  BOOST_TEST((carts[0].hangs == QStringList{QStringLiteral("left")}));
  BOOST_TEST((carts[1].hangs == QStringList{QStringLiteral("right")}));
  BOOST_TEST((carts[2].hangs == QStringList{QStringLiteral("left"), QStringLiteral("right")}));
  BOOST_TEST(carts[2].number == 2);
  BOOST_TEST(inKilograms(*carts[2].gross) == 20 + 2 * 92);
}

BOOST_AUTO_TEST_CASE(carts_come_as_the_stack_needs_them_and_every_cabinet_rides_once) {
  const std::vector<PlannedCart> carts =
      planCarts(pairCarts(), {{QStringLiteral("left"), {bass, upper, bass, bass}}});
  int cabinets = 0;
  for (const PlannedCart& cart : carts) {
    cabinets += cart.number;
  }
  BOOST_TEST(cabinets == 4);
  BOOST_REQUIRE(carts.size() == 3U);
  BOOST_TEST((carts[0].cabinet == bass));
  BOOST_TEST((carts[1].cabinet == upper));
  BOOST_TEST(carts[1].cart.isEmpty(), "no cart is known that carries it");
  BOOST_TEST(!carts[1].gross.has_value());
  BOOST_TEST(carts[2].number == 1);
}

BOOST_AUTO_TEST_CASE(three_odd_hangs_share_as_few_as_can_be) {
  const std::vector<PlannedCart> carts = planCarts(
      pairCarts(),
      {{QStringLiteral("a"), {bass}}, {QStringLiteral("b"), {bass}}, {QStringLiteral("c"), {bass}}});
  BOOST_REQUIRE(carts.size() == 2U);
  BOOST_TEST(carts[0].number == 2);
  BOOST_TEST(carts[1].number == 1);
}

/// Where nobody says how many ride on it, or says none, each cabinet has a cart of its own.
BOOST_AUTO_TEST_CASE(one_to_a_cart) {
  for (const std::optional<int> most : {std::optional<int>(1), std::optional<int>(0), std::optional<int>()}) {
    catalogue::Catalogue single = pairCarts();
    single.carts[0].most = most;
    const auto carts =
        planCarts(single, {{QStringLiteral("left"), {bass, bass}}, {QStringLiteral("right"), {bass}}});
    BOOST_REQUIRE(carts.size() == 3U);
    for (const PlannedCart& each : carts) {
      BOOST_TEST(each.number == 1);
      BOOST_TEST(each.hangs.size() == 1);
    }
  }
}

BOOST_AUTO_TEST_CASE(a_cart_weighs_what_the_loads_count) {
  Snapshot snapshot;
  snapshot.catalogue = pairCarts();
  const auto gross = [&snapshot] {
    const auto carts = planCarts(withCountedMasses(snapshot), {{QStringLiteral("left"), {bass, bass}}});
    BOOST_REQUIRE(carts.size() == 1U);
    return carts[0].gross ? inKilograms(*carts[0].gross) : -1.0;
  };
  BOOST_TEST(gross() == 20 + 2 * 92); // nobody weighed one
  fleet::Unit unit;
  unit.kind = fleet::UnitKind::cabinet;
  unit.type = bass;
  unit.serial = QStringLiteral("B1");
  unit.weighed = kilograms(95);
  snapshot.units = {unit};
  unit.serial = QStringLiteral("B2");
  unit.weighed.reset();
  snapshot.units.push_back(unit);
  BOOST_TEST(gross() == 20 + 2 * 95); // heavier than the maker says: either may ride
  snapshot.units[0].weighed = kilograms(90);
  BOOST_TEST(gross() == 20 + 2 * 92); // lighter: the maker's until all are weighed
  snapshot.units[1].weighed = kilograms(91);
  BOOST_TEST(gross() == 20 + 2 * 91);
  snapshot.units[1].weighed.reset();
  snapshot.catalogue.cabinets[0].mass.reset();
  BOOST_TEST(gross() == -1.0); // not known stays so
}

BOOST_AUTO_TEST_SUITE_END()
