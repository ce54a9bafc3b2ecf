// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include <boost/test/unit_test.hpp>

#include "hang/solve.h"
#include "options/search.h"
#include "options/weigh.h"
#include "print.h"
#include "quantity/error.h"
#include "show_fixture.h"

using namespace hangbook;
using options::CellAt;
using options::Option;
using options::Weighed;

namespace {

struct Flown {
  options::Snapshot snapshot = testing::smallHarbourShow();
  Option option;
  Flown() {
    option = options::decide(snapshot, QStringLiteral("left")).hangs[0].options.front();
    BOOST_REQUIRE(option.hangInput.has_value());
  }
  Weighed read(double left, double right, CellAt at = CellAt::hook) const {
    return options::weigh(snapshot, option, at,
                          {{QStringLiteral("left"), left}, {QStringLiteral("right"), right}});
  }
  double computed(std::size_t pick) const { return option.points[pick].parts[0].kn; }
};

const Flown& flown() {
  static const Flown one;
  return one;
}

} // namespace

BOOST_AUTO_TEST_SUITE(weighing)

BOOST_AUTO_TEST_CASE(withinToleranceNothingIsListed) {
  const Weighed weighed = flown().read(flown().computed(0) * 1.049, flown().computed(1) * 0.951);
  BOOST_TEST(!weighed.beyond);
  BOOST_TEST(weighed.assumptions.empty());
  BOOST_TEST(weighed.tolerancePercent == 5.0);
  BOOST_TEST(weighed.picks[0].percent == 4.9, boost::test_tools::tolerance(1e-9));
}

/// A cabinet was left out: the cells read what the statics of the shorter stack give, and "one … missing" of
/// the right type is among what explains it; nothing is worse sorted than what comes after it.
BOOST_AUTO_TEST_CASE(aMissingCabinetIsOnTheList) {
  hang::Hang really = *flown().option.hangInput;
  BOOST_REQUIRE(flown().option.key.stack.front() == QStringLiteral("bass"));
  really.stack.erase(really.stack.begin());
  really.chain.reset(); // too long a mark for what is left: the downfill stands at an end of its travel
  really.stack.back().joint = hang::Pinned{-25.0, {hang::Vec2{0.0, 0.0}, hang::Vec2{-0.1, 0.0}}};
  const hang::Statics statics = hang::solve(really);
  const Weighed weighed =
      flown().read(statics.pickLoads[0].load / 1000.0, statics.pickLoads[1].load / 1000.0);
  BOOST_TEST(weighed.beyond);
  BOOST_REQUIRE(!weighed.assumptions.empty());
  const auto found = std::find_if(
      weighed.assumptions.begin(), weighed.assumptions.end(),
      [](const options::Assumption& each) { return each.what.contains(QStringLiteral("one bass missing")); });
  BOOST_REQUIRE((found != weighed.assumptions.end()));
  BOOST_TEST(found->explains);
  BOOST_TEST(found->missKn < 0.001);
  for (std::size_t i = 1; i < weighed.assumptions.size(); ++i) {
    BOOST_TEST(weighed.assumptions[i - 1].missKn <= weighed.assumptions[i].missKn);
  }
  for (const options::Assumption& each : weighed.assumptions) {
    BOOST_TEST(each.wouldKn.size() == 2U);
    if (each.what.contains(QStringLiteral("too many"))) {
      BOOST_TEST(!each.explains);
    }
  }
}

/// Above the hoist the cell carries body, chain and bag too; said the wrong way round, the list says so.
BOOST_AUTO_TEST_CASE(cellsAboveTheHoist) {
  const auto& parts = flown().option.points[0].parts;
  const double hoist = parts[1].kn + parts[2].kn;
  BOOST_TEST(!flown().read(flown().computed(0) + hoist, flown().computed(1) + hoist, CellAt::point).beyond);
  const Weighed wrong = flown().read(flown().computed(0) + hoist, flown().computed(1) + hoist);
  BOOST_TEST(wrong.beyond);
  const auto found =
      std::find_if(wrong.assumptions.begin(), wrong.assumptions.end(), [](const options::Assumption& each) {
        return each.what.contains(QStringLiteral("above the hoists:"));
      });
  BOOST_REQUIRE((found != wrong.assumptions.end()));
  BOOST_TEST(found->missKn < 1e-9);
}

