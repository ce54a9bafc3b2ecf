// SPDX-License-Identifier: GPL-3.0-or-later
// Which levers a show has, exactly at the bounds of what is there to move, and how few runs they take.
#include <boost/test/unit_test.hpp>

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>
#include <vector>

#include "few_settings.h"
#include "options/easing_json.h"
#include "options/easing_lever.h"
#include "options/easing_search.h"
#include "options/house_figures.h"
#include "options/search.h"
#include "print.h"
#include "show_fixture.h"

using namespace hangbook;
using namespace hangbook::options;
using hangbook::testing::houseSays;
using hangbook::testing::smallHarbourShow;

namespace {

/// The show's best option, without a setting of its own.
const Trial& best() {
  static const Trial one = [] {
    Trial trial{smallHarbourShow(), {}, std::nullopt};
    const Option option = decide(trial.snapshot, QStringLiteral("left")).hangs.front().options.front();
    trial.key = option.key;
    trial.setting = option.setting;
    BOOST_TEST_REQUIRE((option.verdict <= Verdict::tight));
    return trial;
  }();
  return one;
}

std::optional<Lever> leverOf(const Trial& trial, const char* kind) {
  for (Lever& each : leversFor(trial)) {
    if (each.kind == QLatin1String(kind)) {
      return each;
    }
  }
  return std::nullopt;
}

} // namespace

BOOST_AUTO_TEST_SUITE(easing_levers)

BOOST_AUTO_TEST_CASE(a_bound_on_the_trim_gives_way_to_what_the_house_asks_for) {
  const double house =
      *options::House(best().snapshot.tour.house, best().snapshot.venue.house, best().snapshot.show.house)
           .figure(QStringLiteral("least-trim"))
           .value;
  const auto words = [house](double own, double theirs) {
    Trial trial = best();
    hangOf(trial).leastTrim = metres(house + own);
    trial.snapshot.venue.leastTrim = metres(house + theirs);
    const auto lever = leverOf(trial, "least-trim");
    return lever ? lever->change({1}).words : QString();
  };
  BOOST_TEST(words(0.0, 0.0).isEmpty()); // the house alone sets it
  BOOST_TEST(words(0.5, 0.25).contains(QStringLiteral("by the hang's and the venue's own bound")));
  BOOST_TEST(words(0.25, 0.5).contains(QStringLiteral("by the hang's and the venue's own bound")));
  BOOST_TEST(words(0.5, 0.0).contains(QStringLiteral("by sight lines and stage clearance")));
  BOOST_TEST(words(0.0, 0.5).contains(QStringLiteral("by the venue's own bound")));
  BOOST_TEST(!words(0.0, 0.5).contains(QStringLiteral("hang's")));
}

/// As many whole centimetres as stand between.
BOOST_AUTO_TEST_CASE(a_bound_comes_down_to_the_houses_own) {
  const double house =
      *options::House(best().snapshot.tour.house, best().snapshot.venue.house, best().snapshot.show.house)
           .figure(QStringLiteral("least-trim"))
           .value;
  const auto most = [house](double above) {
    Trial trial = best();
    hangOf(trial).leastTrim = metres(house + above);
    trial.snapshot.venue.leastTrim = std::nullopt;
    const auto lever = leverOf(trial, "least-trim");
    return lever ? lever->most.front() : -1;
  };
  for (const int centimetres : {1, 7, 25, 29, 50, 57, 100}) {
    BOOST_TEST(most(0.01 * centimetres) == centimetres);
  }
  BOOST_TEST(most(0.258) == 25);
  BOOST_TEST(most(0.25 - 5e-8) == 24);
}

/// Lowered to what both leave: the lower one of the two stays where it is.
BOOST_AUTO_TEST_CASE(of_two_bounds_only_what_stands_above_is_lowered) {
  Trial trial = best();
  hangOf(trial).leastTrim = metres(6.0);
  trial.snapshot.venue.leastTrim = metres(5.5);
  const auto lever = leverOf(trial, "least-trim");
  BOOST_REQUIRE(lever);
  lever->apply(trial, {25});
  BOOST_TEST(inMetres(*hangOf(trial).leastTrim) == 5.75);
  BOOST_TEST(inMetres(*trial.snapshot.venue.leastTrim) == 5.5);
}

