// SPDX-License-Identifier: GPL-3.0-or-later
// A unit of the demo tour that is dead at load-in: what may stand in, what it changes, and the sheets after
// it.
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

BOOST_AUTO_TEST_CASE(a_heavier_stand_in_is_told_signed_and_outdates_the_sheets) {
  BOOST_TEST_REQUIRE(!stand.empty());
  BOOST_TEST(swap({"--for", dead}).ending == Ending::badInput);
  const std::string file = folder.filePath(QStringLiteral("b.csv")).toStdString();
  const std::string code =
      textOf(run({"report", "load-sheet", "--show", "Ostrel", "-o", file, "--json"}).json(), "code")
          .toStdString();
  const Ran looked = swap({"--for", stand, "--json"});
  const QJsonObject told = looked.json();
  BOOST_TEST(textOf(told, "format").toStdString() == "hangbook.swap/1");
  BOOST_TEST(listOf(told, "hangs").size() == 2);
  BOOST_TEST(!told[QLatin1String("kept")].toBool());
  BOOST_TEST(run({"report", "--verify", code}).said("current")); // looking changes nothing
  BOOST_TEST(swap({"--for", stand, "--sign", "--by", "Orla Tench"}).ending == Ending::badInput); // no reason
  const Ran kept = swap({"--for", stand, "--sign", "--reason", "horn rattles", "--by", "Orla Tench"});
  BOOST_TEST(kept.err == "");
  BOOST_TEST(run({"report", "--verify", code}).said("OUTDATED"));
  BOOST_TEST(run({"unit", dead}).said("quarantined"));
  BOOST_TEST(run({"unit", dead}).said("horn rattles"));
  BOOST_TEST(swap({"--for", stand}).ending != Ending::badInput);
}

BOOST_AUTO_TEST_SUITE_END()
