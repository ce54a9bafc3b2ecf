// SPDX-License-Identifier: GPL-3.0-or-later
// Every dialog is read whole in both languages; and pictures of each, in both palettes too, to be judged:
// HANGBOOK_PICTURES=FOLDER build/tests/desk_test --run_test=dialogs
#include <QApplication>
#include <QLabel>
#include <QMessageBox>
#include <QPushButton>
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

BOOST_AUTO_TEST_SUITE(dialogs)

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

/// Sentences are not cut off, no letter to be underlined stands there as a sign, and no word is wider than
/// its button: in the language with the longer words too.
BOOST_AUTO_TEST_CASE(what_is_said_is_read_whole_in_every_dialog) {
  const QLocale before;
  for (const QString& code : languages()) {
    speak(*qApp, code);
    OnDemo on;
    for (const OneDialog& each : everyDialog(on)) {
      showFilled(on, each);
      for (const QLabel* label : each.dialog->findChildren<QLabel*>()) {
        const std::string says = label->text().left(60).toStdString();
        BOOST_TEST_CONTEXT(code.toStdString() << ", " << each.name.toStdString() << ": " << says) {
          if (label->isVisible() && label->wordWrap()) {
            BOOST_TEST(label->height() >= label->heightForWidth(label->width()));
            for (const QWidget* other : each.dialog->findChildren<QWidget*>(Qt::FindDirectChildrenOnly)) {
              BOOST_TEST((other == label || label->parent() != each.dialog.get() || !other->isVisible() ||
                          !other->geometry().intersects(label->geometry())),
                         "lies under " << other->objectName().toStdString());
            }
          }
          BOOST_TEST((label->buddy() != nullptr || !label->text().contains(u'&')));
        }
      }
      for (const QPushButton* button : each.dialog->findChildren<QPushButton*>()) {
        const int text = button->fontMetrics().horizontalAdvance(QString(button->text()).remove(u'&'));
        BOOST_TEST((!button->isVisible() || button->width() >= text),
                   each.name.toStdString() << ": " << button->text().toStdString());
      }
    }
  }
  speak(*qApp, QStringLiteral("en"));
  QLocale::setDefault(before);
}

BOOST_AUTO_TEST_SUITE_END()
