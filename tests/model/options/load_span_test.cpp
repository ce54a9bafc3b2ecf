// SPDX-License-Identifier: GPL-3.0-or-later
// Rules asked of all settings at once, by figures worked out by hand: what each pick, point, piece and zone
// comes to, where one of two decides, and what is not known. In each, the rule itself says the same.
#include <boost/test/unit_test.hpp>

#include <limits>

#include "load_fixture.h"
#include "options/bridle_pick.h"
#include "options/load_span.h"
#include "print.h"

using namespace hangbook;
using namespace hangbook::options;
using hangbook::testing::LoadCase;
using hangbook::testing::PairLoads;
using hangbook::testing::settledWith;

namespace {

constexpr double infinite = std::numeric_limits<double>::infinity();

/// The left pick carries more in the build than as set, and more than the right one.
constexpr PairLoads leftHeavy{4000.0, 3000.0, 5000.0, 4500.0};
/// The right one more.
constexpr PairLoads rightHeavy{3000.0, 4000.0, 4500.0, 5000.0};

/// Of the setting in the middle of three, the others nearly empty; the rule asked by itself must agree on
/// all.
Verdict verdictOf(const LoadCase& of, const Rule& rule, const PairLoads& loads, bool sidePair = false) {
  const Case option = of.option();
  const std::vector<Settled> settings{settledWith({1.0, 1.0, 1.0, 1.0}, sidePair),
                                      settledWith(loads, sidePair),
                                      settledWith({2.0, 2.0, 2.0, 2.0}, sidePair)};
  const LoadColumns columns(option, settings);
  const LoadSpan span(option, columns);
  BOOST_REQUIRE(span.usable());
  std::vector<double> verdicts(settings.size(), 0.0);
  span.raise(rule, verdicts);
  for (std::size_t i = 0; i < settings.size(); ++i) {
    const Verdict own = rule.evaluate(option, &settings[i], -infinite).verdict;
    BOOST_TEST(static_cast<Verdict>(verdicts[i]) == own, rule.id << " of setting " << i);
  }
  return static_cast<Verdict>(verdicts[1]);
}

/// What the rule compares with the limit that `set` sets is `newtons`: a little less than that it fails, nine
/// tenths of the limit is where tight begins. Leaves the limit far away.
void comesTo(LoadCase& of, const Rule& rule, const PairLoads& loads, double newtons,
             void (*set)(LoadCase&, double), bool sidePair = false) {
  const auto verdictAt = [&](double limit) {
    set(of, limit);
    return verdictOf(of, rule, loads, sidePair);
  };
  BOOST_TEST(verdictAt(newtons * 1.0000001) == Verdict::tight, rule.id << " " << newtons);
  BOOST_TEST(verdictAt(newtons * 0.9999999) == Verdict::fails, rule.id << " " << newtons);
  BOOST_TEST(verdictAt(newtons / 0.8999999) == Verdict::holds, rule.id << " " << newtons);
  BOOST_TEST(verdictAt(newtons / 0.9000001) == Verdict::tight, rule.id << " " << newtons);
  set(of, 1e6);
}

void capacities(LoadCase& of, double limit) {
  of.limits.capacity = {limit, limit};
}
void leftCapacity(LoadCase& of, double limit) {
  of.limits.capacity[0] = limit;
}
void rightCapacity(LoadCase& of, double limit) {
  of.limits.capacity[1] = limit;
}
void hoistLimit(LoadCase& of, double limit) {
  of.hoist.limit = kilonewtons(limit / 1000.0);
}
void shackleLimit(LoadCase& of, double limit) {
  of.shackle.limit = kilonewtons(limit / 1000.0);
}
void steelLimit(LoadCase& of, double limit) {
  of.steel.limit = kilonewtons(limit / 1000.0);
}
void steelWhole(LoadCase& of, double limit) {
  of.limits.secondarySteel[0].limit = limit;
}
void barLimit(LoadCase& of, double limit) {
  of.picks.limit = kilonewtons(limit / 1000.0);
}
void zoneCapacity(LoadCase& of, double limit) {
  of.limits.zones[0].capacity = limit;
}

ZoneLoad zoneOf(std::vector<int> times, catalogue::Basis basis = catalogue::Basis::atRest) {
  ZoneLoad zone;
  zone.capacity = 1e6;
  zone.basis = basis;
  zone.others = 700.0;
  zone.otherHangsAtRest = 2000.0;
  zone.otherHangsDynamic = 3000.0;
  zone.times = std::move(times);
  return zone;
}

} // namespace

