// SPDX-License-Identifier: GPL-3.0-or-later
// What stands exactly at an end, by hand: a chain in one line, places at the last metre, a leg that only just
// reaches, a bar upright, an arm that is none.
#include <boost/test/unit_test.hpp>

#include <cmath>
#include <limits>

#include "hang/balance.h"
#include "hang/bridle.h"
#include "hang/chain.h"
#include "hang/check.h"
#include "hang/doubt_uneven.h"
#include "hang/gust.h"
#include "hang/make_up.h"
#include "hang/settle.h"
#include "hang/solve.h"
#include "quantity/error.h"
#include "quantity/quantity.h"

using namespace hangbook;
using namespace hangbook::hang;

namespace {

constexpr double g = standardGravity;
constexpr double endless = std::numeric_limits<double>::infinity();
constexpr auto near = [](double tolerance) { return boost::test_tools::tolerance(tolerance); };

template <class Figures>
std::string refusal(Figures figures) {
  try {
    figures();
  } catch (const Error& error) {
    return error.what(); // names the place first
  }
  return {};
}

bool holds(const std::string& text, const char* part) {
  return text.find(part) != std::string::npos;
}

/// Anchor and eye both 1 m ahead of the pin: at joint angle j the chain is 2 sin(|j|/2) long.
PivotTriangle alike(Range travelDeg) {
  return {{1.0, 0.0}, {1.0, 0.0}, 0.0, travelDeg};
}

/// 100 kg, the centre 0.5 m straight below the pin, which stands at the frame's origin.
Hang plumb(const std::variant<SidePair, ForeAftPair, SinglePick>& picks) {
  Hang made;
  made.bar.picks = picks;
  Element element;
  element.mass = 100.0;
  element.cg = {0.0, -0.5};
  element.outline = {{0.5, 0.0}, {0.5, -1.0}, {-0.5, -1.0}};
  element.joint = Pinned{0.0, {Vec2{0.1, 0.0}, Vec2{-0.1, 0.0}}};
  made.stack = {element};
  return made;
}

} // namespace

BOOST_AUTO_TEST_SUITE(ends)

BOOST_AUTO_TEST_CASE(a_chain_in_one_line_gives_one_angle) {
  const PivotAngles folded = anglesAt(alike({-90.0, 90.0}), 0.0);
  BOOST_TEST_REQUIRE(folded.count == 1);
  BOOST_TEST(folded.deg[0] == 0.0);
  const PivotAngles straight = anglesAt(alike({0.0, 180.0}), 2.0);
  BOOST_TEST_REQUIRE(straight.count == 1);
  BOOST_TEST(straight.deg[0] == 180.0);
  BOOST_TEST(anglesAt(alike({0.0, 180.0}), 2.0 + 1e-15).count == 0);
}

/// 2 sin(87.5°) m: 175° either way, which is 185° the other way round.
BOOST_AUTO_TEST_CASE(an_angle_beyond_half_a_turn_is_found) {
  const double reach = 2.0 * std::sin(toRadians(87.5));
  for (const double sign : {1.0, -1.0}) {
    const Range beyond = sign > 0.0 ? Range{180.0, 190.0} : Range{-190.0, -180.0};
    const PivotAngles angles = anglesAt(alike(beyond), reach);
    BOOST_TEST_REQUIRE(angles.count == 1);
    BOOST_TEST(angles.deg[0] == sign * 185.0, near(1e-12));
  }
}

/// Half a metre a link, nothing besides: one link is 2 sin(j/2) = 0.5 m.
BOOST_AUTO_TEST_CASE(the_first_and_the_last_mark_are_marks) {
  const PivotTriangle triangle = alike({0.0, 90.0});
  const double atOne = toDegrees(2.0 * std::asin(0.25));
  const NeighbouringMarks one = neighbouringMarks(triangle, 0.5, 0.0, atOne);
  BOOST_TEST_REQUIRE((one.shorter && one.longer));
  BOOST_TEST(one.shorter->mark == 1);
  BOOST_TEST(one.longer->mark == 1);
  const NeighbouringMarks less = neighbouringMarks(triangle, 0.5, 0.0, 0.9 * atOne);
  BOOST_TEST(!less.shorter);
  BOOST_TEST_REQUIRE(less.longer.has_value());
  BOOST_TEST(less.longer->mark == 1);
  // As many links as a chain may have, in one metre.
  const NeighbouringMarks last = neighbouringMarks(triangle, 1.0 / mostMark, 0.0, 60.0);
  BOOST_TEST_REQUIRE(last.longer.has_value());
  BOOST_TEST(last.longer->mark == mostMark);
  const NeighbouringMarks over = neighbouringMarks(triangle, 1.0 / mostMark, 0.0, 60.0004);
  BOOST_TEST_REQUIRE(over.shorter.has_value());
  BOOST_TEST(over.shorter->mark == mostMark);
  BOOST_TEST(!over.longer);
}

