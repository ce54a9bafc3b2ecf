// SPDX-License-Identifier: GPL-3.0-or-later
// Cover exactly at its bounds: an ear on an edge, at the very throw, beside the hang, and trims that end
// where others begin.
#include <boost/test/unit_test.hpp>

#include <cmath>
#include <limits>

#include "options/cover_fold.h"
#include "print.h"
#include "room_fixture.h"

using namespace hangbook;
using namespace hangbook::options;
using hangbook::testing::Room;

namespace {

/// Ears of one weight each, in one section.
Audience ears(std::size_t number, bool swept = false) {
  Audience audience;
  audience.sections = {QStringLiteral("floor")};
  audience.blocks.push_back({0, number, 1, swept});
  audience.positions.resize(number);
  for (AudiencePosition& each : audience.positions) {
    each.weight = 1.0;
  }
  audience.weight = static_cast<double>(number);
  return audience;
}

/// Each ear's stretch of trim under one source.
CoverColumns columnsOf(const std::vector<TrimRange>& ranges) {
  CoverColumns columns;
  columns.ears = ranges.size();
  for (const TrimRange& each : ranges) {
    columns.low.push_back(each.low);
    columns.high.push_back(each.high);
  }
  return columns;
}

/// Covers everything below 45° up and above 45° down, within 16 m.
CoverView::Source wide() {
  CoverView::Source source;
  source.slopeLow = -1.0;
  source.slopeHigh = 1.0;
  source.throwM = 16.0;
  return source;
}

constexpr double tiny = std::numeric_limits<double>::epsilon();

} // namespace

BOOST_AUTO_TEST_SUITE(cover_bounds)

BOOST_AUTO_TEST_CASE(both_ends_of_a_stretch_belong_to_it) {
  const TrimRange range{2.0, 3.0};
  BOOST_TEST(range.holds(2.0));
  BOOST_TEST(range.holds(3.0));
  BOOST_TEST(!range.holds(2.0 - 2.0 * tiny));
  BOOST_TEST(!range.holds(3.0 + 2.0 * tiny));
  BOOST_TEST(!range.holds(std::nan("")));
  BOOST_TEST(holdsAny({2.0, 2.0}));
  BOOST_TEST(!holdsAny({2.0 + 2.0 * tiny, 2.0}));
  BOOST_TEST(!holdsAny({std::nan(""), 2.0}));
}

/// Ears of 3, 4 and 5 over 1 to 2, 2 to 3 and 4 to 5 m: two at once at most; of none nothing.
BOOST_AUTO_TEST_CASE(the_most_that_any_trim_covers) {
  const TrimRange never{std::numeric_limits<double>::infinity(), -std::numeric_limits<double>::infinity()};
  BOOST_TEST(mostCovered(columnsOf({never, never}), {3, 4}) == 0);
  BOOST_TEST(mostCovered(columnsOf({}), {}) == 0);
  BOOST_TEST(mostCovered(columnsOf({{1.0, 2.0}, {2.0, 3.0}, {4.0, 5.0}}), {3, 4, 5}) == 7);
  BOOST_TEST(mostCovered(columnsOf({{1.0, 2.0}, {2.5, 3.0}, {4.0, 5.0}}), {3, 4, 5}) == 5);
}

/// However many sources there are, which takes another loop each time.
BOOST_AUTO_TEST_CASE(columns_count_both_ends) {
  for (const std::size_t sources : {1U, 2U, 3U}) {
    CoverColumns columns;
    columns.ears = 1;
    columns.low.assign(sources, std::numeric_limits<double>::infinity());
    columns.high.assign(sources, -std::numeric_limits<double>::infinity());
    columns.low.back() = 2.0;
    columns.high.back() = 3.0;
    for (const double trim : {2.0, 2.5, 3.0}) {
      BOOST_TEST(columns.coveredAt({7}, trim) == 7, sources << " at " << trim);
    }
    for (const double trim : {2.0 - 2.0 * tiny, 3.0 + 2.0 * tiny}) {
      BOOST_TEST(columns.coveredAt({7}, trim) == 0, sources << " at " << trim);
    }
  }
}

