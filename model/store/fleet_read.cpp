// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/fleet_read.h"

#include "store/fleet_store.h"
#include "store/warehouse_store.h"

namespace hangbook::store {

std::shared_ptr<const FleetRead> loadFleet(Store& store) {
  return store.reading([&] {
    const QString moment = store.moment();
    Store::Kept& kept = store.kept();
    if (!moment.isEmpty() && moment == kept.moment) {
      return std::static_pointer_cast<const FleetRead>(kept.what);
    }
    const auto read = std::make_shared<const FleetRead>(FleetRead{
        loadUnits(store), loadExaminationRules(store), loadNewestExaminations(store), loadHappened(store)});
    if (!moment.isEmpty() && !store.isWriting()) { // what is being written may yet be taken back
      kept = {moment, read};
    }
    return read;
  });
}

} // namespace hangbook::store
