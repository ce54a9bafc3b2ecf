// SPDX-License-Identifier: GPL-3.0-or-later
// The offline copy of a show: answers as the store does, is never written, and says when it is stale.
#include <boost/test/unit_test.hpp>

#include <QFile>

#include "client/terminal/demo_fixture.h"

using namespace hangbook;
using hangbook::testing::Demo;
using hangbook::testing::listOf;
using hangbook::testing::Ran;
using hangbook::testing::ranWith;
using hangbook::testing::textOf;
using terminal::Ending;

BOOST_TEST_DONT_PRINT_LOG_VALUE(Ending)

namespace {

struct Copied : Demo {
  std::string file = folder.filePath(QStringLiteral("ostrel.hangbook")).toStdString();
  Copied() {
    const Ran made = run({"copy", "--show", "Ostrel", "-o", file, "--by", "Orla Tench"});
    BOOST_TEST_REQUIRE(made.err == "");
  }
  Ran onCopy(std::vector<std::string> words) const {
    words.insert(words.end(), {"--store", file, "--as-of", "2026-11-25"});
    return ranWith(words);
  }
  QJsonObject checked() const { return run({"copy", "--check", file, "--json"}).json(); }
  std::string standing() const { return textOf(checked(), "standing").toStdString(); }
  void sign() const {
    BOOST_TEST(run({"gate", "--show", "Ostrel", "--hang", "left", "--gate", "pins 1", "--by", "Orla Tench"})
                   .ending == Ending::done);
  }
  /// The lines of one part that only the copy, or only the store, has.
  QString lines(const char* part, const char* side) const {
    QStringList all;
    for (const QJsonValue& each : listOf(checked(), "changes")) {
      if (each[QLatin1String("part")].toString() == QLatin1String(part)) {
        for (const QJsonValue& line : each[QLatin1String(side)].toArray()) {
          all << line.toString();
        }
      }
    }
    return all.join(QLatin1Char('\n'));
  }
};

} // namespace

BOOST_FIXTURE_TEST_SUITE(copy_words, Copied)

BOOST_AUTO_TEST_CASE(it_answers_as_the_store_does_and_says_what_it_is) {
  for (const char* word : {"build", "mark"}) {
    const Ran there = onCopy({word, "--show", "Ostrel", "--json"});
    BOOST_TEST(there.out == run({word, "--show", "Ostrel", "--json"}).out, word);
    BOOST_TEST(there.warned("offline copy of Ostrel"));
  }
  const std::string sheet = folder.filePath(QStringLiteral("b.csv")).toStdString();
  const QString code =
      textOf(run({"report", "build-sheet", "--show", "Ostrel", "-o", sheet, "--json"}).json(), "code");
  BOOST_TEST(onCopy({"report", "--verify", code.toStdString()}).said("current"));
  BOOST_TEST(standing() == "current");
  BOOST_TEST(listOf(checked(), "changes").isEmpty());
}

BOOST_AUTO_TEST_CASE(nothing_is_written_to_it_and_it_is_never_written_over_a_file) {
  const Ran gate =
      onCopy({"gate", "--show", "Ostrel", "--hang", "left", "--gate", "pins 1", "--by", "Orla Tench"});
  BOOST_TEST(gate.ending == Ending::storeTrouble);
  BOOST_TEST(gate.warned("never written"));
  BOOST_TEST(standing() == "current");
  BOOST_TEST((run({"copy", "--show", "Ostrel", "-o", file, "--by", "Orla Tench"}).ending != Ending::done));
  BOOST_TEST(standing() == "current");
  const QString other = folder.filePath(QStringLiteral("again.hangbook"));
  BOOST_TEST(onCopy({"copy", "--show", "Ostrel", "-o", other.toStdString(), "--by", "Orla Tench"})
                 .warned("younger"));
  BOOST_TEST(!QFile::exists(other));
}

BOOST_AUTO_TEST_CASE(it_says_what_changed_in_the_store_since) {
  sign();
  BOOST_TEST(standing() == "stale");
  BOOST_TEST(lines("hold points", "now").toStdString().find("left, pins 1, signed, by Orla Tench") !=
             std::string::npos);
  BOOST_TEST(lines("hold points", "copied").toStdString() == "");
}

BOOST_AUTO_TEST_CASE(a_figure_that_no_rule_reads_but_the_crew_acts_by_makes_it_stale_too) {
  const QString types = QString::fromStdString(run({"export", "--kind", "types"}).out);
  const QString higher = QString(types).replace(QStringLiteral(",1.42,"), QStringLiteral(",1.47,"));
  BOOST_TEST_REQUIRE((higher != types));
  BOOST_TEST(run({"import", "--kind", "types", "-", "--by", "Orla Tench"}, higher.toStdString()).err == "");
  BOOST_TEST(standing() == "stale");
  BOOST_TEST(lines("build-sheet", "now").toStdString() != "");
  BOOST_TEST(lines("load-sheet", "now").toStdString() == "");
}

BOOST_AUTO_TEST_CASE(what_options_are_decided_from_is_told_in_words_and_with_units) {
  BOOST_TEST(
      run({"state", "MB001", "--set", "quarantined", "--because", "horn rattles", "--by", "Orla Tench"})
          .err == "");
  QStringList units = QString::fromStdString(run({"export", "--kind", "units"}).out).split(QLatin1Char('\n'));
  const QStringList headings = units.front().split(QLatin1Char(','));
  for (QString& line : units) {
    QStringList cells = line.split(QLatin1Char(','));
    if (cells.front() == QLatin1String("unit") && cells.contains(QStringLiteral("MB002"))) {
      cells[headings.indexOf(QStringLiteral("weighed [kg]"))] = QStringLiteral("93.4");
      line = cells.join(QLatin1Char(','));
    }
  }
  BOOST_TEST(run({"import", "--kind", "units", "-", "--by", "Orla Tench"},
                 units.join(QLatin1Char('\n')).toStdString())
                 .err == "");
  const auto decided = [&](const char* side) {
    return lines("what options are decided from", side).toStdString();
  };
  BOOST_TEST(decided("copied").find("fleet, units, MB001, state: ready") != std::string::npos,
             decided("copied"));
  BOOST_TEST(decided("now").find("fleet, units, MB001, state: quarantined") != std::string::npos,
             decided("now"));
  BOOST_TEST(decided("copied").find("fleet, units, MB002, weighed: not known") != std::string::npos);
  BOOST_TEST(decided("now").find("fleet, units, MB002, weighed: 93.4 kg") != std::string::npos);
  BOOST_TEST(run({"copy", "--check", file}).said("state: quarantined"));
}

BOOST_AUTO_TEST_CASE(it_says_so_where_it_cannot_tell) {
  BOOST_TEST(ranWith({"copy", "--check", file, "--store", file}).said("NOT KNOWN")); // by itself
  BOOST_TEST((run({"copy", "--check", place}).ending == Ending::badInput));          // no copy
  BOOST_TEST(QFile::remove(QString::fromStdString(place)));
  const Ran lost = run({"copy", "--check", file});
  BOOST_TEST(lost.said("NOT KNOWN"));
  BOOST_TEST(lost.said("left r"));
  BOOST_TEST((lost.ending == Ending::failing));
}

BOOST_AUTO_TEST_SUITE_END()
