// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/records.h"

namespace hangbook::store {

namespace {

QString shown(const QVariant& value) {
  return value.isNull() ? QStringLiteral("nothing") : u'"' + value.toString() + u'"';
}

/// What differs between two versions: "mass_kg is "92", the store holds "94"".
QString differences(const Bindings& mine, const Bindings& stored) {
  QStringList found;
  for (std::size_t i = 0; i < mine.size() && i < stored.size(); ++i) {
    if (mine[i].second.variant().toString() != stored[i].second.variant().toString()) {
      found.append(
          QStringLiteral("%1 is %2 here and %3 in the store")
              .arg(mine[i].first, shown(mine[i].second.variant()), shown(stored[i].second.variant())));
    }
  }
  return found.isEmpty() ? QStringLiteral("only its lists differ, or nothing")
                         : found.join(QStringLiteral("; "));
}

[[noreturn]] void stale(Store& store, const RecordName& name, const QUuid& id, int revision,
                        const Bindings& mine, const std::function<Bindings(const Row&)>& stored) {
  const auto row = store.one(
      QStringLiteral("SELECT * FROM %1 WHERE id = :id").arg(QLatin1StringView(name.table)), {{"id", id}});
  if (!row) {
    throw StaleError(name.spoken.toStdString() +
                     " was removed by somebody else meanwhile, so nothing was saved");
  }
  QString text =
      QStringLiteral("%1 was changed by somebody else meanwhile, so nothing was saved: this is version %2, "
                     "the store holds version %3")
          .arg(name.spoken)
          .arg(revision)
          .arg(row->number("revision"));
  if (stored) {
    text += QStringLiteral(" (%1)").arg(differences(mine, stored(*row)));
  }
  throw StaleError(text.toStdString());
}

} // namespace

void inTermsOf(const RecordName& name, const std::function<void()>& work) {
  try {
    work();
  } catch (const StoreError& error) {
    const std::string spoken = name.spoken.toStdString();
    switch (error.cause()) {
    case Cause::duplicate:
      throw Error(Trouble::notPossible,
                  spoken + " cannot be saved: there is one of that name already, or one of its "
                           "lists names something twice");
    case Cause::reference:
      throw Error(Trouble::notPossible,
                  spoken + " names something that the store does not hold, or is named by something else");
    case Cause::check:
    case Cause::refused: {
      const std::string text = error.what();
      const std::size_t mark = text.find("the store refused: ");
      throw Error(Trouble::badInput, spoken + " cannot be saved: " +
                                         (mark == std::string::npos ? text : text.substr(mark + 19)));
    }
    default:
      throw;
    }
  }
}

void insertRow(Store& store, const char* table, const Bindings& values) {
  QStringList columns;
  QStringList places;
  for (const auto& [column, value] : values) {
    columns.append(column);
    places.append(u':' + column);
  }
  store.run(QStringLiteral("INSERT INTO %1 (%2) VALUES (%3)")
                .arg(QLatin1StringView(table), columns.join(QStringLiteral(", ")),
                     places.join(QStringLiteral(", "))),
            values);
}

void writeRecord(Store& store, const RecordName& name, QUuid& id, int& revision, const Bindings& values,
                 const std::function<Bindings(const Row&)>& stored) {
  Bindings all = values;
  if (id.isNull()) {
    const QUuid fresh = QUuid::createUuid();
    all.emplace_back("id", fresh);
    all.emplace_back("revision", 1);
    insertRow(store, name.table, all);
    id = fresh;
    revision = 1;
    return;
  }
  QStringList sets;
  for (const auto& [column, value] : values) {
    sets.append(column + QStringLiteral(" = :") + column);
  }
  all.emplace_back("id", id);
  all.emplace_back("revision", revision);
  const qint64 touched = store.run(
      QStringLiteral("UPDATE %1 SET %2, revision = revision + 1 WHERE id = :id AND revision = :revision")
          .arg(QLatin1StringView(name.table), sets.join(QStringLiteral(", "))),
      all);
  if (touched != 1) {
    stale(store, name, id, revision, values, stored);
  }
  ++revision;
}

void removeRecord(Store& store, const RecordName& name, const QUuid& id, int revision) {
  store.transact([&] {
    inTermsOf(name, [&] {
      if (store.run(QStringLiteral("DELETE FROM %1 WHERE id = :id AND revision = :revision")
                        .arg(QLatin1StringView(name.table)),
                    {{"id", id}, {"revision", revision}}) != 1) {
        stale(store, name, id, revision, {}, {});
      }
    });
  });
}

} // namespace hangbook::store
