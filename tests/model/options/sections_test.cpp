// SPDX-License-Identifier: GPL-3.0-or-later
// Sections with a front line of their own, beside those that are a profile along the venue's x.
#include <boost/test/unit_test.hpp>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <random>

#include "options/cover.h"
#include "options/placement.h"
#include "options/room_limits.h"
#include "options/seating.h"
#include "print.h"
#include "room_fixture.h"

using namespace hangbook;
using namespace hangbook::options;
using hangbook::testing::Room;

namespace {

venue::Section balcony() {
  venue::Section made;
  made.name = QStringLiteral("balcony");
  made.profile = {{metres(0), metres(4)}, {metres(6), metres(7)}};
  made.earHeight = metres(1.2);
  made.frontX = metres(25);
  made.frontY = metres(0);
  made.bearing = degrees(0);
  made.width = metres(16);
  made.radius = metres(20);
  return made;
}

/// The room with nothing but a block that one cabinet may cover.
struct Block : Room {
  explicit Block(venue::Section section = balcony()) {
    venue().sections = {std::move(section)};
    full().coverAcross = degrees(100);
    full().coverLowest = degrees(-40);
    full().coverHighest = degrees(25);
    full().throwDistance = metres(80);
    refresh();
  }
  venue::Section& block() { return venue().sections[0]; }
};

/// The sweep over trims as it was before sections had front lines, on flat positions: all starts and ends
/// sorted, one count for each position.
std::vector<TrimRange> stretchesTheLongWay(const Audience& audience, const CoverView& view, double percent) {
  const auto wanted = static_cast<std::size_t>(
      std::max(0.0, std::ceil(percent / 100.0 * static_cast<double>(audience.positions.size()) - 1e-9)));
  std::vector<double> starts;
  std::vector<double> ends;
  for (std::size_t i = 0; i < audience.positions.size(); ++i) {
    std::vector<TrimRange> ranges;
    for (const CoverView::Source& source : view.sources) {
      const TrimRange range = trimsThatCover(source, view.distance[i], audience.positions[i].ear);
      if (range.low <= range.high) {
        ranges.push_back(range);
      }
    }
    std::sort(ranges.begin(), ranges.end(), [](const auto& a, const auto& b) { return a.low < b.low; });
    for (std::size_t n = 0; n < ranges.size(); ++n) {
      TrimRange joined = ranges[n];
      while (n + 1 < ranges.size() && ranges[n + 1].low <= joined.high) {
        joined.high = std::max(joined.high, ranges[++n].high);
      }
      starts.push_back(joined.low);
      ends.push_back(joined.high);
    }
  }
  std::sort(starts.begin(), starts.end());
  std::sort(ends.begin(), ends.end());
  std::vector<TrimRange> stretches;
  std::size_t covered = 0;
  std::size_t start = 0;
  double since = 0.0;
  for (const double end : ends) {
    for (; start < starts.size() && starts[start] <= end; ++start) {
      if (++covered == wanted) {
        since = starts[start];
      }
    }
    if (covered-- == wanted) {
      stretches.push_back({since, end});
    }
  }
  return stretches;
}

} // namespace

BOOST_AUTO_TEST_SUITE(sections)

BOOST_AUTO_TEST_CASE(flat_sections_give_what_they_gave) {
  std::mt19937 random(20270412);
  const auto between = [&](double low, double high) {
    return std::uniform_real_distribution<double>(low, high)(random);
  };
  std::size_t found = 0;
  for (int round = 0; round < 200; ++round) {
    Room room;
    room.bass().coversAudience = round % 2 == 0;
    for (catalogue::CabinetType* type : {&room.bass(), &room.full()}) {
      type->coverLowest = degrees(between(-40, -5));
      type->coverHighest = degrees(between(-4, 20));
      type->throwDistance = metres(between(15, 70));
    }
    room.tiltDeg = between(-4, 3);
    room.panDeg = between(-6, 6);
    venue::Section side = room.venue().sections[0];
    side.name = QStringLiteral("side");
    side.yFrom = metres(between(3, 12));
    side.yTo = *side.yFrom + metres(4);
    room.venue().sections.push_back(side);
    room.refresh();
    const Audience audience = audienceOf(room.option);
    const CoverView view = viewOf(room.option, audience, room.settled);
    const double percent = round % 3 == 0 ? 100.0 : between(10, 99);
    const auto expected = stretchesTheLongWay(audience, view, percent);
    const auto stretches = stretchesThatCoverShare(audience, view, percent);
    found += expected.size();
    BOOST_REQUIRE_EQUAL(stretches.size(), expected.size());
    for (std::size_t i = 0; i < expected.size(); ++i) {
      BOOST_REQUIRE_EQUAL(stretches[i].low, expected[i].low);
      BOOST_REQUIRE_EQUAL(stretches[i].high, expected[i].high);
    }
    // Every position counts alike, and what covers across is not asked for.
    BOOST_REQUIRE_EQUAL(audience.weight, static_cast<double>(audience.positions.size()));
    const Covered covered = coveredAt(audience, view, 8.0);
    BOOST_REQUIRE_EQUAL(covered.coveredWeight, static_cast<double>(covered.covered));
  }
  BOOST_TEST(found > 100U);
}

