// SPDX-License-Identifier: GPL-3.0-or-later
// Cover of what stands close by, and of hangs side by side: in columns as one by one, and at the very ends of
// rows.
#include <boost/test/unit_test.hpp>

#include <cmath>

#include "kept/unlike_show.h"
#include "options/cover.h"
#include "options/ear_columns.h"
#include "print.h"

using namespace hangbook;
using namespace hangbook::options;
using hangbook::testing::Chance;

namespace {

/// One row across at x, from yFrom to yTo, in front of no section with a front line.
Audience rows(const std::vector<std::array<double, 3>>& all) {
  Audience audience;
  audience.blocks.push_back({0, all.size(), 1, false});
  for (const auto& [x, from, to] : all) {
    AudiencePosition row{};
    row.x = x;
    row.yFrom = from;
    row.yTo = to;
    row.ear = 1.2;
    row.weight = 1.0;
    audience.positions.push_back(row);
    audience.weight += 1.0;
  }
  return audience;
}

CoverPlace facing(double x, double y, double bearingDeg = 0.0) {
  const double bearing = hang::toRadians(bearingDeg);
  return {{x, y}, {std::cos(bearing), std::sin(bearing)}};
}

} // namespace

BOOST_AUTO_TEST_SUITE(cover_edges)

BOOST_AUTO_TEST_CASE(hangs_side_by_side_cover_alike_while_their_line_crosses_every_row) {
  const Audience audience = rows({{10.0, -2.0, 3.0}, {20.0, -4.0, 5.0}});
  const CoverPlace own = facing(0.0, 0.0);
  BOOST_TEST(sameCover(audience, own, own));
  for (const double y : {-2.0, -1.0, 1.0, 2.0, 3.0}) {
    BOOST_TEST(sameCover(audience, own, facing(0.0, y)), y);
    BOOST_TEST(sameCover(audience, facing(0.0, y), own), y);
  }
  for (const double y : {-2.01, -3.0, 3.01, 4.0}) { // beside the first row
    BOOST_TEST(!sameCover(audience, own, facing(0.0, y)), y);
    BOOST_TEST(!sameCover(audience, facing(0.0, y), own), y);
    BOOST_TEST(sameCover(audience, facing(0.0, y), facing(0.0, y)), y); // in one place, whatever it crosses
  }
  BOOST_TEST(!sameCover(audience, own, facing(0.1, 0.0)));
  BOOST_TEST(!sameCover(audience, own, facing(0.0, 0.0, 0.5)));
  for (const Plan bearing : {Plan{0.6, -0.8}, Plan{-0.6, 0.8}}) { // as far to the other side, or behind
    BOOST_TEST(!sameCover(audience, {{0.0, 0.0}, {0.6, 0.8}}, {{0.0, 0.0}, bearing}));
  }
  // Aslant by 1 in 10 the line is 1 m to the left at 10 m, 2 m at 20 m.
  const double slant = hang::toDegrees(std::atan(0.1));
  const CoverPlace left = facing(0.0, 0.0, slant);
  for (const double y : {-2.99, -2.0, 1.0, 1.99}) {
    BOOST_TEST(sameCover(audience, left, facing(0.0, y, slant)), y);
  }
  for (const double y : {-3.01, 2.01}) {
    BOOST_TEST(!sameCover(audience, left, facing(0.0, y, slant)), y);
  }
  // From 5 m further back a slant of 1 in 10 comes to half a metre more.
  BOOST_TEST(sameCover(audience, facing(-5.0, 0.0, slant), facing(-5.0, 1.49, slant)));
  BOOST_TEST(!sameCover(audience, facing(-5.0, 0.0, slant), facing(-5.0, 1.51, slant)));
}

BOOST_AUTO_TEST_CASE(a_seat_is_in_one_place_only) {
  Audience seats = rows({{10.0, 1.0, 1.0}});
  seats.blocks.front().swept = true;
  BOOST_TEST(sameCover(seats, facing(0.0, 0.5), facing(0.0, 0.5)));
  BOOST_TEST(!sameCover(seats, facing(0.0, 0.5), facing(0.0, 0.6)));
  BOOST_TEST(!sameCover(rows({{10.0, 1.0, 1.0}}), facing(0.0, 0.5), facing(0.0, 0.6)));
}

