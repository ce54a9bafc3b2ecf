// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/unit_test.hpp>

#include "calendar/where_best.h"

using namespace hangbook;
using namespace hangbook::calendar;

namespace {

const QDate today(2027, 3, 1);

Show show(const char* name, int awayFrom, int from, int to, int awayTo) {
  Show made;
  made.name = QString::fromLatin1(name);
  made.venue = made.name + QStringLiteral(" hall");
  made.awayFrom = today.addDays(awayFrom);
  made.from = today.addDays(from);
  made.to = today.addDays(to);
  made.awayTo = today.addDays(awayTo);
  return made;
}

fleet::Due due(int day, const char* serial = "H1") {
  fleet::Due made;
  made.serial = QString::fromLatin1(serial);
  made.place = QStringLiteral("truck 1");
  made.due = today.addDays(day);
  made.overdue = day < 0;
  return made;
}

Planned one(int day, const std::vector<Show>& route) {
  return planned({due(day)}, route, today).front();
}

/// Home to day 4; away 5 to 9; home 10 to 14; away 15 to 24 without a day at home between two shows.
const std::vector<Show> route{show("first", 5, 6, 8, 9), show("second", 15, 16, 18, 19),
                              show("third", 20, 21, 23, 24)};

} // namespace

BOOST_AUTO_TEST_SUITE(where_best)

BOOST_AUTO_TEST_CASE(what_falls_due_while_away_is_done_ahead_in_the_last_gap_before) {
  const Planned plan = one(7, route);
  BOOST_TEST((plan.slot == Slot{QStringLiteral("warehouse"), today, today.addDays(4), true}));
  BOOST_TEST(plan.ahead);
  const Planned later = one(22, route); // the two shows are one absence
  BOOST_TEST((later.slot == Slot{QStringLiteral("warehouse"), today.addDays(10), today.addDays(14), true}));
  BOOST_TEST(later.ahead);
}

BOOST_AUTO_TEST_CASE(what_falls_due_at_home_is_done_there_by_its_day) {
  const Planned plan = one(12, route);
  BOOST_TEST((plan.slot == Slot{QStringLiteral("warehouse"), today.addDays(10), today.addDays(12), true}));
  BOOST_TEST(!plan.ahead);
  const Planned after = one(60, route);
  BOOST_TEST((after.slot == Slot{QStringLiteral("warehouse"), today.addDays(25), today.addDays(60), true}));
}

BOOST_AUTO_TEST_CASE(the_edges_of_a_gap_belong_to_it) {
  BOOST_TEST((one(4, route).slot.to == today.addDays(4)));
  BOOST_TEST(!one(4, route).ahead);
  BOOST_TEST(one(5, route).ahead, "the first day away is a day away");
  BOOST_TEST(one(9, route).ahead, "the last one too");
  BOOST_TEST(
      (one(10, route).slot == Slot{QStringLiteral("warehouse"), today.addDays(10), today.addDays(10), true}));
}

BOOST_AUTO_TEST_CASE(away_already_and_no_gap_left_it_is_the_last_stop_before) {
  const std::vector<Show> out{show("now", -3, -2, 0, 1), show("next", 2, 3, 4, 9)};
  BOOST_TEST(
      (one(7, out).slot == Slot{QStringLiteral("next hall"), today.addDays(3), today.addDays(4), false}));
  BOOST_TEST(
      (one(3, out).slot == Slot{QStringLiteral("next hall"), today.addDays(3), today.addDays(3), false}));
  BOOST_TEST((one(2, out).slot == Slot{QStringLiteral("now hall"), today, today, false}));
}

BOOST_AUTO_TEST_CASE(what_is_overdue_is_done_today_where_it_is) {
  const Planned plan = one(-1, route);
  BOOST_TEST((plan.slot == Slot{QStringLiteral("truck 1"), today, today, false}));
  fleet::Due never = due(0);
  never.due = {};
  never.overdue = true;
  BOOST_TEST((planned({never}, route, today).front().slot.to == today));
}

BOOST_AUTO_TEST_CASE(visits_come_in_order_and_hold_every_unit) {
  const auto all = planned({due(-1, "A"), due(7, "B"), due(3, "C"), due(22, "D")}, route, today);
  const auto found = visits(all);
  BOOST_REQUIRE(found.size() == 3U);
  BOOST_TEST((found[0].units[0].due.serial == "A"));
  BOOST_TEST(found[1].units.size() == 2U);
  BOOST_TEST((found[1].slot.to == today.addDays(3)), "the earliest of them");
  BOOST_TEST((found[2].units[0].due.serial == "D"));
}

BOOST_AUTO_TEST_SUITE_END()
