// SPDX-License-Identifier: GPL-3.0-or-later
// An obstruction whose box ends exactly where a body or a hoist stands is over it.
#include <boost/test/unit_test.hpp>

#include <algorithm>
#include <array>
#include <cmath>

#include "options/headroom.h"
#include "options/placement.h"
#include "options/room_limits.h"
#include "print.h"
#include "room_fixture.h"

using namespace hangbook;
using namespace hangbook::options;
using hangbook::testing::Room;

namespace {

/// xFrom, xTo, yFrom, yTo, m.
using Box = std::array<double, 4>;

/// The highest trim under one screen alone, so low that it decides wherever it is over anything.
double most(Room& room, const Box& box) {
  venue::Obstruction screen;
  screen.name = QStringLiteral("screen");
  screen.xFrom = metres(box[0]);
  screen.xTo = metres(box[1]);
  screen.yFrom = metres(box[2]);
  screen.yTo = metres(box[3]);
  screen.underside = metres(9);
  room.venue().obstructions = {screen};
  room.refresh();
  return headroomRule.trimRange(room.option, room.settled).high;
}

/// What is above everything but the screen.
double open(Room& room) {
  return most(room, {50.0, 51.0, 50.0, 51.0});
}

/// In plan, all corners of the bar and of the cabinets.
Box around(const Room& room) {
  const Placement placement = placementOf(room.option, room.settled.layout);
  Box box{1e9, -1e9, 1e9, -1e9};
  const auto take = [&](const std::vector<hang::Vec3>& corners) {
    for (const hang::Vec3& each : corners) {
      const Plan at = placement.placeOf(each);
      box = {std::min(box[0], at.x), std::max(box[1], at.x), std::min(box[2], at.y), std::max(box[3], at.y)};
    }
  };
  take(barCorners(room.option, room.settled.layout));
  for (std::size_t i = 0; i < room.settled.layout.elements.size(); ++i) {
    take(cabinetCorners(room.option, room.settled.layout, i));
  }
  return box;
}

} // namespace

BOOST_AUTO_TEST_SUITE(headroom_edges)

BOOST_AUTO_TEST_CASE(a_box_that_only_touches_a_body_is_over_it) {
  for (const double pan : {0.0, 15.0, -20.0}) {
    Room room;
    room.panDeg = pan;
    const double free = open(room);
    const Box all = around(room);
    constexpr double far = 20.0;
    constexpr double gap = 1e-9; // turned into the hang's axes and back a place may lose the last digits
    const double in = pan == 0.0 ? 0.0 : gap;
    const std::array<std::pair<Box, Box>, 4> sides{{
        {{all[1] - in, far, -far, far}, {all[1] + gap, far, -far, far}},
        {{-far, all[0] + in, -far, far}, {-far, all[0] - gap, -far, far}},
        {{-far, far, all[3] - in, far}, {-far, far, all[3] + gap, far}},
        {{-far, far, -far, all[2] + in}, {-far, far, -far, all[2] - gap}},
    }};
    for (std::size_t side = 0; side < sides.size(); ++side) {
      BOOST_TEST(most(room, sides[side].first) < free, side);
      BOOST_TEST(most(room, sides[side].second) == free, side);
    }
  }
}

BOOST_AUTO_TEST_CASE(a_box_that_ends_right_over_a_hook_is_over_its_hoist) {
  Room room;
  open(room);
  const Plan at = placementOf(room.option, room.settled.layout).placeOf(room.settled.layout.picks[0]);
  const auto over = [&](const Box& box) {
    most(room, box);
    const auto checks = headroomChecks(room.option, room.settled).checks;
    return std::ranges::any_of(checks, [](const HeadroomCheck& each) {
      return each.what == HeadroomCheck::What::hoistTop && each.number == 0 &&
             each.ceiling == 1; // 0: low steel
    });
  };
  const auto up = [](double figure) { return std::nextafter(figure, 100.0); };
  const auto down = [](double figure) { return std::nextafter(figure, -100.0); };
  constexpr double far = 20.0;
  BOOST_TEST(over({at.x, far, -far, far}));
  BOOST_TEST(!over({up(at.x), far, -far, far}));
  BOOST_TEST(over({-far, at.x, -far, far}));
  BOOST_TEST(!over({-far, down(at.x), -far, far}));
  BOOST_TEST(over({-far, far, at.y, far}));
  BOOST_TEST(!over({-far, far, up(at.y), far}));
  BOOST_TEST(over({-far, far, -far, at.y}));
  BOOST_TEST(!over({-far, far, -far, down(at.y)}));
}

