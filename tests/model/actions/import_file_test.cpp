// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include "actions/import_file.h"
#include "store/history_store.h"
#include "support/fresh_store.h"

using namespace hangbook;
using namespace hangbook::actions;
using exchange::Import;
using exchange::Kind;
using hangbook::testing::FreshStore;

namespace {

const exchange::Importer importer{QStringLiteral("Ingrid Paddock"),
                                  QDateTime(QDate(2027, 1, 4), QTime(9, 0), Qt::UTC)};

const QByteArray hall = "record,name,time zone,venue,x,y,z\n"
                        "venue,Gannet Hall,Europe/London,,,,\n"
                        "point,A1,,Gannet Hall,1,2,9\n";

QByteArray showWith(const QByteArray& chosen) {
  return "record,tour,name,venue,from,to,away from,away to,show,chosen option,chosen because\n"
         "tour,,Ostler Run,,,,,,,,\n"
         "show,Ostler Run,Opening,Gannet Hall,2027-03-01,2027-03-01,2027-02-28,2027-03-02,,,\n"
         "hang,Ostler Run,left,,,,,,Opening," +
         chosen + ",\n";
}

} // namespace

BOOST_DATA_TEST_CASE(a_file_goes_in_with_its_line_in_the_history, testing::bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  const Import import = importFile(*store, Kind::venues, hall, importer);
  BOOST_TEST(import.faults.empty());
  const exchange::Data now = everything(*store);
  BOOST_REQUIRE(now.venues.size() == 1);
  BOOST_TEST(now.venues[0].points.size() == 1);
  const auto history = store::loadHistory(*store);
  BOOST_REQUIRE(!history.empty());
  BOOST_TEST(history[0].by.toStdString() == "Ingrid Paddock");
  BOOST_TEST(history[0].subject.toStdString() == "venues");
  const Import again = importFile(*store, Kind::venues, hall, importer);
  BOOST_TEST(again.counts.at(0).same == 1);
  BOOST_TEST((everything(*store) == now));
}

BOOST_DATA_TEST_CASE(a_dry_run_and_a_fault_write_nothing, testing::bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  const Import dry = importFile(*store, Kind::venues, hall, importer, {}, true);
  BOOST_TEST(dry.faults.empty());
  BOOST_TEST(dry.counts.at(0).added == 1);
  const Import broken = importFile(*store, Kind::venues, hall + "point,A2,,Gannet Hall,one,2,9\n", importer);
  BOOST_REQUIRE(broken.faults.size() == 1);
  BOOST_TEST(broken.faults[0].line == 4);
  BOOST_TEST((everything(*store) == exchange::Data{}));
  BOOST_TEST(store::loadHistory(*store).empty());
}

BOOST_DATA_TEST_CASE(an_option_that_is_none_is_a_fault_on_its_line, testing::bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  importFile(*store, Kind::venues, hall, importer);
  const exchange::Data before = everything(*store);
  const Import import = importFile(*store, Kind::shows, showWith("0123456789abcdef"), importer);
  BOOST_REQUIRE(import.faults.size() == 1);
  BOOST_TEST(import.faults[0].line == 4);
  BOOST_TEST(import.faults[0].column.toStdString() == "chosen option");
  BOOST_TEST(import.faults[0].read.toStdString() == "0123456789abcdef");
  BOOST_TEST((everything(*store) == before));
  BOOST_TEST(importFile(*store, Kind::shows, showWith(""), importer).faults.empty());
}

BOOST_DATA_TEST_CASE(columns_are_read_the_next_time_as_they_were, testing::bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  const QByteArray theirs = "Halls of the tour\nrecord,Hall,zone\nvenue,Gannet Hall,Europe/London\n";
  exchange::CsvForm form;
  form.mapping = {2,
                  {{QStringLiteral("Hall"), QStringLiteral("name")},
                   {QStringLiteral("zone"), QStringLiteral("time zone")}},
                  {}};
  BOOST_TEST(importFile(*store, Kind::venues, theirs, importer, form, true).faults.empty());
  BOOST_TEST(!rememberedMapping(*store, Kind::venues, theirs).has_value()); // a dry run keeps nothing
  BOOST_TEST_REQUIRE(importFile(*store, Kind::venues, theirs, importer, form).faults.empty());
  const auto kept = rememberedMapping(*store, Kind::venues, QByteArray(theirs).replace("Gannet", "Plover"));
  BOOST_TEST_REQUIRE(kept.has_value());
  BOOST_TEST((kept->mapping == form.mapping));
  BOOST_TEST(kept->by.toStdString() == "Ingrid Paddock");
  BOOST_TEST((kept->at == importer.now));
  BOOST_TEST(!rememberedMapping(*store, Kind::units, theirs).has_value()); // another kind of file
  BOOST_TEST(
      !rememberedMapping(*store, Kind::venues, QByteArray(theirs).replace("Hall,", "House,")).has_value());
  // The last way of reading counts.
  form.mapping.everywhere = {{QStringLiteral("town"), QStringLiteral("Oxmere")}};
  BOOST_TEST_REQUIRE(importFile(*store, Kind::venues, theirs, importer, form).faults.empty());
  BOOST_TEST((rememberedMapping(*store, Kind::venues, theirs)->mapping == form.mapping));
}
