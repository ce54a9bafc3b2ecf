// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <initializer_list>
#include <optional>
#include <string>

#include <QJsonArray>
#include <QJsonObject>

#include "hang/hang.h"

namespace hangbook::exchange {

/// One JSON object that is read key by key. Knows its place, so that every refusal names the key in full
/// (`stack[2].mass_kg`). Every member throws Error(badInput).
class JsonObject {
public:
  /// Refuses a value that is no object, and any key that is not among `keys`.
  JsonObject(const QJsonValue& value, std::string place, std::initializer_list<const char*> keys);

  bool has(const char* key) const { return object_.contains(QLatin1String(key)); }

  double number(const char* key) const;
  std::optional<double> numberIfGiven(const char* key) const;
  int whole(const char* key) const;
  std::string text(const char* key) const;
  QJsonArray list(const char* key) const;
  QJsonValue value(const char* key) const;

  /// {"x": …, "z": …}
  hang::Vec2 point(const char* key) const;
  std::optional<hang::Vec2> pointIfGiven(const char* key) const;
  /// [low, high]
  hang::Range range(const char* key) const;

  /// The full name of one of its keys.
  std::string placeOf(const char* key) const;

private:
  QJsonObject object_;
  std::string place_;
};

/// A number as JSON has it; refuses another type and what is not finite.
double numberFrom(const QJsonValue& value, const std::string& place);
/// {"x": …, "z": …}
hang::Vec2 pointFrom(const QJsonValue& value, const std::string& place);

} // namespace hangbook::exchange
