// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "store/store.h"

namespace hangbook::store {

/// One thing that somebody did, as it is shown in the history.
struct Deed {
  QDateTime at; ///< UTC
  QString by;
  QString device;
  QString program;
  QString action;  ///< the use case: "save venue"
  QString subject; ///< what it was done to: its name
  QString detail;  ///< in words
};

/// Newest first.
std::vector<Deed> loadHistory(Store& store, int most = 200);
/// Appends one; time, device and program are filled in where they are empty.
void append(Store& store, const Deed& deed);

} // namespace hangbook::store
