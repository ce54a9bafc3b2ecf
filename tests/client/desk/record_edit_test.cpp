// SPDX-License-Identifier: GPL-3.0-or-later
// Makers' data and people edited in the window on a real store, by keyboard.
#include <algorithm>

#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QTabWidget>
#include <QTableView>
#include <QTableWidget>
#include <QTest>

#include "desk/data/data_place.h"
#include "desk/data/record_dialog.h"
#include "desk/data/remove_dialog.h"
#include "desk/data/type_picture.h"
#include "on_demo.h"

using namespace hangbook;
using namespace hangbook::desk;
using hangbook::testing::OnDemo;
using hangbook::testing::waitUntil;

namespace {

const QString bass = QStringLiteral("Marram bass");

struct OnRecords : OnDemo {
  OnRecords() { window.goTo(QStringLiteral("data")); }
  RecordDialog* open(const QString& name) {
    window.activateWindow();
    BOOST_TEST_REQUIRE(waitUntil([this] { return QApplication::activeWindow() == &window; }));
    auto* place = child<DataPlace>("data");
    place->showKey(name);
    place->takeFocus();
    QTest::keyClick(child<QTableView>("recordListTable"), Qt::Key_F2);
    auto* dialog = window.findChild<RecordDialog*>();
    BOOST_TEST_REQUIRE(dialog != nullptr, name.toStdString());
    BOOST_TEST_REQUIRE(waitUntil([dialog] { return QApplication::activeWindow() == dialog; }));
    return dialog;
  }
  void type(const char* field, const QString& text) {
    auto* line = child<QLineEdit>(field);
    line->setFocus();
    line->selectAll();
    QTest::keyClicks(line, text);
  }
  void save() {
    child<QComboBox>("entryBy")->setEditText(QStringLiteral("Ide Quarrel"));
    auto* button = child<QPushButton>("entrySave");
    BOOST_TEST_REQUIRE(button->isEnabled(), child<QLabel>("entrySays")->text().toStdString());
    button->setFocus();
    QTest::keyClick(button, Qt::Key_Space);
    settle();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
  }
  /// Types into a cell of one of the record's tables.
  void cell(const char* table, int row, int column, const QString& text) {
    auto* cells = child<QTableWidget>(table);
    cells->setCurrentCell(row, column);
    QTest::keyClick(cells, Qt::Key_F2);
    auto* line = qobject_cast<QLineEdit*>(QApplication::focusWidget());
    BOOST_TEST_REQUIRE(line != nullptr);
    line->selectAll();
    QTest::keyClicks(line, text);
    QTest::keyClick(line, Qt::Key_Return);
    QCoreApplication::processEvents();
  }
  void part(int index) {
    child<QTabWidget>("recordParts")->setCurrentIndex(index);
    QCoreApplication::processEvents();
  }
  /// What the menu of New offers, with that record selected.
  void addNew(const QString& selected, const char* action) {
    auto* place = child<DataPlace>("data");
    place->showKey(selected);
    auto* menu = child<QMenu>("dataNewMenu");
    Q_EMIT menu->aboutToShow();
    child<QAction>(action)->trigger();
    auto* dialog = window.findChild<RecordDialog*>();
    BOOST_TEST_REQUIRE(dialog != nullptr);
    BOOST_TEST_REQUIRE(waitUntil([dialog] { return QApplication::activeWindow() == dialog; }));
  }
  /// Delete on the selected record, and a name.
  void remove(const QString& name) {
    window.activateWindow();
    BOOST_TEST_REQUIRE(waitUntil([this] { return QApplication::activeWindow() == &window; }));
    auto* place = child<DataPlace>("data");
    place->showKey(name);
    place->takeFocus();
    QTest::keyClick(child<QTableView>("recordListTable"), Qt::Key_Delete);
    BOOST_TEST_REQUIRE(window.findChild<RemoveDialog*>() != nullptr);
    child<QComboBox>("removeBy")->setEditText(QStringLiteral("Ide Quarrel"));
    auto* accept = child<QPushButton>("removeAccept");
    accept->setFocus();
    QTest::keyClick(accept, Qt::Key_Space);
    settle();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
  }
  const catalogue::StackingTable* table(const QString& name) {
    return catalogue::find(window.session().overview().catalogue.tables, name);
  }
  const catalogue::CabinetType& cabinet() {
    return *catalogue::find(window.session().overview().catalogue.cabinets, bass);
  }
};

} // namespace

