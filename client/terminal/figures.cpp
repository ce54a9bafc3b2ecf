// SPDX-License-Identifier: GPL-3.0-or-later
#include "terminal/figures.h"

#include <cmath>

namespace hangbook::terminal {

QString shown(std::optional<double> figure, int digits) {
  if (!figure || !std::isfinite(*figure)) {
    return QStringLiteral("–");
  }
  QString text = QString::number(*figure, 'f', digits);
  if (text.startsWith(QLatin1Char('-')) && text.toDouble() == 0.0) {
    text.remove(0, 1);
  }
  return text;
}

QString shownAngle(std::optional<double> figure, int digits) {
  const QString text = shown(figure, digits);
  const bool rises = text.toDouble() > 0.0;
  return rises ? QLatin1Char('+') + text : text;
}

QJsonValue jsonFigure(std::optional<double> figure) {
  return figure && std::isfinite(*figure) ? QJsonValue(*figure) : QJsonValue(QJsonValue::Null);
}

QString shownStack(const QStringList& stack) {
  QStringList parts;
  for (qsizetype at = 0; at < stack.size();) {
    qsizetype end = at;
    while (end < stack.size() && stack[end] == stack[at]) {
      ++end;
    }
    parts << (end - at > 1 ? QStringLiteral("%1 %2").arg(end - at).arg(stack[at]) : stack[at]);
    at = end;
  }
  return parts.join(QStringLiteral(", "));
}

} // namespace hangbook::terminal
