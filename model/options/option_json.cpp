// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/option_json.h"

#include <cmath>

#include <QJsonArray>

#include "options/level_json.h"

namespace hangbook::options {
namespace {

QJsonValue figure(double value) {
  return std::isfinite(value) ? QJsonValue(value) : QJsonValue(QJsonValue::Null);
}
QJsonValue figure(const std::optional<double>& value) {
  return value ? figure(*value) : QJsonValue(QJsonValue::Null);
}
QJsonValue figure(const std::optional<int>& value) {
  return value ? QJsonValue(*value) : QJsonValue(QJsonValue::Null);
}

template <class List, class Write>
QJsonArray listOf(const List& list, Write write) {
  QJsonArray array;
  for (const auto& each : list) {
    array.append(write(each));
  }
  return array;
}

QJsonValue settingJson(const std::optional<Setting>& setting) {
  if (!setting) {
    return QJsonValue::Null;
  }
  return QJsonObject{
      {QStringLiteral("tilt_deg"), figure(setting->tiltDeg)},
      {QStringLiteral("pan_deg"), figure(setting->panDeg)},
      {QStringLiteral("trim_m"), figure(setting->trimM)},
      {QStringLiteral("mark"), figure(setting->mark)},
      {QStringLiteral("holes_deg"), listOf(setting->holesDeg, [](double angle) { return figure(angle); })}};
}

QJsonObject pointJson(const PointResult& point) {
  return {{QStringLiteral("point"), point.point},
          {QStringLiteral("static_kn"), figure(point.staticKn)},
          {QStringLiteral("dynamic_kn"), figure(point.dynamicKn)},
          {QStringLiteral("capacity_kn"), figure(point.capacityKn)},
          {QStringLiteral("horizontal_kn"), figure(point.horizontalKn)},
          {QStringLiteral("worst_static_kn"), figure(point.worstStaticKn)},
          {QStringLiteral("worst_dynamic_kn"), figure(point.worstDynamicKn)},
          {QStringLiteral("parts"), listOf(point.parts, [](const LoadPart& part) {
             return QJsonObject{{QStringLiteral("what"), part.what}, {QStringLiteral("kn"), figure(part.kn)}};
           })}};
}

QJsonArray placeJson(const std::array<double, 3>& place) {
  return {figure(place[0]), figure(place[1]), figure(place[2])};
}

QJsonObject legJson(const BridleLegResult& leg) {
  return {
      {QStringLiteral("point"), leg.point},
      {QStringLiteral("wanted_m"), figure(leg.wantedM)},
      {QStringLiteral("length_m"), figure(leg.lengthM)},
      {QStringLiteral("pieces"),
       listOf(
           leg.pieces,
           [](const HardwareCount& piece) {
             return QJsonObject{{QStringLiteral("type"), piece.type}, {QStringLiteral("count"), piece.count}};
           })},
      {QStringLiteral("tension_kn"), figure(leg.tensionKn)},
      {QStringLiteral("horizontal_kn"), figure(leg.horizontalKn)},
      {QStringLiteral("angle_deg"), figure(leg.fromHorizontalDeg)}};
}

QJsonObject bridleJson(const BridleResult& bridle) {
  return {{QStringLiteral("pick"), bridle.pick},
          {QStringLiteral("bridle"), bridle.bridle},
          {QStringLiteral("wanted_m"), placeJson(bridle.wantedM)},
          {QStringLiteral("apex_m"), placeJson(bridle.apexM)},
          {QStringLiteral("shift_m"), figure(bridle.shiftM)},
          {QStringLiteral("legs"), listOf(bridle.legs, legJson)}};
}

QJsonObject linkJson(const PathLink& link) {
  return {{QStringLiteral("kind"), link.kind},
          {QStringLiteral("link"), link.link},
          {QStringLiteral("at"), link.at},
          {QStringLiteral("load_kn"), figure(link.loadKn)},
          {QStringLiteral("limit_kn"), figure(link.limitKn)},
          {QStringLiteral("use_percent"), figure(link.usePercent)},
          {QStringLiteral("verdict"), wordFor(link.verdict)},
          {QStringLiteral("source"), link.source}};
}

QJsonObject findingJson(const Finding& finding) {
  QJsonObject json{{QStringLiteral("rule"), finding.rule},
                   {QStringLiteral("verdict"), wordFor(finding.verdict)},
                   {QStringLiteral("applies"), finding.applies},
                   {QStringLiteral("value"), figure(finding.value)},
                   {QStringLiteral("limit"), figure(finding.limit)},
                   {QStringLiteral("unit"), finding.unit},
                   {QStringLiteral("use_percent"), figure(finding.usePercent)},
                   {QStringLiteral("source"), finding.source},
                   {QStringLiteral("text"), finding.text},
                   {QStringLiteral("nominal"), figure(finding.nominal)}};
  if (!finding.worstFollows) {
    json[QStringLiteral("worst_follows")] = false;
  }
  return json;
}

} // namespace

QJsonObject toJson(const Option& option) {
  QJsonObject object{
      {QStringLiteral("id"), option.id},
      {QStringLiteral("hang"), option.key.hang},
      {QStringLiteral("stack"), QJsonArray::fromStringList(option.key.stack)},
      {QStringLiteral("table"), option.key.table},
      {QStringLiteral("downfill"), option.downfill},
      {QStringLiteral("bar"), option.key.bar},
      {QStringLiteral("picks"), wordFor(option.key.picks)},
      {QStringLiteral("hoist"), option.key.hoist},
      {QStringLiteral("at_points"), QJsonArray::fromStringList(option.key.points)},
      {QStringLiteral("verdict"), wordFor(option.verdict)},
      {QStringLiteral("setting"), settingJson(option.setting)},
      {QStringLiteral("trim_window_m"), QJsonValue::Null},
      {QStringLiteral("trim_window_set_by"), QJsonValue::Null},
      {QStringLiteral("mass_kg"), option.setting ? figure(option.massKg) : QJsonValue(QJsonValue::Null)},
      {QStringLiteral("covered_percent"),
       option.setting ? figure(option.coveredPercent) : QJsonValue(QJsonValue::Null)},
      {QStringLiteral("datum_height_m"), figure(option.datumHeightM)},
  };
  if (option.trimWindow) {
    object[QStringLiteral("trim_window_m")] =
        QJsonArray{figure(option.trimWindow->lowM), figure(option.trimWindow->highM)};
    object[QStringLiteral("trim_window_set_by")] =
        QJsonArray{option.trimWindow->lowSetBy, option.trimWindow->highSetBy};
  }
  object[QStringLiteral("pick_loads")] = listOf(option.pickLoads, [](const PickLoad& pick) {
    return QJsonObject{{QStringLiteral("name"), pick.name},
                       {QStringLiteral("load_kn"), figure(pick.loadKn)},
                       {QStringLiteral("points"), QJsonArray::fromStringList(pick.points)}};
  });
  object[QStringLiteral("points")] = listOf(option.points, pointJson);
  object[QStringLiteral("bridles")] = listOf(option.bridles, bridleJson);
  object[QStringLiteral("load_path")] = listOf(option.loadPath, linkJson);
  object[QStringLiteral("aims")] = listOf(option.aims, [](const Aim& aim) {
    return QJsonObject{{QStringLiteral("element"), aim.element},
                       {QStringLiteral("aim_deg"), figure(aim.aimDeg)}};
  });
  object[QStringLiteral("marks")] = listOf(option.marks, [](const MarkAngle& mark) {
    return QJsonObject{{QStringLiteral("mark"), mark.mark},
                       {QStringLiteral("angle_deg"), figure(mark.angleDeg)}};
  });
  object[QStringLiteral("build_loads")] = toJson(option.build);
  object[QStringLiteral("wind")] = toJson(option.wind);
  object[QStringLiteral("one_hoist_stops")] = toJson(option.stops);
  object[QStringLiteral("doubts")] = listOf(option.doubts, [](const DoubtFigure& doubt) {
    return QJsonObject{{QStringLiteral("what"), doubt.what},
                       {QStringLiteral("figure"), doubt.figure},
                       {QStringLiteral("source"), doubt.source}};
  });
  object[QStringLiteral("weighed")] = QJsonArray::fromStringList(option.weighed);
  object[QStringLiteral("findings")] = listOf(option.findings, findingJson);
  object[QStringLiteral("level")] =
      option.level ? QJsonValue(toJson(*option.level)) : QJsonValue(QJsonValue::Null);
  return object;
}

} // namespace hangbook::options
