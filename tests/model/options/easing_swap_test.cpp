// SPDX-License-Identifier: GPL-3.0-or-later
// Which parts can be put in another's place, by figures put in by hand: the nearest to what is there first.
#include <boost/test/unit_test.hpp>

#include <string>
#include <vector>

#include "options/easing_lever.h"
#include "print.h"

using namespace hangbook;
using namespace hangbook::options;

namespace {

constexpr auto inTurn = boost::test_tools::per_element();

/// Two bass over an upper on a bar that is picked up singly, from the point A.
Trial twoBassAndAnUpper() {
  Trial trial;
  trial.key.hang = QStringLiteral("left");
  trial.key.stack = {QStringLiteral("bass"), QStringLiteral("bass"), QStringLiteral("upper")};
  trial.key.bar = QStringLiteral("bar");
  trial.key.picks = catalogue::Picks::single;
  trial.key.hoist = QStringLiteral("one tonne");
  trial.key.table = QStringLiteral("Marram");
  trial.key.points = {QStringLiteral("A")};
  calendar::Hang& hang = trial.snapshot.show.hangs.emplace_back();
  hang.name = QStringLiteral("left");
  hang.points = {QStringLiteral("A"), QStringLiteral("B")};
  catalogue::Catalogue& catalogue = trial.snapshot.catalogue;
  for (const char* name : {"bass", "upper"}) {
    catalogue.cabinets.emplace_back().name = QString::fromUtf8(name);
  }
  catalogue::StackingTable table;
  table.name = QStringLiteral("Marram");
  table.bars = {QStringLiteral("bar")};
  for (const auto& [above, below] : {std::pair("", "bass"), std::pair("bass", "bass"),
                                     std::pair("bass", "upper"), std::pair("", "upper")}) {
    catalogue::Join join;
    join.above = QString::fromUtf8(above);
    join.below = QString::fromUtf8(below);
    table.joins.push_back(join);
  }
  table.counts = {{QStringLiteral("bass"), 0, 3}, {QStringLiteral("upper"), 0, 1}};
  table.lowest = {QStringLiteral("bass"), QStringLiteral("upper")};
  catalogue.tables = {table};
  return trial;
}

std::vector<Swap> swapsOf(const Trial& trial, const char* kind) {
  std::vector<Lever> levers;
  addSwapLevers(trial, levers);
  for (Lever& each : levers) {
    if (each.kind == QLatin1String(kind)) {
      for (const Swap& swap : each.swaps) {
        BOOST_TEST(swap.change.kind.toStdString() == kind);
        BOOST_TEST_REQUIRE(swap.change.figures.size() == 1U);
        BOOST_TEST(swap.change.figures[0].steps == swap.steps);
        BOOST_TEST(swap.change.step == 1.0);
        BOOST_TEST(!swap.change.figures[0].from.has_value());
        BOOST_TEST(!swap.change.figures[0].to.has_value());
      }
      return each.swaps;
    }
  }
  return {};
}

std::vector<std::string> wordsOf(const std::vector<Swap>& swaps) {
  std::vector<std::string> words;
  for (const Swap& each : swaps) {
    words.push_back(std::to_string(each.steps) + ": " + each.change.words.toStdString());
  }
  return words;
}

catalogue::HoistType hoistOf(const char* name, std::optional<double> kn) {
  catalogue::HoistType type;
  type.name = QString::fromUtf8(name);
  type.limit = kn ? std::optional(kilonewtons(*kn)) : std::nullopt;
  return type;
}

void addPoint(Trial& trial, const char* name, double x, double y, double z) {
  venue::Point& point = trial.snapshot.venue.points.emplace_back();
  point.name = QString::fromUtf8(name);
  point.x = metres(x);
  point.y = metres(y);
  point.z = metres(z);
}

} // namespace

BOOST_AUTO_TEST_SUITE(easing_swap)

