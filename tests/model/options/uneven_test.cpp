// SPDX-License-Identifier: GPL-3.0-or-later
// Two hoists of a pair that do not stand level.
#include <boost/test/unit_test.hpp>

#include <cmath>
#include <functional>

#include "options/search.h"
#include "print.h"
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

BOOST_AUTO_TEST_SUITE_END()
