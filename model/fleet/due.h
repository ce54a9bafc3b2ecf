// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QDate>

#include "fleet/standing.h"
#include "fleet/unit.h"

/// When a thing must be examined again.
namespace hangbook::fleet {

/// The same day of the month so many months on, or that month's last day where it is shorter (31 August + 6
/// months = 28 or 29 February): "at least every 6 months" must not be overshot.
QDate addMonthsClamped(QDate date, int months);

/// Whether a rule is for this unit.
bool appliesTo(const ExaminationRule& rule, const Unit& unit);

/// The last day on which every rule that applies is met; null where one is not met at all, `noEnd` where none
/// of them knows a calendar. `ruled` (if given) tells whether any rule applies: with none the answer is null
/// too.
QDate standsUntil(const Unit& unit, const std::vector<ExaminationRule>& rules, const LastExaminations& last,
                  bool* ruled = nullptr, const Happened& happened = {});

struct Due {
  QString serial;
  UnitKind kind = UnitKind::cabinet;
  QString type;
  QString rule;
  QString place;
  QDate last; ///< null: no examination is recorded
  QDate due;  ///< the last day on which the rule is met; null: it is not met
  bool overdue = false;
  QString note;      ///< "no examination recorded", "last one failed"; empty where there is a date
  bool idle = false; ///< due only before it leaves again: `due` is the last day on which it may leave without
};

/// What falls due up to `asOf` + `days`, the most pressing first; what has no examination, or failed its last
/// one, comes first of all as overdue. Written-off units are left out. A unit due on `asOf` itself is not yet
/// overdue.
std::vector<Due> dueWithin(const std::vector<Unit>& units, const std::vector<ExaminationRule>& rules,
                           const std::vector<Examination>& examinations, QDate asOf, int days,
                           const std::vector<Occurrence>& occurrences = {});

} // namespace hangbook::fleet
