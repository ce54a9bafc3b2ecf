// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>

#include "catalogue/source.h"

namespace hangbook::calendar {

/// Which very unit hangs at one place of a hang.
struct Hung : catalogue::Record {
  QString tour;
  QString show;
  QString hang;
  int element = 0; ///< cabinets counted from 1 at the bar; 0: the bar itself
  QString serial;  ///< of a unit; empty: not recorded any more
  bool operator==(const Hung&) const = default;
};

/// Serials of one hang by their places; a place that is not there is not recorded.
using HungSerials = std::map<int, QString>;

} // namespace hangbook::calendar
