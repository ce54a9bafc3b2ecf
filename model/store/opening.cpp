// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/opening.h"

#include <fcntl.h>
#include <sqlite3.h>
#include <unistd.h>

#include <array>

#include <QFile>
#include <QFileInfo>
#include <QStorageInfo>

#include "store/presence.h"
#include "store/sql_error.h"

namespace hangbook::store {

namespace {

/// Up to this size a store is checked at every start; beyond it only after a crash (a log was left, and
/// nobody is at work who found the store sound).
constexpr qint64 smallStore = 16 * 1024 * 1024;

[[noreturn]] void refuse(const Place& place, Cause cause, const std::string& text) {
  throw StoreError(cause, text, place.shown().toStdString());
}

/// With the rights that this process works with now (QFileInfo asks for those that it was started with).
bool mayWrite(const QString& path) {
  return faccessat(AT_FDCWD, QFile::encodeName(path).constData(), W_OK, AT_EACCESS) == 0;
}

void checkFile(const Place& place, bool create) {
  const QFileInfo file(place.file);
  const QFileInfo folder(file.absolutePath());
  if (!folder.isDir()) {
    refuse(place, Cause::other,
           "there is no folder " + folder.filePath().toStdString() + " to keep a store in");
  }
  if (file.isDir()) {
    refuse(place, Cause::notAStore, "this is a folder; a store is a file");
  }
  if (!file.exists() && !create) {
    refuse(place, Cause::other, "there is no store here");
  }
  if (file.exists() && !mayWrite(place.file)) {
    refuse(place, Cause::readOnly,
           "this file may not be written by you; a store needs that even for reading");
  }
  if (!mayWrite(folder.filePath())) {
    refuse(place, Cause::readOnly,
           "the folder of the store may not be written by you; a store keeps its log beside it");
  }
  const QByteArray type = QStorageInfo(folder.filePath()).fileSystemType();
  if (isNetworkFileSystem(type)) {
    refuse(
        place, Cause::other,
        "the store lies on a network drive (" + type.toStdString() +
            "), where it could be damaged; keep it on a disk of this machine, or use a PostgreSQL server to "
            "share it");
  }
}

/// Refuses, before anything is written, a database that is somebody else's.
void checkSqliteIdentity(Connection& connection) {
  const auto figure = [&](const char* pragma) {
    return connection.rows(QStringLiteral("PRAGMA %1").arg(QLatin1StringView(pragma))).at(0).number(pragma);
  };
  // One state of the file for all three: another program may be making the store just now.
  connection.begin(QStringLiteral("BEGIN"));
  const bool empty = connection.rows(QStringLiteral("SELECT count(*) AS tables FROM sqlite_schema"))
                         .at(0)
                         .integer("tables") == 0;
  const int identity = figure("application_id");
  const bool unused = empty && identity == 0 && figure("user_version") == 0;
  connection.commit();
  if (identity != applicationId && !unused) {
    throw storeError(Cause::notAStore, {}, connection.place());
  }
}

void checkPostgresqlIdentity(Connection& connection) {
  const QString encoding =
      connection.rows(QStringLiteral("SELECT current_setting('server_encoding') AS name")).at(0).text("name");
  if (encoding != u"UTF8") {
    refuse(connection.place(), Cause::other,
           "the database keeps its text as " + encoding.toStdString() + "; a store needs one made with UTF8");
  }
  const Row found =
      connection
          .rows(QStringLiteral(
              "SELECT count(*) AS tables, count(*) FILTER (WHERE table_name = 'hangbook_migration') "
              "AS ours FROM information_schema.tables WHERE table_schema = current_schema()"))
          .at(0);
  if (found.integer("tables") > 0 && found.integer("ours") == 0) {
    throw storeError(Cause::notAStore, {}, connection.place());
  }
}

} // namespace

bool isNetworkFileSystem(const QByteArray& type) {
  static constexpr std::array<const char*, 16> remote{
      "nfs",   "nfs4",   "cifs",      "smb3",       "smbfs",          "afs",         "9p",        "ceph",
      "ncpfs", "lustre", "glusterfs", "fuse.sshfs", "fuse.glusterfs", "fuse.rclone", "fuse.s3fs", "davfs"};
  for (const char* each : remote) {
    if (type == each) {
      return true;
    }
  }
  return false;
}

void settle(Connection& connection) {
  if (connection.engine() != Engine::sqlite) {
    return;
  }
  const QString mode =
      connection.rows(QStringLiteral("PRAGMA journal_mode = WAL")).at(0).text("journal_mode");
  if (mode != u"wal") {
    refuse(connection.place(), Cause::other,
           "the store cannot keep its log here (" + mode.toStdString() + ")");
  }
  connection.execute(QStringLiteral("PRAGMA synchronous = FULL"));
  connection.execute(QStringLiteral("PRAGMA trusted_schema = OFF"));
  connection.execute(QStringLiteral("PRAGMA foreign_keys = ON"));
  // SQLite ignores this one silently where it cannot be had.
  if (connection.rows(QStringLiteral("PRAGMA foreign_keys")).at(0).number("foreign_keys") != 1) {
    refuse(connection.place(), Cause::other, "this SQLite does not keep references intact");
  }
}

QStringList faultsOf(Connection& connection) {
  QStringList faults;
  if (connection.engine() != Engine::sqlite) {
    return faults; // PostgreSQL checks its pages and references as it goes.
  }
  for (const Row& row : connection.rows(QStringLiteral("PRAGMA integrity_check"))) {
    if (row.text("integrity_check") != u"ok") {
      faults.append(row.text("integrity_check"));
    }
  }
  for (const Row& row : connection.rows(QStringLiteral("PRAGMA foreign_key_check"))) {
    faults.append(QStringLiteral("a row of %1 names a row of %2 that is not there")
                      .arg(row.text("table"), row.text("parent")));
  }
  return faults;
}

std::unique_ptr<Connection> openChecked(const Place& place, bool create, std::chrono::milliseconds wait) {
  if (place.engine == Engine::postgresql) {
    auto connection = std::make_unique<Connection>(place, wait);
    checkPostgresqlIdentity(*connection);
    return connection;
  }
  checkFile(place, create);
  auto presence = std::make_shared<Presence>(place.file);
  // A log that is there before we open was left by a crash, or belongs to a program that runs now.
  const bool logLeft = QFileInfo(place.file + QStringLiteral("-wal")).size() > 0;
  const qint64 size = QFileInfo(place.file).size();
  auto connection = std::make_unique<Connection>(place, wait);
  checkSqliteIdentity(*connection);
  if (size > 0 && (size <= smallStore || (logLeft && !presence->othersAtWork()))) {
    const Rows found = connection->rows(QStringLiteral("PRAGMA quick_check(1)"));
    if (found.size() != 1 || found.front().text("quick_check") != u"ok") {
      // The log stays, so that the next start looks again, and refuses again.
      sqlite3_db_config(connection->handle(), SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, 1, nullptr);
      throw storeError(Cause::damaged, found.empty() ? QString() : found.front().text("quick_check"), place);
    }
  }
  settle(*connection);
  presence->settle();
  connection->keep(std::move(presence));
  return connection;
}

} // namespace hangbook::store
