// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/route/route_model.h"

#include "desk/style/verdict_mark.h"
#include "desk/words/plain_words.h"
#include "desk/words/words.h"

namespace hangbook::desk {
namespace {

Cell dayCell(const QDate& date) {
  Cell cell{.text = dateText(date), .missing = !date.isValid()};
  if (date.isValid()) {
    cell.number = static_cast<double>(date.toJulianDay());
    cell.toolTip = date.toString(QStringLiteral("dddd d MMMM yyyy"));
  }
  return cell;
}

} // namespace

void RouteModel::setFigures(const Figures& figures) {
  figures_ = figures;
  refresh();
}

Heading RouteModel::headingOf(RouteColumn column) const {
  switch (column) {
  case RouteColumn::from:
    return {.title = Words::tr("From"), .characters = 12, .wish = 13};
  case RouteColumn::to:
    return {.title = Words::tr("To"), .characters = 12, .wish = 13};
  case RouteColumn::gap:
    return {.title = Words::tr("Days on"),
            .figure = true,
            .characters = 9,
            .toolTip = Words::tr("Days since the stop before")};
  case RouteColumn::way:
    return {.title = Words::tr("Travel"),
            .figure = true,
            .characters = 9,
            .toolTip =
                Words::tr("The shortest way over the ground from the stop before; no road is shorter")};
  case RouteColumn::show:
    return {.title = Words::tr("Show"), .characters = 17, .wish = 21};
  case RouteColumn::venue:
    return {.title = Words::tr("Venue"), .characters = 19, .wish = 31};
  case RouteColumn::town:
    return {.title = Words::tr("Town"), .characters = 13, .wish = 19};
  case RouteColumn::loadIn:
    return {.title = Words::tr("Load-in"),
            .characters = 15,
            .wish = 15,
            .toolTip = Words::tr("By the venue's own clock")};
  case RouteColumn::verdict:
    return {.title = Words::tr("Verdict"),
            .characters = 14,
            .toolTip = Words::tr("The worst of the chosen options")};
  case RouteColumn::chosen:
    return {.title = Words::tr("Chosen"),
            .figure = true,
            .characters = 8,
            .toolTip = Words::tr("Hangs that have an option")};
  case RouteColumn::heaviest:
    return {.title = Words::tr("Heaviest"),
            .figure = true,
            .characters = 10,
            .wish = 11,
            .toolTip = Words::tr("Static load of the heaviest point of the chosen options")};
  case RouteColumn::stacks:
    return {.title = Words::tr("Stacks"), .characters = 18, .wish = 61};
  case RouteColumn::count:
    break;
  }
  return {};
}

Cell RouteModel::cellOf(const Stop& stop, RouteColumn column) const {
  switch (column) {
  case RouteColumn::from:
    return dayCell(stop.show.from);
  case RouteColumn::to:
    return dayCell(stop.show.to);
  case RouteColumn::gap:
    if (!stop.daysBefore) {
      return {.text = QStringLiteral("–"), .missing = true};
    }
    return {.text = QString::number(*stop.daysBefore), .number = static_cast<double>(*stop.daysBefore)};
  case RouteColumn::way:
    if (!stop.wayM) {
      return {.text = QStringLiteral("–"), .missing = true};
    }
    return {.text = figures_.way(*stop.wayM), .number = *stop.wayM};
  case RouteColumn::show:
    return {.text = stop.show.name, .strong = true, .endMatters = true};
  case RouteColumn::venue:
    return {.text = stop.show.venue, .endMatters = true};
  case RouteColumn::town:
    return {.text = stop.town};
  case RouteColumn::loadIn:
    return {.text = stop.loadIn.isEmpty() ? notKnownText() : stop.loadIn, .missing = stop.loadIn.isEmpty()};
  case RouteColumn::verdict:
    if (!stop.verdict) {
      return {.text = Words::tr("not chosen"), .number = -1};
    }
    return {.text = verdictWord(*stop.verdict),
            .number = static_cast<double>(*stop.verdict),
            .verdict = stop.verdict};
  case RouteColumn::chosen:
    return {.text = Words::tr("%1 of %2").arg(stop.chosen).arg(stop.show.hangs.size()),
            .number = static_cast<double>(stop.chosen)};
  case RouteColumn::heaviest:
    if (!stop.heaviestKn) {
      return {.text = QStringLiteral("–"), .missing = true};
    }
    return {.text = figures_.force(*stop.heaviestKn),
            .number = *stop.heaviestKn,
            .toolTip = Words::tr("Point %1, load at rest").arg(stop.heaviestPoint)};
  case RouteColumn::stacks:
    return {.text = stop.stacks, .toolTip = stop.stacks};
  case RouteColumn::count:
    break;
  }
  return {};
}

} // namespace hangbook::desk
