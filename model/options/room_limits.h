// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cmath>
#include <functional>

#include "options/cover.h"
#include "options/placement.h"

/// What the room sets, looked up once for an option, as plain numbers. NaN: not known.
namespace hangbook::options {

struct Bound {
  double metres = notKnown;
  QString source;
};

/// Something above: low steel over the whole plan, or an obstruction over its box.
struct Ceiling {
  QString name;
  double underside = notKnown;
  double xFrom = -std::numeric_limits<double>::infinity();
  double xTo = std::numeric_limits<double>::infinity();
  double yFrom = -std::numeric_limits<double>::infinity();
  double yTo = std::numeric_limits<double>::infinity();
  bool overAll() const { return std::isinf(xTo); }
};

struct RoomLimits {
  std::vector<Bound> leastTrim; ///< above the datum; each is a lower bound
  Bound leastAboveFloor;        ///< above the floor beneath, in its own right
  std::optional<Bound> mostTrim;
  double trimMargin = notKnown;
  double chainTail = notKnown; ///< 0: unused links are tied up; else they hang free

  std::vector<double> pointHeight; ///< one for each pick
  std::vector<Ceiling> ceilings;
  bool lowSteelKnown{};
  double closedLength = notKnown;
  double riggingLength = notKnown;
  std::size_t riggingPieces{}; ///< each of which may be off its length
  QStringList riggingMissing;
  double clearance = notKnown;
  double headroomMargin = notKnown;

  double chainLength = notKnown;
  double barMetHeight = notKnown;
  double chainShorter = notKnown; ///< m, by which the hoist's chain may be shorter than stated
  double liftMargin = notKnown;

  double angleMargin = notKnown;

  Audience audience;
  double coverShare = notKnown;
  double coverMargin = notKnown;
  double airLoss = notKnown; ///< dB a metre at 4 kHz; the day's air is not stated
};

/// Rules of roomRules(), each in a file of its own.
extern const Rule lowestEdgeRule;
extern const Rule headroomRule;
extern const Rule liftHeightRule;
extern const Rule travelRule;
extern const Rule coverRule;
/// Every stretch of trim in which cover holds; one without ends where cover cannot be judged. The rule's own
/// `trimRange` is the widest of them.
std::vector<TrimRange> coverStretches(const Case&, const Settled&);
/// The rule's answer from what is covered at a trim, to the very edges or `inside` them by the house's
/// margin: the one formula of the rule and of the search.
Use coverUse(const RoomLimits&, const Settled&, double trimM,
             const std::function<Covered(bool inside)>& covered);
extern const Rule levelDropRule;

} // namespace hangbook::options
