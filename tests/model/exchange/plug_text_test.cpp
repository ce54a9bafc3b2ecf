// SPDX-License-Identifier: GPL-3.0-or-later
// The plugs of a hang as texts: the demo's.
#include <boost/test/unit_test.hpp>

#include "demo/demo.h"
#include "exchange/plug_text.h"

using namespace hangbook;
using namespace hangbook::exchange;

namespace {

const Data& tour() {
  static const Data data = [] {
    Data read;
    const Importer importer{QStringLiteral("Ada Fenn"), QDateTime(QDate(2027, 1, 4), QTime(9, 0), Qt::UTC)};
    for (const demo::File& file : demo::files()) {
      read = readFile(kindFrom(file.kind), file.bytes, read, importer).after;
    }
    return read;
  }();
  return data;
}

HangName left() {
  return {tour().tours.front().name, QStringLiteral("Ostrel"), QStringLiteral("left")};
}

} // namespace

BOOST_AUTO_TEST_SUITE(plug_text)

BOOST_AUTO_TEST_CASE(they_read_back_as_they_are) {
  const auto rows = plugTexts(left(), tour());
  BOOST_TEST_REQUIRE(rows.size() == 5u);
  BOOST_TEST(rows.front().size() == static_cast<qsizetype>(plugFields().size()));
  const PlugsRead read = readPlugs(left(), rows, tour());
  BOOST_TEST(read.faults.empty());
  BOOST_TEST_REQUIRE(read.plugs.size() == 5u);
  for (const calendar::Plug& each : read.plugs) {
    BOOST_TEST(std::ranges::count(tour().cabling.plugs, each) == 1);
  }
  BOOST_TEST(plugFields().front().name.toStdString() == "cabinet");
}

BOOST_AUTO_TEST_CASE(two_ends_may_change_places) {
  auto rows = plugTexts(left(), tour());
  std::swap(rows[0][5], rows[1][5]);
  const PlugsRead read = readPlugs(left(), rows, tour());
  BOOST_TEST(read.faults.empty());
  BOOST_TEST(read.plugs.size() == 5u);
}

BOOST_AUTO_TEST_CASE(faults_name_row_and_field) {
  auto rows = plugTexts(left(), tour());
  rows[1][5] = rows[0][5]; // one end in two cabinets
  PlugsRead read = readPlugs(left(), rows, tour());
  BOOST_TEST_REQUIRE(!read.faults.empty());
  BOOST_TEST(read.faults[0].field.toStdString() == "end");
  BOOST_TEST(read.plugs.empty());

  rows = plugTexts(left(), tour());
  rows[2][3] = QStringLiteral("a loom that nobody has");
  read = readPlugs(left(), rows, tour());
  BOOST_TEST_REQUIRE(read.faults.size() == 1u);
  BOOST_TEST(read.faults[0].row == 2);
  BOOST_TEST(read.faults[0].field.toStdString() == "loom");

  rows = plugTexts(left(), tour());
  rows.push_back(rows[0]);
  read = readPlugs(left(), rows, tour());
  BOOST_TEST_REQUIRE(!read.faults.empty());
  BOOST_TEST(read.faults[0].row == 5);
  BOOST_TEST(read.faults[0].field.isEmpty());
}

BOOST_AUTO_TEST_CASE(another_hang_of_the_show_keeps_its_own) {
  const HangName right{left().tour, left().show, QStringLiteral("right")};
  const auto others = plugTexts(right, tour());
  BOOST_TEST_REQUIRE(!others.empty());
  auto rows = plugTexts(left(), tour());
  rows.resize(1);
  rows[0][4] = others[0][4]; // the other hang's loom, by its label
  rows[0][3] = others[0][3];
  rows[0][5] = others[0][5];
  const PlugsRead read = readPlugs(left(), rows, tour());
  BOOST_TEST_REQUIRE(!read.faults.empty());
  BOOST_TEST(read.faults[0].expected.contains(QStringLiteral("once in a show")),
             read.faults[0].expected.toStdString());
}

BOOST_AUTO_TEST_SUITE_END()
