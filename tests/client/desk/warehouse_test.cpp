// SPDX-License-Identifier: GPL-3.0-or-later
// Scanning and recording at the desk: by keyboard alone, and by a scanner that types wherever the focus is.
#include <boost/test/unit_test.hpp>

#include <algorithm>
#include <numeric>
#include <string_view>

#include <QApplication>
#include <QComboBox>
#include <QDateEdit>
#include <QDialog>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QTableView>
#include <QTemporaryDir>
#include <QTest>

#include "desk/examinations/due_chart.h"
#include "desk/examinations/due_model.h"
#include "desk/examinations/examinations_place.h"
#include "desk/fleet/fast_typing.h"
#include "desk/fleet/fleet_place.h"
#include "desk/fleet/happened_dialog.h"
#include "desk/fleet/load_models.h"
#include "desk/fleet/scan_bench.h"
#include "desk/fleet/state_dialog.h"
#include "desk/fleet/stock_chart.h"
#include "desk/fleet/stock_models.h"
#include "opened.h"

using namespace hangbook;
using namespace hangbook::desk;
using hangbook::testing::Opened;
using hangbook::testing::smallOverview;

namespace {

/// The Fleet place with the scanner set to bring things back into a bay.
struct AtBench : Opened {
  AtBench() {
    window.goTo(QStringLiteral("fleet"));
    child<FleetPlace>("fleet")->bench().setSound([this] { ++sounds; });
    child<QComboBox>("scanTarget")->setEditText(QStringLiteral("warehouse bay 7"));
    child<QComboBox>("scanBy")->setEditText(QStringLiteral("Ide Quarrel"));
  }
  ScanBench& bench() { return child<FleetPlace>("fleet")->bench(); }
  std::string word() { return child<QLabel>("scanWord")->text().toStdString(); }
  int sounds = 0;
};

/// Presses Tab until the named widget, or one in it, has the keyboard.
void tabTo(const char* name) {
  for (int presses = 0; presses < 60; ++presses) {
    for (const QWidget* at = QApplication::focusWidget(); at != nullptr; at = at->parentWidget()) {
      if (at->objectName() == QLatin1String(name)) {
        return;
      }
    }
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
  }
  BOOST_FAIL("the keyboard does not reach " << name);
}

void type(const char* text) {
  QTest::keyClicks(QApplication::focusWidget(), QLatin1String(text));
}

void press(Qt::Key key, int times = 1) {
  for (int i = 0; i < times; ++i) {
    QTest::keyClick(QApplication::focusWidget(), key);
  }
}

} // namespace

BOOST_AUTO_TEST_SUITE(at_the_warehouse)

BOOST_AUTO_TEST_CASE(a_scan_and_an_examination_by_keyboard_alone) {
  Opened opened;
  QTest::keyClick(&opened.window, Qt::Key_4, Qt::ControlModifier);
  BOOST_TEST_REQUIRE(QApplication::focusWidget() != nullptr);
  BOOST_TEST(QApplication::focusWidget()->objectName().toStdString() == "scanField"); // ready at once
  opened.child<FleetPlace>("fleet")->bench().setSound([] {});
  tabTo("scanKind");
  press(Qt::Key_Down, 4); // to another place
  tabTo("scanTarget");
  type("workshop");
  tabTo("scanBy");
  type("Ide Quarrel");
  tabTo("scanField");
  type("MB-10");
  press(Qt::Key_Return);
  opened.settle();
  BOOST_TEST(opened.child<QLabel>("scanWord")->text().toStdString() == "booked",
             opened.source->scanned().join(u' ').toStdString());
  tabTo("scanBack");
  press(Qt::Key_Space);
  opened.settle();
  BOOST_TEST(opened.child<QLabel>("scanWord")->text().toStdString() == "taken back");

  QTest::keyClick(&opened.window, Qt::Key_5, Qt::ControlModifier);
  press(Qt::Key_Down, 2);
  tabTo("examineResult");
  press(Qt::Key_Down); // pass
  tabTo("examineCertificate");
  type("C-118");
  tabTo("examineBy");
  type("Ide Quarrel");
  tabTo("examineRecord");
  press(Qt::Key_Space);
  opened.settle();
  BOOST_TEST_REQUIRE(opened.source->examined().size() == 1u);
  BOOST_TEST(opened.source->examined().front().certificate.toStdString() == "C-118");
  BOOST_TEST((opened.source->examined().front().result == fleet::ExaminationResult::pass));
}

