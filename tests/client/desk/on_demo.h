// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <boost/test/unit_test.hpp>

#include <QPushButton>
#include <QTemporaryDir>

#include "desk/frame/window.h"
#include "desk/run.h"
#include "desk/source/store_source.h"
#include "waiting.h"

namespace hangbook::testing {

/// A window on a real store that holds the demo tour, on a day before it.
struct OnDemo {
  OnDemo()
      : window(desk::openStoreSource(
            {.store = folder.filePath(QStringLiteral("tour.sqlite")), .asOf = QDate(2027, 3, 20)})) {
    window.show();
    settle();
    child<QPushButton>("firstDemo")->click();
    settle();
  }
  void settle() {
    BOOST_TEST_REQUIRE(waitUntil([this] { return !window.session().busy(); }));
  }
  template <class Widget>
  Widget* child(const char* name) {
    auto* found = window.findChild<Widget*>(QLatin1String(name));
    BOOST_TEST_REQUIRE(found != nullptr, "there is no " << name);
    return found;
  }

  QTemporaryDir folder;
  desk::Window window;
};

} // namespace hangbook::testing
