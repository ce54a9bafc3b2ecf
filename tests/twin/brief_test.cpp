// SPDX-License-Identifier: GPL-3.0-or-later
// A search without words, on rigs that other shows have solved, finds what a search finds.
#include <boost/test/unit_test.hpp>

#include <algorithm>
#include <set>

#include "options/rig_shelf.h"
#include "options/search.h"
#include "random_show.h"

using namespace hangbook;
using namespace hangbook::options;

namespace {

/// What the brief search tells of the rules.
std::vector<Finding> told(const Option& option) {
  std::vector<Finding> all;
  std::ranges::copy_if(option.findings, std::back_inserter(all),
                       [](const Finding& each) { return each.verdict != Verdict::holds; });
  return all;
}

void compare(const ShowOptions& brief, const ShowOptions& full) {
  BOOST_REQUIRE(brief.hangs.size() == full.hangs.size());
  for (std::size_t h = 0; h < full.hangs.size(); ++h) {
    const HangOptions& one = brief.hangs[h];
    const HangOptions& other = full.hangs[h];
    BOOST_TEST(one.decided.settings == other.decided.settings);
    BOOST_TEST(one.decided.byBound >= other.decided.byBound);
    BOOST_REQUIRE(one.options.size() == other.options.size());
    std::set<QString> failing;
    std::set<QString> failingBrief;
    const bool someStand = !other.options.empty() && other.options.front().verdict != Verdict::fails;
    for (std::size_t i = 0; i < other.options.size(); ++i) {
      const Option& a = one.options[i];
      const Option& b = other.options[i];
      BOOST_REQUIRE(a.verdict == b.verdict);
      if (someStand && b.verdict == Verdict::fails) { // in no order
        failing.insert(b.id);
        failingBrief.insert(a.id);
        continue;
      }
      BOOST_REQUIRE(a.id == b.id); // the same order too
      BOOST_REQUIRE(a.coveredPercent == b.coveredPercent);
      BOOST_REQUIRE(a.massKg == b.massKg);
      const auto first = told(a);
      const auto second = told(b);
      BOOST_REQUIRE(first.size() == second.size());
      for (std::size_t f = 0; f < second.size(); ++f) {
        BOOST_REQUIRE(first[f].rule == second[f].rule);
        BOOST_REQUIRE(first[f].applies == second[f].applies);
        BOOST_REQUIRE(first[f].verdict == second[f].verdict);
      }
    }
    BOOST_TEST((failing == failingBrief));
  }
}

/// The next hall of the tour: other heights, other capacities.
Snapshot nextHall(Snapshot show) {
  for (venue::Point& point : show.venue.points) {
    point.z = metres(inMetres(point.z) + 0.7);
    if (point.capacity) {
      point.capacity = newtons(inNewtons(*point.capacity) * 0.9);
    }
  }
  return show;
}

} // namespace

BOOST_AUTO_TEST_SUITE(brief)

BOOST_AUTO_TEST_CASE(finds_the_same_without_words_and_from_the_shelf) {
  RigShelf shelf;
  for (std::uint64_t seed = 1; seed <= 60; ++seed) {
    const Snapshot show = testing::randomShow(seed);
    compare(decide(show, {}, {}, 1, {&shelf, true}), decide(show, {}, {}, 1));
    const Snapshot next = nextHall(show);
    compare(decide(next, {}, {}, 1, {&shelf, true}), decide(next, {}, {}, 1));
  }
  BOOST_TEST(shelf.found() > 60U);
}

BOOST_AUTO_TEST_CASE(a_shelf_that_is_too_small_answers_the_same) {
  RigShelf shelf(1);
  const Snapshot show = testing::randomShow(3);
  for (int again = 0; again < 2; ++again) {
    compare(decide(show, {}, {}, 1, {&shelf, true}), decide(show, {}, {}, 1));
  }
}

BOOST_AUTO_TEST_CASE(a_heavier_cabinet_is_another_rig) {
  Snapshot show = testing::randomShow(3);
  RigShelf shelf;
  decide(show, {}, {}, 1, {&shelf, true});
  for (catalogue::CabinetType& each : show.catalogue.cabinets) {
    each.mass = kilograms(100.0) + each.mass.value_or(kilograms(0.0));
  }
  const std::size_t before = shelf.found();
  compare(decide(show, {}, {}, 1, {&shelf, true}), decide(show, {}, {}, 1));
  BOOST_TEST(shelf.found() == before);
}

BOOST_AUTO_TEST_SUITE_END()