BOOST_AUTO_TEST_CASE(a_figure_that_is_not_known_leaves_cover_unproven) {
  const auto without = [](const auto& drop) {
    Block room;
    BOOST_TEST(room.use(coverRule).verdict <= Verdict::tight);
    drop(room);
    room.refresh();
    BOOST_TEST(room.use(coverRule).verdict == Verdict::unproven);
    BOOST_TEST(room.finding(coverRule).text.startsWith("Not known: "));
  };
  without([](Block& room) { room.block().frontX.reset(); });
  without([](Block& room) { room.block().frontY.reset(); });
  without([](Block& room) { room.block().bearing.reset(); });
  without([](Block& room) { room.block().width.reset(); });
  without([](Block& room) { room.block().radius.reset(); });
  without([](Block& room) { room.block().earHeight.reset(); });
  without([](Block& room) { room.full().coverAcross.reset(); });
  without([](Block& room) { // rows that reach through the centre of their arc
    room.block().radius = metres(-3);
  });
  without([](Block& room) { // beside a block, how wide a flat section is counts
    room.venue().sections.push_back(room.venue().sections[0]);
    venue::Section& floor = room.venue().sections.back();
    floor.name = QStringLiteral("floor");
    floor.frontX = floor.frontY = floor.width = floor.radius = std::nullopt;
    floor.bearing.reset();
  });
}

BOOST_AUTO_TEST_CASE(across_decides_and_pan_brings_it_in) {
  venue::Section side = balcony();
  side.name = QStringLiteral("side block");
  side.radius = metres(0);
  side.width = metres(6);
  side.frontX = metres(18);
  side.frontY = metres(8.9); // left of the hang, which stands at y = 0: the far end is seen at about 34°
  Block room(side);
  room.full().coverAcross = degrees(80);
  room.refresh();
  BOOST_TEST(room.use(coverRule).value == 100.0);
  room.full().coverAcross = degrees(60);
  room.refresh();
  BOOST_TEST(room.use(coverRule).verdict == Verdict::fails);
  const Finding finding = room.finding(coverRule);
  BOOST_TEST(finding.text.contains("to the left (x = "), finding.text.toStdString());
  BOOST_TEST(finding.text.contains("First missed: side block, the front row, "), finding.text.toStdString());
  BOOST_TEST(finding.text.contains("of the floor area"));
  const double missed = room.use(coverRule).value;
  room.panDeg = 8; // to the left
  room.refresh();
  BOOST_TEST(room.use(coverRule).value > missed);
}

/// What is wanted of the topmost cabinet is set by the farthest seat that it covers across, not by one to its
/// side.
BOOST_AUTO_TEST_CASE(the_topmost_cabinet_aims_at_the_farthest_seat_within_its_cover_across) {
  Block room;
  const auto aimAbove = [&] { return aimAboveWantedDeg(room.option, room.settled, 8.0); };
  const double alone = aimAbove();
  BOOST_REQUIRE(std::isfinite(alone));
  venue::Section far = balcony(); // 100° across: 50° to either side
  far.name = QStringLiteral("far block");
  far.radius = metres(0);
  far.width = metres(2);
  far.frontX = metres(35);
  for (const double y : {60.0, -60.0}) { // seen at about 60° from ahead
    far.frontY = metres(y);
    room.venue().sections = {balcony(), far};
    room.refresh();
    BOOST_TEST(aimAbove() == alone);
  }
  far.frontY = metres(0);
  room.venue().sections = {balcony(), far};
  room.refresh();
  BOOST_TEST(aimAbove() != alone);
}

