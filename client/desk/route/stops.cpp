// SPDX-License-Identifier: GPL-3.0-or-later
#include <QCoreApplication>
#include <QTimeZone>

#include "desk/route/route_model.h"
#include "desk/words/stack_text.h"

namespace hangbook::desk {
namespace {

/// A time as the clock on the venue's wall shows it.
QString localTime(const QDateTime& instant, const venue::Venue* venue) {
  if (!instant.isValid()) {
    return {};
  }
  const QTimeZone zone(venue != nullptr ? venue->timeZone.toUtf8() : QByteArray());
  if (!zone.isValid()) {
    return instant.toUTC().toString(QStringLiteral("HH:mm")) + QStringLiteral(" UTC");
  }
  const QDateTime local = instant.toTimeZone(zone);
  return local.toString(QStringLiteral("HH:mm ")) + zone.displayName(local, QTimeZone::ShortName);
}

void addChoice(Stop& stop, const options::Choice& choice, const Overview& overview, QStringList& stacks) {
  ++stop.chosen;
  stop.verdict = stop.verdict ? std::max(*stop.verdict, choice.verdict) : choice.verdict;
  const QString stack = stackText(choice.key.stack, overview.catalogue);
  stacks << choice.hang + QStringLiteral(": ") + stack;
  for (const options::PointResult& point : choice.points) {
    if (!stop.heaviestKn || point.staticKn > *stop.heaviestKn) {
      stop.heaviestKn = point.staticKn;
      stop.heaviestPoint = point.point;
      stop.heaviestCapacityKn = point.capacityKn;
    }
  }
}

} // namespace

std::vector<Stop> stopsOf(const Overview& overview) {
  std::vector<Stop> stops;
  QDate before;
  for (const calendar::Show& show : overview.shows) {
    Stop stop;
    stop.show = show;
    const venue::Venue* venue = findVenue(overview, show.venue);
    stop.town = venue != nullptr ? venue->town : QString();
    stop.loadIn = localTime(show.loadIn, venue);
    if (before.isValid() && show.from.isValid()) {
      stop.daysBefore = before.daysTo(show.from);
    }
    before = show.to.isValid() ? show.to : show.from;
    QStringList stacks;
    for (const calendar::Hang& hang : show.hangs) {
      if (const auto* choice = findChoice(overview, {show.tour, show.name}, hang.name)) {
        addChoice(stop, *choice, overview, stacks);
      }
    }
    stop.stacks = stacks.join(QStringLiteral("; "));
    stops.push_back(std::move(stop));
  }
  return stops;
}

} // namespace hangbook::desk
