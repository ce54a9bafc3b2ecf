// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/stop_table.h"

#include <cmath>
#include <limits>

#include <QJsonObject>

namespace hangbook::options {
namespace {

QJsonValue known(double value) {
  return std::isfinite(value) ? QJsonValue(value) : QJsonValue(QJsonValue::Null);
}
double orNot(const QJsonObject& object, const char* key) {
  const QJsonValue value = object.value(QLatin1String(key));
  return value.isDouble() ? value.toDouble() : std::numeric_limits<double>::quiet_NaN();
}

} // namespace

QJsonArray toJson(const std::vector<OneStops>& stops) {
  QJsonArray list;
  for (const OneStops& stop : stops) {
    QJsonArray steps;
    for (const StopStep& step : stop.steps) {
      steps.append(QJsonObject{{QStringLiteral("difference_m"), known(step.differenceM)},
                               {QStringLiteral("turn_deg"), known(step.turnDeg)},
                               {QStringLiteral("runs_kn"), known(step.runsKn)},
                               {QStringLiteral("stopped_kn"), known(step.stoppedKn)},
                               {QStringLiteral("worst_runs_kn"), known(step.worstRunsKn)},
                               {QStringLiteral("worst_stopped_kn"), known(step.worstStoppedKn)}});
    }
    list.append(QJsonObject{{QStringLiteral("stopped"), stop.stopped},
                            {QStringLiteral("runs"), stop.runs},
                            {QStringLiteral("up"), stop.up},
                            {QStringLiteral("steps"), steps},
                            {QStringLiteral("hold_at_m"), known(stop.holdAtM)},
                            {QStringLiteral("hold_by"), stop.holdBy},
                            {QStringLiteral("missing"), stop.missing}});
  }
  return list;
}

std::vector<OneStops> stopsFromJson(const QJsonArray& list) {
  std::vector<OneStops> stops;
  for (const auto& value : list) {
    const QJsonObject object = value.toObject();
    OneStops stop{object.value(QLatin1String("stopped")).toString(),
                  object.value(QLatin1String("runs")).toString(),
                  object.value(QLatin1String("up")).toBool(true),
                  {},
                  orNot(object, "hold_at_m"),
                  object.value(QLatin1String("hold_by")).toString(),
                  object.value(QLatin1String("missing")).toString()};
    for (const auto& each : object.value(QLatin1String("steps")).toArray()) {
      const QJsonObject step = each.toObject();
      stop.steps.push_back({orNot(step, "difference_m"), orNot(step, "turn_deg"), orNot(step, "runs_kn"),
                            orNot(step, "stopped_kn"), orNot(step, "worst_runs_kn"),
                            orNot(step, "worst_stopped_kn")});
    }
    stops.push_back(std::move(stop));
  }
  return stops;
}

} // namespace hangbook::options
