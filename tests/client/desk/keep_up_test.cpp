// SPDX-License-Identifier: GPL-3.0-or-later
// Facts that were read again: the page that is looked at shows them at once, each other one in an event of
// its own.
#include <boost/test/unit_test.hpp>

#include <QWidget>

#include "opened.h"

using namespace hangbook;
using namespace hangbook::desk;
using namespace hangbook::testing;

namespace {

/// A page that counts how often it was told.
struct Page {
  explicit Page(Session& session) {
    session.keepUp(&widget, [this] { ++told; });
  }
  QWidget widget;
  int told = 0;
};

} // namespace

BOOST_AUTO_TEST_SUITE(keeping_up)

BOOST_AUTO_TEST_CASE(what_is_seen_at_once_and_the_rest_one_by_one) {
  Opened opened;
  Session& session = opened.window.session();
  Page seen(session);
  Page first(session);
  Page second(session);
  seen.widget.show();
  int atOnce = -1;
  int behind = -1;
  QObject::connect(&session, &Session::overviewChanged, &seen.widget, [&] {
    atOnce = seen.told;
    behind = first.told + second.told;
  });
  session.reload();
  BOOST_TEST_REQUIRE(waitUntil([&] { return atOnce >= 0; }));
  BOOST_TEST(atOnce == 1);
  BOOST_TEST(behind == 0);
  BOOST_TEST(session.busy());
  BOOST_TEST_REQUIRE(waitUntil([&] { return first.told == 1; }));
  BOOST_TEST(second.told == 0); // not in the same event
  opened.settle();
  BOOST_TEST(second.told == 1);
  BOOST_TEST(seen.told == 1);
}

BOOST_AUTO_TEST_CASE(a_page_that_is_opened_before_its_turn_does_not_wait) {
  Opened opened;
  Session& session = opened.window.session();
  Page page(session);
  bool read = false;
  QObject::connect(&session, &Session::overviewChanged, &page.widget, [&] { read = true; });
  session.reload();
  BOOST_TEST_REQUIRE(waitUntil([&] { return read; }));
  BOOST_TEST(page.told == 0);
  page.widget.show();
  BOOST_TEST(page.told == 1);
  opened.settle();
  BOOST_TEST(page.told == 1); // and not once more
}

BOOST_AUTO_TEST_CASE(a_page_that_is_gone_is_not_waited_for) {
  Opened opened;
  Session& session = opened.window.session();
  auto page = std::make_unique<QWidget>();
  session.keepUp(page.get(), [] { BOOST_ERROR("told a page that is gone"); });
  page.reset();
  session.reload();
  opened.settle();
  BOOST_TEST(!session.busy());
}

BOOST_AUTO_TEST_SUITE_END()
