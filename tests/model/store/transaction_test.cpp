// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/data/monomorphic.hpp>
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include <barrier>
#include <stdexcept>
#include <thread>

#include "store/store.h"
#include "support/fresh_store.h"
#include "support/postgresql_cluster.h"

using namespace hangbook;
using namespace hangbook::store;
using hangbook::testing::bothEngines;
using hangbook::testing::FreshStore;
using hangbook::testing::PostgresqlCluster;

namespace {

const std::vector<Migration> steps{
    testing::step(1, QStringLiteral("counter"),
                  "CREATE TABLE counter (name @text NOT NULL PRIMARY KEY, value @int NOT NULL) @strict;"
                  "INSERT INTO counter (name, value) VALUES ('a', 0), ('b', 0);")};

qint64 valueOf(Store& store, const char* name) {
  return store.one(QStringLiteral("SELECT value FROM counter WHERE name = :name"), {{"name", name}})
      ->integer("value");
}

void set(Store& store, const char* name, qint64 value) {
  store.run(QStringLiteral("UPDATE counter SET value = :value WHERE name = :name"),
            {{"name", name}, {"value", value}});
}

} // namespace

BOOST_AUTO_TEST_SUITE(transaction)

BOOST_DATA_TEST_CASE(what_is_done_stays_and_what_is_thrown_goes, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open(&steps);
  const int answer = store->transact([&] {
    set(*store, "a", 1);
    return 42;
  });
  BOOST_TEST(answer == 42);
  BOOST_CHECK_THROW(store->transact([&] {
    set(*store, "a", 2);
    throw std::runtime_error("no");
  }),
                    std::runtime_error);
  BOOST_TEST(!store->inTransaction());
  BOOST_TEST(valueOf(*store->another(), "a") == 1);
}

BOOST_DATA_TEST_CASE(an_inner_one_is_part_of_the_outer_one, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open(&steps);
  BOOST_CHECK_THROW(store->transact([&] {
    store->transact([&] { set(*store, "a", 1); });
    throw std::runtime_error("no");
  }),
                    std::runtime_error);
  BOOST_TEST(valueOf(*store, "a") == 0);
}

BOOST_DATA_TEST_CASE(a_failed_part_cannot_be_swallowed, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open(&steps);
  BOOST_CHECK_THROW(store->transact([&] {
    set(*store, "a", 1);
    try {
      store->transact([&] { throw std::runtime_error("half done"); });
    } catch (const std::runtime_error&) {
    }
  }),
                    StoreError);
  BOOST_TEST(valueOf(*store, "a") == 0);
}

// PostgreSQL answers "done" to the COMMIT of a transaction in which a statement failed, and rolls it back.
BOOST_AUTO_TEST_CASE(a_commit_that_rolled_back_is_not_taken_for_done) {
  const FreshStore fresh(Engine::postgresql);
  const auto store = fresh.open(&steps);
  BOOST_CHECK_THROW(store->transact([&] {
    set(*store, "a", 1);
    try {
      store->run(QStringLiteral("INSERT INTO counter (name, value) VALUES ('a', 1)"));
    } catch (const StoreError&) {
    }
  }),
                    StoreError);
  BOOST_TEST(valueOf(*store, "a") == 0);
}

BOOST_DATA_TEST_CASE(two_that_read_then_write_lose_nothing, bothEngines, engine) {
  const FreshStore fresh(engine);
  fresh.open(&steps);
  constexpr int rounds = 25;
  std::barrier<> together(2);
  std::string trouble[2];
  const auto work = [&](int which) {
    std::unique_ptr<Store> mine;
    try {
      OpenHow how;
      how.migrations = &steps;
      mine = Store::open(fresh.where(), how);
    } catch (const std::exception& error) {
      trouble[which] = error.what();
    }
    together.arrive_and_wait();
    try {
      for (int i = 0; mine && i < rounds; ++i) {
        mine->transact([&] {
          const qint64 a = valueOf(*mine, "a");
          const qint64 b = valueOf(*mine, "b");
          set(*mine, "a", a + 1);
          set(*mine, "b", b + 1);
        });
      }
    } catch (const std::exception& error) {
      trouble[which] = error.what();
    }
  };
  std::thread other(work, 1);
  work(0);
  other.join();
  BOOST_TEST(trouble[0] == "");
  BOOST_TEST(trouble[1] == "");
  const auto store = fresh.open(&steps);
  BOOST_TEST(valueOf(*store, "a") == 2 * rounds);
  BOOST_TEST(valueOf(*store, "b") == 2 * rounds);
}

