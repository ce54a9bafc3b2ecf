// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reports/ink.h"
#include "reports/sheet.h"

namespace hangbook::reports {

/// To scale, as large as the room lets it.
void paint(const Drawing& drawing, Ink& ink, const QRectF& room);
/// One bar of a chart whose greatest value is `most`, on a scale from 0, with its piece of the axis.
void paint(const Chart::Bar& bar, double most, Ink& ink, const QRectF& room);
/// How high it stands in that width.
double heightOf(const Chart::Bar& bar, Ink& ink, double width);

} // namespace hangbook::reports
