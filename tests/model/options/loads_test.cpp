// SPDX-License-Identifier: GPL-3.0-or-later
// Loads of a pair and the rules on how it shares them, by hand, at their bounds.
#include <boost/test/unit_test.hpp>

#include <cmath>
#include <limits>

#include "load_fixture.h"
#include "options/build_force.h"
#include "options/loads.h"
#include "options/rig_fold.h"
#include "print.h"

using namespace hangbook;
using namespace hangbook::options;
using hangbook::testing::LoadCase;
using hangbook::testing::settledWith;

namespace {

constexpr auto near = [](double tolerance) { return boost::test_tools::tolerance(tolerance); };

} // namespace

BOOST_AUTO_TEST_SUITE(loads)

/// Points 7 m apart over picks 1 m apart: each chain is 3 m off. With 4 m between pick and point it is 5 m
/// long.
BOOST_AUTO_TEST_CASE(a_chain_off_plumb_pulls_more) {
  LoadCase of;
  of.limits.spacing = 7.0;
  Settled settled = settledWith({4000.0, 3000.0, 4000.0, 3000.0}, true);
  const Case option = of.option();
  const double trimM = 8.0 + heightOver(option, settled, 8.0, 0) - 4.0;
  BOOST_TEST(heightOver(option, settled, trimM, 0) == 4.0, near(1e-12));
  BOOST_TEST(pickForce(option, settled, trimM, 0) == 5000.0, near(1e-12));
  BOOST_TEST(pickForce(option, settled, trimM, 1) == 3750.0, near(1e-12));
  BOOST_TEST(std::isinf(pickForce(option, settled, trimM + 5.0, 0))); // above its point
  // As low as can be a chain is plumb, even where its length does not follow.
  constexpr double lowest = -std::numeric_limits<double>::infinity();
  settled.layout.picks[0].z = notKnown;
  BOOST_TEST(pickForce(option, settled, lowest, 0) == 4000.0);
  BOOST_TEST(pickForce(option, settled, lowest, 1) == 3000.0);
  settled.build.most[0] = 4500.0;
  BOOST_TEST(highestPickForce(option, settled, lowest, 0) == 4500.0);
  BOOST_TEST(std::isnan(pickForce(option, settled, trimM, 0)));
}

/// A chain 1 m off that may lean by 45° is at least 1 m long; one that is plumb may be as short as it is.
BOOST_AUTO_TEST_CASE(how_high_a_leaning_chain_may_hang) {
  LoadCase of;
  of.limits.leanMost.value = 45.0;
  Settled settled = settledWith({4000.0, 3000.0, 4000.0, 3000.0}, true);
  const auto highest = [&](double spacing) {
    of.limits.spacing = spacing;
    return leanRule.trimRange(of.option(), settled).high;
  };
  BOOST_TEST(std::isinf(highest(1.0)));
  of.limits.leanMost.value = notKnown; // then nothing is proven, and no trim is shut out
  BOOST_TEST(std::isinf(highest(3.0)));
  of.limits.leanMost.value = 45.0;
  const double high = highest(3.0);
  BOOST_TEST(heightOver(of.option(), settled, high, 0) == 1.0, near(1e-12));
  const auto judged = [&](double trimM) { return leanRule.evaluate(of.option(), &settled, trimM); };
  BOOST_TEST(judged(high).verdict == Verdict::tight);
  BOOST_TEST(judged(high).value == 45.0);
  BOOST_TEST(judged(high - 0.01).verdict == Verdict::holds);
  BOOST_TEST(judged(high + 0.01).verdict == Verdict::fails);
  // The shorter chain is told, and one that is not known is never passed over for it.
  of.points[1].z = metres(13.0);
  BOOST_TEST(judged(high - 1.0).which == 1);
  BOOST_TEST(judged(high - 1.0).value == 45.0);
  of.points[0].z = metres(12.0);
  BOOST_TEST(judged(high - 2.0).which == 0);
  BOOST_TEST(judged(high - 2.0).value == 45.0);
  for (const std::size_t unknown : {0U, 1U}) {
    of.points[0].z = of.points[1].z = metres(14.0);
    settled.layout.picks[0].z = settled.layout.picks[1].z = 0.0;
    settled.layout.picks[unknown].z = notKnown;
    BOOST_TEST(judged(high - 2.0).verdict == Verdict::unproven);
  }
}

