// SPDX-License-Identifier: GPL-3.0-or-later
// A unit of the demo tour that is dead at load-in: what may stand in, what it changes, and the sheets after
// it.
#include <algorithm>

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

struct LoadIn : Demo {
  std::string dead = "MB001"; ///< a Marram bass
  std::string stand;
  LoadIn() {
    for (const QJsonValue& each : listOf(swap({"--json"}).json(), "stand_ins")) {
      if (each[QLatin1String("may_go")].toBool()) {
        stand = textOf(each.toObject(), "unit").toStdString();
        break;
      }
    }
  }
  Ran swap(std::vector<std::string> more) const {
    std::vector<std::string> words{"swap", "--show", "Ostrel", "--unit", dead};
    words.insert(words.end(), more.begin(), more.end());
    return run(words);
  }
};

} // namespace

BOOST_FIXTURE_TEST_SUITE(swap_words, LoadIn)

BOOST_AUTO_TEST_CASE(looking_changes_nothing_and_signing_outdates_the_sheets) {
  BOOST_TEST_REQUIRE(!stand.empty());
  BOOST_TEST((swap({"--for", dead}).ending == Ending::badInput));   // itself
  BOOST_TEST((swap({"--for", "CH01"}).ending == Ending::badInput)); // another type
  const std::string file = folder.filePath(QStringLiteral("b.csv")).toStdString();
  const std::string code =
      textOf(run({"report", "load-sheet", "--show", "Ostrel", "-o", file, "--json"}).json(), "code")
          .toStdString();
  const QJsonObject told = swap({"--for", stand, "--json"}).json();
  BOOST_TEST(textOf(told, "format").toStdString() == "hangbook.swap/1");
  BOOST_TEST(listOf(told, "hangs").size() == 2);
  BOOST_TEST(!told[QLatin1String("kept")].toBool());
  BOOST_TEST(
      (swap({"--for", stand, "--sign", "--by", "Orla Tench"}).ending == Ending::badInput)); // no reason
  BOOST_TEST(run({"report", "--verify", code}).said("current"));
  BOOST_TEST(run({"unit", dead}).said("ready"));
  const Ran kept = swap({"--for", stand, "--sign", "--reason", "horn rattles", "--by", "Orla Tench"});
  BOOST_TEST(kept.err == "");
  BOOST_TEST(run({"report", "--verify", code}).said("OUTDATED"));
  BOOST_TEST(run({"unit", dead}).said("quarantined"));
  BOOST_TEST(run({"unit", dead}).said("horn rattles"));
  const QJsonObject again = swap({"--for", stand, "--json"}).json();
  for (const QJsonValue& hang : listOf(again, "hangs")) {
    BOOST_TEST(hang[QLatin1String("signed_revision")].toInt() == 2);
  }
  // The dead one is kept back: it stands in for nobody.
  const Ran back = run({"swap", "--show", "Ostrel", "--unit", stand, "--for", dead});
  BOOST_TEST((back.ending == Ending::failing));
  BOOST_TEST(back.warned("cannot take its place"));
}

BOOST_AUTO_TEST_CASE(a_stand_in_weighed_since_is_told_against_what_was_signed) {
  QString units = QString::fromStdString(run({"export", "--kind", "units"}).out);
  QStringList lines = units.split(QLatin1Char('\n'));
  const auto row = std::find_if(lines.begin(), lines.end(), [&](const QString& line) {
    return line.contains(QString::fromStdString(stand + ","));
  });
  BOOST_TEST_REQUIRE((row != lines.end()));
  const QStringList headings = lines.front().split(QLatin1Char(','));
  QStringList cells = row->split(QLatin1Char(','));
  cells[headings.indexOf(QStringLiteral("weighed [kg]"))] = QStringLiteral("99.2");
  cells[headings.indexOf(QStringLiteral("weighed on"))] = QStringLiteral("2026-11-20");
  cells[headings.indexOf(QStringLiteral("weighed by"))] = QStringLiteral("Orla Tench");
  const std::string file =
      (lines.front() + QLatin1Char('\n') + cells.join(QLatin1Char(',')) + QLatin1Char('\n')).toStdString();
  BOOST_TEST_REQUIRE(run({"import", "--kind", "units", "-", "--by", "Orla Tench"}, file).err == "");
  const QJsonObject hang = listOf(swap({"--for", stand, "--json"}).json(), "hangs").at(0).toObject();
  BOOST_TEST(hang[QLatin1String("mass_kg")].toDouble() >
             hang[QLatin1String("mass_before_kg")].toDouble() + 5.0);
  QStringList changed;
  for (const QJsonValue& each : listOf(hang, "changes")) {
    changed << each[QLatin1String("what")].toString();
  }
  BOOST_TEST(changed.contains(QStringLiteral("mass below the hooks")));
  BOOST_TEST(changed.filter(QStringLiteral("dynamic at worst")).size() == 2);
}

BOOST_AUTO_TEST_SUITE_END()
