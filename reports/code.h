// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDate>

#include "quantity/text.h"
#include "reports/sheet.h"

namespace hangbook::reports {

/// What a sheet's QR code says: enough to print the sheet again and see whether it would still say the same.
struct SheetCode {
  QString kind;
  QString tour;
  QString show; ///< empty: the whole tour
  UnitSystem units = UnitSystem::metric;
  QDate asOf;
  QString checksum;
};

/// First 8 hex digits of SHA-256 over all that the sheet says, its time of printing left out.
QString checksumOf(const Sheet& sheet);

/// "HANGBOOK1|load-sheet|tour|show|metric|2027-04-01|1a2b3c4d", names percent-encoded where they hold a bar.
QString textOf(const SheetCode& code);
/// Throws Error (badInput) where it is not such a text.
SheetCode readCode(const QString& text);

} // namespace hangbook::reports
