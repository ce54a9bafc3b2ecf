// SPDX-License-Identifier: GPL-3.0-or-later
#include "actions/readings.h"

#include <QStringList>

#include "quantity/error.h"
#include "store/reading_store.h"

namespace hangbook::actions {
namespace {

QString inWords(const std::vector<marks::LoadReading>& readings) {
  QStringList parts;
  for (const marks::LoadReading& each : readings) {
    parts << QStringLiteral("%1 %2 kN").arg(each.pick).arg(inKilonewtons(each.reading), 0, 'f', 3);
  }
  return parts.join(QStringLiteral(", "));
}

} // namespace

std::vector<marks::LoadReading>
recordReadings(store::Store& store, const std::vector<marks::LoadReading>& readings, const QString& by) {
  if (readings.empty()) {
    throw Error(Trouble::badInput, "there is no reading to record");
  }
  const marks::LoadReading& first = readings.front();
  return withDeed(store, by.isEmpty() ? first.by : by,
                  {"record load reading", first.show,
                   QStringLiteral("hang \"%1\": %2").arg(first.hang, inWords(readings))},
                  [&](const QString& who) {
                    const QUuid lift = QUuid::createUuid();
                    const QDateTime now = QDateTime::currentDateTimeUtc();
                    std::vector<marks::LoadReading> saved;
                    for (marks::LoadReading fact : readings) {
                      fact.by = who;
                      fact.lift = lift;
                      fact.recordedAt = fact.recordedAt.isValid() ? fact.recordedAt : now;
                      saved.push_back(store::append(store, fact));
                    }
                    return saved;
                  });
}

} // namespace hangbook::actions
