// SPDX-License-Identifier: GPL-3.0-or-later
#include <iostream>
#include <string>
#include <vector>

#include <QCoreApplication>

#include "terminal/run.h"

int main(int argc, char** argv) {
  // A word in the terminal needs no screen.
  QCoreApplication application(argc, argv);
  QCoreApplication::setApplicationName(QStringLiteral("hangbook"));
  std::ios::sync_with_stdio(false);
  const std::vector<std::string> words(argv + 1, argv + argc);
  return static_cast<int>(hangbook::terminal::run(words, std::cin, std::cout, std::cerr));
}
