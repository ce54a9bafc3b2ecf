// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/fleet_store.h"

#include <array>

#include "store/people_store.h"
#include "store/records.h"
#include "store/words.h"

namespace hangbook::store {

namespace {

using namespace fleet;

constexpr auto unitColumns = [](auto& io, auto& unit) {
  recordColumns(io, unit);
  io("serial", unit.serial);
  io.word("kind", unit.kind, unitKindWords);
  io("type", unit.type);
  io("owner", unit.owner);
  io("hired_until", unit.hiredUntil);
  io("weighed_kg", unit.weighed);
  io("at_place", unit.place);
  io.word("state", unit.state, unitStateWords);
  io.reference("cart", unit.cart);
  io("cart_position", unit.cartPosition);
};

constexpr auto ruleColumns = [](auto& io, auto& rule) {
  recordColumns(io, rule);
  io("name", rule.name);
  io.word("kind", rule.kind, unitKindWords);
  io("type", rule.type);
  io("months", rule.months);
};

constexpr auto examinationColumns = [](auto& io, auto& fact) {
  io("id", fact.id);
  io("examined_on", fact.date);
  io.word("result", fact.result, resultWords);
  io("examiner", fact.examiner);
  io("certificate", fact.certificate);
  io("remark", fact.remark);
  io("corrects", fact.corrects);
  io("by_name", fact.by);
  io("recorded_at", fact.recordedAt);
};

constexpr auto movementColumns = [](auto& io, auto& fact) {
  io("id", fact.id);
  io("to_place", fact.toPlace);
  io.word("to_state", fact.toState, unitStateWords);
  io("to_cart", fact.toCart);
  io("cart_position", fact.cartPosition);
  io("reason", fact.reason);
  io("corrects", fact.corrects);
  io("by_name", fact.by);
  io("happened_at", fact.happenedAt);
  io("recorded_at", fact.recordedAt);
};

/// The movement that says where each unit is: the latest to have happened that no other corrects.
const QString lastMovements = QStringLiteral(
    "SELECT * FROM (SELECT m.*, row_number() OVER (PARTITION BY m.unit_id ORDER BY m.happened_at DESC, "
    "m.number DESC) "
    "AS newest FROM movement m WHERE NOT EXISTS (SELECT 1 FROM movement c WHERE c.corrects = m.id)) ranked "
    "WHERE newest = 1");

RecordName nameOf(const Unit& unit) {
  return {"unit", QStringLiteral("unit \"%1\"").arg(unit.serial)};
}
RecordName nameOf(const ExaminationRule& rule) {
  return {"examination_rule", QStringLiteral("examination rule \"%1\"").arg(rule.name)};
}

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

void checkType(Store& store, const Unit& unit) {
  const char* table = "cabinet_type";
  switch (unit.kind) {
  case UnitKind::cabinet:
    break;
  case UnitKind::bar:
    table = "bar_type";
    break;
  case UnitKind::hoist:
    table = "hoist_type";
    break;
  case UnitKind::chain:
    table = "chain_type";
    break;
  case UnitKind::cart:
    table = "cart_type";
    break;
  case UnitKind::hardware:
    table = "hardware_type";
    break;
  }
  idOf(store, table, "name", unit.type, "type");
}

template <class Fact>
void complete(Fact& fact) {
  if (fact.by.isEmpty()) {
    throw Error(Trouble::badInput, "nobody is named who recorded this; say who is at the desk");
  }
  if (fact.id.isNull()) {
    fact.id = QUuid::createUuid();
  }
  if (!fact.recordedAt.isValid()) {
    fact.recordedAt = QDateTime::currentDateTimeUtc();
  }
}

/// A correction must name a fact of the same unit that nothing else corrects yet.
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

bool sameWhereabouts(const Unit& a, const Unit& b) {
  return a.place == b.place && a.state == b.state && a.cart == b.cart && a.cartPosition == b.cartPosition;
}

std::vector<Unit> readUnits(Store& store, const QString& rest, const Bindings& bindings) {
  return readRecords<Unit>(store, "unit", unitColumns, rest, bindings);
}

template <class Fact, class Columns>
std::vector<Fact> readFacts(Store& store, const QString& sql, const Bindings& bindings, Columns columns) {
  std::vector<Fact> facts;
  for (const Row& row : store.rows(sql, bindings)) {
    Fact& fact = facts.emplace_back();
    fact.serial = row.text("serial");
    ColumnReader io(row);
    columns(io, fact);
    if constexpr (std::is_same_v<Fact, Examination>) {
      fact.rule = row.text("rule_name");
    }
  }
  return facts;
}

const QString examinationsFrom = QStringLiteral(
    "SELECT e.*, u.serial, r.name AS rule_name FROM examination e JOIN unit u ON u.id = e.unit_id "
    "JOIN examination_rule r ON r.id = e.rule_id ");

} // namespace

std::vector<Unit> loadUnits(Store& store) {
  return readUnits(store, QStringLiteral("ORDER BY serial"), {});
}

std::optional<Unit> loadUnit(Store& store, const QString& serial) {
  std::vector<Unit> found = readUnits(store, QStringLiteral("WHERE serial = :serial"), {{"serial", serial}});
  return found.empty() ? std::nullopt : std::optional(std::move(found.front()));
}

std::vector<ExaminationRule> loadExaminationRules(Store& store) {
  return readRecords<ExaminationRule>(store, "examination_rule", ruleColumns,
                                      QStringLiteral("ORDER BY name"));
}

std::vector<Examination> loadExaminations(Store& store, const QString& serial) {
  const QString order = QStringLiteral("ORDER BY e.examined_on, e.recorded_at, e.id");
  return serial.isEmpty()
             ? readFacts<Examination>(store, examinationsFrom + order, {}, examinationColumns)
             : readFacts<Examination>(store,
                                      examinationsFrom + QStringLiteral("WHERE u.serial = :serial ") + order,
                                      {{"serial", serial}}, examinationColumns);
}

std::vector<Examination> loadNewestExaminations(Store& store) {
  return readFacts<Examination>(
      store,
      QStringLiteral(
          "SELECT * FROM (SELECT e.*, u.serial, r.name AS rule_name, row_number() OVER (PARTITION BY "
          "e.unit_id, e.rule_id ORDER BY e.examined_on DESC, e.recorded_at DESC, e.id) AS newest "
          "FROM examination e JOIN unit u ON u.id = e.unit_id JOIN examination_rule r ON r.id = e.rule_id "
          "WHERE NOT EXISTS (SELECT 1 FROM examination c WHERE c.corrects = e.id)) ranked "
          "WHERE newest = 1 ORDER BY serial, rule_name"),
      {}, examinationColumns);
}

std::vector<Movement> loadMovements(Store& store, const QString& serial) {
  const QString from =
      QStringLiteral("SELECT m.*, u.serial FROM movement m JOIN unit u ON u.id = m.unit_id ");
  const QString order = QStringLiteral("ORDER BY m.happened_at, u.serial, m.number");
  return serial.isEmpty()
             ? readFacts<Movement>(store, from + order, {}, movementColumns)
             : readFacts<Movement>(store, from + QStringLiteral("WHERE u.serial = :serial ") + order,
                                   {{"serial", serial}}, movementColumns);
}

Unit save(Store& store, const Unit& unit, const QString& by, const QString& reason) {
  return store.transact([&] {
    Unit saved = unit;
    inTermsOf(nameOf(unit), [&] {
      checkType(store, unit);
      const std::vector<Unit> before =
          unit.id.isNull() ? std::vector<Unit>()
                           : readUnits(store, QStringLiteral("WHERE id = :id"), {{"id", unit.id}});
      writeByColumns(store, nameOf(unit), saved, unitColumns);
      if (before.empty() || !sameWhereabouts(before.front(), unit)) {
        Movement movement;
        movement.serial = unit.serial;
        movement.toPlace = unit.place;
        movement.toState = unit.state;
        movement.toCart = unit.cart;
        movement.cartPosition = unit.cartPosition;
        movement.reason = reason;
        movement.by = by;
        append(store, movement);
        ++saved.revision;
      }
    });
    return saved;
  });
}

ExaminationRule save(Store& store, const ExaminationRule& rule) {
  return store.transact([&] {
    ExaminationRule saved = rule;
    inTermsOf(nameOf(rule), [&] { writeByColumns(store, nameOf(rule), saved, ruleColumns); });
    return saved;
  });
}

void remove(Store& store, const ExaminationRule& rule) {
  removeRecord(store, nameOf(rule), rule.id, rule.revision);
}

Examination append(Store& store, const Examination& examination) {
  return store.transact([&] {
    Examination saved = examination;
    complete(saved);
    const RecordName name{"examination", QStringLiteral("the examination of unit \"%1\"").arg(saved.serial)};
    inTermsOf(name, [&] {
      const QUuid unit = idOf(store, "unit", "serial", saved.serial, "unit");
      checkCorrected(store, "examination", saved.corrects, unit);
      ColumnWriter io;
      examinationColumns(io, std::as_const(saved));
      io("unit_id", unit);
      io("rule_id", idOf(store, "examination_rule", "name", saved.rule, "examination rule"));
      io("device", thisDevice());
      insertRow(store, "examination", io.bindings);
    });
    return saved;
  });
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
