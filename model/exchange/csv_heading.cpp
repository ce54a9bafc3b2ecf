// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/csv_heading.h"

#include <array>

#include <QStringList>

#include "quantity/units.h"

namespace hangbook::exchange {
namespace {

/// Units that a name may end in after an underscore. Not "in", "n", "t" or "g": "load_in" has no unit.
constexpr std::array endings = {"kg", "lb", "lbs", "lbf", "kn", "m", "cm", "mm", "ft", "deg"};

/// A unit of ours, or one that a cell is refused for by name ("ton"), or one of a plain number.
bool isUnit(const QString& text) {
  static const QStringList others = {QStringLiteral("ton"), QStringLiteral("tons"), QStringLiteral("T"),
                                     QStringLiteral("%"),   QStringLiteral("°C"),   QStringLiteral("°F"),
                                     QStringLiteral("dB"),  QStringLiteral("m²"),   QStringLiteral("m2")};
  return others.contains(text) || units::known(text.toStdString());
}

/// Splits "name<open>unit<close>" at its last opening mark.
bool splitUnit(CsvHeading& heading, QString& name, QChar open, QChar close, bool anything) {
  if (!close.isNull() && !name.endsWith(close)) {
    return false;
  }
  const qsizetype at = name.lastIndexOf(open);
  if (at <= 0) {
    return false;
  }
  const QString unit = name.sliced(at + 1).chopped(close.isNull() ? 0 : 1).trimmed();
  if (unit.isEmpty() || !(anything || isUnit(unit))) {
    return false;
  }
  heading.unit = unit;
  name = name.left(at).trimmed();
  return true;
}

} // namespace

QString foldedName(const QString& name) {
  QString folded;
  for (const QChar c : name.trimmed().toCaseFolded()) {
    if (c.isSpace() || c == u'_' || c == u'-') {
      if (!folded.isEmpty() && folded.back() != u'_') {
        folded += u'_';
      }
    } else {
      folded += c;
    }
  }
  if (folded.endsWith(u'_')) {
    folded.chop(1);
  }
  return folded;
}

CsvHeading readHeading(const QString& written) {
  CsvHeading heading;
  heading.written = written.trimmed();
  QString name = heading.written;
  splitUnit(heading, name, u'[', u']', true) || splitUnit(heading, name, u'(', u')', false) ||
      splitUnit(heading, name, u',', {}, false);
  heading.name = foldedName(name);
  heading.shortName = heading.name;
  heading.shortUnit = heading.unit;
  if (heading.unit.isEmpty() && heading.written.contains(u'_')) {
    for (const char* unit : endings) {
      const QString ending = QLatin1Char('_') + QLatin1String(unit);
      if (heading.name.size() > ending.size() && heading.name.endsWith(ending)) {
        heading.shortName = heading.name.chopped(ending.size());
        heading.shortUnit = QLatin1String(unit);
      }
    }
  }
  return heading;
}

} // namespace hangbook::exchange
