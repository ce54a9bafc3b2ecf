// SPDX-License-Identifier: GPL-3.0-or-later
// What legs of bridles pull and which of them the rule tells, by figures put in by hand.
#include <boost/test/unit_test.hpp>

#include <cmath>
#include <memory>
#include <vector>

#include "options/bridle_limits.h"
#include "options/bridle_pick.h"
#include "options/carriers.h"
#include "options/loads.h"
#include "options/weight_limits.h"
#include "options/working_limit.h"
#include "print.h"
#include "room_fixture.h"

using namespace hangbook;
using namespace hangbook::options;

namespace {

constexpr auto near = [](double tolerance) { return boost::test_tools::tolerance(tolerance); };

/// A steel that may take so much, nobody beneath.
std::unique_ptr<catalogue::HardwareType> steel(double kn) {
  auto type = std::make_unique<catalogue::HardwareType>();
  type->kind = catalogue::HardwareKind::secondarySteel;
  type->limit = kilonewtons(kn);
  return type;
}

/// Bridles of like legs, all plumb; gear weighs nothing and every factor is 1.
struct Legs {
  Case option;
  Settled settled;
  std::shared_ptr<WeightLimits> limits = std::make_shared<WeightLimits>();
  std::vector<std::unique_ptr<catalogue::HardwareType>> types;
  std::vector<std::shared_ptr<BridledPick>> picks;

  Legs() {
    limits->nobodyBeneath = true;
    limits->coefficients = coefficientTable(1.0);
    limits->accessory.value = limits->dynamic.value = limits->liftShare.value = 1.0;
    limits->legAngleLeast.value = 45.0;
    limits->legAnglePreferred.value = 60.0;
    limits->hoistBody = limits->hoistChain = limits->rigging = 0.0;
    option.weight = limits;
    settled.build.unknown.reset();
  }
  /// `number` legs that share `load` newtons evenly, each good for `kn` and this steep.
  BridledPick& add(std::size_t number, double load, double kn, double deg = 70.0) {
    const std::size_t at = picks.size();
    settled.statics.pickLoads[at].load = load;
    types.push_back(steel(kn));
    auto pick = std::make_shared<BridledPick>();
    for (std::size_t i = 0; i < number; ++i) {
      BridleLeg leg;
      leg.weight = 0.0;
      leg.pieces.push_back({types.back().get(), 1});
      leg.plumb.tension = 1.0 / static_cast<double>(number);
      leg.plumb.onPoint = {0.0, 0.0, -leg.plumb.tension};
      leg.plumb.fromHorizontalDeg = deg;
      pick->legs.push_back(leg);
    }
    picks.push_back(pick);
    option.bridles.push_back(pick);
    return *pick;
  }
  void doubt() {
    auto doubt = std::make_shared<SettledDoubt>();
    doubt->worst.bounded = true;
    settled.doubt = doubt;
  }
  Use use() const { return bridleRule.evaluate(option, &settled, 8.0); }
  double worst(std::size_t leg) const { return worstTension(option, settled, 8.0, 0, leg); }
};

} // namespace

BOOST_AUTO_TEST_SUITE(carriers)

/// Of three legs any two may carry all: 0.6 of 3000 N in one of them is more than its own third.
BOOST_AUTO_TEST_CASE(of_three_legs_two_carry_all) {
  Legs legs;
  BridledPick& pick = legs.add(3, 3000.0, 5.0);
  BOOST_TEST(legs.worst(0) == 1000.0, near(1e-12));
  pick.legs[0].worstOfTwo = 0.6;
  BOOST_TEST(legs.worst(0) == 1800.0, near(1e-12));
  BOOST_TEST(legs.worst(1) == 1000.0, near(1e-12));
  // Longer or shorter than stated they pull more only where something is in doubt.
  pick.legs[0].twoMore = 1.25;
  pick.legs[1].pullMore = 1.5;
  BOOST_TEST(legs.worst(0) == 1800.0, near(1e-12));
  BOOST_TEST(legs.worst(1) == 1000.0, near(1e-12));
  legs.doubt();
  BOOST_TEST(legs.worst(0) == 2250.0, near(1e-12));
  BOOST_TEST(legs.worst(1) == 1500.0, near(1e-12));
  pick.legs[2].worstOfTwo = 0.7; // as stated: no corner of its lengths is worse
  BOOST_TEST(legs.worst(2) == 2100.0, near(1e-12));
  // Half of a leg's own weight hangs in its upper end.
  pick.legs[1].weight = 40.0;
  legs.settled.gearHeavier = 1.5;
  BOOST_TEST(legs.worst(1) == 1530.0, near(1e-12));
}

