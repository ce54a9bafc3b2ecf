// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "actions/run.h"
#include "options/frozen.h"
#include "options/snapshot.h"

namespace hangbook::actions {

/// A flown hang at another setting, to be kept as the new signed one.
struct Moved {
  options::Snapshot snapshot; ///< what it was judged from, with the wind that it is to stand in
  options::Choice standing;   ///< the signed setting that it moves from
  options::Option option;     ///< the new one, judged
  QString reason;
};

/// Keeps it as the next revision of the hang's choice, and the wind with the show, in one transaction. Hold
/// points that a move does not touch stay signed. Throws Error: notPossible where it fails, where its stack,
/// bar, points, mark or holes are not those that hang, or where what it was judged from was changed
/// meanwhile; badInput without a reason or a name.
options::Choice keepMoved(store::Store& store, const Moved& moved, const QString& by);

} // namespace hangbook::actions
