// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "reports/parts.h"

namespace hangbook::reports {
namespace {

using Size = Text::Size;

double totalOf(const options::Option& option) {
  double sum = 0;
  for (const options::PointResult& point : option.points) {
    sum += point.staticKn;
  }
  return sum;
}

QString verdictOf(const HangAsIs& hang) {
  return !hang.choice ? QStringLiteral("not chosen")
         : hang.now   ? options::wordFor(hang.now->verdict)
                      : QStringLiteral("unproven");
}

} // namespace

Sheet tourSummary(const QString& tour, const std::vector<ShowAsIs>& shows, const Figures& figures) {
  Sheet sheet;
  sheet.kind = QStringLiteral("tour-summary");
  sheet.title = QStringLiteral("Tour summary");
  sheet.show = tour;
  sheet.revision = QStringLiteral("%1 shows").arg(shows.size());
  sheet.sides = sidesText();
  Table table;
  table.name = QStringLiteral("shows");
  table.title = QStringLiteral("Shows, hang by hang");
  table.columns = {
      {QStringLiteral("Dates"), 1.75, false},     {QStringLiteral("Show, venue"), 2.1, false},
      {QStringLiteral("Hang"), 0.8, false},       {QStringLiteral("Verdict"), 1.45, false},
      {QStringLiteral("Stack"), 3.0, false},      {QStringLiteral("On the points, at rest"), 1.3, true},
      {QStringLiteral("Lowest edge"), 1.3, true}, {QStringLiteral("Mark"), 0.9, true}};
  Chart loads{QStringLiteral("Most that one hang puts on its points, at rest"), {}};
  Chart trims{QStringLiteral("Lowest edge above the datum"), {}};
  for (const ShowAsIs& show : shows) {
    bool first = true;
    double most = 0;
    std::optional<double> trim;
    for (const HangAsIs& hang : show.hangs) {
      const auto& of = show.snapshot.show;
      Table::Row row;
      row.cells = {first ? datesOf(of) : QString(),
                   first ? QStringLiteral("%1, %2").arg(of.name, of.venue) : QString(), hang.hang,
                   verdictOf(hang)};
      if (hang.now) {
        row.cells << stackText(hang.now->key.stack) << figures.force(totalOf(*hang.now))
                  << figures.length(hang.now->setting ? std::optional(hang.now->setting->trimM)
                                                      : std::nullopt)
                  << (hang.now->setting && hang.now->setting->mark ? QString::number(*hang.now->setting->mark)
                                                                   : QStringLiteral("–"));
        most = std::max(most, totalOf(*hang.now));
        if (hang.now->setting) {
          trim = hang.now->setting->trimM;
        }
      } else {
        row.cells << QString() << QString() << QString() << QString();
      }
      const QString verdict = verdictOf(hang);
      row.strong = verdict == QLatin1String("fails") || verdict == QLatin1String("unproven");
      row.withNext = &hang != &show.hangs.back(); // one show stays on one page
      first = false;
      table.rows.push_back(row);
    }
    if (most > 0) {
      loads.bars.push_back({show.snapshot.show.name, most, figures.force(most)});
    }
    if (trim) {
      trims.bars.push_back({show.snapshot.show.name, *trim, figures.length(trim)});
    }
  }
  sheet.blocks.emplace_back(Text{
      Size::body,
      QStringLiteral("Verdicts as today's data give them at the chosen setting; heights above "
                     "each venue's own datum. “Holds” means within the limits entered; it is no permission "
                     "to lift.")});
  sheet.blocks.emplace_back(table);
  sheet.blocks.emplace_back(loads);
  sheet.blocks.emplace_back(trims);
  return sheet;
}

} // namespace hangbook::reports
