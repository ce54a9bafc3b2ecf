// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "options/snapshot.h"
#include "store/store.h"

namespace hangbook::store {

/// Everything that decides the options of one show, read in one unchanging state of the store. Throws Error
/// (badInput) where there is no such show.
options::Snapshot loadSnapshot(Store& store, const QString& tour, const QString& show, const QDate& today);

/// The show that a name means: of the tour named, or the only one of that name where `tour` is empty. Throws
/// Error (badInput) where there is none, or more than one.
std::pair<QString, QString> findShow(Store& store, const QString& tour, const QString& show);

/// All that is wrong with a store, in words: the engine's own checks, references, steps, frozen records, and
/// where units are, rebuilt from their movements. Empty = sound.
QStringList checkStore(Store& store);

} // namespace hangbook::store
