// SPDX-License-Identifier: GPL-3.0-or-later
// What would do for an option that fails: each answer is applied
// here by hand, and one step less of it, and all rules decide.
#include <boost/test/unit_test.hpp>

#include <algorithm>
#include <functional>

#include "few_settings.h"
#include "options/easing.h"
#include "print.h"
#include "quantity/error.h"
#include "show_fixture.h"

using namespace hangbook;
using hangbook::testing::bestOf;
using hangbook::testing::fewSettings;
using hangbook::testing::houseSays;
using options::Easing;
using options::Option;
using options::Snapshot;
using options::Verdict;

namespace {

Option again(const Snapshot& snapshot, const QString& id) {
  return options::decideOnly(snapshot, id, QStringLiteral("left")).hangs.front().options.front();
}

/// The option that was best before, as it is now that something was changed.
Option spoilt(Snapshot& snapshot, const std::function<void(Snapshot&)>& spoil) {
  const Option best = bestOf(snapshot);
  BOOST_REQUIRE(best.verdict <= Verdict::tight);
  spoil(snapshot);
  Option now = again(snapshot, best.id);
  BOOST_REQUIRE(now.verdict == Verdict::fails);
  return now;
}

const Easing* ofKind(const std::vector<Easing>& list, const char* kind) {
  const auto found = std::ranges::find_if(list, [&](const Easing& easing) {
    return easing.changes.size() == 1 && easing.changes.front().kind == QString::fromLatin1(kind);
  });
  return found == list.end() ? nullptr : &*found;
}

/// The better verdict first, of like ones that which takes fewer steps.
void inOrder(const std::vector<Easing>& list) {
  const auto rank = [](const Easing& easing) {
    int steps = 0;
    for (const options::Change& change : easing.changes) {
      for (const options::ChangedFigure& figure : change.figures) {
        BOOST_TEST(figure.steps > 0);
        steps += figure.steps;
      }
    }
    return std::pair(easing.verdict, steps);
  };
  for (std::size_t i = 1; i < list.size(); ++i) {
    BOOST_TEST((rank(list[i - 1]) <= rank(list[i])));
  }
}

const Easing& needed(const options::Easings& easings, const char* kind) {
  const Easing* found = ofKind(easings.singles, kind);
  BOOST_REQUIRE_MESSAGE(found != nullptr, kind);
  BOOST_TEST(found->verdict <= Verdict::tight);
  BOOST_TEST(found->oneStepLess > Verdict::tight);
  return *found;
}

} // namespace

BOOST_AUTO_TEST_SUITE(easing)

BOOST_AUTO_TEST_CASE(low_steel_higher_by_so_many_centimetres) {
  Snapshot snapshot = fewSettings();
  const Option failing = spoilt(snapshot, [](Snapshot& now) { now.venue.lowSteel = metres(8); });
  const auto easings = options::easingsOf(snapshot, failing);
  const options::ChangedFigure& figure = needed(easings, "low-steel").changes.front().figures.front();
  BOOST_TEST(figure.from.value() == 8.0);
  BOOST_TEST(figure.to.value() == 8.0 + 0.01 * figure.steps, boost::test_tools::tolerance(1e-12));
  snapshot.venue.lowSteel = metres(*figure.to);
  BOOST_TEST(again(snapshot, failing.id).verdict <= Verdict::tight);
  snapshot.venue.lowSteel = metres(*figure.to - 0.01);
  BOOST_TEST(again(snapshot, failing.id).verdict == Verdict::fails);
}

BOOST_AUTO_TEST_CASE(structure_that_is_short_is_never_asked_to_be_raised) {
  Snapshot snapshot = fewSettings();
  const Option failing = spoilt(snapshot, [](Snapshot& now) {
    for (venue::Point& point : now.venue.points) {
      point.capacity = kilonewtons(3);
    }
  });
  const auto easings = options::easingsOf(snapshot, failing);
  const options::Change& change = needed(easings, "structure").changes.front();
  BOOST_TEST(change.words.contains(
      QStringLiteral("another point, a lighter stack, or the engineer's written figure")));
  BOOST_TEST(!change.words.contains(QStringLiteral("raise")));
  const auto set = [&](const QString& name, double kn) {
    for (venue::Point& point : snapshot.venue.points) {
      if (QStringLiteral("point ") + point.name == name) {
        point.capacity = kilonewtons(kn);
      }
    }
  };
  for (const options::ChangedFigure& figure : change.figures) {
    set(figure.what, *figure.to);
  }
  BOOST_TEST(again(snapshot, failing.id).verdict <= Verdict::tight);
  for (const options::ChangedFigure& figure : change.figures) {
    set(figure.what, *figure.to - 0.01);
    BOOST_TEST(again(snapshot, failing.id).verdict == Verdict::fails, figure.what.toStdString());
    set(figure.what, *figure.to);
  }
}

