// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPushButton>
#include <QTemporaryDir>

#include "desk/run.h"
#include "desk/source/store_source.h"
#include "shown.h"

namespace hangbook::testing {

/// A base, so that the folder outlives the window on what lies in it.
struct InFolder {
  QTemporaryDir folder;
};

/// A window on a real store that holds the demo tour, on a day before it.
struct OnDemo : InFolder, Shown {
  OnDemo()
      : Shown(desk::openStoreSource(
            {.store = folder.filePath(QStringLiteral("tour.sqlite")), .asOf = QDate(2027, 3, 20)})) {
    child<QPushButton>("firstDemo")->click();
    settle();
  }
};

} // namespace hangbook::testing