BOOST_AUTO_TEST_CASE(a_share_of_the_audience_gives_way_down_to_nothing) {
  const auto most = [](double share) {
    Trial trial = best();
    houseSays(trial.snapshot, "cover-share", share);
    const auto lever = leverOf(trial, "cover-share");
    return lever ? lever->most.front() : -1;
  };
  BOOST_TEST(most(90.0) == 90);
  BOOST_TEST(most(1.0) == 1);
  BOOST_TEST(most(std::nextafter(1.0, 0.0)) == -1);
}

/// Points move as far apart as the bar's picks are, where both picks are stated and two.
BOOST_AUTO_TEST_CASE(the_picks_say_how_far_apart_points_go) {
  using catalogue::Picks;
  const auto there = [](Picks picks, bool front, bool rear) {
    Trial trial = best();
    trial.key.picks = picks;
    catalogue::PickArrangement one;
    one.picks = picks;
    one.front = front ? std::optional(catalogue::Position{metres(0.5), metres(0.0)}) : std::nullopt;
    one.rear = rear ? std::optional(catalogue::Position{metres(-0.1), metres(0.0)}) : std::nullopt;
    for (catalogue::BarType& bar : trial.snapshot.catalogue.bars) {
      bar.arrangements = {one};
    }
    return leverOf(trial, "spacing").has_value();
  };
  BOOST_TEST(there(Picks::foreAftPair, true, true));
  BOOST_TEST(!there(Picks::foreAftPair, true, false));
  BOOST_TEST(!there(Picks::foreAftPair, false, true));
  BOOST_TEST(!there(Picks::foreAftPair, false, false));
  BOOST_TEST(!there(Picks::sidePair, true, true)); // its spacing is not stated
  BOOST_TEST(!there(Picks::single, true, true));
}

/// In whole centimetres, rounded off what does not fill one: the picks are 0.6 m apart.
BOOST_AUTO_TEST_CASE(points_move_by_whole_centimetres) {
  Trial trial = best();
  BOOST_REQUIRE(trial.key.points.size() == 2);
  trial.key.picks = catalogue::Picks::foreAftPair;
  catalogue::PickArrangement one;
  one.picks = catalogue::Picks::foreAftPair;
  one.front = catalogue::Position{metres(0.5), metres(0.0)};
  one.rear = catalogue::Position{metres(-0.1), metres(0.0)};
  for (catalogue::BarType& bar : trial.snapshot.catalogue.bars) {
    bar.arrangements = {one};
  }
  const auto stepsAt = [&](double apart) {
    for (venue::Point& point : trial.snapshot.venue.points) {
      point.x = metres(point.name == trial.key.points[0] ? apart : 0.0);
      point.y = metres(0.0);
    }
    const auto lever = leverOf(trial, "spacing");
    return lever ? lever->most.front() : 0;
  };
  BOOST_TEST(stepsAt(0.7) == 10);
  BOOST_TEST(stepsAt(0.8) == 20);
  BOOST_TEST(stepsAt(0.9) == 30);
  BOOST_TEST(stepsAt(0.63) == 3);
  BOOST_TEST(stepsAt(0.57) == 3);
  BOOST_TEST(stepsAt(0.639) == 3);
  BOOST_TEST(stepsAt(0.61) == 1);
  BOOST_TEST(stepsAt(0.605) == 0);
}

/// Each point, then each structure once, however many of the points it carries; a point that is not in the
/// sheet is none.
BOOST_AUTO_TEST_CASE(a_structure_under_two_points_is_asked_for_once) {
  Trial trial = best();
  BOOST_REQUIRE(trial.key.points.size() == 2);
  venue::Venue& venue = trial.snapshot.venue;
  BOOST_REQUIRE(!venue.zones.empty());
  venue.zones[0].capacity = kilonewtons(40);
  for (venue::Point& point : venue.points) {
    point.zone = venue.zones[0].name;
    point.capacity = kilonewtons(12);
  }
  BOOST_TEST(leverOf(trial, "structure")->most.size() == 3U);
  trial.key.points.append(QStringLiteral("nowhere"));
  BOOST_TEST(leverOf(trial, "structure")->most.size() == 3U);
  for (venue::Point& point : venue.points) {
    point.zone.clear();
  }
  BOOST_TEST(leverOf(trial, "structure")->most.size() == 2U);
}

