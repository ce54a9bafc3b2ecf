// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/parts.h"

#include <algorithm>

#include "reports/hung_table.h"

namespace hangbook::reports {

QString sidesText() {
  return QStringLiteral("Left and right: as seen from the stage, looking at the audience.");
}

QString datesOf(const calendar::Show& show) {
  const QString from = show.from.toString(Qt::ISODate);
  return show.to == show.from ? from : QStringLiteral("%1 to %2").arg(from, show.to.toString(Qt::ISODate));
}

Text datumText(const ShowAsIs& show) {
  const QString& datum = show.snapshot.venue.datum;
  return {Text::Size::body,
          QStringLiteral("Datum: %1. x towards the audience, y to stage left, heights above it.")
              .arg(datum.isEmpty() ? notKnown() : datum)};
}

std::optional<Text> windText(const ShowAsIs& show, const Figures& figures) {
  const calendar::Show& of = show.snapshot.show;
  if (show.snapshot.venue.outdoors == false) {
    return std::nullopt;
  }
  if (!show.snapshot.venue.outdoors) {
    return Text{Text::Size::strong, QStringLiteral("Whether the venue is outdoors is not known.")};
  }
  const QString basis = of.windBasis == calendar::WindBasis::gust ? QStringLiteral("gusts")
                        : of.windBasis == calendar::WindBasis::mean
                            ? QStringLiteral("a mean wind")
                            : QStringLiteral("a wind of unknown basis");
  return Text{
      Text::Size::strong,
      QStringLiteral(
          "Outdoors. The hangs are judged in %1 of %2 (mean over %3, at a height of %4); no figure here "
          "is meant for more.")
          .arg(basis, figures.speed(of.wind ? std::optional(inMetresPerSecond(*of.wind)) : std::nullopt),
               of.windAveraging ? QStringLiteral("%1 s").arg(*of.windAveraging) : notKnown(),
               figures.length(of.windHeight ? std::optional(inMetres(*of.windHeight)) : std::nullopt))};
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

bool worstFollows(const options::Option& option) {
  return std::ranges::none_of(option.findings, [](const options::Finding& finding) {
    return finding.applies && !finding.worstFollows;
  });
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
  sheet.notCleared << hungTroubles(show);
  return sheet;
}

} // namespace hangbook::reports