BOOST_AUTO_TEST_CASE(fast_typing_tells_a_scanner_from_fingers) {
  FastTyping typing;
  BOOST_TEST(typing.add(QStringLiteral("M"), 1000));
  BOOST_TEST(!typing.add(QStringLiteral("B"), 1005));
  BOOST_TEST(!typing.add(QStringLiteral("-"), 1010));
  BOOST_TEST(!typing.add(QStringLiteral("9"), 1010 + FastTyping::gapMs));
  BOOST_TEST(typing.endedAt(1060).toStdString() == "MB-9");
  BOOST_TEST(typing.endedAt(1061).isEmpty()); // ended
  // Fingers: each character begins a run of its own.
  for (int i = 0; i < 6; ++i) {
    BOOST_TEST(typing.add(QStringLiteral("x"), 2000 + i * (FastTyping::gapMs + 1)));
  }
  BOOST_TEST(typing.endedAt(2000 + 5 * (FastTyping::gapMs + 1) + 1).isEmpty());
  // Enter that comes late is a finger's.
  for (int i = 0; i < 6; ++i) {
    typing.add(QStringLiteral("x"), 3000 + i);
  }
  BOOST_TEST(typing.endedAt(3006 + FastTyping::gapMs).isEmpty());
}

BOOST_AUTO_TEST_CASE(a_scanner_types_wherever_the_focus_is) {
  AtBench at;
  auto* table = at.child<QTableView>("fleetListTable");
  table->setFocus();
  for (const char each : std::string_view("MB-10")) {
    QTest::keyClick(QApplication::focusWidget(), each);
  }
  auto* field = at.child<QLineEdit>("scanField");
  BOOST_TEST(field->text().toStdString() == "MB-10");
  QTest::keyClick(field, Qt::Key_Return);
  at.settle();
  BOOST_TEST(at.word() == "booked");
  BOOST_TEST(field->text().isEmpty());
  BOOST_TEST(at.sounds == 0);

  auto* search = at.child<QLineEdit>("fleetListSearch");
  search->setText(QStringLiteral("bass"));
  search->setFocus();
  QTest::keyClicks(search, QStringLiteral("NO-SUCH"));
  QTest::keyClick(search, Qt::Key_Return);
  at.settle();
  BOOST_TEST(search->text().toStdString() == "bass"); // the search stands as it was
  BOOST_TEST(at.word() == "unknown code");
  BOOST_TEST(at.sounds == 1);
  BOOST_TEST(at.source->scanned().join(u' ').toStdString() == "MB-10/Ide Quarrel NO-SUCH/Ide Quarrel");
}

BOOST_AUTO_TEST_CASE(fifty_scans_without_waiting_are_answered_in_their_order) {
  AtBench at;
  QStringList sent;
  for (int i = 0; i < 50; ++i) {
    const QString code = i % 10 == 0 ? QStringLiteral("X%1").arg(i) : QStringLiteral("MB-9");
    sent << code + QStringLiteral("/Ide Quarrel");
    at.bench().scan(code);
  }
  at.settle();
  BOOST_TEST(at.source->scanned().join(u' ').toStdString() == sent.join(u' ').toStdString());
  const std::vector<ScanLine>& lines = at.bench().log().all();
  BOOST_TEST_REQUIRE(lines.size() == 50u);
  BOOST_TEST(lines.front().number == 50); // the newest first
  BOOST_TEST(std::ranges::count(lines, QStringLiteral("unknown code"), &ScanLine::word) == 5);
  BOOST_TEST(std::ranges::count(lines, QStringLiteral("booked"), &ScanLine::word) == 1);
  BOOST_TEST(std::ranges::count(lines, QStringLiteral("there already"), &ScanLine::word) == 44);
  BOOST_TEST(at.child<QLabel>("scanCount")->text().toStdString() == "1 booked · 49 not");
  // The list follows once the scanner has come to rest.
  BOOST_TEST(at.window.session().overview().units[1].place.toStdString() == "warehouse bay 7");
}

