// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/unit_test.hpp>

#include <QAbstractItemModelTester>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QLabel>
#include <QLineEdit>
#include <QMouseEvent>
#include <QPushButton>
#include <QTableView>

#include "desk/options/choose_dialog.h"
#include "desk/options/elevation.h"
#include "desk/options/options_place.h"
#include "desk/options/scene_drawing.h"
#include "desk/style/verdict_label.h"
#include "fixture_source.h"
#include "opened.h"

using namespace hangbook;
using namespace hangbook::desk;
using namespace hangbook::testing;
using options::Verdict;

namespace {

constexpr auto fatal = QAbstractItemModelTester::FailureReportingMode::Fatal;

/// A window at the Options place, its search at an end.
struct AtOptions : Opened {
  AtOptions() {
    window.goTo(QStringLiteral("options"));
    settle();
  }
  OptionsPlace& here() { return *child<OptionsPlace>("options"); }
  QTableView& list() { return *child<QTableView>("optionListTable"); }
  QTableView& sheet() { return *child<QTableView>("ruleSheet"); }
  Verdict verdict() { return child<VerdictLabel>("adjustVerdict")->verdict().value(); }
  void select(const char* id) {
    for (int row = 0; row < list().model()->rowCount(); ++row) {
      if (list().model()->index(row, 0).data(keyRole).toString() == QLatin1String(id)) {
        list().selectRow(row);
      }
    }
    settle();
  }
};

} // namespace

BOOST_AUTO_TEST_SUITE(options_place)

BOOST_AUTO_TEST_CASE(option_rows_say_what_a_planner_compares) {
  OptionListModel model;
  const QAbstractItemModelTester tester(&model, fatal);
  const auto catalogue = smallOverview().catalogue;
  model.setRows({optionLine(sampleOption(0, Verdict::holds), 1, false, catalogue),
                 optionLine(sampleOption(8, Verdict::fails), 2, false, catalogue)});
  const auto text = [&](int row, OptionColumn column) {
    return model.index(row, static_cast<int>(column)).data().toString().toStdString();
  };
  BOOST_TEST(text(0, OptionColumn::stack) == "2 bass · 1 upper · downfill");
  BOOST_TEST(text(0, OptionColumn::trim) == "7.25–9.50");
  BOOST_TEST(text(0, OptionColumn::mark) == "30");
  BOOST_TEST(text(0, OptionColumn::heaviest) == "68 %");
  BOOST_TEST(text(1, OptionColumn::verdict) == "fails");
  BOOST_TEST(text(1, OptionColumn::mark) == "–");
  model.setFigures(Figures(UnitSystem::usCustomary));
  BOOST_TEST(text(0, OptionColumn::trim) == "23.8–31.1");
}

BOOST_AUTO_TEST_CASE(a_trim_window_is_rounded_inwards) {
  const auto shown = [](double low, double high) {
    options::Option option = sampleOption(0, Verdict::holds);
    option.trimWindow = options::TrimWindow{low, high, {}, {}};
    OptionListModel model;
    model.setRows({optionLine(option, 1, false, {})});
    return model.index(0, static_cast<int>(OptionColumn::trim)).data().toString().toStdString();
  };
  BOOST_TEST(shown(7.171, 8.269) == "7.18–8.26");
  BOOST_TEST(shown(7.17, 8.26) == "7.17–8.26");
  BOOST_TEST(shown(7.1712, 7.1788) == "7.172–7.178");
  BOOST_TEST(shown(5.5699, 5.5701) == "5.57"); // one trim needs no second telling
}

BOOST_AUTO_TEST_CASE(a_point_without_a_limit_is_never_shown_as_within_it) {
  options::Option option = sampleOption(0, Verdict::unproven);
  option.findings.clear();
  for (auto& point : option.points) {
    point.capacityKn.reset();
  }
  OptionListModel model;
  model.setRows({optionLine(option, 1, false, {})});
  const QModelIndex cell = model.index(0, static_cast<int>(OptionColumn::heaviest));
  BOOST_TEST(cell.data().toString().toStdString() == "no limit");
  BOOST_TEST(!cell.data(useRole).isValid());
  BOOST_TEST(!cell.data(orderRole).isValid());
}

