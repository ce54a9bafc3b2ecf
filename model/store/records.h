// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>

#include "store/columns.h"
#include "store/store.h"

/// How every edited record is written: new ones, changed ones with their revision, and their lists.
namespace hangbook::store {

/// A record that somebody else changed meanwhile, or that is gone. Its text shows both versions.
class StaleError : public Error {
public:
  explicit StaleError(const std::string& text) : Error(Trouble::notPossible, text) {}
};

/// A record's table and how to speak of it.
struct RecordName {
  const char* table;
  QString spoken; ///< venue "Gannet Hall"
};

void insertRow(Store& store, const char* table, const Bindings& values);
/// Inserts the record where `id` is null (and gives it one and revision 1), else updates it where its
/// revision is the stored one, and counts that up. `stored` gives the stored record's columns, for the text
/// of a StaleError. Throws Error (notPossible) where the name is taken or another record is named that is not
/// there.
void writeRecord(Store& store, const RecordName& name, QUuid& id, int& revision, const Bindings& values,
                 const std::function<Bindings(const Row&)>& stored);
/// Deletes the record of that revision. Throws StaleError, or Error (notPossible) where it is still used.
void removeRecord(Store& store, const RecordName& name, const QUuid& id, int revision);

/// Writes a list of a record anew.
template <class Child, class Columns>
void writeChildren(Store& store, const char* table, const QUuid& owner, const std::vector<Child>& children,
                   Columns columns) {
  store.run(QStringLiteral("DELETE FROM %1 WHERE owner_id = :owner").arg(QLatin1StringView(table)),
            {{"owner", owner}});
  int place = 0;
  for (const Child& each : children) {
    ColumnWriter io;
    io.bindings = {{"owner_id", owner}, {"place", place++}};
    columns(io, each);
    insertRow(store, table, io.bindings);
  }
}

/// Reads the lists of all records of a kind at once, by the records' ids; of one where `owner` is not null.
template <class Child, class Columns>
std::map<QUuid, std::vector<Child>> readChildren(Store& store, const char* table, const QUuid& owner,
                                                 Columns columns) {
  std::map<QUuid, std::vector<Child>> children;
  const QString all = QStringLiteral("SELECT * FROM %1").arg(QLatin1StringView(table));
  const QString order = QStringLiteral(" ORDER BY owner_id, place");
  const Rows rows = owner.isNull() ? store.rows(all + order)
                                   : store.rows(all + QStringLiteral(" WHERE owner_id = :owner") + order,
                                                {{"owner", owner}});
  for (const Row& row : rows) {
    ColumnReader io(row);
    columns(io, children[row.uuid("owner_id")].emplace_back());
  }
  return children;
}

/// Reads records by `columns(io, record)`, with id and revision; `rest` ends the SELECT (WHERE …, ORDER BY
/// …).
template <class Record, class Columns>
std::vector<Record> readRecords(Store& store, const char* table, Columns columns, const QString& rest,
                                const Bindings& bindings = {}) {
  std::vector<Record> records;
  const QString sql = QStringLiteral("SELECT * FROM %1 ").arg(QLatin1StringView(table)) + rest;
  store.each(sql, bindings, [&](const Row& row) {
    Record& record = records.emplace_back();
    record.id = row.uuid("id");
    record.revision = row.number("revision");
    ColumnReader io(row);
    columns(io, record);
  });
  return records;
}

/// Writes a record by its columns. Its lists are the caller's.
template <class Record, class Columns>
void writeByColumns(Store& store, const RecordName& name, Record& record, Columns columns) {
  ColumnWriter io;
  columns(io, std::as_const(record));
  writeRecord(store, name, record.id, record.revision, io.bindings, [&](const Row& row) {
    Record stored;
    ColumnReader reader(row);
    columns(reader, stored);
    ColumnWriter writer;
    columns(writer, std::as_const(stored));
    return writer.bindings;
  });
}

/// Runs `work`, and says a refusal of the engine in the record's own terms.
void inTermsOf(const RecordName& name, const std::function<void()>& work);

} // namespace hangbook::store
