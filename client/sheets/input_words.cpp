// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/input_words.h"

#include <algorithm>
#include <array>
#include <iterator>

#include <QJsonArray>

#include "quantity/text.h"
#include "store/words.h"

namespace hangbook::sheets {
namespace {

/// A key's ending says its unit. `per` is how many of it are one as frozen.
struct Unit {
  const char* ending;
  const char* written;
  int per = 1;
};
// The longer of two that fit comes first.
constexpr std::array units{Unit{"_m_per_s", "m/s"}, Unit{"kg_per_m", "kg/m"},    Unit{"_kg", "kg"},
                           Unit{"_deg", "°"},       Unit{"_m2", "m²"},           Unit{"_db", "dB"},
                           Unit{"_kpa", "kPa"},     Unit{"temperature_c", "°C"}, Unit{"humidity", "%"},
                           Unit{"_m", "m"},         Unit{"_n", "kN", 1000},      Unit{"_s", "s"}};

const Unit* unitOf(const QString& key) {
  const auto found =
      std::ranges::find_if(units, [&](const Unit& each) { return key.endsWith(QLatin1String(each.ending)); });
  return found == units.end() ? nullptr : &*found;
}

template <class Words>
QString wordIn(const Words& words, int number) {
  for (const auto& [value, word] : words) {
    if (static_cast<int>(value) == number) {
      return QString(QLatin1String(word)).replace(QLatin1Char('-'), QLatin1Char(' '));
    }
  }
  return QStringLiteral("number %1, which this program does not know").arg(number);
}

/// Enumerators are frozen by their numbers.
std::optional<QString> enumerator(const QString& list, const QString& key, int number) {
  const auto is = [&](const char* wantedList, const char* wantedKey) {
    return list == QLatin1String(wantedList) && key == QLatin1String(wantedKey);
  };
  if (is("units", "state")) {
    return wordIn(store::unitStateWords, number);
  }
  if (is("units", "kind") || is("rules", "kind")) {
    return wordIn(store::unitKindWords, number);
  }
  if (is("examinations", "result")) {
    return wordIn(store::resultWords, number);
  }
  if (is("occurrences", "kind")) {
    return wordIn(store::occurrenceWords, number);
  }
  if (is("hardware", "kind")) {
    return wordIn(store::hardwareWords, number);
  }
  if (is("joins", "kind")) {
    return wordIn(store::jointWords, number);
  }
  if (is("points", "basis") || is("zones", "basis")) {
    return wordIn(store::basisWords, number);
  }
  if (is("show", "wind_basis")) {
    return wordIn(store::windWords, number);
  }
  if (is("arrangements", "picks")) {
    return wordIn(store::picksWords, number);
  }
  if (is("hoists", "class")) {
    return wordIn(store::hoistingClassWords, number);
  }
  return std::nullopt;
}

QString plainText(const QString& list, const QString& key, const QJsonValue& value, const Unit* unit) {
  if (value.isDouble()) {
    const double figure = value.toDouble();
    if (const auto word = enumerator(list, key, static_cast<int>(figure))) {
      return *word;
    }
    return QString::fromStdString(printNumber(unit == nullptr ? figure : figure / unit->per));
  }
  if (value.isBool()) {
    return value.toBool() ? QStringLiteral("yes") : QStringLiteral("no");
  }
  return value.isString() ? value.toString() : QStringLiteral("not known");
}

bool isPlain(const QJsonValue& value) {
  return !value.isArray() && !value.isObject();
}

/// "limit_includes_factors": "limit includes factors"; a unit stands behind the figure.
QString keyWords(QString key, const Unit* unit) {
  if (unit != nullptr && unit->ending[0] == '_') {
    key.chop(static_cast<qsizetype>(qstrlen(unit->ending)));
  } else if (key.endsWith(QLatin1String("kg_per_m"))) {
    key = key.chopped(8) + QStringLiteral("mass");
  } else if (key.endsWith(QLatin1String("_c"))) {
    key.chop(2);
  }
  return key.replace(QLatin1Char('_'), QLatin1Char(' '));
}

class Lines {
public:
  void add(const QString& path, const QString& list, const QString& key, const QJsonValue& value) {
    if (value.isObject()) {
      addObject(path, key, value.toObject());
      return;
    }
    const QJsonArray array = value.toArray();
    if (!std::ranges::all_of(array, isPlain)) {
      for (const QJsonValue& each : array) {
        add(each.isObject() ? under(path, nameOf(each.toObject())) : path, list, key, each);
      }
      return;
    }
    const Unit* unit = unitOf(key);
    QStringList texts;
    if (value.isArray()) {
      std::ranges::transform(array, std::back_inserter(texts),
                             [&](const QJsonValue& each) { return plainText(list, key, each, unit); });
    } else {
      texts << plainText(list, key, value, unit);
    }
    QString text = texts.isEmpty() ? QStringLiteral("none") : texts.join(QStringLiteral(", "));
    const bool figures =
        unit != nullptr && (value.isDouble() || (!array.isEmpty() && array.first().isDouble()));
    if (figures) {
      text += (QLatin1String(unit->written) == QLatin1String("°") ? QString() : QStringLiteral(" ")) +
              QString::fromUtf8(unit->written);
    }
    lines_ << QStringLiteral("%1: %2").arg(path, text);
  }

  QStringList lines() && { return std::move(lines_); }

private:
  static QString under(const QString& path, const QString& name) {
    return path.isEmpty() || name.isEmpty() ? path + name : path + QStringLiteral(", ") + name;
  }

  static QString nameOf(const QJsonObject& object) {
    for (const char* key : {"name", "serial", "figure", "type"}) {
      if (const QString name = object[QLatin1String(key)].toString(); !name.isEmpty()) {
        return name;
      }
    }
    return {};
  }

  /// `list` is what the object itself stands under.
  void addObject(const QString& path, const QString& list, const QJsonObject& object) {
    for (auto each = object.begin(); each != object.end(); ++each) {
      const QString unit =
          each.key() == QLatin1String("value") ? object[QLatin1String("unit")].toString() : QString();
      add(under(path, keyWords(each.key(), unitOf(each.key()))), list, each.key(), each.value());
      if (!unit.isEmpty()) { // a house figure says its unit beside itself
        lines_.back() += QLatin1Char(' ') + unit;
      }
    }
  }

  QStringList lines_;
};

} // namespace

QStringList wordsOfInputs(const QJsonObject& inputs) {
  Lines lines;
  lines.add({}, {}, {}, inputs);
  return std::move(lines).lines();
}

} // namespace hangbook::sheets
