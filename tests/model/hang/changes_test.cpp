// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <functional>

#include <boost/test/unit_test.hpp>

#include "hang/changes.h"
#include "hang/solve.h"
#include "hang/uneven.h"
#include "quantity/quantity.h"
#include "support/example_hang.h"

using namespace hangbook;
using hang::Change;
using hang::ChangeKind;
using hang::Hang;

namespace {

hang::Element block(const char* name, double mass, double cgX) {
  hang::Element made;
  made.name = name;
  made.mass = mass;
  made.cg = {cgX, -0.25};
  made.nextPin = hang::Vec2{0.0, -0.5};
  made.outline = {{0.0, 0.0}, {0.0, -0.5}, {-0.8, -0.5}, {-0.8, 0.0}};
  made.joint = hang::Pinned{0.0, {hang::Vec2{0.0, -0.05}, hang::Vec2{-0.5, -0.05}}};
  return made;
}

Hang threeBlocks() {
  Hang made;
  made.bar.picks = hang::ForeAftPair{{0.5, 0.0}, {-0.5, 0.0}};
  made.bar.frameMass = 50.0;
  made.bar.stackPin = {0.4, -0.1};
  made.set.tiltDeg = 0.0;
  made.stack = {block("heavy", 90.0, -0.3), block("heavy", 90.0, -0.3), block("light", 40.0, -0.5)};
  return made;
}

std::array<double, 2> loadsOf(const Hang& hang) {
  const hang::Statics statics = hang::solve(hang);
  return {statics.pickLoads[0].load, statics.pickLoads[1].load};
}

/// The change that fits best of a kind.
Change bestOf(ChangeKind kind, const std::vector<Change>& changes, const std::array<double, 2>& readings) {
  const Change* best = nullptr;
  for (const Change& each : changes) {
    if (each.kind == kind &&
        (best == nullptr || hang::missOf(each, readings, 2) < hang::missOf(*best, readings, 2))) {
      best = &each;
    }
  }
  BOOST_REQUIRE(best != nullptr);
  return *best;
}

/// A hang of which one thing is really otherwise: the reading is exact, and that very change explains it.
void finds(const Hang& taken, const Hang& really, ChangeKind kind,
           const std::function<void(const Change&)>& looksRight) {
  const std::array<double, 2> readings = loadsOf(really);
  const auto changes = hang::singleChanges(taken, readings);
  const Change found = bestOf(kind, changes, readings);
  BOOST_TEST(hang::missOf(found, readings, 2) < 1e-6 * (readings[0] + readings[1]));
  looksRight(found);
}

} // namespace

BOOST_AUTO_TEST_SUITE(single_changes)

BOOST_AUTO_TEST_CASE(eachMistakeIsFound) {
  const Hang taken = threeBlocks();
  Hang fewer = taken;
  fewer.stack.erase(fewer.stack.begin());
  finds(taken, fewer, ChangeKind::missing, [](const Change& change) {
    BOOST_TEST(change.count == 1);
    BOOST_TEST(change.element <= 2);
  });
  Hang lightGone = taken;
  lightGone.stack.pop_back();
  finds(taken, lightGone, ChangeKind::missing, [](const Change& change) { BOOST_TEST(change.element == 3); });
  Hang more = taken;
  more.stack.push_back(taken.stack[2]);
  finds(taken, more, ChangeKind::extra, [](const Change& change) {
    BOOST_TEST(change.element == 3);
    BOOST_TEST(change.count == 1);
  });
  Hang other = taken;
  other.stack[1] = taken.stack[2];
  finds(taken, other, ChangeKind::other, [](const Change& change) { BOOST_TEST(change.instead == 3); });
  Hang cable = taken;
  cable.bar.frameMass += 27.5;
  finds(taken, cable, ChangeKind::barMass,
        [](const Change& change) { BOOST_TEST(change.amount == 27.5, boost::test_tools::tolerance(1e-9)); });
  Hang wet = taken;
  for (hang::Element& each : wet.stack) {
    each.mass *= 1.08;
  }
  finds(taken, wet, ChangeKind::heavier,
        [](const Change& change) { BOOST_TEST(change.amount == 1.08, boost::test_tools::tolerance(1e-9)); });
  Hang tilted = taken;
  tilted.set.tiltDeg = 6.0;
  finds(taken, tilted, ChangeKind::uneven, [](const Change& change) {
    BOOST_TEST(change.amount == std::sin(hang::toRadians(6.0)), boost::test_tools::tolerance(1e-9));
  });
}

