// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/cell.h"

#include <QRegularExpression>

namespace hangbook::exchange {
namespace {

const QString usualDates = QStringLiteral("yyyy-MM-dd");

/// Null where the text is not exactly how that day is written.
QDate strictDate(const QString& text, const QString& format) {
  const QDate date = QDate::fromString(text, format);
  return date.isValid() && date.toString(format) == text ? date : QDate();
}

/// The one day that the text is by any of the formats; null where it is none. Throws Unreadable where two
/// formats read unlike days.
QDate dayOf(const QString& text, const QString& said) {
  QDate found;
  for (const QString& format : dateFormats(said)) {
    const QDate day = strictDate(text, format);
    if (day.isValid() && found.isValid() && day != found) {
      throw Unreadable{text, QStringLiteral("a date that is one day only: %1 or %2?")
                                 .arg(found.toString(usualDates), day.toString(usualDates))};
    }
    found = day.isValid() ? day : found;
  }
  return found;
}

QString dateLike(const Cell& cell) {
  QStringList like;
  for (const QString& format : dateFormats(cell.dateFormat)) {
    like << QDate(2027, 4, 2).toString(format);
  }
  return like.join(QStringLiteral(" or "));
}

bool isNumber(const QString& text, NumberForm form) {
  try {
    parseNumber(text.toStdString(), form);
    return true;
  } catch (const QuantityError&) {
    return false;
  }
}

/// Without `unit` at its end.
QString bare(const QString& text, const QString& unit) {
  return !unit.isEmpty() && text.endsWith(unit) ? text.chopped(unit.size()).trimmed() : text;
}

QStringList parts(const QString& text) {
  QStringList list = text.split(QLatin1Char(';'));
  for (QString& each : list) {
    each = each.trimmed();
  }
  if (list.last().isEmpty()) { // a closing separator does no harm
    list.removeLast();
  }
  return list;
}

/// One piece of a cell, read in the cell's manner; the fault shows the piece.
Cell piece(const Cell& cell, const QString& text) {
  return {text, cell.unit, cell.form, cell.dateFormat};
}

} // namespace

QStringList dateFormats(const QString& said) {
  QStringList formats = said.split(QLatin1Char(';'), Qt::SkipEmptyParts);
  for (QString& each : formats) {
    each = each.trimmed();
  }
  formats.removeAll(QString());
  return formats.isEmpty() ? QStringList{usualDates} : formats;
}

QString readText(const Cell& cell) {
  return cell.text;
}

bool readYesNo(const Cell& cell) {
  static constexpr std::array words = {std::pair{true, "yes"}, std::pair{false, "no"}};
  return readWord<bool>(cell, words);
}

double readNumber(const Cell& cell, const char* unit, Bound bound) {
  try {
    const QString text = bare(cell.text, QString::fromUtf8(unit));
    const double number = parseNumber(text.toStdString(), cell.form);
    if (const QString wanted = complaint(bound, number); !wanted.isEmpty()) {
      throw Unreadable{cell.text, wanted};
    }
    return number;
  } catch (const QuantityError& error) {
    throw Unreadable{cell.text, QString::fromUtf8(error.what())};
  }
}

int readInteger(const Cell& cell, Bound bound) {
  bool good = false;
  const int number = cell.text.toInt(&good); // C locale: digits and a sign, nothing else
  if (!good) {
    throw Unreadable{cell.text, QStringLiteral("a whole number")};
  }
  if (const QString wanted = complaint(bound, number); !wanted.isEmpty()) {
    throw Unreadable{cell.text, wanted};
  }
  return number;
}

QDate readDate(const Cell& cell) {
  const QDate date = dayOf(cell.text, cell.dateFormat);
  if (!date.isValid()) {
    throw Unreadable{cell.text, QStringLiteral("a date such as ") + dateLike(cell)};
  }
  if (date.year() < 1950 || date.year() > 2150) {
    throw Unreadable{cell.text, QStringLiteral("a date from 1950 to 2150")};
  }
  return date;
}

QUuid readIdentifier(const Cell& cell) {
  const QUuid id = QUuid::fromString(cell.text);
  if (id.isNull()) {
    throw Unreadable{cell.text, QStringLiteral("an identifier as the export writes it")};
  }
  return id;
}

QDateTime readInstant(const Cell& cell) {
  static const QRegularExpression zoned(QStringLiteral("(Z|[+-]\\d\\d:?\\d\\d)$"));
  if (!cell.text.contains(QLatin1Char(':')) || !cell.text.contains(zoned)) {
    return {};
  }
  QString text = cell.text;
  const QDateTime instant =
      QDateTime::fromString(text.replace(QLatin1Char(' '), QLatin1Char('T')), Qt::ISODateWithMs);
  if (!instant.isValid()) {
    throw Unreadable{cell.text, QStringLiteral("an instant such as 2027-04-02T08:00:00Z")};
  }
  return instant.toUTC();
}

QDateTime readLocal(const Cell& cell) {
  static const QRegularExpression form(QStringLiteral("^(.*?)(?:[ T](\\d\\d:\\d\\d(?::\\d\\d)?))?$"));
  const auto match = form.match(cell.text);
  const QDate date = dayOf(match.captured(1), cell.dateFormat);
  const QString clock = match.captured(2).isEmpty() ? QStringLiteral("00:00") : match.captured(2);
  const QTime time = QTime::fromString(clock, Qt::ISODate);
  if (!match.hasMatch() || !date.isValid() || !time.isValid()) {
    throw Unreadable{
        cell.text,
        QStringLiteral("a date and time such as %1 08:00, or 2027-04-02T08:00Z").arg(dateLike(cell))};
  }
  return QDateTime(date, time, Qt::UTC); // the zone is put to it later
}

QStringList readList(const Cell& cell) {
  const QStringList list = parts(cell.text);
  if (list.contains(QString())) {
    throw Unreadable{cell.text, QStringLiteral("names separated by single semicolons")};
  }
  return list;
}

std::vector<Angle> readAngles(const Cell& cell, Bound bound) {
  std::vector<Angle> angles;
  for (const QString& text : readList(cell)) {
    angles.push_back(readQuantity<Angle>(piece(cell, text), "°", bound));
  }
  return angles;
}

std::vector<catalogue::Position> readPlaces(const Cell& cell, Bound bound) {
  static const QRegularExpression spaces(QStringLiteral("\\s+"));
  std::vector<catalogue::Position> places;
  for (const QString& text : readList(cell)) {
    const QStringList pair = text.split(spaces);
    if (pair.size() != 2) {
      throw Unreadable{text, QStringLiteral("two figures, x and z, with a space between")};
    }
    places.push_back({readQuantity<Length>(piece(cell, pair[0]), "m", bound),
                      readQuantity<Length>(piece(cell, pair[1]), "m", bound)});
  }
  return places;
}

QString writeYesNo(bool value) {
  return value ? QStringLiteral("yes") : QStringLiteral("no");
}

QString writeNumber(double value) {
  return QString::fromStdString(printNumber(value));
}

QString writeDate(const QDate& date) {
  return date.toString(usualDates);
}

QString writeInstant(const QDateTime& instant) {
  if (!instant.isValid()) {
    return {};
  }
  return instant.toUTC().toString(instant.time().msec() == 0 ? Qt::ISODate : Qt::ISODateWithMs);
}

QString writeList(const QStringList& list) {
  return list.join(QStringLiteral("; "));
}

QString writeAngles(std::span<const Angle> angles) {
  QStringList texts;
  for (const Angle& angle : angles) {
    texts << writeQuantity(angle);
  }
  return writeList(texts);
}

QString writePlaces(std::span<const catalogue::Position> places) {
  QStringList texts;
  for (const auto& place : places) {
    texts << writeQuantity(place.x) + QLatin1Char(' ') + writeQuantity(place.z);
  }
  return writeList(texts);
}

QString typedText(const Cell& cell, const char* ownUnit) {
  const QString own = QString::fromUtf8(ownUnit);
  const bool bareNumber = isNumber(cell.text, cell.form);
  if (bareNumber && (cell.unit.isEmpty() || cell.unit == own)) {
    return {};
  }
  if (!bareNumber && isNumber(bare(cell.text, own), cell.form)) {
    return {};
  }
  QString text = bareNumber ? cell.text + QLatin1Char(' ') + cell.unit : cell.text;
  if (cell.form.decimalMark != '.') { // it must read the same in a file of any form
    text.replace(QLatin1Char(cell.form.decimalMark), QLatin1Char('.'));
  }
  return text;
}

} // namespace hangbook::exchange
