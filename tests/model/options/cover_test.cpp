// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/unit_test.hpp>

#include <cmath>
#include <random>

#include "options/cover.h"
#include "options/room_limits.h"
#include "print.h"
#include "room_fixture.h"
#include "support/sanitized.h"

using namespace hangbook;
using namespace hangbook::options;
using hangbook::testing::Room;

namespace {

/// Whether a position is covered, said the long way: by the angle of the line from source to ear.
bool coveredByAngle(const Room& room, const Audience& audience, const CoverView& view, std::size_t position,
                    double trim) {
  for (std::size_t i = 0; i < audience.cabinets.size(); ++i) {
    const double away = view.distance[position] - view.sources[i].ahead;
    const double up = audience.positions[position].ear - (trim + view.sources[i].height);
    if (away <= 0.0 || std::hypot(away, up) > audience.cabinets[i].throwM) {
      continue;
    }
    const double angle = hang::toDegrees(std::atan2(up, away)) -
                         room.settled.layout.elements[audience.cabinets[i].element].aimDeg;
    if (angle >= audience.cabinets[i].lowestDeg && angle <= audience.cabinets[i].highestDeg) {
      return true;
    }
  }
  return false;
}

double shareByAngle(const Room& room, const Audience& audience, const CoverView& view, double trim) {
  int covered = 0;
  for (std::size_t i = 0; i < audience.positions.size(); ++i) {
    covered += coveredByAngle(room, audience, view, i, trim) ? 1 : 0;
  }
  return 100.0 * covered / static_cast<double>(audience.positions.size());
}

} // namespace

BOOST_AUTO_TEST_SUITE(cover)

BOOST_AUTO_TEST_CASE(positions_stand_half_a_metre_apart_along_the_profile) {
  Room room;
  const Audience audience = audienceOf(room.option);
  // 22 m level, then hypot(10, 3) = 10.44 m up: 64 steps of 0.5 m and the last row
  BOOST_TEST(audience.positions.size() == 66U);
  BOOST_TEST(audience.positions.front().x == 8.0);
  BOOST_TEST(audience.positions.front().ear == 1.2);
  BOOST_TEST(audience.positions.back().x == 40.0);
  BOOST_TEST(audience.positions.back().ear == 4.2);
  for (std::size_t i = 2; i + 1 < audience.positions.size(); ++i) {
    const auto& before = audience.positions[i - 1];
    const auto& here = audience.positions[i];
    const double step = std::hypot(here.x - before.x, here.ear - before.ear);
    BOOST_TEST(step <= 0.5 + 1e-9);
  }
}

