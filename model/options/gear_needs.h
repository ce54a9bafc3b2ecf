// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "options/rule.h"

/// What an option takes out of the fleet for the whole time away, counted once: all hangs of the show
/// together, the others with their chosen option or else with this same one, mirrored.
namespace hangbook::options {

/// One type of unit.
struct UnitNeed {
  fleet::UnitKind kind = fleet::UnitKind::cabinet;
  QString type;
  int needed{};    ///< by all hangs of the show
  int spares{};    ///< that the house asks for besides
  int owned{};     ///< units of this type that there are
  int free{};      ///< fit for use and not due back at their owner before the last day away
  int elsewhere{}; ///< most that other shows' chosen options take at one time
  bool ruled{};    ///< at least one rule for examination is for this type
  bool mustBeRuled = true;
  int examined{};       ///< of the free ones: every examination stands through the last day away
  int examinedLonger{}; ///< and for the house's margin beyond
  QDate firstDue;       ///< the first day after which one of the free ones is not examined; null: never was
  int left() const { return free - elsewhere; }
};

/// The carts of one type of cabinet.
struct CartNeed {
  QString cabinet;
  QString cart; ///< type; empty: none is known for this cabinet
  std::optional<int> most;
  std::vector<int> cabinets; ///< of each hang
  int needed{};
  int shared{};    ///< carts that ride for more than one hang
  int notFull{};   ///< carts that travel with a place left over
  int free{};      ///< carts of this type fit for use
  int elsewhere{}; ///< that other shows take
  int left() const { return free - elsewhere; }
};

struct GearNeeds {
  std::vector<UnitNeed> units;
  std::vector<CartNeed> carts;
  QDate awayFrom;
  QDate awayTo;
  bool datesKnown{};
  QStringList hangs; ///< how each other hang was counted: "right as chosen", "right like this one"
};

QString wordFor(fleet::UnitKind kind); ///< cabinet, bar, …

/// Rules of gearRules(), each in a file of its own.
extern const Rule stockRule;
extern const Rule examinedRule;
extern const Rule cartsRule;
extern const Rule sameChainRule;

} // namespace hangbook::options
