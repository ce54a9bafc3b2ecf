// SPDX-License-Identifier: GPL-3.0-or-later
#include "terminal/store_door.h"

#include <QDir>
#include <QFileInfo>
#include <QStandardPaths>

#include "catalogue/both_units.h"
#include "store/catalogue_store.h"
#include "store/offline.h"
#include "store/place.h"
#include "terminal/both_units.h"

namespace hangbook::terminal {
namespace {

QString usualFolder() {
  const QString folder = QStandardPaths::writableLocation(QStandardPaths::AppDataLocation);
  if (folder.isEmpty()) {
    throw store::StoreError(
        store::Cause::other,
        "there is no folder for application data here; say with --store where the data lie");
  }
  return folder;
}

} // namespace

QString storePlace(const Context& context) {
  return context.store ? QString::fromStdString(*context.store)
                       : QDir(usualFolder()).filePath(QStringLiteral("hangbook.sqlite"));
}

bool storeExists(const Context& context) {
  const store::Place place = store::placeFrom(storePlace(context));
  return place.engine != store::Engine::sqlite || QFileInfo::exists(place.file);
}

std::unique_ptr<store::Store> openStore(const Context& context) {
  if (!storeExists(context)) {
    throw store::StoreError(
        store::Cause::other,
        "there is no store here yet: “hangbook demo” makes one with the demo tour, “hangbook "
        "import” one from your spreadsheets",
        store::placeFrom(storePlace(context)).shown().toStdString());
  }
  auto opened = store::Store::open(storePlace(context));
  if (const auto copy = store::offlineCopyIn(*opened)) {
    context.err << store::wordsFor(*copy).toStdString()
                << "; “hangbook copy --check FILE” says whether it is stale\n";
  }
  if (auto* buffer = dynamic_cast<BothUnitsBuffer*>(context.out.rdbuf())) {
    buffer->setNames(catalogue::namesWithQuantities(store::loadCatalogue(*opened)));
  }
  return opened;
}

std::unique_ptr<store::Store> openOrMakeStore(const Context& context) {
  if (!context.store && !QDir().mkpath(usualFolder())) {
    throw store::StoreError(store::Cause::readOnly, "this folder could not be made",
                            usualFolder().toStdString());
  }
  store::OpenHow how;
  how.create = true;
  return store::Store::open(storePlace(context), how);
}

} // namespace hangbook::terminal
