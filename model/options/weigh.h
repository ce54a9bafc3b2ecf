// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QString>
#include <QStringList>

#include "options/option.h"
#include "options/snapshot.h"

/// What load cells read after lifting, against what was computed. A checklist, never a clearance.
///
/// A pick that hangs from a bridle has a cell at its hook as any other, or at the points one in each leg, at
/// its top: that reads the pull along the leg, not what its point carries downwards.
namespace hangbook::options {

/// Where the cells hang: between hoist and bar, or between point and hoist (of a bridled pick: in its legs).
enum class CellAt { hook, point };

struct CellReading {
  QString
      pick; ///< left, right, front, rear, single; of a leg it may be empty where no other goes to its point
  double kn{};
  QString point{}; ///< that the leg goes to; empty for a cell that is in none
};

struct WeighedPick {
  QString name;
  QString point; ///< that the leg goes to which the cell is in; else empty
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

/// `option` must have a setting, and be of the snapshot's show, and judged there. Throws Error(badInput)
/// where a pick or leg has no reading, has two, or is not there, or where a reading is not above 0;
/// Error(notPossible) where what was computed is not known.
Weighed weigh(const Snapshot& snapshot, const Option& option, CellAt at,
              const std::vector<CellReading>& readings);

QString wordFor(CellAt at);                ///< hook, point
QString wordsFor(const WeighedPick& cell); ///< "left", "left, leg to L1"

} // namespace hangbook::options
