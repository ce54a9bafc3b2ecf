// SPDX-License-Identifier: GPL-3.0-or-later
// Verdicts, factors and floors exactly at their bounds, and a last digit beyond. Figures by hand.
#include <boost/test/unit_test.hpp>

#include <algorithm>
#include <cmath>
#include <limits>
#include <memory>
#include <numbers>

#include "options/carriers.h"
#include "options/judge_case.h"
#include "options/load_columns.h"
#include "options/loads.h"
#include "options/placement.h"
#include "options/ranking.h"
#include "options/search.h"
#include "options/seating.h"
#include "options/sentence.h"
#include "options/side_by_side.h"
#include "options/weight_limits.h"
#include "options/wind_limits.h"
#include "print.h"
#include "room_fixture.h"
#include "show_fixture.h"

using namespace hangbook;
using namespace hangbook::options;
using hangbook::testing::Room;

namespace {

double justAbove(double value) {
  return std::nextafter(value, std::numeric_limits<double>::infinity());
}
double justBelow(double value) {
  return std::nextafter(value, -std::numeric_limits<double>::infinity());
}
constexpr double unknown = std::numeric_limits<double>::quiet_NaN();

} // namespace

BOOST_AUTO_TEST_SUITE(verdict_bounds)

BOOST_AUTO_TEST_CASE(what_is_to_spare_against_its_margin) {
  BOOST_TEST(bySlack(1.0, 1.0) == Verdict::holds);
  BOOST_TEST(bySlack(justBelow(1.0), 1.0) == Verdict::tight);
  BOOST_TEST(bySlack(0.0, 1.0) == Verdict::tight);
  BOOST_TEST(bySlack(0.0, 0.0) == Verdict::tight);
  BOOST_TEST(bySlack(justAbove(0.0), 0.0) == Verdict::holds);
  BOOST_TEST(bySlack(justBelow(0.0), 1.0) == Verdict::fails);
  BOOST_TEST(bySlack(-1.0, unknown) == Verdict::fails);
  BOOST_TEST(bySlack(1.0, unknown) == Verdict::unproven);
  BOOST_TEST(bySlack(unknown, 1.0) == Verdict::unproven);
}

BOOST_AUTO_TEST_CASE(a_figure_against_its_limit) {
  BOOST_TEST(againstUpperLimit(9.0, 10.0, 1.0) == Verdict::holds);
  BOOST_TEST(againstUpperLimit(justAbove(9.0), 10.0, 1.0) == Verdict::tight);
  BOOST_TEST(againstUpperLimit(10.0, 10.0, 1.0) == Verdict::tight);
  BOOST_TEST(againstUpperLimit(justAbove(10.0), 10.0, 1.0) == Verdict::fails);
  BOOST_TEST(againstLowerLimit(11.0, 10.0, 1.0) == Verdict::holds);
  BOOST_TEST(againstLowerLimit(justBelow(11.0), 10.0, 1.0) == Verdict::tight);
  BOOST_TEST(againstLowerLimit(10.0, 10.0, 1.0) == Verdict::tight);
  BOOST_TEST(againstLowerLimit(justBelow(10.0), 10.0, 1.0) == Verdict::fails);
  BOOST_TEST(againstLoadLimit(9.0, 10.0) == Verdict::tight);
  BOOST_TEST(againstLoadLimit(justBelow(9.0), 10.0) == Verdict::holds);
  BOOST_TEST(againstLoadLimit(10.0, 10.0) == Verdict::tight);
  BOOST_TEST(againstLoadLimit(justAbove(10.0), 10.0) == Verdict::fails);
}

BOOST_AUTO_TEST_CASE(a_range_of_trims_holds_its_ends) {
  const TrimRange range{7.0, 8.0};
  BOOST_TEST(range.holds(7.0));
  BOOST_TEST(range.holds(8.0));
  BOOST_TEST(!range.holds(justBelow(7.0)));
  BOOST_TEST(!range.holds(justAbove(8.0)));
  BOOST_TEST(!range.holds(unknown));
  BOOST_TEST(TrimRange{}.holds(0.0));
}

