// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QString>

#include "support/fresh_store.h"

namespace hangbook::testing {

struct UnitSort {
  QString kind;
  QString type;
};

/// A house of 100,000 units, 2,000,000 movements and an examination of every hoist and chain, written by the
/// engine itself. One unit in ten is a hoist or a chain, which are examined half-yearly; the rest are
/// cabinets without a rule.
void fillLarge(store::Store& store, int units = 100'000, int movementsEach = 20);

/// So many units of these sorts in turn, each moved so often and, where a rule asks for it, examined.
void addUnits(store::Store& store, const std::vector<UnitSort>& mix, int units = 100'000,
              int movementsEach = 20);

} // namespace hangbook::testing
