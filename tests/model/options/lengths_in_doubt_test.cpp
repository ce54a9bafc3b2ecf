// SPDX-License-Identifier: GPL-3.0-or-later
// Lengths of bridle legs, rigging and hoists and the faces in the wind are in doubt as well: no corner of
// them, and nothing between, is worse than what the rules take.
#include <boost/test/unit_test.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <numeric>
#include <random>

#include "options/bridle_pick.h"
#include "options/search.h"
#include "print.h"
#include "quantity/error.h"
#include "show_fixture.h"

using namespace hangbook;
using namespace hangbook::options;

namespace {

void houseSays(Snapshot& snapshot, const char* figure, double value) {
  for (venue::HouseFigure& each : snapshot.tour.house) {
    if (each.figure == QLatin1String(figure)) {
      each.value = value;
    }
  }
}

constexpr double off = 0.002;

double between(std::mt19937_64& chance, double low, double high) {
  return low + (high - low) * (static_cast<double>(chance() >> 11) * 0x1.0p-53);
}

hang::Vec3 placeOf(const venue::Point& point) {
  return {inMetres(point.x), inMetres(point.y), inMetres(point.z)};
}

/// Two or three points anywhere, and a bridle of steels of all lengths under them.
Snapshot bridledShow(std::mt19937_64& chance, std::size_t legs) {
  Snapshot snapshot = testing::smallHarbourShow();
  houseSays(snapshot, "length-doubt", off);
  venue::Bridle bridle;
  bridle.name = QStringLiteral("B");
  for (std::size_t i = 0; i < legs; ++i) {
    venue::Point& point = snapshot.venue.points[i];
    const double around = 2.0 * (static_cast<double>(i) + between(chance, -0.3, 0.3)) * std::numbers::pi /
                          static_cast<double>(legs);
    const double far = between(chance, 1.0, 2.5);
    point.x = metres(far * std::cos(around));
    point.y = metres(far * std::sin(around));
    point.z = metres(19.0 + between(chance, -0.4, 0.4));
    bridle.points.append(point.name);
  }
  bridle.z = metres(between(chance, 15.5, 17.5));
  bridle.shackle = QStringLiteral("shackle");
  bridle.tolerance = metres(0.15);
  for (const double length : {0.3, 0.5, 1.0, 1.6, 2.0}) {
    catalogue::HardwareType steel = snapshot.catalogue.hardware[2];
    steel.name = QStringLiteral("steel %1").arg(length);
    steel.length = metres(length);
    snapshot.catalogue.hardware.push_back(steel);
    bridle.steels.append(steel.name);
  }
  snapshot.venue.bridles = {bridle};
  return snapshot;
}

const Finding& findingOf(const Option& option, const char* rule) {
  const auto found = std::find_if(option.findings.begin(), option.findings.end(),
                                  [rule](const Finding& each) { return each.rule == QLatin1String(rule); });
  BOOST_TEST_REQUIRE((found != option.findings.end()));
  return *found;
}

const Option& aSidePair() {
  static const Option best =
      decide(testing::smallHarbourShow(), QStringLiteral("left")).hangs.front().options.front();
  return best;
}

Option judged(const Snapshot& snapshot) {
  return judge(snapshot, aSidePair().key, *aSidePair().setting);
}

Snapshot outdoors() {
  Snapshot snapshot = testing::smallHarbourShow();
  snapshot.venue.outdoors = true;
  snapshot.show.wind = metresPerSecond(7.0);
  snapshot.show.windBasis = calendar::WindBasis::gust;
  snapshot.show.windAveraging = 3;
  snapshot.show.windHeight = metres(20);
  snapshot.show.hangs[0].wetMass = kilograms(0);
  return snapshot;
}

} // namespace

BOOST_AUTO_TEST_SUITE(lengths_in_doubt)

