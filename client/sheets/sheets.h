// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>

#include "reports/code.h"
#include "store/store.h"

/// Sheets from what a store holds: the terminal and the window print the very same, so that a code on
/// either's paper is recognised by both.
namespace hangbook::sheets {

/// "load-sheet", "build-sheet", "prep-list", "examination-register", "tour-summary".
QStringList kinds();

/// The sheet that a code names, from what the store holds now. The register looks as far ahead as the show's
/// way home, or a year where no show is named. Call it inside one reading of the store. Throws Error where
/// there is no such kind or show.
reports::Sheet sheetOf(store::Store& store, const reports::SheetCode& code);

} // namespace hangbook::sheets
