// SPDX-License-Identifier: GPL-3.0-or-later
// Rules asked of all settings at once say, to the bit, what the rules themselves say of each.
#include <boost/test/unit_test.hpp>

#include <cmath>
#include <random>

#include "options/box.h"
#include "options/judge_case.h"
#include "options/load_bounds.h"
#include "options/loads.h"
#include "options/ways.h"
#include "random_show.h"

using namespace hangbook;
using namespace hangbook::options;

namespace {

constexpr double infinite = std::numeric_limits<double>::infinity();

/// Calls `look(case, its settings)` for every option of a show.
template <class Look>
void overOptions(const Snapshot& snapshot, Look look) {
  const House house(snapshot.tour.house, snapshot.venue.house, snapshot.show.house);
  const calendar::Hang& hang = snapshot.show.hangs.front();
  const auto candidates = candidatePoints(snapshot, house, hang);
  const Search search{&snapshot, &house, &hang, candidates.bridles};
  for (const catalogue::StackingTable& table : snapshot.catalogue.tables) {
    for (const Stack& stack : stacksOf(snapshot.catalogue, table)) {
      for (const QString& name : table.bars) {
        const catalogue::BarType* bar = catalogue::find(snapshot.catalogue.bars, name);
        for (const catalogue::PickArrangement& picks : bar->arrangements) {
          const auto* chain =
              stack.held == 0 ? nullptr : catalogue::find(snapshot.catalogue.chains, table.chain);
          Rig rig = rigFor(stack, *bar, picks, chain, hang, snapshot, house);
          if (!rig.missing.isEmpty()) {
            continue;
          }
          const std::vector<Settled> settings = settingsOf(rig, inDegrees(hang.pan)).settled;
          for (const auto& points : waysToReach(candidates.points, picks.picks)) {
            for (const catalogue::HoistType& hoist : snapshot.catalogue.hoists) {
              look(caseOf(search, table, stack, *bar, picks, hoist, points, {}), settings);
            }
          }
        }
      }
    }
  }
}

/// A case whose limits are moved so that one of them is met exactly at one setting.
Case metExactly(const Case& option, const Settled& settled, std::mt19937_64& engine) {
  Case met = option;
  auto limits = std::make_shared<WeightLimits>(*option.weight);
  const auto put = [&](const Rule& rule, double& limit) {
    const Use use = rule.evaluate(option, &settled, -infinite);
    if (use.which >= 0 && std::isfinite(use.value)) {
      const double share = engine() % 2 == 0 ? 1.0 : 0.9;
      limit = use.value * 1000.0 / share;
      const auto off = engine() % 3;
      limit = off == 0 ? limit : std::nextafter(limit, off == 1 ? infinite : 0.0);
    }
  };
  if (!limits->capacity.empty()) {
    const Use use = pointLoadRule.evaluate(option, &settled, -infinite);
    put(pointLoadRule, limits->capacity[static_cast<std::size_t>(std::max(0, use.which))]);
  }
  if (!limits->zones.empty()) {
    const Use use = zoneLoadRule.evaluate(option, &settled, -infinite);
    put(zoneLoadRule, limits->zones[static_cast<std::size_t>(std::max(0, use.which))].capacity);
  }
  met.weight = limits;
  return met;
}

struct Seen {
  long compared = 0;
  long asked = 0;
  std::array<long, 4> verdicts{};
};

void compare(const Case& option, const std::vector<Settled>& settings, Seen& seen) {
  const LoadColumns columns(option, settings);
  const LoadSpan span(option, columns);
  ++seen.asked;
  if (!span.usable()) {
    return;
  }
  const auto bounds = columns.loaded ? overAll(option, columns, columns.corners()) : std::vector<OverAll>{};
  for (std::size_t number = 0; number < weightRules().size(); ++number) {
    const Rule& rule = weightRules()[number];
    if (!LoadSpan::speaksOf(rule)) {
      continue;
    }
    std::vector<double> verdicts(settings.size(), 0.0);
    span.raise(rule, verdicts);
    for (std::size_t i = 0; i < settings.size(); ++i) {
      const Verdict own = rule.evaluate(option, &settings[i], -infinite).verdict;
      ++seen.compared;
      ++seen.verdicts.at(static_cast<std::size_t>(own));
      BOOST_REQUIRE_MESSAGE(verdicts[i] == static_cast<double>(own),
                            rule.id << ": " << verdicts[i] << " for " << static_cast<int>(own));
      if (!bounds.empty()) {
        BOOST_REQUIRE_MESSAGE(bounds[number].least <= own && own <= bounds[number].most,
                              rule.id << " is not within its bound");
      }
    }
  }
}

/// At trims at which the lean rule holds: the very ends of that, and somewhere between.
void compareLeaning(const Case& option, const std::vector<Settled>& settings, std::mt19937_64& engine,
                    Seen& seen) {
  RigFold fold(settings);
  LoadBounds bounds(option, fold, settings.size());
  for (std::size_t i = 0; i < settings.size(); ++i) {
    const TrimRange range = leanRule.trimRange(option, settings[i]);
    if (!chainsLean(option, settings[i]) || !std::isfinite(range.high)) {
      continue;
    }
    for (const double below : {0.0, 0.001 * static_cast<double>(engine() % 9000), 1000.0}) {
      const double trim = range.high - below;
      for (std::size_t number = 0; number < weightRules().size(); ++number) {
        const Verdict own = weightRules()[number].evaluate(option, &settings[i], trim).verdict;
        const auto least = bounds.least(number, i);
        const auto most = bounds.most(number, i);
        const auto any = bounds.atAnyLean(number, i);
        BOOST_REQUIRE_MESSAGE(!least || *least <= own,
                              weightRules()[number].id << " does better than its bound");
        BOOST_REQUIRE_MESSAGE(!most || own <= *most,
                              weightRules()[number].id << " does worse than its bound");
        BOOST_REQUIRE_MESSAGE(!any || *any == own, weightRules()[number].id << " hangs on the lean");
        seen.compared += most ? 1 : 0;
        seen.asked += any ? 1 : 0;
        seen.verdicts.at(static_cast<std::size_t>(own)) += most ? 1 : 0;
      }
    }
  }
}

/// The points moved apart or together, so that the chains of a pair lean.
Snapshot leaningShow(std::uint64_t seed) {
  Snapshot show = testing::randomShow(seed);
  double by = 0.01 + 0.02 * static_cast<double>(seed % 7);
  for (venue::Point& point : show.venue.points) {
    point.y = metres(inMetres(point.y) + (by = -by));
    point.x = metres(inMetres(point.x) + 0.5 * by);
  }
  return show;
}

/// What the sheet of the venue says of points and what they share, and what is stated of hoist and hardware,
/// each in every way that a rule tells apart.
Snapshot sparseShow(std::uint64_t seed) {
  Snapshot show = testing::randomShow(seed);
  std::mt19937_64 engine(seed);
  const auto oneIn = [&engine](std::uint64_t count) { return engine() % count == 0; };
  venue::Venue& hall = show.venue;
  if (oneIn(2)) { // another hang on the same points, as a mirror image of this one or with nothing chosen
    calendar::Hang other = show.show.hangs.front();
    other.name = QStringLiteral("right");
    other.mirrors = oneIn(2) ? show.show.hangs.front().name : QString();
    show.show.hangs.push_back(other);
  }
  const bool noZones = oneIn(3);
  if (noZones) {
    hall.zones.clear();
  }
  for (venue::Zone& zone : hall.zones) {
    zone.basis = static_cast<catalogue::Basis>(engine() % 3);
    zone.othersLoad = oneIn(4) ? std::nullopt : std::optional(kilonewtons(1.0));
    zone.capacity = oneIn(6) ? std::nullopt : zone.capacity;
  }
  const bool noSource = oneIn(3);
  const auto without = engine() % 3;
  for (std::size_t i = 0; i < hall.points.size(); ++i) {
    venue::Point& point = hall.points[i];
    point.basis = static_cast<catalogue::Basis>(engine() % 3);
    point.source.text = noSource ? QString() : QStringLiteral("sheet");
    if (noZones || without == 0 || (without == 1 && i == 0)) {
      point.zone.clear();
    }
  }
  for (catalogue::HoistType& hoist : show.catalogue.hoists) {
    hoist.bodyClimbs = oneIn(4) ? std::nullopt : std::optional(oneIn(2));
    hoist.holdsWithoutSecondary = oneIn(3) ? std::nullopt : std::optional(oneIn(2));
  }
  for (catalogue::HardwareType& piece : show.catalogue.hardware) {
    piece.limit =
        oneIn(8) ? std::nullopt : std::optional(kilonewtons(0.5 * static_cast<double>(4 + engine() % 40)));
    piece.stiffness = oneIn(3) ? std::nullopt : piece.stiffness;
  }
  calendar::Hang& hang = show.show.hangs.front();
  if (oneIn(5)) {
    hang.rigging.clear();
  }
  if (oneIn(3)) {
    hang.secondary.clear();
  }
  const std::array<std::optional<double>, 5> slacks{std::nullopt, 0.0, 0.001, 0.05, 0.5};
  const std::optional<double> slack = slacks.at(engine() % slacks.size());
  hang.secondarySlack = slack ? std::optional(metres(*slack)) : std::nullopt;
  show.show.peopleBeneath = oneIn(4) ? std::nullopt : std::optional(oneIn(2));
  return show;
}

/// A fore-aft pair whose points stand as far apart as its picks do at some tilt: level on the way up they
/// stand farther apart, and the chains lean more than the house lets them as set.
Snapshot foreAftShow(std::uint64_t seed) {
  Snapshot show = testing::randomShow(seed);
  std::mt19937_64 engine(seed);
  catalogue::BarType& bar = show.catalogue.bars.front();
  catalogue::PickArrangement pair = bar.arrangements.front();
  pair.picks = catalogue::Picks::foreAftPair;
  pair.spacing.reset();
  pair.front = catalogue::Position{metres(0.4), metres(0.0)};
  pair.rear = catalogue::Position{metres(-0.6), metres(0.0)};
  bar.arrangements = {pair};
  for (std::size_t i = 0; i < show.venue.points.size(); ++i) {
    venue::Point& point = show.venue.points[i];
    point.y = metres(9.0);
    point.x = metres(i == 0 ? 0.98 + 0.001 * static_cast<double>(engine() % 30) : i == 1 ? 0.0 : 3.0);
  }
  return show;
}

} // namespace

