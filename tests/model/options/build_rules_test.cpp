// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <functional>

#include <boost/test/unit_test.hpp>

#include "hang/settle.h"
#include "hang/solve.h"
#include "options/search.h"
#include "print.h"
#include "show_fixture.h"

using namespace hangbook;
using options::Finding;
using options::Option;
using options::Snapshot;
using options::Verdict;

namespace {

/// The small show with a bar that is picked up at front and rear, on points that stand as its level picks do.
Snapshot foreAftShow(double frontX) {
  Snapshot snapshot = testing::smallHarbourShow();
  catalogue::PickArrangement pair;
  pair.picks = catalogue::Picks::foreAftPair;
  pair.front = catalogue::Position{metres(frontX), metres(0.0)};
  pair.rear = catalogue::Position{metres(frontX - 1.0), metres(0.0)};
  pair.limit = kilonewtons(30);
  pair.mostCabinets = 8;
  snapshot.catalogue.bars[0].arrangements = {pair};
  snapshot.catalogue.bars[0].hoistOffsetLimit = metres(0.3);
  for (calendar::Hang& hang : snapshot.show.hangs) {
    hang.pan = degrees(0);
  }
  std::size_t number = 0;
  for (venue::Point& point : snapshot.venue.points) {
    point.x = metres(number % 2 == 0 ? 1.0 : 0.0);
    point.y = metres(number < 2 ? 9.0 : -9.0);
    ++number;
  }
  return snapshot;
}

Option best(const Snapshot& snapshot) {
  const auto all = options::decide(snapshot, QStringLiteral("left"));
  BOOST_REQUIRE(!all.hangs[0].options.empty());
  for (const Option& each : all.hangs[0].options) {
    if (each.setting && each.key.picks == catalogue::Picks::foreAftPair) {
      return each;
    }
  }
  BOOST_FAIL("no option is picked up at front and rear");
  return {};
}

Finding of(const Option& option, const char* rule) {
  const auto found = std::find_if(option.findings.begin(), option.findings.end(),
                                  [rule](const Finding& each) { return each.rule == QLatin1String(rule); });
  BOOST_REQUIRE((found != option.findings.end()));
  return *found;
}

/// The greatest load of one pick over the same hang cut short after each cabinet, bar level, and as set.
double mostBySolving(const hang::Hang& whole, std::size_t pick) {
  double most = hang::solve(whole).pickLoads[pick].load;
  for (std::size_t count = 1; count <= whole.stack.size(); ++count) {
    hang::Hang part = whole;
    part.stack.resize(count);
    part.set.tiltDeg = 0.0;
    if (part.chain && static_cast<std::size_t>(part.chain->held) > count) {
      part.chain.reset();
    }
    most = std::max(most, hang::solve(part).pickLoads[pick].load);
  }
  return most;
}

/// The most that the chain pulls and any pin carries (both sides together) over the same hang cut short after
/// each cabinet, bar level, and over the whole of it in small steps of tilt, each solved by itself.
struct CarriedBySolving {
  double chain = 0.0;
  double pin = 0.0;

  void add(const hang::Statics& statics) {
    chain = std::max(chain, statics.chain ? statics.chain->most : 0.0);
    for (const hang::JointStatics& joint : statics.joints) {
      for (const hang::Vec2 load : joint.pinLoads) {
        pin = std::max(pin, hang::length(load));
      }
    }
  }

  explicit CarriedBySolving(const hang::Hang& whole) {
    for (std::size_t count = 1; count <= whole.stack.size(); ++count) {
      hang::Hang part = whole;
      part.stack.resize(count);
      part.set.tiltDeg = 0.0;
      if (part.chain && static_cast<std::size_t>(part.chain->held) > count) {
        part.chain.reset();
      }
      add(hang::standing(part));
    }
    constexpr int steps = 100;
    for (int step = 0; step <= steps; ++step) {
      hang::Hang pose = whole;
      pose.set.tiltDeg = *whole.set.tiltDeg * step / steps;
      add(hang::standing(pose));
    }
  }
};

} // namespace

BOOST_AUTO_TEST_SUITE(build_rules)

