// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/unit_test.hpp>

#include "options/hang_once.h"
#include "print.h"
#include "room_fixture.h"

using namespace hangbook;
using namespace hangbook::options;
using fleet::UnitKind;
using fleet::UnitState;
using hangbook::testing::Room;
using hangbook::testing::unitOf;

namespace {

/// What another show takes: this option's own stack.
Choice otherShow(const Room& room, const char* name, QDate from, QDate to) {
  Choice choice;
  choice.tour = QStringLiteral("Lanternfish Parade");
  choice.show = QString::fromUtf8(name);
  choice.hang = QStringLiteral("left");
  choice.key = room.option.key;
  choice.awayFrom = from;
  choice.awayTo = to;
  return choice;
}

fleet::Unit& firstOf(Room& room, UnitKind kind) {
  for (fleet::Unit& unit : room.snapshot.units) {
    if (unit.kind == kind) {
      return unit;
    }
  }
  throw std::logic_error("no such unit");
}

/// Verdict of a rule after a change.
template <class Change>
Verdict after(Room& room, const Rule& rule, Change change) {
  change(room);
  room.refresh();
  return room.use(rule).verdict;
}

} // namespace

BOOST_AUTO_TEST_SUITE(stock)

BOOST_AUTO_TEST_CASE(all_hangs_of_the_show_count) {
  Room room; // 4 of 6 hoists, 2 of 4 of each cabinet, 2 of 3 bars
  BOOST_TEST(room.use(stockRule).verdict == Verdict::holds);
  BOOST_TEST(room.use(stockRule).value == 2.0); // the bars are scarcest
  BOOST_TEST(room.use(stockRule).limit == 3.0);
  BOOST_TEST(room.finding(stockRule).text.contains("right like this one"));
  firstOf(room, UnitKind::bar).state = UnitState::quarantined;
  room.refresh();
  BOOST_TEST(room.use(stockRule).verdict == Verdict::tight);
  BOOST_TEST(after(room, stockRule, [](Room& r) { r.houseSays("spare-bars", 1); }) == Verdict::fails);
}

/// Whichever type is scarcest, it is named.
BOOST_AUTO_TEST_CASE(each_type_is_named_where_it_is_scarcest) {
  const Room whole;
  const std::vector<UnitNeed> needs = whole.option.gear->units;
  BOOST_TEST(needs.size() > 2U);
  for (const UnitNeed& need : needs) {
    Room room;
    for (fleet::Unit& unit : room.snapshot.units) {
      if (unit.kind == need.kind && unit.type == need.type) {
        unit.state = UnitState::quarantined;
      }
    }
    room.refresh();
    const Finding finding = room.finding(stockRule);
    BOOST_TEST(finding.verdict == Verdict::fails);
    BOOST_TEST(finding.text.startsWith(need.type + QStringLiteral(" (")), finding.text.toStdString());
  }
}

BOOST_AUTO_TEST_CASE(another_hang_counts_as_chosen) {
  Room room;
  Choice right = otherShow(room, "Harbour night", {}, {});
  right.hang = QStringLiteral("right");
  right.key.stack = QStringList(4, room.full().name);
  room.snapshot.choices = {right};
  room.refresh();
  const Finding finding = room.finding(stockRule); // 1 + 4 uppers, 4 there
  BOOST_TEST(finding.verdict == Verdict::fails);
  BOOST_TEST(finding.value.value() == 5.0);
  BOOST_TEST(finding.text.contains("right as chosen"), finding.text.toStdString());
  // What is chosen for another show, or another tour's of that name, is not this one's.
  for (const auto& [tour, show] :
       {std::pair("Lanternfish Parade", "another night"), std::pair("another tour", "Harbour night")}) {
    room.snapshot.choices = {right};
    room.snapshot.choices[0].tour = QString::fromUtf8(tour);
    room.snapshot.choices[0].show = QString::fromUtf8(show);
    room.refresh();
    BOOST_TEST(room.finding(stockRule).text.contains("right like this one"), show);
  }
}

