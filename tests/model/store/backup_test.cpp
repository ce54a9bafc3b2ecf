// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/unit_test.hpp>

#include <QDir>
#include <QFile>

#include "store/store.h"
#include "support/fresh_store.h"

using namespace hangbook;
using namespace hangbook::store;
using hangbook::testing::FreshStore;

namespace {

const std::vector<Migration> steps{testing::step(
    1, QStringLiteral("shelf"), "CREATE TABLE shelf (name @text NOT NULL PRIMARY KEY) @strict;")};

bool says(const StoreError& error, const char* words) {
  return std::string(error.what()).find(words) != std::string::npos;
}

} // namespace

BOOST_AUTO_TEST_SUITE(backing_up)

BOOST_AUTO_TEST_CASE(a_copy_holds_what_was_saved_and_nothing_half_done) {
  const FreshStore fresh(Engine::sqlite);
  const auto store = fresh.open(&steps);
  store->run(QStringLiteral("INSERT INTO shelf (name) VALUES ('top')"));
  const auto writer = store->another();
  const QString target = fresh.path("copy.hangbook");
  writer->transact([&] {
    writer->run(QStringLiteral("INSERT INTO shelf (name) VALUES ('low')"));
    store->backUpTo(target);
  });
  OpenHow how;
  how.migrations = &steps;
  const auto copy = Store::open(target, how);
  BOOST_TEST(copy->one(QStringLiteral("SELECT count(*) AS n FROM shelf"))->integer("n") == 1);
  BOOST_TEST(copy->faults().isEmpty());
}

BOOST_AUTO_TEST_CASE(a_copy_is_one_file_and_nothing_is_left_beside_it) {
  const FreshStore fresh(Engine::sqlite);
  const auto store = fresh.open(&steps);
  QDir().mkdir(fresh.path("kept"));
  store->backUpTo(fresh.path("kept/copy.hangbook"));
  BOOST_TEST(QDir(fresh.path("kept")).entryList(QDir::Files).join(u' ').toStdString() == "copy.hangbook");
}

BOOST_AUTO_TEST_CASE(what_is_there_is_never_written_over) {
  const FreshStore fresh(Engine::sqlite);
  const auto store = fresh.open(&steps);
  BOOST_CHECK_EXCEPTION(store->backUpTo(fresh.where()), StoreError,
                        [](const StoreError& e) { return says(e, "there is a file here already"); });
  BOOST_CHECK_EXCEPTION(store->backUpTo(fresh.path("lost/copy")), StoreError,
                        [](const StoreError& e) { return says(e, "no such folder"); });
}

BOOST_AUTO_TEST_CASE(a_server_names_its_own_tool) {
  const FreshStore fresh(Engine::postgresql);
  const auto store = fresh.open(&steps);
  BOOST_CHECK_EXCEPTION(store->backUpTo(fresh.path("copy")), StoreError,
                        [](const StoreError& e) { return says(e, "pg_dump"); });
}

BOOST_AUTO_TEST_SUITE_END()
