// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/unit_test.hpp>

#include <algorithm>

#include "options/house_change.h"
#include "options/ranking.h"
#include "options/same_again.h"
#include "options/search.h"
#include "options/side_by_side.h"
#include "print.h"
#include "show_fixture.h"

using namespace hangbook;
using options::Option;
using options::RankBy;
using options::Verdict;

namespace {

Option made(const char* id, Verdict verdict, double cover, double mass, int cabinets) {
  Option option;
  option.id = QString::fromLatin1(id);
  option.verdict = verdict;
  option.setting = options::Setting{};
  option.coveredPercent = cover;
  option.massKg = mass;
  for (int i = 0; i < cabinets; ++i) {
    option.key.stack << QStringLiteral("bass");
  }
  option.build.resize(static_cast<std::size_t>(cabinets));
  return option;
}

QStringList ids(const options::HangOptions& hang) {
  QStringList all;
  for (const Option& each : hang.options) {
    all << each.id;
  }
  return all;
}

options::HangOptions three() {
  options::HangOptions hang;
  hang.options = {made("a", Verdict::holds, 90, 300, 4), made("b", Verdict::holds, 100, 400, 5),
                  made("c", Verdict::tight, 100, 200, 3)};
  return hang;
}

} // namespace

BOOST_AUTO_TEST_SUITE(ranking)

BOOST_AUTO_TEST_CASE(the_verdict_comes_first_then_what_was_asked_for) {
  options::HangOptions hang = three();
  options::rank(hang, {RankBy::cover, {}});
  BOOST_TEST((ids(hang) == QStringList{"b", "a", "c"}));
  options::rank(hang, {RankBy::lightest, {}});
  BOOST_TEST((ids(hang) == QStringList{"a", "b", "c"}));
  options::rank(hang, {RankBy::build, {}});
  BOOST_TEST((ids(hang) == QStringList{"a", "b", "c"}));
  options::rank(hang, {RankBy::changes, hang.options[1].key});
  BOOST_TEST((ids(hang) == QStringList{"b", "a", "c"}));
  options::rank(hang, {RankBy::changes, {}}); // from nothing: cover decides
  BOOST_TEST((ids(hang) == QStringList{"b", "a", "c"}));
  hang.options.push_back(made("aa", Verdict::holds, 90, 300, 4));
  options::rank(hang, {RankBy::gear, {}});
  BOOST_TEST((ids(hang) == QStringList{"a", "aa", "b", "c"})); // alike in all: by name
  for (const RankBy each : options::allRankings()) {
    BOOST_TEST((options::rankBy(options::wordFor(each)) == each));
  }
  BOOST_TEST(!options::rankBy(QStringLiteral("beauty")).has_value());
}

BOOST_AUTO_TEST_CASE(beaten_is_what_another_is_no_worse_than_in_anything) {
  options::HangOptions hang = three();
  BOOST_TEST((options::beatenBy(hang) == QStringList{"", "", ""}));
  hang.options.push_back(made("d", Verdict::tight, 100, 250, 3)); // heavier than c, else like it
  hang.options.push_back(made("e", Verdict::fails, 0, 0, 1));
  hang.options.back().setting.reset();
  const QStringList beaten = options::beatenBy(hang);
  BOOST_TEST((beaten[3] == "c"));
  BOOST_TEST(beaten[2].isEmpty());
  BOOST_TEST(!beaten[4].isEmpty());
  hang.options.push_back(hang.options[0]); // alike in all: neither beats the other
  BOOST_TEST(options::beatenBy(hang)[0].isEmpty());
}

/// Of two alike in all else the one beats whose most used limit is less used, however little that is. What
/// has no use, or does not apply, counts as none.
BOOST_AUTO_TEST_CASE(beaten_by_what_is_used_less) {
  options::HangOptions hang;
  hang.options = {made("a", Verdict::holds, 90, 300, 4), made("b", Verdict::holds, 90, 300, 4)};
  for (options::Option& each : hang.options) {
    each.findings.resize(3);
    each.findings[1].applies = false;
    each.findings[1].usePercent = 50.0;
  }
  hang.options[0].findings[0].usePercent = 0.2;
  hang.options[1].findings[0].usePercent = 0.1;
  BOOST_TEST((options::beatenBy(hang) == QStringList{"b", ""}));
}

