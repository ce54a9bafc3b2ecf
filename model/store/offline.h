// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "store/store.h"

namespace hangbook::store {

/// What an offline copy of a show says of itself.
struct OfflineCopy {
  QString tour;
  QString show;
  QDate asOf;       ///< the day that counted as today
  QDateTime madeAt; ///< UTC
  QString by;
  QString from;      ///< where the store was, without a password
  QString revisions; ///< of the show and its chosen options, in words
};

/// None: an ordinary store.
std::optional<OfflineCopy> offlineCopyIn(Store& store);

/// "offline copy of Ostrel, show r1, left r2, made 2027-04-02 08:15 UTC"
QString wordsFor(const OfflineCopy& copy);

/// A store that says it is a copy refuses to be written to from here on.
void keepOfflineCopy(Store& store);

/// Writes a SQLite store of its own to `file`, which must not exist: everything but documents, movements, the
/// history and what is kept for speed. Run it where one unchanging state is read. `check` may throw, having
/// looked at the copy: then there is no file. The copy refuses to be written to from then on. Throws
/// StoreError.
void writeOfflineCopy(Store& from, const QString& file, const OfflineCopy& about,
                      const std::function<void(Store&)>& check);

} // namespace hangbook::store
