// SPDX-License-Identifier: GPL-3.0-or-later
// The words about options, on the demo tour: listing, explaining, choosing.
#include <boost/test/unit_test.hpp>

#include "client/terminal/demo_fixture.h"

using namespace hangbook;
using hangbook::testing::Demo;
using hangbook::testing::listOf;
using hangbook::testing::optionOf;
using hangbook::testing::Ran;
using hangbook::testing::textOf;
using terminal::Ending;

BOOST_TEST_DONT_PRINT_LOG_VALUE(Ending)

BOOST_FIXTURE_TEST_SUITE(options_words, Demo)

BOOST_AUTO_TEST_CASE(the_demo_fills_an_empty_store_only) {
  const Ran again = run({"demo"});
  BOOST_TEST(again.ending == Ending::done);
  BOOST_TEST(again.said("there already"));
  BOOST_REQUIRE(
      run({"import", "--kind", "shows", "-", "--by", "Casimir Wold"}, "record,name\ntour,Ostler Run\n")
          .ending == Ending::done);
  const Ran refused = run({"demo"});
  BOOST_TEST(refused.ending == Ending::failing);
  BOOST_TEST(refused.oneLineOfTrouble());
  BOOST_TEST(refused.warned("Ostler Run"));
}

BOOST_AUTO_TEST_CASE(the_demo_tells_the_next_show_by_the_day) {
  const Ran told = run({"demo", "--tell"});
  BOOST_TEST(told.ending == Ending::done);
  BOOST_TEST(told.said("The next show, Pollan Cross"));
  BOOST_TEST(told.said("display"));
  const Ran later = testing::ranWith({"demo", "--tell", "--store", place, "--as-of", "2027-05-04"});
  BOOST_TEST(later.said("The next show, Eskerholt"));
  const Ran after = testing::ranWith({"demo", "--tell", "--store", place, "--as-of", "2028-01-01"});
  BOOST_TEST(after.said("The last show, Lindrake"));
}

BOOST_AUTO_TEST_CASE(options_are_listed_in_110_columns_and_end_with_their_verdict) {
  const Ran good = run({"options", "--show", "Pollan Cross", "--hang", "left"});
  BOOST_TEST(good.ending == Ending::done);
  BOOST_TEST(good.err.empty());
  qsizetype widest = 0;
  for (const QString& line : QString::fromStdString(good.out).split(QLatin1Char('\n'))) {
    widest = std::max(widest, line.size());
  }
  BOOST_TEST(widest <= 110);
  BOOST_TEST(run({"options", "--show", "Grenmouth", "--hang", "left"}).ending == Ending::failing);
}

BOOST_AUTO_TEST_CASE(one_option_is_explained_by_the_beginning_of_its_name) {
  const std::string id = optionOf(*this, "Pollan Cross", "left", "holds");
  const Ran sheet = run({"options", "--show", "Pollan Cross", "--explain", id.substr(0, 10)});
  BOOST_TEST(sheet.ending == Ending::done);
  for (const char* part : {"point-load", "headroom", "stock", "Trim may lie from", "L1"}) {
    BOOST_TEST(sheet.said(part));
  }
  BOOST_TEST(sheet.said(id));
  BOOST_TEST(!sheet.said("NOT CLEARED"));
  BOOST_TEST(sheet.said("Level, advice that no verdict reads"));
  BOOST_TEST(sheet.said("front to back"));
  const Ran none = run({"options", "--show", "Pollan Cross", "--explain", "zz"});
  BOOST_TEST(none.ending == Ending::badInput);
  BOOST_TEST(none.oneLineOfTrouble());
  const Ran empty = run({"options", "--show", "Pollan Cross", "--explain", ""});
  BOOST_TEST(empty.ending == Ending::badInput);
  const Ran fails =
      run({"options", "--show", "Grenmouth", "--explain", optionOf(*this, "Grenmouth", "left", "fails")});
  BOOST_TEST(fails.ending == Ending::failing);
  BOOST_TEST(fails.said("NOT CLEARED TO LIFT"));
}

BOOST_AUTO_TEST_CASE(the_order_inside_a_verdict_is_the_users) {
  const auto firstOf = [&](const char* order) {
    const QJsonObject all =
        run({"options", "--show", "Pollan Cross", "--hang", "left", "--json", "--order", order}).json();
    QStringList ids;
    for (const QJsonValue& each : listOf(listOf(all, "hangs").at(0).toObject(), "options")) {
      ids << textOf(each.toObject(), "id");
    }
    return ids;
  };
  const QStringList byGear = firstOf("gear");
  QStringList one = firstOf("cover");
  QStringList other = byGear;
  BOOST_TEST((one != other));
  one.sort();
  other.sort();
  BOOST_TEST((one == other));
  const Ran wrong = run({"options", "--show", "Pollan Cross", "--order", "best"});
  BOOST_TEST(wrong.ending == Ending::badInput);
  BOOST_TEST(wrong.warned("cover, lightest, gear"));
}

