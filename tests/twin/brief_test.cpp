// SPDX-License-Identifier: GPL-3.0-or-later
// A search without words, and one of several shows at once, finds what a search finds.
#include <boost/test/unit_test.hpp>

#include <algorithm>
#include <set>

#include "model/options/show_fixture.h"
#include "options/builds.h"
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

/// Other rigs than the show's.
Snapshot heavier(Snapshot show) {
  for (catalogue::CabinetType& each : show.catalogue.cabinets) {
    each.mass = kilograms(100.0) + each.mass.value_or(kilograms(0.0));
  }
  return show;
}

/// One whose table permits more than anybody could read: any cabinet under any other.
Snapshot endless(Snapshot show) {
  catalogue::StackingTable& table = show.catalogue.tables.front();
  table.counts.clear();
  table.joins.clear();
  table.lowest.clear();
  catalogue::CabinetType type = show.catalogue.cabinets.front();
  for (const QString& name : {QStringLiteral("one"), QStringLiteral("other")}) {
    type.name = name;
    show.catalogue.cabinets.push_back(type);
    table.counts.push_back({name, 0, 20});
    table.lowest.push_back(name);
    for (const QString& above : {QString(), QStringLiteral("one"), QStringLiteral("other")}) {
      catalogue::Join join;
      join.above = above;
      join.below = name;
      table.joins.push_back(join);
    }
  }
  return show;
}

} // namespace

BOOST_AUTO_TEST_SUITE(brief)

BOOST_AUTO_TEST_CASE(finds_the_same_without_words) {
  for (std::uint64_t seed = 1; seed <= 60; ++seed) {
    const Snapshot show = testing::randomShow(seed);
    compare(decide(show, {}, {}, 1, true), decide(show, {}, {}, 1));
  }
}

BOOST_AUTO_TEST_CASE(shows_decided_together_are_as_each_by_itself) {
  for (std::uint64_t seed = 1; seed <= 30; ++seed) {
    const Snapshot show = testing::randomShow(seed);
    const std::vector<Snapshot> shows{show, nextHall(show), heavier(show), testing::randomShow(seed + 100)};
    const std::vector<const Snapshot*> together{&shows[0], &shows[1], &shows[2], &shows[3]};
    const std::vector<DecidedShow> found = decideTogether(together, {}, 1 + static_cast<int>(seed % 2));
    BOOST_REQUIRE(found.size() == shows.size());
    for (std::size_t i = 0; i < shows.size(); ++i) {
      BOOST_REQUIRE(!found[i].trouble);
      compare(found[i].options, decide(shows[i], {}, {}, 1));
    }
  }
}

BOOST_AUTO_TEST_CASE(a_show_that_cannot_be_decided_keeps_no_other_from_it) {
  const Snapshot show = testing::randomShow(3);
  const Snapshot broken = endless(show);
  const std::vector<const Snapshot*> together{&broken, &show};
  const std::vector<DecidedShow> found = decideTogether(together, {}, 1);
  BOOST_REQUIRE(found[0].trouble.has_value());
  BOOST_CHECK_EXCEPTION(decide(broken), Error, [&found](const Error& error) {
    return std::string(error.what()) == found[0].trouble->what();
  });
  BOOST_REQUIRE(!found[1].trouble);
  compare(found[1].options, decide(show, {}, {}, 1));
}

BOOST_AUTO_TEST_CASE(deciding_together_can_be_cancelled) {
  const Snapshot show = testing::randomShow(3);
  const std::vector<const Snapshot*> together{&show, &show};
  int asked = 0;
  BOOST_CHECK_THROW(decideTogether(
                        together, [&asked](double) { return ++asked < 2; }, 1),
                    Cancelled);
}

BOOST_AUTO_TEST_CASE(each_rig_is_solved_once) {
  const Snapshot show = testing::harbourShow();
  const House house(show.tour.house, show.venue.house, show.show.house);
  const calendar::Hang& hang = show.show.hangs.front();
  QStringList notes;
  const std::vector<Build> builds = buildsFor(show, hang, notes);
  BOOST_REQUIRE(!builds.empty());
  const auto rig = [&](const Snapshot& of) {
    const Build& build = builds.front();
    return rigFor(build.stack, *build.bar, *build.arrangement,
                  build.stack.held == 0 ? nullptr : catalogue::find(of.catalogue.chains, build.table->chain),
                  hang, of, house);
  };
  RigShelf shelf;
  Rig one = rig(show);
  Rig same = rig(nextHall(show));
  const auto settings = shelf.settingsOf(one, 0.0);
  BOOST_TEST((shelf.settingsOf(same, 0.0) == settings));
  BOOST_TEST((shelf.settingsOf(same, 1.0) != settings));
  Rig other = rig(show);
  other.hang.stack.front().mass += 1.0;
  BOOST_TEST((shelf.settingsOf(other, 0.0) != settings));
}

BOOST_AUTO_TEST_SUITE_END()
