// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QByteArray>
#include <QImage>

#include "reports/sheet.h"

namespace hangbook::reports {

enum class Paper { a4, letter };

/// The sheet as PDF: vectors and text only, black on white; page n of m, revision, program, time, checksum
/// and QR code on each page. Needs a QGuiApplication.
QByteArray pdfOf(const Sheet& sheet, const Stamp& stamp, Paper paper);

/// The same pages as pictures for a screen, `dots` an inch.
std::vector<QImage> picturesOf(const Sheet& sheet, const Stamp& stamp, Paper paper, int dots);

} // namespace hangbook::reports
