// SPDX-License-Identifier: GPL-3.0-or-later
// Which choices of a show are judged anew, and as what.
#include <boost/test/unit_test.hpp>

#include "options/house_change.h"
#include "options/search.h"
#include "print.h"
#include "show_fixture.h"

using namespace hangbook;
using namespace hangbook::options;

namespace {

Choice choiceOf(const Snapshot& snapshot, const QString& hang, const Option& option) {
  Choice choice;
  choice.tour = snapshot.show.tour;
  choice.show = snapshot.show.name;
  choice.hang = hang;
  choice.key = option.key;
  choice.key.hang = hang;
  choice.setting = *option.setting;
  return choice;
}

} // namespace

BOOST_AUTO_TEST_SUITE(house_change)

/// Each hang's own choice, the last that stands; a hang of which nothing is chosen is passed over, and one
/// that can no longer be judged says why.
BOOST_AUTO_TEST_CASE(each_hang_by_its_own_choice) {
  Snapshot snapshot = testing::smallHarbourShow();
  const auto all = decide(snapshot);
  const Option& left = all.hangs[0].options.front();
  const Option& right = all.hangs[1].options.back();
  const QString leftName = all.hangs[0].hang;
  const QString rightName = all.hangs[1].hang;
  BOOST_TEST(chosenNow(snapshot).empty());
  snapshot.choices = {choiceOf(snapshot, rightName, right)};
  const auto one = chosenNow(snapshot);
  BOOST_TEST_REQUIRE(one.size() == 1U);
  BOOST_TEST((one[0].choice == &snapshot.choices[0]));
  BOOST_TEST((one[0].verdict() == judge(snapshot, snapshot.choices[0].key, *right.setting).verdict));
  snapshot.choices.push_back(choiceOf(snapshot, leftName, left));
  const auto both = chosenNow(snapshot);
  BOOST_TEST_REQUIRE(both.size() == 2U);
  BOOST_TEST((both[0].choice == &snapshot.choices[1]));
  BOOST_TEST_REQUIRE(both[0].option.has_value());
  BOOST_TEST((both[0].option->key.stack == left.key.stack));
  BOOST_TEST((both[1].choice == &snapshot.choices[0]));
  BOOST_TEST(both[1].why.toStdString() == "");
  snapshot.choices[0].key.hoist = QStringLiteral("no such hoist");
  const auto gone = chosenNow(snapshot);
  BOOST_TEST((gone[1].verdict() == Verdict::unproven));
  BOOST_TEST(!gone[1].option.has_value());
  BOOST_TEST(!gone[1].why.isEmpty());
}

/// The lowest edge is to be 30 m high: the sentence of that rule alone is why it fails, and of the way back
/// nothing is told, since all holds.
BOOST_AUTO_TEST_CASE(only_what_decides_is_told) {
  Snapshot snapshot = testing::smallHarbourShow();
  const auto all = decide(snapshot, QStringLiteral("left"));
  const Option& option = all.hangs[0].options.front();
  BOOST_REQUIRE(option.verdict == Verdict::holds);
  snapshot.choices = {choiceOf(snapshot, QStringLiteral("left"), option)};
  const HouseSite site{HousePlace::show, snapshot.show.tour, snapshot.show.name};
  const std::vector<venue::HouseFigure> usual = snapshot.show.house;
  std::vector<venue::HouseFigure> high = usual;
  high.push_back({QStringLiteral("least-trim"), 30.0, {}, {}, QStringLiteral("Edda"), QDate(2027, 3, 1)});
  const HouseEffect up = effectOf({snapshot}, site, high);
  BOOST_TEST(up.judged == 1);
  BOOST_REQUIRE(up.changed.size() == 1U);
  BOOST_TEST(up.changed[0].before == Verdict::holds);
  BOOST_TEST(up.changed[0].now == Verdict::fails);
  BOOST_TEST(up.changed[0].because.startsWith(QStringLiteral("lowest-edge: ")));
  for (const Finding& finding : option.findings) {
    const bool named = up.changed[0].because.contains(finding.rule + QStringLiteral(": "));
    BOOST_TEST(named == (finding.rule == QStringLiteral("lowest-edge")), finding.rule.toStdString());
  }
  Snapshot raised = snapshot;
  raised.show.house = high;
  const HouseEffect back = effectOf({raised}, site, usual);
  BOOST_REQUIRE(back.changed.size() == 1U);
  BOOST_TEST(back.changed[0].now == Verdict::holds);
  BOOST_TEST(back.changed[0].because.toStdString() == "");
  BOOST_TEST(effectOf({snapshot}, site, usual).changed.empty());
  HouseSite elsewhere = site;
  elsewhere.name = QStringLiteral("another show");
  BOOST_TEST(effectOf({snapshot}, elsewhere, high).judged == 0);
}

BOOST_AUTO_TEST_SUITE_END()
