// SPDX-License-Identifier: GPL-3.0-or-later
// What there is on a day, to the day: who is away, what is due, what went back to its owner, and what is
// short.
#include <boost/test/unit_test.hpp>

#include <algorithm>

#include "options/stock_day.h"
#include "print.h"

using namespace hangbook;
using fleet::Unit;
using fleet::UnitKind;
using fleet::UnitState;
using options::Demand;
using options::Shortage;
using options::Stock;
using options::TypeOnDay;

namespace {

const QString bass = QStringLiteral("bass");

Unit unit(const char* serial, UnitState state = UnitState::ready) {
  Unit made;
  made.serial = QLatin1String(serial);
  made.kind = UnitKind::cabinet;
  made.type = bass;
  made.state = state;
  return made;
}

/// Examined every twelve months, all on 2026-03-10: it stands until 2027-03-10.
Stock stockOf(std::vector<Unit> units) {
  Stock stock;
  stock.units = std::move(units);
  fleet::ExaminationRule rule;
  rule.name = QStringLiteral("yearly");
  rule.kind = UnitKind::cabinet;
  rule.months = 12;
  stock.rules = {rule};
  for (const Unit& each : stock.units) {
    fleet::Examination done;
    done.serial = each.serial;
    done.rule = rule.name;
    done.date = QDate(2026, 3, 10);
    stock.examinations.push_back(done);
  }
  return stock;
}

Demand wants(const char* show, QDate from, QDate to, int number) {
  return {QStringLiteral("tour"), QLatin1String(show), from, to, {{{UnitKind::cabinet, bass}, number}}, {}};
}

TypeOnDay on(QDate day, const Stock& stock, const std::vector<Demand>& demands = {}) {
  const auto all = options::stockOn(day, stock, demands);
  BOOST_REQUIRE(all.size() == 1U);
  return all.front();
}

QDate march(int day) {
  return {2027, 3, day};
}

} // namespace

BOOST_AUTO_TEST_SUITE(stock_day)

BOOST_AUTO_TEST_CASE(each_state_counts_once) {
  Unit batch = unit("batch");
  batch.pieces = 5;
  Unit hired = unit("hired");
  hired.owner = QStringLiteral("Tern Hire");
  const TypeOnDay day =
      on(march(1), stockOf({unit("a"), unit("b", UnitState::away), unit("c", UnitState::quarantined),
                            unit("d", UnitState::inRepair), unit("e", UnitState::writtenOff), batch, hired}));
  BOOST_TEST(day.owned == 9); // a to d and five pieces; what is written off is no more
  BOOST_TEST(day.hired == 1);
  BOOST_TEST(day.away == 1);
  BOOST_TEST(day.quarantined == 2);
  BOOST_TEST(day.due == 0);
  BOOST_TEST(day.unruled == 0);
  BOOST_TEST(day.fit() == 8);
  BOOST_TEST(day.free() == 8);
}

BOOST_AUTO_TEST_CASE(an_examination_stands_to_its_last_day) {
  const Stock stock = stockOf({unit("a"), unit("b", UnitState::quarantined)});
  BOOST_TEST(on(march(10), stock).due == 0);
  BOOST_TEST(on(march(10), stock).fit() == 1);
  BOOST_TEST(on(march(11), stock).due == 1); // what is kept back is not due as well
  BOOST_TEST(on(march(11), stock).quarantined == 1);
  BOOST_TEST(on(march(11), stock).fit() == 0);
}

BOOST_AUTO_TEST_CASE(never_examined_is_due_and_without_a_rule_is_told) {
  Stock stock = stockOf({unit("a")});
  stock.examinations.clear();
  BOOST_TEST(on(march(1), stock).due == 1);
  stock.rules.clear();
  BOOST_TEST(on(march(1), stock).due == 0);
  BOOST_TEST(on(march(1), stock).unruled == 1);
  BOOST_TEST(on(march(1), stock).fit() == 1);
}

BOOST_AUTO_TEST_CASE(what_is_hired_is_there_to_its_last_day) {
  Unit hired = unit("a");
  hired.owner = QStringLiteral("Tern Hire");
  hired.hiredUntil = march(5);
  BOOST_TEST(on(march(5), stockOf({hired})).hired == 1);
  BOOST_TEST(options::stockOn(march(6), stockOf({hired}), {}).empty());
  hired.owner.clear(); // our own does not go back, whatever else is written
  BOOST_TEST(on(march(6), stockOf({hired})).owned == 1);
}

