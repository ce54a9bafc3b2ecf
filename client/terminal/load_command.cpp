// SPDX-License-Identifier: GPL-3.0-or-later
#include <QJsonArray>

#include "fleet/load_list.h"
#include "options/cart_plan.h"
#include "options/demand.h"
#include "quantity/text.h"
#include "store/catalogue_store.h"
#include "store/choice_store.h"
#include "store/snapshot_store.h"
#include "store/warehouse_store.h"
#include "terminal/answers.h"
#include "terminal/commands.h"
#include "terminal/facts.h"
#include "terminal/fleet_words.h"
#include "terminal/store_door.h"
#include "terminal/table.h"

namespace hangbook::terminal {
namespace {

using fleet::LoadVerdict;

QString wordOf(LoadVerdict verdict) {
  switch (verdict) {
  case LoadVerdict::holds:
    return QStringLiteral("holds");
  case LoadVerdict::tight:
    return QStringLiteral("tight");
  case LoadVerdict::fails:
    return QStringLiteral("fails");
  case LoadVerdict::unproven:
    return QStringLiteral("unproven");
  }
  return {};
}

QJsonValue kilogramsOf(const std::optional<Mass>& mass) {
  return mass ? QJsonValue(inKilograms(*mass)) : QJsonValue(QJsonValue::Null);
}

QString massText(const std::optional<Mass>& mass) {
  return mass ? QString::number(inKilograms(*mass), 'f', 1) : QStringLiteral("unproven");
}

std::vector<options::HangStack> stacksOf(store::Store& store, const calendar::Show& show) {
  std::vector<options::HangStack> stacks;
  const auto choices = store::loadChoices(store, show.tour, show.name);
  for (const options::Choice* choice : options::newestOf(choices)) {
    stacks.push_back({choice->hang, choice->key.stack});
  }
  return stacks;
}

QJsonArray cartsInJson(const std::vector<options::PlannedCart>& carts) {
  QJsonArray list;
  for (const options::PlannedCart& cart : carts) {
    list.append(QJsonObject{{QStringLiteral("cart"), cart.cart},
                            {QStringLiteral("cabinet"), cart.cabinet},
                            {QStringLiteral("number"), cart.number},
                            {QStringLiteral("hangs"), QJsonArray::fromStringList(cart.hangs)},
                            {QStringLiteral("gross_kg"), kilogramsOf(cart.gross)}});
  }
  return list;
}

Ending planFor(const std::vector<options::PlannedCart>& carts, const calendar::Show& show, Context& context) {
  if (carts.empty()) {
    throw Error(Trouble::notPossible, "nothing is chosen for the show " + show.name.toStdString() +
                                          " yet: which cabinets travel is not known");
  }
  if (context.json) {
    printJson(context, {{QStringLiteral("format"), QStringLiteral("hangbook.carts/1")},
                        {QStringLiteral("show"), show.name},
                        {QStringLiteral("carts"), cartsInJson(carts)}});
    return Ending::done;
  }
  Table table({{QStringLiteral("no."), Column::Kind::figure},
               {QStringLiteral("cart")},
               {QStringLiteral("rides on it"), Column::Kind::text},
               {QStringLiteral("hang"), Column::Kind::text},
               {QStringLiteral("gross [kg]"), Column::Kind::figure}});
  int number = 0;
  for (const options::PlannedCart& cart : carts) {
    table.add({QString::number(++number), cart.cart.isEmpty() ? QStringLiteral("no cart known") : cart.cart,
               QStringLiteral("%1 × %2").arg(cart.number).arg(cart.cabinet),
               cart.hangs.join(QStringLiteral(" + ")) +
                   (cart.hangs.size() > 1 ? QStringLiteral(", shared") : QString()),
               massText(cart.gross)});
  }
  table.print(context.out);
  return Ending::done;
}

QJsonArray loadsInJson(const fleet::TruckList& list) {
  QJsonArray loads;
  for (const fleet::Load& load : list.loads) {
    QJsonArray riding;
    for (const fleet::Unit& unit : load.riding) {
      riding.append(unit.serial);
    }
    loads.append(QJsonObject{{QStringLiteral("unit"), load.unit.serial},
                             {QStringLiteral("type"), load.unit.type},
                             {QStringLiteral("riding"), riding},
                             {QStringLiteral("gross_kg"), kilogramsOf(load.gross)}});
  }
  return loads;
}

void printTruck(const fleet::TruckList& list, const fleet::NamedPlace* truck, std::ostream& out) {
  Table table({{QStringLiteral("out"), Column::Kind::figure},
               {QStringLiteral("unit")},
               {QStringLiteral("type"), Column::Kind::text},
               {QStringLiteral("rides on it"), Column::Kind::text},
               {QStringLiteral("gross [kg]"), Column::Kind::figure}});
  int number = 0;
  for (const fleet::Load& load : list.loads) {
    QStringList riding;
    for (const fleet::Unit& unit : load.riding) {
      riding << unit.serial;
    }
    table.add({QString::number(++number), load.unit.serial, load.unit.type, riding.join(QStringLiteral(", ")),
               massText(load.gross)});
  }
  table.print(out);
  out << "payload: " << wordOf(list.payload) << ", " << massText(list.known) << " kg"
      << (truck != nullptr && truck->payload ? QStringLiteral(" of %1 kg").arg(inKilograms(*truck->payload))
                                             : QStringLiteral("; the truck's payload is not stated"));
  if (!list.missing.isEmpty()) {
    out << "; without a known mass: " << list.missing.join(QStringLiteral(", "));
  }
  out << "\nfloor: " << wordOf(list.floor) << ", " << QString::number(inMetres(list.floorUsed), 'f', 2)
      << " m"
      << (truck != nullptr && truck->floorLength
              ? QStringLiteral(" of %1 m").arg(inMetres(*truck->floorLength))
              : QStringLiteral("; the truck's floor is not stated"));
  if (!list.missingSize.isEmpty()) {
    out << "; without a known size: " << list.missingSize.join(QStringLiteral(", "));
  }
  out << "\nTo load, go from the last to the first.\n";
}

Ending truckFor(store::Store& store, const QString& name, const QStringList& build, Context& context) {
  const auto place = store::loadPlace(store, name);
  const fleet::NamedPlace* truck = place ? &*place : nullptr;
  const fleet::TruckList list =
      fleet::truckList(store::loadCatalogue(store), store::loadUnitsAt(store, name), truck, build);
  if (list.loads.empty()) {
    throw Error(Trouble::notPossible, "nothing is recorded in \"" + name.toStdString() + '"');
  }
  if (context.json) {
    printJson(context, {{QStringLiteral("format"), QStringLiteral("hangbook.load/1")},
                        {QStringLiteral("truck"), name},
                        {QStringLiteral("loads"), loadsInJson(list)},
                        {QStringLiteral("known_kg"), inKilograms(list.known)},
                        {QStringLiteral("payload"), wordOf(list.payload)},
                        {QStringLiteral("mass_missing"), QJsonArray::fromStringList(list.missing)},
                        {QStringLiteral("floor_m"), inMetres(list.floorUsed)},
                        {QStringLiteral("floor"), wordOf(list.floor)},
                        {QStringLiteral("size_missing"), QJsonArray::fromStringList(list.missingSize)}});
  } else {
    printTruck(list, truck, context.out);
  }
  const bool good = list.payload <= LoadVerdict::tight && list.floor <= LoadVerdict::tight;
  return good ? Ending::done : Ending::failing;
}

Ending run(const Given& given, Context& context) {
  if (!given.has("--truck") && !given.has("--show")) {
    throw Error(Trouble::badInput, "--truck NAME or --show NAME is needed");
  }
  const auto store = openStore(context);
  std::vector<options::HangStack> stacks;
  if (given.has("--show")) {
    const calendar::Show show = findShow(*store, given);
    stacks = stacksOf(*store, show);
    if (!given.has("--truck")) {
      const auto snapshot = store::loadSnapshot(*store, show.tour, show.name, today(context));
      return planFor(options::planCarts(options::withCountedMasses(snapshot), stacks), show, context);
    }
  }
  QList<QStringList> order;
  for (const options::HangStack& each : stacks) {
    order << each.stack;
  }
  return truckFor(*store, textOf(given, "--truck"), fleet::buildOrder(order), context);
}

} // namespace

Command loadCommand() {
  return {"load",
          "a truck's load in the order in which it comes out, with weight and floor; or the carts that a "
          "show needs",
          {{"--truck", "NAME", "what is in this truck"},
           {"--show", "NAME", "its build gives the order; alone: the carts that it needs"},
           tourOption},
          {},
          "hangbook load --truck \"truck 1\" --show Ostrel",
          run};
}

} // namespace hangbook::terminal
