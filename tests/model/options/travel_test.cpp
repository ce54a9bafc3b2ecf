// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/unit_test.hpp>

#include <cmath>

#include "print.h"
#include "room_fixture.h"

using namespace hangbook;
using namespace hangbook::options;
using hangbook::testing::Room;

BOOST_AUTO_TEST_SUITE(travel)

BOOST_AUTO_TEST_CASE(actuator_pan_and_swing) {
  Room room;
  BOOST_TEST(room.use(travelRule).verdict == Verdict::holds);
  const double swing = std::abs(room.settled.statics.side->headSwingDeg);
  room.bar().swingLimit = degrees(swing);
  room.refresh();
  BOOST_TEST(room.use(travelRule).verdict == Verdict::tight);
  room.bar().swingLimit = degrees(swing - 0.1);
  room.refresh();
  BOOST_TEST(room.use(travelRule).verdict == Verdict::fails);
  BOOST_TEST(room.finding(travelRule).text.contains("swing"));
  room.bar().swingLimit.reset();
  room.refresh();
  BOOST_TEST(room.use(travelRule).verdict == Verdict::unproven);
  room.bar().swingLimit = degrees(60);
  room.bar().panTravel = std::array{degrees(-2), degrees(2)};
  room.panDeg = 2.1;
  room.refresh();
  BOOST_TEST(room.use(travelRule).verdict == Verdict::fails);
  BOOST_TEST(room.finding(travelRule).text.contains("pan"));
  BOOST_TEST(room.finding(travelRule).limit.value() == 2.0);
}

BOOST_AUTO_TEST_CASE(a_single_pick_without_pivot_has_nothing_to_set) {
  Room room;
  room.settled.statics.side.reset();
  room.option.key.picks = catalogue::Picks::single;
  const Finding finding = room.finding(travelRule);
  BOOST_TEST(!finding.applies);
  BOOST_TEST(finding.text.startsWith("Does not apply"));
}

/// A pivot right under the bar moves as one further down does.
BOOST_AUTO_TEST_CASE(whichever_joint_is_a_pivot) {
  for (const std::size_t which : {0U, 1U}) {
    Room room;
    room.settled.statics.side.reset();
    room.option.key.picks = catalogue::Picks::single;
    catalogue::Join pivot;
    pivot.kind = catalogue::JointKind::pivot;
    pivot.travel = std::array{degrees(-20), degrees(0)};
    catalogue::Join pinned;
    pinned.kind = catalogue::JointKind::pinned;
    room.option.joins = {&pinned, &pinned};
    room.option.joins[which] = &pivot;
    room.settled.statics.joints[which].angleDeg = -5.0;
    BOOST_TEST(room.use(travelRule).verdict == Verdict::holds);
    room.settled.statics.joints[which].angleDeg = 1.0;
    BOOST_TEST(room.use(travelRule).verdict == Verdict::fails);
    BOOST_TEST(room.finding(travelRule).text.startsWith("The pivoting joint stands at 1.0°"));
  }
}

BOOST_AUTO_TEST_CASE(two_hoists_one_behind_the_other_differ_by_no_more_than_the_bar_allows) {
  Room room;
  room.settled.statics.side.reset();
  room.option.key.picks = catalogue::Picks::foreAftPair;
  room.settled.layout.picks = {{0, 0, 0}, {-0.8, 0, 0.15}};
  BOOST_TEST(room.use(travelRule).verdict == Verdict::unproven);
  room.bar().hoistOffsetLimit = metres(0.15);
  BOOST_TEST(room.use(travelRule).verdict == Verdict::tight);
  room.bar().hoistOffsetLimit = metres(0.14);
  BOOST_TEST(room.use(travelRule).verdict == Verdict::fails);
}

BOOST_AUTO_TEST_SUITE_END()
