// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QString>
#include <QStringList>

#include "options/rule.h"

/// What the weight rules compare with, looked up once for an option. Loads in N, `notKnown` where nobody
/// stated the figure.
namespace hangbook::options {

/// A figure and who set it.
struct Factor {
  double value = notKnown;
  QString source;
};

/// One piece of hardware on each pick's load path, or of each pick's secondary suspension.
struct Piece {
  QString name;
  double limit = notKnown; ///< as the maker states it, without the factor for people beneath
  QString source;
  const catalogue::HardwareType* type = nullptr; ///< nullptr: not in the makers' data
};

/// A truss, beam or bay that carries at least one of the option's points, or one of these points itself where
/// another hang uses it too.
struct ZoneLoad {
  QString name;
  bool onePoint{}; ///< `name` is a point's
  double capacity = notKnown;
  catalogue::Basis basis = catalogue::Basis::unknown;
  QString source;
  double others = notKnown; ///< every other department's load
  QString othersWhy;        ///< who stated it and when, or what is missing
  /// How many times each of the option's points counts: once for the point itself if it belongs to the zone,
  /// once more for its mirror image where a mirrored hang without a choice is taken to do the same.
  std::vector<int> times;
  double otherHangsAtRest{}; ///< by their chosen options; `notKnown` where one is open
  double otherHangsDynamic{};
  QStringList otherHangs; ///< in words: which hangs count, and by what
};

struct CoefficientTable; // working_limit.h

struct WeightLimits {
  bool nobodyBeneath{};                           ///< stated; else people are, or it is not known
  const CoefficientTable* coefficients = nullptr; ///< nullptr: the house names none that there is
  Factor dynamic;                                 ///< 1 or more
  Factor liftShare;                               ///< 1 or more
  Factor accessory;       ///< part of an accessory's limit that may be used here (1 where nobody is beneath)
  Factor hoistPart;       ///< the same of the hoist
  Factor jointSide;       ///< the house's share of the more loaded side, where the maker states none
  Factor openMost;        ///< degrees that a seated joint may stand open
  Factor secondary;       ///< on the load at rest that the secondary suspension catches
  Factor hoistDifference; ///< of the two hoists of a side pair, m
  Factor drop;            ///< before the secondary suspension is taut, m
  Factor leanMost;        ///< degrees
  Factor pickShare;       ///< per cent
  Factor sideUnlike;      ///< per cent
  Factor windFace;        ///< force coefficient of the bar's frame
  Factor legAngleLeast;   ///< of a bridle's leg from the horizontal, degrees
  Factor legAnglePreferred; ///< below it a leg is tight, degrees

  double hoistBody = notKnown;
  double hoistChain = notKnown; ///< its whole chain and the bag
  double rigging = notKnown;    ///< between one point and its hoist
  QStringList riggingUnknown;   ///< what is missing for that, in words
  std::vector<double> capacity; ///< of each of the option's points (its carriers)
  bool zonesStated{};           ///< the venue's sheet states any shared structure at all
  bool pointsWithoutZone{};
  bool pointsHaveSource{};
  std::vector<ZoneLoad> zones;
  QStringList zonesUnknown; ///< named by a point, but not in the sheet
  std::vector<Piece> hardware;
  std::vector<Piece> secondarySteel;
  double spacing = notKnown; ///< of two points, in plan, m
};

/// The factor of EN 1991-3 and EN 13001-2: φ₂ = φ₂min + β₂ · v, v in m/s, of classes HC1 to HC4.
double dynamicFactorOf(catalogue::HoistingClass hoistingClass, double metresPerSecond);

/// Rules of weightRules(), each in a file of its own.
extern const Rule pointLoadRule;
extern const Rule zoneLoadRule;
extern const Rule bridleRule;
extern const Rule hoistRule;
extern const Rule barRule;
extern const Rule countRule;
extern const Rule jointRule;
extern const Rule contactRule;
extern const Rule chainRule;
extern const Rule pickShareRule;
extern const Rule hardwareRule;
extern const Rule windRule;
extern const Rule leanRule;
extern const Rule unevenRule;

} // namespace hangbook::options
