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
  double leastKn{};
  double mostKn{};
  double hoistKn{}; ///< what its hoist then lifts at rest: lean, and where it climbs body, chain and bag
  double pointKn{}; ///< what its point then carries at rest
  /// The same at the unfavourable end of every figure in doubt.
  double worstLeastKn{};
  double worstMostKn{};
  double worstHoistKn{};
  double worstPointKn{};
};

struct StepLoads {
  QString step;  ///< in words: "2 cabinets, chain on"
  QString stage; ///< stacked, chained, aiming, set
  int cabinets{};
  double massKg{};
  std::vector<StepPick> picks;
};

/// The steps of an option whose setting and `hangInput` are known, from the bar alone to the hang as set.
/// `worst`: `settled` at the unfavourable end of all doubts.
std::vector<StepLoads> stepLoads(const Case&, const Settled& worst, const Settled& settled, double trimM,
                                 const Option&);

QJsonArray toJson(const std::vector<StepLoads>&);
std::vector<StepLoads> stepLoadsFromJson(const QJsonArray&);

} // namespace hangbook::options
