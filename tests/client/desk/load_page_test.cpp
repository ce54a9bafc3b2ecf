// SPDX-License-Identifier: GPL-3.0-or-later
// Carts of a show and what is loaded at a place, on the demo tour.
#include <QComboBox>
#include <QTableView>

#include "desk/fleet/load_models.h"
#include "on_demo.h"

using namespace hangbook;
using namespace hangbook::desk;
using hangbook::testing::OnDemo;

namespace {

QString cell(const QTableView& table, int row, int column) {
  return table.model()->index(row, column).data().toString();
}

} // namespace

BOOST_AUTO_TEST_SUITE(load_page)

BOOST_AUTO_TEST_CASE(a_cart_weighs_what_the_loads_count) {
  OnDemo on;
  on.window.goTo(QStringLiteral("fleet"));
  on.settle();
  auto* shows = on.child<QComboBox>("loadShow");
  shows->setCurrentIndex(shows->findText(QStringLiteral("Hallowfen"), Qt::MatchStartsWith));
  const auto* carts = on.child<QTableView>("cartTable");
  BOOST_TEST_REQUIRE(carts->model()->rowCount() > 0);
  BOOST_TEST(cell(*carts, 0, static_cast<int>(CartColumn::cart)).toStdString() == "Bass cart");
  // 38 kg and two bass at 93.4 kg, as the heaviest of them was weighed; their maker says 92 kg.
  BOOST_TEST(cell(*carts, 0, static_cast<int>(CartColumn::gross)).toStdString() == "224.8 kg");
}

BOOST_AUTO_TEST_CASE(a_place_has_all_that_is_recorded_there_and_nothing_else) {
  OnDemo on;
  on.window.goTo(QStringLiteral("fleet"));
  on.settle();
  auto* places = on.child<QComboBox>("loadTruck");
  const auto& facts = on.window.session().overview();
  BOOST_TEST_REQUIRE(places->count() > 1);
  for (int i = 0; i < places->count(); ++i) {
    places->setCurrentIndex(i);
    const QString place = places->currentData().toString();
    std::size_t there = 0;
    for (const fleet::Unit& unit : facts.units) {
      there += unit.place == place ? 1 : 0;
    }
    std::size_t shown = 0;
    const auto* table = on.child<QTableView>("loadTable");
    for (int row = 0; row < table->model()->rowCount(); ++row) {
      const QString riding = cell(*table, row, static_cast<int>(LoadColumn::riding));
      shown += riding == QStringLiteral("–") ? 1 : 1 + static_cast<std::size_t>(riding.split(u',').size());
    }
    BOOST_TEST(shown == there, place.toStdString());
  }
}

BOOST_AUTO_TEST_SUITE_END()
