// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/unit_test.hpp>

#include <cmath>

#include "options/headroom.h"
#include "print.h"
#include "room_fixture.h"

using namespace hangbook;
using namespace hangbook::options;
using hangbook::testing::Room;

BOOST_AUTO_TEST_SUITE(placement)

BOOST_AUTO_TEST_CASE(a_side_pair_faces_square_to_its_points_and_stands_midway) {
  Room room;
  room.venue().points[0].x = metres(2.0);
  room.venue().points[0].y = metres(4.0);
  room.venue().points[1].x = metres(2.6);
  room.venue().points[1].y = metres(3.2);
  room.refresh();
  const Placement placement = placementOf(room.option, room.settled.layout);
  BOOST_TEST(placement.origin.x == 2.3, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(placement.origin.y == 3.6, boost::test_tools::tolerance(1e-12));
  // right to left is (-0.6, 0.8); a quarter turn to the right of that is (0.8, 0.6)
  BOOST_TEST(placement.forward.x == 0.8, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(placement.forward.y == 0.6, boost::test_tools::tolerance(1e-12));
  const Plan left = placement.placeOf({0.0, 0.5, 0.0});
  BOOST_TEST(left.x == 2.0, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(left.y == 4.0, boost::test_tools::tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(the_other_ways_of_picking) {
  Room room;
  room.option.key.picks = catalogue::Picks::foreAftPair;
  room.venue().points[0].x = metres(1.0);
  room.venue().points[0].y = metres(0.0);
  room.venue().points[1].x = metres(0.0);
  room.venue().points[1].y = metres(0.0);
  hang::Layout layout = room.settled.layout;
  layout.picks = {{0.0, 0.0, 0.0}, {-0.8, 0.0, 0.1}}; // picks 0.8 m apart under points 1 m apart
  const Placement placement = placementOf(room.option, layout);
  BOOST_TEST(placement.forward.x == 1.0);
  BOOST_TEST(placement.origin.x == 0.9, boost::test_tools::tolerance(1e-12));
  room.option.key.picks = catalogue::Picks::single;
  room.option.points.resize(1);
  layout.picks = {{0.0, 0.0, 0.0}};
  BOOST_TEST(placementOf(room.option, layout).origin.x == 1.0);
  BOOST_TEST(placementOf(room.option, layout).forward.x == 1.0);
}

BOOST_AUTO_TEST_CASE(the_lowest_edge_counts_width_and_roll) {
  Room room;
  BOOST_TEST(lowestEdge(room.option, room.settled).z == room.settled.statics.bottom,
             boost::test_tools::tolerance(1e-9));
  room.panDeg = 8.0;
  room.tiltDeg = -4.0;
  room.refresh();
  const double roll = std::abs(room.settled.layout.left.z);
  BOOST_TEST_REQUIRE(roll > 0.005);
  BOOST_TEST(lowestEdge(room.option, room.settled).z == room.settled.statics.bottom - 0.5 * roll,
             boost::test_tools::tolerance(1e-9));
  room.full().width.reset();
  BOOST_TEST(!lowestEdge(room.option, room.settled).known());
}

BOOST_AUTO_TEST_CASE(unused_links_are_tied_up_unless_the_house_lets_them_hang) {
  Room room;
  catalogue::ChainType chain;
  chain.name = QStringLiteral("link chain");
  chain.pitch = metres(0.0225);
  chain.links = 60;
  const auto useChain = [&](int mark) {
    room.refresh();
    room.option.chain = &chain;
    room.option.held = 2;
    room.settled.setting.mark = mark;
    auto& element = room.settled.layout.elements[1];
    element.chainEye = element.pin + hang::Vec3{-0.7, 0.0, -0.2};
    return element.pin.z - 0.2;
  };
  double eye = useChain(20);
  BOOST_TEST(lowestEdge(room.option, room.settled).z == room.settled.statics.bottom,
             boost::test_tools::tolerance(1e-9));
  BOOST_TEST(room.finding(lowestEdgeRule).text.contains("Tie up the chain"));
  room.houseSays("chain-tail", 1);
  eye = useChain(20);
  BOOST_TEST(lowestEdge(room.option, room.settled).z == eye - 40 * 0.0225,
             boost::test_tools::tolerance(1e-12));
  useChain(59); // one link over: the cabinet itself is lower
  BOOST_TEST(lowestEdge(room.option, room.settled).z == room.settled.statics.bottom,
             boost::test_tools::tolerance(1e-9));
  chain.links.reset();
  BOOST_TEST(lowestEdge(room.option, room.settled).tailMissing);
  BOOST_TEST(lowestEdgeRule.evaluate(room.option, &room.settled, 8.0).verdict == Verdict::unproven);
}

BOOST_AUTO_TEST_SUITE_END()

BOOST_AUTO_TEST_SUITE(lowest_edge)

BOOST_AUTO_TEST_CASE(holds_fails_and_exactly_at_the_limit) {
  Room room;
  room.venue().leastTrim = metres(5.0);
  room.hang().leastTrim = metres(6.0);
  room.refresh();
  BOOST_TEST(room.use(lowestEdgeRule, 8.0).verdict == Verdict::holds);
  BOOST_TEST(room.use(lowestEdgeRule, 6.04).verdict == Verdict::tight); // within the margin
  BOOST_TEST(room.use(lowestEdgeRule, 6.0).verdict == Verdict::tight);
  BOOST_TEST(room.use(lowestEdgeRule, std::nextafter(6.0, 0.0)).verdict == Verdict::fails);
  BOOST_TEST(room.use(lowestEdgeRule, 5.9).limit == 6.0);
  BOOST_TEST(room.finding(lowestEdgeRule, 5.9).source.contains("sight lines"));
  const TrimRange range = lowestEdgeRule.trimRange(room.option, room.settled);
  BOOST_TEST(range.low == 6.0);
  BOOST_TEST(std::isinf(range.high));
}

/// What the hang's height may be off by comes off both ends, and is in the figure that is told.
BOOST_AUTO_TEST_CASE(a_height_in_doubt_counts_against_either_bound) {
  Room room;
  room.hang().leastTrim = metres(6.0);
  room.venue().mostTrim = metres(9.0);
  room.refresh();
  auto doubt = std::make_shared<SettledDoubt>();
  doubt->worst.bounded = true;
  doubt->worst.height = 0.25;
  room.settled.doubt = doubt;
  const TrimRange range = lowestEdgeRule.trimRange(room.option, room.settled);
  BOOST_TEST(range.low == 6.25);
  BOOST_TEST(range.high == 8.75);
  BOOST_TEST(room.use(lowestEdgeRule, 6.5).value == 6.25);
  BOOST_TEST(room.use(lowestEdgeRule, 6.5).limit == 6.0);
  BOOST_TEST(room.use(lowestEdgeRule, 8.5).value == 8.75);
  BOOST_TEST(room.use(lowestEdgeRule, 8.5).limit == 9.0);
  BOOST_TEST(room.use(lowestEdgeRule, 7.5).limit == 6.0); // as far from both: the lower one
  BOOST_TEST(room.use(lowestEdgeRule, 6.24).verdict == Verdict::fails);
  BOOST_TEST(room.use(lowestEdgeRule, 8.76).verdict == Verdict::fails);
  BOOST_TEST(room.use(lowestEdgeRule, 7.5).verdict == Verdict::holds);
  BOOST_TEST(room.finding(lowestEdgeRule, 6.5).text.toStdString() ==
             "The lowest edge hangs at 6.25 m above the datum; it must hang at 6.00 m or higher.");
  BOOST_TEST(room.finding(lowestEdgeRule, 8.5).text.toStdString() ==
             "The lowest edge hangs at 8.75 m above the datum; it may hang at 9.00 m at most.");
}

BOOST_AUTO_TEST_CASE(without_a_stated_bound_the_house_has_one) {
  Room room;
  const Finding finding = room.finding(lowestEdgeRule, 2.4);
  BOOST_TEST(finding.verdict == Verdict::fails);
  BOOST_TEST(finding.limit.value() == 2.5);
  BOOST_TEST(finding.source.contains("common practice"));
}

BOOST_AUTO_TEST_CASE(the_floor_beneath_counts) {
  Room room;
  venue::Section terrace;
  terrace.name = QStringLiteral("terrace");
  terrace.profile = {{metres(-2), metres(4)}, {metres(2), metres(4)}};
  terrace.earHeight = metres(1.2);
  room.venue().sections.push_back(terrace);
  room.refresh();
  BOOST_TEST(room.use(lowestEdgeRule, 6.4).verdict == Verdict::fails);
  BOOST_TEST(room.use(lowestEdgeRule, 6.5).verdict == Verdict::tight);
  BOOST_TEST(room.finding(lowestEdgeRule, 6.4).text.contains("floor beneath"));
  room.venue().sections.back().yFrom = metres(5); // beside the hang
  room.refresh();
  BOOST_TEST(room.use(lowestEdgeRule, 6.4).verdict == Verdict::holds);
}

BOOST_AUTO_TEST_CASE(not_above_the_venues_upper_bound) {
  Room room;
  room.venue().mostTrim = metres(9.0);
  room.refresh();
  BOOST_TEST(room.use(lowestEdgeRule, 8.9).verdict == Verdict::holds);
  BOOST_TEST(room.use(lowestEdgeRule, 9.0).verdict == Verdict::tight);
  BOOST_TEST(room.use(lowestEdgeRule, 9.1).verdict == Verdict::fails);
  BOOST_TEST(lowestEdgeRule.trimRange(room.option, room.settled).high == 9.0);
}

BOOST_AUTO_TEST_CASE(what_is_not_known_is_unproven) {
  Room room;
  BOOST_TEST(room.use(lowestEdgeRule, notKnown).verdict == Verdict::unproven);
  room.settled.layout.elements[1].outline.clear();
  BOOST_TEST(room.use(lowestEdgeRule, 8.0).verdict == Verdict::unproven);
  BOOST_TEST(room.use(lowestEdgeRule, 2.0).verdict == Verdict::fails);
}

BOOST_AUTO_TEST_SUITE_END()

BOOST_AUTO_TEST_SUITE(headroom)

BOOST_AUTO_TEST_CASE(hook_to_point_by_hand) {
  Room room;
  room.venue().lowSteel = metres(14.0); // points on the steel: they decide
  room.refresh();
  // picks level at the origin, so the hook is at trim − bottom; above it 0.7 m hoist and 0.2 m rigging
  const double most = 14.0 - 0.9 + lowestEdge(room.option, room.settled).z;
  const TrimRange range = headroomRule.trimRange(room.option, room.settled);
  BOOST_TEST(range.high == most, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(room.use(headroomRule, most - 0.2).verdict == Verdict::holds);
  BOOST_TEST(room.use(headroomRule, most - 0.05).verdict == Verdict::tight);
  BOOST_TEST(room.use(headroomRule, range.high).verdict == Verdict::tight);
  BOOST_TEST(room.use(headroomRule, std::nextafter(range.high, 100.0)).verdict == Verdict::fails);
  const Finding finding = room.finding(headroomRule, most - 0.2);
  BOOST_TEST(finding.value.value() == 1.1, boost::test_tools::tolerance(1e-9));
  BOOST_TEST(finding.limit.value() == 0.9, boost::test_tools::tolerance(1e-9));
  BOOST_TEST(finding.text.contains("0.20 m need 0.90 m"), finding.text.toStdString());
  BOOST_TEST(!finding.text.contains("since lengths may be off"), finding.text.toStdString());
}

BOOST_AUTO_TEST_CASE(a_lower_point_decides) {
  Room room;
  room.venue().points[1].z = metres(12.0);
  room.refresh();
  BOOST_TEST(headroomRule.trimRange(room.option, room.settled).high ==
                 12.0 - 0.9 + lowestEdge(room.option, room.settled).z,
             boost::test_tools::tolerance(1e-12));
  BOOST_TEST(room.finding(headroomRule, 9.0).text.contains("L2"));
}

BOOST_AUTO_TEST_CASE(an_obstruction_counts_only_where_it_is) {
  Room room;
  const double free = headroomRule.trimRange(room.option, room.settled).high;
  venue::Obstruction screen;
  screen.name = QStringLiteral("screen");
  screen.xFrom = metres(5);
  screen.xTo = metres(6);
  screen.yFrom = metres(-4);
  screen.yTo = metres(4);
  screen.underside = metres(9);
  room.venue().obstructions = {screen};
  room.refresh();
  BOOST_TEST(headroomRule.trimRange(room.option, room.settled).high == free);

  // Narrower than the bar, between its corners: still over it.
  room.venue().obstructions[0].xFrom = metres(-0.1);
  room.venue().obstructions[0].xTo = metres(0.1);
  room.venue().obstructions[0].yFrom = metres(-0.1);
  room.venue().obstructions[0].yTo = metres(0.1);
  room.refresh();
  const auto corners = barCorners(room.option, room.settled.layout);
  double highest = -10.0;
  for (const hang::Vec3& each : corners) {
    highest = std::max(highest, each.z);
  }
  BOOST_TEST(headroomRule.trimRange(room.option, room.settled).high ==
                 9.0 - 0.1 - (highest - lowestEdge(room.option, room.settled).z),
             boost::test_tools::tolerance(1e-12));
  BOOST_TEST(room.finding(headroomRule, 8.0).text.contains("screen"));

  // Over one hoist: the hoist run in must stay below, with the clearance.
  room.venue().obstructions[0].yFrom = metres(0.45);
  room.venue().obstructions[0].yTo = metres(0.55);
  room.refresh();
  BOOST_TEST(headroomRule.trimRange(room.option, room.settled).high ==
                 9.0 - 0.8 + lowestEdge(room.option, room.settled).z,
             boost::test_tools::tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(low_steel_below_the_points_counts_for_hoists) {
  Room room; // points at 14, low steel at 13.5
  BOOST_TEST(headroomRule.trimRange(room.option, room.settled).high ==
                 13.5 - 0.8 + lowestEdge(room.option, room.settled).z,
             boost::test_tools::tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(what_is_not_known_is_unproven) {
  const auto dropped = [](const auto& change, Verdict expected, double trim = 8.0) {
    Room room;
    change(room);
    room.refresh();
    const Finding finding = room.finding(headroomRule, trim);
    BOOST_TEST(finding.verdict == expected);
    BOOST_TEST(finding.text.contains("Not known"), finding.text.toStdString());
  };
  dropped([](Room& room) { room.venue().lowSteel.reset(); }, Verdict::unproven);
  dropped([](Room& room) { room.hoist().closedLength.reset(); }, Verdict::unproven);
  dropped([](Room& room) { room.snapshot.catalogue.hardware[0].length.reset(); }, Verdict::unproven);
  dropped([](Room& room) { room.bar().outline.clear(); }, Verdict::unproven);
  dropped([](Room& room) { room.hang().rigging.append(QStringLiteral("no such sling")); }, Verdict::unproven);
  Room room;
  BOOST_TEST(room.use(headroomRule, 8.0).verdict == Verdict::holds);
  BOOST_TEST(room.use(headroomRule, notKnown).verdict == Verdict::unproven);
}

BOOST_AUTO_TEST_SUITE_END()

BOOST_AUTO_TEST_SUITE(lift_height)

BOOST_AUTO_TEST_CASE(by_hand) {
  Room room;                           // 14 m down to 0.5 m: 13.5 m, the hoist has 18 m
  room.houseSays("length-doubt", 0.0); // its chain to the point
  room.refresh();
  BOOST_TEST(room.use(liftHeightRule).verdict == Verdict::holds);
  BOOST_TEST(room.use(liftHeightRule).value == 13.5);
  BOOST_TEST(!room.finding(liftHeightRule).text.contains(QStringLiteral("may be missing")));
  const auto with = [&](double chain) {
    room.hoist().chainLength = metres(chain);
    room.refresh();
    return room.use(liftHeightRule).verdict;
  };
  BOOST_TEST(with(14.1) == Verdict::holds);
  BOOST_TEST(with(13.9) == Verdict::tight);
  BOOST_TEST(with(13.5) == Verdict::tight);
  BOOST_TEST(with(13.4) == Verdict::fails);
  room.hoist().chainLength.reset();
  room.refresh();
  BOOST_TEST(room.use(liftHeightRule).verdict == Verdict::unproven);
  BOOST_TEST(room.finding(liftHeightRule).text.contains("not known"));
}

/// 14 m down to half a metre; half a metre of the chain may be missing.
BOOST_AUTO_TEST_CASE(what_the_chain_must_reach_in_words) {
  Room room;
  auto limits = std::make_shared<RoomLimits>(*room.option.room);
  limits->chainLength = 18.0;
  limits->chainShorter = 0.0;
  room.option.room = limits;
  const std::string whole =
      "From point L1 at 14.00 m down to the bar on its case at 0.50 m the chain must reach 13.50 m; "
      "the hoist has 18.00 m";
  BOOST_TEST(room.finding(liftHeightRule).text.toStdString() == whole + ".");
  BOOST_TEST(room.use(liftHeightRule).limit == 18.0);
  limits->chainShorter = 0.5;
  BOOST_TEST(room.finding(liftHeightRule).text.toStdString() == whole + ", 0.50 m of which may be missing.");
  BOOST_TEST(room.use(liftHeightRule).limit == 17.5);
}

/// The higher point asks for more chain, whichever it is; of two alike the first is told.
BOOST_AUTO_TEST_CASE(the_higher_point_decides) {
  BOOST_TEST(Room().use(liftHeightRule).which == 0);
  for (const std::size_t higher : {0U, 1U}) {
    Room room;
    room.houseSays("length-doubt", 0.0);
    room.venue().points[higher].z = metres(15.0);
    room.refresh();
    BOOST_TEST(room.use(liftHeightRule).value == 14.5);
    BOOST_TEST(room.use(liftHeightRule).which == static_cast<int>(higher));
    BOOST_TEST(
        room.finding(liftHeightRule).text.startsWith(QStringLiteral("From point L%1 at").arg(higher + 1)));
  }
}

BOOST_AUTO_TEST_SUITE_END()
