// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "calendar/show.h"
#include "fleet/unit.h"
#include "store/store.h"

namespace hangbook::actions {

struct Usable {
  bool yes = false;
  QString why; ///< where not: why not. Where yes: what is unproven, empty = nothing
};

/// Whether a unit may go to a show: its state allows it, its owner lends it long enough, and every
/// examination that applies stands through the last day away. A kind of thing that lifts and that no rule is
/// for is unproven.
Usable isUsable(store::Store& store, const fleet::Unit& unit, const calendar::Show& show);

} // namespace hangbook::actions
