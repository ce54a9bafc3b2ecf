// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/row.h"

#include <cstring>
#include <limits>

#include "quantity/error.h"

namespace hangbook::store {

namespace {

[[noreturn]] void unreadable(const char* column, const char* expected) {
  throw Error(Trouble::store, std::string("column ") + column + " of the store does not hold " + expected);
}

} // namespace

const QVariant& Row::at(const char* column) const {
  // Asked for each value of each row: of so few short names to compare takes a third of what a hash of one
  // takes.
  for (std::size_t i = names_->size(); i-- > 0;) {
    if (std::strcmp((*names_)[i].constData(), column) == 0) {
      return values_[i];
    }
  }
  throw Error(Trouble::store, std::string("the answer of the store has no column ") + column);
}

const QVariant& Row::present(const char* column) const {
  const QVariant& value = at(column);
  if (value.isNull()) {
    unreadable(column, "a value where one must stand");
  }
  return value;
}

bool Row::isNull(const char* column) const {
  return at(column).isNull();
}

QString Row::text(const char* column) const {
  return present(column).toString();
}

QByteArray Row::bytes(const char* column) const {
  return present(column).toByteArray();
}

double Row::real(const char* column) const {
  bool good = false;
  const double figure = present(column).toDouble(&good);
  if (!good) {
    unreadable(column, "a figure");
  }
  return figure;
}

qint64 Row::integer(const char* column) const {
  bool good = false;
  const qint64 figure = present(column).toLongLong(&good);
  if (!good) {
    unreadable(column, "a whole number");
  }
  return figure;
}

int Row::number(const char* column) const {
  const qint64 figure = integer(column);
  if (figure < std::numeric_limits<int>::min() || figure > std::numeric_limits<int>::max()) {
    unreadable(column, "a number of a size that can be true");
  }
  return static_cast<int>(figure);
}

bool Row::flag(const char* column) const {
  const QVariant& value = present(column);
  if (value.typeId() == QMetaType::Bool) {
    return value.toBool();
  }
  const qint64 figure = integer(column);
  if (figure != 0 && figure != 1) {
    unreadable(column, "yes or no");
  }
  return figure == 1;
}

QUuid Row::uuid(const char* column) const {
  const QUuid id = QUuid::fromString(present(column).toString());
  if (id.isNull()) {
    unreadable(column, "an identifier");
  }
  return id;
}

QDate Row::date(const char* column) const {
  const QVariant& value = present(column);
  const QDate date =
      value.typeId() == QMetaType::QDate ? value.toDate() : QDate::fromString(value.toString(), Qt::ISODate);
  if (!date.isValid()) {
    unreadable(column, "a date");
  }
  return date;
}

QDateTime Row::instant(const char* column) const {
  const QVariant& value = present(column);
  const QDateTime instant = value.typeId() == QMetaType::QDateTime
                                ? value.toDateTime()
                                : QDateTime::fromString(value.toString(), Qt::ISODateWithMs);
  if (!instant.isValid()) {
    unreadable(column, "an instant");
  }
  return instant.toUTC();
}

std::optional<double> Row::maybeReal(const char* column) const {
  return isNull(column) ? std::nullopt : std::optional(real(column));
}

std::optional<int> Row::maybeNumber(const char* column) const {
  return isNull(column) ? std::nullopt : std::optional(number(column));
}

std::optional<bool> Row::maybeFlag(const char* column) const {
  return isNull(column) ? std::nullopt : std::optional(flag(column));
}

QUuid Row::maybeUuid(const char* column) const {
  return isNull(column) ? QUuid() : uuid(column);
}

QDate Row::maybeDate(const char* column) const {
  return isNull(column) ? QDate() : date(column);
}

QDateTime Row::maybeInstant(const char* column) const {
  return isNull(column) ? QDateTime() : instant(column);
}

} // namespace hangbook::store
