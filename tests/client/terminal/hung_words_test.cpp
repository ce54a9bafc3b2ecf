// SPDX-License-Identifier: GPL-3.0-or-later
// Which unit hangs where in the demo tour, by serial: recorded, refused, weighed, printed, swapped.
#include <boost/test/unit_test.hpp>

#include <QFile>

#include "client/terminal/demo_fixture.h"

using namespace hangbook;
using hangbook::testing::Demo;
using hangbook::testing::listOf;
using hangbook::testing::Ran;
using hangbook::testing::textOf;
using terminal::Ending;

BOOST_TEST_DONT_PRINT_LOG_VALUE(Ending)

namespace {

struct Hung : Demo {
  /// What `hung` says of the left hang.
  QJsonArray places() const {
    const QJsonObject hang =
        listOf(run({"hung", "--show", "Ostrel", "--hang", "left", "--json"}).json(), "hangs")
            .at(0)
            .toObject();
    return hang[QLatin1String("places")].toArray();
  }
  Ran record(std::vector<std::string> more) const {
    std::vector<std::string> words{"hung", "--show", "Ostrel", "--hang", "left", "--by", "Orla Tench"};
    words.insert(words.end(), more.begin(), more.end());
    return run(words);
  }
  /// A unit of the type that was chosen for the place, the n-th.
  std::string unitFor(int at, int n = 0) const {
    const QString type = places().at(at).toObject()[QLatin1String("type")].toString();
    const QStringList lines =
        QString::fromStdString(run({"export", "--kind", "units"}).out).split(QLatin1Char('\n'));
    const QStringList headings = lines.front().split(QLatin1Char(','));
    for (const QString& line : lines) {
      const QStringList cells = line.split(QLatin1Char(','));
      if (cells.front() == QLatin1String("unit") && cells.contains(type) && n-- == 0) {
        return cells[headings.indexOf(QStringLiteral("serial"))].toStdString();
      }
    }
    return {};
  }
  QString sheet(const char* kind) const {
    const QString name = folder.filePath(QStringLiteral("sheet.csv"));
    QFile::remove(name);
    BOOST_TEST(run({"report", kind, "--show", "Ostrel", "-o", name.toStdString()}).err == "");
    QFile file(name);
    BOOST_TEST_REQUIRE(file.open(QIODevice::ReadOnly));
    return QString::fromUtf8(file.readAll());
  }
  std::string textAt(int at, const char* key) const {
    return textOf(places().at(at).toObject(), key).toStdString();
  }
};

} // namespace

BOOST_FIXTURE_TEST_SUITE(hung_words, Hung)

BOOST_AUTO_TEST_CASE(what_is_recorded_stands_with_its_mass_and_is_printed) {
  BOOST_TEST(sheet("load-sheet").contains(QStringLiteral("not recorded by serial")));
  const std::string first = unitFor(1);
  const std::string second = unitFor(2, 1);
  BOOST_TEST(record({"--bar", unitFor(0), "--unit", first, "--unit", second}).err == "");
  BOOST_TEST(textAt(1, "unit") == first);
  BOOST_TEST(textAt(2, "unit") == second);
  BOOST_TEST(textAt(1, "mass_from") == "maker's figure");
  for (const char* kind : {"load-sheet", "build-sheet", "prep-list"}) {
    BOOST_TEST(sheet(kind).contains(QString::fromStdString(first)), kind);
  }
  BOOST_TEST(sheet("load-sheet").contains(QStringLiteral("not recorded by serial"))); // the others
  BOOST_TEST(record({"--from", "2", "--unit", unitFor(2, 2)}).err == "");             // the rest stays
  BOOST_TEST(textAt(1, "unit") == first);
  BOOST_TEST(textAt(2, "unit") == unitFor(2, 2));
  BOOST_TEST(record({"--clear"}).err == "");
  BOOST_TEST(textAt(1, "unit") == "");
}

BOOST_AUTO_TEST_CASE(what_cannot_hang_there_is_refused_and_changes_nothing) {
  const std::string first = unitFor(1);
  BOOST_TEST(record({"--unit", "nobody"}).warned("there is no unit"));
  BOOST_TEST(record({"--unit", unitFor(0)}).warned("is expected"));
  BOOST_TEST(record({"--unit", first, "--unit", first}).warned("already"));
  BOOST_TEST(record({"--from", "60", "--unit", first}).warned("a place from 1"));
  BOOST_TEST(
      run({"state", first, "--set", "quarantined", "--because", "horn rattles", "--by", "Orla Tench"}).err ==
      "");
  BOOST_TEST(record({"--unit", first}).warned("is quarantined"));
  BOOST_TEST(textAt(1, "unit") == "");
}