BOOST_AUTO_TEST_CASE(two_legs_carry_what_they_do) {
  Legs legs;
  legs.add(2, 3000.0, 5.0).legs[0].worstOfTwo = 0.9; // of no meaning with two
  BOOST_TEST(legs.worst(0) == 1500.0, near(1e-12));
}

/// As set 3000 N, and 5000 N on the way: each of two legs sees half of the more.
BOOST_AUTO_TEST_CASE(a_leg_counts_at_the_worst_step) {
  Legs legs;
  legs.add(2, 3000.0, 5.0);
  legs.settled.build.most[0] = 5000.0;
  BOOST_TEST(legs.worst(0) == 2500.0, near(1e-12));
  BOOST_TEST(legs.use().value == 2.5, near(1e-12));
  legs.settled.build.most[0] = 2000.0;
  BOOST_TEST(legs.worst(0) == 1500.0, near(1e-12));
}

BOOST_AUTO_TEST_CASE(where_nothing_hangs_no_leg_has_a_force) {
  Legs legs;
  legs.add(2, 0.0, 5.0);
  BOOST_TEST(legForces(legs.option, legs.settled, 8.0, 0, true).empty());
  BOOST_TEST(std::isnan(legs.worst(0)));
  BOOST_TEST(legs.use().verdict == Verdict::unproven);
  legs.settled.statics.pickLoads[0].load = 1e-9;
  BOOST_TEST(legForces(legs.option, legs.settled, 8.0, 0, true).size() == 2U);
}

BOOST_AUTO_TEST_CASE(a_leg_exactly_as_steep_as_the_house_likes_holds) {
  const auto verdict = [](double deg, double preferred = 60.0) {
    Legs legs;
    legs.limits->legAnglePreferred.value = preferred;
    legs.add(2, 1000.0, 5.0, deg);
    return legs.use().verdict;
  };
  BOOST_TEST(verdict(60.0) == Verdict::holds);
  BOOST_TEST(verdict(std::nextafter(60.0, 0.0)) == Verdict::tight);
  BOOST_TEST(verdict(45.0) == Verdict::tight);
  BOOST_TEST(verdict(45.0, 45.0) == Verdict::tight); // at the least angle, whatever is liked
  BOOST_TEST(verdict(45.5, 45.0) == Verdict::holds); // no more than the least is asked for, by half a degree
  BOOST_TEST(verdict(std::nextafter(45.0, 0.0)) == Verdict::fails);
  BOOST_TEST(verdict(70.0, std::nan("")) == Verdict::unproven);
}

/// Of pieces that may take alike the first is told; one of which nothing is known is told before any.
BOOST_AUTO_TEST_CASE(the_weakest_piece_of_a_leg) {
  Legs legs;
  BridleLeg leg;
  const auto strong = steel(10.0);
  const auto weak = steel(5.0);
  const auto as = steel(5.0);
  const auto unknown = steel(20.0);
  unknown->limit.reset();
  const auto weakest = [&](const std::vector<const catalogue::HardwareType*>& types) {
    leg.pieces.clear();
    for (const catalogue::HardwareType* type : types) {
      leg.pieces.push_back({type, 1});
    }
    return weakestOf(legs.option, leg);
  };
  BOOST_TEST((weakest({strong.get(), weak.get(), as.get()}).type == weak.get()));
  BOOST_TEST((weakest({as.get(), strong.get(), weak.get()}).type == as.get()));
  BOOST_TEST(weakest({as.get(), strong.get(), weak.get()}).limit == 5000.0, near(1e-12));
  BOOST_TEST((weakest({weak.get(), unknown.get(), as.get()}).type == unknown.get()));
  BOOST_TEST(std::isnan(weakest({unknown.get(), weak.get()}).limit));
  BOOST_TEST((weakest({}).type == nullptr));
}

/// Both picks hold: the one that uses more of its limit is told, whatever it pulls; of like ones the first.
BOOST_AUTO_TEST_CASE(the_bridle_that_is_used_most_is_told) {
  const auto told = [](double load, double kn, double otherLoad, double otherKn) {
    Legs legs;
    legs.add(2, load, kn);
    legs.add(2, otherLoad, otherKn);
    const Use use = legs.use();
    BOOST_TEST(use.verdict == Verdict::holds);
    return use.which % 2;
  };
  const int first = told(6000.0, 5.0, 1000.0, 5.0);
  const int second = told(1000.0, 5.0, 6000.0, 5.0);
  BOOST_TEST(first == 0);
  BOOST_TEST(second == 1);
  BOOST_TEST(told(8000.0, 10.0, 6000.0, 5.0) == second); // 4 of 10 kN, 3 of 5 kN
  BOOST_TEST(told(6000.0, 5.0, 8000.0, 10.0) == first);
  BOOST_TEST(told(6000.0, 5.0, 6000.0, 5.0) == first);
}

