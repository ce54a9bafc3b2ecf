// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/data/monomorphic.hpp>
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include <barrier>
#include <thread>

#include <QDir>
#include <QFile>

#include "store/store.h"
#include "support/fresh_store.h"

using namespace hangbook;
using namespace hangbook::store;
using hangbook::testing::bothEngines;
using hangbook::testing::FreshStore;
using hangbook::testing::step;

namespace {

const Migration first = step(1, QStringLiteral("shelf"),
                             "CREATE TABLE shelf (name @text NOT NULL PRIMARY KEY) @strict;"
                             "INSERT INTO shelf (name) VALUES ('top');");

Migration second() {
  Migration result =
      step(2, QStringLiteral("box"),
           "CREATE TABLE box (name @text NOT NULL PRIMARY KEY, shelf @text NOT NULL REFERENCES "
           "shelf (name)) @strict; INSERT INTO box (name, shelf) VALUES ('lid', 'top');");
  result.sqlite =
      "CREATE TRIGGER box_stays BEFORE DELETE ON box BEGIN SELECT RAISE(ABORT, 'boxes; stay'); END;";
  result.postgresql =
      "CREATE FUNCTION box_stays() RETURNS trigger LANGUAGE plpgsql AS $$ BEGIN RAISE EXCEPTION "
      "'boxes; stay'; END; $$;\n"
      "CREATE TRIGGER box_stays BEFORE DELETE ON box FOR EACH ROW EXECUTE FUNCTION box_stays();";
  return result;
}

qint64 count(Store& store, const char* table) {
  return store.one(QStringLiteral("SELECT count(*) AS n FROM ") + QLatin1StringView(table))->integer("n");
}

bool says(const StoreError& error, const char* words) {
  const bool found = std::string(error.what()).find(words) != std::string::npos;
  if (!found) {
    BOOST_TEST_MESSAGE(error.what());
  }
  return found;
}

} // namespace

BOOST_AUTO_TEST_SUITE(migrating)

BOOST_DATA_TEST_CASE(a_fresh_store_takes_all_steps_and_notes_them, bothEngines, engine) {
  const FreshStore fresh(engine);
  const std::vector<Migration> steps{first, second()};
  const auto store = fresh.open(&steps, QStringLiteral("0.2.0"));
  const Rows taken = store->rows(QStringLiteral("SELECT * FROM hangbook_migration ORDER BY number"));
  BOOST_REQUIRE(taken.size() == 2U);
  BOOST_TEST(taken[1].text("name").toStdString() == "box");
  BOOST_TEST(taken[1].text("program").toStdString() == "0.2.0");
  BOOST_TEST(taken[1].text("checksum").toStdString() == second().checksum().toStdString());
  BOOST_CHECK(taken[1].instant("applied_at").isValid());
  BOOST_TEST(store->faults().isEmpty());
  BOOST_CHECK_EXCEPTION(store->run(QStringLiteral("DELETE FROM box")), StoreError, [](const StoreError& e) {
    return e.cause() == Cause::refused && says(e, "boxes; stay");
  });
}

BOOST_DATA_TEST_CASE(opening_again_takes_nothing_twice, bothEngines, engine) {
  const FreshStore fresh(engine);
  const std::vector<Migration> steps{first, second()};
  fresh.open(&steps);
  const auto store = fresh.open(&steps);
  BOOST_TEST(count(*store, "box") == 1);
  BOOST_TEST(count(*store, "hangbook_migration") == 2);
}

BOOST_DATA_TEST_CASE(an_older_store_is_brought_up, bothEngines, engine) {
  const FreshStore fresh(engine);
  const std::vector<Migration> old{first};
  fresh.open(&old)->run(QStringLiteral("INSERT INTO shelf (name) VALUES ('low')"));
  const std::vector<Migration> steps{first, second()};
  const auto store = fresh.open(&steps);
  BOOST_TEST(count(*store, "shelf") == 2);
  BOOST_TEST(count(*store, "box") == 1);
}

BOOST_AUTO_TEST_CASE(the_file_is_copied_before_a_later_step) {
  const FreshStore fresh(Engine::sqlite);
  const std::vector<Migration> old{first};
  fresh.open(&old)->run(QStringLiteral("INSERT INTO shelf (name) VALUES ('low')"));
  BOOST_TEST(!QFile::exists(fresh.where() + ".before-0001"));
  const std::vector<Migration> steps{first, second()};
  fresh.open(&steps);
  OpenHow how;
  how.migrations = &old;
  const auto copy = Store::open(fresh.where() + ".before-0002", how);
  BOOST_TEST(count(*copy, "shelf") == 2);
  BOOST_TEST(copy->faults().isEmpty());
}

