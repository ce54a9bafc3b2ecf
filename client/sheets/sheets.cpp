// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/sheets.h"

#include <algorithm>

#include "actions/fleet_work.h"
#include "actions/hung.h"
#include "catalogue/both_units.h"
#include "fleet/due.h"
#include "quantity/error.h"
#include "reports/both_units.h"
#include "reports/shows.h"
#include "store/cabling_store.h"
#include "store/calendar_store.h"
#include "store/catalogue_store.h"
#include "store/hung_store.h"
#include "store/snapshot_store.h"

namespace hangbook::sheets {
namespace {

const QString loadSheet = QStringLiteral("load-sheet");
const QString buildSheet = QStringLiteral("build-sheet");
const QString prepList = QStringLiteral("prep-list");
const QString examinationRegister = QStringLiteral("examination-register");
const QString tourSummary = QStringLiteral("tour-summary");

/// How far the register looks ahead where no show says it.
constexpr int registerDays = 365;

reports::ShowAsIs asIs(store::Store& store, const calendar::Show& show, const reports::SheetCode& code) {
  reports::ShowAsIs made = reports::showAsIs(store::loadSnapshot(store, show.tour, show.name, code.asOf),
                                             store::loadCabling(store, show.tour, show.name), code.units);
  made.hung = store::loadHung(store, show.tour, show.name);
  made.hungElsewhere = actions::hungElsewhere(store, show);
  return made;
}

calendar::Show showOf(store::Store& store, const reports::SheetCode& code) {
  for (const calendar::Show& show : store::loadShows(store)) {
    if (show.name == code.show && (code.tour.isEmpty() || show.tour == code.tour)) {
      return show;
    }
  }
  throw Error(
      Trouble::badInput,
      QStringLiteral("there is no show \"%1\" in the tour \"%2\"").arg(code.show, code.tour).toStdString());
}

reports::Sheet registerOf(store::Store& store, const reports::SheetCode& code,
                          const reports::Figures& figures) {
  reports::Register units;
  units.tour = code.tour;
  units.asOf = code.asOf;
  units.until = code.asOf.addDays(registerDays);
  units.title = QStringLiteral("the whole fleet");
  if (!code.show.isEmpty()) {
    const calendar::Show show = showOf(store, code);
    units.title = QStringLiteral("%1, away until %2").arg(show.name, show.awayTo.toString(Qt::ISODate));
    units.until = std::max(code.asOf, show.awayTo);
  }
  const options::Stock stock = actions::loadStock(store);
  units.due = fleet::dueWithin(stock.units, stock.rules, stock.examinations, code.asOf,
                               static_cast<int>(code.asOf.daysTo(units.until)), stock.occurrences);
  for (const fleet::Unit& unit : stock.units) {
    if (unit.state == fleet::UnitState::quarantined || unit.state == fleet::UnitState::inRepair) {
      units.kept.push_back(unit);
    }
  }
  return reports::examinationRegister(units, figures);
}

/// Its figures in the units asked for, its sentences as they are.
reports::Sheet sheetAsMade(store::Store& store, const reports::SheetCode& code) {
  const reports::Figures figures(code.units);
  if (!kinds().contains(code.kind)) {
    throw Error(Trouble::badInput, "there is no kind of sheet named " + code.kind.toStdString());
  }
  if (code.kind == examinationRegister) {
    return registerOf(store, code, figures);
  }
  if (code.kind == tourSummary) {
    std::vector<reports::ShowAsIs> shows;
    for (const calendar::Show& show : store::loadShows(store, code.tour)) {
      shows.push_back(asIs(store, show, code));
    }
    return reports::tourSummary(code.tour, shows, figures);
  }
  const reports::ShowAsIs show = asIs(store, showOf(store, code), code);
  return code.kind == loadSheet    ? reports::loadSheet(show, figures)
         : code.kind == buildSheet ? reports::buildSheet(show, figures)
                                   : reports::prepList(show, figures);
}

} // namespace

QStringList kinds() {
  return {loadSheet, buildSheet, prepList, examinationRegister, tourSummary};
}

reports::Sheet sheetOf(store::Store& store, const reports::SheetCode& code) {
  const reports::Sheet sheet = sheetAsMade(store, code);
  return code.units == UnitSystem::metric
             ? sheet
             : reports::inBothUnits(sheet, catalogue::namesWithQuantities(store::loadCatalogue(store)));
}

} // namespace hangbook::sheets