/// Of the nearest swaps that do: the better verdict, then the more cover, then the first; none farther is
/// run.
BOOST_AUTO_TEST_CASE(the_best_of_the_nearest_swaps) {
  Trial base = best();
  houseSays(base.snapshot, "cover-share", 5.0);
  base.setting->trimM += 3.0;
  const auto found = [&base](const std::vector<std::pair<int, std::pair<double, double>>>& swaps) {
    Lever lever;
    lever.kind = QStringLiteral("trim");
    for (const auto& [steps, what] : swaps) {
      const auto& [capacityKn, up] = what;
      Swap swap;
      swap.steps = steps;
      swap.apply = [=](Trial& trial) {
        trial.setting->trimM += up;
        for (venue::Point& point : trial.snapshot.venue.points) {
          point.capacity = kilonewtons(capacityKn);
        }
      };
      swap.change.words = QString::number(lever.swaps.size());
      lever.swaps.push_back(swap);
    }
    EasingSearch search(Verdict::tight, [] {});
    const auto easing = search.single(base, lever);
    return std::pair(easing ? easing->changes.front().words.toInt() : -1, search.runs());
  };
  using Found = std::pair<int, qint64>;
  const Option plain = judge(base.snapshot, base.key, *base.setting);
  Setting lower = *base.setting;
  lower.trimM -= 3.0;
  const Option more = judge(base.snapshot, base.key, lower);
  BOOST_TEST_REQUIRE(plain.verdict == Verdict::holds);
  BOOST_TEST_REQUIRE(more.verdict == Verdict::holds);
  BOOST_TEST_REQUIRE(plain.coveredPercent < more.coveredPercent);
  const auto point = std::ranges::find(plain.findings, QStringLiteral("point-load"), &Finding::rule);
  const double tight = *point->value;
  BOOST_TEST(
      (found({{1, {0.1, 0.0}}, {2, {100.0, 0.0}}, {2, {100.0, 0.0}}, {3, {100.0, 0.0}}}) == Found(1, 3)));
  BOOST_TEST(
      (found({{1, {100.0, 0.0}}, {1, {100.0, -3.0}}, {1, {100.0, 0.0}}, {2, {100.0, 0.0}}}) == Found(1, 3)));
  BOOST_TEST((found({{1, {100.0, -3.0}}, {1, {100.0, 0.0}}}) == Found(0, 2)));
  BOOST_TEST((found({{1, {0.1, 0.0}}, {1, {0.1, -3.0}}}) == Found(-1, 2)));
  BOOST_TEST((found({{1, {tight, -3.0}}, {1, {100.0, 0.0}}}) == Found(1, 2)));
  BOOST_TEST((found({{1, {100.0, 0.0}}, {1, {tight, -3.0}}}) == Found(0, 2)));
}

/// The least that is left a step short is told: unproven is better than failing.
BOOST_AUTO_TEST_CASE(one_step_short_of_it_may_be_unproven) {
  const auto easing = [](bool known, double capacityKn) {
    Lever lever;
    lever.kind = QStringLiteral("structure");
    lever.most = {4};
    lever.apply = [=](Trial& trial, const Steps& steps) {
      for (venue::Point& point : trial.snapshot.venue.points) {
        if (steps[0] < 3) {
          point.capacity = known ? std::optional(kilonewtons(capacityKn)) : std::nullopt;
        }
      }
    };
    lever.change = [](const Steps&) { return Change{}; };
    return EasingSearch(Verdict::tight, [] {}).single(best(), lever);
  };
  BOOST_REQUIRE(easing(true, 0.5));
  BOOST_TEST(easing(true, 0.5)->oneStepLess == Verdict::fails);
  BOOST_REQUIRE(easing(false, 0.0));
  BOOST_TEST(easing(false, 0.0)->oneStepLess == Verdict::unproven);
}

/// Of all nearer swaps the best verdict is told, wherever it stands among them.
BOOST_AUTO_TEST_CASE(the_best_of_the_nearer_swaps_is_told) {
  const auto less = [](const std::vector<std::optional<double>>& capacities) {
    Lever lever;
    lever.kind = QStringLiteral("structure");
    for (const std::optional<double>& kn : capacities) {
      Swap swap;
      swap.steps = static_cast<int>(lever.swaps.size()) + 1;
      swap.apply = [kn](Trial& trial) {
        for (venue::Point& point : trial.snapshot.venue.points) {
          point.capacity = kn ? std::optional(kilonewtons(*kn)) : std::nullopt;
        }
      };
      lever.swaps.push_back(swap);
    }
    const auto easing = EasingSearch(Verdict::tight, [] {}).single(best(), lever);
    BOOST_REQUIRE(easing);
    return easing->oneStepLess;
  };
  BOOST_TEST(less({0.1, 0.1, 100.0}) == Verdict::fails);
  BOOST_TEST(less({0.1, std::nullopt, 100.0}) == Verdict::unproven);
  BOOST_TEST(less({std::nullopt, 0.1, 100.0}) == Verdict::unproven);
}