/// A single pick takes one hoist, a pair two: with one cabinet more on it that is as much gear.
BOOST_AUTO_TEST_CASE(hoists_count_as_gear) {
  options::HangOptions hang;
  hang.options = {made("single", Verdict::holds, 90, 300, 5), made("pair", Verdict::holds, 90, 301, 4)};
  for (Option& each : hang.options) {
    each.build.clear();
  }
  hang.options[0].key.picks = catalogue::Picks::single;
  hang.options[1].key.picks = catalogue::Picks::sidePair;
  BOOST_TEST((options::beatenBy(hang) == QStringList{"", "single"}));
  hang.options[0].massKg = 302;
  BOOST_TEST((options::beatenBy(hang) == QStringList{"pair", ""}));
  hang.options[1].key.picks = catalogue::Picks::single;
  hang.options[0].massKg = 300;
  BOOST_TEST((options::beatenBy(hang) == QStringList{"", ""})); // now the lighter one takes more gear
}

BOOST_AUTO_TEST_CASE(changes_are_counted_by_part) {
  options::OptionKey one;
  one.stack = QStringList{"bass", "bass", "upper"};
  options::OptionKey other = one;
  BOOST_TEST(options::changesBetween(one, other) == 0);
  other.stack = QStringList{"bass", "upper", "bass"};
  BOOST_TEST(options::changesBetween(one, other) == 1);
  other.stack = QStringList{"bass", "upper", "down"};
  other.hoist = QStringLiteral("other");
  BOOST_TEST(options::changesBetween(one, other) == 3);
}

BOOST_AUTO_TEST_CASE(side_by_side_what_differs_stands_first) {
  const auto all = options::decide(testing::smallHarbourShow(), QStringLiteral("left"));
  const auto& list = all.hangs.front().options;
  const auto rows = options::sideBySide({&list[0], &list[1], &list[0]});
  bool alike = false;
  for (const options::CompareRow& row : rows) {
    BOOST_REQUIRE(row.cells.size() == 3);
    BOOST_TEST((row.cells[0] == row.cells[2]));
    BOOST_TEST(row.differs == (row.cells[0] != row.cells[1]), row.what.toStdString());
    BOOST_TEST(!(alike && row.differs), row.what.toStdString());
    alike = alike || !row.differs;
  }
  BOOST_TEST(rows.size() >= list[0].findings.size() + 10);
}

/// Each figure in its place, with as many digits as the crew reads; a dash where there is none.
BOOST_AUTO_TEST_CASE(side_by_side_each_figure_is_as_it_is_read) {
  Option one = made("a", Verdict::tight, 98.74, 412.6, 0);
  one.key.stack = QStringList{"bass", "bass", "upper", "bass"};
  one.key.bar = QStringLiteral("long bar");
  one.key.picks = catalogue::Picks::sidePair;
  one.key.points = QStringList{"L1", "L2"};
  one.setting = options::Setting{-2.56, 0.0, 7.126, 31, {}};
  one.trimWindow = options::TrimWindow{};
  one.trimWindow->lowM = 6.0000005;
  one.trimWindow->highM = 7.4999995;
  one.points = {{}, {}};
  one.points[0].point = QStringLiteral("L1");
  one.points[0].staticKn = 2.0649;
  one.points[1].point = QStringLiteral("L2");
  options::Finding finding;
  finding.rule = QStringLiteral("lean");
  finding.verdict = Verdict::tight;
  finding.unit = QStringLiteral("°");
  finding.value = 4.6549;
  one.findings = {finding, finding};
  one.findings[1].rule = QStringLiteral("cover");
  one.findings[1].limit = 90.0;
  Option other = made("b", Verdict::fails, 0, 0, 2);
  other.setting.reset();
  const auto rows = options::sideBySide({&one, &other});
  const auto told = [&rows](const char* what) {
    const auto row = std::ranges::find(rows, QString::fromUtf8(what), &options::CompareRow::what);
    BOOST_REQUIRE(row != rows.end());
    return row->cells;
  };
  BOOST_TEST((told("verdict") == QStringList{"tight", "fails"}));
  BOOST_TEST((told("stack") == QStringList{"2 bass, upper, bass", "2 bass"}));
  BOOST_TEST((told("cabinets") == QStringList{"4", "2"}));
  BOOST_TEST((told("points") == QStringList{"L1, L2", ""}));
  BOOST_TEST((told("tilt °") == QStringList{"-2.6", "–"}));
  BOOST_TEST((told("trim m") == QStringList{"7.13", "–"}));
  BOOST_TEST((told("trim may lie m") == QStringList{"6.01 to 7.49", "–"}));
  BOOST_TEST((told("chain mark") == QStringList{"31", "–"}));
  BOOST_TEST((told("mass kg") == QStringList{"413", "–"}));
  BOOST_TEST((told("cover %") == QStringList{"98.7", "–"}));
  BOOST_TEST((told("build steps") == QStringList{"0", "2"}));
  BOOST_TEST((told("points at rest kN") == QStringList{"L1 2.06, L2 0.00", "–"}));
  BOOST_TEST((told("lean") == QStringList{"tight, 4.65 °", "–"}));
  BOOST_TEST((told("cover") == QStringList{"tight, 4.65 against 90.00 °", "–"}));
}