/// Whatever lean is allowed: at the trim that it gives a chain leans by just that, though not to the last
/// digit.
BOOST_AUTO_TEST_CASE(at_the_highest_trim_a_chain_leans_as_it_may) {
  LoadCase of;
  of.limits.spacing = 3.0;
  const Settled settled = settledWith({4000.0, 3000.0, 4000.0, 3000.0}, true);
  for (int tenths = 20; tenths < 700; tenths += 7) {
    of.limits.leanMost.value = 0.1 * tenths;
    const double high = leanRule.trimRange(of.option(), settled).high;
    const Use use = leanRule.evaluate(of.option(), &settled, high);
    BOOST_TEST(use.verdict == Verdict::tight, tenths);
    BOOST_TEST(use.value == use.limit, tenths);
  }
}

/// Points 3 m apart over picks 1 m apart, and 1 m above them: √2 of the load at 45°. The least lean is one,
/// too.
BOOST_AUTO_TEST_CASE(a_chain_a_metre_off_over_a_metre) {
  LoadCase of;
  of.limits.spacing = 3.0;
  const Settled settled = settledWith({4000.0, 3000.0, 4000.0, 3000.0}, true);
  const Case option = of.option();
  const double trimM = 8.0 + heightOver(option, settled, 8.0, 0) - 1.0;
  BOOST_TEST(chainOff(option, settled) == 1.0);
  BOOST_TEST(chainsLean(option, settled));
  BOOST_TEST(leanDeg(option, settled, trimM, 0) == 45.0, near(1e-12));
  BOOST_TEST(pickForce(option, settled, trimM, 0) == 4000.0 * std::sqrt(2.0), near(1e-12));
  of.limits.spacing = 1.004; // two millimetres off: so little is still off
  BOOST_TEST(chainOff(of.option(), settled) == 0.002, near(1e-9));
  of.limits.spacing = 1.0;
  BOOST_TEST(!chainsLean(of.option(), settled));
  BOOST_TEST(leanDeg(of.option(), settled, trimM, 0) == 0.0);
  BOOST_TEST(pickForce(of.option(), settled, trimM, 0) == 4000.0);
}

/// Where a limit counts in full nothing is said of it; where nobody stated who stands beneath, that is.
BOOST_AUTO_TEST_CASE(who_stands_beneath_in_words) {
  LoadCase of;
  const auto words = [&of](double part) { return peopleWords(of.option(), {part, {}}).toStdString(); };
  BOOST_TEST(words(1.0) == "");
  BOOST_TEST(words(0.5) == " (0.5 of its working load limit, people beneath)");
  of.snapshot.show.peopleBeneath.reset();
  BOOST_TEST(words(1.0) == "; whether people are beneath is not stated");
}

/// What a rule said with one hoist is kept for that rule and that hoist alone, and figures for a rig's own
/// settings.
BOOST_AUTO_TEST_CASE(what_is_kept_of_a_rig_is_kept_apart) {
  std::vector<Settled> settings(2);
  RigFold fold(settings);
  const catalogue::HoistType one;
  const catalogue::HoistType other;
  auto& uses = fold.uses(hoistRule, &one);
  BOOST_TEST(uses.size() == 2U);
  BOOST_TEST(&fold.uses(hoistRule, &other) != &uses);
  BOOST_TEST(&fold.uses(barRule, &one) != &uses);
  BOOST_TEST(&fold.uses(hoistRule, &one) == &uses);
  BOOST_TEST(fold.lowest(settings[0]) != nullptr);
  BOOST_TEST(fold.lowest(settings[1]) == fold.lowest(settings[0]) + 1);
  const Settled copy = settings[0];
  BOOST_TEST(fold.lowest(copy) == nullptr);
}

