// SPDX-License-Identifier: GPL-3.0-or-later
// A bridled hang in a gust, from the show to its verdict: the balance of every direction again, each limit,
// what is missing, and that more wind only ever makes it worse.
#include <boost/test/unit_test.hpp>

#include <algorithm>
#include <cmath>
#include <functional>

#include <QJsonArray>
#include <QJsonObject>

#include "bridled_fixture.h"
#include "hang/bridle.h"
#include "options/option_json.h"
#include "options/search.h"
#include "print.h"

using namespace hangbook;
using namespace hangbook::options;

namespace {

constexpr auto near = [](double tolerance) { return boost::test_tools::tolerance(tolerance); };

using Change = std::function<void(Snapshot&)>;
void nothing(Snapshot&) {}

void houseSays(Snapshot& snapshot, const char* figure, double value) {
  for (venue::HouseFigure& each : snapshot.tour.house) {
    if (each.figure == QLatin1String(figure)) {
      each.value = value;
    }
  }
}

Snapshot outdoors(std::optional<double> gust) {
  Snapshot snapshot = testing::bridledShow();
  snapshot.venue.outdoors = true;
  if (gust) {
    snapshot.show.wind = metresPerSecond(*gust);
  }
  snapshot.show.windBasis = calendar::WindBasis::gust;
  snapshot.show.windAveraging = 3.0;
  snapshot.show.windHeight = metres(30);
  snapshot.show.hangs[0].wetMass = kilograms(0);
  return snapshot;
}

const Option& chosen() {
  static const Option best = decide(outdoors(4.0)).hangs[0].options.front();
  return best;
}

Option blown(double gust, const Change& change = nothing) {
  Snapshot snapshot = outdoors(gust);
  change(snapshot);
  return judge(snapshot, chosen().key, *chosen().setting);
}

const Finding& of(const Option& option, const char* rule) {
  const auto found = std::ranges::find_if(
      option.findings, [rule](const Finding& each) { return each.rule == QLatin1String(rule); });
  BOOST_TEST_REQUIRE((found != option.findings.end()));
  return *found;
}

hang::Vec3 placeOf(const venue::Point& point) {
  return {inMetres(point.x), inMetres(point.y), inMetres(point.z)};
}

} // namespace

BOOST_AUTO_TEST_SUITE(bridled_wind)

/// The whole way from the show: what the legs pull by the balance of each direction, with what the answer
/// says hangs on the chains and how far they lean.
BOOST_AUTO_TEST_CASE(from_a_show) {
  const Option option = blown(6.0);
  BOOST_TEST(of(option, "wind").verdict < Verdict::unproven, of(option, "wind").text.toStdString());
  const WindAnswer wind = option.wind.value();
  BOOST_TEST(wind.missing.isEmpty());
  BOOST_REQUIRE(wind.legs.size() == 4U);
  BOOST_TEST(wind.points.size() == 4U);
  BOOST_TEST(wind.leanDeg > 0.5);
  const Snapshot snapshot = outdoors(6.0);
  const double g = 9.80665e-3; // kN per kg
  std::size_t number = 0;
  for (const BridleResult& bridle : option.bridles) {
    std::vector<hang::BridleLeg> legs;
    std::vector<double> weights;
    double all = 0.0;
    for (const BridleLegResult& leg : bridle.legs) {
      legs.push_back({placeOf(*catalogue::find(snapshot.venue.points, leg.point)), leg.lengthM});
      weights.push_back(0.0);
      for (const HardwareCount& piece : leg.pieces) {
        weights.back() +=
            g * piece.count * inKilograms(*catalogue::find(snapshot.catalogue.hardware, piece.type)->mass);
      }
      all += weights.back();
    }
    const auto pick = std::ranges::find(wind.picks, bridle.pick, &WindPick::name);
    BOOST_REQUIRE((pick != wind.picks.end()));
    const double lean = wind.leanDeg * M_PI / 180.0; // points and picks stand alike
    const double onChain = pick->mostKn * std::cos(lean);
    const double gear = g * (58.0 + 22.0 * 1.3 + 2.5 + 6.0 * 1.2) + 0.5 * all;
    std::vector<double> most(legs.size());
    std::vector<double> down(legs.size());
    for (int i = 0; i < 720; ++i) {
      const double way = i * M_PI / 360.0;
      const double side = pick->mostKn * std::sin(lean);
      const hang::Bridle there =
          hang::settleBridle(legs, {side * std::cos(way), side * std::sin(way), -onChain - gear});
      for (std::size_t leg = 0; leg < legs.size(); ++leg) {
        most[leg] = std::max(most[leg], there.legs[leg].tension);
        down[leg] = std::max(down[leg], there.legs[leg].vertical());
      }
    }
    for (std::size_t leg = 0; leg < legs.size(); ++leg) {
      const WindLeg& told = wind.legs[number++];
      BOOST_TEST(told.bridle == bridle.bridle);
      BOOST_TEST(told.point == bridle.legs[leg].point);
      BOOST_TEST(told.mostKn >= (most[leg] + 0.5 * weights[leg]) * (1.0 - 1e-9));
      BOOST_TEST(told.mostKn == most[leg] + 0.5 * weights[leg], near(1e-4));
      BOOST_TEST(told.leastKn > 0.0);
      BOOST_TEST(told.leastKn < told.mostKn);
      const auto point = std::ranges::find(wind.points, told.point, &WindPoint::name);
      BOOST_REQUIRE((point != wind.points.end()));
      BOOST_TEST(point->downKn == down[leg] + 0.5 * weights[leg], near(1e-4));
    }
  }
}

