// SPDX-License-Identifier: GPL-3.0-or-later
// Pictures of what the window shows on the demo tour, to be looked at: only where HANGBOOK_PICTURES names a
// folder.
#include <boost/test/unit_test.hpp>

#include <QApplication>
#include <QComboBox>
#include <QDialog>
#include <QLineEdit>
#include <QPushButton>
#include <QTabWidget>
#include <QTableView>
#include <QTemporaryDir>

#include "desk/frame/window.h"
#include "desk/lists/table_model.h"
#include "desk/run.h"
#include "desk/source/store_source.h"
#include "desk/style/theme.h"
#include "waiting.h"

using namespace hangbook;
using namespace hangbook::desk;
using hangbook::testing::waitUntil;

namespace {

struct Shown {
  explicit Shown(const QString& file) : window(openStoreSource({.store = file, .asOf = QDate(2027, 3, 20)})) {
    window.show();
    settle();
  }
  void settle() {
    BOOST_TEST_REQUIRE(waitUntil([this] { return !window.session().busy(); }, 200000));
    QCoreApplication::processEvents();
  }
  template <class Widget>
  Widget* child(const char* name) {
    return window.findChild<Widget*>(QLatin1String(name));
  }
  void part(const char* tabs, const char* name) {
    auto* all = child<QTabWidget>(tabs);
    auto* wanted = child<QWidget>(name);
    BOOST_TEST_REQUIRE((all != nullptr && wanted != nullptr));
    all->setCurrentWidget(wanted);
    settle();
  }
  void grab(const QString& name) {
    settle();
    const QString folder = qEnvironmentVariable("HANGBOOK_PICTURES");
    BOOST_TEST(window.grab().save(folder + QLatin1Char('/') + name + QStringLiteral(".png")));
  }
  /// The first row of the options with that verdict.
  void selectVerdict(options::Verdict verdict) {
    auto* list = child<QTableView>("optionListTable");
    for (int row = 0; row < list->model()->rowCount(); ++row) {
      if (list->model()->index(row, 0).data(verdictRole).toInt() == static_cast<int>(verdict)) {
        list->selectRow(row);
        break;
      }
    }
    settle();
  }

  Window window;
};

void optionsParts(Shown& at, const QString& suffix) {
  at.part("optionsViews", "settingMapPanel");
  at.selectVerdict(options::Verdict::holds);
  at.grab(QStringLiteral("map") + suffix);
  at.selectVerdict(options::Verdict::tight);
  at.grab(QStringLiteral("maptight") + suffix);
  at.part("optionsViews", "elevation");
  at.part("optionsParts", "wouldDo");
  at.selectVerdict(options::Verdict::fails);
  at.grab(QStringLiteral("fails") + suffix);
  at.selectVerdict(options::Verdict::holds);
  at.grab(QStringLiteral("holds") + suffix);
  at.part("optionsParts", "house");
  at.grab(QStringLiteral("house") + suffix);
  at.part("optionsParts", "sideBySide");
  auto* list = at.child<QTableView>("optionListTable");
  for (const int row : {0, 2, 5}) {
    list->selectRow(row);
    at.settle();
    at.child<QPushButton>("sideBySideToggle")->click();
  }
  at.grab(QStringLiteral("beside") + suffix);
}

} // namespace

BOOST_AUTO_TEST_SUITE(pictures)

BOOST_AUTO_TEST_CASE(of_the_parts_of_options_and_route) {
  if (qEnvironmentVariableIsEmpty("HANGBOOK_PICTURES")) {
    BOOST_TEST_MESSAGE("HANGBOOK_PICTURES=FOLDER makes them");
    return;
  }
  auto* application = qobject_cast<QApplication*>(QCoreApplication::instance());
  const QTemporaryDir folder;
  const QString file = folder.filePath(QStringLiteral("tour.sqlite"));
  for (const Theme theme : {Theme::light, Theme::dark}) {
    applyTheme(*application, theme);
    for (const QSize size : {QSize(1440, 900), QSize(1280, 720), QSize(3840, 2160)}) {
      Shown at(file);
      at.window.resize(size);
      if (at.window.session().overview().empty()) {
        at.child<QPushButton>("firstDemo")->click();
        at.settle();
      }
      at.part("routeParts", "routeCheck");
      at.child<QPushButton>("routeCheckAgain")->click();
      at.grab(QStringLiteral("check-%1-%2").arg(size.width()).arg(theme == Theme::dark));
      at.window.wantShow(qEnvironmentVariable("HANGBOOK_SHOW", QStringLiteral("Ostrel")),
                         QStringLiteral("left"));
      at.window.goTo(QStringLiteral("options"));
      at.settle();
      const QString suffix =
          QStringLiteral("-%1-%2")
              .arg(size.width())
              .arg(theme == Theme::dark ? QStringLiteral("dark") : QStringLiteral("light"));
      optionsParts(at, suffix);
    }
  }
  applyTheme(*application, Theme::light);
}

BOOST_AUTO_TEST_CASE(of_a_hang_once_flown_and_a_unit_swapped) {
  if (qEnvironmentVariableIsEmpty("HANGBOOK_PICTURES")) {
    BOOST_TEST_MESSAGE("HANGBOOK_PICTURES=FOLDER makes them");
    return;
  }
  auto* application = qobject_cast<QApplication*>(QCoreApplication::instance());
  const QTemporaryDir folder;
  for (const Theme theme : {Theme::light, Theme::dark}) {
    applyTheme(*application, theme);
    const QString suffix = theme == Theme::dark ? QStringLiteral("-dark") : QStringLiteral("-light");
    Shown at(qEnvironmentVariable("HANGBOOK_STORE", folder.filePath(QStringLiteral("tour.sqlite"))));
    at.window.resize(1440, 900);
    if (at.window.session().overview().empty()) {
      at.child<QPushButton>("firstDemo")->click();
      at.settle();
    }
    at.window.wantShow(QStringLiteral("Ostrel"), QStringLiteral("left"));
    at.window.goTo(QStringLiteral("build"));
    at.part("buildTabs", "flown");
    at.grab(QStringLiteral("flown") + suffix);
    at.child<QPushButton>("buildSwap")->click();
    auto* dead = at.child<QComboBox>("swapDead");
    dead->setCurrentIndex(dead->findData(qEnvironmentVariable("HANGBOOK_UNIT", QStringLiteral("MB001"))));
    at.settle();
    at.settle();
    at.child<QLineEdit>("swapReason")->setText(QStringLiteral("horn rattles"));
    auto* dialog = at.child<QDialog>("swapDialog");
    BOOST_TEST(dialog->grab().save(qEnvironmentVariable("HANGBOOK_PICTURES") + QStringLiteral("/swap") +
                                   suffix + QStringLiteral(".png")));
    dialog->reject();
    at.child<QPushButton>("buildHung")->click();
    at.settle();
    auto* code = at.child<QLineEdit>("hungCode");
    for (const char* serial : {"MR02", "MB001", "MB002", "nobody"}) {
      code->setText(QString::fromLatin1(serial));
      Q_EMIT code->returnPressed();
      at.settle();
    }
    auto* hung = at.child<QDialog>("hungDialog");
    BOOST_TEST(hung->grab().save(qEnvironmentVariable("HANGBOOK_PICTURES") + QStringLiteral("/hung") +
                                 suffix + QStringLiteral(".png")));
    hung->reject();
  }
  applyTheme(*application, Theme::light);
}

BOOST_AUTO_TEST_SUITE_END()
