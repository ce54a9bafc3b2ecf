// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "exchange/import.h"

namespace hangbook::exchange {

/// The evening on which the demo's office sits down.
inline Importer somebody() {
  return {QStringLiteral("Casimir Wold"), QDateTime(QDate(2026, 11, 25), QTime(18, 0), Qt::UTC)};
}

/// The whole demo tour, taken in through its files. Fails the test at the first fault.
const Data& demoData();

/// The faults as a person reads them, a line each.
QString faultsOf(const Import& import);

} // namespace hangbook::exchange
