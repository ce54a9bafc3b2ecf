// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reports/shows.h"

namespace hangbook::reports {

/// The units of each chosen hang by serial, with mass and where that is from; of one hang where it is named.
Table hungTable(const ShowAsIs& show, const Figures& figures, const QString& only = {});

/// Records that do not stand, for what keeps a sheet from being cleared.
QStringList hungTroubles(const ShowAsIs& show);

} // namespace hangbook::reports