/// The two of a side pair may differ up to the limit itself, and no margin is kept from it.
BOOST_AUTO_TEST_CASE(the_two_of_a_side_pair_carry_alike) {
  LoadCase of;
  of.limits.pickShare.value = 10.0;
  of.limits.sideUnlike.value = 50.0;
  Settled settled = settledWith({4000.0, 3000.0, 4000.0, 3000.0}, true);
  const auto judged = [&](double leastShare, double unlike) {
    settled.build.leastShare = leastShare;
    settled.build.unlike = unlike;
    return pickShareRule.evaluate(of.option(), &settled, 8.0).verdict;
  };
  BOOST_TEST(judged(0.4, 0.5) == Verdict::tight);
  BOOST_TEST(judged(0.4, 0.4999) == Verdict::holds);
  BOOST_TEST(judged(0.4, std::nextafter(0.5, 1.0)) == Verdict::fails);
  BOOST_TEST(judged(0.1, 0.0) == Verdict::tight);
  BOOST_TEST(judged(0.1001, 0.0) == Verdict::holds);
  BOOST_TEST(judged(0.0999, 0.0) == Verdict::fails);
  BOOST_TEST(judged(0.0, 0.0) == Verdict::fails);
  of.limits.sideUnlike.value = notKnown;
  BOOST_TEST(judged(0.4, 0.1) == Verdict::unproven);
  settled.statics.side.reset(); // a fore-aft pair carries as its centre lies
  BOOST_TEST(judged(0.4, 0.9) == Verdict::holds);
}

/// 3 and 4 m between the picks in plan; in height they may differ as they like.
BOOST_AUTO_TEST_CASE(how_far_the_picks_are_apart) {
  Settled settled;
  settled.layout.picks = {{4.0, 1.0, 0.5}};
  BOOST_TEST(pickSpacing(settled) == 0.0);
  settled.layout.picks.push_back({1.0, 5.0, 2.5});
  BOOST_TEST(pickSpacing(settled) == 5.0, near(1e-12));
}

/// Points 3 m apart over picks 1 m apart may lean by 45°: each chain must be a metre long, and the lower
/// point decides.
BOOST_AUTO_TEST_CASE(the_lower_point_ends_the_lean) {
  for (const std::size_t lower : {0U, 1U}) {
    LoadCase of;
    of.limits.spacing = 3.0;
    of.limits.leanMost.value = 45.0;
    const Settled settled = settledWith({4000.0, 3000.0, 4000.0, 3000.0}, true);
    const double alike = leanRule.trimRange(of.option(), settled).high;
    BOOST_TEST(heightOver(of.option(), settled, alike, 0) == 1.0, near(1e-9));
    of.points[lower].z = metres(12.0);
    BOOST_TEST(leanRule.trimRange(of.option(), settled).high == alike - 2.0, near(1e-9));
  }
}

/// Of a limit of nothing no share can be told, and none of one that is not known.
BOOST_AUTO_TEST_CASE(a_share_is_told_of_a_limit_that_is_there) {
  Use use;
  use.value = 1.5;
  use.limit = 2.0;
  BOOST_TEST(loadFinding("hoist", use).usePercent.value() == 75.0, near(1e-12));
  use.limit = 0.0;
  BOOST_TEST(loadFinding("hoist", use).limit.value() == 0.0);
  BOOST_TEST(!loadFinding("hoist", use).usePercent.has_value());
  use.limit = notKnown;
  BOOST_TEST(!loadFinding("hoist", use).usePercent.has_value());
  use.limit = 2.0;
  use.value = notKnown;
  BOOST_TEST(!loadFinding("hoist", use).usePercent.has_value());
}

BOOST_AUTO_TEST_SUITE_END()
