// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/words/typed_figures.h"

#include <QLocale>

#include "quantity/error.h"

namespace hangbook::desk {

NumberForm formOfLocale() {
  return {QLocale().decimalPoint() == QStringLiteral(",") ? ',' : '.'};
}

QString houseUnit(const QString& unit, UnitSystem system) {
  if (unit != QLatin1String("m")) {
    return unit;
  }
  const std::string_view written = unitOf<Length>(system);
  return QString::fromUtf8(written.data(), static_cast<qsizetype>(written.size()));
}

std::optional<double> houseFigureTyped(const QString& text, const QString& unit, UnitSystem system) {
  const QString typed = text.trimmed();
  if (unit == QLatin1String("m")) {
    try {
      return inMetres(parse<Length>(typed.toStdString(), unitOf<Length>(system), formOfLocale()));
    } catch (const Error&) { // not yet, or never, a length
      return std::nullopt;
    }
  }
  bool isNumber = false;
  const double value = QLocale().toDouble(typed, &isNumber);
  return isNumber ? std::optional(value) : std::nullopt;
}

} // namespace hangbook::desk
