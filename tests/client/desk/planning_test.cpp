// SPDX-License-Identifier: GPL-3.0-or-later
// What stands beside the list of options: what would do, order, options side by side, the same again.
#include <boost/test/unit_test.hpp>

#include <QAbstractItemModelTester>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QTabWidget>
#include <QTableView>

#include "desk/options/choose_dialog.h"
#include "desk/options/house_panel.h"
#include "desk/options/options_place.h"
#include "desk/options/setting_map_view.h"
#include "desk/options/side_by_side_panel.h"
#include "desk/options/would_do_panel.h"
#include "desk/route/check_panel.h"
#include "desk/words/typed_figures.h"
#include "fixture_source.h"
#include "opened.h"

using namespace hangbook;
using namespace hangbook::desk;
using namespace hangbook::testing;
using options::Verdict;

namespace {

constexpr auto fatal = QAbstractItemModelTester::FailureReportingMode::Fatal;

struct Planning : Opened {
  Planning() {
    window.goTo(QStringLiteral("options"));
    settle();
  }
  QTableView& list() { return *child<QTableView>("optionListTable"); }
  QTabWidget& parts() { return *child<QTabWidget>("optionsParts"); }
  void select(const char* id) {
    for (int row = 0; row < list().model()->rowCount(); ++row) {
      if (list().model()->index(row, 0).data(keyRole).toString() == QLatin1String(id)) {
        list().selectRow(row);
      }
    }
  }
  std::string cell(const char* table, int row, int column) {
    return child<QTableView>(table)->model()->index(row, column).data().toString().toStdString();
  }
  std::string trouble() { return child<QLabel>("troubleText")->text().toStdString(); }
};

} // namespace

BOOST_AUTO_TEST_SUITE(planning)

BOOST_AUTO_TEST_CASE(what_would_do_is_worked_out_only_while_somebody_looks) {
  Planning at;
  at.select("option8");
  at.settle();
  BOOST_TEST(at.source->advised().isEmpty());
  at.parts().setCurrentWidget(at.child<QWidget>("wouldDo"));
  at.settle();
  BOOST_TEST(at.source->advised().join(u' ').toStdString() == "option8");
  BOOST_TEST(at.cell("wouldDoTable", 0, 1) == "11.00 m → 11.34 m");
  BOOST_TEST(at.cell("wouldDoTable", 0, 2) == "tight");
  BOOST_TEST(at.cell("wouldDoTable", 0, 4) == "34 × 0.01 m: tight; one step less: fails.");
  const std::string whole = at.child<QLabel>("wouldDoWhole")->text().toStdString();
  BOOST_TEST(whole.find("Then at tilt -4.5°, trim 7.25 m, mark 31.") != std::string::npos, whole);
}

BOOST_AUTO_TEST_CASE(for_one_that_stands_it_says_what_breaks_first_never_farther_than_proved) {
  Planning at;
  at.parts().setCurrentWidget(at.child<QWidget>("wouldDo"));
  at.select("option0");
  at.settle();
  BOOST_TEST(at.cell("wouldDoTable", 0, 0) == "186 kg more on the bar");
  BOOST_TEST(at.cell("wouldDoTable", 0, 3) == "load on each point");
  at.window.session().setUnits(UnitSystem::usCustomary);
  BOOST_TEST(at.cell("wouldDoTable", 0, 0) == "410 lb more on the bar"); // 410.06
  WhatWouldDo found;
  options::Reserve reserve;
  reserve.kind = QStringLiteral("trim-up");
  reserve.unit = QStringLiteral("m");
  reserve.step = 0.01;
  reserve.steps = 17;
  reserve.from = 7.0;
  reserve.last = 7.16;
  found.reserves.push_back(reserve);
  const auto lines = wouldDoLines(found, {}, Figures(UnitSystem::usCustomary));
  BOOST_TEST(lines.at(0).what.toStdString() == "0.52 ft higher"); // 0.16 m are 0.5249 ft
}