BOOST_AUTO_TEST_SUITE(load_span)

BOOST_AUTO_TEST_CASE(speaks_of_what_a_load_decides) {
  for (const Rule* rule : {&pointLoadRule, &zoneLoadRule, &hoistRule, &barRule, &hardwareRule, &unevenRule}) {
    BOOST_TEST(LoadSpan::speaksOf(*rule), rule->id);
  }
  for (const Rule* rule : {&bridleRule, &jointRule, &chainRule, &pickShareRule, &windRule, &leanRule}) {
    BOOST_TEST(!LoadSpan::speaksOf(*rule), rule->id);
  }
}

BOOST_AUTO_TEST_CASE(is_of_use_where_each_pick_hangs_from_a_point_of_its_own) {
  const LoadCase of;
  const std::vector<Settled> settings{settledWith(leftHeavy)};
  Case option = of.option();
  const LoadColumns columns(option, settings);
  BOOST_TEST(LoadSpan(option, columns).usable());
  option.carriers.push_back(option.carriers.front());
  BOOST_TEST(!LoadSpan(option, columns).usable());
  option = of.option();
  option.bridles[1] = std::make_shared<const BridledPick>();
  BOOST_TEST(!LoadSpan(option, columns).usable());
  option = of.option();
  LoadColumns unlike = columns;
  unlike.alike = false;
  BOOST_TEST(!LoadSpan(option, unlike).usable());
}

/// The worst of the build, and body, chain and rigging twice as heavy: 5000 + 600 + 400 + 200 N.
BOOST_AUTO_TEST_CASE(a_point_carries_pick_and_gear) {
  LoadCase of;
  comesTo(of, pointLoadRule, leftHeavy, 6200.0, capacities);
  comesTo(of, pointLoadRule, leftHeavy, 6200.0, leftCapacity);
  comesTo(of, pointLoadRule, leftHeavy, 5700.0, rightCapacity);
  comesTo(of, pointLoadRule, rightHeavy, 6200.0, rightCapacity);
  of.points[0].basis = catalogue::Basis::dynamic;
  comesTo(of, pointLoadRule, leftHeavy, 9300.0, leftCapacity); // × 1.5
  comesTo(of, pointLoadRule, leftHeavy, 5700.0, rightCapacity);
}

/// Nine tenths of 10 kN are tight, and so are all 10 kN; a last digit less holds, a last digit more fails.
BOOST_AUTO_TEST_CASE(a_load_exactly_at_its_limit) {
  LoadCase of;
  of.limits.capacity = {10000.0, 10000.0};
  const auto verdictAt = [&](double most) { return verdictOf(of, pointLoadRule, {1.0, 1.0, most, 1.0}); };
  BOOST_TEST(verdictAt(7800.0) == Verdict::tight);
  BOOST_TEST(verdictAt(7799.99999999999) == Verdict::holds);
  BOOST_TEST(verdictAt(8800.0) == Verdict::tight);
  BOOST_TEST(verdictAt(8800.00000000001) == Verdict::fails);
}

BOOST_AUTO_TEST_CASE(a_point_of_unknown_basis_or_capacity_proves_nothing) {
  for (const std::size_t which : {0U, 1U}) {
    LoadCase of;
    of.points[which].basis = catalogue::Basis::unknown;
    BOOST_TEST(verdictOf(of, pointLoadRule, leftHeavy) == Verdict::unproven);
    of.limits.capacity[which] = 1000.0;
    BOOST_TEST(verdictOf(of, pointLoadRule, leftHeavy) == Verdict::fails);
    LoadCase other;
    other.limits.capacity[which] = notKnown;
    BOOST_TEST(verdictOf(other, pointLoadRule, leftHeavy) == Verdict::unproven);
    other.limits.capacity[1 - which] = 1000.0;
    BOOST_TEST(verdictOf(other, pointLoadRule, leftHeavy) == Verdict::fails);
  }
  LoadCase of;
  of.limits.rigging = notKnown;
  BOOST_TEST(verdictOf(of, pointLoadRule, leftHeavy) == Verdict::unproven);
}

