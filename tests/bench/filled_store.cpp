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

} // namespace

void fillLarge(store::Store& store, int units, int movementsEach) {
  const store::Engine engine = store.engine();
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
  store.transact([&] {
    store.run(
        QStringLiteral(
            "INSERT INTO unit (id, revision, source_text, typed, serial, kind, type, owner, at_place, "
            "state) ") +
        numbers(units) +
        QStringLiteral("SELECT %1, 1, '', '{}', %2, CASE i % 20 WHEN 0 THEN 'hoist' WHEN 1 THEN 'chain' ELSE "
                       "'cabinet' END, CASE i % 20 WHEN 0 THEN '%3' WHEN 1 THEN '%4' ELSE 'Marram bass' END, "
                       "'', 'bay ' || (i % 40), 'ready' FROM n")
            .arg(identifier(engine, QStringLiteral("i"), 1), padded(engine), sampleHoist().name,
                 sampleChain().name));
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
                       "examination_rule r ON r.name = CASE i % 20 WHEN 0 THEN 'hoists' ELSE 'chains' END "
                       "WHERE i % 20 < 2")
            .arg(identifier(engine, QStringLiteral("i"), 3), identifier(engine, QStringLiteral("i"), 1),
                 day(engine, QStringLiteral("i")), instant(engine, QStringLiteral("i"))));
  });
  if (engine == store::Engine::sqlite) { // PostgreSQL prepares no ANALYZE
    store.run(QStringLiteral("ANALYZE"));
  }
}

void addShows(store::Store& store, int shows) {
  store.transact([&] {
    for (int i = 1; i <= shows; ++i) {
      const QString venue = QStringLiteral("Hall %1").arg(i);
      save(store, sampleVenue(venue));
      calendar::Show show = sampleShow(QStringLiteral("Stop %1").arg(i), venue);
      const int later = 3 * i;
      show.from = show.from.addDays(later);
      show.to = show.to.addDays(later);
      show.loadIn = show.loadIn.addDays(later);
      show.loadOut = show.loadOut.addDays(later);
      show.awayFrom = show.awayFrom.addDays(later);
      show.awayTo = show.awayTo.addDays(later);
      save(store, show);
    }
  });
}

} // namespace hangbook::testing