BOOST_AUTO_TEST_CASE(a_setting_of_ones_own_is_asked_about_itself) {
  Planning at;
  at.parts().setCurrentWidget(at.child<QWidget>("wouldDo"));
  at.select("option0");
  at.settle();
  at.child<QDoubleSpinBox>("adjustTrim")->setValue(9.9);
  at.settle();
  BOOST_TEST(at.source->advised().last().startsWith(QStringLiteral("own ")));
}

BOOST_AUTO_TEST_CASE(moving_on_drops_what_is_being_worked_out) {
  Planning at;
  at.source->holdAdvice(true);
  at.parts().setCurrentWidget(at.child<QWidget>("wouldDo"));
  BOOST_TEST(at.child<QPushButton>("wouldDoCancel")->isVisible());
  at.select("option8"); // the one before never ends by itself
  at.child<QPushButton>("wouldDoCancel")->click();
  at.settle();
  BOOST_TEST(at.child<QTableView>("wouldDoTable")->model()->rowCount() == 0);
  BOOST_TEST(at.child<QLabel>("wouldDoHead")->text().startsWith(QStringLiteral("Stopped.")));
  at.source->holdAdvice(false);
  at.child<QPushButton>("wouldDoAgain")->click();
  at.settle();
  BOOST_TEST(at.child<QTableView>("wouldDoTable")->model()->rowCount() == 1);
  at.source->failNext("the disk went away");
  at.select("option6");
  at.settle();
  BOOST_TEST(at.child<QLabel>("wouldDoHead")->text().contains(QStringLiteral("the disk went away")));
}

BOOST_AUTO_TEST_CASE(the_order_is_the_users_and_remembered_and_what_is_beaten_says_by_which) {
  Planning at;
  auto* order = at.child<QComboBox>("optionsOrder");
  BOOST_TEST(order->currentText().toStdString() == "cover first");
  BOOST_TEST(at.list().model()->index(0, 0).data(keyRole).toString().toStdString() == "option3");
  order->setCurrentIndex(1);
  Q_EMIT order->activated(1);
  at.settle();
  BOOST_TEST((at.source->likedRanking() == options::RankBy::lightest));
  BOOST_TEST(at.list().model()->index(0, 0).data(keyRole).toString().toStdString() == "option0");
  const auto beaten = at.list().model()->index(9, static_cast<int>(OptionColumn::beaten));
  BOOST_TEST(beaten.data().toString().startsWith(QStringLiteral("No. ")));
  at.source->failNext("no room left");
  order->setCurrentIndex(2);
  Q_EMIT order->activated(2);
  at.settle();
  BOOST_TEST(order->currentIndex() == 1); // what stands
  BOOST_TEST(at.trouble().find("no room left") != std::string::npos);
}

BOOST_AUTO_TEST_CASE(two_to_four_options_stand_side_by_side_differences_first) {
  CompareModel model;
  const QAbstractItemModelTester tester(&model, fatal);
  Planning at;
  auto* toggle = at.child<QPushButton>("sideBySideToggle");
  for (const char* id : {"option0", "option8", "option1", "option2", "option3"}) {
    at.select(id);
    at.settle();
    BOOST_TEST(toggle->isEnabled() == (QLatin1String(id) != QLatin1String("option3"))); // four are enough
    toggle->click();
  }
  auto* table = at.child<QTableView>("sideBySideTable");
  BOOST_TEST(!table->isColumnHidden(4));
  BOOST_TEST(at.cell("sideBySideTable", 0, 0) == "In what they differ");
  BOOST_TEST(at.cell("sideBySideTable", 1, 0) == "verdict");
  BOOST_TEST(at.cell("sideBySideTable", 1, 2) == "fails");
  std::string trim;
  bool alike = false;
  for (int row = 0; row < table->model()->rowCount(); ++row) {
    alike = alike || at.cell("sideBySideTable", row, 0) == "In what they are alike";
    if (at.cell("sideBySideTable", row, 0) == "trim may lie") {
      trim = at.cell("sideBySideTable", row, 1);
    }
  }
  BOOST_TEST(alike);
  BOOST_TEST(trim == "7.25–9.50 m");
  at.child<QPushButton>("sideBySideClear")->click();
  BOOST_TEST(table->model()->rowCount() == 0);
}