BOOST_AUTO_TEST_CASE(who_stands_in_hangs_where_the_dead_one_did) {
  const std::string dead = unitFor(1);
  const std::string stand = unitFor(1, 1);
  BOOST_TEST(record({"--unit", dead}).err == "");
  const Ran swapped = run({"swap", "--show", "Ostrel", "--unit", dead, "--for", stand, "--sign", "--reason",
                           "horn rattles", "--by", "Orla Tench"});
  BOOST_TEST(swapped.err == "");
  BOOST_TEST(swapped.said("is recorded in hang left as cabinet 1"));
  BOOST_TEST(textAt(1, "unit") == stand);
  BOOST_TEST(!sheet("load-sheet").contains(QStringLiteral("is quarantined")));
}

BOOST_AUTO_TEST_CASE(a_record_that_no_longer_stands_is_said_on_the_sheets_and_never_silently_kept) {
  const std::string unit = unitFor(1);
  BOOST_TEST(record({"--unit", unit}).err == "");
  BOOST_TEST(
      run({"state", unit, "--set", "quarantined", "--because", "horn rattles", "--by", "Orla Tench"}).err ==
      "");
  BOOST_TEST(textAt(1, "trouble") == "is quarantined");
  BOOST_TEST(
      sheet("build-sheet")
          .contains(
              QStringLiteral("Hang left, cabinet 1: %1 is quarantined.").arg(QString::fromStdString(unit))));
}

BOOST_AUTO_TEST_CASE(it_goes_out_as_a_spreadsheet_and_comes_in_again) {
  BOOST_TEST(record({"--unit", unitFor(1), "--unit", unitFor(2, 1)}).err == "");
  const std::string out = run({"export", "--kind", "shows"}).out;
  BOOST_TEST(out.find("\nhung unit,") != std::string::npos);
  const Demo other;
  BOOST_TEST(other.run({"import", "--kind", "shows", "-", "--by", "Orla Tench"}, out).err == "");
  BOOST_TEST(other.run({"hung", "--show", "Ostrel", "--json"}).out ==
             run({"hung", "--show", "Ostrel", "--json"}).out);
}

BOOST_AUTO_TEST_CASE(a_unit_that_hangs_at_another_show_of_the_same_days_is_told_everywhere) {
  const std::string bar = unitFor(0);
  const auto recordAt = [&](const char* show) {
    return run({"hung", "--show", show, "--hang", "left", "--bar", bar, "--by", "Orla Tench"});
  };
  BOOST_TEST(recordAt("Hallowfen").err == "");
  BOOST_TEST(recordAt("Ostrel").err == ""); // days apart
  BOOST_TEST(textAt(0, "trouble") == "");
  // Its gear stays away until the other one's is out.
  QString shows = QString::fromStdString(run({"export", "--kind", "shows"}).out);
  QStringList lines = shows.split(QLatin1Char('\n'));
  const QStringList headings = lines.front().split(QLatin1Char(','));
  for (QString& line : lines) {
    if (line.startsWith(QLatin1String("show,")) && line.contains(QLatin1String(",Ostrel,"))) {
      QStringList cells = line.split(QLatin1Char(','));
      cells[headings.indexOf(QStringLiteral("away to"))] = QStringLiteral("2027-04-17");
      line = cells.join(QLatin1Char(','));
    }
  }
  BOOST_TEST(run({"import", "--kind", "shows", "-", "--by", "Orla Tench"},
                 lines.join(QLatin1Char('\n')).toStdString())
                 .err == "");
  BOOST_TEST(textAt(0, "trouble").find("is recorded at Hallowfen") == 0, textAt(0, "trouble"));
  BOOST_TEST(textAt(0, "trouble").find("as the bar of hang left too") != std::string::npos);
  BOOST_TEST(sheet("load-sheet")
                 .contains(QStringLiteral("Hang left, bar: %1 is recorded at Hallowfen")
                               .arg(QString::fromStdString(bar))));
  const Ran again = record({"--clear", "--bar", unitFor(0, 1)});
  BOOST_TEST(again.err == "");
  const Ran both = record({"--bar", bar});
  BOOST_TEST(both.warned("is recorded at Hallowfen"));
  BOOST_TEST((both.ending == Ending::failing));
}

BOOST_AUTO_TEST_SUITE_END()
