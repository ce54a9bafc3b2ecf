// SPDX-License-Identifier: GPL-3.0-or-later
// What stands beside a judged setting: its marks and those beside them, aims, the datum's height, which rule
// ends the window, the steps of the build in words.
#include <boost/test/unit_test.hpp>

#include <algorithm>
#include <cmath>

#include "hang/layout.h"
#include "hang/settle.h"
#include "options/search.h"
#include "print.h"
#include "show_fixture.h"

using namespace hangbook;
using namespace hangbook::options;

namespace {

/// The first option of the left hang that has a setting, with or without a chain; or a window of trims too.
Option optionOf(const Snapshot& show, bool chain, bool window = false) {
  const auto found = decide(show, QStringLiteral("left"));
  for (const Option& each : found.hangs.at(0).options) {
    if (each.setting && each.setting->mark.has_value() == chain && (!window || each.trimWindow)) {
      return each;
    }
  }
  BOOST_FAIL("no such option");
  return {};
}

Option at(const Snapshot& show, const Option& option, int mark) {
  Setting setting = *option.setting;
  setting.mark = mark;
  return judge(show, option.key, setting);
}

} // namespace

BOOST_AUTO_TEST_SUITE(judge_case)

/// One link more or less: what stands beside a mark is what is at that mark.
BOOST_AUTO_TEST_CASE(the_marks_beside_are_what_they_would_be) {
  Snapshot show = testing::smallHarbourShow();
  const auto whole = [](const Option& each) {
    return each.marks.size() == 3U && each.marks[1].angleDeg && each.marks[2].angleDeg;
  };
  Option option = optionOf(show, true);
  for (int more = 0; more < 20 && !whole(option); ++more) {
    option = at(show, option, *option.setting->mark + 1);
  }
  BOOST_REQUIRE(whole(option));
  const int mark = *option.setting->mark;
  BOOST_TEST(option.marks[0].mark == mark);
  BOOST_TEST(option.marks[1].mark == mark - 1);
  BOOST_TEST(option.marks[2].mark == mark + 1);
  int seen = 0;
  for (const MarkAngle& beside : option.marks) {
    if (beside.angleDeg) {
      const Option there = at(show, option, beside.mark);
      BOOST_REQUIRE(!there.marks.empty());
      BOOST_TEST(*beside.angleDeg == there.marks[0].angleDeg.value(), boost::test_tools::tolerance(1e-9));
      ++seen;
    }
  }
  BOOST_TEST(seen == 3);
  // The same chain with as much more of it that is no link: the mark is 2, then 1, and below that there is
  // none.
  catalogue::ChainType& chain = show.catalogue.chains[0];
  const double pitch = inMetres(*chain.pitch);
  const double fixed = inMetres(*chain.fixedLength);
  for (const int lowest : {2, 1}) {
    chain.fixedLength = metres(fixed + (mark - lowest) * pitch);
    const Option low = at(show, option, lowest);
    BOOST_REQUIRE(low.marks.size() == 3U);
    BOOST_TEST(low.marks[0].angleDeg.value() == option.marks[0].angleDeg.value(),
               boost::test_tools::tolerance(1e-6));
    BOOST_TEST(low.marks[1].mark == lowest - 1);
    BOOST_TEST(low.marks[1].angleDeg.has_value() == (lowest == 2));
    BOOST_TEST(low.marks[2].angleDeg.has_value());
  }
}

BOOST_AUTO_TEST_CASE(no_mark_beyond_what_can_serve) {
  const Snapshot show = testing::smallHarbourShow();
  Option option = optionOf(show, true);
  for (int more = 0; more < 200 && option.marks.size() == 3U && option.marks[2].angleDeg; ++more) {
    option = at(show, option, *option.setting->mark + 1);
  }
  BOOST_REQUIRE(option.marks.size() == 3U);
  BOOST_TEST(!option.marks[2].angleDeg.has_value()); // its travel ends
  BOOST_TEST(option.marks[1].angleDeg.has_value());
  // A chain of as many links has that mark still, one of a link less has not.
  const int last = *option.setting->mark;
  Snapshot shorter = show;
  shorter.catalogue.chains[0].links = last;
  BOOST_TEST(at(shorter, option, last - 1).marks.at(2).angleDeg.has_value());
  shorter.catalogue.chains[0].links = last - 1;
  BOOST_TEST(!at(shorter, option, last - 1).marks.at(2).angleDeg.has_value());
}

