// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPainter>
#include <QRectF>

#include "desk/style/colours.h"

namespace hangbook::desk {

/// The sign of a verdict, drawn into `box` (square): a full disc holds, a full diamond is tight, an open ring
/// is unproven, a square with a cross cut out of it fails. Told apart by outline alone, so colour is never
/// needed.
void drawVerdict(QPainter& painter, const QRectF& box, options::Verdict verdict, const Colours& colours);

/// The verdict as people read it: "holds", "tight", "unproven", "fails".
QString verdictWord(options::Verdict verdict);

/// What the verdict means, in one sentence, for a tooltip.
QString verdictMeaning(options::Verdict verdict);

} // namespace hangbook::desk