BOOST_AUTO_TEST_CASE(as_many_hired_in_as_are_missing) {
  Snapshot snapshot = fewSettings();
  const Option failing = spoilt(snapshot, [](Snapshot& now) {
    std::erase_if(now.units, [](const fleet::Unit& unit) { return unit.kind == fleet::UnitKind::hoist; });
  });
  const auto easings = options::easingsOf(snapshot, failing);
  const auto& figures = needed(easings, "hire").changes.front().figures;
  BOOST_REQUIRE(figures.size() == 1U);
  BOOST_TEST(figures.front().what == failing.key.hoist);
  BOOST_TEST(figures.front().steps == 4); // two hangs of two picks
}

/// Of each type that lapses so many are examined as are missing, the first type of the list too.
BOOST_AUTO_TEST_CASE(as_many_examined_as_are_missing) {
  Snapshot snapshot = fewSettings();
  const QString cabinet = bestOf(snapshot).key.stack.front();
  const Option failing = spoilt(snapshot, [&](Snapshot& now) {
    std::erase_if(now.examinations, [&](const fleet::Examination& each) {
      return std::ranges::any_of(now.units, [&](const fleet::Unit& unit) {
        return unit.serial == each.serial && (unit.kind == fleet::UnitKind::hoist || unit.type == cabinet);
      });
    });
  });
  const auto easings = options::easingsOf(snapshot, failing);
  const options::Change& change = needed(easings, "examination").changes.front();
  BOOST_REQUIRE(change.figures.size() == 2U);
  BOOST_TEST(change.figures[0].what == cabinet);
  BOOST_TEST(change.figures[0].steps > 0);
  BOOST_TEST(change.figures[1].what == failing.key.hoist);
  BOOST_TEST(change.figures[1].steps == 4); // two hangs of two picks
}

BOOST_AUTO_TEST_CASE(points_as_far_apart_as_the_lean_allows) {
  Snapshot snapshot = fewSettings();
  const Option failing = spoilt(snapshot, [](Snapshot& now) {
    for (venue::Point& point : now.venue.points) {
      point.y = metres(point.name == QStringLiteral("L1") ? 13.0 : inMetres(point.y));
    }
  });
  const auto easings = options::easingsOf(snapshot, failing);
  const options::ChangedFigure& figure = needed(easings, "spacing").changes.front().figures.front();
  const auto apart = [&](double spacing) {
    const double off = 0.5 * (3.5 - spacing);
    for (venue::Point& point : snapshot.venue.points) {
      if (point.name == QStringLiteral("L1")) {
        point.y = metres(13.0 - off);
      } else if (point.name == QStringLiteral("L2")) {
        point.y = metres(9.5 + off);
      }
    }
    return again(snapshot, failing.id).verdict;
  };
  BOOST_TEST(figure.from.value() == 3.5, boost::test_tools::tolerance(1e-9));
  BOOST_TEST(apart(*figure.to) <= Verdict::tight);
  BOOST_TEST(apart(*figure.to + 0.01) == Verdict::fails);
}

BOOST_AUTO_TEST_CASE(points_that_stand_too_near_move_apart_along_their_own_line) {
  // 0.3 m ahead and 0.4 m aside of each other: 0.5 m apart, along (0.6, 0.8), where the picks are 1 m apart.
  Snapshot snapshot = fewSettings();
  const Option failing = spoilt(snapshot, [](Snapshot& now) {
    now.show.house.push_back({QStringLiteral("lean-most"), 0.5, {}, {}, QStringLiteral("Edda"), now.today});
    for (venue::Point& point : now.venue.points) {
      const bool one = point.name == QStringLiteral("L1");
      if (one || point.name == QStringLiteral("L2")) {
        point.x = metres(one ? 0.65 : 0.35);
        point.y = metres(one ? 10.2 : 9.8);
      }
    }
  });
  const auto easings = options::easingsOf(snapshot, failing);
  const options::ChangedFigure& figure = needed(easings, "spacing").changes.front().figures.front();
  const auto apart = [&](double spacing) {
    for (venue::Point& point : snapshot.venue.points) {
      const double side = point.name == QStringLiteral("L1") ? 0.5 : -0.5;
      if (point.name.startsWith(u'L')) {
        point.x = metres(0.5 + side * 0.6 * spacing);
        point.y = metres(10.0 + side * 0.8 * spacing);
      }
    }
    return again(snapshot, failing.id).verdict;
  };
  BOOST_TEST(figure.from.value() == 0.5, boost::test_tools::tolerance(1e-9));
  BOOST_TEST(figure.to.value() == 0.5 + 0.01 * figure.steps, boost::test_tools::tolerance(1e-9));
  BOOST_TEST(apart(*figure.to) <= Verdict::tight);
  BOOST_TEST(apart(*figure.to - 0.01) == Verdict::fails);
}

