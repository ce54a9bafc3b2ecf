// SPDX-License-Identifier: GPL-3.0-or-later
#include "fleet/due.h"

#include <algorithm>
#include <tuple>

#include <QSet>

namespace hangbook::fleet {

QDate addMonthsClamped(QDate date, int months) {
  return date.addMonths(months); // Qt clamps to the month's end
}

bool appliesTo(const ExaminationRule& rule, const Unit& unit) {
  return rule.kind == unit.kind && (rule.type.isEmpty() || rule.type == unit.type);
}

LastExaminations::LastExaminations(const std::vector<Examination>& examinations) {
  QSet<QUuid> corrected;
  for (const Examination& each : examinations) {
    if (!each.corrects.isNull()) {
      corrected.insert(each.corrects);
    }
  }
  for (const Examination& each : examinations) {
    if (!each.id.isNull() && corrected.contains(each.id)) {
      continue;
    }
    const Examination*& known = last_[{each.serial, each.rule}];
    if (known == nullptr ||
        std::tie(each.date, each.recordedAt) >= std::tie(known->date, known->recordedAt)) {
      known = &each;
    }
  }
}

const Examination* LastExaminations::of(const QString& serial, const QString& rule) const {
  return last_.value({serial, rule}, nullptr);
}

QDate standsUntil(const ExaminationRule& rule, const Examination* last) {
  if (last == nullptr || last->result == ExaminationResult::fail || rule.months <= 0) {
    return {};
  }
  return addMonthsClamped(last->date, rule.months);
}

QDate standsUntil(const Unit& unit, const std::vector<ExaminationRule>& rules, const LastExaminations& last,
                  bool* ruled) {
  QDate earliest;
  bool any = false;
  bool met = true;
  for (const ExaminationRule& rule : rules) {
    if (!appliesTo(rule, unit)) {
      continue;
    }
    const QDate until = standsUntil(rule, last.of(unit.serial, rule.name));
    met = met && until.isValid();
    earliest = !any || until < earliest ? until : earliest;
    any = true;
  }
  if (ruled != nullptr) {
    *ruled = any;
  }
  return any && met ? earliest : QDate();
}

std::vector<Due> dueWithin(const std::vector<Unit>& units, const std::vector<ExaminationRule>& rules,
                           const std::vector<Examination>& examinations, QDate asOf, int days) {
  const LastExaminations lasts(examinations);
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
      const Examination* last = lasts.of(unit.serial, rule.name);
      Due due{unit.serial, unit.kind, unit.type, rule.name, unit.place, {}, standsUntil(rule, last),
              false,       {}};
      if (last == nullptr) {
        due.note = QStringLiteral("no examination recorded");
      } else {
        due.last = last->date;
        if (last->result == ExaminationResult::fail) {
          due.note = QStringLiteral("last examination not passed");
        } else if (!due.due.isValid()) {
          due.note = QStringLiteral("the rule states no interval");
        }
      }
      due.overdue = !due.due.isValid() || due.due < asOf;
      if (due.overdue || due.due <= until) {
        found.push_back(due);
      }
    }
  }
  std::sort(found.begin(), found.end(), [](const Due& a, const Due& b) {
    // A null date stands before all others.
    return std::tuple(a.due.isValid(), a.due, a.serial, a.rule) <
           std::tuple(b.due.isValid(), b.due, b.serial, b.rule);
  });
  return found;
}

} // namespace hangbook::fleet
