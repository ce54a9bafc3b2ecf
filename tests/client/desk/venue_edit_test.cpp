// SPDX-License-Identifier: GPL-3.0-or-later
// A venue edited in the window on a real store, by keyboard: the demo's Ostrel Exchange, whose left hang
// stands on L1 and L2.
#include <cmath>
#include <set>

#include <boost/test/unit_test.hpp>

#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QDir>
#include <QLabel>
#include <QLineEdit>
#include <QTabWidget>
#include <QTableView>
#include <QTableWidget>
#include <QTest>

#include "desk/data/data_place.h"
#include "desk/data/venue_dialog.h"
#include "desk/data/venue_plan.h"
#include "desk/data/venue_side.h"
#include "desk/style/theme.h"
#include "on_demo.h"
#include "opened.h"

using namespace hangbook;
using namespace hangbook::desk;
using hangbook::testing::Opened;
using hangbook::testing::waitUntil;

namespace {

const QString exchangeHall = QStringLiteral("Ostrel Exchange");

struct OnVenue : hangbook::testing::OnDemo {
  OnVenue() { window.goTo(QStringLiteral("data")); }
  VenueDialog* open(const QString& hall = exchangeHall) {
    window.activateWindow(); // no window manager does it here when a dialog closes
    BOOST_TEST_REQUIRE(waitUntil([this] { return QApplication::activeWindow() == &window; }));
    auto* place = child<DataPlace>("data");
    place->showKey(hall);
    place->takeFocus();
    QTest::keyClick(child<QTableView>("recordListTable"), Qt::Key_F2);
    auto* dialog = child<VenueDialog>("venueDialog");
    BOOST_TEST_REQUIRE(waitUntil([dialog] { return QApplication::activeWindow() == dialog; }));
    return dialog;
  }
  /// The editor of the cell that is being typed in; one that was closed may not have been deleted yet.
  QLineEdit* editor(const char* table) {
    auto* found = qobject_cast<QLineEdit*>(QApplication::focusWidget());
    BOOST_TEST_REQUIRE((found != nullptr && found->objectName() == QStringLiteral("cellEditor") &&
                        child<QTableWidget>(table)->isAncestorOf(found)));
    return found;
  }
  /// Types into a cell as people do: F2, all of it over, Enter.
  void type(const char* table, int row, int column, const QString& text) {
    auto* cells = child<QTableWidget>(table);
    cells->setCurrentCell(row, column);
    QTest::keyClick(cells, Qt::Key_F2);
    auto* line = editor(table);
    line->selectAll();
    QTest::keyClicks(line, text);
    QTest::keyClick(line, Qt::Key_Return);
    QCoreApplication::processEvents();
  }
  /// To another tab of the dialog, as Ctrl+Tab or its letter does.
  void part(int index) {
    child<QTabWidget>("venueParts")->setCurrentIndex(index);
    QCoreApplication::processEvents();
  }
  void by(const char* name) { child<QComboBox>("venueBy")->setEditText(QLatin1String(name)); }
  void gone() {
    QCoreApplication::processEvents();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    BOOST_TEST(window.findChild<VenueDialog*>() == nullptr);
  }
  const venue::Venue& hall() { return *findVenue(window.session().overview(), exchangeHall); }
};

} // namespace

BOOST_AUTO_TEST_SUITE(venue_edit)

BOOST_AUTO_TEST_CASE(a_weaker_point_is_saved_and_what_it_does_to_chosen_options_is_told) {
  OnVenue on;
  on.open();
  auto* says = on.child<QLabel>("venueSays");
  auto* save = on.child<QPushButton>("venueSave");
  BOOST_TEST(!save->isEnabled());
  on.by("");
  on.type("venuePointsTable", 0, 4, QStringLiteral("1 kN"));
  BOOST_TEST(!save->isEnabled()); // nobody's name
  on.by("Ide Quarrel");
  BOOST_TEST(save->isEnabled());
  on.child<QPushButton>("venueTry")->click();
  on.settle();
  BOOST_TEST(says->text().contains(QStringLiteral("Ostrel, left: ")), says->text().toStdString());
  BOOST_TEST(says->text().contains(QStringLiteral("→ fails")), says->text().toStdString());
  BOOST_TEST((on.hall().points[0].capacity == kilonewtons(10.0)));
  save->click();
  on.settle();
  BOOST_TEST((on.hall().points[0].capacity == kilonewtons(1.0)));
  auto* effect = on.child<QLabel>("dataEffect");
  BOOST_TEST(effect->isVisible());
  BOOST_TEST(effect->text().contains(QStringLiteral("→ fails")), effect->text().toStdString());
  on.gone();
}