/// A hang of the same name at another show, or of another tour's show of that name, is another one.
BOOST_AUTO_TEST_CASE(what_is_chosen_for_another_show_says_nothing_of_this_ones_hangs) {
  Room room;
  const auto told = [&room](const char* tour, const char* show, const char* hang) {
    Choice choice = otherShow(room, show, {}, {});
    choice.tour = QString::fromUtf8(tour);
    choice.hang = QString::fromUtf8(hang);
    room.snapshot.choices = {choice};
    room.refresh();
    return room.finding(stockRule).text;
  };
  BOOST_TEST(told("Lanternfish Parade", "Harbour night", "right").contains("right as chosen"));
  BOOST_TEST(told("Lanternfish Parade", "another night", "right").contains("right like this one"));
  BOOST_TEST(told("another tour", "Harbour night", "right").contains("right like this one"));
  BOOST_TEST(told("Lanternfish Parade", "Harbour night", "centre").contains("right like this one"));
}

BOOST_AUTO_TEST_CASE(units_out_of_use_or_due_back_do_not_count) {
  for (const UnitState state : {UnitState::quarantined, UnitState::inRepair, UnitState::writtenOff}) {
    Room room;
    firstOf(room, UnitKind::bar).state = state;
    room.refresh();
    BOOST_TEST(room.use(stockRule).limit == 2.0);
  }
  Room room;
  firstOf(room, UnitKind::bar).hiredUntil = QDate(2027, 4, 9); // the last day away
  room.refresh();
  BOOST_TEST(room.use(stockRule).limit == 3.0);
  firstOf(room, UnitKind::bar).hiredUntil = QDate(2027, 4, 8);
  room.refresh();
  BOOST_TEST(room.use(stockRule).limit == 2.0);
}

BOOST_AUTO_TEST_CASE(other_shows_take_theirs_on_their_days) {
  Room room;
  room.snapshot.otherChoices = {otherShow(room, "one", QDate(2027, 3, 20), QDate(2027, 3, 31))};
  room.refresh();
  BOOST_TEST(room.use(stockRule).limit == 3.0); // back the day before
  room.snapshot.otherChoices[0].awayTo = QDate(2027, 4, 1);
  room.refresh();
  BOOST_TEST(room.use(stockRule).limit == 2.0);
  // Two that do not overlap each other may share a unit; two that do may not.
  room.snapshot.otherChoices.push_back(otherShow(room, "two", QDate(2027, 4, 5), QDate(2027, 4, 6)));
  room.refresh();
  BOOST_TEST(room.use(stockRule).limit == 2.0);
  BOOST_TEST(room.use(stockRule).verdict == Verdict::tight);
  room.snapshot.otherChoices[1].awayFrom = QDate(2027, 4, 1);
  room.refresh();
  BOOST_TEST(room.use(stockRule).verdict == Verdict::fails);
  BOOST_TEST(room.use(stockRule).value == 4.0); // hoists: 6 less twice 2
  BOOST_TEST(room.use(stockRule).limit == 2.0);
  // An older revision of the same choice is no second one.
  room.snapshot.otherChoices[1] = room.snapshot.otherChoices[0];
  room.snapshot.otherChoices[1].revision = 1;
  room.refresh();
  BOOST_TEST(room.use(stockRule).limit == 2.0);
}

/// A show that leaves on our last day away needs its units that day.
BOOST_AUTO_TEST_CASE(a_show_that_starts_on_the_last_day_away_takes_its_own) {
  Room room; // away from 1 to 9 April
  room.snapshot.otherChoices = {otherShow(room, "one", QDate(2027, 4, 9), QDate(2027, 4, 12))};
  room.refresh();
  BOOST_TEST(room.use(stockRule).limit == 2.0);
  room.snapshot.otherChoices[0].awayFrom = QDate(2027, 4, 10);
  room.refresh();
  BOOST_TEST(room.use(stockRule).limit == 3.0);
}

