// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include <QStringList>

#include "catalogue/source.h"
#include "quantity/quantity.h"
#include "venue/house.h"

/// Venue coordinates: origin at the venue's stated datum (as a rule the middle of the stage edge, at the
/// audience floor), x towards the audience, y to the left of somebody who stands on stage and looks at the
/// audience ("stage left"), z up.
namespace hangbook::venue {

using catalogue::Basis;

/// A suspension point.
struct Point {
  QString name; ///< unique in the venue
  Length x;
  Length y;
  Length z; ///< where the first shackle bears
  std::optional<Force> capacity;
  Basis basis = Basis::unknown;
  QString zone;             ///< the truss, beam or bay it belongs to; empty = none stated
  catalogue::Source source; ///< venue's sheet, revision, who approved it
  bool operator==(const Point&) const = default;
};

/// One way of holding a pick from two or three points that do not stand over it. A hang names it among its
/// points. Its legs are made up from the steels named, as near to the wanted apex as the tolerance asks.
struct Bridle {
  QString name;            ///< unique among the venue's points and bridles
  QStringList points;      ///< two or three of the venue's points, by name
  std::optional<Length> x; ///< of the wanted apex; both empty: midway between the points, seen from above
  std::optional<Length> y;
  Length z;                        ///< of the wanted apex: where the lowest shackle bears
  QStringList steels;              ///< types of hardware that a leg may be made up from
  QString shackle;                 ///< type of hardware above each steel and at the apex
  std::optional<Length> tolerance; ///< how far a leg may be from its wanted length; none: the house's figure
  catalogue::Source source;
  bool operator==(const Bridle&) const = default;
};

/// What several points share: a truss, beam or bay.
struct Zone {
  QString name;
  std::optional<Force> capacity;
  Basis basis = Basis::unknown;
  /// What every other department hangs on it. Not known is unproven; 0 stands only with name and date.
  std::optional<Force> othersLoad;
  QString othersBy;
  QDate othersOn;
  bool operator==(const Zone&) const = default;
};

/// Something under the low steel, as a box seen in plan with the height of its underside.
struct Obstruction {
  QString name;
  Length xFrom;
  Length xTo;
  Length yFrom;
  Length yTo;
  Length underside;
  bool operator==(const Obstruction&) const = default;
};

struct ProfilePoint {
  Length x; ///< along the audience, venue coordinates
  Length z; ///< of the floor there
  bool operator==(const ProfilePoint&) const = default;
};

/// A block of audience as a profile, first row to last. Without a front line the profile lies along the
/// venue's x and spans from `yFrom` to `yTo`. With one (all five figures of it) the profile's x counts from
/// the front line to the rear, and the profile is swept along that line: a raked block, a tier, a curved
/// balcony, a block to the side.
struct Section {
  QString name;
  std::vector<ProfilePoint> profile; ///< at least two, x rising
  std::optional<Length> earHeight;   ///< above the floor
  std::optional<Length> yFrom;       ///< what it spans across; empty = the whole width
  std::optional<Length> yTo;
  std::optional<Length> frontX; ///< middle of the front line, in plan
  std::optional<Length> frontY;
  std::optional<Angle> bearing; ///< from there to the rear: 0 along the venue's x, positive to the left
  std::optional<Length> width;  ///< along the front line
  /// Of the front line: 0 straight; above 0 its centre lies before it, so that the rows curve round the
  /// stage and grow longer to the rear; below 0 its centre lies behind it.
  std::optional<Length> radius;
  /// Whether it is given by a front line, be it whole or not.
  bool swept() const { return frontX || frontY || bearing || width || radius; }
  bool operator==(const Section&) const = default;
};

struct Venue : catalogue::Record {
  QString name; ///< unique
  QString town;
  QString timeZone; ///< IANA name
  std::optional<double> latitude;
  std::optional<double> longitude;
  QString datum;                   ///< what the heights and places are measured from, in words
  std::optional<bool> outdoors;    ///< not stated leaves the wind unproven
  std::optional<Length> lowSteel;  ///< height of the lowest steel over the hangs
  std::optional<Length> leastTrim; ///< the venue's own lower bound for the lowest edge
  std::optional<Length> mostTrim;  ///< the venue's own upper bound for the lowest edge
  QString access;                  ///< in words
  std::vector<Point> points;
  std::vector<Bridle> bridles;
  std::vector<Zone> zones;
  std::vector<Obstruction> obstructions;
  std::vector<Section> sections;
  std::vector<HouseFigure> house; ///< house rules for this venue
  bool operator==(const Venue&) const = default;
};

} // namespace hangbook::venue
