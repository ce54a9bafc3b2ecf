// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/backup.h"

#include <fcntl.h>
#include <sqlite3.h>
#include <unistd.h>

#include <cerrno>
#include <cstdio>
#include <cstring>
#include <memory>

#include <QFile>
#include <QFileInfo>

#include "store/store_error.h"

namespace hangbook::store {

namespace {

struct CloseSqlite {
  void operator()(sqlite3* database) const { sqlite3_close_v2(database); }
};
using Database = std::unique_ptr<sqlite3, CloseSqlite>;

[[noreturn]] void refuse(Cause cause, const std::string& text, const QString& place) {
  throw StoreError(cause, text, place.toStdString());
}

[[noreturn]] void failed(const QString& target, const std::string& why) {
  refuse(Cause::other, "the copy could not be made (" + why + "); there is none here", target);
}

Database openAside(const QString& file) {
  sqlite3* raw = nullptr;
  const int code =
      sqlite3_open_v2(file.toUtf8().constData(), &raw,
                      SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE | SQLITE_OPEN_EXCLUSIVE, nullptr);
  Database aside(raw);
  if (code != SQLITE_OK) {
    failed(file, sqlite3_errstr(code));
  }
  return aside;
}

void copyPages(sqlite3* from, sqlite3* to, const QString& target) {
  sqlite3_backup* backup = sqlite3_backup_init(to, "main", from, "main");
  if (backup == nullptr) {
    failed(target, sqlite3_errmsg(to));
  }
  // All in one step: one unchanging state of the store, and nobody who writes meanwhile starts it anew.
  const int code = sqlite3_backup_step(backup, -1);
  sqlite3_backup_finish(backup);
  if (code != SQLITE_DONE) {
    failed(target, sqlite3_errstr(code));
  }
}

std::string firstAnswer(sqlite3* database, const char* sql) {
  sqlite3_stmt* statement = nullptr;
  if (sqlite3_prepare_v2(database, sql, -1, &statement, nullptr) != SQLITE_OK) {
    return sqlite3_errmsg(database);
  }
  std::string answer = "no answer";
  if (sqlite3_step(statement) == SQLITE_ROW) {
    const unsigned char* text = sqlite3_column_text(statement, 0);
    answer = text == nullptr ? std::string() : std::string(text, text + sqlite3_column_bytes(statement, 0));
  }
  sqlite3_finalize(statement);
  return answer;
}

void syncPath(const QString& path, int flags, const QString& target) {
  const int descriptor = open(QFile::encodeName(path).constData(), flags | O_CLOEXEC);
  if (descriptor < 0) {
    failed(target, std::strerror(errno));
  }
  const int code = fsync(descriptor);
  const int why = errno;
  close(descriptor);
  if (code != 0) {
    failed(target, std::strerror(why));
  }
}

void writeAside(Connection& connection, const QString& aside) {
  Database copy = openAside(aside);
  copyPages(connection.handle(), copy.get(), aside);
  // Away from the write-ahead log: a copy is one file, whole by itself.
  if (const std::string mode = firstAnswer(copy.get(), "PRAGMA journal_mode = DELETE"); mode != "delete") {
    failed(aside, mode);
  }
  if (const std::string found = firstAnswer(copy.get(), "PRAGMA integrity_check"); found != "ok") {
    refuse(Cause::damaged, "the copy is not sound (" + found + "), so it was thrown away", aside);
  }
}

} // namespace

void backUp(Connection& connection, const QString& target) {
  if (connection.engine() != Engine::sqlite) {
    refuse(
        Cause::other,
        "a store on a PostgreSQL server is backed up with the server's own pg_dump, which also keeps what is "
        "written meanwhile apart: pg_dump --format=custom --file=FILE DATABASE",
        connection.place().shown());
  }
  const QString whole = QFileInfo(target).absoluteFilePath();
  const QString folder = QFileInfo(whole).absolutePath();
  if (!QFileInfo(folder).isDir()) {
    refuse(Cause::other, "there is no such folder to back up into", folder);
  }
  if (QFileInfo::exists(whole)) {
    refuse(Cause::other, "there is a file here already, and it was left as it is; name another one", whole);
  }
  const QString aside = whole + QStringLiteral(".part-") + QUuid::createUuid().toString(QUuid::Id128);
  try {
    writeAside(connection, aside);
    syncPath(aside, O_RDONLY, whole);
    if (renameat2(AT_FDCWD, QFile::encodeName(aside).constData(), AT_FDCWD,
                  QFile::encodeName(whole).constData(), RENAME_NOREPLACE) != 0) {
      failed(whole, std::strerror(errno));
    }
    syncPath(folder, O_RDONLY | O_DIRECTORY, whole);
  } catch (...) {
    QFile::remove(aside);
    QFile::remove(aside + QStringLiteral("-journal"));
    throw;
  }
}

} // namespace hangbook::store
