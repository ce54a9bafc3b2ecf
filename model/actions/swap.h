// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "actions/run.h"
#include "actions/usable.h"
#include "calendar/hung.h"
#include "catalogue/catalogue.h"
#include "options/frozen.h"

/// A unit that is found dead at load-in gives its place to another of its type.
namespace hangbook::actions {

struct StandIn {
  fleet::Unit unit;
  Usable usable;                              ///< `why` says what is unproven, or why not
  std::optional<fleet::Examination> examined; ///< the newest one, whatever its result
};

/// Whether a chosen option's figures take a unit of this type: cabinets, bar, hoist and chain. Carts,
/// hardware and looms are counted, and stand in no hang's figures one by one.
bool takes(const catalogue::Catalogue& catalogue, const options::OptionKey& key, const fleet::Unit& unit);

/// Units of the same kind and type that are ready, the usable ones first, then by serial.
std::vector<StandIn> standInsFor(store::Store& store, const calendar::Show& show, const fleet::Unit& dead);

struct SwapWish {
  QString tour;
  QString show;
  QString dead;  ///< serial
  QString stand; ///< serial of what takes its place
  QDate today;
};

/// A chosen hang that takes a unit of that type.
struct SwappedHang {
  options::Choice standing;
  options::Option before; ///< as frozen with the signed setting, so as its sheets say
  options::Option after;  ///< by what the store then holds
};

struct Swap {
  fleet::Unit dead;
  fleet::Unit stand;
  QString unproven; ///< of the one that takes its place; empty: nothing
  std::vector<SwappedHang> hangs;
  std::optional<calendar::Hung>
      place{}; ///< where the dead one is recorded as hanging; the other follows it there
};

/// What the swap would come to; nothing is written. Throws Error: badInput for a unit or show that is not
/// there or another type; notPossible where the other one may not go to this show, with why.
Swap trySwap(store::Store& store, const SwapWish& wish);

/// Quarantines the dead one where it is, moves the other to its place and cart, and chooses every hang that
/// takes such a unit again at its setting, so that sheets come out as new revisions: one transaction. Throws
/// like `trySwap`, and notPossible where a hang then fails; badInput without a reason.
Swap swapUnit(store::Store& store, const SwapWish& wish, const QString& reason, const QString& by);

} // namespace hangbook::actions
