// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <chrono>
#include <memory>

#include <QByteArray>
#include <QStringList>

#include "store/connection.h"

namespace hangbook::store {

/// "Hgbk": what SQLite's application_id of a store says.
inline constexpr int applicationId = 0x4867626B;

/// Opens a place and refuses what is not, or cannot be, a sound store of ours, before anything is written to
/// it. Throws StoreError.
std::unique_ptr<Connection> openChecked(const Place& place, bool create, std::chrono::milliseconds wait);

/// Sets what each connection needs: on SQLite write-ahead log, full sync, foreign keys (read back), no trust
/// in the schema.
void settle(Connection& connection);

/// Whether a file system, by the name that the kernel gives it, lies on another host: the write-ahead log of
/// SQLite needs shared memory of one host.
bool isNetworkFileSystem(const QByteArray& type);

/// What the engine's own checks find wrong. Empty = sound.
QStringList faultsOf(Connection& connection);

} // namespace hangbook::store