BOOST_AUTO_TEST_CASE(each_element_has_its_aim) {
  const Snapshot show = testing::smallHarbourShow();
  const Option option = optionOf(show, true);
  BOOST_REQUIRE(option.aims.size() == static_cast<std::size_t>(option.key.stack.size()));
  for (std::size_t i = 0; i < option.aims.size(); ++i) {
    BOOST_TEST(option.aims[i].element == static_cast<int>(i) + 1);
  }
  BOOST_TEST(optionOf(show, false).marks.empty()); // no chain, no mark
}

/// The lowest edge hangs at the trim; the datum stands over it by what the layout says of that place of the
/// bar.
BOOST_AUTO_TEST_CASE(the_datum_stands_where_the_bar_has_it) {
  Snapshot show = testing::smallHarbourShow();
  const Option option = optionOf(show, false);
  Setting setting = *option.setting;
  setting.tiltDeg += 3.0;
  show.catalogue.bars[0].datum.reset();
  BOOST_TEST(!judge(show, option.key, setting).datumHeightM.has_value());
  setting.panDeg = 0.0; // no roll: the lowest corner is that of the outlines
  const auto heightAt = [&](double x, double z) {
    show.catalogue.bars[0].datum = catalogue::Position{metres(x), metres(z)};
    return judge(show, option.key, setting);
  };
  const Option origin = heightAt(0.0, 0.0);
  const hang::Statics statics = hang::standing(*origin.hangInput);
  const hang::Layout layout = hang::layOut(*origin.hangInput, statics);
  const double above = setting.trimM - statics.bottom;
  const auto close = boost::test_tools::tolerance(1e-9);
  BOOST_TEST(origin.datumHeightM.value() == above + layout.frameOrigin.z, close);
  BOOST_TEST(std::abs(layout.forward.z) > 0.01);
  BOOST_TEST(heightAt(2.0, 0.0).datumHeightM.value() == above + layout.frameOrigin.z + 2.0 * layout.forward.z,
             close);
  BOOST_TEST(heightAt(0.0, 3.0).datumHeightM.value() == above + layout.frameOrigin.z + 3.0 * layout.up.z,
             close);
}

/// Of two rules that end the window at the same trim the first one of the sheet is told.
BOOST_AUTO_TEST_CASE(the_first_of_two_that_end_it_alike_is_told) {
  Snapshot show = testing::smallHarbourShow();
  const Option option = optionOf(show, true, true);
  const auto windowIn = [&] { return judge(show, option.key, *option.setting).trimWindow.value(); };
  const TrimWindow before = windowIn();
  BOOST_TEST(before.highSetBy.toStdString() != "lowest-edge");
  show.venue.mostTrim = metres(before.highM - 0.1);
  BOOST_TEST(windowIn().highSetBy.toStdString() == "lowest-edge");
  BOOST_TEST(windowIn().highM == before.highM - 0.1);
  show.venue.mostTrim = metres(before.highM);
  BOOST_TEST(windowIn().highM == before.highM);
  BOOST_TEST(windowIn().highSetBy.toStdString() == "lowest-edge");
}

/// The same of its lower end: where cover begins, and a height that the show asks for.
BOOST_AUTO_TEST_CASE(the_first_of_two_that_begin_it_alike_is_told) {
  Snapshot show = testing::smallHarbourShow();
  const Option option = optionOf(show, true, true);
  const auto windowIn = [&] { return judge(show, option.key, *option.setting).trimWindow.value(); };
  const TrimWindow before = windowIn();
  BOOST_TEST(before.lowSetBy.toStdString() == "cover");
  show.show.hangs[0].leastTrim = metres(before.lowM);
  BOOST_TEST(windowIn().lowM == before.lowM);
  BOOST_TEST(windowIn().lowSetBy.toStdString() == "lowest-edge");
}

