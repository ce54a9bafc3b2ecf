// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/offline.h"

#include <QFile>
#include <QFileInfo>

#include "store/columns.h"
#include "store/connection.h"
#include "store/records.h"

namespace hangbook::store {
namespace {

/// What no sheet, verdict or mark of a show is taken from.
const QStringList leftOut{
    QStringLiteral("hangbook_migration"), QStringLiteral("document"), QStringLiteral("unit_document"),
    QStringLiteral("movement"),           QStringLiteral("history"),  QStringLiteral("import_mapping"),
    QStringLiteral("kept_check"),         QStringLiteral("liking"),   QStringLiteral("at_desk"),
    QStringLiteral("offline_copy")};

constexpr auto copyColumns = [](auto& io, auto& copy) {
  io("tour", copy.tour);
  io("show", copy.show);
  io("as_of", copy.asOf);
  io("made_at", copy.madeAt);
  io("made_by", copy.by);
  io("made_from", copy.from);
  io("revisions", copy.revisions);
};

struct Column {
  QString name;
  QString type; ///< SQLite's: TEXT, INTEGER, REAL, BLOB
};

std::vector<Column> columnsOf(Store& copy, const QString& table) {
  std::vector<Column> columns;
  for (const Row& row :
       copy.rows(QStringLiteral("SELECT name, type FROM pragma_table_info(:name)"), {{"name", table}})) {
    columns.push_back({row.text("name"), row.text("type")});
  }
  return columns;
}

/// A server's column in the form in which SQLite keeps it, see `Value`.
QString asText(const QString& column, const QString& type) {
  if (type == u"boolean") {
    return column + QStringLiteral("::int AS ") + column;
  }
  if (type == u"timestamp with time zone") {
    return QStringLiteral("to_char(%1 AT TIME ZONE 'UTC', 'YYYY-MM-DD\"T\"HH24:MI:SS.MS\"Z\"') AS %1")
        .arg(column);
  }
  if (type == u"date") {
    return QStringLiteral("to_char(%1, 'YYYY-MM-DD') AS %1").arg(column);
  }
  if (type == u"uuid" || type == u"json" || type == u"jsonb") {
    return column + QStringLiteral("::text AS ") + column;
  }
  return column;
}

QString selectFrom(Store& from, const QString& table, const std::vector<Column>& columns) {
  std::map<QString, QString> types;
  if (from.engine() == Engine::postgresql) {
    for (const Row& row :
         from.rows(QStringLiteral("SELECT column_name::text AS name, data_type::text AS type FROM "
                                  "information_schema.columns WHERE table_schema = "
                                  "current_schema() AND table_name = :name"),
                   {{"name", table}})) {
      types[row.text("name")] = row.text("type");
    }
  }
  QStringList names;
  for (const Column& column : columns) {
    names << (types.empty() ? column.name : asText(column.name, types[column.name]));
  }
  return QStringLiteral("SELECT %1 FROM %2").arg(names.join(QStringLiteral(", ")), table);
}

Value valueOf(const Row& row, const Column& column) {
  const QByteArray name = column.name.toUtf8();
  if (row.isNull(name.constData())) {
    return std::nullopt;
  }
  return column.type == u"INTEGER" ? Value(row.integer(name.constData()))
         : column.type == u"REAL"  ? Value(row.real(name.constData()))
         : column.type == u"BLOB"  ? Value(row.bytes(name.constData()))
                                   : Value(row.text(name.constData()));
}

void copyTable(Store& from, Store& copy, const QString& table) {
  const std::vector<Column> columns = columnsOf(copy, table);
  for (const Row& row : from.rows(selectFrom(from, table, columns))) {
    Bindings values;
    for (const Column& column : columns) {
      values.emplace_back(column.name, valueOf(row, column));
    }
    insertRow(copy, table.toUtf8().constData(), values);
  }
}

void fill(Store& from, Store& copy) {
  copy.transact([&] {
    copy.run(QStringLiteral("PRAGMA defer_foreign_keys = ON"));
    for (const Row& row : copy.rows(QStringLiteral("SELECT name FROM sqlite_schema WHERE type = 'table' AND "
                                                   "name NOT LIKE 'sqlite_%' ORDER BY name"))) {
      if (!leftOut.contains(row.text("name"))) {
        copyTable(from, copy, row.text("name"));
      }
    }
  });
}

} // namespace

std::optional<OfflineCopy> offlineCopyIn(Store& store) {
  const auto row = store.one(QStringLiteral("SELECT * FROM offline_copy"));
  if (!row) {
    return std::nullopt;
  }
  OfflineCopy copy;
  ColumnReader io(*row);
  copyColumns(io, copy);
  return copy;
}

QString wordsFor(const OfflineCopy& copy) {
  return QStringLiteral("offline copy of %1, %2, made %3")
      .arg(copy.show, copy.revisions, copy.madeAt.toUTC().toString(QStringLiteral("yyyy-MM-dd HH:mm 'UTC'")));
}

void keepOfflineCopy(Store& store) {
  // Tests open stores with other steps than our own: those have no such table.
  const QString table =
      store.engine() == Engine::sqlite
          ? QStringLiteral("SELECT count(*) AS n FROM sqlite_schema WHERE name = 'offline_copy'")
          : QStringLiteral("SELECT count(*) AS n FROM information_schema.tables WHERE table_schema = "
                           "current_schema() AND table_name = 'offline_copy'");
  if (store.one(table)->integer("n") == 0) {
    return;
  }
  if (const auto copy = offlineCopyIn(store)) {
    store.run(QStringLiteral("PRAGMA query_only = ON"));
    store.connection().refuseWriting(
        QStringLiteral(
            "this is an %1, which is never written; write it to the store that it was made from: %2")
            .arg(wordsFor(*copy), copy->from));
  }
}

void writeOfflineCopy(Store& from, const QString& file, const OfflineCopy& about,
                      const std::function<void(Store&)>& check) {
  const QString whole = QFileInfo(file).absoluteFilePath();
  if (QFileInfo::exists(whole)) {
    throw StoreError(Cause::other, "there is a file here already, and it was left as it is; name another one",
                     whole.toStdString());
  }
  const QString aside = whole + QStringLiteral(".part-") + QUuid::createUuid().toString(QUuid::Id128);
  try {
    {
      OpenHow how;
      how.create = true;
      const auto copy = Store::open(aside, how);
      fill(from, *copy);
      check(*copy);
      copy->transact([&] {
        ColumnWriter io;
        copyColumns(io, about);
        insertRow(*copy, "offline_copy", io.bindings);
      });
      copy->backUpTo(whole); // one file, whole by itself, checked and synced
    }
  } catch (...) {
    for (const char* rest : {"", "-wal", "-shm", "-open"}) {
      QFile::remove(aside + QLatin1String(rest));
    }
    throw;
  }
  for (const char* rest : {"", "-wal", "-shm", "-open"}) {
    QFile::remove(aside + QLatin1String(rest));
  }
}

} // namespace hangbook::store