BOOST_AUTO_TEST_CASE(out_and_back_on_one_day) {
  Room room;
  const auto verdict = [&](QDate back) {
    room.snapshot.show.awayTo = back;
    room.refresh();
    return room.use(stockRule).verdict;
  };
  const QDate out = room.snapshot.show.awayFrom;
  BOOST_TEST(verdict(out) == verdict(out.addDays(8)));
  BOOST_TEST(verdict(out) < Verdict::unproven);
  BOOST_TEST(verdict(out.addDays(-1)) == Verdict::unproven); // back before it is out: no days to go by
}

BOOST_AUTO_TEST_CASE(hardware_is_counted_where_the_house_says_so) {
  Room room;
  room.houseSays("hardware-by-serial", 1);
  room.refresh();
  const Finding finding = room.finding(stockRule);
  BOOST_TEST(finding.verdict == Verdict::fails);
  BOOST_TEST(finding.value.value() == 8.0); // two shackles a pick, two picks a hang, two hangs
  BOOST_TEST(finding.text.contains("shackle"));
}

BOOST_AUTO_TEST_CASE(without_days_it_is_unproven) {
  Room room;
  room.snapshot.show.awayTo = {};
  room.refresh();
  BOOST_TEST(room.use(stockRule).verdict == Verdict::unproven);
  BOOST_TEST(room.use(examinedRule).verdict == Verdict::unproven);
  BOOST_TEST(room.use(cartsRule).verdict == Verdict::unproven);
  Room empty;
  empty.snapshot.units.clear();
  empty.refresh();
  BOOST_TEST(empty.use(stockRule).verdict == Verdict::fails);
}

BOOST_AUTO_TEST_SUITE_END()

BOOST_AUTO_TEST_SUITE(examined)

BOOST_AUTO_TEST_CASE(until_the_last_day_away) {
  const auto with = [](QDate date) { // all bars last examined then
    Room room;
    for (fleet::Examination& each : room.snapshot.examinations) {
      if (each.rule == "yearly bar") {
        each.date = date;
      }
    }
    room.refresh();
    return room.use(examinedRule).verdict;
  };
  BOOST_TEST(with(QDate(2026, 5, 1)) == Verdict::holds);
  BOOST_TEST(with(QDate(2026, 4, 16)) == Verdict::holds); // to the last of the seven days beyond
  BOOST_TEST(with(QDate(2026, 4, 15)) == Verdict::tight);
  BOOST_TEST(with(QDate(2026, 4, 12)) == Verdict::tight); // three days longer than needed
  BOOST_TEST(with(QDate(2026, 4, 9)) == Verdict::tight);
  BOOST_TEST(with(QDate(2026, 4, 8)) == Verdict::fails); // due on the first days away, not the last
}

/// Four bars, two needed here and one by another show: what that takes is taken from those that stand for
/// the margin too.
BOOST_AUTO_TEST_CASE(another_show_takes_of_those_that_stand_longer) {
  const auto verdict = [](int soonDue) {
    Room room;
    const auto own = [&room](UnitKind kind, const QString& type, const char* serial) {
      room.snapshot.units.push_back(unitOf(QString::fromUtf8(serial), kind, type));
      fleet::Examination done;
      done.id = QUuid::createUuid();
      done.serial = room.snapshot.units.back().serial;
      done.rule = QStringLiteral("yearly ") + wordFor(kind);
      done.date = QDate(2026, 10, 1);
      room.snapshot.examinations.push_back(done);
    };
    own(UnitKind::bar, room.bar().name, "X1");
    for (const char* serial : {"X2", "X3", "X4"}) {
      own(UnitKind::hoist, room.hoist().name, serial);
    }
    for (fleet::Examination& each : room.snapshot.examinations) {
      if (each.rule == "yearly bar" && soonDue-- > 0) {
        each.date = QDate(2026, 4, 12); // stands through the days away, not for the margin beyond
      }
    }
    room.snapshot.otherChoices = {otherShow(room, "one", QDate(2027, 4, 1), QDate(2027, 4, 3))};
    room.refresh();
    return room.use(examinedRule).verdict;
  };
  BOOST_TEST(verdict(0) == Verdict::holds);
  BOOST_TEST(verdict(1) == Verdict::holds); // three less one for two
  BOOST_TEST(verdict(2) == Verdict::tight); // two less one for two
}

