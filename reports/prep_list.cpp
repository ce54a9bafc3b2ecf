// SPDX-License-Identifier: GPL-3.0-or-later
#include <map>

#include "options/cart_plan.h"
#include "options/demand.h"
#include "options/gear_needs.h"
#include "options/house_figures.h"
#include "reports/cabling_tables.h"
#include "reports/hung_table.h"
#include "reports/parts.h"

namespace hangbook::reports {
namespace {

using Size = Text::Size;

/// Spares that the house asks for, of one type; none: its figure cannot be read.
std::optional<int> sparesOf(const options::House& house, fleet::UnitKind kind) {
  const char* figure = kind == fleet::UnitKind::cabinet ? "spare-cabinets"
                       : kind == fleet::UnitKind::bar   ? "spare-bars"
                       : kind == fleet::UnitKind::hoist ? "spare-hoists"
                       : kind == fleet::UnitKind::chain ? "spare-chains"
                                                        : nullptr;
  if (figure == nullptr) {
    return 0;
  }
  const auto value = house.figure(QString::fromLatin1(figure)).value;
  return value ? std::optional(static_cast<int>(*value)) : std::nullopt;
}

Table unitsTable(const ShowAsIs& show) {
  const options::Snapshot& snapshot = show.snapshot;
  const options::Demand demand =
      options::demandOf(snapshot.catalogue, snapshot.show, snapshot.choices, show.plugs);
  const options::House house(snapshot.tour.house, snapshot.venue.house, snapshot.show.house);
  Table table;
  table.name = QStringLiteral("units");
  table.title = QStringLiteral("What goes");
  table.large = true;
  table.ticked = true;
  table.columns = {{QStringLiteral("Kind"), 1.1, false},   {QStringLiteral("Type"), 2.6, false},
                   {QStringLiteral("In use"), 0.9, true},  {QStringLiteral("Spares"), 0.9, true},
                   {QStringLiteral("To pack"), 0.9, true}, {QStringLiteral("Packed"), 1.0, false}};
  for (const auto& [what, number] : demand.numbers) {
    const auto spares = sparesOf(house, what.first);
    table.rows.push_back(
        {{options::wordFor(what.first), what.second, QString::number(number),
          spares ? QString::number(*spares) : notKnown(),
          spares ? QString::number(number + *spares) : notKnown(), QStringLiteral("........")},
         false,
         false,
         !spares});
  }
  return table;
}

Table cartsTable(const ShowAsIs& show, const Figures& figures) {
  Table table;
  table.name = QStringLiteral("carts");
  table.title =
      QStringLiteral("Carts, in the order in which the build wants them; the first out goes in last");
  table.large = true;
  table.ticked = true;
  table.columns = {{QStringLiteral("Out of the truck"), 1.1, true},
                   {QStringLiteral("Cart"), 1.8, false},
                   {QStringLiteral("Rides on it"), 2.4, false},
                   {QStringLiteral("For hang"), 1.6, false},
                   {QStringLiteral("Gross"), 1.1, true}};
  const catalogue::Catalogue counted = options::withCountedMasses(show.snapshot); // as the loads have them
  int number = 0;
  for (const build::CartRide& ride : show.plan.carts) {
    int riding = 0;
    for (const auto& column : ride.columns) {
      riding += static_cast<int>(column.size());
    }
    std::optional<double> gross;
    const auto* cart = catalogue::find(counted.carts, ride.type);
    const auto* cabinet = catalogue::find(counted.cabinets, ride.cabinet);
    if (cart != nullptr && cart->mass && cabinet != nullptr && cabinet->mass) {
      gross = inKilograms(*cart->mass) + riding * inKilograms(*cabinet->mass);
    }
    table.rows.push_back(
        {{QString::number(++number), ride.name, QStringLiteral("%1 × %2").arg(riding).arg(ride.cabinet),
          ride.hangs.join(QStringLiteral(", then ")), figures.mass(gross)},
         false,
         false,
         !gross});
  }
  return table;
}

} // namespace

Sheet prepList(const ShowAsIs& show, const Figures& figures) {
  Sheet sheet = begun(QStringLiteral("prep-list"), QStringLiteral("Prep list"), show);
  const calendar::Show& of = show.snapshot.show;
  sheet.blocks.emplace_back(
      Text{Size::strong, QStringLiteral("Away from %1 to %2.")
                             .arg(of.awayFrom.isValid() ? of.awayFrom.toString(Qt::ISODate) : notKnown(),
                                  of.awayTo.isValid() ? of.awayTo.toString(Qt::ISODate) : notKnown())});
  const options::Demand demand =
      options::demandOf(show.snapshot.catalogue, of, show.snapshot.choices, show.plugs);
  if (!demand.open.isEmpty()) {
    sheet.blocks.emplace_back(
        Text{Size::strong, QStringLiteral("Not complete: nothing is chosen for hang %1.")
                               .arg(demand.open.join(QStringLiteral(", ")))});
  }
  sheet.blocks.emplace_back(unitsTable(show));
  sheet.blocks.emplace_back(cartsTable(show, figures));
  sheet.blocks.emplace_back(hungTable(show, figures));
  const Table looms = loomsTable(show, figures);
  if (looms.rows.empty()) {
    sheet.blocks.emplace_back(
        Text{Size::body, QStringLiteral("– Looms are not stated for this show: pack by the makers' data.")});
  } else {
    sheet.blocks.emplace_back(looms);
  }
  sheet.blocks.emplace_back(
      Text{Size::body, QStringLiteral("– Check arms in transport position and all pins on their lanyards.")});
  sheet.blocks.emplace_back(
      Text{Size::body, QStringLiteral("– Nothing goes whose examination ends before the last day away.")});
  return sheet;
}

} // namespace hangbook::reports
