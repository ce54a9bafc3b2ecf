// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "store/connection.h"

namespace hangbook::store {

/// Copies a SQLite store while it is in use: written aside, checked for integrity, synced, then renamed to
/// `target`, which must not exist. Whatever fails, `target` either holds a whole checked copy or is not
/// there. PostgreSQL is refused with a line that says what to use. Throws StoreError.
void backUp(Connection& connection, const QString& target);

} // namespace hangbook::store
