// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/route/route_model.h"

#include <QCoreApplication>

#include "desk/style/verdict_mark.h"
#include "desk/words/plain_words.h"

namespace hangbook::desk {
namespace {

QString words(const char* text) {
  return QCoreApplication::translate("RouteModel", text);
}

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
    return {.title = words("From"), .characters = 12, .wish = 13};
  case RouteColumn::to:
    return {.title = words("To"), .characters = 12, .wish = 13};
  case RouteColumn::gap:
    return {.title = words("Days on"),
            .figure = true,
            .characters = 9,
            .toolTip = words("Days since the stop before")};
  case RouteColumn::way:
    return {.title = words("Way"),
            .figure = true,
            .characters = 9,
            .toolTip = words("The shortest way over the ground from the stop before; no road is shorter")};
  case RouteColumn::show:
    return {.title = words("Show"), .characters = 17, .wish = 21};
  case RouteColumn::venue:
    return {.title = words("Venue"), .characters = 19, .wish = 31};
  case RouteColumn::town:
    return {.title = words("Town"), .characters = 13, .wish = 19};
  case RouteColumn::loadIn:
    return {.title = words("Load-in"),
            .characters = 13,
            .wish = 15,
            .toolTip = words("By the venue's own clock")};
  case RouteColumn::verdict:
    return {.title = words("Verdict"), .characters = 14, .toolTip = words("The worst of the chosen options")};
  case RouteColumn::chosen:
    return {.title = words("Chosen"),
            .figure = true,
            .characters = 8,
            .toolTip = words("Hangs that have an option")};
  case RouteColumn::heaviest:
    return {.title = words("Heaviest"),
            .figure = true,
            .characters = 14,
            .wish = 17,
            .toolTip = words("Static load of the heaviest point of the chosen options")};
  case RouteColumn::stacks:
    return {.title = words("Stacks"), .characters = 20, .wish = 61};
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
    return {.text = stop.show.name, .strong = true};
  case RouteColumn::venue:
    return {.text = stop.show.venue};
  case RouteColumn::town:
    return {.text = stop.town};
  case RouteColumn::loadIn:
    return {.text = stop.loadIn.isEmpty() ? notKnownText() : stop.loadIn, .missing = stop.loadIn.isEmpty()};
  case RouteColumn::verdict:
    if (!stop.verdict) {
      return {.text = words("not chosen"), .number = -1};
    }
    return {.text = verdictWord(*stop.verdict),
            .number = static_cast<double>(*stop.verdict),
            .verdict = stop.verdict};
  case RouteColumn::chosen:
    return {.text = words("%1 of %2").arg(stop.chosen).arg(stop.show.hangs.size()),
            .number = static_cast<double>(stop.chosen)};
  case RouteColumn::heaviest:
    if (!stop.heaviestKn) {
      return {.text = QStringLiteral("–"), .missing = true};
    }
    return {.text = figures_.force(*stop.heaviestKn),
            .number = *stop.heaviestKn,
            .toolTip = words("Point %1, load at rest").arg(stop.heaviestPoint)};
  case RouteColumn::stacks:
    return {.text = stop.stacks, .toolTip = stop.stacks};
  case RouteColumn::count:
    break;
  }
  return {};
}

} // namespace hangbook::desk
