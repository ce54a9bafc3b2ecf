// SPDX-License-Identifier: GPL-3.0-or-later
#include "filled_store.h"

#include "support/sample_house.h"

namespace hangbook::testing {
namespace {

/// An identifier of its own for each number, in both engines' words. `family` keeps those of one table apart.
QString identifier(store::Engine engine, const QString& number, int family) {
  return engine == store::Engine::sqlite
             ? QStringLiteral("printf('%08x-%04x-4000-8000-000000000000', %1, %2)").arg(number).arg(family)
             : QStringLiteral("(lpad(to_hex(%1), 8, '0') || '-' || lpad(to_hex(%2), 4, '0') || "
                              "'-4000-8000-000000000000')::uuid")
                   .arg(number)
                   .arg(family);
}

/// Instants a minute apart.
QString instant(store::Engine engine, const QString& number) {
  return engine == store::Engine::sqlite
             ? QStringLiteral("strftime('%Y-%m-%dT%H:%M:%S.000Z', 1700000000 + 60 * (%1), 'unixepoch')")
                   .arg(number)
             : QStringLiteral("to_timestamp(1700000000 + 60.0 * (%1))").arg(number);
}

QString day(store::Engine engine, const QString& number) {
  return engine == store::Engine::sqlite
             ? QStringLiteral("date('2027-01-01', '-' || ((%1) % 300) || ' days')").arg(number)
             : QStringLiteral("(date '2027-01-01' - ((%1) % 300)::int)").arg(number);
}

QString numbers(int count) {
  return QStringLiteral("WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < %1) ")
      .arg(count);
}

QString padded(store::Engine engine) {
  return engine == store::Engine::sqlite ? QStringLiteral("printf('SN-%06d', i)")
                                         : QStringLiteral("'SN-' || lpad(i::text, 6, '0')");
}

/// One after the other in a CASE of both engines.
QString caseOf(const std::vector<UnitSort>& mix, QString UnitSort::*part) {
  QString text = QStringLiteral("CASE i % %1").arg(mix.size());
  for (std::size_t i = 0; i < mix.size(); ++i) {
    text += QStringLiteral(" WHEN %1 THEN '%2'").arg(i).arg(mix[i].*part);
  }
  return text + QStringLiteral(" END");
}

} // namespace

void addUnits(store::Store& store, const std::vector<UnitSort>& mix, int units, int movementsEach) {
  const store::Engine engine = store.engine();
  store.transact([&] {
    store.run(QStringLiteral(
                  "INSERT INTO unit (id, revision, source_text, typed, serial, kind, type, owner, at_place, "
                  "state) ") +
              numbers(units) +
              QStringLiteral("SELECT %1, 1, '', '{}', %2, %3, %4, '', 'bay ' || (i % 40), 'ready' FROM n")
                  .arg(identifier(engine, QStringLiteral("i"), 1), padded(engine),
                       caseOf(mix, &UnitSort::kind), caseOf(mix, &UnitSort::type)));
    store.run(
        QStringLiteral(
            "INSERT INTO movement (id, unit_id, number, to_place, to_state, to_cart, reason, by_name, "
            "device, happened_at, recorded_at) ") +
        numbers(units) +
        QStringLiteral(
            ", m(k) AS (SELECT 1 UNION ALL SELECT k + 1 FROM m WHERE k < %1) "
            "SELECT %2, %3, k, 'bay ' || (i % 40), 'ready', '', '', 'Ada Fenn', 'bench', %4, %4 FROM n, m")
            .arg(movementsEach)
            .arg(identifier(engine, QStringLiteral("i + %1 * k").arg(units), 2),
                 identifier(engine, QStringLiteral("i"), 1),
                 instant(engine, QStringLiteral("i + %1 * k").arg(units))));
    store.run(
        QStringLiteral(
            "INSERT INTO examination (id, unit_id, rule_id, examined_on, result, examiner, certificate, "
            "remark, by_name, device, recorded_at) ") +
        numbers(units) +
        QStringLiteral("SELECT %1, %2, r.id, %3, 'pass', '', '', '', 'Ada Fenn', 'bench', %4 FROM n JOIN "
                       "examination_rule r ON r.kind = %5 AND r.type IN ('', %6)")
            .arg(identifier(engine, QStringLiteral("i"), 3), identifier(engine, QStringLiteral("i"), 1),
                 day(engine, QStringLiteral("i")), instant(engine, QStringLiteral("i")),
                 caseOf(mix, &UnitSort::kind), caseOf(mix, &UnitSort::type)));
  });
  if (engine == store::Engine::sqlite) { // PostgreSQL prepares no ANALYZE
    store.run(QStringLiteral("ANALYZE"));
  }
}

void fillLarge(store::Store& store, int units, int movementsEach) {
  fill(store);
  for (const fleet::ExaminationRule& rule : store::loadExaminationRules(store)) {
    store::remove(store, rule); // cabinets go without one
  }
  for (const auto& [name, kind] :
       {std::pair{"hoists", fleet::UnitKind::hoist}, std::pair{"chains", fleet::UnitKind::chain}}) {
    fleet::ExaminationRule rule;
    rule.name = QString::fromLatin1(name);
    rule.kind = kind;
    rule.months = 6;
    store::save(store, rule);
  }
  std::vector<UnitSort> mix(20, {QStringLiteral("cabinet"), QStringLiteral("Marram bass")});
  mix[0] = {QStringLiteral("hoist"), sampleHoist().name};
  mix[1] = {QStringLiteral("chain"), sampleChain().name};
  addUnits(store, mix, units, movementsEach);
}

} // namespace hangbook::testing
