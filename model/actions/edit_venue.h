// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "actions/run.h"
#include "options/house_change.h"

namespace hangbook::actions {

/// Replaces a venue's figures and parts, held to the rules of the venues' spreadsheet, and answers which
/// chosen options change their verdict by it. Throws Error (badInput) where there is no such venue, where a
/// rule is broken, or where a hang or bridle names a point that would be gone; store::StaleError where
/// somebody else has saved it meanwhile. Nothing is written then. `dryRun` writes nothing.
options::HouseEffect editVenue(store::Store& store, const venue::Venue& venue, const QString& by,
                               const QDate& today, bool dryRun = false);

/// Throws Error (badInput) where a hang of one of the shows names a point, bridle or section of the venue
/// that would be gone.
void keepsWhatHangsUse(const venue::Venue& was, const venue::Venue& becomes,
                       const std::vector<calendar::Show>& shows);

} // namespace hangbook::actions
