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
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QStandardPaths>
#include <QTableView>
#include <QTableWidget>
#include <QTest>
#include <QThread>

#include "client/desk/waiting.h"
#include "desk/building/sheet_preview.h"
#include "desk/data/data_place.h"
#include "desk/fleet/scan_bench.h"
#include "desk/frame/finder.h"
#include "desk/frame/place_names.h"
#include "desk/frame/window.h"
#include "desk/lists/sort_filter.h"
#include "desk/options/adjust_panel.h"
#include "desk/options/choose_dialog.h"
#include "desk/options/options_place.h"
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

  /// A part of the window, or an end with its name.
  template <class Widget>
  Widget& child(const char* name) {
    auto* found = window_.findChild<Widget*>(QLatin1String(name));
    if (found == nullptr) {
      throw std::runtime_error(std::string("there is no ") + name);
    }
    return *found;
  }

  void press(const char* button) {
    if (!child<QPushButton>(button).isEnabled()) {
      throw std::runtime_error(std::string(button) + " cannot be pressed");
    }
    call(button, [&] { child<QPushButton>(button).click(); });
    mustNotComplain();
  }

  void trigger(const char* action) {
    if (!child<QAction>(action).isEnabled()) {
      throw std::runtime_error(std::string(action) + " is not offered");
    }
    call(action, [&] { child<QAction>(action).trigger(); });
    mustNotComplain();
  }

  /// What was refused was not measured.
  void mustNotComplain() {
    if (window_.findChild<QWidget*>(QStringLiteral("troubleLine"))->isVisible()) {
      throw std::runtime_error(child<QLabel>("troubleText").text().toStdString());
    }
  }

  /// The setting's tilt by the arrow key; each step is judged anew.
  void tilt(int steps) {
    auto& field = child<QAbstractSpinBox>("adjustTilt");
    field.setFocus();
    for (int i = 0; i < steps; ++i) {
      QTest::keyClick(&field, i % 4 < 2 ? Qt::Key_Down : Qt::Key_Up);
      settle();
    }
  }

  /// Another than the best of the list, which may stand chosen.
  void second() {
    auto& table = child<QTableView>("optionListTable");
    table.setFocus();
    call("the second option", [&] { table.selectRow(1); });
  }

  void choose() {
    child<OptionsPlace>("options").setAsker([](ChooseDialog& dialog) {
      dialog.findChild<QComboBox*>(QStringLiteral("chooseBy"))->setEditText(QStringLiteral("Ide Quarrel"));
      dialog.findChild<QLineEdit*>(QStringLiteral("chooseReason"))->setText(QStringLiteral("timed"));
      return true;
    });
    press("adjustChoose");
  }

  void scan(const QStringList& codes) {
    child<QComboBox>("scanTarget").setEditText(QStringLiteral("warehouse bay 7"));
    child<QComboBox>("scanBy").setEditText(QStringLiteral("Ide Quarrel"));
    for (const QString& code : codes) {
      call("a scan", [&] { child<ScanBench>("scanBench").scan(code); });
    }
  }

  /// A point's limit in the hall's dialog, tried on its chosen options and saved.
  void weaken(const QString& hall) {
    auto& place = child<DataPlace>("data");
    window_.activateWindow();
    call("the hall's record", [&] {
      place.showKey(hall);
      place.takeFocus();
    });
    QTest::keyClick(&child<QTableView>("recordListTable"), Qt::Key_F2);
    settle();
    child<QComboBox>("venueBy").setEditText(QStringLiteral("Ide Quarrel"));
    auto& points = child<QTableWidget>("venuePointsTable");
    call("a figure typed", [&] { points.item(0, 4)->setText(QStringLiteral("8 kN")); });
    press("venueTry");
    press("venueSave");
  }

  void sheet(const char* kind) {
    trigger(kind);
    delete &child<SheetPreview>("sheetPreview");
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
  // What writes goes last: the store is another one after it.
  try {
    const Overview& all = window.session().overview();
    const ShowKey show = window.session().show();
    QStringList codes;
    for (std::size_t i = 0; i < all.units.size() && codes.size() < 20; ++i) {
      codes.append(all.units[i].serial);
    }
    journeys.goTo(place::options);
    journeys.run("to the second option", [&] { journeys.second(); });
    journeys.run("twenty steps of tilt", [&] { journeys.tilt(20); });
    journeys.press("adjustBack");
    journeys.run("choosing an option", [&] { journeys.choose(); });
    journeys.run("undone", [&] { journeys.trigger("undo"); });
    journeys.run("and done again", [&] { journeys.trigger("redo"); });
    journeys.run("to the steps of the build", [&] { journeys.goTo(place::build); });
    journeys.run("a load sheet looked at", [&] { journeys.sheet("print load-sheet"); });
    journeys.run("twenty scans, each answered", [&] {
      journeys.goTo(place::fleet);
      journeys.scan(codes);
    });
    journeys.run("a hall's point made weaker", [&] {
      journeys.goTo(place::data);
      journeys.weaken(findShow(window.session().overview(), show)->venue);
    });
    journeys.run("all of it read again",
                 [&] { journeys.call("reading", [&] { window.session().reload(); }); });
  } catch (const std::exception& error) {
    std::cerr << "desk_bench: " << error.what() << '\n';
    return 1;
  }
  return 0;
}
