// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <numeric>

namespace hangbook::hang {

/// A stretch that begins where something still holds and ends where it no longer does.
struct Bracket {
  double within;
  double beyond;
};

/// Where it turns, by halving: `within` and `beyond` until they are no more than `apart` from each other (0:
/// to the last digit). `within` below `beyond`; `holds(double)` is asked between them alone and turns once.
template <class Holds>
Bracket turnBetween(Bracket turn, double apart, const Holds& holds) {
  for (double middle = std::midpoint(turn.within, turn.beyond);
       turn.within < middle && middle < turn.beyond && turn.beyond - turn.within > apart;
       middle = std::midpoint(turn.within, turn.beyond)) {
    (holds(middle) ? turn.within : turn.beyond) = middle;
  }
  return turn;
}

} // namespace hangbook::hang
