// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <span>
#include <utility>
#include <vector>

#include <QDate>
#include <QDateTime>
#include <QString>
#include <QStringList>
#include <QUuid>

#include "catalogue/cabinet.h"
#include "exchange/bounds.h"
#include "quantity/text.h"

/// What stands in one cell, both ways. Reading throws Unreadable; writing gives what reading understands.
namespace hangbook::exchange {

/// A cell under its heading. `text` has no spaces around it.
struct Cell {
  QString text;
  QString unit;            ///< the heading's, empty where it has none
  NumberForm form;         ///< decimal mark of the file
  QString dateFormat = {}; ///< of the file, several separated by ";"; empty = 2027-04-02
};

/// What was read and what is expected, in words.
struct Unreadable {
  QString read;
  QString expected;
};

/// One of a fixed set of words for a value.
template <class Value>
using Words = std::span<const std::pair<Value, const char*>>;

/// The formats that `said` names, separated by ";"; the usual one where it is empty.
QStringList dateFormats(const QString& said);

QString readText(const Cell& cell);
bool readYesNo(const Cell& cell);
double readNumber(const Cell& cell, const char* unit, Bound bound);
int readInteger(const Cell& cell, Bound bound);
QDate readDate(const Cell& cell);
QUuid readIdentifier(const Cell& cell);
/// An instant with Z or an offset, as UTC; null where the text is a local time, which `readLocal` reads.
QDateTime readInstant(const Cell& cell);
/// Date and time without zone; a date alone is its midnight.
QDateTime readLocal(const Cell& cell);
QStringList readList(const Cell& cell);
/// Several figures or places; each number may carry its unit without a space.
std::vector<Angle> readAngles(const Cell& cell, Bound bound);
std::vector<catalogue::Position> readPlaces(const Cell& cell, Bound bound);

template <class Quantity>
Quantity readQuantity(const Cell& cell, const char* unit, Bound bound) {
  try {
    const std::string bare = cell.unit.isEmpty() ? unit : cell.unit.toStdString();
    const auto quantity = parse<Quantity>(cell.text.toStdString(), bare, cell.form);
    if (const QString wanted = complaint(bound, quantity.value()); !wanted.isEmpty()) {
      throw Unreadable{cell.text, wanted};
    }
    return quantity;
  } catch (const QuantityError& error) {
    throw Unreadable{cell.text, QString::fromUtf8(error.what())};
  }
}

template <class Value>
Value readWord(const Cell& cell, Words<Value> words) {
  QStringList all;
  for (const auto& [value, word] : words) {
    if (cell.text.compare(QLatin1String(word), Qt::CaseInsensitive) == 0) {
      return value;
    }
    all << QString::fromLatin1(word);
  }
  throw Unreadable{cell.text, QStringLiteral("one of: ") + all.join(QStringLiteral(", "))};
}

/// Exact to the bit, without its unit.
template <class Quantity>
QString writeQuantity(Quantity quantity) {
  std::string text = print(quantity);
  const std::string_view unit = unitOf<Quantity>(UnitSystem::metric);
  if (text.ends_with(unit)) {
    text.resize(text.size() - unit.size());
  }
  return QString::fromStdString(text).trimmed();
}

template <class Value>
QString writeWord(Value value, Words<Value> words) {
  for (const auto& [each, word] : words) {
    if (each == value) {
      return QString::fromLatin1(word);
    }
  }
  return {};
}

QString writeYesNo(bool value);
QString writeNumber(double value);
QString writeDate(const QDate& date);
QString writeInstant(const QDateTime& instant);
QString writeList(const QStringList& list);
QString writeAngles(std::span<const Angle> angles);
QString writePlaces(std::span<const catalogue::Position> places);

/// The text to keep beside a figure: as typed, with its unit; empty where it is in `ownUnit` or needs none.
QString typedText(const Cell& cell, const char* ownUnit);

} // namespace hangbook::exchange
