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
  QString name;     ///< left, right, front, rear, single
  double mostKn{};  ///< force on its hoist's chain in the gust, wet
  double leastKn{}; ///< what it keeps in the gust, dry
  double pointKn{}; ///< what its point, or the apex of its bridle, then carries
};

/// A leg of a bridle, each figure from the direction that is worst for it.
struct WindLeg {
  QString bridle;
  QString point;
  double mostKn{};  ///< pull at its upper end, wet; of three legs two alone carry everything
  double leastKn{}; ///< what it keeps, dry; 0 or below: slack
  double fromHorizontalDeg{};
};

/// One of the venue's points where a bridle stands between.
struct WindPoint {
  QString name;
  double downKn{};
};

struct WindAnswer {
  double gust{};        ///< m/s, as stated
  double pressure{};    ///< N/m², ρ v²/2
  double mostKn{};      ///< the greatest force from any direction
  double mostFromDeg{}; ///< that it comes from: 0 in front, 90 from the hang's left
  double frontKn{};
  double sideKn{};
  double belowM{};   ///< of the picks: where the greatest force acts
  double leanDeg{};  ///< of the hoists' chains
  double swingDeg{}; ///< of the hang itself about its picks, which turns its aim
  double wetKg{};    ///< wet cloth and ice
  std::vector<WindPick> picks;
  std::vector<WindLeg> legs;     ///< none where every pick is a dead hang
  std::vector<WindPoint> points; ///< the same
  double failsAt{};              ///< m/s, the least gust at which a limit is passed; infinite where none is
  QString failsBy;               ///< which
  double firstShare{};           ///< per cent of it
  double secondShare{};
  QString sharesSource;
  double heightM{};    ///< of the picks above the datum
  QStringList missing; ///< without which no figure is proven
};

QJsonValue toJson(const std::optional<WindAnswer>&);
std::optional<WindAnswer> windFromJson(const QJsonValue&);

} // namespace hangbook::options
