// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QStringList>

#include "options/wind_force.h"
#include "options/wind_legs.h"
#include "options/wind_table.h"

/// What a gust does to one setting, and which limits it meets. All of it rises with the wind.
///
/// The force F and the weight W pull along one line, so every chain leans by atan(F/W); where chains lean
/// already, the two leans add. Against the upright plane of two picks nothing turns the hang but its own
/// swing; in that plane the moment of the forces moves load from one pick to the other: moment ÷ spacing.
/// The greatest lean and the greatest move are taken together though they come from different directions, so
/// no direction is worse. Wet cloth and ice add to the loads; lean, unloading and what shuts a joint are
/// judged without them. What it does to joints and chain: wind_joints.h; to the legs of a bridle, and what
/// else is left out there: wind_legs.h.
namespace hangbook::options {

enum class WindLimit {
  lean,
  unloads,
  point,
  hoist,
  hardware,
  bar,
  zone,
  chain,
  slack,
  pin,
  contact,
  stop,
  opens,
  leg,
  legSlack,
  legAngle
};

/// One limit in a gust.
struct WindUse {
  WindLimit limit = WindLimit::lean;
  std::size_t number{}; ///< the pick, the point (carrier), the zone, or the joint's element
  std::size_t piece{};  ///< of the hardware; the pin; the leg of the pick's bridle
  Use use;              ///< degrees for the lean and for a leg's angle, kN for all else
};

/// The hang in a gust; `pressure` in N/m².
class InGust {
public:
  InGust(const Case& option, const Settled& settled, double trimM, const WindForce& wind, double pressure);

  double force() const { return force_; }     ///< N, from the worst direction
  double leanDeg() const { return leanDeg_; } ///< that the gust alone gives each chain
  double moved() const { return moved_; }     ///< N, from one pick to the other
  double pickForce(std::size_t pick) const;   ///< N along the chain, the most
  double pickLeft(std::size_t pick) const;    ///< N, the least
  double pointAtRest(std::size_t pick) const; ///< N on the pick's point or apex
  double carried(std::size_t carrier) const;  ///< N that one of the venue's points carries down
  /// Of the pick's bridle; none of a dead hang.
  const std::vector<LegInGust>& legs(std::size_t pick) const { return legs_[pick]; }
  std::vector<WindUse> uses() const;

private:
  double wet(std::size_t pick) const;
  double mostHung(std::size_t pick) const;
  double carriedBy(const Carrier::From& from) const;
  double ownOn(const ZoneLoad& zone) const;
  void addPoint(std::size_t carrier, std::vector<WindUse>& all) const;
  void addLegs(std::size_t pick, std::vector<WindUse>& all) const;
  void addJoints(std::vector<WindUse>& all) const;
  Use zoneUse(std::size_t zone) const;

  const Case& option_;
  const Settled& settled_;
  double trimM_;
  const WindForce& wind_;
  double pressure_;
  double force_{};
  double leanDeg_{};
  double moved_{};
  std::vector<std::vector<LegInGust>> legs_;
};

/// "point-load of L1", "hoist at left"
QString wordsFor(const WindUse& use, const Case& option, const Settled& settled);

/// What the statement of the wind lacks to serve at this trim: that it is a gust, its averaging time of at
/// most 3 s, its height of at least that of the picks; and whether cloth or ice come on.
QStringList windStatementLacks(const Case& option, const Settled& settled, double trimM);

/// Of an option outdoors; nothing indoors or where the venue does not say.
std::optional<WindAnswer> windAnswer(const Case& option, const Settled& settled, double trimM);

} // namespace hangbook::options
