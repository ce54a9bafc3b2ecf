// SPDX-License-Identifier: GPL-3.0-or-later
// Both unit systems on demand: --units us puts US customary figures in brackets behind what answers and
// sheets say in metric ones; JSON and files for programs stay as they are.
#include <boost/test/unit_test.hpp>

#include <QFile>
#include <QRegularExpression>

#include "client/terminal/demo_fixture.h"
#include "quantity/both_units.h"
#include "terminal/both_units.h"
#include "terminal/table.h"

using namespace hangbook;
using hangbook::testing::Demo;
using hangbook::testing::listOf;
using hangbook::testing::Ran;
using hangbook::testing::textOf;
using terminal::Ending;

BOOST_TEST_DONT_PRINT_LOG_VALUE(Ending)

namespace {

const QRegularExpression
    brackets(QStringLiteral(" \\([−+±-]? ?[0-9][^()a-z]* (lbf|lb|ft|in|ft/s|lb/ft|mi|mph|lbf/ft²)\\)"));

struct InUnits : Demo {
  std::vector<std::string> option() const {
    const std::string id = hangbook::testing::optionOf(*this, "Hallowfen", "left", "fails");
    return {"options", "--show", "Hallowfen", "--explain", id.substr(0, 8)};
  }
  Ran inUs(std::vector<std::string> words) const {
    words.insert(words.end(), {"--units", "us"});
    return run(words);
  }
  QString sheet(const char* kind, const char* show, const char* units) const {
    const QString name = folder.filePath(QStringLiteral("sheet.csv"));
    QFile::remove(name);
    std::vector<std::string> words{"report", kind, "-o", name.toStdString(), "--units", units};
    if (*show != '\0') {
      words.insert(words.end(), {"--show", show});
    }
    BOOST_TEST(run(words).err == "");
    QFile file(name);
    BOOST_TEST_REQUIRE(file.open(QIODevice::ReadOnly));
    return QString::fromUtf8(file.readAll());
  }
};

} // namespace

BOOST_FIXTURE_TEST_SUITE(units_words, InUnits)

BOOST_AUTO_TEST_CASE(sentences_have_both_and_json_is_as_it_was) {
  const Ran metric = run(option());
  const Ran both = inUs(option());
  BOOST_TEST((both.ending == metric.ending));
  BOOST_TEST(QString::fromStdString(both.out).contains(
      QRegularExpression(QStringLiteral("[0-9]\\.[0-9]{2}\\s+kN\\s+\\([0-9.]+\\s+lbf\\)"))));
  BOOST_TEST(both.said("kN (lbf)")); // a heading
  BOOST_TEST(!metric.said("lbf"));
  std::vector<std::string> words = option();
  words.emplace_back("--json");
  BOOST_TEST(inUs(words).out == run(words).out);
}

BOOST_AUTO_TEST_CASE(each_rules_sentence_is_there_whole_with_the_same_figures) {
  std::vector<std::string> words = option();
  words.emplace_back("--json");
  const QJsonObject answer = run(words).json();
  const QString said =
      QString::fromStdString(inUs(option()).out).remove(QRegularExpression(QStringLiteral("\\s")));
  int sentences = 0;
  const QJsonObject explained = listOf(listOf(answer, "hangs").at(0).toObject(), "options").at(0).toObject();
  for (const QJsonValue& finding : listOf(explained, "findings")) {
    const std::string text = finding[QLatin1String("text")].toString().toStdString();
    QString wanted = QString::fromStdString(inBothUnits(text, {"Roundsling 4 t"}))
                         .remove(QRegularExpression(QStringLiteral("\\s")));
    BOOST_TEST(said.contains(wanted), text);
    ++sentences;
  }
  BOOST_TEST(sentences > 10);
}

BOOST_AUTO_TEST_CASE(names_stay_whole_and_files_for_programs_are_not_touched) {
  BOOST_TEST(inUs({"export", "--kind", "shows"}).out == run({"export", "--kind", "shows"}).out);
  BOOST_TEST(inUs({"export", "--kind", "types"}).out == run({"export", "--kind", "types"}).out);
  BOOST_TEST(!inUs(option()).said("4 t ("));
  const Ran refused = run({"options", "--show", "Hallowfen", "--units", "furlongs"});
  BOOST_TEST((refused.ending == Ending::badInput));
  BOOST_TEST(refused.warned("metric or us is expected"));
}

