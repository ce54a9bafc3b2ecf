// SPDX-License-Identifier: GPL-3.0-or-later
// Makers' data and people edited in the window on a real store, by keyboard.
#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QTableView>
#include <QTest>

#include "desk/data/data_place.h"
#include "desk/data/record_dialog.h"
#include "desk/data/type_picture.h"
#include "desk/style/theme.h"
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

BOOST_AUTO_TEST_CASE(pictures_of_it) {
  const QString folder = qEnvironmentVariable("HANGBOOK_PICTURES");
  if (folder.isEmpty()) {
    BOOST_TEST_MESSAGE("HANGBOOK_PICTURES=FOLDER makes them");
    return;
  }
  OnRecords on;
  auto* dialog = on.open(bass);
  on.type("record_mass", QStringLiteral("heavy"));
  BOOST_TEST(dialog->grab().save(folder + QStringLiteral("/record.png")));
}

BOOST_AUTO_TEST_SUITE_END()
