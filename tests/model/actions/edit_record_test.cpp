// SPDX-License-Identifier: GPL-3.0-or-later
// Records saved, added and removed by their texts; what is named stays.
#include <boost/test/data/monomorphic.hpp>
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include "actions/plan_edit.h"
#include "quantity/error.h"
#include "store/cabling_store.h"
#include "store/choice_store.h"
#include "support/sample_house.h"

using namespace hangbook;
using namespace hangbook::testing;
using actions::RecordAs;
using exchange::Kind;
using exchange::RecordName;

namespace {

const QString ada = QStringLiteral("Ada Fenn");
const QDate today(2026, 11, 20);
const QString bass = QStringLiteral("Marram bass");

RecordName type(const char* sort, const QString& name) {
  return {Kind::types, QString::fromLatin1(sort), name};
}

} // namespace

/// Not anonymous: cases that run on both engines capture it.
namespace record_house {

struct House {
  explicit House(store::Engine engine) : fresh(engine), store(fresh.open()) { fill(*store); }
  catalogue::StackingTable table() { return store::loadCatalogue(*store).tables.front(); }
  QString refusal(const std::function<void()>& work) {
    try {
      work();
    } catch (const Error& error) {
      return QString::fromUtf8(error.what());
    }
    return {};
  }
  FreshStore fresh;
  std::unique_ptr<store::Store> store;
};

} // namespace record_house

using record_house::House;

BOOST_AUTO_TEST_SUITE(edit_record)

BOOST_DATA_TEST_CASE(joints_and_counts_of_a_table_are_saved_and_go_back, bothEngines, engine) {
  House house(engine);
  const catalogue::StackingTable before = house.table();
  BOOST_TEST_REQUIRE(before.joins.size() >= 1u);
  RecordAs wanted = actions::recordNow(*house.store, type("table", before.name));
  wanted.texts.parts[0].erase(wanted.texts.parts[0].begin());
  wanted.texts.parts[1] = {{bass, QStringLiteral("1"), QStringLiteral("3")}};
  const auto edit =
      actions::noted(*house.store, wanted, ada, [&] { actions::saveRecord(*house.store, wanted, ada); });
  BOOST_TEST_REQUIRE(edit.has_value());
  BOOST_TEST(house.table().joins.size() == before.joins.size() - 1);
  BOOST_TEST_REQUIRE(house.table().counts.size() == 1u);
  BOOST_TEST(house.table().counts[0].most == 3);
  actions::undo(*house.store, *edit, today);
  BOOST_TEST((house.table().joins == before.joins));
  BOOST_TEST((house.table().counts == before.counts));
  BOOST_TEST((house.table().id == before.id));
}

BOOST_DATA_TEST_CASE(sockets_are_records_of_their_own_and_stay_what_they_were, bothEngines, engine) {
  House house(engine);
  RecordAs wanted = actions::recordNow(*house.store, type("cabinet", bass));
  wanted.texts.parts[0] = {{QStringLiteral("in"), {}, {}, {}}, {QStringLiteral("on"), {}, {}, {}}};
  actions::saveRecord(*house.store, wanted, ada);
  auto sockets = store::loadConnections(*house.store).sockets;
  BOOST_TEST_REQUIRE(sockets.size() == 2u);
  const QUuid id = sockets[0].id;
  wanted.texts.parts[0].pop_back();
  wanted.texts.parts[0][0][2] = QStringLiteral("sheet 2");
  actions::saveRecord(*house.store, wanted, ada);
  sockets = store::loadConnections(*house.store).sockets;
  BOOST_TEST_REQUIRE(sockets.size() == 1u);
  BOOST_TEST((sockets[0].id == id));
  BOOST_TEST(sockets[0].source.text.toStdString() == "sheet 2");
}