/// More wind never improves anything, and at the wind that is told the first limit is just passed.
BOOST_AUTO_TEST_CASE(more_wind_is_never_better) {
  for (const bool third : {false, true}) {
    const Change change = [third](Snapshot& s) {
      houseSays(s, "length-doubt", 0.002);
      houseSays(s, "mass-doubt", 2.0);
      if (third) {
        venue::Point behind = *catalogue::find(s.venue.points, QStringLiteral("L1"));
        behind.name = QStringLiteral("between");
        behind.x = metres(inMetres(behind.x) + 2.0);
        behind.y = metres(inMetres(behind.y) + 2.5);
        s.venue.points.push_back(behind);
        s.venue.bridles[0].points.append(behind.name);
        s.venue.bridles[0].tolerance = metres(0.3);
        s.venue.bridles[0].y = metres(inMetres(behind.y) - 1.5);
      }
    };
    Option before = blown(0.0, change);
    BOOST_TEST(before.bridles[0].legs.size() == (third ? 3U : 2U));
    const double limit = before.wind->failsAt;
    BOOST_TEST(limit > 2.0);
    BOOST_TEST(limit < 60.0);
    for (double gust = 1.0; gust < 40.0; gust *= 1.4) {
      const Option now = blown(gust, change);
      BOOST_TEST(now.wind->failsAt == limit, near(1e-12));
      BOOST_TEST(of(now, "wind").verdict >= of(before, "wind").verdict);
      for (std::size_t i = 0; i < now.wind->legs.size(); ++i) {
        const WindLeg& leg = now.wind->legs[i];
        const WindLeg& was = before.wind->legs[i];
        BOOST_TEST(leg.mostKn >= was.mostKn);
        BOOST_TEST(leg.leastKn <= was.leastKn);
        BOOST_TEST(leg.fromHorizontalDeg <= was.fromHorizontalDeg);
      }
      for (std::size_t i = 0; i < now.wind->points.size(); ++i) {
        BOOST_TEST(now.wind->points[i].downKn >= before.wind->points[i].downKn);
      }
      before = now;
    }
    BOOST_TEST(of(blown(limit * (1.0 - 1e-9), change), "wind").verdict < Verdict::fails);
    BOOST_TEST(of(blown(limit * (1.0 + 1e-9), change), "wind").verdict == Verdict::fails);
  }
}

