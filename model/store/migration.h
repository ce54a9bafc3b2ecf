// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QByteArray>
#include <QString>

#include "store/engine.h"

namespace hangbook::store {

/// One numbered step of the store's tables, as written in migrations/: `NNNN_name.sql`, and where one engine
/// needs more, `NNNN_name.sqlite.sql` and `NNNN_name.postgresql.sql`, which follow it.
struct Migration {
  int number = 0;
  QString name;
  QByteArray common;
  QByteArray sqlite;
  QByteArray postgresql;

  /// SHA-256, in hex, over all parts as written, each with its length before it.
  QString checksum() const;
  /// Its single statements for one engine, type words written out. Throws Error (store).
  QStringList statements(Engine engine) const;
};

/// The steps that this program knows, in order. Throws Error (store) where the numbers have a gap.
const std::vector<Migration>& ownMigrations();

/// Reads the steps of a folder; for `ownMigrations` and tests. Throws Error (store).
std::vector<Migration> migrationsIn(const QString& folder);

} // namespace hangbook::store
