// SPDX-License-Identifier: GPL-3.0-or-later
// Over random rooms: dropping a figure never makes a rule of room or gear hold that did not, and making a
// figure worse never improves a verdict. (Bounds on trim that nobody states are bounds that are not there: a
// venue's least trim is not among the figures dropped.)
#include <boost/test/unit_test.hpp>

#include <functional>
#include <random>

#include "print.h"
#include "room_fixture.h"

using namespace hangbook;
using namespace hangbook::options;
using hangbook::testing::Room;

namespace {

struct Change {
  const char* name;
  std::function<void(Room&)> make;
};

const std::vector<Change>& drops() {
  static const std::vector<Change> all{
      {"low steel", [](Room& r) { r.venue().lowSteel.reset(); }},
      {"closed length", [](Room& r) { r.hoist().closedLength.reset(); }},
      {"chain length", [](Room& r) { r.hoist().chainLength.reset(); }},
      {"rigging length", [](Room& r) { r.snapshot.catalogue.hardware[0].length.reset(); }},
      {"bar outline", [](Room& r) { r.bar().outline.clear(); }},
      {"bar width", [](Room& r) { r.bar().width.reset(); }},
      {"cabinet width", [](Room& r) { r.full().width.reset(); }},
      {"swing limit", [](Room& r) { r.bar().swingLimit.reset(); }},
      {"tilt travel", [](Room& r) { r.bar().tiltTravel.reset(); }},
      {"pan travel", [](Room& r) { r.bar().panTravel.reset(); }},
      {"cover lowest", [](Room& r) { r.full().coverLowest.reset(); }},
      {"cover highest", [](Room& r) { r.full().coverHighest.reset(); }},
      {"throw", [](Room& r) { r.full().throwDistance.reset(); }},
      {"ear height", [](Room& r) { r.venue().sections[0].earHeight.reset(); }},
      {"sections", [](Room& r) { r.venue().sections.clear(); }},
      {"days away", [](Room& r) { r.snapshot.show.awayTo = {}; }},
      {"units", [](Room& r) { r.snapshot.units.clear(); }},
      {"examinations", [](Room& r) { r.snapshot.examinations.clear(); }},
      {"examination rules", [](Room& r) { r.snapshot.examinationRules.clear(); }},
      {"cart types", [](Room& r) { r.snapshot.catalogue.carts.clear(); }},
      {"how many a cart takes", [](Room& r) { r.snapshot.catalogue.carts[0].most.reset(); }},
  };
  return all;
}

const std::vector<Change>& worsenings() {
  static const std::vector<Change> all{
      {"low steel", [](Room& r) { *r.venue().lowSteel -= metres(1); }},
      {"obstruction", [](Room& r) { r.venue().obstructions[0].underside -= metres(1); }},
      {"wider obstruction", [](Room& r) { r.venue().obstructions[0].xFrom -= metres(3); }},
      {"closed length", [](Room& r) { *r.hoist().closedLength += metres(0.5); }},
      {"chain length", [](Room& r) { *r.hoist().chainLength -= metres(1); }},
      {"rigging length", [](Room& r) { *r.snapshot.catalogue.hardware[0].length += metres(0.3); }},
      {"least trim", [](Room& r) { *r.venue().leastTrim += metres(1); }},
      {"most trim", [](Room& r) { *r.venue().mostTrim -= metres(1); }},
      {"swing limit", [](Room& r) { *r.bar().swingLimit -= degrees(2); }},
      {"pan travel",
       [](Room& r) {
         r.bar().panTravel = std::array{degrees(-1), degrees(1)};
       }},
      {"cover highest", [](Room& r) { *r.full().coverHighest -= degrees(2); }},
      {"cover lowest", [](Room& r) { *r.full().coverLowest += degrees(2); }},
      {"throw", [](Room& r) { *r.full().throwDistance -= metres(10); }},
      {"one unit less", [](Room& r) { r.snapshot.units.pop_back(); }},
      {"one unit in repair", [](Room& r) { r.snapshot.units[0].state = fleet::UnitState::inRepair; }},
      {"examined earlier",
       [](Room& r) {
         for (auto& each : r.snapshot.examinations) {
           each.date = each.date.addMonths(-6);
         }
       }},
      {"a longer interval was hoped for",
       [](Room& r) {
         for (auto& each : r.snapshot.examinationRules) {
           *each.months -= 5;
         }
       }},
      {"longer away", [](Room& r) { r.snapshot.show.awayTo = r.snapshot.show.awayTo.addDays(40); }},
      {"another show",
       [](Room& r) {
         Choice other;
         other.show = QStringLiteral("elsewhere");
         other.key = r.option.key;
         r.snapshot.otherChoices.push_back(other);
       }},
      {"a spare asked for", [](Room& r) { r.houseSays("spare-cabinets", 1); }},
      {"more clearance", [](Room& r) { r.houseSays("headroom-clearance", 0.4); }},
  };
  return all;
}

/// A room that may hold or fail in any rule; the same seed gives the same one.
std::unique_ptr<Room> randomRoom(unsigned seed) {
  std::mt19937 random(seed);
  const auto between = [&](double low, double high) {
    return std::uniform_real_distribution<double>(low, high)(random);
  };
  auto room = std::make_unique<Room>();
  room->venue().lowSteel = metres(between(10, 14));
  room->venue().leastTrim = metres(between(3, 9));
  room->venue().mostTrim = metres(between(7, 12));
  venue::Obstruction screen;
  screen.name = QStringLiteral("screen");
  screen.xFrom = metres(between(-1, 3));
  screen.xTo = metres(4);
  screen.yFrom = metres(-1);
  screen.yTo = metres(between(0, 2));
  screen.underside = metres(between(9, 14));
  room->venue().obstructions = {screen};
  room->hoist().chainLength = metres(between(12, 16));
  room->bar().swingLimit = degrees(between(2, 20));
  room->full().coverHighest = degrees(between(-5, 15));
  room->full().coverLowest = degrees(between(-60, -10));
  room->full().throwDistance = metres(between(30, 80));
  room->tiltDeg = between(-4, 3);
  room->panDeg = between(-4, 4);
  room->snapshot.units.resize(room->snapshot.units.size() - seed % 3);
  for (auto& each : room->snapshot.examinations) {
    each.date = each.date.addDays(-static_cast<int>(between(0, 300)));
  }
  room->refresh();
  return room;
}

template <class Check>
void overAll(const std::vector<Change>& changes, Check check) {
  for (unsigned seed = 1; seed <= 25; ++seed) {
    const auto before = randomRoom(seed);
    const double trim = 5.0 + 0.2 * seed;
    for (const Change& change : changes) {
      const auto after = randomRoom(seed);
      change.make(*after);
      after->refresh();
      for (const auto rules : {roomRules(), gearRules()}) {
        for (const Rule& rule : rules) {
          check(seed, change, rule, before->use(rule, trim), after->use(rule, trim));
        }
      }
    }
  }
}

} // namespace

