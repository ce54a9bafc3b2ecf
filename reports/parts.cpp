// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/parts.h"

#include <algorithm>

namespace hangbook::reports {

QString sidesText() {
  return QStringLiteral(
      "Left and right: as seen from the stage, looking at the audience (stage left, stage right).");
}

QString datesOf(const calendar::Show& show) {
  const QString from = show.from.toString(Qt::ISODate);
  return show.to == show.from ? from : QStringLiteral("%1 to %2").arg(from, show.to.toString(Qt::ISODate));
}

QString stackText(const QStringList& stack) {
  QStringList parts;
  for (qsizetype i = 0; i < stack.size();) {
    qsizetype same = i;
    while (same < stack.size() && stack[same] == stack[i]) {
      ++same;
    }
    parts << QStringLiteral("%1 × %2").arg(same - i).arg(stack[i]);
    i = same;
  }
  return parts.join(QStringLiteral(", "));
}

QString revisionOf(const ShowAsIs& show) {
  QStringList parts{QStringLiteral("show r%1").arg(show.snapshot.show.revision)};
  for (const HangAsIs& hang : show.hangs) {
    parts << (hang.choice ? QStringLiteral("%1 r%2").arg(hang.hang).arg(hang.choice->revision)
                          : QStringLiteral("%1 not chosen").arg(hang.hang));
  }
  return parts.join(QStringLiteral(", "));
}

QStringList notClearedOf(const HangAsIs& hang) {
  QStringList lines;
  if (!hang.choice) {
    return {QStringLiteral("Hang %1: nothing is chosen.").arg(hang.hang)};
  }
  if (!hang.now) {
    return {QStringLiteral("Hang %1: %2").arg(hang.hang, hang.trouble)};
  }
  for (const options::Verdict verdict : {options::Verdict::fails, options::Verdict::unproven}) {
    for (const options::Finding& finding : hang.now->findings) {
      if (finding.applies && finding.verdict == verdict) {
        lines << QStringLiteral("Hang %1, %2 %3: %4")
                     .arg(hang.hang, finding.rule, options::wordFor(verdict), finding.text);
      }
    }
  }
  if (hang.choice->verdict == options::Verdict::unproven && !hang.choice->reason.isEmpty()) {
    lines << QStringLiteral("Hang %1, exception signed by %2 on %3: %4")
                 .arg(hang.hang, hang.choice->by, hang.choice->at.toUTC().date().toString(Qt::ISODate),
                      hang.choice->reason);
  }
  return lines;
}

Sheet begun(const QString& kind, const QString& title, const ShowAsIs& show) {
  const calendar::Show& of = show.snapshot.show;
  Sheet sheet;
  sheet.kind = kind;
  sheet.title = title;
  sheet.show = QStringLiteral("%1, %2").arg(of.name, datesOf(of));
  sheet.about = {QStringLiteral("%1, %2").arg(show.snapshot.venue.name, show.snapshot.venue.town),
                 show.snapshot.tour.act.isEmpty()
                     ? of.tour
                     : QStringLiteral("%1, %2").arg(show.snapshot.tour.act, of.tour)};
  sheet.revision = revisionOf(show);
  sheet.sides = sidesText();
  for (const HangAsIs& hang : show.hangs) {
    sheet.notCleared << notClearedOf(hang);
  }
  return sheet;
}

} // namespace hangbook::reports
