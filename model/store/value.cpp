// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/value.h"

#include <cmath>

#include "quantity/error.h"

namespace hangbook::store {

QString instantText(const QDateTime& instant) {
  return instant.toUTC().toString(Qt::ISODateWithMs);
}

// A null text is bound as NULL by Qt; in the store a text is never NULL by accident.
Value::Value(const QString& text) : variant_(text.isNull() ? QStringLiteral("") : text) {}

Value::Value(const char* text) : Value(QString::fromUtf8(text)) {}

// A null array is bound as NULL by Qt; a file of no bytes is a file.
Value::Value(const QByteArray& bytes) : variant_(bytes.isNull() ? QByteArray("", 0) : bytes) {}

Value::Value(double figure) : variant_(figure) {
  if (!std::isfinite(figure)) {
    throw Error(Trouble::badInput,
                "a figure that is not finite cannot be stored; what is not known is left out");
  }
}

Value::Value(const QUuid& id) {
  if (!id.isNull()) {
    variant_ = id.toString(QUuid::WithoutBraces);
  }
}

Value::Value(const QDate& date) {
  if (date.isValid()) {
    variant_ = date.toString(Qt::ISODate);
  }
}

Value::Value(const QDateTime& instant) {
  if (instant.isValid()) {
    variant_ = instantText(instant);
  }
}

} // namespace hangbook::store