BOOST_AUTO_TEST_CASE(a_window_of_one_trim_is_open) {
  BOOST_TEST((Window{8.0, 8.0}.open()));
  BOOST_TEST((!Window{justAbove(8.0), 8.0}.open()));
  BOOST_TEST((!Window{unknown, 8.0}.open()));
  BOOST_TEST(middleOf({8.0, 8.0}) == 8.0);
  BOOST_TEST(middleOf({8.0, 8.002}) == 8.0); // a whole step that stands at the window's end
  BOOST_TEST(middleOf({7.998, 8.0}) == 8.0);
}

/// To the centimetre; the end that there is where the other is not set; the lower end of a shut window.
BOOST_AUTO_TEST_CASE(the_middle_of_a_window_is_a_whole_centimetre) {
  constexpr double infinite = std::numeric_limits<double>::infinity();
  const auto close = boost::test_tools::tolerance(1e-12);
  BOOST_TEST(middleOf({7.0, 7.264}) == 7.13, close);
  BOOST_TEST(middleOf({7.0, 7.276}) == 7.14, close);
  BOOST_TEST(middleOf({7.0, 9.0}) == 8.0, close);
  BOOST_TEST(middleOf({7.131, 7.133}) == 7.132, close); // no whole one lies within
  BOOST_TEST(middleOf({-infinite, 8.0}) == 8.0);
  BOOST_TEST(middleOf({7.0, infinite}) == 7.0);
  BOOST_TEST(middleOf({8.0, 7.0}) == 8.0);
  BOOST_TEST(std::isnan(middleOf({-infinite, infinite})));
}

/// The slope of a chain: Pythagoras, and upright nothing.
BOOST_AUTO_TEST_CASE(a_chain_that_leans_pulls_more) {
  BOOST_TEST(leanFactor(3.0, 4.0) == 1.25);
  BOOST_TEST(std::isinf(leanFactor(3.0, 0.0)));
  BOOST_TEST(std::isinf(leanFactor(3.0, -4.0))); // the hang would stand above its point
  BOOST_TEST(std::isnan(leanFactor(3.0, unknown)));
}

BOOST_AUTO_TEST_CASE(of_two_uses_the_worse) {
  const Use holds{.verdict = Verdict::holds, .value = 9.0, .limit = 10.0};
  const Use tight{.verdict = Verdict::tight, .value = 1.0, .limit = 10.0};
  BOOST_TEST(worseOf(holds, tight).value == 1.0);
  BOOST_TEST(worseOf(tight, holds).value == 1.0);
  Use more = holds;
  more.value = 9.5;
  BOOST_TEST(worseOf(holds, more).value == 9.5);
  BOOST_TEST(worseOf(more, holds).value == 9.5);
  Use alike = holds; // of two that are used exactly alike the first
  alike.which = 7;
  BOOST_TEST(worseOf(holds, alike).which == holds.which);
  BOOST_TEST(worseOf(alike, holds).which == 7);
  // By their shares, however small the limit: 0.4 of 0.5 is more than 0.75 of 1.5.
  const Use small{.verdict = Verdict::holds, .value = 0.4, .limit = 0.5};
  const Use large{.verdict = Verdict::holds, .value = 0.75, .limit = 1.5};
  BOOST_TEST(worseOf(small, large).value == 0.4);
  BOOST_TEST(worseOf(large, small).value == 0.4);
}

/// A zone under both points of a pair, of 90 kN, which others load too.
struct Zoned {
  Room room;
  catalogue::PickArrangement picks;
  catalogue::Join pinned;
  WeightLimits limits;

