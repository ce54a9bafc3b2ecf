// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>
#include <limits>
#include <optional>

#include <QJsonArray>

#include "store/calendar_store.h"
#include "store/snapshot_store.h"
#include "store/store.h"
#include "terminal/answers.h"
#include "terminal/chosen.h"
#include "terminal/commands.h"
#include "terminal/facts.h"
#include "terminal/figures.h"
#include "terminal/options_table.h"
#include "terminal/route_check.h"
#include "terminal/store_door.h"
#include "terminal/table.h"
#include "venue/travel.h"

namespace hangbook::terminal {
namespace {

using options::Verdict;

/// What the answers collect on the way through the tour.
struct Route {
  QJsonArray shows;
  Table table{{{QStringLiteral("dates"), Column::Kind::text},
               {QStringLiteral("show"), Column::Kind::text},
               {QStringLiteral("venue"), Column::Kind::text},
               {QStringLiteral("way km"), Column::Kind::figure},
               {QStringLiteral("hang")},
               {QStringLiteral("verdict")},
               {QStringLiteral("chosen")},
               {QStringLiteral("stack"), Column::Kind::text},
               {QStringLiteral("trim m"), Column::Kind::figure},
               {QStringLiteral("mark"), Column::Kind::figure},
               {QStringLiteral("because of"), Column::Kind::text}}};
  bool trouble = false;
  std::optional<venue::Venue> last = {}; ///< the venue of the stop before
  QDate left = {};                       ///< the last day there
};

QString datesOf(const calendar::Show& show) {
  const QString from = show.from.toString(Qt::ISODate);
  return show.to == show.from ? from : from + QStringLiteral(" to ") + show.to.toString(Qt::ISODate);
}

QString whyNot(const Chosen& chosen) {
  return chosen.now ? decidingRules(*chosen.now).join(QStringLiteral(", ")) : chosen.trouble;
}

void addHang(Route& route, QJsonArray& hangs, const calendar::Show& show, const QString& hang,
             const Chosen& chosen, const QString& way, bool first) {
  const auto verdict = chosen.verdict();
  route.trouble = route.trouble || verdict == Verdict::fails || verdict == Verdict::unproven;
  const QJsonValue none(QJsonValue::Null);
  hangs.append(
      QJsonObject{{QStringLiteral("hang"), hang},
                  {QStringLiteral("chosen"), chosen.choice ? QJsonValue(chosen.choice->option) : none},
                  {QStringLiteral("verdict"), verdict ? QJsonValue(options::wordFor(*verdict)) : none},
                  {QStringLiteral("verdict_when_chosen"),
                   chosen.choice ? QJsonValue(options::wordFor(chosen.choice->verdict)) : none},
                  {QStringLiteral("because"), whyNot(chosen)}});
  QStringList cells{first ? datesOf(show) : QString(),
                    first ? show.name : QString(),
                    first ? show.venue : QString(),
                    first ? way : QString(),
                    hang,
                    verdict ? options::wordFor(*verdict) : QStringLiteral("nothing chosen")};
  if (chosen.choice) {
    const options::Setting& setting = chosen.choice->setting;
    cells << chosen.choice->option.left(8) << shownStack(chosen.choice->key.stack) << shown(setting.trimM, 2)
          << (setting.mark ? QString::number(*setting.mark) : QString());
  } else {
    cells << QString() << QString() << QString() << QString();
  }
  route.table.add(cells << whyNot(chosen));
}

void addShow(Route& route, const options::Snapshot& snapshot) {
  const calendar::Show& show = snapshot.show;
  QJsonArray hangs;
  double km = std::numeric_limits<double>::quiet_NaN();
  if (route.last) {
    km = venue::shortestWay(*route.last, snapshot.venue).value_or(km) / 1000.0;
  }
  const QJsonValue none(QJsonValue::Null);
  const QString way = std::isnan(km) ? QString() : shown(km, 0);
  const bool dated = route.left.isValid() && show.from.isValid();
  const QJsonValue days = dated ? QJsonValue(route.left.daysTo(show.from)) : none;
  route.last = snapshot.venue;
  route.left = show.to.isValid() ? show.to : show.from;
  bool first = true;
  for (const calendar::Hang& hang : show.hangs) {
    addHang(route, hangs, show, hang.name, chosenFor(snapshot, hang.name), way, first);
    first = false;
  }
  if (show.hangs.empty()) {
    route.table.add({datesOf(show), show.name, show.venue, way, QStringLiteral("no hang"), QString(),
                     QString(), QString(), QString(), QString(), QString()});
  }
  route.shows.append(QJsonObject{{QStringLiteral("show"), show.name},
                                 {QStringLiteral("venue"), show.venue},
                                 {QStringLiteral("from"), show.from.toString(Qt::ISODate)},
                                 {QStringLiteral("to"), show.to.toString(Qt::ISODate)},
                                 {QStringLiteral("days_before"), days},
                                 {QStringLiteral("way_km"), std::isnan(km) ? none : QJsonValue(km)},
                                 {QStringLiteral("hangs"), hangs}});
}

Ending run(const Given& given, Context& context) {
  const auto store = openStore(context);
  const QString tour = findTour(*store, given);
  if (given.has("--check") || given.has("--afresh")) {
    return checkRoute(*store, tour, given.has("--afresh"), context);
  }
  Route route;
  store->reading([&] {
    for (const calendar::Show& show : store::loadShows(*store, tour)) {
      addShow(route, store::loadSnapshot(*store, show.tour, show.name, today(context)));
    }
  });
  if (context.json) {
    printJson(context, {{QStringLiteral("format"), QStringLiteral("hangbook.route/1")},
                        {QStringLiteral("tour"), tour},
                        {QStringLiteral("shows"), route.shows}});
  } else {
    context.out << tour << '\n';
    if (route.table.empty()) {
      context.out << "This tour has no show yet.\n";
    } else {
      route.table.print(context.out);
    }
  }
  return route.trouble ? Ending::failing : Ending::done;
}

} // namespace

Command routeCommand() {
  return {"route",
          "a tour's shows in order of date, with what is chosen for each hang and how it stands today",
          {{"--tour", "NAME", "which tour, where there are several"},
           {"--check", "",
            "check every option of every show, on all cores; Ctrl+C stops it and keeps what is done"},
           {"--afresh", "", "the same, also what was checked before and has not changed since"}},
          {},
          "hangbook route --tour \"Lanternfish Parade 2027\"",
          run};
}

} // namespace hangbook::terminal
