// SPDX-License-Identifier: GPL-3.0-or-later
// Where a load that rises with the lean ends the window of trims: which rule, and whether it is asked.
#include <boost/test/unit_test.hpp>

#include <memory>
#include <utility>

#include "options/builds.h"
#include "options/ways.h"
#include "options/weight_limits.h"
#include "print.h"
#include "show_fixture.h"

using namespace hangbook;
using namespace hangbook::options;

namespace {

/// The first build without a chain, on points that stand 0.3 m farther apart than its picks, each good for
/// this much, with hoists good for that much.
struct Leaning {
  Snapshot show = testing::smallHarbourShow();
  std::unique_ptr<House> house;
  Case option;
  std::shared_ptr<const Settings> settings;
  const Settled* settled = nullptr;

  explicit Leaning(double pointKn, double hoistKn) {
    for (venue::Point& point : show.venue.points) {
      if (point.name == QStringLiteral("L1")) {
        point.y = metres(inMetres(point.y) + 0.3);
      }
      point.basis = catalogue::Basis::atRest;
      point.capacity = kilonewtons(pointKn);
    }
    for (catalogue::HoistType& hoist : show.catalogue.hoists) {
      hoist.limit = kilonewtons(hoistKn);
    }
    house = std::make_unique<House>(show.tour.house, show.venue.house, show.show.house);
    const calendar::Hang& hang = show.show.hangs.front();
    const Search search{&show, house.get(), &hang, {}};
    QStringList notes;
    for (const Build& build : buildsFor(show, hang, notes)) {
      const auto ways = waysToReach(candidatePoints(show, *house, hang).points, build.arrangement->picks);
      if (build.stack.held != 0 || ways.empty()) {
        continue;
      }
      Rig rig = rigFor(build.stack, *build.bar, *build.arrangement, nullptr, hang, show, *house);
      settings = RigShelf().settingsOf(rig, inDegrees(hang.pan));
      option = caseOf(search, *build.table, build.stack, *build.bar, *build.arrangement,
                      show.catalogue.hoists.front(), ways.front(), {});
      settled = &settings->settled.at(settings->settled.size() / 2);
      return;
    }
    BOOST_FAIL("no such build");
  }
  Leaning(const Leaning&) = delete;
  Leaning& operator=(const Leaning&) = delete;

  Window window(const MayFail& mayFail = {}) const { return windowOf(option, *settled, false, mayFail); }
  Use use(const Rule& rule, double trimM) const { return rule.evaluate(option, settled, trimM); }
};

/// Of `weightRules()`.
std::size_t placeOf(const Rule& rule) {
  std::size_t place = 0;
  while (weightRules()[place].evaluate != rule.evaluate) {
    ++place;
  }
  return place;
}

} // namespace

BOOST_AUTO_TEST_SUITE(window)

/// Three quarters up what is carried there is made the limit: of the points, or of the hoists. A rule of
/// which it is known that it cannot fail is not asked, all others are.
BOOST_AUTO_TEST_CASE(each_load_rule_ends_it_where_it_may_fail) {
  const Leaning strong(100.0, 1000.0);
  const Window free = strong.window();
  BOOST_REQUIRE(free.high - free.low > 0.1);
  const double at = free.low + 0.75 * (free.high - free.low);
  const Use point = strong.use(pointLoadRule, at);
  const Use hoist = strong.use(hoistRule, at);
  for (const bool byPoint : {true, false}) {
    const Rule& rule = byPoint ? pointLoadRule : hoistRule;
    const Leaning weak(byPoint ? point.value : 100.0, byPoint ? 1000.0 : 1000.0 * hoist.value / hoist.limit);
    const auto ends = [&](const MayFail& mayFail) {
      const Window window = weak.window(mayFail);
      BOOST_TEST(window.low == free.low);
      const bool ended = window.high < free.high;
      BOOST_TEST(window.high == (ended ? at : free.high), boost::test_tools::tolerance(1e-9));
      BOOST_TEST((std::string(window.highSetBy) == rule.id) == ended);
      return ended;
    };
    const std::size_t place = placeOf(rule);
    BOOST_TEST(ends({}));
    BOOST_TEST(ends([](std::size_t) { return true; }));
    BOOST_TEST(ends([place](std::size_t each) { return each == place; }));
    BOOST_TEST(!ends([](std::size_t) { return false; }));
    BOOST_TEST(!ends([place](std::size_t each) { return each != place; }));
  }
}

BOOST_AUTO_TEST_SUITE_END()