BOOST_AUTO_TEST_CASE(where_nothing_would_do_nothing_is_told) {
  Snapshot snapshot = fewSettings();
  const Option failing = spoilt(snapshot, [](Snapshot& now) { now.venue.lowSteel = metres(2); });
  double told = 0.0;
  double before = 0.0;
  bool pairsBegin = false;
  const auto easings = options::easingsOf(snapshot, failing, [&](double part) {
    BOOST_TEST(part >= before);
    before = part;
    told = std::max(told, part);
    pairsBegin |= part == 0.2;
    return true;
  });
  BOOST_TEST((easings.option == failing.id));
  BOOST_TEST((easings.verdict == Verdict::fails));
  BOOST_TEST((easings.goal == Verdict::tight));
  BOOST_TEST(easings.singles.empty());
  BOOST_TEST(easings.pairs.empty());
  BOOST_TEST(easings.ask.empty());
  BOOST_TEST(easings.runs > 0);
  BOOST_TEST(pairsBegin); // a fifth is for what one change does
  BOOST_TEST(told > 0.5); // pairs were looked for
  BOOST_TEST(told < 1.0);
}

BOOST_AUTO_TEST_CASE(one_cabinet_fewer_is_another_option_of_the_list) {
  Snapshot snapshot = fewSettings();
  auto all = options::decide(snapshot, QStringLiteral("left"));
  for (catalogue::BarType& bar : snapshot.catalogue.bars) {
    for (catalogue::PickArrangement& each : bar.arrangements) {
      each.mostCabinets = 4;
    }
  }
  const Option* large = nullptr;
  for (const Option& option : all.hangs.front().options) {
    if (option.verdict <= Verdict::tight && option.key.stack.size() == 5) {
      large = &option;
    }
  }
  BOOST_REQUIRE(large != nullptr);
  const auto easings = options::easingsOf(snapshot, again(snapshot, large->id));
  const Easing& fewer = needed(easings, "fewer-cabinets");
  BOOST_TEST(fewer.changes.front().figures.front().steps == 1);
  BOOST_TEST((fewer.option != large->id));
  BOOST_TEST(again(snapshot, fewer.option).verdict == fewer.verdict);
  BOOST_TEST(again(snapshot, fewer.option).key.stack.size() == 4);
}

BOOST_AUTO_TEST_CASE(two_things_short_take_a_pair_and_both_are_needed) {
  Snapshot snapshot = fewSettings();
  const Option failing = spoilt(snapshot, [](Snapshot& now) {
    now.venue.lowSteel = metres(8);
    for (venue::Point& point : now.venue.points) {
      point.capacity = kilonewtons(0.5);
    }
  });
  const auto easings = options::easingsOf(snapshot, failing);
  BOOST_TEST(easings.singles.empty());
  BOOST_REQUIRE(!easings.pairs.empty());
  const bool steelAndStructure = std::ranges::any_of(easings.pairs, [](const Easing& easing) {
    return easing.changes[0].kind == QStringLiteral("low-steel") &&
           easing.changes[1].kind == QStringLiteral("structure");
  });
  BOOST_TEST(steelAndStructure);
  inOrder(easings.pairs);
  for (const Easing& easing : easings.pairs) {
    BOOST_TEST(easing.changes.size() == 2U);
    BOOST_TEST(easing.verdict <= Verdict::tight);
    BOOST_TEST(easing.oneStepLess > Verdict::tight);
  }
}

