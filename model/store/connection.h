// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <chrono>
#include <functional>
#include <memory>

#include <QHash>
#include <QSqlDatabase>
#include <QSqlQuery>

#include "store/place.h"
#include "store/row.h"
#include "store/sql_text.h"
#include "store/value.h"

struct sqlite3;

/// The store's inner side: the one place where Qt SQL shows. Not for use outside model/store.
namespace hangbook::store {

class Presence; // store/presence.h

/// One open connection of one thread. Every answer is read to its end before it is handed out: an unfinished
/// SELECT would block a backup on SQLite, and would vanish under the next query on PostgreSQL.
class Connection {
public:
  /// Only opens: neither checks nor sets anything in the store. Throws StoreError.
  Connection(Place place, std::chrono::milliseconds wait);
  ~Connection();
  Connection(const Connection&) = delete;
  Connection& operator=(const Connection&) = delete;

  const Place& place() const { return place_; }
  Engine engine() const { return place_.engine; }
  std::chrono::milliseconds wait() const { return wait_; }

  /// One statement without placeholders.
  void execute(const QString& sql);
  /// One statement with values; answers how many rows it touched.
  qint64 run(const QString& sql, const Bindings& bindings = {});
  Rows rows(const QString& sql, const Bindings& bindings = {});
  /// Shows each row to `look` as it comes, which keeps nothing of a long answer twice. `look` must not use
  /// this connection.
  void each(const QString& sql, const Bindings& bindings, const std::function<void(const Row&)>& look);

  void begin(const QString& statement);
  /// Throws StoreError where the engine did not commit; what it had begun is then rolled back.
  void commit();
  /// Never throws: an engine that already rolled back has nothing left to do.
  void rollback() noexcept;
  /// Forgets prepared statements, as is needed when tables change.
  void forgetStatements();

  /// Held as long as this connection is open, and a little longer.
  void keep(std::shared_ptr<Presence> presence) { presence_ = std::move(presence); }
  const std::shared_ptr<Presence>& presence() const { return presence_; }
  /// Why nothing is ever written here; empty: it may be.
  void refuseWriting(const QString& why) { neverWritten_ = why; }
  const QString& neverWritten() const { return neverWritten_; }

  /// How often a link was opened: what the engine counts begins anew with each.
  int openings() const { return openings_; }

  /// The engine's own handle, for its backup; SQLite only.
  sqlite3* handle() const;

private:
  struct Prepared {
    QSqlQuery query;
    QStringList names;
  };
  Prepared& prepared(const QString& sql);
  void bind(Prepared& statement, const QString& sql, const Bindings& bindings);
  void open();
  void checkThread() const;
  [[noreturn]] void fail(const QSqlError& error);

  Place place_;
  std::chrono::milliseconds wait_;
  QString neverWritten_{};
  QString name_;
  QSqlDatabase database_;
  QHash<QString, std::shared_ptr<Prepared>> statements_;
  Qt::HANDLE thread_;
  int openings_ = 0;
  bool lost_ = false;
  std::shared_ptr<Presence> presence_; ///< SQLite only
};

} // namespace hangbook::store