BOOST_AUTO_TEST_CASE(a_point_is_added_drawn_while_typed_and_another_taken_away) {
  OnVenue on;
  on.open();
  auto* plan = on.child<VenuePlan>("venuePlan");
  auto* cells = on.child<QTableWidget>("venuePointsTable");
  BOOST_TEST(plan->points().size() == 4u);
  on.child<QPushButton>("venuePointsAdd")->click();
  BOOST_TEST(cells->rowCount() == 5);
  auto* editor = on.editor("venuePointsTable"); // one can type at once
  QTest::keyClicks(editor, QStringLiteral("C1"));
  BOOST_TEST(plan->points()[4].name.toStdString() == "C1"); // before Enter
  QTest::keyClick(editor, Qt::Key_Return);
  QCoreApplication::processEvents(); // the view takes leave of its editor by an event
  BOOST_TEST(plan->accessibleDescription().contains(QStringLiteral("C1")));
  BOOST_TEST(!plan->points()[4].place.has_value());
  on.type("venuePointsTable", 4, 1, QStringLiteral("20 ft"));
  on.type("venuePointsTable", 4, 2, QStringLiteral("-1.5"));
  on.type("venuePointsTable", 4, 3, QStringLiteral("13.8"));
  BOOST_TEST_REQUIRE(plan->points()[4].place.has_value());
  BOOST_TEST(plan->points()[4].place->x() == 6.096);
  // Farther into the audience is higher on the plan, stage left is at its left.
  BOOST_TEST(plan->onScreen(*plan->points()[4].place).y() < plan->onScreen(*plan->points()[0].place).y());
  BOOST_TEST(plan->onScreen(*plan->points()[0].place).x() < plan->onScreen(*plan->points()[4].place).x());
  on.by("Ide Quarrel");
  on.child<QPushButton>("venueSave")->click();
  on.settle();
  BOOST_TEST_REQUIRE(on.hall().points.size() == 5u);
  BOOST_TEST(!on.hall().points[4].capacity.has_value()); // nobody said one
  on.gone();

  on.open();
  on.child<QTableWidget>("venuePointsTable")->setCurrentCell(4, 0);
  on.child<QPushButton>("venuePointsRemove")->click();
  on.by("Ide Quarrel");
  on.child<QPushButton>("venueSave")->click();
  on.settle();
  BOOST_TEST(on.hall().points.size() == 4u);
}

BOOST_AUTO_TEST_CASE(seats_are_drawn_from_above_and_from_the_side_while_they_are_typed) {
  OnVenue on;
  on.open();
  on.part(3);
  auto* plan = on.child<VenuePlan>("venuePlan");
  auto* side = on.child<VenueSide>("venueSide");
  BOOST_TEST(plan->showsAll()); // the seats are looked at, so all of the room is
  BOOST_TEST(plan->blocks().size() == 2u);
  BOOST_TEST(plan->blocks()[0].acrossTheRoom);
  on.child<QPushButton>("venueSectionsAdd")->click();
  QTest::keyClicks(on.editor("venueSectionsTable"), QStringLiteral("left box"));
  QTest::keyClick(on.editor("venueSectionsTable"), Qt::Key_Return);
  QCoreApplication::processEvents();
  BOOST_TEST(plan->blocks().size() == 2u); // it has no floor yet
  on.type("venueSectionsTable", 2, 1, QStringLiteral("10 4; 14 5"));
  BOOST_TEST_REQUIRE(plan->blocks().size() == 3u);
  BOOST_TEST_REQUIRE(side->profiles().size() == 3u);
  BOOST_TEST(side->profiles()[2].ears.isEmpty());
  BOOST_TEST(side->accessibleDescription().contains(QStringLiteral("left box: ears not known")));
  on.type("venueSectionsTable", 2, 2, QStringLiteral("4 ft"));
  BOOST_TEST_REQUIRE(side->profiles()[2].ears.size() == 2);
  BOOST_TEST(side->profiles()[2].ears[1].y() == 5 + 4 * 0.3048, boost::test_tools::tolerance(1e-12));
  on.type("venueSectionsTable", 2, 3, QStringLiteral("6"));
  on.type("venueSectionsTable", 2, 4, QStringLiteral("9"));
  BOOST_TEST(!plan->blocks()[2].acrossTheRoom);
  BOOST_TEST(plan->blocks()[2].rows.front().front().y() == 6.0);
  // From the datum to the middle of the last row: 14 m ahead, 7.5 m to the side.
  BOOST_TEST(side->profiles()[2].floor.back().x() == std::hypot(14.0, 7.5),
             boost::test_tools::tolerance(1e-12));
  // What is wrong with it leaves the rest of the picture where it was.
  on.type("venueSectionsTable", 2, 2, QStringLiteral("tall"));
  BOOST_TEST(plan->blocks().size() == 3u);
  BOOST_TEST(on.child<QLabel>("venueSays")
                 ->text()
                 .contains(QStringLiteral("left box, Ears: “tall” does not begin with a number")),
             on.child<QLabel>("venueSays")->text().toStdString());
  on.type("venueSectionsTable", 2, 2, QStringLiteral("1.2"));
  on.by("Ide Quarrel");
  on.child<QPushButton>("venueSave")->click();
  on.settle();
  BOOST_TEST_REQUIRE(on.hall().sections.size() == 3u);
  BOOST_TEST((on.hall().sections[2].yTo == metres(9.0)));
  on.gone();
  auto* undo = on.child<QAction>("undo");
  BOOST_TEST(undo->text().toStdString() == "&Undo: edit Ostrel Exchange");
  undo->trigger();
  on.settle();
  BOOST_TEST(on.hall().sections.size() == 2u);
}

