// SPDX-License-Identifier: GPL-3.0-or-later
#include "actions/import_file.h"

#include <algorithm>
#include <optional>

#include "actions/choose.h"
#include "actions/run.h"
#include "options/search.h"
#include "store/cabling_store.h"
#include "store/calendar_store.h"
#include "store/catalogue_store.h"
#include "store/choice_store.h"
#include "store/fleet_store.h"
#include "store/hung_store.h"
#include "store/mapping_store.h"
#include "store/mark_store.h"
#include "store/people_store.h"
#include "store/snapshot_store.h"
#include "store/venue_store.h"
#include "store/warehouse_store.h"

namespace hangbook::actions {
namespace {

using exchange::Data;
using exchange::Fault;
using exchange::Import;
using exchange::Importer;

/// Thrown to roll back: what stands in the file cannot be chosen.
struct Refused {
  std::vector<Fault> faults;
};

/// Never meant to be kept: thrown to roll a dry run back.
struct DryRunEnds {};

template <class Record>
void saveAll(store::Store& store, const std::vector<Record>& added, const std::vector<Record>& changed) {
  for (const auto* list : {&added, &changed}) {
    for (const Record& record : *list) {
      store::save(store, record);
    }
  }
}

/// What rides on a cart names it: carts go in first.
void saveUnits(store::Store& store, std::vector<fleet::Unit> units, const Importer& importer) {
  std::ranges::stable_partition(units,
                                [](const fleet::Unit& unit) { return unit.kind == fleet::UnitKind::cart; });
  for (const fleet::Unit& unit : units) {
    store::save(store, unit, importer.by, QStringLiteral("imported"));
  }
}

/// Facts that correct others stand behind them.
template <class Fact>
void appendFacts(store::Store& store, std::vector<Fact> facts) {
  std::ranges::stable_partition(facts, [](const Fact& fact) { return fact.corrects.isNull(); });
  for (const Fact& fact : facts) {
    store::append(store, fact);
  }
}

void saveRecords(store::Store& store, const exchange::Changes& changes, const Importer& importer) {
  const Data& added = changes.added;
  const Data& changed = changes.changed;
  saveAll(store, added.catalogue.cabinets, changed.catalogue.cabinets);
  saveAll(store, added.catalogue.bars, changed.catalogue.bars);
  saveAll(store, added.catalogue.hoists, changed.catalogue.hoists);
  saveAll(store, added.catalogue.chains, changed.catalogue.chains);
  saveAll(store, added.catalogue.hardware, changed.catalogue.hardware);
  saveAll(store, added.catalogue.carts, changed.catalogue.carts);
  saveAll(store, added.catalogue.tables, changed.catalogue.tables);
  saveAll(store, added.cabling.connectors, changed.cabling.connectors);
  saveAll(store, added.cabling.sockets, changed.cabling.sockets);
  saveAll(store, added.cabling.ends, changed.cabling.ends);
  saveAll(store, added.people, changed.people);
  saveAll(store, added.examinationRules, changed.examinationRules);
  saveAll(store, added.places, changed.places);
  saveUnits(store, added.units, importer);
  saveUnits(store, changed.units, importer);
  appendFacts(store, added.examinations);
  saveAll(store, added.venues, changed.venues);
  saveAll(store, added.tours, changed.tours);
  saveAll(store, added.shows, changed.shows);
  saveAll(store, added.cabling.plugs, changed.cabling.plugs);
  saveAll(store, added.hung, changed.hung);
  appendFacts(store, added.marks);
}

Fault chosenFault(const Import& import, const exchange::Chosen& chosen, const QString& expected) {
  return {import.lineOfChosen(chosen), QStringLiteral("chosen option"), chosen.option,
          QStringLiteral("%1 (show %2, hang %3)").arg(expected, chosen.show, chosen.hang)};
}

void choose(store::Store& store, const Import& import, const exchange::Chosen& chosen,
            const Importer& importer, std::vector<Fault>& faults) {
  const options::Snapshot snapshot =
      store::loadSnapshot(store, chosen.tour, chosen.show, importer.now.date());
  const options::ShowOptions all = options::decideOnly(snapshot, chosen.option, chosen.hang);
  const auto& list = all.hangs.front().options;
  const auto found = std::ranges::find(list, chosen.option, &options::Option::id);
  if (found == list.end()) {
    faults.push_back(chosenFault(import, chosen, QStringLiteral("an option of that hang")));
    return;
  }
  try {
    options::Choice choice = choiceOf(snapshot, *found, chosen.because);
    choice.by = chosen.by.isEmpty() ? importer.by : chosen.by;
    choice.at = chosen.on.isValid() ? chosen.on : importer.now;
    store::append(store, choice);
  } catch (const Error& error) {
    faults.push_back(chosenFault(
        import, chosen, QStringLiteral("an option that may be chosen: ") + QString::fromUtf8(error.what())));
  }
}

/// Options that count the other hang's chosen one are computed after it: in the order of the file.
void chooseAll(store::Store& store, const Import& import, const Importer& importer) {
  std::vector<Fault> faults;
  for (const Data* data : {&import.changes.added, &import.changes.changed}) {
    for (const exchange::Chosen& chosen : data->chosen) {
      choose(store, import, chosen, importer, faults);
    }
  }
  if (!faults.empty()) {
    throw Refused{faults};
  }
}

QString countsInWords(const Import& import) {
  QStringList words;
  for (const exchange::Count& count : import.counts) {
    words << QStringLiteral("%1: %2 new, %3 changed, %4 the same already")
                 .arg(count.sort)
                 .arg(count.added)
                 .arg(count.changed)
                 .arg(count.same);
  }
  return words.join(QStringLiteral("; "));
}

/// A mapping goes with the headings as they stand in the file.
void remember(store::Store& store, exchange::Kind kind, const QStringList& headings, const Importer& importer,
              const exchange::CsvForm& form) {
  if (!form.mapping.empty()) {
    store::keepMapping(store,
                       {exchange::wordFor(kind), exchange::headingsKey(headings),
                        exchange::mappingText(form.mapping), form.dateFormat, importer.by, importer.now});
  }
}

Import written(store::Store& store, exchange::Kind kind, const QByteArray& bytes, const Importer& importer,
               const exchange::CsvForm& form) {
  Import import = exchange::readFile(kind, bytes, everything(store), importer, form);
  if (import.faults.empty()) {
    withDeed(store, importer.by, {"import file", exchange::wordFor(kind), countsInWords(import)},
             [&](const QString&) {
               saveRecords(store, import.changes, importer);
               chooseAll(store, import, importer);
               remember(store, kind, import.headings, importer, form);
             });
  }
  return import;
}

} // namespace

Data everything(store::Store& store) {
  return store.reading([&] {
    Data data;
    data.catalogue = store::loadCatalogue(store);
    data.cabling = store::loadCabling(store);
    data.hung = store::loadHung(store);
    data.people = store::loadPeople(store);
    data.examinationRules = store::loadExaminationRules(store);
    data.places = store::loadPlaces(store);
    data.units = store::loadUnits(store);
    data.examinations = store::loadExaminations(store);
    data.venues = store::loadVenues(store);
    data.tours = store::loadTours(store);
    data.shows = store::loadShows(store);
    for (const calendar::Show& show : data.shows) {
      for (const options::Choice& choice : store::loadChoices(store, show.tour, show.name)) {
        data.chosen.push_back(
            {choice.tour, choice.show, choice.hang, choice.option, choice.reason, choice.by, choice.at});
      }
    }
    data.marks = store::loadMarks(store);
    return data;
  });
}

Import importFile(store::Store& store, exchange::Kind kind, const QByteArray& bytes, const Importer& importer,
                  const exchange::CsvForm& form, bool dryRun) {
  std::optional<Import> import;
  try {
    store.transact([&] {
      import = written(store, kind, bytes, importer, form);
      if (dryRun) {
        throw DryRunEnds{};
      }
    });
  } catch (const DryRunEnds&) {
  } catch (const Refused& refused) {
    import = exchange::readFile(kind, bytes, everything(store), importer, form);
    import->changes = {};
    import->counts.clear();
    import->faults = refused.faults;
  }
  return std::move(*import);
}

std::optional<Remembered> rememberedMapping(store::Store& store, exchange::Kind kind, const QByteArray& bytes,
                                            const exchange::CsvForm& form) {
  // Lists may have a title over their headings: each of the first lines is looked up as if it were the
  // headings.
  constexpr int mostTitleLines = 20;
  for (const exchange::CsvRecord& line : exchange::firstRecords(bytes, form, mostTitleLines)) {
    const auto kept = store::loadMapping(store, exchange::wordFor(kind), exchange::headingsKey(line.cells));
    if (kept) {
      return Remembered{exchange::mappingFrom(kept->mapping), kept->dateFormat, kept->by, kept->at};
    }
  }
  return std::nullopt;
}

} // namespace hangbook::actions
