// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/unit_test.hpp>

#include <cmath>

#include "options/headroom.h"
#include "options/scene.h"
#include "print.h"
#include "quantity/error.h"
#include "room_fixture.h"

using namespace hangbook;
using namespace hangbook::options;
using hangbook::testing::Room;

namespace {

Option optionOf(const Room& room, double trim) {
  Option option;
  option.key = room.option.key;
  option.setting = room.settled.setting;
  option.setting->trimM = trim;
  option.hangInput = room.input;
  return option;
}

double lowestOf(const Scene& scene) {
  double lowest = 1e9;
  for (const SceneCabinet& cabinet : scene.cabinets) {
    for (const ScenePlace& each : cabinet.outline) {
      lowest = std::min(lowest, each.height);
    }
  }
  return lowest;
}

} // namespace

BOOST_AUTO_TEST_SUITE(scene)

BOOST_AUTO_TEST_CASE(stands_at_its_trim_in_the_room) {
  Room room;
  const Scene scene = sceneOf(room.snapshot, optionOf(room, 8.0));
  BOOST_TEST(scene.cabinets.size() == 2U);
  BOOST_TEST((scene.cabinets[0].name == room.bass().name));
  BOOST_TEST(lowestOf(scene) == 8.0, boost::test_tools::tolerance(1e-9));
  BOOST_TEST(scene.lowSteel.value() == 13.5);
  BOOST_REQUIRE(scene.hoists.size() == 2U);
  BOOST_TEST(scene.hoists[0].pointAt.height == 14.0);
  BOOST_TEST(std::abs(scene.hoists[0].hook.along) < 1e-9); // straight below its point
  BOOST_TEST(scene.barOutline.size() == 4U);
  BOOST_TEST(scene.sections[0].floor.front().along == 8.0, boost::test_tools::tolerance(1e-9));
  BOOST_TEST(scene.sections[0].ears.back().height == 4.2, boost::test_tools::tolerance(1e-9));
  BOOST_TEST(scene.from.height == 0.0);
  BOOST_TEST(scene.to.height == 14.0);
  // The hang has settled: its centre of gravity stands on the plumb line from the picks.
  BOOST_TEST(std::abs(scene.centreOfGravity->along - scene.pickLine.front().along) < 1e-9);
}

BOOST_AUTO_TEST_CASE(dimensions_are_those_of_the_rules) {
  Room room;
  const Scene scene = sceneOf(room.snapshot, optionOf(room, 8.0));
  BOOST_REQUIRE(scene.dimensions.size() == 2U);
  BOOST_TEST(scene.dimensions[0].metres == 8.0);
  BOOST_TEST(scene.dimensions[1].metres == room.use(headroomRule, 8.0).value,
             boost::test_tools::tolerance(1e-9));
}

BOOST_AUTO_TEST_CASE(what_is_missed_is_what_the_rule_misses) {
  Room room;
  const TrimRange range = coverRule.trimRange(room.option, room.settled);
  const double middle = 0.5 * (range.low + range.high);
  BOOST_TEST(sceneOf(room.snapshot, optionOf(room, middle)).missed.empty());
  const double high = range.high + 1.0;
  const Scene scene = sceneOf(room.snapshot, optionOf(room, high));
  const Covered covered = coveredAt(room.option.room->audience,
                                    viewOf(room.option, room.option.room->audience, room.settled), high);
  std::size_t missed = 0;
  for (const SceneMissed& each : scene.missed) {
    missed += each.ears.size();
  }
  BOOST_TEST(missed == covered.positions - covered.covered);
  BOOST_TEST(missed > 0U);
  BOOST_REQUIRE(scene.sights.size() == 2U);
  BOOST_TEST(scene.sights[1].lastRow);
  BOOST_TEST(scene.sights[1].to.along == 40.0, boost::test_tools::tolerance(1e-6));
}

BOOST_AUTO_TEST_CASE(edges_leave_at_the_angles_of_the_cabinet) {
  Room room;
  room.tiltDeg = -3.0;
  room.refresh();
  const Scene scene = sceneOf(room.snapshot, optionOf(room, 8.0));
  BOOST_REQUIRE(scene.edges.size() == 2U);
  for (const SceneEdge& edge : scene.edges) {
    const double angle = std::atan2(edge.to.height - edge.from.height, edge.to.along - edge.from.along) *
                         180.0 / 3.14159265358979;
    BOOST_TEST(angle == scene.cabinets[1].aimDeg + (edge.upper ? 5.0 : -30.0),
               boost::test_tools::tolerance(1e-9));
    BOOST_TEST(edge.to.height >= -1e-9);
  }
}

