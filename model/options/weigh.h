// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QString>
#include <QStringList>

#include "options/option.h"
#include "options/snapshot.h"

/// What load cells read after lifting, against what was computed. A checklist, never a clearance.
namespace hangbook::options {

/// Where the cells hang: between hoist and bar, or between point and hoist.
enum class CellAt { hook, point };

struct CellReading {
  QString pick; ///< left, right, front, rear, single
  double kn{};
};

struct WeighedPick {
  QString name;
  double readKn{};
  double computedKn{}; ///< at the cell's place
  double percent{};    ///< difference, of what was computed
  bool beyond{};       ///< the tolerance
};

/// One thing that may be other than it was taken to be.
struct Assumption {
  QString what;                ///< in words
  std::vector<double> wouldKn; ///< what the cells would then read
  double missKn{};             ///< greatest difference to what they read
  bool explains{};             ///< every reading within the tolerance of it
};

struct Weighed {
  CellAt at = CellAt::hook;
  std::vector<WeighedPick> picks;
  double tolerancePercent{};
  QString toleranceSource;
  bool beyond{};                       ///< then: stop, hold, count and inspect
  std::vector<Assumption> assumptions; ///< the best fit first; none where nothing is beyond
};

/// `option` must have a setting, and be of the snapshot's show. Throws Error(badInput) where a pick has no
/// reading, has two, or is not there, or where a reading is not above 0; Error(notPossible) where what
/// was computed is not known.
Weighed weigh(const Snapshot& snapshot, const Option& option, CellAt at,
              const std::vector<CellReading>& readings);

QString wordFor(CellAt at); ///< hook, point

} // namespace hangbook::options
