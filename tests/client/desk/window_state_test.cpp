// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/unit_test.hpp>

#include <QHeaderView>
#include <QSplitter>
#include <QStackedWidget>
#include <QStandardPaths>
#include <QTableView>
#include <QTemporaryDir>

#include "desk/frame/place.h"
#include "desk/frame/place_names.h"
#include "desk/frame/window_state.h"
#include "desk/lists/column_fitter.h"
#include "opened.h"

using namespace hangbook::desk;
using namespace hangbook::testing;

namespace {

/// A window with what it keeps in a file of the test's own.
struct Left : Opened {
  explicit Left(const QString& file, WindowState::Settled settled = {}) : state(window, file, settled) {}
  std::string here() { return child<QStackedWidget>("pages")->currentWidget()->objectName().toStdString(); }
  WindowState state;
};

struct Folder {
  Folder() { BOOST_TEST_REQUIRE(folder.isValid()); }
  QTemporaryDir folder;
  QString file = folder.filePath(QStringLiteral("window.ini"));

  void leaveOneAtFleet() const {
    Left first(file);
    first.window.resize(1100, 810);
    first.window.goTo(place::fleet);
    first.window.close();
  }
};

} // namespace

BOOST_FIXTURE_TEST_SUITE(window_state, Folder)

BOOST_AUTO_TEST_CASE(size_and_place_are_as_they_were_left) {
  leaveOneAtFleet();
  Left second(file);
  BOOST_TEST(second.window.width() == 1100);
  BOOST_TEST(second.window.height() == 810);
  BOOST_TEST(second.here() == "fleet");
}

BOOST_AUTO_TEST_CASE(what_the_command_line_says_goes_before) {
  leaveOneAtFleet();
  {
    Left told(file, {.size = true, .place = true});
    BOOST_TEST(told.window.width() == 1440);
    BOOST_TEST(told.here() == "route");
    told.window.goTo(place::data);
    told.window.close();
  }
  Left after(file); // a size for one run is not what the next begins with; the place is where one was
  BOOST_TEST(after.window.width() == 1100);
  BOOST_TEST(after.here() == "data");
}

BOOST_AUTO_TEST_CASE(a_splitter_moved_by_hand_stays_and_no_other_is_kept) {
  QList<int> moved;
  {
    Left first(file);
    first.settle();
    auto* halves = first.child<QSplitter>("routeHalves");
    const QList<int> before = halves->sizes();
    halves->setSizes({before[0] - 90, before[1] + 90});
    moved = halves->sizes();
    BOOST_TEST_REQUIRE((moved != before));
    Q_EMIT halves->splitterMoved(moved[0], 1); // what a drag of the handle tells
    first.window.close();
  }
  Left second(file);
  second.settle();
  QCoreApplication::processEvents();
  BOOST_TEST((second.child<QSplitter>("routeHalves")->sizes() == moved));
  QSettings kept(file, QSettings::IniFormat);
  kept.beginGroup(QStringLiteral("splitters"));
  BOOST_TEST((kept.childKeys() == QStringList{QStringLiteral("routeHalves")}));
}

BOOST_AUTO_TEST_CASE(every_splitter_of_a_place_has_a_name_of_its_own) {
  Left opened(file);
  QStringList names;
  for (Place* place : opened.window.places()) {
    for (const QSplitter* each : place->findChildren<QSplitter*>()) {
      BOOST_TEST(!each->objectName().isEmpty(), "a splitter of " << place->objectName().toStdString());
      names.push_back(each->objectName());
    }
  }
  BOOST_TEST(names.size() > 5);
  BOOST_TEST(names.removeDuplicates() == 0);
}

BOOST_AUTO_TEST_CASE(what_cannot_be_read_is_passed_over) {
  {
    QSettings wrong(file, QSettings::IniFormat);
    wrong.setValue(QStringLiteral("window/geometry"), QByteArray("no geometry"));
    wrong.setValue(QStringLiteral("window/place"), QStringLiteral("nowhere"));
    wrong.setValue(QStringLiteral("splitters/routeHalves"),
                   QStringList{QStringLiteral("0"), QStringLiteral("0")});
    wrong.setValue(QStringLiteral("splitters/dataHalves"), QStringList{QStringLiteral("wide")});
  }
  Left opened(file);
  BOOST_TEST(opened.window.width() == 1440);
  BOOST_TEST(opened.here() == "route");
  for (const int each : opened.child<QSplitter>("routeHalves")->sizes()) {
    BOOST_TEST(each > 0);
  }
}

BOOST_AUTO_TEST_CASE(the_usual_file_lies_in_the_folder_for_settings) {
  const QString config = QStandardPaths::writableLocation(QStandardPaths::GenericConfigLocation);
  BOOST_TEST(WindowState::usualFile().startsWith(config + QLatin1Char('/')));
}

BOOST_AUTO_TEST_CASE(columns_that_were_moved_or_drawn_wider_by_hand_are_so_again) {
  const auto headerOf = [](Opened& opened) {
    return opened.child<QTableView>("fleetListTable")->horizontalHeader();
  };
  {
    Opened opened;
    const WindowState state(opened.window, file, {});
    headerOf(opened)->moveSection(2, 0);
    headerOf(opened)->resizeSection(1, 211);
  }
  Opened again;
  const WindowState state(again.window, file, {});
  BOOST_TEST(headerOf(again)->logicalIndex(0) == 2);
  BOOST_TEST(headerOf(again)->sectionSize(1) == 211);
  again.window.resize(1100, 800); // the rest is fitted; what was given by hand stays
  QCoreApplication::processEvents();
  BOOST_TEST(headerOf(again)->sectionSize(1) == 211);
  auto* columns = again.child<QTableView>("fleetListTable")->findChild<ColumnFitter*>();
  columns->restore(QStringLiteral("0 0 0/x"));
  BOOST_TEST(headerOf(again)->logicalIndex(0) == 2);
}

BOOST_AUTO_TEST_SUITE_END()