BOOST_AUTO_TEST_CASE(one_position_by_hand) {
  // Source 1 m above the lowest edge, ear at 1.2 m and 20 m away, edges 0° and −45° (slopes 0 and −1):
  // the source may stand between 1.2 and 21.2 m, so the lowest edge between 0.2 and 20.2 m.
  CoverView::Source source;
  source.height = 1.0;
  source.slopeLow = -1.0;
  source.slopeHigh = 0.0;
  source.throwM = 100.0;
  TrimRange range = trimsThatCover(source, 20.0, 1.2);
  BOOST_TEST(range.low == 0.2, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(range.high == 20.2, boost::test_tools::tolerance(1e-12));
  source.throwM = 25.0; // 3-4-5: no more than 15 m above the ear
  range = trimsThatCover(source, 20.0, 1.2);
  BOOST_TEST(range.high == 15.2, boost::test_tools::tolerance(1e-12));
  source.throwM = 19.0;
  range = trimsThatCover(source, 20.0, 1.2);
  BOOST_TEST(range.low > range.high);
  source.throwM = 100.0;
  source.ahead = 20.0; // straight above
  range = trimsThatCover(source, 20.0, 1.2);
  BOOST_TEST(range.low > range.high);
}

/// Four planes in space, two of them upright: those say yes or no whatever the trim, the level ones end it.
BOOST_AUTO_TEST_CASE(one_seat_by_hand) {
  CoverView::Source source;
  source.height = 1.0;
  source.throwM = 50.0;
  source.place = {2.0, 3.0};
  // No higher than the seat plus 10 m, no lower than it; right of y = 3, and ahead of x = 2.
  source.inside = {hang::Vec3{0.0, 0.0, 1.0}, hang::Vec3{0.6, 0.0, -0.8}, hang::Vec3{0.0, -1.0, 0.0},
                   hang::Vec3{1.0, 0.0, 0.0}};
  // The ear at 1.2 m: 0.2 − trim ≥ 0, and 0.6 · 8 − 0.8 (0.2 − trim) ≥ 0.
  TrimRange range = trimsThatCover(source, hang::Vec3{10.0, 1.0, 1.2});
  BOOST_TEST(range.high == 0.2, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(range.low == 0.2 - 6.0, boost::test_tools::tolerance(1e-12));
  range = trimsThatCover(source, hang::Vec3{10.0, 3.0, 1.2}); // on the very plane
  BOOST_TEST(range.high == 0.2, boost::test_tools::tolerance(1e-12));
  range = trimsThatCover(source, hang::Vec3{10.0, 3.5, 1.2}); // left of it
  BOOST_TEST(range.low > range.high);
  range = trimsThatCover(source, hang::Vec3{1.0, 1.0, 1.2}); // behind
  BOOST_TEST(range.low > range.high);
  source.off = 0.5; // the source's height in doubt by as much, either way
  range = trimsThatCover(source, hang::Vec3{10.0, 1.0, 1.2});
  BOOST_TEST(range.high == -0.3, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(range.low == -5.3, boost::test_tools::tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(closed_form_against_trying_every_trim) {
  std::mt19937 random(20270402);
  const auto between = [&](double low, double high) {
    return std::uniform_real_distribution<double>(low, high)(random);
  };
  int reached = 0;
  for (int round = 0; round < (testing::underSanitizer ? 6 : 24); ++round) {
    Room room;
    room.bass().coversAudience = round % 2 == 0;
    for (catalogue::CabinetType* type : {&room.bass(), &room.full()}) {
      type->coverLowest = degrees(between(-40, -5));
      type->coverHighest = degrees(between(-4, 20));
      type->throwDistance = metres(between(15, 70));
    }
    room.tiltDeg = between(-4, 3);
    room.panDeg = between(-6, 6);
    room.venue().sections[0].profile[2].z = metres(between(0, 6));
    venue::Section side = room.venue().sections[0];
    side.name = QStringLiteral("side");
    side.yFrom = metres(between(3, 12));
    side.yTo = *side.yFrom + metres(4);
    room.venue().sections.push_back(side);
    room.refresh();
    const Audience audience = audienceOf(room.option);
    const CoverView view = viewOf(room.option, audience, room.settled);
    const double percent = round % 3 == 0 ? 100.0 : between(40, 99);
    const TrimRange range = trimsThatCoverShare(audience, view, percent);
    const auto reaches = [&](double trim) { return coveredAt(audience, view, trim).percent() >= percent; };

    if (range.low <= range.high) {
      ++reached;
      BOOST_TEST(reaches(range.low));
      BOOST_TEST(reaches(range.high));
      BOOST_TEST(reaches(0.5 * (range.low + range.high)));
      BOOST_TEST(!reaches(range.low - 1e-9));
      BOOST_TEST(!reaches(range.high + 1e-9));
    }
    // No stretch of trims that reaches the share is wider than the one found.
    double since = notKnown;
    for (double trim = -10.0; trim <= 40.0; trim += 0.01) {
      const double share = shareByAngle(room, audience, view, trim);
      BOOST_REQUIRE_SMALL(share - coveredAt(audience, view, trim).percent(), 1e-9);
      if (share < percent) {
        since = notKnown;
      } else {
        since = std::isnan(since) ? trim : since;
        BOOST_REQUIRE(range.low <= range.high);
        BOOST_REQUIRE(trim - since <= range.high - range.low + 1e-6);
      }
    }
  }
  BOOST_TEST(reached > (testing::underSanitizer ? 0 : 5));
}

BOOST_AUTO_TEST_CASE(a_section_beside_stands_at_its_own_distance) {
  Room room;
  room.venue().sections[0].yFrom = metres(6);
  room.venue().sections[0].yTo = metres(10);
  room.refresh();
  const Audience audience = audienceOf(room.option);
  const CoverView view = viewOf(room.option, audience, room.settled);
  BOOST_TEST(view.distance.front() == 10.0, boost::test_tools::tolerance(1e-9)); // 6-8-10
}

BOOST_AUTO_TEST_CASE(the_rule_names_what_is_missed) {
  Room room;
  room.houseSays("cover-margin", 0.1);
  room.refresh();
  const TrimRange range = coverRule.trimRange(room.option, room.settled);
  BOOST_REQUIRE(range.low < range.high);
  BOOST_TEST(room.use(coverRule, 0.5 * (range.low + range.high)).verdict == Verdict::holds);
  BOOST_TEST(room.use(coverRule, range.low).verdict == Verdict::tight);
  BOOST_TEST(room.use(coverRule, range.high).verdict == Verdict::tight);
  const Finding above = room.finding(coverRule, range.high + 0.5);
  BOOST_TEST(above.verdict == Verdict::fails);
  BOOST_TEST(above.value.value() < 100.0);
  BOOST_TEST(above.text.contains("First missed: floor at x = "), above.text.toStdString());
}

BOOST_AUTO_TEST_CASE(a_share_of_the_house_is_a_wider_window) {
  Room room;
  const TrimRange all = coverRule.trimRange(room.option, room.settled);
  room.houseSays("cover-share", 90);
  room.refresh();
  const TrimRange most = coverRule.trimRange(room.option, room.settled);
  BOOST_TEST(most.low <= all.low);
  BOOST_TEST(most.high > all.high);
}

BOOST_AUTO_TEST_CASE(of_several_stretches_the_one_that_the_room_leaves_most_of_counts) {
  const std::vector<TrimRange> stretches{{2.0, 3.0}, {4.0, 9.0}, {12.0, 13.5}};
  const auto within = [&](double low, double high) { return widestWithin(stretches, {low, high}); };
  BOOST_TEST(within(0.0, 20.0).low == 4.0);
  BOOST_TEST(within(0.0, 3.5).high == 3.0);   // the widest lies out of reach
  BOOST_TEST(within(8.5, 14.0).low == 12.0);  // 0.5 m of the widest is left, 1.5 m of the last
  BOOST_TEST(within(3.0, 3.5).high == 3.0);   // a single trim still counts
  BOOST_TEST(within(10.0, 11.0).high == 9.0); // none: the widest of all, and the window is shut
  BOOST_TEST(widestWithin({}, {0.0, 1.0}).low > widestWithin({}, {0.0, 1.0}).high);
}

BOOST_AUTO_TEST_CASE(what_is_not_known_is_unproven) {
  const auto dropped = [](const auto& change) {
    Room room;
    change(room);
    room.refresh();
    BOOST_TEST(room.use(coverRule).verdict == Verdict::unproven);
    BOOST_TEST(room.finding(coverRule).text.startsWith("Not known: "));
    BOOST_TEST(std::isinf(coverRule.trimRange(room.option, room.settled).high));
  };
  dropped([](Room& room) { room.full().coverLowest.reset(); });
  dropped([](Room& room) { room.full().coverHighest.reset(); });
  dropped([](Room& room) { room.full().throwDistance.reset(); });
  dropped([](Room& room) { room.venue().sections[0].earHeight.reset(); });
  dropped([](Room& room) { room.venue().sections.clear(); });
  dropped([](Room& room) { room.hang().sections = {QStringLiteral("balcony")}; });
  Room room;
  BOOST_TEST(room.use(coverRule, notKnown).verdict == Verdict::unproven);
}

BOOST_AUTO_TEST_CASE(a_stack_without_a_covering_cabinet_covers_nothing) {
  Room room;
  room.full().coversAudience = false;
  room.refresh();
  BOOST_TEST(room.use(coverRule).verdict == Verdict::fails);
  BOOST_TEST(room.use(coverRule).value == 0.0);
  const TrimRange range = coverRule.trimRange(room.option, room.settled);
  BOOST_TEST(range.low > range.high);
}

BOOST_AUTO_TEST_CASE(the_wanted_aim_puts_the_upper_edge_on_the_last_row) {
  Room room;
  room.full().coverHighest = degrees(-3);
  room.refresh();
  const double above = aimAboveWantedDeg(room.option, room.settled, 8.0);
  room.tiltDeg = -above;
  room.refresh();
  // Tilting moves the source a little too, so the miss is small, not nil.
  BOOST_TEST(std::abs(aimAboveWantedDeg(room.option, room.settled, 8.0)) < 0.1);
  room.full().coverHighest.reset();
  room.refresh();
  BOOST_TEST(std::isnan(aimAboveWantedDeg(room.option, room.settled, 8.0)));
}

BOOST_AUTO_TEST_SUITE_END()

BOOST_AUTO_TEST_SUITE(level_drop)

BOOST_AUTO_TEST_CASE(is_advice_and_never_a_gate) {
  Room room;
  const Finding finding = room.finding(levelDropRule);
  BOOST_TEST(finding.verdict == Verdict::holds);
  BOOST_TEST(finding.value.value() > 10.0);
  BOOST_TEST(!finding.limit.has_value());
  BOOST_TEST(finding.text.contains("advice"));
  room.snapshot.show.temperature.reset();
  BOOST_TEST(!room.finding(levelDropRule).applies);
  BOOST_TEST(room.finding(levelDropRule).text.contains("temperature"));
  room.snapshot.show.temperature = 20.0;
  room.snapshot.show.humidity.reset();
  BOOST_TEST(room.finding(levelDropRule).text.contains("humidity"));
}

BOOST_AUTO_TEST_SUITE_END()