/// What the hoist hangs from needs no clearance; what is lower by any figure does.
BOOST_AUTO_TEST_CASE(what_it_hangs_from_needs_no_clearance) {
  Room room;
  open(room);
  auto limits = std::make_shared<RoomLimits>(*room.option.room);
  limits->clearance = 0.25;
  const double point = limits->pointHeight.at(0);
  const auto needed = [&](double underside) {
    limits->ceilings = {{QStringLiteral("deck"), underside}};
    room.option.room = limits;
    for (const HeadroomCheck& each : headroomChecks(room.option, room.settled).checks) {
      if (each.what == HeadroomCheck::What::hoistTop && each.number == 0) {
        return each.needed;
      }
    }
    return notKnown;
  };
  const double closed = limits->closedLength + pieceDoubt(room.settled);
  const auto close = boost::test_tools::tolerance(1e-12);
  BOOST_TEST(needed(point) == closed, close);
  BOOST_TEST(needed(point + 1.0) == closed, close);
  BOOST_TEST(needed(std::nextafter(point, 0.0)) == closed + 0.25, close);
}

/// A cabinet that stands 2 m over the bar is what first comes near what is above; each body has a line of its
/// own, over the lowest edge.
BOOST_AUTO_TEST_CASE(each_body_counts_with_its_own_highest_corner) {
  Room room;
  open(room);
  const double usual = headroomRule.trimRange(room.option, room.settled).high;
  for (hang::Vec3& corner : room.settled.layout.elements.at(0).outline) {
    corner.z += 4.0;
  }
  auto doubt = std::make_shared<SettledDoubt>();
  doubt->worst.height = 0.125;
  room.settled.doubt = doubt;
  std::vector<double> highest;
  const auto take = [&highest](const std::vector<hang::Vec3>& corners) {
    highest.push_back(std::ranges::max(corners, {}, &hang::Vec3::z).z);
  };
  take(barCorners(room.option, room.settled.layout));
  take(cabinetCorners(room.option, room.settled.layout, 0));
  take(cabinetCorners(room.option, room.settled.layout, 1));
  BOOST_TEST(highest[1] > highest[0]);
  BOOST_TEST(highest[2] < highest[0]);
  const double lowest = lowestEdge(room.option, room.settled).z;
  std::vector<double> rises;
  for (const HeadroomCheck& each : headroomChecks(room.option, room.settled).checks) {
    const bool body = each.what == HeadroomCheck::What::bar || each.what == HeadroomCheck::What::cabinet;
    if (body && each.ceiling == 0) {
      BOOST_TEST(each.number == (rises.empty() ? 0 : static_cast<int>(rises.size()) - 1));
      rises.push_back(each.rise);
    }
  }
  BOOST_REQUIRE(rises.size() == highest.size());
  for (std::size_t i = 0; i < rises.size(); ++i) {
    BOOST_TEST(rises[i] == highest[i] - lowest + 0.125, boost::test_tools::tolerance(1e-12));
  }
  BOOST_TEST(headroomRule.trimRange(room.option, room.settled).high < usual);
}

/// A box in the corner of what a panned hang would fill if it stood square is over nothing of it.
BOOST_AUTO_TEST_CASE(a_box_beside_a_corner_is_over_nothing) {
  for (const double pan : {15.0, -15.0}) {
    Room room;
    room.panDeg = pan;
    const double free = open(room);
    const Box all = around(room);
    constexpr double in = 0.001;
    constexpr double out = 5.0;
    for (const bool front : {true, false}) {
      for (const bool left : {true, false}) {
        const double x = front ? all[1] - in : all[0] + in;
        const double y = left ? all[3] - in : all[2] + in;
        const Box corner{front ? x : x - out, front ? x + out : x, left ? y : y - out, left ? y + out : y};
        BOOST_TEST(most(room, corner) == free);
      }
    }
  }
}