BOOST_AUTO_TEST_CASE(distances_in_plan_by_hand) {
  const Plan ahead{1.0, 0.0};
  BOOST_TEST(distanceInPlan({0.0, 0.0}, ahead, 4.0, -1.0, 1.0) == 4.0);
  BOOST_TEST(distanceInPlan({0.0, 0.0}, ahead, 4.0, 3.0, 5.0) == 5.0); // 3-4-5, to its nearer end
  BOOST_TEST(distanceInPlan({0.0, 0.0}, ahead, 4.0, -5.0, -3.0) == 5.0);
  BOOST_TEST(distanceInPlan({0.0, 0.0}, ahead, -4.0, -1.0, 1.0) == -4.0); // behind
  BOOST_TEST(distanceInPlan({1.0, 2.0}, ahead, 4.0, 6.0, 7.0) == 5.0);
  BOOST_TEST(distanceInPlan({0.0, 0.0}, ahead, 0.25, -1.0, 1.0) == 0.25);
  // Facing along 3-4-5, a metre back: 2 m aside is 1 m ahead of it (-0.6 + 1.6), 0.7 m aside 0.04 m behind.
  const Plan aslant{0.6, 0.8};
  const auto close = boost::test_tools::tolerance(1e-12);
  BOOST_TEST(distanceInPlan({0.0, 0.0}, aslant, -1.0, 2.0, 3.0) == std::sqrt(5.0), close);
  BOOST_TEST(distanceInPlan({0.0, 0.0}, aslant, -1.0, 0.7, 3.0) == -std::sqrt(1.49), close);
  const Audience audience = rows({{0.3, -1.0, 1.0}, {-0.3, -1.0, 1.0}, {0.3, 0.4, 0.4}, {-0.3, 0.4, 0.4}});
  const std::vector<double> distances = distancesFrom(audience, facing(0.0, 0.0));
  BOOST_TEST(distances[0] == 0.3);
  BOOST_TEST(distances[1] == 0.0);
  BOOST_TEST(distances[2] == 0.5, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(distances[3] == 0.0);
}

/// From behind the source to beyond its throw, in steps that fall on and between whole figures.
BOOST_AUTO_TEST_CASE(columns_say_what_one_ear_after_another_does) {
  Chance by(31);
  for (int number = 0; number < 60; ++number) {
    CoverView::Source source;
    source.ahead = number % 3 == 0 ? 0.0 : by.between(-0.8, 0.8);
    source.height = by.between(-0.5, 3.0);
    source.slopeHigh = number % 7 == 0 ? std::numeric_limits<double>::infinity() : by.between(-0.5, 1.5);
    source.slopeLow = source.slopeHigh - by.between(0.1, 2.0);
    source.throwM = by.between(0.5, 6.0);
    source.off = number % 2 == 0 ? 0.0 : by.between(0.0, 0.05);
    Audience audience = rows({});
    std::vector<double> distance;
    for (int step = -8; step <= 70; ++step) {
      AudiencePosition row{};
      row.ear = by.between(0.0, 4.0);
      row.weight = 1.0;
      audience.positions.push_back(row);
      distance.push_back(source.ahead + 0.1 * step + (number % 5 == 0 ? 0.0 : by.between(0.0, 0.1)));
    }
    audience.blocks.front().count = audience.positions.size();
    const CoverColumns columns = coverColumns(audience, {source}, distance, EarColumns(audience));
    BOOST_REQUIRE(columns.ears == audience.positions.size());
    for (std::size_t ear = 0; ear < columns.ears; ++ear) {
      const TrimRange one = trimsThatCover(source, distance[ear], audience.positions[ear].ear);
      const TrimRange there = columns.at(0, ear);
      BOOST_TEST(one.low == there.low);
      BOOST_TEST(one.high == there.high);
      const double away = distance[ear] - source.ahead;
      if (away <= 0.0 || away > source.throwM) {
        BOOST_TEST(one.low > one.high);
      } else if (source.off ==
                 0.0) { // within the throw some trim puts the ear between the edges, or none does
        const double middle =
            audience.positions[ear].ear - source.height - away * 0.5 * (source.slopeLow + source.slopeHigh);
        const double slope =
            std::isfinite(source.slopeHigh) ? 0.5 * (source.slopeLow + source.slopeHigh) : 1e9;
        const bool reached = std::hypot(away, away * slope) <= source.throwM;
        BOOST_TEST((!reached || (middle >= one.low && middle <= one.high)));
      }
    }
  }
}

/// Sources 8.8 m above the ears: the upper one covers from 44 m on, the lower one up to 17.6 m.
BOOST_AUTO_TEST_CASE(a_hole_says_how_many_and_which_is_its_first) {
  CoverView::Source high;
  high.slopeLow = -0.2;
  high.slopeHigh = 0.5;
  high.throwM = 200.0;
  CoverView::Source low = high;
  low.slopeLow = -2.0;
  low.slopeHigh = -0.5;
  const auto holes = [&](const std::vector<double>& distances) {
    std::vector<std::array<double, 3>> all;
    for (const double each : distances) {
      all.push_back({each, -50.0, 50.0});
    }
    return holesAt(rows(all), {distances, {high, low}}, 10.0);
  };
  const auto four = holes({5.0, 10.0, 17.5, 17.7, 25.0, 30.0, 43.9, 44.1, 60.0});
  BOOST_REQUIRE(four.size() == 1U);
  BOOST_TEST(four[0].above == 0U);
  BOOST_TEST(four[0].positions == 4U);
  BOOST_TEST(four[0].first == 3U);
  const auto one = holes({10.0, 15.0, 20.0, 50.0});
  BOOST_REQUIRE(one.size() == 1U);
  BOOST_TEST(one[0].positions == 1U);
  BOOST_TEST(one[0].first == 2U);
  BOOST_TEST(holes({10.0, 15.0, 50.0}).empty());
  BOOST_TEST(holes({3.0, 50.0}).empty()); // below the lower one's cover, not between the two
}

/// Straight up or down nothing says which way a frame faces: then it is the way that its points say.
BOOST_AUTO_TEST_CASE(a_frame_faces_its_own_way_while_it_has_one) {
  Placement placement;
  placement.forward = {0.6, 0.8};
  hang::Layout layout;
  const auto bearing = [&](hang::Vec3 forward) {
    layout.forward = forward;
    return bearingOf(placement, layout);
  };
  const Plan ahead = bearing({1.0, 0.0, 0.0});
  for (const double level : {0.5, 1e-3, 1e-7}) {
    const Plan there = bearing({level, 0.0, std::sqrt(1.0 - level * level)});
    BOOST_TEST(there.x == ahead.x, boost::test_tools::tolerance(1e-9));
    BOOST_TEST(there.y == ahead.y, boost::test_tools::tolerance(1e-9));
  }
  const Plan aside = bearing({0.0, 1e-7, 1.0});
  BOOST_TEST(std::abs(aside.x * ahead.x + aside.y * ahead.y) < 1e-9); // square to it
  for (const double level : {0.0, 1e-10}) {
    const Plan none = bearing({0.0, level, -1.0});
    BOOST_TEST(none.x == 0.6);
    BOOST_TEST(none.y == 0.8);
  }
}

/// Where the margin is wider than the cover, up and down or across, the edges meet in its middle.
BOOST_AUTO_TEST_CASE(a_margin_wider_than_the_cover_leaves_its_middle) {
  SourceDirections source;
  source.forward = {1.0, 0.0, 0.0};
  source.left = {0.0, 1.0, 0.0};
  CoverEdges edges;
  edges.lowestDeg = -2.0;
  edges.highestDeg = 4.0;
  edges.acrossDeg = 6.0;
  const auto none = [](double figure) { return std::abs(figure) < 1e-12; };
  const auto inside = insideEdges(source, edges, 5.0);
  BOOST_TEST(inside[0].z == std::cos(hang::toRadians(1.0)), boost::test_tools::tolerance(1e-12));
  BOOST_TEST(inside[0].x == -std::sin(hang::toRadians(1.0)), boost::test_tools::tolerance(1e-12));
  BOOST_TEST(inside[1].z == -std::cos(hang::toRadians(1.0)), boost::test_tools::tolerance(1e-12));
  BOOST_TEST(none(inside[2].x));
  BOOST_TEST(none(inside[3].x));
  const auto narrow = insideEdges(source, edges, 2.0);
  BOOST_TEST(narrow[2].x == std::sin(hang::toRadians(1.0)), boost::test_tools::tolerance(1e-12));
  BOOST_TEST(narrow[3].y == -std::cos(hang::toRadians(1.0)), boost::test_tools::tolerance(1e-12));
}

BOOST_AUTO_TEST_SUITE_END()
