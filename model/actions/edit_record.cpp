// SPDX-License-Identifier: GPL-3.0-or-later
#include "actions/edit_record.h"

#include <algorithm>

#include "actions/import_file.h"
#include "quantity/error.h"
#include "store/cabling_store.h"
#include "store/calendar_store.h"
#include "store/catalogue_store.h"
#include "store/choice_store.h"
#include "store/people_store.h"
#include "store/venue_store.h"

namespace hangbook::actions {
namespace {

using exchange::Data;
using exchange::RecordName;

/// What records and their parts are read against.
Data readAgainst(store::Store& store) {
  return store.reading([&] {
    Data data;
    data.catalogue = store::loadCatalogue(store);
    data.cabling = store::loadCabling(store);
    data.people = store::loadPeople(store);
    data.venues = store::loadVenues(store);
    return data;
  });
}

/// Runs `work` on the record's list.
template <class Work>
void inItsList(Data& data, const RecordName& record, Work work) {
  const QString& sort = record.sort;
  if (sort == QLatin1String("cabinet")) {
    work(data.catalogue.cabinets);
  } else if (sort == QLatin1String("bar")) {
    work(data.catalogue.bars);
  } else if (sort == QLatin1String("hoist")) {
    work(data.catalogue.hoists);
  } else if (sort == QLatin1String("chain")) {
    work(data.catalogue.chains);
  } else if (sort == QLatin1String("hardware")) {
    work(data.catalogue.hardware);
  } else if (sort == QLatin1String("cart")) {
    work(data.catalogue.carts);
  } else if (sort == QLatin1String("table")) {
    work(data.catalogue.tables);
  } else if (sort == QLatin1String("connector")) {
    work(data.cabling.connectors);
  } else if (sort == QLatin1String("person")) {
    work(data.people);
  } else if (sort == QLatin1String("venue")) {
    work(data.venues);
  } else {
    throw Error(Trouble::badInput, "is no sort of record that is edited by itself", sort.toStdString());
  }
}

[[noreturn]] void refuse(Trouble trouble, const QString& why, const QString& place) {
  throw Error(trouble, why.toStdString(), place.toStdString());
}

/// A plug would otherwise go into a socket, or be on an end, that nobody knows any more.
void keepsWhatPlugsUse(const Data& becomes, const RecordName& record) {
  const auto& cabling = becomes.cabling;
  for (const calendar::Plug& plug : cabling.plugs) {
    const bool known = std::ranges::any_of(cabling.sockets, [&](const catalogue::Socket& each) {
      return each.cabinet == plug.cabinet && each.name == plug.socket;
    });
    if (record.sort == QLatin1String("cabinet") && plug.cabinet == record.name && !plug.socket.isEmpty() &&
        !known) {
      refuse(Trouble::badInput,
             QStringLiteral("hang “%1” of show “%2” has a plug there; unplug it first")
                 .arg(plug.hang, plug.show),
             QStringLiteral("socket %1").arg(plug.socket));
    }
    const bool hasEnd = std::ranges::any_of(cabling.ends, [&](const catalogue::LoomEnd& each) {
      return each.loom == plug.loom && each.name == plug.end;
    });
    if (record.sort == QLatin1String("hardware") && plug.loom == record.name && !hasEnd) {
      refuse(Trouble::badInput,
             QStringLiteral("hang “%1” of show “%2” is plugged with it; unplug it first")
                 .arg(plug.hang, plug.show),
             QStringLiteral("end %1").arg(plug.end));
    }
  }
}

/// Parts that are records of their own in the store.
template <class Part>
void saveParts(store::Store& store, const std::vector<Part>& before, const std::vector<Part>& after,
               QString Part::*owner, const QString& name) {
  for (const Part& each : before) {
    if (each.*owner == name && std::ranges::count(after, each.id, &Part::id) == 0) {
      store::remove(store, each);
    }
  }
  for (const Part& each : after) {
    const auto was = std::ranges::find(before, each.id, &Part::id);
    if (each.*owner == name && (was == before.end() || !(*was == each))) {
      store::save(store, each);
    }
  }
}

} // namespace

RecordAs recordNow(store::Store& store, const RecordName& record) {
  return {record, exchange::recordText(record, readAgainst(store))};
}

void saveRecord(store::Store& store, const RecordAs& wanted, const QString& by) {
  store.transact([&] {
    const Data before = readAgainst(store);
    RecordName record = wanted.record;
    record.name = exchange::nameIn(record, wanted.texts);
    exchange::RecordRead read = exchange::readRecord(wanted.record, wanted.texts, before);
    if (!read.faults.empty()) {
      const exchange::RecordFault& fault = read.faults.front();
      refuse(Trouble::badInput,
             QStringLiteral("%1: read “%2”, expected %3").arg(fault.field, fault.read, fault.expected),
             record.name);
    }
    keepsWhatPlugsUse(read.after, record);
    withDeed(store, by, {"save record", record.sort, record.name}, [&](const QString&) {
      inItsList(read.after, record, [&](const auto& list) {
        if (const auto* saved = catalogue::find(list, record.name)) {
          store::save(store, *saved);
        }
      });
      if (record.sort == QLatin1String("cabinet")) {
        saveParts(store, before.cabling.sockets, read.after.cabling.sockets, &catalogue::Socket::cabinet,
                  record.name);
      } else if (record.sort == QLatin1String("hardware")) {
        saveParts(store, before.cabling.ends, read.after.cabling.ends, &catalogue::LoomEnd::loom,
                  record.name);
      }
    });
  });
}

void removeRecord(store::Store& store, const RecordName& record, const QString& by) {
  store.transact([&] {
    Data data = everything(store);
    std::vector<options::Choice> choices;
    for (const calendar::Show& show : data.shows) {
      for (options::Choice& choice : store::loadChoices(store, show.tour, show.name)) {
        choices.push_back(std::move(choice));
      }
    }
    if (const QStringList names = whatNames(record, data, choices); !names.isEmpty()) {
      refuse(Trouble::notPossible,
             QStringLiteral("it cannot be removed while it is named by %1")
                 .arg(names.join(QStringLiteral(", "))),
             record.name);
    }
    withDeed(store, by, {"remove record", record.sort, record.name}, [&](const QString&) {
      inItsList(data, record, [&](const auto& list) {
        const auto* gone = catalogue::find(list, record.name);
        if (gone == nullptr) {
          refuse(Trouble::notPossible, QStringLiteral("is not there any more"), record.name);
        }
        store::remove(store, *gone);
      });
    });
  });
}

} // namespace hangbook::actions
