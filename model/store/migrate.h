// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QStringList>

#include "store/connection.h"
#include "store/migration.h"

namespace hangbook::store {

/// Takes the steps that the store lacks, each in one transaction, after a verified copy of the file beside it
/// where it already held something ("tour.hangbook.before-0002"). Refuses a store that a newer program wrote,
/// and one whose taken steps differ from ours. Where a step fails, the store stays as it was before it. Two
/// programs may do this at once. Throws StoreError.
void migrate(Connection& connection, const std::vector<Migration>& steps, const QString& program);

/// Taken steps whose checksum or name is not that of ours. Empty = none.
QStringList faultsOfSteps(Connection& connection, const std::vector<Migration>& steps);

} // namespace hangbook::store