/// Each section's share is told where there are several, and only where they are weighed by their area.
BOOST_AUTO_TEST_CASE(several_sections_are_told_one_by_one) {
  const QString told = QStringLiteral(" By section: ");
  Block room;
  BOOST_TEST(!room.finding(coverRule).text.contains(told));
  venue::Section second = balcony();
  second.name = QStringLiteral("gallery");
  second.frontX = metres(35);
  room.venue().sections = {balcony(), second};
  room.refresh();
  BOOST_TEST(room.finding(coverRule).text.contains(told + QStringLiteral("balcony ")));
  Room flat;
  venue::Section side = flat.venue().sections[0];
  side.name = QStringLiteral("side");
  flat.venue().sections.push_back(side);
  flat.refresh();
  BOOST_TEST(!flat.finding(coverRule).text.contains(told));
}

/// 16 m of a straight row: 16 gaps of one metre, 17 seats; a millimetre more is a gap more.
BOOST_AUTO_TEST_CASE(seats_stand_at_most_a_metre_apart) {
  const auto seats = [](double width) {
    venue::Section section = balcony();
    section.radius = metres(0);
    section.width = metres(width);
    return Block(section).option.room->audience.blocks.at(0).seats;
  };
  BOOST_TEST(seats(16.0) == 17U);
  BOOST_TEST(seats(16.001) == 18U);
  BOOST_TEST(seats(15.999) == 17U);
}

/// At the first and the last trim of its stretch a seat is covered, in the last digit beyond it is not.
BOOST_AUTO_TEST_CASE(a_seat_is_covered_up_to_the_very_ends_of_its_stretch) {
  const Block room;
  const Audience& audience = room.option.room->audience;
  const CoverView view = viewOf(room.option, audience, room.settled);
  BOOST_REQUIRE(view.sources.size() == 1U);
  constexpr double far = std::numeric_limits<double>::infinity();
  int there = 0;
  int within = 0;
  int beyond = 0;
  for (std::size_t i = 0; i < audience.positions.size(); ++i) {
    const TrimRange range = trimsThatCover(audience, view, view.sources.front(), i);
    if (!holdsAny(range)) {
      continue;
    }
    there += 2;
    within += isCovered(audience, view, i, range.low) ? 1 : 0;
    within += isCovered(audience, view, i, range.high) ? 1 : 0;
    beyond += isCovered(audience, view, i, std::nextafter(range.low, -far)) ? 1 : 0;
    beyond += isCovered(audience, view, i, std::nextafter(range.high, far)) ? 1 : 0;
  }
  BOOST_TEST(there > 100);
  BOOST_TEST(within == there);
  BOOST_TEST(beyond == 0);
}

BOOST_AUTO_TEST_CASE(a_hole_between_main_and_downfill_is_named) {
  venue::Section floor = balcony();
  floor.name = QStringLiteral("floor");
  floor.profile = {{metres(0), metres(0)}, {metres(32), metres(0)}};
  floor.radius = metres(0);
  floor.width = metres(6);
  floor.frontX = metres(6);
  Block room(floor);
  room.bass().coversAudience = true; // stands above: covers what is far
  room.bass().coverAcross = degrees(100);
  room.bass().coverLowest = degrees(-20);
  room.bass().coverHighest = degrees(10);
  room.bass().throwDistance = metres(80);
  room.full().coverHighest = degrees(-30);
  room.full().coverLowest = degrees(-75);
  room.refresh();
  const Audience& audience = room.option.room->audience;
  const auto holes = holesAt(audience, viewOf(room.option, audience, room.settled), 8.0);
  BOOST_REQUIRE_EQUAL(holes.size(), 1U);
  BOOST_TEST(holes[0].above == 0U);
  const Covered covered = coveredAt(audience, viewOf(room.option, audience, room.settled), 8.0);
  BOOST_TEST(holes[0].positions <= covered.positions - covered.covered);
  BOOST_TEST(room.finding(coverRule).text.contains("there is a hole of "));
  room.full().coverHighest = degrees(-15); // now they overlap
  room.refresh();
  BOOST_TEST(
      holesAt(room.option.room->audience, viewOf(room.option, room.option.room->audience, room.settled), 8.0)
          .empty());
}

