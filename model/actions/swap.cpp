// SPDX-License-Identifier: GPL-3.0-or-later
#include "actions/swap.h"

#include <algorithm>

#include "actions/choose.h"
#include "actions/facts.h"
#include "actions/fleet_work.h"
#include "actions/hung.h"
#include "options/freeze.h"
#include "options/search.h"
#include "quantity/error.h"
#include "store/calendar_store.h"
#include "store/fleet_store.h"
#include "store/hung_store.h"
#include "store/snapshot_store.h"

namespace hangbook::actions {
namespace {

fleet::Unit unitNamed(store::Store& store, const QString& serial) {
  const auto unit = store::loadUnit(store, serial);
  if (!unit) {
    throw Error(Trouble::badInput, "there is no unit \"" + serial.toStdString() + "\"");
  }
  return *unit;
}

calendar::Show showNamed(store::Store& store, const SwapWish& wish) {
  const auto show = store::loadShow(store, wish.tour, wish.show);
  if (!show) {
    throw Error(Trouble::badInput, "there is no show \"" + wish.show.toStdString() + "\"");
  }
  return *show;
}

std::optional<fleet::Examination> newestOf(const std::vector<fleet::Examination>& examinations) {
  const auto newest = std::ranges::max_element(examinations, {}, &fleet::Examination::date);
  return newest == examinations.end() ? std::nullopt : std::optional(*newest);
}

/// The fleet as it would be: the dead one kept back, the other one out with the show.
options::Snapshot swapped(options::Snapshot snapshot, const fleet::Unit& dead, const fleet::Unit& stand) {
  for (fleet::Unit& unit : snapshot.units) {
    if (unit.serial == dead.serial) {
      unit.state = fleet::UnitState::quarantined;
    } else if (unit.serial == stand.serial) {
      unit.place = dead.place;
      unit.state = dead.state == fleet::UnitState::away ? fleet::UnitState::away : unit.state;
    }
  }
  return snapshot;
}

void moveIn(store::Store& store, const Swap& swap, const QString& reason, const QString& by) {
  fleet::Movement movement;
  movement.serial = swap.stand.serial;
  movement.toPlace = swap.dead.place;
  movement.toState = swap.dead.state == fleet::UnitState::away ? fleet::UnitState::away : swap.stand.state;
  movement.toCart = swap.dead.cart;
  movement.cartPosition = swap.dead.cartPosition;
  movement.reason = reason;
  recordMovement(store, movement, by);
}

} // namespace

bool takes(const catalogue::Catalogue& catalogue, const options::OptionKey& key, const fleet::Unit& unit) {
  switch (unit.kind) {
  case fleet::UnitKind::cabinet:
    return key.stack.contains(unit.type);
  case fleet::UnitKind::bar:
    return key.bar == unit.type;
  case fleet::UnitKind::hoist:
    return key.hoist == unit.type;
  case fleet::UnitKind::chain: {
    const auto* table = catalogue::find(catalogue.tables, key.table);
    return table != nullptr && table->chain == unit.type;
  }
  default:
    return false;
  }
}

std::vector<StandIn> standInsFor(store::Store& store, const calendar::Show& show, const fleet::Unit& dead) {
  std::vector<StandIn> found;
  for (const fleet::Unit& unit : store::loadUnits(store)) {
    if (unit.kind == dead.kind && unit.type == dead.type && unit.serial != dead.serial &&
        unit.state == fleet::UnitState::ready) {
      found.push_back(
          {unit, isUsable(store, unit, show), newestOf(store::loadExaminations(store, unit.serial))});
    }
  }
  std::ranges::stable_sort(found, [](const StandIn& one, const StandIn& other) {
    return std::pair(!one.usable.yes, one.unit.serial) < std::pair(!other.usable.yes, other.unit.serial);
  });
  return found;
}

Swap trySwap(store::Store& store, const SwapWish& wish) {
  return store.reading([&] {
    const calendar::Show show = showNamed(store, wish);
    Swap swap{unitNamed(store, wish.dead), unitNamed(store, wish.stand), {}, {}};
    if (swap.dead.serial == swap.stand.serial || swap.dead.kind != swap.stand.kind ||
        swap.dead.type != swap.stand.type) {
      throw Error(Trouble::badInput, "\"" + wish.stand.toStdString() + "\" is no other unit of the type " +
                                         swap.dead.type.toStdString());
    }
    const Usable usable = isUsable(store, swap.stand, show);
    if (!usable.yes || swap.stand.state != fleet::UnitState::ready) {
      throw Error(Trouble::notPossible, "\"" + wish.stand.toStdString() + "\" cannot take its place: " +
                                            (usable.yes ? "it is not ready" : usable.why.toStdString()));
    }
    swap.unproven = usable.why;
    for (const calendar::Hung& each : store::loadHung(store, wish.tour, wish.show)) {
      if (each.serial == swap.dead.serial) {
        swap.place = each;
      } else if (each.serial == swap.stand.serial) {
        throw Error(Trouble::notPossible, "\"" + wish.stand.toStdString() +
                                              "\" cannot take its place: it hangs in hang " +
                                              each.hang.toStdString() + " itself");
      }
    }
    const options::Snapshot before = store::loadSnapshot(store, wish.tour, wish.show, wish.today);
    const options::Snapshot after = swapped(before, swap.dead, swap.stand);
    for (const options::Choice& choice : before.choices) {
      if (takes(before.catalogue, choice.key, swap.dead)) {
        options::Option signedOne = options::thaw(choice.frozen);
        signedOne.setting = choice.setting;
        swap.hangs.push_back(
            {choice, std::move(signedOne), options::judge(after, choice.key, choice.setting)});
      }
    }
    return swap;
  });
}

Swap swapUnit(store::Store& store, const SwapWish& wish, const QString& reason, const QString& by) {
  if (reason.trimmed().isEmpty()) {
    throw Error(Trouble::badInput, "what is wrong with the unit must be said", "reason");
  }
  return run(store, [&] {
    Swap swap = trySwap(store, wish);
    const QString why = QStringLiteral("%1 swapped for %2: %3").arg(wish.dead, wish.stand, reason.trimmed());
    moveIn(store, swap, why, by);
    putInPlaceOf(store, wish.tour, wish.show, wish.dead, wish.stand, by);
    setState(store, wish.dead, fleet::UnitState::quarantined, {}, why, wish.today, by);
    for (SwappedHang& hang : swap.hangs) {
      const options::Snapshot now = store::loadSnapshot(store, wish.tour, wish.show, wish.today);
      hang.after = options::judge(now, hang.standing.key, hang.standing.setting);
      chooseOption(store, choiceOf(now, hang.after, why), by);
    }
    return swap;
  });
}

} // namespace hangbook::actions
