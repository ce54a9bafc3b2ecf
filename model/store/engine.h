// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

namespace hangbook::store {

/// The two engines that a store may stand on. Everything else is the same for both.
enum class Engine { sqlite, postgresql };

/// The engine's name for people: "SQLite", "PostgreSQL".
QString nameOf(Engine engine);

} // namespace hangbook::store
