// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include <QJsonValue>
#include <QString>
#include <QStringList>

/// What the wind does to one option, as plain values for sheets, terminal and JSON. A limit is a gust (mean
/// over at most 3 s) at the height of the picks; NaN where a figure is not known.
namespace hangbook::options {

struct WindPick {
  QString name;       ///< left, right, front, rear, single
  double mostKn = 0;  ///< force on its hoist's chain in the gust, wet
  double leastKn = 0; ///< what it keeps in the gust, dry
  double pointKn = 0; ///< what its point then carries
};

struct WindAnswer {
  double gust = 0;        ///< m/s, as stated
  double pressure = 0;    ///< N/m², ρ v²/2
  double mostKn = 0;      ///< the greatest force from any direction
  double mostFromDeg = 0; ///< that it comes from: 0 in front, 90 from the hang's left
  double frontKn = 0;
  double sideKn = 0;
  double belowM = 0;   ///< of the picks: where the greatest force acts
  double leanDeg = 0;  ///< of the hoists' chains
  double swingDeg = 0; ///< of the hang itself about its picks, which turns its aim
  double wetKg = 0;    ///< wet cloth and ice
  std::vector<WindPick> picks;
  double failsAt = 0;    ///< m/s, the least gust at which a limit is passed; infinite where none is
  QString failsBy;       ///< which
  double firstShare = 0; ///< per cent of it
  double secondShare = 0;
  QString sharesSource;
  double heightM = 0;  ///< of the picks above the datum
  QStringList missing; ///< without which no figure is proven
};

QJsonValue toJson(const std::optional<WindAnswer>&);
std::optional<WindAnswer> windFromJson(const QJsonValue&);

} // namespace hangbook::options
