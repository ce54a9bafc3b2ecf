// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QJsonArray>
#include <QString>

/// The loads of each step of the build as plain values, for sheets, terminal and JSON.
namespace hangbook::options {

struct Case;
struct Settled;
struct Option;

/// One pick at one step, kN, at the step's own worst pose; NaN where it is not known.
struct StepPick {
  QString name; ///< left, right, front, rear, single
  double leastKn = 0;
  double mostKn = 0;
  double hoistKn = 0; ///< what its hoist then lifts at rest: lean, and where it climbs body, chain and bag
  double pointKn = 0; ///< what its point then carries at rest
};

struct StepLoads {
  QString step;  ///< in words: "2 cabinets, chain on"
  QString stage; ///< stacked, chained, aiming, set
  int cabinets = 0;
  double massKg = 0;
  std::vector<StepPick> picks;
};

/// The steps of an option whose setting and `hangInput` are known, from the bar alone to the hang as set.
std::vector<StepLoads> stepLoads(const Case&, const Settled&, double trimM, const Option&);

QJsonArray toJson(const std::vector<StepLoads>&);
std::vector<StepLoads> stepLoadsFromJson(const QJsonArray&);

} // namespace hangbook::options
