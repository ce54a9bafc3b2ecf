// SPDX-License-Identifier: GPL-3.0-or-later
// Picks that hang from points that do not stand over them: what each point then carries, and the bridle's
// rule.
#include <boost/test/unit_test.hpp>

#include <cmath>
#include <functional>
#include <memory>
#include <utility>

#include <QJsonObject>

#include "bridled_fixture.h"
#include "load_fixture.h"
#include "options/bridle_pick.h"
#include "options/loads.h"
#include "options/option_json.h"
#include "options/search.h"
#include "options/ways.h"
#include "options/weight_limits.h"
#include "options/working_limit.h"
#include "print.h"
#include "quantity/error.h"
#include "show_fixture.h"

using namespace hangbook;
using options::Finding;
using options::Option;
using options::Snapshot;
using options::Verdict;
using testing::bridledShow;

namespace {

struct Chosen {
  Snapshot snapshot = bridledShow();
  Option option = options::decide(snapshot).hangs[0].options.front();

  Option with(const std::function<void(Snapshot&)>& change) const {
    Snapshot changed = snapshot;
    change(changed);
    return options::judge(changed, option.key, *option.setting);
  }
};

const Chosen& chosen() {
  static const Chosen one;
  return one;
}

const Finding& of(const Option& option, const char* rule) {
  for (const Finding& finding : option.findings) {
    if (finding.rule == QLatin1String(rule)) {
      return finding;
    }
  }
  BOOST_FAIL(std::string("no finding of ") + rule);
  return option.findings.front();
}

constexpr auto near = [](double tolerance) { return boost::test_tools::tolerance(tolerance); };

} // namespace

BOOST_AUTO_TEST_SUITE(bridle_rule)

BOOST_AUTO_TEST_CASE(every_point_of_a_bridle_is_listed_once_and_the_parts_add_up) {
  const Option& option = chosen().option;
  BOOST_TEST((option.verdict <= Verdict::tight), of(option, "bridle").text.toStdString());
  BOOST_REQUIRE(option.points.size() == 4U);
  double carried = 0.0;
  for (const options::PointResult& point : option.points) {
    double sum = 0.0;
    for (const options::LoadPart& part : point.parts) {
      sum += part.kn;
    }
    BOOST_TEST(sum == point.staticKn, near(1e-12));
    BOOST_TEST(point.horizontalKn > 0.0);
    carried += point.staticKn;
  }
  // All that hangs from the points: hang, two hoists with chain and bag, rigging, and the legs' own weight.
  const double kg = 9.80665e-3;
  double legs = 0.0;
  for (const options::BridleResult& bridle : option.bridles) {
    for (const options::BridleLegResult& leg : bridle.legs) {
      for (const options::HardwareCount& piece : leg.pieces) {
        legs += piece.count *
                inKilograms(*catalogue::find(chosen().snapshot.catalogue.hardware, piece.type)->mass);
      }
    }
  }
  const double all = option.massKg + 2.0 * (58.0 + 22.0 * 1.3 + 2.5 + 6.0 * 1.2) + legs;
  BOOST_TEST(carried == all * kg, near(1e-9));
}

BOOST_AUTO_TEST_CASE(a_leg_by_hand) {
  // Points 4 m apart and apex wanted 2.5 m under their middle: legs of √(2² + 2.5²) = 3.202 m. With shackles
  // of 0.1 m: 2 + 1 m and 3 shackles are 3.30 m, within 0.1 m; nothing with fewer pieces comes as near.
  const options::BridleResult& bridle = chosen().option.bridles.front();
  BOOST_REQUIRE(bridle.legs.size() == 2U);
  for (const options::BridleLegResult& leg : bridle.legs) {
    BOOST_TEST(leg.wantedM == std::hypot(2.0, 2.5), near(1e-12));
    BOOST_TEST(leg.lengthM == 3.3, near(1e-12));
    BOOST_TEST(leg.fromHorizontalDeg == std::acos(2.0 / 3.3) * 180.0 / M_PI, near(1e-9));
    const double vertical = leg.tensionKn * std::sin(leg.fromHorizontalDeg * M_PI / 180.0);
    BOOST_TEST(leg.horizontalKn == leg.tensionKn * std::cos(leg.fromHorizontalDeg * M_PI / 180.0),
               near(0.02));
    BOOST_TEST(vertical < chosen().option.points.front().staticKn * 1.01);
  }
  BOOST_TEST(bridle.apexM[2] == 19.4 - std::sqrt(3.3 * 3.3 - 4.0), near(1e-12));
  BOOST_REQUIRE(bridle.shiftM.has_value());
  BOOST_TEST(*bridle.shiftM > 0.0005);
  BOOST_TEST(*bridle.shiftM < 0.01);
}

