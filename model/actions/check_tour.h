// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <vector>

#include <QDate>
#include <QJsonObject>

#include "store/store.h"

/// Every option of every show of a tour, on all cores; what was checked before and has the same inputs is not
/// checked again.
namespace hangbook::actions {

struct CheckedShow {
  QString tour;
  QString show;
  QString venue;
  QDate from;
  QDate to;
  bool kept = false; ///< from an earlier check, whose inputs were the same
  /// `hangs[]` with `hang`, `options`, `settings`, `by_bound`, `holds`, `tight`, `unproven`, `fails`, `best`
  /// (`option`, `verdict`, `stack`, `because`), `chosen` (null, or `option`, `verdict`, `because`); or
  /// `trouble` where it could not be decided.
  QJsonObject result;
};

struct TourCheck {
  std::vector<CheckedShow> shows; ///< in order of date; those that were checked before it was stopped
  int all = 0;                    ///< shows there are
  bool stopped = false;
};

struct CheckHow {
  int threads = 0;     ///< 0: as many as there are cores
  bool afresh = false; ///< what was kept does not count
  /// Told of each show when it is done, on the caller's thread: how many are done, of how many.
  std::function<void(const CheckedShow&, int done, int of)> tell = {};
  /// Told now and then, on the caller's thread, how much of the whole is done (0…1).
  std::function<void(double)> share = {};
  /// Asked often, on any thread: true stops it. What is done by then is kept.
  std::function<bool()> stop = {};
};

/// Holds at most eight snapshots, fewer of large ones, whatever the length of the tour.
TourCheck checkTour(store::Store& store, const QString& tour, const QDate& today, const CheckHow& how);

} // namespace hangbook::actions
