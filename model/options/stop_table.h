// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QJsonArray>
#include <QString>

/// What happens where one hoist of two stops while the other runs on, as plain values.
namespace hangbook::options {

struct StopStep {
  double differenceM{}; ///< by which the two picks then stand apart in height
  double turnDeg{};     ///< roll of a side pair, tilt of a fore-aft pair
  double runsKn{};      ///< what the one that runs carries
  double stoppedKn{};   ///< what the stopped one carries
  /// At the unfavourable end of every figure in doubt; NaN: no bound follows.
  double worstRunsKn{};    ///< at most
  double worstStoppedKn{}; ///< at least; 0 where its chain may be slack
};

struct OneStops {
  QString stopped; ///< left, right, front, rear
  QString runs;
  bool up = true; ///< the other runs up; else down
  std::vector<StopStep> steps;
  double holdAtM{}; ///< the least difference at which a limit is passed; NaN: none within the steps
  QString holdBy;   ///< which
  QString missing;  ///< limits that are not known
};

QJsonArray toJson(const std::vector<OneStops>&);
std::vector<OneStops> stopsFromJson(const QJsonArray&);

} // namespace hangbook::options