BOOST_AUTO_TEST_CASE(the_last_scan_is_taken_back_once) {
  AtBench at;
  auto* back = at.child<QPushButton>("scanBack");
  BOOST_TEST(!back->isEnabled());
  at.bench().scan(QStringLiteral("MB-2"));
  at.settle();
  BOOST_TEST(back->isEnabled());
  back->click();
  at.settle();
  BOOST_TEST(at.word() == "taken back");
  BOOST_TEST(!back->isEnabled());
}

BOOST_AUTO_TEST_CASE(without_a_name_or_a_place_nothing_is_booked_and_it_says_so) {
  AtBench at;
  at.child<QComboBox>("scanTarget")->setEditText({});
  at.bench().scan(QStringLiteral("MB-2"));
  at.settle();
  BOOST_TEST(at.word() == "not booked");
  BOOST_TEST(at.sounds == 1);
  BOOST_TEST(at.source->scanned().isEmpty());
  at.child<QComboBox>("scanTarget")->setEditText(QStringLiteral("bay"));
  at.child<QComboBox>("scanBy")->setEditText({});
  at.bench().scan(QStringLiteral("MB-2"));
  at.settle();
  BOOST_TEST(at.child<QLabel>("scanText")->text().contains(QStringLiteral("MB-2")));
  BOOST_TEST(at.source->scanned().isEmpty());
}

BOOST_AUTO_TEST_CASE(a_scan_that_the_store_refuses_is_said_not_to_be_booked) {
  AtBench at;
  at.source->failNext("the disk is full");
  at.bench().scan(QStringLiteral("MB-2"));
  at.settle();
  BOOST_TEST(at.word() == "not booked");
  BOOST_TEST(at.child<QLabel>("scanText")->text().contains(QStringLiteral("the disk is full")));
  at.bench().scan(QStringLiteral("MB-2"));
  at.settle();
  BOOST_TEST(at.word() == "booked");
}

BOOST_AUTO_TEST_CASE(a_units_story_and_its_state) {
  AtBench at;
  auto* place = at.child<FleetPlace>("fleet");
  place->showKey(QStringLiteral("MB-2"));
  at.settle();
  auto* story = at.child<QTableView>("unitStory");
  BOOST_TEST_REQUIRE(story->model()->rowCount() == 1);
  place->setAsker([](QDialog& dialog) {
    auto* accept = dialog.findChild<QPushButton*>(QStringLiteral("stateAccept"));
    BOOST_TEST(!accept->isEnabled()); // a reason is needed
    dialog.findChild<QLineEdit*>(QStringLiteral("stateReason"))->setText(QStringLiteral("dented"));
    dialog.findChild<QComboBox*>(QStringLiteral("stateBy"))->setEditText(QStringLiteral("Ide Quarrel"));
    BOOST_TEST(accept->isEnabled());
    auto* state = dialog.findChild<QComboBox*>(QStringLiteral("stateState"));
    state->setCurrentIndex(state->findText(QStringLiteral("quarantined")));
    return true;
  });
  at.child<QPushButton>("unitState")->click();
  at.settle();
  BOOST_TEST(at.child<QLabel>("unitText")->text().contains(QStringLiteral("quarantined")));
  place->setAsker([](QDialog& dialog) {
    BOOST_TEST(!dialog.findChild<QPushButton*>(QStringLiteral("happenedAccept"))->isEnabled());
    dialog.findChild<QLineEdit*>(QStringLiteral("happenedRemark"))->setText(QStringLiteral("hook bent"));
    dialog.findChild<QComboBox*>(QStringLiteral("happenedBy"))->setEditText(QStringLiteral("Ide Quarrel"));
    BOOST_TEST(dialog.findChild<QPushButton*>(QStringLiteral("happenedAccept"))->isEnabled());
    return true;
  });
  at.child<QPushButton>("unitHappened")->click();
  at.settle();
  BOOST_TEST(at.child<QLabel>("unitTold")->text().toStdString() == "MB-2 is quarantined.");
  BOOST_TEST(at.child<QLabel>("unitTold")->isVisible());
}