BOOST_AUTO_TEST_CASE(no_lengths_of_a_bridles_legs_are_worse_than_what_is_taken) {
  std::mt19937_64 chance(5);
  int looked = 0;
  for (int i = 0; i < 60; ++i) {
    const Snapshot snapshot = bridledShow(chance, i % 2 == 0 ? 2 : 3);
    const House house(snapshot.tour.house, {}, {});
    const auto pick = bridledPick(snapshot, house, snapshot.venue.bridles[0]);
    if (!pick->fault.isEmpty() ||
        std::any_of(pick->legs.begin(), pick->legs.end(), [](const auto& leg) { return leg.plumb.slack; })) {
      continue;
    }
    ++looked;
    for (int corner = 0; corner < 40; ++corner) {
      std::vector<hang::BridleLeg> legs;
      for (std::size_t k = 0; k < pick->legs.size(); ++k) {
        double part = (corner >> k & 1) != 0 ? 1.0 : -1.0;
        part = corner < 8 ? part : between(chance, -1.0, 1.0);
        int pieces = 0;
        for (const LegPiece& each : pick->legs[k].pieces) {
          pieces += each.count;
        }
        legs.push_back({placeOf(*pick->legs[k].point), pick->legs[k].length + part * off * pieces});
      }
      const hang::Bridle there = hang::settleBridle(legs, {0.0, 0.0, -1.0});
      BOOST_TEST(inMetres(pick->apex.z) - there.apex.z <= pick->apexLower + 1e-9);
      for (std::size_t k = 0; k < legs.size(); ++k) {
        const BridleLeg& leg = pick->legs[k];
        BOOST_TEST((!there.legs[k].slack || leg.mayHangSlack));
        BOOST_TEST(there.legs[k].tension <= leg.pullMore * leg.plumb.tension + 1e-9);
        BOOST_TEST(there.legs[k].vertical() <= leg.downMore * leg.plumb.vertical() + 1e-9);
        BOOST_TEST(there.legs[k].fromHorizontalDeg >= leg.plumb.fromHorizontalDeg - leg.flatterDeg - 1e-9);
      }
    }
    for (const BridleLeg& leg : pick->legs) { // and not far beyond the worst
      BOOST_TEST(leg.pullMore < 1.5);
      BOOST_TEST(leg.pullMore >= 1.0);
    }
  }
  BOOST_TEST(looked > 20);
}

/// Of three legs any may come to hang slack where each piece may be 4 cm off: told of those that do at a
/// corner, and of no other.
BOOST_AUTO_TEST_CASE(legs_that_may_hang_slack_are_told) {
  std::mt19937_64 chance(11);
  constexpr double far = 0.04;
  int told = 0;
  int taut = 0;
  for (int i = 0; i < 80; ++i) {
    Snapshot snapshot = bridledShow(chance, 3);
    houseSays(snapshot, "length-doubt", far);
    const auto pick = bridledPick(snapshot, House(snapshot.tour.house, {}, {}), snapshot.venue.bridles[0]);
    if (!pick->fault.isEmpty()) {
      continue;
    }
    std::array<bool, 3> slack{};
    for (unsigned corner = 0; corner < 8; ++corner) {
      std::vector<hang::BridleLeg> legs;
      for (std::size_t k = 0; k < 3; ++k) {
        const BridleLeg& leg = pick->legs[k];
        const int pieces = std::accumulate(leg.pieces.begin(), leg.pieces.end(), 0,
                                           [](int sum, const LegPiece& each) { return sum + each.count; });
        legs.push_back({placeOf(*leg.point), leg.length + ((corner >> k & 1U) != 0 ? far : -far) * pieces});
      }
      try {
        const hang::Bridle there = hang::settleBridle(legs, {0.0, 0.0, -1.0});
        for (std::size_t k = 0; k < 3; ++k) {
          slack.at(k) = slack.at(k) || there.legs[k].slack;
        }
      } catch (const Error&) {
        continue; // too short to meet
      }
    }
    for (std::size_t k = 0; k < 3; ++k) {
      BOOST_TEST(pick->legs[k].mayHangSlack == slack.at(k));
      (slack.at(k) ? told : taut) += 1;
    }
  }
  BOOST_TEST(told > 5);
  BOOST_TEST(taut > 20);
}

