// SPDX-License-Identifier: GPL-3.0-or-later
// The words that answer from a store, in process, on the demo tour.
#include <boost/test/data/monomorphic.hpp>
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include <QFile>
#include <QFileInfo>
#include <QJsonArray>
#include <QTemporaryDir>

#include "client/terminal/ran.h"
#include "store/store.h"
#include "support/fresh_store.h"

using namespace hangbook;
using hangbook::testing::FreshStore;
using hangbook::testing::Ran;
using terminal::Ending;
namespace data = boost::unit_test::data;

BOOST_TEST_DONT_PRINT_LOG_VALUE(Ending)

namespace {

/// The demo, filled once; each test works on a copy of its own.
const QString& filledDemo() {
  static const QTemporaryDir folder;
  static const QString file = [] {
    const QString where = folder.filePath(QStringLiteral("demo.sqlite"));
    const Ran ran = testing::ranWith({"demo", "--store", where.toStdString(), "--by", "Casimir Wold"});
    BOOST_REQUIRE_MESSAGE(ran.ending == Ending::done, ran.err);
    return where;
  }();
  return file;
}

struct Demo {
  QTemporaryDir folder;
  std::string place = folder.filePath(QStringLiteral("tour.sqlite")).toStdString();

  Demo() {
    BOOST_REQUIRE(testing::ranWith({"backup", place, "--store", filledDemo().toStdString()}).ending ==
                  Ending::done);
  }

  Ran run(std::vector<std::string> words, const std::string& input = {}) const {
    words.insert(words.end(), {"--store", place, "--as-of", "2026-11-25"});
    return testing::ranWith(words, input);
  }
};

QString textOf(const QJsonObject& object, const char* key) {
  return object[QLatin1String(key)].toString();
}

QJsonArray listOf(const QJsonObject& object, const char* key) {
  return object[QLatin1String(key)].toArray();
}

/// The first option of a hang with this verdict.
std::string optionOf(const Demo& demo, const std::string& show, const std::string& hang,
                     const char* verdict) {
  const QJsonObject all = demo.run({"options", "--show", show, "--hang", hang, "--json"}).json();
  for (const QJsonValue& each : listOf(listOf(all, "hangs").at(0).toObject(), "options")) {
    if (textOf(each.toObject(), "verdict") == QLatin1String(verdict)) {
      return textOf(each.toObject(), "id").toStdString();
    }
  }
  BOOST_FAIL("no option of " << show << " " << verdict);
  return {};
}

} // namespace

