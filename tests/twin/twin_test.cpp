// SPDX-License-Identifier: GPL-3.0-or-later
// The search against its slow twin, on hundreds of small shows. HANGBOOK_TWIN_CASES=3000 tries more.
#include <array>
#include <set>

#include <boost/test/unit_test.hpp>

#include "model/options/print.h"
#include "options/search.h"
#include "support/sanitized.h"
#include "twin/brute.h"
#include "twin/random_show.h"

using namespace hangbook;
using options::Option;
using options::Verdict;
using testing::Brute;

namespace {

constexpr int usualCases = testing::underSanitizer ? 80 : 320;
/// Cover is a sum of whole weights: anything less is rounding.
constexpr double sameCover = 1e-9;

struct Tally {
  std::array<int, 4> verdicts{};
  long settings = 0;
  long byBound = 0;
  int elsewhereBetter = 0; ///< options that do better at another trim than in the middle of the window
};

void compare(const options::Snapshot& snapshot, const Option& option, const Brute& brute, Tally& tally) {
  ++tally.verdicts[static_cast<std::size_t>(option.verdict)];
  // Never worse than what was found by trying everything …
  BOOST_TEST(option.verdict <= brute.least);
  // … never better than what its own setting is.
  if (option.setting) {
    const testing::BruteAnswer shown = testing::bruteAt(snapshot, option);
    BOOST_TEST(shown.verdict == option.verdict);
    if (option.verdict != Verdict::fails) {
      BOOST_TEST(std::abs(shown.cover - option.coveredPercent) <= sameCover);
    }
  } else {
    BOOST_TEST(option.verdict == brute.least);
    BOOST_TEST(option.verdict >= Verdict::unproven);
  }
  if (option.verdict == brute.least && option.verdict != Verdict::fails && option.setting) {
    BOOST_TEST(option.coveredPercent >= brute.cover - sameCover);
  }
  // What is said to fail fails wherever it was tried.
  BOOST_TEST((option.verdict != Verdict::fails || brute.anywhere == Verdict::fails));
  tally.elsewhereBetter += brute.anywhere < option.verdict ? 1 : 0;
}

} // namespace

BOOST_AUTO_TEST_SUITE(twin)

BOOST_AUTO_TEST_CASE(the_slow_twin_agrees) {
  const int cases = qEnvironmentVariableIsSet("HANGBOOK_TWIN_CASES")
                        ? qEnvironmentVariableIntValue("HANGBOOK_TWIN_CASES")
                        : usualCases;
  Tally tally;
  for (int seed = 0; seed < cases; ++seed) {
    const options::Snapshot snapshot = testing::randomShow(static_cast<std::uint64_t>(seed));
    BOOST_TEST_CONTEXT("seed " << seed) {
      const options::ShowOptions found = options::decide(snapshot);
      const auto brute = testing::bruteForce(snapshot);
      const options::HangOptions& hang = found.hangs.front();
      BOOST_TEST(hang.options.size() == brute.size());
      for (const Option& option : hang.options) {
        const auto same = brute.find(option.id);
        BOOST_REQUIRE(same != brute.end());
        BOOST_TEST_CONTEXT(option.id.toStdString()) {
          compare(snapshot, option, same->second, tally);
        }
      }
      tally.settings += hang.decided.settings;
      tally.byBound += hang.decided.byBound;
    }
  }
  BOOST_TEST_MESSAGE(cases << " shows: " << tally.verdicts[0] << " options hold, " << tally.verdicts[1]
                           << " are tight, " << tally.verdicts[2] << " unproven, " << tally.verdicts[3]
                           << " fail; " << tally.settings << " settings, " << tally.byBound << " by bound; "
                           << tally.elsewhereBetter
                           << " options do better at another trim than the middle of their window");
  for (const int number : tally.verdicts) { // else these shows try too little
    BOOST_TEST(number > cases / 10);
  }
}

BOOST_AUTO_TEST_SUITE_END()
