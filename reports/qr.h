// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPainter>
#include <QString>

namespace hangbook::reports {

/// A QR code (ISO/IEC 18004, error correction M) with its quiet zone in a square of `side` dots; modules are
/// whole dots. Throws Error: text that no code holds, or a code whose modules would be smaller than `least`.
void drawCode(QPainter& painter, const QString& text, int left, int top, int side, int least);

} // namespace hangbook::reports