/// Only pulls are set against each other by their shares; an angle stands for itself.
BOOST_AUTO_TEST_CASE(an_angle_and_a_pull_that_are_as_bad_stay_in_their_order) {
  Legs flatFirst;
  flatFirst.add(2, 1000.0, 5.0, 50.0);
  flatFirst.add(2, 9600.0, 5.0);
  BOOST_TEST(flatFirst.use().verdict == Verdict::tight);
  BOOST_TEST(flatFirst.use().value == 50.0);
  Legs pulledFirst;
  pulledFirst.add(2, 9600.0, 5.0);
  pulledFirst.add(2, 1000.0, 5.0, 50.0);
  BOOST_TEST(pulledFirst.use().verdict == Verdict::tight);
  BOOST_TEST(pulledFirst.use().value == 4.8, near(1e-12));
}

/// A worse verdict is told however little of a limit it uses.
BOOST_AUTO_TEST_CASE(a_worse_verdict_is_told_first) {
  Legs legs;
  legs.add(2, 1000.0, 5.0, 40.0); // too flat
  legs.add(2, 9600.0, 5.0);
  BOOST_TEST(legs.use().verdict == Verdict::fails);
  BOOST_TEST(legs.use().value == 40.0);
  Legs later;
  later.add(2, 9600.0, 5.0);
  later.add(2, 1000.0, 5.0, 40.0);
  BOOST_TEST(later.use().verdict == Verdict::fails);
  BOOST_TEST(later.use().value == 40.0);
}

/// A leg of which nobody says how far it stretches, or that would not stretch at all, has no shift; nor has
/// an apex from which nothing hangs.
BOOST_AUTO_TEST_CASE(how_far_an_apex_moves_needs_every_legs_stretch_and_a_load) {
  venue::Point front;
  front.x = metres(3.0);
  front.z = metres(4.0);
  venue::Point rear = front;
  rear.x = metres(-3.0);
  BridledPick pick;
  for (const venue::Point* point : {&front, &rear}) {
    BridleLeg leg;
    leg.point = point;
    leg.length = 5.0;
    leg.stretch = 1e-6;
    pick.legs.push_back(leg);
  }
  // 3-4-5: each leg pulls 5/8 of 8000 N, 5 mm longer, so that the apex sinks 5/4 of that.
  BOOST_TEST(pick.shiftUnder(8000.0) == 0.00625, near(1e-3));
  BOOST_TEST(std::isnan(pick.shiftUnder(0.0)));
  BOOST_TEST(std::isnan(pick.shiftUnder(std::nan(""))));
  for (const double stretch : {0.0, -1e-6, std::nan("")}) {
    pick.legs[1].stretch = stretch;
    BOOST_TEST(std::isnan(pick.shiftUnder(8000.0)), stretch);
  }
}

/// 3-4-5 again, of a pick that carries 5 N as set and 10 N on the way: 1 mm a newton in each leg is 5/4 of
/// that times 5/8 of the load at the apex.
BOOST_AUTO_TEST_CASE(the_apex_is_told_where_the_most_moves_it) {
  venue::Point front;
  front.x = metres(3.0);
  front.z = metres(4.0);
  venue::Point rear = front;
  rear.x = metres(-3.0);
  const Snapshot snapshot;
  Legs legs;
  legs.option.snapshot = &snapshot;
  BridledPick& pick = legs.add(2, 5.0, 5.0);
  pick.legs[0].point = &front;
  pick.legs[1].point = &rear;
  for (BridleLeg& leg : pick.legs) {
    leg.length = 5.0;
    leg.stretch = 1e-3;
  }
  legs.settled.build.most[0] = 10.0;
  const QString text = bridleRule.explain(legs.option, &legs.settled, 8.0, legs.use()).text;
  BOOST_TEST(text.contains(QStringLiteral("; the load moves the apex 8 mm.")), text.toStdString());
}