BOOST_AUTO_TEST_CASE(the_share_is_by_floor_area) {
  // Two blocks side by side, one twice as wide; the far one lies beyond the throw.
  venue::Section near = balcony();
  near.profile = {{metres(0), metres(0)}, {metres(4), metres(0)}};
  near.radius = metres(0);
  near.width = metres(8);
  near.frontX = metres(12);
  Block room(near);
  room.refresh();
  BOOST_TEST(!room.finding(coverRule).text.contains("By section")); // one is the whole
  // A seat each metre, from the one end of an 8 m row to the other.
  BOOST_TEST(room.option.room->audience.blocks.front().seats == 9U);
  venue::Section far = near;
  far.name = QStringLiteral("far");
  far.frontX = metres(60);
  far.width = metres(4);
  room.venue().sections.push_back(far);
  room.full().throwDistance = metres(40);
  room.refresh();
  BOOST_TEST(room.use(coverRule).value == 100.0 * 32.0 / 48.0, boost::test_tools::tolerance(1e-4));
  BOOST_TEST(room.finding(coverRule).text.contains("By section: balcony 100.0 %, far 0.0 %"));
}

/// Rows bend round a centre: none may lie in it or beyond it, and no row is longer than all the way round.
BOOST_AUTO_TEST_CASE(rows_stay_on_one_side_of_their_centre) {
  const auto bends = [](double radius, double from, double to, double width) {
    venue::Section section = balcony();
    section.radius = metres(radius);
    section.profile = {{metres(from), metres(4)}, {metres(to), metres(7)}};
    section.width = metres(width);
    return sweptSection(section).has_value();
  };
  BOOST_TEST(bends(5.0, -4.999, 6.0, 16.0));
  BOOST_TEST(!bends(5.0, -5.0, 6.0, 16.0)); // the first row is a point
  BOOST_TEST(bends(-7.0, 0.0, 6.999, 16.0));
  BOOST_TEST(!bends(-7.0, 0.0, 7.0, 16.0));
  BOOST_TEST(bends(5.0, 0.0, 6.0, 10.0 * std::numbers::pi));
  BOOST_TEST(!bends(5.0, 0.0, 6.0, 10.001 * std::numbers::pi));
  BOOST_TEST(!bends(5.0, 0.0, 6.0, 0.0));
  BOOST_TEST(bends(0.0, -50.0, 50.0, 1000.0)); // straight rows
}

/// A metre apart at most, one at each end: a row that is longer by a hair has a seat more, but not by
/// rounding.
BOOST_AUTO_TEST_CASE(seats_of_a_row) {
  const auto seats = [](double width) {
    venue::Section section = balcony();
    section.radius = metres(0.0);
    section.width = metres(width);
    Audience audience;
    addSection(audience, section, true);
    return audience.blocks.at(0).seats;
  };
  BOOST_TEST(seats(0.4) == 2U);
  BOOST_TEST(seats(1.0) == 2U);
  BOOST_TEST(seats(3.0) == 4U);
  BOOST_TEST(seats(3.0 + 1e-12) == 4U);
  BOOST_TEST(seats(3.000005) == 5U);
}

BOOST_AUTO_TEST_CASE(the_floor_beneath_a_place) {
  Room room;
  room.venue().sections = {balcony()};
  const auto floorAt = [&](double x, double y) { return floorBeneath(room.venue(), {x, y}); };
  BOOST_TEST(floorAt(25.0, 0.0) == 4.0);
  BOOST_TEST(floorAt(28.0, 0.0) == 5.5, boost::test_tools::tolerance(1e-9)); // half way up
  BOOST_TEST(floorAt(24.0, 0.0) == 0.0);                                     // before the front line
  BOOST_TEST(floorAt(5.0 + 23.0 * std::cos(0.3), 23.0 * std::sin(0.3)) == 5.5,
             boost::test_tools::tolerance(1e-9)); // on the same row round its centre at x = 5
  BOOST_TEST(floorAt(28.0, 12.0) == 0.0);         // beside it
  room.venue().sections[0].radius.reset();        // where it lies is not known: it may be anywhere
  BOOST_TEST(floorAt(0.0, 0.0) == 7.0);
  BOOST_TEST(floorBeneath(room.venue(), {0.0, 0.0}, UnclearSections::nowhere) == 0.0);
}

BOOST_AUTO_TEST_SUITE_END()