BOOST_AUTO_TEST_SUITE(load_span)

BOOST_AUTO_TEST_CASE(bounds_a_load_rule_between_plumb_and_the_most_lean_allowed) {
  Seen seen;
  std::mt19937_64 engine(11);
  for (std::uint64_t seed = 1; seed <= 150; ++seed) {
    overOptions(leaningShow(seed), [&](const Case& option, const std::vector<Settled>& settings) {
      if (settings.empty() || (seen.compared > 20000 && engine() % 8 != 0)) {
        return;
      }
      compareLeaning(option, settings, engine, seen);
      compareLeaning(metExactly(option, settings[engine() % settings.size()], engine), settings, engine,
                     seen);
    });
  }
  BOOST_TEST(seen.compared > 20000);
  BOOST_TEST(seen.asked > seen.compared / 2);
  for (const long each : seen.verdicts) {
    BOOST_TEST(each > 50);
  }
}

BOOST_AUTO_TEST_CASE(bounds_nothing_where_a_level_pair_may_lean_more) {
  Seen seen;
  std::mt19937_64 engine(13);
  for (std::uint64_t seed = 2001; seed <= 2100; ++seed) {
    int left = 2;
    overOptions(foreAftShow(seed), [&](const Case& option, const std::vector<Settled>& settings) {
      if (settings.empty() || option.points.size() != 2 || left == 0) {
        return;
      }
      --left;
      compareLeaning(metExactly(option, settings[engine() % settings.size()], engine), settings, engine,
                     seen);
      seen.compared += levelOff(option) != 0.0 ? 1 : 0;
    });
  }
  BOOST_TEST(seen.compared > 50);
}