/// Low steel and weak points at once: a swap for the one, and with it the nearest points for the other.
BOOST_AUTO_TEST_CASE(two_swaps_make_a_pair) {
  Trial base = best();
  base.setting.reset(); // with one of its own nothing is swapped
  houseSays(base.snapshot, "cover-share", 5.0);
  const std::optional<Length> steel = base.snapshot.venue.lowSteel;
  base.snapshot.venue.lowSteel = metres(8);
  std::vector<venue::Point> others;
  for (venue::Point& point : base.snapshot.venue.points) {
    if (base.key.points.contains(point.name)) {
      others.push_back(point);
      others.back().name += QStringLiteral(" beside");
      others.back().x = metres(inMetres(point.x) + 0.25);
    }
    point.capacity = kilonewtons(0.1);
  }
  auto& points = base.snapshot.venue.points;
  points.insert(points.end(), others.begin(), others.end());
  Lever one;
  one.kind = QStringLiteral("steel");
  Swap swap;
  swap.apply = [steel](Trial& trial) { trial.snapshot.venue.lowSteel = steel; };
  swap.change.words = QStringLiteral("higher");
  one.swaps = {swap};
  const auto other = leverOf(base, "points");
  BOOST_REQUIRE(other);
  BOOST_REQUIRE(!other->swaps.empty());
  EasingSearch search(Verdict::tight, [] {});
  BOOST_TEST(!search.single(base, one));
  const auto easing = search.pair(base, one, *other);
  BOOST_REQUIRE(easing);
  BOOST_REQUIRE(easing->changes.size() == 2U);
  BOOST_TEST(easing->changes[0].words.toStdString() == "higher");
  BOOST_TEST(easing->changes[1].kind.toStdString() == "points");
  BOOST_TEST(easing->verdict <= Verdict::tight);
}

/// Low steel and weak points at once, of one setting: each of the two figures as low as the other allows.
/// With the points strong enough the steel alone takes as many steps, and with the steel high enough the
/// points as many.
BOOST_AUTO_TEST_CASE(two_figures_make_a_pair) {
  Trial high = best();
  std::optional<Length>& steel = high.snapshot.venue.lowSteel;
  BOOST_REQUIRE(steel);
  while (judge(high.snapshot, high.key, *high.setting).verdict <= Verdict::tight) {
    steel = metres(inMetres(*steel) - 0.25);
  }
  Trial weak = best();
  for (venue::Point& point : weak.snapshot.venue.points) {
    point.capacity = kilonewtons(0.5);
  }
  Trial both = weak;
  both.snapshot.venue.lowSteel = steel;
  EasingSearch search(Verdict::tight, [] {});
  const auto steelAlone = search.single(high, leverOf(high, "low-steel").value());
  const auto pointsAlone = search.single(weak, leverOf(weak, "structure").value());
  BOOST_REQUIRE(steelAlone);
  BOOST_REQUIRE(pointsAlone);
  BOOST_TEST(!search.single(both, leverOf(both, "low-steel").value()));
  BOOST_TEST(!search.single(both, leverOf(both, "structure").value()));
  const auto pair = search.pair(both, leverOf(both, "low-steel").value(), leverOf(both, "structure").value());
  BOOST_REQUIRE(pair);
  BOOST_REQUIRE(pair->changes.size() == 2U);
  BOOST_TEST(pair->verdict <= Verdict::tight);
  BOOST_TEST(pair->oneStepLess > Verdict::tight);
  const auto same = [](const Change& one, const Change& other) {
    BOOST_TEST(one.words.toStdString() == other.words.toStdString());
    BOOST_TEST_REQUIRE(one.figures.size() == other.figures.size());
    for (std::size_t i = 0; i < one.figures.size(); ++i) {
      BOOST_TEST(one.figures[i].steps == other.figures[i].steps);
    }
  };
  same(pair->changes[0], steelAlone->changes[0]);
  same(pair->changes[1], pointsAlone->changes[0]);
}