BOOST_AUTO_TEST_CASE(a_failed_examination_names_the_shows_that_counted_on_the_unit) {
  Opened opened;
  opened.window.goTo(QStringLiteral("examinations"));
  auto* record = opened.child<QPushButton>("examineRecord");
  BOOST_TEST(!record->isEnabled());
  auto* table = opened.child<QTableView>("dueListTable");
  table->setFocus();
  table->setCurrentIndex(table->model()->index(2, 0));
  const std::string serial = table->currentIndex().data(keyRole).toString().toStdString();
  auto* result = opened.child<QComboBox>("examineResult");
  result->setCurrentIndex(result->findText(QStringLiteral("fail")));
  opened.child<QComboBox>("examineBy")->setEditText(QStringLiteral("Ide Quarrel"));
  BOOST_TEST(!record->isEnabled()); // what was found is needed
  opened.child<QLineEdit>("examineRemark")->setText(QStringLiteral("crack in the eye"));
  BOOST_TEST_REQUIRE(record->isEnabled());
  record->click();
  opened.settle();
  BOOST_TEST_REQUIRE(opened.source->examined().size() == 1u);
  BOOST_TEST(opened.source->examined().front().serial.toStdString() == serial);
  const QString told = opened.child<QLabel>("examineTold")->text();
  BOOST_TEST(told.contains(QStringLiteral("is quarantined")), told.toStdString());
  BOOST_TEST(told.contains(QStringLiteral("Oxmere night")), told.toStdString());
  BOOST_TEST(!record->isEnabled()); // the result is never taken over to the next one
}

BOOST_AUTO_TEST_CASE(what_is_overdue_is_not_hidden_without_a_word) {
  Opened opened;
  opened.window.goTo(QStringLiteral("examinations"));
  auto* hidden = opened.child<QLabel>("dueHidden");
  BOOST_TEST(!hidden->isVisible());
  opened.child<QLineEdit>("dueListSearch")->setText(QStringLiteral("MB-10"));
  BOOST_TEST(hidden->isVisible());
  BOOST_TEST(hidden->text().startsWith(QStringLiteral("3 ")), hidden->text().toStdString());
  opened.child<QLineEdit>("dueListSearch")->clear();
  BOOST_TEST(!hidden->isVisible());
}

BOOST_AUTO_TEST_CASE(weeks_of_the_chart_hold_what_falls_due_in_them) {
  const Overview overview = smallOverview();
  const auto weeks = dueByWeek(overview.due, overview.today, 52);
  // Due on Friday 30 April 2027; the first week is that of Monday 29 March.
  BOOST_TEST(weeks.at(4) == 1);
  BOOST_TEST(std::accumulate(weeks.begin(), weeks.end(), 0) == 1);
}

BOOST_AUTO_TEST_CASE(stock_against_demand_by_keyboard) {
  Opened opened;
  QTest::keyClick(&opened.window, Qt::Key_4, Qt::ControlModifier);
  tabTo("fleetPartsBar");
  press(Qt::Key_Right);
  opened.settle();
  BOOST_TEST(opened.child<QWidget>("stockPage")->isVisible());
  auto* table = opened.child<QTableView>("stockListTable");
  BOOST_TEST_REQUIRE(table->model()->rowCount() == 1); // one type
  const auto at = [&](StockColumn column) {
    return table->model()->index(0, static_cast<int>(column)).data().toString().toStdString();
  };
  BOOST_TEST(at(StockColumn::type) == "Marram bass");
  BOOST_TEST(at(StockColumn::owned) == "4");
  BOOST_TEST(at(StockColumn::keptBack) == "1");
  // One stands until 30 April; one fell due last year, one was never examined: both are due, the third is
  // kept back.
  BOOST_TEST(at(StockColumn::due) == "2");
  BOOST_TEST(at(StockColumn::free) == "1");
  BOOST_TEST(opened.child<QLabel>("stockSays")->text().contains(QStringLiteral("Oxmere night")));
  BOOST_TEST(opened.child<QLabel>("stockSays")->text().contains(QStringLiteral("4 hangs")));
  BOOST_TEST(!opened.child<QTableView>("shortageTable")->isVisible());
  tabTo("stockDay");
  opened.child<QDateEdit>("stockDay")->setDate(QDate(2027, 5, 1));
  opened.settle();
  BOOST_TEST(at(StockColumn::due) == "3"); // the day after it stands no more
  BOOST_TEST(at(StockColumn::free) == "0");
  // The picture beside it: fit until that day, and not after it; on each day as the list says.
  const TypeThroughTime& through = opened.child<StockChart>("stockChart")->shown();
  BOOST_TEST(through.type.toStdString() == "Marram bass");
  BOOST_TEST_REQUIRE(through.days.size() > 50u);
  for (std::size_t i = 0; i < through.days.size(); ++i) {
    BOOST_TEST(through.fit[i] == (through.days[i] <= QDate(2027, 4, 30) ? 1 : 0));
    BOOST_TEST(through.wanted[i] == 0);
  }
}

