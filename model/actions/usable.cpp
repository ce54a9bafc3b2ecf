// SPDX-License-Identifier: GPL-3.0-or-later
#include "actions/usable.h"

#include "fleet/due.h"
#include "store/fleet_store.h"
#include "store/warehouse_store.h"

namespace hangbook::actions {
namespace {

using fleet::Unit;
using fleet::UnitKind;
using fleet::UnitState;

/// Kinds that carry a load over people: no rule for them is a missing rule.
bool lifts(UnitKind kind) {
  return kind == UnitKind::bar || kind == UnitKind::hoist || kind == UnitKind::chain ||
         kind == UnitKind::hardware;
}

Usable no(const Unit& unit, const QString& why) {
  return {false, QStringLiteral("%1 %2").arg(unit.serial, why)};
}

} // namespace

Usable isUsable(store::Store& store, const Unit& unit, const calendar::Show& show) {
  switch (unit.state) {
  case UnitState::quarantined:
    return no(unit, QStringLiteral("is quarantined"));
  case UnitState::inRepair:
    return no(unit, QStringLiteral("is in repair"));
  case UnitState::writtenOff:
    return no(unit, QStringLiteral("is written off"));
  case UnitState::ready:
  case UnitState::away:
    break;
  }
  const QDate until = show.awayTo;
  if (unit.hiredUntil.isValid() && (!until.isValid() || unit.hiredUntil < until)) {
    return no(unit, QStringLiteral("goes back to its owner on %1, before the last day away")
                        .arg(unit.hiredUntil.toString(Qt::ISODate)));
  }
  const std::vector<fleet::Examination> examinations = store::loadExaminations(store, unit.serial);
  const std::vector<fleet::Occurrence> occurrences = store::loadHappened(store, unit.serial);
  const fleet::LastExaminations last(examinations);
  const fleet::Happened happened(occurrences);
  bool ruled = false;
  for (const fleet::ExaminationRule& rule : store::loadExaminationRules(store)) {
    if (!fleet::appliesTo(rule, unit)) {
      continue;
    }
    ruled = true;
    const QString lacks =
        fleet::shortfall(fleet::standingOf(rule, last.of(unit.serial, rule.name), happened.to(unit.serial)),
                         show.awayFrom, until);
    if (!lacks.isEmpty()) {
      return no(unit, QStringLiteral("may not go: %1: %2").arg(rule.name, lacks));
    }
  }
  if (!ruled && lifts(unit.kind)) {
    return {true, QStringLiteral("unproven: no examination rule is for %1").arg(unit.serial)};
  }
  return {true, {}};
}

} // namespace hangbook::actions