BOOST_AUTO_TEST_CASE(the_earliest_of_the_free_ones_is_named_wherever_it_stands) {
  for (const bool first : {true, false}) {
    Room room;
    std::vector<fleet::Examination*> bars;
    for (fleet::Examination& each : room.snapshot.examinations) {
      if (each.rule == "yearly bar") {
        each.date = QDate(2026, 8, 1);
        bars.push_back(&each);
      } else {
        each.date = QDate(2026, 9, 1);
      }
    }
    BOOST_TEST_REQUIRE(bars.size() > 1u);
    (first ? bars.front() : bars.back())->date =
        QDate(2026, 4, 10); // the type of which the fewest days are left
    room.refresh();
    const Finding finding = room.finding(examinedRule);
    BOOST_TEST(finding.text.contains("falls due on 2027-04-10"), finding.text.toStdString());
  }
}

/// A rule for one type of hoist is one for that type alone.
BOOST_AUTO_TEST_CASE(a_rule_for_another_type_is_none_for_this_one) {
  const auto with = [](const QString& type) {
    Room room;
    for (fleet::ExaminationRule& rule : room.snapshot.examinationRules) {
      rule.type = rule.kind == UnitKind::hoist ? type : QString();
    }
    room.refresh();
    return room.use(examinedRule).verdict;
  };
  BOOST_TEST(with(QString()) == Verdict::holds);
  BOOST_TEST(with(QStringLiteral("Saltmarsh hoist")) == Verdict::holds);
  BOOST_TEST(with(QStringLiteral("another hoist")) == Verdict::unproven);
}

BOOST_AUTO_TEST_CASE(the_worst_type_is_named) {
  Room room;
  for (fleet::Examination& each : room.snapshot.examinations) {
    if (each.rule == "yearly hoist") {
      each.result = fleet::ExaminationResult::fail;
    }
  }
  room.refresh();
  const Finding finding = room.finding(examinedRule);
  BOOST_TEST(finding.verdict == Verdict::fails);
  BOOST_TEST(finding.text.contains("Saltmarsh hoist (hoist): 4 needed; of 6 free ones 0"));
}

/// Of types that are as scarce the first is named, else the one that has fewest left over: examined less what
/// other shows take less what is needed.
BOOST_AUTO_TEST_CASE(the_scarcest_type_is_named) {
  const auto named = [](UnitNeed one, UnitNeed other) {
    Room room;
    auto gear = std::make_shared<GearNeeds>(*room.option.gear);
    for (UnitNeed* each : {&one, &other}) {
      each->ruled = true;
      each->examinedLonger = each->examined;
    }
    gear->units = {one, other};
    room.option.gear = gear;
    const Use use = room.use(examinedRule);
    BOOST_TEST(use.verdict == Verdict::holds);
    return use.which;
  };
  const auto need = [](int examined, int elsewhere, int needed) {
    UnitNeed made;
    made.kind = UnitKind::hoist;
    made.examined = examined;
    made.elsewhere = elsewhere;
    made.needed = needed;
    return made;
  };
  BOOST_TEST(named(need(3, 0, 2), need(5, 2, 2)) == 0); // one left over of each
  BOOST_TEST(named(need(5, 2, 2), need(4, 0, 2)) == 0); // one, two
  BOOST_TEST(named(need(4, 0, 2), need(5, 2, 2)) == 1);
  BOOST_TEST(named(need(6, 0, 5), need(4, 0, 1)) == 0); // one, three
  BOOST_TEST(named(need(4, 0, 1), need(6, 0, 5)) == 1);
}