/// Picks that count alike carry most when all of it hangs: 4000 + 1200 + 3000 + 1200 N, other hangs and other
/// departments beside. Where one counts alone or more often, each is taken at its worst step.
BOOST_AUTO_TEST_CASE(a_zone_carries_what_counts_in_it) {
  LoadCase of;
  const auto carries = [&](std::vector<int> times, catalogue::Basis basis, double newtons) {
    of.limits.zones = {zoneOf(std::move(times), basis)};
    comesTo(of, zoneLoadRule, leftHeavy, newtons, zoneCapacity);
  };
  using catalogue::Basis;
  carries({1, 1}, Basis::atRest, 9400.0 + 2700.0);
  carries({2, 2}, Basis::atRest, 18800.0 + 2700.0);
  carries({1, 1}, Basis::dynamic, 14100.0 + 3700.0);
  carries({1, 0}, Basis::atRest, 6200.0 + 2700.0);
  carries({0, 1}, Basis::atRest, 5700.0 + 2700.0);
  carries({0, 2}, Basis::dynamic, 17100.0 + 3700.0);
  carries({2, 1}, Basis::atRest, 12400.0 + 5700.0 + 2700.0);
  carries({0, 0}, Basis::atRest, 2700.0);
  carries({0, 0}, Basis::dynamic, 3700.0);
}

BOOST_AUTO_TEST_CASE(each_zone_by_its_own_capacity) {
  LoadCase of;
  for (const std::size_t which : {0U, 1U}) {
    of.limits.zones = {zoneOf({1, 1}), zoneOf({1, 1})};
    of.limits.zones[which].capacity = 12000.0; // carries 12,100 N
    BOOST_TEST(verdictOf(of, zoneLoadRule, leftHeavy) == Verdict::fails);
    of.limits.zones[which].capacity = 12200.0;
    BOOST_TEST(verdictOf(of, zoneLoadRule, leftHeavy) == Verdict::tight);
    of.limits.zones[which] = zoneOf({1, 1}, catalogue::Basis::unknown);
    BOOST_TEST(verdictOf(of, zoneLoadRule, leftHeavy) == Verdict::unproven);
  }
}

BOOST_AUTO_TEST_CASE(a_venue_that_says_nothing_of_what_is_shared) {
  const auto verdictWith = [](bool stated, bool source, bool without, const QStringList& unknown, bool zone) {
    LoadCase of;
    of.limits.zonesStated = stated;
    of.limits.pointsHaveSource = source;
    of.limits.pointsWithoutZone = without;
    of.limits.zonesUnknown = unknown;
    if (zone) {
      of.limits.zones = {zoneOf({1, 1})};
    }
    return verdictOf(of, zoneLoadRule, leftHeavy);
  };
  const QStringList none;
  const QStringList one{QStringLiteral("truss")};
  BOOST_TEST(verdictWith(false, true, true, none, false) == Verdict::holds); // nothing shared: does not apply
  BOOST_TEST(verdictWith(true, true, true, none, false) == Verdict::unproven);
  BOOST_TEST(verdictWith(false, false, true, none, false) == Verdict::unproven);
  BOOST_TEST(verdictWith(false, true, true, none, true) == Verdict::holds);
  BOOST_TEST(verdictWith(true, true, true, none, true) == Verdict::unproven);
  BOOST_TEST(verdictWith(true, true, false, none, true) == Verdict::holds);
  BOOST_TEST(verdictWith(false, false, false, none, false) == Verdict::holds);
  BOOST_TEST(verdictWith(false, true, false, one, false) == Verdict::unproven);
  BOOST_TEST(verdictWith(true, true, false, one, true) == Verdict::unproven);
}

