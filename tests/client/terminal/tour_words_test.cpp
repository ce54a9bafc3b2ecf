// SPDX-License-Identifier: GPL-3.0-or-later
// The words about a whole tour on the demo: checking it, house rules, comparing, the same as before.
#include <boost/test/unit_test.hpp>

#include "client/terminal/demo_fixture.h"

using namespace hangbook;
using hangbook::testing::Demo;
using hangbook::testing::listOf;
using hangbook::testing::Ran;
using hangbook::testing::textOf;
using terminal::Ending;

BOOST_TEST_DONT_PRINT_LOG_VALUE(Ending)

namespace {

int checkedNow(const Ran& ran) {
  int now = 0;
  for (const QJsonValue& each : listOf(ran.json(), "shows")) {
    now += each[QStringLiteral("kept")].toBool() ? 0 : 1;
  }
  return now;
}

QJsonObject hangOf(const Ran& ran, const char* show, int hang) {
  for (const QJsonValue& each : listOf(ran.json(), "shows")) {
    if (textOf(each.toObject(), "show") == QLatin1String(show)) {
      return listOf(each.toObject(), "hangs").at(hang).toObject();
    }
  }
  BOOST_FAIL("no show " << show);
  return {};
}

} // namespace

BOOST_FIXTURE_TEST_SUITE(tour_words, Demo)

BOOST_AUTO_TEST_CASE(a_tour_is_checked_once_and_after_an_edit_only_what_it_touched) {
  const Ran taken =
      run({"import", "--kind", "shows", "-", "--by", "Casimir Wold"},
          "record,tour,name,venue,from,to,away from,away to,people beneath,show,points,tables,cable mass "
          "[kg],rigging\n"
          "tour,,Ostler Run,,,,,,,,,,,\n"
          "show,Ostler Run,First,Tallow Hall,2028-04-02,2028-04-02,2028-04-01,2028-04-02,yes,,,,,\n"
          "hang,Ostler Run,left,,,,,,,First,L1; L2,Samphire,12,Shackle 16\n"
          "show,Ostler Run,Second,Cooperage Theatre,2028-04-05,2028-04-05,2028-04-04,2028-04-05,yes,,,,,\n"
          "hang,Ostler Run,left,,,,,,,Second,L1,Samphire,12,Shackle 16\n");
  BOOST_REQUIRE_MESSAGE(taken.ending == Ending::done, taken.err + taken.out);
  const std::vector<std::string> check{"route", "--check", "--tour", "Ostler Run", "--json"};
  const Ran first = run(check);
  BOOST_TEST(checkedNow(first) == 2);
  BOOST_TEST(first.warned("2 of 2"));
  const QJsonObject hang = hangOf(first, "Second", 0);
  BOOST_TEST(hang[QStringLiteral("options")].toInt() > 0);
  BOOST_TEST(hang[QStringLiteral("holds")].toInt() + hang[QStringLiteral("tight")].toInt() +
                 hang[QStringLiteral("unproven")].toInt() + hang[QStringLiteral("fails")].toInt() ==
             hang[QStringLiteral("options")].toInt());
  BOOST_TEST(hang[QStringLiteral("chosen")].isNull());

  const Ran second = run(check);
  BOOST_TEST(checkedNow(second) == 0);
  BOOST_TEST((hangOf(second, "Second", 0) == hang));

  const Ran edited =
      run({"house", "set", "--for", "venue", "--venue", "Tallow Hall", "--figure", "headroom-clearance",
           "--value", "0.2", "--because", "pipes", "--by", "Casimir Wold"});
  BOOST_TEST(edited.ending == Ending::done, edited.err);
  const Ran third = run(check);
  BOOST_TEST(checkedNow(third) == 1);
  BOOST_TEST((hangOf(third, "Second", 0) == hang));
  auto afresh = check;
  afresh.push_back("--afresh");
  BOOST_TEST(checkedNow(run(afresh)) == 2);
}