  Zoned() {
    findCarriers({}, room.option);
    limits = *weightLimits(room.option);
    room.option.weight = std::make_shared<WeightLimits>(limits);
    room.option.arrangement = &picks;
    pinned.kind = catalogue::JointKind::pinned;
    room.option.joins.assign(room.option.cabinets.size(), &pinned);
    limits.dynamic.value = 1.5;
    limits.spacing = 1.0; // points as far apart as the picks
    limits.hoistBody = 500.0;
    limits.hoistChain = 300.0;
    limits.rigging = 200.0;
    limits.zonesUnknown.clear();
    limits.pointsHaveSource = true;
  }
  Case with(catalogue::Basis basis, double hangsAtRest, double hangsDynamic, double others) const {
    ZoneLoad zone;
    zone.capacity = 90000.0;
    zone.times = {1, 1};
    zone.basis = basis;
    zone.otherHangsAtRest = hangsAtRest;
    zone.otherHangsDynamic = hangsDynamic;
    zone.others = others;
    WeightLimits zoned = limits;
    zoned.zones = {zone};
    Case option = room.option;
    option.weight = std::make_shared<WeightLimits>(zoned);
    return option;
  }
  Use still(catalogue::Basis basis, double hangsAtRest, double hangsDynamic, double others) const {
    return zoneLoadRule.evaluate(with(basis, hangsAtRest, hangsDynamic, others), &room.settled, 8.0);
  }
  Use inGust(catalogue::Basis basis, double hangsAtRest, double hangsDynamic, double others) const {
    const WindForce wind = windForce(room.option, room.settled);
    const Case option = with(basis, hangsAtRest, hangsDynamic, others);
    const auto uses = InGust(option, room.settled, 8.0, wind, 50.0).uses();
    return std::ranges::find(uses, WindLimit::zone, &WindUse::limit)->use;
  }
};

/// Other hangs and other departments load a zone on the basis that its capacity is stated on.
BOOST_AUTO_TEST_CASE(a_zone_carries_what_all_put_onto_it) {
  using enum catalogue::Basis;
  const Zoned zone;
  const double own = zone.still(atRest, 0.0, 0.0, 0.0).value;
  BOOST_TEST_REQUIRE(own > 1.0);
  const auto close = boost::test_tools::tolerance(1e-12);
  BOOST_TEST(zone.still(atRest, 2000.0, 0.0, 0.0).value == own + 2.0, close);
  BOOST_TEST(zone.still(atRest, 2000.0, 3000.0, 700.0).value == own + 2.7, close);
  BOOST_TEST(zone.still(dynamic, 0.0, 0.0, 0.0).value == 1.5 * own, close);
  BOOST_TEST(zone.still(dynamic, 2000.0, 3000.0, 700.0).value == 1.5 * own + 3.7, close);
  // In a gust its own chains lean; what the others put onto it is added all the same.
  const double blown = zone.inGust(atRest, 0.0, 0.0, 0.0).value;
  BOOST_TEST(blown > own);
  BOOST_TEST(zone.inGust(atRest, 2000.0, 3000.0, 700.0).value == blown + 2.7, close);
  BOOST_TEST(zone.inGust(dynamic, 0.0, 0.0, 0.0).value == 1.5 * blown, close);
  BOOST_TEST(zone.inGust(dynamic, 2000.0, 3000.0, 700.0).value == 1.5 * blown + 3.7, close);
}

/// Outdoors what other hangs put onto a zone is not known in the gust, and neither is a zone's basis.
BOOST_AUTO_TEST_CASE(a_zone_in_the_gust_is_proven_by_its_own_hang_alone) {
  using enum catalogue::Basis;
  const Zoned zone;
  BOOST_TEST(zone.inGust(atRest, 0.0, 0.0, 700.0).verdict == Verdict::holds);
  BOOST_TEST(zone.inGust(unknown, 0.0, 0.0, 700.0).verdict == Verdict::unproven);
  BOOST_TEST(zone.inGust(atRest, 1.0, 1.0, 700.0).verdict == Verdict::unproven);
}

/// A floor counts from its section's first line to its last, and from its one side to the other, both
/// included.
BOOST_AUTO_TEST_CASE(a_flat_floor_ends_at_its_edges) {
  Room room;
  venue::Section stage;
  stage.name = QStringLiteral("riser");
  stage.profile = {{metres(2.0), metres(1.0)}, {metres(4.0), metres(2.0)}};
  stage.yFrom = metres(-3.0);
  stage.yTo = metres(3.0);
  room.venue().sections = {stage};
  const auto floorAt = [&](double x, double y) { return floorBeneath(room.venue(), {x, y}); };
  BOOST_TEST(floorAt(2.0, 0.0) == 1.0);
  BOOST_TEST(floorAt(justBelow(2.0), 0.0) == 0.0);
  BOOST_TEST(floorAt(3.0, 0.0) == 1.5);
  BOOST_TEST(floorAt(4.0, 0.0) == 2.0);
  BOOST_TEST(floorAt(justAbove(4.0), 0.0) == 0.0);
  BOOST_TEST(floorAt(3.0, -3.0) == 1.5);
  BOOST_TEST(floorAt(3.0, justBelow(-3.0)) == 0.0);
  BOOST_TEST(floorAt(3.0, 3.0) == 1.5);
  BOOST_TEST(floorAt(3.0, justAbove(3.0)) == 0.0);
  room.venue().sections[0].profile.push_back({metres(4.0), metres(9.0)}); // an upright face is no floor
  BOOST_TEST(floorAt(3.0, 0.0) == 1.5);
  BOOST_TEST(floorAt(4.0, 0.0) == 2.0);
  room.venue().sections[0].profile.insert(room.venue().sections[0].profile.begin(),
                                          {metres(2.0), metres(0.2)});
  BOOST_TEST(floorAt(2.0, 0.0) == 1.0);
}

