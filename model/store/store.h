// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <chrono>
#include <functional>
#include <memory>
#include <optional>
#include <type_traits>

#include "store/migration.h"
#include "store/place.h"
#include "store/row.h"
#include "store/store_error.h"
#include "store/value.h"

namespace hangbook::store {

class Connection;

/// How to open a store.
struct OpenHow {
  bool create = false;                  ///< make the file where there is none (its folder must be there)
  std::chrono::milliseconds wait{5000}; ///< how long to wait for another program's lock
  const std::vector<Migration>* migrations = nullptr; ///< other steps than our own, for tests
  QString program = QStringLiteral(HANGBOOK_VERSION);
};

/// One connection to a store, for the thread that opened it. Another thread asks for `another()`, and opens
/// it there; using a store on a foreign thread throws. All trouble is thrown as StoreError.
class Store {
public:
  /// Opens a file or a server (see placeFrom), checks that it is a Hangbook store that this program can read
  /// and that it is sound, and takes the migrations that it lacks, after a verified copy of the file beside
  /// it.
  static std::unique_ptr<Store> open(const QString& where, const OpenHow& how = {});
  /// A further connection to the same store, for another thread: call it on that thread. Checks nothing
  /// again.
  std::unique_ptr<Store> another() const;
  ~Store();

  Engine engine() const;
  const Place& place() const;

  /// One statement with named placeholders (":name"). A name that is misspelt, missing, bound twice or not
  /// in the statement throws. Answers the number of rows that it touched.
  qint64 run(const QString& sql, const Bindings& bindings = {});
  /// All rows of an answer, read to the end.
  Rows rows(const QString& sql, const Bindings& bindings = {});
  /// Shows each row to `look` as it comes. `look` must not use the store.
  void each(const QString& sql, const Bindings& bindings, const std::function<void(const Row&)>& look);
  /// The one row, or none; throws where there are more.
  std::optional<Row> one(const QString& sql, const Bindings& bindings = {});

  /// Runs `work` in one writing transaction: immediate on SQLite, serialisable on PostgreSQL. Where the
  /// engine asks for it, all of `work` is run again, so it must compute from what it reads inside. Anything
  /// thrown rolls everything back. Inside another `transact` it becomes part of that one; where an inner one
  /// fails, the outer one cannot commit any more.
  template <class Work>
  std::invoke_result_t<Work&> transact(Work&& work) {
    return inside(&Store::writing, work);
  }
  /// Runs `work` on one unchanging state of the store, without writing.
  template <class Work>
  std::invoke_result_t<Work&> reading(Work&& work) {
    return inside(&Store::readingOnly, work);
  }
  bool inTransaction() const;
  bool isWriting() const { return phase_ == Phase::writing; }
  /// Names the state that a transaction sees: as long as it is the same, nothing that is read is another one.
  /// Only to be compared with what this very connection said. Empty where it cannot be named: outside a
  /// transaction, and on PostgreSQL while writing.
  QString moment();

  /// Something long that was read whole, kept by the modules above until the moment is another one.
  struct Kept {
    QString moment;
    std::shared_ptr<const void> what;
  };
  Kept& kept() { return kept_; }

  /// Writes a verified copy of a SQLite store to `target`, which must not exist yet: online, beside the
  /// running work. PostgreSQL is refused: its own pg_dump does that.
  void backUpTo(const QString& target);
  /// What the engine itself finds wrong: integrity, foreign keys, steps whose checksum differs. Empty =
  /// sound.
  QStringList faults();

  Connection& connection(); ///< for model/store alone

private:
  Store(std::unique_ptr<Connection> connection, OpenHow how);

  using Whole = void (Store::*)(const std::function<void()>&);
  void writing(const std::function<void()>& work);
  void readingOnly(const std::function<void()>& work);
  void attempt(const QString& begin, const std::function<void()>& work);

  template <class Work>
  std::invoke_result_t<Work&> inside(Whole whole, Work& work) {
    using Result = std::invoke_result_t<Work&>;
    if constexpr (std::is_void_v<Result>) {
      (this->*whole)([&] { work(); });
    } else {
      std::optional<Result> result;
      (this->*whole)([&] { result.emplace(work()); });
      return std::move(*result);
    }
  }

  enum class Phase { none, reading, writing };
  std::unique_ptr<Connection> connection_;
  OpenHow how_;
  Phase phase_ = Phase::none;
  bool doomed_ = false;
  Kept kept_;
};

} // namespace hangbook::store
