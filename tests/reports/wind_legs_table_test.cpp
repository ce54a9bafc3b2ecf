// SPDX-License-Identifier: GPL-3.0-or-later
// The load sheet's table of bridles' legs in the gust.
#include <boost/test/unit_test.hpp>

#include <limits>

#include "reports/rig_tables.h"

using namespace hangbook;
using namespace hangbook::reports;

BOOST_AUTO_TEST_SUITE(wind_legs_table)

BOOST_AUTO_TEST_CASE(each_leg_with_what_its_point_carries) {
  options::WindAnswer wind;
  wind.gust = 9.0;
  wind.legs = {
      {QStringLiteral("front"), QStringLiteral("L1"), 2.741, 1.977, 51.72},
      {QStringLiteral("front"), QStringLiteral("F1"), 2.584, -0.01, 48.71},
      {QStringLiteral("front"), QStringLiteral("F2"), std::numeric_limits<double>::quiet_NaN(), 1.0, 48.0}};
  wind.points = {{QStringLiteral("F1"), 1.959}, {QStringLiteral("L1"), 2.166}};
  options::Option option;
  option.wind = wind;
  ShowAsIs show;
  show.hangs = {{QStringLiteral("left"), {}, option, {}, false},
                {QStringLiteral("right"), {}, {}, {}, false}};
  const Table table = windLegsTable(show, Figures());
  BOOST_REQUIRE(table.rows.size() == 3U);
  const QStringList first{QStringLiteral("left"),    QStringLiteral("front"),   QStringLiteral("L1"),
                          QStringLiteral("2.74 kN"), QStringLiteral("1.98 kN"), QStringLiteral("51.7°"),
                          QStringLiteral("2.17 kN")};
  BOOST_CHECK(table.rows[0].cells == first);
  BOOST_TEST(table.columns.size() == static_cast<std::size_t>(first.size()));
  BOOST_TEST(!table.rows[0].warn);
  BOOST_TEST(table.rows[1].warn); // slack
  BOOST_TEST(table.rows[2].warn);
  BOOST_TEST(table.rows[2].cells[3].toStdString() == notKnown().toStdString());
  BOOST_TEST(table.rows[2].cells[6].toStdString() == notKnown().toStdString());
  // Without a gust there is nothing to tell.
  show.hangs[0].now->wind->gust = std::numeric_limits<double>::quiet_NaN();
  BOOST_TEST(windLegsTable(show, Figures()).rows.empty());
}

BOOST_AUTO_TEST_SUITE_END()
