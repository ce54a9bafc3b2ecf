// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/level_json.h"

#include <cmath>

#include <QJsonArray>

#include "quantity/error.h"

namespace hangbook::options {
namespace {

QJsonValue figure(double value) {
  return std::isfinite(value) ? QJsonValue(value) : QJsonValue(QJsonValue::Null);
}

template <class Figure>
QJsonArray byOctave(Figure figureOf) {
  QJsonArray array;
  for (std::size_t i = 0; i < octaveBands.size(); ++i) {
    array.append(figure(figureOf(i)));
  }
  return array;
}

QJsonValue json(const std::optional<PerOctave>& figures) {
  return figures ? QJsonValue(byOctave([&](std::size_t i) { return (*figures)[i]; }))
                 : QJsonValue(QJsonValue::Null);
}

std::optional<PerOctave> octavesIn(const QJsonObject& object, const char* key) {
  const QJsonValue value = object.value(QLatin1String(key));
  if (!value.isArray()) {
    return std::nullopt;
  }
  const QJsonArray array = value.toArray();
  if (array.size() != static_cast<qsizetype>(octaveBands.size())) {
    throw Error(Trouble::badInput, "has not as many figures as there are octave bands", key);
  }
  PerOctave figures{};
  for (std::size_t i = 0; i < figures.size(); ++i) {
    figures[i] = array[static_cast<qsizetype>(i)].toDouble();
  }
  return figures;
}

QJsonObject rowJson(const LevelRow& row) {
  return {{QStringLiteral("section"), row.section},
          {QStringLiteral("row"), row.last ? QStringLiteral("last") : QStringLiteral("first")},
          {QStringLiteral("element"), row.element},
          {QStringLiteral("covered"), row.covered},
          {QStringLiteral("distance_m"), figure(row.distanceM)},
          {QStringLiteral("throw_m"), figure(row.throwM)},
          {QStringLiteral("spreading_db"), figure(row.spreadingDb)},
          {QStringLiteral("air_db"), json(row.airDb)},
          {QStringLiteral("level_at_1_m_db"),
           row.levelAtOneMetreDb ? figure(*row.levelAtOneMetreDb) : QJsonValue(QJsonValue::Null)}};
}

LevelRow rowIn(const QJsonObject& object) {
  LevelRow row;
  row.section = object.value(QLatin1String("section")).toString();
  row.last = object.value(QLatin1String("row")).toString() == QLatin1String("last");
  row.element = object.value(QLatin1String("element")).toInt();
  row.covered = object.value(QLatin1String("covered")).toBool();
  row.distanceM = object.value(QLatin1String("distance_m")).toDouble();
  row.throwM = object.value(QLatin1String("throw_m")).toDouble();
  row.spreadingDb = object.value(QLatin1String("spreading_db")).toDouble();
  row.airDb = octavesIn(object, "air_db");
  const QJsonValue level = object.value(QLatin1String("level_at_1_m_db"));
  row.levelAtOneMetreDb = level.isDouble() ? std::optional(level.toDouble()) : std::nullopt;
  return row;
}

} // namespace

QJsonObject toJson(const LevelTable& table) {
  QJsonArray rows;
  for (const LevelRow& row : table.rows) {
    rows.append(rowJson(row));
  }
  QJsonArray bands;
  for (const int band : octaveBands) {
    bands.append(band);
  }
  const QJsonValue air =
      table.air ? QJsonValue(QJsonObject{{QStringLiteral("temperature_c"), table.air->temperature},
                                         {QStringLiteral("humidity_percent"), table.air->humidity},
                                         {QStringLiteral("pressure_kpa"), table.air->pressure},
                                         {QStringLiteral("pressure_stated"), table.air->pressureStated}})
                : QJsonValue(QJsonValue::Null);
  return {{QStringLiteral("bands_hz"), bands},
          {QStringLiteral("air"), air},
          {QStringLiteral("rows"), rows},
          {QStringLiteral("front_to_back_db"), json(table.frontToBackDb)}};
}

LevelTable levelFromJson(const QJsonObject& object) {
  LevelTable table;
  const QJsonValue air = object.value(QLatin1String("air"));
  if (air.isObject()) {
    const QJsonObject day = air.toObject();
    table.air = LevelAir{day.value(QLatin1String("temperature_c")).toDouble(),
                         day.value(QLatin1String("humidity_percent")).toDouble(),
                         day.value(QLatin1String("pressure_kpa")).toDouble(),
                         day.value(QLatin1String("pressure_stated")).toBool()};
  }
  const QJsonArray rows = object.value(QLatin1String("rows")).toArray();
  for (const auto& row : rows) {
    table.rows.push_back(rowIn(row.toObject()));
  }
  table.frontToBackDb = octavesIn(object, "front_to_back_db");
  return table;
}

} // namespace hangbook::options