/// An ear at the very throw is covered at the one trim that puts the source level with it; straight below the
/// source at none.
BOOST_AUTO_TEST_CASE(an_ear_at_the_very_throw_and_one_straight_below) {
  Audience audience = ears(3);
  for (AudiencePosition& each : audience.positions) {
    each.ear = 1.25;
  }
  const std::vector<double> distance{16.0, 16.0 * (1.0 + tiny), 0.0};
  const CoverView::Source source = wide();
  const CoverColumns columns = coverColumns(audience, {source}, distance, EarColumns(audience));
  for (std::size_t ear = 0; ear < 3; ++ear) {
    const TrimRange one = trimsThatCover(source, distance[ear], 1.25);
    for (const TrimRange& range : {one, columns.at(0, ear)}) {
      BOOST_TEST(holdsAny(range) == (ear == 0), ear);
      BOOST_TEST(range.holds(1.25) == (ear == 0), ear);
    }
  }
}

/// The same in space; and an edge that leans by no more than 10⁻¹² bounds no trim.
BOOST_AUTO_TEST_CASE(a_seat_at_the_very_throw_and_an_edge_that_stands_upright) {
  CoverView::Source source = wide();
  const hang::Vec3 ahead{1.0, 0.0, 0.0};
  source.inside = {ahead, ahead, ahead, ahead};
  const TrimRange level = trimsThatCover(source, hang::Vec3{16.0, 0.0, 1.25});
  BOOST_TEST(level.low == 1.25);
  BOOST_TEST(level.high == 1.25);
  BOOST_TEST(!holdsAny(trimsThatCover(source, hang::Vec3{16.0 * (1.0 + tiny), 0.0, 1.25})));
  // The source level with an ear right below it: 16 m up and down are within the throw.
  const auto with = [&](double lean) {
    source.inside = {hang::Vec3{0.0, 0.0, lean}, ahead, ahead, ahead};
    return trimsThatCover(source, hang::Vec3{0.0, 0.0, 8.0});
  };
  BOOST_TEST(with(1e-12).high == 24.0);
  BOOST_TEST(with(2e-12).high == 8.0); // no higher than the ear
  BOOST_TEST(with(2e-12).low == -8.0);
  BOOST_TEST(!holdsAny(with(-1e-12))); // beyond an upright edge, by what little it leans
  BOOST_TEST(with(-2e-12).low == 8.0); // no lower than the ear
  BOOST_TEST(with(-2e-12).high == 24.0);
}

BOOST_AUTO_TEST_CASE(a_seat_straight_beside_the_hang_is_not_in_front_of_it) {
  Audience audience = ears(2);
  audience.positions[0].yFrom = audience.positions[0].yTo = 0.5;
  audience.positions[1] = audience.positions[0];
  audience.positions[1].x = 1e-9;
  const std::vector<double> distances = distancesFrom(audience, {{0.0, 0.0}, {1.0, 0.0}});
  BOOST_TEST(distances[0] == 0.0);
  BOOST_TEST(distances[1] == 0.5);
}

/// Square to the rows the hang's line is taken to meet each beside the hang.
BOOST_AUTO_TEST_CASE(a_line_along_the_rows_meets_them_beside_the_hang) {
  BOOST_TEST(distanceInPlan({0.0, 0.0}, {1e-6, 1.0}, 4.0, -3.0, 3.0) == 4.0);
  BOOST_TEST(distanceInPlan({0.0, 0.0}, {1e-6 * (1.0 + tiny), 1.0}, 4.0, -3.0, 3.0) == 5.0); // 3-4-5
}

BOOST_AUTO_TEST_CASE(a_frame_less_than_a_nanometre_off_upright_faces_as_its_points_say) {
  Placement placement;
  placement.forward = {1.0, 0.0};
  hang::Layout layout;
  layout.forward = {0.0, 1e-9, -1.0};
  BOOST_TEST(bearingOf(placement, layout).x == 1.0);
  layout.forward.y *= 1.0 + 2.0 * tiny;
  BOOST_TEST(bearingOf(placement, layout).x == 0.0);
}

BOOST_AUTO_TEST_CASE(stretches_that_touch_are_one) {
  std::vector<TrimRange> ranges{{4.0, 5.0}, {2.0, 3.0}, {1.0, 2.0}, {1.5, 1.6}};
  joinOverlapping(ranges);
  BOOST_REQUIRE(ranges.size() == 2U);
  BOOST_TEST(ranges[0].low == 1.0);
  BOOST_TEST(ranges[0].high == 3.0);
  BOOST_TEST(ranges[1].low == 4.0);
}

