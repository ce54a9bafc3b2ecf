// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/data/monomorphic.hpp>
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include <sys/stat.h>
#include <unistd.h>

#include <QFile>
#include <QSqlDatabase>
#include <QSqlQuery>

#include "store/opening.h"
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
    testing::step(1, QStringLiteral("shelf"),
                  "CREATE TABLE shelf (name @text NOT NULL PRIMARY KEY) @strict;"
                  "CREATE TABLE box (shelf @text NOT NULL REFERENCES shelf (name)) "
                  "@strict;")};

bool says(const StoreError& error, const char* words) {
  const bool found = std::string(error.what()).find(words) != std::string::npos;
  if (!found) {
    BOOST_TEST_MESSAGE(error.what());
  }
  return found;
}

void write(const QString& path, const QByteArray& bytes) {
  QFile file(path);
  BOOST_REQUIRE(file.open(QIODevice::WriteOnly));
  file.write(bytes);
}

QByteArray contents(const QString& path) {
  QFile file(path);
  BOOST_REQUIRE(file.open(QIODevice::ReadOnly));
  return file.readAll();
}

/// Root may write anywhere; for what is to be refused, work as nobody.
class AsNobody {
public:
  AsNobody() {
    if (geteuid() == 0) {
      BOOST_REQUIRE(seteuid(65534) == 0);
      changed_ = true;
    }
  }
  ~AsNobody() {
    if (changed_ && seteuid(0) != 0) {
      std::abort();
    }
  }

private:
  bool changed_ = false;
};

} // namespace

BOOST_AUTO_TEST_SUITE(opening)

BOOST_AUTO_TEST_CASE(a_file_is_made_only_where_asked) {
  const FreshStore fresh(Engine::sqlite);
  OpenHow how;
  how.migrations = &steps;
  BOOST_CHECK_EXCEPTION(Store::open(fresh.where(), how), StoreError,
                        [](const StoreError& e) { return says(e, "there is no store here"); });
  BOOST_TEST(!QFile::exists(fresh.where()));
  how.create = true;
  Store::open(fresh.where(), how);
  BOOST_TEST(QFile::exists(fresh.where()));
}

BOOST_AUTO_TEST_CASE(a_folder_that_is_not_there_is_named) {
  const FreshStore fresh(Engine::sqlite);
  OpenHow how;
  how.create = true;
  BOOST_CHECK_EXCEPTION(
      Store::open(fresh.path("lost/tour.hangbook"), how), StoreError,
      [](const StoreError& e) { return says(e, "there is no folder") && says(e, "/lost"); });
  BOOST_CHECK_EXCEPTION(Store::open(fresh.path(""), how), StoreError,
                        [](const StoreError& e) { return says(e, "this is a folder"); });
}

BOOST_AUTO_TEST_CASE(what_each_connection_needs_is_set) {
  const FreshStore fresh(Engine::sqlite);
  const auto store = fresh.open(&steps);
  for (Store* each : {store.get(), fresh.open(&steps).release()}) {
    const std::unique_ptr<Store> owner(each == store.get() ? nullptr : each);
    const auto figure = [&](const char* name) {
      return each->one(QStringLiteral("PRAGMA ") + QLatin1StringView(name))->integer(name);
    };
    BOOST_TEST(figure("foreign_keys") == 1);
    BOOST_TEST(figure("synchronous") == 2);
    BOOST_TEST(figure("trusted_schema") == 0);
    BOOST_TEST(figure("application_id") == applicationId);
    BOOST_TEST(figure("user_version") == 1);
    BOOST_TEST(each->one(QStringLiteral("PRAGMA journal_mode"))->text("journal_mode").toStdString() == "wal");
  }
}

BOOST_DATA_TEST_CASE(references_are_kept_on_every_connection, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open(&steps);
  const auto other = store->another();
  for (Store* each : {store.get(), other.get()}) {
    BOOST_CHECK_EXCEPTION(each->run(QStringLiteral("INSERT INTO box (shelf) VALUES ('none')")), StoreError,
                          [](const StoreError& e) { return e.cause() == Cause::reference; });
  }
}

BOOST_AUTO_TEST_CASE(a_file_of_another_kind_is_left_as_it_is) {
  const FreshStore fresh(Engine::sqlite);
  const QByteArray words = QByteArray("serial;type\n1;bass\n").repeated(400);
  write(fresh.where(), words);
  BOOST_CHECK_EXCEPTION(fresh.open(&steps), StoreError, [](const StoreError& e) {
    return e.cause() == Cause::notAStore && says(e, "not a Hangbook store");
  });
  BOOST_TEST(contents(fresh.where()) == words);
}

