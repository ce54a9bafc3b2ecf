// SPDX-License-Identifier: GPL-3.0-or-later
// What the rules on loads say, word by word, of a pair with round figures.
#include <boost/test/unit_test.hpp>

#include <string>
#include <vector>

#include "load_fixture.h"
#include "options/build_force.h"
#include "options/load_path.h"
#include "options/loads.h"
#include "print.h"

using namespace hangbook;
using namespace hangbook::options;
using hangbook::testing::LoadCase;
using hangbook::testing::settledWith;

namespace {

/// Left 4 kN, right 3 kN, so set and never more.
struct Spoken : LoadCase {
  Settled settled = settledWith({4000.0, 3000.0, 4000.0, 3000.0}, true);

  Spoken() {
    shackle.name = QStringLiteral("shackle");
    points[0].name = QStringLiteral("L1");
    points[1].name = QStringLiteral("L2");
    hoist.name = QStringLiteral("Saltmarsh hoist");
    hoist.source.text = QStringLiteral("leaflet 3");
    limits.hardware[0].source = QStringLiteral("leaflet 4");
    limits.secondarySteel[0].source = QStringLiteral("leaflet 5");
  }
  Finding finding(const Rule& rule) const {
    const Case of = option();
    return rule.explain(of, &settled, 8.0, rule.evaluate(of, &settled, 8.0));
  }
  std::string words(const Rule& rule) const { return finding(rule).text.toStdString(); }
};

} // namespace

BOOST_AUTO_TEST_SUITE(load_words)

/// 4 + 0.6 + 0.4 kN (the gear at its heaviest) × 1.5 × 2.
BOOST_AUTO_TEST_CASE(a_hoist) {
  Spoken of;
  BOOST_TEST(
      of.words(hoistRule) ==
      "The left hoist lifts pick 4.00 kN + its own body 0.30 kN, chain and bag 0.20 kN, with dynamic factor "
      "1.5, lift-group share 2: 15.00 kN; Saltmarsh hoist may lift 1000.00 kN.");
  BOOST_TEST(of.finding(hoistRule).source.toStdString() == "maker's data for Saltmarsh hoist: leaflet 3");
  of.hoist.bodyClimbs = false;
  of.limits.liftShare.value = 1.0;
  BOOST_TEST(of.words(hoistRule) == "The left hoist lifts pick 4.00 kN, with dynamic factor 1.5: 6.00 kN; "
                                    "Saltmarsh hoist may lift 1000.00 kN.");
  of.hoist.bodyClimbs.reset();
  of.hoist.limit.reset();
  BOOST_TEST(of.words(hoistRule).find("(whether its body climbs is not stated)") != std::string::npos);
  BOOST_TEST(of.words(hoistRule).find("; no working load limit is stated for it.") != std::string::npos);
}

BOOST_AUTO_TEST_CASE(a_hoist_over_people) {
  const std::string none = "; over people it needs a secondary suspension, and none is named.";
  const std::string unknown =
      "; whether its class holds over people without a secondary suspension is not stated, "
      "and none is named.";
  Spoken of;
  of.snapshot.show.peopleBeneath = true;
  const auto ends = [&of](const std::string& words) { return of.words(hoistRule).ends_with(words); };
  BOOST_TEST((!ends(none) && !ends(unknown))); // there is one
  of.limits.secondarySteel.clear();
  BOOST_TEST(ends(unknown));
  of.hoist.holdsWithoutSecondary = false;
  BOOST_TEST(ends(none));
  of.hoist.holdsWithoutSecondary = true;
  BOOST_TEST((!ends(none) && !ends(unknown)));
  of.hoist.holdsWithoutSecondary = false;
  of.snapshot.show.peopleBeneath = false;
  BOOST_TEST((!ends(none) && !ends(unknown)));
}

