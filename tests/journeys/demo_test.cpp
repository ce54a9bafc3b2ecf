// SPDX-License-Identifier: GPL-3.0-or-later
// What the demo tour promises: every verdict occurs, and each awkward venue is awkward for its own reason.
#include <boost/test/data/monomorphic.hpp>
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include <algorithm>
#include <map>

#include "demo_tour.h"
#include "fleet/due.h"
#include "support/sanitized.h"

namespace data = boost::unit_test::data;
using namespace hangbook;
using options::Verdict;

namespace {

struct Stop {
  const char* show;
  Verdict best;
  const char* rule;  ///< that every option fails, or that leaves the rest unproven; "" where none
  const char* words; ///< in that rule's sentence
};

std::ostream& operator<<(std::ostream& out, const Stop& stop) {
  return out << stop.show;
}

const std::vector<Stop> stops = {
    {"Pollan Cross", Verdict::holds, "", ""},
    {"Tamberwick", Verdict::tight, "", ""},
    {"Ostrel", Verdict::holds, "", ""},
    {"Grenmouth", Verdict::fails, "point-load", "the venue's sheet allows 2.00 kN"},
    {"Hallowfen", Verdict::holds, "", ""},
    {"Vintersund", Verdict::unproven, "point-load", "states no capacity"},
    {"Quayle Strand", Verdict::fails, "headroom", "under point"},
    {"Brankstead", Verdict::holds, "", ""},
    {"Morrowby", Verdict::fails, "lean", "2.800 m apart"},
    {"Eskerholt", Verdict::holds, "", ""},
    {"Lindrake", Verdict::holds, "", ""},
};

/// Under a sanitizer three unlike ones: a plain hall, one of curved tiers with bridles, one outdoors.
std::vector<Stop> triedStops() {
  std::vector<Stop> tried;
  for (const Stop& stop : stops) {
    const std::string_view show = stop.show;
    if (!testing::underSanitizer || show == "Ostrel" || show == "Hallowfen" || show == "Vintersund") {
      tried.push_back(stop);
    }
  }
  return tried;
}

const options::Finding& findingOf(const options::Option& option, const char* rule) {
  const auto found = std::ranges::find(option.findings, QString::fromLatin1(rule), &options::Finding::rule);
  BOOST_REQUIRE(found != option.findings.end());
  return *found;
}

Verdict bestOf(const options::HangOptions& hang) {
  return std::ranges::min(hang.options, {}, &options::Option::verdict).verdict;
}

bool everyRuleJudged(const options::Option& option) {
  return std::ranges::none_of(option.findings,
                              [](const auto& finding) { return finding.verdict == Verdict::unproven; });
}

} // namespace

BOOST_AUTO_TEST_SUITE(demo)

BOOST_AUTO_TEST_CASE(eleven_stops_and_seventy_cabinets) {
  const exchange::Data& tour = demoTour();
  BOOST_TEST(tour.shows.size() == stops.size());
  BOOST_TEST(std::ranges::count(tour.units, fleet::UnitKind::cabinet, &fleet::Unit::kind) == 70);
  BOOST_TEST(tour.catalogue.hoists.size() == 3U);
  BOOST_TEST(!tour.marks.empty());
  BOOST_TEST(std::ranges::count(tour.venues, std::optional(true), &venue::Venue::outdoors) == 1);
  for (std::size_t stop = 1; stop < tour.shows.size(); ++stop) { // no unit is wanted in two places
    BOOST_TEST((tour.shows[stop - 1].awayTo < tour.shows[stop].awayFrom),
               tour.shows[stop].name.toStdString());
  }
}

