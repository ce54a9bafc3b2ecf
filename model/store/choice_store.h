// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "options/frozen.h"
#include "store/store.h"

namespace hangbook::store {

/// The options that stand chosen for a show, one for each hang at most, in order of hang. The frozen record
/// is compared with its SHA-256; throws StoreError (damaged) where they differ.
std::vector<options::Choice> loadChoices(Store& store, const QString& tour, const QString& show);
/// Every choice that was ever made for a hang, newest first; withdrawn ones too.
std::vector<options::Choice> loadChoiceHistory(Store& store, const QString& tour, const QString& show,
                                               const QString& hang);
/// What stands chosen for other shows, of any tour, whose time away overlaps with that of this one. A show
/// that does not know its time away overlaps with all.
std::vector<options::Choice> loadOverlappingChoices(Store& store, const QString& tour, const QString& show);

/// Makes a choice: appended after the one of `choice.revision` (0: none stands, be it that none ever did
/// or that the last one was withdrawn), which it replaces.
/// Throws StaleError where another stands by now, and Error where it fails, has no reason though unproven, or
/// is not what its SHA-256 names.
options::Choice append(Store& store, const options::Choice& choice);
/// Takes the choice of that revision back.
void withdraw(Store& store, const options::Choice& choice, const QString& by, const QString& reason);

/// Frozen records whose content is not what its SHA-256 names, in words. Empty = none.
QStringList frozenAstray(Store& store);

} // namespace hangbook::store
