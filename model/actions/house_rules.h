// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "actions/run.h"
#include "options/house_change.h"

/// House rules of a tour, a venue or a show: dated, signed, and what they do to what is chosen.
namespace hangbook::actions {

/// Adds a statement, signed by who does it on that day; an older one of the same figure stays in the list,
/// where the newest signature counts. Throws Error (badInput): no such place or figure, not a figure, another
/// unit, below 0, or a figure of makers, venue or law that is looser than what stands. `dryRun` writes
/// nothing.
options::HouseEffect stateHouseRule(store::Store& store, const options::HouseSite& site,
                                    venue::HouseFigure figure, const QString& by, const QDate& today,
                                    bool dryRun = false);

/// Takes every statement of a figure off the list of one place. Throws Error (badInput) where there is none.
options::HouseEffect withdrawHouseRule(store::Store& store, const options::HouseSite& site,
                                       const QString& figure, const QString& by, const QDate& today,
                                       bool dryRun = false);

/// What that place states of a figure, oldest first. Throws Error (badInput) where there is no such place.
std::vector<venue::HouseFigure> statementsOf(store::Store& store, const options::HouseSite& site,
                                             const QString& figure);
/// Puts statements that stood before in the place of those that stand, signatures and all.
void restoreStatements(store::Store& store, const options::HouseSite& site, const QString& figure,
                       const std::vector<venue::HouseFigure>& statements, const QString& by);

} // namespace hangbook::actions
