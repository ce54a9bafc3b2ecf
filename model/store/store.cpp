// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/store.h"

#include <QRandomGenerator>
#include <QThread>

#include "store/backup.h"
#include "store/connection.h"
#include "store/migrate.h"
#include "store/offline.h"
#include "store/opening.h"

namespace hangbook::store {

namespace {

/// How often a transaction is run before its trouble is passed on.
constexpr int mostAttempts = 10;

} // namespace

Store::Store(std::unique_ptr<Connection> connection, OpenHow how)
    : connection_(std::move(connection)), how_(std::move(how)) {
  if (how_.migrations == nullptr) {
    how_.migrations = &ownMigrations();
  }
}

Store::~Store() = default;

std::unique_ptr<Store> Store::open(const QString& where, const OpenHow& how) {
  const Place place = placeFrom(where);
  std::unique_ptr<Store> store(new Store(openChecked(place, how.create, how.wait), how));
  migrate(*store->connection_, *store->how_.migrations, how.program);
  keepOfflineCopy(*store);
  return store;
}

std::unique_ptr<Store> Store::another() const {
  auto connection = std::make_unique<Connection>(connection_->place(), connection_->wait());
  settle(*connection);
  connection->keep(connection_->presence());
  std::unique_ptr<Store> store(new Store(std::move(connection), how_));
  keepOfflineCopy(*store);
  return store;
}

Engine Store::engine() const {
  return connection_->engine();
}

const Place& Store::place() const {
  return connection_->place();
}

Connection& Store::connection() {
  return *connection_;
}

qint64 Store::run(const QString& sql, const Bindings& bindings) {
  return connection_->run(sql, bindings);
}

Rows Store::rows(const QString& sql, const Bindings& bindings) {
  return connection_->rows(sql, bindings);
}

void Store::each(const QString& sql, const Bindings& bindings, const std::function<void(const Row&)>& look) {
  connection_->each(sql, bindings, look);
}

QString Store::moment() {
  if (phase_ == Phase::none) {
    return {};
  }
  const QString link = QString::number(connection_->openings()) + u'/';
  if (engine() == Engine::postgresql) { // which transactions are seen: any that ends changes it
    return phase_ == Phase::writing
               ? QString()
               : link + one(QStringLiteral("SELECT pg_current_snapshot()::text AS seen"))->text("seen");
  }
  // What others committed, as this transaction sees it, and every row that was ever written from here.
  const qint64 others = one(QStringLiteral("PRAGMA data_version"))->integer("data_version");
  const qint64 own = one(QStringLiteral("SELECT total_changes() AS own"))->integer("own");
  return link + QString::number(others) + u'/' + QString::number(own);
}

std::optional<Row> Store::one(const QString& sql, const Bindings& bindings) {
  Rows found = rows(sql, bindings);
  if (found.size() > 1) {
    throw StoreError(Cause::damaged, "the store holds " + std::to_string(found.size()) +
                                         " rows where one is expected: " + sql.toStdString());
  }
  return found.empty() ? std::nullopt : std::optional(std::move(found.front()));
}

bool Store::inTransaction() const {
  return phase_ != Phase::none;
}

void Store::attempt(const QString& begin, const std::function<void()>& work) {
  connection_->begin(begin);
  doomed_ = false;
  try {
    work();
    if (doomed_) {
      throw StoreError(Cause::other, "a part of this work failed, so none of it was saved");
    }
  } catch (...) {
    connection_->rollback();
    throw;
  }
  connection_->commit();
}

void Store::writing(const std::function<void()>& work) {
  if (phase_ == Phase::reading) {
    throw StoreError(Cause::other, "something was to be written while the store was only read");
  }
  if (!connection_->neverWritten().isEmpty()) {
    throw StoreError(Cause::readOnly, connection_->neverWritten().toStdString());
  }
  if (phase_ == Phase::writing) {
    try {
      work();
    } catch (...) {
      doomed_ = true;
      throw;
    }
    return;
  }
  const QString begin = engine() == Engine::sqlite ? QStringLiteral("BEGIN IMMEDIATE")
                                                   : QStringLiteral("BEGIN ISOLATION LEVEL SERIALIZABLE");
  for (int attempts = 1;; ++attempts) {
    bool began = false;
    try {
      phase_ = Phase::writing;
      attempt(begin, [&] {
        began = true;
        work();
      });
      phase_ = Phase::none;
      return;
    } catch (const StoreError& error) {
      phase_ = Phase::none;
      // The wait for the lock itself has already run its full time: that is not repeated.
      const bool again = error.cause() == Cause::conflict || (began && error.cause() == Cause::busy);
      if (!again || attempts == mostAttempts) {
        throw;
      }
    } catch (...) {
      phase_ = Phase::none;
      throw;
    }
    // Two that collided must not collide again in step.
    QThread::msleep(1 + QRandomGenerator::global()->bounded(5U * static_cast<quint32>(attempts)));
  }
}

void Store::readingOnly(const std::function<void()>& work) {
  if (phase_ != Phase::none) {
    work();
    return;
  }
  phase_ = Phase::reading;
  try {
    attempt(engine() == Engine::sqlite ? QStringLiteral("BEGIN")
                                       : QStringLiteral("BEGIN ISOLATION LEVEL REPEATABLE READ READ ONLY"),
            work);
  } catch (...) {
    phase_ = Phase::none;
    throw;
  }
  phase_ = Phase::none;
}

void Store::backUpTo(const QString& target) {
  backUp(*connection_, target);
}

QStringList Store::faults() {
  return reading([&] { return faultsOf(*connection_) + faultsOfSteps(*connection_, *how_.migrations); });
}

} // namespace hangbook::store
