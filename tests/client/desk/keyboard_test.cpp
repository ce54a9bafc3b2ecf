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
#include <QDirIterator>
#include <QFile>
#include <QHeaderView>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QRegularExpression>
#include <QSlider>
#include <QTabBar>
#include <QTabWidget>
#include <QTableWidget>
#include <QTest>
#include <QTextEdit>
#include <QVBoxLayout>

#include "desk/frame/place.h"
#include "every_dialog.h"

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
  OnDemo on;
  for (const OneDialog& each : everyDialog(on)) {
    BOOST_TEST_CONTEXT(each.name.toStdString()) {
      showFilled(on, each);
      const QStringList wrong = leftOutOfParts(*each.dialog);
      BOOST_TEST(wrong.isEmpty(), wrong.join(QStringLiteral("; ")).toStdString());
      each.dialog->hide();
    }
  }
}

BOOST_AUTO_TEST_CASE(no_dialog_is_left_out) {
  OnDemo on;
  std::set<QString> listed{QStringLiteral("AskDialog"), QStringLiteral("EditDialog")}; // bases of others
  std::set<QString> names;
  for (const OneDialog& each : everyDialog(on)) {
    listed.insert(QString::fromLatin1(each.dialog->metaObject()->className()).section(u':', -1));
    BOOST_TEST(names.insert(each.name).second, each.name.toStdString());
  }
  static const QRegularExpression heads(
      QStringLiteral("^class (\\w+) (?:final )?: public (?:QDialog|AskDialog|EditDialog)\\b"),
      QRegularExpression::MultilineOption);
  int found = 0;
  QDirIterator headers(QStringLiteral(HANGBOOK_DESK_SOURCES), {QStringLiteral("*.h")}, QDir::Files,
                       QDirIterator::Subdirectories);
  while (headers.hasNext()) {
    QFile file(headers.next());
    BOOST_TEST_REQUIRE(file.open(QIODevice::ReadOnly));
    const QString text = QString::fromUtf8(file.readAll());
    for (auto head = heads.globalMatch(text); head.hasNext(); ++found) {
      const QString name = head.next().captured(1);
      BOOST_TEST(listed.count(name) == 1U, name.toStdString() << " is not in every_dialog.cpp");
    }
  }
  BOOST_TEST(found == static_cast<int>(listed.size()));
}

BOOST_AUTO_TEST_SUITE_END()
