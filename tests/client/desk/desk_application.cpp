// SPDX-License-Identifier: GPL-3.0-or-later
// The window tests' application: same style, font, language and folders wherever they run.
#include <QApplication>
#include <QStandardPaths>

#include "desk/style/theme.h"
#include "support/application.h"

namespace {

std::unique_ptr<QCoreApplication> makeApplication(int& argc, char** argv) {
  auto application = std::make_unique<QApplication>(argc, argv);
  QStandardPaths::setTestModeEnabled(true);
  hangbook::desk::fixLooks(*application);
  hangbook::desk::applyTheme(*application, hangbook::desk::Theme::light);
  return application;
}

[[maybe_unused]] const bool named = hangbook::testing::useApplication(&makeApplication);

} // namespace