BOOST_AUTO_TEST_CASE(a_kind_without_a_rule_is_unproven_unless_the_house_wants_none_for_cabinets) {
  Room room;
  room.snapshot.examinationRules.erase(room.snapshot.examinationRules.begin()); // cabinets
  BOOST_TEST(after(room, examinedRule, [](Room&) {}) == Verdict::unproven);
  BOOST_TEST(room.finding(examinedRule).text.contains("no rule"));
  BOOST_TEST(after(room, examinedRule, [](Room& r) { r.houseSays("examine-cabinets", 0); }) ==
             Verdict::holds);
  room.snapshot.examinationRules.clear(); // hoists and bars too: no house can waive those
  BOOST_TEST(after(room, examinedRule, [](Room&) {}) == Verdict::unproven);
}

BOOST_AUTO_TEST_CASE(never_examined_fails) {
  Room room;
  room.snapshot.examinations.clear();
  BOOST_TEST(after(room, examinedRule, [](Room&) {}) == Verdict::fails);
}

BOOST_AUTO_TEST_SUITE_END()

BOOST_AUTO_TEST_SUITE(carts)

BOOST_AUTO_TEST_CASE(an_odd_cabinet_a_side_shares_a_cart) {
  Room room; // one bass a side, two to a cart: one shared cart, of two
  const Finding finding = room.finding(cartsRule);
  BOOST_TEST(finding.verdict == Verdict::holds);
  BOOST_TEST(finding.value.value() == 1.0);
  BOOST_TEST(finding.text.contains("1 + 1"));
  BOOST_TEST(finding.text.contains("shared between the hangs"));
}

BOOST_AUTO_TEST_CASE(a_place_left_over_is_tight) {
  Room room;
  room.snapshot.show.hangs.resize(1);
  BOOST_TEST(after(room, cartsRule, [](Room&) {}) == Verdict::tight);
  BOOST_TEST(room.finding(cartsRule).text.contains("place left over"));
}

BOOST_AUTO_TEST_CASE(enough_carts_exactly_and_too_few) {
  Room room;
  firstOf(room, UnitKind::cart).state = UnitState::inRepair;
  BOOST_TEST(after(room, cartsRule, [](Room&) {}) == Verdict::tight);
  room.snapshot.otherChoices = {otherShow(room, "one", QDate(2027, 4, 1), QDate(2027, 4, 3))};
  BOOST_TEST(after(room, cartsRule, [](Room&) {}) == Verdict::fails);
}

/// Four to a cart. Of 6 and 4 two carts ride full and the third has the two that are left, of one hang; of 6
/// and 6 it has two of each.
BOOST_AUTO_TEST_CASE(a_cart_that_two_hangs_share_is_told) {
  const auto textOf = [](std::vector<int> cabinets, int needed, int shared) {
    Room room;
    CartNeed need;
    need.cabinet = room.bass().name;
    need.cabinets = std::move(cabinets);
    room.snapshot.catalogue.carts[0].most = 4;
    GearThere(room.snapshot, *room.house).count(need);
    BOOST_TEST(need.needed == needed);
    BOOST_TEST(need.shared == shared);
    auto gear = std::make_shared<GearNeeds>(*room.option.gear);
    gear->carts = {need};
    room.option.gear = gear;
    return room.finding(cartsRule).text;
  };
  BOOST_TEST(!textOf({6, 4}, 3, 0).contains(QStringLiteral("shared")));
  BOOST_TEST(textOf({6, 6}, 3, 1).contains(QStringLiteral(" Of these, shared between the hangs: 1.")));
  BOOST_TEST(!textOf({4, 4}, 2, 0).contains(QStringLiteral("place left over")));
  BOOST_TEST(textOf({6, 5}, 3, 1).contains(QStringLiteral("place left over")));
  BOOST_TEST(!textOf({5, 6}, 3, 1).contains(QStringLiteral("not stated")));
}