BOOST_AUTO_TEST_CASE(a_house_rule_tells_which_chosen_options_change_their_verdict) {
  const std::vector<std::string> words{"house",   "set",          "--for",     "venue",
                                       "--venue", "Tallow Hall",  "--figure",  "headroom-clearance",
                                       "--value", "2.6",          "--because", "sprinkler heads",
                                       "--by",    "Casimir Wold", "--json"};
  auto tried = words;
  tried.push_back("--dry-run");
  for (const auto& each : {tried, words}) {
    const Ran ran = run(each);
    BOOST_TEST(ran.ending == Ending::failing);
    const QJsonArray changed = listOf(ran.json(), "changed");
    BOOST_REQUIRE(changed.size() == 2);
    BOOST_TEST(textOf(changed.at(0).toObject(), "before").toStdString() == "holds");
    BOOST_TEST(textOf(changed.at(0).toObject(), "now").toStdString() == "fails");
    BOOST_TEST(textOf(changed.at(0).toObject(), "because").contains(QStringLiteral("headroom")));
  }
  const Ran sheet =
      run({"options", "--show", "Pollan Cross", "--hang", "left", "--explain", "0e23bbcc", "--json"});
  BOOST_TEST(sheet.said("house rule of the venue: sprinkler heads (Casimir Wold, 2026-11-25)"));
  BOOST_TEST(run({"house", "--show", "Pollan Cross"}).said("sprinkler heads"));
  const Ran back = run({"house", "set", "--for", "venue", "--venue", "Tallow Hall", "--figure",
                        "headroom-clearance", "--withdraw", "--by", "Casimir Wold", "--json"});
  BOOST_TEST(back.ending == Ending::done);
  BOOST_TEST(listOf(back.json(), "changed").size() == 2);
}

BOOST_AUTO_TEST_CASE(house_rules_are_refused_where_they_loosen_or_say_nothing) {
  const auto refused = [this](std::vector<std::string> words, const char* says) {
    words.insert(words.begin(), {"house", "set"});
    words.insert(words.end(), {"--by", "Casimir Wold"});
    const Ran ran = run(words);
    BOOST_TEST(ran.ending == Ending::badInput);
    BOOST_TEST(ran.warned(says), ran.err);
  };
  refused({"--for", "tour", "--figure", "lean-most", "--value", "8", "--because", "x"}, "only be tightened");
  refused({"--for", "tour", "--figure", "beauty", "--value", "8", "--because", "x"}, "no house figure");
  refused({"--for", "tour", "--figure", "lean-most", "--value", "-1", "--because", "x"}, "below 0");
  refused({"--for", "tour", "--figure", "lean-most", "--value", "3"}, "--because");
  refused({"--for", "hall", "--figure", "lean-most", "--value", "3", "--because", "x"}, "tour, venue, show");
  refused({"--for", "venue", "--venue", "Nowhere", "--figure", "lean-most", "--value", "3", "--because", "x"},
          "Nowhere");
  refused({"--for", "tour", "--figure", "lean-most", "--withdraw"}, "states no lean-most");
}

BOOST_AUTO_TEST_CASE(options_are_compared_differences_first) {
  const Ran ran = run({"compare", "--show", "Pollan Cross", "--hang", "left", "--option", "0e23bbcc",
                       "--option", "4696e866", "--json"});
  BOOST_TEST(ran.ending == Ending::done, ran.err);
  const QJsonArray rows = listOf(ran.json(), "rows");
  BOOST_TEST(rows.at(0)[QStringLiteral("differs")].toBool());
  BOOST_TEST(!rows.last()[QStringLiteral("differs")].toBool());
  BOOST_TEST(run({"compare", "--show", "Pollan Cross", "--option", "0e23bbcc"}).ending == Ending::badInput);
}

BOOST_AUTO_TEST_CASE(the_order_that_was_asked_for_is_remembered) {
  const auto firstOf = [this](std::vector<std::string> words) {
    words.insert(words.begin(), {"options", "--show", "Pollan Cross", "--hang", "left", "--json"});
    return listOf(listOf(run(words).json(), "hangs").at(0).toObject(), "options");
  };
  const QJsonArray cover = firstOf({});
  const QJsonArray lightest = firstOf({"--order", "lightest"});
  BOOST_TEST((cover != lightest));
  BOOST_TEST((firstOf({}) == lightest));
  BOOST_TEST((firstOf({"--order", "cover"}) == cover));
  bool beaten = false;
  for (const QJsonValue& each : cover) {
    beaten = beaten || each[QStringLiteral("beaten_by")].isString();
  }
  BOOST_TEST(beaten);
  BOOST_TEST(run({"options", "--show", "Pollan Cross", "--order", "beauty"}).ending == Ending::badInput);
}

BOOST_AUTO_TEST_CASE(the_same_as_yesterday_is_chosen_by_todays_rules) {
  const Ran none = run(
      {"choose", "--show", "Pollan Cross", "--hang", "left", "--same-as", "here", "--by", "Casimir Wold"});
  BOOST_TEST(none.ending == Ending::badInput);
  const Ran ran = run({"choose", "--show", "Brankstead", "--hang", "left", "--same-as", "yesterday",
                       "--reason", "as at Vintersund", "--by", "Casimir Wold", "--json"});
  BOOST_TEST((ran.ending == Ending::done || ran.ending == Ending::failing), ran.err);
  BOOST_TEST(ran.out.find("\"chosen\"") != std::string::npos);
}

BOOST_AUTO_TEST_SUITE_END()