BOOST_AUTO_TEST_CASE(the_rule_sheet_puts_the_worst_first_and_what_is_not_asked_last) {
  RuleSheetModel model;
  const QAbstractItemModelTester tester(&model, fatal);
  model.setFindings(sampleOption(0, Verdict::unproven).findings);
  BOOST_TEST_REQUIRE(model.rowCount() == 3);
  const auto text = [&](int row, RuleColumn column) {
    return model.index(row, static_cast<int>(column)).data().toString().toStdString();
  };
  BOOST_TEST(text(0, RuleColumn::verdict) == "unproven");
  BOOST_TEST(text(1, RuleColumn::value) == "not known");
  BOOST_TEST(text(2, RuleColumn::verdict) == "not asked");
  BOOST_TEST(text(2, RuleColumn::text) == "Indoors: no wind.");
  BOOST_TEST(text(0, RuleColumn::limit) == "5.00 kN");
}

BOOST_AUTO_TEST_CASE(the_drawing_is_the_scene_and_to_scale) {
  const options::Scene scene = sampleScene(7.25);
  const Drawing drawing = drawingOf(scene, Figures());
  int cabinets = 0;
  for (const Shape& each : drawing.shapes) {
    cabinets += each.ink == Ink::cabinet ? 1 : 0;
  }
  BOOST_TEST(cabinets == 2);
  BOOST_TEST_REQUIRE(drawing.dimensions.size() == 1u);
  BOOST_TEST(drawing.dimensions[0].text.toStdString() == "trim 7.25 m");
  BOOST_TEST(drawing.room.height() == 14.5);
  BOOST_TEST(drawing.description.contains(QStringLiteral("mark 37")));
  const Scale scale = fitted(drawing.room, QRectF(0, 0, 880, 600));
  const QPointF across = scale.toScreen({1, 0}) - scale.toScreen({0, 0});
  const QPointF up = scale.toScreen({0, 1}) - scale.toScreen({0, 0});
  BOOST_TEST(across.x() == -up.y());
  BOOST_TEST(scale.pixelsPerMetre == 20.0);
}

BOOST_AUTO_TEST_CASE(zoom_keeps_the_place_under_the_pointer) {
  Elevation elevation;
  elevation.resize(600, 400);
  elevation.setDrawing(drawingOf(sampleScene(7.25), Figures()));
  const QPointF pointer(130, 210);
  const QPointF before = elevation.scale().toMetres(pointer);
  elevation.zoom(1.7, pointer);
  const QPointF after = elevation.scale().toMetres(pointer);
  BOOST_TEST(std::abs(before.x() - after.x()) < 1e-9);
  BOOST_TEST(std::abs(before.y() - after.y()) < 1e-9);
  const QImage picture = elevation.picture();
  BOOST_TEST(picture.width() == 1200);
  BOOST_TEST(!elevation.accessibleDescription().isEmpty());
}

BOOST_AUTO_TEST_CASE(the_list_fills_and_narrows_by_words_and_verdict) {
  AtOptions at;
  BOOST_TEST(at.list().model()->rowCount() == 10);
  at.child<QLineEdit>("optionListSearch")->setText(QStringLiteral("downfill"));
  BOOST_TEST(at.list().model()->rowCount() == 4);
  at.child<QLineEdit>("optionListSearch")->clear();
  auto* verdicts = at.child<QComboBox>("optionsVerdict");
  verdicts->setCurrentIndex(verdicts->findText(QStringLiteral("unproven")));
  BOOST_TEST(at.list().model()->rowCount() == 2);
  verdicts->setCurrentIndex(0);
  BOOST_TEST(at.list().model()->rowCount() == 10);
}

