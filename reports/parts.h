// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reports/shows.h"

namespace hangbook::reports {

/// Title, show, dates, revision, why it is not cleared, whose left it is.
Sheet begun(const QString& kind, const QString& title, const ShowAsIs& show);

/// Why a hang must not be lifted as it stands: unproven and failing rules, exceptions with who signed them.
QStringList notClearedOf(const HangAsIs& hang);

/// "show r3, left r2, right r1"
QString revisionOf(const ShowAsIs& show);

QString sidesText();
QString datesOf(const calendar::Show& show);

/// "3 × Marram bass, 1 × Marram upper", from the bar down, neighbours together.
QString stackText(const QStringList& stack);

/// The hang with its points, cabinets and heights, from the side.
Drawing elevationOf(const ShowAsIs& show, const options::Option& option, const Figures& figures);
/// All points of all hangs from above, with the datum.
Drawing planOf(const ShowAsIs& show);

} // namespace hangbook::reports
