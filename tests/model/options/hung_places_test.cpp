// SPDX-License-Identifier: GPL-3.0-or-later
// Which unit hangs at which place of a chosen hang, what it weighs, and why a record does not stand.
#include <boost/test/unit_test.hpp>

#include <cmath>

#include "options/hung_places.h"
#include "print.h"
#include "show_fixture.h"

using namespace hangbook;
using options::HungHang;
using options::HungPlace;
using options::Snapshot;

namespace {

options::OptionKey key() {
  options::OptionKey made;
  made.hang = QStringLiteral("left");
  made.stack = {QStringLiteral("bass"), QStringLiteral("bass"), QStringLiteral("upper")};
  made.bar = QStringLiteral("bar");
  return made;
}

/// All four places, by units of the right type.
calendar::HungSerials serials() {
  return {{0, QStringLiteral("bar-1")},
          {1, QStringLiteral("bass-1")},
          {2, QStringLiteral("bass-2")},
          {3, QStringLiteral("upper-1")}};
}

fleet::Unit& unit(Snapshot& snapshot, const char* serial) {
  return *std::ranges::find(snapshot.units, QLatin1String(serial), &fleet::Unit::serial);
}

Snapshot show() {
  return testing::harbourShow();
}

} // namespace

BOOST_AUTO_TEST_SUITE(hung_places)

BOOST_AUTO_TEST_CASE(a_whole_record_weighs_what_its_parts_do) {
  const HungHang hang = hungOf(show(), key(), serials());
  BOOST_REQUIRE(hang.places.size() == 4U);
  BOOST_TEST(hang.recorded == 4);
  // Head 36 + frame 58; 92, 92 and 78 by the maker.
  BOOST_TEST(hang.massKg.value() == 36.0 + 58.0 + 92.0 + 92.0 + 78.0);
  BOOST_TEST(hang.countedKg.value() == *hang.massKg);
  const double each[] = {94.0, 92.0, 92.0, 78.0};
  for (std::size_t i = 0; i < 4; ++i) {
    const HungPlace& place = hang.places[i];
    BOOST_TEST(place.element == static_cast<int>(i));
    BOOST_TEST((place.type == (i == 0 ? key().bar : key().stack[static_cast<int>(i) - 1])));
    BOOST_TEST((place.serial == serials()[static_cast<int>(i)]));
    BOOST_TEST(place.massKg.value() == each[i]);
    BOOST_TEST((place.basis == QStringLiteral("maker's figure")));
    BOOST_TEST(place.trouble.isEmpty());
    BOOST_TEST((placeOf(place) == (i == 0 ? QStringLiteral("bar") : QString::number(i))));
  }
}

BOOST_AUTO_TEST_CASE(one_place_without_a_record_leaves_the_mass_open_and_not_what_the_loads_count) {
  calendar::HungSerials some = serials();
  some.erase(2);
  const HungHang hang = hungOf(show(), key(), some);
  BOOST_REQUIRE(hang.places.size() == 4U);
  BOOST_TEST(hang.recorded == 3);
  BOOST_TEST(!hang.massKg.has_value());
  BOOST_TEST(hang.countedKg.value() == 356.0);
  BOOST_TEST(hang.places[2].serial.isEmpty());
  BOOST_TEST(!hang.places[2].massKg.has_value());
  BOOST_TEST(hang.places[2].basis.isEmpty());
  BOOST_TEST(hang.places[2].trouble.isEmpty());
}

BOOST_AUTO_TEST_CASE(a_place_that_the_hang_as_chosen_does_not_have_is_told_and_counts_nowhere) {
  calendar::HungSerials more = serials();
  more[4] = QStringLiteral("upper-2");
  const HungHang hang = hungOf(show(), key(), more);
  BOOST_REQUIRE(hang.places.size() == 5U);
  BOOST_TEST(hang.recorded == 4);
  BOOST_TEST(hang.massKg.value() == 356.0);
  BOOST_TEST(hang.places[4].element == 4);
  BOOST_TEST(hang.places[4].type.isEmpty());
  BOOST_TEST(hang.places[4].massKg.value() == 78.0);
  BOOST_TEST((hang.places[4].trouble == QStringLiteral("the hang as chosen has no such place")));
}

