// SPDX-License-Identifier: GPL-3.0-or-later
#include "actions/plans.h"

#include "store/calendar_store.h"
#include "store/catalogue_store.h"
#include "store/fleet_store.h"
#include "store/people_store.h"
#include "store/venue_store.h"

namespace hangbook::actions {

namespace {

/// What the history says of a saved record: new, or which version it replaced.
template <class Record>
QString versionOf(const Record& record) {
  return record.id.isNull() ? QStringLiteral("new")
                            : QStringLiteral("follows version %1").arg(record.revision);
}

template <class Record>
Record saved(store::Store& store, const Record& record, const char* action, const QString& by) {
  return withDeed(store, by, {action, record.name, versionOf(record)},
                  [&](const QString&) { return store::save(store, record); });
}

template <class Record>
void removed(store::Store& store, const Record& record, const char* action, const QString& by) {
  withDeed(store, by, {action, record.name, QStringLiteral("was version %1").arg(record.revision)},
           [&](const QString&) { store::remove(store, record); });
}

} // namespace

catalogue::CabinetType saveType(store::Store& store, const catalogue::CabinetType& record,
                                const QString& by) {
  return saved(store, record, "save type", by);
}

catalogue::BarType saveType(store::Store& store, const catalogue::BarType& record, const QString& by) {
  return saved(store, record, "save type", by);
}

catalogue::HoistType saveType(store::Store& store, const catalogue::HoistType& record, const QString& by) {
  return saved(store, record, "save type", by);
}

catalogue::ChainType saveType(store::Store& store, const catalogue::ChainType& record, const QString& by) {
  return saved(store, record, "save type", by);
}

catalogue::HardwareType saveType(store::Store& store, const catalogue::HardwareType& record,
                                 const QString& by) {
  return saved(store, record, "save type", by);
}

catalogue::CartType saveType(store::Store& store, const catalogue::CartType& record, const QString& by) {
  return saved(store, record, "save type", by);
}

catalogue::StackingTable saveTable(store::Store& store, const catalogue::StackingTable& record,
                                   const QString& by) {
  return saved(store, record, "save stacking table", by);
}

venue::Venue saveVenue(store::Store& store, const venue::Venue& record, const QString& by) {
  return saved(store, record, "save venue", by);
}

calendar::Tour saveTour(store::Store& store, const calendar::Tour& record, const QString& by) {
  return saved(store, record, "save tour", by);
}

calendar::Show saveShow(store::Store& store, const calendar::Show& record, const QString& by) {
  return saved(store, record, "save show", by);
}

fleet::ExaminationRule saveRule(store::Store& store, const fleet::ExaminationRule& record,
                                const QString& by) {
  return saved(store, record, "save examination rule", by);
}

fleet::Unit saveUnit(store::Store& store, const fleet::Unit& unit, const QString& reason, const QString& by) {
  return withDeed(store, by, {"save unit", unit.serial, versionOf(unit)},
                  [&](const QString& who) { return store::save(store, unit, who, reason); });
}

people::Person savePerson(store::Store& store, const people::Person& person, const QString& by) {
  return store.transact([&] {
    const bool nobody = by.trimmed().isEmpty() && !store::personAtDesk(store);
    return saved(store, person, "save person", nobody ? person.name : by);
  });
}

void setPersonAtDesk(store::Store& store, const QString& name) {
  withDeed(store, name, {"at the desk", name}, [&](const QString&) { store::setPersonAtDesk(store, name); });
}

void removeType(store::Store& store, const catalogue::CabinetType& record, const QString& by) {
  removed(store, record, "remove type", by);
}

void removeType(store::Store& store, const catalogue::BarType& record, const QString& by) {
  removed(store, record, "remove type", by);
}

void removeType(store::Store& store, const catalogue::HoistType& record, const QString& by) {
  removed(store, record, "remove type", by);
}

void removeType(store::Store& store, const catalogue::ChainType& record, const QString& by) {
  removed(store, record, "remove type", by);
}

void removeType(store::Store& store, const catalogue::HardwareType& record, const QString& by) {
  removed(store, record, "remove type", by);
}

void removeType(store::Store& store, const catalogue::CartType& record, const QString& by) {
  removed(store, record, "remove type", by);
}

void removeTable(store::Store& store, const catalogue::StackingTable& record, const QString& by) {
  removed(store, record, "remove stacking table", by);
}

void removeVenue(store::Store& store, const venue::Venue& record, const QString& by) {
  removed(store, record, "remove venue", by);
}

void removeTour(store::Store& store, const calendar::Tour& record, const QString& by) {
  removed(store, record, "remove tour", by);
}

void removeShow(store::Store& store, const calendar::Show& record, const QString& by) {
  removed(store, record, "remove show", by);
}

void removeRule(store::Store& store, const fleet::ExaminationRule& record, const QString& by) {
  removed(store, record, "remove examination rule", by);
}

} // namespace hangbook::actions
