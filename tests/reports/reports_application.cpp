// SPDX-License-Identifier: GPL-3.0-or-later
#include <QGuiApplication>

#include "support/application.h"

namespace {

// Fonts need an application with a screen of some kind; the test's environment makes it an invisible one.
const bool used =
    hangbook::testing::useApplication([](int& argc, char** argv) -> std::unique_ptr<QCoreApplication> {
      return std::make_unique<QGuiApplication>(argc, argv);
    });

} // namespace