/// One ear's stretch ends where the other's begins: at that trim both are covered, at no other.
BOOST_AUTO_TEST_CASE(at_one_trim_only) {
  const std::vector<TrimRange> touching{{1.0, 2.0}, {2.0, 3.0}};
  const auto both = stretchesThatCoverShare(ears(2), columnsOf(touching), 100.0);
  BOOST_REQUIRE(both.size() == 1U);
  BOOST_TEST(both[0].low == 2.0);
  BOOST_TEST(both[0].high == 2.0);
  BOOST_TEST(mostCovered(columnsOf(touching), {3, 4}) == 7);
  BOOST_TEST(mostCovered(columnsOf({{1.0, 2.0}, {2.0 + 2.0 * tiny, 3.0}}), {3, 4}) == 4);
  BOOST_TEST(mostCovered(columnsOf({{2.0, 2.0}}), {3}) == 3); // covered at one trim is covered
  BOOST_TEST(mostCovered(columnsOf({{1.0, 2.0}, {3.0, 5.0}, {4.0, 6.0}}), {9, 3, 4}) == 9);
  BOOST_TEST(mostCovered(columnsOf({{1.0, 2.0}, {3.0, 5.0}, {4.0, 6.0}}), {2, 3, 4}) == 7);
  const auto one = stretchesThatCoverShare(ears(1), columnsOf({{2.0, 2.0}}), 100.0);
  BOOST_REQUIRE(one.size() == 1U);
  BOOST_TEST(one[0].low == 2.0);
  BOOST_TEST(stretchesThatCoverShare(ears(1), columnsOf({{2.0, 1.0}}), 100.0).empty()); // at no trim
}

BOOST_AUTO_TEST_CASE(of_stretches_as_wide_the_lowest) {
  const TrimRange above{20.0, 30.0};
  BOOST_TEST(widestWithin({{2.0, 2.0}, {5.0, 5.0}}, above).low == 2.0);
  BOOST_TEST(widestWithin({{1.0, 2.0}, {4.0, 5.0}}, above).low == 1.0);
  BOOST_TEST(widestWithin({{1.0, 2.0}, {4.0, 5.5}}, above).low == 4.0);
  BOOST_TEST(!holdsAny(widestWithin({}, above)));
  const TrimRange around{0.0, 30.0};
  BOOST_TEST(widestWithin({{1.0, 2.0}, {4.0, 5.0}}, around).low == 1.0);
  BOOST_TEST(widestWithin({{1.0, 2.0}, {4.0, 5.5}}, around).low == 4.0);
}

BOOST_AUTO_TEST_CASE(nothing_asked_is_nothing_wanted) {
  BOOST_TEST(weightFor(0.0, 10.0) == 0.0);
  BOOST_TEST(weightFor(50.0, 10.0) == 5.0);
  BOOST_TEST(weightFor(51.0, 10.0) == 6.0);
  BOOST_TEST(weightFor(50.00001, 10.0) == 6.0);
  BOOST_TEST(weightFor(50.0000005, 1e7) == 5000001.0); // a twentieth of a cm² of 1000 m²
  BOOST_TEST(weightFor(67.0, 5e7) == 33500000.0);      // which multiplied out is more by rounding
  Covered one;
  one.positions = 1;
  one.weight = one.coveredWeight = 4.0;
  BOOST_TEST(one.percent() == 100.0);
  BOOST_TEST(std::isnan(Covered{}.percent()));
  Covered covered;
  BOOST_TEST(!covered.reaches(0.0)); // of nobody
  covered = {10, 5, 10.0, 5.0, 5, 9};
  BOOST_TEST(covered.reaches(50.0));
  BOOST_TEST(!covered.reaches(51.0));
}

