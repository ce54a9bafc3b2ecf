// SPDX-License-Identifier: GPL-3.0-or-later
// What a search of one hang goes through, and what it leaves out.
#include <boost/test/unit_test.hpp>

#include "options/builds.h"
#include "print.h"
#include "show_fixture.h"

using namespace hangbook;
using namespace hangbook::options;
using hangbook::testing::smallHarbourShow;

BOOST_AUTO_TEST_SUITE(builds)

/// Tables and bars that a hang or a table names and nobody describes are told, each once, and no other.
BOOST_AUTO_TEST_CASE(what_is_not_in_the_makers_data_is_left_out_and_told) {
  Snapshot show = smallHarbourShow();
  catalogue::StackingTable& table = show.catalogue.tables.front();
  calendar::Hang& hang = show.show.hangs.front();
  hang.tables.clear();
  QStringList notes;
  const std::size_t all = buildsFor(show, hang, notes).size();
  BOOST_TEST(all > 0U);
  BOOST_TEST(notes.isEmpty());
  hang.tables = {table.name};
  BOOST_TEST(buildsFor(show, hang, notes).size() == all);
  BOOST_TEST(notes.isEmpty());
  hang.tables.append(QStringLiteral("table of nobody"));
  BOOST_TEST(buildsFor(show, hang, notes).size() == all);
  BOOST_TEST(notes.join(QLatin1Char('|')).toStdString() ==
             "stacking table table of nobody is not in the makers' data and was left out");
  notes.clear();
  hang.tables = {table.name};
  table.bars.push_back(QStringLiteral("bar of nobody"));
  BOOST_TEST(buildsFor(show, hang, notes).size() == all);
  BOOST_TEST(notes.join(QLatin1Char('|')).toStdString() ==
             ("bar bar of nobody of table " + table.name.toStdString() +
              " is not in the makers' data and was left out"));
  notes.clear();
  hang.tables = {QStringLiteral("table of nobody")};
  BOOST_TEST(buildsFor(show, hang, notes).empty());
  BOOST_TEST(notes.size() == 1);
}

/// Where a figure of the bar is missing no setting is tried, of any option.
BOOST_AUTO_TEST_CASE(without_a_figure_of_the_bar_no_setting_is_tried) {
  Snapshot show = smallHarbourShow();
  for (catalogue::BarType& bar : show.catalogue.bars) {
    bar.frameMass.reset();
  }
  const HangOptions left = decide(show, QStringLiteral("left"), {}, 1, true).hangs.front();
  BOOST_TEST(!left.options.empty());
  BOOST_TEST(left.decided.settings == 0);
  for (const Option& option : left.options) {
    BOOST_TEST((option.verdict >= Verdict::unproven));
  }
}

/// What no setting changes is judged without one, and nothing else is.
BOOST_AUTO_TEST_CASE(without_a_setting_some_rules_are_judged) {
  Snapshot show = smallHarbourShow();
  for (catalogue::BarType& bar : show.catalogue.bars) {
    bar.frameMass.reset();
  }
  const QStringList judged{QStringLiteral("count"), QStringLiteral("lift-height"),
                           QStringLiteral("stock"), QStringLiteral("examined"),
                           QStringLiteral("carts"), QStringLiteral("same-chain")};
  const Option option = decide(show, QStringLiteral("left"), {}, 1).hangs.front().options.front();
  BOOST_TEST(option.findings.size() == 24U);
  for (const Finding& finding : option.findings) {
    const bool without = finding.text.startsWith(QStringLiteral("Cannot be judged: not stated: "));
    BOOST_TEST(without != judged.contains(finding.rule), finding.rule.toStdString());
  }
}

BOOST_AUTO_TEST_SUITE_END()