BOOST_AUTO_TEST_CASE(another_programs_database_is_left_as_it_is) {
  const FreshStore fresh(Engine::sqlite);
  {
    QSqlDatabase raw = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), QStringLiteral("raw"));
    raw.setDatabaseName(fresh.where());
    BOOST_REQUIRE(raw.open());
    QSqlQuery(raw).exec(QStringLiteral("CREATE TABLE theirs (a)"));
    raw.close();
  }
  QSqlDatabase::removeDatabase(QStringLiteral("raw"));
  const QByteArray before = contents(fresh.where());
  BOOST_CHECK_EXCEPTION(fresh.open(&steps), StoreError,
                        [](const StoreError& e) { return e.cause() == Cause::notAStore; });
  BOOST_TEST(contents(fresh.where()) == before);
}

BOOST_AUTO_TEST_CASE(another_programs_tables_on_a_server_are_left_alone) {
  const FreshStore fresh(Engine::postgresql);
  PostgresqlCluster::shared().sql(PostgresqlCluster::databaseOf(fresh.where()),
                                  QStringLiteral("CREATE TABLE theirs (a int)"));
  BOOST_CHECK_EXCEPTION(fresh.open(&steps), StoreError,
                        [](const StoreError& e) { return e.cause() == Cause::notAStore; });
}

BOOST_AUTO_TEST_CASE(a_damaged_store_is_refused) {
  const FreshStore fresh(Engine::sqlite);
  {
    const auto store = fresh.open(&steps);
    for (int i = 0; i < 200; ++i) {
      store->run(QStringLiteral("INSERT INTO shelf (name) VALUES (:name)"),
                 {{"name", QString(100, u'x') + QString::number(i)}});
    }
  }
  QByteArray bytes = contents(fresh.where());
  for (qsizetype at = 4096 * 3; at < bytes.size(); at += 7) {
    bytes[at] = 'Z';
  }
  write(fresh.where(), bytes);
  BOOST_CHECK_EXCEPTION(fresh.open(&steps), StoreError, [](const StoreError& e) {
    return e.cause() == Cause::damaged && says(e, "newest backup");
  });
}

BOOST_AUTO_TEST_CASE(a_file_that_may_only_be_read_is_refused) {
  const FreshStore fresh(Engine::sqlite);
  fresh.open(&steps);
  chmod(QFile::encodeName(fresh.path("")).constData(), 0755);
  chmod(QFile::encodeName(fresh.where()).constData(), 0444);
  {
    const AsNobody nobody;
    BOOST_CHECK_EXCEPTION(fresh.open(&steps), StoreError, [](const StoreError& e) {
      return e.cause() == Cause::readOnly && says(e, "this file may not be written");
    });
  }
  chmod(QFile::encodeName(fresh.where()).constData(), 0666);
  chmod(QFile::encodeName(fresh.path("")).constData(), 0555);
  {
    const AsNobody nobody;
    BOOST_CHECK_EXCEPTION(fresh.open(&steps), StoreError, [](const StoreError& e) {
      return e.cause() == Cause::readOnly && says(e, "the folder of the store may not be written");
    });
  }
  chmod(QFile::encodeName(fresh.path("")).constData(), 0755);
}

BOOST_DATA_TEST_CASE(drives_of_other_hosts_are_known,
                     boost::unit_test::data::make({"nfs", "nfs4", "cifs", "smb3", "9p", "fuse.sshfs",
                                                   "ceph"}),
                     type) {
  BOOST_TEST(isNetworkFileSystem(type));
}

BOOST_DATA_TEST_CASE(drives_of_this_host_are_known,
                     boost::unit_test::data::make({"ext4", "xfs", "btrfs", "tmpfs", "overlay", "vfat",
                                                   "fuseblk", ""}),
                     type) {
  BOOST_TEST(!isNetworkFileSystem(type));
}

BOOST_AUTO_TEST_CASE(a_server_that_is_not_there_is_named) {
  BOOST_CHECK_EXCEPTION(Store::open(QStringLiteral("postgresql://me@/tour?host=/nowhere")), StoreError,
                        [](const StoreError& e) {
                          return e.cause() == Cause::lost && says(e, "postgresql://me@/nowhere:5432/tour") &&
                                 says(e, "cannot be reached");
                        });
}

BOOST_AUTO_TEST_SUITE_END()
