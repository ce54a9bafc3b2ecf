// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/fresh_store.h"

#include "support/postgresql_cluster.h"

namespace hangbook::testing {

FreshStore::FreshStore(store::Engine engine)
    : where_(engine == store::Engine::sqlite ? folder_.filePath(QStringLiteral("tour.hangbook"))
                                             : PostgresqlCluster::shared().newDatabase()) {}

std::unique_ptr<store::Store> FreshStore::open(const std::vector<store::Migration>* migrations,
                                               const QString& program) const {
  store::OpenHow how;
  how.create = true;
  how.wait = std::chrono::milliseconds(300);
  how.migrations = migrations;
  how.program = program;
  return store::Store::open(where_, how);
}

store::Migration step(int number, const QString& name, const char* common) {
  store::Migration result;
  result.number = number;
  result.name = name;
  result.common = common;
  return result;
}

} // namespace hangbook::testing