/// Points a little too far apart, and too weak: moving them takes fewer steps than any longer chain does.
BOOST_AUTO_TEST_CASE(pairs_come_by_their_steps) {
  Snapshot snapshot = fewSettings();
  const Option failing = spoilt(snapshot, [](Snapshot& now) {
    for (venue::Point& point : now.venue.points) {
      point.y = metres(point.name == QStringLiteral("L1") ? 12.4 : inMetres(point.y));
      point.capacity = kilonewtons(0.5);
    }
  });
  const auto easings = options::easingsOf(snapshot, failing);
  BOOST_TEST(easings.singles.empty());
  BOOST_REQUIRE(easings.pairs.size() > 2U);
  inOrder(easings.pairs);
  BOOST_TEST(easings.pairs.front().changes.front().kind.toStdString() == "spacing");
  const auto first = [](const Easing& easing) { return easing.changes.front().figures.front().steps; };
  BOOST_TEST(first(easings.pairs.front()) < first(easings.pairs.back()));
}

/// 3.4 m are short, of which the steel gives 3 m and the bound on the trim half a metre.
BOOST_AUTO_TEST_CASE(two_changes_that_are_too_small_alone_do_together) {
  Snapshot snapshot = fewSettings();
  const Option failing = spoilt(snapshot, [](Snapshot& now) {
    now.venue.lowSteel = metres(6);
    houseSays(now, "least-trim", 5.5);
  });
  const auto easings = options::easingsOf(snapshot, failing);
  BOOST_TEST(easings.singles.empty());
  for (const char* other : {"low-steel", "roof"}) {
    const auto found = std::ranges::find_if(easings.pairs, [other](const Easing& easing) {
      return easing.changes[0].kind == QStringLiteral("least-trim") &&
             easing.changes[1].kind == QLatin1String(other);
    });
    BOOST_REQUIRE_MESSAGE(found != easings.pairs.end(), other);
    BOOST_TEST(found->changes[0].figures.front().steps <= 50);
    BOOST_TEST(found->changes[1].figures.front().steps <= 300);
  }
}

BOOST_AUTO_TEST_CASE(an_unproven_option_says_what_to_ask_for) {
  Snapshot snapshot = fewSettings();
  const Option best = bestOf(snapshot);
  for (venue::Point& point : snapshot.venue.points) {
    point.capacity.reset();
  }
  const auto easings = options::easingsOf(snapshot, again(snapshot, best.id));
  BOOST_TEST((easings.verdict == Verdict::unproven));
  BOOST_TEST(easings.singles.empty());
  BOOST_TEST(std::ranges::any_of(easings.ask, [](const options::Asked& each) {
    return each.rule == QStringLiteral("point-load") &&
           each.text.contains(QStringLiteral("states no capacity"));
  }));
}

/// A mended option stays unproven while a figure is missing, and says so.
BOOST_AUTO_TEST_CASE(what_is_not_known_is_not_mended) {
  Snapshot snapshot = fewSettings();
  const Option failing = spoilt(snapshot, [](Snapshot& now) {
    now.venue.lowSteel = metres(8);
    for (venue::Point& point : now.venue.points) {
      point.capacity.reset();
    }
  });
  const auto easings = options::easingsOf(snapshot, failing);
  BOOST_TEST((easings.goal == Verdict::unproven));
  const Easing* steel = ofKind(easings.singles, "low-steel");
  BOOST_REQUIRE(steel != nullptr);
  BOOST_TEST((steel->verdict == Verdict::unproven));
  BOOST_TEST((steel->oneStepLess == Verdict::fails));
  BOOST_TEST(!easings.ask.empty());
}

BOOST_AUTO_TEST_CASE(a_setting_of_ones_own_is_mended_by_the_nearest_trim) {
  const Snapshot snapshot = fewSettings();
  const Option best = bestOf(snapshot);
  BOOST_REQUIRE(best.trimWindow.has_value());
  options::Setting low = *best.setting;
  low.trimM = best.trimWindow->lowM - 0.234;
  const auto easings = options::easingsAt(snapshot, best.key, low);
  const options::ChangedFigure& figure = needed(easings, "trim").changes.front().figures.front();
  BOOST_TEST(figure.steps == 24);
  low.trimM = *figure.to;
  BOOST_TEST(options::judge(snapshot, best.key, low).verdict <= Verdict::tight);
  low.trimM = *figure.to - 0.01;
  BOOST_TEST(options::judge(snapshot, best.key, low).verdict == Verdict::fails);
}

BOOST_AUTO_TEST_CASE(it_stops_when_it_is_told_to) {
  Snapshot snapshot = fewSettings();
  const Option failing = spoilt(snapshot, [](Snapshot& now) { now.venue.lowSteel = metres(8); });
  int asked = 0;
  BOOST_CHECK_THROW(options::easingsOf(snapshot, failing, [&](double) { return ++asked < 5; }),
                    options::Cancelled);
  BOOST_TEST(asked == 5);
}

BOOST_AUTO_TEST_SUITE_END()
