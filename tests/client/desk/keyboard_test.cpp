// SPDX-License-Identifier: GPL-3.0-or-later
// Whoever never takes a mouse: Tab alone reaches all that takes input in every part of every place and in
// every dialog, and leaves it again.
#include <boost/test/unit_test.hpp>

#include <algorithm>
#include <set>

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAbstractSpinBox>
#include <QApplication>
#include <QComboBox>
#include <QHeaderView>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QSlider>
#include <QTabBar>
#include <QTabWidget>
#include <QTableWidget>
#include <QTest>
#include <QTextEdit>
#include <QVBoxLayout>

#include "desk/building/hung_dialog.h"
#include "desk/building/sheet_preview.h"
#include "desk/building/swap_dialog.h"
#include "desk/data/record_dialog.h"
#include "desk/data/venue_dialog.h"
#include "desk/fleet/happened_dialog.h"
#include "desk/fleet/labels_dialog.h"
#include "desk/fleet/split_dialog.h"
#include "desk/fleet/state_dialog.h"
#include "desk/frame/keys_dialog.h"
#include "desk/frame/place.h"
#include "desk/importing/import_dialog.h"
#include "desk/options/choose_dialog.h"
#include "desk/options/withdraw_dialog.h"
#include "on_demo.h"
#include "opened.h"

using namespace hangbook;
using namespace hangbook::desk;
using namespace hangbook::testing;

namespace {

bool insideAnother(const QWidget& it) {
  for (const QWidget* above = it.parentWidget(); above != nullptr; above = above->parentWidget()) {
    if (qobject_cast<const QComboBox*>(above) != nullptr ||
        qobject_cast<const QAbstractSpinBox*>(above) != nullptr ||
        qobject_cast<const QLineEdit*>(above) != nullptr || qobject_cast<const QTabBar*>(above) != nullptr) {
      return true; // a part of what takes the keyboard as one
    }
  }
  return false;
}

/// Whether somebody who works with the mouse could give it something to do.
bool takesInput(const QWidget& it) {
  if (!it.isVisible() || !it.isEnabled() || insideAnother(it) || it.inherits("QHeaderView")) {
    return false;
  }
  if (const auto* radio = qobject_cast<const QRadioButton*>(&it)) {
    return radio->isChecked() || !radio->autoExclusive(); // the arrow keys reach the others of its group
  }
  if (const auto* tabs = qobject_cast<const QTabBar*>(&it)) {
    return tabs->count() > 1;
  }
  if (it.inherits("QTableCornerButton") || it.inherits("QMenuBar") || it.inherits("QLabel")) {
    return false; // selects all, as Ctrl+A does; Alt opens menus; only read
  }
  if (const auto* view = qobject_cast<const QAbstractItemView*>(&it)) {
    return view->focusPolicy() != Qt::NoFocus || (view->model() != nullptr && view->model()->rowCount() > 0);
  }
  return qobject_cast<const QAbstractButton*>(&it) != nullptr ||
         qobject_cast<const QLineEdit*>(&it) != nullptr || qobject_cast<const QComboBox*>(&it) != nullptr ||
         qobject_cast<const QAbstractSpinBox*>(&it) != nullptr ||
         qobject_cast<const QSlider*>(&it) != nullptr || qobject_cast<const QTextEdit*>(&it) != nullptr ||
         qobject_cast<const QPlainTextEdit*>(&it) != nullptr || (it.focusPolicy() & Qt::ClickFocus) != 0;
}

/// The widget that stands for whatever has the keyboard.
const QWidget* wholeOf(const QWidget* it) {
  while (it != nullptr && insideAnother(*it)) {
    it = it->parentWidget();
  }
  return it;
}

QString nameOf(const QWidget& it) {
  return QStringLiteral("%1 “%2”").arg(QString::fromLatin1(it.metaObject()->className()), it.objectName());
}

/// Presses Tab until it has come round; answers what takes input under `top` and was never reached, and
/// what does not let go of the keyboard.
QStringList leftOut(QWidget& top) {
  QWidget* window = top.window();
  QApplication::setActiveWindow(window);
  QCoreApplication::processEvents();
  std::set<const QWidget*> reached;
  QStringList wrong;
  const QWidget* before = nullptr;
  for (int presses = 0, still = 0, again = 0; presses < 600 && again < 40; ++presses) {
    QWidget* at = QApplication::focusWidget();
    if (at == nullptr) {
      window->setFocus();
      at = window;
    }
    const QWidget* whole = wholeOf(at);
    again = reached.insert(whole).second ? 0 : again + 1;
    still = whole == before ? still + 1 : 0;
    before = whole;
    if (still > 3) {
      wrong << nameOf(*whole) + QStringLiteral(" holds the keyboard");
      break;
    }
    QTest::keyClick(at, Qt::Key_Tab);
  }
  for (const QWidget* each : top.findChildren<QWidget*>()) {
    if (takesInput(*each) && reached.count(wholeOf(each)) == 0) {
      wrong << nameOf(*each) + QStringLiteral(" is not reached");
    }
  }
  return wrong;
}

/// One run for each choice of the tab pages that can be seen now.
QStringList leftOutOfParts(QWidget& top) {
  QStringList wrong = leftOut(top);
  for (QTabWidget* tabs : top.findChildren<QTabWidget*>()) {
    if (!tabs->isVisible()) {
      continue;
    }
    const int first = tabs->currentIndex();
    for (int i = 0; i < tabs->count(); ++i) {
      if (i != first && tabs->isTabEnabled(i)) {
        tabs->setCurrentIndex(i);
        for (const QString& each : leftOut(top)) {
          wrong << tabs->tabText(i) + QStringLiteral(": ") + each;
        }
      }
    }
    tabs->setCurrentIndex(first);
  }
  wrong.removeDuplicates();
  return wrong;
}

} // namespace

