// SPDX-License-Identifier: GPL-3.0-or-later
// A joint that cannot open hangs on its rear stop as soon as a gust turns it harder than its weight shuts it.
#include <boost/test/unit_test.hpp>

#include <algorithm>
#include <optional>
#include <vector>

#include "few_settings.h"
#include "options/search.h"
#include "print.h"
#include "quantity/quantity.h"
#include "show_fixture.h"

using namespace hangbook;
using namespace hangbook::options;

namespace {

/// Feet without a chain that their weight keeps shut, and that cannot open; out in a gust.
Snapshot shutOutdoors() {
  Snapshot snapshot = testing::harbourShow();
  std::erase_if(snapshot.catalogue.tables,
                [](const catalogue::StackingTable& table) { return table.name != QLatin1String("on feet"); });
  catalogue::StackingTable& table = snapshot.catalogue.tables.front();
  table.chain.clear();
  table.held.clear();
  table.joins.back().angles = {degrees(-4)};
  for (catalogue::Join& join : table.joins) {
    join.opensTo = degrees(0);
  }
  for (catalogue::CabinetType& cabinet : snapshot.catalogue.cabinets) {
    cabinet.centreOfGravity = catalogue::Position{metres(0.3), metres(-0.15)};
  }
  snapshot.venue.outdoors = true;
  snapshot.show.wind = metresPerSecond(0);
  snapshot.show.windBasis = calendar::WindBasis::gust;
  snapshot.show.windAveraging = 3.0;
  snapshot.show.windHeight = metres(30);
  snapshot.show.hangs[0].wetMass = kilograms(0);
  return snapshot;
}

/// In a gust of so much, the stops' limit being that and the chains leaning no more. The same setting each
/// time.
Option inGust(double gust, std::optional<Force> stopLimit, std::optional<double> leanMostDeg = {}) {
  static const Option calm = [] {
    const ShowOptions all = decide(shutOutdoors(), QStringLiteral("left"));
    const auto& options = all.hangs[0].options;
    const auto found =
        std::ranges::find_if(options, [](const Option& each) { return each.setting.has_value(); });
    BOOST_REQUIRE(found != options.end());
    return *found;
  }();
  Snapshot snapshot = shutOutdoors();
  snapshot.show.wind = metresPerSecond(gust);
  for (catalogue::Join& join : snapshot.catalogue.tables.front().joins) {
    join.stopLimit = stopLimit;
  }
  if (leanMostDeg) {
    testing::houseSays(snapshot, "lean-most", *leanMostDeg);
  }
  return judge(snapshot, calm.key, *calm.setting);
}

Finding wind(const Option& option) {
  return *std::ranges::find(option.findings, QStringLiteral("wind"), &Finding::rule);
}

} // namespace

BOOST_AUTO_TEST_SUITE(wind_stop)

/// Over people half of a stop's limit counts. Of a limit of 1 N half a newton is the first that the wind
/// passes, and where nobody stated a limit, half a newton is not passed over.
BOOST_AUTO_TEST_CASE(a_stop_counts_from_nothing_on) {
  const Option calm = inGust(0.0, newtons(1));
  BOOST_REQUIRE(calm.wind.has_value());
  BOOST_TEST(calm.wind->failsBy.startsWith(QLatin1String("rear stop of the joint of element 1")));
  const double passed = calm.wind->failsAt;
  BOOST_TEST(passed > 2.0);
  BOOST_TEST(wind(inGust(passed * (1.0 - 1e-6), newtons(1))).verdict < Verdict::unproven);
  const Finding there = wind(inGust(passed * (1.0 + 1e-6), newtons(1)));
  BOOST_TEST(there.verdict == Verdict::fails);
  BOOST_TEST(*there.value == 0.0005, boost::test_tools::tolerance(1e-2));
  BOOST_TEST(*there.limit == 0.0005, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(wind(inGust(passed, std::nullopt)).verdict == Verdict::unproven);
  BOOST_TEST(wind(inGust(0.9 * passed, std::nullopt)).verdict < Verdict::unproven); // it is shut
}

/// Without wind the stop carries nothing; the wind at which the first limit is passed is not proven without
/// the stop's limit all the same, and the answer names it.
BOOST_AUTO_TEST_CASE(the_limiting_wind_names_a_stop_of_no_known_limit) {
  const auto missing = [](const std::optional<Force>& limit) {
    const Option calm = inGust(0.0, limit);
    BOOST_REQUIRE(calm.wind.has_value());
    return calm.wind->missing.filter(QStringLiteral("rear stop of the joint of element 1")).size();
  };
  BOOST_TEST(missing(newtons(1)) == 0);
  BOOST_TEST(missing(std::nullopt) == 1);
}

/// Chains that may hardly lean fail in a wind in which the stop carries nothing yet: the answer does not ask
/// for its limit.
BOOST_AUTO_TEST_CASE(what_only_more_wind_loads_is_not_asked_for) {
  const Option calm = inGust(0.0, std::nullopt, 0.001);
  BOOST_REQUIRE(calm.wind.has_value());
  BOOST_TEST(calm.wind->failsAt < 1.0); // the stop comes after 2 m/s, as above
  BOOST_TEST(calm.wind->failsAt > 0.0);
  BOOST_TEST(calm.wind->failsBy.toStdString() == "lean of the chains");
  BOOST_TEST(calm.wind->legs.empty());
  BOOST_TEST(calm.wind->points.empty()); // told beside legs alone
  BOOST_TEST(calm.wind->missing.isEmpty(), calm.wind->missing.join(QLatin1Char(';')).toStdString());
}

BOOST_AUTO_TEST_SUITE_END()