/// Limits that just do in calm air are passed in the gust, and named.
BOOST_AUTO_TEST_CASE(each_limit_of_a_leg) {
  const WindAnswer calm = blown(0.0).wind.value();
  const WindAnswer gust = blown(6.0).wind.value();
  const auto failsBy = [](const Change& change) {
    const Option option = blown(6.0, change);
    const Finding& finding = of(option, "wind");
    BOOST_TEST(finding.verdict == Verdict::fails, finding.text.toStdString());
    BOOST_TEST(option.wind->failsAt < 6.0);
    BOOST_TEST(finding.text.contains(option.wind->failsBy), finding.text.toStdString());
    return option.wind->failsBy.toStdString();
  };
  // Every piece of a leg takes half of its limit over people; with the dynamic factor.
  const double factor = *of(blown(0.0), "bridle").value / calm.legs[0].mostKn;
  const auto weaker = [](double kn) {
    return [kn](Snapshot& s) {
      for (auto& type : s.catalogue.hardware) {
        if (type.name.startsWith(QLatin1String("steel "))) {
          type.limit = kilonewtons(2.0 * kn);
        }
      }
    };
  };
  BOOST_TEST(gust.legs[0].mostKn > 1.005 * calm.legs[0].mostKn);
  const double justPassed = factor * gust.legs[0].mostKn * 0.999;
  BOOST_TEST(justPassed > factor * calm.legs[0].mostKn);
  BOOST_TEST(failsBy(weaker(justPassed)).starts_with("pull of the leg to point L1"));
  BOOST_TEST(of(blown(6.0, weaker(factor * gust.legs[0].mostKn * 1.02)), "wind").verdict == Verdict::tight);
  const auto point = [](const char* name, double kn) {
    return [name, kn](Snapshot& s) {
      for (auto& each : s.venue.points) {
        if (each.name == QLatin1String(name)) {
          each.capacity = kilonewtons(kn);
          each.basis = catalogue::Basis::atRest;
        }
      }
    };
  };
  BOOST_TEST(failsBy(point("L2 front", gust.points[3].downKn * 0.999)) == "point-load of L2 front");
  BOOST_TEST(of(blown(6.0, point("L2 front", gust.points[3].downKn * 1.001)), "wind").verdict ==
             Verdict::tight);
  const double between = 0.5 * (calm.legs[0].fromHorizontalDeg + gust.legs[0].fromHorizontalDeg);
  BOOST_TEST(gust.legs[0].fromHorizontalDeg < calm.legs[0].fromHorizontalDeg);
  const auto least = [](const char* figure, double deg) {
    return [figure, deg](Snapshot& s) {
      s.show.house.push_back(
          {QString::fromLatin1(figure), deg, {}, {}, QStringLiteral("Edda"), QDate(2026, 1, 1)});
    };
  };
  BOOST_TEST(failsBy(least("bridle-angle-least", between)).starts_with("angle of the leg to point L1"));
  BOOST_TEST(of(blown(6.0, least("bridle-angle-preferred", between)), "wind").verdict == Verdict::tight);
  BOOST_TEST(of(blown(0.0, least("bridle-angle-preferred", between)), "wind").verdict == Verdict::holds);
}

/// An apex nearly below one of its points: the other leg hardly pulls, and lets go in the gust.
BOOST_AUTO_TEST_CASE(a_leg_that_lets_go) {
  // Legs of 2.8 m (2 + 0.5 m, 3 shackles) and 4.858 m over 4 m: the apex hangs (16 + 2.8² − 4.858²)/8 = 0.03
  // m beside the rear point and 2.8 m below it, so the front leg lets go at a tangent of 0.0107.
  const Change change = [](Snapshot& s) {
    catalogue::HardwareType single = s.catalogue.hardware.back();
    single.name = QStringLiteral("steel 4.658");
    single.length = metres(4.658);
    s.catalogue.hardware.push_back(single);
    for (venue::Bridle& bridle : s.venue.bridles) {
      const auto* rear = catalogue::find(s.venue.points, bridle.points[0]);
      bridle.x = metres(inMetres(rear->x) + 0.03);
      bridle.z = metres(inMetres(rear->z) - 2.8);
      bridle.steels = {QStringLiteral("steel 0.5"), QStringLiteral("steel 2"), single.name};
      bridle.tolerance = metres(0.01);
    }
  };
  const Option option = blown(6.0, change);
  BOOST_TEST(of(option, "bridle").verdict < Verdict::fails, of(option, "bridle").text.toStdString());
  const Finding& finding = of(option, "wind");
  BOOST_TEST(finding.verdict == Verdict::fails, finding.text.toStdString());
  BOOST_TEST(finding.text.contains(QStringLiteral("what keeps taut the leg to point L1 front")),
             finding.text.toStdString());
  BOOST_TEST(option.wind->legs[1].leastKn <= 0.0);
  BOOST_TEST(option.wind->failsAt < 6.0);
}

