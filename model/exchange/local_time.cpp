// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/local_time.h"

#include <QTimeZone>

namespace hangbook::exchange {

LocalTime inZone(const QDateTime& clock, const QByteArray& zone) {
  const QTimeZone where(zone);
  const QDateTime asUtc(clock.date(), clock.time(), Qt::UTC);
  const int before = where.offsetFromUtc(asUtc.addDays(-1));
  const int after = where.offsetFromUtc(asUtc.addDays(1));
  LocalTime found;
  for (const int offset : {before, after}) {
    const QDateTime instant = asUtc.addSecs(-offset);
    if (where.offsetFromUtc(instant) == offset && (found.times == 0 || instant != found.utc)) {
      found.utc = found.times == 0 ? instant : std::min(found.utc, instant);
      ++found.times;
    }
  }
  return found;
}

} // namespace hangbook::exchange
