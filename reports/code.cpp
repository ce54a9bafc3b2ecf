// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/code.h"

#include <QCryptographicHash>
#include <QUrl>

#include "quantity/error.h"

namespace hangbook::reports {
namespace {

const QString mark = QStringLiteral("HANGBOOK1");

QString encoded(const QString& text) {
  return QString::fromLatin1(QUrl::toPercentEncoding(text, " "));
}

QString decoded(const QString& text) {
  return QUrl::fromPercentEncoding(text.toLatin1());
}

} // namespace

QString checksumOf(const Sheet& sheet) {
  QByteArray all;
  for (const QStringList& record : recordsOf(sheet, {})) {
    for (const QString& cell : record) {
      all += cell.toUtf8() + '\x1f';
    }
    all += '\x1e';
  }
  return QString::fromLatin1(QCryptographicHash::hash(all, QCryptographicHash::Sha256).toHex().left(8));
}

QString textOf(const SheetCode& code) {
  return QStringList{mark,
                     encoded(code.kind),
                     encoded(code.tour),
                     encoded(code.show),
                     code.units == UnitSystem::metric ? QStringLiteral("metric") : QStringLiteral("us"),
                     code.asOf.toString(Qt::ISODate),
                     code.checksum}
      .join(QLatin1Char('|'));
}

SheetCode readCode(const QString& text) {
  const QStringList parts = text.trimmed().split(QLatin1Char('|'));
  SheetCode code;
  if (parts.size() == 7) {
    code = {decoded(parts[1]),
            decoded(parts[2]),
            decoded(parts[3]),
            parts[4] == QLatin1String("us") ? UnitSystem::usCustomary : UnitSystem::metric,
            QDate::fromString(parts[5], Qt::ISODate),
            parts[6]};
  }
  if (parts.size() != 7 || parts[0] != mark || !code.asOf.isValid() || code.checksum.size() != 8 ||
      (parts[4] != QLatin1String("us") && parts[4] != QLatin1String("metric"))) {
    throw Error(Trouble::badInput, "\"" + text.toStdString() +
                                       "\" is not what a sheet's QR code says; it begins with HANGBOOK1|");
  }
  return code;
}

} // namespace hangbook::reports