/// Sources 8 m above the ears: the upper one's lower edge comes down 16 m away, the lower one's upper edge
/// 8 m away; beyond their throw of 10 m neither covers what lies between.
BOOST_AUTO_TEST_CASE(a_hole_ends_on_the_edges) {
  CoverView::Source high = wide();
  high.slopeLow = -0.5;
  high.throwM = 10.0;
  CoverView::Source low = high;
  low.slopeLow = -4.0;
  low.slopeHigh = -1.0;
  const auto inHole = [&](double distance, double highAhead, double lowAhead, double trim = 8.0) {
    high.ahead = highAhead;
    low.ahead = lowAhead;
    return !holesAt(ears(1), {{distance}, {high, low}}, trim).empty();
  };
  BOOST_TEST(inHole(12.0, 0.0, 0.0));
  BOOST_TEST(!inHole(16.0, 0.0, 0.0)); // on the upper one's edge
  BOOST_TEST(inHole(16.0 * (1.0 - tiny), 0.0, 0.0));
  // 16 m up: both edges lie 16 m away on the one side, 32 m on the other.
  BOOST_TEST(!inHole(16.0, 0.0, 0.0, 16.0)); // on the lower one's edge
  BOOST_TEST(inHole(16.0 * (1.0 + tiny), 0.0, 0.0, 16.0));
  // Straight below the upper one, or below the lower one: neither is in front of it.
  BOOST_TEST(!inHole(12.0, 12.0, 0.0));
  BOOST_TEST(inHole(12.0, 11.75, 0.0));
  low.slopeHigh = -std::numeric_limits<double>::infinity();
  high.slopeLow = 0.0;
  BOOST_TEST(!inHole(12.0, 0.0, 12.0));
}

/// In space: a seat right on the left edge of both lies across both.
BOOST_AUTO_TEST_CASE(a_seat_on_the_side_edge_is_in_the_hole) {
  CoverView::Source high = wide();
  high.throwM = 100.0;
  const hang::Vec3 up{0.6, 0.0, 0.8}; // inside is above a line that falls by 3 in 4
  const hang::Vec3 down{-0.6, 0.0, -0.8};
  const hang::Vec3 ahead{1.0, 0.0, 0.0};
  const hang::Vec3 right{0.0, -1.0, 0.0};
  high.inside = {up, hang::Vec3{0.0, 0.0, -1.0}, ahead, right};
  CoverView::Source low = high;
  low.inside = {hang::Vec3{1.0, 0.0, 0.0}, down, ahead, right};
  low.height = -4.0;
  const auto inHole = [&](double y) {
    Audience seats = ears(1, true);
    seats.positions[0].x = 8.0; // the upper edge comes down to −6 there, the lower one's to −10
    seats.positions[0].yFrom = seats.positions[0].yTo = y;
    seats.positions[0].ear = -8.0;
    return !holesAt(seats, {{8.0}, {high, low}}, 0.0).empty();
  };
  BOOST_TEST(inHole(-1.0));
  BOOST_TEST(inHole(0.0));
  BOOST_TEST(!inHole(1e-9));
}

/// In a hole lies what is below the upper one, above the lower one and within the sides of both.
BOOST_AUTO_TEST_CASE(a_hole_needs_all_four_edges) {
  const hang::Vec3 yes{0.0, 0.0, -1.0}; // the seat, 8 m below, is on the inner side
  const hang::Vec3 no{0.0, 0.0, 1.0};
  const auto inHole = [&](std::array<hang::Vec3, 4> upper, std::array<hang::Vec3, 4> lower) {
    CoverView::Source high = wide();
    high.throwM = 100.0;
    CoverView::Source low = high;
    high.inside = upper;
    low.inside = lower;
    Audience seats = ears(1, true);
    seats.positions[0].ear = -8.0;
    return !holesAt(seats, {{8.0}, {high, low}}, 0.0).empty();
  };
  BOOST_TEST(inHole({no, yes, yes, yes}, {yes, no, yes, yes}));
  BOOST_TEST(!inHole({yes, yes, yes, yes}, {yes, no, yes, yes})); // above the upper one's lower edge
  BOOST_TEST(!inHole({no, yes, yes, yes}, {yes, yes, yes, yes})); // below the lower one's upper edge
  BOOST_TEST(!inHole({no, yes, no, yes}, {yes, no, yes, yes}));
  BOOST_TEST(!inHole({no, yes, yes, no}, {yes, no, yes, yes}));
  BOOST_TEST(!inHole({no, yes, yes, yes}, {yes, no, no, yes}));
  BOOST_TEST(!inHole({no, yes, yes, yes}, {yes, no, yes, no}));
}

