// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/connection.h"

#include <QScopeGuard>
#include <QSqlDriver>
#include <QSqlRecord>
#include <QThread>

#include "store/sql_error.h"

namespace hangbook::store {

namespace {

QString driverOf(Engine engine) {
  return engine == Engine::sqlite ? QStringLiteral("QSQLITE") : QStringLiteral("QPSQL");
}

QString connectOptions(const Place& place, std::chrono::milliseconds wait) {
  if (place.engine == Engine::sqlite) {
    return QStringLiteral("QSQLITE_BUSY_TIMEOUT=%1").arg(wait.count());
  }
  QStringList options;
  for (const auto& [word, value] : place.options) {
    options.append(word + u'=' + value);
  }
  if (!place.options.contains(QStringLiteral("connect_timeout"))) {
    options.append(QStringLiteral("connect_timeout=10"));
  }
  if (!place.options.contains(QStringLiteral("application_name"))) {
    options.append(QStringLiteral("application_name=hangbook"));
  }
  return options.join(u';');
}

} // namespace

Connection::Connection(Place place, std::chrono::milliseconds wait)
    : place_(std::move(place)), wait_(wait),
      name_(QStringLiteral("hangbook-") + QUuid::createUuid().toString(QUuid::WithoutBraces)),
      thread_(QThread::currentThreadId()) {
  if (!QSqlDatabase::isDriverAvailable(driverOf(engine()))) {
    throw StoreError(Cause::other, "Qt's driver " + driverOf(engine()).toStdString() +
                                       " is missing; install libqt6sql6-" +
                                       (engine() == Engine::sqlite ? "sqlite" : "psql"));
  }
  database_ = QSqlDatabase::addDatabase(driverOf(engine()), name_);
  try {
    open();
  } catch (...) {
    database_ = QSqlDatabase();
    QSqlDatabase::removeDatabase(name_);
    throw;
  }
}

void Connection::open() {
  ++openings_;
  database_.setConnectOptions(connectOptions(place_, wait_));
  if (engine() == Engine::sqlite) {
    database_.setDatabaseName(place_.file);
    if (!database_.open()) {
      throw storeError(causeOf(database_.lastError().nativeErrorCode(), engine()),
                       database_.lastError().databaseText(), place_);
    }
    return;
  }
  database_.setHostName(place_.host);
  database_.setPort(place_.port);
  database_.setUserName(place_.user);
  database_.setPassword(place_.password);
  database_.setDatabaseName(place_.database);
  if (!database_.open()) {
    throw StoreError(Cause::lost,
                     "the server of the store cannot be reached or does not let us in: " +
                         database_.lastError().databaseText().simplified().toStdString(),
                     place_.shown().toStdString());
  }
  // Text both ways must not depend on how the server happens to be set up.
  for (const QString& statement :
       {QStringLiteral("SET TIME ZONE 'UTC'"), QStringLiteral("SET datestyle = 'ISO, YMD'"),
        QStringLiteral("SET extra_float_digits = 1"), QStringLiteral("SET standard_conforming_strings = on"),
        QStringLiteral("SET client_min_messages = 'error'"),
        QStringLiteral("SET lock_timeout = %1").arg(wait_.count())}) {
    execute(statement);
  }
}

Connection::~Connection() {
  statements_.clear();
  database_.close();
  database_ = QSqlDatabase();
  QSqlDatabase::removeDatabase(name_);
}

void Connection::checkThread() const {
  if (QThread::currentThreadId() != thread_) {
    throw StoreError(Cause::other,
                     "a store was used on another thread than the one that opened it; open another "
                     "connection there");
  }
}

void Connection::fail(const QSqlError& error) {
  const StoreError known = storeError(error, place_);
  lost_ = lost_ || known.cause() == Cause::lost;
  throw known;
}

void Connection::execute(const QString& sql) {
  checkThread();
  QSqlQuery query(database_);
  query.setForwardOnly(true);
  const bool good = query.exec(sql);
  const QSqlError error = query.lastError();
  query.finish();
  if (!good) {
    fail(error);
  }
}

Connection::Prepared& Connection::prepared(const QString& sql) {
  std::shared_ptr<Prepared>& known = statements_[sql];
  if (!known) {
    const Placeholders wanted = placeholdersOf(sql, engine());
    auto fresh = std::make_shared<Prepared>(Prepared{QSqlQuery(database_), wanted.names});
    fresh->query.setForwardOnly(true);
    if (!fresh->query.prepare(wanted.sql)) {
      statements_.remove(sql);
      fail(fresh->query.lastError());
    }
    known = std::move(fresh);
  }
  return *known;
}

void Connection::bind(Prepared& statement, const QString& sql, const Bindings& bindings) {
  QHash<QString, const Value*> byName;
  for (const auto& [name, value] : bindings) {
    if (!statement.names.contains(name) || byName.contains(name)) {
      throw StoreError(Cause::other, '"' + name.toStdString() + "\" is bound " +
                                         (byName.contains(name) ? "twice" : "but has no placeholder") +
                                         " in the statement: " + sql.toStdString());
    }
    byName.insert(name, &value);
  }
  for (int i = 0; i < statement.names.size(); ++i) {
    const Value* value = byName.value(statement.names[i]);
    if (value == nullptr) {
      throw StoreError(Cause::other, "nothing is bound to \":" + statement.names[i].toStdString() +
                                         "\" in the statement: " + sql.toStdString());
    }
    statement.query.bindValue(i, value->variant());
  }
}

qint64 Connection::run(const QString& sql, const Bindings& bindings) {
  checkThread();
  Prepared& statement = prepared(sql);
  bind(statement, sql, bindings);
  const bool good = statement.query.exec();
  const QSqlError error = statement.query.lastError();
  const qint64 touched = good ? statement.query.numRowsAffected() : 0;
  statement.query.finish();
  if (!good) {
    fail(error);
  }
  return touched;
}

Rows Connection::rows(const QString& sql, const Bindings& bindings) {
  Rows rows;
  each(sql, bindings, [&rows](const Row& row) { rows.push_back(row); });
  return rows;
}

void Connection::each(const QString& sql, const Bindings& bindings,
                      const std::function<void(const Row&)>& look) {
  checkThread();
  Prepared& statement = prepared(sql);
  bind(statement, sql, bindings);
  // An answer that is left half-way would block a backup on SQLite.
  const auto finish = qScopeGuard([&statement] { statement.query.finish(); });
  bool good = statement.query.exec();
  if (good) {
    const QSqlRecord record = statement.query.record();
    std::vector<QByteArray> names;
    for (int i = 0; i < record.count(); ++i) {
      names.push_back(record.fieldName(i).toUtf8());
    }
    Row row(std::make_shared<const std::vector<QByteArray>>(std::move(names)),
            std::vector<QVariant>(static_cast<std::size_t>(record.count())));
    while (statement.query.next()) {
      for (std::size_t i = 0; i < row.values_.size(); ++i) {
        row.values_[i] = statement.query.value(static_cast<int>(i));
      }
      look(row);
    }
    good = statement.query.lastError().type() == QSqlError::NoError;
  }
  if (!good) {
    fail(statement.query.lastError());
  }
}

void Connection::begin(const QString& statement) {
  checkThread();
  if (lost_) { // The link broke earlier; a new transaction may begin on a new link.
    statements_.clear();
    database_.close();
    open();
    lost_ = false;
  }
  execute(statement);
}

void Connection::commit() {
  checkThread();
  // Only the driver's own commit sees that PostgreSQL answers "rolled back" to the COMMIT of a failed
  // transaction.
  if (!database_.commit()) {
    const QSqlError error = database_.lastError();
    rollback();
    fail(error);
  }
}

void Connection::rollback() noexcept {
  try {
    database_.rollback();
  } catch (...) { // Qt may run out of memory here; the connection's end rolls back as well.
  }
}

void Connection::forgetStatements() {
  statements_.clear();
}

sqlite3* Connection::handle() const {
  const QVariant handle = database_.driver()->handle();
  return engine() == Engine::sqlite && handle.isValid() ? *static_cast<sqlite3* const*>(handle.constData())
                                                        : nullptr;
}

} // namespace hangbook::store