BOOST_DATA_TEST_CASE(each_stop_comes_out_as_it_is_meant, data::make(triedStops()), stop) {
  for (const options::HangOptions& hang : demoOptions(QString::fromLatin1(stop.show)).hangs) {
    BOOST_TEST(hang.options.size() >= 90U);
    BOOST_TEST(hang.options.size() <= 1000U);
    BOOST_TEST(hang.decided.options == static_cast<qint64>(hang.options.size()));
    BOOST_TEST((bestOf(hang) == stop.best), "best is " << options::wordFor(bestOf(hang)).toStdString());
    if (*stop.rule != '\0') {
      for (const options::Option& option : hang.options) {
        const options::Finding& finding = findingOf(option, stop.rule);
        BOOST_TEST((finding.verdict == stop.best), option.id.toStdString()
                                                       << ": " << finding.text.toStdString());
      }
      const auto& best = *std::ranges::min_element(hang.options, {}, &options::Option::verdict);
      const QString words = findingOf(best, stop.rule).text;
      BOOST_TEST(words.contains(QString::fromUtf8(stop.words)), words.toStdString());
    }
  }
}

/// Straight under the stage beam the screen is in the way; bridled to the front beam the hang clears it.
BOOST_AUTO_TEST_CASE(a_bridle_clears_the_screen) {
  const auto bridled = demoOptions(QStringLiteral("Brankstead")).hangs.front();
  const options::Option& best = *std::ranges::min_element(bridled.options, {}, &options::Option::verdict);
  BOOST_TEST(best.points.size() == 4U);
  BOOST_TEST(best.bridles.size() == 2U);
  BOOST_TEST((findingOf(best, "bridle").verdict <= Verdict::tight),
             findingOf(best, "bridle").text.toStdString());
  for (const options::BridleResult& bridle : best.bridles) {
    for (const options::BridleLegResult& leg :
         bridle.legs) { // the front beam hangs lower than the stage beam
      BOOST_TEST(leg.fromHorizontalDeg > 30.0);
      BOOST_TEST(leg.horizontalKn > 0.0);
    }
  }
  for (const options::Option& option : bridled.options) {
    BOOST_TEST(!findingOf(option, "headroom").text.contains(QStringLiteral("projection screen")));
  }
}

BOOST_AUTO_TEST_CASE(several_indoor_stops_hold_and_are_tight_with_every_rule_judged) {
  for (const char* show : {"Pollan Cross", "Ostrel", "Hallowfen", "Eskerholt"}) {
    for (const options::HangOptions& hang : demoOptions(QString::fromLatin1(show)).hangs) {
      std::map<Verdict, int> judged;
      for (const options::Option& option : hang.options) {
        judged[option.verdict] += everyRuleJudged(option) ? 1 : 0;
      }
      BOOST_TEST(judged[Verdict::holds] > 0, show);
      BOOST_TEST(judged[Verdict::tight] > 0, show);
    }
  }
}

BOOST_AUTO_TEST_CASE(cabinets_on_feet_are_judged_in_the_shape_that_they_take) {
  int seen = 0;
  for (const auto& hang : demoOptions(QStringLiteral("Pollan Cross")).hangs) {
    for (const options::Option& option : hang.options) {
      if (option.key.stack.contains(QStringLiteral("Samphire footed"))) {
        ++seen;
        const options::Finding contact = findingOf(option, "contact");
        BOOST_TEST((contact.verdict != Verdict::unproven), contact.text.toStdString());
        BOOST_TEST(contact.value.has_value());
      }
    }
  }
  BOOST_TEST(seen > 0);
}

BOOST_AUTO_TEST_CASE(what_was_chosen_is_among_the_options_and_does_not_fail) {
  const exchange::Data& tour = demoTour();
  BOOST_TEST(tour.chosen.size() == 10U);
  for (const exchange::Chosen& chosen : tour.chosen) {
    const auto& hangs = demoOptions(chosen.show).hangs;
    const auto& all = std::ranges::find(hangs, chosen.hang, &options::HangOptions::hang)->options;
    const auto found = std::ranges::find(all, chosen.option, &options::Option::id);
    BOOST_TEST_REQUIRE((found != all.end()), chosen.show.toStdString() << " " << chosen.hang.toStdString());
    BOOST_TEST((found->verdict != Verdict::fails), chosen.show.toStdString());
    BOOST_TEST((found->verdict != Verdict::unproven || !chosen.because.isEmpty()));
  }
}

