// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/sql_error.h"

#include <sqlite3.h>

namespace hangbook::store {

namespace {

Cause sqliteCause(int code) {
  switch (code) {
  case SQLITE_CONSTRAINT_UNIQUE:
  case SQLITE_CONSTRAINT_PRIMARYKEY:
  case SQLITE_CONSTRAINT_ROWID:
    return Cause::duplicate;
  case SQLITE_CONSTRAINT_FOREIGNKEY:
    return Cause::reference;
  case SQLITE_CONSTRAINT_TRIGGER:
    return Cause::refused;
  default:
    break;
  }
  switch (code & 0xff) {
  case SQLITE_BUSY:
  case SQLITE_LOCKED:
    return Cause::busy;
  case SQLITE_CONSTRAINT:
    return Cause::check;
  case SQLITE_READONLY:
  case SQLITE_PERM:
    return Cause::readOnly;
  case SQLITE_FULL:
    return Cause::full;
  case SQLITE_CORRUPT:
    return Cause::damaged;
  case SQLITE_NOTADB:
    return Cause::notAStore;
  default:
    return Cause::other;
  }
}

Cause postgresqlCause(const QString& state) {
  if (state == u"40001" || state == u"40P01") {
    return Cause::conflict;
  }
  if (state == u"55P03") {
    return Cause::busy;
  }
  if (state == u"23505") {
    return Cause::duplicate;
  }
  if (state == u"23503") {
    return Cause::reference;
  }
  if (state == u"P0001" || state == u"23P01") {
    return Cause::refused;
  }
  if (state.startsWith(u"23") || state.startsWith(u"22")) {
    return Cause::check;
  }
  if (state == u"25006" || state == u"42501") {
    return Cause::readOnly;
  }
  if (state == u"53100") {
    return Cause::full;
  }
  if (state == u"XX001" || state == u"XX002") {
    return Cause::damaged;
  }
  return state.startsWith(u"08") || state.startsWith(u"57P") ? Cause::lost : Cause::other;
}

QString sentence(Cause cause, const QString& detail) {
  switch (cause) {
  case Cause::busy:
    return QStringLiteral("the store is locked by another program, so nothing was saved; close the other "
                          "program or try again");
  case Cause::conflict:
    return QStringLiteral("somebody else wrote the same things at the same moment, so nothing was saved; try "
                          "again");
  case Cause::readOnly:
    return QStringLiteral("the store may only be read here, so nothing was saved; writing needs the right to "
                          "write to it and to its folder");
  case Cause::full:
    return QStringLiteral("the disk of the store is full, so nothing was saved; make room and try again");
  case Cause::damaged:
    return QStringLiteral(
               "the store is damaged (%1); keep this file as it is and go on with the newest backup")
        .arg(detail);
  case Cause::notAStore:
    return QStringLiteral("this is not a Hangbook store, and it was left as it is");
  case Cause::lost:
    return QStringLiteral("the link to the server was lost (%1); what was not yet confirmed was not saved")
        .arg(detail);
  default:
    return QStringLiteral("the store refused: %1").arg(detail);
  }
}

} // namespace

Cause causeOf(const QString& nativeCode, Engine engine) {
  return engine == Engine::sqlite ? sqliteCause(nativeCode.toInt()) : postgresqlCause(nativeCode);
}

StoreError storeError(Cause cause, const QString& detail, const Place& place) {
  return StoreError(cause, sentence(cause, detail).toStdString(), place.shown().toStdString());
}

StoreError storeError(const QSqlError& error, const Place& place) {
  // Only the engine's first line: the rest repeats the statement or says the same in another form.
  const QString said = error.databaseText().section(u'\n', 0, 0).trimmed();
  Cause cause = causeOf(error.nativeErrorCode(), place.engine);
  if (cause == Cause::other && error.type() == QSqlError::ConnectionError) {
    cause = Cause::lost;
  }
  return storeError(cause, said.isEmpty() ? error.text() : said, place);
}

} // namespace hangbook::store
