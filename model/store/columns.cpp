// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/columns.h"

namespace hangbook::store {

namespace {

[[noreturn]] void unreadable(const std::string& what) {
  throw Error(Trouble::store, what + " of the store cannot be read");
}

double figure(const QJsonValue& value) {
  if (!value.isDouble()) {
    unreadable("a figure in a list");
  }
  return value.toDouble();
}

template <class Place>
QJsonArray pairs(const std::vector<Place>& places) {
  QJsonArray list;
  for (const Place& each : places) {
    list.append(QJsonArray{inMetres(each.x), inMetres(each.z)});
  }
  return list;
}

template <class Place>
void readPairs(const QJsonArray& json, std::vector<Place>& places) {
  places.clear();
  for (const QJsonValue& each : json) {
    const QJsonArray pair = each.toArray();
    if (pair.size() != 2) {
      unreadable("a place in a list");
    }
    places.push_back({metres(figure(pair[0])), metres(figure(pair[1]))});
  }
}

} // namespace

QString jsonText(const QJsonArray& list) {
  return QString::fromUtf8(QJsonDocument(list).toJson(QJsonDocument::Compact));
}

QString jsonText(const QJsonObject& object) {
  return QString::fromUtf8(QJsonDocument(object).toJson(QJsonDocument::Compact));
}

QJsonArray jsonList(const QString& text, const char* column) {
  const QJsonDocument document = QJsonDocument::fromJson(text.toUtf8());
  if (!document.isArray()) {
    unreadable(std::string("the list in column ") + column);
  }
  return document.array();
}

QJsonObject jsonObject(const QString& text, const char* column) {
  const QJsonDocument document = QJsonDocument::fromJson(text.toUtf8());
  if (!document.isObject()) {
    unreadable(std::string("the object in column ") + column);
  }
  return document.object();
}

QJsonArray toJson(const QStringList& names) {
  return QJsonArray::fromStringList(names);
}

QJsonArray toJson(const std::vector<catalogue::Position>& places) {
  return pairs(places);
}

QJsonArray toJson(const std::vector<venue::ProfilePoint>& profile) {
  return pairs(profile);
}

QJsonArray toJson(const std::vector<Angle>& angles) {
  QJsonArray list;
  for (const Angle& each : angles) {
    list.append(inDegrees(each));
  }
  return list;
}

void fromJson(const QJsonArray& json, QStringList& names) {
  names.clear();
  for (const QJsonValue& each : json) {
    if (!each.isString()) {
      unreadable("a name in a list");
    }
    names.append(each.toString());
  }
}

void fromJson(const QJsonArray& json, std::vector<catalogue::Position>& places) {
  readPairs(json, places);
}

void fromJson(const QJsonArray& json, std::vector<venue::ProfilePoint>& profile) {
  readPairs(json, profile);
}

void fromJson(const QJsonArray& json, std::vector<Angle>& angles) {
  angles.clear();
  for (const QJsonValue& each : json) {
    angles.push_back(degrees(figure(each)));
  }
}

void ColumnWriter::texts(const char* column, const std::map<QString, QString>& field) {
  QJsonObject object;
  for (const auto& [key, text] : field) {
    object.insert(key, text);
  }
  add(QString::fromLatin1(column), Value(jsonText(object)));
}

void ColumnReader::texts(const char* column, std::map<QString, QString>& field) {
  field.clear();
  const QJsonObject object = jsonObject(row_.text(column), column);
  for (auto each = object.begin(); each != object.end(); ++each) {
    field[each.key()] = each.value().toString();
  }
}

void ColumnReader::position(const QString& column, std::optional<catalogue::Position>& field) {
  const std::optional<Length> x =
      row_.maybe<Length>((column + QStringLiteral("_x_m")).toLatin1().constData());
  const std::optional<Length> z =
      row_.maybe<Length>((column + QStringLiteral("_z_m")).toLatin1().constData());
  field = x && z ? std::optional(catalogue::Position{*x, *z}) : std::nullopt;
}

void ColumnReader::travel(const QString& column, std::optional<std::array<Angle, 2>>& field) {
  const std::optional<Angle> from =
      row_.maybe<Angle>((column + QStringLiteral("_from_deg")).toLatin1().constData());
  const std::optional<Angle> to =
      row_.maybe<Angle>((column + QStringLiteral("_to_deg")).toLatin1().constData());
  field = from && to ? std::optional(std::array<Angle, 2>{*from, *to}) : std::nullopt;
}

void ColumnReader::pins(const char* column, std::optional<std::array<catalogue::Position, 2>>& field) {
  field.reset();
  if (!row_.isNull(column)) {
    std::vector<catalogue::Position> places;
    fromJson(jsonList(row_.text(column), column), places);
    if (places.size() != 2) {
      unreadable(std::string("the pair of pins in column ") + column);
    }
    field = {places[0], places[1]};
  }
}

} // namespace hangbook::store
