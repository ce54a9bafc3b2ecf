// SPDX-License-Identifier: GPL-3.0-or-later
#include "large_tour.h"

#include <map>

#include "actions/choose.h"
#include "actions/facts.h"
#include "actions/import_file.h"
#include "demo/demo.h"
#include "options/search.h"
#include "store/calendar_store.h"
#include "store/catalogue_store.h"
#include "store/snapshot_store.h"
#include "store/venue_store.h"

namespace hangbook::testing {
namespace {

constexpr int daysARound = 100;
const QString planner = QStringLiteral("Ide Quarrel");
const QDate planningDay(2027, 3, 20);

void importDemo(store::Store& store) {
  const exchange::Importer importer{planner, planningDay.startOfDay(Qt::UTC)};
  for (const demo::File& file : demo::files()) {
    const exchange::Import import =
        actions::importFile(store, exchange::kindFrom(file.kind), file.bytes, importer, {}, false);
    if (!import.faults.empty()) {
      throw Error(Trouble::badInput, exchange::text(import.faults.front()).toStdString(),
                  file.name.toStdString());
    }
  }
}

/// What was best at the stop that a show is a copy of; in a copy of its hall it is again.
class Best {
public:
  void choose(store::Store& store, const calendar::Show& show, const QString& original) {
    const options::Snapshot snapshot = store::loadSnapshot(store, show.tour, show.name, planningDay);
    for (const calendar::Hang& hang : show.hangs) {
      const QString& id = idOf(snapshot, original, hang.name);
      if (id.isEmpty()) {
        continue;
      }
      const options::ShowOptions options = options::decideOnly(snapshot, id, hang.name);
      for (const options::HangOptions& each : options.hangs) {
        for (const options::Option& option : each.options) {
          if (option.verdict == options::Verdict::fails) {
            continue;
          }
          options::Choice choice = actions::choiceOf(snapshot, option, QStringLiteral("best of its list"));
          choice.by = planner;
          actions::chooseOption(store, choice, planner);
        }
      }
    }
  }

private:
  const QString& idOf(const options::Snapshot& snapshot, const QString& original, const QString& hang) {
    const auto key = std::pair(original, hang);
    if (const auto known = ids_.find(key); known != ids_.end()) {
      return known->second;
    }
    QString& id = ids_[key];
    const options::ShowOptions options = options::decide(snapshot, hang);
    for (const options::HangOptions& each : options.hangs) {
      if (!each.options.empty() && each.options.front().verdict < options::Verdict::fails) {
        id = each.options.front().id;
      }
    }
    return id;
  }

  std::map<std::pair<QString, QString>, QString> ids_;
};

void moveBy(calendar::Show& show, int days) {
  for (QDate* date : {&show.from, &show.to, &show.awayFrom, &show.awayTo}) {
    *date = date->addDays(days);
  }
  show.loadIn = show.loadIn.addDays(days);
  show.loadOut = show.loadOut.addDays(days);
}

} // namespace

void fillTour(store::Store& store, int shows) {
  importDemo(store);
  const std::vector<calendar::Show> stops = store::loadShows(store);
  Best best;
  for (int i = 0; i < shows; ++i) {
    const calendar::Show& stop = stops[static_cast<std::size_t>(i) % stops.size()];
    calendar::Show show = stop;
    if (const int round = i / static_cast<int>(stops.size()); round > 0) {
      const QString number = QStringLiteral(" %1").arg(round + 1);
      venue::Venue hall = *store::loadVenue(store, stop.venue);
      hall.id = {};
      hall.revision = 0;
      hall.name += number;
      store::save(store, hall);
      show.id = {};
      show.revision = 0;
      show.name += number;
      show.venue = hall.name;
      moveBy(show, -round * daysARound); // played already: what is examined now was good then
      store::save(store, show);
    }
    best.choose(store, show, stop.name);
  }
}

std::vector<UnitSort> sortsOf(store::Store& store) {
  const catalogue::Catalogue catalogue = store::loadCatalogue(store);
  std::vector<UnitSort> sorts;
  const auto add = [&sorts](const char* kind, const auto& types) {
    for (const auto& type : types) {
      sorts.push_back({QString::fromLatin1(kind), type.name});
    }
  };
  add("cabinet", catalogue.cabinets);
  add("bar", catalogue.bars);
  add("hoist", catalogue.hoists);
  add("chain", catalogue.chains);
  add("cart", catalogue.carts);
  add("hardware", catalogue.hardware);
  return sorts;
}

} // namespace hangbook::testing