BOOST_AUTO_TEST_CASE(a_bridle_is_not_named_where_every_pick_hangs_straight) {
  const Option plain =
      options::decide(testing::smallHarbourShow(), QStringLiteral("left")).hangs[0].options.front();
  BOOST_TEST(!of(plain, "bridle").applies);
  BOOST_TEST(plain.bridles.empty());
  for (const options::PointResult& point : plain.points) {
    BOOST_TEST(point.horizontalKn == 0.0);
  }
}

BOOST_AUTO_TEST_CASE(the_weakest_piece_limits_a_leg) {
  const Finding plain = of(chosen().option, "bridle");
  BOOST_TEST((plain.verdict == Verdict::holds), plain.text.toStdString());
  BOOST_REQUIRE(plain.value);
  const auto limited = [&](double kn) {
    const Option option =
        chosen().with([kn](Snapshot& s) { s.catalogue.hardware[4].limit = kilonewtons(kn); });
    return of(option, "bridle");
  };
  // People are beneath: half of the limit counts.
  BOOST_TEST((limited(2.0 * *plain.value / 0.89).verdict == Verdict::holds));
  BOOST_TEST((limited(2.0 * *plain.value / 0.91).verdict == Verdict::tight));
  const Finding over = limited(2.0 * *plain.value * 0.999);
  BOOST_TEST((over.verdict == Verdict::fails), over.text.toStdString());
  BOOST_TEST(over.text.contains(QStringLiteral("steel 1 may take")), over.text.toStdString());
}

BOOST_AUTO_TEST_CASE(flat_legs_fail_and_flattish_ones_are_tight) {
  const auto apexAt = [](double depth) {
    const Option option = chosen().with([depth](Snapshot& s) {
      for (venue::Bridle& bridle : s.venue.bridles) {
        bridle.z = metres(19.4 - depth);
        bridle.tolerance = metres(0.25);
      }
    });
    return of(option, "bridle");
  };
  BOOST_TEST((apexAt(2.5).verdict == Verdict::holds));
  const Finding flattish = apexAt(1.6);
  BOOST_TEST((flattish.verdict == Verdict::tight), flattish.text.toStdString());
  const Finding flat = apexAt(0.9);
  BOOST_TEST((flat.verdict == Verdict::fails), flat.text.toStdString());
  BOOST_TEST(flat.source.contains(QStringLiteral("OSHA")));
}

BOOST_AUTO_TEST_CASE(what_is_not_stated_leaves_it_unproven) {
  using Change = std::function<void(Snapshot&)>;
  const std::vector<Change> changes{
      [](Snapshot& s) { s.catalogue.hardware[4].limit.reset(); },
      [](Snapshot& s) { s.catalogue.hardware[4].mass.reset(); },
      [](Snapshot& s) { s.catalogue.hardware[4].length.reset(); },
      [](Snapshot& s) { s.catalogue.hardware[0].length.reset(); },
      [](Snapshot& s) { s.venue.bridles[0].steels.clear(); },
      [](Snapshot& s) { s.venue.bridles[0].shackle.clear(); },
      [](Snapshot& s) { s.catalogue.hoists[0].bodyMass.reset(); },
  };
  for (std::size_t i = 0; i < changes.size(); ++i) {
    const Option option = chosen().with(changes[i]);
    BOOST_TEST((of(option, "bridle").verdict == Verdict::unproven),
               i << ": " << of(option, "bridle").text.toStdString());
    BOOST_TEST((option.verdict >= Verdict::unproven));
  }
  // The stretch is told, and gates nothing.
  const Option limp = chosen().with([](Snapshot& s) { s.catalogue.hardware[4].stiffness.reset(); });
  BOOST_TEST((of(limp, "bridle").verdict == Verdict::holds));
  BOOST_TEST(!limp.bridles[0].shiftM);
}

