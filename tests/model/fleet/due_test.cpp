// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/unit_test.hpp>

#include "fleet/due.h"

using namespace hangbook::fleet;

namespace {

struct Yard {
  std::vector<Unit> units;
  std::vector<ExaminationRule> rules;
  std::vector<Examination> done;

  void own(const char* serial, UnitKind kind = UnitKind::hoist, const char* type = "hoist") {
    Unit unit;
    unit.serial = QString::fromUtf8(serial);
    unit.kind = kind;
    unit.type = QString::fromUtf8(type);
    units.push_back(unit);
  }
  void rule(const char* name, int months, const char* type = "") {
    ExaminationRule rule;
    rule.name = QString::fromUtf8(name);
    rule.months = months;
    rule.type = QString::fromUtf8(type);
    rules.push_back(rule);
  }
  Examination& examined(const char* serial, const char* rule, QDate date) {
    Examination fact;
    fact.id = QUuid::createUuid();
    fact.serial = QString::fromUtf8(serial);
    fact.rule = QString::fromUtf8(rule);
    fact.date = date;
    done.push_back(fact);
    return done.back();
  }
  std::vector<Due> due(QDate asOf, int days) const { return dueWithin(units, rules, done, asOf, days); }
};

} // namespace

BOOST_AUTO_TEST_SUITE(due)

BOOST_AUTO_TEST_CASE(due_on_the_day_is_not_overdue_and_the_day_after_is) {
  Yard yard;
  yard.own("H1");
  yard.rule("half-yearly", 6);
  yard.examined("H1", "half-yearly", QDate(2026, 8, 31));
  const QDate last(2027, 2, 28); // clamped
  BOOST_TEST(yard.due(last.addDays(-91), 90).empty());
  BOOST_REQUIRE(yard.due(last.addDays(-90), 90).size() == 1U);
  BOOST_TEST((yard.due(last, 0).front().due == last));
  BOOST_TEST(!yard.due(last, 0).front().overdue);
  BOOST_TEST(yard.due(last.addDays(1), 0).front().overdue);
}

BOOST_AUTO_TEST_CASE(never_examined_and_failed_come_first) {
  Yard yard;
  yard.own("A1");
  yard.own("B1");
  yard.own("C1");
  yard.rule("yearly", 12);
  yard.examined("A1", "yearly", QDate(2025, 1, 1));
  yard.examined("C1", "yearly", QDate(2026, 12, 1)).result = ExaminationResult::fail;
  const auto found = yard.due(QDate(2027, 1, 1), 30);
  BOOST_REQUIRE(found.size() == 3U);
  BOOST_TEST((found[0].serial == "B1"));
  BOOST_TEST((found[0].note == "no examination recorded"));
  BOOST_TEST(found[0].overdue);
  BOOST_TEST(!found[0].last.isValid());
  BOOST_TEST((found[1].serial == "C1"));
  BOOST_TEST((found[1].note == "last examination not passed"));
  BOOST_TEST((found[2].serial == "A1"));
}

BOOST_AUTO_TEST_CASE(a_rule_is_for_its_kind_and_type_only) {
  Yard yard;
  yard.own("H1");
  yard.own("H2", UnitKind::hoist, "other hoist");
  yard.own("B1", UnitKind::bar, "bar");
  yard.rule("yearly", 12, "hoist");
  const auto found = yard.due(QDate(2027, 1, 1), 30);
  BOOST_REQUIRE(found.size() == 1U);
  BOOST_TEST((found[0].serial == "H1"));
}

BOOST_AUTO_TEST_CASE(a_corrected_fact_does_not_count) {
  Yard yard;
  yard.own("H1");
  yard.rule("yearly", 12);
  const QUuid wrong = yard.examined("H1", "yearly", QDate(2027, 3, 1)).id;
  yard.examined("H1", "yearly", QDate(2026, 3, 1)).corrects = wrong;
  BOOST_TEST((yard.due(QDate(2027, 3, 15), 0).front().due == QDate(2027, 3, 1)));
}

BOOST_AUTO_TEST_CASE(the_earliest_of_several_rules_decides_and_all_must_be_met) {
  Yard yard;
  yard.own("H1");
  yard.rule("yearly", 12);
  yard.rule("half-yearly", 6);
  yard.examined("H1", "yearly", QDate(2027, 1, 31));
  bool ruled = false;
  BOOST_TEST(!standsUntil(yard.units[0], yard.rules, LastExaminations(yard.done), &ruled).isValid());
  BOOST_TEST(ruled);
  yard.examined("H1", "half-yearly", QDate(2026, 12, 31));
  BOOST_TEST((standsUntil(yard.units[0], yard.rules, LastExaminations(yard.done)) == QDate(2027, 6, 30)));
  standsUntil(yard.units[0], {}, LastExaminations(yard.done), &ruled);
  BOOST_TEST(!ruled);
}

BOOST_AUTO_TEST_CASE(written_off_units_are_left_out) {
  Yard yard;
  yard.own("H1");
  yard.units[0].state = UnitState::writtenOff;
  yard.rule("yearly", 12);
  BOOST_TEST(yard.due(QDate(2027, 1, 1), 30).empty());
}

BOOST_AUTO_TEST_SUITE_END()