BOOST_AUTO_TEST_CASE(theHouseTightens) {
  options::Snapshot strict = flown().snapshot;
  strict.tour.house.push_back(
      {QStringLiteral("scale-tolerance"), 2.0, {}, {}, QStringLiteral("Edda"), QDate(2026, 1, 1)});
  const std::vector<options::CellReading> readings{{QStringLiteral("left"), flown().computed(0) * 1.03},
                                                   {QStringLiteral("right"), flown().computed(1)}};
  BOOST_TEST(options::weigh(strict, flown().option, CellAt::hook, readings).beyond);
  strict.tour.house.back().value = 20.0; // looser than the usual figure: that stands
  BOOST_TEST(options::weigh(strict, flown().option, CellAt::hook, readings).tolerancePercent == 5.0);
}

BOOST_AUTO_TEST_CASE(aReadingAsFarOffAsTheTolerance) {
  options::Snapshot strict = flown().snapshot;
  strict.tour.house.push_back(
      {QStringLiteral("scale-tolerance"), 4.0, {}, {}, QStringLiteral("Edda"), QDate(2026, 1, 1)});
  const std::vector<options::CellReading> readings{{QStringLiteral("left"), flown().computed(0) * 1.03},
                                                   {QStringLiteral("right"), flown().computed(1)}};
  const auto weighed = [&] { return options::weigh(strict, flown().option, CellAt::hook, readings); };
  const double off = weighed().picks[0].percent;
  strict.tour.house.back().value = off;
  BOOST_TEST(!weighed().beyond);
  strict.tour.house.back().value = std::nextafter(off, 0.0);
  BOOST_TEST(weighed().beyond);
}

BOOST_AUTO_TEST_CASE(badReadingsAreRefused) {
  const auto refused = [](const std::vector<options::CellReading>& readings) {
    BOOST_CHECK_THROW(options::weigh(flown().snapshot, flown().option, CellAt::hook, readings), Error);
  };
  refused({});
  refused({{QStringLiteral("left"), 4.0}});
  refused({{QStringLiteral("left"), 4.0}, {QStringLiteral("left"), 4.0}, {QStringLiteral("right"), 4.0}});
  refused({{QStringLiteral("left"), 4.0}, {QStringLiteral("right"), 0.0}});
  refused({{QStringLiteral("left"), 4.0}, {QStringLiteral("right"), 4.0}, {QStringLiteral("front"), 4.0}});
  refused({{QStringLiteral("left"), 4.0}, {QStringLiteral("right"), std::nan("")}});
  // However little, above nothing it is a reading.
  BOOST_TEST(options::weigh(flown().snapshot, flown().option, CellAt::hook,
                            {{QStringLiteral("left"), 4.0}, {QStringLiteral("right"), 0.001}})
                 .beyond);
}

/// One hoist stops: at the difference to hold at nothing is passed, a little beyond it is.
BOOST_AUTO_TEST_CASE(oneHoistStops) {
  const Option& option = flown().option;
  BOOST_REQUIRE(option.stops.size() == 2U);
  for (const options::OneStops& stop : option.stops) {
    BOOST_TEST(!stop.holdBy.isEmpty());
    BOOST_TEST(stop.holdAtM > 0.0);
    BOOST_TEST(stop.holdAtM <= 0.2); // the bar's own most difference
    for (std::size_t i = 1; i < stop.steps.size(); ++i) {
      BOOST_TEST(stop.steps[i].runsKn > stop.steps[i - 1].runsKn);
      BOOST_TEST(stop.steps[i].stoppedKn < stop.steps[i - 1].stoppedKn);
    }
  }
  options::Snapshot unknown = flown().snapshot;
  unknown.catalogue.bars[0].hoistOffsetLimit.reset();
  const Option open = options::judge(unknown, option.key, *option.setting);
  BOOST_TEST(!open.stops[0].missing.isEmpty());
  options::Snapshot wide = flown().snapshot;
  wide.catalogue.bars[0].hoistOffsetLimit = metres(5.0);
  wide.catalogue.hoists[0].limit = kilonewtons(
      *std::find_if(option.findings.begin(), option.findings.end(),
                    [](const options::Finding& each) { return each.rule == QLatin1String("hoist"); })
           ->value *
      1.02 / 0.5);
  const Option weak = options::judge(wide, option.key, *option.setting);
  BOOST_TEST(weak.stops[0].holdBy.toStdString().starts_with("hoist at"));
}

BOOST_AUTO_TEST_SUITE_END()
