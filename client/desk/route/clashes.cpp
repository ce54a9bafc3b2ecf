// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/route/clashes.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <map>
#include <optional>
#include <utility>

#include <QTimeZone>

#include "desk/fleet/stock_look.h"
#include "desk/route/route_model.h"
#include "desk/words/plain_words.h"
#include "desk/words/words.h"
#include "venue/travel.h"

namespace hangbook::desk {
namespace {

constexpr double metresInKm = 1000.0;
constexpr double secondsInHour = 3600.0;
constexpr double secondsInDay = 86'400.0;

bool isOver(const calendar::Show& show, QDate today) {
  const QDate last = show.awayTo.isValid() ? show.awayTo : show.to;
  return last.isValid() && last < today;
}

/// The least time that the way takes, s.
double leastSeconds(double metres) {
  return metres / metresInKm / fastestTruckKmh * secondsInHour;
}

/// "2027-03-28 09:40 CEST"
QString localMoment(const QDateTime& instant, const venue::Venue& venue) {
  const QTimeZone zone(venue.timeZone.toUtf8());
  const QDate day = (zone.isValid() ? instant.toTimeZone(zone) : instant.toUTC()).date();
  return dateText(day) + QLatin1Char(' ') + localTime(instant, &venue);
}

void addGear(const Overview& overview, std::vector<Clash>& clashes) {
  const options::Stock stock{overview.units, overview.rules, overview.examinations, overview.occurrences};
  const auto demands = demandsOf(overview, overview.today);
  std::map<QDate, std::vector<options::TypeOnDay>> days;
  for (const options::Shortage& lack : options::shortagesOf(stock, demands)) {
    auto& types = days[lack.day];
    if (types.empty()) {
      types = options::stockOn(lack.day, stock, demands);
    }
    const auto type = std::find_if(types.begin(), types.end(), [&](const options::TypeOnDay& each) {
      return each.kind == lack.kind && each.type == lack.type;
    });
    QStringList takers;
    if (type != types.end()) {
      for (const options::Taker& taker : type->takers) {
        takers << Words::tr("%1 (%2)").arg(taker.show).arg(taker.number);
      }
    }
    const calendar::Show* show = findShow(overview, {lack.tour, lack.show});
    const QDate leaves = show == nullptr ? QDate() : show->awayFrom;
    const QString what = takers.size() > 1
                             ? Words::tr("%1: %2 too few for the shows that are away at once: %3.")
                             : Words::tr("%1: %2 too few for %3.");
    const QString way =
        leaves.isValid() && leaves > overview.today
            ? Words::tr("Before the gear leaves on %1: %2.").arg(dateText(leaves), fillsIt(lack))
            : Words::tr("At once: %1.").arg(fillsIt(lack));
    clashes.push_back({Clash::Kind::gear, lack.day, lack.tour, lack.show,
                       what.arg(lack.type).arg(lack.lacking).arg(takers.join(QStringLiteral(", "))), way});
  }
}

/// The show whose days away hold that day.
const calendar::Show* awayOn(const Overview& overview, QDate day) {
  const auto found =
      std::find_if(overview.shows.begin(), overview.shows.end(), [&](const calendar::Show& show) {
        return show.awayFrom.isValid() && show.awayTo.isValid() && show.awayFrom <= day && day <= show.awayTo;
      });
  return found == overview.shows.end() ? nullptr : &*found;
}

void addExaminations(const Overview& overview, std::vector<Clash>& clashes) {
  std::vector<calendar::Planned> ahead;
  std::copy_if(overview.due.begin(), overview.due.end(), std::back_inserter(ahead),
               [](const calendar::Planned& each) { return each.ahead; });
  for (const calendar::Visit& visit : calendar::visits(ahead)) {
    const auto first = std::min_element(
        visit.units.begin(), visit.units.end(),
        [](const calendar::Planned& a, const calendar::Planned& b) { return a.due.due < b.due.due; });
    const calendar::Show* show = awayOn(overview, first->due.due);
    const auto units = static_cast<int>(visit.units.size());
    const QString what =
        units == 1 ? Words::tr("%1 falls due for “%2” on %3, while the gear is away.")
                         .arg(first->due.serial, first->due.rule, dateText(first->due.due))
                   : Words::tr("%1 examinations fall due while the gear is away, the first of %2 on %3.")
                         .arg(units)
                         .arg(first->due.serial, dateText(first->due.due));
    const QString where = visit.slot.warehouse ? Words::tr("at the warehouse") : visit.slot.place;
    clashes.push_back(
        {Clash::Kind::examination, first->due.due, show == nullptr ? QString() : show->tour,
         show == nullptr ? QString() : show->name, what,
         visit.slot.from == visit.slot.to
             ? Words::tr("Examine ahead of the day: %1, on %2.").arg(where, dateText(visit.slot.to))
             : Words::tr("Examine ahead of the day: %1, between %2 and %3.")
                   .arg(where, dateText(visit.slot.from), dateText(visit.slot.to))});
  }
}

std::optional<Clash> travelClash(const calendar::Show& before, const calendar::Show& after,
                                 const Overview& overview, const Figures& figures) {
  const venue::Venue* from = findVenue(overview, before.venue);
  const venue::Venue* to = findVenue(overview, after.venue);
  if (from == nullptr || to == nullptr) {
    return std::nullopt;
  }
  const std::optional<double> way = venue::shortestWay(*from, *to);
  if (!way) {
    return std::nullopt;
  }
  const double least = leastSeconds(*way);
  Clash clash{Clash::Kind::travel, after.from, after.tour, after.name, {}, {}};
  const QString told = figures.way(*way);
  if (before.loadOut.isValid() && after.loadIn.isValid()) {
    const auto left = static_cast<double>(before.loadOut.secsTo(after.loadIn));
    if (left >= least) {
      return std::nullopt;
    }
    // Said to the minute, so rounded to the safe side.
    const QDateTime reached =
        before.loadOut.addSecs(static_cast<qint64>(std::ceil(least / 60.0)) * 60); // whole minutes
    clash.what =
        Words::tr("From the load-out at %1 (%2) to the load-in here are %3 h for %4 over the ground.")
            .arg(before.venue, localMoment(before.loadOut, *from), figures.plain(left / secondsInHour, 1),
                 told);
    clash.wayOut = Words::tr("No truck is here before %1: load in later, or take other gear.")
                       .arg(localMoment(reached, *to));
    return clash;
  }
  if (!before.to.isValid() || !after.from.isValid()) {
    return std::nullopt;
  }
  // Without times the whole of both days counts: only what not even that reaches clashes.
  const double left = static_cast<double>(before.to.daysTo(after.from) + 1) * secondsInDay;
  if (left >= least) {
    return std::nullopt;
  }
  const auto days = static_cast<qint64>(std::ceil(least / secondsInDay)) - 1;
  clash.what =
      Words::tr("%1 is over on %2, and %3 lie between.").arg(before.venue, dateText(before.to), told);
  clash.wayOut = Words::tr("No truck is here before %1: begin later, or take other gear.")
                     .arg(dateText(before.to.addDays(days)));
  return clash;
}

void addTravel(const Overview& overview, const Figures& figures, std::vector<Clash>& clashes) {
  std::map<QString, const calendar::Show*> last;
  for (const calendar::Show& show : overview.shows) { // in order of date
    const calendar::Show*& before = last[show.tour];
    if (before != nullptr && !isOver(show, overview.today)) {
      if (auto clash = travelClash(*before, show, overview, figures)) {
        clashes.push_back(std::move(*clash));
      }
    }
    before = &show;
  }
}

} // namespace

std::vector<Clash> clashesOf(const Overview& overview, const Figures& figures) {
  std::vector<Clash> clashes;
  addGear(overview, clashes);
  addExaminations(overview, clashes);
  addTravel(overview, figures, clashes);
  std::stable_sort(clashes.begin(), clashes.end(),
                   [](const Clash& a, const Clash& b) { return a.day < b.day; });
  return clashes;
}

Heading ClashModel::headingOf(ClashColumn column) const {
  switch (column) {
  case ClashColumn::day:
    return {.title = Words::tr("Day"), .characters = 14};
  case ClashColumn::show:
    return {.title = Words::tr("Show"), .characters = 16, .wish = 20};
  case ClashColumn::kind:
    return {.title = Words::tr("Clash"), .characters = 15};
  case ClashColumn::what:
    return {.title = Words::tr("What does not go together"), .characters = 40, .wish = 80};
  case ClashColumn::wayOut:
    return {.title = Words::tr("A way out"), .characters = 34, .wish = 60};
  case ClashColumn::count:
    break;
  }
  return {};
}

Cell ClashModel::cellOf(const Clash& clash, ClashColumn column) const {
  switch (column) {
  case ClashColumn::day:
    return {.text = dateText(clash.day)};
  case ClashColumn::show:
    return {.text = clash.show.isEmpty() ? QStringLiteral("–") : clash.show, .strong = true};
  case ClashColumn::kind:
    return {.text = clash.kind == Clash::Kind::gear          ? Words::tr("gear")
                    : clash.kind == Clash::Kind::examination ? Words::tr("examination")
                                                             : Words::tr("travel")};
  case ClashColumn::what:
    return {.text = clash.what, .toolTip = clash.what};
  case ClashColumn::wayOut:
    return {.text = clash.wayOut, .toolTip = clash.wayOut};
  case ClashColumn::count:
    break;
  }
  return {};
}

} // namespace hangbook::desk