/// The secondary steel catches 4 kN without a drop: twice that. The shackle takes 5.2 kN at rest, times 3.
BOOST_AUTO_TEST_CASE(hardware_above_and_beside_the_hoist) {
  Spoken of;
  of.limits.hardware[0].limit = 20000.0;
  of.shackle.limit = kilonewtons(20);
  BOOST_TEST(of.words(hardwareRule) ==
             "shackle under point L1 takes 5.20 kN at rest, with dynamic factor 1.5, "
             "lift-group share 2: 15.60 kN; it may take 20.00 kN.");
  BOOST_TEST(of.finding(hardwareRule).source.toStdString() == "maker's data for shackle: leaflet 4");
  of.limits.hardware[0].limit = 1e6;
  of.shackle.limit = kilonewtons(1000);
  of.limits.secondarySteel[0].limit = 16000.0;
  of.limits.drop.source = QStringLiteral("the hang");
  const std::string caught = of.words(hardwareRule);
  BOOST_TEST(caught.starts_with(
                 "steel of the secondary suspension at the left pick must hold 4.00 kN at rest, with "),
             caught);
  BOOST_TEST(of.finding(hardwareRule).source.toStdString() == "maker's data for steel: leaflet 5");
  of.limits.secondarySteel.clear();
  of.snapshot.show.peopleBeneath = true;
  BOOST_TEST(of.words(hardwareRule).ends_with("; no secondary suspension is named."), of.words(hardwareRule));
  of.hoist.holdsWithoutSecondary = true;
  BOOST_TEST(!of.words(hardwareRule).ends_with("; no secondary suspension is named."),
             of.words(hardwareRule));
}

/// How far the steel stretches is not stated, so what a drop puts onto it is not known: 4 kN × 1.5 × 2 are
/// more than its 10 kN all the same, and that is what is said.
BOOST_AUTO_TEST_CASE(a_steel_that_fails_by_factors_is_told_by_them) {
  Spoken of;
  of.limits.drop.value = 0.1;
  of.steel.stiffness.reset();
  of.limits.secondarySteel[0].limit = 10000.0;
  of.steel.limit = kilonewtons(10);
  BOOST_TEST(
      of.words(hardwareRule) ==
      "steel of the secondary suspension at the left pick must hold 4.00 kN at rest, with dynamic factor "
      "1.5, lift-group share 2: 12.00 kN; it may take 10.00 kN.");
}

/// Of a steel that may be used to four fifths of its limit, that part is said to be one.
BOOST_AUTO_TEST_CASE(a_part_of_a_limit_is_said_to_be_one) {
  Spoken of;
  of.snapshot.show.peopleBeneath.reset();
  of.steel.designFactor = 4.0; // of 5
  of.limits.secondarySteel[0].limit = 16000.0;
  of.steel.limit = kilonewtons(16);
  BOOST_TEST(of.words(hardwareRule)
                 .ends_with(": 12.00 kN; it may take 12.80 kN; whether people are beneath is not stated."),
             of.words(hardwareRule));
}

/// The step of the build at which it lifts most is told, and nothing where that is the hang as set.
BOOST_AUTO_TEST_CASE(when_a_hoist_lifts_most) {
  Spoken of;
  of.settled.build.most[0] = 4500.0;
  of.settled.build.mostAt[0] = {hang::BuildStage::stacked, 1};
  BOOST_TEST(of.words(hoistRule).starts_with(
      "The left hoist lifts pick 4.50 kN at its most, with 1 cabinet under the bar + its own body 0.30 kN"));
  of.settled.build.mostAt[0] = {hang::BuildStage::set, 1};
  BOOST_TEST(of.words(hoistRule).starts_with("The left hoist lifts pick 4.50 kN + its own body 0.30 kN"));
  of.limits.dynamic.value = 1.23456; // four digits of a factor
  BOOST_TEST(of.words(hoistRule).find("with dynamic factor 1.235, lift-group share 2") != std::string::npos);
}

/// What the worst step comes to is told, but where it does not follow.
BOOST_AUTO_TEST_CASE(a_worst_that_does_not_follow_is_flagged) {
  Spoken of;
  for (const Rule* rule : {&hoistRule, &hardwareRule}) {
    of.settled.build.unknown.reset();
    BOOST_TEST(of.finding(*rule).worstFollows);
    of.settled.build.unknown = hang::BuildMoment{hang::BuildStage::stacked, 2};
    BOOST_TEST(!of.finding(*rule).worstFollows);
    BOOST_TEST(of.words(*rule).ends_with(
        "; what the picks carry with 2 cabinets under the bar does not follow from the figures."));
  }
  for (const Rule* rule : {&pickShareRule, &pointLoadRule}) {
    of.settled.build.unknown = hang::BuildMoment{hang::BuildStage::stacked, 2};
    BOOST_TEST(!of.finding(*rule).worstFollows);
    of.settled.build.unknown.reset();
    BOOST_TEST(of.finding(*rule).worstFollows);
  }
}

