// SPDX-License-Identifier: GPL-3.0-or-later
// How long the window takes from nothing to filled, and the longest event that each journey makes it handle:
// while one is handled the window answers nobody. Measured, never asserted. By tests/bench/desk; on a store
// that is there: desk_bench FILE SHOW
#include <algorithm>
#include <chrono>
#include <iomanip>
#include <iostream>

#include <QAbstractItemModel>
#include <QAction>
#include <QApplication>
#include <QLineEdit>
#include <QStandardPaths>
#include <QTableView>
#include <QTest>
#include <QThread>

#include "client/desk/waiting.h"
#include "desk/frame/finder.h"
#include "desk/frame/place_names.h"
#include "desk/frame/window.h"
#include "desk/lists/sort_filter.h"
#include "desk/run.h"
#include "desk/source/store_source.h"
#include "desk/style/theme.h"

using namespace hangbook;
using namespace hangbook::desk;

namespace {

using Clock = std::chrono::steady_clock;

double msSince(Clock::time_point start) {
  return std::chrono::duration<double, std::milli>(Clock::now() - start).count();
}

/// An application that times each event that it hands on from its loop; what an event sends on the way is
/// part of it.
class Timed : public QApplication {
public:
  using QApplication::QApplication;
  bool notify(QObject* receiver, QEvent* event) override {
    if (depth_ > 0 || thread() != QThread::currentThread()) {
      return QApplication::notify(receiver, event);
    }
    const QByteArray name = receiver->metaObject()->className();
    const int type = event->type();
    ++depth_;
    const auto start = Clock::now();
    const bool handled = QApplication::notify(receiver, event);
    const double took = msSince(start);
    --depth_;
    count(took, name + ", event " + QByteArray::number(type));
    return handled;
  }
  void count(double took, const QByteArray& what) {
    if (took > longest_) {
      longest_ = took;
      what_ = what;
    }
  }
  void begin() {
    longest_ = 0.0;
    what_.clear();
  }
  double longest() const { return longest_; }
  QByteArray what() const { return what_; }

private:
  int depth_ = 0;
  double longest_ = 0.0;
  QByteArray what_;
};

class Journeys {
public:
  Journeys(Timed& application, Window& window) : application_(application), window_(window) {}

  template <class Go>
  void run(const char* name, Go go) {
    application_.begin();
    const auto start = Clock::now();
    go();
    settle();
    std::cout << std::left << std::setw(44) << name << std::right << std::fixed << std::setprecision(1)
              << std::setw(9) << application_.longest() << " ms" << std::setw(10) << msSince(start)
              << " ms   " << application_.what().constData() << '\n';
  }

  void settle() {
    testing::waitUntil([this] { return !window_.session().busy() && !sorting(); }, 1'000'000);
    QCoreApplication::processEvents();
  }

  /// Whether a long list is still being sorted or searched between events.
  bool sorting() const {
    const auto lists = window_.findChildren<SortFilter*>();
    return std::any_of(lists.begin(), lists.end(), [](const SortFilter* each) { return each->working(); });
  }

  /// What a click or a key would call, timed as the event that it would be part of.
  template <class Call>
  void call(const char* what, Call call) {
    const auto start = Clock::now();
    call();
    application_.count(msSince(start), what);
    settle();
  }

  void goTo(const QString& place) {
    call("going there", [&] { window_.goTo(place); });
  }

  /// Down a list by the arrow key.
  void down(const char* table, int rows) {
    auto* view = window_.findChild<QTableView*>(QLatin1String(table));
    if (view == nullptr) {
      std::cout << "there is no " << table << '\n';
      return;
    }
    view->setFocus();
    for (int i = 0; i < rows; ++i) {
      QTest::keyClick(view, Qt::Key_Down);
      settle();
    }
  }

  void find(const char* words) {
    window_.findChild<QAction*>(QStringLiteral("find"))->trigger();
    auto* finder = window_.findChild<Finder*>();
    for (const QChar letter : QString::fromUtf8(words)) {
      QTest::keyClicks(finder, QString(letter));
      testing::waitUntil([finder] { return !finder->busy(); }, 1'000'000);
    }
    finder->clear();
  }

  /// Letter by letter into the line above a list.
  void filter(const QString& place, const char* search, const char* words) {
    goTo(place);
    auto* line = window_.findChild<QLineEdit*>(QLatin1String(search));
    if (line == nullptr) {
      std::cout << "there is no " << search << '\n';
      return;
    }
    for (const QChar letter : QString::fromUtf8(words)) {
      QTest::keyClicks(line, QString(letter));
      settle();
    }
    line->clear();
  }

private:
  Timed& application_;
  Window& window_;
};

} // namespace

int main(int argc, char** argv) {
  Timed application(argc, argv);
  if (argc != 3) {
    std::cerr << "desk_bench takes the store's FILE and the name of a SHOW in it\n";
    return 2;
  }
  QStandardPaths::setTestModeEnabled(true);
  fixLooks(application);
  applyTheme(application, Theme::light);
  std::cout << std::left << std::setw(44) << ""
            << "longest event   altogether\n";
  application.begin();
  const auto start = Clock::now();
  Window window(openStoreSource({.store = QString::fromLocal8Bit(argv[1]), .asOf = QDate(2027, 3, 20)}));
  window.resize(1440, 900);
  window.show();
  testing::waitUntil([&] { return !window.session().busy(); }, 1'000'000);
  QCoreApplication::processEvents();
  window.grab();
  std::cout << std::left << std::setw(44) << "from nothing to a filled window" << std::right << std::fixed
            << std::setprecision(1) << std::setw(9) << application.longest() << " ms" << std::setw(10)
            << msSince(start) << " ms   " << application.what().constData() << '\n';

  Journeys journeys(application, window);
  for (const QString& place :
       {place::options, place::build, place::fleet, place::examinations, place::data, place::route}) {
    journeys.run(("to " + place.toStdString()).c_str(), [&] { journeys.goTo(place); });
  }
  journeys.run("a show's options", [&] {
    journeys.call("choosing the show",
                  [&] { window.wantShow(QString::fromLocal8Bit(argv[2]), QStringLiteral("left")); });
    journeys.goTo(place::options);
  });
  journeys.run("down twenty options", [&] { journeys.down("optionListTable", 20); });
  journeys.run("find, letter by letter", [&] { journeys.find("hoist"); });
  journeys.run("words over the shows", [&] { journeys.filter(place::route, "routeListSearch", "hall 3"); });
  journeys.run("words over the units", [&] { journeys.filter(place::fleet, "fleetListSearch", "bay 3"); });
  journeys.run("words over the examinations",
               [&] { journeys.filter(place::examinations, "dueListSearch", "bay 3"); });
  journeys.run("words over the records", [&] { journeys.filter(place::data, "recordListSearch", "hall 3"); });
  return 0;
}