/// Folded back it takes no length, stretched 2 m: of half a metre a link, marks 1 to 4, and the one at which
/// it is straight counts.
BOOST_AUTO_TEST_CASE(the_straight_chain_is_a_usable_mark) {
  const auto marks = usableMarks(alike({0.0, 180.0}), 0.5, 0.0);
  BOOST_TEST_REQUIRE(marks.size() == 4U);
  BOOST_TEST(marks.front().mark == 1);
  BOOST_TEST(marks.back().mark == 4);
  BOOST_TEST(marks.back().angleDeg == 180.0);
  // Arms of 1 m and 0.25 m come no nearer than 0.75 m: half a metre a link and a quarter besides is mark 1.
  PivotTriangle unlike = alike({0.0, 180.0});
  unlike.eye = 0.25 * unlike.eye;
  const auto apart = usableMarks(unlike, 0.5, 0.25);
  BOOST_TEST_REQUIRE(apart.size() == 2U);
  BOOST_TEST(apart.front().mark == 1);
  BOOST_TEST(apart.front().angleDeg == 0.0);
  BOOST_TEST(apart.back().mark == 2);
}

/// A hundred-millionth of a link is none at two centimetres a link, and is one at a metre.
BOOST_AUTO_TEST_CASE(beside_a_mark_counts_what_is_a_length) {
  const PivotTriangle triangle = alike({0.0, 90.0});
  const auto marksAt = [&](double pitch, double links) {
    return neighbouringMarks(triangle, pitch, 0.0, toDegrees(2.0 * std::asin(0.5 * pitch * links)));
  };
  const NeighbouringMarks same = marksAt(0.02, 20.0 + 2e-8);
  BOOST_TEST_REQUIRE((same.shorter && same.longer));
  BOOST_TEST(same.shorter->mark == 20);
  BOOST_TEST(same.longer->mark == 20);
  const NeighbouringMarks beside = marksAt(1.0, 1.0 + 2e-8);
  BOOST_TEST_REQUIRE(beside.shorter.has_value());
  BOOST_TEST(beside.shorter->mark == 1);
  BOOST_TEST(!beside.longer); // two metres are half a turn
}

BOOST_AUTO_TEST_CASE(the_last_mark_still_reaches) {
  BOOST_TEST(firstMarkThatReaches(0.5 * mostMark, 0.5, 0.0).value_or(0) == mostMark);
  BOOST_TEST(!firstMarkThatReaches(0.5 * mostMark + 0.1, 0.5, 0.0).has_value());
  BOOST_TEST(firstMarkThatReaches(0.1, 0.5, 0.3).value_or(0) == 1);
}

/// As near as a micrometre to each other, and no nearer; as far out as a kilometre.
BOOST_AUTO_TEST_CASE(points_of_a_bridle_at_their_bounds) {
  const auto refused = [](const std::vector<Vec3>& points, Vec3 load) {
    std::vector<BridleLeg> legs;
    for (const Vec3 point : points) {
      legs.push_back({point, 1.0, 1e6});
    }
    return refusal([&] { settleBridle(legs, load); });
  };
  const Vec3 down{0.0, 0.0, -1.0};
  BOOST_TEST(refused({{0.0, 0.0, 0.0}, {1e-6, 0.0, 0.0}}, down) == "");
  BOOST_TEST(holds(refused({{0.0, 0.0, 0.0}, {9.9e-7, 0.0, 0.0}}, down), "points[1]"));
  BOOST_TEST(holds(refused({{0.0, 0.0, 0.0}, {1.0, 0.0, 0.0}, {1.0, 0.0, 0.0}}, down), "points[2]"));
  for (const double sign : {1.0, -1.0}) {
    const double last = sign * 1000.0;
    const double beyond = std::nextafter(last, sign * endless);
    BOOST_TEST(refused({{last, 0.0, 0.0}}, down) == "");
    BOOST_TEST(refused({{0.0, last, 0.0}}, down) == "");
    BOOST_TEST(refused({{0.0, 0.0, last}}, down) == "");
    BOOST_TEST(holds(refused({{beyond, 0.0, 0.0}}, down), "within 1000 m"));
    BOOST_TEST(holds(refused({{0.0, beyond, 0.0}}, down), "within 1000 m"));
    BOOST_TEST(holds(refused({{0.0, 0.0, beyond}}, down), "within 1000 m"));
  }
}

