// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/easing_json.h"

#include <cmath>

namespace hangbook::options {
namespace {

QJsonValue figure(std::optional<double> value) {
  return value && std::isfinite(*value) ? QJsonValue(*value) : QJsonValue(QJsonValue::Null);
}

QJsonObject changeJson(const Change& change) {
  QJsonArray figures;
  for (const ChangedFigure& each : change.figures) {
    figures.append(QJsonObject{{QStringLiteral("what"), each.what},
                               {QStringLiteral("from"), figure(each.from)},
                               {QStringLiteral("to"), figure(each.to)},
                               {QStringLiteral("steps"), each.steps}});
  }
  return {{QStringLiteral("kind"), change.kind},
          {QStringLiteral("words"), change.words},
          {QStringLiteral("unit"), change.unit},
          {QStringLiteral("step"), change.step},
          {QStringLiteral("figures"), figures}};
}

QJsonObject easingJson(const Easing& easing) {
  QJsonArray changes;
  for (const Change& each : easing.changes) {
    changes.append(changeJson(each));
  }
  QJsonValue setting(QJsonValue::Null);
  if (easing.setting) {
    setting = QJsonObject{{QStringLiteral("tilt_deg"), figure(easing.setting->tiltDeg)},
                          {QStringLiteral("trim_m"), figure(easing.setting->trimM)},
                          {QStringLiteral("mark"), easing.setting->mark ? QJsonValue(*easing.setting->mark)
                                                                        : QJsonValue(QJsonValue::Null)}};
  }
  return {{QStringLiteral("changes"), changes},
          {QStringLiteral("verdict"), wordFor(easing.verdict)},
          {QStringLiteral("one_step_less"), wordFor(easing.oneStepLess)},
          {QStringLiteral("option"), easing.option},
          {QStringLiteral("covered_percent"), figure(easing.coveredPercent)},
          {QStringLiteral("setting"), setting}};
}

QJsonArray listOf(const std::vector<Easing>& easings) {
  QJsonArray list;
  for (const Easing& each : easings) {
    list.append(easingJson(each));
  }
  return list;
}

} // namespace

QJsonObject toJson(const Easings& easings) {
  QJsonArray ask;
  for (const Asked& each : easings.ask) {
    ask.append(QJsonObject{{QStringLiteral("rule"), each.rule}, {QStringLiteral("text"), each.text}});
  }
  return {{QStringLiteral("goal"), wordFor(easings.goal)},
          {QStringLiteral("singles"), listOf(easings.singles)},
          {QStringLiteral("pairs"), listOf(easings.pairs)},
          {QStringLiteral("ask"), ask},
          {QStringLiteral("runs"), easings.runs}};
}

QJsonArray toJson(const std::vector<Reserve>& reserves) {
  QJsonArray list;
  for (const Reserve& each : reserves) {
    const bool breaks = each.steps > 0;
    list.append(QJsonObject{
        {QStringLiteral("kind"), each.kind},
        {QStringLiteral("unit"), each.unit},
        {QStringLiteral("step"), each.step},
        {QStringLiteral("words"), each.words},
        {QStringLiteral("now"), figure(each.from)},
        {QStringLiteral("stands_to"), figure(each.last)},
        {QStringLiteral("breaks_at_steps"), breaks ? QJsonValue(each.steps) : QJsonValue(QJsonValue::Null)},
        {QStringLiteral("tried_steps"), each.most},
        {QStringLiteral("then"), breaks ? QJsonValue(wordFor(each.then)) : QJsonValue(QJsonValue::Null)},
        {QStringLiteral("rule"), each.rule},
        {QStringLiteral("text"), each.text}});
  }
  return list;
}

} // namespace hangbook::options
