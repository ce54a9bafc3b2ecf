// SPDX-License-Identifier: GPL-3.0-or-later
#include <set>

#include <boost/test/unit_test.hpp>

#include "options/option.h"
#include "options/ways.h"

using namespace hangbook;
using options::OptionKey;

namespace {

OptionKey someKey() {
  OptionKey key;
  key.hang = "left";
  key.stack = {"bass", "bass", "upper"};
  key.table = "table";
  key.bar = "bar";
  key.hoist = "hoist";
  key.points = {"1", "2"};
  return key;
}

venue::Point pointAt(const QString& name, double x, double y) {
  venue::Point point;
  point.name = name;
  point.x = metres(x);
  point.y = metres(y);
  return point;
}

} // namespace

BOOST_AUTO_TEST_SUITE(key)

BOOST_AUTO_TEST_CASE(idIsSixteenHexDigitsOfTheNamesAlone) {
  const QString id = options::idOf(someKey());
  BOOST_TEST(id.size() == 16);
  BOOST_TEST((id == options::idOf(someKey())));
  OptionKey other = someKey();
  other.table = "another table that permits the same stack";
  BOOST_TEST((id == options::idOf(other)));
}

BOOST_AUTO_TEST_CASE(eachNameCounts) {
  std::set<QString> ids{options::idOf(someKey())};
  const auto addWith = [&ids](auto change) {
    OptionKey key = someKey();
    change(key);
    ids.insert(options::idOf(key));
  };
  addWith([](OptionKey& key) { key.hang = "right"; });
  addWith([](OptionKey& key) { key.stack = {"bass", "bass upper"}; });
  addWith([](OptionKey& key) { key.stack = {"bass", "upper", "bass"}; });
  addWith([](OptionKey& key) { key.bar = "other"; });
  addWith([](OptionKey& key) { key.picks = catalogue::Picks::single; });
  addWith([](OptionKey& key) { key.hoist = "other"; });
  addWith([](OptionKey& key) { key.points = {"2", "1"}; });
  BOOST_TEST(ids.size() == 8);
}

BOOST_AUTO_TEST_CASE(waysNameTheLeftAndTheFrontPointFirst) {
  venue::Venue venue;
  venue.points = {pointAt("a", 0, 1), pointAt("b", 1, 2), pointAt("c", 2, 0)};
  calendar::Hang hang;
  hang.points = {"c", "a", "nowhere", "b", "a"};
  options::Snapshot snapshot;
  snapshot.venue = venue;
  const auto candidates = options::candidatePoints(snapshot, options::House({}, {}, {}), hang);
  BOOST_TEST(candidates.points.size() == 3);
  BOOST_TEST((candidates.unknown == QStringList{"nowhere"}));

  const auto side = options::waysToReach(candidates.points, catalogue::Picks::sidePair);
  BOOST_TEST(side.size() == 3);
  for (const auto& way : side) {
    BOOST_TEST(inMetres(way[0]->y) > inMetres(way[1]->y));
  }
  const auto foreAft = options::waysToReach(candidates.points, catalogue::Picks::foreAftPair);
  BOOST_TEST(foreAft.size() == 3);
  for (const auto& way : foreAft) {
    BOOST_TEST(inMetres(way[0]->x) > inMetres(way[1]->x));
  }
  const auto single = options::waysToReach(candidates.points, catalogue::Picks::single);
  BOOST_TEST(single.size() == 3);
  BOOST_TEST((single[0].front()->name == "c")); // the planner's order
}

BOOST_AUTO_TEST_SUITE_END()
