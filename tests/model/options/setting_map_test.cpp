// SPDX-License-Identifier: GPL-3.0-or-later
// The map of settings against `judge`, which knows nothing of it.
#include <boost/test/unit_test.hpp>

#include <algorithm>
#include <cmath>

#include "few_settings.h"
#include "options/search.h"
#include "options/setting_map.h"
#include "show_fixture.h"

using namespace hangbook;
using options::SettingColumn;
using options::SettingMap;
using options::Verdict;

namespace {

/// What the map says of a place.
Verdict inMap(const SettingColumn& column, long step) {
  const double trim = static_cast<double>(step) * options::mapTrimStepM;
  for (const auto& stretch : column.stretches) {
    for (const auto& part : stretch.parts) {
      if (trim >= part.lowM && trim <= part.highM) {
        return part.verdict;
      }
    }
  }
  return Verdict::fails;
}

Verdict judged(const options::Snapshot& snapshot, const options::Option& option, double tilt,
               std::optional<int> mark, long step) {
  options::Setting setting = *option.setting;
  setting.tiltDeg = tilt;
  setting.mark = mark;
  setting.trimM = static_cast<double>(step) * options::mapTrimStepM;
  return options::judge(snapshot, option.key, setting).verdict;
}

/// Worked out once: a search and a map of its best option.
struct Mapped {
  options::Snapshot snapshot = testing::smallHarbourShow();
  options::ShowOptions all = options::decide(snapshot, QStringLiteral("left"));
  options::Option option = all.hangs.front().options.front();
  SettingMap map = options::settingMap(snapshot, option);
};
const Mapped& mapped() {
  static const Mapped made;
  return made;
}

/// Mapped sooner.
options::Snapshot coarse() {
  return testing::withTiltStep(mapped().snapshot, 2);
}

} // namespace

BOOST_AUTO_TEST_SUITE(setting_map)

BOOST_AUTO_TEST_CASE(every_place_has_the_verdict_that_judging_it_alone_gives) {
  const options::Snapshot& snapshot = mapped().snapshot;
  int checked = 0;
  int standing = 0;
  const options::Option& option = mapped().option;
  const SettingMap& map = mapped().map;
  BOOST_TEST_REQUIRE(!map.columns.empty());
  for (std::size_t i = 0; i < map.columns.size(); i += 5) {
    const SettingColumn& column = map.columns[i];
    std::vector<long> steps{0, 450, 1200};
    for (const auto& stretch : column.stretches) {
      const long low = std::lround(stretch.lowM * 100);
      const long high = std::lround(stretch.highM * 100);
      steps.insert(steps.end(), {low - 1, low, (low + high) / 2, high, high + 1});
    }
    for (const long step : steps) {
      const Verdict alone = judged(snapshot, option, column.tiltDeg, map.mark, step);
      BOOST_TEST((inMap(column, step) == alone),
                 "tilt " << column.tiltDeg << " trim " << 0.01 * static_cast<double>(step) << ": map "
                         << options::wordFor(inMap(column, step)).toStdString() << ", alone "
                         << options::wordFor(alone).toStdString());
      ++checked;
      standing += alone <= Verdict::tight ? 1 : 0;
    }
  }
  BOOST_TEST(checked > 20);
  BOOST_TEST(standing > 5);
}

BOOST_AUTO_TEST_CASE(each_end_names_a_rule_that_fails_one_step_on) {
  const auto& [snapshot, all, option, map] = mapped();
  int ends = 0;
  for (std::size_t i = 0; i < map.columns.size(); i += 2) {
    const SettingColumn& column = map.columns[i];
    for (const auto& stretch : column.stretches) {
      for (const bool low : {true, false}) {
        options::Setting setting = *option.setting;
        setting.tiltDeg = column.tiltDeg;
        const long end = std::lround((low ? stretch.lowM : stretch.highM) * 100) + (low ? -1 : 1);
        setting.trimM = static_cast<double>(end) * options::mapTrimStepM;
        const options::Option beyond = options::judge(snapshot, option.key, setting);
        const auto finding = std::ranges::find(beyond.findings, low ? stretch.lowRule : stretch.highRule,
                                               &options::Finding::rule);
        BOOST_TEST_REQUIRE((finding != beyond.findings.end()));
        BOOST_TEST((finding->verdict == Verdict::fails));
        ++ends;
      }
    }
    BOOST_TEST((column.stretches.empty() ? !column.shutBy.isEmpty() : column.shutBy.isEmpty()));
  }
  BOOST_TEST(ends > 2);
}

