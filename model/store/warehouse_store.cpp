// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/warehouse_store.h"

#include <QCryptographicHash>

#include "store/fleet_columns.h"
#include "store/people_store.h"

namespace hangbook::store {

using namespace fleet;

namespace {

constexpr auto placeColumns = [](auto& io, auto& place) {
  recordColumns(io, place);
  io("name", place.name);
  io.word("kind", place.kind, placeKindWords);
  io("floor_length_m", place.floorLength);
  io("floor_width_m", place.floorWidth);
  io("payload_kg", place.payload);
};

constexpr auto occurrenceColumns = [](auto& io, auto& fact) {
  io("id", fact.id);
  io.word("kind", fact.kind, occurrenceWords);
  io("happened_on", fact.date);
  io("uses", fact.uses);
  io("hours", fact.hours);
  io("at_place", fact.place);
  io("remark", fact.remark);
  io("corrects", fact.corrects);
  io("by_name", fact.by);
  io("recorded_at", fact.recordedAt);
};

constexpr auto documentColumns = [](auto& io, auto& fact) {
  io("id", fact.id);
  io("examination_id", fact.examination);
  io("sha256", fact.sha256);
  io("file_name", fact.fileName);
  io.word("kind", fact.kind, documentKindWords);
  io("by_name", fact.by);
  io("recorded_at", fact.recordedAt);
};

RecordName nameOf(const NamedPlace& place) {
  return {"place", QStringLiteral("place \"%1\"").arg(place.name)};
}

QString hashOf(const QByteArray& bytes) {
  return QString::fromLatin1(QCryptographicHash::hash(bytes, QCryptographicHash::Sha256).toHex());
}

} // namespace

std::vector<NamedPlace> loadPlaces(Store& store) {
  return readRecords<NamedPlace>(store, "place", placeColumns, QStringLiteral("ORDER BY name"));
}

std::optional<NamedPlace> loadPlace(Store& store, const QString& name) {
  auto found = readRecords<NamedPlace>(store, "place", placeColumns, QStringLiteral("WHERE name = :name"),
                                       {{"name", name}});
  return found.empty() ? std::nullopt : std::optional(std::move(found.front()));
}

NamedPlace save(Store& store, const NamedPlace& place) {
  return store.transact([&] {
    NamedPlace saved = place;
    inTermsOf(nameOf(place), [&] { writeByColumns(store, nameOf(place), saved, placeColumns); });
    return saved;
  });
}

void remove(Store& store, const NamedPlace& place) {
  removeRecord(store, nameOf(place), place.id, place.revision);
}

std::vector<Occurrence> loadOccurrences(Store& store, const QString& serial) {
  const QString order = QStringLiteral("ORDER BY o.happened_on, o.recorded_at, o.id");
  if (serial.isEmpty()) {
    // CROSS JOIN: SQLite goes from what happened to its units, and not through all units.
    return readFacts<Occurrence>(
        store,
        QStringLiteral("SELECT o.*, u.serial FROM occurrence o CROSS JOIN unit u WHERE u.id = o.unit_id ") +
            order,
        {}, occurrenceColumns);
  }
  return readFacts<Occurrence>(
      store,
      QStringLiteral("SELECT o.*, u.serial FROM occurrence o JOIN unit u ON u.id = o.unit_id "
                     "WHERE u.serial = :serial ") +
          order,
      {{"serial", serial}}, occurrenceColumns);
}

Occurrence append(Store& store, const Occurrence& occurrence) {
  return store.transact([&] {
    Occurrence saved = occurrence;
    complete(saved);
    const RecordName name{"occurrence", QStringLiteral("what happened to unit \"%1\"").arg(saved.serial)};
    inTermsOf(name, [&] {
      const QUuid unit = idOf(store, "unit", "serial", saved.serial, "unit");
      checkCorrected(store, "occurrence", saved.corrects, unit);
      ColumnWriter io;
      occurrenceColumns(io, std::as_const(saved));
      io("unit_id", unit);
      io("device", thisDevice());
      insertRow(store, "occurrence", io.bindings);
    });
    return saved;
  });
}

namespace {

bool countsOutings(Store& store) {
  return store
             .one(QStringLiteral(
                 "SELECT count(*) AS n FROM examination_rule WHERE uses IS NOT NULL OR hours IS "
                 "NOT NULL OR idle_months IS NOT NULL"))
             ->integer("n") > 0;
}

/// Days on which a unit left or came back, as uses. Movements from one place away to another are no new
/// outing.
void addOutings(Store& store, const QString& serial, std::vector<Occurrence>& into) {
  const QString sql = QStringLiteral(
      "SELECT u.serial, m.happened_at, m.to_state, m.by_name, m.recorded_at FROM movement m "
      "JOIN unit u ON u.id = m.unit_id WHERE NOT EXISTS (SELECT 1 FROM movement c WHERE c.corrects = m.id) %1"
      "ORDER BY u.serial, m.happened_at, m.number");
  const Rows rows =
      serial.isEmpty() ? store.rows(sql.arg(QString()))
                       : store.rows(sql.arg(QStringLiteral("AND u.serial = :serial ")), {{"serial", serial}});
  QString current;
  bool away = false;
  for (const Row& row : rows) {
    if (const QString next = row.text("serial"); next != current) {
      current = next;
      away = false;
    }
    const bool nowAway = row.text("to_state") == QStringLiteral("away");
    if (nowAway != away) {
      Occurrence use;
      use.serial = current;
      use.date = row.instant("happened_at").date();
      use.uses = nowAway ? 1 : 0;
      use.by = row.text("by_name");
      use.recordedAt = row.instant("recorded_at");
      into.push_back(use);
    }
    away = nowAway;
  }
}

} // namespace

std::vector<Occurrence> loadHappened(Store& store, const QString& serial) {
  std::vector<Occurrence> all = loadOccurrences(store, serial);
  if (countsOutings(store)) {
    addOutings(store, serial, all);
  }
  return all;
}

std::vector<UnitDocument> loadDocuments(Store& store, const QString& serial) {
  return readFacts<UnitDocument>(
      store,
      QStringLiteral(
          "SELECT d.*, u.serial FROM unit_document d JOIN unit u ON u.id = d.unit_id WHERE u.serial = "
          ":serial ORDER BY d.recorded_at, d.id"),
      {{"serial", serial}}, documentColumns);
}

QByteArray loadDocumentBytes(Store& store, const QString& sha256) {
  const auto row =
      store.one(QStringLiteral("SELECT content FROM document WHERE sha256 = :sha256"), {{"sha256", sha256}});
  if (!row) {
    throw Error(Trouble::badInput, "the store keeps no file of the SHA-256 " + sha256.toStdString());
  }
  QByteArray bytes = row->bytes("content");
  if (hashOf(bytes) != sha256) {
    throw StoreError(Cause::damaged, "a kept file is not what its SHA-256 names: " + sha256.toStdString());
  }
  return bytes;
}

UnitDocument append(Store& store, const UnitDocument& document, const QByteArray& bytes) {
  return store.transact([&] {
    UnitDocument saved = document;
    complete(saved);
    saved.sha256 = hashOf(bytes);
    const RecordName name{"unit_document", QStringLiteral("the file \"%1\"").arg(saved.fileName)};
    inTermsOf(name, [&] {
      const QUuid unit = idOf(store, "unit", "serial", saved.serial, "unit");
      store.run(QStringLiteral("INSERT INTO document (sha256, content) VALUES (:sha256, :content) "
                               "ON CONFLICT (sha256) DO NOTHING"),
                {{"sha256", saved.sha256}, {"content", bytes}});
      ColumnWriter io;
      documentColumns(io, std::as_const(saved));
      io("unit_id", unit);
      io("device", thisDevice());
      insertRow(store, "unit_document", io.bindings);
    });
    return saved;
  });
}

QStringList documentsAstray(Store& store) {
  QStringList astray;
  for (const Row& each : store.rows(QStringLiteral("SELECT sha256 FROM document ORDER BY sha256"))) {
    try {
      loadDocumentBytes(store, each.text("sha256"));
    } catch (const Error& error) {
      astray << QString::fromUtf8(error.what());
    }
  }
  return astray;
}

std::vector<Unit> loadUnitsOnCart(Store& store, const QString& cart) {
  return readRecords<Unit>(store, "unit", unitColumns,
                           QStringLiteral("WHERE cart = :cart ORDER BY cart_position NULLS LAST, serial"),
                           {{"cart", cart}});
}

std::vector<Unit> loadUnitsAt(Store& store, const QString& place) {
  return readRecords<Unit>(store, "unit", unitColumns,
                           QStringLiteral("WHERE at_place = :place ORDER BY serial"), {{"place", place}});
}

FoundUnits findUnits(Store& store, const QString& part, int most) {
  QString pattern = part;
  for (const QChar sign : {QChar(u'\\'), QChar(u'%'), QChar(u'_')}) {
    pattern.replace(sign, QStringLiteral("\\") + sign);
  }
  // LIKE knows upper and lower case of A to Z on SQLite only: both sides are folded.
  const QString where = QStringLiteral("WHERE lower(serial) LIKE lower(:pattern) ESCAPE '\\' ");
  const Bindings bindings{{"pattern", u'%' + pattern + u'%'}};
  FoundUnits found;
  found.all = store.one(QStringLiteral("SELECT count(*) AS n FROM unit ") + where, bindings)->number("n");
  Bindings limited = bindings;
  limited.emplace_back("most", most);
  found.units = readRecords<Unit>(store, "unit", unitColumns,
                                  where + QStringLiteral("ORDER BY serial LIMIT :most"), limited);
  return found;
}

} // namespace hangbook::store
