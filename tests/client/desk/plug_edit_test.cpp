// SPDX-License-Identifier: GPL-3.0-or-later
// The plugs of a hang edited in the window on a real store, by keyboard: the demo's Ostrel, left.
#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QTableView>
#include <QTableWidget>
#include <QTest>

#include "desk/data/data_place.h"
#include "desk/data/plug_dialog.h"
#include "on_demo.h"

using namespace hangbook;
using namespace hangbook::desk;
using hangbook::testing::waitUntil;

namespace {

struct OnPlugs : hangbook::testing::OnDemo {
  OnPlugs() { window.goTo(QStringLiteral("data")); }
  PlugDialog* open() {
    window.activateWindow();
    BOOST_TEST_REQUIRE(waitUntil([this] { return QApplication::activeWindow() == &window; }));
    auto* place = child<DataPlace>("data");
    place->showKey(QStringLiteral("Ostrel, left"));
    place->takeFocus();
    QTest::keyClick(child<QTableView>("recordListTable"), Qt::Key_F2);
    settle();
    auto* dialog = child<PlugDialog>("plugDialog");
    BOOST_TEST_REQUIRE(waitUntil([dialog] { return QApplication::activeWindow() == dialog; }));
    return dialog;
  }
  void cell(int row, int column, const QString& text) {
    auto* cells = child<QTableWidget>("plugsTable");
    cells->setCurrentCell(row, column);
    QTest::keyClick(cells, Qt::Key_F2);
    auto* line = qobject_cast<QLineEdit*>(QApplication::focusWidget());
    BOOST_TEST_REQUIRE(line != nullptr);
    line->selectAll();
    QTest::keyClicks(line, text);
    QTest::keyClick(line, Qt::Key_Return);
    QCoreApplication::processEvents();
  }
};

} // namespace

BOOST_AUTO_TEST_SUITE(plug_edit)

BOOST_AUTO_TEST_CASE(a_plug_is_changed_by_keyboard_and_undone_by_name) {
  OnPlugs on;
  on.open();
  auto* cells = on.child<QTableWidget>("plugsTable");
  BOOST_TEST_REQUIRE(cells->rowCount() == 5);
  const QString end = cells->item(0, 5)->text();
  on.cell(0, 5, cells->item(1, 5)->text()); // which goes into the second cabinet already
  BOOST_TEST(cells->item(0, cells->columnCount() - 1)->text().contains(QStringLiteral("once in a show")),
             cells->item(0, cells->columnCount() - 1)->text().toStdString());
  BOOST_TEST(!on.child<QPushButton>("plugsSave")->isEnabled());
  on.cell(1, 5, end); // so they change places
  BOOST_TEST(cells->item(0, cells->columnCount() - 1)->text().isEmpty());
  on.child<QComboBox>("plugsBy")->setEditText(QStringLiteral("Ide Quarrel"));
  auto* save = on.child<QPushButton>("plugsSave");
  BOOST_TEST_REQUIRE(save->isEnabled(), on.child<QLabel>("plugsSays")->text().toStdString());
  save->click();
  on.settle();
  QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
  auto* undo = on.child<QAction>("undo");
  BOOST_TEST(undo->text().toStdString() == "&Undo: plugs of left at Ostrel");
  on.open();
  BOOST_TEST(on.child<QTableWidget>("plugsTable")->item(1, 5)->text().toStdString() == end.toStdString());
  QTest::keyClick(on.child<PlugDialog>("plugDialog"), Qt::Key_Escape);
  QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
  undo->trigger();
  on.settle();
  on.open();
  BOOST_TEST(on.child<QTableWidget>("plugsTable")->item(0, 5)->text().toStdString() == end.toStdString());
}

BOOST_AUTO_TEST_SUITE_END()
