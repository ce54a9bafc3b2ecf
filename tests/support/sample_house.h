// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "store/calendar_store.h"
#include "store/catalogue_store.h"
#include "store/fleet_store.h"
#include "store/venue_store.h"
#include "support/fresh_store.h"
#include "support/sample_records.h"

namespace hangbook::testing {

/// Fills a store with makers' data, a venue, a tour with one show, and a unit with a rule.
inline void fill(store::Store& store) {
  using namespace store;
  save(store, sampleCabinet(QStringLiteral("Marram bass")));
  save(store, sampleCabinet(QStringLiteral("Marram downfill")));
  save(store, sampleBar(QStringLiteral("Heron bar")));
  save(store, sampleHoist());
  save(store, sampleChain());
  save(store, sampleHardware(QStringLiteral("shackle 12"), catalogue::HardwareKind::shackle));
  save(store, sampleHardware(QStringLiteral("sling 2"), catalogue::HardwareKind::secondarySteel));
  save(store, sampleCart(QStringLiteral("Marram bass")));
  save(store, sampleTable());
  save(store, sampleVenue(QStringLiteral("Gannet Hall")));
  save(store, sampleTour());
  save(store, sampleShow(QStringLiteral("Skerrymouth"), QStringLiteral("Gannet Hall")));
  save(store, sampleRule());
  save(store, sampleUnit(QStringLiteral("MB-1")), QStringLiteral("Ada Fenn"), QStringLiteral("entered"));
}

/// The record as it was before it was stored, to compare what came back with what went in.
template <class Record>
Record unstored(Record record) {
  record.id = QUuid();
  record.revision = 0;
  return record;
}

} // namespace hangbook::testing
