// SPDX-License-Identifier: GPL-3.0-or-later
// A hang of the demo tour that is up, moved: what is told before anyone acts, what is kept, and the way back.
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

struct Flying : Demo {
  Ran flown(std::vector<std::string> more) const {
    std::vector<std::string> words{"flown", "--show", "Ostrel", "--hang", "left"};
    words.insert(words.end(), more.begin(), more.end());
    return run(words);
  }
  QJsonObject change(const QJsonObject& told, const char* what) const {
    for (const QJsonValue& each : listOf(told, "changes")) {
      if (each[QLatin1String("what")].toString() == QLatin1String(what)) {
        return each.toObject();
      }
    }
    return {};
  }
  /// The tilt that is signed, as the sheet says it.
  double tilt() const {
    return listOf(flown({"--json"}).json(), "history").at(0)[QLatin1String("tilt_deg")].toDouble();
  }
  QString checksum() const {
    const std::string file = folder.filePath(QStringLiteral("b.csv")).toStdString();
    return textOf(run({"report", "build-sheet", "--show", "Ostrel", "-o", file, "--json"}).json(), "code");
  }
};

} // namespace

BOOST_FIXTURE_TEST_SUITE(flown_words, Flying)

BOOST_AUTO_TEST_CASE(what_changes_is_told_before_anything_is_kept) {
  const double signedTilt = tilt();
  const QJsonObject told = flown({"--tilt", std::to_string(signedTilt + 0.5), "--json"}).json();
  BOOST_TEST(textOf(told, "format").toStdString() == "hangbook.flown/1");
  BOOST_TEST(told[QLatin1String("moves")].toBool());
  BOOST_TEST(told[QLatin1String("revision")].isNull());
  const QJsonObject aim = change(told, "tilt");
  BOOST_TEST(aim[QLatin1String("becomes")].toDouble() - aim[QLatin1String("was")].toDouble() == 0.5,
             boost::test_tools::tolerance(1e-5));
  BOOST_TEST(!change(told, "left pick").isEmpty());
  QStringList steps;
  for (const QJsonValue& each : listOf(told, "steps")) {
    steps << each.toString();
  }
  BOOST_TEST(steps.front().startsWith(QLatin1String("Clear below")));
  BOOST_TEST(std::ranges::any_of(
      steps, [](const QString& step) { return step == QLatin1String("The hooks stay where they are."); }));
  BOOST_TEST(std::ranges::any_of(
      steps, [](const QString& step) { return step.contains(QLatin1String("never changed in the air")); }));
  BOOST_TEST(tilt() == signedTilt);
}

BOOST_AUTO_TEST_CASE(it_says_while_it_is_not_known_to_be_up) {
  BOOST_TEST(listOf(flown({"--json"}).json(), "open_hold_points").size() > 6);
  BOOST_TEST(flown({}).said("NOT KNOWN TO BE UP: hold points that nobody signed: pins 1, "));
  for (const QJsonValue& gate : listOf(flown({"--json"}).json(), "open_hold_points")) {
    run({"gate", "--show", "Ostrel", "--hang", "left", "--gate", gate.toString().toStdString(), "--by",
         "Orla Tench"});
  }
  BOOST_TEST(!flown({}).said("NOT KNOWN"));
  const std::string wanted = std::to_string(tilt() + 0.5);
  flown({"--tilt", wanted, "--sign", "--reason", "balcony sold late", "--by", "Orla Tench"});
  BOOST_TEST(flown({}).said("signed since it was last moved: secondary steel, final check"));
}

BOOST_AUTO_TEST_CASE(a_kept_move_is_a_revision_that_outdates_sheets_and_opens_two_hold_points) {
  for (const char* gate : {"pins 1", "pins 2", "pins 3", "pins 4", "pins 5", "chain", "secondary steel"}) {
    BOOST_TEST(
        run({"gate", "--show", "Ostrel", "--hang", "left", "--gate", gate, "--by", "Orla Tench"}).ending ==
        Ending::done);
  }
  const double before = tilt();
  const std::string code = checksum().toStdString();
  const std::string wanted = std::to_string(before + 0.5);
  BOOST_TEST(flown({"--tilt", wanted, "--sign", "--by", "Orla Tench"}).ending ==
             Ending::badInput); // no reason
  const Ran kept =
      flown({"--tilt", wanted, "--sign", "--reason", "balcony sold late", "--by", "Orla Tench", "--json"});
  BOOST_TEST(kept.err == "");
  const int signedRevision = kept.json()[QLatin1String("signed_revision")].toInt();
  BOOST_TEST(kept.json()[QLatin1String("revision")].toInt() == signedRevision + 1);
  BOOST_TEST(tilt() == before + 0.5, boost::test_tools::tolerance(1e-5));
  BOOST_TEST(run({"report", "--verify", code}).said("OUTDATED"));
  const QJsonArray gates = listOf(
      listOf(run({"gate", "--show", "Ostrel", "--hang", "left", "--json"}).json(), "hangs").at(0).toObject(),
      "gates");
  for (const QJsonValue& each : gates) {
    const QString name = each[QLatin1String("gate")].toString();
    const bool opened = name == QLatin1String("secondary steel") || name == QLatin1String("final check");
    BOOST_TEST((each[QLatin1String("standing")].toString() == QLatin1String("open")) == opened,
               name.toStdString());
  }
  BOOST_TEST(flown({"--back", "--sign", "--reason", "as before", "--by", "Bram Osterley"}).err == "");
  BOOST_TEST(tilt() == before, boost::test_tools::tolerance(1e-9));
}

BOOST_AUTO_TEST_CASE(beyond_the_actuator_or_indoors_in_wind_nothing_is_signed) {
  const Ran far = flown({"--tilt", "40", "--sign", "--reason", "try", "--by", "Orla Tench"});
  BOOST_TEST(far.ending == Ending::failing);
  BOOST_TEST(far.warned("possible"));
  BOOST_TEST(flown({"--back"}).ending == Ending::failing);
  const Ran wind = flown({"--wind", "12 m/s"});
  BOOST_TEST(wind.ending == Ending::badInput);
  BOOST_TEST(wind.warned("outdoors"));
}

BOOST_AUTO_TEST_SUITE_END()