BOOST_AUTO_TEST_CASE(unknown_names_are_one_line_with_the_nearest) {
  for (const std::vector<std::string>& words : std::vector<std::vector<std::string>>{
           {"options", "--show", "Polan Cross"},
           {"mark", "--show", "Polan Cross"},
           {"choose", "--show", "Polan Cross", "--hang", "left", "--option", "0"},
           {"mark", "record", "--show", "Polan Cross", "--hang", "left", "--mark", "3"}}) {
    const Ran ran = run(words);
    BOOST_TEST(ran.ending == Ending::badInput);
    BOOST_TEST(ran.oneLineOfTrouble());
    BOOST_TEST(ran.warned("Pollan Cross"));
  }
  const Ran hang = run({"options", "--show", "Pollan Cross", "--hang", "middle"});
  BOOST_TEST(hang.ending == Ending::badInput);
  BOOST_TEST(hang.warned("left"));
  BOOST_TEST(run({"route", "--tour", "Lanternfish"}).warned("Lanternfish Parade 2027"));
}

BOOST_AUTO_TEST_CASE(show_names_that_repeat_need_their_tour) {
  const std::string second =
      "record,tour,name,venue,from,to,away from,away to\n"
      "tour,,Ostler Run,,,,,\n"
      "show,Ostler Run,Ostrel,Tallow Hall,2027-09-01,2027-09-01,2027-08-31,2027-09-02\n";
  const Ran taken = run({"import", "--kind", "shows", "-", "--by", "Casimir Wold"}, second);
  BOOST_REQUIRE_MESSAGE(taken.ending == Ending::done, taken.err);
  const Ran two = run({"mark", "--show", "Ostrel"});
  BOOST_TEST(two.ending == Ending::badInput);
  BOOST_TEST(two.warned("Lanternfish Parade 2027"));
  BOOST_TEST(two.warned("Ostler Run"));
  BOOST_TEST(run({"mark", "--show", "Ostrel", "--tour", "Lanternfish Parade 2027"}).ending == Ending::done);
  const Ran route = run({"route"});
  BOOST_TEST(route.ending == Ending::badInput);
  BOOST_TEST(run({"route", "--tour", "Ostler Run"}).ending == Ending::done);
}

BOOST_AUTO_TEST_CASE(what_fails_is_not_chosen_and_says_why) {
  const Ran ran = run({"choose", "--show", "Grenmouth", "--hang", "left", "--option",
                       optionOf(*this, "Grenmouth", "left", "fails"), "--by", "Casimir Wold"});
  BOOST_TEST(ran.ending == Ending::failing);
  BOOST_TEST(ran.oneLineOfTrouble());
  BOOST_TEST(ran.warned("point-load"));
}

BOOST_AUTO_TEST_CASE(what_is_unproven_needs_a_reason_and_a_name) {
  const std::string id = optionOf(*this, "Vintersund", "left", "unproven");
  const std::vector<std::string> words{"choose", "--show", "Vintersund", "--hang", "left", "--option", id};
  const auto with = [&](std::vector<std::string> more) {
    more.insert(more.begin(), words.begin(), words.end());
    return run(more);
  };
  BOOST_TEST(with({"--by", "Casimir Wold"}).ending == Ending::badInput);
  BOOST_TEST(with({"--by", "Casimir Wold"}).warned("reason"));
  BOOST_TEST(with({"--reason", "   ", "--by", "Casimir Wold"}).ending == Ending::badInput);
  BOOST_TEST(with({"--reason", "sheet comes on Monday"}).ending == Ending::badInput);
  BOOST_TEST(with({"--reason", "sheet comes on Monday"}).warned("--by"));
  const Ran pencilled = with({"--reason", "sheet comes on Monday", "--by", "Casimir Wold"});
  BOOST_TEST(pencilled.ending == Ending::failing);
  BOOST_TEST(pencilled.said("NOT CLEARED TO LIFT"));
  BOOST_TEST(pencilled.said("sheet comes on Monday"));
}

BOOST_AUTO_TEST_SUITE_END()
