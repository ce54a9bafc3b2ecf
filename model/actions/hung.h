// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>

#include "calendar/hung.h"
#include "calendar/show.h"
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

/// Of the units recorded at that show those that are recorded at another one too which is away on some of the
/// same days: why the record does not stand, by serial. As with choices, a show that does not know its time
/// away overlaps with all.
std::map<QString, QString> hungElsewhere(store::Store& store, const calendar::Show& show);

struct HungRecorded {
  HungFor hang;
  /// What nobody can say of a unit that was recorded (no examination rule is for it), and at which other show
  /// of the same days it is recorded too.
  QStringList unproven;
};

/// Records that just these hang there. Looked at is each place that changes: its unit must be a single one of
/// the type that was chosen for it, must be allowed to go to the show, and hangs nowhere else in it. Throws
/// Error (badInput, notPossible) with the place; nothing is written then.
HungRecorded recordHung(store::Store& store, const HungFor& wanted, const QString& by);
/// What recording it would come to; nothing is written. Throws as recording does.
HungRecorded tryHung(store::Store& store, const HungFor& wanted);

/// Where a unit is recorded as hanging at a show, another one takes its place.
void putInPlaceOf(store::Store& store, const QString& tour, const QString& show, const QString& dead,
                  const QString& stand, const QString& by);

} // namespace hangbook::actions