/// Points 1 m apart, picks 1.2 m: the chain leans out by 0.1 m over its height, and pulls the legs that way.
BOOST_AUTO_TEST_CASE(a_leaning_chain_pulls_legs_away_from_the_other_point) {
  hangbook::testing::Room room;
  auto limits = std::make_shared<WeightLimits>();
  limits->spacing = 1.0;
  limits->hoistBody = limits->hoistChain = limits->rigging = 0.0;
  room.option.weight = limits;
  room.settled.layout.picks.at(0).y += 0.1;
  room.settled.layout.picks.at(1).y -= 0.1;
  room.settled.statics.pickLoads[0].load = room.settled.build.most[0] = 1000.0;
  venue::Point front = room.venue().points[0];
  front.x = metres(3.0);
  venue::Point rear = front;
  rear.x = metres(-3.0);
  auto pick = std::make_shared<BridledPick>();
  for (const venue::Point* point : {&front, &rear}) {
    BridleLeg leg;
    leg.point = point;
    leg.length = 5.0;
    leg.weight = 0.0;
    pick->legs.push_back(leg);
  }
  room.option.bridles = {pick, nullptr};
  const auto forces = [&] { return legForces(room.option, room.settled, 8.0, 0, true); };
  const double height = heightOver(room.option, room.settled, 8.0, 0);
  BOOST_REQUIRE(height > 1.0);
  BOOST_REQUIRE(forces().size() == 2U);
  const hang::Vec3 sum = forces()[0].onPoint + forces()[1].onPoint;
  BOOST_TEST(std::abs(sum.x) < 1e-6);
  BOOST_TEST(sum.y == 1000.0 * 0.1 / height, near(1e-6));
  BOOST_TEST(sum.z == -1000.0, near(1e-6));
  Case plain = room.option; // the same chain straight from the point
  catalogue::PickArrangement pair;
  pair.picks = catalogue::Picks::sidePair;
  plain.arrangement = &pair;
  findCarriers({}, plain);
  const auto sideways = [&] { return pointResult(plain, room.settled, 8.0, 0, true).horizontalKn; };
  BOOST_TEST(sideways() == 0.1 / height, near(1e-6));
  // A pick as high as its point, or above it: how hard it pulls sideways is not known.
  room.settled.layout.picks.at(0).z += height + 0.5;
  BOOST_TEST(forces().empty());
  room.settled.layout.picks.at(0).z = 0.0;
  room.settled.layout.picks.at(0).z = heightOver(room.option, room.settled, 8.0, 0);
  BOOST_REQUIRE(heightOver(room.option, room.settled, 8.0, 0) == 0.0);
  BOOST_TEST(std::isnan(sideways()));
  BOOST_TEST(forces().empty());
  room.settled.layout.picks.at(0).z -= height;
  BOOST_REQUIRE(forces().size() == 2U);
  // Over one point in plan nothing says which way it leans.
  room.venue().points[1].y = room.venue().points[0].y;
  BOOST_TEST(forces().empty());
}

/// Points 2 m apart on a slant (3-4-5), picks 1.2 m: each chain leans in by 0.4 m and pulls its point towards
/// the other one.
BOOST_AUTO_TEST_CASE(a_leaning_chain_pulls_along_the_line_of_its_points) {
  hangbook::testing::Room room;
  auto limits = std::make_shared<WeightLimits>();
  limits->spacing = 2.0;
  limits->hoistBody = limits->hoistChain = limits->rigging = 0.0;
  room.option.weight = limits;
  room.settled.layout.picks.at(0).y += 0.1;
  room.settled.layout.picks.at(1).y -= 0.1;
  venue::Point& own = room.venue().points[0];
  venue::Point& other = room.venue().points[1];
  own.x = metres(0.5);
  other.x = metres(inMetres(own.x) - 1.2);
  other.y = metres(inMetres(own.y) - 1.6);
  venue::Point front = own;
  front.x = metres(3.0);
  venue::Point rear = front;
  rear.x = metres(-3.0);
  auto pick = std::make_shared<BridledPick>();
  for (const venue::Point* point : {&front, &rear}) {
    BridleLeg leg;
    leg.point = point;
    leg.length = 5.0;
    leg.weight = 0.0;
    pick->legs.push_back(leg);
  }
  room.option.bridles = {pick, pick};
  for (const std::size_t number : {0U, 1U}) {
    room.settled.statics.pickLoads[number].load = room.settled.build.most[number] = 1000.0;
    const auto forces = legForces(room.option, room.settled, 8.0, number, true);
    BOOST_REQUIRE(forces.size() == 2U);
    const hang::Vec3 sum = forces[0].onPoint + forces[1].onPoint;
    const double pull = 1000.0 * 0.4 / heightOver(room.option, room.settled, 8.0, number);
    const double towards = number == 0U ? -1.0 : 1.0;
    BOOST_TEST(sum.x == towards * 0.6 * pull, near(1e-6));
    BOOST_TEST(sum.y == towards * 0.8 * pull, near(1e-6));
    BOOST_TEST(sum.z == -1000.0, near(1e-6));
  }
}

BOOST_AUTO_TEST_SUITE_END()