BOOST_AUTO_TEST_CASE(a_show_takes_what_it_wants_from_its_first_day_away_to_its_last) {
  const Stock stock = stockOf({unit("a"), unit("b"), unit("c")});
  const std::vector<Demand> demands{wants("one", march(2), march(4), 2), wants("two", {}, {}, 1)};
  const int wanted[] = {1, 3, 3, 3, 1}; // from the 1st on; who states no days is away on all
  std::vector<QDate> days;
  for (int i = 0; i < 5; ++i) {
    days.push_back(march(1 + i));
    BOOST_TEST(on(march(1 + i), stock, demands).wanted == wanted[i]);
  }
  const auto over = options::typeOverDays(UnitKind::cabinet, bass, days, stock, demands);
  BOOST_REQUIRE(over.size() == days.size());
  for (std::size_t i = 0; i < over.size(); ++i) {
    BOOST_TEST((over[i].type == bass));
    BOOST_TEST((over[i].kind == UnitKind::cabinet));
    BOOST_TEST(over[i].wanted == wanted[i]);
    BOOST_TEST(over[i].free() == 3 - wanted[i]);
    BOOST_TEST(over[i].takers.size() == (wanted[i] == 1 ? 1U : 2U));
  }
  BOOST_TEST(over[1].takers[0].number == 2);
  BOOST_TEST((over[1].takers[0].show == QStringLiteral("one")));
  for (const auto& [kind, type] :
       {std::pair{UnitKind::bar, bass}, {UnitKind::cabinet, QStringLiteral("upper")}}) {
    const auto none = options::typeOverDays(kind, type, {march(2)}, stock, demands);
    BOOST_REQUIRE(none.size() == 1U);
    BOOST_TEST((none[0].type == type));
    BOOST_TEST((none[0].kind == kind));
    BOOST_TEST(none[0].owned == 0);
    BOOST_TEST(none[0].wanted == 0);
  }
}

BOOST_AUTO_TEST_CASE(half_stated_days_are_open_at_that_end) {
  const Stock stock = stockOf({unit("a")});
  const std::vector<Demand> from{wants("from", march(3), {}, 1)};
  BOOST_TEST(on(march(2), stock, from).wanted == 0);
  BOOST_TEST(on(march(3), stock, from).wanted == 1);
  BOOST_TEST(on(march(31), stock, from).wanted == 1);
  const std::vector<Demand> to{wants("to", {}, march(3), 1)};
  BOOST_TEST(on(march(1), stock, to).wanted == 1);
  BOOST_TEST(on(march(3), stock, to).wanted == 1);
  BOOST_TEST(on(march(4), stock, to).wanted == 0);
}

/// A show of which a day is not stated takes gear, and is itself not judged: when it would be short is not
/// known.
BOOST_AUTO_TEST_CASE(only_a_show_with_both_its_days_is_told_to_be_short) {
  const Stock stock = stockOf({unit("a")});
  const auto shortWith = [&](QDate from, QDate to) {
    return options::shortagesOf(stock, {wants("one", from, to, 3)}).size();
  };
  BOOST_TEST(shortWith(march(3), march(5)) == 1U);
  BOOST_TEST(shortWith(march(3), march(3)) == 1U);
  BOOST_TEST(shortWith(march(3), {}) == 0U);
  BOOST_TEST(shortWith({}, march(5)) == 0U);
  BOOST_TEST(shortWith({}, {}) == 0U);
  BOOST_TEST(shortWith(march(5), march(3)) == 0U);
}

/// Another show being short on the same days does not make it so.
BOOST_AUTO_TEST_CASE(without_both_days_in_their_order_not_beside_a_short_one_either) {
  const Stock stock = stockOf({unit("a")});
  const auto told = [&](QDate from, QDate to) {
    const auto all =
        options::shortagesOf(stock, {wants("one", from, to, 1), wants("short", march(2), march(6), 3)});
    return std::ranges::count(all, QStringLiteral("one"), &Shortage::show);
  };
  BOOST_TEST(told(march(3), march(5)) == 1);
  BOOST_TEST(told(march(3), {}) == 0);
  BOOST_TEST(told({}, march(5)) == 0);
  BOOST_TEST(told({}, {}) == 0);
  BOOST_TEST(told(march(5), march(3)) == 0);
}