BOOST_AUTO_TEST_CASE(legs_that_may_be_too_short_to_meet_leave_every_figure_unknown) {
  // Points 4 m apart on one level, legs of 1.801 + 2 · 0.1 m each: 4.002 m as stated meet. Of three pieces
  // each is 2 mm off at most, so that the shortest two come to 4.002 − 12 mm and meet nowhere; all longer
  // ones do.
  Snapshot snapshot = testing::smallHarbourShow();
  for (const int i : {0, 1}) {
    snapshot.venue.points[static_cast<std::size_t>(i)].x = metres(4.0 * i);
    snapshot.venue.points[static_cast<std::size_t>(i)].y = metres(9.0);
  }
  catalogue::HardwareType steel = snapshot.catalogue.hardware[2];
  steel.name = QStringLiteral("steel 1.801");
  steel.length = metres(1.801);
  snapshot.catalogue.hardware.push_back(steel);
  venue::Bridle bridle;
  bridle.name = QStringLiteral("B");
  bridle.points = {snapshot.venue.points[0].name, snapshot.venue.points[1].name};
  bridle.z = metres(inMetres(snapshot.venue.points[0].z) - std::sqrt(2.001 * 2.001 - 4.0));
  bridle.shackle = QStringLiteral("shackle");
  bridle.steels = {steel.name};
  snapshot.venue.bridles = {bridle};
  const auto pickAt = [&](double doubt) {
    houseSays(snapshot, "length-doubt", doubt);
    return bridledPick(snapshot, House(snapshot.tour.house, {}, {}), bridle);
  };
  const auto exact = pickAt(0.0);
  BOOST_TEST_REQUIRE(exact->fault.isEmpty(), exact->fault.toStdString());
  BOOST_TEST(exact->apexLower == 0.0);
  BOOST_TEST(exact->legs[1].pullMore == 1.0);
  const auto meeting = pickAt(0.0003);         // 1.8 mm of 2 mm
  BOOST_TEST(meeting->legs[0].pullMore > 2.0); // nearly flat
  BOOST_TEST(std::isfinite(meeting->apexLower));
  const auto apart = pickAt(off);
  BOOST_TEST(std::isnan(apart->apexLower));
  for (const BridleLeg& leg : apart->legs) {
    for (const double figure : {leg.pullMore, leg.downMore, leg.twoMore, leg.flatterDeg}) {
      BOOST_TEST(std::isnan(figure));
    }
  }
}

BOOST_AUTO_TEST_CASE(a_hoist_and_its_rigging_may_be_longer) {
  Snapshot snapshot = testing::smallHarbourShow();
  snapshot.venue.lowSteel = metres(40); // the hook under its point is what is narrow
  const double stated = findingOf(judged(snapshot), "headroom").limit.value();
  BOOST_TEST(stated == 0.52 + 0.3, boost::test_tools::tolerance(1e-12));
  houseSays(snapshot, "length-doubt", off);
  const Option option = judged(snapshot);
  const Finding& finding = findingOf(option, "headroom");
  BOOST_TEST(finding.limit.value() == stated + 4 * off,
             boost::test_tools::tolerance(1e-12)); // and three pieces
  BOOST_TEST(findingOf(option, "lift-height").limit.value() ==
                 findingOf(judged(testing::smallHarbourShow()), "lift-height").limit.value() - off,
             boost::test_tools::tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(no_larger_faces_catch_more_wind_than_what_is_taken) {
  Snapshot inDoubt = outdoors();
  houseSays(inDoubt, "length-doubt", off);
  const WindAnswer worst = judged(inDoubt).wind.value();
  const WindAnswer stated = judged(outdoors()).wind.value();
  BOOST_TEST(worst.mostKn > stated.mostKn);
  BOOST_TEST(worst.mostKn < 1.03 * stated.mostKn);
  for (int corner = 0; corner < 8; ++corner) {
    Snapshot snapshot = outdoors();
    const double x = (corner & 1) != 0 ? off : -off;
    const double z = (corner & 2) != 0 ? off : -off;
    const double width = (corner & 4) != 0 ? off : -off;
    const auto moved = [&](std::vector<catalogue::Position>& outline) {
      for (catalogue::Position& each : outline) {
        each.x = metres(inMetres(each.x) + (inMetres(each.x) > -0.3 ? x : -x));
        each.z = metres(inMetres(each.z) + (inMetres(each.z) > -0.15 ? z : -z));
      }
    };
    for (catalogue::CabinetType& each : snapshot.catalogue.cabinets) {
      const double before = inMetres(*each.width);
      each.faceArea = *each.faceArea * (1.0 + width / before);
      each.width = metres(before + width);
      moved(each.outline);
    }
    moved(snapshot.catalogue.bars[0].outline);
    snapshot.catalogue.bars[0].width = metres(inMetres(*snapshot.catalogue.bars[0].width) + width);
    const WindAnswer there = judged(snapshot).wind.value();
    BOOST_TEST(there.mostKn <= worst.mostKn);
    BOOST_TEST(there.failsAt >= worst.failsAt);
    for (std::size_t pick = 0; pick < 2; ++pick) {
      BOOST_TEST(there.picks[pick].mostKn <= worst.picks[pick].mostKn);
      BOOST_TEST(there.picks[pick].leastKn >= worst.picks[pick].leastKn);
    }
  }
}

BOOST_AUTO_TEST_SUITE_END()