BOOST_DATA_TEST_CASE(a_new_record_is_taken_out_by_undo_and_put_back_by_redo, bothEngines, engine) {
  House house(engine);
  RecordAs wanted{type("cabinet", {}), actions::recordNow(*house.store, type("cabinet", bass)).texts};
  wanted.texts.own[0] = QStringLiteral("Marram wide");
  const RecordAs part{type("cabinet", QStringLiteral("Marram wide")), {}};
  actions::PlanEdits edits;
  edits.add(
      *actions::noted(*house.store, part, ada, [&] { actions::saveRecord(*house.store, wanted, ada); }));
  const auto there = [&] {
    return catalogue::find(store::loadCatalogue(*house.store).cabinets, part.record.name) != nullptr;
  };
  BOOST_TEST(there());
  // A second one of that name is another matter.
  const QString taken = house.refusal([&] { actions::saveRecord(*house.store, wanted, ada); });
  BOOST_TEST(taken.contains(QStringLiteral("a name that no other cabinet has")), taken.toStdString());
  edits.undo(*house.store, today);
  BOOST_TEST(!there());
  edits.redo(*house.store, today);
  BOOST_TEST(there());
}

BOOST_DATA_TEST_CASE(what_is_named_stays_and_is_told_by_what, bothEngines, engine) {
  House house(engine);
  const auto says = [&](const char* sort, const QString& name) {
    return house.refusal([&] { actions::removeRecord(*house.store, type(sort, name), ada); });
  };
  const QString cabinet = says("cabinet", bass);
  BOOST_TEST(cabinet.contains(QStringLiteral("units of the fleet: 1")), cabinet.toStdString());
  BOOST_TEST(cabinet.contains(QStringLiteral("stacking table “%1”").arg(house.table().name)),
             cabinet.toStdString());
  BOOST_TEST(cabinet.contains(QStringLiteral("cart “")), cabinet.toStdString());
  const QString bar = says("bar", QStringLiteral("Heron bar"));
  BOOST_TEST(bar.contains(QStringLiteral("stacking table “")), bar.toStdString());
  const QString shackle = says("hardware", QStringLiteral("shackle 12"));
  BOOST_TEST(shackle.contains(QStringLiteral("hang “left” of show “Skerrymouth”")), shackle.toStdString());
  const RecordName hall{Kind::venues, QStringLiteral("venue"), QStringLiteral("Gannet Hall")};
  const QString venue = house.refusal([&] { actions::removeRecord(*house.store, hall, ada); });
  BOOST_TEST(venue.contains(QStringLiteral("show “Skerrymouth”")), venue.toStdString());
  BOOST_TEST(store::loadCatalogue(*house.store).bars.size() == 1u);
}

BOOST_DATA_TEST_CASE(what_nothing_names_is_removed_and_comes_back, bothEngines, engine) {
  House house(engine);
  store::save(*house.store, sampleCabinet(QStringLiteral("Marram odd")));
  const RecordAs part{type("cabinet", QStringLiteral("Marram odd")), {}};
  const RecordAs stood = actions::recordNow(*house.store, part.record);
  const auto edit =
      actions::noted(*house.store, part, ada, [&] { actions::removeRecord(*house.store, part.record, ada); });
  BOOST_TEST_REQUIRE(edit.has_value());
  BOOST_TEST(actions::recordNow(*house.store, part.record).texts.none());
  actions::undo(*house.store, *edit, today);
  BOOST_TEST((actions::recordNow(*house.store, part.record).texts == stood.texts));
}

BOOST_DATA_TEST_CASE(a_socket_that_a_plug_uses_stays, bothEngines, engine) {
  House house(engine);
  RecordAs wanted = actions::recordNow(*house.store, type("cabinet", bass));
  wanted.texts.parts[0] = {{QStringLiteral("in"), {}, {}, {}}};
  actions::saveRecord(*house.store, wanted, ada);
  calendar::Plug plug;
  const calendar::Show show = store::loadShows(*house.store).front();
  plug.tour = show.tour;
  plug.show = show.name;
  plug.hang = QStringLiteral("left");
  plug.element = 1;
  plug.socket = QStringLiteral("in");
  plug.cabinet = bass;
  plug.loom = QStringLiteral("shackle 12"); // the store asks for a type, the spreadsheet for a loom
  plug.end = QStringLiteral("A");
  store::save(*house.store, plug);
  wanted.texts.parts[0].clear();
  const QString says = house.refusal([&] { actions::saveRecord(*house.store, wanted, ada); });
  BOOST_TEST(says.contains(QStringLiteral("socket in")), says.toStdString());
  BOOST_TEST(says.contains(show.name), says.toStdString());
  BOOST_TEST(store::loadConnections(*house.store).sockets.size() == 1u);
}

BOOST_AUTO_TEST_SUITE_END()
