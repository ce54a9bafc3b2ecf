// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <ostream>

#include <QTemporaryDir>

#include "store/store.h"

namespace hangbook::store {
inline std::ostream& operator<<(std::ostream& out, Engine engine) {
  return out << nameOf(engine).toStdString();
}
} // namespace hangbook::store

namespace hangbook::testing {

/// Both engines, for data tables: `BOOST_DATA_TEST_CASE(name, bothEngines, engine)`.
inline const std::vector<store::Engine> bothEngines{store::Engine::sqlite, store::Engine::postgresql};

/// A place for one test's store, gone with it.
class FreshStore {
public:
  explicit FreshStore(store::Engine engine);
  /// For --store, and to open further connections.
  const QString& where() const { return where_; }
  /// A folder of this test's own.
  QString path(const QString& name) const { return folder_.filePath(name); }
  std::unique_ptr<store::Store> open(const std::vector<store::Migration>* migrations = nullptr,
                                     const QString& program = QStringLiteral("0.1.0")) const;

private:
  QTemporaryDir folder_;
  QString where_;
};

/// A migration with a common part alone.
store::Migration step(int number, const QString& name, const char* common);

} // namespace hangbook::testing
