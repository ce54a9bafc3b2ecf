// SPDX-License-Identifier: GPL-3.0-or-later
// The search over everything, the list of keys, and what was gone to before.
#include <set>
#include <thread>

#include <QAbstractItemView>
#include <QAction>
#include <QCompleter>
#include <QShortcut>
#include <QStackedWidget>
#include <QTest>

#include "desk/frame/finder.h"
#include "desk/frame/keys_dialog.h"
#include "desk/frame/place_names.h"
#include "desk/frame/window_state.h"
#include "on_demo.h"

using namespace hangbook;
using namespace hangbook::desk;
using hangbook::testing::OnDemo;
using hangbook::testing::waitUntil;

namespace {

/// On a thread of its own, as the window does.
Found found(const Overview& overview, const char* words, const std::vector<Findable>& recent = {},
            int most = 40) {
  Found answer;
  std::thread([&] { answer = FindIndex(overview).find(QString::fromUtf8(words), recent, most); }).join();
  return answer;
}

std::string first(const Overview& overview, const char* words, const std::vector<Findable>& recent = {}) {
  const Found all = found(overview, words, recent);
  return all.first.empty() ? std::string() : all.first.front().text.toStdString();
}

struct Searching : OnDemo {
  Finder& finder() { return *child<Finder>("finder"); }
  std::string at() { return child<QStackedWidget>("pages")->currentWidget()->objectName().toStdString(); }
  void type(const char* words) {
    child<QAction>("find")->trigger(); // Ctrl+K
    QTest::keyClicks(&finder(), QString::fromUtf8(words));
    BOOST_TEST_REQUIRE(waitUntil([this] { return !finder().busy(); }));
  }
  void enter() {
    QTest::keyClick(&finder(), Qt::Key_Return);
    BOOST_TEST_REQUIRE(waitUntil([this] { return !finder().busy(); }));
    settle();
  }
};

} // namespace

BOOST_AUTO_TEST_SUITE(find)

BOOST_AUTO_TEST_CASE(every_sort_of_thing_is_found) {
  OnDemo on;
  const Overview& all = on.window.session().overview();
  std::set<QString> places;
  for (const Findable& each : findablesOf(all)) {
    places.insert(each.place);
  }
  for (const QString& each : {place::route, place::options, place::build, place::fleet, place::examinations,
                              place::data, place::help}) {
    BOOST_TEST((places.count(each) == 1), each.toStdString());
  }
  BOOST_TEST(first(all, "ostrel").starts_with("Ostrel · Ostrel Exchange"));
  BOOST_TEST(first(all, "l1 ostrel").starts_with("L1 · point of Ostrel Exchange"));
  BOOST_TEST(first(all, "chosen ostrel left").find("· left · Ostrel · chosen") != std::string::npos);
  BOOST_TEST_REQUIRE(!all.marks.empty());
  BOOST_TEST(first(all, ("mark " + std::to_string(all.marks.front().mark)).c_str()).starts_with("mark "));
  const QString serial = all.units.front().serial;
  BOOST_TEST(first(all, qPrintable(serial.toLower())).starts_with(serial.toStdString() + " · "));
  BOOST_TEST(first(all, "stacking table") != "");
  BOOST_TEST(first(all, "all keys") == "All keys · help");
  BOOST_TEST(first(all, "no such thing at all") == "");
}

BOOST_AUTO_TEST_CASE(what_was_gone_to_comes_before_its_equals_but_after_what_is_called_just_that) {
  OnDemo on;
  const Overview& all = on.window.session().overview();
  const Found some = found(all, "marra");
  BOOST_TEST_REQUIRE(some.first.size() > 2u);
  const Findable last = some.first.back();
  BOOST_TEST(first(all, "marra", {last}) == last.text.toStdString());
  BOOST_TEST((found(all, "", {last}).first.front() == last));
  const Found few = found(all, "marra", {}, 2);
  BOOST_TEST(few.first.size() == 2u);
  BOOST_TEST(few.more == static_cast<int>(some.first.size()) + some.more - 2);
  const Findable gone{QStringLiteral("Nowhere · venue"), place::data, QStringLiteral("Nowhere"), {}};
  BOOST_TEST((found(all, "", {gone}).first.front() != gone));
}

BOOST_AUTO_TEST_CASE(the_windows_thread_is_refused) {
  const Overview none;
  BOOST_CHECK_THROW(FindIndex{none}, std::logic_error);
}

BOOST_AUTO_TEST_CASE(by_keyboard_to_a_point_a_unit_and_back_by_the_recent_ones) {
  Searching on;
  on.type("L1 Ostrel");
  on.enter();
  BOOST_TEST(on.at() == "data");
  BOOST_TEST(on.finder().text().isEmpty());
  const QString serial = on.window.session().overview().units.front().serial;
  on.type(qPrintable(serial));
  on.enter();
  BOOST_TEST(on.at() == "fleet");
  on.child<QAction>("find")->trigger();
  BOOST_TEST_REQUIRE(waitUntil([&] { return !on.finder().busy(); }));
  BOOST_TEST(on.finder().found().first.at(0).text.startsWith(serial));
  BOOST_TEST(on.finder().found().first.at(1).text.startsWith(QStringLiteral("L1 · ")));
  on.type("stock against");
  on.enter();
  BOOST_TEST(on.child<QWidget>("stockPage")->isVisible());
}

BOOST_AUTO_TEST_CASE(what_was_gone_to_is_kept_for_the_next_start) {
  const QTemporaryDir folder;
  const QString file = folder.filePath(QStringLiteral("window.ini"));
  {
    Searching on;
    const WindowState state(on.window, file, {.size = true, .place = true});
    on.type("L1 Ostrel");
    on.enter();
  }
  Searching again;
  const WindowState state(again.window, file, {.size = true, .place = true});
  BOOST_TEST_REQUIRE(again.finder().recent().size() == 1);
  BOOST_TEST(again.finder().recent().front().startsWith(QStringLiteral("L1 · ")));
}

BOOST_AUTO_TEST_CASE(every_key_of_the_window_is_listed_with_what_it_does) {
  OnDemo on;
  std::set<QString> keys;
  for (const KeyLine& each : keysOf(on.window)) {
    BOOST_TEST(!each.what.isEmpty(), each.keys.toStdString());
    keys.insert(each.keys);
  }
  for (const char* each : {"Ctrl+K", "Ctrl+Z", "F1", "F2", "F5", "Ctrl+1", "Ctrl+6", "Ctrl+B", "Ctrl+F1"}) {
    BOOST_TEST((keys.count(QLatin1String(each)) == 1), each);
  }
}

BOOST_AUTO_TEST_CASE(pictures_of_it) {
  const QString folder = qEnvironmentVariable("HANGBOOK_PICTURES");
  if (folder.isEmpty()) {
    BOOST_TEST_MESSAGE("HANGBOOK_PICTURES=FOLDER makes them");
    return;
  }
  Searching on;
  KeysDialog keys(on.window);
  keys.show();
  BOOST_TEST(keys.grab().save(folder + QStringLiteral("/keys.png")));
  keys.hide();
  on.window.activateWindow();
  on.type("ostrel");
  auto* popup = on.finder().findChild<QCompleter*>()->popup();
  BOOST_TEST(popup->grab().save(folder + QStringLiteral("/find.png")));
}

BOOST_AUTO_TEST_SUITE_END()
