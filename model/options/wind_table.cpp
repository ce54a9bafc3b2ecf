// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/wind_table.h"

#include <cmath>
#include <limits>

#include <QJsonArray>
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

QJsonValue toJson(const std::optional<WindAnswer>& wind) {
  if (!wind) {
    return QJsonValue::Null;
  }
  QJsonArray picks;
  for (const WindPick& pick : wind->picks) {
    picks.append(QJsonObject{{QStringLiteral("name"), pick.name},
                             {QStringLiteral("most_kn"), known(pick.mostKn)},
                             {QStringLiteral("least_kn"), known(pick.leastKn)},
                             {QStringLiteral("point_kn"), known(pick.pointKn)}});
  }
  QJsonArray legs;
  for (const WindLeg& leg : wind->legs) {
    legs.append(QJsonObject{{QStringLiteral("bridle"), leg.bridle},
                            {QStringLiteral("point"), leg.point},
                            {QStringLiteral("most_kn"), known(leg.mostKn)},
                            {QStringLiteral("least_kn"), known(leg.leastKn)},
                            {QStringLiteral("angle_deg"), known(leg.fromHorizontalDeg)}});
  }
  QJsonArray points;
  for (const WindPoint& point : wind->points) {
    points.append(
        QJsonObject{{QStringLiteral("point"), point.name}, {QStringLiteral("down_kn"), known(point.downKn)}});
  }
  const double first = wind->failsAt * wind->firstShare / 100.0;
  const double second = wind->failsAt * wind->secondShare / 100.0;
  QJsonObject object{{QStringLiteral("gust_m_per_s"), known(wind->gust)},
                     {QStringLiteral("pressure_n_per_m2"), known(wind->pressure)},
                     {QStringLiteral("force_kn"), known(wind->mostKn)},
                     {QStringLiteral("force_from_deg"), known(wind->mostFromDeg)},
                     {QStringLiteral("force_front_kn"), known(wind->frontKn)},
                     {QStringLiteral("force_side_kn"), known(wind->sideKn)},
                     {QStringLiteral("force_below_picks_m"), known(wind->belowM)},
                     {QStringLiteral("lean_deg"), known(wind->leanDeg)},
                     {QStringLiteral("swing_deg"), known(wind->swingDeg)},
                     {QStringLiteral("wet_kg"), known(wind->wetKg)},
                     {QStringLiteral("picks"), picks},
                     {QStringLiteral("fails_at_m_per_s"), known(wind->failsAt)},
                     {QStringLiteral("fails_by"), wind->failsBy},
                     {QStringLiteral("first_action_percent"), known(wind->firstShare)},
                     {QStringLiteral("first_action_m_per_s"), known(first)},
                     {QStringLiteral("second_action_percent"), known(wind->secondShare)},
                     {QStringLiteral("second_action_m_per_s"), known(second)},
                     {QStringLiteral("action_source"), wind->sharesSource},
                     {QStringLiteral("limit_is"), QStringLiteral("gust, mean over at most 3 s")},
                     {QStringLiteral("height_m"), known(wind->heightM)},
                     {QStringLiteral("missing"), QJsonArray::fromStringList(wind->missing)}};
  if (!legs.isEmpty()) {
    object.insert(QStringLiteral("legs"), legs);
    object.insert(QStringLiteral("points"), points);
  }
  return object;
}

std::optional<WindAnswer> windFromJson(const QJsonValue& value) {
  if (!value.isObject()) {
    return std::nullopt;
  }
  const QJsonObject object = value.toObject();
  WindAnswer wind;
  wind.gust = orNot(object, "gust_m_per_s");
  wind.pressure = orNot(object, "pressure_n_per_m2");
  wind.mostKn = orNot(object, "force_kn");
  wind.mostFromDeg = orNot(object, "force_from_deg");
  wind.frontKn = orNot(object, "force_front_kn");
  wind.sideKn = orNot(object, "force_side_kn");
  wind.belowM = orNot(object, "force_below_picks_m");
  wind.leanDeg = orNot(object, "lean_deg");
  wind.swingDeg = orNot(object, "swing_deg");
  wind.wetKg = orNot(object, "wet_kg");
  for (const auto& each : object.value(QLatin1String("picks")).toArray()) {
    const QJsonObject pick = each.toObject();
    wind.picks.push_back({pick.value(QLatin1String("name")).toString(), orNot(pick, "most_kn"),
                          orNot(pick, "least_kn"), orNot(pick, "point_kn")});
  }
  for (const auto& each : object.value(QLatin1String("legs")).toArray()) {
    const QJsonObject leg = each.toObject();
    wind.legs.push_back({leg.value(QLatin1String("bridle")).toString(),
                         leg.value(QLatin1String("point")).toString(), orNot(leg, "most_kn"),
                         orNot(leg, "least_kn"), orNot(leg, "angle_deg")});
  }
  for (const auto& each : object.value(QLatin1String("points")).toArray()) {
    const QJsonObject point = each.toObject();
    wind.points.push_back({point.value(QLatin1String("point")).toString(), orNot(point, "down_kn")});
  }
  wind.failsAt = orNot(object, "fails_at_m_per_s");
  wind.failsBy = object.value(QLatin1String("fails_by")).toString();
  wind.firstShare = orNot(object, "first_action_percent");
  wind.secondShare = orNot(object, "second_action_percent");
  wind.sharesSource = object.value(QLatin1String("action_source")).toString();
  wind.heightM = orNot(object, "height_m");
  for (const auto& each : object.value(QLatin1String("missing")).toArray()) {
    wind.missing.append(each.toString());
  }
  return wind;
}

} // namespace hangbook::options