BOOST_AUTO_TEST_CASE(the_field_is_judged_against_its_gust) {
  for (const options::Option& option : demoOptions(QStringLiteral("Lindrake")).hangs.front().options) {
    const options::Finding& finding = findingOf(option, "wind");
    BOOST_TEST(finding.applies);
    BOOST_TEST((finding.verdict != Verdict::unproven), finding.text.toStdString());
    BOOST_TEST(finding.text.contains(QStringLiteral("9 m/s")), finding.text.toStdString());
  }
}

BOOST_AUTO_TEST_CASE(an_odd_number_a_side_shares_a_cart) {
  const auto& all = demoOptions(QStringLiteral("Ostrel")).hangs.front().options;
  const auto chosen = std::ranges::find(demoTour().chosen, QStringLiteral("Ostrel"), &exchange::Chosen::show);
  const auto found = std::ranges::find(all, chosen->option, &options::Option::id);
  BOOST_REQUIRE(found != all.end());
  const QString words = findingOf(*found, "carts").text;
  BOOST_TEST(std::ranges::count(found->key.stack, QStringLiteral("Marram bass")) % 2 == 1);
  BOOST_TEST(words.contains(QStringLiteral("shared")), words.toStdString());
}

BOOST_AUTO_TEST_CASE(one_bar_is_overdue_and_one_hoist_falls_due_on_the_way) {
  const exchange::Data& tour = demoTour();
  const auto until = [&](const char* serial) {
    const auto unit = std::ranges::find(tour.units, QString::fromLatin1(serial), &fleet::Unit::serial);
    BOOST_REQUIRE(unit != tour.units.end());
    bool ruled = false;
    return fleet::standsUntil(*unit, tour.examinationRules, fleet::LastExaminations(tour.examinations),
                              &ruled);
  };
  BOOST_TEST((until("MR04") < demoToday()));
  BOOST_TEST((until("H2005") > tour.shows.front().awayFrom));
  BOOST_TEST((until("H2005") < tour.shows.back().awayFrom));
}

BOOST_AUTO_TEST_CASE(through_files_and_back_the_options_are_the_same) {
  const exchange::Data again = throughFiles(demoTour());
  BOOST_TEST((again == demoTour()));
  for (const char* show : {"Pollan Cross", "Ostrel"}) {
    const options::ShowOptions& before = demoOptions(QString::fromLatin1(show));
    const auto after = optionsOf(again, QString::fromLatin1(show), QStringLiteral("left"));
    BOOST_TEST_REQUIRE(before.hangs.front().options.size() == after.hangs.front().options.size());
    for (std::size_t at = 0; at < before.hangs.front().options.size(); ++at) {
      const options::Option& one = before.hangs.front().options[at];
      const options::Option& other = after.hangs.front().options[at];
      BOOST_TEST(one.id.toStdString() == other.id.toStdString());
      BOOST_TEST((one.verdict == other.verdict));
      BOOST_TEST(one.setting.has_value() == other.setting.has_value());
      BOOST_TEST((!one.setting || one.setting->trimM == other.setting->trimM)); // to the bit
    }
  }
}

BOOST_DATA_TEST_CASE(what_passes_has_a_window_and_hangs_in_it, data::make(triedStops()), stop) {
  for (const options::HangOptions& hang : demoOptions(QString::fromLatin1(stop.show)).hangs) {
    for (const options::Option& option : hang.options) {
      if (option.verdict == Verdict::holds || option.verdict == Verdict::tight) {
        BOOST_REQUIRE(option.trimWindow.has_value());
        BOOST_TEST(option.setting->trimM >= option.trimWindow->lowM);
        BOOST_TEST(option.setting->trimM <= option.trimWindow->highM);
      }
    }
  }
}

BOOST_AUTO_TEST_SUITE_END()
