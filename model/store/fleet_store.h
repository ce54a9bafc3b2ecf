// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "fleet/unit.h"
#include "store/store.h"

namespace hangbook::store {

/// In order of serial.
std::vector<fleet::Unit> loadUnits(Store& store);
/// What decides the days on which examinations are due, and no more: of the units that some rule speaks of
/// (fleet::appliesTo) serial, kind, type, place and state; of the newest examination of each of these units
/// and rule that no later one corrects its serial, rule, day and result. In no order: to sort them would take
/// as long as to read them.
struct UnderRules {
  std::vector<fleet::Unit> units;
  std::vector<fleet::Examination> examinations;
};
UnderRules loadUnderRules(Store& store);
std::optional<fleet::Unit> loadUnit(Store& store, const QString& serial);
/// In order of name.
std::vector<fleet::ExaminationRule> loadExaminationRules(Store& store);
/// All facts, corrected ones too, of one unit or of all, oldest first.
std::vector<fleet::Examination> loadExaminations(Store& store, const QString& serial = {});
std::vector<fleet::Movement> loadMovements(Store& store, const QString& serial = {});
/// The newest examination of each unit and rule that no later one corrects.
std::vector<fleet::Examination> loadNewestExaminations(Store& store);

/// As for makers' data (catalogue_store.h). The unit's type must be known. Where it is follows from its
/// movements: a new unit is entered with one, and where place, state or cart differ from the stored ones, one
/// is appended.
fleet::Unit save(Store& store, const fleet::Unit& unit, const QString& by, const QString& reason);
fleet::ExaminationRule save(Store& store, const fleet::ExaminationRule& rule);
void remove(Store& store, const fleet::ExaminationRule& rule);

/// Appends a fact, with an identifier and the time of recording where it has none, and answers it as stored.
/// Throws Error where the unit, the rule or the corrected fact is not known, or where nobody recorded it. A
/// movement sets where its unit is, and counts up the unit's revision.
fleet::Examination append(Store& store, const fleet::Examination& examination);
fleet::Movement append(Store& store, const fleet::Movement& movement);

/// Units whose place, state or cart is not what their movements say, in words. Empty = none.
QStringList unitsAstray(Store& store);

} // namespace hangbook::store