/// Another show's one bass takes one cart of two places.
BOOST_AUTO_TEST_CASE(another_shows_carts_are_counted_whole) {
  Room room;
  room.snapshot.otherChoices = {otherShow(room, "one", QDate(2027, 4, 1), QDate(2027, 4, 3))};
  CartNeed need;
  need.cabinet = room.bass().name;
  need.cabinets = {1, 1};
  GearThere(room.snapshot, *room.house).count(need);
  BOOST_TEST(need.most.value() == 2);
  BOOST_TEST(need.elsewhere == 1);
  BOOST_TEST(need.needed == 1);
}

/// Of types that are as scarce the first is named, else the one with the fewest carts left over.
BOOST_AUTO_TEST_CASE(the_scarcest_carts_are_named) {
  const auto named = [](CartNeed one, CartNeed other) {
    Room room;
    auto gear = std::make_shared<GearNeeds>(*room.option.gear);
    gear->carts = {one, other};
    room.option.gear = gear;
    const Use use = room.use(cartsRule);
    BOOST_TEST(use.verdict == Verdict::holds);
    return use.which;
  };
  const auto need = [](int free, int elsewhere, int needed) {
    CartNeed made;
    made.cart = QStringLiteral("cart");
    made.most = 2;
    made.free = free;
    made.elsewhere = elsewhere;
    made.needed = needed;
    return made;
  };
  BOOST_TEST(named(need(3, 0, 2), need(5, 2, 2)) == 0); // one left over of each
  BOOST_TEST(named(need(5, 2, 2), need(4, 0, 2)) == 0); // one, two
  BOOST_TEST(named(need(4, 0, 2), need(5, 2, 2)) == 1);
  BOOST_TEST(named(need(6, 0, 5), need(4, 0, 1)) == 0); // one, three
  BOOST_TEST(named(need(4, 0, 1), need(6, 0, 5)) == 1);
}

BOOST_AUTO_TEST_CASE(an_unknown_cart_is_unproven) {
  Room room;
  room.snapshot.catalogue.carts[0].most.reset();
  BOOST_TEST(after(room, cartsRule, [](Room&) {}) == Verdict::unproven);
  room.snapshot.catalogue.carts[0].most = 0; // nothing rides on it: as good as not stated
  BOOST_TEST(after(room, cartsRule, [](Room&) {}) == Verdict::unproven);
  room.snapshot.catalogue.carts.clear();
  BOOST_TEST(after(room, cartsRule, [](Room&) {}) == Verdict::unproven);
  BOOST_TEST(room.finding(cartsRule).text.contains("No type of cart"));
}

BOOST_AUTO_TEST_SUITE_END()

BOOST_AUTO_TEST_SUITE(same_chain)

BOOST_AUTO_TEST_CASE(a_chain_of_that_type_with_its_pitch) {
  Room room;
  BOOST_TEST(!room.finding(sameChainRule).applies);
  catalogue::ChainType chain;
  chain.name = QStringLiteral("link chain");
  chain.pitch = metres(0.0225);
  room.option.chain = &chain;
  BOOST_TEST(room.use(sameChainRule).verdict == Verdict::fails);
  room.snapshot.units.push_back(
      unitOf(QStringLiteral("C0"), UnitKind::chain, QStringLiteral("another chain")));
  room.snapshot.units.push_back(unitOf(QStringLiteral("C9"), UnitKind::hoist, chain.name));
  BOOST_TEST(room.use(sameChainRule).verdict == Verdict::fails);
  room.snapshot.units.push_back(unitOf(QStringLiteral("C1"), UnitKind::chain, chain.name));
  BOOST_TEST(room.use(sameChainRule).verdict == Verdict::holds);
  BOOST_TEST(room.finding(sameChainRule).text.contains("22.5 mm"));
  room.snapshot.units.back().state = UnitState::away;
  BOOST_TEST(room.use(sameChainRule).verdict == Verdict::holds);
  chain.pitch.reset();
  BOOST_TEST(room.use(sameChainRule).verdict == Verdict::unproven);
  room.snapshot.units.back().state = UnitState::quarantined;
  BOOST_TEST(room.use(sameChainRule).verdict == Verdict::fails);
}

BOOST_AUTO_TEST_SUITE_END()