BOOST_AUTO_TEST_CASE(what_cannot_be_rigged_fails) {
  const auto fails = [](const std::function<void(venue::Bridle&)>& change, const char* words) {
    const Option option = chosen().with([&](Snapshot& s) { change(s.venue.bridles[0]); });
    const Finding finding = of(option, "bridle");
    BOOST_TEST((finding.verdict == Verdict::fails), finding.text.toStdString());
    BOOST_TEST(finding.text.contains(QString::fromUtf8(words)), finding.text.toStdString());
    BOOST_TEST((of(option, "point-load").verdict >= Verdict::unproven));
  };
  fails(
      [](venue::Bridle& b) {
        b.x = metres(2.5);
        b.y = metres(10.9);
      },
      "swing");
  fails(
      [](venue::Bridle& b) {
        b.x = metres(5.5);
        b.y = metres(10.5);
      },
      "push");
  fails([](venue::Bridle& b) { b.tolerance = metres(0.0); }, "no make-up");
  fails([](venue::Bridle& b) { b.points.append(QStringLiteral("nowhere")); }, "not in the venue's sheet");
  fails(
      [](venue::Bridle& b) {
        b.points.append({QStringLiteral("L2"), QStringLiteral("L2 front")});
      },
      "two or three points");
  fails([](venue::Bridle& b) { b.points.removeLast(); }, "two or three points");
}

BOOST_AUTO_TEST_CASE(a_third_leg_and_a_shared_point) {
  // Both picks use the same front point: it is listed once, with both its legs' loads.
  Snapshot snapshot = chosen().snapshot;
  snapshot.venue.points.resize(4);
  venue::Point front = *catalogue::find(snapshot.venue.points, QStringLiteral("L1"));
  front.name = QStringLiteral("middle front");
  front.x = metres(4.5);
  front.y = metres(10.0);
  snapshot.venue.points.push_back(front);
  for (venue::Bridle& bridle : snapshot.venue.bridles) {
    bridle.points = {QStringLiteral("L1"), QStringLiteral("L2"), front.name};
    bridle.x = metres(2.5);
    bridle.y = metres(bridle.name == QStringLiteral("BL1") ? 10.2 : 9.8);
    bridle.tolerance = metres(0.3);
  }
  const Option option = options::decide(snapshot).hangs[0].options.front();
  BOOST_REQUIRE(option.bridles.size() == 2U);
  BOOST_TEST(option.points.size() == 3U);
  BOOST_TEST(option.bridles[0].legs.size() == 3U);
  const Finding finding = of(option, "bridle");
  BOOST_TEST(!finding.text.isEmpty());
}

/// Two legs of a 3-4-5 triangle under 8 kN, strong and steep enough. Where pieces as long or short as they
/// may be would let one hang slack, that is where the rule is judged; without doubts it is not.
BOOST_AUTO_TEST_CASE(a_leg_that_may_hang_slack_fails) {
  catalogue::HardwareType steel;
  steel.name = QStringLiteral("steel");
  steel.kind = catalogue::HardwareKind::secondarySteel;
  steel.limit = kilonewtons(20);
  steel.mass = kilograms(0);
  const venue::Point point;
  auto bridle = std::make_shared<options::BridledPick>();
  for (const double side : {1.0, -1.0}) {
    options::BridleLeg leg;
    leg.point = &point;
    leg.pieces = {{&steel, 1}};
    leg.weight = 0.0;
    leg.plumb.tension = 0.625;
    leg.plumb.fromHorizontalDeg = hang::toDegrees(std::asin(0.8));
    leg.plumb.onPoint = {-0.375 * side, 0.0, -0.5};
    bridle->legs.push_back(leg);
  }
  auto limits = std::make_shared<options::WeightLimits>();
  limits->nobodyBeneath = true;
  limits->coefficients = options::coefficientTable(1.0);
  limits->accessory.value = limits->dynamic.value = limits->liftShare.value = 1.0;
  limits->hoistBody = limits->hoistChain = limits->rigging = 0.0;
  limits->legAngleLeast.value = 30.0;
  limits->legAnglePreferred.value = 45.0;
  options::Case option;
  option.snapshot = &chosen().snapshot;
  option.weight = limits;
  option.bridles = {bridle};
  option.points = {&bridle->apex};
  options::Settled settled;
  settled.statics.pickCount = 1;
  settled.statics.pickLoads[0].load = settled.build.most[0] = 8000.0;
  const auto doubt = std::make_shared<options::SettledDoubt>();
  doubt->worst.bounded = true;
  const auto judged = [&] {
    const options::Use use = options::bridleRule.evaluate(option, &settled, 6.0);
    return std::pair(use.verdict, options::bridleRule.explain(option, &settled, 6.0, use).text);
  };
  settled.doubt = doubt;
  BOOST_TEST((judged().first == Verdict::holds), judged().second.toStdString());
  bridle->legs[1].mayHangSlack = true;
  BOOST_TEST((judged().first == Verdict::fails));
  BOOST_TEST(judged().second.contains(QStringLiteral("may be it hangs slack")),
             judged().second.toStdString());
  settled.doubt.reset();
  BOOST_TEST((judged().first == Verdict::holds));
  bridle->legs[1].plumb.slack = true;
  BOOST_TEST((judged().first == Verdict::fails));
  BOOST_TEST(judged().second.contains(QStringLiteral(": it hangs slack")), judged().second.toStdString());
}