BOOST_AUTO_TEST_CASE(the_same_as_yesterday_is_one_action) {
  auto overview = smallOverview();
  options::Choice before;
  before.tour = QStringLiteral("Test tour");
  before.show = QStringLiteral("Dunstow night");
  before.hang = QStringLiteral("left");
  before.key = sampleOption(0, Verdict::holds).key;
  before.verdict = Verdict::tight;
  before.by = QStringLiteral("Casimir Wold");
  overview.choices.push_back(before);
  Opened opened(overview);
  opened.window.goTo(QStringLiteral("options"));
  opened.settle();
  QString said;
  opened.child<OptionsPlace>("options")->setAsker([&](ChooseDialog& dialog) {
    for (const QLabel* each : dialog.findChildren<QLabel*>()) {
      said += each->text();
    }
    dialog.findChild<QComboBox*>(QStringLiteral("chooseBy"))->setEditText(QStringLiteral("Ide Quarrel"));
    return true;
  });
  opened.child<QPushButton>("optionsYesterday")->click();
  opened.settle();
  BOOST_TEST(said.contains(QStringLiteral("As at Dunstow night")), said.toStdString());
  BOOST_TEST(said.contains(QStringLiteral("(then tight). By today's rules here: holds.")));
  BOOST_TEST_REQUIRE(opened.source->chosen().size() == 1u);
  BOOST_TEST(opened.source->chosen()[0].by.toStdString() == "Ide Quarrel");
  opened.child<QPushButton>("optionsHereBefore")->click();
  opened.settle();
  BOOST_TEST(
      opened.child<QLabel>("troubleText")->text().contains(QStringLiteral("earlier show in this venue")));
}

BOOST_AUTO_TEST_CASE(the_map_of_settings_is_moved_through_by_keys_and_the_rules_follow) {
  Planning at;
  at.select("option0");
  at.settle();
  BOOST_TEST(at.source->advised().isEmpty()); // nobody looks at it
  at.child<QTabWidget>("optionsViews")->setCurrentWidget(at.child<QWidget>("settingMapPanel"));
  at.settle();
  BOOST_TEST(at.source->advised().join(u' ').toStdString() == "map option0");
  auto* view = at.child<SettingMapView>("settingMap");
  BOOST_TEST(at.child<QLabel>("settingMapHead")->text().contains(QStringLiteral("0.5° grid")));
  const auto press = [&](int key, Qt::KeyboardModifiers with = {}) {
    QKeyEvent event(QEvent::KeyPress, key, with);
    QCoreApplication::sendEvent(view, &event);
    at.settle();
  };
  press(Qt::Key_Right);
  BOOST_TEST(at.child<QDoubleSpinBox>("adjustTilt")->value() == -4.0);
  press(Qt::Key_Up);
  BOOST_TEST(at.child<QDoubleSpinBox>("adjustTrim")->value() == 7.26);
  press(Qt::Key_Down, Qt::ShiftModifier);
  BOOST_TEST(at.child<QDoubleSpinBox>("adjustTrim")->value() == 7.16);
  BOOST_TEST(
      view->accessibleDescription().contains(QStringLiteral("Point at tilt -4.0°, trim 7.16 m: holds.")),
      view->accessibleDescription().toStdString());
  BOOST_TEST(
      view->accessibleDescription().contains(QStringLiteral("below, lowest edge; above, audience covered")));
  BOOST_TEST(at.source->advised().size() == 1); // the same map
  press(Qt::Key_PageUp);
  BOOST_TEST(at.child<QSpinBox>("adjustMark")->value() == 31);
  BOOST_TEST(at.source->advised().size() == 2); // of another link
  const MapScale scale = view->scale();
  const QPointF where(scale.x(-4.5), scale.y(8.0));
  QMouseEvent click(QEvent::MouseButtonPress, where, view->mapToGlobal(where), Qt::LeftButton, Qt::LeftButton,
                    Qt::NoModifier);
  QCoreApplication::sendEvent(view, &click);
  at.settle();
  BOOST_TEST(std::abs(view->point().trimM - 8.0) < 0.03);
  at.select("option8"); // no setting at all
  at.settle();
  BOOST_TEST(view->accessibleDescription().contains(QStringLiteral("the chain is too short")));
}