BOOST_AUTO_TEST_SUITE(room_monotone)

BOOST_AUTO_TEST_CASE(rooms_differ_in_verdict) {
  for (const auto rules : {roomRules(), gearRules()}) {
    for (const Rule& rule : rules) {
      int holds = 0;
      int fails = 0;
      for (unsigned seed = 1; seed <= 25; ++seed) {
        const Verdict verdict = randomRoom(seed)->use(rule, 5.0 + 0.2 * seed).verdict;
        holds += verdict <= Verdict::tight ? 1 : 0;
        fails += verdict == Verdict::fails ? 1 : 0;
      }
      BOOST_TEST_MESSAGE(rule.id << ": " << holds << " hold, " << fails << " fail");
      BOOST_TEST(holds > 0, rule.id);
    }
  }
}

BOOST_AUTO_TEST_CASE(dropping_a_figure_never_makes_a_rule_hold) {
  overAll(drops(),
          [](unsigned seed, const Change& change, const Rule& rule, const Use& before, const Use& after) {
            BOOST_TEST((before.verdict <= Verdict::tight || after.verdict > Verdict::tight),
                       rule.id << " without " << change.name << ", room " << seed << ": " << before.verdict
                               << " became " << after.verdict);
          });
}

BOOST_AUTO_TEST_CASE(a_worse_figure_never_improves_a_verdict) {
  overAll(worsenings(),
          [](unsigned seed, const Change& change, const Rule& rule, const Use& before, const Use& after) {
            BOOST_TEST(after.verdict >= before.verdict, rule.id << " with worse " << change.name << ", room "
                                                                << seed << ": " << before.verdict
                                                                << " became " << after.verdict);
          });
}

BOOST_AUTO_TEST_SUITE_END()
