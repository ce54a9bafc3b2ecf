// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <concepts>
#include <initializer_list>
#include <optional>
#include <utility>
#include <vector>

#include <QByteArray>
#include <QDate>
#include <QDateTime>
#include <QUuid>
#include <QVariant>

#include <boost/units/quantity.hpp>

namespace hangbook::store {

/// One value on its way into a statement, in the form that both engines keep without loss: UUIDs without
/// braces, instants as UTC with Z and milliseconds, dates as ISO text. A null date, instant or UUID and an
/// empty optional become NULL; an empty text stays a text. Quantities go in by their inner figure
/// (kg, N, m, m/s, °, kg/m). Throws Error (badInput) at a figure that is not finite.
class Value {
public:
  Value(std::nullopt_t) {}
  Value(const QString& text);
  Value(const char* text); ///< UTF-8
  Value(const QByteArray& bytes);
  Value(double figure);
  Value(const QUuid& id);
  Value(const QDate& date);
  Value(const QDateTime& instant);
  Value(std::same_as<bool> auto flag) : variant_(flag) {}
  template <std::integral Integer>
  requires(!std::same_as<Integer, bool>) Value(Integer number) : variant_(static_cast<qlonglong>(number)) {}
  template <class Unit>
  Value(const boost::units::quantity<Unit>& quantity) : Value(quantity.value()) {}
  template <class T>
  Value(const std::optional<T>& value) {
    if (value) {
      *this = Value(*value);
    }
  }

  const QVariant& variant() const { return variant_; }

private:
  QVariant variant_;
};

/// Values by the names of their placeholders, without the colon.
using Bindings = std::vector<std::pair<QString, Value>>;

/// An instant as the stores hold it.
QString instantText(const QDateTime& instant);

} // namespace hangbook::store
