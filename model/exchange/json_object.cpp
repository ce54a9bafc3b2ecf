// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/json_object.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "quantity/error.h"

namespace hangbook::exchange {
namespace {

[[noreturn]] void refuse(const std::string& text, const std::string& place) {
  throw Error(Trouble::badInput, text, place);
}

} // namespace

double numberFrom(const QJsonValue& value, const std::string& place) {
  if (!value.isDouble()) {
    refuse("must be a number", place);
  }
  if (!std::isfinite(value.toDouble())) {
    refuse("must be a finite number", place);
  }
  return value.toDouble();
}

hang::Vec2 pointFrom(const QJsonValue& value, const std::string& place) {
  const JsonObject point(value, place, {"x", "z"});
  return {point.number("x"), point.number("z")};
}

JsonObject::JsonObject(const QJsonValue& value, std::string place, std::initializer_list<const char*> keys)
    : place_(std::move(place)) {
  if (!value.isObject()) {
    refuse("must be an object", place_);
  }
  object_ = value.toObject();
  for (auto entry = object_.constBegin(); entry != object_.constEnd(); ++entry) {
    const bool known = std::any_of(keys.begin(), keys.end(),
                                   [&](const char* key) { return entry.key() == QLatin1String(key); });
    if (!known) {
      std::string expected;
      for (const char* key : keys) {
        expected += (expected.empty() ? "" : ", ") + std::string(key);
      }
      refuse("is not a key that is known here (" + expected + ")", placeOf(entry.key().toUtf8().constData()));
    }
  }
}

std::string JsonObject::placeOf(const char* key) const {
  return place_.empty() ? std::string(key) : place_ + "." + key;
}

QJsonValue JsonObject::value(const char* key) const {
  const QJsonValue found = object_.value(QLatin1String(key));
  if (found.isUndefined()) {
    refuse("is missing", placeOf(key));
  }
  return found;
}

double JsonObject::number(const char* key) const {
  return numberFrom(value(key), placeOf(key));
}

std::optional<double> JsonObject::numberIfGiven(const char* key) const {
  return has(key) ? std::optional(number(key)) : std::nullopt;
}

int JsonObject::whole(const char* key) const {
  const double found = number(key);
  constexpr double most = std::numeric_limits<int>::max();
  if (found != std::floor(found) || std::abs(found) > most) {
    refuse("must be a whole number", placeOf(key));
  }
  return static_cast<int>(found);
}

std::string JsonObject::text(const char* key) const {
  const QJsonValue found = value(key);
  if (!found.isString()) {
    refuse("must be text", placeOf(key));
  }
  return found.toString().toStdString();
}

QJsonArray JsonObject::list(const char* key) const {
  const QJsonValue found = value(key);
  if (!found.isArray()) {
    refuse("must be a list", placeOf(key));
  }
  return found.toArray();
}

hang::Vec2 JsonObject::point(const char* key) const {
  return pointFrom(value(key), placeOf(key));
}

std::optional<hang::Vec2> JsonObject::pointIfGiven(const char* key) const {
  return has(key) ? std::optional(point(key)) : std::nullopt;
}

hang::Range JsonObject::range(const char* key) const {
  const QJsonArray ends = list(key);
  if (ends.size() != 2) {
    refuse("must be a list of two numbers, from and to", placeOf(key));
  }
  return {numberFrom(ends.at(0), placeOf(key) + "[0]"), numberFrom(ends.at(1), placeOf(key) + "[1]")};
}

} // namespace hangbook::exchange
