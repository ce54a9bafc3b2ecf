// SPDX-License-Identifier: GPL-3.0-or-later
// The steps of the build as a table, of the contract's example and without its chain.
#include <boost/test/unit_test.hpp>

#include <memory>
#include <string>
#include <vector>

#include "hang/build_loads.h"
#include "hang/solve.h"
#include "options/option.h"
#include "options/weight_limits.h"
#include "print.h"
#include "room_fixture.h"
#include "support/example_hang.h"

using namespace hangbook;
using namespace hangbook::options;

namespace {

/// A hoist that climbs with its body of 300 N and its chain of 200 N, under rigging of 100 N.
struct Built {
  hangbook::testing::Room room;
  catalogue::PickArrangement picks;
  Option option;
  Settled settled;

  explicit Built(const hang::Hang& hang) {
    auto limits = std::make_shared<WeightLimits>();
    limits->hoistBody = 300.0;
    limits->hoistChain = 200.0;
    limits->rigging = 100.0;
    limits->spacing = 1.0;
    picks.picks = catalogue::Picks::sidePair;
    room.hoist().bodyClimbs = true;
    room.option.weight = limits;
    room.option.arrangement = &picks;
    room.option.held = hang.chain ? hang.chain->held : 0;
    option.hangInput = hang;
    settled.statics = hang::solve(hang);
    settled.layout = hang::layOut(hang, settled.statics);
  }
  std::vector<StepLoads> table() const { return stepLoads(room.option, settled, settled, 8.0, option); }
  std::vector<std::string> words() const {
    std::vector<std::string> all;
    for (const StepLoads& step : table()) {
      all.push_back(step.stage.toStdString() + ": " + step.step.toStdString());
    }
    return all;
  }
};

const auto each = boost::test_tools::per_element();
using Words = std::vector<std::string>;

} // namespace

BOOST_AUTO_TEST_SUITE(build_table)

BOOST_AUTO_TEST_CASE(steps_in_words) {
  hang::Hang hang = hangbook::testing::exampleHang();
  BOOST_TEST(Built(hang).words() ==
                 (Words{"stacked: bar alone", "stacked: 1 cabinet", "stacked: 2 cabinets, chain not yet on",
                        "chained: 2 cabinets, chain on", "aiming: level to set, tilting and panning",
                        "set: as set"}),
             each);
  hang.stack.pop_back();
  hang.chain.reset();
  Built one(hang);
  BOOST_TEST(one.words() == (Words{"stacked: bar alone", "stacked: 1 cabinet",
                                   "aiming: level to set, tilting and panning", "set: as set"}),
             each);
  one.room.option.held = 1; // as if a chain were still to come
  BOOST_TEST(one.words()[1] == "stacked: 1 cabinet, chain not yet on");
}

/// What the picks carry, with 500 N more on each hoist and 600 N on each point.
BOOST_AUTO_TEST_CASE(steps_in_figures) {
  const hang::Hang hang = hangbook::testing::exampleHang();
  const Built built(hang);
  const auto steps = hang::buildSteps(hang, built.settled.statics);
  const auto table = built.table();
  const auto close = boost::test_tools::tolerance(1e-12);
  BOOST_REQUIRE(table.size() == steps.size());
  for (std::size_t i = 0; i < steps.size(); ++i) {
    BOOST_TEST(table[i].cabinets == steps[i].cabinets);
    BOOST_TEST(table[i].massKg == steps[i].mass);
    BOOST_REQUIRE(table[i].picks.size() == 2U);
    for (const std::size_t pick : {0U, 1U}) {
      const StepPick& told = table[i].picks[pick];
      BOOST_TEST(told.name.toStdString() == (pick == 0U ? "left" : "right"));
      BOOST_TEST(1000.0 * told.leastKn == steps[i].least[pick], close);
      BOOST_TEST(1000.0 * told.mostKn == steps[i].most[pick], close);
      BOOST_TEST(1000.0 * told.hoistKn == steps[i].most[pick] + 500.0, close);
      BOOST_TEST(1000.0 * told.pointKn == steps[i].most[pick] + 600.0, close);
      BOOST_TEST(told.worstLeastKn == told.leastKn); // nothing is in doubt
      BOOST_TEST(told.worstMostKn == told.mostKn);
      BOOST_TEST(told.worstHoistKn == told.hoistKn);
      BOOST_TEST(told.worstPointKn == told.pointKn);
    }
  }
}

BOOST_AUTO_TEST_SUITE_END()
