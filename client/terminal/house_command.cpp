// SPDX-License-Identifier: GPL-3.0-or-later
// House rules: what stands for a show and who set it where, and setting one.
#include <algorithm>

#include <QJsonArray>
#include <QLocale>

#include "actions/house_rules.h"
#include "options/house_figures.h"
#include "quantity/error.h"
#include "store/snapshot_store.h"
#include "terminal/answers.h"
#include "terminal/both_units.h"
#include "terminal/commands.h"
#include "terminal/facts.h"
#include "terminal/figures.h"
#include "terminal/people.h"
#include "terminal/store_door.h"
#include "terminal/table.h"

namespace hangbook::terminal {
namespace {

using options::HousePlace;

QString text(const Given& given, const char* option) {
  return QString::fromStdString(given.option(option).value_or("")).simplified();
}

/// As people type it, without a last 0.
QString plain(const std::optional<double>& value) {
  return value ? QString::number(*value) : QStringLiteral("–");
}

QString directionOf(const options::HouseFigureKind& kind) {
  switch (kind.stricter) {
  case options::Stricter::higher:
    return QStringLiteral("only higher");
  case options::Stricter::lower:
    return QStringLiteral("only lower");
  case options::Stricter::free:
    break;
  }
  return QStringLiteral("free, signed");
}

Ending list(const Given& given, Context& context) {
  const auto store = openStore(context);
  const calendar::Show show = findShow(*store, given);
  const options::Snapshot snapshot = store::loadSnapshot(*store, show.tour, show.name, today(context));
  const options::House house(snapshot.tour.house, snapshot.venue.house, snapshot.show.house);
  QJsonArray figures;
  Table table({{QStringLiteral("figure")},
               {QStringLiteral("value"), Column::Kind::figure},
               {QStringLiteral("unit")},
               {QStringLiteral("may move")},
               {QStringLiteral("set by"), Column::Kind::text}});
  for (const options::HouseFigureKind& kind : options::houseFigureKinds()) {
    const options::HouseValue value = house.figure(kind.id);
    table.add({kind.id, plain(value.value), kind.unit, directionOf(kind), value.source});
    figures.append(QJsonObject{{QStringLiteral("figure"), kind.id},
                               {QStringLiteral("value"), jsonFigure(value.value)},
                               {QStringLiteral("usual"), jsonFigure(kind.usual)},
                               {QStringLiteral("unit"), kind.unit},
                               {QStringLiteral("what"), kind.what},
                               {QStringLiteral("may_move"), directionOf(kind)},
                               {QStringLiteral("source"), value.source}});
  }
  if (context.json) {
    printJson(context, {{QStringLiteral("format"), QStringLiteral("hangbook.house/1")},
                        {QStringLiteral("tour"), show.tour},
                        {QStringLiteral("show"), show.name},
                        {QStringLiteral("venue"), show.venue},
                        {QStringLiteral("figures"), figures}});
  } else {
    context.out << "House rules as they stand for " << show.name << " (" << show.tour << "), " << show.venue
                << '\n';
    table.print(context.out);
  }
  return Ending::done;
}

options::HouseSite siteOf(store::Store& store, const Given& given) {
  const QString place = text(given, "--for");
  if (place == QStringLiteral("tour")) {
    return {HousePlace::tour, {}, findTour(store, given)};
  }
  if (place == QStringLiteral("venue")) {
    const QString name = text(given, "--venue");
    if (name.isEmpty()) {
      throw Error(Trouble::badInput, "--for venue: --venue NAME is expected");
    }
    return {HousePlace::venue, {}, name};
  }
  if (place == QStringLiteral("show")) {
    const calendar::Show show = findShow(store, given);
    return {HousePlace::show, show.tour, show.name};
  }
  throw Error(Trouble::badInput, "--for " + place.toStdString() + ": one of tour, venue, show is expected");
}

void tell(const options::HouseSite& site, const QString& what, const options::HouseEffect& effect,
          bool dryRun, Context& context) {
  QJsonArray changed;
  for (const options::VerdictChange& each : effect.changed) {
    changed.append(QJsonObject{{QStringLiteral("tour"), each.tour},
                               {QStringLiteral("show"), each.show},
                               {QStringLiteral("hang"), each.hang},
                               {QStringLiteral("option"), each.option},
                               {QStringLiteral("before"), options::wordFor(each.before)},
                               {QStringLiteral("now"), options::wordFor(each.now)},
                               {QStringLiteral("because"), each.because}});
  }
  if (context.json) {
    printJson(context, {{QStringLiteral("format"), QStringLiteral("hangbook.house-change/1")},
                        {QStringLiteral("for"), options::wordFor(site.place)},
                        {QStringLiteral("name"), site.name},
                        {QStringLiteral("what"), what},
                        {QStringLiteral("written"), !dryRun},
                        {QStringLiteral("judged"), effect.judged},
                        {QStringLiteral("changed"), changed}});
    return;
  }
  context.out << (dryRun ? "Would set for the " : "Set for the ") << options::wordFor(site.place) << ' '
              << site.name << ": " << what << ". " << QString::number(effect.judged)
              << " chosen options judged again, "
              << (effect.changed.empty()
                      ? QStringLiteral("none changes its verdict")
                      : QString::number(effect.changed.size()) +
                            (effect.changed.size() == 1 ? QStringLiteral(" changes its verdict")
                                                        : QStringLiteral(" change their verdict")))
              << ".\n";
  for (const options::VerdictChange& each : effect.changed) {
    context.out << "  " << each.show << ", " << each.hang << ", option " << each.option.left(8) << ": "
                << options::wordFor(each.before) << " → " << options::wordFor(each.now) << '\n';
    for (const QString& line : brokenInto(forReaders(context.out, each.because), 104)) {
      asIs(context.out) << "      " << line << '\n';
    }
  }
}

Ending set(const Given& given, Context& context) {
  const bool withdraw = given.has("--withdraw");
  if (withdraw == given.has("--value")) {
    throw Error(Trouble::badInput, "either --value FIGURE or --withdraw is expected");
  }
  const QString figure = text(given, "--figure");
  const bool dryRun = given.has("--dry-run");
  const auto store = openStore(context);
  const options::HouseSite site = siteOf(*store, given);
  const QString by = dryRun ? person(*store, context) : namedPerson(*store, context, "to sign a house rule");
  options::HouseEffect effect;
  QString what;
  if (withdraw) {
    effect = actions::withdrawHouseRule(*store, site, figure, by, today(context), dryRun);
    what = figure + QStringLiteral(" withdrawn");
  } else {
    bool isNumber = false;
    const QString typed = text(given, "--value");
    const double value = QLocale::c().toDouble(typed, &isNumber);
    if (!isNumber) {
      throw Error(Trouble::badInput,
                  "--value " + typed.toStdString() + ": a number is expected, such as 0.3");
    }
    if (text(given, "--because").isEmpty()) {
      throw Error(Trouble::badInput, "--because TEXT is expected: a house rule says why");
    }
    const venue::HouseFigure stated{figure, value, {}, text(given, "--because"), {}, {}};
    effect = actions::stateHouseRule(*store, site, stated, by, today(context), dryRun);
    what = figure + QStringLiteral(" ") + typed + QStringLiteral(", signed by ") + by;
  }
  tell(site, what, effect, dryRun, context);
  const bool worse = std::any_of(effect.changed.begin(), effect.changed.end(), [](const auto& each) {
    return each.now == options::Verdict::fails || each.now == options::Verdict::unproven;
  });
  return worse ? Ending::failing : Ending::done;
}

} // namespace

Command houseCommand() {
  return {"house",
          "the house rules that count for a show: each figure, its value, and who set it where",
          {showOption, tourOption},
          {},
          "hangbook house --show \"Pollan Cross\"",
          list};
}

Command houseSetCommand() {
  return {
      "house set",
      "state or withdraw a house rule, signed and dated, and tell which chosen options change their verdict",
      {{"--for", "PLACE", "tour, venue or show", true},
       {"--figure", "ID", "which figure, such as headroom-clearance", true},
       {"--value", "FIGURE", "its value, in the figure's own unit"},
       {"--because", "TEXT", "why"},
       {"--withdraw", "", "take it back instead"},
       {"--venue", "NAME", "the venue, for a venue"},
       {"--show", "NAME", "the show, for a show"},
       {"--tour", "NAME", "the tour, where there are several"},
       {"--dry-run", "", "only tell what would change"}},
      {},
      "hangbook house set --for venue --venue \"Tallow Hall\" --figure headroom-clearance --value 0.3 "
      "--because "
      "\"sprinkler heads\" --by \"Casimir Wold\"",
      set};
}

} // namespace hangbook::terminal
