// SPDX-License-Identifier: GPL-3.0-or-later
#include "actions/fleet_work.h"

#include <algorithm>

#include "quantity/error.h"
#include "store/cabling_store.h"
#include "store/calendar_store.h"
#include "store/catalogue_store.h"
#include "store/choice_store.h"
#include "store/fleet_store.h"
#include "store/warehouse_store.h"

namespace hangbook::actions {
namespace {

using fleet::Movement;
using fleet::Unit;
using fleet::UnitState;

Unit mustKnow(store::Store& store, const QString& serial) {
  std::optional<Unit> unit = store::loadUnit(store, serial);
  if (!unit) {
    throw Error(Trouble::badInput, "no unit has the serial \"" + serial.toStdString() + '"');
  }
  return std::move(*unit);
}

bool isKeptBack(const Unit& unit) {
  return unit.state == UnitState::quarantined || unit.state == UnitState::inRepair ||
         unit.state == UnitState::writtenOff;
}

/// Where it is, in another state.
void putInto(store::Store& store, const Unit& unit, UnitState state, const QString& place,
             const QString& reason, const QString& who) {
  Movement movement;
  movement.serial = unit.serial;
  movement.act = fleet::Act::state;
  movement.toPlace = place.isEmpty() ? unit.place : place;
  movement.toState = state;
  if (movement.toPlace == unit.place) {
    movement.toCart = unit.cart;
    movement.cartPosition = unit.cartPosition;
  }
  movement.reason = reason;
  movement.by = who;
  const std::optional<Movement> last = store::loadLastMovement(store, unit.serial);
  const QDateTime now = QDateTime::currentDateTimeUtc();
  movement.happenedAt = last ? std::max(now, last->happenedAt) : now;
  store::append(store, movement);
}

void keepFiles(store::Store& store, const QString& serial, const QUuid& examination,
               const std::vector<File>& files, const QString& who) {
  for (const File& file : files) {
    fleet::UnitDocument document;
    document.serial = serial;
    document.examination = examination;
    document.fileName = file.name;
    document.kind = file.kind;
    document.by = who;
    store::append(store, document, file.bytes);
  }
}

/// The shows are looked for before the unit is taken out of stock, so that the one it is out with is still
/// known.
void quarantine(store::Store& store, const Unit& unit, const QString& reason, QDate today, const QString& who,
                Recorded& recorded) {
  recorded.shows = showsCountingOn(store, unit, today);
  if (!isKeptBack(unit)) {
    putInto(store, unit, UnitState::quarantined, {}, reason, who);
    recorded.quarantined = true;
    const std::vector<options::Shortage> lacks =
        options::shortagesOf(loadStock(store), loadDemands(store, today));
    for (CountedOn& show : recorded.shows) {
      for (const options::Shortage& lack : lacks) {
        if (lack.tour == show.tour && lack.show == show.show && lack.kind == unit.kind &&
            lack.type == unit.type) {
          show.lacking = lack.lacking;
        }
      }
    }
  }
}

} // namespace

options::Stock loadStock(store::Store& store) {
  return store.reading([&] {
    return options::Stock{store::loadUnits(store), store::loadExaminationRules(store),
                          store::loadNewestExaminations(store), store::loadHappened(store)};
  });
}

options::Stock loadStockUnderRules(store::Store& store) {
  return store.reading([&] {
    store::UnderRules under = store::loadUnderRules(store);
    return options::Stock{std::move(under.units), store::loadExaminationRules(store),
                          std::move(under.examinations), store::loadHappened(store)};
  });
}

std::vector<options::Demand> loadDemands(store::Store& store, QDate today) {
  return store.reading([&] {
    const catalogue::Catalogue catalogue = store::loadCatalogue(store);
    const std::vector<calendar::Plug> plugs = store::loadCabling(store).plugs;
    std::vector<options::Demand> demands;
    for (const calendar::Show& show : store::loadShows(store)) {
      if (!show.awayTo.isValid() || show.awayTo >= today) {
        demands.push_back(
            options::demandOf(catalogue, show, store::loadChoices(store, show.tour, show.name), plugs));
      }
    }
    return demands;
  });
}

std::vector<CountedOn> showsCountingOn(store::Store& store, const Unit& unit, QDate today) {
  return store.reading([&] {
    const std::optional<Movement> last = store::loadLastMovement(store, unit.serial);
    std::vector<CountedOn> shows;
    for (const options::Demand& demand : loadDemands(store, today)) {
      const bool out =
          unit.state == UnitState::away && last && last->tour == demand.tour && last->show == demand.show;
      if (out || demand.numbers.contains({unit.kind, unit.type})) {
        shows.push_back({demand.tour, demand.show, demand.from, out, 0});
      }
    }
    std::ranges::stable_sort(shows, {}, &CountedOn::from);
    return shows;
  });
}

Recorded examine(store::Store& store, const fleet::Examination& examination, const std::vector<File>& files,
                 QDate today, const QString& by) {
  return withDeed(
      store, by, {"record examination", examination.serial, examination.rule}, [&](const QString& who) {
        const Unit unit = mustKnow(store, examination.serial);
        if (examination.date > today) {
          throw Error(Trouble::badInput, "an examination is recorded when it was made, not before");
        }
        const auto rules = store::loadExaminationRules(store);
        const auto rule = std::ranges::find(rules, examination.rule, &fleet::ExaminationRule::name);
        if (rule == rules.end() || rule->kind != unit.kind ||
            (!rule->type.isEmpty() && rule->type != unit.type)) {
          throw Error(Trouble::badInput, "the rule \"" + examination.rule.toStdString() +
                                             "\" is not for unit \"" + unit.serial.toStdString() + '"');
        }
        Recorded recorded;
        recorded.examination = examination;
        recorded.examination.by = who;
        recorded.examination = store::append(store, recorded.examination);
        keepFiles(store, unit.serial, recorded.examination.id, files, who);
        if (examination.result == fleet::ExaminationResult::fail) {
          quarantine(store, unit, QStringLiteral("failed its examination (%1)").arg(examination.rule), today,
                     who, recorded);
        }
        return recorded;
      });
}

Recorded recordOccurrence(store::Store& store, const fleet::Occurrence& occurrence,
                          const std::vector<File>& files, QDate today, const QString& by) {
  return withDeed(
      store, by, {"record occurrence", occurrence.serial, occurrence.remark}, [&](const QString& who) {
        const Unit unit = mustKnow(store, occurrence.serial);
        if (occurrence.date > today) {
          throw Error(Trouble::badInput,
                      "what happens to a unit is recorded when it has happened, not before");
        }
        Recorded recorded;
        recorded.occurrence = occurrence;
        recorded.occurrence.by = who;
        recorded.occurrence = store::append(store, recorded.occurrence);
        keepFiles(store, unit.serial, {}, files, who);
        if (occurrence.kind == fleet::OccurrenceKind::fault) {
          quarantine(store, unit, QStringLiteral("fault: %1").arg(occurrence.remark), today, who, recorded);
        }
        return recorded;
      });
}

Recorded setState(store::Store& store, const QString& serial, UnitState state, const QString& place,
                  const QString& reason, QDate today, const QString& by) {
  if (state == UnitState::away) {
    throw Error(Trouble::badInput, "a unit is booked out by a scan, so that it is known for which show");
  }
  if (reason.trimmed().isEmpty()) {
    throw Error(Trouble::badInput, "a change of state needs a reason");
  }
  return withDeed(store, by, {"set state", serial, reason}, [&](const QString& who) {
    const Unit unit = mustKnow(store, serial);
    if (unit.state == UnitState::writtenOff) {
      throw Error(Trouble::notPossible,
                  "unit \"" + serial.toStdString() + "\" is written off; correct that entry first");
    }
    Recorded recorded;
    if (state == UnitState::quarantined && !isKeptBack(unit)) {
      quarantine(store, unit, reason, today, who, recorded);
      return recorded;
    }
    if (state != UnitState::ready && !isKeptBack(unit)) {
      recorded.shows = showsCountingOn(store, unit, today);
    }
    putInto(store, unit, state, place, reason, who);
    return recorded;
  });
}

fleet::UnitDocument keepDocument(store::Store& store, const QString& serial, const File& file,
                                 const QString& by) {
  return withDeed(store, by, {"keep file", serial, file.name}, [&](const QString& who) {
    fleet::UnitDocument document;
    document.serial = serial;
    document.fileName = file.name;
    document.kind = file.kind;
    document.by = who;
    return store::append(store, document, file.bytes);
  });
}

fleet::NamedPlace savePlace(store::Store& store, const fleet::NamedPlace& place, const QString& by) {
  return withDeed(store, by, {"save place", place.name},
                  [&](const QString&) { return store::save(store, place); });
}

void removePlace(store::Store& store, const fleet::NamedPlace& place, const QString& by) {
  withDeed(store, by, {"remove place", place.name}, [&](const QString&) { store::remove(store, place); });
}

} // namespace hangbook::actions
