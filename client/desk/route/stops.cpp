// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include <QCoreApplication>
#include <QHash>
#include <QTimeZone>

#include "desk/route/route_model.h"
#include "desk/words/stack_text.h"
#include "venue/travel.h"

namespace hangbook::desk {
namespace {

/// "CEST". Asked of the time zones' own tables once for each zone and season: they take their time.
QString shortName(const QTimeZone& zone, const QDateTime& local) {
  thread_local QHash<std::pair<QByteArray, int>, QString> known;
  QString& name = known[{zone.id(), zone.offsetFromUtc(local)}];
  if (name.isEmpty()) {
    name = zone.displayName(local, QTimeZone::ShortName);
  }
  return name;
}

/// Hangs with like stacks are named together: "left, right: 6 full".
using Stacks = std::vector<std::pair<QString, QStringList>>;

void addStack(Stacks& stacks, const QString& stack, const QString& hang) {
  const auto like =
      std::find_if(stacks.begin(), stacks.end(), [&](const auto& each) { return each.first == stack; });
  if (like == stacks.end()) {
    stacks.push_back({stack, {hang}});
  } else {
    like->second << hang;
  }
}

QString wordsFor(const Stacks& stacks) {
  QStringList words;
  for (const auto& [stack, hangs] : stacks) {
    words << hangs.join(QStringLiteral(", ")) + QStringLiteral(": ") + stack;
  }
  return words.join(QStringLiteral("; "));
}

void addChoice(Stop& stop, const options::Choice& choice, const Overview& overview, Stacks& stacks) {
  ++stop.chosen;
  stop.verdict = stop.verdict ? std::max(*stop.verdict, choice.verdict) : choice.verdict;
  addStack(stacks, stackText(choice.key.stack, overview.catalogue), choice.hang);
  for (const options::PointResult& point : choice.points) {
    if (!stop.heaviestKn || point.staticKn > *stop.heaviestKn) {
      stop.heaviestKn = point.staticKn;
      stop.heaviestPoint = point.point;
      stop.heaviestCapacityKn = point.capacityKn;
    }
  }
}

} // namespace

QString keyOf(const ShowKey& show) {
  return show.tour + QLatin1Char('\n') + show.show;
}

QString localTime(const QDateTime& instant, const venue::Venue* venue) {
  if (!instant.isValid()) {
    return {};
  }
  const QTimeZone zone(venue != nullptr ? venue->timeZone.toUtf8() : QByteArray());
  if (!zone.isValid()) {
    return instant.toUTC().toString(QStringLiteral("HH:mm")) + QStringLiteral(" UTC");
  }
  const QDateTime local = instant.toTimeZone(zone);
  return local.toString(QStringLiteral("HH:mm ")) + shortName(zone, local);
}

std::vector<Stop> stopsOf(const Overview& overview) {
  std::vector<Stop> stops;
  QDate before;
  const venue::Venue* last = nullptr;
  for (const calendar::Show& show : overview.shows) {
    Stop stop;
    stop.show = show;
    const venue::Venue* venue = findVenue(overview, show.venue);
    stop.town = venue != nullptr ? venue->town : QString();
    stop.loadIn = localTime(show.loadIn, venue);
    if (before.isValid() && show.from.isValid()) {
      stop.daysBefore = before.daysTo(show.from);
    }
    if (last != nullptr && venue != nullptr) {
      stop.wayM = venue::shortestWay(*last, *venue);
    }
    last = venue;
    before = show.to.isValid() ? show.to : show.from;
    Stacks stacks;
    for (const calendar::Hang& hang : show.hangs) {
      if (const auto* choice = findChoice(overview, {show.tour, show.name}, hang.name)) {
        addChoice(stop, *choice, overview, stacks);
      }
    }
    stop.stacks = wordsFor(stacks);
    stops.push_back(std::move(stop));
  }
  return stops;
}

} // namespace hangbook::desk
