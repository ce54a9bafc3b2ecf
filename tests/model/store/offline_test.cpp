// SPDX-License-Identifier: GPL-3.0-or-later
// An offline copy is a SQLite file that holds what the store holds, from either engine, and is never written.
#include <boost/test/data/monomorphic.hpp>
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include <QDir>
#include <QFile>

#include "store/calendar_store.h"
#include "store/fleet_store.h"
#include "store/gate_store.h"
#include "store/mark_store.h"
#include "store/offline.h"
#include "store/snapshot_store.h"
#include "store/venue_store.h"
#include "support/sample_cabling.h"

using namespace hangbook;
using namespace hangbook::store;
using namespace hangbook::testing;

namespace {

const OfflineCopy about{
    QStringLiteral("Tour"),       QStringLiteral("Show"),
    QDate(2027, 3, 20),           QDateTime(QDate(2027, 3, 20), QTime(8, 15, 30, 250), Qt::UTC),
    QStringLiteral("Orla Tench"), QStringLiteral("somewhere"),
    QStringLiteral("show r1")};

} // namespace

BOOST_AUTO_TEST_SUITE(offline)

BOOST_DATA_TEST_CASE(a_copy_holds_what_the_store_holds, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  fill(*store);
  append(*store, sampleMark());
  SampleCabling().saveTo(*store);
  const QString file = fresh.path(QStringLiteral("copy.hangbook"));
  store->reading([&] { writeOfflineCopy(*store, file, about, [](Store&) {}); });
  const auto copy = Store::open(file);
  const auto says = offlineCopyIn(*copy);
  BOOST_REQUIRE(says.has_value());
  BOOST_CHECK(says->madeAt == about.madeAt);
  BOOST_CHECK(says->asOf == about.asOf);
  BOOST_CHECK(loadUnits(*copy) == loadUnits(*store));
  BOOST_CHECK(loadVenues(*copy) == loadVenues(*store));
  BOOST_CHECK(loadShows(*copy) == loadShows(*store));
  BOOST_CHECK(loadMarks(*copy) == loadMarks(*store));
  BOOST_CHECK(loadGates(*copy) == loadGates(*store));
  BOOST_CHECK(loadExaminations(*copy) == loadExaminations(*store));
  BOOST_CHECK(!loadUnits(*copy).empty());
  BOOST_CHECK(!loadMarks(*copy).empty());
  const calendar::Cabling cabling = loadCabling(*copy);
  BOOST_CHECK(cabling == loadCabling(*store));
  for (const std::size_t rows :
       {cabling.connectors.size(), cabling.sockets.size(), cabling.ends.size(), cabling.plugs.size()}) {
    BOOST_TEST(rows == 1U);
  }
  BOOST_CHECK_EXCEPTION(append(*copy, sampleMark()), StoreError,
                        [](const StoreError& error) { return error.cause() == Cause::readOnly; });
  BOOST_CHECK(!offlineCopyIn(*store));
}

BOOST_DATA_TEST_CASE(one_that_is_refused_leaves_nothing, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  fill(*store);
  const QString file = fresh.path(QStringLiteral("copy.hangbook"));
  BOOST_CHECK_THROW(writeOfflineCopy(*store, file, about, [](Store&) { throw std::runtime_error("no"); }),
                    std::runtime_error);
  BOOST_CHECK(QDir(QFileInfo(file).path()).entryList({QStringLiteral("copy.hangbook*")}).isEmpty());
  QFile other(file);
  BOOST_REQUIRE(other.open(QIODevice::WriteOnly));
  other.write("mine");
  other.close();
  BOOST_CHECK_THROW(writeOfflineCopy(*store, file, about, [](Store&) {}), StoreError);
  BOOST_CHECK(other.size() == 4);
}

BOOST_AUTO_TEST_SUITE_END()
