// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSqlError>

#include "store/place.h"
#include "store/store_error.h"

namespace hangbook::store {

/// What an engine's own code means. SQLite: (extended) result code; PostgreSQL: SQLSTATE.
Cause causeOf(const QString& nativeCode, Engine engine);

/// An engine's complaint as one sentence for people: what happened, what was kept, what to do.
StoreError storeError(const QSqlError& error, const Place& place);
StoreError storeError(Cause cause, const QString& detail, const Place& place);

} // namespace hangbook::store
