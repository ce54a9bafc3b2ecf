// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include <QStringList>

#include "store/offline.h"

/// The offline copy of a show: one dated file that the same program reads and never writes.
namespace hangbook::sheets {

/// Makes it in `file`, which must not exist. What the copy answers is compared with what the store answers
/// before it is kept. Throws Error or StoreError; then there is no file.
store::OfflineCopy makeOfflineCopy(store::Store& store, const QString& tour, const QString& show,
                                   const QDate& today, const QString& file, const QString& by);

/// One part of a show that the store gives otherwise than its copy: whole lines, as printed where the part is
/// a sheet.
struct CopyChange {
  QString part;
  QStringList copied; ///< lines that only the copy has
  QStringList now;    ///< lines that only the store has
};

struct CopyStanding {
  QString unknown; ///< why nobody can tell whether it is stale; empty: that is told by `changes`
  std::vector<CopyChange> changes;
  bool stale() const { return unknown.isEmpty() && !changes.empty(); }
};

/// What options are decided from, hold points, load readings, the mark book and every sheet of the show, each
/// as of the copy's day by this program, in the copy and in the store.
CopyStanding standingOf(store::Store& copy, store::Store& store);

} // namespace hangbook::sheets
