// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "actions/run.h"
#include "exchange/record_text.h"
#include "options/frozen.h"

/// One record of makers' data, people or venues by the texts of its columns: saved, added, removed.
namespace hangbook::actions {

/// One record with its parts, as the texts of their columns.
struct RecordAs {
  exchange::RecordName record;
  exchange::RecordText texts{}; ///< none: there is no such record
};

/// As it stands in the store now.
RecordAs recordNow(store::Store& store, const exchange::RecordName& record);

/// Saves the record with these texts; one without a name in `record` is new. Parts without a row are gone.
/// Throws Error (badInput) where they cannot be read, where a new one's name is taken, or where a plug uses a
/// socket or end that would be gone; nothing is written then.
void saveRecord(store::Store& store, const RecordAs& record, const QString& by);

/// Takes a record out with its parts. Throws Error (notPossible) that tells what names it; nothing is written
/// then.
void removeRecord(store::Store& store, const exchange::RecordName& record, const QString& by);

/// What names the record in these data, a phrase each: "units of the fleet: 12", "stacking table “Marram
/// table”". Its own parts do not count. The mark book counts: a mark speaks of types by name.
QStringList whatNames(const exchange::RecordName& record, const exchange::Data& data,
                      const std::vector<options::Choice>& choices);

} // namespace hangbook::actions
