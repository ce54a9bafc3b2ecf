// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/find_index.h"
#include "desk/frame/place_names.h"
#include "desk/words/plain_words.h"
#include "desk/words/stack_text.h"
#include "desk/words/words.h"

namespace hangbook::desk {
namespace {

QString told(const QStringList& parts) {
  QStringList some = parts;
  some.removeAll(QString());
  return some.join(QStringLiteral(" · "));
}

QString showKey(const QString& tour, const QString& show, const QString& hang = {}) {
  const QString key = tour + QLatin1Char('\n') + show;
  return hang.isEmpty() ? key : key + QLatin1Char('\n') + hang;
}

template <class Types>
void addTypes(std::vector<Findable>& all, const Types& types, const QString& kind) {
  for (const auto& each : types) {
    all.push_back({told({each.name, kind}), place::data, each.name});
  }
}

void addPlaces(std::vector<Findable>& all) {
  const QString kind = Words::tr("place");
  const auto add = [&](const QString& name, const QString& place, const QString& part = {}) {
    all.push_back({told({name, kind}), place, {}, part});
  };
  add(Words::tr("Route"), place::route);
  add(Words::tr("Options"), place::options);
  add(Words::tr("Build"), place::build);
  add(Words::tr("Fleet"), place::fleet);
  add(Words::tr("Fleet: stock against demand"), place::fleet, QStringLiteral("stock"));
  add(Words::tr("Fleet: truck loads"), place::fleet, QStringLiteral("loads"));
  add(Words::tr("Examinations"), place::examinations);
  add(Words::tr("Data"), place::data);
  all.push_back({told({Words::tr("All keys"), Words::tr("help")}), place::help, {}, QStringLiteral("keys")});
  all.push_back(
      {told({Words::tr("Explain this place"), Words::tr("help")}), place::help, {}, QStringLiteral("place")});
  all.push_back({told({Words::tr("About Hangbook: licence and cautions"), Words::tr("help")}),
                 place::help,
                 {},
                 QStringLiteral("about")});
}

void addPlans(std::vector<Findable>& all, const Overview& overview) {
  for (const calendar::Show& show : overview.shows) {
    all.push_back({told({show.name, show.venue, show.from.toString(Qt::ISODate), Words::tr("show")}),
                   place::options, showKey(show.tour, show.name)});
  }
  for (const options::Choice& choice : overview.choices) {
    all.push_back({told({stackText(choice.key.stack, overview.catalogue), choice.hang, choice.show,
                         Words::tr("chosen"), choice.option}),
                   place::options, showKey(choice.tour, choice.show, choice.hang)});
  }
  for (const venue::Venue& venue : overview.venues) {
    all.push_back({told({venue.name, venue.town, Words::tr("venue")}), place::data, venue.name});
    for (const venue::Point& point : venue.points) {
      all.push_back({told({point.name, Words::tr("point of %1").arg(venue.name), point.zone}), place::data,
                     venue.name});
    }
  }
}

} // namespace

std::vector<Findable> findablesOf(const Overview& overview) {
  std::vector<Findable> all;
  addPlaces(all);
  addPlans(all, overview);
  for (const fleet::Unit& unit : overview.units) {
    all.push_back({told({unit.serial, unit.type, unit.place, wordOf(unit.kind)}), place::fleet, unit.serial});
  }
  for (const marks::MarkUsed& mark : overview.marks) {
    all.push_back({told({Words::tr("mark %1").arg(mark.mark), mark.chainSerial, mark.hang, mark.show,
                         mark.place, mark.date.toString(Qt::ISODate)}),
                   place::build, showKey(mark.tour, mark.show)});
  }
  for (const calendar::Planned& each : overview.due) {
    const fleet::Due& due = each.due;
    all.push_back(
        {told({due.serial, due.rule,
               due.due.isValid() ? Words::tr("due %1").arg(due.due.toString(Qt::ISODate)) : due.note,
               Words::tr("examination")}),
         place::examinations, due.serial, due.rule});
  }
  addTypes(all, overview.catalogue.cabinets, Words::tr("cabinet type"));
  addTypes(all, overview.catalogue.bars, Words::tr("bar type"));
  addTypes(all, overview.catalogue.hoists, Words::tr("hoist type"));
  addTypes(all, overview.catalogue.chains, Words::tr("chain type"));
  addTypes(all, overview.catalogue.hardware, Words::tr("hardware type"));
  addTypes(all, overview.catalogue.carts, Words::tr("cart type"));
  addTypes(all, overview.catalogue.tables, Words::tr("stacking table"));
  addTypes(all, overview.connections.connectors, Words::tr("connector"));
  addTypes(all, overview.people, Words::tr("person"));
  return all;
}

} // namespace hangbook::desk
