// SPDX-License-Identifier: GPL-3.0-or-later
// The plugs of a hang saved as a whole, and gone back behind.
#include <boost/test/data/monomorphic.hpp>
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include "actions/plan_edit.h"
#include "quantity/error.h"
#include "store/cabling_store.h"
#include "support/sample_house.h"

using namespace hangbook;
using namespace hangbook::testing;
using actions::PluggedFor;

namespace {

const QString ada = QStringLiteral("Ada Fenn");
const QDate today(2026, 11, 20);

/// cabinet, socket, type, loom, label, end, rack, channel, source, source date
QStringList plug(int cabinet, const QString& end) {
  return {QString::number(cabinet),
          QStringLiteral("in"),
          QStringLiteral("Marram bass"),
          QStringLiteral("loom 25"),
          {},
          end,
          {},
          {},
          {},
          {}};
}

void fillLoom(store::Store& store) {
  fill(store);
  store::save(store, sampleHardware(QStringLiteral("loom 25"), catalogue::HardwareKind::loom));
  for (const char* name : {"A", "B"}) {
    catalogue::LoomEnd end;
    end.loom = QStringLiteral("loom 25");
    end.name = QString::fromLatin1(name);
    store::save(store, end);
  }
}

exchange::HangName left(store::Store& store) {
  const calendar::Show show = store::loadShows(store).front();
  return {show.tour, show.name, QStringLiteral("left")};
}

} // namespace

BOOST_AUTO_TEST_SUITE(edit_plugs)

BOOST_DATA_TEST_CASE(ends_change_places_and_go_back, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  fillLoom(*store);
  const PluggedFor first{left(*store), {plug(1, QStringLiteral("A")), plug(2, QStringLiteral("B"))}};
  actions::savePlugs(*store, first, ada);
  BOOST_TEST((actions::pluggedNow(*store, first.hang).rows == first.rows));
  const PluggedFor crossed{first.hang, {plug(1, QStringLiteral("B")), plug(2, QStringLiteral("A"))}};
  const auto edit = actions::noted(*store, crossed, ada, [&] { actions::savePlugs(*store, crossed, ada); });
  BOOST_TEST_REQUIRE(edit.has_value());
  BOOST_TEST((actions::pluggedNow(*store, first.hang).rows == crossed.rows));
  actions::undo(*store, *edit, today);
  BOOST_TEST((actions::pluggedNow(*store, first.hang).rows == first.rows));
  const auto again = actions::noted(*store, first, ada, [&] { actions::savePlugs(*store, first, ada); });
  BOOST_TEST(!again.has_value()); // nothing is changed
  actions::savePlugs(*store, {first.hang, {}}, ada);
  BOOST_TEST(store::loadCabling(*store).plugs.empty());
}

BOOST_DATA_TEST_CASE(what_cannot_be_read_changes_nothing, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  fillLoom(*store);
  const PluggedFor first{left(*store), {plug(1, QStringLiteral("A"))}};
  actions::savePlugs(*store, first, ada);
  const PluggedFor wrong{first.hang, {plug(2, QStringLiteral("B")), plug(1, QStringLiteral("C"))}};
  BOOST_CHECK_EXCEPTION(actions::savePlugs(*store, wrong, ada), Error, [](const Error& error) {
    return std::string_view(error.what()).find("plug in row 2") != std::string_view::npos;
  });
  BOOST_TEST((actions::pluggedNow(*store, first.hang).rows == first.rows));
}

BOOST_AUTO_TEST_SUITE_END()
