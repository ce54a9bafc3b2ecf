// SPDX-License-Identifier: GPL-3.0-or-later
// What chosen options take out of the fleet, which units hang where, and what a scale makes of their masses,
// of records no two of which are alike; against what was kept.
#include <boost/test/unit_test.hpp>

#include <cmath>

#include "kept/kept.h"
#include "kept/unlike_show.h"
#include "options/cart_plan.h"
#include "options/demand.h"
#include "options/doubts.h"
#include "options/hung_places.h"
#include "options/stacks.h"

using namespace hangbook;
using namespace hangbook::options;
using namespace hangbook::testing;

namespace {

void word(Line& line, const QString& text) {
  line.word(text.toStdString());
}

template <class List>
const auto& oneOf(const List& list, Chance& by) {
  return list[static_cast<std::size_t>(by.oneOf(static_cast<int>(list.size())))];
}

OptionKey someKey(const Snapshot& show, const QString& hang, Chance& by) {
  const catalogue::StackingTable& table = show.catalogue.tables.front();
  const auto stacks = stacksOf(show.catalogue, table);
  OptionKey key;
  key.hang = hang;
  key.table = by.oneIn(8) ? QStringLiteral("none") : table.name;
  key.stack = stacks.empty() ? QStringList() : oneOf(stacks, by).types();
  key.bar = show.catalogue.bars.front().name;
  key.hoist = show.catalogue.hoists.front().name;
  key.picks = static_cast<catalogue::Picks>(by.oneOf(3));
  key.points = key.picks == catalogue::Picks::single
                   ? QStringList{QStringLiteral("L1")}
                   : QStringList{QStringLiteral("L1"), QStringLiteral("L2")};
  return key;
}

void demanded(Line& line, const Snapshot& show, Chance& by) {
  std::vector<Choice> choices;
  std::vector<calendar::Plug> plugs;
  for (int number = 0; number < 9; ++number) {
    Choice choice;
    choice.tour = by.oneIn(5) ? QStringLiteral("other tour") : show.show.tour;
    choice.show = by.oneIn(5) ? QStringLiteral("other show") : show.show.name;
    choice.hang = oneOf(show.show.hangs, by).name;
    choice.revision = 1 + by.oneOf(4);
    choice.key = someKey(show, choice.hang, by);
    if (by.oneIn(2)) {
      choice.setting.mark = 3;
    }
    for (int plug = 0; plug < 6; ++plug) {
      calendar::Plug made;
      made.tour = by.oneIn(6) ? QStringLiteral("other tour") : choice.tour;
      made.show = by.oneIn(6) ? QStringLiteral("other show") : choice.show;
      made.hang = by.oneIn(6) ? QStringLiteral("other hang") : choice.hang;
      made.element = by.oneOf(6);
      made.cabinet = oneOf(show.catalogue.cabinets, by).name;
      made.loom = QStringLiteral("loom %1").arg(by.oneOf(2));
      made.label = QStringLiteral("label %1").arg(by.oneOf(3));
      plugs.push_back(made);
    }
    choices.push_back(choice);
  }
  const Demand demand = demandOf(show.catalogue, show.show, choices, plugs);
  word(line, demand.open.join(u' ') + demand.tour + demand.show);
  for (const auto& [what, number] : demand.numbers) {
    line.number(static_cast<int>(what.first));
    word(line, what.second);
    line.number(number);
  }
}

void hung(Line& line, const Snapshot& show, Chance& by) {
  const OptionKey key = someKey(show, show.show.hangs.front().name, by);
  calendar::HungSerials serials;
  std::map<QString, QString> elsewhere;
  for (int element = 0; element < 7; ++element) {
    if (!by.oneIn(3)) {
      const fleet::Unit& unit = oneOf(show.units, by);
      serials[element] = by.oneIn(9) ? QStringLiteral("nobody") : unit.serial;
      if (by.oneIn(5)) {
        elsewhere[unit.serial] = QStringLiteral("hangs elsewhere");
      }
    }
  }
  const HungHang hang = hungOf(show, key, serials, elsewhere);
  line.number(hang.recorded);
  line.number(hang.massKg);
  line.number(hang.countedKg);
  for (const HungPlace& each : hang.places) {
    word(line, placeOf(each) + each.type + each.serial + each.basis + each.trouble);
    line.number(each.massKg);
  }
}

/// Of one to three hangs, whose cabinets share what carts are left with room.
void onCarts(Line& line, Snapshot show, Chance& by) {
  for (catalogue::CartType& cart : show.catalogue.carts) {
    cart.most = by.oneIn(9) ? std::nullopt : std::optional(by.oneOf(5));
  }
  std::vector<HangStack> hangs;
  for (int number = by.oneOf(3); number >= 0; --number) {
    QStringList stack;
    for (int place = 3 + by.oneOf(8); place > 0; --place) {
      stack += by.oneIn(20) ? QStringLiteral("none") : oneOf(show.catalogue.cabinets, by).name;
    }
    hangs.push_back({QStringLiteral("hang %1").arg(number), stack});
  }
  for (const PlannedCart& cart : planCarts(show.catalogue, hangs)) {
    word(line, cart.cart + cart.cabinet + cart.hangs.join(u'+'));
    line.number(cart.number);
    line.number(cart.gross ? std::optional(inKilograms(*cart.gross)) : std::nullopt);
    line.number(cart.floor ? std::optional(inMetres(*cart.floor)) : std::nullopt);
  }
}

void add(Line& line, const KnownMass& known) {
  line.number(known.stated);
  line.number(known.lighter);
  line.number(known.heavier);
  word(line, known.source + known.weighed);
}

/// Some units weighed, or all; lighter or heavier than stated, in every state, some as batches.
void weighed(Snapshot& show, Chance& by) {
  const bool all = by.oneIn(3);
  for (fleet::Unit& unit : show.units) {
    if (unit.kind == fleet::UnitKind::cabinet || unit.kind == fleet::UnitKind::bar) {
      unit.weighed = all || by.oneIn(3) ? std::optional(kilograms(by.between(30, 140))) : std::nullopt;
      unit.weighedOn = by.oneIn(3) ? QDate() : QDate(2026, 2, 1 + by.oneOf(20));
      unit.weighedBy = by.oneIn(3) ? QString() : QStringLiteral("Orla");
      unit.state = by.oneIn(4) ? static_cast<fleet::UnitState>(by.oneOf(4)) : unit.state;
      if (by.oneIn(6)) {
        unit.owner = QStringLiteral("hired");
        unit.hiredUntil = by.oneIn(3) ? QDate() : show.show.from.addDays(by.oneOf(5) - 2);
      }
    }
  }
}

} // namespace

