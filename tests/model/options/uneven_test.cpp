// SPDX-License-Identifier: GPL-3.0-or-later
// Two hoists of a pair that do not stand level.
#include <boost/test/unit_test.hpp>

#include <cmath>
#include <functional>
#include <memory>

#include "options/load_columns.h"
#include "options/search.h"
#include "options/weight_limits.h"
#include "print.h"
#include "quantity/quantity.h"
#include "show_fixture.h"

using namespace hangbook;
using options::Finding;
using options::Option;
using options::Snapshot;
using options::Verdict;

namespace {

struct Chosen {
  Snapshot snapshot = testing::smallHarbourShow();
  Option option = options::decide(snapshot, QStringLiteral("left")).hangs[0].options.front();
};

const Finding& of(const Option& option, const char* rule) {
  for (const Finding& finding : option.findings) {
    if (finding.rule == QLatin1String(rule)) {
      return finding;
    }
  }
  BOOST_FAIL(std::string("no finding of ") + rule);
  return option.findings.front();
}

Option unlikeBy(
    double difference, const std::function<void(Snapshot&)>& also = [](Snapshot&) {}) {
  static const Chosen chosen;
  Snapshot changed = chosen.snapshot;
  changed.show.house.push_back(
      {QStringLiteral("hoist-difference"), difference, {}, {}, QStringLiteral("Edda"), QDate(2026, 1, 1)});
  also(changed);
  return options::judge(changed, chosen.option.key, *chosen.option.setting);
}

} // namespace

BOOST_AUTO_TEST_SUITE(uneven_hoists)

BOOST_AUTO_TEST_CASE(level_says_what_the_rules_say) {
  const Option level = unlikeBy(0.0);
  double most = 0.0;
  for (const char* rule : {"point-load", "zone-load", "hoist", "hardware"}) {
    most = std::max(most, *of(level, rule).usePercent);
  }
  BOOST_TEST(*of(level, "uneven").usePercent == most, boost::test_tools::tolerance(1e-9));
}

BOOST_AUTO_TEST_CASE(the_higher_pick_takes_more_and_it_is_judged) {
  double before = 0.0;
  for (const double difference : {0.0, 0.01, 0.03, 0.08, 0.15}) {
    const Finding finding = of(unlikeBy(difference), "uneven");
    BOOST_TEST(*finding.usePercent >= before, finding.text.toStdString());
    before = *finding.usePercent;
  }
  // A point that just carries the level hang fails with one hoist a little higher.
  const double carried = of(unlikeBy(0.0), "point-load").value.value();
  const auto barely = [carried](Snapshot& s) {
    for (venue::Point& point : s.venue.points) {
      point.capacity = kilonewtons(carried * 1.01);
    }
  };
  BOOST_TEST((of(unlikeBy(0.0, barely), "uneven").verdict == Verdict::tight));
  const Option over = unlikeBy(0.05, barely);
  BOOST_TEST((of(over, "point-load").verdict == Verdict::tight));
  BOOST_TEST((of(over, "uneven").verdict == Verdict::fails));
  BOOST_TEST(of(over, "uneven").text.contains(QStringLiteral("5.0 cm higher the hang rolls 2.9°")),
             of(over, "uneven").text.toStdString());
}

/// The point that fails is under the hoist of which the sentence says that it is higher.
BOOST_AUTO_TEST_CASE(the_higher_hoist_is_named) {
  for (const std::size_t which : {0U, 1U}) {
    const char* name = which == 0 ? "L1" : "L2";
    const auto weak = [name](Snapshot& s) {
      for (venue::Point& point : s.venue.points) {
        point.capacity = point.name == QLatin1String(name) ? kilonewtons(1.0) : point.capacity;
      }
    };
    const QString text = of(unlikeBy(0.05, weak), "uneven").text;
    const QStringList words = text.split(QLatin1Char(' '));
    const double left = words[words.indexOf(QStringLiteral("take")) + 1].toDouble();
    const double right = words[words.indexOf(QStringLiteral("take")) + 4].toDouble();
    BOOST_TEST(text.startsWith(which == 0 ? QStringLiteral("With the left hoist 5.0 cm higher")
                                          : QStringLiteral("With the right hoist 5.0 cm higher")),
               text.toStdString());
    BOOST_TEST((which == 0 ? left > right : right > left), text.toStdString());
  }
}

BOOST_AUTO_TEST_CASE(beyond_the_bars_own_figure_it_fails) {
  BOOST_TEST((of(unlikeBy(0.21), "uneven").verdict == Verdict::fails)); // the fixture's bar allows 0.2 m
  BOOST_TEST(of(unlikeBy(0.21), "uneven").unit.toStdString() == "m");
}

BOOST_AUTO_TEST_CASE(a_single_pick_has_no_other) {
  Snapshot snapshot = testing::harbourShow();
  snapshot.catalogue.hoists = {snapshot.catalogue.hoists[2]};
  snapshot.catalogue.tables.pop_back();
  snapshot.catalogue.bars[0].arrangements.erase(snapshot.catalogue.bars[0].arrangements.begin());
  snapshot.show.hangs[0].pan = degrees(0);
  const auto options = options::decide(snapshot, QStringLiteral("left")).hangs[0].options;
  BOOST_TEST(!of(options.front(), "uneven").applies);
}

/// 100 kg that hang 2 m below picks 1 m apart: a rise of d on 1 m moves 2 d/√(1 − d²) of the weight. In doubt
/// half as much again is added to what the higher pick carries at its worst, and the plain figure taken off
/// the other's; for half a newton as for a thousand.
BOOST_AUTO_TEST_CASE(what_moves_is_taken_at_its_greatest) {
  catalogue::PickArrangement arrangement;
  arrangement.spacing = metres(1);
  options::Case option;
  option.arrangement = &arrangement;
  options::Settled level;
  level.statics.mass = 100.0;
  level.statics.cg = {0.0, 0.0, -2.0};
  level.statics.pickCount = 2;
  level.statics.pickLoads[0].load = 600.0;
  level.statics.pickLoads[1].load = 500.0;
  auto doubt = std::make_shared<options::SettledDoubt>();
  doubt->worst.lever = 1.5;
  const double weight = 100.0 * standardGravity;
  for (const double rise : {0.00025, 0.45}) {
    auto limits = std::make_shared<options::WeightLimits>();
    limits->hoistDifference.value = rise;
    option.weight = limits;
    const double moved = weight * 2.0 * rise / std::sqrt(1.0 - rise * rise);
    const auto near = boost::test_tools::tolerance(1e-12);
    level.doubt = nullptr;
    const auto stated = options::unevenLoads(option, level).value();
    BOOST_TEST(stated[0][0] == 0.5 * weight + moved, near);
    BOOST_TEST(stated[1][0] == 0.5 * weight - moved, near);
    level.doubt = doubt;
    const auto worst = options::unevenLoads(option, level).value();
    BOOST_TEST(worst[0][0] == 600.0 + 1.5 * moved, near);
    BOOST_TEST(worst[0][1] == 500.0 - moved, near);
    BOOST_TEST(worst[1][0] == 600.0 - moved, near);
    BOOST_TEST(worst[1][1] == 500.0 + 1.5 * moved, near);
  }
}

BOOST_AUTO_TEST_SUITE_END()