BOOST_AUTO_TEST_CASE(what_the_crew_weighed_counts_and_says_who_and_when) {
  Snapshot snapshot = show();
  fleet::Unit& weighed = unit(snapshot, "bass-2");
  weighed.weighed = kilograms(91.5);
  HungHang hang = hungOf(snapshot, key(), serials());
  BOOST_TEST(
      (hang.places[2].basis == QStringLiteral("weighed on a day not written down by somebody not named")));
  BOOST_TEST(hang.massKg.value() == 355.5);
  BOOST_TEST(hang.countedKg.value() == 356.0); // not all are weighed, and this one is lighter
  BOOST_TEST(hang.places[2].trouble.isEmpty());
  weighed.weighedOn = QDate(2027, 3, 2);
  weighed.weighedBy = QStringLiteral("Orla Tench");
  hang = hungOf(snapshot, key(), serials());
  BOOST_TEST((hang.places[2].basis == QStringLiteral("weighed 2027-03-02 by Orla Tench")));
}

/// The loads count the heaviest unit of a type that may hang: one that its owner has back by then may not.
BOOST_AUTO_TEST_CASE(a_bar_heavier_than_the_loads_count_is_told) {
  Snapshot snapshot = show();
  fleet::Unit& bar = unit(snapshot, "bar-1");
  bar.owner = QStringLiteral("a hire house");
  bar.hiredUntil = snapshot.show.from.addDays(-1);
  const auto withBar = [&](double kg) {
    bar.weighed = kilograms(kg);
    return hungOf(snapshot, key(), serials()).places[0];
  };
  BOOST_TEST(withBar(93.0).trouble.isEmpty());
  BOOST_TEST(withBar(94.0).trouble.isEmpty());
  BOOST_TEST(withBar(94.0 + 1e-6).trouble.isEmpty()); // what a sum may lose
  BOOST_TEST(!withBar(std::nextafter(94.0 + 1e-6, 95.0)).trouble.isEmpty());
  BOOST_TEST((withBar(94.001).trouble == QStringLiteral("is heavier than the 94 kg that the loads count")));
  BOOST_TEST((withBar(99.5).massKg == 99.5));
  snapshot.catalogue.bars[0].frameMass = kilograms(58.12345); // told to five figures
  BOOST_TEST((withBar(95.0).trouble == QStringLiteral("is heavier than the 94.123 kg that the loads count")));
}

BOOST_AUTO_TEST_CASE(a_bar_heavier_than_the_maker_says_is_what_the_loads_count) {
  Snapshot snapshot = show();
  unit(snapshot, "bar-1").weighed = kilograms(99.5);
  const HungHang hang = hungOf(snapshot, key(), serials());
  BOOST_TEST(hang.places[0].trouble.isEmpty());
  BOOST_TEST(hang.massKg.value() == 361.5);
  BOOST_TEST(hang.countedKg.value() == 361.5);
}

BOOST_AUTO_TEST_CASE(a_cabinet_heavier_than_the_maker_says_is_what_the_loads_count) {
  Snapshot snapshot = show();
  unit(snapshot, "bass-1").weighed = kilograms(95.0);
  const HungHang hang = hungOf(snapshot, key(), serials());
  BOOST_TEST(hang.places[1].trouble.isEmpty());
  BOOST_TEST(hang.massKg.value() == 359.0);
  BOOST_TEST(hang.countedKg.value() == 362.0); // both bass as the heaviest
}