BOOST_AUTO_TEST_CASE(the_edges_of_the_map_name_the_rule_that_ends_it) {
  options::SettingMap map;
  const auto column = [&](double tilt, const char* high) {
    options::SettingColumn made{tilt, {}, {}};
    if (*high == 0) {
      made.shutBy = QStringList{QStringLiteral("travel"), QStringLiteral("cover")};
    } else {
      made.stretches.push_back(
          {5.0, 6.0, QStringLiteral("cover"), QString::fromLatin1(high), {{5.0, 6.0, Verdict::holds}}});
    }
    map.columns.push_back(made);
  };
  column(0.0, "");
  column(0.5, "headroom");
  column(1.0, "headroom");
  column(1.5, "lean");
  const auto names = edgeNames(map);
  BOOST_TEST_REQUIRE(names.size() == 3u);
  BOOST_TEST(names[0].rule.toStdString() == "headroom");
  BOOST_TEST(names[0].lastTilt == 1.0);
  BOOST_TEST(names[1].rule.toStdString() == "lean");
  BOOST_TEST(names[2].firstTilt == 0.5);
  BOOST_TEST(names[2].lastTilt == 1.5);
  BOOST_TEST(sideName(map, true).toStdString() == "travel of bar and joint, audience covered");
  BOOST_TEST(sideName(map, false).toStdString() == "no further tilt is possible");
}

BOOST_AUTO_TEST_CASE(the_tour_is_checked_and_stopped_with_what_was_done) {
  Opened at;
  auto* table = at.child<QTableView>("routeCheckTable");
  const auto cell = [&](int row, CheckColumn column) {
    return table->model()->index(row, static_cast<int>(column)).data().toString().toStdString();
  };
  at.child<QTabWidget>("routeParts")->setCurrentWidget(at.child<QWidget>("routeCheck"));
  at.child<QPushButton>("routeCheckAgain")->click();
  BOOST_TEST(at.child<QPushButton>("routeCheckCancel")->isVisible());
  at.settle();
  BOOST_TEST_REQUIRE(table->model()->rowCount() == 2);
  BOOST_TEST(cell(0, CheckColumn::best) == "holds");
  BOOST_TEST(cell(0, CheckColumn::stack) == "1 bass");
  BOOST_TEST(cell(0, CheckColumn::checked) == "before");
  BOOST_TEST(cell(1, CheckColumn::because) == "headroom");
  BOOST_TEST(at.child<QLabel>("routeCheckHead")->text().toStdString() ==
             "2 of 2 shows, 2000 settings decided. Hangs without an option that stands: 1.");
  at.source->holdAdvice(true);
  at.child<QPushButton>("routeCheckAfresh")->click();
  at.child<QPushButton>("routeCheckCancel")->click();
  at.settle();
  BOOST_TEST(table->model()->rowCount() == 1); // what was done
  BOOST_TEST(cell(0, CheckColumn::checked) == "now");
  BOOST_TEST(at.child<QLabel>("routeCheckHead")->text().contains(QStringLiteral("Stopped before the end")));
  at.source->holdAdvice(false);
  Q_EMIT table->activated(table->model()->index(0, 0));
  at.settle();
  BOOST_TEST(at.child<OptionsPlace>("options")->isVisible());
  BOOST_TEST(at.window.session().show().show.toStdString() == "Oxmere night");
  at.source->failNext("the disk went away");
  at.child<QPushButton>("routeCheckAgain")->click();
  at.settle();
  BOOST_TEST(at.child<QLabel>("routeCheckHead")->text().contains(QStringLiteral("the disk went away")));
}