BOOST_AUTO_TEST_CASE(all_of_the_work_runs_again_where_the_engine_asks) {
  const FreshStore fresh(Engine::postgresql);
  const auto store = fresh.open(&steps);
  const auto other = store->another();
  int runs = 0;
  store->transact([&] {
    ++runs;
    const qint64 a = valueOf(*store, "a");
    if (runs == 1) {
      other->transact([&] { set(*other, "a", 10); });
    }
    set(*store, "a", a + 1);
  });
  BOOST_TEST(runs == 2);
  BOOST_TEST(valueOf(*store, "a") == 11);
}

BOOST_AUTO_TEST_CASE(a_store_locked_by_another_says_so_after_the_wait) {
  const FreshStore fresh(Engine::sqlite);
  const auto holder = fresh.open(&steps);
  const auto store = fresh.open(&steps);
  holder->transact([&] {
    BOOST_CHECK_EXCEPTION(store->transact([] {}), StoreError, [](const StoreError& e) {
      return e.cause() == Cause::busy &&
             std::string(e.what()).find("locked by another program") != std::string::npos;
    });
    // Reading goes on meanwhile.
    BOOST_TEST(store->reading([&] { return valueOf(*store, "a"); }) == 0);
  });
}

BOOST_DATA_TEST_CASE(reading_sees_one_state_and_cannot_write, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open(&steps);
  const auto other = store->another();
  store->reading([&] {
    BOOST_TEST(valueOf(*store, "a") == 0);
    other->transact([&] { set(*other, "a", 5); });
    BOOST_TEST(valueOf(*store, "a") == 0);
    BOOST_CHECK_THROW(store->transact([] {}), StoreError);
  });
  BOOST_TEST(valueOf(*store, "a") == 5);
}

BOOST_DATA_TEST_CASE(another_thread_is_refused, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open(&steps);
  std::string said;
  std::thread([&] {
    try {
      valueOf(*store, "a");
    } catch (const StoreError& error) {
      said = error.what();
    }
  }).join();
  BOOST_TEST(said.find("on another thread") != std::string::npos);
}

BOOST_AUTO_TEST_CASE(a_lost_link_is_named_and_the_next_transaction_takes_a_new_one) {
  const FreshStore fresh(Engine::postgresql);
  const auto store = fresh.open(&steps);
  PostgresqlCluster::shared().sql(
      QStringLiteral("postgres"),
      QStringLiteral("SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE "
                     "datname = '%1'")
          .arg(PostgresqlCluster::databaseOf(fresh.where())));
  BOOST_CHECK_EXCEPTION(store->transact([&] { set(*store, "a", 1); }), StoreError,
                        [](const StoreError& e) { return e.cause() == Cause::lost; });
  BOOST_CHECK_NO_THROW(store->transact([&] { set(*store, "a", 1); }));
  BOOST_TEST(valueOf(*store, "a") == 1);
}

BOOST_AUTO_TEST_CASE(a_full_disk_saves_nothing_and_says_so) {
  const FreshStore fresh(Engine::sqlite);
  const auto store = fresh.open(&steps);
  store->rows(QStringLiteral("PRAGMA max_page_count = 1")); // SQLite then stops at the pages that it has
  BOOST_CHECK_EXCEPTION(store->transact([&] {
    set(*store, "a", 1);
    for (int i = 0; i < 1000; ++i) {
      store->run(QStringLiteral("INSERT INTO counter (name, value) VALUES (:name, 1)"),
                 {{"name", QString(200, u'x') + QString::number(i)}});
    }
  }),
                        StoreError, [](const StoreError& e) { return e.cause() == Cause::full; });
  BOOST_TEST(valueOf(*store, "a") == 0);
  BOOST_TEST(!store->inTransaction());
}

BOOST_AUTO_TEST_SUITE_END()