BOOST_AUTO_TEST_CASE(a_mass_that_nobody_stated_leaves_both_sums_open) {
  Snapshot snapshot = show();
  catalogue::CabinetType& upper = snapshot.catalogue.cabinets[3];
  BOOST_REQUIRE((upper.name == QStringLiteral("upper")));
  upper.mass.reset();
  const HungHang hang = hungOf(snapshot, key(), serials());
  BOOST_TEST(hang.recorded == 4);
  BOOST_TEST(!hang.massKg.has_value());
  BOOST_TEST(!hang.countedKg.has_value());
  BOOST_TEST((hang.places[3].basis == QStringLiteral("stated by nobody")));
  BOOST_TEST(hang.places[3].trouble.isEmpty());
  Snapshot headless = show();
  headless.catalogue.bars[0].frameMass.reset();
  BOOST_TEST(!hungOf(headless, key(), serials()).countedKg.has_value());
  Snapshot gone = show();
  std::erase_if(gone.catalogue.cabinets,
                [](const auto& type) { return type.name == QStringLiteral("upper"); });
  BOOST_TEST(!hungOf(gone, key(), serials()).countedKg.has_value());
}

/// One of several was weighed, and the maker states no mass: what the loads count is open, so nothing is
/// heavier than it.
BOOST_AUTO_TEST_CASE(a_weighed_unit_is_not_compared_with_what_is_not_known) {
  Snapshot snapshot = show();
  catalogue::CabinetType& bass =
      *std::ranges::find(snapshot.catalogue.cabinets, QStringLiteral("bass"), &catalogue::CabinetType::name);
  bass.mass.reset();
  unit(snapshot, "bass-1").weighed = kilograms(95.0);
  const HungHang hang = hungOf(snapshot, key(), serials());
  BOOST_TEST(hang.places[1].massKg.value() == 95.0);
  BOOST_TEST(!hang.countedKg.has_value());
  BOOST_TEST(hang.places[1].trouble.toStdString() == "");
  BOOST_TEST(!hang.places[2].massKg.has_value());
  BOOST_TEST(hang.places[2].trouble.toStdString() == "");
}

BOOST_AUTO_TEST_CASE(why_a_record_does_not_stand) {
  const auto trouble = [](int element, const char* serial, fleet::UnitState state = fleet::UnitState::ready) {
    Snapshot snapshot = show();
    calendar::HungSerials some = serials();
    some[element] = QLatin1String(serial);
    for (fleet::Unit& each : snapshot.units) {
      each.state = each.serial == QLatin1String(serial) ? state : each.state;
    }
    return hungOf(snapshot, key(), some).places[static_cast<std::size_t>(element)].trouble;
  };
  using fleet::UnitState;
  BOOST_TEST((trouble(1, "bass-99") == QStringLiteral("there is no such unit")));
  BOOST_TEST((trouble(1, "upper-1") == QStringLiteral("is a upper, and a bass was chosen for this place")));
  BOOST_TEST((trouble(0, "bass-1") == QStringLiteral("is a bass, and a bar was chosen for this place")));
  BOOST_TEST((trouble(2, "bar-1") == QStringLiteral("is a bar, and a bass was chosen for this place")));
  BOOST_TEST((trouble(1, "bass-3", UnitState::quarantined) == QStringLiteral("is quarantined")));
  BOOST_TEST((trouble(1, "bass-3", UnitState::inRepair) == QStringLiteral("is in repair")));
  BOOST_TEST((trouble(1, "bass-3", UnitState::writtenOff) == QStringLiteral("is written off")));
  BOOST_TEST(trouble(1, "bass-3", UnitState::ready).isEmpty());
  BOOST_TEST(trouble(1, "bass-3", UnitState::away).isEmpty());
}

/// A unit of the right type's name and of another kind is another thing.
BOOST_AUTO_TEST_CASE(the_kind_counts_beside_the_type) {
  Snapshot snapshot = show();
  unit(snapshot, "bass-1").kind = fleet::UnitKind::cart;
  BOOST_TEST(!hungOf(snapshot, key(), serials()).places[1].trouble.isEmpty());
}

BOOST_AUTO_TEST_SUITE_END()