/// Sound comes from midway between the two foremost corners, whichever way the element looks.
BOOST_AUTO_TEST_CASE(sound_comes_from_the_front) {
  hang::PlacedElement element;
  element.pin = {9.0, 9.0, 9.0};
  BOOST_TEST(sourceOf(element).x == 9.0); // no outline
  element.outline = {{4.0, 0.0, 0.0}, {0.0, 4.0, 0.0}, {0.0, 0.0, 4.0}, {1.0, 1.0, 1.0}};
  const auto from = [&element](hang::Vec3 forward) {
    element.forward = forward;
    return sourceOf(element);
  };
  const auto is = [](hang::Vec3 a, hang::Vec3 b) { return a.x == b.x && a.y == b.y && a.z == b.z; };
  BOOST_TEST(is(from({0.0, 0.8, 0.6}), {0.0, 2.0, 2.0}));
  BOOST_TEST(is(from({0.8, 0.6, 0.0}), {2.0, 2.0, 0.0}));
  BOOST_TEST(is(from({0.6, 0.0, 0.8}), {2.0, 0.0, 2.0}));
  BOOST_TEST(is(from({0.8, -0.6, 0.0}), {2.5, 0.5, 0.5}));
  BOOST_TEST(is(from({-0.6, 0.0, 0.8}), {0.5, 0.5, 2.5}));
}

/// A front line goes round its centre once at most, and no row may lie on the centre or beyond it.
BOOST_AUTO_TEST_CASE(rows_round_a_centre_stay_on_their_side_of_it) {
  const auto possible = [](double width, double radius, double first, double last) {
    return SweptSection{{}, {1.0, 0.0}, width, radius}.possible(first, last);
  };
  BOOST_TEST(possible(4.0, 0.0, 0.0, 9.0));
  BOOST_TEST(!possible(0.0, 0.0, 0.0, 9.0));
  const double around = 2.0 * std::numbers::pi * 5.0;
  BOOST_TEST(possible(around, 5.0, 0.0, 9.0));
  BOOST_TEST(!possible(justAbove(around), 5.0, 0.0, 9.0));
  BOOST_TEST(possible(4.0, 5.0, justAbove(-5.0), 9.0));
  BOOST_TEST(!possible(4.0, 5.0, -5.0, 9.0));
  BOOST_TEST(possible(4.0, -5.0, 0.0, justBelow(5.0)));
  BOOST_TEST(!possible(4.0, -5.0, 0.0, 5.0));
}

BOOST_AUTO_TEST_CASE(a_row_ends_at_half_its_width) {
  const SweptSection straight{{10.0, 2.0}, {1.0, 0.0}, 8.0, 0.0};
  BOOST_TEST(straight.seatAt({13.0, 6.0})->part == 0.5);
  BOOST_TEST(straight.seatAt({13.0, 6.0})->behind == 3.0);
  BOOST_TEST(straight.seatAt({13.0, -2.0})->part == -0.5);
  BOOST_TEST(!straight.seatAt({13.0, 6.0 + 1e-9}));
  BOOST_TEST(!straight.seatAt({13.0, -2.0 - 1e-9}));
}

