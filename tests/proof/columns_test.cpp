// SPDX-License-Identifier: GPL-3.0-or-later
// The table of columns holds what the dictionary of exchange holds, so that a new figure cannot come in
// without saying what is worse for it.
#include <boost/test/unit_test.hpp>

#include <map>

#include "columns.h"
#include "exchange/kind_sorts.h"

using namespace hangbook;
using namespace hangbook::testing;

BOOST_AUTO_TEST_SUITE(every_column)

BOOST_AUTO_TEST_CASE(every_column_of_the_dictionary_is_in_the_table_once) {
  std::map<std::tuple<exchange::Kind, QString, QString>, int> listed;
  for (const Column& each : columns()) {
    ++listed[{each.kind, QString::fromUtf8(each.record), QString::fromUtf8(each.heading)}];
    BOOST_TEST((!each.ways.empty() || !each.why.empty()), each.record << ": " << each.heading);
  }
  using Kind = exchange::Kind;
  for (const Kind kind : {Kind::types, Kind::units, Kind::venues, Kind::shows}) {
    for (const auto& sort : exchange::sortsOf(kind)) {
      for (const exchange::Heading& heading : sort->headings()) {
        const auto found = listed.find({kind, sort->word(), heading.name});
        BOOST_TEST((found != listed.end() && found->second == 1),
                   sort->word().toStdString() << ": " << heading.name.toStdString()
                                              << " must stand once in tests/proof/columns.cpp");
        if (found != listed.end()) {
          listed.erase(found);
        }
      }
    }
  }
  for (const auto& [what, number] : listed) {
    BOOST_TEST(false, "no longer in the dictionary: " << std::get<1>(what).toStdString() << ": "
                                                      << std::get<2>(what).toStdString());
  }
}

BOOST_AUTO_TEST_SUITE_END()
