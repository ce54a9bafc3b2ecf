// SPDX-License-Identifier: GPL-3.0-or-later
// What would do for an option that fails, and what breaks first in one that stands: each answer is applied
// here by hand, and one step less of it, and all rules decide.
#include <boost/test/unit_test.hpp>

#include <algorithm>
#include <functional>
#include <map>

#include "options/easing.h"
#include "options/reserve.h"
#include "print.h"
#include "quantity/error.h"
#include "show_fixture.h"

using namespace hangbook;
using options::Easing;
using options::Option;
using options::Snapshot;
using options::Verdict;

namespace {

/// Few settings, since each answer takes a hundred runs over all of them.
Snapshot fewSettings() {
  Snapshot snapshot = testing::smallHarbourShow();
  for (catalogue::BarType& bar : snapshot.catalogue.bars) {
    bar.tiltStep = degrees(4);
  }
  return snapshot;
}

Option bestOf(const Snapshot& snapshot) {
  return options::decide(snapshot, QStringLiteral("left")).hangs.front().options.front();
}

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
  const auto easings = options::easingsOf(snapshot, failing, [&](double part) {
    BOOST_TEST(part >= before);
    before = part;
    told = std::max(told, part);
    return true;
  });
  BOOST_TEST((easings.option == failing.id));
  BOOST_TEST((easings.verdict == Verdict::fails));
  BOOST_TEST((easings.goal == Verdict::tight));
  BOOST_TEST(easings.singles.empty());
  BOOST_TEST(easings.pairs.empty());
  BOOST_TEST(easings.ask.empty());
  BOOST_TEST(easings.runs > 0);
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
  for (const Easing& easing : easings.pairs) {
    BOOST_TEST(easing.changes.size() == 2U);
    BOOST_TEST(easing.verdict <= Verdict::tight);
    BOOST_TEST(easing.oneStepLess > Verdict::tight);
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

BOOST_AUTO_TEST_CASE(what_breaks_first_can_be_called_off_and_tells_how_far_it_is) {
  const Snapshot snapshot = fewSettings();
  const Option best = bestOf(snapshot);
  std::vector<double> parts;
  options::reservesOf(snapshot, best, [&](double part) {
    parts.push_back(part);
    return true;
  });
  BOOST_REQUIRE(parts.size() > 1U);
  BOOST_TEST(std::ranges::is_sorted(parts));
  BOOST_TEST(parts.front() == 0.0);
  BOOST_TEST((parts.back() > 0.0 && parts.back() < 1.0));
  int asked = 0;
  BOOST_CHECK_THROW(options::reservesOf(snapshot, best, [&](double) { return ++asked < 3; }),
                    options::Cancelled);
  BOOST_TEST(asked == 3);
}

BOOST_AUTO_TEST_CASE(what_breaks_first_stands_just_before) {
  const Snapshot snapshot = fewSettings();
  const Option best = bestOf(snapshot);
  const auto reserves = options::reservesOf(snapshot, best);
  const auto mass = std::ranges::find(reserves, QStringLiteral("mass"), &options::Reserve::kind);
  BOOST_REQUIRE(mass != reserves.end());
  BOOST_REQUIRE(mass->steps > 0);
  const auto withCable = [&](double kg) {
    Snapshot heavier = snapshot;
    for (calendar::Hang& hang : heavier.show.hangs) {
      hang.cableMass = kilograms(hang.name == QStringLiteral("left") ? kg : inKilograms(*hang.cableMass));
    }
    return options::judge(heavier, best.key, *best.setting);
  };
  BOOST_TEST(withCable(mass->last).verdict <= Verdict::tight);
  const Option broken = withCable(mass->last + 1.0);
  BOOST_TEST((broken.verdict == mass->then));
  BOOST_TEST(broken.verdict > Verdict::tight);
  const auto& finding = *std::ranges::find(broken.findings, mass->rule, &options::Finding::rule);
  BOOST_TEST((finding.text == mass->text));
  for (const options::Reserve& each : reserves) {
    if (each.kind.startsWith(QStringLiteral("trim")) && each.steps > 0) {
      options::Setting moved = *best.setting;
      moved.trimM = each.last;
      BOOST_TEST(options::judge(snapshot, best.key, moved).verdict <= Verdict::tight);
    }
  }
}

/// Two strips of seats, one of which must be covered: lowered a little the hang loses the far one and does
/// not yet reach the near one; lowered on it does. What breaks first is the nearest trim that does not stand.
BOOST_AUTO_TEST_CASE(what_stands_again_further_on_has_broken_before) {
  Snapshot snapshot = fewSettings();
  const Option best = bestOf(snapshot);
  snapshot.show.house.push_back({QStringLiteral("cover-share"),
                                 40.0,
                                 {},
                                 QStringLiteral("test"),
                                 QStringLiteral("Edda"),
                                 QDate(2027, 3, 1)});
  for (catalogue::CabinetType& each : snapshot.catalogue.cabinets) {
    each.coverLowest = degrees(-2);
    each.coverHighest = degrees(0);
  }
  venue::Section strip = snapshot.venue.sections.front();
  const auto at = [&strip](double from) {
    strip.name = QString::number(from);
    strip.profile = {{metres(from), metres(0.0)}, {metres(from + 1.0), metres(0.0)}};
    return strip;
  };
  snapshot.venue.sections = {at(18.0), at(20.0)};
  options::Setting setting = *best.setting;
  setting.trimM -= 0.25;
  const auto standsAt = [&](int centimetres) {
    options::Setting lower = setting;
    lower.trimM = std::round((setting.trimM - 0.01 * centimetres) * 1e6) / 1e6;
    return options::judge(snapshot, best.key, lower).verdict <= Verdict::tight;
  };
  int first = 0;
  while (standsAt(first)) {
    ++first;
  }
  BOOST_TEST_REQUIRE(first > 0);
  int again = first;
  while (again < 500 && !standsAt(again)) {
    ++again;
  }
  BOOST_TEST_REQUIRE(again < 500);
  const auto reserves = options::reservesOf(snapshot, options::judge(snapshot, best.key, setting));
  const auto lower = std::ranges::find(reserves, QStringLiteral("trim-down"), &options::Reserve::kind);
  BOOST_TEST_REQUIRE((lower != reserves.end()));
  BOOST_TEST(lower->steps == first);
  BOOST_TEST(lower->rule.toStdString() == "cover");
}

/// The same where it is tilted, hung higher, or its downfill at another link. Looked along it stands at some,
/// does not at the next and does again further on, where a search by halves would look first.
BOOST_AUTO_TEST_CASE(what_stands_again_at_another_tilt_or_mark_has_broken_before) {
  Snapshot snapshot = fewSettings();
  const Option best = bestOf(snapshot);
  snapshot.show.house.push_back({QStringLiteral("cover-share"),
                                 40.0,
                                 {},
                                 QStringLiteral("test"),
                                 QStringLiteral("Edda"),
                                 QDate(2027, 3, 1)});
  for (catalogue::CabinetType& each : snapshot.catalogue.cabinets) {
    each.coversAudience = each.downfill;
    each.coverLowest = degrees(-2);
    each.coverHighest = degrees(2);
  }
  venue::Section strip = snapshot.venue.sections.front();
  const auto stripAt = [&strip](double from) {
    strip.name = QString::number(from);
    strip.profile = {{metres(from), metres(0.0)}, {metres(from + 0.2), metres(0.0)}};
    return strip;
  };
  snapshot.venue.sections = {stripAt(20.0), stripAt(29.0)};
  using Moved = std::function<void(options::Setting&, double)>;
  const Moved tilt = [](options::Setting& setting, double to) { setting.tiltDeg = to; };
  const Moved mark = [](options::Setting& setting, double to) { setting.mark = static_cast<int>(to); };
  const Moved trim = [](options::Setting& setting, double to) { setting.trimM = to; };
  struct Start {
    const char* kind;
    Moved move;
    double from;
    double step;
    int first; ///< that does not stand
    int again; ///< one that does
  };
  BOOST_TEST_REQUIRE(*best.setting->mark == 81);
  for (const Start& start :
       {Start{"tilt-down", tilt, 4.5, -0.5, 2, 10}, Start{"tilt-up", tilt, -0.5, 0.5, 1, 10},
        Start{"mark-down", mark, 85, -1, 2, 5}, Start{"mark-up", mark, 79, 1, 2, 5},
        Start{"trim-up", trim, 10.95, 0.01, 6, 250}}) {
    BOOST_TEST_CONTEXT(start.kind) {
      const auto at = [&](int steps) {
        options::Setting setting = *best.setting;
        start.move(setting, start.from + steps * start.step);
        return options::judge(snapshot, best.key, setting);
      };
      BOOST_TEST(at(start.first - 1).verdict <= Verdict::tight);
      BOOST_TEST(at(start.first).verdict == Verdict::fails);
      BOOST_TEST(at(start.again).verdict <= Verdict::tight);
      const auto reserves = options::reservesOf(snapshot, at(0));
      const auto found =
          std::ranges::find(reserves, QString::fromLatin1(start.kind), &options::Reserve::kind);
      BOOST_TEST_REQUIRE((found != reserves.end()));
      BOOST_TEST(found->steps == start.first);
      BOOST_TEST(found->rule.toStdString() == "cover");
    }
  }
}

/// Nothing breaks where the figure may go as far as it is looked along.
BOOST_AUTO_TEST_CASE(what_never_breaks_is_told_as_such) {
  Snapshot snapshot = fewSettings();
  snapshot.venue.lowSteel = metres(40);
  const auto reserves = options::reservesOf(snapshot, bestOf(snapshot));
  const auto steel = std::ranges::find(reserves, QStringLiteral("low-steel"), &options::Reserve::kind);
  BOOST_TEST_REQUIRE((steel != reserves.end()));
  BOOST_TEST(steel->steps == 0);
  BOOST_TEST(steel->last == 30.0);
  BOOST_TEST((steel->then == Verdict::holds));
  BOOST_TEST(steel->words.toStdString() == "10.00 m less under low steel");
  BOOST_TEST((reserves.back().kind == steel->kind)); // what breaks comes first
}

/// What breaks exactly at the end of the way is told; a centimetre further on it is out of sight.
BOOST_AUTO_TEST_CASE(what_breaks_at_the_very_end_is_told) {
  Snapshot snapshot = fewSettings();
  for (catalogue::CabinetType& each : snapshot.catalogue.cabinets) {
    each.coverLowest = degrees(-89); // wherever it hangs
    each.coverHighest = degrees(89);
    each.throwDistance = metres(500);
  }
  const Option best = bestOf(snapshot);
  const auto lowerFrom = [&](double trimM) {
    options::Setting setting = *best.setting;
    setting.trimM = trimM;
    const auto reserves = options::reservesOf(snapshot, options::judge(snapshot, best.key, setting));
    BOOST_TEST_REQUIRE(!reserves.empty());
    return *std::ranges::find(reserves, QStringLiteral("trim-down"), &options::Reserve::kind);
  };
  const int first = lowerFrom(6.0).steps;
  BOOST_TEST_REQUIRE(first > 0);
  const options::Reserve end = lowerFrom(6.0 + 0.01 * (500 - first));
  BOOST_TEST(end.steps == 500);
  BOOST_TEST((end.then == Verdict::fails));
  BOOST_TEST(lowerFrom(6.0 + 0.01 * (501 - first)).steps == 0);
}

/// Up to 5 t of cable, 10 m of steel, 5 m of trim, 20° of tilt, 20 links and 100 m/s of wind; a chain is
/// never shorter than one link. Each way ends at the last that stands, or says that nothing broke.
BOOST_AUTO_TEST_CASE(each_way_is_looked_along_so_far) {
  Snapshot snapshot = fewSettings();
  snapshot.venue.outdoors = true;
  snapshot.show.wind = metresPerSecond(0.5);
  snapshot.show.windBasis = calendar::WindBasis::gust;
  snapshot.show.windAveraging = 3;
  snapshot.show.windHeight = metres(20);
  for (calendar::Hang& hang : snapshot.show.hangs) {
    hang.wetMass = kilograms(0);
  }
  const Option best = bestOf(snapshot);
  BOOST_REQUIRE(best.verdict <= Verdict::tight);
  BOOST_REQUIRE(best.setting->mark.has_value());
  const std::map<QString, std::pair<int, double>> ways{
      {QStringLiteral("mass"), {5000, 1.0}},
      {QStringLiteral("low-steel"), {1000, -0.01}},
      {QStringLiteral("trim-down"), {500, -0.01}},
      {QStringLiteral("trim-up"), {500, 0.01}},
      {QStringLiteral("tilt-down"), {40, -0.5}},
      {QStringLiteral("tilt-up"), {40, 0.5}},
      {QStringLiteral("mark-down"), {std::min(20, *best.setting->mark - 1), -1.0}},
      {QStringLiteral("mark-up"), {20, 1.0}},
      {QStringLiteral("wind"), {200, 0.5}}};
  const auto reserves = options::reservesOf(snapshot, best);
  BOOST_TEST(reserves.size() == ways.size());
  for (const options::Reserve& each : reserves) {
    const auto& [most, step] = ways.at(each.kind);
    BOOST_TEST(each.most == most, each.kind.toStdString());
    const int within = each.steps == 0 ? most : each.steps - 1;
    BOOST_TEST(std::abs(each.last - each.from - within * step) < 1e-9, each.kind.toStdString());
  }
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
