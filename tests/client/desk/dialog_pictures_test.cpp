// SPDX-License-Identifier: GPL-3.0-or-later
// Pictures of every dialog, in both palettes and both languages, to be opened and judged:
// HANGBOOK_PICTURES=FOLDER build/tests/desk_test --run_test=dialog_pictures
#include <QApplication>
#include <QMessageBox>
#include <QTabWidget>
#include <QTimer>

#include "desk/frame/window.h"
#include "desk/style/theme.h"
#include "desk/words/language.h"
#include "every_dialog.h"

using namespace hangbook;
using namespace hangbook::desk;
using namespace hangbook::testing;

namespace {

/// Each of its parts that lies behind a tab has a picture too.
void keep(QDialog& dialog, const QString& name) {
  BOOST_TEST(dialog.grab().save(name + QStringLiteral(".png")));
  auto* tabs = dialog.findChild<QTabWidget*>();
  for (int i = 1; tabs != nullptr && i < tabs->count(); ++i) {
    tabs->setCurrentIndex(i);
    QCoreApplication::processEvents();
    BOOST_TEST(dialog.grab().save(QStringLiteral("%1-%2.png").arg(name).arg(i + 1)));
  }
}

/// The picture of a box that stays open until somebody closes it.
void keepBox(Window& window, const char* action, const QString& name) {
  QTimer::singleShot(0, &window, [name] {
    auto* box = qobject_cast<QDialog*>(QApplication::activeModalWidget());
    BOOST_TEST_REQUIRE(box != nullptr);
    BOOST_TEST(box->grab().save(name + QStringLiteral(".png")));
    box->close();
  });
  auto* opens = window.findChild<QAction*>(QLatin1String(action));
  BOOST_TEST_REQUIRE(opens != nullptr);
  opens->trigger();
}

} // namespace

BOOST_AUTO_TEST_SUITE(dialog_pictures)

BOOST_AUTO_TEST_CASE(of_every_dialog_light_dark_and_in_german) {
  const QString folder = qEnvironmentVariable("HANGBOOK_PICTURES");
  if (folder.isEmpty()) {
    BOOST_TEST_MESSAGE("HANGBOOK_PICTURES=FOLDER makes them");
    return;
  }
  const QLocale before;
  for (const QString& look : {QStringLiteral("light"), QStringLiteral("dark"), QStringLiteral("german")}) {
    applyTheme(*qApp, look == QLatin1String("dark") ? Theme::dark : Theme::light);
    speak(*qApp, look == QLatin1String("german") ? QStringLiteral("de") : QStringLiteral("en"));
    OnDemo on;
    const auto nameOf = [&](const QString& what) {
      return QStringLiteral("%1/%2-%3").arg(folder, what, look);
    };
    for (const OneDialog& each : everyDialog(on)) {
      showFilled(on, each);
      keep(*each.dialog, nameOf(each.name));
      each.dialog->hide();
    }
    keepBox(on.window, "thisPlace", nameOf(QStringLiteral("this-place")));
    keepBox(on.window, "about", nameOf(QStringLiteral("about")));
  }
  speak(*qApp, QStringLiteral("en"));
  QLocale::setDefault(before);
  applyTheme(*qApp, Theme::light);
}

BOOST_AUTO_TEST_SUITE_END()