/// By what they lift, the next size either way first; one without a limit is none of them.
BOOST_AUTO_TEST_CASE(another_hoist) {
  Trial trial = twoBassAndAnUpper();
  trial.snapshot.catalogue.hoists = {hoistOf("two tonnes", 20.0), hoistOf("half a tonne", 5.0),
                                     hoistOf("unknown", std::nullopt), hoistOf("a quarter", 2.5),
                                     hoistOf("one tonne", 10.0)};
  const auto swaps = swapsOf(trial, "hoist");
  BOOST_TEST(wordsOf(swaps) == (std::vector<std::string>{"1: Hoist half a tonne instead of one tonne",
                                                         "1: Hoist two tonnes instead of one tonne",
                                                         "2: Hoist a quarter instead of one tonne"}),
             inTurn);
  BOOST_TEST(swaps[0].change.figures[0].what.toStdString() == "half a tonne");
  Trial then = trial;
  swaps[1].apply(then);
  BOOST_TEST(then.key.hoist.toStdString() == "two tonnes");
  trial.key.hoist = QStringLiteral("unknown");
  BOOST_TEST(swapsOf(trial, "hoist").empty());
}

/// What the table permits of the same stack with some taken out, each once, the fewest first.
BOOST_AUTO_TEST_CASE(fewer_cabinets) {
  Trial trial = twoBassAndAnUpper();
  const auto swaps = swapsOf(trial, "fewer-cabinets");
  BOOST_TEST(wordsOf(swaps) ==
                 (std::vector<std::string>{
                     "1: One cabinet fewer: without upper (3 from the bar)",
                     "1: One cabinet fewer: without bass (2 from the bar)",
                     "2: 2 cabinets fewer: without bass (2 from the bar), upper (3 from the bar)",
                     "2: 2 cabinets fewer: without bass (1 from the bar), bass (2 from the bar)"}),
             inTurn);
  Trial then = trial;
  swaps[1].apply(then);
  BOOST_TEST(then.key.stack == (QStringList{QStringLiteral("bass"), QStringLiteral("upper")}));
  BOOST_TEST(then.key.table.toStdString() == "Marram");
  // A second table that gives the same adds nothing; one that is for another bar, or that the hang leaves
  // out, neither.
  catalogue::StackingTable other = trial.snapshot.catalogue.tables[0];
  other.name = QStringLiteral("another");
  trial.snapshot.catalogue.tables.push_back(other);
  BOOST_TEST(swapsOf(trial, "fewer-cabinets").size() == 4U);
  trial.snapshot.catalogue.tables[0].bars = {QStringLiteral("another bar")};
  trial.snapshot.catalogue.tables[1].counts[1].most = 0; // no upper
  BOOST_TEST(swapsOf(trial, "fewer-cabinets").size() == 2U);
  swapsOf(trial, "fewer-cabinets")[0].apply(then);
  BOOST_TEST(then.key.table.toStdString() == "another");
  hangOf(trial).tables = {QStringLiteral("another")};
  BOOST_TEST(swapsOf(trial, "fewer-cabinets").size() == 2U);
  hangOf(trial).tables = {QStringLiteral("Marram")};
  BOOST_TEST(swapsOf(trial, "fewer-cabinets").empty());
}

/// A single pick goes to the nearest point first (2 m, 3 m, 6 m), in plan and height; one that the hang may
/// not use is told as such.
BOOST_AUTO_TEST_CASE(other_points) {
  Trial trial = twoBassAndAnUpper();
  addPoint(trial, "D", 6.0, 3.0, 12.0);
  addPoint(trial, "A", 2.0, -1.0, 10.0);
  addPoint(trial, "C", 2.0, -1.0, 12.0);
  addPoint(trial, "B", 1.0, 1.0, 8.0);
  const auto swaps = swapsOf(trial, "points");
  BOOST_TEST(wordsOf(swaps) == (std::vector<std::string>{
                                   "1: From C instead of A, which the hang must then be allowed to use",
                                   "2: From B instead of A",
                                   "3: From D instead of A, which the hang must then be allowed to use"}),
             inTurn);
  Trial then = trial;
  swaps[1].apply(then);
  BOOST_TEST(then.key.points == QStringList{QStringLiteral("B")});
  BOOST_TEST(hangOf(then).points == (QStringList{QStringLiteral("A"), QStringLiteral("B")}));
  swaps[0].apply(then);
  BOOST_TEST(then.key.points == QStringList{QStringLiteral("C")});
  BOOST_TEST(hangOf(then).points ==
             (QStringList{QStringLiteral("A"), QStringLiteral("B"), QStringLiteral("C")}));
}

