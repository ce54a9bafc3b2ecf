// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reports/shows.h"

namespace hangbook::reports {

/// Cabinet by cabinet: which end of which loom, its connector and colour, and the amplifier's channel; what
/// nobody stated says so.
Table cablingTable(const ShowAsIs& show, const QString& hang);
/// The looms that the build plans plug, with their lengths. Without rows where none is stated.
Table loomsTable(const ShowAsIs& show, const Figures& figures);

} // namespace hangbook::reports