BOOST_AUTO_TEST_SUITE(kept)

BOOST_AUTO_TEST_CASE(what_the_fleet_gives_comes_out_as_kept) {
  std::vector<Line> lines;
  for (std::uint64_t seed = 1200; seed < 1290; ++seed) {
    Chance by(seed);
    Snapshot show = unlikeShow(seed);
    show.show.from = QDate(2027, 4, 2);
    weighed(show, by);
    const std::string name = "fleet " + std::to_string(seed);
    Line taken(name + " taken");
    demanded(taken, show, by);
    lines.push_back(taken);
    Line places(name + " hung");
    hung(places, show, by);
    lines.push_back(places);
    if (seed % 5 == 0) { // how far a scale may be off cannot be read
      show.show.house.push_back(
          {QStringLiteral("scale-doubt"), std::nan(""), {}, {}, QStringLiteral("Edda"), QDate(2026, 12, 1)});
    }
    const House house(show.tour.house, show.venue.house, show.show.house);
    Line masses(name + " masses");
    for (const catalogue::CabinetType& type : show.catalogue.cabinets) {
      add(masses, massOfType(show, house, type));
    }
    catalogue::BarType bar = show.catalogue.bars.front();
    for (const bool head : {true, false}) {
      bar.headMass = head ? bar.headMass : std::nullopt;
      const KnownBar known = massesOfBar(show, house, bar);
      add(masses, known.frame);
      add(masses, known.head);
      add(masses, known.whole);
    }
    lines.push_back(masses);
    Line carts(name + " carts");
    onCarts(carts, show, by);
    lines.push_back(carts);
  }
  compareWithKept(lines, "fleet.txt");
}

BOOST_AUTO_TEST_SUITE_END()