/// 1 m deep, points half a metre to either side, the chain 3 m off over 4 m. As set 1 kN pulls 750 N aside
/// and 2.2 kN down, which both legs hold; at the worst step 4 kN pull 3 kN aside and 5.2 kN down, more than
/// half of it, so that the leg on the side it leans to hangs slack.
BOOST_AUTO_TEST_CASE(a_leg_that_hangs_slack_on_the_way_is_said_to_hang_slack) {
  testing::LoadCase of;
  of.limits.spacing = 7.0;
  of.limits.legAngleLeast.value = 30.0;
  of.limits.legAnglePreferred.value = 45.0;
  of.points[0].y = metres(3.5);
  of.points[1].y = metres(-3.5);
  auto bridle = std::make_shared<options::BridledPick>();
  std::vector<venue::Point> ends(2);
  for (std::size_t i = 0; i < 2; ++i) {
    ends[i].y = metres(i == 0 ? 4.0 : 3.0);
    ends[i].z = metres(15.0);
    options::BridleLeg leg;
    leg.point = &ends[i];
    leg.pieces = {{&of.shackle, 1}};
    leg.length = std::hypot(0.5, 1.0);
    leg.weight = 0.0;
    leg.stretch = 2e-6;
    bridle->legs.push_back(leg);
  }
  bridle->apex = of.points[0];
  options::Case option = of.option();
  option.bridles[0] = bridle;
  const auto judged = [&](double most) {
    const options::Settled settled = testing::settledWith({1000.0, 1000.0, most, most}, true);
    const double trimM = 8.0 + options::heightOver(option, settled, 8.0, 0) - 4.0;
    const options::Use use = options::bridleRule.evaluate(option, &settled, trimM);
    return std::pair(use.verdict,
                     options::bridleRule.explain(option, &settled, trimM, use).text.toStdString());
  };
  BOOST_TEST((judged(1000.0).first != Verdict::fails), judged(1000.0).second);
  // Of 2.2 kN straight down each leg takes 1.23 kN and stretches 2.46 mm, which lowers the apex 2.75 mm.
  BOOST_TEST(judged(1000.0).second.ends_with("; the load moves the apex 3 mm."), judged(1000.0).second);
  BOOST_TEST((judged(4000.0).first == Verdict::fails));
  BOOST_TEST(judged(4000.0).second.ends_with(": it hangs slack, so the apex does not stand where it should."),
             judged(4000.0).second);
}

BOOST_AUTO_TEST_CASE(answers_go_through_json_and_back) {
  const QJsonObject json = options::toJson(chosen().option);
  const Option again = options::optionFromJson(json);
  BOOST_TEST((options::toJson(again) == json));
  BOOST_TEST(again.bridles[0].legs[0].pieces.size() == chosen().option.bridles[0].legs[0].pieces.size());
}