/// Without a clearance or a rigging's length what needs it is not compared, and named.
BOOST_AUTO_TEST_CASE(what_is_not_known_is_not_compared) {
  Room room;
  open(room);
  auto limits = std::make_shared<RoomLimits>(*room.option.room);
  room.option.room = limits;
  const auto number = [&room](HeadroomCheck::What what) {
    return std::ranges::count(headroomChecks(room.option, room.settled).checks, what, &HeadroomCheck::what);
  };
  using What = HeadroomCheck::What;
  BOOST_TEST(number(What::hookToPoint) == 2);
  BOOST_TEST(number(What::bar) > 0);
  BOOST_TEST(number(What::cabinet) > 0);
  limits->riggingLength = notKnown;
  BOOST_TEST(number(What::hookToPoint) == 0);
  BOOST_TEST(number(What::bar) > 0);
  limits->clearance = notKnown;
  BOOST_TEST(number(What::bar) == 0);
  BOOST_TEST(number(What::cabinet) == 0);
}

/// Word by word: what is how high, what is above it and how much of it is needed.
BOOST_AUTO_TEST_CASE(whole_sentences_of_headroom) {
  Room room;
  open(room);
  auto limits = std::make_shared<RoomLimits>(*room.option.room);
  limits->ceilings.clear();
  limits->closedLength = 0.7;
  limits->riggingLength = 0.2;
  limits->riggingPieces = 3;
  limits->clearance = 0.25;
  limits->pointHeight = {14.0, 14.0};
  room.option.room = limits;
  const double hook = 9.0 - lowestEdge(room.option, room.settled).z;
  const auto m = [](double metres) { return QString::number(metres, 'f', 2).toStdString() + " m"; };
  const auto words = [&room] { return room.finding(headroomRule, 9.0).text.toStdString(); };
  BOOST_TEST(words() == "The hook under point L1 is at " + m(hook) +
                            " and the point at 14.00 m, so there is " + m(14.0 - hook) +
                            " of room; hoist run in 0.70 m and rigging 0.20 m need 0.90 m.");
  limits->ceilings = {{QStringLiteral("deck"), 13.0}}; // lower than the points: clear of it
  BOOST_TEST(words() == "The hook under point L1 is at " + m(hook) + " and deck at 13.00 m, so there is " +
                            m(13.0 - hook) +
                            " of room; hoist run in 0.70 m and clearance 0.25 m need 0.95 m.");
  const Finding top = room.finding(headroomRule, 9.0);
  BOOST_TEST(top.source.contains(room.hoist().name));
  auto doubt = std::make_shared<SettledDoubt>();
  doubt->worst.bounded = true;
  doubt->longer = 0.01; // of the hoist and of each of three pieces
  room.settled.doubt = doubt;
  BOOST_TEST(words() == "The hook under point L1 is at " + m(hook) + " and deck at 13.00 m, so there is " +
                            m(13.0 - hook) +
                            " of room; hoist run in 0.70 m and clearance 0.25 m need 0.96 m, 0.01 m of "
                            "it since lengths may be off.");
  limits->ceilings.clear();
  BOOST_TEST(words() == "The hook under point L1 is at " + m(hook) +
                            " and the point at 14.00 m, so there is " + m(14.0 - hook) +
                            " of room; hoist run in 0.70 m and rigging 0.20 m need 0.94 m, 0.04 m of it "
                            "since lengths may be off.");
  room.settled.doubt.reset();
  limits->pointHeight.clear(); // bodies alone
  limits->ceilings = {{QStringLiteral("deck"), 13.0}};
  BOOST_TEST(words().starts_with("The highest corner of the bar is at "), words());
  BOOST_TEST(words().ends_with(" of room; a clearance of 0.25 m is asked for."), words());
  BOOST_TEST(!room.finding(headroomRule, 9.0).source.contains(room.hoist().name));
  for (hang::Vec3& corner : room.settled.layout.elements.at(1).outline) {
    corner.z += 2.0;
  }
  BOOST_TEST(words().starts_with("The highest corner of cabinet 2 is at "), words());
}

/// Of an option with more picks than points each point counts, and nothing beyond.
BOOST_AUTO_TEST_CASE(a_pick_without_a_point_is_not_looked_at) {
  Room room;
  auto limits = std::make_shared<RoomLimits>(*room.option.room);
  limits->pointHeight.resize(1);
  room.option.room = limits;
  int hooks = 0;
  for (const HeadroomCheck& each : headroomChecks(room.option, room.settled).checks) {
    hooks += each.what == HeadroomCheck::What::hookToPoint ? 1 : 0;
  }
  BOOST_TEST(hooks == 1);
}

BOOST_AUTO_TEST_SUITE_END()