/// Of a pair what both points move is added: L to L1 and R to R1 are 1 m each, crossing to L2 alone is 3 m.
BOOST_AUTO_TEST_CASE(another_pair_of_points) {
  Trial trial = twoBassAndAnUpper();
  trial.key.picks = catalogue::Picks::sidePair;
  trial.key.points = {QStringLiteral("L"), QStringLiteral("R")};
  hangOf(trial).points = trial.key.points;
  addPoint(trial, "L", 0.0, 1.0, 10.0);
  addPoint(trial, "R", 0.0, -1.0, 10.0);
  addPoint(trial, "L1", 1.0, 1.0, 10.0);
  addPoint(trial, "R1", 1.0, -1.0, 10.0);
  addPoint(trial, "L2", 0.0, 4.0, 10.0);
  const auto swaps = swapsOf(trial, "points");
  BOOST_REQUIRE(swaps.size() == 9U); // of ten pairs all but its own
  const auto names = [&swaps](std::size_t i) { return swaps[i].change.figures[0].what.toStdString(); };
  BOOST_TEST((names(0) == "L and R1" || names(0) == "L1 and R"));
  BOOST_TEST((names(1) == "L and R1" || names(1) == "L1 and R"));
  BOOST_TEST(names(2) == "L1 and R1");
  for (std::size_t i = 0; i < swaps.size(); ++i) {
    BOOST_TEST(swaps[i].steps == static_cast<int>(i) + 1);
  }
}

/// Other holes of its own bar, and another bar of the table; each from every way of reaching the hang's
/// points.
BOOST_AUTO_TEST_CASE(another_way_of_picking_up) {
  Trial trial = twoBassAndAnUpper();
  addPoint(trial, "A", 0.0, 1.0, 10.0);
  addPoint(trial, "B", 0.0, -1.0, 10.0);
  catalogue::BarType bar;
  bar.name = QStringLiteral("bar");
  bar.arrangements.resize(2);
  bar.arrangements[0].picks = catalogue::Picks::single;
  bar.arrangements[1].picks = catalogue::Picks::sidePair;
  catalogue::BarType other = bar;
  other.name = QStringLiteral("long bar");
  other.arrangements.resize(1);
  catalogue::BarType foreign = other;
  foreign.name = QStringLiteral("foreign bar");
  trial.snapshot.catalogue.bars = {bar, other, foreign};
  trial.snapshot.catalogue.tables[0].bars = {QStringLiteral("bar"), QStringLiteral("long bar"),
                                             QStringLiteral("no bar")};
  const auto picks = swapsOf(trial, "picks");
  BOOST_TEST(wordsOf(picks) == std::vector<std::string>{"1: Picked up at its other holes: bar as " +
                                                        wordFor(catalogue::Picks::sidePair).toStdString() +
                                                        " from A and B"},
             inTurn);
  const auto bars = swapsOf(trial, "bar");
  const std::string single = wordFor(catalogue::Picks::single).toStdString();
  BOOST_TEST(wordsOf(bars) ==
                 (std::vector<std::string>{"1: On another bar: long bar as " + single + " from A",
                                           "1: On another bar: long bar as " + single + " from B"}),
             inTurn);
  Trial then = trial;
  bars[1].apply(then);
  BOOST_TEST(then.key.bar.toStdString() == "long bar");
  BOOST_TEST(then.key.points == QStringList{QStringLiteral("B")});
  picks[0].apply(then);
  BOOST_TEST(then.key.bar.toStdString() == "bar");
  BOOST_TEST((then.key.picks == catalogue::Picks::sidePair));
  BOOST_TEST(then.key.points == (QStringList{QStringLiteral("A"), QStringLiteral("B")}));
  trial.key.table = QStringLiteral("no table");
  BOOST_TEST(swapsOf(trial, "picks").empty());
  BOOST_TEST(swapsOf(trial, "bar").empty());
}

BOOST_AUTO_TEST_SUITE_END()
