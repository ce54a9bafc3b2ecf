// SPDX-License-Identifier: GPL-3.0-or-later
// Who has a store open: what tells a log that a crash left from one that a program at work is writing.
#include <boost/test/unit_test.hpp>

#include <array>
#include <csignal>
#include <optional>

#include <sys/wait.h>
#include <unistd.h>

#include <QFile>

#include "store/presence.h"
#include "store/store.h"
#include "support/fresh_store.h"

using namespace hangbook;
using namespace hangbook::store;
using hangbook::testing::FreshStore;

namespace {

const std::vector<Migration> steps{testing::step(
    1, QStringLiteral("shelf"), "CREATE TABLE shelf (name @text NOT NULL PRIMARY KEY) @strict;")};

/// A store beyond the size that is checked at every start, as a crash leaves it: with its log, and with a
/// page that holds nonsense.
QString damagedLargeStore(const FreshStore& fresh) {
  const QString copy = fresh.path(QStringLiteral("crashed.hangbook"));
  const auto store = fresh.open(&steps);
  store->transact([&] {
    for (int i = 0; i < 18; ++i) {
      store->run(QStringLiteral("INSERT INTO shelf (name) VALUES (:name)"),
                 {{"name", QString(1024 * 1024, u'x') + QString::number(i)}});
    }
  });
  store->rows(QStringLiteral("PRAGMA wal_checkpoint(TRUNCATE)"));
  store->run(QStringLiteral("INSERT INTO shelf (name) VALUES ('in the log')"));
  BOOST_REQUIRE(QFile::copy(fresh.where(), copy));
  BOOST_REQUIRE(QFile::copy(fresh.where() + QStringLiteral("-wal"), copy + QStringLiteral("-wal")));
  QFile file(copy);
  BOOST_REQUIRE(file.open(QIODevice::ReadWrite));
  BOOST_REQUIRE(file.size() > 17 * 1024 * 1024);
  BOOST_REQUIRE(file.seek(4096 * 1000));
  file.write(QByteArray(4096 * 50, 'Z'));
  return copy;
}

void open(const QString& where) {
  OpenHow how;
  how.migrations = &steps;
  Store::open(where, how);
}

} // namespace

BOOST_AUTO_TEST_SUITE(presence)

BOOST_AUTO_TEST_CASE(who_comes_second_knows_once_the_first_found_it_sound) {
  const FreshStore fresh(Engine::sqlite);
  const QString file = Presence::fileFor(fresh.where());
  {
    std::optional<Presence> first(std::in_place, fresh.where());
    BOOST_TEST(!first->othersAtWork());
    {
      const Presence early(fresh.where());
      BOOST_TEST(!early.othersAtWork()); // the first one is still looking
    }
    first->settle();
    const Presence second(fresh.where());
    BOOST_TEST(second.othersAtWork());
    first.reset();
    BOOST_TEST(QFile::exists(file)); // the second one is still at work
    const Presence third(fresh.where());
    BOOST_TEST(third.othersAtWork());
  }
  BOOST_TEST(!QFile::exists(file));
  BOOST_TEST(!Presence(fresh.where()).othersAtWork());
}

BOOST_AUTO_TEST_CASE(whoever_was_killed_is_not_at_work) {
  const FreshStore fresh(Engine::sqlite);
  std::array<int, 2> pipes{};
  BOOST_REQUIRE(pipe(pipes.data()) == 0);
  const pid_t child = fork();
  BOOST_REQUIRE(child >= 0);
  if (child == 0) {
    Presence here(fresh.where());
    here.settle();
    if (write(pipes[1], "x", 1) == 1) {
      pause();
    }
    _exit(1);
  }
  char said = 0;
  BOOST_REQUIRE(read(pipes[0], &said, 1) == 1);
  close(pipes[0]);
  close(pipes[1]);
  BOOST_TEST(Presence(fresh.where()).othersAtWork());
  kill(child, SIGKILL);
  BOOST_REQUIRE(waitpid(child, nullptr, 0) == child);
  BOOST_TEST(QFile::exists(Presence::fileFor(fresh.where())));
  BOOST_TEST(!Presence(fresh.where()).othersAtWork());
}

BOOST_AUTO_TEST_CASE(a_large_store_is_checked_after_a_crash) {
  const FreshStore fresh(Engine::sqlite);
  const QString crashed = damagedLargeStore(fresh);
  BOOST_CHECK_EXCEPTION(open(crashed), StoreError,
                        [](const StoreError& e) { return e.cause() == Cause::damaged; });
  // Once refused, still refused; and a file that is left over says nothing.
  QFile(Presence::fileFor(crashed)).open(QIODevice::WriteOnly);
  BOOST_CHECK_EXCEPTION(open(crashed), StoreError,
                        [](const StoreError& e) { return e.cause() == Cause::damaged; });
}

BOOST_AUTO_TEST_CASE(a_large_store_is_not_checked_again_beside_a_program_at_work) {
  const FreshStore fresh(Engine::sqlite);
  const QString crashed = damagedLargeStore(fresh);
  Presence other(crashed);
  other.settle();
  BOOST_CHECK_NO_THROW(open(crashed)); // all of it would have to be read to see the damage
}

BOOST_AUTO_TEST_SUITE_END()
