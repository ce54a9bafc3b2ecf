// SPDX-License-Identifier: GPL-3.0-or-later
#include "actions/edit_plugs.h"

#include <algorithm>

#include "quantity/error.h"
#include "store/cabling_store.h"
#include "store/calendar_store.h"
#include "store/catalogue_store.h"

namespace hangbook::actions {

exchange::Data plugData(store::Store& store, const exchange::HangName& hang) {
  return store.reading([&] {
    exchange::Data data;
    data.catalogue = store::loadCatalogue(store);
    data.cabling = store::loadCabling(store, hang.tour, hang.show);
    if (auto show = store::loadShow(store, hang.tour, hang.show)) {
      data.shows.push_back(std::move(*show));
    }
    return data;
  });
}

PluggedFor pluggedNow(store::Store& store, const exchange::HangName& hang) {
  return {hang, exchange::plugTexts(hang, plugData(store, hang))};
}

void savePlugs(store::Store& store, const PluggedFor& wanted, const QString& by) {
  const exchange::HangName& hang = wanted.hang;
  store.transact([&] {
    const exchange::Data before = plugData(store, hang);
    const exchange::PlugsRead read = exchange::readPlugs(hang, wanted.rows, before);
    if (!read.faults.empty()) {
      const exchange::FieldFault& fault = read.faults.front();
      throw Error(Trouble::badInput,
                  QStringLiteral("%1: read “%2”, expected %3")
                      .arg(fault.field, fault.read, fault.expected)
                      .toStdString(),
                  QStringLiteral("plug in row %1").arg(fault.row + 1).toStdString());
    }
    const QString which = QStringLiteral("hang %1 of %2").arg(hang.hang, hang.show);
    withDeed(store, by, {"save plugs", which}, [&](const QString&) {
      // An end is plugged once in a show: what goes makes room first, and so does what is plugged elsewhere.
      for (const calendar::Plug& each : before.cabling.plugs) {
        const bool ofHang = exchange::HangName{each.tour, each.show, each.hang} == hang;
        const auto stays = std::ranges::find(read.plugs, each.id, &calendar::Plug::id);
        if (ofHang && (stays == read.plugs.end() || !(*stays == each))) {
          store::remove(store, each);
        }
      }
      for (calendar::Plug each : read.plugs) {
        if (std::ranges::count(before.cabling.plugs, each) == 0) {
          each.id = QUuid();
          each.revision = 0;
          store::save(store, each);
        }
      }
    });
  });
}

} // namespace hangbook::actions