/// The first lever of all, other points, is tried with those behind it as each other one is.
BOOST_AUTO_TEST_CASE(the_first_lever_has_its_pairs_too) {
  Snapshot snapshot = smallHarbourShow();
  for (catalogue::BarType& bar : snapshot.catalogue.bars) {
    bar.tiltStep = degrees(4);
  }
  const Option found = decide(snapshot, QStringLiteral("left")).hangs.front().options.front();
  snapshot.venue.lowSteel = metres(8);
  std::vector<venue::Point> others;
  for (venue::Point& point : snapshot.venue.points) {
    if (found.key.points.contains(point.name)) {
      others.push_back(point);
      others.back().name += QStringLiteral(" beside");
      others.back().x = metres(inMetres(point.x) + 0.25);
    }
    point.capacity = kilonewtons(0.1);
  }
  snapshot.venue.points.insert(snapshot.venue.points.end(), others.begin(), others.end());
  const Trial trial{snapshot, found.key, std::nullopt};
  BOOST_REQUIRE((leversFor(trial).front().kind == QStringLiteral("points")));
  const Option failing = decideOnly(snapshot, found.id, QStringLiteral("left")).hangs.front().options.front();
  BOOST_REQUIRE(failing.verdict == Verdict::fails);
  const Easings easings = easingsOf(snapshot, failing);
  BOOST_TEST(easings.singles.empty());
  BOOST_TEST(std::ranges::any_of(easings.pairs, [](const Easing& easing) {
    return easing.changes[0].kind == QStringLiteral("points") &&
           easing.changes[1].kind == QStringLiteral("low-steel");
  }));
  std::vector<std::pair<Verdict, int>> ranks; // the best verdict first, then the fewest steps
  for (const Easing& easing : easings.pairs) {
    int steps = 0;
    for (const Change& change : easing.changes) {
      for (const ChangedFigure& figure : change.figures) {
        steps += figure.steps;
      }
    }
    ranks.emplace_back(easing.verdict, steps);
  }
  BOOST_TEST(std::ranges::is_sorted(ranks));
  BOOST_TEST((ranks.front() < ranks.back()));
}

/// A run of all rules is dear: where there is nothing to move none is made, and a pair first asks whether the
/// most of the other would do at all.
BOOST_AUTO_TEST_CASE(no_run_more_than_it_takes) {
  Trial trial = best();
  for (venue::Point& point : trial.snapshot.venue.points) {
    point.capacity = kilonewtons(0.5);
  }
  Lever nothing;
  nothing.most = {0};
  nothing.apply = [](Trial&, const Steps&) {};
  nothing.change = [](const Steps&) { return Change{}; };
  EasingSearch search(Verdict::tight, [] {});
  BOOST_TEST(!search.single(trial, nothing));
  BOOST_TEST(search.runs() == 0);
  Lever much = nothing;
  much.most = {64};
  BOOST_TEST(!search.single(trial, much));
  BOOST_TEST(search.runs() == 7); // 1, 2, 4 … 64
  Lever swap;
  swap.swaps.push_back({1, [](Trial&) {}, {}});
  const auto steel = leverOf(trial, "low-steel");
  BOOST_REQUIRE(steel);
  BOOST_REQUIRE(!steel->most.empty());
  EasingSearch pairs(Verdict::tight, [] {});
  BOOST_TEST(!pairs.pair(trial, swap, *steel));
  BOOST_TEST(pairs.runs() == 1); // all the steel can give
}

BOOST_AUTO_TEST_CASE(what_is_no_figure_is_written_as_none) {
  const auto written = [](std::optional<double> value) {
    Easing easing;
    easing.changes = {{{}, {}, {}, 1.0, {{QStringLiteral("low steel"), value, 9.0, 1}}}};
    Easings all;
    all.singles = {easing};
    return toJson(all)[QLatin1String("singles")][0][QLatin1String("changes")][0][QLatin1String("figures")][0]
                      [QLatin1String("from")];
  };
  BOOST_TEST(written(8.5).toDouble() == 8.5);
  BOOST_TEST(written(std::nullopt).isNull());
  BOOST_TEST(written(std::nan("")).isNull());
  BOOST_TEST(written(std::numeric_limits<double>::infinity()).isNull());
}

BOOST_AUTO_TEST_SUITE_END()
