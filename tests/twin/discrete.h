// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QByteArray>
#include <QString>

#include "options/snapshot.h"

namespace hangbook::testing {

/// Shows as data for discrete.mzn, and its solutions as options. Of each show its first hang, at those of its
/// points that are the venue's own; where the apex of a bridle hangs is physics.
class Discrete {
public:
  explicit Discrete(std::vector<options::Snapshot> shows);

  QString text() const;
  /// Number of the show (counted from 0) and identifier of the option of a solution's line; empty where the
  /// line is none.
  QString optionOf(const QByteArray& line) const;

private:
  struct Place {
    QString name;
    int x = 0; ///< mm
    int y = 0;
  };
  QString tablesText() const;
  QString casesText() const;

  std::vector<options::Snapshot> shows_;
  std::vector<std::vector<Place>> places_;  ///< of each show
  std::vector<std::pair<int, int>> tables_; ///< show and table, counted from 0
  int types_ = 0;
  int bars_ = 0;
  int points_ = 0;
  int hoists_ = 0;
  int longest_ = 0;
};

} // namespace hangbook::testing
