// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reports/ink.h"
#include "reports/sheet.h"

namespace hangbook::reports {

/// To scale, as large as the room lets it.
void paint(const Drawing& drawing, Ink& ink, const QRectF& room);
/// Bars with a scale from 0; `line` is the height that each takes.
void paint(const Chart& chart, Ink& ink, const QRectF& room, double line);

} // namespace hangbook::reports