BOOST_AUTO_TEST_CASE(a_table_converts_its_columns_and_the_rows_that_name_their_unit) {
  std::ostringstream plain;
  terminal::BothUnitsBuffer buffer(plain);
  std::ostream out(&buffer);
  using terminal::Column;
  terminal::Table table({{QStringLiteral("what")},
                         {QStringLiteral("mass [kg]"), Column::Kind::figure},
                         {QStringLiteral("load kN"), Column::Kind::figure},
                         {QStringLiteral("limit"), Column::Kind::figure},
                         {QStringLiteral("unit")},
                         {QStringLiteral("use %"), Column::Kind::figure}});
  table.add({QStringLiteral("at 6.20 m"), QStringLiteral("12.3"), QStringLiteral("–"), QStringLiteral("2.00"),
             QStringLiteral("m"), QStringLiteral("90")});
  table.print(out);
  out << "so 5.00 kN\nand 2" << std::flush;
  BOOST_TEST(plain.str() ==
             "what                  mass [kg (lb)]  load kN (lbf)        limit  unit    use %\n"
             "at 6.20 m (20.34 ft)     12.3 (27.1)              –  2.00 (6.56)  m (ft)     90\n"
             "so 5.00 kN (1124 lbf)\nand 2");
}

BOOST_AUTO_TEST_CASE(sheets_say_nothing_in_metric_alone_and_no_metric_figure_is_lost) {
  for (const char* kind : {"load-sheet", "build-sheet", "prep-list", "tour-summary"}) {
    const char* show = std::string(kind) == "tour-summary" ? "" : "Hallowfen";
    const QString both = sheet(kind, show, "us");
    for (const QString& line : both.split(QLatin1Char('\n'))) {
      if (line.startsWith(QLatin1String("code,")) || line.contains(QLatin1String("Roundsling"))) {
        continue; // a name
      }
      const std::string text = line.toStdString();
      BOOST_TEST(inBothUnits(text) == text, kind);
    }
  }
  // Why the hang is not cleared is told in sentences: each is still there.
  QStringList metric;
  for (const QString& line : sheet("load-sheet", "Lindrake", "metric").split(QLatin1Char('\n'))) {
    if (line.startsWith(QLatin1String("NOT CLEARED TO LIFT,"))) {
      metric << line;
    }
  }
  QString both = sheet("load-sheet", "Lindrake", "us");
  both.remove(brackets);
  BOOST_TEST(metric.size() > 0);
  for (const QString& line : metric) {
    BOOST_TEST(both.contains(line), line.toStdString());
  }
}

BOOST_AUTO_TEST_CASE(figures_that_bring_their_unit_have_both_in_a_table_too) {
  const Ran flown = inUs({"flown", "--show", "Ostrel", "--hang", "left", "--tilt", "1.0"});
  BOOST_TEST(QString::fromStdString(flown.out).contains(QRegularExpression(
      QStringLiteral("left pick +[0-9.]+ kN \\([0-9.]+ lbf\\) +[0-9.]+ kN \\([0-9.]+ lbf\\)"))));
  BOOST_TEST(flown.said("+1.5 °"));
}

BOOST_AUTO_TEST_CASE(what_hangs_in_all_is_not_known_while_nothing_is_chosen_for_a_hang) {
  const QString bare = sheet("load-sheet", "Lindrake", "metric");
  BOOST_TEST(bare.contains(QStringLiteral("points,total,all,not known,not known,not known,not known")));
  BOOST_TEST(!bare.contains(QStringLiteral(",0.00 kN,")));
  BOOST_TEST(!bare.contains(QStringLiteral("Weights by serial")));
  run({"choose", "--show", "Lindrake", "--hang", "left", "--option",
       hangbook::testing::optionOf(*this, "Lindrake", "left", "tight"), "--by", "Orla Tench"});
  const QString half = sheet("load-sheet", "Lindrake", "metric");
  BOOST_TEST(half.contains(QStringLiteral("points,not known,right,not known")));
  BOOST_TEST(half.contains(QStringLiteral("points,total,all,not known")));
  BOOST_TEST(half.contains(QRegularExpression(QStringLiteral("points,total,left,[0-9.]+ kN"))));
}

BOOST_AUTO_TEST_SUITE_END()
