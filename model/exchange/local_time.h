// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDateTime>

namespace hangbook::exchange {

/// How often a clock in a zone shows a time, and the first instant at which it does.
struct LocalTime {
  int times = 0; ///< 0 = skipped by a change of clocks, 2 = repeated
  QDateTime utc;
};

/// `clock` holds date and time alone. `zone` is an IANA name that exists.
LocalTime inZone(const QDateTime& clock, const QByteArray& zone);

} // namespace hangbook::exchange