/// Points that stand farther apart than the picks: the higher the hang, the more its chains lean and pull. A
/// point that may carry just what it carries at some trim ends the window at that trim.
BOOST_AUTO_TEST_CASE(a_load_that_rises_with_the_lean_ends_the_window) {
  Snapshot show = testing::smallHarbourShow();
  const Option option = optionOf(show, true, true);
  for (venue::Point& point : show.venue.points) {
    if (point.name == option.key.points[0]) {
      point.y = metres(inMetres(point.y) + 0.3);
    }
    point.basis = catalogue::Basis::atRest;
    point.capacity = kilonewtons(100);
  }
  const Option free = judge(show, option.key, *option.setting);
  BOOST_REQUIRE(free.trimWindow.has_value());
  BOOST_REQUIRE(free.trimWindow->highM - free.trimWindow->lowM > 0.1);
  Setting setting = *option.setting;
  setting.trimM = free.trimWindow->lowM + 0.75 * (free.trimWindow->highM - free.trimWindow->lowM);
  const Option there = judge(show, option.key, setting);
  const auto found = std::ranges::find(there.findings, QStringLiteral("point-load"), &Finding::rule);
  BOOST_REQUIRE(found != there.findings.end());
  for (venue::Point& point : show.venue.points) {
    point.capacity = kilonewtons(*found->value);
  }
  const TrimWindow window = judge(show, option.key, setting).trimWindow.value();
  BOOST_TEST(window.highM == setting.trimM, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(window.highSetBy.toStdString() == "point-load");
  BOOST_TEST(window.lowM == free.trimWindow->lowM);
}

/// A rule that does not apply has no figure of anybody, so that no house rule had a part in it.
BOOST_AUTO_TEST_CASE(what_does_not_apply_names_no_house_rule) {
  Snapshot show = testing::smallHarbourShow();
  show.show.house.push_back({QStringLiteral("dynamic-factor"), 1.3, QString(), QStringLiteral("test"),
                             QStringLiteral("Edda"), QDate(2027, 3, 1)}); // read by hoist and by wind
  int applying = 0;
  int others = 0;
  for (const Finding& finding : optionOf(show, false).findings) {
    const bool named = finding.source.contains(QStringLiteral("house rule of"));
    applying += finding.applies && named ? 1 : 0;
    others += finding.applies ? 0 : 1;
    BOOST_TEST((finding.applies || !named), finding.rule.toStdString());
  }
  BOOST_TEST(applying > 0);
  BOOST_TEST(others > 0);
}

/// All of a step is in kN: plumb chains leave the pick's load to the point, with the same gear at every step,
/// and where a hoist climbs it lifts its body, chain and bag beside.
BOOST_AUTO_TEST_CASE(steps_of_the_build_in_figures) {
  const Option option = optionOf(testing::smallHarbourShow(), false);
  const auto close = boost::test_tools::tolerance(1e-9);
  BOOST_TEST_REQUIRE(option.build.size() > 2U);
  const double gear = option.points[0].staticKn - option.points[0].parts[0].kn;
  const double worstGear =
      option.build.back().picks[0].worstPointKn - option.build.back().picks[0].worstMostKn;
  BOOST_TEST(gear > 0.1);
  BOOST_TEST(worstGear >= gear);
  for (const StepLoads& step : option.build) {
    for (const StepPick& pick : step.picks) {
      BOOST_TEST(pick.pointKn == pick.mostKn + gear, close);
      BOOST_TEST(pick.worstPointKn == pick.worstMostKn + worstGear, close);
      BOOST_TEST(pick.hoistKn >= pick.mostKn);
      BOOST_TEST(pick.hoistKn < pick.pointKn);
      BOOST_TEST(pick.worstHoistKn >= pick.worstMostKn);
      BOOST_TEST(pick.worstHoistKn < pick.worstPointKn);
      BOOST_TEST(pick.worstLeastKn <= pick.leastKn);
      BOOST_TEST(pick.leastKn <= pick.mostKn);
      BOOST_TEST(pick.leastKn > 0.1 * pick.mostKn);
    }
  }
}

BOOST_AUTO_TEST_CASE(steps_of_the_build_in_words) {
  const Snapshot show = testing::smallHarbourShow();
  const auto wordsOf = [](const Option& option) {
    std::vector<std::string> words;
    for (const StepLoads& step : option.build) {
      words.push_back(step.stage.toStdString() + ": " + step.step.toStdString());
    }
    return words;
  };
  const auto each = boost::test_tools::per_element();
  const Option chained = optionOf(show, true);
  BOOST_TEST_REQUIRE(chained.key.stack.size() == 4);
  BOOST_TEST(wordsOf(chained) ==
                 (std::vector<std::string>{"stacked: bar alone", "stacked: 1 cabinet", "stacked: 2 cabinets",
                                           "stacked: 3 cabinets", "stacked: 4 cabinets, chain not yet on",
                                           "chained: 4 cabinets, chain on",
                                           "aiming: level to set, tilting and panning", "set: as set"}),
             each);
  const Option plain = optionOf(show, false);
  BOOST_TEST_REQUIRE(plain.key.stack.size() == 3);
  BOOST_TEST(wordsOf(plain) ==
                 (std::vector<std::string>{"stacked: bar alone", "stacked: 1 cabinet", "stacked: 2 cabinets",
                                           "stacked: 3 cabinets", "aiming: level to set, tilting and panning",
                                           "set: as set"}),
             each);
}

BOOST_AUTO_TEST_SUITE_END()
