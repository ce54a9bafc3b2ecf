// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "actions/run.h"
#include "fleet/occurrence.h"
#include "fleet/place.h"
#include "fleet/unit.h"
#include "options/stock_day.h"

/// What is recorded at the bench: examinations with their certificates, what happened to a unit, its state.
namespace hangbook::actions {

/// A file that goes with a fact.
struct File {
  QString name;
  QByteArray bytes;
  fleet::DocumentKind kind = fleet::DocumentKind::certificate;
};

/// A show to come that counted on a unit which is no longer fit.
struct CountedOn {
  QString tour;
  QString show;
  QDate from;          ///< first day away; null: not stated
  bool wasOut = false; ///< this very unit is out with it
  int lacking = 0;     ///< units of its type that the show lacks now; 0: others can stand in
};

struct Recorded {
  fleet::Examination examination; ///< as stored; of `examine`
  fleet::Occurrence occurrence;   ///< as stored; of `recordOccurrence`
  bool quarantined = false;       ///< by this fact
  std::vector<CountedOn> shows; ///< that counted on it, where it is quarantined or kept back; in order of day
};

/// An examination with its files. One that is not passed quarantines the unit at once. `today` tells which
/// shows are still to come.
Recorded examine(store::Store& store, const fleet::Examination& examination, const std::vector<File>& files,
                 QDate today, const QString& by = {});

/// Something happened to a unit. A fault quarantines it at once.
Recorded recordOccurrence(store::Store& store, const fleet::Occurrence& occurrence,
                          const std::vector<File>& files, QDate today, const QString& by = {});

/// Sets a unit's state, with a reason: released from quarantine, sent to repair, written off. `place` empty =
/// where it is. A unit is not made `away` so: that is what a scan is for. Throws Error.
Recorded setState(store::Store& store, const QString& serial, fleet::UnitState state, const QString& place,
                  const QString& reason, QDate today, const QString& by = {});

/// A file for a unit, such as a photograph.
fleet::UnitDocument keepDocument(store::Store& store, const QString& serial, const File& file,
                                 const QString& by = {});

fleet::NamedPlace savePlace(store::Store& store, const fleet::NamedPlace& place, const QString& by = {});
void removePlace(store::Store& store, const fleet::NamedPlace& place, const QString& by = {});

/// Shows from `today` on whose chosen options take a unit of this type, or that it is out with.
std::vector<CountedOn> showsCountingOn(store::Store& store, const fleet::Unit& unit, QDate today);

/// What the fleet is made of, and what each show from `today` on takes, read together.
options::Stock loadStock(store::Store& store);
/// As much of it as decides what is due: units that no rule speaks of are left out.
options::Stock loadStockUnderRules(store::Store& store);
std::vector<options::Demand> loadDemands(store::Store& store, QDate today);

} // namespace hangbook::actions