BOOST_AUTO_TEST_CASE(what_is_short_names_its_worst_day_and_what_would_help) {
  // Six of which one is kept back and one more falls due after the 10th.
  Stock stock = stockOf({unit("a"), unit("b"), unit("c"), unit("d", UnitState::inRepair)});
  stock.examinations[0].date = QDate(2026, 6, 1);
  stock.examinations[1].date = QDate(2026, 6, 1);
  const auto all = options::shortagesOf(stock, {wants("one", march(9), march(12), 6)});
  BOOST_REQUIRE(all.size() == 1U);
  BOOST_TEST((all[0].day == march(11)));
  BOOST_TEST(all[0].lacking == 4); // six wanted, two fit
  BOOST_TEST(all[0].examine == 1);
  BOOST_TEST(all[0].release == 1);
  BOOST_TEST(all[0].hire == 2);
  // Up to the day before it falls due three are fit.
  const auto before = options::shortagesOf(stock, {wants("one", march(9), march(10), 6)});
  BOOST_REQUIRE(before.size() == 1U);
  BOOST_TEST((before[0].day == march(9)));
  BOOST_TEST(before[0].lacking == 3);
  BOOST_TEST(before[0].examine == 0);
  BOOST_TEST(before[0].release == 1);
  BOOST_TEST(before[0].hire == 2);
}

BOOST_AUTO_TEST_CASE(shows_that_overlap_by_a_day_are_short_together) {
  const Stock stock = stockOf({unit("a"), unit("b")});
  const auto shortages = [&](int first, int last) {
    return options::shortagesOf(
        stock, {wants("one", march(1), march(4), 2), wants("two", march(first), march(last), 1)});
  };
  BOOST_TEST(shortages(5, 6).empty());
  const auto meet = shortages(4, 6);
  BOOST_REQUIRE(meet.size() == 2U);
  for (const Shortage& each : meet) {
    BOOST_TEST((each.day == march(4)));
    BOOST_TEST(each.lacking == 1);
    BOOST_TEST(each.hire == 1);
  }
  BOOST_TEST((meet[0].show == QStringLiteral("one")));
  BOOST_TEST((meet[1].show == QStringLiteral("two")));
  BOOST_TEST(shortages(6, 4).empty()); // days the wrong way round say nothing
  BOOST_TEST(shortages(1, 1).size() == 2U);
}

BOOST_AUTO_TEST_CASE(a_hire_that_ends_during_a_show_is_short_from_the_day_after) {
  Unit hired = unit("a");
  hired.owner = QStringLiteral("Tern Hire");
  hired.hiredUntil = march(3);
  const auto all = options::shortagesOf(stockOf({hired, unit("b")}), {wants("one", march(1), march(6), 2)});
  BOOST_REQUIRE(all.size() == 1U);
  BOOST_TEST((all[0].day == march(4)));
  BOOST_TEST(all[0].lacking == 1);
  BOOST_TEST(
      options::shortagesOf(stockOf({hired, unit("b")}), {wants("one", march(1), march(3), 2)}).empty());
}

/// One stands all along, beside one of which the hire ends before a show and one of which it ends after: what
/// other shows lack on the days after that is none of its own.
BOOST_AUTO_TEST_CASE(what_ends_outside_a_shows_days_is_no_shortage_of_it) {
  Stock stock = stockOf({unit("stays"), unit("early"), unit("late")});
  stock.rules.clear();
  for (std::size_t i = 1; i < 3; ++i) {
    stock.units[i].owner = QStringLiteral("Tern Hire");
    stock.units[i].hiredUntil = i == 1 ? march(2) : march(14);
  }
  const std::vector<Shortage> lacks = options::shortagesOf(stock, {wants("before", march(1), march(5), 3),
                                                                   wants("between", march(10), march(12), 2),
                                                                   wants("after", march(14), march(20), 2)});
  BOOST_TEST_REQUIRE(lacks.size() == 2U);
  BOOST_TEST((lacks[0].show == QStringLiteral("before")));
  BOOST_TEST((lacks[0].day == march(3)));
  BOOST_TEST((lacks[1].show == QStringLiteral("after")));
  BOOST_TEST((lacks[1].day == march(15)));
}

BOOST_AUTO_TEST_SUITE_END()
