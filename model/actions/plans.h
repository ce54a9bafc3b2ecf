// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "actions/run.h"
#include "calendar/show.h"
#include "catalogue/catalogue.h"
#include "fleet/unit.h"
#include "people/person.h"
#include "venue/venue.h"

/// Editing plans: a record without id is new, one with id replaces the stored one of its revision. A stale
/// one throws store::StaleError, whose text shows both versions.
namespace hangbook::actions {

catalogue::CabinetType saveType(store::Store& store, const catalogue::CabinetType& type,
                                const QString& by = {});
catalogue::BarType saveType(store::Store& store, const catalogue::BarType& type, const QString& by = {});
catalogue::HoistType saveType(store::Store& store, const catalogue::HoistType& type, const QString& by = {});
catalogue::ChainType saveType(store::Store& store, const catalogue::ChainType& type, const QString& by = {});
catalogue::HardwareType saveType(store::Store& store, const catalogue::HardwareType& type,
                                 const QString& by = {});
catalogue::CartType saveType(store::Store& store, const catalogue::CartType& type, const QString& by = {});
catalogue::StackingTable saveTable(store::Store& store, const catalogue::StackingTable& table,
                                   const QString& by = {});
venue::Venue saveVenue(store::Store& store, const venue::Venue& venue, const QString& by = {});
calendar::Tour saveTour(store::Store& store, const calendar::Tour& tour, const QString& by = {});
calendar::Show saveShow(store::Store& store, const calendar::Show& show, const QString& by = {});
fleet::ExaminationRule saveRule(store::Store& store, const fleet::ExaminationRule& rule,
                                const QString& by = {});
/// A unit whose place, state or cart changed is moved by it; `reason` then stands with the movement.
fleet::Unit saveUnit(store::Store& store, const fleet::Unit& unit, const QString& reason,
                     const QString& by = {});
/// The first person of a store enters themselves: `by` may be empty while nobody is at the desk.
people::Person savePerson(store::Store& store, const people::Person& person, const QString& by = {});
/// Throws Error (badInput) where nobody of that name is known.
void setPersonAtDesk(store::Store& store, const QString& name);

void removeType(store::Store& store, const catalogue::CabinetType& type, const QString& by = {});
void removeType(store::Store& store, const catalogue::BarType& type, const QString& by = {});
void removeType(store::Store& store, const catalogue::HoistType& type, const QString& by = {});
void removeType(store::Store& store, const catalogue::ChainType& type, const QString& by = {});
void removeType(store::Store& store, const catalogue::HardwareType& type, const QString& by = {});
void removeType(store::Store& store, const catalogue::CartType& type, const QString& by = {});
void removeTable(store::Store& store, const catalogue::StackingTable& table, const QString& by = {});
void removeVenue(store::Store& store, const venue::Venue& venue, const QString& by = {});
void removeTour(store::Store& store, const calendar::Tour& tour, const QString& by = {});
void removeShow(store::Store& store, const calendar::Show& show, const QString& by = {});
void removeRule(store::Store& store, const fleet::ExaminationRule& rule, const QString& by = {});

} // namespace hangbook::actions
