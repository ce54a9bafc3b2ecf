// SPDX-License-Identifier: GPL-3.0-or-later
// Cover where two ears, seats or edges come to the same: which of them counts.
#include <boost/test/unit_test.hpp>

#include <cmath>
#include <limits>

#include "options/cover.h"
#include "options/cover_fold.h"
#include "options/level.h"
#include "options/placement.h"
#include "options/room_limits.h"
#include "print.h"
#include "room_fixture.h"

using namespace hangbook;
using namespace hangbook::options;
using hangbook::testing::Room;

namespace {

constexpr double infinite = std::numeric_limits<double>::infinity();

/// The same room with an audience of these ears alone, seats in space or rows along the hang's line.
Case withEars(const Room& room, const std::vector<AudiencePosition>& ears, bool seats,
              double acrossDeg = 0.0) {
  auto limits = std::make_shared<RoomLimits>(*room.option.room);
  Audience& audience = limits->audience;
  audience.sections = {QStringLiteral("floor")};
  audience.blocks = {{0, ears.size(), 1, seats}};
  audience.positions = ears;
  audience.weight = static_cast<double>(ears.size());
  for (CoverEdges& edges : audience.cabinets) {
    edges.acrossDeg = acrossDeg;
  }
  Case option = room.option;
  option.room = limits;
  return option;
}

AudiencePosition ear(double x, double yFrom, double yTo, double height) {
  AudiencePosition at;
  at.x = x;
  at.yFrom = yFrom;
  at.yTo = yTo;
  at.ear = height;
  at.weight = 1.0;
  return at;
}

double aimOver(const Room& room, const std::vector<AudiencePosition>& ears, bool seats) {
  return aimAboveWantedDeg(withEars(room, ears, seats), room.settled, 8.0);
}

} // namespace

BOOST_AUTO_TEST_SUITE(cover_limits)

