// SPDX-License-Identifier: GPL-3.0-or-later
// What of one setting can be moved, by figures put in by hand: tilt, trim, mark and holes, the nearest first.
#include <boost/test/unit_test.hpp>

#include <cmath>
#include <string>
#include <vector>

#include "options/easing_lever.h"
#include "print.h"

using namespace hangbook;
using namespace hangbook::options;

namespace {

/// Three cabinets: the bass has one hole, the upper two and the small one three.
Trial threeCabinets() {
  Trial trial;
  catalogue::StackingTable table;
  table.name = QStringLiteral("Marram");
  const auto join = [&table, &trial](const char* above, const char* below, std::vector<double> anglesDeg) {
    catalogue::Join made;
    made.above = QString::fromUtf8(above);
    made.below = QString::fromUtf8(below);
    for (const double deg : anglesDeg) {
      made.angles.push_back(degrees(deg));
    }
    table.joins.push_back(made);
    table.counts.push_back({made.below, 1, 1});
    trial.key.stack.append(made.below);
  };
  join("", "bass", {0.0});
  join("bass", "upper", {0.0, -3.0});
  join("upper", "small", {-1.0, -2.0, 4.0});
  table.lowest = {QStringLiteral("small")};
  for (const QString& name : trial.key.stack) {
    trial.snapshot.catalogue.cabinets.emplace_back().name = name;
  }
  trial.snapshot.catalogue.tables = {table};
  trial.key.table = table.name;
  trial.setting = Setting{};
  trial.setting->tiltDeg = -0.5;
  trial.setting->trimM = 8.0;
  trial.setting->holesDeg = {-3.0, -2.0};
  return trial;
}

/// Of one kind; empty where there is none.
std::vector<Swap> swapsOf(const Trial& trial, const char* kind) {
  std::vector<Lever> levers;
  addSettingLevers(trial, levers);
  for (Lever& each : levers) {
    if (each.kind == QLatin1String(kind)) {
      BOOST_TEST(each.most.empty());
      return each.swaps;
    }
  }
  return {};
}

std::vector<std::string> wordsOf(const std::vector<Swap>& swaps, std::size_t most) {
  std::vector<std::string> words;
  for (const Swap& each : swaps) {
    if (words.size() < most) {
      words.push_back(std::to_string(each.steps) + ": " + each.change.words.toStdString());
    }
  }
  return words;
}

/// Each swap's figures are those of its words, and nothing else of the setting moves.
template <class Figure>
void figuresAreWhatIsSet(const Trial& trial, const char* kind, const char* unit, double step, Figure figure) {
  const double from = figure(*trial.setting);
  for (const Swap& each : swapsOf(trial, kind)) {
    Trial then = trial;
    each.apply(then);
    BOOST_REQUIRE(each.change.figures.size() == 1U);
    BOOST_TEST(each.change.kind.toStdString() == kind);
    BOOST_TEST(each.change.unit.toStdString() == unit);
    BOOST_TEST(each.change.step == step);
    BOOST_TEST(each.change.figures[0].what.toStdString() == kind);
    BOOST_TEST(each.change.figures[0].from.value() == from);
    BOOST_TEST(each.change.figures[0].to.value() == figure(*then.setting));
    BOOST_TEST(each.change.figures[0].steps == each.steps);
    BOOST_TEST(std::abs(figure(*then.setting) - from) == step * each.steps,
               boost::test_tools::tolerance(1e-9));
    int moved = 0;
    moved += then.setting->tiltDeg != trial.setting->tiltDeg ? 1 : 0;
    moved += then.setting->trimM != trial.setting->trimM ? 1 : 0;
    moved += then.setting->mark != trial.setting->mark ? 1 : 0;
    moved += then.setting->holesDeg != trial.setting->holesDeg ? 1 : 0;
    BOOST_TEST(moved == 1);
  }
}

constexpr auto inTurn = boost::test_tools::per_element();

} // namespace

BOOST_AUTO_TEST_SUITE(easing_setting)

/// Half a degree a step, 20° either way.
BOOST_AUTO_TEST_CASE(another_tilt) {
  const Trial trial = threeCabinets();
  const auto swaps = swapsOf(trial, "tilt");
  BOOST_TEST(swaps.size() == 80U);
  BOOST_TEST(wordsOf(swaps, 4) == (std::vector<std::string>{
                                      "1: Tilt -1.0° instead of -0.5°", "1: Tilt 0.0° instead of -0.5°",
                                      "2: Tilt -1.5° instead of -0.5°", "2: Tilt +0.5° instead of -0.5°"}),
             inTurn);
  BOOST_TEST(swaps.back().change.words.toStdString() == "Tilt +19.5° instead of -0.5°");
  figuresAreWhatIsSet(trial, "tilt", "°", 0.5, [](const Setting& of) { return of.tiltDeg; });
}