BOOST_AUTO_TEST_CASE(obstructions_and_bridles_are_one_edit_with_the_rest) {
  OnVenue on;
  on.open();
  on.part(4);
  on.child<QPushButton>("venueObstructionsAdd")->click();
  QTest::keyClick(on.editor("venueObstructionsTable"), Qt::Key_Escape);
  QCoreApplication::processEvents();
  const QStringList duct{QStringLiteral("duct"), QStringLiteral("2"),  QStringLiteral("6"),
                         QStringLiteral("-4"),   QStringLiteral("-3"), QStringLiteral("41 ft")};
  for (int column = 0; column < duct.size(); ++column) {
    on.type("venueObstructionsTable", 0, column, duct[column]);
  }
  on.part(2);
  on.child<QPushButton>("venueBridlesAdd")->click();
  QTest::keyClick(on.editor("venueBridlesTable"), Qt::Key_Escape);
  QCoreApplication::processEvents();
  on.type("venueBridlesTable", 0, 0, QStringLiteral("LB"));
  on.type("venueBridlesTable", 0, 1, QStringLiteral("L1; L9"));
  on.type("venueBridlesTable", 0, 4, QStringLiteral("12"));
  auto* cells = on.child<QTableWidget>("venueBridlesTable");
  BOOST_TEST(cells->item(0, cells->columnCount() - 1)->text().contains(QStringLiteral("L9")));
  on.type("venueBridlesTable", 0, 1, QStringLiteral("L1; L2"));
  BOOST_TEST(cells->item(0, cells->columnCount() - 1)->text().isEmpty());
  on.by("Ide Quarrel");
  on.child<QPushButton>("venueSave")->click();
  on.settle();
  BOOST_TEST_REQUIRE(on.hall().obstructions.size() == 1u);
  BOOST_TEST((on.hall().obstructions[0].underside == metres(41 * 0.3048)));
  BOOST_TEST_REQUIRE(on.hall().bridles.size() == 1u);
  on.gone();
  on.child<QAction>("undo")->trigger();
  on.settle();
  BOOST_TEST(on.hall().obstructions.empty());
  BOOST_TEST(on.hall().bridles.empty());
}

BOOST_AUTO_TEST_CASE(trims_that_are_chosen_stand_in_the_picture_from_the_side) {
  OnVenue on;
  on.open();
  const auto trims = trimsIn(on.window.session().overview(), exchangeHall);
  BOOST_TEST_REQUIRE(!trims.empty());
  const QString says = on.child<VenueSide>("venueSide")->accessibleDescription();
  BOOST_TEST(says.contains(QStringLiteral("low steel 13.50 m")), says.toStdString());
  BOOST_TEST(says.contains(QStringLiteral("Ostrel: left")), says.toStdString());
  on.child<QPushButton>("venueCancel")->click();
}