BOOST_AUTO_TEST_CASE(a_changed_trim_is_judged_again) {
  AtOptions at;
  at.select("option0");
  BOOST_TEST((at.verdict() == Verdict::holds));
  auto* trim = at.child<QDoubleSpinBox>("adjustTrim");
  BOOST_TEST(trim->value() == 7.25);
  trim->setValue(9.9);
  at.settle();
  BOOST_TEST((at.verdict() == Verdict::fails));
  BOOST_TEST(!at.child<QPushButton>("adjustChoose")->isEnabled());
  BOOST_TEST(at.child<Elevation>("elevation")->drawing().dimensions.at(0).text.toStdString() ==
             "trim 9.90 m");
  at.child<QPushButton>("adjustBack")->click();
  at.settle();
  BOOST_TEST((at.verdict() == Verdict::holds));
  BOOST_TEST(trim->value() == 7.25);
}

BOOST_AUTO_TEST_CASE(many_changes_at_once_end_at_the_last_one) {
  AtOptions at;
  at.select("option0");
  auto* trim = at.child<QDoubleSpinBox>("adjustTrim");
  for (int i = 0; i < 200; ++i) {
    trim->setValue(7.0 + 0.01 * i);
  }
  trim->setValue(8.5);
  at.settle();
  BOOST_TEST(at.child<Elevation>("elevation")->drawing().dimensions.at(0).text.toStdString() ==
             "trim 8.50 m");
}