/// A centimetre a step, 3 m either way.
BOOST_AUTO_TEST_CASE(another_trim) {
  const Trial trial = threeCabinets();
  const auto swaps = swapsOf(trial, "trim");
  BOOST_TEST(swaps.size() == 600U);
  BOOST_TEST(
      wordsOf(swaps, 4) ==
          (std::vector<std::string>{"1: Trim 7.99 m instead of 8.00 m", "1: Trim 8.01 m instead of 8.00 m",
                                    "2: Trim 7.98 m instead of 8.00 m", "2: Trim 8.02 m instead of 8.00 m"}),
      inTurn);
  BOOST_TEST(swaps.back().change.words.toStdString() == "Trim 11.00 m instead of 8.00 m");
  figuresAreWhatIsSet(trial, "trim", "m", 0.01, [](const Setting& of) { return of.trimM; });
}

/// Forty links either way, the first link of all at the least; without a chain none.
BOOST_AUTO_TEST_CASE(another_mark) {
  Trial trial = threeCabinets();
  BOOST_TEST(swapsOf(trial, "mark").empty());
  trial.setting->mark = 3;
  const auto swaps = swapsOf(trial, "mark");
  BOOST_TEST(swaps.size() == 42U); // marks 2 and 1, and 40 beyond
  BOOST_TEST(wordsOf(swaps, 5) == (std::vector<std::string>{
                                      "1: Chain at mark 2 instead of 3", "1: Chain at mark 4 instead of 3",
                                      "2: Chain at mark 1 instead of 3", "2: Chain at mark 5 instead of 3",
                                      "3: Chain at mark 6 instead of 3"}),
             inTurn);
  BOOST_TEST(swaps.back().change.words.toStdString() == "Chain at mark 43 instead of 3");
  figuresAreWhatIsSet(trial, "mark", "links", 1.0, [](const Setting& of) { return 1.0 * of.mark.value(); });
}

/// A joint with one hole has no other; of each other joint the next hole comes before the one after that.
BOOST_AUTO_TEST_CASE(another_hole) {
  Trial trial = threeCabinets();
  const auto words = [&trial] { return wordsOf(swapsOf(trial, "hole"), 10); };
  BOOST_TEST(words() == (std::vector<std::string>{"1: Cabinet 2 in its hole for 0.0° instead of -3.0°",
                                                  "1: Cabinet 3 in its hole for -1.0° instead of -2.0°",
                                                  "1: Cabinet 3 in its hole for +4.0° instead of -2.0°"}),
             inTurn);
  trial.setting->holesDeg = {0.0, 4.0};
  BOOST_TEST(words() == (std::vector<std::string>{"1: Cabinet 2 in its hole for -3.0° instead of 0.0°",
                                                  "1: Cabinet 3 in its hole for -2.0° instead of +4.0°",
                                                  "2: Cabinet 3 in its hole for -1.0° instead of +4.0°"}),
             inTurn);
  const auto swaps = swapsOf(trial, "hole");
  Trial upper = trial;
  swaps[0].apply(upper);
  BOOST_TEST(upper.setting->holesDeg == (std::vector{-3.0, 4.0}), inTurn);
  Trial small = trial;
  swaps[2].apply(small);
  BOOST_TEST(small.setting->holesDeg == (std::vector{0.0, -1.0}), inTurn);
  const Change& change = swaps[2].change;
  BOOST_REQUIRE(change.figures.size() == 1U);
  BOOST_TEST(change.figures[0].what.toStdString() == "hole of cabinet 3");
  BOOST_TEST(change.figures[0].from.value() == 4.0);
  BOOST_TEST(change.figures[0].to.value() == -1.0);
  BOOST_TEST(change.figures[0].steps == 2);
  BOOST_TEST(change.unit.toStdString() == "°");
  BOOST_TEST(change.step == 1.0);
}

/// A setting that says nothing of the lower joint, another stack, or no such table.
BOOST_AUTO_TEST_CASE(a_hole_that_is_not_known_is_not_changed) {
  Trial trial = threeCabinets();
  trial.setting->holesDeg = {-3.0};
  BOOST_TEST(wordsOf(swapsOf(trial, "hole"), 10) ==
                 std::vector<std::string>{"1: Cabinet 2 in its hole for 0.0° instead of -3.0°"},
             inTurn);
  Trial other = threeCabinets();
  other.key.stack.removeLast();
  BOOST_TEST(swapsOf(other, "hole").empty());
  other = threeCabinets();
  other.key.table = QStringLiteral("another");
  BOOST_TEST(swapsOf(other, "hole").empty());
}

BOOST_AUTO_TEST_SUITE_END()
