// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/run.h"

#include <iostream>

#include <QApplication>
#include <QIcon>

#include "desk/frame/picture.h"
#include "desk/frame/place.h"
#include "desk/frame/window.h"
#include "desk/frame/window_state.h"
#include "desk/style/theme.h"
#include "desk/words/language.h"
#include "quantity/error.h"

namespace hangbook::desk {
namespace {

constexpr int badInput = 2;
constexpr int storeTrouble = 3;

/// Qt would end the program without a word that helps.
void refuseWithoutDisplay() {
  for (const char* each : {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"}) {
    if (!qEnvironmentVariableIsEmpty(each)) {
      return;
    }
  }
  throw Error(Trouble::badInput,
              "the window needs a display; without one `hangbook help` lists the words of the terminal");
}

int open(const WindowWords& words, const std::shared_ptr<Source>& source) {
  Window window(source);
  window.resize(words.size);
  if (words.us) {
    window.session().setUnits(UnitSystem::usCustomary);
  }
  if (!words.show.isEmpty()) {
    window.wantShow(words.show, words.hang);
  }
  const QString place = words.place.section(QLatin1Char('/'), 0, 0);
  const QString part = words.place.section(QLatin1Char('/'), 1);
  if (!place.isEmpty() &&
      (!window.goTo(place) || (!part.isEmpty() && !window.place(place)->showPart(part)))) {
    throw Error(Trouble::badInput,
                "is none of: route, options, build, fleet, fleet/stock, fleet/loads, examinations, data",
                words.place.toStdString());
  }
  if (words.demo) {
    window.fillIfEmpty();
  }
  if (!words.picture.isEmpty()) {
    takePicture(window, words.picture);
    return 0;
  }
  const WindowState state(window, WindowState::usualFile(),
                          {.size = words.sized, .place = !place.isEmpty() || !words.show.isEmpty()});
  window.show();
  return QApplication::exec();
}

} // namespace

int runWindow(int& argc, char** argv, SourceMaker makeSource) {
  const std::vector<std::string> given(argv + 1, argv + argc);
  try {
    const WindowWords words = readWindowWords(given);
    if (!words.picture.isEmpty() && qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) {
      qputenv("QT_QPA_PLATFORM", "offscreen"); // a picture needs no display
    }
    refuseWithoutDisplay();
    QApplication application(argc, argv);
    QApplication::setApplicationName(QStringLiteral("hangbook"));
    QApplication::setApplicationDisplayName(QStringLiteral("Hangbook"));
    QApplication::setDesktopFileName(QStringLiteral("hangbook"));
    QApplication::setWindowIcon(
        QIcon::fromTheme(QStringLiteral("hangbook"), QIcon(QStringLiteral(":/hangbook.png"))));
    QApplication::setApplicationVersion(QStringLiteral(HANGBOOK_VERSION));
    const Theme theme = words.dark ? Theme::dark : themeOf(application);
    if (!words.picture.isEmpty()) {
      fixLooks(application);
    }
    applyTheme(application, words.picture.isEmpty() ? theme : (words.dark ? Theme::dark : Theme::light));
    const QString usual = words.picture.isEmpty() ? languageFor(QLocale::system()) : QStringLiteral("en");
    speak(application, words.language.isEmpty() ? usual : words.language);
    return open(words, makeSource(words));
  } catch (const Error& error) {
    std::cerr << error.what() << '\n';
    return error.trouble() == Trouble::store ? storeTrouble : badInput;
  }
}

} // namespace hangbook::desk