BOOST_AUTO_TEST_CASE(a_mark_stands_at_the_tilts_at_which_some_trim_does) {
  const auto& [snapshot, all, option, map] = mapped();
  BOOST_TEST_REQUIRE(!map.marks.empty());
  const auto own = std::ranges::find(map.marks, option.setting->mark.value(), &options::MarkLine::mark);
  BOOST_TEST_REQUIRE((own != map.marks.end()));
  std::size_t open = 0;
  for (const SettingColumn& column : map.columns) {
    open += column.stretches.empty() ? 0 : 1;
  }
  BOOST_TEST(own->at.size() == open);
  for (std::size_t i = 0; i < map.marks.size(); i += map.marks.size() / 2 + 1) {
    options::Option other = option;
    other.setting->mark = map.marks[i].mark;
    const SettingMap there = options::settingMap(snapshot, other);
    std::vector<double> tilts;
    for (const SettingColumn& column : there.columns) {
      if (!column.stretches.empty()) {
        tilts.push_back(column.tiltDeg);
      }
    }
    std::vector<double> said;
    for (const auto& at : map.marks[i].at) {
      said.push_back(at.tiltDeg);
    }
    BOOST_TEST(said == tilts, boost::test_tools::per_element());
  }
}

/// The bar may be picked in two ways of one kind, one of which holds nothing: what stands by the other
/// stands, whichever of the two comes first.
BOOST_AUTO_TEST_CASE(of_two_ways_to_pick_the_better_counts) {
  const options::Snapshot few = coarse();
  const SettingMap one = options::settingMap(few, mapped().option);
  for (const bool weakFirst : {false, true}) {
    options::Snapshot snapshot = few;
    catalogue::BarType& bar =
        *std::ranges::find(snapshot.catalogue.bars, mapped().option.key.bar, &catalogue::BarType::name);
    catalogue::PickArrangement weak = bar.arrangements.front();
    BOOST_TEST_REQUIRE((weak.picks == mapped().option.key.picks));
    weak.limit = newtons(1.0);
    bar.arrangements.insert(weakFirst ? bar.arrangements.begin() : bar.arrangements.end(), weak);
    const SettingMap map = options::settingMap(snapshot, mapped().option);
    BOOST_TEST_REQUIRE(map.columns.size() == one.columns.size());
    int standing = 0;
    for (std::size_t i = 0; i < map.columns.size(); ++i) {
      const auto& stretches = map.columns[i].stretches;
      const auto& alone = one.columns[i].stretches;
      BOOST_TEST_REQUIRE(stretches.size() == alone.size());
      for (std::size_t k = 0; k < stretches.size(); ++k) {
        BOOST_TEST(stretches[k].parts.front().lowM == alone[k].parts.front().lowM);
        BOOST_TEST(stretches[k].parts.back().highM == alone[k].parts.back().highM);
        BOOST_TEST((stretches[k].parts.front().verdict == alone[k].parts.front().verdict));
        ++standing;
      }
    }
    BOOST_TEST(standing > 0);
  }
}

/// A limit of the trim that stands on a whole centimetre is that stretch's end, and is named.
BOOST_AUTO_TEST_CASE(an_end_on_a_whole_centimetre_names_its_rule) {
  options::Snapshot snapshot = coarse();
  const SettingMap free = options::settingMap(snapshot, mapped().option);
  const auto wide = std::ranges::find_if(free.columns, [](const SettingColumn& column) {
    return !column.stretches.empty() && column.stretches[0].highM - column.stretches[0].lowM > 0.3;
  });
  BOOST_TEST_REQUIRE((wide != free.columns.end()));
  for (const int within : {5, 8}) {
    const long most = std::lround(wide->stretches[0].highM * 100) - within;
    snapshot.venue.mostTrim = metres(static_cast<double>(most) / 100);
    const SettingMap map = options::settingMap(snapshot, mapped().option);
    const auto there = std::ranges::find(map.columns, wide->tiltDeg, &SettingColumn::tiltDeg);
    BOOST_TEST_REQUIRE((there != map.columns.end()));
    BOOST_TEST_REQUIRE(there->stretches.size() == 1U);
    BOOST_TEST(std::lround(there->stretches[0].highM * 100) == most);
    BOOST_TEST(there->stretches[0].highRule.toStdString() == "lowest-edge");
  }
}