/// (5000 + 600 + 400) × 3 where the body climbs; 5000 × 3 where it stays above.
BOOST_AUTO_TEST_CASE(a_hoist_lifts_its_pick_and_itself) {
  LoadCase of;
  comesTo(of, hoistRule, leftHeavy, 18000.0, hoistLimit);
  comesTo(of, hoistRule, rightHeavy, 18000.0, hoistLimit);
  of.limits.hoistPart.value = 0.5;
  comesTo(of, hoistRule, leftHeavy, 36000.0, hoistLimit);
  of.limits.hoistPart.value = 1.0;
  of.hoist.bodyClimbs = false;
  comesTo(of, hoistRule, leftHeavy, 15000.0, hoistLimit);
  of.hoist.bodyClimbs.reset();
  BOOST_TEST(verdictOf(of, hoistRule, leftHeavy) == Verdict::unproven);
  of.hoist.bodyClimbs = true;
  of.hoist.limit.reset();
  BOOST_TEST(verdictOf(of, hoistRule, leftHeavy) == Verdict::unproven);
}

BOOST_AUTO_TEST_CASE(a_hoist_over_people_without_a_second_suspension) {
  const auto verdictWith = [](std::optional<bool> people, std::optional<bool> holds, bool second) {
    LoadCase of;
    of.snapshot.show.peopleBeneath = people;
    of.hoist.holdsWithoutSecondary = holds;
    if (!second) {
      of.limits.secondarySteel.clear();
    }
    return verdictOf(of, hoistRule, leftHeavy);
  };
  BOOST_TEST(verdictWith(true, std::nullopt, false) == Verdict::unproven);
  BOOST_TEST(verdictWith(true, false, false) == Verdict::fails);
  BOOST_TEST(verdictWith(true, true, false) == Verdict::holds);
  BOOST_TEST(verdictWith(true, false, true) == Verdict::holds);
  BOOST_TEST(verdictWith(false, false, false) == Verdict::holds);
  BOOST_TEST(verdictWith(std::nullopt, false, false) == Verdict::holds);
}

/// 7000 N × 3, or × 1 where the maker's limit includes the factors.
BOOST_AUTO_TEST_CASE(a_bar_carries_all_of_it) {
  LoadCase of;
  comesTo(of, barRule, leftHeavy, 21000.0, barLimit);
  of.limits.accessory.value = 0.5;
  comesTo(of, barRule, leftHeavy, 42000.0, barLimit);
  of.limits.accessory.value = 1.0;
  of.picks.limitIncludesFactors = true;
  comesTo(of, barRule, leftHeavy, 7000.0, barLimit);
  of.picks.limit.reset();
  BOOST_TEST(verdictOf(of, barRule, leftHeavy) == Verdict::unproven);
}

/// (5000 + 1200) × 3 in the rigging of a pick; its second suspension 5000 × 3 as it may be used, and caught
/// after no drop twice 5000, or by the house's factor.
BOOST_AUTO_TEST_CASE(hardware_carries_pick_and_gear_and_catches_the_pick) {
  LoadCase of;
  comesTo(of, hardwareRule, leftHeavy, 18600.0, shackleLimit);
  comesTo(of, hardwareRule, rightHeavy, 18600.0, shackleLimit);
  comesTo(of, hardwareRule, leftHeavy, 15000.0, steelLimit);
  comesTo(of, hardwareRule, rightHeavy, 15000.0, steelLimit);
  comesTo(of, hardwareRule, leftHeavy, 10000.0, steelWhole);
  of.limits.secondary.value = 2.5;
  comesTo(of, hardwareRule, leftHeavy, 12500.0, steelWhole);
  of.limits.secondary.value = 1.0;
  of.steel.stiffness.reset(); // asked for only where there is a drop
  comesTo(of, hardwareRule, leftHeavy, 10000.0, steelWhole);
}

/// 5000 N stretch 2 µm/N × 5000 N = 10 mm; after 40 mm that is 1 + √(1 + 2 × 4) = 4 times.
BOOST_AUTO_TEST_CASE(what_is_caught_after_a_drop) {
  LoadCase of;
  of.limits.drop.value = 0.04;
  comesTo(of, hardwareRule, leftHeavy, 20000.0, steelWhole);
  of.limits.drop.value = 0.20; // the most that any drop may be
  BOOST_TEST(verdictOf(of, hardwareRule, leftHeavy) == Verdict::holds);
  of.limits.drop.value = std::nextafter(0.20, 1.0);
  BOOST_TEST(verdictOf(of, hardwareRule, leftHeavy) == Verdict::fails);
  of.limits.drop.value = 0.04;
  of.steel.stiffness.reset();
  BOOST_TEST(verdictOf(of, hardwareRule, leftHeavy) == Verdict::unproven);
}

