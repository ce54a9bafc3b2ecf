// SPDX-License-Identifier: GPL-3.0-or-later
#include "fleet/load_list.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace hangbook::fleet {
namespace {

constexpr double tightFrom = 0.9; // as for every rule of the house

int rankOf(const Load& load, const QStringList& build) {
  switch (load.unit.kind) {
  case UnitKind::hoist:
    return 0;
  case UnitKind::chain:
    return 1;
  case UnitKind::hardware:
    return 2;
  case UnitKind::loom:
    return 3;
  case UnitKind::bar:
    return 4;
  case UnitKind::cabinet:
  case UnitKind::cart:
    break;
  }
  const QString type =
      load.unit.kind == UnitKind::cart && !load.riding.empty() ? load.riding.front().type : load.unit.type;
  const qsizetype at = build.indexOf(type);
  return 5 + static_cast<int>(at < 0 ? build.size() : at);
}

const catalogue::CartType* cartType(const catalogue::Catalogue& catalogue, const Unit& unit) {
  return unit.kind == UnitKind::cart ? catalogue::find(catalogue.carts, unit.type) : nullptr;
}

/// Adds a unit's mass; names it where it is not known.
void addMass(const catalogue::Catalogue& catalogue, const Unit& unit, Load& load, TruckList& list) {
  const std::optional<Mass> piece = pieceMass(catalogue, unit);
  if (!piece) {
    list.missing << unit.serial;
    load.gross.reset();
    return;
  }
  const Mass all = *piece * static_cast<double>(piecesOf(unit));
  list.known += all;
  if (load.gross) {
    *load.gross += all;
  }
}

LoadVerdict judge(double value, std::optional<double> limit, bool complete) {
  if (!limit) {
    return LoadVerdict::unproven;
  }
  if (value > *limit) {
    return LoadVerdict::fails;
  }
  if (!complete) {
    return LoadVerdict::unproven;
  }
  return value >= tightFrom * *limit ? LoadVerdict::tight : LoadVerdict::holds;
}

/// Rows of carts across the floor, in order; a row is as long as its longest cart.
Length floorOf(const std::vector<Load>& loads, std::optional<Length> truckWidth) {
  Length used = metres(0);
  Length rowLength = metres(0);
  Length rowWidth = metres(0);
  for (const Load& load : loads) {
    if (!load.floor || !load.width) {
      continue;
    }
    if (rowLength > metres(0) && truckWidth && rowWidth + *load.width <= *truckWidth) {
      rowWidth += *load.width;
      rowLength = std::max(rowLength, *load.floor);
    } else {
      used += rowLength;
      rowWidth = *load.width;
      rowLength = *load.floor;
    }
  }
  return used + rowLength;
}

} // namespace

std::optional<Mass> pieceMass(const catalogue::Catalogue& catalogue, const Unit& unit) {
  if (unit.weighed) {
    return unit.weighed;
  }
  const auto massOf = [&](const auto& types) -> std::optional<Mass> {
    const auto* type = catalogue::find(types, unit.type);
    return type != nullptr ? type->mass : std::nullopt;
  };
  switch (unit.kind) {
  case UnitKind::cabinet:
    return massOf(catalogue.cabinets);
  case UnitKind::cart:
    return massOf(catalogue.carts);
  case UnitKind::hardware:
  case UnitKind::loom:
    return massOf(catalogue.hardware);
  case UnitKind::bar: {
    const auto* type = catalogue::find(catalogue.bars, unit.type);
    const bool hasHead = type != nullptr && std::ranges::any_of(type->arrangements, [](const auto& each) {
                           return each.picks == catalogue::Picks::sidePair;
                         });
    if (type == nullptr || !type->frameMass || (hasHead && !type->headMass)) {
      return std::nullopt;
    }
    return *type->frameMass + type->headMass.value_or(kilograms(0));
  }
  case UnitKind::hoist: {
    const auto* type = catalogue::find(catalogue.hoists, unit.type);
    if (type == nullptr || !type->bodyMass || !type->chainMass || !type->chainLength || !type->chainBagMass) {
      return std::nullopt;
    }
    const Mass chain = kilograms(inKilogramsPerMetre(*type->chainMass) * inMetres(*type->chainLength));
    return *type->bodyMass + chain + *type->chainBagMass;
  }
  case UnitKind::chain: {
    const auto* type = catalogue::find(catalogue.chains, unit.type);
    if (type == nullptr || !type->mass || !type->pitch || !type->links || !type->fixedLength) {
      return std::nullopt;
    }
    const Length length = *type->pitch * static_cast<double>(*type->links) + *type->fixedLength;
    return kilograms(inKilogramsPerMetre(*type->mass) * inMetres(length));
  }
  }
  return std::nullopt;
}

QStringList buildOrder(const QList<QStringList>& stacks) {
  QStringList order;
  for (qsizetype place = 0, more = 1; more != 0; ++place) {
    more = 0;
    for (const QStringList& stack : stacks) {
      if (place < stack.size()) {
        more = 1;
        if (!order.contains(stack[place])) {
          order << stack[place];
        }
      }
    }
  }
  return order;
}

TruckList truckList(const catalogue::Catalogue& catalogue, const std::vector<Unit>& units,
                    const NamedPlace* truck, const QStringList& build) {
  TruckList list;
  list.known = kilograms(0);
  std::map<QString, std::vector<Unit>> onCart;
  for (const Unit& unit : units) {
    if (!unit.cart.isEmpty()) {
      onCart[unit.cart].push_back(unit);
    }
  }
  for (const Unit& unit : units) {
    const bool rides = !unit.cart.isEmpty() &&
                       std::ranges::any_of(units, [&](const Unit& each) { return each.serial == unit.cart; });
    if (rides) {
      continue;
    }
    Load load{unit, {}, kilograms(0), std::nullopt, std::nullopt};
    if (unit.kind == UnitKind::cart) {
      load.riding = onCart[unit.serial];
      std::ranges::stable_sort(load.riding, {},
                               [](const Unit& each) { return each.cartPosition.value_or(0); });
      const catalogue::CartType* type = cartType(catalogue, unit);
      load.floor = type != nullptr ? type->length : std::nullopt;
      load.width = type != nullptr ? type->width : std::nullopt;
      if (!load.floor || !load.width) {
        list.missingSize << unit.serial;
      }
    }
    addMass(catalogue, unit, load, list);
    for (const Unit& each : load.riding) {
      addMass(catalogue, each, load, list);
    }
    list.loads.push_back(std::move(load));
  }
  std::ranges::stable_sort(list.loads, [&](const Load& a, const Load& b) {
    return std::tuple(rankOf(a, build), a.unit.type, a.unit.serial) <
           std::tuple(rankOf(b, build), b.unit.type, b.unit.serial);
  });
  list.floorUsed = floorOf(list.loads, truck != nullptr ? truck->floorWidth : std::nullopt);
  const auto metresOf = [](std::optional<Length> length) {
    return length ? std::optional(inMetres(*length)) : std::nullopt;
  };
  list.payload =
      judge(inKilograms(list.known),
            truck != nullptr && truck->payload ? std::optional(inKilograms(*truck->payload)) : std::nullopt,
            list.missing.isEmpty());
  list.floor = judge(inMetres(list.floorUsed), truck != nullptr ? metresOf(truck->floorLength) : std::nullopt,
                     list.missingSize.isEmpty() && truck != nullptr && truck->floorWidth.has_value());
  return list;
}

} // namespace hangbook::fleet
