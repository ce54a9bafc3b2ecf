// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "build/plan.h"

namespace hangbook::build {

/// Which cabinet rides on which cart, and where on it. Each hang takes its cabinets of a type from the bar
/// down on whole carts; what is left over rides together, the first hang's on top, since it is served first.
std::vector<CartRide> ridesOf(const Job& job);

/// The carts for a type of cabinet; nullptr: none is known.
const Carts* cartsFor(const Job& job, const QString& cabinet);

/// What still stands on a ride: `taken` of each column are gone.
struct OnCart {
  double top = 0.0;   ///< what must be passed, engagement included; NaN: not known
  bool empty = false; ///< nothing but the deck
};
OnCart standsOn(const Job& job, const CartRide& ride, const std::vector<int>& taken);

/// Height of the underside of the cabinet at `place` (0: the top) of a column; NaN: not known.
double undersideOn(const Job& job, const CartRide& ride, std::size_t column, int place);

} // namespace hangbook::build