BOOST_FIXTURE_TEST_SUITE(terminal_words, Demo)

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
  bool trouble = false;
  QString last;
  for (const QJsonValue& show : shows) {
    BOOST_TEST((last <= textOf(show.toObject(), "from")));
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

BOOST_AUTO_TEST_CASE(a_broken_file_is_told_line_by_line_and_nothing_is_written) {
  const std::string before = run({"export", "--kind", "venues"}).out;
  const std::string broken = "record,venue,name,x,y,z,capacity\n"
                             "point,Tallow Hall,N1,0,0,9,1 ton\n"
                             "point,Tallow Hall,N2,0,0,nine,2 kN\n"
                             "point,Tallow Hall,N3,0,0,9,2 kN\n";
  const Ran ran = run({"import", "--kind", "venues", "-", "--by", "Casimir Wold"}, broken);
  BOOST_TEST(ran.ending == Ending::badInput);
  BOOST_TEST(ran.warned("line 2, column capacity: read “1 ton”, expected"));
  BOOST_TEST(ran.warned("line 3, column z: read “nine”, expected"));
  BOOST_TEST(ran.warned("2 faults; nothing was written"));
  BOOST_TEST((run({"export", "--kind", "venues"}).out == before));
  const QJsonObject json = run({"import", "--kind", "venues", "-", "--json"}, broken).json();
  BOOST_TEST(listOf(json, "faults").size() == 2);
  BOOST_TEST(!json[QLatin1String("written")].toBool());
}

BOOST_AUTO_TEST_CASE(a_dry_run_says_what_would_be_and_writes_nothing) {
  const std::string before = run({"export", "--kind", "people"}).out;
  const std::string file = "name,role\nIda Quill,rigger\n";
  const Ran dry = run({"import", "--kind", "people", "-", "--dry-run"}, file);
  BOOST_TEST(dry.ending == Ending::done);
  BOOST_TEST(dry.said("person: 1 new, 0 changed, 0 the same already"));
  BOOST_TEST((run({"export", "--kind", "people"}).out == before));
  BOOST_TEST(run({"import", "--kind", "people", "-"}, file).ending == Ending::done);
  BOOST_TEST(run({"export", "--kind", "people"}).said("Ida Quill"));
}

BOOST_AUTO_TEST_CASE(dates_and_decimal_marks_are_read_as_was_said) {
  const std::string file = "record;serial;rule;date\nexamination;MR04;bar half-yearly;24.11.2026\n";
  BOOST_TEST(run({"import", "--kind", "units", "-"}, file).ending == Ending::badInput);
  BOOST_TEST(run({"import", "--kind", "units", "-", "--date-format", "dd.MM.yyyy"}, file).ending ==
             Ending::done);
  BOOST_TEST(run({"export", "--kind", "units"}).said("2026-11-24"));
  BOOST_TEST(run({"import", "--kind", "units", "-", "--date-format", "dd.MM"}, file).ending ==
             Ending::badInput);
  const std::string point = "record\tvenue\tname\tx\ty\tz\npoint\tTallow Hall\tN9\t1,250\t0\t9\n";
  const Ran unsaid = run({"import", "--kind", "venues", "-"}, point);
  BOOST_TEST(unsaid.ending == Ending::badInput); // 1,250 may be one thousand and more
  BOOST_TEST(run({"import", "--kind", "venues", "-", "--decimal-mark", ","}, point).ending == Ending::done);
  BOOST_TEST(run({"import", "--kind", "venues", "-", "--decimal-mark", ";"}, point).ending ==
             Ending::badInput);
}

BOOST_AUTO_TEST_CASE(import_of_what_cannot_be_read_makes_no_store) {
  const std::string fresh = folder.filePath(QStringLiteral("fresh.sqlite")).toStdString();
  for (const std::vector<std::string>& words : std::vector<std::vector<std::string>>{
           {"import", "--kind", "people", "no-such-file.csv", "--store", fresh},
           {"import", "--kind", "people", folder.path().toStdString(), "--store", fresh},
           {"import", "--kind", "crews", "-", "--store", fresh},
           {"import", "--kind", "people", "-", "--store", fresh},
           {"import", "--kind", "people", "-", "--dry-run", "--store", fresh}}) {
    BOOST_TEST(testing::ranWith(words, "name,shoe size\nIda Quill,38\n").ending == Ending::badInput);
    BOOST_TEST(!QFileInfo::exists(QString::fromStdString(fresh)));
  }
  BOOST_TEST(
      testing::ranWith({"import", "--kind", "people", "-", "--store", fresh}, "name\nIda Quill\n").ending ==
      Ending::done);
  BOOST_TEST(QFileInfo::exists(QString::fromStdString(fresh)));
}

BOOST_AUTO_TEST_CASE(an_export_replaces_a_file_as_a_whole_or_not_at_all) {
  const QString target = folder.filePath(QStringLiteral("fleet.csv"));
  BOOST_TEST(run({"export", "--kind", "units", "-o", target.toStdString()}).ending == Ending::done);
  QFile file(target);
  BOOST_REQUIRE(file.open(QIODevice::ReadOnly));
  BOOST_TEST((file.readAll().toStdString() == run({"export", "--kind", "units"}).out));
  const Ran nowhere = run({"export", "--kind", "units", "-o",
                           folder.filePath(QStringLiteral("no/such/folder.csv")).toStdString()});
  BOOST_TEST(nowhere.ending == Ending::badInput);
  BOOST_TEST(nowhere.oneLineOfTrouble());
}

BOOST_AUTO_TEST_SUITE_END()

BOOST_DATA_TEST_CASE(reading_words_answer_alike_on_both_engines, testing::bothEngines, engine) {
  const FreshStore fresh(engine);
  const std::string where = fresh.where().toStdString();
  BOOST_REQUIRE_EQUAL(testing::ranWith({"demo", "--store", where, "--by", "Casimir Wold"}).err, "");
  for (const std::vector<std::string>& words :
       std::vector<std::vector<std::string>>{{"options", "--show", "Pollan Cross", "--json"},
                                             {"route", "--json"},
                                             {"mark", "--show", "Ostrel", "--json"},
                                             {"due", "--within", "6m", "--json"},
                                             {"export", "--kind", "types"},
                                             {"export", "--kind", "venues"}}) {
    const auto answer = [&](const std::string& place) {
      std::vector<std::string> all = words;
      all.insert(all.end(), {"--store", place, "--as-of", "2026-11-25"});
      return testing::ranWith(all);
    };
    const Ran here = answer(where);
    const Ran there = answer(filledDemo().toStdString());
    BOOST_TEST_CONTEXT(words[0]) {
      BOOST_TEST((here.ending == there.ending));
      BOOST_TEST((here.out == there.out));
      BOOST_TEST(!here.out.empty());
    }
  }
  BOOST_TEST(testing::ranWith({"check-store", "--store", where}).ending == Ending::done);
}
