// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include <QDateTime>
#include <QStringList>

#include "catalogue/source.h"
#include "quantity/quantity.h"
#include "venue/house.h"

namespace hangbook::calendar {

/// One hang of a show: where it may go and what it is for.
struct Hang {
  QString name;         ///< unique in its show: "left", "right"
  QString mirrors;      ///< the hang that it mirrors; empty = none
  QStringList points;   ///< the venue's points that it may use, in the planner's order of preference
  Angle pan;            ///< positive to the left, seen from above
  QStringList sections; ///< audience sections that it must cover; empty = all
  QStringList tables;   ///< stacking tables to be considered; empty = all
  std::optional<Length> leastTrim; ///< sight lines and stage clearance
  std::optional<Mass> cableMass;   ///< cable and its clamp on the bar, at the bar's frame centre of gravity
  /// Wet cloth and ice that may come on, spread as the weight is; counts outdoors, where it must be stated.
  std::optional<Mass> wetMass;
  QStringList rigging;   ///< hardware between point and hoist, from the point down, one set per pick
  QStringList secondary; ///< hardware of the secondary suspension, one set per pick
  std::optional<Length> secondarySlack; ///< how far a pick may drop before its secondary suspension is taut
  bool operator==(const Hang&) const = default;
};

/// What a stated wind is: a limit or forecast without this is unproven.
enum class WindBasis { unknown, gust, mean };

struct Show : catalogue::Record {
  QString tour;
  QString name; ///< unique in its tour
  QString venue;
  QDate from;                        ///< first day in the venue, local
  QDate to;                          ///< last day in the venue, local
  QDateTime loadIn;                  ///< UTC; the venue's zone stands with the venue
  QDateTime loadOut;                 ///< UTC
  QDate awayFrom;                    ///< the gear leaves the warehouse
  QDate awayTo;                      ///< the gear is back
  std::optional<bool> peopleBeneath; ///< under the hang while it is up
  std::optional<double> temperature; ///< °C
  std::optional<double> humidity;    ///< % relative
  std::optional<double> pressure;    ///< of the air, kPa; for advice on level
  std::optional<Speed> wind;         ///< outdoors: the most that the hang is to stand in
  WindBasis windBasis = WindBasis::unknown;
  std::optional<double> windAveraging; ///< s, over which that figure is the mean
  std::optional<Length> windHeight;    ///< above the datum, that it is meant for
  std::vector<Hang> hangs;
  std::vector<venue::HouseFigure> house; ///< house rules for this show
  bool operator==(const Show&) const = default;
};

struct Tour : catalogue::Record {
  QString name; ///< unique
  QString act;
  std::vector<venue::HouseFigure> house; ///< house rules for the whole tour
  bool operator==(const Tour&) const = default;
};

} // namespace hangbook::calendar
