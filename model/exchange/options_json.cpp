// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/options_json.h"

#include <QJsonArray>

#include "exchange/hang_json.h"
#include "options/option_json.h"

namespace hangbook::exchange {
namespace {

QJsonObject optionJson(const options::Option& option) {
  QJsonObject object = options::toJson(option);
  object[QStringLiteral("hang_input")] =
      option.hangInput ? QJsonValue(toJson(*option.hangInput)) : QJsonValue(QJsonValue::Null);
  return object;
}

QJsonArray boundsJson(const std::vector<options::BoundCount>& bounds) {
  QJsonArray list;
  for (const options::BoundCount& each : bounds) {
    list.append(
        QJsonObject{{QStringLiteral("bound"), each.bound},
                    {QStringLiteral("rule"), each.rule.isEmpty() ? QJsonValue() : QJsonValue(each.rule)},
                    {QStringLiteral("settings"), each.settings}});
  }
  return list;
}

QJsonObject hangOptions(const options::HangOptions& hang) {
  QJsonArray list;
  for (const options::Option& option : hang.options) {
    list.append(optionJson(option));
  }
  return {{QStringLiteral("hang"), hang.hang},
          {QStringLiteral("decided"), QJsonObject{{QStringLiteral("options"), hang.decided.options},
                                                  {QStringLiteral("settings"), hang.decided.settings},
                                                  {QStringLiteral("by_bound"), hang.decided.byBound},
                                                  {QStringLiteral("bounds"), boundsJson(hang.decided.bounds)},
                                                  {QStringLiteral("steps"), hang.decided.steps}}},
          {QStringLiteral("options"), list}};
}

} // namespace

QJsonObject toJson(const options::ShowOptions& show) {
  QJsonArray hangs;
  for (const options::HangOptions& hang : show.hangs) {
    hangs.append(hangOptions(hang));
  }
  return {{QStringLiteral("format"), QStringLiteral("hangbook.options/1")},
          {QStringLiteral("tour"), show.tour},
          {QStringLiteral("show"), show.show},
          {QStringLiteral("venue"), show.venue},
          {QStringLiteral("hangs"), hangs}};
}

} // namespace hangbook::exchange
