// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "kept/unlike_parts.h"

namespace hangbook::testing {
namespace {

using fleet::Unit;
using fleet::UnitKind;
using fleet::UnitState;

void units(options::Snapshot& made, Chance& by) {
  // Fewer than the fixture has, so that some are short.
  std::erase_if(made.units, [&](const Unit&) { return by.lacks(3); });
  for (Unit& unit : made.units) {
    if (unit.kind == UnitKind::cabinet && by.oneIn(4)) {
      const auto* type = catalogue::find(made.catalogue.cabinets, unit.type);
      unit.weighed = kilograms(inKilograms(type->mass.value_or(kilograms(50))) * by.between(0.97, 1.04));
      unit.weighedOn = QDate(2026, 3 + by.oneOf(8), 7);
      unit.weighedBy = by.oneIn(6) ? QString() : QStringLiteral("Runa Vell");
    }
    if (by.oneIn(by.allKnown ? 40 : 6)) {
      unit.state = static_cast<UnitState>(by.oneOf(5));
    }
    if (by.oneIn(by.allKnown ? 30 : 8)) {
      unit.owner = QStringLiteral("Tern Hire");
      unit.hiredUntil = by.oneIn(3) ? QDate() : QDate(2027, 4, 1 + by.oneOf(8));
    }
  }
  const char* counted[] = {"shackle", "sling", "steel"};
  for (const char* type : counted) {
    Unit batch;
    batch.serial = QStringLiteral("batch %1").arg(QLatin1String(type));
    batch.kind = UnitKind::hardware;
    batch.type = QLatin1String(type);
    batch.pieces = 2 + by.oneOf(12);
    made.units.push_back(batch);
  }
}

void examinations(options::Snapshot& made, Chance& by) {
  std::erase_if(made.examinationRules, [&](const fleet::ExaminationRule&) { return by.lacks(12); });
  for (fleet::ExaminationRule& rule : made.examinationRules) {
    rule.months = by.allKnown ? 9 + by.oneOf(3) : 5 + by.oneOf(8);
    rule.afterExceptional = by.oneIn(2);
  }
  for (fleet::Examination& done : made.examinations) {
    done.date = QDate(2026, 8 + by.oneOf(4), 1 + by.oneOf(28));
    if (by.lacks(15)) {
      done.result = fleet::ExaminationResult::fail;
    }
  }
  for (const Unit& unit : made.units) {
    if (by.oneIn(by.allKnown ? 60 : 15)) {
      fleet::Occurrence harm;
      harm.serial = unit.serial;
      harm.kind = fleet::OccurrenceKind::exceptional;
      harm.date = QDate(2026, 9 + by.oneOf(3), 5);
      made.occurrences.push_back(harm);
    }
  }
}

options::Choice choiceOf(const options::Snapshot& made, const char* tour, const char* show, const char* hang,
                         Chance& by) {
  options::Choice choice;
  choice.revision = 1 + by.oneOf(3);
  choice.tour = QLatin1String(tour);
  choice.show = QLatin1String(show);
  choice.hang = QLatin1String(hang);
  choice.key.hang = choice.hang;
  for (int i = 2 + by.oneOf(3); i > 0; --i) {
    choice.key.stack.append(made.catalogue.cabinets[static_cast<std::size_t>(by.oneOf(4))].name);
  }
  choice.key.table = made.catalogue.tables.front().name;
  choice.key.bar = made.catalogue.bars.front().name;
  choice.key.hoist = made.catalogue.hoists.front().name;
  choice.key.points = {QStringLiteral("R1"), QStringLiteral("R2")};
  choice.option = options::idOf(choice.key);
  choice.awayFrom = QDate(2027, 3, 28 + by.oneOf(4));
  choice.awayTo = QDate(2027, 4, 1 + by.oneOf(8));
  if (by.oneIn(2)) {
    choice.setting.mark = 4 + by.oneOf(12);
  }
  for (const char* point : {"R1", "R2"}) {
    choice.points.push_back(
        {QLatin1String(point), by.between(1, 4), by.between(4, 6), {}, {}, by.between(0, 0.3), {}, {}});
  }
  return choice;
}

} // namespace

void unlikeFleet(options::Snapshot& made, Chance& by) {
  units(made, by);
  examinations(made, by);
  if (by.oneIn(2)) {
    made.choices.push_back(choiceOf(made, "Lanternfish Parade", "Harbour night", "right", by));
  }
  for (int i = by.oneOf(by.allKnown ? 2 : 4); i > 0; --i) {
    made.otherChoices.push_back(
        choiceOf(made, "Other Parade", i == 1 ? "one" : "two", i == 3 ? "right" : "left", by));
  }
  if (by.lacks(10)) {
    made.show.awayTo = {};
  }
  made.show.hangs[0].rigging.append(QStringLiteral("shackle"));
}

} // namespace hangbook::testing
