// SPDX-License-Identifier: GPL-3.0-or-later
#include "fleet/standing.h"

#include <algorithm>
#include <tuple>

#include <QSet>

#include "fleet/due.h"

namespace hangbook::fleet {
namespace {

/// The facts that no other fact corrects.
template <class Fact, class Take>
void takeStanding(const std::vector<Fact>& facts, Take take) {
  QSet<QUuid> corrected;
  for (const Fact& each : facts) {
    if (!each.corrects.isNull()) {
      corrected.insert(each.corrects);
    }
  }
  for (const Fact& each : facts) {
    if (each.id.isNull() || !corrected.contains(each.id)) {
      take(each);
    }
  }
}

/// What happened on the day of the examination happened after it, unless it was recorded before.
bool isSince(const Occurrence& each, const Examination* last) {
  return last == nullptr || each.date > last->date ||
         (each.date == last->date && each.recordedAt >= last->recordedAt);
}

QString day(QDate date) {
  return date.toString(Qt::ISODate);
}

/// Uses and hours since the examination.
void countUse(const ExaminationRule& rule, const Examination& last,
              const std::vector<const Occurrence*>& happened, Standing& standing) {
  int uses = 0;
  double hours = 0.0;
  QDate hoursUpTo;
  QDate lastOuting;
  for (const Occurrence* each : happened) {
    if (each->kind != OccurrenceKind::use || !isSince(*each, &last)) {
      continue;
    }
    uses += each->uses.value_or(each->hours ? 0 : 1);
    if (each->hours) {
      hours += *each->hours;
      hoursUpTo = std::max(hoursUpTo, each->date);
    } else if (each->uses.value_or(1) > 0) {
      lastOuting = std::max(lastOuting, each->date);
    }
  }
  if (rule.uses) {
    standing.usesLeft = *rule.uses - uses;
    if (uses >= *rule.uses) {
      standing.met = false;
      standing.why = QStringLiteral("used %1 times since, %2 are allowed").arg(uses).arg(*rule.uses);
    }
  }
  if (rule.hours) {
    standing.hoursLeft = *rule.hours - hours;
    if (hours >= *rule.hours) {
      standing.met = false;
      standing.why = QStringLiteral("used %1 h since, %2 h are allowed").arg(hours).arg(*rule.hours);
    } else if (lastOuting.isValid() && (!hoursUpTo.isValid() || hoursUpTo < lastOuting)) {
      standing.met = false;
      standing.why = QStringLiteral("nobody recorded the hours since it went out on %1").arg(day(lastOuting));
    }
  }
}

void askOccasions(const ExaminationRule& rule, const Examination* last,
                  const std::vector<const Occurrence*>& happened, Standing& standing) {
  for (const Occurrence* each : happened) {
    const bool asks = (each->kind == OccurrenceKind::exceptional && rule.afterExceptional) ||
                      (each->kind == OccurrenceKind::assembly && rule.atNewSite);
    if (asks && isSince(*each, last)) {
      standing.met = false;
      standing.why = each->kind == OccurrenceKind::assembly
                         ? QStringLiteral("not examined since it was assembled at \"%1\" on %2")
                               .arg(each->place, day(each->date))
                         : QStringLiteral("not examined since %1 (%2)").arg(day(each->date), each->remark);
    }
  }
}

void askIdle(const ExaminationRule& rule, const Examination* last,
             const std::vector<const Occurrence*>& happened, Standing& standing) {
  if (!rule.idleMonths) {
    return;
  }
  QDate latest = last != nullptr ? last->date : QDate();
  bool isOut = false;
  std::vector<const Occurrence*> uses;
  std::ranges::copy_if(happened, std::back_inserter(uses),
                       [](const Occurrence* each) { return each->kind == OccurrenceKind::use; });
  std::ranges::stable_sort(uses, [](const Occurrence* a, const Occurrence* b) {
    return std::tie(a->date, a->recordedAt) < std::tie(b->date, b->recordedAt);
  });
  for (const Occurrence* each : uses) {
    latest = !latest.isValid() ? each->date : std::max(latest, each->date);
    isOut = each->uses.value_or(0) > 0 && !each->hours;
  }
  if (!latest.isValid()) {
    standing.met = false;
    standing.why = QStringLiteral("neither a use nor an examination is recorded");
  } else if (!isOut) {
    standing.idleUntil = addMonthsClamped(latest, *rule.idleMonths);
  }
}

} // namespace

LastExaminations::LastExaminations(const std::vector<Examination>& examinations) {
  last_.reserve(static_cast<qsizetype>(examinations.size()));
  takeStanding(examinations, [&](const Examination& each) {
    const Examination*& known = last_[{each.serial, each.rule}];
    if (known == nullptr ||
        std::tie(each.date, each.recordedAt) >= std::tie(known->date, known->recordedAt)) {
      known = &each;
    }
  });
}

const Examination* LastExaminations::of(const QString& serial, const QString& rule) const {
  return last_.value({serial, rule}, nullptr);
}

Happened::Happened(const std::vector<Occurrence>& occurrences) {
  takeStanding(occurrences, [&](const Occurrence& each) { of_[each.serial].push_back(&each); });
}

const std::vector<const Occurrence*>& Happened::to(const QString& serial) const {
  static const std::vector<const Occurrence*> nothing;
  const auto found = of_.constFind(serial);
  return found == of_.constEnd() ? nothing : *found;
}

Standing standingOf(const ExaminationRule& rule, const Examination* last,
                    const std::vector<const Occurrence*>& happened) {
  Standing standing;
  const bool periodic = rule.months || rule.uses || rule.hours;
  if (last != nullptr) {
    standing.last = last->date;
  }
  if (last != nullptr && last->result == ExaminationResult::fail) {
    standing.why = QStringLiteral("last examination not passed");
    return standing;
  }
  if (last == nullptr && periodic) {
    standing.why = QStringLiteral("no examination recorded");
    return standing;
  }
  standing.met = true;
  if (rule.months) {
    standing.until = addMonthsClamped(last->date, *rule.months);
  }
  if (last != nullptr) {
    countUse(rule, *last, happened, standing);
  }
  askOccasions(rule, last, happened, standing);
  askIdle(rule, last, happened, standing);
  if (!standing.met) {
    standing.until = {};
  }
  return standing;
}

QString shortfall(const Standing& standing, QDate from, QDate to) {
  if (!standing.met) {
    return standing.why;
  }
  if (standing.until.isValid() && !to.isValid()) {
    return QStringLiteral("the last day away is not stated");
  }
  if (standing.until.isValid() && standing.until < to) {
    return QStringLiteral("stands until %1, the last day away is %2").arg(day(standing.until), day(to));
  }
  if (standing.usesLeft && *standing.usesLeft < 1) {
    return QStringLiteral("no use is left until it is examined");
  }
  if (standing.idleUntil.isValid() && (!from.isValid() || standing.idleUntil < from)) {
    return QStringLiteral("it lay idle too long: to be examined before it leaves after %1")
        .arg(day(standing.idleUntil));
  }
  return {};
}

} // namespace hangbook::fleet
