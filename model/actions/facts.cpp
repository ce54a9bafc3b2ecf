// SPDX-License-Identifier: GPL-3.0-or-later
#include "actions/facts.h"

#include "quantity/error.h"
#include "store/choice_store.h"
#include "store/fleet_store.h"
#include "store/mark_store.h"

namespace hangbook::actions {

marks::MarkUsed recordMark(store::Store& store, const marks::MarkUsed& mark, const QString& by) {
  return withDeed(store, by.isEmpty() ? mark.by : by,
                  {"record mark", mark.show.isEmpty() ? mark.place : mark.show,
                   QStringLiteral("hang \"%1\": mark %2").arg(mark.hang).arg(mark.mark)},
                  [&](const QString& who) {
                    marks::MarkUsed fact = mark;
                    fact.by = who;
                    return store::append(store, fact);
                  });
}

fleet::Examination recordExamination(store::Store& store, const fleet::Examination& examination,
                                     const QString& by) {
  return withDeed(store, by.isEmpty() ? examination.by : by,
                  {"record examination", examination.serial, examination.rule}, [&](const QString& who) {
                    fleet::Examination fact = examination;
                    fact.by = who;
                    fact = store::append(store, fact);
                    const std::optional<fleet::Unit> unit = store::loadUnit(store, fact.serial);
                    const bool lifts = unit && unit->state != fleet::UnitState::quarantined &&
                                       unit->state != fleet::UnitState::inRepair &&
                                       unit->state != fleet::UnitState::writtenOff;
                    if (fact.result == fleet::ExaminationResult::fail && lifts) {
                      fleet::Movement movement;
                      movement.serial = fact.serial;
                      movement.toPlace = unit->place;
                      movement.toState = fleet::UnitState::quarantined;
                      movement.toCart = unit->cart;
                      movement.cartPosition = unit->cartPosition;
                      movement.reason = QStringLiteral("failed its examination (%1)").arg(fact.rule);
                      movement.by = who;
                      store::append(store, movement);
                    }
                    return fact;
                  });
}

fleet::Movement recordMovement(store::Store& store, const fleet::Movement& movement, const QString& by) {
  return withDeed(store, by.isEmpty() ? movement.by : by,
                  {"record movement", movement.serial, movement.toPlace}, [&](const QString& who) {
                    const std::optional<fleet::Unit> unit = store::loadUnit(store, movement.serial);
                    if (unit && unit->state == fleet::UnitState::writtenOff && movement.corrects.isNull()) {
                      throw Error(Trouble::notPossible, "unit \"" + movement.serial.toStdString() +
                                                            "\" is written off; correct that entry first");
                    }
                    fleet::Movement fact = movement;
                    fact.by = who;
                    return store::append(store, fact);
                  });
}

options::Choice chooseOption(store::Store& store, const options::Choice& choice, const QString& by) {
  return withDeed(store, by.isEmpty() ? choice.by : by,
                  {"choose option", choice.show,
                   QStringLiteral("hang \"%1\": option %2").arg(choice.hang, choice.option)},
                  [&](const QString& who) {
                    options::Choice fact = choice;
                    fact.by = who;
                    return store::append(store, fact);
                  });
}

void withdrawChoice(store::Store& store, const options::Choice& choice, const QString& reason,
                    const QString& by) {
  withDeed(store, by,
           {"withdraw choice", choice.show,
            QStringLiteral("hang \"%1\": option %2").arg(choice.hang, choice.option)},
           [&](const QString& who) { store::withdraw(store, choice, who, reason); });
}

} // namespace hangbook::actions
