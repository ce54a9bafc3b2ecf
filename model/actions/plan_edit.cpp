// SPDX-License-Identifier: GPL-3.0-or-later
#include "actions/plan_edit.h"

#include <algorithm>

#include "actions/choose.h"
#include "actions/edit_venue.h"
#include "actions/facts.h"
#include "actions/house_rules.h"
#include "options/search.h"
#include "quantity/error.h"
#include "store/choice_store.h"
#include "store/fleet_store.h"
#include "store/snapshot_store.h"
#include "store/venue_store.h"

namespace hangbook::actions {
namespace {

ChosenFor now(store::Store& store, const ChosenFor& part) {
  ChosenFor stands{part.tour, part.show, part.hang};
  for (options::Choice& each : store::loadChoices(store, part.tour, part.show)) {
    if (each.hang == part.hang) {
      stands.choice = std::move(each);
    }
  }
  return stands;
}

StatedFor now(store::Store& store, const StatedFor& part) {
  return {part.site, part.figure, statementsOf(store, part.site, part.figure)};
}

VenueAs now(store::Store& store, const VenueAs& part) {
  return {part.name, store::loadVenue(store, part.name)};
}

RecordAs now(store::Store& store, const RecordAs& part) {
  return recordNow(store, part.record);
}

PluggedFor now(store::Store& store, const PluggedFor& part) {
  return pluggedNow(store, part.hang);
}

ImportedAs now(store::Store& store, const ImportedAs& part) {
  return importedNow(store, part);
}

UnitAt now(store::Store& store, const UnitAt& part) {
  const auto unit = store::loadUnit(store, part.serial);
  return unit ? UnitAt{part.serial, unit->place, unit->state, unit->cart, unit->cartPosition}
              : UnitAt{part.serial};
}

HungFor now(store::Store& store, const HungFor& part) {
  return hungNow(store, part);
}

SwappedFor now(store::Store& store, const SwappedFor& part) {
  SwappedFor stands{now(store, part.dead), now(store, part.stand), {}};
  for (const ChosenFor& each : part.hangs) {
    stands.hangs.push_back(now(store, each));
  }
  if (part.hung) {
    stands.hung = hungNow(store, *part.hung);
  }
  return stands;
}

bool same(const RecordAs& a, const RecordAs& b) {
  return a.texts == b.texts;
}

bool same(const PluggedFor& a, const PluggedFor& b) {
  return a.rows == b.rows;
}

bool same(const ImportedAs& a, const ImportedAs& b) {
  return whatDiffers(a, b).isEmpty();
}

bool same(const ChosenFor& a, const ChosenFor& b) {
  if (!a.choice || !b.choice) {
    return a.choice.has_value() == b.choice.has_value();
  }
  const options::Setting& one = a.choice->setting;
  const options::Setting& other = b.choice->setting;
  return a.choice->option == b.choice->option && one.tiltDeg == other.tiltDeg && one.panDeg == other.panDeg &&
         one.trimM == other.trimM && one.mark == other.mark && one.holesDeg == other.holesDeg;
}

bool same(const StatedFor& a, const StatedFor& b) {
  return a.statements == b.statements;
}

bool same(const VenueAs& a, const VenueAs& b) {
  if (!a.venue || !b.venue) {
    return a.venue.has_value() == b.venue.has_value();
  }
  venue::Venue other = *b.venue; // house rules are edits of their own
  other.revision = a.venue->revision;
  other.house = a.venue->house;
  return *a.venue == other;
}

bool same(const HungFor& a, const HungFor& b) {
  return a == b;
}

bool same(const SwappedFor& a, const SwappedFor& b) {
  return a.dead == b.dead && a.stand == b.stand && a.hung == b.hung &&
         std::equal(a.hangs.begin(), a.hangs.end(), b.hangs.begin(), b.hangs.end(),
                    [](const ChosenFor& one, const ChosenFor& other) { return same(one, other); });
}

void put(store::Store& store, const ChosenFor& wanted, const QString& by, const QDate& today) {
  if (!wanted.choice) {
    if (const auto stands = now(store, wanted).choice) {
      withdrawChoice(store, *stands, QStringLiteral("undone"), by);
    }
    return;
  }
  const options::Snapshot snapshot = store::loadSnapshot(store, wanted.tour, wanted.show, today);
  const options::Option option = options::judge(snapshot, wanted.choice->key, wanted.choice->setting);
  chooseOption(store, choiceOf(snapshot, option, wanted.choice->reason), by);
}

void put(store::Store& store, const HungFor& wanted, const QString& by, const QDate& /*today*/) {
  recordHung(store, wanted, by);
}

void put(store::Store& store, const SwappedFor& wanted, const QString& by, const QDate& today) {
  for (const UnitAt& each : {wanted.dead, wanted.stand}) {
    fleet::Movement back;
    back.serial = each.serial;
    back.toPlace = each.place;
    back.toState = each.state;
    back.toCart = each.cart;
    back.cartPosition = each.cartPosition;
    back.reason =
        QStringLiteral("swap of %1 for %2 turned back").arg(wanted.dead.serial, wanted.stand.serial);
    recordMovement(store, back, by);
  }
  if (wanted.hung) {
    recordHung(store, *wanted.hung, by);
  }
  for (const ChosenFor& each : wanted.hangs) {
    put(store, each, by, today);
  }
}

void put(store::Store& store, const StatedFor& wanted, const QString& by, const QDate& /*today*/) {
  restoreStatements(store, wanted.site, wanted.figure, wanted.statements, by);
}

void put(store::Store& store, const VenueAs& wanted, const QString& by, const QDate& today) {
  const auto stands = store::loadVenue(store, wanted.name);
  if (!stands || !wanted.venue) {
    throw Error(Trouble::notPossible, "the venue is not in the store any more", wanted.name.toStdString());
  }
  venue::Venue venue = *wanted.venue;
  venue.revision = stands->revision;
  venue.house = stands->house;
  editVenue(store, venue, by, today);
}

void put(store::Store& store, const RecordAs& wanted, const QString& by, const QDate& /*today*/) {
  if (wanted.texts.none()) {
    removeRecord(store, wanted.record, by);
    return;
  }
  saveRecord(store, wanted, by);
}

void put(store::Store& store, const PluggedFor& wanted, const QString& by, const QDate& /*today*/) {
  savePlugs(store, wanted, by);
}

void put(store::Store& store, const ImportedAs& wanted, const QString& by, const QDate& /*today*/) {
  restoreImported(store, wanted, by);
}

/// Which of its records are other than they were left; empty where one part is one record.
QString whichDiffer(const PlanPart& a, const PlanPart& b) {
  const auto* one = std::get_if<ImportedAs>(&a);
  const auto* other = std::get_if<ImportedAs>(&b);
  return one != nullptr && other != nullptr ? whatDiffers(*one, *other).join(QStringLiteral(", "))
                                            : QString();
}

} // namespace

PlanPart asItStands(store::Store& store, const PlanPart& part) {
  return std::visit([&store](const auto& each) -> PlanPart { return now(store, each); }, part);
}

bool sameAs(const PlanPart& a, const PlanPart& b) {
  return a.index() == b.index() &&
         std::visit([&b](const auto& each) { return same(each, std::get<std::decay_t<decltype(each)>>(b)); },
                    a);
}

std::optional<PlanEdit> noted(store::Store& store, const PlanPart& part, const QString& by,
                              const std::function<void()>& work) {
  return store.transact([&]() -> std::optional<PlanEdit> {
    PlanEdit edit{asItStands(store, part), {}, by};
    work();
    edit.after = asItStands(store, part);
    return sameAs(edit.before, edit.after) ? std::nullopt : std::optional(std::move(edit));
  });
}

PlanEdit undo(store::Store& store, const PlanEdit& edit, const QDate& today) {
  return store.transact([&] {
    PlanEdit back{asItStands(store, edit.after), {}, edit.by};
    if (!sameAs(back.before, edit.after)) {
      throw Error(Trouble::notPossible, "it has been changed again since, here or by somebody else",
                  whichDiffer(back.before, edit.after).toStdString());
    }
    std::visit([&](const auto& wanted) { put(store, wanted, edit.by, today); }, edit.before);
    back.after = asItStands(store, edit.before);
    return back;
  });
}

void PlanEdits::add(PlanEdit edit) {
  constexpr std::size_t most = 200;
  undone_.clear();
  done_.push_back(std::move(edit));
  if (done_.size() > most) {
    done_.erase(done_.begin());
  }
}

void PlanEdits::move(store::Store& store, const QDate& today, std::vector<PlanEdit>& from,
                     std::vector<PlanEdit>& to) {
  if (from.empty()) {
    throw Error(Trouble::notPossible, "there is no edit left to go back behind");
  }
  try {
    to.push_back(actions::undo(store, from.back(), today));
    from.pop_back();
  } catch (const Error& error) {
    if (error.trouble() == Trouble::notPossible || error.trouble() == Trouble::badInput) {
      from.pop_back();
    }
    throw;
  }
}

} // namespace hangbook::actions
