// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/lists/table_model.h"
#include "desk/source/overview.h"
#include "desk/style/figures.h"

namespace hangbook::desk {

/// One stop of the route, with what has been chosen for its hangs.
struct Stop {
  calendar::Show show{};
  QString town{};
  QString loadIn{};                          ///< local time of the venue, with its zone
  int chosen = 0;                            ///< hangs that have an option
  std::optional<options::Verdict> verdict{}; ///< the worst of the chosen; none: nothing chosen
  QString stacks{};                          ///< "left: 3 bass · 1 upper; right: the same"
  std::optional<double> heaviestKn{};        ///< static load of the heaviest point
  QString heaviestPoint{};
  std::optional<double> heaviestCapacityKn{}; ///< of that point; none: not known
  std::optional<qint64> daysBefore{};         ///< from the stop before
  std::optional<double> wayM{};               ///< over the ground from the stop before, m
};

/// A time as the clock on the venue's wall shows it, with its zone; UTC where the zone is not known.
QString localTime(const QDateTime& instant, const venue::Venue* venue);

/// The stops in order of date.
std::vector<Stop> stopsOf(const Overview& overview);

/// By which the list knows a stop.
QString keyOf(const ShowKey& show);

enum class RouteColumn {
  from,
  to,
  gap,
  way,
  show,
  venue,
  town,
  loadIn,
  verdict,
  chosen,
  heaviest,
  stacks,
  count
};

class RouteModel : public ListOf<Stop, RouteColumn> {
public:
  using ListOf::ListOf;
  void setFigures(const Figures& figures);

private:
  Heading headingOf(RouteColumn column) const override;
  Cell cellOf(const Stop& stop, RouteColumn column) const override;
  QString keyOf(const Stop& stop) const override {
    return desk::keyOf(ShowKey{stop.show.tour, stop.show.name});
  }

  Figures figures_;
};

} // namespace hangbook::desk
