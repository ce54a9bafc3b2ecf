// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/snapshot_store.h"

#include "store/calendar_store.h"
#include "store/catalogue_store.h"
#include "store/choice_store.h"
#include "store/fleet_read.h"
#include "store/fleet_store.h"
#include "store/venue_store.h"
#include "store/warehouse_store.h"

namespace hangbook::store {

std::pair<QString, QString> findShow(Store& store, const QString& tour, const QString& show) {
  const QString sql = QStringLiteral("SELECT tour FROM show WHERE name = :show ");
  const Rows found =
      tour.isEmpty() ? store.rows(sql + QStringLiteral("ORDER BY tour"), {{"show", show}})
                     : store.rows(sql + QStringLiteral("AND tour = :tour"), {{"show", show}, {"tour", tour}});
  if (found.empty()) {
    throw Error(Trouble::badInput, tour.isEmpty() ? "there is no show \"" + show.toStdString() + '"'
                                                  : "there is no show \"" + show.toStdString() +
                                                        "\" on tour \"" + tour.toStdString() + '"');
  }
  if (found.size() > 1) {
    QStringList tours;
    for (const Row& row : found) {
      tours.append(row.text("tour"));
    }
    throw Error(Trouble::badInput, "there is a show \"" + show.toStdString() + "\" on more than one tour (" +
                                       tours.join(QStringLiteral(", ")).toStdString() +
                                       "); name the tour too");
  }
  return {found.front().text("tour"), show};
}

options::Snapshot loadSnapshot(Store& store, const QString& tour, const QString& show, const QDate& today) {
  return store.reading([&] {
    const auto [tourName, showName] = findShow(store, tour, show);
    options::Snapshot snapshot;
    snapshot.today = today;
    snapshot.show = loadShow(store, tourName, showName).value();
    snapshot.tour = loadTour(store, tourName).value();
    snapshot.venue = loadVenue(store, snapshot.show.venue).value();
    snapshot.catalogue = loadCatalogue(store);
    const auto fleet = loadFleet(store);
    snapshot.units = fleet->units;
    snapshot.examinationRules = fleet->rules;
    snapshot.examinations = fleet->examinations;
    snapshot.occurrences = fleet->occurrences;
    snapshot.choices = loadChoices(store, tourName, showName);
    snapshot.otherChoices = loadOverlappingChoices(store, tourName, showName);
    return snapshot;
  });
}

QStringList checkStore(Store& store) {
  return store.reading(
      [&] { return store.faults() + frozenAstray(store) + unitsAstray(store) + documentsAstray(store); });
}

} // namespace hangbook::store