/// The hang's forward edge stands over a riser that its middle does not reach: that floor is the nearer one.
BOOST_AUTO_TEST_CASE(the_highest_floor_below_any_corner_counts) {
  Room room;
  room.venue().sections.clear();
  room.refresh();
  const Use before = room.use(lowestEdgeRule);
  const Placement placement = placementOf(room.option, room.settled.layout);
  double front = placement.origin.x;
  for (const hang::PlacedElement& element : room.settled.layout.elements) {
    for (const hang::Vec3& corner : element.outline) {
      front = std::max(front, placement.placeOf(corner).x);
    }
  }
  BOOST_TEST_REQUIRE(front > placement.origin.x + 0.01);
  venue::Section riser;
  riser.name = QStringLiteral("riser");
  riser.profile = {{metres(front - 0.01), metres(1.25)}, {metres(front + 5.0), metres(1.25)}};
  room.venue().sections = {riser};
  room.refresh();
  const Use after = room.use(lowestEdgeRule);
  BOOST_TEST(before.value - before.limit - (after.value - after.limit) == 1.25,
             boost::test_tools::tolerance(1e-9));
}

/// A body has an outline from three corners on; with fewer, what the wind and the floor ask of it is not
/// known.
BOOST_AUTO_TEST_CASE(three_corners_make_an_outline) {
  Snapshot show = testing::smallHarbourShow();
  const Option best = decide(show, QStringLiteral("left")).hangs[0].options.front();
  BOOST_REQUIRE(best.setting.has_value());
  show.venue.outdoors = true;
  show.show.wind = metresPerSecond(1.0);
  show.show.windBasis = calendar::WindBasis::gust;
  show.show.windAveraging = 3.0;
  show.show.windHeight = metres(30);
  show.show.hangs[0].wetMass = kilograms(0);
  const auto verdictOf = [&](const char* rule, const Snapshot& of) {
    const Option option = judge(of, best.key, *best.setting);
    const auto found = std::ranges::find(option.findings, QString::fromLatin1(rule), &Finding::rule);
    BOOST_REQUIRE(found != option.findings.end());
    return found->verdict;
  };
  BOOST_TEST_REQUIRE(verdictOf("wind", show) < Verdict::unproven);
  for (const std::size_t corners : {3U, 2U}) {
    Snapshot bar = show;
    bar.catalogue.bars.front().outline.resize(corners);
    BOOST_TEST((verdictOf("wind", bar) < Verdict::unproven) == (corners == 3U));
    Snapshot cabinet = show;
    for (catalogue::CabinetType& each : cabinet.catalogue.cabinets) {
      each.outline.resize(corners);
    }
    BOOST_TEST((verdictOf("wind", cabinet) < Verdict::unproven) == (corners == 3U));
    BOOST_TEST((verdictOf("lowest-edge", cabinet) != Verdict::unproven) == (corners == 3U));
  }
  // A gust that is stated for the height of the picks is stated for the hang.
  const Option option = judge(show, best.key, *best.setting);
  BOOST_REQUIRE(option.wind.has_value());
  show.show.windHeight = metres(option.wind->heightM);
  BOOST_TEST(verdictOf("wind", show) < Verdict::unproven);
  show.show.windHeight = metres(justBelow(option.wind->heightM));
  BOOST_TEST(verdictOf("wind", show) == Verdict::unproven);
}

/// A house may ask for no share at all; a hoist that carries nothing, or would have to push, fails even so.
BOOST_AUTO_TEST_CASE(a_hoist_that_carries_nothing_fails) {
  auto limits = std::make_shared<WeightLimits>();
  limits->pickShare.value = 0.0;
  limits->sideUnlike.value = 10.0;
  Case option;
  option.weight = limits;
  Settled settled;
  settled.statics.pickCount = 2;
  settled.statics.side.emplace();
  settled.build.unknown.reset();
  const auto verdict = [&](double share, double unlike) {
    settled.build.leastShare = share;
    settled.build.unlike = unlike;
    return pickShareRule.evaluate(option, &settled, 0.0).verdict;
  };
  BOOST_TEST(verdict(1e-9, 0.0) == Verdict::holds);
  BOOST_TEST(verdict(0.0, 0.0) == Verdict::fails);
  BOOST_TEST(verdict(-1e-9, 0.0) == Verdict::fails);
  BOOST_TEST(verdict(notKnown, 0.0) == Verdict::fails);
  BOOST_TEST(verdict(0.5, 0.125) == Verdict::fails);
  settled.statics.side.reset(); // a fore-aft pair need not carry alike
  BOOST_TEST(verdict(0.5, 0.125) == Verdict::holds);
  settled.statics.pickCount = 1;
  BOOST_TEST(!pickShareRule.evaluate(option, &settled, 0.0).applies);
}

