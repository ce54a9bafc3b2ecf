// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "exchange/import.h"
#include "store/store.h"

namespace hangbook::actions {

/// All that files can hold, as it stands in the store now.
exchange::Data everything(store::Store& store);

/// Takes a file in, in one transaction with its history row: all of it, or nothing where the answer has
/// faults. A `dryRun` answers the same and writes nothing. What it says of chosen options is computed and
/// frozen anew; one that is not among the options, fails, or is unproven without a reason is a fault. May
/// stand inside another transaction, but a fault found while writing then leaves that one unable to commit.
exchange::Import importFile(store::Store& store, exchange::Kind kind, const QByteArray& bytes,
                            const exchange::Importer& importer, const exchange::CsvForm& form = {},
                            bool dryRun = false);

/// How a list with these headings was read the last time; nullopt where none was. Such a mapping is kept by
/// `importFile` when a file has come in by it.
struct Remembered {
  exchange::Mapping mapping;
  QString dateFormat;
  QString by;
  QDateTime at; ///< UTC
};
std::optional<Remembered> rememberedMapping(store::Store& store, exchange::Kind kind, const QByteArray& bytes,
                                            const exchange::CsvForm& form = {});

} // namespace hangbook::actions
