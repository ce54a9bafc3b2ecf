// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/source/overview.h"
#include "options/stock_day.h"

namespace hangbook::desk {

/// Stock against demand as the Fleet place shows it: one day, and what any show to come lacks.
struct StockLook {
  QDate day{};
  std::vector<options::TypeOnDay> types{};
  std::vector<options::Shortage> shortages{};
  QStringList away{};     ///< shows that are away on that day
  int hangsNotChosen = 0; ///< what they will take is not counted
};

/// Takes a while with a large fleet: not for the window's thread.
StockLook stockLook(const Overview& overview, QDate day);

/// What each show from that day on takes.
std::vector<options::Demand> demandsOf(const Overview& overview, QDate from);

/// What would fill a shortage: "examine 2, hire in 1".
QString fillsIt(const options::Shortage& lack);

} // namespace hangbook::desk
