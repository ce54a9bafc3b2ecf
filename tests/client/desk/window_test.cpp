// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/unit_test.hpp>

#include <set>

#include <QAction>
#include <QPushButton>
#include <QShortcut>
#include <QStackedWidget>
#include <QTableView>

#include "desk/first/first_page.h"
#include "desk/frame/cautions.h"
#include "desk/frame/finder.h"
#include "desk/frame/place.h"
#include "desk/frame/window.h"
#include "desk/lists/table_model.h"
#include "fixture_source.h"
#include "opened.h"

using namespace hangbook;
using namespace hangbook::desk;
using namespace hangbook::testing;

namespace {

QString nameOf(const QWidget& widget) {
  if (!widget.accessibleName().isEmpty()) {
    return widget.accessibleName();
  }
  return widget.property("text").toString();
}

} // namespace

BOOST_AUTO_TEST_SUITE(window)

BOOST_AUTO_TEST_CASE(every_place_is_reached_by_its_keys) {
  Opened opened;
  int number = 0;
  for (Place* place : opened.window.places()) {
    auto* shortcut = opened.child<QShortcut>(qPrintable(QStringLiteral("goTo%1").arg(++number)));
    BOOST_TEST(shortcut->key().toString().toStdString() == "Ctrl+" + std::to_string(number));
    Q_EMIT shortcut->activated();
    BOOST_TEST(opened.child<QStackedWidget>("pages")->currentWidget() == place);
    BOOST_TEST(!place->explanation().isEmpty());
  }
}

BOOST_AUTO_TEST_CASE(whatever_takes_the_keyboard_has_a_name) {
  Opened opened;
  int walked = 0;
  for (QWidget* each : opened.window.findChildren<QWidget*>()) {
    const bool ours =
        each->focusPolicy() != Qt::NoFocus && !each->objectName().startsWith(QLatin1String("qt_"));
    const bool part = each->parentWidget() != nullptr && each->parentWidget()->inherits("QAbstractSpinBox");
    if (ours && !part && !each->inherits("QHeaderView") && !each->inherits("QScrollBar") &&
        !each->inherits("QMenu") && !each->inherits("QComboBoxListView")) {
      BOOST_TEST(!nameOf(*each).isEmpty(), each->metaObject()->className()
                                               << " " << each->objectName().toStdString());
      ++walked;
    }
  }
  BOOST_TEST(walked > 5);
}

BOOST_AUTO_TEST_CASE(tab_reaches_every_field_of_every_place) {
  Opened opened;
  for (Place* place : opened.window.places()) {
    opened.window.goTo(place->objectName());
    opened.settle();
    std::set<QWidget*> reached;
    QWidget* here = opened.child<QWidget>("places");
    for (int i = 0; i < 2000 && reached.insert(here).second; ++i) { // the chain of focus is a ring
      here = here->nextInFocusChain();
    }
    for (QWidget* each : place->findChildren<QWidget*>()) {
      const bool inside =
          each->parentWidget()->inherits("QAbstractSpinBox") || each->parentWidget()->inherits("QComboBox");
      if (each->isVisible() && each->isEnabled() && (each->focusPolicy() & Qt::TabFocus) != 0 && !inside) {
        BOOST_TEST(reached.contains(each), place->objectName().toStdString()
                                               << ": " << each->objectName().toStdString());
      }
    }
  }
}

BOOST_AUTO_TEST_CASE(an_unknown_show_is_told) {
  Opened opened;
  opened.window.wantShow(QStringLiteral("Nowhere night"), {});
  BOOST_TEST(opened.child<QWidget>("troubleLine")->isVisible());
  BOOST_TEST(opened.child<QWidget>("troubleText")
                 ->property("text")
                 .toString()
                 .contains(QStringLiteral("Nowhere night")));
}

BOOST_AUTO_TEST_CASE(the_about_text_names_licence_and_cautions) {
  BOOST_TEST(aboutText().contains(QStringLiteral("GPL-3.0-or-later")));
  BOOST_TEST(cautionText().contains(QStringLiteral("maker's manual")));
  BOOST_TEST(cautionText().contains(QStringLiteral("local codes")));
}