BOOST_AUTO_TEST_CASE(what_cannot_be_read_is_said_in_its_row_and_nothing_is_lost) {
  OnVenue on;
  on.open();
  auto* cells = on.child<QTableWidget>("venuePointsTable");
  on.by("Ide Quarrel");
  on.type("venuePointsTable", 1, 4, QStringLiteral("1 ton"));
  const QString wrong = cells->item(1, cells->columnCount() - 1)->text();
  BOOST_TEST(wrong.startsWith(QStringLiteral("Capacity: “1 ton” does not say which ton")),
             wrong.toStdString());
  BOOST_TEST(!on.child<QPushButton>("venueSave")->isEnabled());
  BOOST_TEST(
      on.child<QLabel>("venueSays")->text().contains(QStringLiteral("L2, Capacity: “1 ton” does not")));
  BOOST_TEST(cells->item(1, 4)->text().toStdString() == "1 ton");
  on.child<QLineEdit>("venue_low_steel")->setText(QStringLiteral("high"));
  BOOST_TEST(on.child<QLabel>("venue_low_steel_wrong")->text().contains(QStringLiteral("expected")));
  on.child<QLineEdit>("venue_low_steel")->setText(QStringLiteral("44 ft"));
  BOOST_TEST(on.child<QLabel>("venue_low_steel_wrong")->text().isEmpty());
  on.child<QPushButton>("venueCancel")->click(); // asks once
  BOOST_TEST(on.child<QLabel>("venueSays")->text().contains(QStringLiteral("not saved")));
  BOOST_TEST(cells->item(1, 4)->text().toStdString() == "1 ton");
  on.child<QPushButton>("venueCancel")->click();
  on.gone();
  BOOST_TEST((on.hall().points[1].capacity == kilonewtons(10.0)));
}

BOOST_AUTO_TEST_CASE(a_point_that_a_hang_uses_stays_until_it_is_taken_off_the_hang) {
  OnVenue on;
  on.open();
  on.by("Ide Quarrel");
  on.child<QTableWidget>("venuePointsTable")->setCurrentCell(0, 0);
  on.child<QPushButton>("venuePointsRemove")->click();
  on.child<QPushButton>("venueSave")->click();
  on.settle();
  const QString says = on.child<QLabel>("venueSays")->text();
  BOOST_TEST(says.contains(QStringLiteral("point L1")), says.toStdString());
  BOOST_TEST(says.contains(QStringLiteral("“left”")), says.toStdString());
  BOOST_TEST(on.child<QTableWidget>("venuePointsTable")->rowCount() == 3); // still as it was left
  BOOST_TEST(on.hall().points.size() == 4u);
}

BOOST_AUTO_TEST_CASE(whatever_takes_the_keyboard_has_a_name) {
  OnVenue on;
  auto* dialog = on.open();
  int walked = 0;
  for (QWidget* each : dialog->findChildren<QWidget*>()) {
    if ((each->focusPolicy() & Qt::TabFocus) != 0 && !each->inherits("QTabBar") &&
        !each->inherits("QComboBoxListView") && !each->objectName().startsWith(QLatin1String("qt_"))) {
      const auto* button = qobject_cast<QPushButton*>(each);
      BOOST_TEST((!each->accessibleName().isEmpty() || (button != nullptr && !button->text().isEmpty())),
                 each->metaObject()->className() << " " << each->objectName().toStdString());
      ++walked;
    }
  }
  BOOST_TEST(walked > 12);
  on.child<QPushButton>("venueCancel")->click();
  on.gone();
}

