// SPDX-License-Identifier: GPL-3.0-or-later
// Marks, examinations and the route, on the demo tour.
#include <boost/test/data/monomorphic.hpp>
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include "client/terminal/demo_fixture.h"

using namespace hangbook;
using hangbook::testing::Demo;
using hangbook::testing::listOf;
using hangbook::testing::optionOf;
using hangbook::testing::Ran;
using hangbook::testing::textOf;
using terminal::Ending;
namespace data = boost::unit_test::data;

BOOST_TEST_DONT_PRINT_LOG_VALUE(Ending)

BOOST_FIXTURE_TEST_SUITE(marks_words, Demo)

BOOST_AUTO_TEST_CASE(a_mark_is_recorded_for_what_is_chosen_and_recalled_newest_first) {
  const std::string id = optionOf(*this, "Ostrel", "left", "holds");
  BOOST_REQUIRE(
      run({"choose", "--show", "Ostrel", "--hang", "left", "--option", id, "--by", "Orla Tench"}).ending ==
      Ending::done);
  const auto record = [&](const char* mark, const char* date) {
    return run({"mark", "record", "--show", "Ostrel", "--hang", "left", "--mark", mark, "--measured", "-9.5",
                "--date", date, "--weather", "dry", "--by", "Orla Tench"});
  };
  BOOST_TEST(record("101", "2026-11-20").ending == Ending::done);
  BOOST_TEST(record("102", "2026-11-24").ending == Ending::done);
  BOOST_TEST(record("103", "2026-11-22").ending == Ending::done);
  const QJsonObject told = run({"mark", "--show", "Ostrel", "--json"}).json();
  BOOST_TEST(textOf(told, "format").toStdString() == "hangbook.marks/1");
  const QJsonObject left = listOf(told, "hangs").at(0).toObject();
  QList<int> marks;
  for (const QJsonValue& each : listOf(left, "recorded")) {
    marks << each[QLatin1String("mark")].toInt();
  }
  BOOST_REQUIRE(marks.size() >= 3);
  BOOST_TEST((marks.mid(0, 3) == QList<int>{102, 103, 101}));
  BOOST_TEST(listOf(left, "recorded").at(0)[QLatin1String("angle_deg")].toDouble() == -9.5);
  BOOST_TEST(left[QLatin1String("mark")].isDouble());
  BOOST_TEST(listOf(left, "neighbours").size() == 2);
  BOOST_TEST(run({"mark", "--show", "Ostrel"}).said("Orla Tench"));
}

BOOST_DATA_TEST_CASE_F(Demo, wrong_marks_are_refused, data::make({"0", "-1", "3.5", "three", "100000", ""}),
                       mark) {
  const Ran ran =
      run({"mark", "record", "--show", "Ostrel", "--hang", "left", "--mark", mark, "--by", "Orla Tench"});
  BOOST_TEST(ran.ending == Ending::badInput);
  BOOST_TEST(ran.oneLineOfTrouble());
}

BOOST_AUTO_TEST_CASE(a_mark_needs_a_chosen_option_and_a_day_that_has_come) {
  const Ran none =
      run({"mark", "record", "--show", "Grenmouth", "--hang", "left", "--mark", "5", "--by", "Orla Tench"});
  BOOST_TEST(none.ending == Ending::failing);
  BOOST_TEST(none.warned("nothing is chosen"));
  const Ran early = run({"mark", "record", "--show", "Ostrel", "--hang", "left", "--mark", "5", "--by",
                         "Orla Tench", "--date", "2026-11-26"});
  BOOST_TEST(early.ending == Ending::badInput);
}

BOOST_AUTO_TEST_CASE(hold_points_are_signed_in_order_and_skipping_takes_a_reason) {
  const auto gate = [&](std::vector<std::string> more) {
    std::vector<std::string> words{"gate", "--show", "Ostrel"};
    words.insert(words.end(), more.begin(), more.end());
    return run(words);
  };
  const Ran open = gate({"--json"});
  BOOST_TEST(open.ending == Ending::failing);
  const QJsonArray gates = listOf(listOf(open.json(), "hangs").at(0).toObject(), "gates");
  BOOST_REQUIRE(gates.size() == 5 + 3);
  BOOST_TEST(textOf(gates.at(0).toObject(), "gate").toStdString() == "pins 1");
  BOOST_TEST(textOf(gates.at(0).toObject(), "standing").toStdString() == "open");
  const Ran early = gate({"--hang", "left", "--gate", "chain", "--by", "Orla Tench"});
  BOOST_TEST(early.ending == Ending::failing);
  BOOST_TEST(early.warned("pins 1"));
  BOOST_TEST(gate({"--hang", "left", "--gate", "pins 9", "--by", "Orla Tench"}).ending == Ending::badInput);
  for (int i = 1; i <= 5; ++i) {
    const Ran made = gate({"--hang", "left", "--gate", "pins " + std::to_string(i), "--by", "Orla Tench"});
    BOOST_TEST(made.ending == Ending::done, made.err);
  }
  BOOST_TEST(gate({"--hang", "left", "--gate", "chain", "--skip", "", "--by", "Orla Tench"}).ending ==
             Ending::badInput);
  BOOST_TEST(
      gate({"--hang", "left", "--gate", "chain", "--skip", "seen by two already", "--by", "Bram Osterley"})
          .ending == Ending::done);
  const Ran now = gate({"--hang", "left"});
  BOOST_TEST(now.ending == Ending::failing); // steel and final check stand open
  BOOST_TEST(now.said("skipped"));
  BOOST_TEST(now.said("seen by two already"));
  BOOST_TEST(now.said("Bram Osterley"));
  const Ran sheet = run({"export", "--kind", "gates"});
  BOOST_TEST(sheet.out.starts_with("tour,show,hang,option,hold point,what,reason,entry,corrects,"));
  BOOST_TEST(std::count(sheet.out.begin(), sheet.out.end(), '\n') == 1 + 6); // one skipped, none refused
  BOOST_TEST(sheet.said(",pins 5,signed,,"));
  BOOST_TEST(sheet.said(",chain,skipped,seen by two already,"));
  BOOST_TEST(sheet.said(",Bram Osterley,"));
}