BOOST_AUTO_TEST_CASE(the_same_again_is_judged_by_todays_rules) {
  options::Snapshot snapshot = testing::smallHarbourShow();
  const Option best = options::decide(snapshot, QStringLiteral("left")).hangs.front().options.front();
  options::OptionKey elsewhere = best.key;
  elsewhere.points = QStringList{"A", "B"}; // another venue's names
  const auto same = options::sameAgain(snapshot, elsewhere);
  BOOST_REQUIRE(same.has_value());
  BOOST_TEST((same->id == best.id));
  BOOST_TEST((same->verdict == best.verdict));
  snapshot.venue.lowSteel = metres(6);
  BOOST_TEST((options::sameAgain(snapshot, elsewhere)->verdict == Verdict::fails));
  elsewhere.stack << QStringLiteral("nobody's");
  BOOST_TEST(!options::sameAgain(snapshot, elsewhere).has_value());
}

/// A house rule is told by what it does to what is chosen.
BOOST_AUTO_TEST_CASE(a_house_rule_tells_whose_verdict_it_changes) {
  options::Snapshot snapshot = testing::smallHarbourShow();
  const Option best = options::decide(snapshot, QStringLiteral("left")).hangs.front().options.front();
  options::Choice choice;
  choice.tour = snapshot.tour.name;
  choice.show = snapshot.show.name;
  choice.hang = QStringLiteral("left");
  choice.option = best.id;
  choice.key = best.key;
  choice.setting = *best.setting;
  choice.points = best.points;
  snapshot.choices = {choice};
  const options::HouseSite venue{options::HousePlace::venue, {}, snapshot.venue.name};
  std::vector<venue::HouseFigure> rules = snapshot.venue.house;
  BOOST_TEST(options::effectOf({snapshot}, venue, rules).changed.empty());
  rules.push_back({QStringLiteral("spare-hoists"),
                   500.0,
                   {},
                   QStringLiteral("test"),
                   QStringLiteral("Edda"),
                   QDate(2027, 1, 1)});
  const options::HouseEffect effect = options::effectOf({snapshot}, venue, rules);
  BOOST_TEST(effect.judged == 1);
  BOOST_REQUIRE(effect.changed.size() == 1U);
  BOOST_TEST((effect.changed.front().now == Verdict::fails));
  BOOST_TEST(effect.changed.front().because.contains(QStringLiteral("stock")));
  const options::HouseSite other{options::HousePlace::tour, {}, QStringLiteral("another tour")};
  BOOST_TEST(options::effectOf({snapshot}, other, rules).judged == 0);
}

BOOST_AUTO_TEST_SUITE_END()