/// An edge straight up or down has no slope that a figure could tell.
BOOST_AUTO_TEST_CASE(an_upright_edge_is_never_crossed) {
  Room room;
  room.full().coverLowest = degrees(-90);
  room.full().coverHighest = degrees(90);
  room.refresh();
  const CoverView::Source source =
      viewOf(room.option, room.option.room->audience, room.settled).sources.at(0);
  BOOST_TEST(source.slopeLow == -infinite);
  BOOST_TEST(source.slopeHigh == infinite);
  room.full().coverLowest = degrees(-45);
  room.full().coverHighest = degrees(45);
  room.refresh();
  const CoverView::Source half = viewOf(room.option, room.option.room->audience, room.settled).sources.at(0);
  BOOST_TEST(half.slopeLow == -1.0, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(half.slopeHigh == 1.0, boost::test_tools::tolerance(1e-12));
}

/// Of ears as far away the first one of the sheet is the one that the upper edge is laid on.
BOOST_AUTO_TEST_CASE(of_the_farthest_ears_the_first_counts) {
  const Room room;
  const AudiencePosition low = ear(20.0, -5.0, 5.0, 1.0);
  const AudiencePosition high = ear(20.0, -5.0, 5.0, 5.0);
  const AudiencePosition nearer = ear(12.0, -5.0, 5.0, 3.0);
  BOOST_TEST(aimOver(room, {nearer, low, high}, false) == aimOver(room, {low}, false));
  BOOST_TEST(aimOver(room, {high, low, nearer}, false) == aimOver(room, {high}, false));
  BOOST_TEST(aimOver(room, {low}, false) != aimOver(room, {high}, false));
}

/// A cabinet that covers nothing across but its own line: the seat on that line is within, one beside is not.
BOOST_AUTO_TEST_CASE(a_seat_on_the_line_of_a_narrow_cabinet_is_within_it) {
  const Room room;
  const AudiencePosition ahead = ear(20.0, 0.0, 0.0, 1.0);
  const AudiencePosition left = ear(5.0, 40.0, 40.0, 6.0);
  const AudiencePosition right = ear(5.0, -40.0, -40.0, 6.0);
  BOOST_TEST(aimOver(room, {left, ahead, right}, true) == aimOver(room, {ahead}, true));
  BOOST_TEST(aimOver(room, {left, ahead}, true) != aimOver(room, {left}, true));
  const AudiencePosition farther = ear(5.0, 60.0, 60.0, 3.0); // none within: then the farthest of all
  BOOST_TEST(aimOver(room, {left, farther, right}, true) == aimOver(room, {farther}, true));
  BOOST_TEST(aimOver(room, {farther}, true) != aimOver(room, {left}, true));
  const auto wide = [&](const std::vector<AudiencePosition>& ears) { // 45° to either side
    return aimAboveWantedDeg(withEars(room, ears, true, 90.0), room.settled, 8.0);
  };
  BOOST_TEST(wide({left, ahead, right}) == wide({ahead}));
  const AudiencePosition within = ear(30.0, 20.0, 20.0, 6.0); // farther, and within
  BOOST_TEST(wide({left, ahead, within}) == wide({within}));
}

/// Of a hang that is panned by 20°: an ear straight ahead of it is within its 60°, one that lies as far to
/// the other side of the room's axis is not, however far back.
BOOST_AUTO_TEST_CASE(within_is_counted_from_the_way_it_faces) {
  for (const double pan : {20.0, -20.0}) {
    Room room;
    room.panDeg = pan;
    room.refresh();
    const CoverPlace at = coverPlaceOf(room.option, room.settled);
    BOOST_TEST_REQUIRE(std::abs(at.bearing.y) > 0.3);
    const auto place = [&at](double away, double side, double height) {
      const double y = at.origin.y + away * side * at.bearing.y;
      return ear(at.origin.x + away * at.bearing.x, y, y, height);
    };
    const AudiencePosition ahead = place(20.0, 1.0, 1.0);
    const AudiencePosition beside = place(60.0, -1.0, 6.0);
    const auto aim = [&](const std::vector<AudiencePosition>& ears) {
      return aimAboveWantedDeg(withEars(room, ears, true, 60.0), room.settled, 8.0);
    };
    BOOST_TEST(aim({ahead, beside}) == aim({ahead}));
    BOOST_TEST(aim({beside}) != aim({ahead}));
  }
}

/// A cabinet that may aim 2° lower or 1° higher than stated is narrower by the greater of the two all round,
/// and its edges are those of its two ends.
BOOST_AUTO_TEST_CASE(an_aim_in_doubt_takes_the_greater_of_both_ways_off_each_side) {
  Room room;
  room.panDeg = 15.0;
  room.tiltDeg = -2.0;
  room.refresh();
  const Case option = withEars(room, {ear(20.0, 0.0, 0.0, 1.0)}, true, 90.0);
  const Audience& audience = option.room->audience;
  const CoverEdges& edges = audience.cabinets.front();
  const hang::PlacedElement& element = room.settled.layout.elements[edges.element];
  for (const auto& [lower, higher] : {std::pair(2.0, 1.0), std::pair(1.0, 2.0)}) {
    auto doubt = std::make_shared<SettledDoubt>();
    doubt->worst.bounded = true;
    for (const hang::PlacedElement& each : room.settled.layout.elements) {
      doubt->worst.aimDeg.push_back(hang::Span(each.aimDeg - lower, each.aimDeg + higher));
    }
    room.settled.doubt = doubt;
    const CoverView::Source source = sourcesOf(option, audience, room.settled, 0.25).front();
    const auto close = boost::test_tools::tolerance(1e-9);
    BOOST_TEST(source.slopeLow == std::tan(hang::toRadians(element.aimDeg + higher + edges.lowestDeg + 0.25)),
               close);
    BOOST_TEST(source.slopeHigh ==
                   std::tan(hang::toRadians(element.aimDeg - lower + edges.highestDeg - 0.25)),
               close);
    const double half = hang::toRadians(45.0 - 2.25); // 90° across
    const double low = hang::toRadians(edges.lowestDeg + 2.25);
    const double high = hang::toRadians(edges.highestDeg - 2.25);
    const Placement placement = placementOf(option, room.settled.layout);
    const auto inVenue = [&placement](const hang::Vec3& way) {
      const Plan plan = placement.directionOf(way);
      return hang::Vec3{plan.x, plan.y, way.z};
    };
    const hang::Vec3 f = inVenue(element.forward);
    const hang::Vec3 l = inVenue(room.settled.layout.left);
    const hang::Vec3 up{f.y * l.z - f.z * l.y, f.z * l.x - f.x * l.z, f.x * l.y - f.y * l.x};
    BOOST_TEST(up.z > 0.9);
    const auto along = [&source](std::size_t edge, const hang::Vec3& axis) {
      const hang::Vec3& inside = source.inside[edge];
      return inside.x * axis.x + inside.y * axis.y + inside.z * axis.z;
    };
    BOOST_TEST(along(0, f) == -std::sin(low), close);
    BOOST_TEST(along(0, up) == std::cos(low), close);
    BOOST_TEST(along(1, f) == std::sin(high), close);
    BOOST_TEST(along(1, up) == -std::cos(high), close);
    for (const std::size_t side : {2U, 3U}) {
      BOOST_TEST(along(side, f) == std::sin(half), close);
      BOOST_TEST(along(side, l) == (side == 2U ? 1.0 : -1.0) * std::cos(half), close);
    }
  }
}

/// Ears 20 and 40 m away on the way down, 6 and 12 dB over 10 m, and what the air takes of 20 m.
BOOST_AUTO_TEST_CASE(what_is_lost_from_the_nearest_ear_to_the_farthest) {
  Room room;
  room.snapshot.show.temperature = 20.0;
  room.snapshot.show.humidity = 50.0;
  room.refresh();
  Case option = withEars(room, {ear(0.0, 0.0, 0.0, 0.0)}, true);
  const SourcePlace source = sourcePlace(option, option.room->audience.cabinets.front(), room.settled);
  const CoverPlace at = coverPlaceOf(option, room.settled);
  BOOST_TEST_REQUIRE(at.bearing.x == 1.0, boost::test_tools::tolerance(1e-9));
  // 3-4-5: 16 m ahead and 12 m below the source, 32 m ahead and 24 m below.
  const auto place = [&](double ahead, double below) {
    return ear(at.origin.x + source.ahead + ahead, at.origin.y, at.origin.y, 8.0 + source.height - below);
  };
  auto limits = std::make_shared<RoomLimits>(
      *withEars(room, {place(32.0, 24.0), place(16.0, 12.0), place(-16.0, 1.0)}, true).room);
  limits->airLoss = 0.03;
  option.room = limits;
  const auto close = boost::test_tools::tolerance(1e-9);
  const Use use = levelDropRule.evaluate(option, &room.settled, 8.0);
  BOOST_TEST(use.applies);
  BOOST_TEST(use.value == 20.0 * std::log10(2.0) + 0.03 * 20.0, close);
  BOOST_TEST(use.verdict == Verdict::holds);
  const Finding finding = levelDropRule.explain(option, &room.settled, 8.0, use);
  const double at1k = 20.0 * std::log10(2.0) + 20.0 * *airLoss(room.snapshot.show, 4);
  BOOST_TEST(finding.text.toStdString() ==
             "From the nearest ear at 20.00 m to the farthest at 40.00 m the level drops by " +
                 QString::number(at1k, 'f', 1).toStdString() +
                 " dB at 1 kHz and 6.6 dB at 4 kHz (20 °C, 50 % humidity); advice, with no limit.");
  const auto applies = [&] { return levelDropRule.evaluate(option, &room.settled, 8.0).applies; };
  BOOST_TEST(applies());
  BOOST_TEST(!levelDropRule.evaluate(option, &room.settled, notKnown).applies);
  room.snapshot.show.humidity.reset();
  BOOST_TEST(!applies());
  room.snapshot.show.humidity = 50.0;
  room.snapshot.show.temperature.reset();
  BOOST_TEST(!applies());
  room.snapshot.show.temperature = 20.0;
  limits->audience.positions = {place(-16.0, 1.0)}; // behind it alone
  limits->audience.blocks[0].count = 1;
  BOOST_TEST(!applies());
  limits->audience.cabinets.clear();
  BOOST_TEST(!applies());
}

BOOST_AUTO_TEST_CASE(an_ear_straight_below_the_source_has_no_aim) {
  const Room room;
  const double ahead = viewOf(room.option, room.option.room->audience, room.settled).sources.at(0).ahead;
  BOOST_REQUIRE(ahead > 0.0);
  BOOST_TEST(std::isnan(aimOver(room, {ear(ahead, -5.0, 5.0, 1.0)}, false)));
  BOOST_TEST(!std::isnan(aimOver(room, {ear(ahead + 1e-6, -5.0, 5.0, 1.0)}, false)));
}

BOOST_AUTO_TEST_CASE(what_lies_straight_beside_is_not_in_front) {
  BOOST_TEST(distanceInPlan({0.0, 0.0}, {1.0, 0.0}, 0.0, 3.0, 5.0) == -3.0);
  BOOST_TEST(distanceInPlan({0.0, 0.0}, {1.0, 0.0}, 1e-9, 3.0, 5.0) == 3.0,
             boost::test_tools::tolerance(1e-9));
}

/// An ear over the lower source, straight above it: nothing lies between their edges there.
BOOST_AUTO_TEST_CASE(straight_above_the_lower_source_is_no_hole) {
  CoverView::Source high;
  high.slopeLow = -0.5;
  high.slopeHigh = 1.0;
  high.throwM = 10.0;
  CoverView::Source low = high;
  low.slopeHigh = -1.0;
  low.height = -20.0;
  Audience audience;
  audience.sections = {QStringLiteral("floor")};
  audience.blocks = {{0, 1, 1, false}};
  audience.positions = {ear(12.0, -1.0, 1.0, 0.0)};
  audience.weight = 1.0;
  const auto inHole = [&](double ahead) {
    low.ahead = ahead;
    return !holesAt(audience, {{12.0}, {high, low}}, 8.0).empty();
  };
  BOOST_TEST(!inHole(12.0));
  BOOST_TEST(inHole(11.0)); // a metre in front of it, 12 m above
}

/// Level drop: 20 lg of the farthest over the nearest ear in front of the cabinet; what stands right below
/// it, or behind, is none of them, and however near an ear is it counts.
BOOST_AUTO_TEST_CASE(ears_in_front_of_the_source_alone_are_near_or_far) {
  Room room;
  room.snapshot.show.temperature = 20.0;
  room.refresh();
  const CoverView::Source source =
      viewOf(room.option, room.option.room->audience, room.settled).sources.at(0);
  const double height = 8.0 + source.height;
  const auto dropOver = [&](const std::vector<AudiencePosition>& ears) {
    const Case option = withEars(room, ears, false);
    return levelDropRule.evaluate(option, &room.settled, 8.0).value;
  };
  const double ahead = source.ahead;
  const AudiencePosition near = ear(ahead + 0.25, -5.0, 5.0, height);
  const AudiencePosition far = ear(ahead + 0.5, -5.0, 5.0, height);
  const double twice = dropOver({near, far}); // 6.02 dB and a quarter of a metre of air
  BOOST_TEST(twice == 20.0 * std::log10(2.0), boost::test_tools::tolerance(1e-2));
  const AudiencePosition below = ear(ahead, -5.0, 5.0, height - 7.0);
  const AudiencePosition touching = ear(ahead, -5.0, 5.0, height - 0.01);
  BOOST_TEST(dropOver({near, far, below}) == twice);
  BOOST_TEST(dropOver({touching, near, far}) == twice);
  BOOST_TEST(dropOver({near}) == 0.0);
  BOOST_TEST(std::isnan(dropOver({below})));
}

/// An ear where the cabinet itself is has no distance, so that no level is told; a centimetre beside it has.
BOOST_AUTO_TEST_CASE(an_ear_at_the_cabinet_itself_has_no_level) {
  const Room room;
  const CoverView::Source source =
      viewOf(room.option, room.option.room->audience, room.settled).sources.at(0);
  const auto told = [&](double down) {
    const Case option = withEars(room, {ear(source.ahead, -5.0, 5.0, source.height - down)}, false);
    return levelOf(option, room.settled, 0.0).has_value();
  };
  BOOST_TEST(!told(0.0));
  BOOST_TEST(told(0.01));
}

/// Of two cabinets that reach an ear over as short a way the upper one serves it.
BOOST_AUTO_TEST_CASE(of_two_as_near_the_upper_one_serves) {
  const Room room;
  Case option = withEars(room, {ear(20.0, -5.0, 5.0, 1.0)}, false);
  auto limits = std::make_shared<RoomLimits>(*option.room);
  BOOST_REQUIRE(limits->audience.cabinets.size() == 1U);
  limits->audience.cabinets.push_back(limits->audience.cabinets.front());
  limits->audience.cabinets[0].throwM = 50.0;
  limits->audience.cabinets[1].throwM = 60.0;
  option.room = limits;
  const auto table = levelOf(option, room.settled, 8.0);
  BOOST_REQUIRE(table.has_value());
  BOOST_TEST(table->rows.at(0).covered);
  BOOST_TEST(table->rows.at(0).throwM == 50.0);
}

/// Ears of 1, 10, 100 and 1000; each source covers its own, whichever number of sources there is.
BOOST_AUTO_TEST_CASE(ears_that_any_source_covers_are_counted_once) {
  const std::vector<std::int64_t> weight{1, 10, 100, 1000};
  const auto covered = [&](const std::vector<std::vector<bool>>& sources) {
    CoverColumns columns;
    columns.ears = weight.size();
    for (const std::vector<bool>& source : sources) {
      for (const bool covers : source) {
        columns.low.push_back(covers ? 7.0 : infinite);
        columns.high.push_back(covers ? 9.0 : -infinite);
      }
    }
    return columns.coveredAt(weight, 8.0);
  };
  BOOST_TEST(covered({}) == 0);
  BOOST_TEST(covered({{true, false, true, true}}) == 1101);
  BOOST_TEST(covered({{false, true, true, false}}) == 110);
  BOOST_TEST(covered({{true, false, true, false}, {false, false, true, true}}) == 1101);
  BOOST_TEST(covered({{false, true, false, false}, {false, false, false, false}}) == 10);
  BOOST_TEST(
      covered({{true, false, true, false}, {false, false, true, false}, {false, false, false, true}}) ==
      1101);
  BOOST_TEST(
      covered({{false, false, false, false}, {false, true, false, false}, {false, true, false, true}}) ==
      1010);
}

/// Exactly midway between the least and the most height the lower one is told.
BOOST_AUTO_TEST_CASE(midway_between_two_bounds_the_lower_one_is_told) {
  Room room;
  room.hang().leastTrim = metres(6.0);
  room.venue().mostTrim = metres(10.0);
  room.refresh();
  BOOST_TEST(room.use(lowestEdgeRule, 8.0).limit == 6.0);
  BOOST_TEST(room.use(lowestEdgeRule, 8.0 + 1e-9).limit == 10.0);
  BOOST_TEST(room.use(lowestEdgeRule, 8.0 - 1e-9).limit == 6.0);
}

/// Each bound is told by its own source: the first, the third, the floor beneath and the venue's upper one.
BOOST_AUTO_TEST_CASE(the_bound_that_decides_is_told_by_its_source) {
  Room room;
  auto limits = std::make_shared<RoomLimits>(*room.option.room);
  const auto told = [&](std::vector<double> bounds, double aboveFloor, double trim) {
    limits->leastTrim.clear();
    for (const double metres : bounds) {
      limits->leastTrim.push_back({metres, QStringLiteral("bound %1").arg(limits->leastTrim.size())});
    }
    limits->leastAboveFloor = {aboveFloor, QStringLiteral("over the floor")};
    limits->mostTrim = Bound{12.0, QStringLiteral("roof")};
    room.option.room = limits;
    return room.finding(lowestEdgeRule, trim).source.toStdString();
  };
  BOOST_TEST(told({5.0, 4.0, 3.0, 2.0}, 1.0, 6.0) == "bound 0");
  BOOST_TEST(told({2.0, 3.0, 5.0, 4.0}, 1.0, 6.0) == "bound 2");
  BOOST_TEST(told({2.0, 3.0, 4.0, 5.0}, 1.0, 6.0) == "bound 3");
  BOOST_TEST(told({2.0, 3.0, 4.0, 5.0}, 5.5, 6.0) == "over the floor");
  BOOST_TEST(told({5.0, 5.0, 5.0, 5.0}, 5.0, 6.0) == "bound 0"); // of those as high the first
  BOOST_TEST(told({2.0, 3.0, 4.0, 5.0}, 1.0, 11.0) == "roof");
}

/// One row, 0.1 m wide: two seats, 5 cm to either side of its middle.
BOOST_AUTO_TEST_CASE(five_centimetres_beside_the_middle_are_beside_it) {
  Room room;
  venue::Section row;
  row.name = QStringLiteral("box");
  row.profile = {{metres(0), metres(0)}, {metres(0.4), metres(0)}};
  row.earHeight = metres(1.2);
  row.frontX = metres(100); // out of reach
  row.frontY = metres(0);
  row.bearing = degrees(0);
  row.radius = metres(0);
  const auto told = [&](double width) {
    row.width = metres(width);
    room.venue().sections = {row};
    room.full().coverAcross = degrees(100);
    room.refresh();
    return room.finding(coverRule).text;
  };
  BOOST_TEST(told(0.1).contains(QStringLiteral("0.05 m to the right")), told(0.1).toStdString());
  BOOST_TEST(told(0.09).contains(QStringLiteral("in the middle")), told(0.09).toStdString());
}

/// However short a row is, it has a seat at each of its ends.
BOOST_AUTO_TEST_CASE(the_shortest_row_has_two_seats) {
  Room room;
  venue::Section row;
  row.name = QStringLiteral("box");
  row.profile = {{metres(0), metres(0)}, {metres(0.4), metres(0)}};
  row.earHeight = metres(1.2);
  row.frontX = metres(20);
  row.frontY = metres(0);
  row.bearing = degrees(0);
  row.radius = metres(0);
  row.width = metres(1e-10);
  room.venue().sections = {row};
  room.full().coverAcross = degrees(100);
  room.refresh();
  const Audience& audience = room.option.room->audience;
  BOOST_TEST(audience.positions.size() == 4U); // two rows
  BOOST_TEST(audience.blocks.at(0).seats == 2U);
  for (const AudiencePosition& each : audience.positions) {
    BOOST_TEST(std::isfinite(each.side));
    BOOST_TEST(each.weight == 1.0); // the least there is
  }
}

BOOST_AUTO_TEST_SUITE_END()
