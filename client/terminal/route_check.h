// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "store/store.h"
#include "terminal/command.h"

namespace hangbook::terminal {

/// Every option of every show of a tour; tells each show on standard error as it is done. An interrupt
/// (Ctrl+C) stops it in good order.
Ending checkRoute(store::Store& store, const QString& tour, bool afresh, Context& context);

} // namespace hangbook::terminal