BOOST_AUTO_TEST_CASE(what_a_show_lacks_is_named_with_what_would_fill_it) {
  Overview overview = smallOverview();
  options::Choice choice;
  choice.tour = QStringLiteral("Test tour");
  choice.show = QStringLiteral("Oxmere night");
  choice.hang = QStringLiteral("left");
  choice.revision = 1;
  choice.key = hangbook::testing::sampleOption(1, options::Verdict::holds).key;
  choice.key.stack = QStringList(6, QStringLiteral("Marram bass"));
  overview.choices.push_back(choice);
  overview.shows[0].awayFrom = overview.shows[0].awayTo = overview.shows[0].from;
  Opened opened(overview);
  opened.window.goTo(QStringLiteral("fleet"));
  BOOST_TEST_REQUIRE(opened.child<FleetPlace>("fleet")->showPart(QStringLiteral("stock")));
  opened.settle();
  auto* lacks = opened.child<QTableView>("shortageTable");
  BOOST_TEST(lacks->isVisible());
  QStringList lines;
  for (int row = 0; row < lacks->model()->rowCount(); ++row) {
    QStringList cells;
    for (int column = 0; column < lacks->model()->columnCount(); ++column) {
      cells << lacks->model()->index(row, column).data().toString();
    }
    lines << cells.join(QStringLiteral(" | "));
  }
  // 6 are wanted, 1 is fit; 2 would be if they were examined, 1 is kept back.
  BOOST_TEST(lines.contains(QStringLiteral(
                 "Oxmere night | Marram bass | 5 | 2027-04-03 | examine 2, release or repair 1, hire in 2")),
             lines.join('\n').toStdString());
}

BOOST_AUTO_TEST_CASE(carts_of_a_show_and_what_is_in_a_truck) {
  Overview overview = smallOverview();
  fleet::NamedPlace truck;
  truck.name = QStringLiteral("truck 1");
  truck.kind = fleet::PlaceKind::truck;
  truck.payload = kilograms(100);
  overview.places.push_back(truck);
  overview.units[2].place = truck.name;
  Opened opened(overview);
  opened.window.goTo(QStringLiteral("fleet"));
  BOOST_TEST_REQUIRE(opened.child<FleetPlace>("fleet")->showPart(QStringLiteral("loads")));
  opened.settle();
  BOOST_TEST(opened.child<QLabel>("cartsSay")->text().startsWith(QStringLiteral("Nothing is chosen")));
  BOOST_TEST(!opened.child<QTableView>("cartTable")->isVisible());
  BOOST_TEST(opened.child<QComboBox>("loadTruck")->currentText().toStdString() == "truck 1");
  auto* table = opened.child<QTableView>("loadTable");
  BOOST_TEST_REQUIRE(table->model()->rowCount() == 1);
  BOOST_TEST(table->model()->index(0, static_cast<int>(LoadColumn::unit)).data().toString().toStdString() ==
             "MB-2");
  const QString payload = opened.child<QLabel>("payloadSays")->text();
  BOOST_TEST(payload.contains(QStringLiteral("92.5 kg of 100.0 kg")), payload.toStdString());
  tabTo("loadTruck");
  press(Qt::Key_Down); // what is in the bay
  BOOST_TEST(table->model()->rowCount() == 3);
  BOOST_TEST(opened.child<QLabel>("payloadSays")->text().contains(QStringLiteral("not stated")));
}

BOOST_AUTO_TEST_CASE(units_that_were_never_examined_come_first) {
  Opened opened;
  opened.window.goTo(QStringLiteral("examinations"));
  const auto* model = opened.child<QTableView>("dueListTable")->model();
  BOOST_TEST_REQUIRE(model->rowCount() == 4);
  BOOST_TEST(model->index(0, static_cast<int>(DueColumn::state)).data().toString().toStdString() ==
             "none recorded");
  BOOST_TEST(model->index(1, static_cast<int>(DueColumn::state)).data().toString().toStdString() ==
             "none recorded");
  BOOST_TEST(model->index(2, static_cast<int>(DueColumn::state)).data().toString().toStdString() ==
             "overdue");
}

