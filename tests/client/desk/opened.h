// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <boost/test/unit_test.hpp>

#include "desk/frame/window.h"
#include "fixture_source.h"
#include "waiting.h"

namespace hangbook::testing {

/// A window over values, shown and read.
struct Opened {
  explicit Opened(desk::Overview overview = smallOverview())
      : source(std::make_shared<FixtureSource>(std::move(overview))), window(source) {
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

  std::shared_ptr<FixtureSource> source;
  desk::Window window;
};

} // namespace hangbook::testing
