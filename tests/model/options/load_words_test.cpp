// SPDX-License-Identifier: GPL-3.0-or-later
// What the rules on loads say, word by word, of a pair with round figures.
#include <boost/test/unit_test.hpp>

#include <string>

#include "load_fixture.h"
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
