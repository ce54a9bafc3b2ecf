// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "actions/import_file.h"
#include "demo/demo.h"
#include "exchange/import.h"
#include "options/search.h"
#include "quantity/error.h"
#include "store/calendar_store.h"
#include "store/snapshot_store.h"
#include "terminal/answers.h"
#include "terminal/commands.h"
#include "terminal/options_table.h"
#include "terminal/people.h"
#include "terminal/store_door.h"

namespace hangbook::terminal {
namespace {

constexpr int mostTold = 12;

/// The tours that the demo's own files hold.
QStringList demoTours(const exchange::Importer& importer) {
  exchange::Data data;
  for (const demo::File& file : demo::files()) {
    data = exchange::readFile(exchange::kindFrom(file.kind), file.bytes, data, importer).after;
  }
  QStringList names;
  for (const calendar::Tour& tour : data.tours) {
    names << tour.name;
  }
  return names;
}

enum class Found { empty, demo, another };

Found whatStandsThere(store::Store& store, const exchange::Importer& importer, QStringList& tours) {
  for (const calendar::Tour& tour : store::loadTours(store)) {
    tours << tour.name;
  }
  if (tours.isEmpty()) {
    return Found::empty;
  }
  const QStringList ours = demoTours(importer);
  return std::all_of(tours.begin(), tours.end(), [&](const QString& tour) { return ours.contains(tour); })
             ? Found::demo
             : Found::another;
}

/// All files in one transaction: the demo is there, or nothing of it.
void fill(store::Store& store, const exchange::Importer& importer) {
  store.transact([&] {
    for (const demo::File& file : demo::files()) {
      const exchange::Import import =
          actions::importFile(store, exchange::kindFrom(file.kind), file.bytes, importer, {}, false);
      if (!import.faults.empty()) {
        throw Error(Trouble::badInput, exchange::text(import.faults.front()).toStdString(),
                    file.name.toStdString());
      }
    }
  });
}

/// The next show that is not over yet, else the last one.
const calendar::Show* nextShow(const std::vector<calendar::Show>& shows, const QDate& today) {
  const auto next =
      std::find_if(shows.begin(), shows.end(), [&](const calendar::Show& show) { return show.to >= today; });
  if (next != shows.end()) {
    return &*next;
  }
  return shows.empty() ? nullptr : &shows.back();
}

/// What somebody sees who has no display: the answer to the day's question, and where to go from here.
void tellNextShow(store::Store& store, Context& context) {
  const std::vector<calendar::Show> shows = store::loadShows(store);
  const calendar::Show* show = nextShow(shows, today(context));
  if (show == nullptr) {
    context.out << "The store holds no show yet.\n";
    return;
  }
  const bool over = show->to < today(context);
  const options::Snapshot snapshot = store::loadSnapshot(store, show->tour, show->name, today(context));
  const options::ShowOptions all = options::decide(snapshot);
  context.out << (over ? "\nThe last show, " : "\nThe next show, ") << show->name << " at " << show->venue
              << ", " << show->from.toString(Qt::ISODate) << " to " << show->to.toString(Qt::ISODate)
              << ":\n\n";
  for (const options::HangOptions& hang : all.hangs) {
    printHang(hang, context.out, mostTold);
  }
  const std::string quoted = "\"" + show->name.toStdString() + "\"";
  context.out << "All of them: hangbook options --show " << quoted
              << "\nOne in full: hangbook options --show " << quoted
              << " --explain ID\nEvery word:  hangbook help\nThe window needs a display (DISPLAY or "
                 "WAYLAND_DISPLAY): then start hangbook, or client/run, without a word.\n";
}

Ending run(const Given& given, Context& context) {
  if (given.has("--if-none") && storeExists(context)) {
    return Ending::done; // somebody's store is there: it is theirs, whatever it holds
  }
  const bool tell = given.has("--tell");
  const auto store = openOrMakeStore(context);
  const exchange::Importer importer{person(*store, context), QDateTime::currentDateTimeUtc()};
  QStringList tours;
  const Found found = whatStandsThere(*store, importer, tours);
  if (found == Found::another && !tell) {
    throw Error(Trouble::notPossible,
                "this store holds a tour already (" + tours.join(QStringLiteral(", ")).toStdString() +
                    "); the demo fills an empty one only: give another place with --store",
                store->place().shown().toStdString());
  }
  if (found == Found::empty) {
    fill(*store, importer);
  }
  if (context.json) {
    printJson(context, {{QStringLiteral("format"), QStringLiteral("hangbook.demo/1")},
                        {QStringLiteral("store"), store->place().shown()},
                        {QStringLiteral("filled"), found == Found::empty}});
    return Ending::done;
  }
  context.out << (found == Found::empty  ? "Filled with the demo tour: "
                  : found == Found::demo ? "The demo tour is there already: "
                                         : "Your store: ")
              << store->place().shown() << '\n';
  if (tell) {
    tellNextShow(*store, context);
  }
  return Ending::done;
}

} // namespace

Command demoCommand() {
  return {"demo",
          "fill an empty store with the demo tour, eleven stops with invented gear and venues",
          {{"--tell", "", "then tell the options of the next show, and how to get the window"},
           {"--if-none", "", "only where there is no store at all yet; else do nothing"}},
          {},
          "hangbook demo --store demo.sqlite",
          run};
}

} // namespace hangbook::terminal