BOOST_AUTO_TEST_CASE(a_batch_is_split_and_a_single_thing_is_not_offered_to_be) {
  Overview overview = smallOverview();
  overview.units[2].pieces = 40;
  Opened opened(overview);
  opened.window.goTo(QStringLiteral("fleet"));
  auto* place = opened.child<FleetPlace>("fleet");
  place->showKey(QStringLiteral("MB-10"));
  BOOST_TEST(!opened.child<QPushButton>("unitSplit")->isVisible());
  place->showKey(QStringLiteral("MB-2"));
  BOOST_TEST(opened.child<QPushButton>("unitSplit")->isVisible());
  place->setAsker([](QDialog& dialog) {
    auto* accept = dialog.findChild<QPushButton*>(QStringLiteral("splitAccept"));
    dialog.findChild<QComboBox*>(QStringLiteral("splitBy"))->setEditText(QStringLiteral("Ide Quarrel"));
    BOOST_TEST(!accept->isEnabled()); // it needs a serial
    dialog.findChild<QLineEdit*>(QStringLiteral("splitSerial"))->setText(QStringLiteral("MB-2b"));
    auto* pieces = dialog.findChild<QSpinBox*>(QStringLiteral("splitPieces"));
    BOOST_TEST(pieces->maximum() == 39);
    pieces->setValue(15);
    BOOST_TEST(accept->isEnabled());
    return true;
  });
  opened.child<QPushButton>("unitSplit")->click();
  opened.settle();
  const std::vector<fleet::Unit>& units = opened.window.session().overview().units;
  BOOST_TEST(units[2].pieces.value() == 25);
  BOOST_TEST(units.back().serial.toStdString() == "MB-2b");
  BOOST_TEST(units.back().pieces.value() == 15);
}

BOOST_AUTO_TEST_CASE(labels_of_what_the_list_shows) {
  const QTemporaryDir folder;
  const QString file = folder.filePath(QStringLiteral("labels.pdf"));
  Opened opened;
  opened.window.goTo(QStringLiteral("fleet"));
  opened.child<QLineEdit>("fleetListSearch")->setText(QStringLiteral("MB"));
  opened.child<FleetPlace>("fleet")->setAsker([&](QDialog& dialog) {
    BOOST_TEST(!dialog.findChild<QPushButton*>(QStringLiteral("labelsAccept"))->isEnabled()); // needs a file
    dialog.findChild<QLineEdit*>(QStringLiteral("labelsFile"))->setText(file);
    BOOST_TEST(dialog.findChild<QComboBox*>(QStringLiteral("labelsSheet"))->count() == 3);
    return true;
  });
  opened.child<QPushButton>("unitLabels")->click();
  opened.settle();
  BOOST_TEST(opened.child<QLabel>("unitTold")->text().startsWith(QStringLiteral("3 labels")));
  QFile pdf(file);
  BOOST_REQUIRE(pdf.open(QIODevice::ReadOnly));
  BOOST_TEST(pdf.readAll().startsWith("%PDF"));
}

BOOST_AUTO_TEST_CASE(the_calendar_holds_all_whatever_is_searched_for) {
  const QTemporaryDir folder;
  const QString file = folder.filePath(QStringLiteral("due.ics"));
  Opened opened;
  opened.window.goTo(QStringLiteral("examinations"));
  opened.child<ExaminationsPlace>("examinations")->setCalendarAsker([&] { return file; });
  opened.child<QLineEdit>("dueListSearch")->setText(QStringLiteral("MB-10"));
  opened.child<QPushButton>("dueCalendar")->click();
  opened.settle();
  BOOST_TEST(opened.child<QLabel>("dueWritten")->text().startsWith(QStringLiteral("4 examinations")));
  QFile written(file);
  BOOST_REQUIRE(written.open(QIODevice::ReadOnly));
  const QByteArray text = written.readAll().replace("\r\n ", "");
  for (const char* serial : {"MB-10", "MB-9", "MB-2", "MH-1"}) {
    BOOST_TEST(text.contains(serial), serial);
  }
}

BOOST_AUTO_TEST_SUITE_END()
