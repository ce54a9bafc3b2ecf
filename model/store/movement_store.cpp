// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/fleet_columns.h"
#include "store/fleet_store.h"
#include "store/people_store.h"
#include "store/warehouse_store.h"

namespace hangbook::store {

using namespace fleet;

QUuid idOf(Store& store, const char* table, const char* column, const QString& name, const char* what) {
  const auto row = store.one(QStringLiteral("SELECT id FROM %1 WHERE %2 = :name")
                                 .arg(QLatin1StringView(table), QLatin1StringView(column)),
                             {{"name", name}});
  if (!row) {
    throw Error(
        Trouble::badInput,
        QStringLiteral("the %1 \"%2\" is not known").arg(QLatin1StringView(what), name).toStdString());
  }
  return row->uuid("id");
}

bool sameWhereabouts(const Unit& a, const Unit& b) {
  return a.place == b.place && a.state == b.state && a.cart == b.cart && a.cartPosition == b.cartPosition;
}

void checkCorrected(Store& store, const char* table, const QUuid& corrects, const QUuid& unit) {
  if (corrects.isNull()) {
    return;
  }
  const Bindings fact{{"fact", corrects}, {"unit", unit}};
  if (!store.one(QStringLiteral("SELECT id FROM %1 WHERE id = :fact AND unit_id = :unit")
                     .arg(QLatin1StringView(table)),
                 fact)) {
    throw Error(Trouble::badInput, "what is to be corrected is not recorded for this unit");
  }
  if (store
          .one(QStringLiteral("SELECT count(*) AS n FROM %1 WHERE corrects = :fact")
                   .arg(QLatin1StringView(table)),
               {{"fact", corrects}})
          ->integer("n") > 0) {
    throw Error(Trouble::notPossible, "this was corrected already; correct the later entry");
  }
}

namespace {

/// The movement that says where each unit is: the latest to have happened that no other corrects.
const QString lastMovements = QStringLiteral(
    "SELECT * FROM (SELECT m.*, row_number() OVER (PARTITION BY m.unit_id ORDER BY m.happened_at DESC, "
    "m.number DESC) "
    "AS newest FROM movement m WHERE NOT EXISTS (SELECT 1 FROM movement c WHERE c.corrects = m.id)) ranked "
    "WHERE newest = 1");

/// Writes where a unit is as its movements say.
void project(Store& store, const QUuid& unit) {
  const auto last = store.one(lastMovements + QStringLiteral(" AND unit_id = :unit"), {{"unit", unit}});
  if (!last) {
    return;
  }
  Movement movement;
  ColumnReader reader(*last);
  movementColumns(reader, movement);
  ColumnWriter io;
  io("place", movement.toPlace);
  io.word("state", movement.toState, unitStateWords);
  io.reference("cart", movement.toCart);
  io("position", movement.cartPosition);
  io("unit", unit);
  store.run(QStringLiteral(
                "UPDATE unit SET at_place = :place, state = :state, cart = :cart, cart_position = :position, "
                "revision = revision + 1 WHERE id = :unit"),
            io.bindings);
}

} // namespace

std::vector<Movement> loadMovements(Store& store, const QString& serial) {
  const QString from =
      QStringLiteral("SELECT m.*, u.serial FROM movement m JOIN unit u ON u.id = m.unit_id ");
  const QString order = QStringLiteral("ORDER BY m.happened_at, u.serial, m.number");
  return serial.isEmpty()
             ? readFacts<Movement>(store, from + order, {}, movementColumns)
             : readFacts<Movement>(store, from + QStringLiteral("WHERE u.serial = :serial ") + order,
                                   {{"serial", serial}}, movementColumns);
}

namespace {

const QString oneMovement = QStringLiteral(
    "SELECT m.*, u.serial FROM movement m JOIN unit u ON u.id = m.unit_id WHERE u.serial = :serial "
    "AND NOT EXISTS (SELECT 1 FROM movement c WHERE c.corrects = m.id) ");
const QString newestFirst = QStringLiteral("ORDER BY m.happened_at DESC, m.number DESC LIMIT 1");

std::optional<Movement> firstOf(std::vector<Movement> found) {
  return found.empty() ? std::nullopt : std::optional(std::move(found.front()));
}

} // namespace

std::optional<Movement> loadLastMovement(Store& store, const QString& serial) {
  return firstOf(
      readFacts<Movement>(store, oneMovement + newestFirst, {{"serial", serial}}, movementColumns));
}

std::optional<Movement> loadMovementBefore(Store& store, const Movement& movement) {
  return firstOf(readFacts<Movement>(
      store, oneMovement + QStringLiteral("AND m.id <> :id AND m.happened_at <= :at ") + newestFirst,
      {{"serial", movement.serial}, {"id", movement.id}, {"at", movement.happenedAt}}, movementColumns));
}

std::vector<Movement> loadScan(Store& store, const QUuid& scan) {
  return readFacts<Movement>(
      store,
      QStringLiteral("SELECT m.*, u.serial FROM movement m JOIN unit u ON u.id = m.unit_id "
                     "WHERE m.scan_id = :scan ORDER BY u.serial, m.number"),
      {{"scan", scan}}, movementColumns);
}

bool isCorrected(Store& store, const Movement& movement) {
  return store
             .one(QStringLiteral("SELECT count(*) AS n FROM movement WHERE corrects = :id"),
                  {{"id", movement.id}})
             ->integer("n") > 0;
}

Movement append(Store& store, const Movement& movement) {
  return store.transact([&] {
    Movement saved = movement;
    complete(saved);
    if (!saved.happenedAt.isValid()) {
      saved.happenedAt = saved.recordedAt;
    }
    const RecordName name{"movement", QStringLiteral("the movement of unit \"%1\"").arg(saved.serial)};
    inTermsOf(name, [&] {
      const QUuid unit = idOf(store, "unit", "serial", saved.serial, "unit");
      if (!saved.toCart.isEmpty()) {
        const auto cart = loadUnit(store, saved.toCart);
        if (!cart || cart->kind != UnitKind::cart) {
          throw Error(Trouble::badInput, "\"" + saved.toCart.toStdString() + "\" is not a cart of the fleet");
        }
      }
      checkCorrected(store, "movement", saved.corrects, unit);
      ColumnWriter io;
      movementColumns(io, std::as_const(saved));
      io("unit_id", unit);
      io("device", thisDevice());
      io("number",
         store
             .one(QStringLiteral(
                      "SELECT coalesce(max(number), 0) + 1 AS n FROM movement WHERE unit_id = :unit"),
                  {{"unit", unit}})
             ->integer("n"));
      insertRow(store, "movement", io.bindings);
      project(store, unit);
    });
    return saved;
  });
}

QStringList unitsAstray(Store& store) {
  std::map<QUuid, Unit> rebuilt;
  for (const Row& row : store.rows(lastMovements)) {
    Movement movement;
    ColumnReader io(row);
    movementColumns(io, movement);
    Unit& unit = rebuilt[row.uuid("unit_id")];
    unit.place = movement.toPlace;
    unit.state = movement.toState;
    unit.cart = movement.toCart;
    unit.cartPosition = movement.cartPosition;
  }
  QStringList astray;
  for (const Unit& unit : loadUnits(store)) {
    const auto found = rebuilt.find(unit.id);
    if (found == rebuilt.end()) {
      astray.append(QStringLiteral("unit %1 has no movement that says where it is").arg(unit.serial));
    } else if (!sameWhereabouts(found->second, unit)) {
      astray.append(
          QStringLiteral("unit %1 is kept at \"%2\", its movements say \"%3\", or its state or cart differ")
              .arg(unit.serial, unit.place, found->second.place));
    }
  }
  return astray;
}

} // namespace hangbook::store
