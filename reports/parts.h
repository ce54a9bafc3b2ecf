// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reports/shows.h"

namespace hangbook::reports {

/// Title, show, dates, revision, why it is not cleared, whose left it is.
Sheet begun(const QString& kind, const QString& title, const ShowAsIs& show);

/// Why a hang must not be lifted as it stands: unproven and failing rules, exceptions with who signed them.
QStringList notClearedOf(const HangAsIs& hang);

/// Where rules say that something does not follow (the doubts may take the hang out of a joint's travel, or a
/// step of the build is not known), what stands as its worst is only part of it: no figure, then.
bool worstFollows(const options::Option& option);

/// "show r3, left r2, right r1"
QString revisionOf(const ShowAsIs& show);

QString sidesText();
QString datesOf(const calendar::Show& show);

/// What heights and places are measured from, in the venue's words.
Text datumText(const ShowAsIs& show);
/// Outdoors: the wind that the hangs are meant for, as the show states it. Empty elsewhere.
std::optional<Text> windText(const ShowAsIs& show, const Figures& figures);

/// "3 × Marram bass, 1 × Marram upper", from the bar down, neighbours together.
QString stackText(const QStringList& stack);

/// The hang with its points, cabinets and heights, from the side.
Drawing elevationOf(const ShowAsIs& show, const options::Option& option, const Figures& figures);
/// All points of all hangs from above, with the datum.
Drawing planOf(const ShowAsIs& show);

} // namespace hangbook::reports
