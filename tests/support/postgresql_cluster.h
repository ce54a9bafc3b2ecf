// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>

#include <QProcess>
#include <QString>
#include <QTemporaryDir>

namespace hangbook::testing {

/// A PostgreSQL server for this test program alone: its own folder, its own socket, no network, no sync to
/// disk. It starts with the first database that is asked for and stops with the program, even one that is
/// killed. Where PostgreSQL is missing or does not start, asking throws: the tests fail, they do not skip.
class PostgresqlCluster {
public:
  static PostgresqlCluster& shared();
  ~PostgresqlCluster();

  /// A new, empty database; answers its address for --store.
  QString newDatabase();
  /// Runs one statement from outside, as its owner.
  void sql(const QString& database, const QString& statement);
  /// The socket's folder and the database of an address that newDatabase gave.
  static QString databaseOf(const QString& address);

private:
  PostgresqlCluster();
  QString program(const QString& name) const;
  void call(const QString& name, const QStringList& words);

  QString binaries_;
  std::unique_ptr<QTemporaryDir> folder_;
  QStringList asUser_; ///< what to put before a program so that it does not run as root
  QProcess server_;
  int databases_ = 0;
};

} // namespace hangbook::testing