/// Two ways to pick one tilt leave unlike room above: what either of them reaches is looked at.
BOOST_AUTO_TEST_CASE(of_two_ways_to_pick_the_reach_of_both_is_mapped) {
  options::Snapshot snapshot = coarse();
  snapshot.show.hangs.resize(1);
  snapshot.show.hangs[0].pan = degrees(0);
  snapshot.venue.lowSteel = metres(11);
  snapshot.venue.sections.clear();
  catalogue::PickArrangement low;
  low.picks = catalogue::Picks::foreAftPair;
  low.front = catalogue::Position{metres(0.5), metres(0.0)};
  low.rear = catalogue::Position{metres(-0.5), metres(0.0)};
  low.limit = kilonewtons(30);
  low.mostCabinets = 8;
  catalogue::PickArrangement high = low;
  high.front->z = high.rear->z = metres(0.4);
  catalogue::BarType& bar = snapshot.catalogue.bars[0];
  bar.arrangements = {low};
  const auto options = options::decide(snapshot, QStringLiteral("left")).hangs.front().options;
  BOOST_TEST_REQUIRE(options.front().setting.has_value());
  const auto ofTilt = [&](const std::vector<catalogue::PickArrangement>& arrangements) {
    bar.arrangements = arrangements;
    const SettingMap map = options::settingMap(snapshot, options.front());
    const auto there =
        std::ranges::find(map.columns, options.front().setting->tiltDeg, &SettingColumn::tiltDeg);
    BOOST_TEST_REQUIRE((there != map.columns.end()));
    BOOST_TEST_REQUIRE(!there->stretches.empty());
    return there->stretches.back().highM;
  };
  const double lower = ofTilt({high});
  const double higher = ofTilt({low});
  BOOST_TEST(higher > lower + 0.3);
  BOOST_TEST(ofTilt({low, high}) == higher);
  BOOST_TEST(ofTilt({high, low}) == higher);
}

/// Where nothing ends the trim it is looked at from the datum on, so far.
BOOST_AUTO_TEST_CASE(an_open_end_is_looked_at_so_far) {
  options::Snapshot snapshot = coarse();
  for (catalogue::HoistType& hoist : snapshot.catalogue.hoists) {
    hoist.closedLength.reset();
    hoist.chainLength.reset();
  }
  snapshot.venue.lowSteel.reset();
  snapshot.venue.sections.clear();
  const auto ends = [&] {
    const SettingMap map = options::settingMap(snapshot, mapped().option);
    const auto there = std::ranges::find_if(
        map.columns, [](const SettingColumn& column) { return !column.stretches.empty(); });
    BOOST_TEST_REQUIRE((there != map.columns.end()));
    BOOST_TEST((there->stretches.front().parts.front().verdict == Verdict::unproven));
    return std::pair(std::lround(there->stretches.front().lowM * 100),
                     std::lround(there->stretches.back().highM * 100));
  };
  BOOST_TEST((ends() == std::pair(600L, 3601L))); // from the hang's least trim on
  snapshot.show.hangs[0].leastTrim.reset();
  testing::houseSays(snapshot, "least-trim", std::nan(""));
  BOOST_TEST((ends() == std::pair(-1L, 3001L))); // from the datum, and a step more either way
}

BOOST_AUTO_TEST_CASE(without_a_setting_it_says_why_and_it_stops_when_it_is_told_to) {
  const options::Snapshot& snapshot = mapped().snapshot;
  options::Option option = mapped().option;
  BOOST_CHECK_THROW(options::settingMap(snapshot, option, [](double share) { return share < 0.3; }),
                    options::Cancelled);
  option.setting->mark = 100000;
  BOOST_TEST(options::settingMap(snapshot, option).impossible.contains(QStringLiteral("100000")));
  option.setting.reset();
  BOOST_TEST(!options::settingMap(snapshot, option).impossible.isEmpty());
}

BOOST_AUTO_TEST_CASE(an_open_figure_leaves_nothing_standing) {
  options::Snapshot snapshot = mapped().snapshot;
  const options::Option& option = mapped().option;
  for (venue::Point& point : snapshot.venue.points) {
    point.capacity.reset();
  }
  const SettingMap map = options::settingMap(snapshot, option);
  for (const SettingColumn& column : map.columns) {
    for (const auto& stretch : column.stretches) {
      for (const auto& part : stretch.parts) {
        BOOST_TEST((part.verdict == Verdict::unproven));
      }
    }
  }
}

BOOST_AUTO_TEST_SUITE_END()
