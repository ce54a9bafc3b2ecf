// SPDX-License-Identifier: GPL-3.0-or-later
// A window that is set to feet says in brackets what the sentences of rules and changes say in metric units.
#include <QLabel>
#include <QRegularExpression>
#include <QTableView>

#include "desk/building/flown_changes.h"
#include "desk/options/rule_sheet_model.h"
#include "desk/options/would_do_lines.h"
#include "on_demo.h"
#include "quantity/both_units.h"

using namespace hangbook;
using namespace hangbook::desk;

BOOST_AUTO_TEST_SUITE(both_units)

BOOST_AUTO_TEST_CASE(sentences_of_rules_and_changes_have_both_and_names_stay_whole) {
  const Figures feet(UnitSystem::usCustomary,
                     std::make_shared<std::vector<std::string>>(std::vector<std::string>{"Roundsling 4 t"}));
  const QString text = QStringLiteral("Roundsling 4 t at P3 carries 4.98 kN; allows 5.00 kN.");
  const std::string both = "Roundsling 4 t at P3 carries 4.98 kN (1120 lbf); allows 5.00 kN (1124 lbf).";
  BOOST_TEST(feet.sentence(text).toStdString() == both);
  BOOST_TEST(feet.inUnit(10.0, QStringLiteral("m/s")).toStdString() == "32.8 ft/s");
  BOOST_TEST(Figures().sentence(text).toStdString() == text.toStdString());

  options::Finding finding;
  finding.rule = QStringLiteral("hardware");
  finding.text = finding.source = text;
  RuleSheetModel sheet;
  sheet.setFindings({finding});
  const auto says = [&](RuleColumn column) {
    return sheet.index(0, static_cast<int>(column)).data().toString().toStdString();
  };
  BOOST_TEST(says(RuleColumn::text) == text.toStdString());
  sheet.setFigures(feet);
  BOOST_TEST(says(RuleColumn::text) == both);
  BOOST_TEST(says(RuleColumn::source) == both);
  BOOST_TEST(
      sheet.index(0, static_cast<int>(RuleColumn::text)).data(Qt::ToolTipRole).toString().toStdString() ==
      both);

  WhatWouldDo found;
  options::Asked asked;
  asked.rule = QStringLiteral("hardware");
  asked.text = text;
  found.easings.ask.push_back(asked);
  options::Reserve reserve;
  reserve.kind = QStringLiteral("mass");
  reserve.unit = QStringLiteral("kg");
  reserve.steps = 1;
  reserve.text = text;
  found.reserves.push_back(reserve);
  for (const WouldDoLine& line : wouldDoLines(found, {}, feet)) {
    BOOST_TEST(line.whole.toStdString().find(both) != std::string::npos, line.whole.toStdString());
  }

  build::FlownChange change;
  change.what = QStringLiteral("zone");
  change.wasWord = QStringLiteral("5.00 kN");
  ChangeModel changes;
  changes.setRows({change});
  changes.setFigures(feet);
  BOOST_TEST(changes.index(0, static_cast<int>(ChangeColumn::was)).data().toString().toStdString() ==
             "5.00 kN (1124 lbf)");
}

BOOST_AUTO_TEST_CASE(the_rule_sheet_follows_the_units_of_the_window_and_back) {
  hangbook::testing::OnDemo on;
  Session& session = on.window.session();
  session.setShow({session.overview().tours.front().name, QStringLiteral("Ostrel")}, QStringLiteral("left"));
  on.window.goTo(QStringLiteral("options"));
  on.settle();
  on.settle();
  const auto sentences = [&] {
    QStringList all;
    const auto* rules = on.child<QTableView>("ruleSheet")->model();
    for (int row = 0; row < rules->rowCount(); ++row) {
      all << rules->index(row, static_cast<int>(RuleColumn::text)).data().toString();
    }
    all << on.child<QLabel>("ruleSentence")->text();
    return all;
  };
  const QStringList metric = sentences();
  BOOST_TEST_REQUIRE(metric.size() > 5);
  session.setUnits(UnitSystem::usCustomary);
  const QStringList both = sentences();
  int longer = 0;
  for (qsizetype i = 0; i < metric.size(); ++i) {
    longer += both[i] != metric[i] ? 1 : 0;
    BOOST_TEST(inBothUnits(both[i].toStdString(), *session.figures().names()) == both[i].toStdString());
  }
  BOOST_TEST(longer > 3);
  session.setUnits(UnitSystem::metric);
  BOOST_TEST((sentences() == metric));
}

BOOST_AUTO_TEST_SUITE_END()