/// The bare bar is no hang: that its only cabinet is missing explains nothing.
BOOST_AUTO_TEST_CASE(theLastCabinetIsNotMissing) {
  Hang taken = threeBlocks();
  taken.stack.resize(1);
  const double bare = 0.5 * taken.bar.frameMass * standardGravity;
  for (const Change& each : hang::singleChanges(taken, {bare, bare})) {
    BOOST_TEST((each.kind != ChangeKind::missing));
  }
}

BOOST_AUTO_TEST_CASE(aPullAtOnePickAndExchangedCells) {
  const Hang taken = threeBlocks();
  std::array<double, 2> readings = loadsOf(taken);
  const std::array<double, 2> plain = readings;
  readings[1] += 450.0;
  const Change pull = bestOf(ChangeKind::pull, hang::singleChanges(taken, readings), readings);
  BOOST_TEST(pull.element == 2);
  BOOST_TEST(pull.amount == 450.0, boost::test_tools::tolerance(1e-9));
  const std::array<double, 2> swapped{plain[1], plain[0]};
  const Change exchanged = bestOf(ChangeKind::exchanged, hang::singleChanges(taken, swapped), swapped);
  BOOST_TEST(hang::missOf(exchanged, swapped, 2) < 1e-9);
}

/// A side pair with a chained downfill: pan and links are looked at, and taking the held cabinet away takes
/// its chain with it.
BOOST_AUTO_TEST_CASE(aPannedHangWithItsChain) {
  const Hang taken = testing::exampleHang();
  Hang really = taken;
  really.set.panDeg = taken.set.panDeg + 3.0;
  const std::array<double, 2> readings = loadsOf(really);
  const Change panned = bestOf(ChangeKind::panned, hang::singleChanges(taken, readings), readings);
  BOOST_TEST(panned.amount == really.set.panDeg, boost::test_tools::tolerance(1e-9));
  for (const Change& each : hang::singleChanges(taken, readings)) {
    BOOST_TEST(std::isfinite(each.loads[0]));
    BOOST_TEST(std::isfinite(each.loads[1]));
  }
}

/// Nothing is other than taken: some change of no size fits, and none claims to be anything.
BOOST_AUTO_TEST_CASE(nothingIsWrong) {
  const Hang taken = threeBlocks();
  const std::array<double, 2> readings = loadsOf(taken);
  const auto changes = hang::singleChanges(taken, readings);
  BOOST_TEST(std::abs(bestOf(ChangeKind::barMass, changes, readings).amount) < 1e-9);
  BOOST_TEST(std::abs(bestOf(ChangeKind::uneven, changes, readings).amount) < 1e-9);
}

/// A link more is told from where it moves a millionth of the weight on: of a pair panned so little that it
/// moves half of that, or twice.
BOOST_AUTO_TEST_CASE(aLinkThatMovesNextToNothingIsNotTold) {
  Hang hang = testing::exampleHang();
  const double weight = hang::solve(hang).mass * standardGravity;
  const auto movedBy = [&hang](double panDeg) {
    hang.set.panDeg = panDeg;
    Hang longer = hang;
    ++longer.chain->mark;
    const std::array<double, 2> there = loadsOf(longer);
    const std::array<double, 2> here = loadsOf(hang);
    return std::pair(std::abs(there[0] - here[0]), there);
  };
  const double each = movedBy(1.0).first / std::sin(hang::toRadians(1.0));
  BOOST_TEST_REQUIRE(each > 1.0);
  for (const double part : {0.5, 2.0}) {
    const double pan = hang::toDegrees(std::asin(part * 1e-6 * weight / each));
    const auto [moved, readings] = movedBy(pan);
    BOOST_TEST(moved == part * 1e-6 * weight, boost::test_tools::tolerance(0.1));
    const auto changes = hang::singleChanges(hang, readings);
    BOOST_TEST(std::ranges::count(changes, ChangeKind::links, &Change::kind) == (part > 1.0 ? 1 : 0));
  }
}

BOOST_AUTO_TEST_SUITE_END()
