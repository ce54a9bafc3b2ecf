// SPDX-License-Identifier: GPL-3.0-or-later
// A venue edited in the window on a real store, by keyboard: the demo's Ostrel Exchange, whose left hang
// stands on L1 and L2.
#include <boost/test/unit_test.hpp>

#include <QApplication>
#include <QComboBox>
#include <QDir>
#include <QLabel>
#include <QLineEdit>
#include <QTableView>
#include <QTableWidget>
#include <QTest>

#include "desk/data/data_place.h"
#include "desk/data/venue_dialog.h"
#include "desk/data/venue_plan.h"
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
  VenueDialog* open() {
    window.activateWindow(); // no window manager does it here when a dialog closes
    BOOST_TEST_REQUIRE(waitUntil([this] { return QApplication::activeWindow() == &window; }));
    auto* place = child<DataPlace>("data");
    place->showKey(exchangeHall);
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
    on.type("venuePointsTable", 1, 4, QStringLiteral("1 ton"));
    const QString name = QStringLiteral("/venue-%1.png").arg(theme == Theme::dark ? "dark" : "light");
    BOOST_TEST(dialog->grab().save(folder + name));
  }
  applyTheme(*application, Theme::light);
}

BOOST_AUTO_TEST_SUITE_END()