BOOST_AUTO_TEST_CASE(what_the_mark_book_says_of_each_chain_is_told) {
  const QJsonArray chains = listOf(run({"mark", "learned", "--json"}).json(), "chains");
  BOOST_REQUIRE(chains.size() >= 3);
  const QJsonObject first = chains.at(0).toObject();
  BOOST_TEST(textOf(first, "serial").toStdString() == "CH01");
  BOOST_TEST(first[QLatin1String("used")].toInt() == 2);
  BOOST_TEST(!first[QLatin1String("separable")].toBool());
  BOOST_TEST(listOf(first, "records").size() == 2);
  BOOST_TEST(listOf(chains.at(2).toObject(), "left_out").size() == 1); // no angle was measured
}

BOOST_AUTO_TEST_CASE(build_tells_the_steps_of_both_sides_in_order) {
  const Ran ran = run({"build", "--show", "Ostrel", "--json"});
  BOOST_TEST(ran.ending == Ending::done);
  const QJsonObject plan = ran.json();
  BOOST_TEST(textOf(plan, "format").toStdString() == "hangbook.build/1");
  BOOST_TEST(textOf(plan, "standing").toStdString() == "planned");
  const QJsonArray steps = listOf(plan, "steps");
  int number = 0;
  int signs = 0;
  bool crosses = false;
  for (const QJsonValue& each : steps) {
    BOOST_TEST(each[QLatin1String("number")].toInt() == ++number);
    signs += each[QLatin1String("gate")].isString() ? 1 : 0;
    crosses = crosses || (textOf(each.toObject(), "kind") == "cart-across" &&
                          textOf(each.toObject(), "across_to") == "right");
  }
  // Five cabinets a side, chain, secondary steel and final check ask for a name each.
  BOOST_TEST(signs == 2 * (5 + 3));
  BOOST_TEST(crosses);
  const QJsonArray left =
      listOf(run({"build", "--show", "Ostrel", "--hang", "left", "--json"}).json(), "steps");
  BOOST_TEST(left.size() == std::count_if(steps.begin(), steps.end(), [](const QJsonValue& each) {
               return textOf(each.toObject(), "hang") == "left";
             }));
  BOOST_TEST(left.size() > 30);
  const Ran unproven = run({"build", "--show", "Vintersund"});
  BOOST_TEST(unproven.ending == Ending::failing);
  BOOST_TEST(unproven.out.find("NOT CLEARED TO LIFT") != std::string::npos);
}

BOOST_AUTO_TEST_CASE(due_is_sorted_with_what_is_overdue_first) {
  const QJsonObject due = run({"due", "--within", "12m", "--json"}).json();
  BOOST_TEST(textOf(due, "format").toStdString() == "hangbook.due/1");
  BOOST_TEST(textOf(due, "as_of").toStdString() == "2026-11-25");
  const QJsonArray lines = listOf(due, "due");
  BOOST_REQUIRE(lines.size() > 1);
  BOOST_TEST(lines.at(0)[QLatin1String("overdue")].toBool());
  bool overdue = true;
  QString last;
  for (const QJsonValue& each : lines) {
    const bool late = each[QLatin1String("overdue")].toBool();
    BOOST_TEST((overdue || !late));
    overdue = late;
    const QString day = textOf(each.toObject(), "due");
    BOOST_TEST((last.isEmpty() || day.isEmpty() || last <= day));
    last = day.isEmpty() ? last : day;
  }
  BOOST_TEST(listOf(run({"due", "--within", "1d", "--json"}).json(), "due").size() < lines.size());
  const Ran wrong = run({"due", "--within", "soon"});
  BOOST_TEST(wrong.ending == Ending::badInput);
  BOOST_TEST(wrong.warned("90d, 12w or 6m"));
  BOOST_TEST(run({"due"}).ending == Ending::badInput);
}

BOOST_AUTO_TEST_CASE(the_route_ends_with_1_where_a_chosen_option_is_unproven) {
  const Ran ran = run({"route", "--json"});
  const QJsonArray shows = listOf(ran.json(), "shows");
  BOOST_TEST(shows.size() == 11);
  // By hand for the first two: 125.7 km north and 51.3 km west (a degree of latitude 111.3 km there).
  BOOST_TEST(shows[1][QLatin1String("way_km")].toDouble() == 135.8, boost::test_tools::tolerance(0.005));
  bool trouble = false;
  QString last;
  for (const QJsonValue& show : shows) {
    BOOST_TEST((last <= textOf(show.toObject(), "from")));
    BOOST_TEST(show[QLatin1String("way_km")].isNull() == last.isEmpty()); // from the stop before
    BOOST_TEST(show[QLatin1String("days_before")].isNull() == last.isEmpty());
    last = textOf(show.toObject(), "from");
    for (const QJsonValue& hang : listOf(show.toObject(), "hangs")) {
      const QString verdict = textOf(hang.toObject(), "verdict");
      BOOST_TEST(hang[QLatin1String("chosen")].isNull() == hang[QLatin1String("verdict")].isNull());
      trouble = trouble || verdict == QLatin1String("unproven") || verdict == QLatin1String("fails");
    }
  }
  BOOST_TEST((ran.ending == (trouble ? Ending::failing : Ending::done)));
  BOOST_TEST(run({"route"}).said("Pollan"));
}

BOOST_AUTO_TEST_SUITE_END()
