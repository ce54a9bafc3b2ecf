// SPDX-License-Identifier: GPL-3.0-or-later
#include "actions/import_undo.h"

#include <algorithm>
#include <type_traits>

#include "actions/edit_record.h"
#include "actions/edit_venue.h"
#include "actions/import_file.h"
#include "quantity/error.h"
#include "store/cabling_store.h"
#include "store/calendar_store.h"
#include "store/catalogue_store.h"
#include "store/choice_store.h"
#include "store/fleet_store.h"
#include "store/gate_store.h"
#include "store/people_store.h"
#include "store/reading_store.h"
#include "store/venue_store.h"
#include "store/warehouse_store.h"

namespace hangbook::actions {
namespace {

using exchange::Data;

/// What is named stands before what names it.
template <class Work>
void forward(Work work) {
  work(
      "cabinet", [](auto& data) -> auto& { return data.catalogue.cabinets; });
  work(
      "bar", [](auto& data) -> auto& { return data.catalogue.bars; });
  work(
      "hoist", [](auto& data) -> auto& { return data.catalogue.hoists; });
  work(
      "chain", [](auto& data) -> auto& { return data.catalogue.chains; });
  work(
      "hardware", [](auto& data) -> auto& { return data.catalogue.hardware; });
  work(
      "cart", [](auto& data) -> auto& { return data.catalogue.carts; });
  work(
      "table", [](auto& data) -> auto& { return data.catalogue.tables; });
  work(
      "connector", [](auto& data) -> auto& { return data.cabling.connectors; });
  work(
      "socket", [](auto& data) -> auto& { return data.cabling.sockets; });
  work(
      "loom end", [](auto& data) -> auto& { return data.cabling.ends; });
  work(
      "person", [](auto& data) -> auto& { return data.people; });
  work(
      "examination rule", [](auto& data) -> auto& { return data.examinationRules; });
  work(
      "place", [](auto& data) -> auto& { return data.places; });
  work(
      "venue", [](auto& data) -> auto& { return data.venues; });
  work(
      "tour", [](auto& data) -> auto& { return data.tours; });
  work(
      "show", [](auto& data) -> auto& { return data.shows; });
}

/// The other way round.
template <class Work>
void backward(Work work) {
  work(
      "show", [](auto& data) -> auto& { return data.shows; });
  work(
      "tour", [](auto& data) -> auto& { return data.tours; });
  work(
      "venue", [](auto& data) -> auto& { return data.venues; });
  work(
      "place", [](auto& data) -> auto& { return data.places; });
  work(
      "examination rule", [](auto& data) -> auto& { return data.examinationRules; });
  work(
      "person", [](auto& data) -> auto& { return data.people; });
  work(
      "loom end", [](auto& data) -> auto& { return data.cabling.ends; });
  work(
      "socket", [](auto& data) -> auto& { return data.cabling.sockets; });
  work(
      "connector", [](auto& data) -> auto& { return data.cabling.connectors; });
  work(
      "table", [](auto& data) -> auto& { return data.catalogue.tables; });
  work(
      "cart", [](auto& data) -> auto& { return data.catalogue.carts; });
  work(
      "hardware", [](auto& data) -> auto& { return data.catalogue.hardware; });
  work(
      "chain", [](auto& data) -> auto& { return data.catalogue.chains; });
  work(
      "hoist", [](auto& data) -> auto& { return data.catalogue.hoists; });
  work(
      "bar", [](auto& data) -> auto& { return data.catalogue.bars; });
  work(
      "cabinet", [](auto& data) -> auto& { return data.catalogue.cabinets; });
}

template <class Record>
QString keyOf(const Record& record) {
  return record.name;
}
QString keyOf(const catalogue::Socket& socket) {
  return QStringLiteral("%1, %2").arg(socket.cabinet, socket.name);
}
QString keyOf(const catalogue::LoomEnd& end) {
  return QStringLiteral("%1, %2").arg(end.loom, end.name);
}
QString keyOf(const calendar::Show& show) {
  return QStringLiteral("%1, %2").arg(show.tour, show.name);
}

template <class Record>
const Record* same(const std::vector<Record>& list, const Record& wanted) {
  const auto found =
      std::ranges::find_if(list, [&](const Record& each) { return keyOf(each) == keyOf(wanted); });
  return found == list.end() ? nullptr : &*found;
}

Data plansOf(store::Store& store) {
  return store.reading([&] {
    Data data;
    data.catalogue = store::loadCatalogue(store);
    data.cabling = store::loadConnections(store);
    data.people = store::loadPeople(store);
    data.examinationRules = store::loadExaminationRules(store);
    data.places = store::loadPlaces(store);
    data.venues = store::loadVenues(store);
    data.tours = store::loadTours(store);
    data.shows = store::loadShows(store);
    return data;
  });
}

/// Of `all` the records that `touched` names.
Data among(const Data& all, const Data& touched) {
  Data some;
  forward([&](const char*, auto of) {
    for (const auto& each : of(touched)) {
      if (const auto* found = same(of(all), each)) {
        of(some).push_back(*found);
      }
    }
  });
  return some;
}

[[noreturn]] void refuse(const QString& why, const QString& place) {
  throw Error(Trouble::notPossible, why.toStdString(), place.toStdString());
}

/// What is left of all data once the touched records that are not wanted have gone.
Data without(Data all, const ImportedAs& wanted) {
  forward([&](const char*, auto of) {
    std::erase_if(of(all), [&](const auto& each) {
      return same(of(wanted.touched), each) != nullptr && same(of(wanted.stands), each) == nullptr;
    });
  });
  return all;
}

void plugsMayMiss(const Data& data, const QString& sort, const QString& key) {
  for (const calendar::Plug& plug : data.cabling.plugs) {
    const QString socket = QStringLiteral("%1, %2").arg(plug.cabinet, plug.socket);
    const QString end = QStringLiteral("%1, %2").arg(plug.loom, plug.end);
    if ((sort == QLatin1String("socket") && socket == key) ||
        (sort == QLatin1String("loom end") && end == key)) {
      refuse(QStringLiteral("a plug of hang “%1” of show “%2” names it").arg(plug.hang, plug.show),
             QStringLiteral("%1 “%2”").arg(sort, key));
    }
  }
}

/// What is planned or recorded for a show, a phrase each; of one of its hangs where `hang` names it.
QStringList whatIsOf(store::Store& store, const Data& data, const calendar::Show& show,
                     const QString& hang = {}) {
  const auto ofIt = [&](const auto& each) {
    return each.tour == show.tour && each.show == show.name && (hang.isEmpty() || each.hang == hang);
  };
  QStringList names;
  const auto say = [&](const auto& all, const QString& what) {
    if (std::ranges::any_of(all, ofIt)) {
      names << what;
    }
  };
  say(store::loadChoices(store, show.tour, show.name), QStringLiteral("what is chosen for it"));
  say(data.cabling.plugs, QStringLiteral("its plugs"));
  say(data.hung, QStringLiteral("which units hang in it"));
  say(data.marks, QStringLiteral("marks used there"));
  say(store::loadGatesOf(store, show.tour, show.name), QStringLiteral("signed hold points"));
  say(store::loadReadingsOf(store, show.tour, show.name), QStringLiteral("readings of load cells"));
  return names;
}

[[noreturn]] void refuseNamed(const QStringList& names, const QString& place) {
  refuse(
      QStringLiteral("it cannot be taken out while it is named by %1").arg(names.join(QStringLiteral(", "))),
      place);
}

/// A show that stays may lose a hang: nothing may have been planned or recorded for that hang.
void hangsMayGo(store::Store& store, const Data& now, const ImportedAs& wanted) {
  for (const calendar::Show& show : now.shows) {
    const calendar::Show* then = same(wanted.stands.shows, show);
    if (then == nullptr) {
      continue;
    }
    for (const calendar::Hang& hang : show.hangs) {
      if (std::ranges::find(then->hangs, hang.name, &calendar::Hang::name) != then->hangs.end()) {
        continue;
      }
      if (const QStringList names = whatIsOf(store, everything(store), show, hang.name); !names.isEmpty()) {
        refuseNamed(names, QStringLiteral("hang “%1” of show “%2”").arg(hang.name, show.name));
      }
    }
  }
}

/// What names a record of any sort.
template <class Record>
QStringList namesOf(store::Store& store, const QString& sort, const Record& record, const Data& left,
                    const std::vector<options::Choice>& choices) {
  if constexpr (std::is_same_v<Record, calendar::Show>) {
    return whatIsOf(store, left, record);
  } else if constexpr (std::is_same_v<Record, calendar::Tour>) {
    QStringList names;
    for (const calendar::Show& show : left.shows) {
      if (show.tour == record.name) {
        names << QStringLiteral("show “%1”").arg(show.name);
      }
    }
    return names;
  } else {
    return whatNames({exchange::Kind::types, sort, keyOf(record)}, left, choices);
  }
}

void nothingNames(store::Store& store, const ImportedAs& wanted) {
  const Data left = without(everything(store), wanted);
  std::vector<options::Choice> choices;
  for (const calendar::Show& show : left.shows) {
    for (options::Choice& choice : store::loadChoices(store, show.tour, show.name)) {
      choices.push_back(std::move(choice));
    }
  }
  forward([&](const char* word, auto of) {
    const QString sort = QString::fromLatin1(word);
    for (const auto& each : of(wanted.touched)) {
      if (same(of(wanted.stands), each) != nullptr) {
        continue;
      }
      plugsMayMiss(left, sort, keyOf(each));
      const QStringList names = namesOf(store, sort, each, left, choices);
      if (!names.isEmpty()) {
        refuseNamed(names, QStringLiteral("%1 “%2”").arg(sort, keyOf(each)));
      }
    }
  });
}

bool takesNothingOut(const ImportedAs& wanted) {
  bool nothing = true;
  forward([&](const char*, auto of) {
    nothing = nothing && of(wanted.touched).size() == of(wanted.stands).size();
  });
  return nothing;
}

/// What was imported and can be taken back again.
bool isPlanAlone(const exchange::Changes& changes) {
  return std::ranges::all_of(std::array{&changes.added, &changes.changed}, [](const Data* data) {
    return data->units.empty() && data->examinations.empty() && data->marks.empty() && data->chosen.empty() &&
           data->hung.empty() && data->cabling.plugs.empty();
  });
}

} // namespace

ImportedAs importedNow(store::Store& store, const ImportedAs& part) {
  return {part.file, part.touched, among(plansOf(store), part.touched)};
}

QStringList whatDiffers(const ImportedAs& a, const ImportedAs& b) {
  QStringList other;
  forward([&](const char* word, auto of) {
    for (const auto& each : of(a.touched)) {
      const auto* one = same(of(a.stands), each);
      const auto* two = same(of(b.stands), each);
      bool alike = (one == nullptr) == (two == nullptr);
      if (one != nullptr && two != nullptr) {
        auto like = *two;
        like.id = one->id;
        like.revision = one->revision;
        alike = *one == like;
      }
      if (!alike) {
        other << QStringLiteral("%1 “%2”").arg(QString::fromLatin1(word), keyOf(each));
      }
    }
  });
  return other;
}

void restoreImported(store::Store& store, const ImportedAs& wanted, const QString& by) {
  store.transact([&] {
    const Data now = importedNow(store, wanted).stands;
    if (!takesNothingOut(wanted)) {
      nothingNames(store, wanted);
    }
    hangsMayGo(store, now, wanted);
    withDeed(store, by, {"restore import", wanted.file}, [&](const QString&) {
      const std::vector<calendar::Show> shows = store::loadShows(store);
      for (const venue::Venue& each : wanted.stands.venues) {
        if (const venue::Venue* stands = same(now.venues, each)) {
          keepsWhatHangsUse(*stands, each, shows);
        }
      }
      forward([&](const char*, auto of) {
        for (auto record : of(wanted.stands)) {
          const auto* stands = same(of(now), record);
          record.id = stands != nullptr ? stands->id : QUuid();
          record.revision = stands != nullptr ? stands->revision : 0;
          store::save(store, record);
        }
      });
      backward([&](const char*, auto of) {
        for (const auto& each : of(now)) {
          if (same(of(wanted.stands), each) == nullptr) {
            store::remove(store, each);
          }
        }
      });
    });
  });
}

NotedImport importNoted(store::Store& store, exchange::Kind kind, const QString& file,
                        const QByteArray& bytes, const exchange::Importer& importer,
                        const exchange::CsvForm& form) {
  const Data before = plansOf(store);
  NotedImport noted{importFile(store, kind, bytes, importer, form), {}, {}};
  const exchange::Changes& changes = noted.import.changes;
  if (!noted.import.faults.empty() || !isPlanAlone(changes)) {
    return noted;
  }
  ImportedAs after{file, changes.added, {}};
  bool stillTheSame = true;
  bool any = false;
  forward([&](const char*, auto of) {
    for (const auto& each : of(changes.changed)) {
      of(after.touched).push_back(each);
      // Somebody else may have saved it between the look and the import.
      const auto* was = same(of(before), each);
      stillTheSame = stillTheSame && was != nullptr && was->revision == each.revision;
    }
    for (const auto& each : of(changes.added)) {
      stillTheSame = stillTheSame && same(of(before), each) == nullptr;
    }
    any = any || !of(after.touched).empty();
  });
  if (any && stillTheSame) {
    after.stands = after.touched;
    noted.before = ImportedAs{file, after.touched, among(before, after.touched)};
    noted.after = std::move(after);
  }
  return noted;
}

} // namespace hangbook::actions