BOOST_AUTO_TEST_CASE(the_hang_is_moved_by_hand) {
  AtOptions at;
  at.select("option0");
  auto* elevation = at.child<Elevation>("elevation");
  elevation->showRoom();
  const double before = at.child<QDoubleSpinBox>("adjustTrim")->value();
  const QPointF hold = elevation->scale().toScreen(elevation->drawing().hang.center());
  const QPointF higher = hold - QPointF(0, elevation->scale().pixelsPerMetre);
  const auto send = [&](QEvent::Type type, QPointF where, Qt::MouseButton button) {
    QMouseEvent event(type, where, elevation->mapToGlobal(where), button, Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(elevation, &event);
  };
  send(QEvent::MouseButtonPress, hold, Qt::LeftButton);
  send(QEvent::MouseMove, higher, Qt::NoButton);
  at.settle();
  BOOST_TEST(at.child<QDoubleSpinBox>("adjustTrim")->value() == before + 1.0,
             boost::test_tools::tolerance(1e-3));
  BOOST_TEST(elevation->drawing().dimensions.at(0).text.toStdString() == "trim 8.25 m");
}

BOOST_AUTO_TEST_CASE(choosing_needs_a_name) {
  AtOptions at;
  at.select("option0");
  at.here().setAsker([](ChooseDialog& dialog) {
    auto* accept = dialog.findChild<QPushButton*>(QStringLiteral("chooseAccept"));
    BOOST_TEST(!accept->isEnabled());
    dialog.findChild<QComboBox*>(QStringLiteral("chooseBy"))->setEditText(QStringLiteral("Ide Quarrel"));
    BOOST_TEST(accept->isEnabled());
    return true;
  });
  at.child<QPushButton>("adjustChoose")->click();
  at.settle();
  const auto chosen = at.source->chosen();
  BOOST_TEST_REQUIRE(chosen.size() == 1u);
  BOOST_TEST(chosen[0].by.toStdString() == "Ide Quarrel");
  BOOST_TEST(chosen[0].show.show.toStdString() == "Oxmere night");
  BOOST_TEST(chosen[0].setting.trimM == 7.25);
  BOOST_TEST(at.child<QLabel>("savedText")->text().startsWith(QStringLiteral("Saved at")));
}

BOOST_AUTO_TEST_CASE(an_unproven_option_needs_a_reason_and_is_not_cleared) {
  AtOptions at;
  at.select("option6");
  BOOST_TEST((at.verdict() == Verdict::unproven));
  at.here().setAsker([](ChooseDialog& dialog) {
    auto* accept = dialog.findChild<QPushButton*>(QStringLiteral("chooseAccept"));
    BOOST_TEST(dialog.findChild<QLabel*>(QStringLiteral("chooseNotCleared"))->text().toStdString() ==
               "NOT CLEARED TO LIFT");
    dialog.findChild<QComboBox*>(QStringLiteral("chooseBy"))->setEditText(QStringLiteral("Ide Quarrel"));
    BOOST_TEST(!accept->isEnabled());
    dialog.findChild<QLineEdit*>(QStringLiteral("chooseReason"))->setText(QStringLiteral("figure asked for"));
    BOOST_TEST(accept->isEnabled());
    return true;
  });
  at.child<QPushButton>("adjustChoose")->click();
  at.settle();
  BOOST_TEST_REQUIRE(at.source->chosen().size() == 1u);
  at.window.goTo(QStringLiteral("build"));
  at.settle();
  BOOST_TEST(at.child<QLabel>("buildNotCleared")->isVisible());
}

BOOST_AUTO_TEST_CASE(a_failing_option_cannot_be_chosen) {
  AtOptions at;
  at.select("option8");
  BOOST_TEST((at.verdict() == Verdict::fails));
  BOOST_TEST(!at.child<QPushButton>("adjustChoose")->isEnabled());
  ChooseDialog dialog(sampleOption(8, Verdict::fails), {}, {});
  dialog.findChild<QComboBox*>(QStringLiteral("chooseBy"))->setEditText(QStringLiteral("Ide Quarrel"));
  dialog.findChild<QLineEdit*>(QStringLiteral("chooseReason"))->setText(QStringLiteral("all the same"));
  BOOST_TEST(!dialog.findChild<QPushButton*>(QStringLiteral("chooseAccept"))->isEnabled());
}

BOOST_AUTO_TEST_CASE(a_refused_choice_says_what_still_stands) {
  AtOptions at;
  at.select("option0");
  at.here().setAsker([](ChooseDialog&) { return true; });
  at.source->failNext("somebody else chose in the meantime");
  at.child<QPushButton>("adjustChoose")->click();
  at.settle();
  const std::string text = at.child<QLabel>("troubleText")->text().toStdString();
  BOOST_TEST(text.find("somebody else chose in the meantime.") != std::string::npos);
  BOOST_TEST(text.find("still stands") != std::string::npos);
}

BOOST_AUTO_TEST_CASE(the_mark_stands_in_the_largest_type_and_what_was_used_is_recorded) {
  AtOptions at;
  at.select("option0");
  at.here().setAsker([](ChooseDialog& dialog) {
    dialog.findChild<QComboBox*>(QStringLiteral("chooseBy"))->setEditText(QStringLiteral("Ide Quarrel"));
    return true;
  });
  at.child<QPushButton>("adjustChoose")->click();
  at.settle();
  at.window.goTo(QStringLiteral("build"));
  at.settle();
  const auto* mark = at.child<QLabel>("buildMark");
  BOOST_TEST(mark->text().toStdString() == "30");
  for (const QLabel* each : at.window.findChildren<QLabel*>()) {
    BOOST_TEST((each == mark || each->font().pixelSize() < mark->font().pixelSize()));
  }
  BOOST_TEST(at.child<QLabel>("buildNeighbours")->text().contains(QStringLiteral("Mark 31: out of travel")));
  auto* button = at.child<QPushButton>("recordButton");
  BOOST_TEST(!button->isEnabled());
  at.child<QComboBox>("recordBy")->setEditText(QStringLiteral("Ide Quarrel"));
  BOOST_TEST(button->isEnabled());
  at.child<QLineEdit>("recordMeasured")->setText(QStringLiteral("seven"));
  BOOST_TEST(!button->isEnabled());
  at.child<QLineEdit>("recordMeasured")->setText(QStringLiteral("-7.5"));
  button->click();
  at.settle();
  const auto recorded = at.source->recorded();
  BOOST_TEST_REQUIRE(recorded.size() == 1u);
  BOOST_TEST(recorded[0].mark == 30);
  BOOST_TEST(inDegrees(recorded[0].measured.value()) == -7.5);
  BOOST_TEST(recorded[0].place.toStdString() == "Sluice Hall, Oxmere");
  BOOST_TEST(at.child<QTableView>("marksListTable")->model()->rowCount() == 1);
}

BOOST_AUTO_TEST_SUITE_END()
