// SPDX-License-Identifier: GPL-3.0-or-later
// A secondary suspension that catches what falls: the factor and the bound on the drop, by hand.
#include <boost/test/unit_test.hpp>

#include <cmath>
#include <memory>

#include "options/catching.h"
#include "options/weight_limits.h"
#include "options/working_limit.h"
#include "print.h"

using namespace hangbook;
using namespace hangbook::options;

BOOST_AUTO_TEST_SUITE(catching)

BOOST_AUTO_TEST_CASE(the_factor_of_a_drop) {
  const double none = std::nan("");
  BOOST_TEST(catchFactor(0.0, none) == 2.0);  // without a drop whatever it stretches
  BOOST_TEST(catchFactor(0.04, 0.01) == 4.0); // 1 + √(1 + 8)
  BOOST_TEST(catchFactor(0.12, 0.01) == 6.0, boost::test_tools::tolerance(1e-12)); // 1 + √(1 + 24)
  BOOST_TEST(std::isnan(catchFactor(0.04, 0.0)));
  BOOST_TEST(std::isnan(catchFactor(0.04, -0.01)));
  BOOST_TEST(std::isnan(catchFactor(-0.001, 0.01)));
  BOOST_TEST(std::isnan(catchFactor(-0.04, 0.01)));
  BOOST_TEST(std::isnan(catchFactor(none, 0.01)));
  BOOST_TEST(std::isnan(catchFactor(-none, 0.01)));
  BOOST_TEST(std::isnan(catchFactor(0.04, none)));
}

/// Steels and slings stretch, each by its length over its stiffness; shackles do not, and of what nobody
/// described nothing follows.
BOOST_AUTO_TEST_CASE(what_stretches_is_added_up) {
  const auto type = [](catalogue::HardwareKind kind, double length, double kn) {
    catalogue::HardwareType made;
    made.kind = kind;
    made.length = metres(length);
    made.stiffness = kilonewtons(kn);
    return made;
  };
  const auto steel = type(catalogue::HardwareKind::secondarySteel, 2.0, 1000.0);
  const auto sling = type(catalogue::HardwareKind::sling, 1.0, 250.0);
  const auto shackle = type(catalogue::HardwareKind::shackle, 0.1, 1.0);
  const auto sum = [](const std::vector<const catalogue::HardwareType*>& types) {
    WeightLimits limits;
    for (const catalogue::HardwareType* each : types) {
      limits.secondarySteel.push_back({{}, 1e6, {}, each});
    }
    return stretchPerNewton(limits);
  };
  const auto close = boost::test_tools::tolerance(1e-12);
  BOOST_TEST(sum({}) == 0.0);
  BOOST_TEST(sum({&steel}) == 2e-6, close);
  BOOST_TEST(sum({&sling}) == 4e-6, close);
  BOOST_TEST(sum({&shackle}) == 0.0);
  BOOST_TEST(sum({&shackle, &steel, &sling}) == 6e-6, close);
  BOOST_TEST(std::isnan(sum({&steel, nullptr})));
  auto open = sling;
  open.length.reset();
  BOOST_TEST(std::isnan(sum({&steel, &open})));
}

/// 20 cm may be dropped, and not a hair more, however strong the steel.
BOOST_AUTO_TEST_CASE(exactly_the_most_drop_may_be) {
  const auto verdict = [](double drop) {
    catalogue::HardwareType steel;
    steel.kind = catalogue::HardwareKind::secondarySteel;
    steel.limit = kilonewtons(1000);
    steel.length = metres(1.0);
    steel.stiffness = kilonewtons(1000);
    auto limits = std::make_shared<WeightLimits>();
    limits->nobodyBeneath = true;
    limits->coefficients = coefficientTable(1.0);
    limits->accessory.value = limits->dynamic.value = limits->liftShare.value = 1.0;
    limits->hoistBody = limits->hoistChain = limits->rigging = 0.0;
    limits->secondary.value = 2.0;
    limits->drop.value = drop;
    limits->hardware = {{QStringLiteral("shackle"), 1e6, {}, &steel}};
    limits->secondarySteel = {{QStringLiteral("steel"), 1e6, {}, &steel}};
    const catalogue::HoistType hoist;
    const catalogue::PickArrangement single;
    Snapshot snapshot;
    Case option;
    option.weight = limits;
    option.hoist = &hoist;
    option.arrangement = &single;
    option.snapshot = &snapshot;
    option.points = {nullptr};
    Settled settled;
    settled.build.unknown.reset();
    settled.statics.pickCount = 1;
    settled.statics.pickLoads[0].load = 1000.0;
    return hardwareRule.evaluate(option, &settled, -std::numeric_limits<double>::infinity()).verdict;
  };
  BOOST_TEST(verdict(0.1) == Verdict::holds);
  BOOST_TEST(verdict(mostDrop) == Verdict::holds);
  BOOST_TEST(verdict(std::nextafter(mostDrop, 1.0)) == Verdict::fails);
}

BOOST_AUTO_TEST_SUITE_END()