/// Without the length of a steel or of the shackle, or how near a leg must come, none is made up: it is drawn
/// as wanted.
BOOST_AUTO_TEST_CASE(a_leg_is_made_up_from_known_lengths) {
  const auto pick = [](const std::function<void(Snapshot&)>& change) {
    Snapshot snapshot = bridledShow();
    change(snapshot);
    const options::House house(snapshot.tour.house, snapshot.venue.house, snapshot.show.house);
    return options::bridledPick(snapshot, house, snapshot.venue.bridles[0]);
  };
  const auto whole = pick([](Snapshot&) {});
  BOOST_TEST(whole->missing.isEmpty());
  BOOST_TEST(!whole->legs.at(0).pieces.empty());
  BOOST_TEST(whole->legs.at(0).length != whole->legs.at(0).wanted);
  const std::vector<std::pair<const char*, std::function<void(Snapshot&)>>> changes{
      {"the length of steel 1", [](Snapshot& s) { s.catalogue.hardware[4].length.reset(); }},
      {"the steels that its legs are made up from", [](Snapshot& s) { s.venue.bridles[0].steels.clear(); }},
      {"the length of shackle", [](Snapshot& s) { s.catalogue.hardware[0].length.reset(); }},
      {"the shackle of its legs", [](Snapshot& s) { s.venue.bridles[0].shackle.clear(); }},
      {"how near a leg must come to its length",
       [](Snapshot& s) {
         s.tour.house.push_back(
             {QStringLiteral("bridle-tolerance"), -1.0, {}, {}, QStringLiteral("Edda"), QDate(2026, 1, 1)});
       }},
  };
  for (const auto& [words, change] : changes) {
    const auto made = pick(change);
    BOOST_TEST(made->missing.contains(QString::fromUtf8(words)), words);
    BOOST_TEST(made->fault.isEmpty(), made->fault.toStdString());
    BOOST_REQUIRE(made->legs.size() == 2U);
    for (const options::BridleLeg& leg : made->legs) {
      BOOST_TEST(leg.pieces.empty(), words);
      BOOST_TEST(leg.length == leg.wanted, words);
    }
  }
}

/// Where the house counts hardware by its units a leg is made up from those that are there and ready.
BOOST_AUTO_TEST_CASE(a_leg_is_made_up_from_the_units_there_are) {
  const auto can = [](fleet::UnitKind kind, const char* type, fleet::UnitState state) {
    Snapshot snapshot = bridledShow();
    for (int i = 0; i < 8; ++i) {
      for (const char* name : {"steel 0.5", "steel 1", "steel 2"}) {
        fleet::Unit unit;
        unit.serial = QString::fromUtf8(name) + QString::number(i);
        unit.kind = kind;
        unit.type = QString::fromUtf8(type == nullptr ? name : type);
        unit.state = state;
        snapshot.units.push_back(unit);
      }
    }
    const std::vector<venue::HouseFigure> counted{
        {QStringLiteral("hardware-by-serial"), 1.0, {}, {}, QStringLiteral("Edda"), QDate(2027, 3, 1)}};
    const options::House house({}, {}, counted);
    return options::bridledPick(snapshot, house, snapshot.venue.bridles[0])->fault.isEmpty();
  };
  BOOST_TEST(can(fleet::UnitKind::hardware, nullptr, fleet::UnitState::ready));
  BOOST_TEST(!can(fleet::UnitKind::hardware, nullptr, fleet::UnitState::inRepair));
  BOOST_TEST(!can(fleet::UnitKind::hardware, "another steel", fleet::UnitState::ready));
  BOOST_TEST(!can(fleet::UnitKind::chain, nullptr, fleet::UnitState::ready));
}

BOOST_AUTO_TEST_CASE(points_and_bridles_of_a_hang) {
  Snapshot snapshot = bridledShow();
  calendar::Hang& hang = snapshot.show.hangs[0];
  hang.points = {QStringLiteral("BL1"), QStringLiteral("L2"), QStringLiteral("BL1"), QStringLiteral("no")};
  const auto found = options::candidatePoints(snapshot, options::House({}, {}, {}), hang);
  BOOST_TEST(found.points.size() == 2U);
  BOOST_TEST(found.bridles.size() == 1U);
  BOOST_TEST((found.unknown == QStringList{QStringLiteral("no")}));
  const auto real = options::pointsWithin(snapshot.venue, hang);
  BOOST_TEST(real.size() == 3U);
}

BOOST_AUTO_TEST_SUITE_END()
