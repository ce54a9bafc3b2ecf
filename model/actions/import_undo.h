// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "actions/run.h"
#include "exchange/import.h"

/// Going back behind an import. What a file said of makers' data, connections, people, examination rules,
/// places, venues, tours and shows can be taken back: what was new goes, what was other becomes what it was.
/// A file that brought facts (examinations, marks), units (whose moves are facts), plugs or choices stays.
namespace hangbook::actions {

/// The records that a file touched, as they stand at one moment.
struct ImportedAs {
  QString file;           ///< as it was called
  exchange::Data touched; ///< each of them; only what names them counts
  exchange::Data stands;  ///< those that exist
};

/// The same records as the store has them now.
ImportedAs importedNow(store::Store& store, const ImportedAs& part);

/// The records that are not the same in both, a phrase each: "venue “Gannet Hall”". Identifiers and revisions
/// do not count.
QStringList whatDiffers(const ImportedAs& a, const ImportedAs& b);

/// Makes the touched records what `wanted` says. Throws Error (notPossible) that tells what names a record
/// which would go; nothing is written then.
void restoreImported(store::Store& store, const ImportedAs& wanted, const QString& by);

struct NotedImport {
  exchange::Import import;
  std::optional<ImportedAs> before; ///< none: it cannot be gone back behind, or it changed nothing
  std::optional<ImportedAs> after;
};
/// As `importFile`, and remembers how what it touches stood before.
NotedImport importNoted(store::Store& store, exchange::Kind kind, const QString& file,
                        const QByteArray& bytes, const exchange::Importer& importer,
                        const exchange::CsvForm& form = {});

} // namespace hangbook::actions