/// Two sources, the first ear in the second one's cover alone, the second ear in both.
BOOST_AUTO_TEST_CASE(the_most_that_is_covered_is_of_all_sources) {
  CoverColumns columns;
  columns.ears = 2;
  constexpr double never = std::numeric_limits<double>::infinity();
  columns.low = {never, 1.0, 1.0, 1.5};
  columns.high = {-never, 2.0, 3.0, 2.5};
  BOOST_TEST(mostCovered(columns, {3, 4}) == 7);
}

BOOST_AUTO_TEST_CASE(of_a_single_ear_all_or_nothing_is_covered) {
  BOOST_TEST((Covered{1, 1, 1.0, 1.0, -1, -1}.percent() == 100.0));
  BOOST_TEST((Covered{1, 0, 1.0, 0.0, 0, 0}.percent() == 0.0));
  BOOST_TEST(std::isnan(Covered{}.percent()));
}

/// A margin of 5° inside a cover 1° wide: the sides meet in the middle, straight ahead.
BOOST_AUTO_TEST_CASE(sides_nearer_than_the_margin_meet_ahead) {
  const SourceDirections ahead{{1.0, 0.0, 0.0}, {0.0, 1.0, 0.0}};
  const CoverEdges narrow{0, -10.0, 5.0, 50.0, 1.0};
  const auto inside = insideEdges(ahead, narrow, 5.0);
  BOOST_TEST(inside[2].x == 0.0);
  BOOST_TEST(inside[2].y == 1.0);
  BOOST_TEST(inside[3].x == 0.0);
  BOOST_TEST(inside[3].y == -1.0);
  const auto stated = insideEdges(ahead, {0, -10.0, 5.0, 50.0, 60.0}, 0.0);
  BOOST_TEST(stated[2].x == 0.5, boost::test_tools::tolerance(1e-12));
}

/// Against trying every trim at which a stretch begins.
BOOST_AUTO_TEST_CASE(the_most_percent_of_a_fold_is_that_of_the_best_trim) {
  Room room;
  room.full().coverLowest = degrees(-8);
  room.full().coverHighest = degrees(-3);
  room.refresh();
  CoverFold fold(room.option, room.settled);
  const Audience audience = audienceOf(room.option);
  const CoverView view = viewOf(room.option, audience, room.settled);
  double most = 0.0;
  for (std::size_t i = 0; i < audience.positions.size(); ++i) {
    const TrimRange range = trimsThatCover(audience, view, view.sources[0], i);
    most = std::max(most, coveredAt(audience, view, range.low).percent());
  }
  BOOST_TEST(most > 20.0);
  BOOST_TEST(most < 100.0);
  BOOST_TEST(fold.mostPercent(room.option) == most, boost::test_tools::tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(what_is_not_known_covers_nothing_of_anybody) {
  Room room;
  auto limits = std::make_shared<RoomLimits>(*room.option.room);
  limits->coverShare = std::nan("");
  room.option.room = limits;
  BOOST_TEST(CoverFold(room.option, room.settled).mostPercent(room.option) == 0.0);
  limits->coverShare = 90.0;
  limits->audience = ears(0);
  BOOST_TEST(CoverFold(room.option, room.settled).mostPercent(room.option) == 0.0);
}

/// Each figure that the rule needs, alone missing.
BOOST_AUTO_TEST_CASE(a_share_or_a_margin_that_nobody_stated_leaves_cover_unproven) {
  const Settled settled;
  const auto verdict = [&](double share, double margin, const QStringList& missing) {
    RoomLimits limits;
    limits.coverShare = share;
    limits.coverMargin = margin;
    limits.audience.missing = missing;
    return coverUse(limits, settled, 8.0, [](bool) { return Covered{2, 2, 2.0, 2.0, -1, -1}; }).verdict;
  };
  const double none = std::nan("");
  BOOST_TEST(verdict(90.0, 1.0, {}) == Verdict::holds);
  BOOST_TEST(verdict(none, 1.0, {}) == Verdict::unproven);
  BOOST_TEST(verdict(90.0, none, {}) == Verdict::unproven);
  BOOST_TEST(verdict(90.0, 1.0, {QStringLiteral("the throw")}) == Verdict::unproven);
}

BOOST_AUTO_TEST_SUITE_END()