BOOST_AUTO_TEST_CASE(the_finder_goes_to_a_serial) {
  Opened opened;
  auto* finder = opened.child<Finder>("finder");
  finder->setText(QStringLiteral("mb-9"));
  finder->goToFirst();
  BOOST_TEST_REQUIRE(hangbook::testing::waitUntil([&] { return !finder->busy(); }));
  BOOST_TEST(opened.child<QStackedWidget>("pages")->currentWidget()->objectName().toStdString() == "fleet");
  BOOST_TEST(
      opened.child<QTableView>("fleetListTable")->currentIndex().data(keyRole).toString().toStdString() ==
      "MB-9");
}

BOOST_AUTO_TEST_CASE(an_empty_store_offers_three_ways_and_the_cautions) {
  Overview none;
  none.today = QDate(2027, 4, 1);
  Opened opened(none);
  auto* first = opened.child<FirstPage>("first");
  BOOST_TEST(first->isVisible());
  for (const char* name : {"firstDemo", "firstImport", "firstBlank"}) {
    BOOST_TEST(opened.child<QPushButton>(name)->isEnabled());
  }
  const std::string caution =
      opened.child<QWidget>("firstCaution")->property("text").toString().toStdString();
  BOOST_TEST(caution.find("competent person") != std::string::npos);
  BOOST_TEST(caution.find("never permission to lift") != std::string::npos);
  opened.child<QPushButton>("firstDemo")->click();
  BOOST_TEST(waitUntil([&] { return !opened.window.session().overview().empty(); }));
  BOOST_TEST(!first->isVisible());
}

BOOST_AUTO_TEST_CASE(starting_blank_opens_the_empty_lists) {
  Overview none;
  none.today = QDate(2027, 4, 1);
  Opened opened(none);
  opened.child<QPushButton>("firstBlank")->click();
  BOOST_TEST(opened.child<QStackedWidget>("pages")->isVisible());
  BOOST_TEST(opened.child<QWidget>("routeListEmpty")->isVisible());
}

BOOST_AUTO_TEST_CASE(trouble_says_what_happened_what_was_kept_and_what_to_do) {
  Opened opened;
  opened.source->failNext("the store's file is locked by another program");
  opened.window.session().reload();
  BOOST_TEST(waitUntil([&] { return opened.child<QWidget>("troubleLine")->isVisible(); }));
  const std::string text = opened.child<QWidget>("troubleText")->property("text").toString().toStdString();
  BOOST_TEST(text.find("locked by another program.") != std::string::npos);
  BOOST_TEST(text.find("read before") != std::string::npos);
  BOOST_TEST(text.find("F5") != std::string::npos);
  BOOST_TEST(!opened.window.session().overview().units.empty());
}

BOOST_AUTO_TEST_CASE(units_switch_in_every_list_at_once) {
  Opened opened;
  opened.child<QAction>("usCustomary")->trigger();
  const auto* model = opened.child<QTableView>("fleetListTable")->model();
  QString all;
  for (int row = 0; row < model->rowCount(); ++row) {
    for (int column = 0; column < model->columnCount(); ++column) {
      all += model->index(row, column).data().toString() + QLatin1Char(' ');
    }
  }
  BOOST_TEST(all.contains(QLatin1String(" lb ")));
  BOOST_TEST(!all.contains(QLatin1String(" kg ")));
}

BOOST_AUTO_TEST_CASE(the_source_refuses_the_windows_thread) {
  FixtureSource source(smallOverview());
  BOOST_CHECK_THROW(source.overview(), std::logic_error);
  BOOST_CHECK_THROW(source.snapshot({}), std::logic_error);
  BOOST_CHECK_THROW(source.decide({}, {}, {}), std::logic_error);
  BOOST_CHECK_THROW(source.judge({}, {}, {}), std::logic_error);
  BOOST_CHECK_THROW(source.choose({}), std::logic_error);
  BOOST_CHECK_THROW(source.recordMark({}), std::logic_error);
  BOOST_CHECK_THROW(source.fillWithDemo(), std::logic_error);
}

BOOST_AUTO_TEST_SUITE_END()