/// What the chain and the joints carry on the way counts: by the same statics of each step and of each tilt.
BOOST_AUTO_TEST_CASE(chainAndJointsAreJudgedAtTheWorstStep) {
  int looked = 0;
  int bites = 0;
  for (const double front : {0.3, 0.8}) {
    const auto all = options::decide(foreAftShow(front), QStringLiteral("left"));
    for (const Option& option : all.hangs[0].options) {
      if (!option.hangInput || !option.hangInput->chain) {
        continue;
      }
      const Finding chain = of(option, "chain");
      const CarriedBySolving by(*option.hangInput);
      const double factor = option.points[0].dynamicKn / option.points[0].staticKn;
      if (chain.verdict == Verdict::unproven) {
        continue;
      }
      ++looked;
      BOOST_REQUIRE(chain.value.has_value());
      BOOST_TEST(*chain.value * 1000.0 >= by.chain * factor * (1.0 - 1e-9));
      BOOST_TEST(*chain.value * 1000.0 <= by.chain * factor * (1.0 + 1e-4)); // the tilts between two steps
      BOOST_TEST(*of(option, "joint").value * 1000.0 >= 0.5 * by.pin * factor * (1.0 - 1e-9));
      const double asSet = hang::standing(*option.hangInput).chain->most;
      BOOST_TEST(chain.text.contains(QStringLiteral(", and ")) == (by.chain > asSet * (1.0 + 1e-9)));
    }
  }
  // A pair that is panned and tilted from where it was assembled.
  const auto panned = options::decide(testing::smallHarbourShow(), QStringLiteral("left"));
  for (const Option& option : panned.hangs[0].options) {
    if (!option.hangInput || !option.hangInput->chain) {
      continue;
    }
    const Finding chain = of(option, "chain");
    const double asSet = hang::standing(*option.hangInput).chain->most *
                         (option.points[0].dynamicKn / option.points[0].staticKn);
    const bool more = *chain.value * 1000.0 > asSet * (1.0 + 1e-9);
    BOOST_TEST(chain.text.contains(QStringLiteral("while it is aimed")) == more);
    bites += more ? 1 : 0;
  }
  BOOST_TEST(looked > 0);
  BOOST_TEST(bites > 0);
}

/// The front pick carries more before the lower cabinets pull the hang back, and point and hoist are judged
/// there: by the same statics of the hang cut short.
BOOST_AUTO_TEST_CASE(pointAndHoistAreJudgedAtTheWorstStep) {
  int bites = 0;
  for (const double front : {0.3, 0.5, 0.8}) {
    const Snapshot snapshot = foreAftShow(front);
    const auto all = options::decide(snapshot, QStringLiteral("left"));
    for (const Option& option : all.hangs[0].options) {
      if (!option.hangInput || option.downfill) {
        continue; // a downfill swings before its chain is on
      }
      const Finding point = of(option, "point-load");
      double worst = 0.0;
      for (std::size_t pick = 0; pick < 2; ++pick) {
        worst = std::max(worst, mostBySolving(*option.hangInput, pick) / 1000.0 +
                                    (option.points[pick].staticKn - option.points[pick].parts[0].kn));
      }
      BOOST_REQUIRE(point.value.has_value());
      BOOST_TEST(*point.value >= worst * (1.0 - 1e-9));
      BOOST_TEST(*point.value <= worst * 1.005); // lean apart
      const double asSet = std::max(option.points[0].staticKn, option.points[1].staticKn);
      BOOST_TEST(*point.value >= asSet * (1.0 - 1e-9));
      if (*point.value > asSet * 1.01) {
        ++bites;
        BOOST_TEST(point.text.contains(QStringLiteral(" at its most, ")));
        BOOST_TEST(of(option, "hoist").text.contains(QStringLiteral(" at its most, ")));
      }
    }
  }
  BOOST_TEST(bites > 0);
}

/// A bar whose rear pick is unloaded by the first cabinet fails, whatever the whole hang does.
BOOST_AUTO_TEST_CASE(aHoistThatUnloadsOnTheWayFails) {
  const Option option = best(foreAftShow(-0.02));
  const Finding share = of(option, "pick-share");
  BOOST_REQUIRE(share.value.has_value());
  const hang::Hang whole = option.hangInput.value();
  double least = 1.0;
  for (std::size_t count = 1; count <= whole.stack.size(); ++count) {
    hang::Hang part = whole;
    part.stack.resize(count);
    part.set.tiltDeg = 0.0;
    if (part.chain && static_cast<std::size_t>(part.chain->held) > count) {
      part.chain.reset();
    }
    const hang::Statics statics = hang::solve(part);
    for (std::size_t pick = 0; pick < 2; ++pick) {
      least = std::min(least, statics.pickLoads[pick].load / (statics.mass * standardGravity));
    }
  }
  BOOST_TEST(*share.value <= 100.0 * least + 1e-6);
  BOOST_TEST(least < 0.1);
  BOOST_TEST(share.verdict == Verdict::fails);
  BOOST_TEST(share.text.contains(QStringLiteral("under the bar")));
}

/// Two picks side by side carry alike while it is built; nothing is said of steps.
BOOST_AUTO_TEST_CASE(aSidePairIsWorstAsSet) {
  Snapshot snapshot = testing::smallHarbourShow();
  snapshot.show.hangs[0].pan = degrees(0);
  const auto all = options::decide(snapshot, QStringLiteral("left"));
  const Option& option = all.hangs[0].options.front();
  BOOST_REQUIRE((option.key.picks == catalogue::Picks::sidePair));
  BOOST_REQUIRE(option.setting->panDeg == 0.0);
  BOOST_TEST(!of(option, "point-load").text.contains(QStringLiteral(" at its most")));
  BOOST_TEST(*of(option, "point-load").value ==
                 std::max(option.points[0].staticKn, option.points[1].staticKn),
             boost::test_tools::tolerance(1e-9));
}

BOOST_AUTO_TEST_SUITE_END()
