// SPDX-License-Identifier: GPL-3.0-or-later
#include "fleet/due.h"

#include <algorithm>
#include <tuple>

namespace hangbook::fleet {

QDate addMonthsClamped(QDate date, int months) {
  return date.addMonths(months); // Qt clamps to the month's end
}

bool appliesTo(const ExaminationRule& rule, const Unit& unit) {
  return rule.kind == unit.kind && (rule.type.isEmpty() || rule.type == unit.type);
}

QDate standsUntil(const Unit& unit, const std::vector<ExaminationRule>& rules, const LastExaminations& last,
                  bool* ruled, const Happened& happened) {
  QDate earliest = noEnd;
  bool any = false;
  bool met = true;
  for (const ExaminationRule& rule : rules) {
    if (!appliesTo(rule, unit)) {
      continue;
    }
    any = true;
    const Standing standing = standingOf(rule, last.of(unit.serial, rule.name), happened.to(unit.serial));
    met = met && standing.met && standing.usesLeft.value_or(1) > 0;
    if (standing.until.isValid()) {
      earliest = std::min(earliest, standing.until);
    }
  }
  if (ruled != nullptr) {
    *ruled = any;
  }
  return any && met ? earliest : QDate();
}

std::vector<Due> dueWithin(const std::vector<Unit>& units, const std::vector<ExaminationRule>& rules,
                           const std::vector<Examination>& examinations, QDate asOf, int days,
                           const std::vector<Occurrence>& occurrences) {
  const LastExaminations lasts(examinations);
  const Happened happened(occurrences);
  const QDate until = asOf.addDays(days);
  std::vector<Due> found;
  for (const Unit& unit : units) {
    if (unit.state == UnitState::writtenOff) {
      continue;
    }
    for (const ExaminationRule& rule : rules) {
      if (!appliesTo(rule, unit)) {
        continue;
      }
      const Standing standing = standingOf(rule, lasts.of(unit.serial, rule.name), happened.to(unit.serial));
      Due due;
      due.serial = unit.serial;
      due.kind = unit.kind;
      due.type = unit.type;
      due.rule = rule.name;
      due.place = unit.place;
      due.last = standing.last;
      due.due = standing.until;
      due.note = standing.why;
      due.overdue = !standing.met || (due.due.isValid() && due.due < asOf);
      if (standing.met && standing.idleUntil.isValid() &&
          (!due.due.isValid() || standing.idleUntil < due.due)) {
        due.due = standing.idleUntil;
        due.idle = true;
        due.overdue = false;
        due.note = QStringLiteral("before it leaves after that day: it lies idle");
      }
      if (due.overdue || (due.due.isValid() && due.due <= until)) {
        found.push_back(due);
      }
    }
  }
  std::sort(found.begin(), found.end(), [](const Due& a, const Due& b) {
    // A null date stands before all others.
    const bool aKnown = a.due.isValid();
    const bool bKnown = b.due.isValid();
    return std::tie(aKnown, a.due, a.serial, a.rule) < std::tie(bKnown, b.due, b.serial, b.rule);
  });
  return found;
}

} // namespace hangbook::fleet
