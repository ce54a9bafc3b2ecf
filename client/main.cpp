// SPDX-License-Identifier: GPL-3.0-or-later
#include <iostream>
#include <memory>
#include <string>
#include <vector>

#include <QGuiApplication>

#ifdef HANGBOOK_HAS_DESK
#include "desk/run.h"
#include "desk/source/store_source.h"
#endif
#include "terminal/run.h"

int main(int argc, char** argv) {
  const std::vector<std::string> words(argv + 1, argv + argc);
#ifdef HANGBOOK_HAS_DESK
  if (hangbook::desk::wantsWindow(words)) {
    return hangbook::desk::runWindow(argc, argv, &hangbook::desk::openStoreSource);
  }
#endif
  // A word in the terminal needs no screen; one that prints needs fonts, which an invisible one has.
  std::unique_ptr<QCoreApplication> application;
  if (!words.empty() && (words[0] == "labels" || words[0] == "report")) {
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) {
      qputenv("QT_QPA_PLATFORM", "offscreen");
    }
    application = std::make_unique<QGuiApplication>(argc, argv);
  } else {
    application = std::make_unique<QCoreApplication>(argc, argv);
  }
  QCoreApplication::setApplicationName(QStringLiteral("hangbook"));
  std::ios::sync_with_stdio(false);
  return static_cast<int>(hangbook::terminal::run(words, std::cin, std::cout, std::cerr));
}