BOOST_AUTO_TEST_CASE(a_house_rule_says_where_it_comes_from_and_is_signed_with_what_it_changes) {
  auto overview = smallOverview();
  overview.shows[0].house.push_back({QStringLiteral("headroom-clearance"), 0.2, QStringLiteral("m"),
                                     QStringLiteral("new sprinklers"), QStringLiteral("Casimir Wold"),
                                     QDate(2027, 3, 1)});
  Opened at(overview);
  at.window.goTo(QStringLiteral("options"));
  at.settle();
  at.child<QTabWidget>("optionsParts")->setCurrentWidget(at.child<QWidget>("house"));
  auto* table = at.child<QTableView>("houseTable");
  const auto cell = [&](int row, HouseColumn column) {
    return table->model()->index(row, static_cast<int>(column)).data().toString();
  };
  BOOST_TEST(cell(0, HouseColumn::figure).toStdString() == "headroom-clearance"); // what is set comes first
  BOOST_TEST(cell(0, HouseColumn::value).toStdString() == "0.2 m");
  BOOST_TEST(cell(0, HouseColumn::usual).toStdString() == "0.1 m");
  BOOST_TEST(cell(0, HouseColumn::places).toStdString() == "show");
  BOOST_TEST(cell(0, HouseColumn::source).contains(QStringLiteral("Casimir Wold")));
  BOOST_TEST(cell(1, HouseColumn::places).toStdString() == "–");
  auto* sign = at.child<QPushButton>("houseSign");
  at.child<QComboBox>("housePlace")->setCurrentIndex(2);
  at.child<QLineEdit>("houseValue")->setText(QStringLiteral("a foot"));
  at.child<QLineEdit>("houseBecause")->setText(QStringLiteral("lower sprinklers"));
  BOOST_TEST(!at.child<QPushButton>("houseTry")->isEnabled());
  at.child<QLineEdit>("houseValue")->setText(QStringLiteral("0.3"));
  BOOST_TEST(at.child<QPushButton>("houseTry")->isEnabled());
  BOOST_TEST(!sign->isEnabled()); // nobody's name
  at.child<QPushButton>("houseTry")->click();
  at.settle();
  at.window.session().setUnits(UnitSystem::usCustomary); // the same field then takes feet, and any length
  BOOST_TEST(!at.child<QPushButton>("houseTry")->isEnabled());
  BOOST_TEST(houseFigureTyped(QStringLiteral("1"), QStringLiteral("m"), UnitSystem::usCustomary).value() ==
             0.3048);
  BOOST_TEST(houseFigureTyped(QStringLiteral("6 in"), QStringLiteral("m"), UnitSystem::metric).value() ==
             0.1524);
  BOOST_TEST(houseUnit(QStringLiteral("d"), UnitSystem::usCustomary).toStdString() == "d");
  at.window.session().setUnits(UnitSystem::metric);
  at.child<QLineEdit>("houseValue")->setText(QStringLiteral("300 mm"));
  at.child<QLineEdit>("houseBecause")->setText(QStringLiteral("lower sprinklers"));
  at.child<QPushButton>("houseTry")->click();
  at.settle();
  auto* effect = at.child<QLabel>("houseEffect");
  BOOST_TEST(effect->text().contains(QStringLiteral("Oxmere night, left: holds → fails.")));
  at.child<QComboBox>("houseBy")->setEditText(QStringLiteral("Ide Quarrel"));
  BOOST_TEST(sign->isEnabled());
  sign->click();
  at.settle();
  BOOST_TEST(effect->text().startsWith(QStringLiteral("Chosen options that it counts for, judged again: 2.")),
             effect->text().toStdString());
  const auto wishes = at.source->houseWishes();
  BOOST_TEST_REQUIRE(wishes.size() == 3u);
  BOOST_TEST(wishes[0].dryRun);
  BOOST_TEST(!wishes[2].dryRun);
  BOOST_TEST(wishes[2].site.name.toStdString() == "Oxmere night");
  BOOST_TEST(wishes[2].value.value() == 0.3);
  BOOST_TEST(wishes[2].by.toStdString() == "Ide Quarrel");
  at.source->failNext("may only be tightened");
  at.child<QPushButton>("houseWithdraw")->click();
  at.settle();
  BOOST_TEST(effect->text().contains(QStringLiteral("may only be tightened. Nothing was changed.")));
}

BOOST_AUTO_TEST_SUITE_END()
