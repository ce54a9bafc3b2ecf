// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

/// Object names of the places: what tests, the search field and `--place` call them.
namespace hangbook::desk::place {

inline const QString route = QStringLiteral("route");
inline const QString options = QStringLiteral("options");
inline const QString build = QStringLiteral("build");
inline const QString fleet = QStringLiteral("fleet");
inline const QString examinations = QStringLiteral("examinations");
inline const QString data = QStringLiteral("data");
/// Not a place: what the window says of itself.
inline const QString help = QStringLiteral("help");

} // namespace hangbook::desk::place