BOOST_AUTO_TEST_SUITE(keyboard_alone)

BOOST_AUTO_TEST_CASE(the_walk_finds_what_is_not_reached_and_what_holds_on) {
  QWidget sheet;
  auto* in = new QVBoxLayout(&sheet);
  in->addWidget(new QLineEdit);
  in->addWidget(new QLineEdit);
  auto* hidden = new QPushButton(QStringLiteral("Not by Tab"));
  hidden->setObjectName(QStringLiteral("aside"));
  hidden->setFocusPolicy(Qt::ClickFocus);
  in->addWidget(hidden);
  sheet.show();
  BOOST_TEST(leftOut(sheet).join(u' ').toStdString() == "QPushButton “aside” is not reached");
  hidden->setFocusPolicy(Qt::StrongFocus);
  BOOST_TEST(leftOut(sheet).isEmpty());
  auto* cells = new QTableWidget(2, 2);
  cells->setObjectName(QStringLiteral("cells"));
  in->addWidget(cells);
  cells->setTabKeyNavigation(true);
  cells->setCurrentCell(0, 0);
  BOOST_TEST(leftOut(sheet).contains(QStringLiteral("QTableWidget “cells” holds the keyboard")));
  cells->setTabKeyNavigation(false);
  BOOST_TEST(leftOut(sheet).isEmpty());
}

BOOST_AUTO_TEST_CASE(tab_reaches_all_of_every_place) {
  OnDemo on;
  on.window.wantShow(QStringLiteral("Ostrel"), QStringLiteral("left"));
  for (Place* place : on.window.places()) {
    BOOST_TEST_CONTEXT(place->objectName().toStdString()) {
      on.window.goTo(place->objectName());
      on.settle();
      place->takeFocus();
      BOOST_TEST_REQUIRE(QApplication::focusWidget() != nullptr);
      BOOST_TEST(place->isAncestorOf(QApplication::focusWidget()));
      const QStringList wrong = leftOutOfParts(*place);
      on.settle();
      BOOST_TEST(wrong.isEmpty(), wrong.join(QStringLiteral("; ")).toStdString());
    }
  }
}

BOOST_AUTO_TEST_CASE(tab_reaches_all_of_every_dialog) {
  Opened opened;
  const Overview& facts = opened.window.session().overview();
  const fleet::Unit& unit = facts.units.front();
  ImportDialog import(opened.window.session(), &opened.window);
  LabelsDialog labels(QStringLiteral("A-1"), 3, &opened.window);
  ChooseDialog choose(sampleOption(1, options::Verdict::unproven), QStringLiteral("3 bass"), {},
                      &opened.window);
  HappenedDialog happened(unit, facts.today, {}, {}, &opened.window);
  SplitDialog split(unit, {}, {}, &opened.window);
  StateDialog state(unit, {}, {}, &opened.window);
  WithdrawDialog withdraw({}, QStringLiteral("3 bass"), facts.people, {}, &opened.window);
  VenueDialog venue(opened.window.session(), facts.venues.front(), &opened.window);
  KeysDialog keys(opened.window);
  SwapDialog swap(opened.window.session(), &opened.window);
  HungDialog hung(opened.window.session(), &opened.window);
  for (QDialog* each : std::initializer_list<QDialog*>{&import, &labels, &choose, &happened, &split, &state,
                                                       &withdraw, &venue, &keys, &swap, &hung}) {
    BOOST_TEST_CONTEXT(each->objectName().toStdString()) {
      each->show();
      opened.settle();
      const QStringList wrong = leftOutOfParts(*each);
      BOOST_TEST(wrong.isEmpty(), wrong.join(QStringLiteral("; ")).toStdString());
      each->hide();
    }
  }
}

BOOST_AUTO_TEST_CASE(tab_reaches_all_of_the_forms_of_records) {
  OnDemo on;
  const Overview& facts = on.window.session().overview();
  const std::vector<exchange::RecordName> records{
      {exchange::Kind::types, QStringLiteral("cabinet"), facts.catalogue.cabinets.front().name},
      {exchange::Kind::types, QStringLiteral("bar"), facts.catalogue.bars.front().name},
      {exchange::Kind::types, QStringLiteral("table"), facts.catalogue.tables.front().name},
      {exchange::Kind::people, QStringLiteral("person"), facts.people.front().name}};
  for (const exchange::RecordName& record : records) {
    BOOST_TEST_CONTEXT(record.sort.toStdString()) {
      RecordDialog dialog(on.window.session(), record, &on.window);
      dialog.show();
      on.settle();
      const QStringList wrong = leftOutOfParts(dialog);
      BOOST_TEST(wrong.isEmpty(), wrong.join(QStringLiteral("; ")).toStdString());
    }
  }
}

BOOST_AUTO_TEST_SUITE_END()
