// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>

#include <QCoreApplication>

namespace hangbook::testing {

using ApplicationMaker = std::unique_ptr<QCoreApplication> (*)(int& argc, char** argv);

/// Names the maker of the application object for this test program (a QApplication for window tests).
/// To be called while static objects are initialised; returns true so that it can initialise one.
bool useApplication(ApplicationMaker maker);

} // namespace hangbook::testing