BOOST_DATA_TEST_CASE(a_step_that_breaks_in_the_middle_leaves_the_store_as_it_was, bothEngines, engine) {
  const FreshStore fresh(engine);
  const std::vector<Migration> old{first};
  fresh.open(&old);
  const std::vector<Migration> broken{first, step(2, QStringLiteral("torn"),
                                                  "CREATE TABLE torn (a @int) @strict;"
                                                  "DELETE FROM shelf;"
                                                  "INSERT INTO nowhere (a) VALUES (1);")};
  BOOST_CHECK_EXCEPTION(fresh.open(&broken), StoreError, [](const StoreError& e) {
    return says(e, "step 0002 \"torn\" failed, and the store was left as it was before it");
  });
  const auto store = fresh.open(&old);
  BOOST_TEST(count(*store, "shelf") == 1);
  BOOST_TEST(count(*store, "hangbook_migration") == 1);
  BOOST_CHECK_THROW(store->rows(QStringLiteral("SELECT * FROM torn")), StoreError);
  const std::vector<Migration> mended{first, second()};
  BOOST_TEST(count(*fresh.open(&mended), "box") == 1);
}

BOOST_DATA_TEST_CASE(a_step_that_leaves_loose_references_is_refused, bothEngines, engine) {
  const FreshStore fresh(engine);
  const std::vector<Migration> steps{
      first, second(), step(3, QStringLiteral("loose"), "DELETE FROM shelf WHERE name = 'top';")};
  BOOST_CHECK_EXCEPTION(fresh.open(&steps), StoreError, [](const StoreError& e) {
    return e.cause() == Cause::reference && says(e, "loose");
  });
  const std::vector<Migration> good{first, second()};
  BOOST_TEST(count(*fresh.open(&good), "shelf") == 1);
}

BOOST_DATA_TEST_CASE(a_newer_store_is_refused_by_its_version, bothEngines, engine) {
  const FreshStore fresh(engine);
  const std::vector<Migration> steps{first, second()};
  fresh.open(&steps, QStringLiteral("7.1.0"));
  const std::vector<Migration> old{first};
  BOOST_CHECK_EXCEPTION(fresh.open(&old, QStringLiteral("7.0.0")), StoreError, [](const StoreError& e) {
    return e.cause() == Cause::newer && says(e, "written by Hangbook 7.1.0") &&
           says(e, "this is Hangbook 7.0.0");
  });
}

BOOST_DATA_TEST_CASE(a_step_that_was_changed_afterwards_is_refused, bothEngines, engine) {
  const FreshStore fresh(engine);
  const std::vector<Migration> steps{first, second()};
  fresh.open(&steps);
  std::vector<Migration> changed = steps;
  changed[1].postgresql += "\n";
  BOOST_CHECK_EXCEPTION(fresh.open(&changed), StoreError,
                        [](const StoreError& e) { return says(e, "was changed afterwards"); });
}

BOOST_DATA_TEST_CASE(the_checksum_covers_every_part_and_where_it_ends, bothEngines, engine) {
  Migration a = second();
  Migration b = a;
  BOOST_TEST(a.checksum() == b.checksum());
  // The same bytes, cut elsewhere between two parts.
  a.common = "AB";
  (engine == Engine::sqlite ? a.sqlite : a.postgresql) = "C";
  b.common = "A";
  (engine == Engine::sqlite ? b.sqlite : b.postgresql) = "BC";
  BOOST_TEST(a.checksum() != b.checksum());
}

BOOST_DATA_TEST_CASE(two_programs_may_bring_it_up_at_once, bothEngines, engine) {
  const FreshStore fresh(engine);
  const std::vector<Migration> steps{first, second()};
  std::barrier<> together(2);
  std::string trouble[2];
  const auto open = [&](int which) {
    OpenHow how;
    how.create = true;
    how.migrations = &steps;
    together.arrive_and_wait();
    try {
      Store::open(fresh.where(), how);
    } catch (const std::exception& error) {
      trouble[which] = error.what();
    }
  };
  std::thread other(open, 1);
  open(0);
  other.join();
  BOOST_TEST(trouble[0] == "");
  BOOST_TEST(trouble[1] == "");
  BOOST_TEST(count(*fresh.open(&steps), "hangbook_migration") == 2);
}

BOOST_AUTO_TEST_CASE(files_become_steps_in_order_with_their_parts) {
  const QTemporaryDir folder;
  const auto write = [&](const char* name, const char* text) {
    QFile file(folder.filePath(QString::fromLatin1(name)));
    BOOST_REQUIRE(file.open(QIODevice::WriteOnly));
    file.write(text);
  };
  write("0002_later.sql", "SELECT 2;");
  write("0001_first.sql", "SELECT 1;");
  write("0001_first.sqlite.sql", "SELECT 11;");
  write("0001_first.postgresql.sql", "SELECT 12;");
  const std::vector<Migration> steps = migrationsIn(folder.path());
  BOOST_REQUIRE(steps.size() == 2U);
  BOOST_TEST(steps[0].name.toStdString() == "first");
  BOOST_TEST(steps[0].statements(Engine::sqlite).join(u' ').toStdString() == "SELECT 1; SELECT 11;");
  BOOST_TEST(steps[0].statements(Engine::postgresql).join(u' ').toStdString() == "SELECT 1; SELECT 12;");
  write("0004_gap.sql", "SELECT 4;");
  BOOST_CHECK_THROW(migrationsIn(folder.path()), Error);
  QFile::remove(folder.filePath(QStringLiteral("0004_gap.sql")));
  write("0002_other.sql", "SELECT 2;");
  BOOST_CHECK_THROW(migrationsIn(folder.path()), Error);
}

BOOST_AUTO_TEST_SUITE_END()