BOOST_AUTO_TEST_CASE(every_part_is_reached_and_left_by_keyboard) {
  OnVenue on;
  auto* dialog = on.open();
  auto* tabs = on.child<QTabWidget>("venueParts");
  std::set<int> seen;
  for (int i = 0; i < tabs->count(); ++i) {
    seen.insert(tabs->currentIndex());
    QWidget* inside = dialog->focusWidget();
    BOOST_TEST_REQUIRE((inside != nullptr && tabs->isAncestorOf(inside)));
    QTest::keyClick(inside, Qt::Key_Tab, Qt::ControlModifier);
    QCoreApplication::processEvents();
    std::set<QWidget*> reached;
    for (QWidget* here = dialog; reached.insert(here).second;) { // the chain of focus is a ring
      here = here->nextInFocusChain();
    }
    for (QWidget* each : tabs->currentWidget()->findChildren<QWidget*>()) {
      if (each->isVisible() && each->isEnabled() && (each->focusPolicy() & Qt::TabFocus) != 0) {
        BOOST_TEST(reached.contains(each), each->objectName().toStdString());
      }
    }
  }
  BOOST_TEST(seen.size() == static_cast<std::size_t>(tabs->count()));
  QTest::keyClick(dialog->focusWidget(), Qt::Key_Tab, Qt::ControlModifier | Qt::ShiftModifier);
  BOOST_TEST(tabs->currentIndex() == tabs->count() - 1);
  on.child<QPushButton>("venueCancel")->click();
  on.gone();
}

BOOST_AUTO_TEST_CASE(what_is_wrong_is_in_sight_however_wide_the_columns_are) {
  OnVenue on;
  auto* dialog = on.open();
  for (const int width : {1600, 1240, 900}) {
    dialog->resize(width, 660);
    for (int part = 0; part < 5; ++part) {
      on.part(part);
      const auto* cells = on.child<QTabWidget>("venueParts")->currentWidget()->findChild<QTableWidget*>();
      BOOST_TEST_REQUIRE(cells != nullptr);
      const int last = cells->columnCount() - 1;
      const int right = cells->columnViewportPosition(last) + cells->columnWidth(last);
      BOOST_TEST(right <= cells->viewport()->width(), "part " << part << " at " << width);
      BOOST_TEST(cells->columnWidth(last) >= QFontMetrics(cells->font()).averageCharWidth() * 30);
    }
  }
  on.child<QPushButton>("venueCancel")->click();
  on.gone();
}

BOOST_AUTO_TEST_CASE(a_venue_without_points_says_how_to_begin) {
  Opened opened;
  venue::Venue bare;
  bare.name = QStringLiteral("Bare Hall");
  bare.timeZone = QStringLiteral("Europe/London");
  VenueDialog dialog(opened.window.session(), bare);
  auto* plan = dialog.findChild<VenuePlan*>();
  BOOST_TEST_REQUIRE(plan != nullptr);
  BOOST_TEST(plan->points().empty());
  BOOST_TEST(!dialog.findChild<QPushButton*>(QStringLiteral("venuePointsRemove"))->isEnabled());
  BOOST_TEST(dialog.findChild<QLabel*>(QStringLiteral("venueSays"))->text().toStdString() ==
             "Nothing is changed yet.");
}

BOOST_AUTO_TEST_CASE(pictures_of_it) {
  const QString folder = qEnvironmentVariable("HANGBOOK_PICTURES");
  if (folder.isEmpty()) {
    BOOST_TEST_MESSAGE("HANGBOOK_PICTURES=FOLDER makes them");
    return;
  }
  auto* application = qobject_cast<QApplication*>(QCoreApplication::instance());
  for (const Theme theme : {Theme::light, Theme::dark}) {
    applyTheme(*application, theme);
    OnVenue on;
    auto* dialog = on.open();
    const QString look = theme == Theme::dark ? QStringLiteral("dark") : QStringLiteral("light");
    for (const QSize size : {QSize(1400, 820), QSize(1240, 660)}) {
      dialog->resize(size);
      on.type("venuePointsTable", 1, 4, QStringLiteral("1 ton"));
      for (int part = 0; part < 6; ++part) {
        on.part(part);
        const QString name = QStringLiteral("/venue-%1-%2-%3.png").arg(look).arg(size.width()).arg(part);
        BOOST_TEST(dialog->grab().save(folder + name));
      }
      on.part(0);
      on.type("venuePointsTable", 1, 4, QStringLiteral("10"));
    }
    on.child<QPushButton>("venueCancel")->click();
    on.child<QPushButton>("venueCancel")->click();
    on.gone();
    dialog = on.open(QStringLiteral("Hallowfen Ice Hall")); // has stands to its sides
    on.part(3);
    on.child<QTableWidget>("venueSectionsTable")->setCurrentCell(2, 0);
    BOOST_TEST(dialog->grab().save(folder + QStringLiteral("/stands-%1.png").arg(look)));
  }
  applyTheme(*application, Theme::light);
}

BOOST_AUTO_TEST_SUITE_END()
