// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/fault.h"

#include <QStringList>

namespace hangbook::exchange {
namespace {

constexpr qsizetype mostShown = 60;

/// On one line and not too long.
QString quoted(const QString& read) {
  QString inside = read.left(mostShown);
  for (QChar& each : inside) {
    if (!each.isPrint() && !each.isSurrogate()) {
      each = QLatin1Char(' ');
    }
  }
  if (!inside.isEmpty() && inside.back().isHighSurrogate()) {
    inside.chop(1);
  }
  return QStringLiteral("“%1%2”").arg(inside, read.size() > mostShown ? QStringLiteral("…") : QString());
}

} // namespace

QString text(const Fault& fault) {
  QStringList place;
  if (fault.line > 0) {
    place << QStringLiteral("line %1").arg(fault.line);
  }
  if (!fault.column.isEmpty()) {
    place << QStringLiteral("column ") + fault.column;
  }
  const QString where = place.isEmpty() ? QString() : place.join(QStringLiteral(", ")) + QStringLiteral(": ");
  const QString read =
      fault.read.isEmpty() ? QString() : QStringLiteral("read ") + quoted(fault.read) + QStringLiteral(", ");
  return where + read + QStringLiteral("expected ") + fault.expected;
}

} // namespace hangbook::exchange