/// The first leg alone brings the apex 2 m below the second point. A second leg that is a nanometre short of
/// that reaches it still, and hangs slack; a hair less, and it is that leg that carries all.
BOOST_AUTO_TEST_CASE(a_leg_that_only_just_reaches_hangs_slack) {
  const Vec3 down{0.0, 0.0, -1000.0};
  const double reaches = 2.0 - 1e-9;
  BOOST_TEST_REQUIRE(reaches + 1e-9 == 2.0);
  const auto settled = [&](double length) {
    const std::array<BridleLeg, 2> legs{BridleLeg{{0.0, 0.0, 0.0}, 1.0}, BridleLeg{{0.0, 0.0, 1.0}, length}};
    return settleBridle(legs, down);
  };
  const Bridle just = settled(reaches);
  BOOST_TEST(just.legs[0].tension == 1000.0);
  BOOST_TEST(just.legs[1].tension == 0.0);
  const Bridle short_ = settled(reaches - 1e-15);
  BOOST_TEST(short_.legs[0].tension == 0.0);
  BOOST_TEST(short_.legs[1].tension == 1000.0);
}

/// 1 N on a leg of 0.5 N/m: 2 m of stretch.
BOOST_AUTO_TEST_CASE(a_very_soft_leg_is_a_leg) {
  const std::array<BridleLeg, 1> legs{BridleLeg{{0.0, 0.0, 0.0}, 1.0, 0.5}};
  BOOST_TEST(settleBridle(legs, {0.0, 0.0, -1.0}).apex.z == -3.0, near(1e-9));
}

/// Turned upright, the rear pick stands 0.4 m behind the front one, and the centre 0.5 m ahead: by
/// moments about the front pick the rear one has −1.25 times the weight.
BOOST_AUTO_TEST_CASE(a_bar_may_stand_straight_up) {
  Assembly assembly;
  assembly.mass = 100.0;
  assembly.cg = {0.5, -0.5};
  const ForeAftPair pair{{0.5, 0.0}, {-0.5, 0.4}};
  const Balance up = holdAt(pair, assembly, 90.0);
  BOOST_TEST(up.pickLoads[1].load == -1.25 * 100.0 * g, near(1e-12));
  BOOST_TEST(up.pickLoads[0].load == 2.25 * 100.0 * g, near(1e-12));
  BOOST_TEST(holds(refusal([&] { holdAt(pair, assembly, 90.0 + 1e-13); }), "an elevation lies between"));
}

/// A travel end of −0.0001° is told as 0°, without a sign.
BOOST_AUTO_TEST_CASE(what_rounds_to_nothing_has_no_sign) {
  Hang hang = plumb(SidePair{1.0, 0.0, {}, {}, {-0.0001, 20.0}, {0.0, 0.0}});
  hang.set.actuatorDeg = 30.0;
  BOOST_TEST(holds(refusal([&] { solve(hang); }), "of 0° to 20°"));
}

/// Held straight up, the centre is 0.5 m ahead of the picks and the line's place as far: it carries it all.
BOOST_AUTO_TEST_CASE(a_pull_back_may_hold_a_frame_straight_up) {
  Hang hang = plumb(SidePair{1.0, 0.0, {}, {}, {-20.0, 20.0}, {-150.0, 150.0}});
  hang.set.actuatorDeg = 0.0;
  hang.pullBack = PullBack{1, {0.5, -0.5}, 90.0, {}, 90.0};
  const Statics statics = solve(hang);
  BOOST_TEST(statics.side->headSwingDeg == 90.0, near(1e-12));
  BOOST_TEST(statics.pullBack->force == 100.0 * g, near(1e-12));
}

/// Panned by 120° with the actuator at −5°, −0.4981 sin s − 0.0872 cos s = sin 10° at s = −30.0° and at
/// −169.9°: the frame is held the nearer way. Panned by 60° it is 0.4981 sin s, and s = 30.0°.
BOOST_AUTO_TEST_CASE(a_pull_back_swings_the_head_the_nearer_way) {
  Hang hang = plumb(SidePair{1.0, 0.0, {}, {}, {-20.0, 20.0}, {-150.0, 150.0}});
  hang.set.actuatorDeg = -5.0;
  hang.set.panDeg = 120.0;
  hang.pullBack = PullBack{1, {0.5, -0.5}, 90.0, {}, 10.0};
  const Statics statics = solve(hang);
  BOOST_TEST(statics.tiltDeg == 10.0, near(1e-12));
  BOOST_TEST(statics.side->headSwingDeg == -30.0, near(1e-3));
  hang.set.panDeg = 60.0;
  BOOST_TEST(solve(hang).side->headSwingDeg == 30.0, near(1e-3));
}