BOOST_AUTO_TEST_CASE(says_what_the_rules_say_of_each_setting) {
  Seen seen;
  std::mt19937_64 engine(5);
  for (std::uint64_t seed = 1; seed <= 500; ++seed) {
    overOptions(testing::randomShow(seed), [&](const Case& option, const std::vector<Settled>& settings) {
      if (settings.empty() || (seen.asked > 800 && engine() % 4 != 0)) {
        return;
      }
      compare(option, settings, seen);
      compare(metExactly(option, settings[engine() % settings.size()], engine), settings, seen);
    });
  }
  BOOST_TEST(seen.compared > 50000);
  for (const long each : seen.verdicts) {
    BOOST_TEST(each > 200);
  }
}

BOOST_AUTO_TEST_CASE(says_what_the_rules_say_whatever_is_stated) {
  Seen seen;
  std::mt19937_64 engine(6);
  for (std::uint64_t seed = 1001; seed <= 1400; ++seed) {
    int left = 3;
    overOptions(sparseShow(seed), [&](const Case& option, const std::vector<Settled>& settings) {
      if (settings.empty() || left == 0) {
        return;
      }
      --left;
      compare(option, settings, seen);
      compare(metExactly(option, settings[engine() % settings.size()], engine), settings, seen);
    });
  }
  BOOST_TEST(seen.compared > 20000);
  for (const long each : seen.verdicts) {
    BOOST_TEST(each > 200);
  }
}

BOOST_AUTO_TEST_CASE(a_limit_turns_at_the_very_figure_at_which_the_rule_turns) {
  std::mt19937_64 engine(7);
  const auto verdictBy = [](const LoadLimit& limit, double load) {
    return !limit.known              ? Verdict::unproven
           : load > limit.failsAbove ? Verdict::fails
           : load >= limit.tightFrom ? Verdict::tight
                                     : Verdict::holds;
  };
  std::vector<double> limits{0.0,    -0.0,  1.0,      11800.0,   -3.0,    5e-324,
                             1e-300, 1e300, infinite, -infinite, notKnown};
  for (int i = 0; i < 3000; ++i) {
    limits.push_back(std::ldexp(static_cast<double>(engine() >> 11), static_cast<int>(engine() % 30) - 50));
  }
  for (const double limit : limits) {
    const LoadLimit two(limit);
    for (const double around : {limit, 0.9 * limit, 0.0, 2.0 * limit, -limit, infinite}) {
      double load = std::nextafter(std::nextafter(std::nextafter(around, -infinite), -infinite), -infinite);
      for (int step = 0; step < 7; ++step) {
        if (!std::isnan(load)) {
          BOOST_REQUIRE_MESSAGE(verdictBy(two, load) == loadUse(load, limit).verdict,
                                "limit " << limit << ", load " << load);
        }
        load = std::nextafter(load, infinite);
      }
    }
  }
}

BOOST_AUTO_TEST_SUITE_END()