/// From the points down, each link with its own load: of the pick that carries more as of the other.
BOOST_AUTO_TEST_CASE(each_link_has_its_own_load) {
  const auto path = [](double left, double right) {
    Spoken of;
    of.bar.name = QStringLiteral("Marram bar");
    of.settled = settledWith({left, right, left, right}, true);
    std::vector<std::string> links;
    for (const PathLink& link : loadPath(of.option(), of.settled, 8.0)) {
      links.push_back(QStringLiteral("%1, %2: %3 of %4 kN, %5 %")
                          .arg(link.link, link.at)
                          .arg(link.loadKn, 0, 'f', 2)
                          .arg(link.limitKn.value_or(-1.0), 0, 'f', 0)
                          .arg(link.usePercent.value_or(-1.0), 0, 'f', 3)
                          .toStdString());
      BOOST_TEST(link.verdict == Verdict::holds);
    }
    return links;
  };
  // At the left 4 + 1.2 kN at rest and 4 + 1 kN lifted, times 3; caught twice 4 kN; at the right with 3 kN.
  const std::vector<std::string> left{"shackle, under L1: 15.60 of 1000 kN, 1.560 %",
                                      "Saltmarsh hoist with its hooks, left pick: 15.00 of 1000 kN, 1.500 %",
                                      "steel, left pick, caught: 8.00 of 1000 kN, 0.800 %"};
  const std::vector<std::string> right{
      "shackle, under L2: 12.60 of 1000 kN, 1.260 %",
      "Saltmarsh hoist with its hooks, right pick: 12.00 of 1000 kN, 1.200 %",
      "steel, right pick, caught: 6.00 of 1000 kN, 0.600 %"};
  const std::string bar = "Marram bar, all below the hooks: 21.00 of 1000 kN, 2.100 %";
  std::vector<std::string> all = left;
  all.insert(all.end(), right.begin(), right.end());
  all.push_back(bar);
  BOOST_TEST(path(4000.0, 3000.0) == all, boost::test_tools::per_element());
  const auto turned = path(3000.0, 4000.0);
  BOOST_REQUIRE(turned.size() == 7U);
  BOOST_TEST(turned[0] == "shackle, under L1: 12.60 of 1000 kN, 1.260 %");
  BOOST_TEST(turned[1] == "Saltmarsh hoist with its hooks, left pick: 12.00 of 1000 kN, 1.200 %");
  BOOST_TEST(turned[4] == "Saltmarsh hoist with its hooks, right pick: 15.00 of 1000 kN, 1.500 %");
}

/// At what step of the build the most is carried, in words.
BOOST_AUTO_TEST_CASE(a_moment_of_the_build) {
  Case option;
  const auto words = [&option](hang::BuildStage stage, int cabinets) {
    return momentWords(hang::BuildMoment{stage, cabinets}, option).toStdString();
  };
  using Stage = hang::BuildStage;
  BOOST_TEST(words(Stage::stacked, 0) == "with the bar alone");
  BOOST_TEST(words(Stage::stacked, 1) == "with 1 cabinet under the bar");
  BOOST_TEST(words(Stage::stacked, 2) == "with 2 cabinets under the bar"); // no chain at all
  option.held = 1;
  BOOST_TEST(words(Stage::stacked, 0) == "with the bar alone");
  BOOST_TEST(words(Stage::stacked, 1) == "with 1 cabinet under the bar and the chain not yet on");
  option.held = 3;
  BOOST_TEST(words(Stage::stacked, 2) == "with 2 cabinets under the bar");
  BOOST_TEST(words(Stage::stacked, 3) == "with 3 cabinets under the bar and the chain not yet on");
  BOOST_TEST(words(Stage::chained, 3) == "with 3 cabinets under the bar and the chain on");
  BOOST_TEST(words(Stage::aiming, 3) == "while it is aimed");
  BOOST_TEST(words(Stage::set, 3) == "");
}

/// A single pick hangs under its point; two lean as their points stand.
BOOST_AUTO_TEST_CASE(one_pick_has_no_lean) {
  Spoken of;
  BOOST_TEST(of.finding(leanRule).applies);
  BOOST_TEST(of.words(leanRule).starts_with("The points stand 1.000 m apart and the picks 1.000 m"));
  of.points.resize(1);
  BOOST_TEST(!of.finding(leanRule).applies);
  BOOST_TEST(of.finding(leanRule).verdict == Verdict::holds);
}

BOOST_AUTO_TEST_SUITE_END()
