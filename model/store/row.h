// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <optional>
#include <vector>

#include <QByteArray>
#include <QDate>
#include <QDateTime>
#include <QString>
#include <QUuid>
#include <QVariant>

namespace hangbook::store {

using ColumnNames = std::shared_ptr<const std::vector<QByteArray>>;

class Connection;

/// One row of an answer, read by the names of its columns. A getter throws Error (store) where there is no
/// such column, where NULL stands although the getter's answer cannot say so, or where the value cannot be
/// read as what is asked for.
class Row {
public:
  Row(ColumnNames names, std::vector<QVariant> values)
      : names_(std::move(names)), values_(std::move(values)) {}

  bool isNull(const char* column) const;
  QString text(const char* column) const;
  QByteArray bytes(const char* column) const;
  double real(const char* column) const;
  qint64 integer(const char* column) const;
  int number(const char* column) const; ///< an integer that must fit an int
  bool flag(const char* column) const;
  QUuid uuid(const char* column) const;
  QDate date(const char* column) const;
  QDateTime instant(const char* column) const; ///< UTC

  std::optional<double> maybeReal(const char* column) const;
  std::optional<int> maybeNumber(const char* column) const;
  std::optional<bool> maybeFlag(const char* column) const;
  QUuid maybeUuid(const char* column) const;        ///< null UUID for NULL
  QDate maybeDate(const char* column) const;        ///< null date for NULL
  QDateTime maybeInstant(const char* column) const; ///< null instant for NULL

  /// A quantity by its inner figure: `row.quantity<Length>("low_steel_m")`.
  template <class Quantity>
  Quantity quantity(const char* column) const {
    return Quantity::from_value(real(column));
  }
  template <class Quantity>
  std::optional<Quantity> maybe(const char* column) const {
    const std::optional<double> figure = maybeReal(column);
    return figure ? std::optional(Quantity::from_value(*figure)) : std::nullopt;
  }

private:
  friend class Connection; // fills the same row again and again
  const QVariant& at(const char* column) const;
  const QVariant& present(const char* column) const;

  ColumnNames names_;
  std::vector<QVariant> values_;
};

using Rows = std::vector<Row>;

} // namespace hangbook::store
