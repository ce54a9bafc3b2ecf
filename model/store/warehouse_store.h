// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "fleet/occurrence.h"
#include "fleet/place.h"
#include "fleet/unit.h"
#include "store/store.h"

/// What the warehouse reads and records besides units and examinations (fleet_store.h).
namespace hangbook::store {

/// In order of name.
std::vector<fleet::NamedPlace> loadPlaces(Store& store);
std::optional<fleet::NamedPlace> loadPlace(Store& store, const QString& name);
/// As for makers' data (catalogue_store.h).
fleet::NamedPlace save(Store& store, const fleet::NamedPlace& place);
void remove(Store& store, const fleet::NamedPlace& place);

/// What happened, corrected facts too, of one unit or of all, oldest first.
std::vector<fleet::Occurrence> loadOccurrences(Store& store, const QString& serial = {});
fleet::Occurrence append(Store& store, const fleet::Occurrence& occurrence);
/// What decides examinations: occurrences that stand, and outings as uses (fleet::Happened). Of all units
/// only where some rule counts uses, hours or idle time; outings are left out otherwise.
std::vector<fleet::Occurrence> loadHappened(Store& store, const QString& serial = {});

/// The files of a unit, oldest first; their bytes by their SHA-256. Throws StoreError (damaged) where the
/// bytes are not what their SHA-256 names.
std::vector<fleet::UnitDocument> loadDocuments(Store& store, const QString& serial);
QByteArray loadDocumentBytes(Store& store, const QString& sha256);
/// Keeps a file; its SHA-256 is computed here.
fleet::UnitDocument append(Store& store, const fleet::UnitDocument& document, const QByteArray& bytes);
/// Documents whose bytes are not what their SHA-256 names, in words. Empty = none.
QStringList documentsAstray(Store& store);

/// What rides on a cart, in order of its places there.
std::vector<fleet::Unit> loadUnitsOnCart(Store& store, const QString& cart);
/// What is recorded at a place.
std::vector<fleet::Unit> loadUnitsAt(Store& store, const QString& place);
/// The movement that says where the unit is.
std::optional<fleet::Movement> loadLastMovement(Store& store, const QString& serial);
/// The movement that said where it was before the one named, with what is corrected left out.
std::optional<fleet::Movement> loadMovementBefore(Store& store, const fleet::Movement& movement);
/// All movements of one scan, and which of them are corrected by now.
std::vector<fleet::Movement> loadScan(Store& store, const QUuid& scan);
bool isCorrected(Store& store, const fleet::Movement& movement);

/// Units whose serial holds `part`, in upper or lower case, in order of serial; `most` at most, and how many
/// there are.
struct FoundUnits {
  std::vector<fleet::Unit> units;
  int all = 0;
};
FoundUnits findUnits(Store& store, const QString& part, int most = 200);

} // namespace hangbook::store
