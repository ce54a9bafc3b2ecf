// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <utility>

#include <boost/test/unit_test.hpp>

#include "desk/frame/window.h"
#include "waiting.h"

namespace hangbook::testing {

/// A window over some source, shown, and read to the end.
struct Shown {
  explicit Shown(std::shared_ptr<desk::Source> source) : window(std::move(source)) {
    window.show();
    settle();
    BOOST_TEST_REQUIRE(window.session().loaded());
  }
  /// Waits until nothing is being worked on.
  void settle() {
    BOOST_TEST_REQUIRE(waitUntil([this] { return !window.session().busy(); }));
  }
  template <class Widget>
  Widget* child(const char* name) {
    auto* found = window.findChild<Widget*>(QLatin1String(name));
    BOOST_TEST_REQUIRE(found != nullptr, "there is no " << name);
    return found;
  }

  desk::Window window;
};

} // namespace hangbook::testing
