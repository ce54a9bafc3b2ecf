// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "catalogue/catalogue.h"
#include "options/snapshot.h"

/// Which cabinets ride on which cart, in the order in which the carts are needed under the hangs.
namespace hangbook::options {

/// The stack of one hang, from the bar down.
struct HangStack {
  QString hang;
  QStringList stack;
};

struct PlannedCart {
  QString cart;              ///< its type; empty: none is known for this cabinet
  QString cabinet;           ///< type that rides on it
  int number{};              ///< how many
  QStringList hangs;         ///< two or more: they share it, and what is left over is wheeled across
  std::optional<Mass> gross; ///< nullopt: a mass is not known
  std::optional<Length> floor;
};

/// The makers' data with each cabinet at the mass that the loads count: as the crew weighed one that may hang
/// at the show where that is heavier, or where all are weighed (`massOfType`); none where that is not known.
catalogue::Catalogue withCountedMasses(const Snapshot&);

/// Each hang takes its cabinets from the bar down on whole carts; what is left over of a type, over all
/// hangs, rides together on as few more as can be: an odd number a side shares one cart. The carts come in
/// the order in which their first cabinet goes up. A type whose cart, or the cart's number, is not known
/// comes alone, with no cart.
std::vector<PlannedCart> planCarts(const catalogue::Catalogue& catalogue,
                                   const std::vector<HangStack>& hangs);

} // namespace hangbook::options
