// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "catalogue/catalogue.h"
#include "fleet/place.h"
#include "fleet/unit.h"

/// What is in a truck: weights, floor, and the order in which it comes out.
namespace hangbook::fleet {

/// The mass of one piece of a unit: as weighed, else the maker's; nullopt: neither is known.
std::optional<Mass> pieceMass(const catalogue::Catalogue& catalogue, const Unit& unit);

/// One thing that is wheeled or carried out: a cart with what rides on it, or a unit by itself.
struct Load {
  Unit unit;                   ///< the cart, or the unit itself
  std::vector<Unit> riding;    ///< in the order of their places on the cart
  std::optional<Mass> gross;   ///< nullopt: some mass in it is not known
  std::optional<Length> floor; ///< length that it takes on the truck's floor, along; carts only
  std::optional<Length> width;
};

/// Types of cabinets in the order in which they go up: place by place from the bar down, over all hangs, each
/// once.
QStringList buildOrder(const QList<QStringList>& stacks);

enum class LoadVerdict { holds, tight, fails, unproven };

struct TruckList {
  std::vector<Load> loads; ///< in the order in which they come out
  Mass known;              ///< sum of the masses that are known
  QStringList missing;     ///< serials whose mass is not known
  Length floorUsed; ///< of the carts whose size is known, as many side by side as the truck's width allows
  QStringList missingSize; ///< serials of carts whose size is not known
  LoadVerdict payload = LoadVerdict::unproven;
  LoadVerdict floor = LoadVerdict::unproven;
};

/// The list of a truck. Out first comes what goes up first: hoists, chains, hardware and looms, then bars,
/// then carts in the order in which `build` (types of cabinets, from the bar down) needs what they carry,
/// then the rest. A limit is held up to 90 %, tight to 100 %; with a missing figure what is known may still
/// fail, else it is unproven. Carts stand lengthwise, side by side as the width allows; how they are lashed
/// is not looked at.
TruckList truckList(const catalogue::Catalogue& catalogue, const std::vector<Unit>& units,
                    const NamedPlace* truck, const QStringList& build);

} // namespace hangbook::fleet