BOOST_AUTO_TEST_CASE(an_obstruction_says_whether_it_is_over_the_hang) {
  Room room;
  venue::Obstruction screen;
  screen.name = QStringLiteral("screen");
  screen.xFrom = metres(5);
  screen.xTo = metres(6);
  screen.yFrom = metres(-4);
  screen.yTo = metres(4);
  screen.underside = metres(9);
  room.venue().obstructions = {screen};
  room.refresh();
  BOOST_TEST(!sceneOf(room.snapshot, optionOf(room, 5.0)).obstructions[0].overHang);
  room.venue().obstructions[0].xFrom = metres(-1);
  BOOST_TEST(sceneOf(room.snapshot, optionOf(room, 5.0)).obstructions[0].overHang);
  BOOST_TEST(sceneOf(room.snapshot, optionOf(room, 5.0)).obstructions[0].from == -1.0);
}

BOOST_AUTO_TEST_CASE(without_a_setting_the_room_alone) {
  Room room;
  Option option = optionOf(room, 8.0);
  option.setting.reset();
  option.hangInput.reset();
  const Scene scene = sceneOf(room.snapshot, option);
  BOOST_TEST(scene.cabinets.empty());
  BOOST_TEST(scene.missed.empty());
  BOOST_TEST(scene.sections.size() == 1U);
  BOOST_TEST(scene.hoists.size() == 2U);
  option.key.hang = QStringLiteral("nowhere");
  BOOST_CHECK_THROW(sceneOf(room.snapshot, option), Error);
}

BOOST_AUTO_TEST_CASE(a_curved_section_is_drawn_where_it_is_nearest_to_the_line) {
  Room room;
  venue::Section balcony;
  balcony.name = QStringLiteral("balcony");
  balcony.profile = {{metres(0), metres(4)}, {metres(6), metres(7)}};
  balcony.earHeight = metres(1.2);
  balcony.frontX = metres(25);
  balcony.frontY = metres(0);
  balcony.bearing = degrees(0);
  balcony.width = metres(30);
  balcony.radius = metres(20);
  room.venue().sections = {balcony};
  room.full().coverAcross = degrees(50); // its ends are missed, its middle is not
  room.full().coverHighest = degrees(25);
  room.refresh();
  const Scene scene = sceneOf(room.snapshot, optionOf(room, 8.0));
  BOOST_REQUIRE(scene.sections.size() == 1U);
  BOOST_TEST(scene.sections[0].floor.front().along == 25.0, boost::test_tools::tolerance(1e-9));
  BOOST_TEST(scene.sections[0].floor.back().along == 31.0, boost::test_tools::tolerance(1e-9));
  BOOST_TEST(scene.sections[0].ears.back().height == 8.2, boost::test_tools::tolerance(1e-9));
  BOOST_REQUIRE(!scene.missed.empty());
  BOOST_TEST(scene.missed[0].partly);
  // The lower edge goes on under the balcony, down to the stage's level.
  BOOST_TEST(!scene.edges[1].upper);
  BOOST_TEST(std::abs(scene.edges[1].to.height) < 1e-9);
  room.venue().sections[0].radius.reset(); // where it lies is not known: not drawn
  room.refresh();
  BOOST_TEST(sceneOf(room.snapshot, optionOf(room, 8.0)).sections.empty());
}

/// A row that runs along beside the hang, nearer to its line the farther back: drawn is the seat that is the
/// first ahead, though by less than a metre, and none of those behind.
BOOST_AUTO_TEST_CASE(a_row_beside_the_hang_is_drawn_where_it_is_just_ahead) {
  Room room;
  venue::Section beside;
  beside.name = QStringLiteral("beside");
  beside.profile = {{metres(0), metres(1)}, {metres(1), metres(1)}};
  beside.earHeight = metres(1.2);
  beside.frontX = metres(0.5);
  beside.frontY = metres(4);
  beside.bearing = degrees(100);
  beside.width = metres(12);
  beside.radius = metres(0);
  room.venue().sections = {beside};
  room.full().coverAcross = degrees(50); // of a row beside it nothing
  room.refresh();
  const Scene scene = sceneOf(room.snapshot, optionOf(room, 8.0));
  BOOST_REQUIRE(!scene.missed.empty());
  // Its middle is half a metre ahead and 4 m to the side; every metre along the row there is a seat.
  BOOST_TEST(scene.missed[0].ears[0].along == scene.pickLine[0].along + std::hypot(0.5, 4.0),
             boost::test_tools::tolerance(1e-9));
}

BOOST_AUTO_TEST_SUITE_END()