BOOST_AUTO_TEST_SUITE(record_edit)

BOOST_AUTO_TEST_CASE(a_mass_typed_in_pounds_is_saved_with_its_source_and_undone) {
  OnRecords on;
  const catalogue::CabinetType before = on.cabinet();
  on.open(bass);
  on.type("record_mass", QStringLiteral("210 lb"));
  on.type("record_source", QStringLiteral("leaflet 7"));
  on.save();
  BOOST_TEST(inKilograms(*on.cabinet().mass) == 210 * 0.45359237, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(on.cabinet().source.text.toStdString() == "leaflet 7");
  BOOST_TEST((on.cabinet().outline == before.outline));
  BOOST_TEST(on.child<QLabel>("dataEffect")->text().contains(QStringLiteral("210 lb")),
             on.child<QLabel>("dataEffect")->text().toStdString());
  BOOST_TEST(on.child<QAction>("undo")->text().toStdString() == "&Undo: edit Marram bass");
  on.child<QAction>("undo")->trigger();
  on.settle();
  BOOST_TEST((on.cabinet().mass == before.mass));
  BOOST_TEST((on.cabinet().source == before.source));
}

BOOST_AUTO_TEST_CASE(an_emptied_figure_is_not_known_and_what_cannot_be_read_is_said_beside_its_field) {
  OnRecords on;
  on.open(bass);
  on.type("record_mass", QStringLiteral("heavy"));
  BOOST_TEST(!on.child<QPushButton>("entrySave")->isEnabled());
  BOOST_TEST(on.child<QLabel>("record_mass_wrong")->text().contains(QStringLiteral("heavy")));
  on.child<QLineEdit>("record_mass")->clear();
  BOOST_TEST(on.child<QLabel>("record_mass_wrong")->text().isEmpty());
  on.save();
  BOOST_TEST(!on.cabinet().mass.has_value());
}

BOOST_AUTO_TEST_CASE(the_outline_and_the_centre_are_drawn_as_they_are_typed) {
  OnRecords on;
  on.open(bass);
  auto* picture = on.child<TypePicture>("typePicture");
  BOOST_TEST(picture->drawing().outline.size() == on.cabinet().outline.size());
  on.type("record_outline", QStringLiteral("0 0; 0.7 0; 0.7 -0.5"));
  BOOST_TEST(picture->drawing().outline.size() == 3u);
  on.type("record_outline", QStringLiteral("0 0; 0.7 0; 0.7 -"));
  BOOST_TEST(picture->drawing().outline.size() == 2u); // as it was last read, key by key
  QTest::keyClick(on.child<QPushButton>("entryCancel"), Qt::Key_Space);
  BOOST_TEST(on.child<QLabel>("entrySays")->text().contains(QStringLiteral("not saved")));
}

BOOST_AUTO_TEST_CASE(every_sort_opens_by_keyboard_with_names_and_saves_nothing_untouched) {
  OnRecords on;
  const catalogue::Catalogue& all = on.window.session().overview().catalogue;
  for (const QString& name : {bass, all.bars.front().name, all.hoists.front().name, all.chains.front().name,
                              all.hardware.front().name, all.carts.front().name, all.tables.front().name,
                              on.window.session().overview().people.front().name}) {
    auto* dialog = on.open(name);
    int walked = 0;
    for (QLineEdit* each : dialog->findChildren<QLineEdit*>()) {
      BOOST_TEST(!each->accessibleName().isEmpty(), each->objectName().toStdString());
      ++walked;
    }
    BOOST_TEST(walked > 2);
    BOOST_TEST(on.child<QLabel>("entrySays")->text().toStdString() == "Nothing is changed yet.");
    BOOST_TEST(!on.child<QPushButton>("entrySave")->isEnabled());
    QTest::keyClick(dialog, Qt::Key_Escape);
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    BOOST_TEST(on.window.findChild<RecordDialog*>() == nullptr);
  }
}

BOOST_AUTO_TEST_CASE(joints_and_counts_of_a_table_are_typed_saved_as_one_edit_and_undone) {
  OnRecords on;
  const QString name = QStringLiteral("Marram");
  const catalogue::StackingTable before = *on.table(name);
  on.open(name);
  on.part(2);
  on.cell("recordCountsTable", 0, 2, QStringLiteral("1")); // fewer than the least
  auto* counts = on.child<QTableWidget>("recordCountsTable");
  BOOST_TEST(counts->item(0, 3)->text().contains(QStringLiteral("no fewer than the least")),
             counts->item(0, 3)->text().toStdString());
  BOOST_TEST(on.child<QLabel>("entrySays")->text().contains(QStringLiteral("Number in row 1, Most")),
             on.child<QLabel>("entrySays")->text().toStdString());
  BOOST_TEST(!on.child<QPushButton>("entrySave")->isEnabled());
  on.cell("recordCountsTable", 0, 2, QStringLiteral("6"));
  on.part(1);
  auto* joints = on.child<QTableWidget>("recordJointsTable");
  joints->setCurrentCell(joints->rowCount() - 1, 0);
  on.child<QPushButton>("recordJointsRemove")->click();
  on.cell("recordJointsTable", 0, 5, QStringLiteral("3600 lbf")); // the pins' limit, with a unit of its own
  on.save();
  BOOST_TEST(on.table(name)->counts[0].most == 6);
  BOOST_TEST(on.table(name)->joins.size() == before.joins.size() - 1);
  BOOST_TEST(inKilonewtons(*on.table(name)->joins[0].pinLimit) == 3600 * 4.4482216152605e-3,
             boost::test_tools::tolerance(1e-9));
  BOOST_TEST(on.child<QLabel>("dataEffect")->text().contains(QStringLiteral("Joints: 7 before, 6 now")),
             on.child<QLabel>("dataEffect")->text().toStdString());
  on.child<QAction>("undo")->trigger();
  on.settle();
  BOOST_TEST((on.table(name)->joins == before.joins));
  BOOST_TEST((on.table(name)->counts == before.counts));
}

BOOST_AUTO_TEST_CASE(a_copy_has_the_figures_but_neither_name_nor_source) {
  OnRecords on;
  on.addNew(bass, "newCopy");
  BOOST_TEST(on.child<QLineEdit>("record_name")->text().isEmpty());
  BOOST_TEST(on.child<QLineEdit>("record_source")->text().isEmpty());
  BOOST_TEST(on.child<QLineEdit>("record_mass")->text().toStdString() == "92");
  on.type("record_name", bass);
  BOOST_TEST(on.child<QLabel>("record_name_wrong")->text().contains(QStringLiteral("no other cabinet")),
             on.child<QLabel>("record_name_wrong")->text().toStdString());
  on.type("record_name", QStringLiteral("Marram wide"));
  on.type("record_mass", QStringLiteral("210 lb"));
  on.save();
  const auto& cabinets = on.window.session().overview().catalogue.cabinets;
  const auto* wide = catalogue::find(cabinets, QStringLiteral("Marram wide"));
  BOOST_TEST_REQUIRE(wide != nullptr);
  BOOST_TEST((wide->outline == on.cabinet().outline));
  BOOST_TEST(inKilograms(*wide->mass) == 210 * 0.45359237, boost::test_tools::tolerance(1e-12));
  const auto& sockets = on.window.session().overview().connections.sockets;
  BOOST_TEST(std::ranges::count(sockets, QStringLiteral("Marram wide"), &catalogue::Socket::cabinet) == 1);
  auto* undo = on.child<QAction>("undo");
  BOOST_TEST(undo->text().toStdString() == "&Undo: new record Marram wide");
  undo->trigger();
  on.settle();
  BOOST_TEST(catalogue::find(on.window.session().overview().catalogue.cabinets,
                             QStringLiteral("Marram wide")) == nullptr);
}

BOOST_AUTO_TEST_CASE(every_sort_begins_empty_and_says_what_it_needs) {
  OnRecords on;
  for (const char* action : {"new_venue", "new_cabinet", "new_bar", "new_hoist", "new_chain", "new_hardware",
                             "new_cart", "new_table", "new_connector", "new_person"}) {
    on.addNew(bass, action);
    BOOST_TEST(on.child<QLabel>("entrySays")->text().toStdString() == "Nothing is changed yet.");
    BOOST_TEST(on.child<QLineEdit>("record_name")->isEnabled());
    QTest::keyClick(on.window.findChild<RecordDialog*>(), Qt::Key_Escape);
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    BOOST_TEST(on.window.findChild<RecordDialog*>() == nullptr);
  }
  on.addNew(bass, "new_venue");
  on.type("record_name", QStringLiteral("Curlew Hall"));
  BOOST_TEST(on.child<QLabel>("record_time_zone_wrong")->text().contains(QStringLiteral("venue needs it")),
             on.child<QLabel>("record_time_zone_wrong")->text().toStdString());
  on.type("record_time_zone", QStringLiteral("Europe/London"));
  on.save();
  BOOST_TEST(findVenue(on.window.session().overview(), QStringLiteral("Curlew Hall")) != nullptr);
}

BOOST_AUTO_TEST_CASE(what_is_named_stays_and_says_by_what_and_the_rest_can_go_and_come_back) {
  OnRecords on;
  on.remove(bass);
  const QString says = on.child<QLabel>("dataEffect")->text();
  BOOST_TEST(says.contains(QStringLiteral("stacking table “Marram”")), says.toStdString());
  BOOST_TEST(says.contains(QStringLiteral("units of the fleet: ")), says.toStdString());
  BOOST_TEST(on.cabinet().mass.has_value());
  on.addNew(bass, "new_connector");
  on.type("record_name", QStringLiteral("Sedge 2"));
  on.save();
  const auto there = [&on] {
    const auto& all = on.window.session().overview().connections.connectors;
    return catalogue::find(all, QStringLiteral("Sedge 2")) != nullptr;
  };
  BOOST_TEST(there());
  on.remove(QStringLiteral("Sedge 2"));
  BOOST_TEST(!there());
  BOOST_TEST(on.child<QAction>("undo")->text().toStdString() == "&Undo: remove Sedge 2");
  on.child<QAction>("undo")->trigger();
  on.settle();
  BOOST_TEST(there());
}

BOOST_AUTO_TEST_CASE(faults_of_several_lines_are_seen_whole) {
  OnRecords on;
  auto* dialog = on.open(bass);
  const auto wrong = [&on](const char* field) {
    return on.child<QLabel>((QByteArray(field) + "_wrong").constData());
  };
  const std::vector<const char*> fields{"record_outline", "record_mass",      "record_centre_of_gravity",
                                        "record_width",   "record_chain_eye", "record_pins"};
  for (const char* field : fields) {
    on.type(field, QStringLiteral("nobody wrote down what this figure is, nor in which unit it would be"));
  }
  for (const int width : {620, 1200, 480}) { // wider: fewer lines; and narrow again
    dialog->resize(width, 500);
    on.settle();
    QCoreApplication::processEvents();
    bool several = false;
    for (const char* field : fields) {
      BOOST_TEST_CONTEXT(field << " at " << width) {
        const QLabel& label = *wrong(field);
        BOOST_TEST(label.isVisible());
        BOOST_TEST(label.height() >= label.heightForWidth(label.width()));
        several = several || label.height() > QFontMetrics(label.font()).height() * 3 / 2;
        // The field itself keeps its height too.
        const auto* edit = on.child<QLineEdit>(field);
        BOOST_TEST(edit->height() >= edit->minimumSizeHint().height());
      }
    }
    BOOST_TEST((several || width == 1200));
  }
  auto* last = on.child<QLineEdit>("record_source_date");
  BOOST_TEST(last->height() >= last->minimumSizeHint().height());
  QTest::keyClick(dialog, Qt::Key_Escape);
}

BOOST_AUTO_TEST_SUITE_END()
