// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <map>
#include <span>
#include <vector>

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QStringList>

#include "catalogue/cabinet.h"
#include "quantity/error.h"
#include "store/row.h"
#include "store/value.h"
#include "venue/venue.h"

/// The two readers of one list of columns: each record names its columns and fields once, in a function
/// `columns(io, record)`, which writes them with a ColumnWriter and reads them with a ColumnReader.
namespace hangbook::store {

/// A word of the store for one value of an enumeration.
template <class Enum>
struct Word {
  Enum value;
  const char* word;
};

/// Lists and places as JSON: figures keep every bit.
QString jsonText(const QJsonArray& list);
QString jsonText(const QJsonObject& object);
QJsonArray jsonList(const QString& text, const char* column);
QJsonObject jsonObject(const QString& text, const char* column);

QJsonArray toJson(const QStringList& names);
QJsonArray toJson(const std::vector<catalogue::Position>& places);
QJsonArray toJson(const std::vector<venue::ProfilePoint>& profile);
QJsonArray toJson(const std::vector<Angle>& angles);
void fromJson(const QJsonArray& json, QStringList& names);
void fromJson(const QJsonArray& json, std::vector<catalogue::Position>& places);
void fromJson(const QJsonArray& json, std::vector<venue::ProfilePoint>& profile);
void fromJson(const QJsonArray& json, std::vector<Angle>& angles);

class ColumnWriter {
public:
  static constexpr bool writes = true;

  template <class T>
  void operator()(const char* column, const T& field) {
    add(column, Value(field));
  }
  template <class T>
  void list(const char* column, const T& field) {
    add(column, Value(jsonText(toJson(field))));
  }
  /// A name that must be there where it is not empty.
  void reference(const char* column, const QString& name) {
    add(column, name.isEmpty() ? Value(std::nullopt) : Value(name));
  }
  void position(const QString& column, const std::optional<catalogue::Position>& field) {
    add(column + QStringLiteral("_x_m"), field ? Value(field->x) : Value(std::nullopt));
    add(column + QStringLiteral("_z_m"), field ? Value(field->z) : Value(std::nullopt));
  }
  void travel(const QString& column, const std::optional<std::array<Angle, 2>>& field) {
    add(column + QStringLiteral("_from_deg"), field ? Value((*field)[0]) : Value(std::nullopt));
    add(column + QStringLiteral("_to_deg"), field ? Value((*field)[1]) : Value(std::nullopt));
  }
  void pins(const char* column, const std::optional<std::array<catalogue::Position, 2>>& field) {
    add(column,
        field ? Value(jsonText(toJson(std::vector(field->begin(), field->end())))) : Value(std::nullopt));
  }
  void texts(const char* column, const std::map<QString, QString>& field);
  template <class Enum, std::size_t count>
  void word(const char* column, Enum field, const Word<Enum> (&words)[count]) {
    for (const Word<Enum>& each : words) {
      if (each.value == field) {
        add(column, Value(each.word));
      }
    }
  }
  template <class Enum, std::size_t count>
  void word(const char* column, const std::optional<Enum>& field, const Word<Enum> (&words)[count]) {
    if (field) {
      word(column, *field, words);
    } else {
      add(column, Value(std::nullopt));
    }
  }

  Bindings bindings;

private:
  void add(const QString& column, Value value) { bindings.emplace_back(column, std::move(value)); }
};

class ColumnReader {
public:
  static constexpr bool writes = false;
  explicit ColumnReader(const Row& row) : row_(row) {}

  void operator()(const char* column, QString& field) { field = row_.text(column); }
  void operator()(const char* column, double& field) { field = row_.real(column); }
  void operator()(const char* column, int& field) { field = row_.number(column); }
  void operator()(const char* column, bool& field) { field = row_.flag(column); }
  void operator()(const char* column, QDate& field) { field = row_.maybeDate(column); }
  void operator()(const char* column, QDateTime& field) { field = row_.maybeInstant(column); }
  void operator()(const char* column, QUuid& field) { field = row_.maybeUuid(column); }
  void operator()(const char* column, std::optional<double>& field) { field = row_.maybeReal(column); }
  void operator()(const char* column, std::optional<int>& field) { field = row_.maybeNumber(column); }
  void operator()(const char* column, std::optional<bool>& field) { field = row_.maybeFlag(column); }
  template <class Unit>
  void operator()(const char* column, boost::units::quantity<Unit>& field) {
    field = row_.quantity<boost::units::quantity<Unit>>(column);
  }
  template <class Unit>
  void operator()(const char* column, std::optional<boost::units::quantity<Unit>>& field) {
    field = row_.maybe<boost::units::quantity<Unit>>(column);
  }
  template <class T>
  void list(const char* column, T& field) {
    fromJson(jsonList(row_.text(column), column), field);
  }
  void reference(const char* column, QString& name) {
    name = row_.isNull(column) ? QString() : row_.text(column);
  }
  void position(const QString& column, std::optional<catalogue::Position>& field);
  void travel(const QString& column, std::optional<std::array<Angle, 2>>& field);
  void pins(const char* column, std::optional<std::array<catalogue::Position, 2>>& field);
  void texts(const char* column, std::map<QString, QString>& field);
  template <class Enum, std::size_t count>
  void word(const char* column, Enum& field, const Word<Enum> (&words)[count]) {
    const QString text = row_.text(column);
    for (const Word<Enum>& each : words) {
      if (text == QLatin1StringView(each.word)) {
        field = each.value;
        return;
      }
    }
    throw Error(Trouble::store, "column " + std::string(column) + " of the store holds the unknown word \"" +
                                    text.toStdString() + '"');
  }
  template <class Enum, std::size_t count>
  void word(const char* column, std::optional<Enum>& field, const Word<Enum> (&words)[count]) {
    field.reset();
    if (!row_.isNull(column)) {
      word(column, field.emplace(), words);
    }
  }

private:
  const Row& row_;
};

/// Where figures come from and what was typed: the columns that every edited record has.
template <class Io, class Record>
void recordColumns(Io& io, Record& record) {
  io("source_text", record.source.text);
  io("source_date", record.source.date);
  io.texts("typed", record.typed);
}

} // namespace hangbook::store
