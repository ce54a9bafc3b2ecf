// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/fleet_store.h"

#include "store/fleet_columns.h"
#include "store/people_store.h"

namespace hangbook::store {

namespace {

using namespace fleet;

RecordName nameOf(const Unit& unit) {
  return {"unit", QStringLiteral("unit \"%1\"").arg(unit.serial)};
}
RecordName nameOf(const ExaminationRule& rule) {
  return {"examination_rule", QStringLiteral("examination rule \"%1\"").arg(rule.name)};
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
  case UnitKind::loom:
    table = "hardware_type";
    break;
  }
  idOf(store, table, "name", unit.type, "type");
  if (table == std::string_view("hardware_type") &&
      !store.one(
          QStringLiteral("SELECT id FROM hardware_type WHERE name = :name AND (kind = 'loom') = :loom"),
          {{"name", unit.type}, {"loom", unit.kind == UnitKind::loom}})) {
    throw Error(Trouble::badInput, "the type \"" + unit.type.toStdString() +
                                       (unit.kind == UnitKind::loom ? "\" is no loom" : "\" is a loom"));
  }
}

std::vector<Unit> readUnits(Store& store, const QString& rest, const Bindings& bindings) {
  return readRecords<Unit>(store, "unit", unitColumns, rest, bindings);
}

const QString examinationsFrom = QStringLiteral(
    "SELECT e.*, u.serial, r.name AS rule_name FROM examination e JOIN unit u ON u.id = e.unit_id "
    "JOIN examination_rule r ON r.id = e.rule_id ");

/// Of each unit and rule the newest that was not corrected, by looking for a newer one beside each: ranking
/// would sort them all.
const QString isNewest = QStringLiteral(
    "WHERE NOT EXISTS (SELECT 1 FROM examination c WHERE c.corrects = e.id) "
    "AND NOT EXISTS (SELECT 1 FROM examination n WHERE n.unit_id = e.unit_id AND n.rule_id = e.rule_id "
    "AND n.examined_on >= e.examined_on AND (n.examined_on > e.examined_on OR n.recorded_at > e.recorded_at "
    "OR (n.recorded_at = e.recorded_at AND n.id < e.id)) "
    "AND NOT EXISTS (SELECT 1 FROM examination d WHERE d.corrects = n.id))");

/// CROSS JOIN: SQLite goes from the few rules to their units. Both this and the next are read from an index
/// alone (migration 13).
const QString unitsUnderRules = QStringLiteral(
    "SELECT u.id, u.serial, u.kind, u.type, u.at_place, u.state FROM (SELECT DISTINCT r.kind, r.type FROM "
    "examination_rule r WHERE r.type = '' OR NOT EXISTS (SELECT 1 FROM examination_rule w WHERE "
    "w.kind = r.kind AND w.type = '')) ruled CROSS JOIN unit u WHERE u.kind = ruled.kind AND "
    "(ruled.type = '' OR ruled.type = u.type)");

const QString newestUnsorted =
    QStringLiteral("SELECT e.unit_id, e.rule_id, e.examined_on, e.result FROM examination e ") + isNewest;

} // namespace

std::vector<Unit> loadUnits(Store& store) {
  return readUnits(store, QStringLiteral("ORDER BY serial"), {});
}

UnderRules loadUnderRules(Store& store) {
  UnderRules under;
  QHash<QString, QString> serials; // by the units' identifiers
  for (const Row& row : store.rows(unitsUnderRules)) {
    ColumnReader io(row);
    Unit& unit = under.units.emplace_back();
    io("serial", unit.serial);
    io.word("kind", unit.kind, unitKindWords);
    io("type", unit.type);
    io("at_place", unit.place);
    io.word("state", unit.state, unitStateWords);
    serials.insert(row.text("id"), unit.serial);
  }
  QHash<QString, QString> rules;
  for (const Row& row : store.rows(QStringLiteral("SELECT id, name FROM examination_rule"))) {
    rules.insert(row.text("id"), row.text("name"));
  }
  for (const Row& row : store.rows(newestUnsorted)) {
    const auto serial = serials.constFind(row.text("unit_id"));
    if (serial == serials.constEnd()) {
      continue; // no rule speaks of its unit any more
    }
    Examination& fact = under.examinations.emplace_back();
    fact.serial = *serial;
    fact.rule = rules.value(row.text("rule_id"));
    ColumnReader io(row);
    io("examined_on", fact.date);
    io.word("result", fact.result, resultWords);
  }
  return under;
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
  return readFacts<Examination>(store,
                                examinationsFrom + isNewest + QStringLiteral(" ORDER BY u.serial, r.name"),
                                {}, examinationColumns);
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

} // namespace hangbook::store
