// SPDX-License-Identifier: GPL-3.0-or-later
#include <QJsonArray>

#include "store/snapshot_store.h"
#include "terminal/answers.h"
#include "terminal/commands.h"
#include "terminal/store_door.h"

namespace hangbook::terminal {
namespace {

Ending run(const Given&, Context& context) {
  const auto store = openStore(context);
  const QStringList faults = store::checkStore(*store);
  if (context.json) {
    printJson(context, {{QStringLiteral("format"), QStringLiteral("hangbook.check-store/1")},
                        {QStringLiteral("store"), store->place().shown()},
                        {QStringLiteral("faults"), QJsonArray::fromStringList(faults)}});
  } else if (faults.isEmpty()) {
    context.out << store->place().shown() << " is sound.\n";
  } else {
    for (const QString& fault : faults) {
      context.out << fault << '\n';
    }
    context.err << "hangbook: " << store->place().shown()
                << " is not sound: go back to the last backup, or send this list with the file to whoever "
                   "looks after it\n";
  }
  return faults.isEmpty() ? Ending::done : Ending::storeTrouble;
}

} // namespace

Command checkStoreCommand() {
  return {"check-store",
          "check that the store is sound, and that what it shows follows from what was recorded",
          {},
          {},
          "hangbook check-store --store tour.sqlite",
          run};
}

} // namespace hangbook::terminal