/// A pivot whose chain does not pull is not held; a contact of 0.5e-8 N that is 0.1 m behind its pin shuts
/// with half of what rounding may leave.
BOOST_AUTO_TEST_CASE(what_nothing_shuts_does_not_stand_as_assembled) {
  std::vector<Element> stack(2);
  stack[0].joint = Seated{0.0, {-0.1, 0.0}, 5.0};
  stack[1].joint = Pivot{{-30.0, 30.0}};
  Statics statics;
  statics.joints.resize(2);
  statics.joints[0].contact = 1.0;
  statics.chain.emplace();
  const auto stands = [&](double tension, double contact) {
    statics.chain->tension = tension;
    statics.joints[0].contact = contact;
    return standsAsAssembled(stack, statics, 2);
  };
  BOOST_TEST(stands(1.0, 1.0));
  BOOST_TEST(!stands(0.0, 1.0));
  BOOST_TEST(stands(1e-300, 1.0));
  BOOST_TEST(stands(1.0, 2e-8));
  BOOST_TEST(!stands(1.0, 5e-9));
}

/// A contact that may stand at its pin holds no moment at all; without a moment it needs no arm.
BOOST_AUTO_TEST_CASE(an_arm_that_may_be_none_holds_nothing) {
  Hang hang = plumb(ForeAftPair{{0.5, 0.0}, {-0.5, 0.0}});
  hang.set.tiltDeg = 0.0;
  hang.stack[0].joint = Seated{0.0, {-0.1, 0.0}};
  const Statics statics = solve(hang);
  const auto contact = [&](double turning, double arm) {
    return inGust(hang.stack, 0, statics, {{arm, 0.0, 0.0, 0.0}}, {{0.0, turning, 0.0, 0.0}}, 1.0)
        .joints[0]
        .most.contact.value_or(-1.0);
  };
  BOOST_TEST(contact(5.0, 0.0) == endless);
  BOOST_TEST(contact(0.0, 0.0) == 0.0);
  BOOST_TEST(contact(5.0, 0.1) == 50.0, near(1e-12));
}

/// A line between picks that may be none, or that stands upright, has no unlike heights, not even without a
/// rise.
BOOST_AUTO_TEST_CASE(picks_that_may_be_one_give_no_bound) {
  const Unfavourable worst;
  Doubts doubts;
  const auto bounded = [&](const auto& picks) {
    Bar bar;
    bar.picks = picks;
    return unevenWithin(bar, doubts, Statics{}, worst, 0, 0.0).has_value();
  };
  SidePair pair;
  pair.pickSpacing = 0.5;
  doubts.frame.place = 0.5;
  BOOST_TEST(!bounded(pair));
  doubts.frame.place = 0.25;
  BOOST_TEST(bounded(pair));
  doubts.frame.place = 0.0;
  BOOST_TEST(!bounded(ForeAftPair{{0.0, 0.5}, {0.0, 0.0}}));
  BOOST_TEST(bounded(ForeAftPair{{0.5, 0.5}, {0.0, 0.0}}));
}

BOOST_AUTO_TEST_CASE(a_make_up_at_its_bounds) {
  const auto found = [](double steel, double wanted, double tolerance) {
    MakeUpWish wish;
    wish.length = wanted;
    wish.tolerance = tolerance;
    const std::array<SteelLength, 1> steels{SteelLength{steel, 40}};
    return shortestMakeUp(steels, wish).has_value();
  };
  // Unless told otherwise, six steels and no more.
  BOOST_TEST(found(1.0, 6.0, 0.0));
  BOOST_TEST(!found(1.0, 7.0, 0.0));
  // Six steels of 1 m are 2 m short of 8 m; a nanometre beyond the tolerance is rounding.
  BOOST_TEST_REQUIRE(2.0 - 1e-9 + 1e-9 == 2.0);
  BOOST_TEST(found(1.0, 8.0, 2.0 - 1e-9));
  BOOST_TEST(!found(1.0, 8.0, 2.0 - 1.001e-9));
  BOOST_TEST(found(1000.0, 1000.0, 0.0));
  BOOST_TEST(holds(refusal([&] { found(0.0, 1.0, 0.0); }), "steels[0].length"));
  BOOST_TEST(holds(refusal([&] { found(1000.1, 1000.0, 0.0); }), "steels[0].length"));
}

BOOST_AUTO_TEST_SUITE_END()
