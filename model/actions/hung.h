// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "calendar/hung.h"
#include "store/store.h"

/// Which very units hang in a hang: recorded in the warehouse or at load-in, from the bar down.
namespace hangbook::actions {

/// All that is recorded of one hang.
struct HungFor {
  QString tour;
  QString show;
  QString hang;
  calendar::HungSerials serials{};
  bool operator==(const HungFor&) const = default;
};

/// What stands recorded for that hang.
HungFor hungNow(store::Store& store, const HungFor& hang);

struct HungRecorded {
  HungFor hang;
  QStringList unproven; ///< what nobody can say of a unit that was recorded: no examination rule is for it
};

/// Records that just these hang there. Looked at is each place that changes: its unit must be a single one of
/// the type that was chosen for it, must be allowed to go to the show, and hangs nowhere else in it. Throws
/// Error (badInput, notPossible) with the place; nothing is written then.
HungRecorded recordHung(store::Store& store, const HungFor& wanted, const QString& by);

/// Where a unit is recorded as hanging at a show, another one takes its place.
void putInPlaceOf(store::Store& store, const QString& tour, const QString& show, const QString& dead,
                  const QString& stand, const QString& by);

} // namespace hangbook::actions