/// What holds all legs holds what hangs, whichever way it leans; what holds some of them does not.
BOOST_AUTO_TEST_CASE(zones_over_legs) {
  const auto zoned = [](double kn, bool all) {
    return [kn, all](Snapshot& s) {
      s.venue.zones.resize(1);
      s.venue.zones[0].name = QStringLiteral("truss");
      s.venue.zones[0].capacity = kilonewtons(kn);
      s.venue.zones[0].basis = catalogue::Basis::atRest;
      s.venue.zones[0].othersLoad = kilonewtons(0);
      s.venue.zones[0].othersBy = QStringLiteral("Edda");
      s.venue.zones[0].othersOn = QDate(2026, 1, 1);
      for (auto& each : s.venue.points) {
        const bool in = all || each.name.endsWith(QLatin1String("front"));
        each.zone = in ? QStringLiteral("truss") : QString();
      }
    };
  };
  const Option calm = blown(0.0);
  double all = 0.0;
  double front = 0.0;
  for (const PointResult& point : calm.points) {
    all += point.staticKn;
    front += point.point.endsWith(QLatin1String("front")) ? point.staticKn : 0.0;
  }
  BOOST_TEST(of(blown(6.0, zoned(all * 1.0001, true)), "wind").verdict == Verdict::tight);
  BOOST_TEST(of(blown(6.0, zoned(all * 0.9999, true)), "wind").verdict == Verdict::fails);
  const Option some = blown(6.0, zoned(front * 1.0001, false));
  BOOST_TEST(of(some, "wind").verdict == Verdict::fails);
  BOOST_TEST(some.wind->failsBy.toStdString() == "zone-load of truss");
}

/// A figure less leaves it open or failing, and says which.
BOOST_AUTO_TEST_CASE(what_is_missing_is_named) {
  const auto open = [](const Change& change, const char* words, Verdict least = Verdict::unproven) {
    const Option option = blown(6.0, change);
    const Finding& finding = of(option, "wind");
    BOOST_TEST(finding.verdict >= least, finding.text.toStdString());
    BOOST_TEST(finding.text.contains(QString::fromUtf8(words)), finding.text.toStdString());
    BOOST_TEST(option.wind->missing.join(QStringLiteral("; ")).contains(QString::fromUtf8(words)));
  };
  open([](Snapshot& s) { s.catalogue.hardware[4].limit.reset(); }, "of bridle BL1 the limit of steel 1");
  open([](Snapshot& s) { s.catalogue.hardware[4].mass.reset(); }, "of bridle BL1 the mass of steel 1");
  open([](Snapshot& s) { s.catalogue.hardware[4].length.reset(); }, "of bridle BL1 the length of steel 1");
  open([](Snapshot& s) { s.venue.bridles[0].shackle.clear(); }, "of bridle BL1 the shackle of its legs");
  open([](Snapshot& s) { s.venue.bridles[0].tolerance = metres(0.0); },
       "how bridle BL1 is rigged (no make-up");
  open([](Snapshot& s) { s.show.windAveraging.reset(); }, "over which time the gust is averaged");
  BOOST_TEST(of(blown(6.0, [](Snapshot& s) { s.catalogue.hoists[0].bodyMass.reset(); }), "wind").verdict >=
             Verdict::unproven);
}

BOOST_AUTO_TEST_CASE(the_answer_goes_through_json_and_back) {
  const Option option = blown(6.0);
  const QJsonObject json = toJson(option);
  BOOST_TEST((toJson(optionFromJson(json)) == json));
  const QJsonObject wind = json.value(QLatin1String("wind")).toObject();
  BOOST_TEST(wind.value(QLatin1String("legs")).toArray().size() == 4);
  BOOST_TEST(wind.value(QLatin1String("points")).toArray().size() == 4);
  BOOST_TEST(
      wind.value(QLatin1String("legs")).toArray()[0].toObject().value(QLatin1String("most_kn")).toDouble() ==
      option.wind->legs[0].mostKn);
}

BOOST_AUTO_TEST_SUITE_END()