BOOST_AUTO_TEST_CASE(the_weakest_piece_decides_and_an_unknown_one_proves_nothing) {
  LoadCase of;
  catalogue::HardwareType weak = of.shackle;
  weak.limit = kilonewtons(18.5); // carries 18.6
  catalogue::HardwareType unknown = of.shackle;
  unknown.limit.reset();
  const Piece strong = of.limits.hardware.front();
  const Piece weakest{QStringLiteral("weak"), 1e6, {}, &weak};
  const Piece open{QStringLiteral("open"), notKnown, {}, &unknown};
  for (const auto& [pieces, verdict] :
       std::vector<std::pair<std::vector<Piece>, Verdict>>{{{strong, weakest}, Verdict::fails},
                                                           {{weakest, strong}, Verdict::fails},
                                                           {{strong, open}, Verdict::unproven},
                                                           {{open, strong}, Verdict::unproven},
                                                           {{open, weakest}, Verdict::fails},
                                                           {{open}, Verdict::unproven}}) {
    of.limits.hardware = pieces;
    BOOST_TEST(verdictOf(of, hardwareRule, leftHeavy) == verdict);
  }
  LoadCase second;
  Piece caught = second.limits.secondarySteel.front();
  caught.limit = 9900.0; // catches 10,000 N
  Piece unstated = caught;
  unstated.limit = notKnown;
  const Piece stated = second.limits.secondarySteel.front();
  for (const auto& [pieces, verdict] :
       std::vector<std::pair<std::vector<Piece>, Verdict>>{{{stated, caught}, Verdict::fails},
                                                           {{caught, stated}, Verdict::fails},
                                                           {{stated, unstated}, Verdict::unproven},
                                                           {{unstated, stated}, Verdict::unproven},
                                                           {{unstated, caught}, Verdict::fails}}) {
    second.limits.secondarySteel = pieces;
    BOOST_TEST(verdictOf(second, hardwareRule, leftHeavy) == verdict);
  }
}

BOOST_AUTO_TEST_CASE(rigging_and_second_suspension_that_are_not_there) {
  const auto verdictWith = [](bool rigging, bool second, std::optional<bool> people,
                              std::optional<bool> without) {
    LoadCase of;
    if (!rigging) {
      of.limits.hardware.clear();
    }
    if (!second) {
      of.limits.secondarySteel.clear();
    }
    of.snapshot.show.peopleBeneath = people;
    of.hoist.holdsWithoutSecondary = without;
    return verdictOf(of, hardwareRule, leftHeavy);
  };
  BOOST_TEST(verdictWith(true, true, true, false) == Verdict::holds);
  BOOST_TEST(verdictWith(false, true, true, false) == Verdict::unproven);
  BOOST_TEST(verdictWith(false, false, false, true) == Verdict::unproven);
  BOOST_TEST(verdictWith(true, false, false, false) == Verdict::holds);
  BOOST_TEST(verdictWith(true, false, true, true) == Verdict::holds);
  BOOST_TEST(verdictWith(true, false, true, false) == Verdict::unproven);
  BOOST_TEST(verdictWith(true, false, true, std::nullopt) == Verdict::unproven);
  BOOST_TEST(verdictWith(true, false, std::nullopt, std::nullopt) == Verdict::unproven);
}

/// With one hoist 0.6 m higher its pick has 0.8 of 7000 N: 5600, and 6800 at its point. Whichever it is.
BOOST_AUTO_TEST_CASE(the_higher_hoist_of_an_uneven_pair_takes_more) {
  LoadCase of;
  comesTo(of, unevenRule, {3500.0, 3500.0, 3500.0, 3500.0}, 6800.0, leftCapacity, true);
  comesTo(of, unevenRule, {3500.0, 3500.0, 3500.0, 3500.0}, 6800.0, rightCapacity, true);
  comesTo(of, unevenRule, {3500.0, 3500.0, 6000.0, 3500.0}, 7200.0, leftCapacity, true); // in the build
  comesTo(of, unevenRule, {3500.0, 3500.0, 3500.0, 6000.0}, 7200.0, rightCapacity, true);
  comesTo(of, unevenRule, {3500.0, 3500.0, 3500.0, 3500.0}, 19800.0, hoistLimit, true);   // 6600 × 3
  comesTo(of, unevenRule, {3500.0, 3500.0, 3500.0, 3500.0}, 20400.0, shackleLimit, true); // 6800 × 3
  of.limits.zones = {zoneOf({1, 0})};
  comesTo(of, unevenRule, {3500.0, 3500.0, 3500.0, 3500.0}, 6800.0 + 2700.0, zoneCapacity, true);
  of.limits.zones = {zoneOf({0, 1})};
  comesTo(of, unevenRule, {3500.0, 3500.0, 3500.0, 3500.0}, 6800.0 + 2700.0, zoneCapacity, true);
}

