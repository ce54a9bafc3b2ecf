// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/unit_test.hpp>

#include "fleet/load_list.h"

using namespace hangbook;
using namespace hangbook::fleet;

namespace {

Unit unit(const char* serial, UnitKind kind, const char* type, const char* cart = "", int position = 0) {
  Unit made;
  made.serial = QString::fromLatin1(serial);
  made.kind = kind;
  made.type = QString::fromLatin1(type);
  made.cart = QString::fromLatin1(cart);
  if (position > 0) {
    made.cartPosition = position;
  }
  return made;
}

struct Dock {
  catalogue::Catalogue catalogue;
  NamedPlace truck;
  std::vector<Unit> units;

  Dock() {
    catalogue::CabinetType bass;
    bass.name = QStringLiteral("bass");
    bass.mass = kilograms(92);
    catalogue::CabinetType upper = bass;
    upper.name = QStringLiteral("upper");
    upper.mass = kilograms(78);
    catalogue.cabinets = {bass, upper};
    catalogue::CartType cart;
    cart.name = QStringLiteral("cart");
    cart.mass = kilograms(20);
    cart.length = metres(1.2);
    cart.width = metres(1.0);
    catalogue.carts = {cart};
    truck.name = QStringLiteral("truck 1");
    truck.floorLength = metres(2.4);
    truck.floorWidth = metres(2.0);
    truck.payload = kilograms(1000);
    units = {unit("U1", UnitKind::cabinet, "upper", "C2", 1),
             unit("B2", UnitKind::cabinet, "bass", "C1", 2),
             unit("B1", UnitKind::cabinet, "bass", "C1", 1),
             unit("C1", UnitKind::cart, "cart"),
             unit("C2", UnitKind::cart, "cart"),
             unit("C3", UnitKind::cart, "cart")};
  }
  TruckList list(const QStringList& build = {QStringLiteral("upper"), QStringLiteral("bass")}) const {
    return truckList(catalogue, units, &truck, build);
  }
};

} // namespace

BOOST_AUTO_TEST_SUITE(load_list)

BOOST_AUTO_TEST_CASE(weights_add_up_by_hand_and_carts_come_out_as_the_build_needs_them) {
  Dock dock;
  const TruckList list = dock.list();
  BOOST_REQUIRE(list.loads.size() == 3U);
  BOOST_TEST((list.loads[0].unit.serial == "C2"));
  BOOST_TEST((list.loads[1].unit.serial == "C1"));
  BOOST_TEST((list.loads[1].riding[0].serial == "B1"), "in the order of their places");
  BOOST_TEST(inKilograms(*list.loads[1].gross) == 20 + 2 * 92);
  BOOST_TEST(inKilograms(list.known) == 3 * 20 + 2 * 92 + 78);
  BOOST_TEST((dock.list({QStringLiteral("bass")}).loads[0].unit.serial == "C1"));
  // two abreast: two rows of 1.2 m fill 2.4 m to the last
  BOOST_TEST(inMetres(list.floorUsed) == 2.4);
  BOOST_TEST((list.floor == LoadVerdict::tight));
  BOOST_TEST((list.payload == LoadVerdict::holds));
}

BOOST_AUTO_TEST_CASE(limits_hold_at_the_limit_and_fail_above) {
  Dock dock;
  dock.truck.payload = kilograms(322);
  BOOST_TEST((dock.list().payload == LoadVerdict::tight));
  dock.truck.payload = kilograms(321.9);
  BOOST_TEST((dock.list().payload == LoadVerdict::fails));
  dock.truck.floorLength = metres(2.39);
  BOOST_TEST((dock.list().floor == LoadVerdict::fails));
}

BOOST_AUTO_TEST_CASE(a_missing_figure_is_never_a_pass_and_never_hides_a_fail) {
  Dock dock;
  dock.catalogue.cabinets[0].mass.reset();
  const TruckList list = dock.list();
  BOOST_TEST((list.missing == QStringList{QStringLiteral("B1"), QStringLiteral("B2")}));
  BOOST_TEST((list.payload == LoadVerdict::unproven));
  dock.truck.payload = kilograms(100); // what is known is too much already
  BOOST_TEST((dock.list().payload == LoadVerdict::fails));
  dock.units[2].weighed = kilograms(93.5);
  BOOST_TEST((dock.list().missing == QStringList{QStringLiteral("B2")}), "weighed stands before the maker's");
  dock.truck.floorWidth.reset();
  dock.truck.floorLength = metres(100);
  BOOST_TEST((dock.list().floor == LoadVerdict::unproven));
  BOOST_TEST((truckList(dock.catalogue, dock.units, nullptr, {}).payload == LoadVerdict::unproven));
}

BOOST_AUTO_TEST_CASE(hoists_and_hardware_come_out_before_bars_and_carts_and_a_batch_counts_its_pieces) {
  Dock dock;
  catalogue::HardwareType shackle;
  shackle.name = QStringLiteral("shackle");
  shackle.mass = kilograms(0.5);
  dock.catalogue.hardware = {shackle};
  dock.units.push_back(unit("BAR", UnitKind::bar, "bar"));
  dock.units.push_back(unit("SH", UnitKind::hardware, "shackle"));
  dock.units.back().pieces = 40;
  dock.units.push_back(unit("H1", UnitKind::hoist, "hoist"));
  const TruckList list = dock.list();
  BOOST_TEST((list.loads[0].unit.serial == "H1"));
  BOOST_TEST((list.loads[1].unit.serial == "SH"));
  BOOST_TEST((list.loads[2].unit.serial == "BAR"));
  BOOST_TEST(inKilograms(*list.loads[1].gross) == 20.0);
}

BOOST_AUTO_TEST_SUITE_END()
