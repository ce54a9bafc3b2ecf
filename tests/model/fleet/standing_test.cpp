// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/unit_test.hpp>

#include "fleet/due.h"

using namespace hangbook::fleet;

namespace {

const QDate examinedOn(2027, 1, 31);
const QDate lastDay(2027, 2, 28); // one month on, clamped

QDateTime noonOf(QDate date) {
  return {date, QTime(12, 0), Qt::UTC};
}

Examination passed(QDate date = examinedOn) {
  Examination fact;
  fact.serial = QStringLiteral("H1");
  fact.rule = QStringLiteral("r");
  fact.date = date;
  fact.recordedAt = noonOf(date);
  return fact;
}

Occurrence happened(OccurrenceKind kind, QDate date) {
  Occurrence fact;
  fact.serial = QStringLiteral("H1");
  fact.kind = kind;
  fact.date = date;
  fact.recordedAt = noonOf(date);
  fact.remark = QStringLiteral("dropped");
  return fact;
}

Occurrence outing(QDate date, int uses = 1) {
  Occurrence fact = happened(OccurrenceKind::use, date);
  fact.uses = uses;
  return fact;
}

Standing standing(const ExaminationRule& rule, const Examination* last,
                  const std::vector<Occurrence>& facts) {
  const Happened all(facts);
  return standingOf(rule, last, all.to(QStringLiteral("H1")));
}

ExaminationRule monthly() {
  ExaminationRule rule;
  rule.months = 1;
  return rule;
}

} // namespace

BOOST_AUTO_TEST_SUITE(standing_of_examinations)

BOOST_AUTO_TEST_CASE(a_show_needs_it_through_the_last_day_away_and_no_day_more) {
  const Examination last = passed();
  const Standing found = standing(monthly(), &last, {});
  BOOST_TEST((found.until == lastDay));
  BOOST_TEST(shortfall(found, examinedOn, lastDay).isEmpty());
  BOOST_TEST(!shortfall(found, examinedOn, lastDay.addDays(1)).isEmpty());
  BOOST_TEST(!shortfall(found, examinedOn, {}).isEmpty(), "days that nobody stated are no pass");
}

BOOST_AUTO_TEST_CASE(uses_run_out) {
  ExaminationRule rule;
  rule.uses = 2;
  const Examination last = passed();
  BOOST_TEST(!standing(rule, nullptr, {}).met, "never examined");
  const std::vector<Occurrence> one{outing(examinedOn.addDays(-3)), outing(examinedOn.addDays(3)),
                                    outing(examinedOn.addDays(4), 0)};
  BOOST_TEST(standing(rule, &last, one).usesLeft.value() == 1);
  BOOST_TEST(shortfall(standing(rule, &last, one), lastDay, lastDay).isEmpty());
  std::vector<Occurrence> two = one;
  two.push_back(outing(examinedOn.addDays(9)));
  BOOST_TEST(!standing(rule, &last, two).met);
}

BOOST_AUTO_TEST_CASE(hours_that_nobody_recorded_are_no_pass) {
  ExaminationRule rule;
  rule.hours = 10.0;
  const Examination last = passed();
  BOOST_TEST(standing(rule, &last, {}).met);
  std::vector<Occurrence> facts{outing(examinedOn.addDays(3))};
  BOOST_TEST(!standing(rule, &last, facts).met, "it was out, and nobody wrote the hours");
  facts.push_back(happened(OccurrenceKind::use, examinedOn.addDays(4)));
  facts.back().hours = 9.5;
  BOOST_TEST(standing(rule, &last, facts).met);
  BOOST_TEST(*standing(rule, &last, facts).hoursLeft == 0.5);
  facts.push_back(happened(OccurrenceKind::use, examinedOn.addDays(5)));
  facts.back().hours = 0.5;
  BOOST_TEST(!standing(rule, &last, facts).met, "exactly at the limit is used up");
}

BOOST_AUTO_TEST_CASE(idle_asks_before_it_leaves_again) {
  ExaminationRule rule;
  rule.idleMonths = 1;
  const Examination last = passed();
  const Standing idle = standing(rule, &last, {});
  BOOST_TEST(idle.met);
  BOOST_TEST((idle.idleUntil == lastDay));
  BOOST_TEST(shortfall(idle, lastDay, lastDay.addDays(40)).isEmpty(), "it leaves in time");
  BOOST_TEST(!shortfall(idle, lastDay.addDays(1), lastDay.addDays(1)).isEmpty());
  BOOST_TEST(!standing(rule, &last, {outing(lastDay)}).idleUntil.isValid(), "it is out: not idle");
  const Standing back = standing(rule, &last, {outing(lastDay), outing(QDate(2027, 3, 31), 0)});
  BOOST_TEST((back.idleUntil == QDate(2027, 4, 30)));
  BOOST_TEST(!standing(rule, nullptr, {}).met, "neither used nor examined: nothing is known");
}

BOOST_AUTO_TEST_CASE(what_happened_asks_until_it_is_examined) {
  ExaminationRule rule = monthly();
  rule.afterExceptional = true;
  const Examination last = passed();
  const auto drop = happened(OccurrenceKind::exceptional, examinedOn.addDays(1));
  BOOST_TEST(!standing(rule, &last, {drop}).met);
  const Examination again = passed(examinedOn.addDays(2));
  BOOST_TEST(standing(rule, &again, {drop}).met);
  BOOST_TEST(standing(rule, &last, {happened(OccurrenceKind::assembly, examinedOn.addDays(1))}).met,
             "this rule does not ask after an assembly");
  BOOST_TEST(!standing(rule, &last, {happened(OccurrenceKind::exceptional, examinedOn)}).met,
             "on the same day, recorded no earlier: it counts as after");

  ExaminationRule site;
  site.atNewSite = true;
  BOOST_TEST(standing(site, nullptr, {}).met, "asks for nothing until it is assembled");
  BOOST_TEST(!standing(site, nullptr, {happened(OccurrenceKind::assembly, lastDay)}).met);
}

BOOST_AUTO_TEST_CASE(a_corrected_occurrence_does_not_count) {
  ExaminationRule rule = monthly();
  rule.afterExceptional = true;
  const Examination last = passed();
  Occurrence drop = happened(OccurrenceKind::exceptional, lastDay);
  drop.id = QUuid::createUuid();
  Occurrence mistaken = happened(OccurrenceKind::use, lastDay);
  mistaken.corrects = drop.id;
  mistaken.uses = 0;
  BOOST_TEST(standing(rule, &last, {drop, mistaken}).met);
}

BOOST_AUTO_TEST_CASE(an_idle_unit_is_listed_as_due_but_not_as_overdue) {
  Unit unit;
  unit.serial = QStringLiteral("H1");
  unit.kind = UnitKind::hoist;
  ExaminationRule rule;
  rule.name = QStringLiteral("r");
  rule.kind = UnitKind::hoist;
  rule.idleMonths = 1;
  const auto due = dueWithin({unit}, {rule}, {passed()}, lastDay.addDays(30), 0);
  BOOST_REQUIRE(due.size() == 1U);
  BOOST_TEST(due[0].idle);
  BOOST_TEST(!due[0].overdue);
  BOOST_TEST((due[0].due == lastDay));
}

BOOST_AUTO_TEST_SUITE_END()