BOOST_AUTO_TEST_CASE(hoists_more_unlike_than_the_bar_allows_fail_and_one_pick_has_none) {
  LoadCase of;
  of.limits.capacity = {1000.0, 1000.0};
  BOOST_TEST(verdictOf(of, unevenRule, leftHeavy, false) == Verdict::holds); // no side pair
  of.limits.capacity = {1e6, 1e6};
  of.bar.hoistOffsetLimit = metres(0.6);
  BOOST_TEST(verdictOf(of, unevenRule, leftHeavy, true) == Verdict::holds);
  of.bar.hoistOffsetLimit = metres(0.59);
  BOOST_TEST(verdictOf(of, unevenRule, leftHeavy, true) == Verdict::fails);
}

/// A step of the build whose loads do not follow leaves what they decide open, and fails nothing.
BOOST_AUTO_TEST_CASE(what_does_not_follow_is_open_for_its_own_setting) {
  LoadCase of;
  of.limits.zones = {zoneOf({1, 1})};
  std::vector<Settled> settings(4, settledWith(leftHeavy));
  settings[1].build.unknown = hang::BuildMoment{};
  auto doubt = std::make_shared<SettledDoubt>();
  doubt->worst.bounded = false;
  settings[2].doubt = doubt;
  auto bounded = std::make_shared<SettledDoubt>();
  settings[3].doubt = bounded;
  const Case option = of.option();
  const LoadColumns columns(option, settings);
  const LoadSpan span(option, columns);
  const auto verdicts = [&](const Rule& rule) {
    std::vector<double> all(4, 0.0);
    span.raise(rule, all);
    return all;
  };
  const double open = static_cast<double>(Verdict::unproven);
  const std::vector<double> build{0.0, open, 0.0, 0.0};
  const std::vector<double> doubts{0.0, 0.0, open, 0.0};
  BOOST_TEST(verdicts(pointLoadRule) == build, boost::test_tools::per_element());
  BOOST_TEST(verdicts(hoistRule) == build, boost::test_tools::per_element());
  BOOST_TEST(verdicts(hardwareRule) == build, boost::test_tools::per_element());
  BOOST_TEST(verdicts(zoneLoadRule) == doubts, boost::test_tools::per_element());
  BOOST_TEST(verdicts(barRule) == doubts, boost::test_tools::per_element());
}

BOOST_AUTO_TEST_CASE(a_verdict_is_only_ever_raised) {
  LoadCase of;
  of.limits.capacity = {6500.0, 1e6}; // tight: 6200 N
  const Case option = of.option();
  const std::vector<Settled> settings(4, settledWith(leftHeavy));
  const LoadColumns columns(option, settings);
  std::vector<double> verdicts{0.0, 1.0, 2.0, 3.0};
  LoadSpan(option, columns).raise(pointLoadRule, verdicts);
  BOOST_TEST(verdicts == (std::vector<double>{1.0, 1.0, 2.0, 3.0}), boost::test_tools::per_element());
  of.limits.zonesUnknown = {QStringLiteral("truss")}; // raises all to unproven, and no further
  const Case other = of.option();
  verdicts = {0.0, 1.0, 2.0, 3.0};
  LoadSpan(other, columns).raise(zoneLoadRule, verdicts);
  BOOST_TEST(verdicts == (std::vector<double>{2.0, 2.0, 2.0, 3.0}), boost::test_tools::per_element());
}

BOOST_AUTO_TEST_SUITE_END()
