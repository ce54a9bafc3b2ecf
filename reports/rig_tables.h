// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reports/shows.h"

namespace hangbook::reports {

/// What hangs between points and cabinets, and in what wind. Without rows where a show has none of it.
Table hoistsTable(const ShowAsIs& show, const Figures& figures);
/// Each leg: made up from what, how long, what it pulls at rest.
Table bridlesTable(const ShowAsIs& show, const Figures& figures);
/// Outdoors: what the stated gust does, and at which gust the first limit is passed.
Table windTable(const ShowAsIs& show, const Figures& figures);
/// The legs of bridles in that gust; without rows where none is stated.
Table windLegsTable(const ShowAsIs& show, const Figures& figures);
Table weightsTable(const ShowAsIs& show, const Figures& figures);

} // namespace hangbook::reports