/// A span of trims is never told wider than it is.
BOOST_AUTO_TEST_CASE(spans_are_rounded_inwards) {
  const auto span = [](double low, double high) { return plainCompareWords().span(low, high).toStdString(); };
  BOOST_TEST(span(7.25, 8.5) == "7.25 to 8.50");
  BOOST_TEST(span(7.25, 7.25) == "7.25 to 7.25");
  BOOST_TEST(span(7.24999999999, 8.50000000001) == "7.25 to 8.50"); // but for the last bits
  BOOST_TEST(span(7.25001, 8.50001) == "7.26 to 8.50");
  BOOST_TEST(span(7.250002, 8.499998) == "7.26 to 8.49");
  BOOST_TEST(span(7.2400, 8.49999) == "7.24 to 8.49");
  BOOST_TEST(span(7.2512, 7.2588) == "7.2512 to 7.2588");
}

BOOST_AUTO_TEST_CASE(hoists_may_stand_as_unlike_as_the_bar_allows) {
  catalogue::BarType bar;
  bar.hoistOffsetLimit = metres(0.05);
  Case option;
  option.bar = &bar;
  const auto beyondAt = [&](double difference) {
    auto limits = std::make_shared<WeightLimits>();
    limits->hoistDifference.value = difference;
    option.weight = limits;
    return beyondBar(option);
  };
  BOOST_TEST(!beyondAt(0.05));
  BOOST_TEST(beyondAt(justAbove(0.05)));
}

BOOST_AUTO_TEST_CASE(every_part_that_differs_is_a_change) {
  OptionKey one;
  one.stack = QStringList{"bass"};
  OptionKey other = one;
  other.hoist = QStringLiteral("other");
  BOOST_TEST(changesBetween(one, other) == 1);
  other.bar = QStringLiteral("other");
  BOOST_TEST(changesBetween(one, other) == 2);
  other.picks = one.picks == catalogue::Picks::single ? catalogue::Picks::sidePair : catalogue::Picks::single;
  BOOST_TEST(changesBetween(one, other) == 3);
}

/// Nothing is a figure too: a hoist that weighs nothing, a limit of nothing. Below it is a slip.
BOOST_AUTO_TEST_CASE(nothing_is_a_figure_and_less_is_a_slip) {
  const auto bodyOf = [](double kg) {
    Room room;
    room.hoist().bodyMass = kilograms(kg);
    room.refresh();
    return weightLimits(room.option)->hoistBody;
  };
  BOOST_TEST(bodyOf(0.0) == 0.0);
  BOOST_TEST(std::isnan(bodyOf(-1e-9)));
  BOOST_TEST(bodyOf(10.0) == 98.0665, boost::test_tools::tolerance(1e-12)); // standard gravity, ISO 80000-3
}

/// EN 1991-3, hoisting class HC2: 1.10 + 0.34 of the speed in m/s. Standing still is a speed, backwards is
/// none.
BOOST_AUTO_TEST_CASE(the_factor_of_a_hoist_begins_at_no_speed) {
  Room room;
  const auto factorAt = [&room](double speed) {
    room.hoist().hoistingClass = catalogue::HoistingClass::hc2;
    room.hoist().speed = metresPerSecond(speed);
    room.refresh();
    return weightLimits(room.option)->dynamic.value;
  };
  BOOST_TEST(factorAt(0.0) == 1.10);
  BOOST_TEST(factorAt(0.1) == 1.134, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(std::isnan(factorAt(-0.1)));
}

/// A house may state the hoist's own factor: then it is the house that says so.
BOOST_AUTO_TEST_CASE(a_house_that_states_the_same_factor_is_the_source) {
  Room room;
  room.hoist().hoistingClass = catalogue::HoistingClass::hc2;
  room.hoist().speed = metresPerSecond(0.0);
  room.refresh();
  BOOST_TEST(weightLimits(room.option)->dynamic.source.contains(QStringLiteral("EN 1991-3")));
  room.houseSays("dynamic-factor", 1.10);
  room.refresh();
  BOOST_TEST(weightLimits(room.option)->dynamic.value == 1.10);
  BOOST_TEST(!weightLimits(room.option)->dynamic.source.contains(QStringLiteral("EN 1991-3")));
}

BOOST_AUTO_TEST_SUITE_END()
